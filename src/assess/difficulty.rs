//! How hard a written question is, on the scale of [`engine_difficulty`]: the share of its credit that it is expected to cost a candidate
//! who is just good enough.

pub use crate::exercise::engine_difficulty;

use crate::course::Blueprint;

/// The difficulty of a question that the engine did not prove: what the judges expect in its section.
pub fn written_difficulty(blueprint: &Blueprint, section: usize) -> f64 {
    1.0 - blueprint.estimate(section)
}
