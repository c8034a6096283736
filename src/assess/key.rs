//! Keys: which questions a paper asks, and what every answer to them is worth.
//!
//! Entry points: [`Key::new`] for one paper, [`MarkTables`] for the questions of any number of papers, each once. Both are kept in JSON
//! and read back, so that a paper is marked as it was set whatever becomes of the course. [`digest_of_kept`] is kept apart from such files,
//! so that one that was changed by accident is noticed; where the blueprint is at hand, [`Key::differs_from`] compares what it says.

use super::paper::{Paper, PaperId};
use super::pool::{PaperPool, PoolQuestion};
use super::table::MarkTable;
use crate::course::{Blueprint, Course};
use crate::handed::text_of;
use crate::json;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use thiserror::Error;

/// Form of a kept key.
const KEY_FORM: &str = "healedhue-key-1";
/// Form of kept mark tables.
const TABLES_FORM: &str = "healedhue-marks-1";

/// Why a kept key cannot be used.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum KeyError {
    /// It cannot be read.
    #[error("this is no file that healedhue kept with papers, or a damaged one: {0}")]
    Unreadable(String),
    /// Its text ends too early, in this line.
    #[error("it ends early, at line {0}; perhaps it was not copied whole")]
    EndsEarly(usize),
    /// It is of another form.
    #[error("this is a key of the form `{0}`, which this version of healedhue does not read")]
    Form(String),
}

/// The key of one paper. What its questions are worth stands in [`MarkTables`].
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Key {
    /// Form of this key.
    form: String,
    /// The paper.
    pub paper: PaperId,
    /// Its title.
    pub title: String,
    /// Share of the whole mark that passes, in percent.
    pub pass_mark: f64,
    /// Standard error of the pass mark itself, from how far the judges differ; percent. None with one judge.
    pub pass_mark_error: Option<f64>,
    /// Standard error of measurement at the pass mark, percent.
    pub standard_error: f64,
    /// Difficulty of the whole paper, 0 to 1.
    pub difficulty: f64,
    /// Its sections.
    pub sections: Vec<KeySection>,
}

/// A section of a key.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct KeySection {
    /// Id.
    pub id: String,
    /// Title.
    pub title: String,
    /// Share of the whole mark, percent.
    pub weight: f64,
    /// What the judges expect of a candidate who is just good enough, 0 to 1.
    pub estimate: f64,
    /// Names of its questions, in the order asked.
    pub questions: Vec<String>,
}

impl Key {
    /// The key of a paper.
    pub fn new(pool: &PaperPool, paper: &Paper) -> Self {
        let blueprint = pool.blueprint;
        let sections: Vec<KeySection> = blueprint
            .sections
            .iter()
            .enumerate()
            .map(|(place, section)| KeySection {
                id: section.id.clone(),
                title: section.title.clone(),
                weight: section.weight,
                // Without the last digits of a mean of decimals.
                estimate: libm::round(blueprint.estimate(place) * 1e12) / 1e12,
                questions: paper
                    .questions
                    .iter()
                    .filter(|picked| picked.section == place)
                    .map(|picked| pool.questions[picked.question].name())
                    .collect(),
            })
            .collect();
        Key {
            form: KEY_FORM.to_owned(),
            paper: paper.id.clone(),
            title: blueprint.title.clone(),
            pass_mark: blueprint.pass_mark(),
            pass_mark_error: blueprint.pass_mark_error(),
            standard_error: standard_error(&sections),
            difficulty: paper.difficulty,
            sections,
        }
    }

    /// Reads a kept key.
    ///
    /// # Errors
    /// [`KeyError`] where it is none.
    pub fn read(bytes: &[u8]) -> Result<Self, KeyError> {
        let key: Key = read_kept(bytes)?;
        if key.form == KEY_FORM { Ok(key) } else { Err(KeyError::Form(key.form)) }
    }

    /// What in this key is not as the blueprint has it that its paper was made from; `None` where all is. Which questions were picked is not
    /// looked at: that takes their pool.
    pub fn differs_from(&self, blueprint: &Blueprint) -> Option<&'static str> {
        // Below a billionth of a percent it is rounding.
        let far = |one: f64, other: f64| (one - other).abs() > 1e-9;
        let error = (self.pass_mark_error.unwrap_or(0.0), blueprint.pass_mark_error().unwrap_or(0.0));
        if far(self.pass_mark, blueprint.pass_mark()) {
            return Some("pass_mark");
        }
        if far(error.0, error.1) {
            return Some("pass_mark_error");
        }
        if far(self.standard_error, standard_error(&self.sections)) {
            return Some("standard_error");
        }
        let same = |(place, kept): (usize, &KeySection)| {
            blueprint.sections.get(place).is_some_and(|section| {
                kept.id == section.id
                    && !far(kept.weight, section.weight)
                    && !far(kept.estimate, blueprint.estimate(place))
                    && kept.questions.len() == section.questions as usize
            })
        };
        let all_same =
            self.sections.len() == blueprint.sections.len() && self.sections.iter().enumerate().all(same);
        (!all_same).then_some("sections")
    }

    /// Names of all questions, in the order asked.
    pub fn questions(&self) -> impl Iterator<Item = &str> {
        self.sections.iter().flat_map(|section| &section.questions).map(String::as_str)
    }
}

/// Reads a file kept with papers.
///
/// # Errors
/// [`KeyError`] where it cannot be read, in words.
pub(crate) fn read_kept<T: DeserializeOwned>(bytes: &[u8]) -> Result<T, KeyError> {
    serde_json::from_slice(bytes).or_else(|_| {
        // Once more, slower, to say what is wrong.
        let text = text_of(bytes).map_err(|error| KeyError::Unreadable(error.to_string()))?;
        if let Some(line) = json::ends_early(&text) {
            return Err(KeyError::EndsEarly(line));
        }
        json::read(&text, &[]).map_err(|wrong| {
            let at = wrong.field().map_or_else(String::new, |field| format!("{field}: "));
            KeyError::Unreadable(format!("{at}{}", wrong.why))
        })
    })
}

/// SHA-256 of a file kept with papers, its first 32 figures. Line ends are counted alike however a system writes them.
pub(crate) fn digest_of_kept(bytes: &[u8]) -> String {
    let mut hash = Sha256::new();
    bytes.split(|byte| *byte == b'\r').for_each(|part| hash.update(part));
    hash.finalize().iter().take(16).map(|byte| format!("{byte:02x}")).collect()
}

/// Standard error, in percent of the whole mark, of the mark of a candidate whose true mark is the pass mark: the binomial error of
/// Lord (1955), section by section, sections weighted. Partial credit varies less than right or wrong, so this is the most it can be.
fn standard_error(sections: &[KeySection]) -> f64 {
    let variance: f64 = sections
        .iter()
        .map(|section| {
            let questions = section.questions.len().max(1) as f64;
            section.weight * section.weight * section.estimate * (1.0 - section.estimate) / questions
        })
        .sum();
    libm::sqrt(variance)
}

/// What every answer to each of some questions is worth.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct MarkTables {
    /// Form of these tables.
    form: String,
    /// By the question's name.
    pub questions: BTreeMap<String, MarkTable>,
}

impl MarkTables {
    /// The tables of these questions.
    pub fn new<'q>(course: &Course, questions: impl IntoIterator<Item = &'q PoolQuestion>) -> Self {
        let questions = questions
            .into_iter()
            .map(|question| (question.name(), MarkTable::new(course, &question.exercise)));
        MarkTables { form: TABLES_FORM.to_owned(), questions: questions.collect() }
    }

    /// Reads kept tables.
    ///
    /// # Errors
    /// [`KeyError`] where these are none.
    pub fn read(bytes: &[u8]) -> Result<Self, KeyError> {
        let tables: MarkTables = read_kept(bytes)?;
        if tables.form == TABLES_FORM { Ok(tables) } else { Err(KeyError::Form(tables.form)) }
    }
}
