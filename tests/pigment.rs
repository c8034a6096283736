//! Bottles from measurements: optics that are put into drawdowns come out of them again, noise is owned up to, and what is written
//! is what a course reads.

mod command;
mod physics;

use healedhue::colour::Spectrum;
use healedhue::pigment::measure::{Body, Optics, Panel, Setup, drawdown, film_reflectance};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha12Rng;

/// Angles of simulated drawdowns. The inversion has 32 for values and 8 for slopes.
const ANGLES: usize = 24;

/// Readings of bare cards, surface reflection included: white with the yellow of paper, black with little more than its surface.
fn cards() -> (Spectrum, Spectrum) {
    (std::array::from_fn(|band| 0.74 + 0.13 * band as f64 / 30.0), [0.05; 31])
}

/// Panels of films of this paint, simulated.
fn films(truth: &Optics, thicknesses: &[f64], setup: &Setup) -> Vec<Panel> {
    let trapped = setup.specular() - setup.gloss();
    let (white, black) = cards();
    let (white, black) = (white.map(|r| r - trapped), black.map(|r| r - trapped));
    let read = |thickness_mm: f64, backing: Spectrum| {
        film_reflectance::<ANGLES>(truth, &Body::Film { thickness_mm, backing }, setup)
    };
    thicknesses
        .iter()
        .flat_map(|&mm| drawdown(mm, read(mm, white), read(mm, black), white, black).expect("possible films"))
        .collect()
}

/// Each reading off by 1% of itself: normal deviates (twelve uniform ones, less six), independent from band to band and panel to
/// panel, from a seeded stream.
fn noisy(panels: &[Panel], seed: u64) -> Vec<Panel> {
    let mut rng = ChaCha12Rng::seed_from_u64(seed);
    let mut panels = panels.to_vec();
    for panel in &mut panels {
        for reading in &mut panel.reflectance {
            let deviate = (0..12).map(|_| rng.random::<f64>()).sum::<f64>() - 6.0;
            *reading = (*reading * (1.0 + 0.01 * deviate)).clamp(0.0, 1.0);
        }
    }
    panels
}

/// Relative error of each found value.
fn errors(found: &Spectrum, truth: &Spectrum) -> Vec<f64> {
    found.iter().zip(truth).map(|(found, truth)| (found / truth - 1.0).abs()).collect()
}

fn worst(errors: &[f64]) -> f64 {
    errors.iter().copied().fold(0.0, f64::max)
}

/// Optics of a colourant of the demo shelf, as dried paint: ten times as dense as where a full pass of amount 1 lies.
fn dried(colourant: &healedhue::pigment::Colourant) -> Optics {
    Optics {
        absorption: colourant.absorption.map(|value| value * 10.0),
        scattering: colourant.scattering.map(|value| value * 10.0),
    }
}
