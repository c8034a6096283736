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
use crate::language::Language;
use crate::say;
use serde::Serialize;
use serde_json::{Map, Value};
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

/// Why a record, or an entry of it, cannot be used.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum Unusable {
    /// There is nothing in it.
    #[error("it is empty")]
    Empty,
    /// Its text is not that of a JSON object.
    #[error("it is another kind of file; a record is a `.json` file that practice has kept or saved")]
    OtherFile,
    /// Its text ends too early.
    #[error("it ends early, at line {line}, column {column}; perhaps it was not copied whole")]
    EndsEarly {
        /// The last line, from 1.
        line: usize,
        /// The last column, in characters from 1.
        column: usize,
    },
    /// Its text is no JSON from some place on.
    #[error(
        "what stands at line {line}, column {column} makes it unreadable; take the file as it was saved, or an earlier copy"
    )]
    Broken {
        /// The line, from 1.
        line: usize,
        /// The column, in characters from 1.
        column: usize,
    },
    /// It is an object that does not name its format.
    #[error("`format` is missing, which every record has; perhaps it is another kind of file")]
    NoFormat,
    /// An entry is no object.
    #[error("it is no JSON object")]
    NoObject,
    /// A field is missing.
    #[error("`{0}` is missing")]
    Missing(&'static str),
    /// A field has a value that cannot be.
    #[error("`{field}` must be {wanted}")]
    Field {
        /// Name of the field.
        field: &'static str,
        /// What it must be.
        wanted: Wanted,
    },
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

/// What a field of a record must be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
pub enum Wanted {
    /// The version of the format.
    #[error("the number {FORMAT}")]
    Format,
    /// A JSON object.
    #[error("a JSON object")]
    Object,
    /// Any number.
    #[error("a number")]
    Number,
    /// A number of times.
    #[error("a whole number from 0 to {}", u32::MAX)]
    Count,
    /// A time, if there was one.
    #[error("a whole number of seconds, or `null`")]
    Seconds,
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
            Unusable::Empty => language.say("exercise-record-empty", &[]),
            Unusable::OtherFile => language.say("exercise-record-other", &[]),
            Unusable::EndsEarly { line, column } => {
                say!(language, "exercise-record-ends", line = line.to_string(), column = column.to_string())
            }
            Unusable::Broken { line, column } => {
                say!(language, "exercise-record-broken", line = line.to_string(), column = column.to_string())
            }
            Unusable::NoFormat => language.say("exercise-record-no-format", &[]),
            Unusable::NoObject => language.say("exercise-record-no-object", &[]),
            Unusable::Missing(field) => say!(language, "exercise-record-missing", field = *field),
            Unusable::Field { field, wanted } => {
                let wanted = match wanted {
                    Wanted::Format => "format",
                    Wanted::Object => "object",
                    Wanted::Number => "number",
                    Wanted::Count => "count",
                    Wanted::Seconds => "seconds",
                };
                let (known, most) = (FORMAT.to_string(), u32::MAX.to_string());
                say!(
                    language,
                    "exercise-record-field",
                    field = *field,
                    wanted = wanted,
                    known = known,
                    most = most
                )
            }
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

#[derive(Serialize)]
struct Written {
    format: u64,
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
        let other = || ReadError::NoRecord(Unusable::OtherFile);
        if !text.trim_start().starts_with('{') {
            return Err(other());
        }
        let value = serde_json::from_str(text).map_err(|error| ReadError::NoRecord(unread(&error, text)))?;
        let Value::Object(mut record) = value else { return Err(other()) };
        // The version first: a newer record may look different everywhere else.
        let format = record.remove("format").ok_or(ReadError::NoRecord(Unusable::NoFormat))?;
        match format.as_u64() {
            Some(found) if found > FORMAT => return Err(ReadError::Newer { found }),
            Some(FORMAT) => {}
            _ => return Err(cannot_be("format", Wanted::Format)),
        }
        let skills = match record.remove("skills") {
            None => Map::new(),
            Some(Value::Object(skills)) => skills,
            Some(_) => return Err(cannot_be("skills", Wanted::Object)),
        };
        let mut progress = Progress { others: record.into_iter().collect(), ..Progress::default() };
        let mut notes = Vec::new();
        for (skill, value) in skills {
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

/// Why a text is no JSON, and where: line and column from 1, the column in characters.
fn unread(error: &serde_json::Error, text: &str) -> Unusable {
    let line = text.lines().nth(error.line().saturating_sub(1)).unwrap_or_default();
    // The parser counts bytes: those that go on with a character count for none.
    let before = line.bytes().take(error.column()).filter(|byte| byte & 0xc0 != 0x80);
    let (line, column) = (error.line(), before.count().max(1));
    if error.is_eof() { Unusable::EndsEarly { line, column } } else { Unusable::Broken { line, column } }
}

fn cannot_be(field: &'static str, wanted: Wanted) -> ReadError {
    ReadError::NoRecord(Unusable::Field { field, wanted })
}

/// A trace whose numbers can be true.
fn entry(value: &Value) -> Result<Knowledge, Unusable> {
    let Value::Object(entry) = value else { return Err(Unusable::NoObject) };
    let value = |field: &'static str| entry.get(field).ok_or(Unusable::Missing(field));
    let number =
        |field: &'static str| value(field)?.as_f64().ok_or(Unusable::Field { field, wanted: Wanted::Number });
    let count = |field: &'static str| {
        let found = value(field)?.as_u64().and_then(|count| u32::try_from(count).ok());
        found.ok_or(Unusable::Field { field, wanted: Wanted::Count })
    };
    let seconds = |field: &'static str| match entry.get(field) {
        None | Some(Value::Null) => Ok(None),
        Some(value) => value.as_i64().map(Some).ok_or(Unusable::Field { field, wanted: Wanted::Seconds }),
    };
    let knowledge = Knowledge {
        known: number("known")?,
        answers: count("answers")?,
        credit: number("credit")?,
        last: seconds("last")?,
        spaced: count("spaced")?,
        last_spaced: seconds("last_spaced")?,
    };
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
