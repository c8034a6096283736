//! The six numbers that make one person's skin, and the optics that follow from them.

use super::haemoglobin::blood;
use crate::colour::{Spectrum, wavelength_nm};
use crate::quantity::{OutOfRange, Quantity};
use serde::{Deserialize, Serialize};
use std::sync::LazyLock;

/// Refractive index of skin (common in tissue optics; the project's design).
pub const REFRACTIVE_INDEX: f64 = 1.4;
/// Anisotropy of scattering in skin, g (the project's design; Jacques 2013, from memory).
pub const ANISOTROPY: f64 = 0.8;

/// Bounds of [`Skin::melanin`].
pub const MELANIN: Quantity = Quantity::new("melanin", "as a fraction of the epidermis", 0.0, 0.6);
/// Bounds of [`Skin::blood`].
pub const BLOOD: Quantity = Quantity::new("blood", "as a fraction of the dermis", 0.0, 0.15);
/// Bounds of [`Skin::oxygenation`].
pub const OXYGENATION: Quantity = Quantity::new("oxygenation", "as a fraction", 0.0, 1.0);
/// Bounds of [`Skin::scattering`].
pub const SCATTERING: Quantity = Quantity::new("scattering", "times typical skin", 0.2, 4.0);
/// Bounds of [`Skin::background`].
pub const BACKGROUND: Quantity = Quantity::new("background", "times typical skin", 0.0, 20.0);
/// Bounds of [`Skin::vessel_radius_mm`].
pub const VESSEL_RADIUS: Quantity = Quantity::new("vessel_radius_mm", "mm", 0.0, 0.2);

/// One person's skin at one site.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Skin {
    /// Volume fraction of melanosomes in the epidermis, 0 to 0.6.
    pub melanin: f64,
    /// Volume fraction of blood in the dermis, 0 to 0.15.
    pub blood: f64,
    /// Share of haemoglobin that carries oxygen, 0 to 1.
    pub oxygenation: f64,
    /// Strength of scattering, 1 for typical skin.
    pub scattering: f64,
    /// Absorption of everything else in the dermis, 1 for typical skin.
    pub background: f64,
    /// Mean radius of blood vessels in mm; blood gathered in vessels absorbs less than spread out.
    pub vessel_radius_mm: f64,
}

impl Skin {
    /// This skin, if all six numbers lie within their bounds.
    ///
    /// # Errors
    /// The first number that does not.
    pub fn checked(self) -> Result<Self, OutOfRange> {
        MELANIN.check(self.melanin)?;
        BLOOD.check(self.blood)?;
        OXYGENATION.check(self.oxygenation)?;
        SCATTERING.check(self.scattering)?;
        BACKGROUND.check(self.background)?;
        VESSEL_RADIUS.check(self.vessel_radius_mm)?;
        Ok(self)
    }

    /// The skin with every number put back to its nearest bound: rounding leaves a number a little beyond the bound it was stopped at.
    pub(super) fn within_bounds(self) -> Self {
        let within = |quantity: Quantity, value: f64| value.clamp(quantity.least, quantity.most);
        Skin {
            melanin: within(MELANIN, self.melanin),
            blood: within(BLOOD, self.blood),
            oxygenation: within(OXYGENATION, self.oxygenation),
            scattering: within(SCATTERING, self.scattering),
            background: within(BACKGROUND, self.background),
            vessel_radius_mm: within(VESSEL_RADIUS, self.vessel_radius_mm),
        }
    }

    /// Absorption of the epidermis, per mm: melanosomes 6.6e11·λ^-3.33 per cm (λ in nm; Jacques 1998, from memory) and the
    /// tissue between them.
    pub fn epidermis_absorption(&self) -> Spectrum {
        let Parts { melanosome, tissue, .. } = &*PARTS;
        std::array::from_fn(|band| self.melanin * melanosome[band] + (1.0 - self.melanin) * tissue[band])
    }

    /// Absorption of the dermis, per mm: blood in vessels and the tissue between them.
    ///
    /// Blood of absorption μ in vessels of radius r absorbs as (1 - exp(-2μr)) / (2μr) of the same blood spread out (van Veen,
    /// Verkruysse and Sterenborg 2002, from memory).
    pub fn dermis_absorption(&self) -> Spectrum {
        let blood = blood();
        std::array::from_fn(|band| {
            let whole = self.oxygenation * blood.oxygenated[band]
                + (1.0 - self.oxygenation) * blood.deoxygenated[band];
            let thickness = 2.0 * whole * self.vessel_radius_mm;
            let packaging = if thickness < 1e-6 { 1.0 } else { -libm::expm1(-thickness) / thickness };
            self.blood * whole * packaging + self.background * PARTS.tissue[band]
        })
    }

    /// Scattering coefficient μs of all layers, per mm, for anisotropy [`ANISOTROPY`].
    ///
    /// Reduced scattering 46·(0.409·(λ/500)^-4 + 0.591·(λ/500)^-0.702) per cm (Jacques 2013, from memory), times the person's
    /// strength, divided by 1 - g.
    pub fn scattering_coefficient(&self) -> Spectrum {
        PARTS.reduced.map(|reduced| self.scattering * reduced / (1.0 - ANISOTROPY))
    }
}

/// What no person's numbers change, per mm: worked out once.
struct Parts {
    /// Absorption of melanosomes.
    melanosome: Spectrum,
    /// Absorption of bloodless, melanin-free skin: 0.244 + 85.3·exp(-(λ - 154)/66.2) per cm (Jacques 1998, from memory).
    tissue: Spectrum,
    /// Reduced scattering of typical skin.
    reduced: Spectrum,
}

static PARTS: LazyLock<Parts> = LazyLock::new(|| Parts {
    melanosome: std::array::from_fn(|band| 6.6e10 * libm::pow(wavelength_nm(band), -3.33)),
    tissue: std::array::from_fn(|band| 0.0244 + 8.53 * libm::exp(-(wavelength_nm(band) - 154.0) / 66.2)),
    reduced: std::array::from_fn(|band| {
        let x = wavelength_nm(band) / 500.0;
        4.6 * (0.409 * libm::pow(x, -4.0) + 0.591 * libm::pow(x, -0.702))
    }),
});
