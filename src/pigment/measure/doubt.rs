//! Bands whose values the panels hardly determine, and why.

use super::Optics;
use super::fit::{ANGLES, Problem, Spread};
use super::panel::Body;
use super::setup::{Bench, Depth};
use crate::colour::{BANDS, wavelength_nm};
use crate::optics::Lanes;

/// Why values are badly determined.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Doubt {
    /// Every film hides its backing: only the ratio of absorption to scattering is known.
    Opaque,
    /// The film shows its backing as if it were not there.
    Clear,
    /// Absorption is so small that it cannot be told from a little more or less.
    HardlyAbsorbs,
    /// Scattering is so small that it cannot be told from a little more or less.
    HardlyScatters,
    /// Masstone and tint look so much alike that the scale of both values is unknown.
    Alike,
    /// Both values are badly known, for no one reason.
    Both,
    /// The panels contradict one another: no values explain all readings.
    Contradiction,
}

impl Doubt {
    /// In words, with what to do about it.
    pub fn words(self) -> &'static str {
        match self {
            Doubt::Opaque => {
                "the film hides its backing, so only the ratio of absorption to scattering is known: draw it thinner"
            }
            Doubt::Clear => "the film hides nothing, so readings hardly tell its colour: draw it thicker",
            Doubt::HardlyAbsorbs => {
                "it absorbs too little to be measured here; the value is small, and its share of the colour is too"
            }
            Doubt::HardlyScatters => {
                "it scatters so little beside what it absorbs that the reflection of the surface drowns it: read the films with the \
                 gloss trap open (`--surface excluded`)"
            }
            Doubt::Alike => {
                "masstone and tint look too much alike, so that only the ratio of absorption to scattering is known: \
                 use less of the colour in the tint"
            }
            Doubt::Both => "readings hardly depend on either value: draw another film, of another thickness",
            Doubt::Contradiction => {
                "the panels contradict one another: check thickness, backings and whether readings hold the surface reflection"
            }
        }
    }
}

/// Neighbouring bands with one doubt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Doubtful {
    /// First wavelength, in nm.
    pub from_nm: f64,
    /// Last wavelength, in nm.
    pub to_nm: f64,
    /// What is doubtful.
    pub doubt: Doubt,
}

/// Standard deviation of a value's logarithm from which on it counts as badly determined.
const BADLY: f64 = 0.1;
/// Share of the difference between the backings that a film lets through, from which on it counts as hiding them or as clear.
const HIDES: f64 = 0.05;
const CLEAR: f64 = 0.85;
/// Misfit, in standard deviations of a reading, that is no accident.
const CONTRADICTED: f64 = 4.0;

/// Doubts about every band, neighbours with the same doubt taken together. `stated` holds the found values and the error that
/// spreads are stated for; `noise` is that of the readings.
pub(super) fn doubts_of(stated: &Problem<'_>, spread: &Spread, optics: &Optics, noise: f64) -> Vec<Doubtful> {
    let mut doubts: Vec<Doubtful> = Vec::new();
    for band in 0..BANDS {
        let Some(doubt) = doubt_of(stated, spread, optics, band, noise) else { continue };
        let nm = wavelength_nm(band);
        match doubts.last_mut() {
            Some(last) if last.doubt == doubt && nm - last.to_nm < 11.0 => last.to_nm = nm,
            _ => doubts.push(Doubtful { from_nm: nm, to_nm: nm, doubt }),
        }
    }
    doubts
}

fn doubt_of(
    stated: &Problem<'_>,
    spread: &Spread,
    optics: &Optics,
    band: usize,
    noise: f64,
) -> Option<Doubt> {
    let allowed = CONTRADICTED * (noise / stated.noise).max(1.0);
    let panels = stated.panels;
    if (0..panels.len()).any(|panel| stated.misfit_at(panel, band) > allowed) {
        return Some(Doubt::Contradiction);
    }
    let (absorption, scattering) = (spread.absorption[band], spread.scattering[band]);
    if absorption.max(scattering) <= BADLY {
        return None;
    }
    let through: Vec<f64> = panels
        .iter()
        .filter_map(|panel| match panel.body {
            Body::Film { thickness_mm, .. } if panel.tint.is_none() => {
                Some(let_through(stated.bench, optics, band, thickness_mm))
            }
            _ => None,
        })
        .collect();
    let films_only = through.len() == panels.len();
    Some(if films_only && through.iter().all(|share| *share < HIDES) {
        Doubt::Opaque
    } else if films_only && through.iter().all(|share| *share > CLEAR) {
        Doubt::Clear
    } else if absorption > BADLY && scattering > BADLY {
        if panels.iter().any(|panel| panel.tint.is_some()) { Doubt::Alike } else { Doubt::Both }
    } else if absorption > scattering {
        Doubt::HardlyAbsorbs
    } else {
        Doubt::HardlyScatters
    })
}

/// How much of the difference between a white and a black backing is seen through a film.
fn let_through(bench: &Bench<ANGLES>, optics: &Optics, band: usize, thickness_mm: f64) -> f64 {
    let (white, black) = (0.8, 0.0);
    let (absorption, scattering) = (Lanes([optics.absorption[band]]), Lanes([optics.scattering[band]]));
    let over = |thickness, backing| {
        bench.reading(absorption, scattering, Depth::Film(thickness, Lanes([backing]))).0[0]
    };
    (over(thickness_mm, white) - over(thickness_mm, black)) / (over(0.0, white) - over(0.0, black))
}
