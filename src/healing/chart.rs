//! Healed colours of very many mixes, nearly: read off charts into which a few made-up paints are drawn.
//!
//! Entry point: [`Chart::new`]. What a mix does in one band hangs on how much it absorbs and how much it scatters there, and a little on
//! how far what does so has wandered down. All of that adds up from what is in the mix; so one sheet for each band, over absorption and
//! scattering, holds every mix, whatever lies in the skin. It is drawn from paints of chosen absorption and scattering, solved like any
//! other, and read by Chebyshev polynomials. Smaller sheets hold what changes when all that absorbs, half of it, or all that scatters has
//! wandered as far as anything has; a mix has its share of that.

use super::Trial;
use super::layers::{Deposit, Tint};
use crate::colour::{BANDS, Spectrum};
use crate::optics::{GROUPS, Lanes, Packed, WIDTH, pack, unpack};
use crate::pigment::{Colourant, Paint};
use std::f64::consts::PI;

/// Points along each axis of a sheet.
const FINE: usize = 8;
/// The same of the sheets of what wanders.
const COARSE: usize = 5;
/// What wanders: shares of all that absorbs and of all that scatters.
const WAYS: [[f64; 2]; 3] = [[1.0, 0.0], [0.5, 0.0], [0.0, 1.0]];
/// Share of what wandering changes that the less good reading counts: the sheets of it are about that good.
const ROUGHLY: f64 = 0.9;
/// Share of what is placed that must not be shed.
const LEAST_KEPT: f64 = 0.8;
/// Half the length of an axis along which nothing differs.
const NO_LENGTH: f64 = 1e-9;

/// A few bands side by side.
type Bands = Lanes<WIDTH>;

/// What all that can be mixed from some paints heals to, nearly.
pub struct Chart {
    /// By place on the shelf.
    dyes: Vec<Dye>,
    /// Absorption, scattering.
    axes: [Axis; 2],
    /// Roots of reflectance where nothing has wandered.
    still: Sheet<FINE>,
    /// What is added to them, by [`WAYS`].
    moved: [Sheet<COARSE>; 3],
}

/// What is left of an amount of 1 of a colourant.
struct Dye {
    /// Absorption, scattering.
    strength: [Packed; 2],
    /// How far it has wandered, as a share of the farthest; in a chart, what that does as a share of what the farthest does.
    wandered: f64,
}

/// What a paint comes to: absorption, scattering.
struct Content {
    strength: [Packed; 2],
    /// The same, each part times the share of the way that it has wandered.
    wandered: [Packed; 2],
}

/// A range of strengths, bent so that colours change evenly along it.
struct Axis {
    /// The strength in the middle of all there could be.
    bend: Packed,
    centre: Packed,
    half: Packed,
}

/// Coefficients of a polynomial in two variables, by group of bands.
struct Sheet<const N: usize>(Vec<[[Bands; N]; N]>);

impl Chart {
    /// Healed colours that drawing the sheets takes.
    pub const SOLVED: usize = FINE * FINE + (1 + WAYS.len()) * COARSE * COARSE;

    /// The chart for all mixes of these paints in this place: each absorbs and scatters as the mean of what is in it, hence within what
    /// the paints themselves do. `None` where most of what is placed is shed: what is left hangs on how far it has
    /// wandered more than on how much there was.
    pub fn new<const N: usize>(trial: &Trial<N>, paints: &[&Paint]) -> Option<Self> {
        let laid = trial.laid();
        let kept = laid.kept(0.0);
        if kept < LEAST_KEPT {
            return None;
        }
        let (mut dyes, farthest) = dyes(trial, paints);
        let (mut least, mut most) = ([[f64::INFINITY; BANDS]; 2], [[0.0_f64; BANDS]; 2]);
        for paint in paints {
            let strength = Content::of(&dyes, paint).strength.map(|strength| unpack(&strength));
            for (axis, strength) in strength.iter().enumerate() {
                for (band, strength) in strength.iter().enumerate() {
                    least[axis][band] = least[axis][band].min(*strength);
                    most[axis][band] = most[axis][band].max(*strength);
                }
            }
        }
        let skin = trial.skin();
        let axes = [0, 1].map(|axis| Axis::new(&least[axis], &most[axis], &skin[axis]));
        let root =
            |[absorption, scattering]: [&Spectrum; 2], wandered: [f64; 2], drift_mm: f64| -> Spectrum {
                let none = [0.0; BANDS];
                let tints = [Tint::new(absorption, &none), Tint::new(&none, scattering)];
                let laid = trial.laid();
                let mut deposits: Vec<Deposit> = Vec::new();
                for (tint, share) in tints.iter().zip(wandered) {
                    laid.lay(&mut deposits, tint, 1.0 - share, 0.0);
                    laid.lay(&mut deposits, tint, share * (kept / laid.kept(drift_mm)), drift_mm);
                }
                trial.seen(&deposits).map(|reflectance| reflectance.max(0.0).sqrt())
            };
        let moved = |strengths: [&Spectrum; 2], still: &Spectrum, wandered, drift_mm| -> Spectrum {
            let root = root(strengths, wandered, drift_mm);
            std::array::from_fn(|band| root[band] - still[band])
        };
        let [still] = Sheet::drawn(&axes, |strengths| [root(strengths, [0.0; 2], 0.0)]);
        let sheets = Sheet::drawn(&axes, |strengths| {
            let still = root(strengths, [0.0; 2], 0.0);
            WAYS.map(|way| moved(strengths, &still, way, farthest))
        });
        // The first part of a way does more than the last: what has gone a part counts as what it does, in the middle of the sheets.
        let middle = [&axes[0].strength(0.0), &axes[1].strength(0.0)];
        let bare = root(middle, [0.0; 2], 0.0);
        let whole = moved(middle, &bare, WAYS[0], farthest);
        for dye in dyes.iter_mut().filter(|dye| dye.wandered > 0.0 && dye.wandered < 1.0) {
            let part = moved(middle, &bare, WAYS[0], dye.wandered * farthest);
            dye.wandered = along(&part, &whole);
        }
        Some(Chart { dyes, axes, still, moved: sheets })
    }

    /// About the reflectance with one of the mixes; and the same read less well: how far apart they are tells how good it is.
    pub fn read(&self, paint: &Paint) -> [Spectrum; 2] {
        let content = Content::of(&self.dyes, paint);
        let mut read = [[Bands::ZERO; GROUPS]; 2];
        for group in 0..GROUPS {
            let [x, y] = [0, 1]
                .map(|axis| orders::<FINE>(self.axes[axis].place(content.strength[axis][group], group)));
            let [absorbs, scatters] = [0, 1].map(|axis| content.share_wandered(axis, group));
            // The parabola through none, half and all of what absorbs.
            let all = absorbs * (absorbs * 2.0 - Bands::ONE);
            let shares = [all, absorbs * (Bands::ONE - absorbs) * 4.0, scatters];
            let mut moved = Bands::ZERO;
            for (sheet, share) in self.moved.iter().zip(shares) {
                moved += sheet.at(group, &x, &y)[0] * share;
            }
            let [fine, rough] = self.still.at(group, &x, &y);
            for (read, root) in read.iter_mut().zip([fine + moved, rough + moved * ROUGHLY]) {
                let root = Lanes(root.0.map(|root| root.max(0.0)));
                read[group] = root * root;
            }
        }
        read.map(|read| unpack(&read))
    }
}

/// How often one spectrum goes into another.
fn along(part: &Spectrum, whole: &Spectrum) -> f64 {
    let dot = |other: &Spectrum| whole.iter().zip(other).map(|(one, other)| one * other).sum::<f64>();
    if dot(whole) > 0.0 { dot(part) / dot(whole) } else { 0.0 }
}

/// What each colourant does, and how far the farthest of those in these paints has wandered, in mm.
fn dyes<const N: usize>(trial: &Trial<N>, paints: &[&Paint]) -> (Vec<Dye>, f64) {
    let colourants = &trial.shelf().colourants;
    let laid = trial.laid();
    // What has wandered out of the epidermis is not shed with it.
    let left = |colourant| {
        let (amount, drift_mm) = trial.left(colourant);
        (amount * (laid.kept(drift_mm) / laid.kept(0.0)), drift_mm)
    };
    let left: Vec<(f64, f64)> = colourants.iter().map(left).collect();
    let used = paints.iter().flat_map(|paint| paint.iter());
    let farthest = used.fold(0.0_f64, |most, &(place, _)| most.max(left[place].1));
    let dye = |(colourant, &(amount, drift)): (&Colourant, &(f64, f64))| Dye {
        strength: [&colourant.absorption, &colourant.scattering].map(|own| pack(&own.map(|of| of * amount))),
        wandered: if farthest > 0.0 { drift / farthest } else { 0.0 },
    };
    (colourants.iter().zip(&left).map(dye).collect(), farthest)
}

impl Content {
    fn of(dyes: &[Dye], paint: &Paint) -> Self {
        let mut content =
            Content { strength: [[Bands::ZERO; GROUPS]; 2], wandered: [[Bands::ZERO; GROUPS]; 2] };
        for &(place, amount) in paint {
            let dye = &dyes[place];
            for axis in 0..2 {
                for group in 0..GROUPS {
                    let part = dye.strength[axis][group] * amount;
                    content.strength[axis][group] += part;
                    content.wandered[axis][group] += part * dye.wandered;
                }
            }
        }
        content
    }

    fn share_wandered(&self, axis: usize, group: usize) -> Bands {
        let (part, whole) = (self.wandered[axis][group], self.strength[axis][group]);
        Lanes(std::array::from_fn(
            |lane| if whole.0[lane] > 0.0 { part.0[lane] / whole.0[lane] } else { 0.0 },
        ))
    }
}

impl Axis {
    /// From the least strength to the most, in a skin that has this much of its own.
    fn new(least: &Spectrum, most: &Spectrum, skin: &Spectrum) -> Self {
        let bend: Spectrum =
            std::array::from_fn(|band| ((least[band] + skin[band]) * (most[band] + skin[band])).sqrt());
        let ends = [least, most].map(|end| -> Spectrum {
            std::array::from_fn(|band| (end[band] - bend[band]) / (end[band] + bend[band]))
        });
        let centre: Spectrum = std::array::from_fn(|band| 0.5 * (ends[0][band] + ends[1][band]));
        let half: Spectrum =
            std::array::from_fn(|band| (0.5 * (ends[1][band] - ends[0][band])).max(NO_LENGTH));
        Axis { bend: pack(&bend), centre: pack(&centre), half: pack(&half) }
    }

    /// Where a strength lies, -1 to 1.
    fn place(&self, strength: Bands, group: usize) -> Bands {
        let bend = self.bend[group];
        ((strength - bend) / (strength + bend) - self.centre[group]) / self.half[group]
    }

    /// The strength at a place.
    fn strength(&self, place: f64) -> Spectrum {
        unpack(&std::array::from_fn(|group| {
            let bent = self.centre[group] + self.half[group] * place;
            let strength = self.bend[group] * ((Bands::ONE + bent) / (Bands::ONE - bent));
            Lanes(strength.0.map(|strength| strength.max(0.0)))
        }))
    }
}

impl<const N: usize> Sheet<N> {
    /// Sheets through the values at the points of Gauss and Chebyshev.
    fn drawn<const K: usize>(
        axes: &[Axis; 2],
        values: impl Fn([&Spectrum; 2]) -> [Spectrum; K],
    ) -> [Self; K] {
        let wave = |order: usize, at: usize| libm::cos(PI * order as f64 * (at as f64 + 0.5) / N as f64);
        let [across, up]: [[Spectrum; N]; 2] =
            [0, 1].map(|axis: usize| std::array::from_fn(|at| axes[axis].strength(wave(1, at))));
        let shares: [[f64; N]; N] = std::array::from_fn(|order| {
            std::array::from_fn(|at| if order == 0 { 1.0 } else { 2.0 * wave(order, at) } / N as f64)
        });
        let mut sheets: [Self; K] = std::array::from_fn(|_| Sheet(vec![[[Bands::ZERO; N]; N]; GROUPS]));
        for (i, absorption) in across.iter().enumerate() {
            for (j, scattering) in up.iter().enumerate() {
                for (sheet, value) in sheets.iter_mut().zip(values([absorption, scattering])) {
                    for (coefficients, value) in sheet.0.iter_mut().zip(pack(&value)) {
                        for (row, along) in coefficients.iter_mut().zip(&shares) {
                            for (coefficient, upwards) in row.iter_mut().zip(&shares) {
                                *coefficient += value * (along[i] * upwards[j]);
                            }
                        }
                    }
                }
            }
        }
        sheets
    }

    /// The value where the polynomials have these values, and what it would be without the highest orders.
    fn at<const M: usize>(&self, group: usize, x: &[Bands; M], y: &[Bands; M]) -> [Bands; 2] {
        let (mut sum, mut rough) = (Bands::ZERO, Bands::ZERO);
        for (order, (row, x)) in self.0[group].iter().zip(x).enumerate() {
            let mut of_row = Bands::ZERO;
            for (coefficient, y) in row[..N - 1].iter().zip(y) {
                of_row += *coefficient * *y;
            }
            if order < N - 1 {
                rough += of_row * *x;
            }
            sum += (of_row + row[N - 1] * y[N - 1]) * *x;
        }
        [sum, rough]
    }
}

/// The Chebyshev polynomials of the first orders.
fn orders<const N: usize>(x: Bands) -> [Bands; N] {
    let mut orders = [Bands::ONE; N];
    orders[1] = x;
    for order in 2..N {
        orders[order] = x * orders[order - 1] * 2.0 - orders[order - 2];
    }
    orders
}
