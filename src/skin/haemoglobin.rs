//! Absorption of whole blood, from the molar extinction of haemoglobin in `haemoglobin.csv` (source in the file).

use crate::colour::{BANDS, Spectrum, wavelength_nm};
use std::sync::LazyLock;

/// Absorption of whole blood, per mm, fully oxygenated and fully deoxygenated.
pub struct Blood {
    /// All haemoglobin carries oxygen.
    pub oxygenated: Spectrum,
    /// None does.
    pub deoxygenated: Spectrum,
}

/// Grams of haemoglobin in a litre of blood, and its molar mass in g/mol (S. Prahl's page, from memory).
const HAEMOGLOBIN_G_PER_L: f64 = 150.0;
const MOLAR_MASS: f64 = 64_500.0;

/// Absorption of whole blood at the 31 bands: 2.303 · ε · 150 / 64500 per cm, here per mm.
pub fn blood() -> &'static Blood {
    static BLOOD: LazyLock<Blood> = LazyLock::new(|| {
        let mut blood = Blood { oxygenated: [0.0; BANDS], deoxygenated: [0.0; BANDS] };
        for line in
            include_str!("haemoglobin.csv").lines().filter(|l| l.starts_with(|c: char| c.is_ascii_digit()))
        {
            let row: Vec<f64> =
                line.split(',').map(|field| field.parse().expect("haemoglobin.csv holds numbers")).collect();
            if let Some(band) = (0..BANDS).find(|&band| wavelength_nm(band) == row[0]) {
                let per_mm = std::f64::consts::LN_10 * HAEMOGLOBIN_G_PER_L / MOLAR_MASS / 10.0;
                blood.oxygenated[band] = row[1] * per_mm;
                blood.deoxygenated[band] = row[2] * per_mm;
            }
        }
        blood
    });
    &BLOOD
}
