//! sRGB (IEC 61966-2-1) for screens.

use super::{Lab, Light};
use palette::convert::IntoColorUnclamped;
use palette::{Xyz as PaletteXyz, white_point::D65};
use serde::Serialize;

/// A colour for a screen, 8 bits a channel.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Srgb {
    /// Red, 0 to 255.
    pub r: u8,
    /// Green, 0 to 255.
    pub g: u8,
    /// Blue, 0 to 255.
    pub b: u8,
    /// Whether sRGB can show the colour; where it cannot, each channel was cut off at its limit.
    pub in_gamut: bool,
}

impl Srgb {
    /// The sRGB colour of a CIELAB colour. A colour computed under another light keeps its L*a*b*: the eye is taken to have
    /// adapted to that light.
    pub fn from_lab(lab: Lab) -> Self {
        let xyz = lab.to_xyz(Light::D65.white());
        // palette's D65 white is 0.95047, 1, 1.08883; ours is integrated from the tables, so scale white onto white.
        let (white, theirs) = (Light::D65.white(), (0.95047, 1.0, 1.08883));
        let rgb: palette::Srgb<f64> = PaletteXyz::<D65, f64>::new(
            xyz.x / white.x * theirs.0,
            xyz.y / white.y * theirs.1,
            xyz.z / white.z * theirs.2,
        )
        .into_color_unclamped();
        // Half a step of 8 bits: less cannot be seen on the screen anyway.
        let slack = 0.5 / 255.0;
        let in_gamut = [rgb.red, rgb.green, rgb.blue].iter().all(|c| (-slack..=1.0 + slack).contains(c));
        let byte = |c: f64| libm::round(c.clamp(0.0, 1.0) * 255.0) as u8;
        Srgb { r: byte(rgb.red), g: byte(rgb.green), b: byte(rgb.blue), in_gamut }
    }

    /// `#rrggbb`.
    pub fn hex(self) -> String {
        format!("#{:02x}{:02x}{:02x}", self.r, self.g, self.b)
    }
}
