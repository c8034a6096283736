//! What follows a placement: wear, and touch-ups.
//!
//! Entry point: [`Upkeep`], which a [`super::Scene`] takes into account.

use super::placement::{Placement, Work};
use super::time::unhealed;
use super::wear::Wear;
use crate::pigment::Paint;

/// A further placement, some months after the first.
#[derive(Debug, Clone, PartialEq)]
pub struct TouchUp {
    /// Months after the first placement.
    pub months: f64,
    /// Amounts of colourants as they are placed.
    pub paint: Paint,
    /// Where they lie.
    pub placement: Placement,
}

/// Wear of all work on a client, and the touch-ups that follow a new placement. The default is everyday wear without any.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Upkeep {
    /// What wears old and new work.
    pub wear: Wear,
    /// Further placements.
    pub touch_ups: Vec<TouchUp>,
}

impl Upkeep {
    /// Wear alone.
    pub fn wear(wear: Wear) -> Self {
        Upkeep { wear, touch_ups: Vec::new() }
    }

    /// The touch-ups made by this time, each as a work of its age. One at exactly this time is fresh.
    pub(super) fn made_by(&self, months: f64) -> impl Iterator<Item = Work> {
        self.touch_ups.iter().filter(move |touch_up| touch_up.months <= months).map(move |touch_up| Work {
            paint: touch_up.paint.clone(),
            placement: touch_up.placement,
            months: months - touch_up.months,
        })
    }

    /// How unhealed the skin is this long after the first placement: as much as after the latest of all placements.
    pub(super) fn unhealed(&self, months: f64) -> f64 {
        self.made_by(months).map(|work| unhealed(work.months)).fold(unhealed(months), f64::max)
    }

    /// Upkeep as it stands just before this time: without touch-ups at or after it.
    pub fn before(&self, months: f64) -> Self {
        let touch_ups = self.touch_ups.iter().filter(|touch_up| touch_up.months < months).cloned().collect();
        Upkeep { wear: self.wear, touch_ups }
    }
}
