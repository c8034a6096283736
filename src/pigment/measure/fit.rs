//! The inverse: optics that explain what was read.
//!
//! Entry point: [`measure`]. Unknown are the logarithms of absorption and reduced scattering in each band.

use super::doubt::{Doubtful, doubts_of};
use super::noise;
use super::panel::{Body, MeasureError, Panel, check};
use super::setup::{Bench, Setup};
use super::{DARKEST_FILM, Optics};
use crate::colour::{BANDS, Spectrum, wavelength_nm};
use crate::optics::Lanes;
use levenberg_marquardt::{LeastSquaresProblem, LevenbergMarquardt};
use nalgebra::{DMatrix, DVector, Dyn, VecStorage};
use std::ops::Range;

/// Optics that were found, and how sure they are.
#[derive(Debug, Clone, PartialEq)]
pub struct Found {
    /// Absorption and reduced scattering, per mm (of the paint as it was measured; of a tint, on its white's scale).
    pub optics: Optics,
    /// How far each value may be off, if readings are.
    pub spread: Spread,
    /// How the values may be off together: independent ways, one standard deviation each. Values that readings do not tell apart
    /// differ in opposite directions, and what they make of skin differs far less.
    pub ways: Vec<Shift>,
    /// Relative error of readings that was taken for the fit, one standard deviation.
    pub noise: f64,
    /// How far the found optics are from explaining the readings.
    pub misfit: Misfit,
    /// Bands whose values are badly determined, and why.
    pub doubts: Vec<Doubtful>,
}

/// Standard deviation of the logarithm of each value (0.1: about 10%), when readings are independently off by 1% or by the noise
/// found in them, whichever is more; 10 stands for "anything". Errors of thickness, backing and refractive index come on top.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread {
    /// Of the absorption.
    pub absorption: Spectrum,
    /// Of the reduced scattering.
    pub scattering: Spectrum,
}

/// By how much the logarithm of each value is off, in one of the ways of [`Found::ways`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shift {
    /// Of the absorption.
    pub absorption: Spectrum,
    /// Of the reduced scattering.
    pub scattering: Spectrum,
}

impl Shift {
    /// Values that are off by this from those found.
    pub fn from(&self, found: &Optics) -> Optics {
        let off = |values: &Spectrum, logs: &Spectrum| {
            std::array::from_fn(|band| values[band] * libm::exp(logs[band]))
        };
        Optics {
            absorption: off(&found.absorption, &self.absorption),
            scattering: off(&found.scattering, &self.scattering),
        }
    }
}

/// Difference between what was read and what the found optics would give.
#[derive(Debug, Clone, PartialEq)]
pub struct Misfit {
    /// Root mean square, as reflectance.
    pub rms: f64,
    /// The worst, as reflectance.
    pub worst: f64,
    /// The panel it is on.
    pub panel: String,
    /// The wavelength it is at.
    pub nm: f64,
}

/// Angles that give the slopes.
pub(super) const ANGLES: usize = 8;
/// Angles that give the values: where a film absorbs strongly, its faint scattering is only right with many.
pub(super) const MANY_ANGLES: usize = 32;
/// Times the values of many angles are put in place of those of few, at most; each time the rest shrinks about tenfold.
const CORRECTIONS: usize = 6;
/// Change of a reading that needs no further correction.
const CORRECTED: f64 = 1e-6;
/// Angles of the coarse search.
const FEW_ANGLES: usize = 4;

/// Bounds of absorption and scattering, per mm, and of their logarithms.
const LOW: f64 = 1e-4;
const HIGH: f64 = 1e4;

/// Standard deviation of the second difference, from band to band, of the logarithm of scattering: of a power law with exponent 4
/// it is 0.0025, and near absorption edges real pigments bend more (representative).
const SCATTERING_BEND: f64 = 0.02;
/// The same of absorption, which may have edges: it binds only bands that tell nothing themselves (representative).
const ABSORPTION_BEND: f64 = 1.0;

/// Standard deviation of a logarithm that stands for "anything".
const ANYTHING: f64 = 10.0;

/// Error of readings for which spreads are stated at least.
pub(super) const READING_ERROR: f64 = 0.01;

/// Optics that explain every panel: least squares over all readings. `noise` is the relative error of a reading (one standard
/// deviation); `None` estimates it from how rough the readings are. The noisier readings are, the more scattering is taken to be
/// smooth; without noise every band stands for itself.
///
/// # Errors
/// [`MeasureError`] when a number is out of bounds, a reading is impossible, or the panels cannot tell absorption from scattering.
pub fn measure(panels: &[Panel], setup: &Setup, noise: Option<f64>) -> Result<Found, MeasureError> {
    check(panels, setup, noise)?;
    let noise = noise.map_or_else(|| noise::estimate(panels), |noise| noise.max(1e-4));
    let (few, bench) = (Bench::<FEW_ANGLES>::new(setup), Bench::<ANGLES>::new(setup));
    let flat = vec![[0.0; BANDS]; panels.len()];
    let mut logs = DVector::zeros(2 * BANDS);
    for band in 0..BANDS {
        let start = coarse(&few, panels, band, noise);
        let alone = Problem {
            bench: &bench,
            panels,
            corrections: &flat,
            bands: band..band + 1,
            noise,
            smooth: false,
            at: start,
        };
        let (solved, _) = LevenbergMarquardt::new().minimize(alone);
        logs[band] = solved.at[0];
        logs[BANDS + band] = solved.at[1];
    }
    let many = Bench::<MANY_ANGLES>::new(setup);
    let mut corrections = corrections_of(&many, &bench, panels, &optics_of(&logs));
    for _ in 0..CORRECTIONS {
        let together = Problem {
            bench: &bench,
            panels,
            corrections: &corrections,
            bands: 0..BANDS,
            noise,
            smooth: true,
            at: logs,
        };
        let (solved, _) = LevenbergMarquardt::new().minimize(together);
        logs = solved.at;
        let next = corrections_of(&many, &bench, panels, &optics_of(&logs));
        let change = corrections.iter().flatten().zip(next.iter().flatten()).map(|(a, b)| (a - b).abs());
        let settled = change.fold(0.0, f64::max) < CORRECTED;
        corrections = next;
        if settled {
            break;
        }
    }
    let optics = optics_of(&logs);
    let stated = Problem {
        bench: &bench,
        panels,
        corrections: &corrections,
        bands: 0..BANDS,
        noise: noise.max(READING_ERROR),
        smooth: true,
        at: logs,
    };
    let (spread, ways) = stated.spread();
    let misfit = stated.misfit();
    let doubts = doubts_of(&stated, &spread, &optics, noise);
    Ok(Found { optics, spread, ways, noise, misfit, doubts })
}

fn optics_of(logs: &DVector<f64>) -> Optics {
    Optics {
        absorption: std::array::from_fn(|band| libm::exp(logs[band])),
        scattering: std::array::from_fn(|band| libm::exp(logs[BANDS + band])),
    }
}

/// What many angles add to the readings of few, for each panel.
fn corrections_of<const M: usize, const N: usize>(
    many: &Bench<M>,
    few: &Bench<N>,
    panels: &[Panel],
    optics: &Optics,
) -> Vec<Spectrum> {
    panels
        .iter()
        .map(|panel| {
            let paint = match &panel.tint {
                None => *optics,
                Some(tint) => tint.mixed(optics),
            };
            let (right, rough) = (many.spectrum(&paint, &panel.body), few.spectrum(&paint, &panel.body));
            std::array::from_fn(|band| right[band] - rough[band])
        })
        .collect()
}

/// Standard deviation of a reading.
fn error_of(reading: f64, noise: f64) -> f64 {
    noise * reading.max(DARKEST_FILM)
}

/// The best of a coarse grid of absorption and scattering in one band, as logarithms.
fn coarse<const N: usize>(bench: &Bench<N>, panels: &[Panel], band: usize, noise: f64) -> DVector<f64> {
    const STEPS: usize = 8;
    // From hardly anything to opaque, in powers of ten of thickness times coefficient; without a film, of the white's scattering.
    let scale = panels
        .iter()
        .find_map(|panel| match (&panel.body, &panel.tint) {
            (Body::Film { thickness_mm, .. }, _) => Some(1.0 / thickness_mm),
            (Body::Opaque, Some(tint)) => Some(tint.white.scattering[band]),
            (Body::Opaque, None) => None,
        })
        .unwrap_or(1.0);
    let ladder: [f64; STEPS] = std::array::from_fn(|step| scale * libm::pow(10.0, -3.25 + 0.7 * step as f64));
    let mut best = (f64::INFINITY, ladder[0], ladder[0]);
    for scattering in ladder {
        let mut sums = Lanes([0.0; STEPS]);
        for panel in panels {
            let (a, s) = mixed(panel, band, Lanes(ladder), Lanes::all(scattering));
            let read = panel.reflectance[band];
            let off = (bench.reading(a, s, bench.depth(&panel.body, [band; STEPS])) - Lanes::all(read))
                * (1.0 / error_of(read, noise));
            sums += off * off;
        }
        for (sum, absorption) in sums.0.into_iter().zip(ladder) {
            if sum < best.0 {
                best = (sum, absorption, scattering);
            }
        }
    }
    DVector::from_vec(vec![libm::log(best.1), libm::log(best.2)])
}

/// Absorption and scattering of a panel's paint, out of those of the paint under test.
fn mixed<const W: usize>(
    panel: &Panel,
    band: usize,
    absorption: Lanes<W>,
    scattering: Lanes<W>,
) -> (Lanes<W>, Lanes<W>) {
    match &panel.tint {
        None => (absorption, scattering),
        Some(tint) => {
            let rest = 1.0 - tint.share;
            (
                absorption * tint.share + Lanes::all(rest * tint.white.absorption[band]),
                scattering * tint.share + Lanes::all(rest * tint.white.scattering[band]),
            )
        }
    }
}

/// Step of the numerical derivative of the logarithms: the errors of the difference and of rounding are both below 1e-7.
const STEP: f64 = 1e-4;

/// Least squares over some bands. `at` holds the logarithm of absorption of each band, then those of scattering.
pub(super) struct Problem<'p> {
    pub bench: &'p Bench<ANGLES>,
    pub panels: &'p [Panel],
    /// Added to the readings of each panel.
    pub corrections: &'p [Spectrum],
    pub bands: Range<usize>,
    pub noise: f64,
    /// Whether the values of neighbouring bands are bound together.
    pub smooth: bool,
    pub at: DVector<f64>,
}

impl Problem<'_> {
    fn count(&self) -> usize {
        self.bands.len()
    }

    /// Bands that have a neighbour on either side.
    fn bends(&self) -> usize {
        if self.smooth { self.count().saturating_sub(2) } else { 0 }
    }

    fn rows(&self) -> usize {
        self.panels.len() * self.count() + 2 * self.bends()
    }

    /// Difference from the reading of one panel in one band, in standard deviations: here, and with absorption and scattering
    /// each a step up and down.
    fn off(&self, number: usize, place: usize) -> Lanes<5> {
        let panel = &self.panels[number];
        let band = self.bands.start + place;
        let (a, s) = (self.at[place], self.at[self.count() + place]);
        let absorption = Lanes([a, a + STEP, a - STEP, a, a].map(libm::exp));
        let scattering = Lanes([s, s, s, s + STEP, s - STEP].map(libm::exp));
        let (absorption, scattering) = mixed(panel, band, absorption, scattering);
        let read = panel.reflectance[band];
        let reading = self.bench.reading(absorption, scattering, self.bench.depth(&panel.body, [band; 5]));
        (reading + Lanes::all(self.corrections[number][band] - read)) * (1.0 / error_of(read, self.noise))
    }

    /// Slope of a panel's reading in one band against the logarithms, in standard deviations.
    fn slope(&self, number: usize, place: usize) -> [f64; 2] {
        let [_, up, down, more, less] = self.off(number, place).0;
        [(up - down) / (2.0 * STEP), (more - less) / (2.0 * STEP)]
    }

    /// Misfit of a panel in one band, in standard deviations.
    pub fn misfit_at(&self, number: usize, place: usize) -> f64 {
        self.off(number, place).0[0].abs()
    }

    /// Rows that bind neighbouring bands: the row, the middle of its three unknowns, and its weight.
    fn bindings(&self) -> impl Iterator<Item = (usize, usize, f64)> {
        let (count, bends, first) = (self.count(), self.bends(), self.panels.len() * self.count());
        (0..bends).flat_map(move |place| {
            [
                (first + place, place + 1, 1.0 / ABSORPTION_BEND),
                (first + bends + place, count + place + 1, 1.0 / SCATTERING_BEND),
            ]
        })
    }

    /// How far each value may be off, and all of them together.
    fn spread(&self) -> (Spread, Vec<Shift>) {
        let slopes = self.slopes();
        let mut precision = slopes.transpose() * slopes;
        // Keeps "anything" finite.
        for i in 0..precision.nrows() {
            precision[(i, i)] += 1.0 / (ANYTHING * ANYTHING);
        }
        let count = precision.nrows();
        let variance = precision
            .cholesky()
            .map_or_else(|| DMatrix::identity(count, count) * (ANYTHING * ANYTHING), |root| root.inverse());
        let of = |i: usize| libm::sqrt(variance[(i, i)].max(0.0)).min(ANYTHING);
        let spread = Spread {
            absorption: std::array::from_fn(of),
            scattering: std::array::from_fn(|band| of(BANDS + band)),
        };
        let root = variance.clone().cholesky().map_or_else(
            || DMatrix::from_fn(count, count, |i, j| if i == j { of(i) } else { 0.0 }),
            |root| root.unpack(),
        );
        let ways = root
            .column_iter()
            .map(|way| Shift {
                absorption: std::array::from_fn(|band| way[band]),
                scattering: std::array::from_fn(|band| way[BANDS + band]),
            })
            .collect();
        (spread, ways)
    }

    fn misfit(&self) -> Misfit {
        let mut sum = 0.0;
        let mut worst = Misfit { rms: 0.0, worst: 0.0, panel: self.panels[0].name.clone(), nm: 400.0 };
        for (number, panel) in self.panels.iter().enumerate() {
            for band in 0..BANDS {
                let off = self.off(number, band).0[0] * error_of(panel.reflectance[band], self.noise);
                sum += off * off;
                if off.abs() > worst.worst {
                    worst = Misfit {
                        rms: 0.0,
                        worst: off.abs(),
                        panel: panel.name.clone(),
                        nm: wavelength_nm(band),
                    };
                }
            }
        }
        worst.rms = libm::sqrt(sum / (self.panels.len() * BANDS) as f64);
        worst
    }

    fn slopes(&self) -> DMatrix<f64> {
        let count = self.count();
        let mut slopes = DMatrix::zeros(self.rows(), 2 * count);
        for p in 0..self.panels.len() {
            for place in 0..count {
                let [absorption, scattering] = self.slope(p, place);
                slopes[(p * count + place, place)] = absorption;
                slopes[(p * count + place, count + place)] = scattering;
            }
        }
        for (row, middle, weight) in self.bindings() {
            slopes[(row, middle - 1)] = weight;
            slopes[(row, middle)] = -2.0 * weight;
            slopes[(row, middle + 1)] = weight;
        }
        slopes
    }
}

impl LeastSquaresProblem<f64, Dyn, Dyn> for Problem<'_> {
    type ParameterStorage = VecStorage<f64, Dyn, nalgebra::U1>;
    type ResidualStorage = VecStorage<f64, Dyn, nalgebra::U1>;
    type JacobianStorage = VecStorage<f64, Dyn, Dyn>;

    fn set_params(&mut self, at: &DVector<f64>) {
        let (low, high) = (libm::log(LOW), libm::log(HIGH));
        self.at = at.map(|log| log.clamp(low, high));
    }

    fn params(&self) -> DVector<f64> {
        self.at.clone()
    }

    fn residuals(&self) -> Option<DVector<f64>> {
        let count = self.count();
        let mut rows = DVector::zeros(self.rows());
        for p in 0..self.panels.len() {
            for place in 0..count {
                rows[p * count + place] = self.off(p, place).0[0];
            }
        }
        for (row, middle, weight) in self.bindings() {
            rows[row] = (self.at[middle - 1] - 2.0 * self.at[middle] + self.at[middle + 1]) * weight;
        }
        Some(rows)
    }

    fn jacobian(&self) -> Option<DMatrix<f64>> {
        Some(self.slopes())
    }
}
