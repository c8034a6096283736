//! What a drill offers before its exercise is made: how long it takes, how easily it is guessed.

use crate::assess::knowledge::AnswerForm;
use crate::course::{Drill, Family, SkinAsks};

/// Minutes that an exercise of a drill takes, with reading what follows from the answer. Representative, invented for planning:
/// nobody's times were measured.
pub fn minutes_of(drill: &Drill) -> f64 {
    match drill.family {
        Family::Recall => 1.0,
        Family::Sequence | Family::Skin | Family::Light => 1.5,
        Family::Bottle | Family::Foresight | Family::Hindsight | Family::Triage => 2.0,
        Family::Remedy => 2.5,
        Family::Drops => 3.0,
    }
}

/// Steps of a usual question about an order.
const STEPS: usize = 4;

/// Chance of guessing an exercise of a drill, as far as it is known beforehand.
pub(super) fn guess_of(drill: &Drill) -> f64 {
    let form = match drill.family {
        Family::Drops => AnswerForm::Open,
        Family::Skin if drill.skin_asks == SkinAsks::Angle => AnswerForm::Open,
        Family::Sequence => AnswerForm::Order(STEPS),
        _ => AnswerForm::Choice(drill.options),
    };
    form.guess()
}
