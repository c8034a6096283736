//! What a session has shown. Entry point: [`of`].

use super::{Given, Session, by_skill, with_needs};
use crate::assess::cohort::{MisconceptionCount, misconceptions_of};
use crate::assess::knowledge::{MASTERED, Offer, Progress, READY, Recent, Seconds, choose};
use serde::Serialize;

/// Skills named as what to practise next.
const MOST_NEXT: usize = 3;
/// Lessons named to be reread.
const MOST_LESSONS: usize = 3;

/// The end of a session.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Summary {
    /// Skills that were asked for, in the order in which they came.
    pub skills: Vec<SkillChange>,
    /// Ids of the skills most needed next, at most three, the most needed first; mastered ones are not among them.
    pub next: Vec<String>,
    /// Ids of lessons to reread, with how many answers led there; the most answers first, at most three.
    pub reread: Vec<(String, usize)>,
    /// Misconceptions that were chosen at least once.
    pub misconceptions: Vec<MisconceptionCount>,
}

/// One skill before and after a session.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SkillChange {
    /// Id of the skill.
    pub skill: String,
    /// Answers in this session.
    pub answers: u32,
    /// Their mean credit, 0 to 1.
    pub credit: f64,
    /// Chance that it was known when the session began, 0 to 1.
    pub before: f64,
    /// Chance that it is known now.
    pub after: f64,
}

/// How well a skill is known, in words.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Level {
    /// Not better than a beginner's, or hardly.
    Little,
    /// Not enough to build on.
    Part,
    /// Enough to build on.
    Well,
    /// Mastered.
    Mastered,
}

/// Chance of knowing from which somebody knows more than a little. Representative.
const PART: f64 = 0.35;

impl Level {
    /// The level of a chance of knowing: mastered from [`MASTERED`], well from [`READY`].
    pub fn of(known: f64) -> Self {
        match known {
            known if known >= MASTERED => Level::Mastered,
            known if known >= READY => Level::Well,
            known if known >= PART => Level::Part,
            _ => Level::Little,
        }
    }

    /// The id of its message, which says it after "known".
    pub fn message(self) -> &'static str {
        match self {
            Level::Little => "practice-level-little",
            Level::Part => "practice-level-part",
            Level::Well => "practice-level-well",
            Level::Mastered => "practice-level-mastered",
        }
    }
}

pub(super) fn of(session: &Session<'_>, now: Seconds) -> Summary {
    let known = |progress: &Progress, skill: &str, at: Seconds| {
        progress.knowledge(skill, &session.parameters).known_at(&session.parameters, at)
    };
    let skills = by_skill(&session.given)
        .into_iter()
        .map(|(skill, answers, credit)| SkillChange {
            skill: skill.to_owned(),
            answers,
            credit,
            before: known(&session.before, skill, session.begun),
            after: known(&session.progress, skill, now),
        })
        .collect();
    Summary {
        skills,
        next: next(session, now),
        reread: reread(&session.given),
        misconceptions: shown(&session.given),
    }
}

/// The skills most needed: what a new session would ask first.
fn next(session: &Session<'_>, now: Seconds) -> Vec<String> {
    let mut offers: Vec<Offer<'_>> = session.offers();
    offers.retain(|offer| {
        let trace = session.progress.knowledge(offer.skill, &session.parameters);
        trace.known_at(&session.parameters, now) < MASTERED
    });
    let mut skills: Vec<String> = Vec::new();
    while skills.len() < MOST_NEXT {
        let best = with_needs(&session.closed(now), |needs| {
            choose(&offers, needs, &session.progress, &session.parameters, &Recent::default(), now)
        });
        let Some(skill) = best.map(|best| offers[best].skill) else { break };
        skills.push(skill.to_owned());
        offers.retain(|offer| offer.skill != skill);
    }
    skills
}

fn reread(given: &[Given]) -> Vec<(String, usize)> {
    let mut lessons: Vec<(String, usize)> = Vec::new();
    for lesson in given.iter().filter_map(|answer| answer.lesson.as_ref()) {
        match lessons.iter_mut().find(|(id, _)| id == lesson) {
            Some((_, count)) => *count += 1,
            None => lessons.push((lesson.clone(), 1)),
        }
    }
    // Sorting keeps the order of those with as many answers.
    lessons.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
    lessons.truncate(MOST_LESSONS);
    lessons
}

fn shown(given: &[Given]) -> Vec<MisconceptionCount> {
    let leads: Vec<_> =
        given.iter().filter_map(|answer| answer.shown.as_ref()).map(|shown| (shown, shown.leads())).collect();
    let shown: Vec<_> = leads.iter().map(|(shown, leads)| shown.of("", leads)).collect();
    let mut counts = misconceptions_of(&shown);
    counts.retain(|count| count.chosen > 0);
    counts
}
