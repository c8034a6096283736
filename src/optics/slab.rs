//! One homogeneous layer: its reflection and transmission, by doubling.

use super::{Lanes, Scatter, Square};

/// Reflection and transmission of a layer without surfaces, symmetric in the field y of [`Scatter`]; both sides are alike.
#[derive(Debug, Clone, Copy)]
pub struct Slab<const N: usize, const W: usize> {
    /// Reflection.
    pub reflection: Square<N, W>,
    /// Transmission.
    pub transmission: Square<N, W>,
}

/// Optical depth from which on a layer counts as infinitely thick: even of a medium that does not absorb, with an anisotropy of 0.8,
/// two thousandths of the light come through.
const ENDLESS: f64 = 4096.0;
/// Optical depth along the grazing direction up to which a layer counts as thin: the formula for tanh is exact to 1e-5 there, and much
/// better for other light.
const THIN: f64 = 3.5;
/// Where tanh counts as 1 in an endless depth: it is 1 to ten digits.
const MET: f64 = 12.0;

/// H and K of a layer: for equal light from both sides v = H·u at the top, for opposite light u = K·v. They follow tanh of the
/// thickness, which doubles as H' = 2(1 + HK)⁻¹H, K' = 2(1 + KH)⁻¹K, without the cancellation of transmission.
struct Halves<const N: usize, const W: usize> {
    h: Square<N, W>,
    k: Square<N, W>,
}

impl<const N: usize, const W: usize> Slab<N, W> {
    /// A layer of this absorption times thickness and scattering times thickness, both at least 0.
    pub fn new(scatter: &Scatter<N>, absorbing: Lanes<W>, scattering: Lanes<W>) -> Self {
        let mut doublings = 0;
        let mut share = 1.0;
        let most = (absorbing + scattering * scatter.kept).greatest() / scatter.grazing;
        while most * share > THIN {
            share *= 0.5;
            doublings += 1;
        }
        let mut slab = Slab { reflection: Square::ZERO, transmission: Square::ZERO };
        by_pairs(absorbing * share, scattering * share, |absorbing, scattering, lanes| {
            let part = Halves::thin(scatter, absorbing, scattering).doubled(doublings).into_slab();
            slab.reflection.put(&part.reflection, lanes);
            slab.transmission.put(&part.transmission, lanes);
        });
        slab
    }

    /// Reflection of an endless depth of a medium with this absorption and scattering (in any one unit of length).
    ///
    /// H and 1/K of ever thicker layers are the harmonic and the arithmetic mean of the ones before, hence meet in the geometric mean of
    /// the first two. That is the same for F and 1/E in any unit of length, so that no thin layer is needed to start from: the unit is
    /// chosen so that what reaches deepest and what reaches least deep meet after equally many steps.
    pub fn half_space(scatter: &Scatter<N>, absorption: Lanes<W>, scattering: Lanes<W>) -> Square<N, W> {
        let extinction = absorption + scattering * scatter.kept;
        let most = 1.0 / scatter.grazing;
        let (mut share, mut farthest) = (Lanes::ZERO, 0.0_f64);
        for lane in 0..W {
            // Decay per optical depth: at least this for the light that reaches deepest, at most `most` for grazing light.
            let absorbed = absorption.0[lane] / extinction.0[lane];
            let least =
                libm::sqrt(absorbed * (absorbed + (1.0 - absorbed) * scatter.turned)).max(MET / ENDLESS);
            share.0[lane] = 2.0 / (extinction.0[lane] * libm::sqrt(least * most));
            farthest = farthest.max(MET * libm::sqrt(most / least));
        }
        let mut doublings = 0;
        let mut steps = 1.0;
        while steps < farthest {
            steps *= 2.0;
            doublings += 1;
        }
        let mut reflection = Square::ZERO;
        by_pairs(absorption * share, scattering * share, |absorbing, scattering, lanes| {
            let part = Halves::of_rates(scatter, absorbing, scattering).doubled(doublings).into_slab();
            reflection.put(&part.reflection, lanes);
        });
        reflection
    }
}

/// Calls `solve` with two lanes after the other, and where they stand: a matrix of four directions and two lanes is what the
/// registers of every processor hold, and each lane's numbers do not depend on its neighbours. An odd last lane comes doubled.
#[inline(always)]
fn by_pairs<const W: usize>(
    absorbing: Lanes<W>,
    scattering: Lanes<W>,
    mut solve: impl FnMut(Lanes<2>, Lanes<2>, [usize; 2]),
) {
    for first in (0..W).step_by(2) {
        let lanes = [first, (first + 1).min(W - 1)];
        solve(Lanes(lanes.map(|lane| absorbing.0[lane])), Lanes(lanes.map(|lane| scattering.0[lane])), lanes);
    }
}

impl<const N: usize, const W: usize> Halves<N, W> {
    /// F and E of half a layer: H and K of one without any thickness to speak of.
    #[inline(always)]
    fn of_rates(scatter: &Scatter<N>, absorbing: Lanes<W>, scattering: Lanes<W>) -> Self {
        let (mut h, mut k) = (Square::ZERO, Square::ZERO);
        for i in 0..N {
            for j in 0..N {
                k.0[i][j] = scattering * (0.5 * scatter.odd[i][j]);
                h.0[i][j] = scattering * (0.5 * scatter.even[i][j]);
            }
            k.0[i][i] += absorbing * (0.5 * scatter.slant[i]);
            h.0[i][i] += absorbing * (0.5 * scatter.slant[i]);
        }
        Halves { h, k }
    }

    /// A layer so thin that tanh(x) = x(945 + 105x² + x⁴)/(945 + 420x² + 15x⁴), the start of its continued fraction, is exact enough.
    #[inline(always)]
    fn thin(scatter: &Scatter<N>, absorbing: Lanes<W>, scattering: Lanes<W>) -> Self {
        let Halves { h: f, k: e } = Halves::of_rates(scatter, absorbing, scattering);
        // With x² = F·E for H, and its transposed E·F for K.
        let square = f.times(&e);
        let fourth = square.times(&square);
        let above = square.blend(105.0, &fourth, 1.0).plus_identity(945.0);
        let below = square.blend(420.0, &fourth, 15.0).plus_identity(945.0).factor();
        Halves { h: below.solve(&above.times(&f)), k: below.solve_transposed(&above.transposed().times(&e)) }
    }

    /// The layer put onto itself this many times.
    #[inline(always)]
    fn doubled(mut self, times: u32) -> Self {
        for _ in 0..times {
            let factored = self.h.times(&self.k).plus_identity(1.0).factor();
            let h = factored.solve(&self.h.blend(2.0, &Square::ZERO, 0.0));
            self.k = factored.solve_transposed(&self.k.blend(2.0, &Square::ZERO, 0.0));
            self.h = h;
        }
        self
    }

    /// R + T = (1 + H)⁻¹(1 - H) and R - T = (K + 1)⁻¹(K - 1), solved for R and T.
    #[inline(always)]
    fn into_slab(self) -> Slab<N, W> {
        let one = Square::ZERO.plus_identity(1.0);
        let even = self.h.plus_identity(1.0).factor().solve(&one);
        let odd = self.k.plus_identity(1.0).factor().solve(&one);
        Slab {
            reflection: even.blend(1.0, &odd, -1.0),
            transmission: even.blend(1.0, &odd, 1.0).plus_identity(-1.0),
        }
    }
}
