//! What a page asks, and how it is refused.

use super::Now;
use crate::exercise::{Answer, AnswerError, Form};
use crate::foresee::RequestError;
use crate::pigment::Mix;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// A record at some time.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct At {
    #[serde(default)]
    pub progress: String,
    pub now: Now,
}

/// A session that is to begin.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Begin {
    /// The record of progress, as it was written; empty for a beginner.
    #[serde(default)]
    pub progress: String,
    /// The same record, seed, times and answers give the same session.
    pub seed: u64,
    /// Seconds since 1970.
    pub now: Now,
    /// Only drills of this lesson.
    #[serde(default)]
    pub lesson: Option<String>,
    /// Only drills that train this skill.
    #[serde(default)]
    pub skill: Option<String>,
    /// Minutes the session is to take; only the plan depends on them.
    #[serde(default)]
    pub minutes: Option<f64>,
}

/// A question that is to be asked.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct NextAsked {
    /// Minutes it may take at most.
    #[serde(default)]
    pub minutes: Option<f64>,
    /// Seconds since 1970.
    pub now: Now,
}

/// An answer to the open question.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Reply {
    /// The answer.
    pub answer: Given,
    /// Seconds since 1970.
    pub now: Now,
    /// The record, where another window has changed it since.
    #[serde(default)]
    pub progress: Option<String>,
}

/// An answer as a page gives it: raw, and perhaps nonsense.
#[derive(Debug, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Given {
    /// As people write it: "41,5", "a c".
    Written(String),
    /// Place of the chosen option, from 0.
    One(u16),
    /// Places of the chosen statements.
    Several(Vec<u16>),
    /// Places of the steps, in the order given.
    Order(Vec<u16>),
    /// Whole drops by bottle.
    Drops(BTreeMap<String, u32>),
}

impl Given {
    /// The answer to a form. Whether it lies within the limits is for the marking to say.
    pub(super) fn to(&self, form: &Form) -> Result<Answer, AnswerError> {
        let places = |places: &[u16]| places.iter().copied().map(usize::from).collect();
        Ok(match self {
            Given::Written(text) => return Answer::read(form, text),
            Given::One(place) => Answer::One(usize::from(*place)),
            Given::Several(several) => Answer::Several(places(several)),
            Given::Order(order) => Answer::Order(places(order)),
            Given::Drops(drops) => {
                let most = match form {
                    Form::Drops(of) => of.limits.drops + 1,
                    _ => 1,
                };
                // More than allowed is too many, however many: the sum then stays a number.
                Answer::Drops(Mix::new(drops.iter().map(|(id, count)| (id.clone(), (*count).min(most)))))
            }
        })
    }
}

/// Why there is no answer.
#[derive(Debug, Serialize)]
pub struct Refusal {
    error: RequestError,
}

pub(super) fn read<'t, T: Deserialize<'t>>(text: &'t str, what: &str) -> Result<T, String> {
    serde_json::from_str(text).map_err(|error| refusal(what, &error.to_string()))
}

pub(super) fn refusal(field: &str, why: &str) -> String {
    written(&Refusal { error: RequestError { field: field.to_owned(), why: why.to_owned() } })
}

/// JSON of something that always has one.
pub(super) fn written(answer: &impl Serialize) -> String {
    serde_json::to_string(answer)
        .unwrap_or_else(|error| format!("{{\"error\":{{\"field\":\"answer\",\"why\":\"{error}\"}}}}"))
}
