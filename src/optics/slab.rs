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
        // Start where even grazing light is hardly changed: tanh is exact to 1e-5 there, and much better for other light.
        let most = (absorbing + scattering * scatter.kept).greatest() / scatter.grazing;
        while most * share > 1.0 {
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
    pub fn half_space(scatter: &Scatter<N>, absorption: Lanes<W>, scattering: Lanes<W>) -> Square<N, W> {
        let mut share = absorption + scattering * scatter.kept;
        for lane in &mut share.0 {
            *lane = 0.5 * scatter.grazing / *lane;
        }
        let mut depth = 0.5 * scatter.grazing;
        let mut doublings = 0;
        while depth < ENDLESS {
            depth *= 2.0;
            doublings += 1;
        }
        let mut reflection = Square::ZERO;
        by_pairs(absorption * share, scattering * share, |absorbing, scattering, lanes| {
            let part = Halves::thin(scatter, absorbing, scattering).doubled(doublings).into_slab();
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
    /// A layer so thin that tanh(x) = x(15 + x²)/(15 + 6x²) is exact enough.
    #[inline(always)]
    fn thin(scatter: &Scatter<N>, absorbing: Lanes<W>, scattering: Lanes<W>) -> Self {
        let mut e = Square::ZERO;
        let mut f = Square::ZERO;
        for i in 0..N {
            for j in 0..N {
                e.0[i][j] = scattering * (0.5 * scatter.odd[i][j]);
                f.0[i][j] = scattering * (0.5 * scatter.even[i][j]);
            }
            e.0[i][i] += absorbing * (0.5 * scatter.slant[i]);
            f.0[i][i] += absorbing * (0.5 * scatter.slant[i]);
        }
        let fe = f.times(&e);
        let ef = e.times(&f);
        let factored = Square::ZERO.blend(0.0, &fe, 6.0).plus_identity(15.0).factor();
        Halves {
            h: factored.solve(&f.blend(15.0, &fe.times(&f), 1.0)),
            k: factored.solve_transposed(&e.blend(15.0, &ef.times(&e), 1.0)),
        }
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
