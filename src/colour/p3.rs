//! Display P3 for screens that show more than sRGB.
//!
//! Primaries of SMPTE EG 432-1, white D65, the transfer function of sRGB; matrix as CSS Color Module Level 4 gives it (from
//! memory; it equals the one that colour-science 0.4.7 derives from the primaries).

use super::{Lab, Light};
use serde::Serialize;

/// From XYZ (Y of white 1, white D65) to linear red, green and blue.
const FROM_XYZ: [[f64; 3]; 3] = [
    [446_124.0 / 178_915.0, -333_277.0 / 357_830.0, -72_051.0 / 178_915.0],
    [-14_852.0 / 17_905.0, 63_121.0 / 35_810.0, 423.0 / 17_905.0],
    [11_844.0 / 330_415.0, -50_337.0 / 660_830.0, 316_169.0 / 330_415.0],
];

/// White of that matrix: x 0.3127, y 0.3290.
const WHITE: [f64; 3] = [0.3127 / 0.3290, 1.0, (1.0 - 0.3127 - 0.3290) / 0.3290];

/// A colour for a wide-gamut screen, as CSS writes it: `color(display-p3 r g b)`.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct DisplayP3 {
    /// Red, green, blue, 0 to 1, encoded, cut off at the limits.
    pub rgb: [f64; 3],
    /// Whether Display P3 can show the colour.
    pub in_gamut: bool,
}

impl DisplayP3 {
    /// The Display P3 colour of a CIELAB colour; as [`Srgb::from_lab`](super::Srgb::from_lab), the eye is taken to have adapted to the
    /// light.
    pub fn from_lab(lab: Lab) -> Self {
        let white = Light::D65.white();
        let xyz = lab.to_xyz(white);
        // Our white is integrated from the tables: scale white onto white.
        let xyz = [xyz.x / white.x * WHITE[0], xyz.y / white.y * WHITE[1], xyz.z / white.z * WHITE[2]];
        let encoded = FROM_XYZ.map(|row| encode(row[0] * xyz[0] + row[1] * xyz[1] + row[2] * xyz[2]));
        // Half a step of 8 bits, as for sRGB.
        let slack = 0.5 / 255.0;
        let in_gamut = encoded.iter().all(|c| (-slack..=1.0 + slack).contains(c));
        DisplayP3 { rgb: encoded.map(|c| c.clamp(0.0, 1.0)), in_gamut }
    }
}

/// The transfer function of sRGB (IEC 61966-2-1), continued below zero.
fn encode(linear: f64) -> f64 {
    let size = linear.abs();
    let encoded = if size <= 0.003_130_8 { 12.92 * size } else { 1.055 * libm::pow(size, 1.0 / 2.4) - 0.055 };
    if linear < 0.0 { -encoded } else { encoded }
}
