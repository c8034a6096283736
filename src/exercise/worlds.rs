//! Worlds: the same case with skin, depth and load a little different, to see whether an answer still holds.

use super::draw::Setting;
use super::seed::{normal, stream};
use crate::healing::{Placement, Scene, Work};
use crate::pigment::Shelf;
use crate::skin::{BACKGROUND, BLOOD, MELANIN, OXYGENATION, SCATTERING, Skin};

/// Worlds tried for each exercise.
pub const WORLDS: u32 = 200;
/// Share of worlds in which the key must hold.
pub const NEEDED_SHARE: f64 = 0.95;

/// Standard deviations of the logarithm of each number between a case and its worlds (representative: what one can be wrong
/// about when reading skin by eye and working by hand).
mod spread {
    pub const MELANIN: f64 = 0.15;
    pub const BLOOD: f64 = 0.20;
    pub const OXYGENATION: f64 = 0.08;
    pub const SCATTERING: f64 = 0.08;
    pub const BACKGROUND: f64 = 0.25;
    pub const DEPTH: f64 = 0.15;
    pub const LOAD: f64 = 0.15;
}

/// The worlds of one draw: the name of their stream and, where they were tried before, how many held.
pub(super) struct Named<'w> {
    /// Words that name the stream.
    pub words: [&'w str; 4],
    /// Of all worlds, how many were found to hold.
    pub held: Option<u32>,
}

/// One world: skin and placement.
pub(super) struct World {
    skin: Skin,
    /// Where the new work lies in this world.
    pub placement: Placement,
}

/// Tries worlds until all were tried, or so many have failed that the key cannot hold any more. Returns (tried, held).
///
/// `holds` is asked about each world, unless it is known how many hold.
pub(super) fn try_worlds(
    setting: &Setting,
    worlds: &Named,
    mut holds: impl FnMut(&World) -> bool,
) -> (u32, u32) {
    if let Some(held) = worlds.held {
        return (WORLDS, held);
    }
    let mut rng = stream(setting.seed, &worlds.words);
    let may_fail = WORLDS - libm::ceil(NEEDED_SHARE * f64::from(WORLDS)) as u32;
    let (mut tried, mut held) = (0, 0);
    while tried < WORLDS && tried - held <= may_fail {
        let world = World::draw(&mut rng, &setting.client.skin, &setting.placement);
        held += u32::from(holds(&world));
        tried += 1;
    }
    (tried, held)
}

impl World {
    /// The scene of a setting in this world, with this existing work.
    pub fn scene<'s>(&self, shelf: &'s Shelf, setting: &Setting, existing: &[Work]) -> Scene<'s> {
        Scene::new(shelf, &self.skin, setting.client.site, existing, setting.months)
    }

    fn draw(rng: &mut impl rand::Rng, skin: &Skin, placement: &Placement) -> Self {
        let mut vary = |value: f64, spread: f64, quantity: Option<&crate::quantity::Quantity>| {
            let varied = value * libm::exp(spread * normal(rng));
            quantity.map_or(varied, |q| varied.clamp(q.least, q.most))
        };
        World {
            skin: Skin {
                melanin: vary(skin.melanin, spread::MELANIN, Some(&MELANIN)),
                blood: vary(skin.blood, spread::BLOOD, Some(&BLOOD)),
                oxygenation: vary(skin.oxygenation, spread::OXYGENATION, Some(&OXYGENATION)),
                scattering: vary(skin.scattering, spread::SCATTERING, Some(&SCATTERING)),
                background: vary(skin.background, spread::BACKGROUND, Some(&BACKGROUND)),
                ..*skin
            },
            placement: Placement {
                depth_mm: vary(placement.depth_mm, spread::DEPTH, None),
                load: vary(placement.load, spread::LOAD, None),
                ..*placement
            },
        }
    }
}
