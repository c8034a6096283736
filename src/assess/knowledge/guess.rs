//! How likely a right answer comes by chance. Entry point: [`AnswerForm::guess`].

use super::parameters::GUESS_MOST;

/// How an exercise is answered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AnswerForm {
    /// One of so many options.
    Choice(usize),
    /// Any number of so many options, at least one.
    Several(usize),
    /// So many steps put in order.
    Order(usize),
    /// A number or drops, without options.
    Open,
}

/// Chance of hitting an open answer: small, not nothing. Representative.
const OPEN: f64 = 0.05;

impl AnswerForm {
    /// Chance that somebody who does not know answers right: one by the number of possible answers, at most [`GUESS_MOST`].
    ///
    /// ```
    /// use healedhue::assess::knowledge::AnswerForm;
    /// assert_eq!(AnswerForm::Choice(4).guess(), 0.25);
    /// assert_eq!(AnswerForm::Several(3).guess(), 1.0 / 7.0);
    /// assert_eq!(AnswerForm::Order(3).guess(), 1.0 / 6.0);
    /// ```
    pub fn guess(self) -> f64 {
        let answers = match self {
            AnswerForm::Choice(options) => options as f64,
            // Doubling and multiplying stop at 64: beyond, the chance is nothing to any digit that counts.
            AnswerForm::Several(options) => (0..options.min(64)).fold(1.0, |all, _| all * 2.0) - 1.0,
            AnswerForm::Order(steps) => (1..=steps.min(64)).fold(1.0, |all, step| all * step as f64),
            AnswerForm::Open => return OPEN,
        };
        (1.0 / answers.max(1.0)).min(GUESS_MOST)
    }
}
