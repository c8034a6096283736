//! Answer slips of assignments: whose, of which set, and the raw answers. Entry point: [`AssignmentSlip::read`].
//!
//! ```json
//! {"form": "healedhue-assignment-1", "assignment": "week-three", "person": "ada", "course": "…", "set": "…",
//!  "answers": ["B", "A C", "", "a4 d2", "41.5"]}
//! ```

use crate::handed::{NoText, text_of};
use crate::json;
use serde::{Deserialize, Serialize};
use thiserror::Error;

/// Form of a slip.
pub const FORM: &str = "healedhue-assignment-1";
/// Longest slip that is read, in bytes: a hundred times the usual.
pub const MOST_BYTES: u64 = 200_000;
/// Longest answer, in characters; the rest could only be noise.
const MOST_ANSWER: usize = 400;

/// Whose a set is, and of what.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Identity {
    /// Id of the assignment.
    pub assignment: String,
    /// Id of the person.
    pub person: String,
    /// Version of the course (see [`Course::version`](crate::course::Course)).
    pub course: String,
    /// Digest of the set.
    pub set: String,
}

/// What an apprentice hands in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct AssignmentSlip {
    form: &'static str,
    /// Whose it is, and of what.
    #[serde(flatten)]
    pub identity: Identity,
    /// Raw answers, one for each exercise; empty where there is none.
    pub answers: Vec<String>,
}

/// Why a slip is not marked.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum SlipError {
    /// It could not be read at all.
    #[error("it cannot be read: {0}")]
    Unreadable(String),
    /// It is too long.
    #[error("{0} bytes are more than the {MOST_BYTES} of the longest slip")]
    TooLong(u64),
    /// There is nothing in it.
    #[error("the file is empty")]
    Empty,
    /// It is something else, by its first bytes.
    #[error("the file is {0}, not a slip of an assignment")]
    Kind(&'static str),
    /// It ends too early, in this line.
    #[error("the slip ends early, at line {0}; perhaps it was not copied whole")]
    EndsEarly(usize),
    /// It is none.
    #[error("this is no slip of an assignment: {0}")]
    NotASlip(String),
    /// It is of another form.
    #[error("this is a slip of the form `{0}`; this program reads `{FORM}`")]
    Form(String),
    /// It belongs to another assignment.
    #[error("this slip belongs to the assignment `{found}`, not to `{expected}`")]
    Assignment {
        /// On the slip.
        found: String,
        /// The one that is collected.
        expected: String,
    },
    /// The assignment does not name this person.
    #[error("the assignment names no person `{0}`")]
    Person(String),
    /// The course has changed.
    #[error(
        "this slip belongs to version {found} of the course; this is {expected}: collect it with the course it was made from"
    )]
    Course {
        /// First figures, on the slip.
        found: String,
        /// First figures of the course at hand.
        expected: String,
    },
    /// The assignment has changed.
    #[error(
        "this slip belongs to another set of exercises (`{found}`, not `{expected}`): the assignment's lessons, exercises or seed \
         were changed after the pages were written"
    )]
    Set {
        /// On the slip.
        found: String,
        /// The set made now.
        expected: String,
    },
    /// Answers are missing, or too many.
    #[error("answers on the slip: {found}; exercises in the set: {expected}")]
    Answers {
        /// On the slip.
        found: usize,
        /// In the set.
        expected: usize,
    },
    /// The same person's slip was marked before.
    #[error("a second slip of `{person}`; the one in {first} is marked")]
    Again {
        /// The person.
        person: String,
        /// Where the first one is.
        first: String,
    },
    /// The person's set cannot be made any more.
    #[error("the exercises cannot be made again: {0}")]
    Gone(String),
}

#[derive(Deserialize)]
struct Written {
    form: String,
    #[serde(flatten)]
    identity: Identity,
    answers: Vec<Option<String>>,
}

impl AssignmentSlip {
    /// A slip with these answers.
    pub fn new(identity: Identity, answers: Vec<String>) -> Self {
        AssignmentSlip { form: FORM, identity, answers }
    }

    /// Reads a slip. Whatever else stands on it is not looked at.
    ///
    /// # Errors
    /// [`SlipError`] where it is none.
    pub fn read(bytes: &[u8]) -> Result<Self, SlipError> {
        if bytes.len() as u64 > MOST_BYTES {
            return Err(SlipError::TooLong(bytes.len() as u64));
        }
        let text = text_of(bytes).map_err(|error| match error {
            NoText::Kind(kind) => SlipError::Kind(kind),
            broken => SlipError::NotASlip(broken.to_string()),
        })?;
        let text = text.trim();
        if text.is_empty() {
            return Err(SlipError::Empty);
        }
        let value: serde_json::Value =
            json::read(text, &[]).map_err(|wrong| match json::ends_early(text) {
                Some(line) => SlipError::EndsEarly(line),
                None => SlipError::NotASlip(wrong.why),
            })?;
        if !value.is_object() {
            return Err(SlipError::NotASlip("it is no JSON object".to_owned()));
        }
        let form = value.get("form").and_then(serde_json::Value::as_str).unwrap_or_default();
        if form != FORM && !form.is_empty() {
            return Err(SlipError::Form(seen(form, 40)));
        }
        let written: Written =
            serde_json::from_value(value).map_err(|error| SlipError::NotASlip(error.to_string()))?;
        if written.form != FORM {
            return Err(SlipError::Form(written.form));
        }
        let answers =
            written.answers.into_iter().map(|answer| seen(&answer.unwrap_or_default(), MOST_ANSWER));
        Ok(AssignmentSlip::new(written.identity, answers.collect()))
    }

    /// The slip as text: JSON, ending in a line break.
    pub fn write(&self) -> String {
        serde_json::to_string_pretty(self).unwrap_or_default() + "\n"
    }
}

/// The beginning of a text, without characters that would command a terminal.
pub(super) fn seen(text: &str, most: usize) -> String {
    text.chars().take(most).map(|c| if c.is_control() { char::REPLACEMENT_CHARACTER } else { c }).collect()
}
