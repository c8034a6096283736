//! One homogeneous layer: what it does to light, by doubling.

use super::{Lanes, Scatter, Symmetric};

/// A layer without surfaces, by what it takes to keep a field up in it, in the field y of [`Scatter`]; both sides are alike.
///
/// With u the sum and v the difference of the downward and the upward field: light that is equal on both sides obeys v = `even`·u at
/// the top, light that is opposite v = `odd`·u. The one grows and the other falls with thickness, as tanh and coth do, until they meet
/// in an endless depth; neither loses digits where little light is reflected or comes through.
#[derive(Debug, Clone, Copy)]
pub struct Slab<const N: usize, const W: usize> {
    /// v of u for equal light from both sides.
    pub even: Symmetric<N, W>,
    /// v of u for opposite light from the two sides.
    pub odd: Symmetric<N, W>,
}

/// Optical depth from which on a layer counts as infinitely thick: even of a medium that does not absorb, with an anisotropy of 0.8,
/// two thousandths of the light come through.
const ENDLESS: f64 = 4096.0;
/// Optical depth along the grazing direction up to which a layer counts as thin: the formula for tanh is exact to 1e-5 there, and much
/// better for other light.
const THIN: f64 = 3.5;
/// Where tanh counts as 1 in an endless depth: it is 1 to ten digits.
const MET: f64 = 12.0;
/// Optical depth added to each layer, so that one without any has an `odd` too. No other layer's digits feel it.
const TRACE: f64 = 1e-30;

/// F and 1/E of half a layer: the `even` and `odd` of one without any thickness to speak of.
struct Rates<const N: usize, const W: usize> {
    f: Symmetric<N, W>,
    inverse_e: Symmetric<N, W>,
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
        Rates::new(scatter, absorbing * share, scattering * share).thin().doubled(doublings)
    }

    /// v of u at the top of an endless depth of a medium with this absorption and scattering (in any one unit of length).
    ///
    /// `even` and `odd` of ever thicker layers are the harmonic and the arithmetic mean of the ones before, hence meet in the geometric
    /// mean of the first two. That is the same for F and 1/E in any unit of length, so that no thin layer is needed to start from: the
    /// unit is chosen so that what reaches deepest and what reaches least deep meet after equally many steps.
    pub fn half_space(scatter: &Scatter<N>, absorption: Lanes<W>, scattering: Lanes<W>) -> Symmetric<N, W> {
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
        let Rates { f, inverse_e } = Rates::new(scatter, absorption * share, scattering * share);
        let part = Slab { even: f, odd: inverse_e }.doubled(doublings);
        part.even.plus(&part.odd).scaled(0.5)
    }

    /// The layer put onto itself this many times.
    #[inline(always)]
    fn doubled(mut self, times: u32) -> Self {
        for _ in 0..times {
            // The harmonic mean 2(even⁻¹ + odd⁻¹)⁻¹, written without inverses.
            let sum = self.even.plus(&self.odd);
            let taken = sum.split().between(&self.even, 2.0);
            self = Slab { even: self.even.plus(&self.even).minus(&taken), odd: sum.scaled(0.5) };
        }
        self
    }
}

impl<const N: usize, const W: usize> Rates<N, W> {
    #[inline(always)]
    fn new(scatter: &Scatter<N>, absorbing: Lanes<W>, scattering: Lanes<W>) -> Self {
        let absorbing = absorbing + Lanes::all(TRACE);
        let of = |between: &[[f64; N]; N]| {
            Symmetric::of(|i, j| {
                let turned = scattering * (0.5 * between[i][j]);
                if i == j { turned + absorbing * (0.5 * scatter.slant[i]) } else { turned }
            })
        };
        Rates { f: of(&scatter.even), inverse_e: of(&scatter.odd).split().inverse() }
    }

    /// A layer so thin that tanh(x) = x/(1 + x²/(3 + x²/(5 + x²/(7 + x²/9)))), the start of its continued fraction, is exact enough.
    ///
    /// With x² = FE and J = 1/E the even side is F ∥ (3J + F/5 ∥ (7J + F/9)), the odd side J + F/3 ∥ (5J + F/7 ∥ 9J), where ∥ is half
    /// the harmonic mean.
    #[inline(always)]
    fn thin(&self) -> Slab<N, W> {
        let Rates { f, inverse_e: j } = self;
        let inner = f.beside(&j.scaled(35.0).plus(&f.scaled(5.0 / 9.0)));
        let even = f.beside(&j.scaled(3.0).plus(&inner.scaled(1.0 / 5.0)));
        let inner = f.beside(&j.scaled(63.0));
        let odd = j.plus(&f.beside(&j.scaled(15.0).plus(&inner.scaled(3.0 / 7.0))).scaled(1.0 / 3.0));
        Slab { even, odd }
    }
}
