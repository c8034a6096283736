//! Where and how work lies in the skin.

use crate::pigment::Paint;
use crate::quantity::{OutOfRange, Quantity};
use serde::{Deserialize, Serialize};

/// Bounds of [`Placement::depth_mm`].
pub const DEPTH: Quantity = Quantity::new("depth_mm", "mm", 0.0, 3.0);
/// Bounds of [`Placement::thickness_mm`].
pub const THICKNESS: Quantity = Quantity::new("thickness_mm", "mm", 0.01, 2.0);
/// Bounds of [`Placement::load`].
pub const LOAD: Quantity = Quantity::new("load", "times a full pass", 0.0, 5.0);
/// Bounds of [`Placement::coverage`].
pub const COVERAGE: Quantity = Quantity::new("coverage", "as a fraction", 0.0, 1.0);
/// Bounds of a time after placement.
pub const MONTHS: Quantity = Quantity::new("months", "months", 0.0, 600.0);
/// Bounds of a colourant's amount in existing work.
pub const AMOUNT: Quantity = Quantity::new("amount", "times the colourant's reference amount", 0.0, 20.0);

/// Most works on one client, touch-ups included. Up to [`super::EXACT_WORKS`] of them are combined exactly; the number solved grows
/// with the square of theirs beyond that.
pub const MOST_WORKS: usize = 24;

/// Where and how a mix lies.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Placement {
    /// Depth of the top of the coloured layer below the surface, in mm.
    pub depth_mm: f64,
    /// Thickness of the coloured layer, in mm.
    pub thickness_mm: f64,
    /// How much was left there: 1 is one full pass of the mix.
    pub load: f64,
    /// Share of the area that carries colour, 0 to 1.
    pub coverage: f64,
}

impl Default for Placement {
    /// A usual brow (representative): 0.12 mm deep, 0.3 mm thick, one full pass, 85% covered.
    fn default() -> Self {
        Placement { depth_mm: 0.12, thickness_mm: 0.3, load: 1.0, coverage: 0.85 }
    }
}

impl Placement {
    /// This placement, if every number lies within its bounds.
    ///
    /// # Errors
    /// The first number that does not.
    pub fn checked(self) -> Result<Self, OutOfRange> {
        DEPTH.check(self.depth_mm)?;
        THICKNESS.check(self.thickness_mm)?;
        LOAD.check(self.load)?;
        COVERAGE.check(self.coverage)?;
        Ok(self)
    }
}

/// Colour in the skin: what, where, and how old.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Work {
    /// Amounts of colourants as they were placed.
    pub paint: Paint,
    /// Where they lie.
    pub placement: Placement,
    /// Months since.
    pub months: f64,
}
