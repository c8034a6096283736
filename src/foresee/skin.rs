//! The client's skin, as a request writes it.

use super::RequestError;
use crate::colour::Lab;
use crate::healing::Spread;
use crate::quantity::OutOfRange;
use crate::skin::{Phototype, Prior, Redness, Site, Skin, Undertone, fit_lab, skin_of_ita};
use serde::{Deserialize, Serialize};

/// Skin by evidence, by angle, by a measured colour or by its numbers; numbers given override what the rest says.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SkinRequest {
    /// Fitzpatrick phototype.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub phototype: Option<Phototype>,
    /// Individual typology angle in degrees.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub ita: Option<f64>,
    /// Measured L*, a*, b* under D65, surface reflection included.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lab: Option<[f64; 3]>,
    /// Whether the place is a flat, pale scar.
    #[serde(default)]
    pub scar: bool,
    /// Undertone.
    #[serde(default)]
    pub undertone: Undertone,
    /// Redness.
    #[serde(default)]
    pub redness: Redness,
    /// [`Skin::melanin`].
    #[serde(skip_serializing_if = "Option::is_none")]
    pub melanin: Option<f64>,
    /// [`Skin::blood`].
    #[serde(skip_serializing_if = "Option::is_none")]
    pub blood: Option<f64>,
    /// [`Skin::oxygenation`].
    #[serde(skip_serializing_if = "Option::is_none")]
    pub oxygenation: Option<f64>,
    /// [`Skin::scattering`].
    #[serde(skip_serializing_if = "Option::is_none")]
    pub scattering: Option<f64>,
    /// [`Skin::background`].
    #[serde(skip_serializing_if = "Option::is_none")]
    pub background: Option<f64>,
    /// [`Skin::vessel_radius_mm`].
    #[serde(skip_serializing_if = "Option::is_none")]
    pub vessel_radius_mm: Option<f64>,
}

/// ΔE00 by which a skin found from a colour may miss it: not visible.
const MOST_LAB_MISS: f64 = 0.5;

impl SkinRequest {
    /// The skin at this site.
    ///
    /// # Errors
    /// [`RequestError`] when nothing says how dark the skin is, when two evidences contradict each other, when no likely skin has
    /// the measured colour, or when a number is outside its bounds.
    pub fn resolve(&self, site: Site) -> Result<Skin, RequestError> {
        self.resolve_with_brow(site).map(|(skin, _)| skin)
    }

    /// The same, and the skin of this person's brow: without a scar, and with the numbers given scaled as the site scales them.
    ///
    /// # Errors
    /// As [`SkinRequest::resolve`].
    pub fn resolve_with_brow(&self, site: Site) -> Result<(Skin, Skin), RequestError> {
        let input = |breach: OutOfRange| RequestError::breach("skin")(breach);
        let evidence = |phototype| {
            let brow = Skin::from_evidence(phototype, self.undertone, self.redness);
            (site.skin_of(brow), brow)
        };
        let measured = |skin| (skin, site.brow_of(skin));
        let (typical, brow) = match (self.lab, self.phototype, self.ita, self.melanin) {
            (None, Some(_), Some(_), _) | (Some(_), _, Some(_), _) => {
                let why = "give `phototype`, `ita` or `lab`, not `ita` and another";
                return Err(RequestError::new("skin", why));
            }
            (Some(lab), phototype, None, _) => measured(self.of_lab(lab, phototype, site)?),
            (None, Some(phototype), None, _) => evidence(phototype),
            (None, None, Some(degrees), _) => {
                measured(skin_of_ita(degrees, self.undertone, self.redness, site).map_err(input)?)
            }
            (None, None, None, Some(_)) => evidence(Phototype::III),
            (None, None, None, None) => {
                let why = "one of `phototype` (I to VI), `ita` (degrees), `lab` (L*, a*, b* measured) or `melanin` (a fraction) \
                           is needed";
                return Err(RequestError::new("skin", why));
            }
        };
        let typical = if self.scar { typical.scarred() } else { typical };
        let skin = self.with_numbers(typical).checked().map_err(input)?;
        let given = site.brow_of(skin);
        let brow = Skin {
            melanin: if self.melanin.is_some() { given.melanin } else { brow.melanin },
            blood: if self.blood.is_some() { given.blood } else { brow.blood },
            ..self.with_numbers(brow)
        };
        Ok((skin, brow))
    }

    /// A skin with the numbers that are given.
    fn with_numbers(&self, skin: Skin) -> Skin {
        Skin {
            melanin: self.melanin.unwrap_or(skin.melanin),
            blood: self.blood.unwrap_or(skin.blood),
            oxygenation: self.oxygenation.unwrap_or(skin.oxygenation),
            scattering: self.scattering.unwrap_or(skin.scattering),
            background: self.background.unwrap_or(skin.background),
            vessel_radius_mm: self.vessel_radius_mm.unwrap_or(skin.vessel_radius_mm),
        }
    }

    /// How wrong one can be about the case: a skin that was measured, or a number that was given, is known as well as what one sees;
    /// what only words tell has their [`Prior`]'s spread.
    pub fn spread(&self) -> Spread {
        let seen = Spread::SEEN;
        if self.lab.is_some() || self.ita.is_some() {
            return seen;
        }
        let phototype = self.phototype.unwrap_or(Phototype::III);
        let told = seen.with_skin_of(&Prior::from_evidence(phototype, self.undertone, self.redness));
        let given = |number: Option<f64>, seen, told| if number.is_some() { seen } else { told };
        Spread {
            melanin: given(self.melanin, seen.melanin, told.melanin),
            blood: given(self.blood, seen.blood, told.blood),
            oxygenation: given(self.oxygenation, seen.oxygenation, told.oxygenation),
            scattering: given(self.scattering, seen.scattering, told.scattering),
            background: given(self.background, seen.background, told.background),
            vessel_radius_mm: given(self.vessel_radius_mm, seen.vessel_radius_mm, told.vessel_radius_mm),
            ..seen
        }
    }

    /// The skin nearest to what the words say that has this colour.
    fn of_lab(
        &self,
        [l, a, b]: [f64; 3],
        phototype: Option<Phototype>,
        site: Site,
    ) -> Result<Skin, RequestError> {
        let prior = phototype.map_or_else(Prior::anybody, |phototype| {
            let mut prior = Prior::from_evidence(phototype, self.undertone, self.redness);
            prior.centre = site.skin_of(prior.centre);
            prior
        });
        let fit = fit_lab(Lab::new(l, a, b), site, &prior);
        if fit.delta_e_2000 <= MOST_LAB_MISS && fit.skin.checked().is_ok() {
            return Ok(fit.skin);
        }
        let near = fit.lab_fitted;
        Err(RequestError::new(
            "skin",
            format!(
                "no likely skin has `lab` [{l}, {a}, {b}] (L*, a*, b* under D65); the nearest found is [{:.1}, {:.1}, {:.1}]",
                near.l, near.a, near.b
            ),
        ))
    }
}
