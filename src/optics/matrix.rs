//! Small square matrices over [`Lanes`], and linear systems with them.

#![expect(
    clippy::needless_range_loop,
    reason = "row and column numbers are what the formulas are written in"
)]

use super::Lanes;

/// A vector with one entry per direction.
pub type Column<const N: usize, const W: usize> = [Lanes<W>; N];

/// A square matrix, row by row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Square<const N: usize, const W: usize>(pub [[Lanes<W>; N]; N]);

impl<const N: usize, const W: usize> Square<N, W> {
    /// All zero.
    pub const ZERO: Self = Square([[Lanes::ZERO; N]; N]);

    /// A matrix with these values on its diagonal.
    #[inline(always)]
    pub fn diagonal(values: &[f64; N]) -> Self {
        let mut out = Self::ZERO;
        for (i, &value) in values.iter().enumerate() {
            out.0[i][i] = Lanes::all(value);
        }
        out
    }

    /// Puts the lanes of `part` into these lanes of this matrix.
    #[inline(always)]
    pub fn put(&mut self, part: &Square<N, 2>, lanes: [usize; 2]) {
        for i in 0..N {
            for j in 0..N {
                for (from, to) in lanes.into_iter().enumerate() {
                    self.0[i][j].0[to] = part.0[i][j].0[from];
                }
            }
        }
    }

    /// `self · other`.
    #[inline(always)]
    pub fn times(&self, other: &Self) -> Self {
        let mut out = Self::ZERO;
        for i in 0..N {
            for k in 0..N {
                let factor = self.0[i][k];
                for j in 0..N {
                    out.0[i][j] += factor * other.0[k][j];
                }
            }
        }
        out
    }

    /// `self · column`.
    #[inline(always)]
    pub fn times_column(&self, column: &Column<N, W>) -> Column<N, W> {
        let mut out = [Lanes::ZERO; N];
        for i in 0..N {
            for (&entry, &value) in self.0[i].iter().zip(column) {
                out[i] += entry * value;
            }
        }
        out
    }

    /// `row · self`.
    #[inline(always)]
    pub fn times_row(&self, row: &Column<N, W>) -> Column<N, W> {
        let mut out = [Lanes::ZERO; N];
        for (entries, &value) in self.0.iter().zip(row) {
            for (sum, &entry) in out.iter_mut().zip(entries) {
                *sum += value * entry;
            }
        }
        out
    }

    /// Entrywise combination `self · a + other · b`.
    #[inline(always)]
    pub fn blend(&self, a: f64, other: &Self, b: f64) -> Self {
        let mut out = Self::ZERO;
        for i in 0..N {
            for j in 0..N {
                out.0[i][j] = self.0[i][j] * a + other.0[i][j] * b;
            }
        }
        out
    }

    /// Rows and columns exchanged.
    #[inline(always)]
    pub fn transposed(&self) -> Self {
        let mut out = Self::ZERO;
        for i in 0..N {
            for j in 0..N {
                out.0[i][j] = self.0[j][i];
            }
        }
        out
    }

    /// `self + value · identity`.
    #[inline(always)]
    pub fn plus_identity(mut self, value: f64) -> Self {
        for i in 0..N {
            self.0[i][i] += Lanes::all(value);
        }
        self
    }

    /// Factors for solving systems with this matrix.
    ///
    /// No pivoting: the matrices here are identity plus a product of two positive semidefinite ones, or identity minus one of
    /// norm below 1, whose pivots stay away from zero.
    #[inline(always)]
    pub fn factor(mut self) -> Factored<N, W> {
        let mut inverse_pivots = [Lanes::ZERO; N];
        for k in 0..N {
            let inverse = Lanes::ONE / self.0[k][k];
            inverse_pivots[k] = inverse;
            for i in k + 1..N {
                let factor = self.0[i][k] * inverse;
                self.0[i][k] = factor;
                for j in k + 1..N {
                    let product = factor * self.0[k][j];
                    self.0[i][j] -= product;
                }
            }
        }
        Factored { lower_upper: self, inverse_pivots }
    }
}

/// A matrix split into a unit lower and an upper triangle.
pub struct Factored<const N: usize, const W: usize> {
    lower_upper: Square<N, W>,
    inverse_pivots: Column<N, W>,
}

impl<const N: usize, const W: usize> Factored<N, W> {
    /// X with A·X = `right`.
    #[inline(always)]
    pub fn solve(&self, right: &Square<N, W>) -> Square<N, W> {
        let lu = &self.lower_upper.0;
        let mut x = *right;
        for i in 0..N {
            for k in 0..i {
                for j in 0..N {
                    let product = lu[i][k] * x.0[k][j];
                    x.0[i][j] -= product;
                }
            }
        }
        for i in (0..N).rev() {
            for k in i + 1..N {
                for j in 0..N {
                    let product = lu[i][k] * x.0[k][j];
                    x.0[i][j] -= product;
                }
            }
            for j in 0..N {
                x.0[i][j] = x.0[i][j] * self.inverse_pivots[i];
            }
        }
        x
    }

    /// X with Aᵀ·X = `right`.
    #[inline(always)]
    pub fn solve_transposed(&self, right: &Square<N, W>) -> Square<N, W> {
        let lu = &self.lower_upper.0;
        let mut x = *right;
        for i in 0..N {
            for k in 0..i {
                for j in 0..N {
                    let product = lu[k][i] * x.0[k][j];
                    x.0[i][j] -= product;
                }
            }
            for j in 0..N {
                x.0[i][j] = x.0[i][j] * self.inverse_pivots[i];
            }
        }
        for i in (0..N).rev() {
            for k in i + 1..N {
                for j in 0..N {
                    let product = lu[k][i] * x.0[k][j];
                    x.0[i][j] -= product;
                }
            }
        }
        x
    }

    /// x with A·x = `right`.
    #[inline(always)]
    pub fn solve_column(&self, right: &Column<N, W>) -> Column<N, W> {
        let lu = &self.lower_upper.0;
        let mut x = *right;
        for i in 0..N {
            for k in 0..i {
                let product = lu[i][k] * x[k];
                x[i] -= product;
            }
        }
        for i in (0..N).rev() {
            for k in i + 1..N {
                let product = lu[i][k] * x[k];
                x[i] -= product;
            }
            x[i] = x[i] * self.inverse_pivots[i];
        }
        x
    }
}
