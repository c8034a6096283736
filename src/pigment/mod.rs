//! Pigment: colourants named by Colour Index, bottles made of them, and mixes of bottles in whole drops.
//!
//! Entry point: [`Shelf`], which turns a [`Mix`] into [`Paint`]: amounts of colourants the engine can place in skin.
//! [`measure`] finds the optics of a colourant or a bottle from readings; [`Shelf::add_measured`] puts a measured bottle on the
//! shelf.

mod bottle;
mod ci_name;
mod colourant;
mod curve;
pub mod measure;
mod measured;
mod shelf;

pub use bottle::{Bottle, Line, Mix, Modifier, Paint};
pub use ci_name::{CI_NAME_FORM, is_ci_name, meant_ci_name};
pub use colourant::{Basis, Colourant, ColourantClass, Restriction};
pub use curve::{AbsorptionCurve, Edge, Peak, ScatteringCurve};
pub use measured::{Fading, Measured};
pub use shelf::Shelf;
