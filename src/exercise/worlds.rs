//! Worlds: the same case with skin, depth and load a little different, to see whether an answer still holds.

use super::draw::Setting;
use super::seed::{normal, stream};
use crate::healing::{Deviation, Scene, Spread, Work, World};
use crate::pigment::Shelf;

/// Worlds tried for each exercise.
pub const WORLDS: u32 = 200;
/// Share of worlds in which the key must hold.
pub const NEEDED_SHARE: f64 = 0.95;

/// The worlds of one draw: the name of their stream and, where they were tried before, how many held.
pub(super) struct Named<'w> {
    /// Words that name the stream.
    pub words: [&'w str; 4],
    /// Of all worlds, how many were found to hold.
    pub held: Option<u32>,
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
    while tried < WORLDS {
        let mut number = || normal(&mut rng);
        // Vessels do not vary where skin is seen: their deviation counts for nothing.
        let skin = [number(), number(), number(), number(), number(), 0.0];
        let deviation = Deviation { skin, depth: number(), load: number() };
        let world = World::at(&Spread::SEEN, &deviation, &setting.client.skin, &setting.placement);
        if holds(&world) {
            held += 1;
        } else if tried - held == may_fail {
            // One failure too many: this world does not count as tried, so that fewer than all always means that the key does not hold.
            break;
        }
        tried += 1;
    }
    (tried, held)
}

/// The scene of a setting in a world, with this existing work.
pub(super) fn scene_in<'s>(
    world: &World,
    shelf: &'s Shelf,
    setting: &Setting,
    existing: &[Work],
) -> Scene<'s> {
    Scene::new(shelf, &world.skin, setting.client.site, existing, setting.months)
}
