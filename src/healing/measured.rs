//! How far the healed colour of measured paint may be off, since its readings are.

use super::{HEALED_MONTHS, Placement, Scene};
use crate::colour::{Lab, Light, difference};
use crate::pigment::measure::{Found, Optics};
use crate::pigment::{Basis, Fading, Measured, Shelf};
use crate::skin::{Phototype, Redness, Site, Skin, Undertone};

/// The healed colour of one full pass of paint that was measured, and how far it may be off: ΔE00 (D65) within which the true paint
/// would heal in at least 95 of 100 cases, when readings are independently off by 1%, or by the noise found in them. `dose` is as in
/// [`Measured::dose`].
///
/// Seen in the skin where errors of paint count most: light, calm and covered all over, a brow six weeks after a usual placement.
/// To first order in the error: each independent way in which the values may be off moves the colour, and the squares add up.
/// Twice the root holds at least 95%, however many ways there are. Errors of thickness and of the card come on top.
pub fn healed_spread(found: &Found, dose: f64) -> (Lab, f64) {
    let mut shelf = Shelf::default();
    let mut paint_of = |optics: Optics| {
        let fading =
            Fading::Whole { half_life_months: f64::INFINITY, drift_mm: 0.0, restrictions: Vec::new() };
        let measured = Measured { optics, dose, basis: Basis::Measured, note: String::new(), fading };
        shelf.add_measured("measured", "", &measured)
    };
    let paint = paint_of(found.optics);
    let others: Vec<_> = found.ways.iter().map(|way| paint_of(way.from(&found.optics))).collect();
    let skin = Skin::from_evidence(Phototype::I, Undertone::Neutral, Redness::Calm);
    let scene = Scene::new(&shelf, &skin, Site::Brow, &[], HEALED_MONTHS);
    let trial = scene.trial(&Placement { coverage: 1.0, ..Placement::default() });
    let lab = Light::D65.lab_of(&trial.with(&paint));
    let squares: f64 = others
        .iter()
        .map(|other| {
            let off = difference(lab, Light::D65.lab_of(&trial.with(other)));
            off * off
        })
        .sum();
    (lab, 2.0 * libm::sqrt(squares))
}
