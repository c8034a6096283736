//! Answer slips: what a candidate hands in.
//!
//! Entry point: [`Slip::read`], for the downloaded file as for the code that can be copied instead of it. Only the paper's identity and
//! the raw answers are read. A slip from a page carries a check over both, by which a slip that was cut short, mistyped or edited
//! is noticed; it keeps nobody out who means to deceive, and nothing else on a slip could: the page that writes it is in the
//! candidate's hands.

use super::paper::PaperId;
use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use serde::{Deserialize, Serialize};
use thiserror::Error;

/// Form of a slip.
const FORM: &str = "healedhue-slip-1";
/// How a slip to copy begins.
const CODE: &str = "healedhue-slip:";
/// Longest slip, in bytes: a hundred times the usual.
pub(super) const MOST_BYTES: u64 = 500_000;

/// Why something is no slip.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum SlipError {
    /// It is too long.
    #[error("{0} bytes are more than the {MOST_BYTES} of the longest slip")]
    TooLong(u64),
    /// There is nothing in it.
    #[error("the file is empty")]
    Empty,
    /// It ends too early.
    #[error("the slip is cut short: {0}")]
    CutShort(String),
    /// It is no JSON and no code.
    #[error("this is no answer slip: {0}")]
    NotASlip(String),
    /// It is of another form.
    #[error("this is a slip of the form `{0}`; this version of healedhue reads `{FORM}`")]
    Form(String),
    /// An answer is neither a text nor a number.
    #[error("answer {number} is {what}; an answer is a text such as \"B\", or empty")]
    Answer {
        /// Number of the question.
        number: usize,
        /// What it is.
        what: &'static str,
    },
    /// The check does not fit.
    #[error("the slip was changed after it was handed in: its check is {found} and should be {expected}")]
    Check {
        /// On the slip.
        found: String,
        /// What fits its answers.
        expected: String,
    },
}

/// What a candidate hands in.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Slip {
    form: &'static str,
    /// The paper.
    pub paper: PaperId,
    /// Raw answers, one a question; empty where there is none.
    pub answers: Vec<String>,
    /// Check over paper and answers.
    check: String,
}

/// A slip as it is read; whatever else stands on it is not looked at.
#[derive(Deserialize)]
struct Written {
    form: String,
    paper: PaperId,
    answers: Vec<serde_json::Value>,
    check: Option<String>,
}

impl Slip {
    /// A slip with these answers.
    pub fn new(paper: PaperId, answers: Vec<String>) -> Self {
        let check = check_of(&paper, &answers);
        Slip { form: FORM, paper, answers, check }
    }

    /// A slip for a paper on which answers are yet to be filled in by hand: without a check.
    pub fn blank(paper: &PaperId, questions: usize) -> String {
        let paper = serde_json::to_string(paper).unwrap_or_default();
        let answers: Vec<&str> = vec!["    \"\""; questions];
        format!(
            "{{\n  \"form\": \"{FORM}\",\n  \"paper\": {paper},\n  \"answers\": [\n{}\n  ]\n}}\n",
            answers.join(",\n")
        )
    }

    /// Reads a slip: JSON, or a code.
    ///
    /// # Errors
    /// [`SlipError`] where it is none.
    pub fn read(bytes: &[u8]) -> Result<Self, SlipError> {
        if bytes.len() as u64 > MOST_BYTES {
            return Err(SlipError::TooLong(bytes.len() as u64));
        }
        let text = std::str::from_utf8(bytes)
            .map_err(|error| SlipError::NotASlip(format!("byte {} is no UTF-8", error.valid_up_to() + 1)))?;
        let text = text.trim_start_matches('\u{feff}').trim();
        if text.is_empty() {
            return Err(SlipError::Empty);
        }
        match text.strip_prefix(CODE) {
            Some(code) => {
                let code: String = code.chars().filter(|c| !c.is_whitespace()).collect();
                let json = URL_SAFE_NO_PAD
                    .decode(code)
                    .map_err(|_| SlipError::CutShort("the code is not whole; copy all of it".to_owned()))?;
                Slip::of_json(&json)
            }
            None => Slip::of_json(text.as_bytes()),
        }
    }

    /// The slip as a code to copy.
    pub fn code(&self) -> String {
        format!("{CODE}{}", URL_SAFE_NO_PAD.encode(serde_json::to_vec(self).unwrap_or_default()))
    }

    fn of_json(json: &[u8]) -> Result<Self, SlipError> {
        let written: Written = serde_json::from_slice(json).map_err(|error| match error.is_eof() {
            true => SlipError::CutShort(error.to_string()),
            false => SlipError::NotASlip(error.to_string()),
        })?;
        if written.form != FORM {
            return Err(SlipError::Form(written.form.chars().take(40).collect()));
        }
        let answers: Vec<String> = written
            .answers
            .into_iter()
            .enumerate()
            .map(|(place, value)| {
                let refuse = |what| Err(SlipError::Answer { number: place + 1, what });
                match value {
                    serde_json::Value::Null => Ok(String::new()),
                    serde_json::Value::String(text) => Ok(text),
                    serde_json::Value::Number(number) => Ok(number.to_string()),
                    serde_json::Value::Bool(_) => refuse("true or false"),
                    serde_json::Value::Array(_) => refuse("a list"),
                    serde_json::Value::Object(_) => refuse("a set of keys"),
                }
            })
            .collect::<Result<_, _>>()?;
        let slip = Slip::new(written.paper, answers);
        match written.check {
            Some(found) if found != slip.check => {
                let found = found.chars().take(40).collect();
                Err(SlipError::Check { found, expected: slip.check })
            }
            _ => Ok(slip),
        }
    }
}

/// FNV-1a of 32 bits (Fowler, Noll and Vo) over the identity and the answers, a line each: what `site/paper.js` reckons too.
fn check_of(paper: &PaperId, answers: &[String]) -> String {
    let mut hash: u32 = 0x811c_9dc5;
    let seed = paper.seed.to_string();
    let head = [&paper.course, &paper.blueprint, &paper.candidate, &seed, &paper.digest];
    for line in head.into_iter().chain(answers) {
        for byte in line.bytes().chain([b'\n']) {
            hash = (hash ^ u32::from(byte)).wrapping_mul(0x0100_0193);
        }
    }
    format!("{hash:08x}")
}
