//! Pigment: colourants named by Colour Index, bottles made of them, and mixes of bottles in whole drops.
//!
//! Entry point: [`Shelf`], which turns a [`Mix`] into [`Paint`]: amounts of colourants the engine can place in skin.

mod bottle;
mod colourant;
mod curve;
mod shelf;

pub use bottle::{Bottle, Mix, Modifier, Paint};
pub use colourant::{Basis, Colourant, ColourantClass, Restriction};
pub use curve::{AbsorptionCurve, Edge, Peak, ScatteringCurve};
pub use shelf::Shelf;
