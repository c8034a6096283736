//! Where the colour will likely be, with the region's outlines for drawing.

use super::Task;
use crate::colour::Outline;
use crate::healing::Outcome;
use crate::pigment::Shelf;
use serde::Serialize;

/// The region of likely outcomes at a task's time and under its light.
#[derive(Debug, Clone, Serialize)]
pub struct Likely {
    /// The region, as [`Answer::outcome`](super::Answer::outcome) has it.
    pub outcome: Outcome,
    /// Its shadows on the planes a*b* and L*C*.
    pub outline: Outline,
}

impl Likely {
    /// The region of a task; `None` where it asks for no worlds.
    pub fn of(shelf: &Shelf, task: &Task) -> Option<Self> {
        let expected = task.at(shelf, task.months).1.lab;
        let outcome = task.outcome(shelf, expected)?;
        let outline = Outline::of_shadow(&outcome.region);
        Some(Likely { outcome, outline })
    }
}
