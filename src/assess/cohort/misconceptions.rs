//! How often wrong beliefs were offered and chosen. Entry point: [`misconceptions`].

use super::interval::{Interval, wilson};
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};
use std::ops::Deref;

/// Choices below which a misconception does not stand out: once is a slip. Common practice, no source.
pub const FEWEST_CHOICES: usize = 2;

/// What leads to an option.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Leads<T> {
    /// It is right.
    Right,
    /// It is wrong, from no misconception that has a name.
    Wrong,
    /// It is wrong: the id of the misconception that leads to it.
    From(T),
}

impl<T> Leads<T> {
    /// What leads to an option that is right or not, perhaps from a misconception.
    pub fn new(right: bool, misconception: Option<T>) -> Self {
        match misconception {
            _ if right => Leads::Right,
            Some(id) => Leads::From(id),
            None => Leads::Wrong,
        }
    }

    /// The misconception.
    pub fn misconception(&self) -> Option<&T> {
        match self {
            Leads::From(id) => Some(id),
            Leads::Right | Leads::Wrong => None,
        }
    }
}

impl<T: Deref> Leads<T> {
    /// The same with a misconception that is borrowed.
    pub fn as_deref(&self) -> Leads<&T::Target> {
        match self {
            Leads::Right => Leads::Right,
            Leads::Wrong => Leads::Wrong,
            Leads::From(id) => Leads::From(id),
        }
    }
}

/// One question as it was shown to somebody.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shown<'a> {
    /// Id of the person.
    pub person: &'a str,
    /// For every option shown, what leads to it.
    pub options: &'a [Leads<&'a str>],
    /// Index of the option chosen; `None` for a blank.
    pub chosen: Option<usize>,
}

/// One misconception in a set of answers.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct MisconceptionCount {
    /// Its id.
    pub misconception: String,
    /// Questions in which some option led to it.
    pub offered: usize,
    /// Questions in which such an option was chosen.
    pub chosen: usize,
    /// People who were offered it at least once.
    pub people_offered: usize,
    /// People who chose it at least once.
    pub people_chosen: usize,
    /// Chosen by offered, 0 to 1.
    pub share: f64,
    /// 95% interval of the share (Wilson). Over a cohort it treats answers of one person as independent.
    pub interval: Interval,
    /// Share that blind guessing among the options shown would give.
    pub by_guessing: f64,
    /// Chosen at least [`FEWEST_CHOICES`] times, and in a cohort more often than blind guessing would, beyond the interval; of one person,
    /// so that the answers as a whole speak for it.
    pub stands_out: bool,
}

#[derive(Default)]
struct Tally<'a> {
    offered: usize,
    chosen: usize,
    guesses: f64,
    people_offered: BTreeSet<&'a str>,
    people_chosen: BTreeSet<&'a str>,
}

/// Counts misconceptions in the answers of a cohort: the most chosen by offered first, then by id. For those of one person there is
/// [`misconceptions_of`](super::misconceptions_of).
pub fn misconceptions<'a>(shown: impl IntoIterator<Item = Shown<'a>>) -> Vec<MisconceptionCount> {
    let mut tallies: BTreeMap<&str, Tally<'a>> = BTreeMap::new();
    for question in shown {
        let mut bearing: BTreeMap<&str, usize> = BTreeMap::new();
        for id in question.options.iter().filter_map(Leads::misconception) {
            *bearing.entry(id).or_default() += 1;
        }
        let chosen = question.chosen.and_then(|at| question.options.get(at)?.misconception().copied());
        for (id, options) in bearing {
            let tally = tallies.entry(id).or_default();
            tally.offered += 1;
            tally.guesses += options as f64 / question.options.len() as f64;
            tally.people_offered.insert(question.person);
            if chosen == Some(id) {
                tally.chosen += 1;
                tally.people_chosen.insert(question.person);
            }
        }
    }
    let mut counts: Vec<MisconceptionCount> = tallies
        .into_iter()
        .filter_map(|(id, tally)| {
            let interval = wilson(tally.chosen as f64, tally.offered)?;
            let by_guessing = tally.guesses / tally.offered as f64;
            Some(MisconceptionCount {
                misconception: id.to_owned(),
                offered: tally.offered,
                chosen: tally.chosen,
                people_offered: tally.people_offered.len(),
                people_chosen: tally.people_chosen.len(),
                share: tally.chosen as f64 / tally.offered as f64,
                interval,
                by_guessing,
                stands_out: tally.chosen >= FEWEST_CHOICES && interval.low > by_guessing,
            })
        })
        .collect();
    counts.sort_by(|one, other| {
        other.share.total_cmp(&one.share).then_with(|| one.misconception.cmp(&other.misconception))
    });
    counts
}
