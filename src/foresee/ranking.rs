//! A search whose work can be shared out among several engines, and where the task's own mix stands in it.
//!
//! Entry points: [`RankingRequest`]; [`Share::of`] tries one share of all mixes; [`Ranking::of`] ranks them all, tried elsewhere or
//! here. However the work was shared out, the answer is the same.

use super::search::SearchAnswer;
use super::{Request, RequestError, Task, TriedAnswer};
use crate::Cores;
use crate::colour::{Lab, difference};
use crate::pigment::Shelf;
use crate::search::Search;
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

/// L*, a*, b* that a share's mixes heal to.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Share(pub Vec<[f64; 3]>);

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

/// Mixes told one by one.
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
        let healed = search.healed(&scene, &task.placement, task.light, Cores::All, part.place, part.of);
        Ok(Share(healed.into_iter().map(|lab| [lab.l, lab.a, lab.b]).collect()))
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
                let Some(healed) = dealt(shares, search.mixes()) else {
                    return Err(RequestError::new("shares", "these are not the shares of this search"));
                };
                search.found(healed, task.light.lab_of(&scene.existing()))
            }
        };
        let best = found.best().healed;
        let first = found.ranking.iter().take(FIRST);
        let first = first.map(|tried| TriedAnswer::of(tried, difference(tried.healed, best))).collect();
        let own = (task.mix.total() > 0).then(|| {
            let seen = task.light.lab_of(&scene.with(&task.paint, &task.placement));
            let error = difference(seen, found.goal.lab);
            Own { delta_e_2000: error, nearer: found.ranking.partition_point(|tried| tried.error < error) }
        });
        Ok(Ranking { search: SearchAnswer::of(shelf, &found), first, own })
    }
}

fn search_of(task: &Task) -> Result<&Search, RequestError> {
    task.search.as_ref().ok_or_else(|| RequestError::new("case", "a `search` is needed"))
}

/// The colours of all mixes in their order; `None` where these are not shares of so many.
fn dealt(shares: &[Share], mixes: usize) -> Option<Vec<Lab>> {
    let of = shares.len();
    let fits = |(place, share): (usize, &Share)| share.0.len() == (mixes + of - 1 - place) / of;
    if of == 0 || !shares.iter().enumerate().all(fits) {
        return None;
    }
    Some((0..mixes).map(|i| shares[i % of].0[i / of]).map(|[l, a, b]| Lab::new(l, a, b)).collect())
}
