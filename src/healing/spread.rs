//! How wrong one can be about a case: the spreads of skin, placement and persistence, declared here once.
//!
//! Entry points: [`Spread`] states them, [`World`] is a case a little different from the one that was described. The proofs of
//! exercises and the region of likely outcomes use the same declaration.

use super::Placement;
use crate::skin::{BACKGROUND, BLOOD, MELANIN, OXYGENATION, Prior, SCATTERING, Skin, VESSEL_RADIUS};
use serde::Serialize;

/// Standard deviations of the natural logarithm of each number: 0.15 is about 15% up or down.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Spread {
    /// Of [`Skin::melanin`].
    pub melanin: f64,
    /// Of [`Skin::blood`].
    pub blood: f64,
    /// Of [`Skin::oxygenation`].
    pub oxygenation: f64,
    /// Of [`Skin::scattering`].
    pub scattering: f64,
    /// Of [`Skin::background`].
    pub background: f64,
    /// Of [`Skin::vessel_radius_mm`].
    pub vessel_radius_mm: f64,
    /// Of [`Placement::depth_mm`].
    pub depth_mm: f64,
    /// Of [`Placement::load`].
    pub load: f64,
    /// Of all half-lives together: how fast this person's skin clears colour.
    pub persistence: f64,
    /// Of each colourant's half-life on its own.
    pub half_life: f64,
}

/// What varies, counted in standard deviations.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Deviation {
    /// Melanin, blood, oxygenation, scattering, background and vessel radius.
    pub skin: [f64; 6],
    /// Depth.
    pub depth: f64,
    /// Load.
    pub load: f64,
}

/// A case a little different from the one described.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct World {
    /// The client's skin.
    pub skin: Skin,
    /// Where the new work lies.
    pub placement: Placement,
}

impl Spread {
    /// Nothing varies.
    pub const NONE: Spread = Spread {
        melanin: 0.0,
        blood: 0.0,
        oxygenation: 0.0,
        scattering: 0.0,
        background: 0.0,
        vessel_radius_mm: 0.0,
        depth_mm: 0.0,
        load: 0.0,
        persistence: 0.0,
        half_life: 0.0,
    };

    /// The client is seen or measured, the work is done by hand (representative: what one can be wrong about when reading skin by
    /// eye and working by hand; half-lives are themselves representative, so theirs are wide).
    pub const SEEN: Spread = Spread {
        melanin: 0.15,
        blood: 0.20,
        oxygenation: 0.08,
        scattering: 0.08,
        background: 0.25,
        depth_mm: 0.15,
        load: 0.15,
        persistence: 0.25,
        half_life: 0.25,
        ..Spread::NONE
    };

    /// The same work on a client of whom only words are known: the skin has the spread of the [`Prior`] that the words give.
    pub fn with_skin_of(self, prior: &Prior) -> Self {
        let [melanin, blood, oxygenation, scattering, background, vessel_radius_mm] = prior.spread;
        // The prior counts oxygenation as a logit, whose change is d ln(share) / (1 - share).
        let oxygenation = oxygenation * (1.0 - prior.centre.oxygenation);
        Spread { melanin, blood, oxygenation, scattering, background, vessel_radius_mm, ..self }
    }
}

impl World {
    /// The case so many deviations from the one described. Skin stays within its bounds.
    pub fn at(spread: &Spread, deviation: &Deviation, skin: &Skin, placement: &Placement) -> Self {
        let vary = |value: f64, spread: f64, deviation: f64| value * libm::exp(spread * deviation);
        let [melanin, blood, oxygenation, scattering, background, vessel_radius] = deviation.skin;
        let skin_number = |value, spread, deviation, quantity: &crate::quantity::Quantity| {
            vary(value, spread, deviation).clamp(quantity.least, quantity.most)
        };
        World {
            skin: Skin {
                melanin: skin_number(skin.melanin, spread.melanin, melanin, &MELANIN),
                blood: skin_number(skin.blood, spread.blood, blood, &BLOOD),
                oxygenation: skin_number(skin.oxygenation, spread.oxygenation, oxygenation, &OXYGENATION),
                scattering: skin_number(skin.scattering, spread.scattering, scattering, &SCATTERING),
                background: skin_number(skin.background, spread.background, background, &BACKGROUND),
                vessel_radius_mm: skin_number(
                    skin.vessel_radius_mm,
                    spread.vessel_radius_mm,
                    vessel_radius,
                    &VESSEL_RADIUS,
                ),
            },
            placement: Placement {
                depth_mm: vary(placement.depth_mm, spread.depth_mm, deviation.depth),
                load: vary(placement.load, spread.load, deviation.load),
                ..*placement
            },
        }
    }
}
