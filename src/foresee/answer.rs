//! The answer: what is seen, in numbers and in words.

use super::{SearchAnswer, Task};
use crate::colour::{Lab, Spectrum};
use crate::healing::{Outcome, Reading};
use crate::pigment::Shelf;
use serde::Serialize;

/// What is foreseen.
#[derive(Debug, Clone, Serialize)]
pub struct Answer {
    /// 400 to 700 nm by 10 nm, 0 to 1, surface reflection included.
    pub reflectance: Spectrum,
    /// X, Y, Z; Y of white is 100.
    pub xyz: [f64; 3],
    /// L*, a*, b*.
    pub lab: [f64; 3],
    /// Red, green, blue, 0 to 255.
    pub srgb: [u8; 3],
    /// Whether sRGB can show the colour.
    pub in_gamut: bool,
    /// L*, a*, b* of the skin without any work.
    pub bare_skin_lab: [f64; 3],
    /// The colour in words, relative to the bare skin.
    pub reading: Reading,
    /// Restrictions of what is in the mix.
    pub warnings: Vec<String>,
    /// Where the colour will likely be.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub outcome: Option<Outcome>,
    /// What the search found.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub search: Option<SearchAnswer>,
}

impl Answer {
    /// Solves a task. Where mixes are searched for and none is given, the answer is about the best one.
    pub fn of(shelf: &Shelf, task: &Task) -> Self {
        let found = task.found(shelf);
        let task = &task.with_best(found.as_ref());
        let (bare, seen) = task.at(shelf, task.months);
        let triple = |lab: Lab| [lab.l, lab.a, lab.b];
        Answer {
            reflectance: seen.reflectance,
            xyz: [seen.xyz.x, seen.xyz.y, seen.xyz.z],
            lab: triple(seen.lab),
            srgb: [seen.srgb.r, seen.srgb.g, seen.srgb.b],
            in_gamut: seen.srgb.in_gamut,
            bare_skin_lab: triple(bare.lab),
            reading: Reading::of(seen.lab, bare.lab, task.site),
            warnings: task.warnings(shelf),
            outcome: task.outcome(shelf, seen.lab),
            search: found.as_ref().map(|found| SearchAnswer::of(shelf, found, task.site)),
        }
    }
}
