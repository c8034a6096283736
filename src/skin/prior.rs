//! What skin is likely to be before it is measured: a centre and a spread for each of the six numbers.
//!
//! The numbers are counted on scales without bounds: the logarithm of each, for oxygenation the logit.

use super::{
    BACKGROUND, BLOOD, MELANIN, OXYGENATION, Phototype, Redness, SCATTERING, Skin, Undertone, VESSEL_RADIUS,
};

/// How many numbers make a skin.
pub(super) const NUMBERS: usize = 6;

/// A normal distribution over the six numbers of a [`Skin`], on their unbounded scales.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Prior {
    /// Most likely skin.
    pub centre: Skin,
    /// Standard deviations of ln melanin, ln blood, logit oxygenation, ln scattering, ln background and ln vessel radius.
    pub spread: [f64; NUMBERS],
}

impl Prior {
    /// Anybody: medians and rounded spreads of what this model fits to the forearms of 50 people (NIST reference data set, Cooksey,
    /// Allen and Tsai 2017), melanin widened to cover phototypes I to VI.
    pub fn anybody() -> Self {
        Prior {
            centre: Skin {
                melanin: 0.025,
                blood: 0.010,
                oxygenation: 0.62,
                scattering: 1.7,
                background: 0.3,
                vessel_radius_mm: 0.003,
            },
            spread: [1.0, 0.7, 0.7, 0.45, 1.0, 1.0],
        }
    }

    /// A person of this phototype, undertone and redness. The centre is [`Skin::from_evidence`]; the spread (representative) is wide
    /// for melanin, since phototype is the skin's answer to sun and not a colour: people of one phototype overlap those of
    /// both neighbours.
    pub fn from_evidence(phototype: Phototype, undertone: Undertone, redness: Redness) -> Self {
        Prior {
            centre: Skin::from_evidence(phototype, undertone, redness),
            spread: [0.45, 0.35, 0.35, 0.3, 0.5, 0.7],
        }
    }

    /// How many standard deviations below and above the centre the bounds of each number lie.
    pub(super) fn limits(&self) -> [(f64, f64); NUMBERS] {
        let skin_of =
            |[melanin, blood, oxygenation, scattering, background, vessel_radius_mm]: [f64; NUMBERS]| {
                unbounded(&Skin { melanin, blood, oxygenation, scattering, background, vessel_radius_mm })
            };
        let bounds = [MELANIN, BLOOD, OXYGENATION, SCATTERING, BACKGROUND, VESSEL_RADIUS];
        let (centre, least, most) = (
            unbounded(&self.centre),
            skin_of(bounds.map(|quantity| quantity.least)),
            skin_of(bounds.map(|quantity| quantity.most)),
        );
        std::array::from_fn(|i| {
            ((least[i] - centre[i]) / self.spread[i], (most[i] - centre[i]) / self.spread[i])
        })
    }

    /// The skin so many standard deviations from the centre.
    pub(super) fn skin_at(self, deviations: &[f64; NUMBERS]) -> Skin {
        let centre = unbounded(&self.centre);
        let [melanin, blood, oxygenation, scattering, background, vessel_radius] =
            std::array::from_fn(|i| centre[i] + self.spread[i] * deviations[i]);
        Skin {
            melanin: libm::exp(melanin),
            blood: libm::exp(blood),
            oxygenation: 1.0 / (1.0 + libm::exp(-oxygenation)),
            scattering: libm::exp(scattering),
            background: libm::exp(background),
            vessel_radius_mm: libm::exp(vessel_radius),
        }
    }
}

/// Least value on a logarithmic scale: zero has none.
const TRACE: f64 = 1e-6;

fn unbounded(skin: &Skin) -> [f64; NUMBERS] {
    let ln = |value: f64| libm::log(value.max(TRACE));
    let share = skin.oxygenation.clamp(TRACE, 1.0 - TRACE);
    [
        ln(skin.melanin),
        ln(skin.blood),
        ln(share / (1.0 - share)),
        ln(skin.scattering),
        ln(skin.background),
        ln(skin.vessel_radius_mm),
    ]
}
