//! Radiative transfer in layered media by adding-doubling (van de Hulst 1980; Prahl, van Gemert and Welch 1993).
//!
//! Entry point: [`Layer`] stacks through [`stack::measure`] for arbitrary media; [`healing`](crate::healing) uses the parts
//! directly. Steps: pick directions inside the medium ([`Nodes`]), describe how one direction scatters into another
//! ([`Scatter`]), solve one homogeneous layer ([`Slab`]), add layers below a surface ([`Cover`]) and above a [`Base`].
//!
//! Several spectral bands are solved side by side ([`Lanes`]); every operation is a plain IEEE operation in a fixed order, so
//! each machine gives the same bits.

mod adding;
mod lanes;
mod matrix;
mod nodes;
mod packed;
mod slab;
pub mod stack;

pub use adding::{Base, Cover};
pub use lanes::Lanes;
pub use matrix::{Column, Symmetric};
pub use nodes::{Nodes, Scatter};
pub use packed::{GROUPS, Packed, WIDTH, pack, unpack};
pub use slab::Slab;
pub use stack::{Layer, Measured, Stack};
