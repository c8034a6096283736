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

    /// Chance that somebody who does not know comes to so much credit, 0 to 1, or more; at most [`GUESS_MOST`]. An order is credited by Kendall's tau, and
    /// of its n! orders all are counted that reach it; of other forms only the right answer counts.
    ///
    /// ```
    /// use healedhue::assess::knowledge::AnswerForm;
    /// // Of 24 orders of four steps one is right, and three have a single pair the wrong way round: tau is 1 - 2 / 6.
    /// assert_eq!(AnswerForm::Order(4).guess_at(1.0), 1.0 / 24.0);
    /// assert_eq!(AnswerForm::Order(4).guess_at(0.6), 4.0 / 24.0);
    /// ```
    pub fn guess_at(self, credit: f64) -> f64 {
        match self {
            AnswerForm::Order(steps) if credit > 0.0 && credit < 1.0 => {
                let steps = steps.min(MOST_ORDERED);
                let pairs = steps * steps.saturating_sub(1) / 2;
                let swapped = libm::floor((1.0 - credit) / 2.0 * pairs as f64 + 1e-9) as usize;
                self.guess() * orders_within(steps, swapped)
            }
            _ => self.guess(),
        }
        .min(GUESS_MOST)
    }
}

/// Steps beyond which an order in part right is as hard to guess as one of so many.
const MOST_ORDERED: usize = 20;

/// How many orders of so many steps have at most so many pairs the wrong way round (sums of Mahonian numbers, OEIS A008302): the next step goes before
/// none, one, two and so on of those there are.
fn orders_within(steps: usize, swapped: usize) -> f64 {
    let mut orders = vec![0.0; swapped + 1];
    orders[0] = 1.0;
    for step in 1..steps {
        orders = (0..=swapped).map(|pairs| orders[pairs.saturating_sub(step)..=pairs].iter().sum()).collect();
    }
    orders.iter().sum()
}
