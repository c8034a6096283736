//! A few numbers computed side by side, one per spectral band, in a form compilers turn into vector instructions.

use std::ops::{Add, AddAssign, Div, Mul, Sub, SubAssign};

/// `W` numbers, each with its own arithmetic.
#[derive(Debug, Clone, Copy, PartialEq)]
#[repr(transparent)]
pub struct Lanes<const W: usize>(pub [f64; W]);

impl<const W: usize> Lanes<W> {
    /// Zero in every lane.
    pub const ZERO: Self = Lanes([0.0; W]);
    /// One in every lane.
    pub const ONE: Self = Lanes([1.0; W]);

    /// The same number in every lane.
    #[inline(always)]
    pub fn all(value: f64) -> Self {
        Lanes([value; W])
    }

    /// The greatest lane.
    #[inline(always)]
    pub fn greatest(self) -> f64 {
        self.0.iter().fold(f64::NEG_INFINITY, |most, &lane| if lane > most { lane } else { most })
    }
}

macro_rules! lanewise {
    ($trait:ident, $method:ident, $op:tt) => {
        impl<const W: usize> $trait for Lanes<W> {
            type Output = Self;
            #[inline(always)]
            fn $method(self, other: Self) -> Self {
                let mut out = self;
                for lane in 0..W {
                    out.0[lane] = self.0[lane] $op other.0[lane];
                }
                out
            }
        }
    };
}
lanewise!(Add, add, +);
lanewise!(Sub, sub, -);
lanewise!(Mul, mul, *);
lanewise!(Div, div, /);

impl<const W: usize> AddAssign for Lanes<W> {
    #[inline(always)]
    fn add_assign(&mut self, other: Self) {
        *self = *self + other;
    }
}

impl<const W: usize> SubAssign for Lanes<W> {
    #[inline(always)]
    fn sub_assign(&mut self, other: Self) {
        *self = *self - other;
    }
}

impl<const W: usize> Mul<f64> for Lanes<W> {
    type Output = Self;
    #[inline(always)]
    fn mul(self, factor: f64) -> Self {
        Lanes(self.0.map(|lane| lane * factor))
    }
}
