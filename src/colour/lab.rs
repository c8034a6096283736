//! CIE XYZ and CIE 1976 L*a*b* (ISO/CIE 11664-4).

use crate::quantity::Quantity;
use serde::{Deserialize, Serialize};

/// Bounds of L*.
pub const LIGHTNESS: Quantity = Quantity::new("L*", "", 0.0, 100.0);
/// Bounds of a*.
pub const GREEN_RED: Quantity = Quantity::new("a*", "", -128.0, 128.0);
/// Bounds of b*.
pub const BLUE_YELLOW: Quantity = Quantity::new("b*", "", -128.0, 128.0);

/// Tristimulus values, scaled so that the perfect reflecting diffuser has Y = 100.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Xyz {
    /// X.
    pub x: f64,
    /// Y, luminance factor in percent.
    pub y: f64,
    /// Z.
    pub z: f64,
}

/// A colour in CIELAB, relative to the white of the light it was computed for.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Lab {
    /// Lightness L*, 0 black to 100 white.
    pub l: f64,
    /// a*, green negative to red positive.
    pub a: f64,
    /// b*, blue negative to yellow positive.
    pub b: f64,
}

/// (6/29)³, where the cube root gives way to a straight line.
const EPSILON: f64 = 216.0 / 24389.0;
/// (29/3)³, the slope of that line.
const KAPPA: f64 = 24389.0 / 27.0;

impl Lab {
    /// A colour from its three coordinates.
    pub const fn new(l: f64, a: f64, b: f64) -> Self {
        Lab { l, a, b }
    }

    /// CIELAB of `xyz` relative to `white`.
    pub fn from_xyz(xyz: Xyz, white: Xyz) -> Self {
        let f = |t: f64| if t > EPSILON { libm::cbrt(t) } else { (KAPPA * t + 16.0) / 116.0 };
        let (x, y, z) = (f(xyz.x / white.x), f(xyz.y / white.y), f(xyz.z / white.z));
        Lab { l: 116.0 * y - 16.0, a: 500.0 * (x - y), b: 200.0 * (y - z) }
    }

    /// XYZ of this colour relative to `white`; the inverse of [`Lab::from_xyz`].
    pub fn to_xyz(self, white: Xyz) -> Xyz {
        let y = (self.l + 16.0) / 116.0;
        let f = |t: f64| if t * t * t > EPSILON { t * t * t } else { (116.0 * t - 16.0) / KAPPA };
        Xyz { x: white.x * f(y + self.a / 500.0), y: white.y * f(y), z: white.z * f(y - self.b / 200.0) }
    }

    /// Chroma C*ab.
    pub fn chroma(self) -> f64 {
        libm::sqrt(self.a * self.a + self.b * self.b)
    }

    /// Hue angle h_ab in degrees, 0 to 360; 0 is red, 90 yellow, 180 green, 270 blue.
    pub fn hue_degrees(self) -> f64 {
        let degrees = libm::atan2(self.b, self.a).to_degrees();
        if degrees < 0.0 { degrees + 360.0 } else { degrees }
    }
}
