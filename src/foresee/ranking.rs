//! A search whose work can be shared out among several engines, and where the task's own mix stands in it.
//!
//! Entry points: [`RankingRequest`]; [`Share::of`] tries one share of all mixes; [`Ranking::of`] ranks them all, tried elsewhere or
//! here. However the work was shared out, the answer is the same: a share keeps what the first mixes of all, the near-ties and the gap
//! behind them can be read from, since its own best is no nearer to the goal than the best of all.

use super::search::SearchAnswer;
use super::{Request, RequestError, Task, TriedAnswer};
use crate::Cores;
use crate::colour::{JUST_VISIBLE, Lab, difference};
use crate::healing::Trial;
use crate::pigment::Shelf;
use crate::search::{Placed, Search};
use serde::{Deserialize, Serialize};

/// What is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RankingRequest {
    /// The case, with a search.
    pub case: Request,
    /// Which share to try; without one, all mixes are ranked.
    #[serde(default)]
    pub share: Option<Part>,
    /// What every share answered, in their order; without it, all mixes are tried.
    #[serde(default)]
    pub shares: Option<Vec<Share>>,
}

/// A part of several: every so-manieth mix, from `place` on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Part {
    /// Its place, from 0.
    pub place: usize,
    /// Of how many.
    pub of: usize,
}

/// What a share of all mixes came to.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Share {
    /// Mixes tried.
    pub mixes: usize,
    /// The nearest to the goal: places among all mixes, with the L*, a*, b* they heal to. The first twelve, all that an eye
    /// cannot rank below the share's best, and one more.
    pub nearest: Vec<(usize, [f64; 3])>,
    /// How many come nearer to the goal than the task's own mix; 0 without one.
    pub nearer: usize,
}

/// Every mix ranked.
#[derive(Debug, Clone, Serialize)]
pub struct Ranking {
    /// What was found.
    pub search: SearchAnswer,
    /// The first mixes, nearest to the goal first.
    pub first: Vec<TriedAnswer>,
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

/// Mixes told one by one; a [`Share`] says how many.
const FIRST: usize = 12;

impl RankingRequest {
    /// Reads a question from JSON.
    ///
    /// # Errors
    /// [`RequestError`] names the field that is unknown, missing or of the wrong kind.
    pub fn from_json(text: &str) -> Result<Self, RequestError> {
        super::request::from_json(text)
    }
}

impl Share {
    /// The colours that a share of a task's mixes heal to.
    ///
    /// # Errors
    /// [`RequestError`] when the task has no search, or there is no such part.
    pub fn of(shelf: &Shelf, task: &Task, part: Part) -> Result<Self, RequestError> {
        let search = search_of(task)?;
        if part.place >= part.of {
            let why = format!("there is no part {} of {}", part.place, part.of);
            return Err(RequestError::new("share", why));
        }
        let scene = task.scene(shelf, task.months, &task.upkeep);
        let trial = scene.trial(&task.placement);
        let tried = search.share(&trial, task.light, Cores::All, part.place, part.of);
        let error = own_error(task, search, &trial);
        let most = tried.first().map_or(0.0, |best| best.error + JUST_VISIBLE);
        let kept = FIRST.max(tried.partition_point(|placed| placed.error <= most)) + 1;
        let nearest = tried.iter().take(kept);
        Ok(Share {
            mixes: tried.len(),
            nearest: nearest
                .map(|Placed { place, healed, .. }| (*place, [healed.l, healed.a, healed.b]))
                .collect(),
            nearer: error.map_or(0, |error| tried.partition_point(|placed| placed.error < error)),
        })
    }
}

impl Ranking {
    /// Ranks all of a task's mixes, tried in these shares or, without any, here.
    ///
    /// # Errors
    /// [`RequestError`] when the task has no search, or the shares are not those of its mixes.
    pub fn of(shelf: &Shelf, task: &Task, shares: Option<&[Share]>) -> Result<Self, RequestError> {
        let search = search_of(task)?;
        let scene = task.scene(shelf, task.months, &task.upkeep);
        let found = match shares {
            None => search.run(&scene, &task.placement, task.light, Cores::All),
            Some(shares) => {
                let Some(nearest) = dealt(shares, search.mixes()) else {
                    return Err(RequestError::new("shares", "these are not the shares of this search"));
                };
                search.found(nearest, task.light.lab_of(&scene.existing()))
            }
        };
        let nearer = |error: f64| match shares {
            None => found.ranking.partition_point(|tried| tried.error < error),
            Some(shares) => shares.iter().map(|share| share.nearer).sum(),
        };
        let best = found.best().healed;
        let first = found.ranking.iter().take(FIRST);
        let first = first.map(|tried| TriedAnswer::of(tried, difference(tried.healed, best))).collect();
        let own = own_error(task, search, &scene.trial(&task.placement))
            .map(|error| Own { delta_e_2000: error, nearer: nearer(error) });
        Ok(Ranking { search: SearchAnswer::of(shelf, &found), first, own })
    }
}

fn search_of(task: &Task) -> Result<&Search, RequestError> {
    task.search.as_ref().ok_or_else(|| RequestError::new("case", "a `search` is needed"))
}

/// ΔE00 between what the task's own mix heals to and the goal, where it has one.
fn own_error(task: &Task, search: &Search, trial: &Trial) -> Option<f64> {
    let seen = || task.light.lab_of(&trial.with(&task.paint));
    (task.mix.total() > 0).then(|| difference(seen(), search.goal().lab))
}

/// The nearest mixes of all shares by their places; `None` where these are not shares of so many mixes.
fn dealt(shares: &[Share], mixes: usize) -> Option<Vec<(usize, Lab)>> {
    let of = shares.len();
    let fits = |(at, share): (usize, &Share)| {
        let own = |&(place, _): &(usize, [f64; 3])| place % of == at && place < mixes;
        share.mixes == (mixes + of - 1 - at) / of
            && share.nearest.is_empty() == (share.mixes == 0)
            && share.nearer <= share.mixes
            && share.nearest.iter().all(own)
    };
    if of == 0 || !shares.iter().enumerate().all(fits) {
        return None;
    }
    let nearest = shares.iter().flat_map(|share| &share.nearest);
    Some(nearest.map(|&(place, [l, a, b])| (place, Lab::new(l, a, b))).collect())
}
