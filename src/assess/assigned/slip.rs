//! Answer slips of assignments: whose, of which set, and the raw answers. Entry point: [`AssignmentSlip::read`].
//!
//! ```json
//! {"form": "healedhue-assignment-1", "assignment": "week-three", "person": "ada", "course": "…", "set": "…",
//!  "answers": ["B", "A C", "", "a4 d2", "41.5"]}
//! ```

use crate::assess::slip::{OF_AN_ASSIGNMENT, SlipError, answers_of, digest_of, text_on, written_on};
use serde::{Deserialize, Serialize};

/// Form of a slip.
pub const FORM: &str = OF_AN_ASSIGNMENT;

/// Whose a set is, and of what.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
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

/// A slip as it is read; whatever else stands on it is not looked at.
#[derive(Deserialize)]
struct Written {
    assignment: String,
    person: String,
    course: String,
    set: String,
    answers: Vec<serde_json::Value>,
}

impl AssignmentSlip {
    /// A slip with these answers.
    pub fn new(identity: Identity, answers: Vec<String>) -> Self {
        AssignmentSlip { form: FORM, identity, answers }
    }

    /// Reads a slip.
    ///
    /// # Errors
    /// [`SlipError`] where it is none.
    pub fn read(bytes: &[u8]) -> Result<Self, SlipError> {
        // Field by field: gathered by serde's `flatten`, a fault would have no line any more.
        let Written { assignment, person, course, set, answers } = written_on(&text_on(bytes)?, FORM)?;
        let identity = Identity { assignment, person, course, set };
        Ok(AssignmentSlip::new(identity, answers_of(answers)?))
    }

    /// Digest of the answers, spaces around them left out: slips that answer alike have the same.
    pub fn answers_digest(&self) -> String {
        digest_of(self.answers.iter().map(String::as_str))
    }

    /// The slip as text: JSON, ending in a line break.
    pub fn write(&self) -> String {
        serde_json::to_string_pretty(self).unwrap_or_default() + "\n"
    }
}
