//! Worlds: the same case with skin, depth and load a little different, to see whether an answer still holds.

use super::draw::Setting;
use super::seed::{normal, stream};
use crate::healing::{Deviation, Scene, Spread, Work, World};
use crate::pigment::Shelf;

/// Worlds tried for each exercise.
pub const WORLDS: u32 = 200;
/// Share of worlds in which the key must hold.
pub const NEEDED_SHARE: f64 = 0.95;
/// How much wider than the stated spread the worlds of a proof lie. At the stated spread a key that holds in 190 of 200 worlds may hold in
/// 185 of 200 others, and about one exercise in forty did. What fails in 5% of worlds one and a half times as far away lies 1.64 of their
/// standard deviations off, hence 2.47 of the stated ones, and fails in 0.7% of those: so it holds in 95% of any 200 of them, but for one case in
/// millions. Were shares of failure evenly spread, one exercise in 7,500 would fall below 95% in other worlds (one in 260 at a factor of 1.3, in
/// 1,300 at 1.4, in 6 at 1); to ask for 200 of 200 at the stated spread would throw away more draws, and leave one in 2,300 (normal
/// distribution and binomial).
const WIDENED: f64 = 1.5;

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
    let may_fail = WORLDS - libm::ceil(NEEDED_SHARE * f64::from(WORLDS)) as u32;
    let (mut tried, mut held) = (0, 0);
    for deviation in deviations(setting.seed, &worlds.words) {
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

/// The worlds of a stream, farthest first: those fail most, and a key that cannot hold is found out soonest. How many of all hold does
/// not depend on their order.
fn deviations(seed: u64, words: &[&str]) -> Vec<Deviation> {
    let mut rng = stream(seed, words);
    let mut worlds: Vec<(f64, Deviation)> = (0..WORLDS)
        .map(|_| {
            let mut number = || WIDENED * normal(&mut rng);
            // Vessels do not vary where skin is seen: their deviation counts for nothing.
            let skin = [number(), number(), number(), number(), number(), 0.0];
            let deviation = Deviation { skin, depth: number(), load: number() };
            let far: f64 =
                skin.iter().chain([&deviation.depth, &deviation.load]).map(|number| number * number).sum();
            (far, deviation)
        })
        .collect();
    worlds.sort_by(|(one, _), (other, _)| other.total_cmp(one));
    worlds.into_iter().map(|(_, deviation)| deviation).collect()
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
