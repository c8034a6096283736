//! Small symmetric matrices over [`Lanes`], and linear systems with them.

#![expect(
    clippy::needless_range_loop,
    reason = "row and column numbers are what the formulas are written in"
)]

use super::Lanes;

/// A vector with one entry per direction.
pub type Column<const N: usize, const W: usize> = [Lanes<W>; N];

/// A symmetric matrix; of the rows only what stands up to the diagonal counts, the rest is never read.
#[derive(Debug, Clone, Copy)]
pub struct Symmetric<const N: usize, const W: usize>([[Lanes<W>; N]; N]);

impl<const N: usize, const W: usize> Symmetric<N, W> {
    /// All zero.
    pub const ZERO: Self = Symmetric([[Lanes::ZERO; N]; N]);

    /// The matrix whose entry in this row and column, the column not beyond the row, is what `entry` says.
    #[inline(always)]
    pub fn of(mut entry: impl FnMut(usize, usize) -> Lanes<W>) -> Self {
        let mut out = Self::ZERO;
        for i in 0..N {
            for j in 0..=i {
                out.0[i][j] = entry(i, j);
            }
        }
        out
    }

    /// A matrix with these values on its diagonal.
    #[inline(always)]
    pub fn diagonal(values: &[f64; N]) -> Self {
        Self::of(|i, j| if i == j { Lanes::all(values[i]) } else { Lanes::ZERO })
    }

    /// An entry.
    #[inline(always)]
    pub fn at(&self, row: usize, column: usize) -> Lanes<W> {
        if row >= column { self.0[row][column] } else { self.0[column][row] }
    }

    /// `self + other`.
    #[inline(always)]
    pub fn plus(&self, other: &Self) -> Self {
        Self::of(|i, j| self.0[i][j] + other.0[i][j])
    }

    /// `self - other`.
    #[inline(always)]
    pub fn minus(&self, other: &Self) -> Self {
        Self::of(|i, j| self.0[i][j] - other.0[i][j])
    }

    /// Half the harmonic mean, (self⁻¹ + other⁻¹)⁻¹, without inverses. Best if this is the smaller of the two.
    #[inline]
    pub fn beside(&self, other: &Self) -> Self {
        self.minus(&self.plus(other).split().between(self, 1.0))
    }

    /// `self · factor`.
    #[inline(always)]
    pub fn scaled(&self, factor: f64) -> Self {
        Self::of(|i, j| self.0[i][j] * factor)
    }

    /// `self · column`.
    #[inline(always)]
    pub fn times_column(&self, column: &Column<N, W>) -> Column<N, W> {
        let mut out = [Lanes::ZERO; N];
        for i in 0..N {
            out[i] = self.at(i, 0) * column[0];
            for j in 1..N {
                out[i] += self.at(i, j) * column[j];
            }
        }
        out
    }

    /// The matrix as L·D·Lᵀ, for solving systems with it.
    ///
    /// No pivoting: the matrices here are positive definite, whose pivots stay above zero.
    #[inline(always)]
    pub fn split(&self) -> Split<N, W> {
        // Each entry is summed up at once, in as few registers as can be; `scaled` is L·D.
        let mut lower = self.0;
        let mut scaled = self.0;
        let mut inverse_pivots = [Lanes::ZERO; N];
        for j in 0..N {
            for i in j..N {
                let mut entry = self.0[i][j];
                for k in 0..j {
                    let product = lower[i][k] * scaled[j][k];
                    entry -= product;
                }
                scaled[i][j] = entry;
                if i == j {
                    inverse_pivots[j] = Lanes::ONE / entry;
                } else {
                    lower[i][j] = entry * inverse_pivots[j];
                }
            }
        }
        Split { lower, inverse_pivots }
    }
}

/// A positive definite matrix M as L·D·Lᵀ, L with ones on its diagonal.
pub struct Split<const N: usize, const W: usize> {
    /// L below the diagonal; the rest is not read.
    lower: [[Lanes<W>; N]; N],
    /// 1/D.
    inverse_pivots: Column<N, W>,
}

impl<const N: usize, const W: usize> Split<N, W> {
    /// `outer · M⁻¹ · outer · factor`, which is symmetric again.
    #[inline(always)]
    pub fn between(&self, outer: &Symmetric<N, W>, factor: f64) -> Symmetric<N, W> {
        // With Y = L⁻¹·outer it is Yᵀ·D⁻¹·Y; `y[j]` is column j of Y. Entry after entry, each summed up at once: all entries side by side
        // are more than there are registers.
        let mut y = [[Lanes::ZERO; N]; N];
        for j in 0..N {
            for k in 0..N {
                let mut entry = outer.at(k, j);
                for i in 0..k {
                    let product = self.lower[k][i] * y[j][i];
                    entry -= product;
                }
                y[j][k] = entry;
            }
        }
        let mut out = Symmetric::ZERO;
        for i in 0..N {
            let mut left = [Lanes::ZERO; N];
            for k in 0..N {
                left[k] = y[i][k] * (self.inverse_pivots[k] * factor);
            }
            for j in 0..=i {
                let mut sum = left[0] * y[j][0];
                for k in 1..N {
                    let product = left[k] * y[j][k];
                    sum += product;
                }
                out.0[i][j] = sum;
            }
        }
        out
    }

    /// M⁻¹.
    #[inline(always)]
    pub fn inverse(&self) -> Symmetric<N, W> {
        // With Z = L⁻¹, ones on its diagonal, it is Zᵀ·D⁻¹·Z.
        let mut z = [[Lanes::ZERO; N]; N];
        let mut out = Symmetric::ZERO;
        for k in 0..N {
            for j in 0..k {
                let mut entry = Lanes::ZERO - self.lower[k][j];
                for i in j + 1..k {
                    let product = self.lower[k][i] * z[i][j];
                    entry -= product;
                }
                z[k][j] = entry;
            }
            for i in 0..k {
                let left = z[k][i] * self.inverse_pivots[k];
                for j in 0..=i {
                    let product = left * z[k][j];
                    out.0[i][j] += product;
                }
                out.0[k][i] = left;
            }
            out.0[k][k] = self.inverse_pivots[k];
        }
        out
    }

    /// x with M·x = `right`.
    #[inline(always)]
    pub fn solve(&self, right: &Column<N, W>) -> Column<N, W> {
        let mut x = *right;
        for i in 0..N {
            for k in 0..i {
                let product = self.lower[i][k] * x[k];
                x[i] -= product;
            }
        }
        for i in (0..N).rev() {
            x[i] = x[i] * self.inverse_pivots[i];
            for k in i + 1..N {
                let product = self.lower[k][i] * x[k];
                x[i] -= product;
            }
        }
        x
    }
}

/// Σ one·other.
#[inline(always)]
pub fn dot<const N: usize, const W: usize>(one: &Column<N, W>, other: &Column<N, W>) -> Lanes<W> {
    let mut sum = Lanes::ZERO;
    for (&a, &b) in one.iter().zip(other) {
        sum += a * b;
    }
    sum
}
