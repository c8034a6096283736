//! The record of an apprentice's progress, and how it is written down. Entry points: [`Progress::read`], [`Progress::write`].
//!
//! ```json
//! {"format": 1, "skills": {"undertone": {"known": 0.8, "answers": 4, "credit": 3.5, "last": 1700000000,
//!  "spaced": 2, "last_spaced": 1700000000}}}
//! ```
//!
//! Skills that the course no longer has stay in the record; so do entries that make no sense and keys that nobody knows.

use super::parameters::Parameters;
use super::{Knowledge, Seconds};
use crate::json;
use crate::language::Language;
use crate::say;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use std::collections::BTreeMap;
use thiserror::Error;

/// Version of the format written here.
pub const FORMAT: u64 = 1;

/// What an apprentice has shown so far.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Progress {
    /// Traces by id of the skill.
    pub skills: BTreeMap<String, Knowledge>,
    /// Entries under `skills` that could not be read, as they stood: written back, until the skill is practised again.
    pub unread: BTreeMap<String, Value>,
    /// Other keys of the record, as they stood: written back.
    pub others: BTreeMap<String, Value>,
}

/// Why a record cannot be read at all.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum ReadError {
    /// It is no JSON object with the keys wanted.
    #[error("this is no record of progress: {0}")]
    NoRecord(Unusable),
    /// Its format is newer than this program.
    #[error(
        "this record of progress has format {found}; this program reads up to {FORMAT}: use the program that wrote it, or a newer one"
    )]
    Newer {
        /// The format found.
        found: u64,
    },
}

impl ReadError {
    /// The error in a language; in English the same as `Display`.
    pub fn said(&self, language: &Language) -> String {
        match self {
            ReadError::NoRecord(why) => {
                say!(language, "exercise-record-none", why = why.said(language))
            }
            ReadError::Newer { found } => {
                say!(language, "exercise-record-newer", found = found.to_string(), known = FORMAT)
            }
        }
    }
}

/// An entry that could not be used.
#[derive(Debug, Clone, PartialEq, Error)]
#[error("progress in `{skill}` cannot be used and counts as none: {why}")]
pub struct Unused {
    /// Id of the skill.
    pub skill: String,
    /// Why.
    pub why: Unusable,
}

/// Why an entry cannot be used.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum Unusable {
    /// It is no object.
    #[error("it is no JSON object")]
    NoObject,
    /// There is nothing in it.
    #[error("it is empty")]
    Empty,
    /// Its text ends too early, in this line.
    #[error("it ends early, at line {0}; perhaps it was not copied whole")]
    EndsEarly(usize),
    /// A key is missing or of another kind.
    #[error("{0}")]
    Unreadable(String),
    /// The chance is none.
    #[error("`known` is {0}, outside 0 to 1")]
    Known(f64),
    /// There is more credit than answers.
    #[error("`credit` is {credit}, outside 0 to the number of answers, {answers}")]
    Credit {
        /// The credit.
        credit: f64,
        /// The number of answers.
        answers: u32,
    },
}

impl Unused {
    /// The note in a language; in English the same as `Display`.
    pub fn said(&self, language: &Language) -> String {
        let why = self.why.said(language);
        say!(language, "exercise-record-unused", skill = &self.skill, why = why)
    }
}

impl Unusable {
    fn said(&self, language: &Language) -> String {
        match self {
            Unusable::NoObject => language.say("exercise-record-no-object", &[]),
            Unusable::Empty => language.say("exercise-record-empty", &[]),
            Unusable::EndsEarly(line) => say!(language, "exercise-record-ends", line = line.to_string()),
            Unusable::Unreadable(why) => why.clone(),
            Unusable::Known(known) => {
                say!(language, "exercise-record-known", known = language.number(*known))
            }
            Unusable::Credit { credit, answers } => {
                let credit = language.number(*credit);
                say!(language, "exercise-record-credit", credit = credit, answers = *answers)
            }
        }
    }
}

#[derive(Serialize, Deserialize)]
struct Written {
    format: u64,
    #[serde(default)]
    skills: BTreeMap<String, Value>,
    #[serde(flatten)]
    others: BTreeMap<String, Value>,
}

impl Progress {
    /// Nothing shown yet.
    pub fn new() -> Self {
        Self::default()
    }

    /// Reads a record, and says which entries of it could not be used.
    ///
    /// # Errors
    /// [`ReadError`] where the text is no record or one of a newer format.
    pub fn read(text: &str) -> Result<(Self, Vec<Unused>), ReadError> {
        if text.trim().is_empty() {
            return Err(ReadError::NoRecord(Unusable::Empty));
        }
        let value: Value =
            serde_json::from_str(text).map_err(|error| ReadError::NoRecord(unreadable(&error, text)))?;
        if !value.is_object() {
            return Err(ReadError::NoRecord(Unusable::NoObject));
        }
        // The version first: a newer record may look different everywhere else.
        if let Some(found) = value.get("format").and_then(Value::as_u64)
            && found > FORMAT
        {
            return Err(ReadError::Newer { found });
        }
        let written: Written =
            serde_json::from_value(value).map_err(|error| ReadError::NoRecord(unreadable(&error, "")))?;
        let mut progress = Progress { others: written.others, ..Progress::default() };
        let mut notes = Vec::new();
        for (skill, value) in written.skills {
            match entry(&value) {
                Ok(knowledge) => {
                    progress.skills.insert(skill, knowledge);
                }
                Err(why) => {
                    notes.push(Unused { skill: skill.clone(), why });
                    progress.unread.insert(skill, value);
                }
            }
        }
        Ok((progress, notes))
    }

    /// The record as text: JSON, one line a key, ending in a line break. The same progress gives the same bytes.
    pub fn write(&self) -> String {
        let entries = self.skills.iter().filter_map(|(skill, knowledge)| {
            serde_json::to_value(knowledge).ok().map(|value| (skill.clone(), value))
        });
        let mut skills = self.unread.clone();
        skills.extend(entries);
        let written = Written { format: FORMAT, skills, others: self.others.clone() };
        // Values and maps with text keys can always be written.
        serde_json::to_string_pretty(&written).unwrap_or_default() + "\n"
    }

    /// The trace of a skill; a beginner's where there is none.
    pub fn knowledge(&self, skill: &str, parameters: &Parameters) -> Knowledge {
        self.skills.get(skill).cloned().unwrap_or_else(|| Knowledge::new(parameters))
    }

    /// Takes an answer into account: see [`Knowledge::answered`].
    pub fn answered(&mut self, skill: &str, parameters: &Parameters, guess: f64, credit: f64, now: Seconds) {
        let after = self.knowledge(skill, parameters).answered(parameters, guess, credit, now);
        self.unread.remove(skill);
        self.skills.insert(skill.to_owned(), after);
    }
}

fn unreadable(error: &serde_json::Error, text: &str) -> Unusable {
    if error.is_eof() {
        Unusable::EndsEarly(error.line())
    } else {
        Unusable::Unreadable(json::said(error, text))
    }
}

/// A trace whose numbers can be true.
fn entry(value: &Value) -> Result<Knowledge, Unusable> {
    if !value.is_object() {
        return Err(Unusable::NoObject);
    }
    let knowledge: Knowledge =
        serde_json::from_value(value.clone()).map_err(|error| unreadable(&error, ""))?;
    if !(0.0..=1.0).contains(&knowledge.known) {
        return Err(Unusable::Known(knowledge.known));
    }
    // A little more than the number of answers is rounding.
    let most = f64::from(knowledge.answers) + 1e-6;
    if !(0.0..=most).contains(&knowledge.credit) {
        return Err(Unusable::Credit { credit: knowledge.credit, answers: knowledge.answers });
    }
    Ok(knowledge)
}
