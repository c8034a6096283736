//! Why something is no answer to an exercise: in English for the terminal and for slips, and in the language of a course.

use super::form::letter;
use crate::language::Language;
use crate::say;
use thiserror::Error;

/// What an exercise asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(missing_docs)] // As in `Form`.
pub enum AskedFor {
    One,
    Several,
    Order,
    Drops,
    Number,
}

/// Why something is no answer to an exercise.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum AnswerError {
    /// Another kind of answer is asked for.
    #[error("this exercise asks for {}", asked(*.0))]
    Form(AskedFor),
    /// There is no such option.
    #[error("there is no option {}; there are {count}", letter(*place))]
    NoOption {
        /// Place named, from 0.
        place: usize,
        /// Options there are.
        count: usize,
    },
    /// Steps are missing or named twice.
    #[error("an order names each of the {0} steps once, by its letter")]
    NotAnOrder(usize),
    /// A mix outside the limits.
    #[error("{0}")]
    Limits(LimitsError),
    /// Not a number.
    #[error("the answer is not a number; write it as `41.5`")]
    NotANumber,
}

/// Why a mix may not be given.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum LimitsError {
    /// A bottle that the exercise does not offer.
    #[error("there is no bottle `{bottle}` here; there are {known}; write drops as `a5 d1`")]
    NoBottle {
        /// The bottle named.
        bottle: String,
        /// Ids of those there are, with commas.
        known: String,
    },
    /// More or fewer drops than asked for.
    #[error("{}; the mix has {wanted}", if *given == 1 { "1 drop is given".to_owned() } else { format!("{given} drops are given") })]
    Total {
        /// Drops given.
        given: u32,
        /// Drops asked for.
        wanted: u32,
    },
    /// No bottle, or several.
    #[error("a mix has one bottle and drops of modifiers")]
    OneBottle,
    /// Too much of modifiers.
    #[error("{given} drops of modifiers are more than {most}")]
    Modifiers {
        /// Their drops.
        given: u32,
        /// What the exercise allows.
        most: u32,
    },
    /// The exercise is of another version of the course.
    #[error("the course no longer has the client, goal or lesson of this exercise")]
    CourseChanged,
}

fn asked(form: AskedFor) -> &'static str {
    match form {
        AskedFor::One => "one option: write its letter, such as `B`",
        AskedFor::Several => "every option that holds: write their letters, such as `A C`",
        AskedFor::Order => "an order: write the letters in their order, such as `B A C E D`",
        AskedFor::Drops => "whole drops of bottles: write them as `a5 d1`",
        AskedFor::Number => "a number: write it as `41.5`",
    }
}

impl AnswerError {
    /// The error in a language; in English the same as `Display`.
    pub fn said(&self, language: &Language) -> String {
        match self {
            AnswerError::Form(form) => language.say(
                match form {
                    AskedFor::One => "exercise-asks-one",
                    AskedFor::Several => "exercise-asks-several",
                    AskedFor::Order => "exercise-asks-order",
                    AskedFor::Drops => "exercise-asks-drops",
                    AskedFor::Number => "exercise-asks-number",
                },
                &[],
            ),
            AnswerError::NoOption { place, count } => {
                say!(language, "exercise-no-option", letter = letter(*place), count = *count)
            }
            AnswerError::NotAnOrder(count) => say!(language, "exercise-not-an-order", count = *count),
            AnswerError::Limits(limits) => limits.said(language),
            AnswerError::NotANumber => language.say("exercise-not-a-number", &[]),
        }
    }
}

impl LimitsError {
    /// The error in a language; in English the same as `Display`.
    pub fn said(&self, language: &Language) -> String {
        match self {
            LimitsError::NoBottle { bottle, known } => {
                say!(language, "exercise-no-bottle", bottle = bottle, known = known)
            }
            LimitsError::Total { given, wanted } => {
                say!(language, "exercise-other-total", given = *given, wanted = *wanted)
            }
            LimitsError::OneBottle => language.say("exercise-one-bottle", &[]),
            LimitsError::Modifiers { given, most } => {
                say!(language, "exercise-many-modifiers", given = *given, most = *most)
            }
            LimitsError::CourseChanged => language.say("exercise-course-changed", &[]),
        }
    }
}
