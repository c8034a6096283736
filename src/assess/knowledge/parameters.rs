//! The numbers of the model, bounded. Entry point: [`Parameters::new`].

use crate::quantity::{OutOfRange, Quantity};

/// Greatest chance of guessing right that the model takes. With a slip of at most a half a right answer then never speaks
/// against knowing.
pub const GUESS_MOST: f64 = 0.5;

const INITIAL: Quantity = Quantity::new("initial", "", 0.0, 1.0);
const LEARN: Quantity = Quantity::new("learn", "", 0.0, 1.0);
const SLIP: Quantity = Quantity::new("slip", "", 0.0, 0.5);
const HALF_LIFE: Quantity = Quantity::new("half_life_days", "days", 0.1, 10_000.0);

/// Parameters of a skill, each within its bounds. Guessing is not among them: it depends on the question (see
/// [`AnswerForm`](super::AnswerForm)).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Parameters {
    pub(super) initial: f64,
    pub(super) learn: f64,
    pub(super) slip: f64,
    pub(super) half_life_days: f64,
}

impl Default for Parameters {
    /// 0.2, 0.15, 0.1 and 14 days: representative numbers, not fitted to anybody's answers.
    fn default() -> Self {
        Parameters { initial: 0.2, learn: 0.15, slip: 0.1, half_life_days: 14.0 }
    }
}

impl Parameters {
    /// The parameters:
    ///
    /// - `initial`, 0 to 1: chance that somebody knows the skill before the first answer;
    /// - `learn`, 0 to 1: chance that who does not know it has learnt it after one more answer and its explanation;
    /// - `slip`, 0 to 0.5: chance that who knows it answers wrong all the same;
    /// - `half_life_days`, 0.1 to 10,000: days after which half of what was learnt is lost, at first; every further right
    ///   answer on another day doubles it, up to five times.
    ///
    /// Known(t) = base + (known - base) · 2^(-t / half-life), where base is the initial chance, or what is known if that is
    /// less: nobody ends below the beginner. This is a constant rate of forgetting, the simplest form of a memory curve
    /// (representative); that repetition on other days slows forgetting is well established (the spacing effect), by how
    /// much is representative.
    ///
    /// # Errors
    /// [`OutOfRange`] names the first number outside its bounds.
    pub fn new(initial: f64, learn: f64, slip: f64, half_life_days: f64) -> Result<Self, OutOfRange> {
        Ok(Parameters {
            initial: INITIAL.check(initial)?,
            learn: LEARN.check(learn)?,
            slip: SLIP.check(slip)?,
            half_life_days: HALF_LIFE.check(half_life_days)?,
        })
    }
}
