//! sRGB (IEC 61966-2-1) for screens.

use super::{Lab, Light, Xyz};
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

    /// The colour written as `#rrggbb`, with or without the sign; `None` if it is not written so.
    pub fn from_hex(text: &str) -> Option<Self> {
        let digits = text.strip_prefix('#').unwrap_or(text);
        if digits.len() != 6 || !digits.bytes().all(|byte| byte.is_ascii_hexdigit()) {
            return None;
        }
        let byte = |at: usize| u8::from_str_radix(&digits[at..at + 2], 16).ok();
        Some(Srgb { r: byte(0)?, g: byte(2)?, b: byte(4)?, in_gamut: true })
    }

    /// The CIELAB colour under D65 of what a screen shows; the inverse of [`Srgb::from_lab`] up to rounding.
    pub fn to_lab(self) -> Lab {
        let channel = |byte: u8| f64::from(byte) / 255.0;
        let rgb = palette::Srgb::new(channel(self.r), channel(self.g), channel(self.b));
        let theirs: PaletteXyz<D65, f64> = rgb.into_color_unclamped();
        let white = Light::D65.white();
        let xyz =
            Xyz { x: theirs.x / 0.95047 * white.x, y: theirs.y * white.y, z: theirs.z / 1.08883 * white.z };
        Lab::from_xyz(xyz, white)
    }

    /// `#rrggbb`.
    pub fn hex(self) -> String {
        format!("#{:02x}{:02x}{:02x}", self.r, self.g, self.b)
    }
}
