//! The head of a task's search, and where the task's own mix stands in it.
//!
//! Entry point: [`Ranking::of`].

use super::{RequestError, Task, TriedAnswer};
use crate::colour::{JUST_VISIBLE, difference};
use crate::pigment::Shelf;
use crate::search::Miss;
use serde::Serialize;

/// Every mix ranked: the numbers are those of [`SearchAnswer`](super::SearchAnswer).
#[derive(Debug, Clone, Serialize)]
pub struct Ranking {
    /// Different paints ranked: all there are within the limits.
    pub mixes: usize,
    /// The first mixes, nearest to the goal first.
    pub first: Vec<TriedAnswer>,
    /// ΔE00 that an eye just sees.
    pub just_visible: f64,
    /// How many mixes are near-ties of the best.
    pub near_ties: usize,
    /// ΔE00 by which every other mix is farther from the goal than the best, at least; none where there is no other mix.
    pub gap: Option<f64>,
    /// How the goal is missed, where it is.
    pub miss: Option<Miss>,
    /// ΔE00 from the goal if nothing new is placed.
    pub untouched_delta_e_2000: f64,
    /// The task's own mix, where it has one.
    pub own: Option<Own>,
}

/// Where the task's own mix stands.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Own {
    /// ΔE00 from the goal.
    pub delta_e_2000: f64,
    /// How many of the mixes tried come nearer to the goal.
    pub nearer: usize,
}

/// Mixes told one by one.
const FIRST: usize = 12;

impl Ranking {
    /// Ranks all of a task's mixes.
    ///
    /// # Errors
    /// [`RequestError`] when the task has no search.
    pub fn of(shelf: &Shelf, task: &Task) -> Result<Self, RequestError> {
        let Some(search) = &task.search else {
            return Err(RequestError::new("search", "a `search` is needed"));
        };
        let scene = task.scene(shelf, task.months, &task.upkeep);
        let trial = scene.trial(&task.placement);
        let seen = || task.light.lab_of(&trial.with(&task.paint));
        let error = (task.mix.total() > 0).then(|| difference(seen(), search.goal().lab));
        let nearest = search.nearest(&trial, task.light, FIRST, error);
        let best = nearest.first[0].healed;
        let first = nearest.first.iter();
        Ok(Ranking {
            mixes: search.mixes(),
            first: first.map(|tried| TriedAnswer::of(tried, difference(tried.healed, best))).collect(),
            just_visible: JUST_VISIBLE,
            near_ties: nearest.near_ties,
            gap: nearest.gap,
            miss: nearest.miss,
            untouched_delta_e_2000: difference(task.light.lab_of(&scene.existing()), search.goal().lab),
            own: error.map(|delta_e_2000| Own { delta_e_2000, nearer: nearest.nearer }),
        })
    }
}
