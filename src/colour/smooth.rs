//! A smooth reflectance that has a given colour: one of the many surfaces that would, and the least eventful of them.
//!
//! Entry point: [`smooth_reflectance`]. Method: "least hyperbolic tangent slope squared" (S. A. Burns, "Numerical methods for
//! smoothest reflectance reconstruction", Color Research and Application 45, 8-21, 2020; equations from memory). The reflectance
//! is (tanh z + 1) / 2 in each band, so that it cannot leave 0 to 1; the sum of squared steps of z between neighbouring bands is
//! made least under the condition that XYZ is met, by Newton's method on Lagrange's equations. Here the wanted colour is
//! approached from mid-grey in steps, which makes Newton's method safe for vivid colours.

use super::{BANDS, Lab, Light, Spectrum};
use nalgebra::{DMatrix, DVector};

/// Unknowns: z of each band, and one multiplier for each of X, Y, Z.
const UNKNOWNS: usize = BANDS + 3;
/// Newton steps from one intermediate colour to the next.
const MOST_STEPS: usize = 25;
/// Least stride on the way from grey to the colour.
const LEAST_STRIDE: f64 = 1.0 / 4096.0;
/// XYZ is met to this, on the scale where white is 1.
const TOLERANCE: f64 = 1e-11;

/// The smooth reflectance (0 to 1 per band) with this colour under this light; `None` where no surface has it.
///
/// ```
/// use healedhue::colour::{Lab, Light, smooth_reflectance};
/// let brown = Lab::new(40.0, 15.0, 25.0);
/// let reflectance = smooth_reflectance(brown, Light::D65).expect("there are brown things");
/// assert!((Light::D65.lab_of(&reflectance).a - 15.0).abs() < 1e-6);
/// ```
pub fn smooth_reflectance(lab: Lab, light: Light) -> Option<Spectrum> {
    // XYZ is linear in reflectance: the weights are the XYZ of each band alone.
    let weights: [[f64; 3]; BANDS] = std::array::from_fn(|band| {
        let xyz = light.xyz_of(&std::array::from_fn(|other| if other == band { 0.01 } else { 0.0 }));
        [xyz.x, xyz.y, xyz.z]
    });
    let xyz = lab.to_xyz(light.white());
    let wanted = [xyz.x / 100.0, xyz.y / 100.0, xyz.z / 100.0];
    if !wanted.iter().all(|value| value.is_finite() && *value > 0.0) {
        return None;
    }
    let grey: [f64; 3] =
        std::array::from_fn(|axis| 0.5 * weights.iter().map(|weight| weight[axis]).sum::<f64>());
    let mut at = DVector::<f64>::zeros(UNKNOWNS);
    let (mut reached, mut stride) = (0.0_f64, 1.0_f64);
    while reached < 1.0 {
        let next = (reached + stride).min(1.0);
        let target: [f64; 3] = std::array::from_fn(|axis| grey[axis] + (wanted[axis] - grey[axis]) * next);
        match solve(&weights, &target, at.clone()) {
            Some(solved) => {
                at = solved;
                reached = next;
                stride *= 2.0;
            }
            None => {
                stride *= 0.5;
                if stride < LEAST_STRIDE {
                    return None;
                }
            }
        }
    }
    Some(std::array::from_fn(|band| 0.5 * (libm::tanh(at[band]) + 1.0)))
}

/// Newton's method on Lagrange's equations from a point near the solution.
fn solve(weights: &[[f64; 3]; BANDS], target: &[f64; 3], mut at: DVector<f64>) -> Option<DVector<f64>> {
    for _ in 0..MOST_STEPS {
        let mut off = DVector::<f64>::zeros(UNKNOWNS);
        let mut slope = DMatrix::<f64>::zeros(UNKNOWNS, UNKNOWNS);
        for axis in 0..3 {
            off[BANDS + axis] = -target[axis];
        }
        for (band, weight) in weights.iter().enumerate() {
            let tanh = libm::tanh(at[band]);
            let sech_squared = 1.0 - tanh * tanh;
            let pull: f64 = (0..3).map(|axis| weight[axis] * at[BANDS + axis]).sum();
            off[band] = 0.5 * sech_squared * pull;
            slope[(band, band)] = -sech_squared * tanh * pull;
            for other in [band.checked_sub(1), (band + 1 < BANDS).then_some(band + 1)].into_iter().flatten() {
                off[band] += 2.0 * (at[band] - at[other]);
                slope[(band, band)] += 2.0;
                slope[(band, other)] -= 2.0;
            }
            for axis in 0..3 {
                off[BANDS + axis] += weight[axis] * 0.5 * (tanh + 1.0);
                slope[(band, BANDS + axis)] = 0.5 * sech_squared * weight[axis];
                slope[(BANDS + axis, band)] = 0.5 * sech_squared * weight[axis];
            }
        }
        let missed = (0..3).map(|axis| off[BANDS + axis].abs()).fold(0.0, f64::max);
        if missed < TOLERANCE && off.amax() < 1e-8 {
            return Some(at);
        }
        at -= slope.lu().solve(&off)?;
        // Far out in the tails of tanh the equations have lost their grip.
        if !at.iter().all(|value| value.is_finite()) || at.rows(0, BANDS).amax() > 12.0 {
            return None;
        }
    }
    None
}
