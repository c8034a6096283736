//! What is seen of a reflectance under a light.

use crate::colour::{Lab, Light, Spectrum, Srgb, Xyz};

/// A surface as it looks under one light.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Appearance {
    /// Reflectance per band, surface reflection included, 0 to 1.
    pub reflectance: Spectrum,
    /// Tristimulus values under the light.
    pub xyz: Xyz,
    /// CIELAB relative to that light's white.
    pub lab: Lab,
    /// The same on a screen.
    pub srgb: Srgb,
}

impl Appearance {
    /// How `reflectance` looks under `light`.
    pub fn of(reflectance: Spectrum, light: Light) -> Self {
        let xyz = light.xyz_of(&reflectance);
        let lab = Lab::from_xyz(xyz, light.white());
        Appearance { reflectance, xyz, lab, srgb: Srgb::from_lab(lab) }
    }
}
