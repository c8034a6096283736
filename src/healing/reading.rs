//! A healed colour in words, relative to the client's skin.

use super::Tone;
use crate::colour::Lab;
use crate::skin::Site;
use serde::Serialize;

/// A healed colour in words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Reading {
    /// How much lighter or deeper than the skin; at a place with an edge, than that place without work.
    pub depth: &'static str,
    /// The tone.
    pub tone: Tone,
    /// Both in one phrase: "deeper than the skin, neutral brown". In English, unless an exercise or a page says it in a course's language.
    pub words: String,
}

/// Every depth, deepest first, with the least L* that the skin has above the work; beside the skin, and beside the places that have an edge.
const DEPTHS: [(f64, [&str; 3]); 7] = [
    (
        25.0,
        ["far deeper than the skin", "far deeper than the bare lip", "far deeper than the bare skin there"],
    ),
    (
        12.0,
        [
            "much deeper than the skin",
            "much deeper than the bare lip",
            "much deeper than the bare skin there",
        ],
    ),
    (5.0, ["deeper than the skin", "deeper than the bare lip", "deeper than the bare skin there"]),
    (
        1.5,
        [
            "a little deeper than the skin",
            "a little deeper than the bare lip",
            "a little deeper than the bare skin there",
        ],
    ),
    (-1.5, ["as light as the skin", "as light as the bare lip", "as light as the bare skin there"]),
    (
        -5.0,
        [
            "a little lighter than the skin",
            "a little lighter than the bare lip",
            "a little lighter than the bare skin there",
        ],
    ),
    (
        f64::NEG_INFINITY,
        ["lighter than the skin", "lighter than the bare lip", "lighter than the bare skin there"],
    ),
];

impl Reading {
    /// Reads `work` at a site that looks like `bare` without it, both under the same light.
    pub fn of(work: Lab, bare: Lab, site: Site) -> Self {
        let difference = bare.l - work.l;
        // As light as the skin is both ends of its range.
        let is_so = |least: f64| if least < 0.0 { difference >= least } else { difference > least };
        let place = DEPTHS.iter().position(|(least, _)| is_so(*least)).unwrap_or(DEPTHS.len() - 1);
        let depth = Reading::depths(site)[place];
        let tone = Tone::at(site, work, bare);
        let words = format!("{depth}, {}", tone.word());
        Reading { depth, tone, words }
    }

    /// Every depth that work may be read at on a site, deepest first.
    pub fn depths(site: Site) -> [&'static str; 7] {
        let beside = match site {
            Site::Brow | Site::Eyelid | Site::Scalp => 0,
            Site::Lip => 1,
            Site::Areola => 2,
        };
        DEPTHS.map(|(_, words)| words[beside])
    }
}
