//! What a search found: the best, what cannot be told from it, the rest, and how a goal is missed.

use super::{Goal, Tried};
use crate::colour::{JUST_VISIBLE, Lab, Shift, difference, in_a_row};
use serde::Serialize;

/// What a search found.
#[derive(Debug, Clone, PartialEq)]
pub struct Found {
    /// The goal.
    pub goal: Goal,
    /// Mixes tried: all there are.
    pub mixes: usize,
    /// Every mix, nearest to the goal first; at least one.
    pub ranking: Vec<Tried>,
    /// Mixes within the limits, equal ratios counted apart.
    pub possible: u64,
    /// The colour without any new work.
    pub untouched: Lab,
}

/// A mix that an eye cannot rank below the best: its distance to the goal is larger by at most [`JUST_VISIBLE`]. It need not look
/// like the best: it may lie on the goal's other side.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NearTie<'f> {
    /// The mix.
    pub tried: &'f Tried,
    /// ΔE00 between its healed colour and that of the best.
    pub from_best: f64,
}

/// How the best mix misses a goal that no mix reaches.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Miss {
    /// ΔE00 beyond the goal's tolerance.
    pub beyond: f64,
    /// From the goal to what the best mix heals to.
    pub shift: Shift,
    /// "too light and too warm".
    pub words: String,
}

impl Found {
    /// The mix that heals nearest to the goal.
    pub fn best(&self) -> &Tried {
        &self.ranking[0]
    }

    /// Whether the best mix reaches the goal.
    pub fn is_reached(&self) -> bool {
        self.best().error <= self.goal.tolerance
    }

    /// All mixes that an eye cannot rank below the best, without the best itself.
    pub fn near_ties(&self) -> Vec<NearTie<'_>> {
        let best = self.best();
        self.ranking[1..self.tied()]
            .iter()
            .map(|tried| NearTie { tried, from_best: difference(tried.healed, best.healed) })
            .collect()
    }

    /// ΔE00 by which every mix that is neither best nor a near-tie is farther from the goal than the best, at least; more than
    /// [`JUST_VISIBLE`]. `None` where there is no other mix.
    pub fn gap(&self) -> Option<f64> {
        self.ranking.get(self.tied()).map(|next| next.error - self.best().error)
    }

    /// How the goal is missed; `None` where it is reached.
    pub fn miss(&self) -> Option<Miss> {
        self.goal.missed_by(self.best())
    }

    /// ΔE00 from the goal without any new work.
    pub fn untouched_error(&self) -> f64 {
        difference(self.untouched, self.goal.lab)
    }

    /// The best and its near-ties, counted.
    fn tied(&self) -> usize {
        let most = self.best().error + JUST_VISIBLE;
        self.ranking.partition_point(|tried| tried.error <= most)
    }
}

impl Goal {
    /// How a mix misses this goal; `None` where it reaches it.
    pub(super) fn missed_by(&self, tried: &Tried) -> Option<Miss> {
        if tried.error <= self.tolerance {
            return None;
        }
        let shift = Shift::between(self.lab, tried.healed);
        let ways: Vec<&str> = shift.senses(JUST_VISIBLE).iter().map(|sense| sense.excess()).collect();
        Some(Miss { beyond: tried.error - self.tolerance, shift, words: in_a_row(&ways) })
    }
}
