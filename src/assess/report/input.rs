//! What a report is made from: questions as they were put, and sheets as they were marked. Entry point: [`Cohort::check`].
//!
//! The types are plain, and what `healedhue report --marks` reads is their JSON; docs/reports.md shows it. Every question stands once,
//! and answers name it, so that ten thousand sheets stay small.

use crate::assess::CREDIT;
use crate::quantity::OutOfRange;
use serde::{Deserialize, Serialize};
use std::collections::{HashMap, HashSet};
use thiserror::Error;

/// Everything a report is made from.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Cohort {
    /// What the report is called: a group, a term. May be empty.
    #[serde(default)]
    pub title: String,
    /// Every question that is answered on some sheet.
    pub questions: Vec<Question>,
    /// The marked sheets.
    pub sheets: Vec<Sheet>,
}

/// One question as it was put: an exercise of a drill, or a question of the bank.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Question {
    /// Unique id: the drill and the number in its pool, or the id in the bank.
    pub id: String,
    /// Id of the drill it is an exercise of; none for a question of the bank, which is an item by itself.
    #[serde(default)]
    pub drill: Option<String>,
    /// Id of the skill.
    pub skill: String,
    /// The options in the order in which `chosen` counts them; empty where the answer is not one of a list.
    #[serde(default)]
    pub options: Vec<OptionPut>,
}

impl Question {
    /// What it counts as in the statistics: its drill, or itself.
    pub fn item(&self) -> &str {
        self.drill.as_deref().unwrap_or(&self.id)
    }
}

/// One option of a question.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct OptionPut {
    /// In words.
    pub say: String,
    /// Whether it is a right answer.
    #[serde(default)]
    pub right: bool,
    /// Id of the misconception that leads to it.
    #[serde(default)]
    pub misconception: Option<String>,
}

/// One paper as one person sat it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sheet {
    /// Id of the person.
    pub person: String,
    /// Name of the person: any text. May be empty; the id stands for it then.
    #[serde(default)]
    pub name: String,
    /// Whether this is practice: a set of exercises that was assigned, answered at leisure with the lessons at hand.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub practice: bool,
    /// Which paper; of practice, which assignment.
    pub paper: PaperSat,
    /// The mark that was given, where there is one.
    #[serde(default)]
    pub mark: Option<SheetMark>,
    /// How long it took, as the page told: whole seconds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seconds: Option<u32>,
    /// The answers in the order of the paper. A question left blank is an answer with credit 0; one that was never put, or is not to
    /// count, is left out.
    pub answers: Vec<SheetAnswer>,
}

/// Identity of a paper.
#[derive(Debug, Clone, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PaperSat {
    /// Id of the blueprint.
    pub blueprint: String,
    /// Version of the course; empty where unknown.
    #[serde(default)]
    pub course: String,
    /// The seed.
    #[serde(default)]
    pub seed: u64,
    /// Which attempt at it, from 1.
    #[serde(default = "first")]
    pub attempt: u32,
}

fn first() -> u32 {
    1
}

/// The mark of a sheet, in percent of the whole mark.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SheetMark {
    /// What was reached, 0 to 100.
    pub total: f64,
    /// What passes, 0 to 100; none where nothing hangs on it.
    #[serde(default)]
    pub pass_mark: Option<f64>,
    /// Standard error of measurement, percent.
    #[serde(default)]
    pub standard_error: Option<f64>,
}

/// One marked answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SheetAnswer {
    /// Id of the question.
    pub question: String,
    /// Id of the section it stood in; empty where a paper has none.
    #[serde(default)]
    pub section: String,
    /// 0 to 1.
    pub credit: f64,
    /// Place of the chosen option, from 0; none for a blank, or where there are no options.
    #[serde(default)]
    pub chosen: Option<usize>,
    /// Id of the misconception an answer shows that was not chosen from options: drops, a number, an order.
    #[serde(default)]
    pub misconception: Option<String>,
    /// How long it took, as the page told: whole seconds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seconds: Option<u32>,
}

/// What is wrong with a cohort.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum CohortError {
    /// Two questions have one id.
    #[error("questions[{0}]: a second question is called `{1}`; ids of questions are unique")]
    QuestionTwice(usize, String),
    /// A drill and a question of the bank share an id, or a drill has two skills.
    #[error("questions[{place}]: `{item}` {what}")]
    Item {
        /// Place of the question.
        place: usize,
        /// Id of the drill or question.
        item: String,
        /// What is wrong with it.
        what: &'static str,
    },
    /// An id is empty or too long.
    #[error("{0}: an id has 1 to {MOST_IN_ID} bytes; this one has {1}")]
    Id(String, usize),
    /// One person handed in one paper twice.
    #[error(
        "sheets[{place}]: `{person}` has this paper twice (blueprint `{blueprint}`, the same seed and attempt): the other one is \
         sheets[{other}]"
    )]
    SheetTwice {
        /// Place of the sheet.
        place: usize,
        /// Place of the other one.
        other: usize,
        /// Id of the person.
        person: String,
        /// Id of the blueprint.
        blueprint: String,
    },
    /// A number is out of bounds.
    #[error("sheets[{place}] of `{person}`: {error}")]
    Mark {
        /// Place of the sheet.
        place: usize,
        /// Id of the person.
        person: String,
        /// What is wrong.
        error: OutOfRange,
    },
    /// An answer cannot be.
    #[error("sheets[{place}].answers[{answer}] of `{person}`: {what}")]
    Answer {
        /// Place of the sheet.
        place: usize,
        /// Place of the answer.
        answer: usize,
        /// Id of the person.
        person: String,
        /// What is wrong.
        what: String,
    },
}

/// Longest id, in bytes. Names may be longer.
pub const MOST_IN_ID: usize = 200;
/// A mark or a pass mark.
const PERCENT: crate::quantity::Quantity = crate::quantity::Quantity::new("mark", "percent", 0.0, 100.0);
/// A standard error.
const ERROR: crate::quantity::Quantity =
    crate::quantity::Quantity::new("standard_error", "percent", 0.0, 100.0);

/// A cohort that is in order, with every answer's question found.
#[derive(Debug)]
pub(super) struct Checked<'c> {
    /// The cohort.
    pub cohort: &'c Cohort,
    /// For every sheet the places of its answers' questions.
    pub questions: Vec<Vec<usize>>,
}

impl Cohort {
    /// Checks that ids are unique, numbers within bounds, and that every answer's question and option exist.
    ///
    /// # Errors
    /// [`CohortError`] for the first thing that is wrong, with its place.
    pub fn check(&self) -> Result<(), CohortError> {
        self.checked().map(drop)
    }

    pub(super) fn checked(&self) -> Result<Checked<'_>, CohortError> {
        let places = self.check_questions()?;
        let mut papers = HashMap::new();
        let mut questions = Vec::with_capacity(self.sheets.len());
        for (place, sheet) in self.sheets.iter().enumerate() {
            check_id(&sheet.person, || format!("sheets[{place}].person"))?;
            check_id(&sheet.paper.blueprint, || format!("sheets[{place}].paper.blueprint"))?;
            if let Some(other) = papers.insert((&sheet.person, &sheet.paper, sheet.practice), place) {
                return Err(CohortError::SheetTwice {
                    place,
                    other,
                    person: sheet.person.clone(),
                    blueprint: sheet.paper.blueprint.clone(),
                });
            }
            let bounds = sheet.mark.iter().try_for_each(|mark| {
                PERCENT.check(mark.total)?;
                mark.pass_mark.map(|mark| PERCENT.check(mark)).transpose()?;
                mark.standard_error.map(|error| ERROR.check(error)).transpose()?;
                Ok(())
            });
            bounds.map_err(|error| CohortError::Mark { place, person: sheet.person.clone(), error })?;
            questions.push(self.check_answers(place, sheet, &places)?);
        }
        Ok(Checked { cohort: self, questions })
    }

    fn check_questions(&self) -> Result<HashMap<&str, usize>, CohortError> {
        let mut places = HashMap::new();
        let mut items: HashMap<&str, (&str, bool)> = HashMap::new();
        for (place, question) in self.questions.iter().enumerate() {
            check_id(&question.id, || format!("questions[{place}].id"))?;
            check_id(question.item(), || format!("questions[{place}].drill"))?;
            check_id(&question.skill, || format!("questions[{place}].skill"))?;
            if places.insert(question.id.as_str(), place).is_some() {
                return Err(CohortError::QuestionTwice(place, question.id.clone()));
            }
            let of_drill = question.drill.is_some();
            let known = *items.entry(question.item()).or_insert((&question.skill, of_drill));
            let what = if known.1 != of_drill {
                "is both a drill and a question of the bank"
            } else if known.0 != question.skill {
                "has exercises of two skills; a drill trains one"
            } else {
                continue;
            };
            return Err(CohortError::Item { place, item: question.item().to_owned(), what });
        }
        Ok(places)
    }

    fn check_answers(
        &self,
        place: usize,
        sheet: &Sheet,
        places: &HashMap<&str, usize>,
    ) -> Result<Vec<usize>, CohortError> {
        let mut seen = HashSet::with_capacity(sheet.answers.len());
        let check = |answer: &SheetAnswer, seen: &mut HashSet<usize>| {
            let question = *places
                .get(answer.question.as_str())
                .ok_or_else(|| format!("`{}` is not among the questions", shortened(&answer.question)))?;
            if !seen.insert(question) {
                return Err(format!("`{}` is answered twice on this sheet", answer.question));
            }
            CREDIT.check(answer.credit).map_err(|error| error.to_string())?;
            let options = self.questions[question].options.len();
            match answer.chosen {
                Some(chosen) if chosen >= options => Err(format!(
                    "`chosen` is {chosen}, but `{}` has {options} options, counted from 0",
                    answer.question
                )),
                _ => Ok(question),
            }
        };
        sheet
            .answers
            .iter()
            .enumerate()
            .map(|(at, answer)| {
                check(answer, &mut seen).map_err(|what| CohortError::Answer {
                    place,
                    answer: at,
                    person: sheet.person.clone(),
                    what,
                })
            })
            .collect()
    }
}

fn check_id(id: &str, place: impl Fn() -> String) -> Result<(), CohortError> {
    if (1..=MOST_IN_ID).contains(&id.len()) { Ok(()) } else { Err(CohortError::Id(place(), id.len())) }
}

fn shortened(text: &str) -> String {
    text.chars().take(60).collect()
}
