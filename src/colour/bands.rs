//! The spectral bands everything is computed in: 400 to 700 nm by 10 nm.

/// Number of bands.
pub const BANDS: usize = 31;

/// One value per band, 400 nm first.
pub type Spectrum = [f64; BANDS];

/// Wavelength of a band's centre in nanometres.
pub fn wavelength_nm(band: usize) -> f64 {
    400.0 + 10.0 * band as f64
}
