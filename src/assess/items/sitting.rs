//! The answers of a cohort to the items of a paper, checked. Entry point: [`Sitting::new`].

use crate::assess::CREDIT;
use crate::quantity::OutOfRange;
use std::collections::BTreeSet;
use thiserror::Error;

/// Credit from which an answer counts as right where a statistic knows only right and wrong (KR-20, Rasch): full credit.
/// Partial credit counts as wrong there, and as what it is everywhere else.
pub const RIGHT_FROM: f64 = 1.0;

/// What is analysed as one question: a question of the bank, an exercise, a drill, or a place on the paper.
#[derive(Debug, Clone, PartialEq)]
pub struct Item {
    /// Unique id.
    pub id: String,
    /// Its options; empty where the answer is not chosen from a list.
    pub options: Vec<ItemOption>,
}

/// One option of an item.
#[derive(Debug, Clone, PartialEq)]
pub struct ItemOption {
    /// In words.
    pub label: String,
    /// Whether it is a right answer.
    pub key: bool,
    /// Id of the misconception that leads to it.
    pub misconception: Option<String>,
}

/// One candidate's answer to one item.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// Index of the item.
    pub item: usize,
    /// Credit, 0 to 1. A question that was put and left blank is an answer with credit 0; a question that was never put, or
    /// is not to count, has no answer at all ("missing").
    pub credit: f64,
    /// Index of the option chosen; `None` for a blank or where there are no options.
    pub chosen: Option<usize>,
    /// Indices of the options this candidate was shown; `None` for all of them.
    pub offered: Option<Vec<u16>>,
}

impl Answer {
    /// Whether the answer is right to the full.
    pub fn is_right(&self) -> bool {
        self.credit >= RIGHT_FROM
    }

    /// Whether an option was shown to who gave this answer.
    pub fn was_offered(&self, option: usize) -> bool {
        self.offered.as_ref().is_none_or(|shown| shown.iter().any(|&at| usize::from(at) == option))
    }
}

/// One person's answers.
#[derive(Debug, Clone, PartialEq)]
pub struct Candidate {
    /// Unique id.
    pub id: String,
    /// Answers, at most one an item, in any order.
    pub answers: Vec<Answer>,
}

/// Checked answers of a cohort: every index exists, every credit is within 0 to 1, and nobody answered an item twice, unless the
/// items are drills.
#[derive(Debug, Clone, PartialEq)]
pub struct Sitting {
    items: Vec<Item>,
    candidates: Vec<Candidate>,
    has_repeats: bool,
}

/// What is wrong with the answers of a cohort.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum SittingError {
    /// Two items have one id.
    #[error("two items are called `{0}`")]
    ItemTwice(String),
    /// Two candidates have one id.
    #[error("two candidates are called `{0}`")]
    CandidateTwice(String),
    /// An answer to an item that is not there.
    #[error(
        "candidate `{candidate}` answers item number {item}, but there are {items} items, numbered from 0"
    )]
    NoItem {
        /// Who.
        candidate: String,
        /// The index given.
        item: usize,
        /// How many items there are.
        items: usize,
    },
    /// Two answers of one candidate to one item.
    #[error("candidate `{candidate}` answers item `{item}` twice")]
    AnswerTwice {
        /// Who.
        candidate: String,
        /// Id of the item.
        item: String,
    },
    /// An option that the item does not have, or that the candidate was not shown.
    #[error(
        "candidate `{candidate}`, item `{item}`: option number {option} is not among the options shown, numbered from 0"
    )]
    NoOption {
        /// Who.
        candidate: String,
        /// Id of the item.
        item: String,
        /// The index given.
        option: usize,
    },
    /// A credit outside 0 to 1.
    #[error("candidate `{candidate}`, item `{item}`: {error}")]
    Credit {
        /// Who.
        candidate: String,
        /// Id of the item.
        item: String,
        /// What is wrong with it.
        error: OutOfRange,
    },
}

impl Sitting {
    /// Checks the answers and sorts each candidate's by item.
    ///
    /// # Errors
    /// [`SittingError`] for the first thing that is wrong, naming candidate and item.
    pub fn new(items: Vec<Item>, candidates: Vec<Candidate>) -> Result<Self, SittingError> {
        let sitting = Sitting::of_drills(items, candidates)?;
        for person in &sitting.candidates {
            if let Some(pair) = person.answers.windows(2).find(|pair| pair[0].item == pair[1].item) {
                return Err(SittingError::AnswerTwice {
                    candidate: person.id.clone(),
                    item: sitting.items[pair[0].item].id.clone(),
                });
            }
        }
        Ok(sitting)
    }

    /// The same where an item is a drill, of which one paper may put several exercises: they count as questions of one
    /// difficulty (the model of identical siblings in the literature on item families: Sinharay, Johnson and Williamson 2003,
    /// from memory). There is no reliability of such a sitting; that belongs to the places on a paper.
    ///
    /// # Errors
    /// As [`Sitting::new`], but for answers of one candidate to one item.
    pub fn of_drills(items: Vec<Item>, mut candidates: Vec<Candidate>) -> Result<Self, SittingError> {
        let mut ids = BTreeSet::new();
        if let Some(item) = items.iter().find(|item| !ids.insert(item.id.as_str())) {
            return Err(SittingError::ItemTwice(item.id.clone()));
        }
        let mut ids = BTreeSet::new();
        if let Some(person) = candidates.iter().find(|person| !ids.insert(person.id.as_str())) {
            return Err(SittingError::CandidateTwice(person.id.clone()));
        }
        let mut has_repeats = false;
        for person in &mut candidates {
            for answer in &person.answers {
                check(&items, &person.id, answer)?;
            }
            person.answers.sort_by_key(|answer| answer.item);
            has_repeats |= person.answers.windows(2).any(|pair| pair[0].item == pair[1].item);
        }
        Ok(Sitting { items, candidates, has_repeats })
    }

    /// The items, in the order given.
    pub fn items(&self) -> &[Item] {
        &self.items
    }

    /// A sitting without items and without people.
    pub fn empty() -> Self {
        Sitting { items: Vec::new(), candidates: Vec::new(), has_repeats: false }
    }

    /// Whether somebody answered an item several times.
    pub fn has_repeats(&self) -> bool {
        self.has_repeats
    }

    /// The candidates, in the order given, each one's answers in the order of the items.
    pub fn candidates(&self) -> &[Candidate] {
        &self.candidates
    }
}

fn check(items: &[Item], candidate: &str, answer: &Answer) -> Result<(), SittingError> {
    let candidate = || candidate.to_owned();
    let Some(item) = items.get(answer.item) else {
        return Err(SittingError::NoItem { candidate: candidate(), item: answer.item, items: items.len() });
    };
    let no_option = |option| SittingError::NoOption { candidate: candidate(), item: item.id.clone(), option };
    CREDIT.check(answer.credit).map_err(|error| SittingError::Credit {
        candidate: candidate(),
        item: item.id.clone(),
        error,
    })?;
    if let Some(&option) =
        answer.offered.iter().flatten().find(|&&option| usize::from(option) >= item.options.len())
    {
        return Err(no_option(usize::from(option)));
    }
    match answer.chosen {
        Some(option) if option >= item.options.len() || !answer.was_offered(option) => Err(no_option(option)),
        _ => Ok(()),
    }
}
