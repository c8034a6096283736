//! An eye that gets used to a light: corresponding colours by CAT02.
//!
//! Entry points: [`Light::corresponding`] and [`adapt`]. CAT02 is the von Kries transform of CIECAM02 (CIE 159:2004), here with full
//! adaptation (D = 1): the three sharpened signals are scaled so that one light's white becomes the other's.
//!
//! Swatches do not need it: they take L*a*b* relative to the white of their own light, and show that under the screen's white
//! (the adaptation of CIELAB itself). It is for comparing colours between lights: see [`super::inconstancy`].

use super::{Lab, Light, Spectrum, Xyz};

/// XYZ to sharpened signals (CIE 159:2004).
const SHARPENED: [[f64; 3]; 3] =
    [[0.7328, 0.4296, -0.1624], [-0.7036, 1.6975, 0.0061], [0.0030, 0.0136, 0.9834]];

fn sharpened(xyz: Xyz) -> [f64; 3] {
    SHARPENED.map(|row| row[0] * xyz.x + row[1] * xyz.y + row[2] * xyz.z)
}

/// The inverse, by cofactors.
fn xyz_of(signals: [f64; 3]) -> Xyz {
    let m = SHARPENED;
    let cofactor = |i: usize, j: usize| {
        let (a, b, c, d) = ((i + 1) % 3, (i + 2) % 3, (j + 1) % 3, (j + 2) % 3);
        m[a][c] * m[b][d] - m[a][d] * m[b][c]
    };
    let determinant: f64 = (0..3).map(|j| m[0][j] * cofactor(0, j)).sum();
    let axis = |i: usize| (0..3).map(|j| cofactor(j, i) * signals[j]).sum::<f64>() / determinant;
    Xyz { x: axis(0), y: axis(1), z: axis(2) }
}

/// The colour that looks under the white `to` as `xyz` does under the white `from`, to an eye fully adapted to either.
///
/// ```
/// use healedhue::colour::{adapt, Light};
/// let (a, d65) = (Light::A.white(), Light::D65.white());
/// let white = adapt(a, a, d65);
/// assert!((white.x - d65.x).abs() < 1e-9 && (white.z - d65.z).abs() < 1e-9);
/// ```
pub fn adapt(xyz: Xyz, from: Xyz, to: Xyz) -> Xyz {
    let (signals, from, to) = (sharpened(xyz), sharpened(from), sharpened(to));
    xyz_of(std::array::from_fn(|i| signals[i] * to[i] / from[i]))
}

impl Light {
    /// L*a*b* relative to `to` of the colour that looks under `to` as this surface does under this light.
    pub fn corresponding(self, reflectance: &Spectrum, to: Light) -> Lab {
        Lab::from_xyz(adapt(self.xyz_of(reflectance), self.white(), to.white()), to.white())
    }
}
