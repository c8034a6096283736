//! Answer slips, of papers and of assignments: what is written on them, and why something is none.
//!
//! Entry points: [`Slip::read`], and [`AssignmentSlip::read`](super::assigned::AssignmentSlip::read) for those of assignments. Whatever a slip is of, it is read in
//! the same steps: the text in whatever encoding an editor wrote it ([`text_on`]); its form, then what belongs to that form ([`written_on`]);
//! and the answers, which are texts or numbers ([`answers_of`]).

mod paper;

pub use paper::{Slip, SlipTime};

use crate::handed::{NoText, text_of};
use crate::json::{self, Wrong};
use serde::Deserialize;
use serde::de::DeserializeOwned;
use sha2::{Digest, Sha256};
use thiserror::Error;

/// Form of a slip of a paper.
pub(super) const OF_A_PAPER: &str = "healedhue-slip-1";
/// Form of a slip of an assignment.
pub(super) const OF_AN_ASSIGNMENT: &str = "healedhue-assignment-1";
/// Longest slip, in bytes: a hundred times the usual.
pub const MOST_BYTES: u64 = 500_000;

/// Why something is no slip.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum SlipError {
    /// It is too long.
    #[error("{0} bytes are more than the {MOST_BYTES} of the longest slip")]
    TooLong(u64),
    /// There is nothing in it.
    #[error("the file is empty")]
    Empty,
    /// It is something else, by its first bytes.
    #[error("the file is {0}, not an answer slip")]
    Kind(&'static str),
    /// Its text ends too early, in this line.
    #[error("the slip ends early, at line {0}; perhaps it was not copied whole")]
    EndsEarly(usize),
    /// A code that is not whole.
    #[error("the slip is cut short: the code is not whole; copy all of it")]
    CodeCutShort,
    /// A code whose letters come to nothing that can be read.
    #[error("the code is damaged: one of its letters was changed, or some are missing; copy all of it anew")]
    CodeDamaged,
    /// Codes that do not say the same.
    #[error(
        "{0} codes stand in it that differ: leave the one that counts, or put each into a file of its own"
    )]
    Codes(usize),
    /// It is no JSON and no code.
    #[error("this is no answer slip: {0}")]
    NotASlip(String),
    /// It is of another form.
    #[error("{}", other_form(found, expected))]
    Form {
        /// On the slip.
        found: String,
        /// What is read here.
        expected: &'static str,
    },
    /// An answer is neither a text nor a number.
    #[error("answer {number} is {what}; an answer is a text such as \"B\", or empty")]
    Answer {
        /// Number of the question.
        number: usize,
        /// What it is.
        what: &'static str,
    },
    /// What it tells of time cannot be.
    #[error("the time on the slip cannot be read: {0}")]
    Time(String),
    /// The check does not fit.
    #[error("the slip was changed after it was handed in: its check is {found} and should be {expected}")]
    Check {
        /// On the slip.
        found: String,
        /// What fits its answers.
        expected: String,
    },
}

/// What is said of a slip of another form: of one that another command reads, which.
fn other_form(found: &str, expected: &str) -> String {
    match found {
        OF_A_PAPER => "this is a slip of a paper: `healedhue mark` marks it".to_owned(),
        OF_AN_ASSIGNMENT => {
            "this is a slip of an assignment: `healedhue assign FILE --collect` marks it".to_owned()
        }
        _ => format!("this is a slip of the form `{found}`; this version of healedhue reads `{expected}`"),
    }
}

/// The text of a slip, without the space around it.
pub(super) fn text_on(bytes: &[u8]) -> Result<String, SlipError> {
    if bytes.len() as u64 > MOST_BYTES {
        return Err(SlipError::TooLong(bytes.len() as u64));
    }
    let text = text_of(bytes).map_err(|error| match error {
        NoText::Kind(kind) => SlipError::Kind(kind),
        broken => SlipError::NotASlip(broken.to_string()),
    })?;
    match text.trim() {
        "" => Err(SlipError::Empty),
        text => Ok(text.to_owned()),
    }
}

/// What every slip begins with.
#[derive(Deserialize)]
struct Head {
    form: String,
}

/// What is written on a slip of this form, in JSON. The form comes first: another one may look different everywhere else.
pub(super) fn written_on<T: DeserializeOwned>(text: &str, form: &'static str) -> Result<T, SlipError> {
    let none = |wrong: Wrong| match json::ends_early(text) {
        Some(line) => SlipError::EndsEarly(line),
        None => SlipError::NotASlip(wrong.why),
    };
    let head: Head = json::read(text, &[]).map_err(none)?;
    if head.form != form {
        return Err(SlipError::Form { found: head.form.chars().take(40).collect(), expected: form });
    }
    json::read(text, &[]).map_err(none)
}

/// Answers as texts; none where there is null.
pub(super) fn answers_of(written: Vec<serde_json::Value>) -> Result<Vec<String>, SlipError> {
    let text = |(place, value)| {
        let refuse = |what| Err(SlipError::Answer { number: place + 1, what });
        match value {
            serde_json::Value::Null => Ok(String::new()),
            serde_json::Value::String(text) => Ok(text),
            serde_json::Value::Number(number) => Ok(number.to_string()),
            serde_json::Value::Bool(_) => refuse("true or false"),
            serde_json::Value::Array(_) => refuse("a list"),
            serde_json::Value::Object(_) => refuse("a set of keys"),
        }
    };
    written.into_iter().enumerate().map(text).collect()
}

/// Digest of answers, spaces around them left out.
pub(super) fn digest_of<'a>(answers: impl Iterator<Item = &'a str>) -> String {
    let mut hash = Sha256::new();
    for answer in answers {
        hash.update(answer.trim().as_bytes());
        hash.update([0]);
    }
    hash.finalize().iter().take(16).map(|byte| format!("{byte:02x}")).collect()
}
