//! How rough readings are: an estimate of their error from the readings themselves.

use super::Panel;
use crate::colour::BANDS;

/// Never taken to be less: stray light and calibration alone are worth as much.
const LEAST: f64 = 1e-4;
/// Roughness beyond this is structure, and says nothing of the error of a reading.
const MOST: f64 = 0.03;

/// Relative error of a reading, as one standard deviation: the median fourth difference between neighbouring bands, which smooth
/// spectra leave nearly without a trace, in the way of DER_SNR (Stoehr and others, ADASS XVII, 2008, who use second differences).
pub(super) fn estimate(panels: &[Panel]) -> f64 {
    let mut rough: Vec<f64> = panels
        .iter()
        .flat_map(|panel| {
            let r = &panel.reflectance;
            (2..BANDS - 2).map(|i| {
                let difference = r[i - 2] - 4.0 * r[i - 1] + 6.0 * r[i] - 4.0 * r[i + 1] + r[i + 2];
                difference.abs() / r[i].max(super::DARKEST_FILM)
            })
        })
        .collect();
    rough.sort_by(f64::total_cmp);
    // 70 = 1² + 4² + 6² + 4² + 1²; 1.4826 turns a median deviation into a standard one, for a normal distribution.
    let error = 1.4826 * rough[rough.len() / 2] / libm::sqrt(70.0);
    if error > MOST { LEAST } else { error.max(LEAST) }
}
