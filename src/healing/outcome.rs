//! How sure a foreseen colour is: the region that holds 90% of outcomes when skin, placement and persistence vary.
//!
//! Entry point: [`Outcome::of`]. Steps: make a few hundred worlds that differ from the case as its [`Spread`] says, evenly spread
//! ([`quasi`](super::quasi)), see the colour in each, and put the smallest region of one shape around 90% of them.

use super::Placement;
use super::quasi::normal;
use super::spread::{Deviation, Spread, World};
use crate::colour::{Ellipsoid, Lab, difference, in_a_row};
use crate::parallel::{Cores, map};
use crate::pigment::Shelf;
use crate::quantity::Quantity;
use crate::skin::Skin;
use serde::Serialize;

/// Bounds of how many worlds are seen.
pub const OUTCOME_WORLDS: Quantity = Quantity::new("worlds", "", 16.0, 16_384.0);
/// Worlds seen unless another number is asked for. In trials, regions from 256 worlds held
/// 88% to 94% of 20,000 independent ones.
pub const DEFAULT_WORLDS: u32 = 256;
/// Share of outcomes in the region.
pub const SHARE: f64 = 0.9;

/// Numbers that vary before the colourants' own half-lives: six of skin, depth, load, persistence.
const COMMON: u32 = 9;

/// Which worlds are seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Worlds {
    /// How many, within [`OUTCOME_WORLDS`]; powers of two are spread most evenly.
    pub count: u32,
    /// Another seed gives other worlds.
    pub seed: u32,
    /// On how many cores; the result is the same.
    pub cores: Cores,
}

impl Default for Worlds {
    fn default() -> Self {
        Worlds { count: DEFAULT_WORLDS, seed: 0, cores: Cores::All }
    }
}

/// Where the colour will likely be.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Outcome {
    /// Share of outcomes in the region, 0 to 1: 0.9.
    pub share: f64,
    /// Worlds seen.
    pub worlds: u32,
    /// The region in CIELAB. Its centre is the mean of the worlds, which need not be the expected colour: fading and depth work
    /// more strongly one way than the other.
    pub region: Ellipsoid,
    /// ΔE00 from the expected colour that holds the same share of the worlds.
    pub within_delta_e_2000: f64,
    /// What was varied, and how much.
    pub spread: Spread,
    /// "likely within 3 ΔE00 of the expected colour; most in doubt: lighter or deeper".
    pub words: String,
}

/// A case whose outcome is asked for.
#[derive(Debug, Clone, Copy)]
pub struct Case<'c> {
    /// Colourants and bottles.
    pub shelf: &'c Shelf,
    /// The client's skin.
    pub skin: &'c Skin,
    /// Where the new work lies.
    pub placement: &'c Placement,
    /// Places on the shelf of the colourants in the case, new and old; each has a half-life of its own to be wrong about.
    pub colourants: &'c [usize],
}

impl Outcome {
    /// The outcome of a case whose expected colour is known. `see` gives the colour in a world; the shelf it is given has that
    /// world's half-lives.
    pub fn of(
        case: &Case,
        spread: &Spread,
        worlds: Worlds,
        expected: Lab,
        see: impl Fn(&Shelf, &World) -> Lab + Sync + Send,
    ) -> Self {
        let cloud = Outcome::cloud(case, spread, worlds, see);
        let region = Ellipsoid::around(&cloud, SHARE);
        let mut distances: Vec<f64> = cloud.iter().map(|&lab| difference(lab, expected)).collect();
        distances.sort_by(f64::total_cmp);
        let inside = libm::ceil(SHARE * cloud.len() as f64) as usize;
        let within_delta_e_2000 = distances[inside.clamp(1, cloud.len()) - 1];
        let words = words(within_delta_e_2000, &region);
        Outcome {
            share: SHARE,
            worlds: cloud.len() as u32,
            region,
            within_delta_e_2000,
            spread: *spread,
            words,
        }
    }

    /// The colours in the worlds themselves, at least one.
    pub fn cloud(
        case: &Case,
        spread: &Spread,
        worlds: Worlds,
        see: impl Fn(&Shelf, &World) -> Lab + Sync + Send,
    ) -> Vec<Lab> {
        let points: Vec<u32> = (0..worlds.count.max(1)).collect();
        map(
            worlds.cores,
            &points,
            || case.shelf.clone(),
            |shelf, &point| {
                let number = |dimension| normal(point, dimension, worlds.seed);
                let deviation = Deviation {
                    skin: std::array::from_fn(|i| number(i as u32)),
                    depth: number(6),
                    load: number(7),
                };
                let persistence = libm::exp(spread.persistence * number(8));
                for (dimension, &place) in (COMMON..).zip(case.colourants) {
                    let own = libm::exp(spread.half_life * number(dimension));
                    shelf.colourants[place].half_life_months =
                        case.shelf.colourants[place].half_life_months * (persistence * own);
                }
                see(shelf, &World::at(spread, &deviation, case.skin, case.placement))
            },
        )
    }
}

/// Below this, in ΔE00, there is no doubt to speak of: rounding.
const NOTHING: f64 = 1e-9;

fn words(within: f64, region: &Ellipsoid) -> String {
    if within < NOTHING {
        return "as expected: nothing varies".to_owned();
    }
    let senses = region.main_senses();
    let one: Vec<&str> = senses.iter().map(|sense| sense.comparative()).collect();
    let other: Vec<&str> = senses.iter().map(|sense| sense.opposite().comparative()).collect();
    let comma = if senses.len() > 1 { "," } else { "" };
    format!(
        "likely within {} ΔE00 of the expected colour; most in doubt: {}{comma} or {}",
        libm::ceil(within),
        in_a_row(&one),
        in_a_row(&other)
    )
}
