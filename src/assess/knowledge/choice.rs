//! What to practise next. Entry point: [`choose`].

use super::parameters::Parameters;
use super::progress::Progress;
use super::{Knowledge, Seconds};
use std::cmp::Ordering;

/// Chance of knowing from which a skill counts as mastered: the criterion of Corbett and Anderson (1995).
pub const MASTERED: f64 = 0.95;
/// Chance of knowing from which a skill may be built on. Representative.
pub const READY: f64 = 0.6;
/// Questions that should lie between two of one skill, where other skills need practice too. Representative.
pub const SPACED_BY: usize = 2;

/// Something that can be practised: a drill, or an exercise.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Offer<'a> {
    /// Its id.
    pub id: &'a str,
    /// Id of the skill it trains.
    pub skill: &'a str,
    /// Id of the client it is about, where that is known beforehand.
    pub client: Option<&'a str>,
    /// Minutes it takes.
    pub minutes: f64,
    /// Chance of guessing it right (see [`AnswerForm`](super::AnswerForm)).
    pub guess: f64,
}

/// Skills that should come before another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SkillNeeds<'a> {
    /// Id of the skill.
    pub skill: &'a str,
    /// Ids of the skills it builds on.
    pub needs: &'a [&'a str],
}

/// What was practised just now.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Recent {
    /// Ids of the skills asked in this session, the latest last.
    pub skills: Vec<String>,
    /// Id of the last client.
    pub client: Option<String>,
    /// Id of the last offer.
    pub offer: Option<String>,
}

impl Recent {
    /// After one more question.
    pub fn asked(&mut self, offer: &Offer<'_>) {
        self.skills.push(offer.skill.to_owned());
        self.client = offer.client.map(str::to_owned);
        self.offer = Some(offer.id.to_owned());
    }
}

/// Index of the offer most needed; `None` where there is none.
///
/// In order of weight: not the last client again; skills whose needs are [`READY`] before those whose are not (a need that
/// no offer trains holds nothing up); skills not yet [`MASTERED`] first; not a skill of the last [`SPACED_BY`] questions;
/// the lowest chance of knowing; not the last offer again; the longest not practised; the order of the offers. Nothing here
/// excludes: with a single offer, that one comes.
pub fn choose(
    offers: &[Offer<'_>],
    needs: &[SkillNeeds<'_>],
    progress: &Progress,
    parameters: &Parameters,
    recent: &Recent,
    now: Seconds,
) -> Option<usize> {
    let known = |skill: &str| {
        progress.skills.get(skill).map_or(parameters.initial, |trace| trace.known_at(parameters, now))
    };
    let ready = |skill: &str| {
        needs
            .iter()
            .filter(|entry| entry.skill == skill)
            .flat_map(|entry| entry.needs)
            .all(|&need| need == skill || known(need) >= READY || !offers.iter().any(|o| o.skill == need))
    };
    let lately = recent.skills.iter().rev().take(SPACED_BY).collect::<Vec<_>>();
    let rank = |offer: &Offer<'_>| Rank {
        flags: [
            offer.client.is_some() && offer.client == recent.client.as_deref(),
            !ready(offer.skill),
            known(offer.skill) >= MASTERED,
            lately.iter().any(|skill| *skill == offer.skill),
        ],
        known: known(offer.skill),
        again: recent.offer.as_deref() == Some(offer.id),
        last: progress.skills.get(offer.skill).and_then(|trace: &Knowledge| trace.last),
    };
    offers
        .iter()
        .enumerate()
        .map(|(at, offer)| (rank(offer), at))
        .min_by(|one, other| one.0.order(&other.0).then(one.1.cmp(&other.1)))
        .map(|best| best.1)
}

/// What makes an offer less needed, the weightiest first.
struct Rank {
    flags: [bool; 4],
    known: f64,
    again: bool,
    last: Option<Seconds>,
}

impl Rank {
    fn order(&self, other: &Rank) -> Ordering {
        self.flags
            .cmp(&other.flags)
            .then(self.known.total_cmp(&other.known))
            .then(self.again.cmp(&other.again))
            .then(self.last.cmp(&other.last))
    }
}
