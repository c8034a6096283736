//! How hard a question is: the share of its credit that it is expected to cost a candidate who is just good enough, 0 to 1.
//!
//! Entry point: [`engine_difficulty`] for what the engine proved; a written question costs what judges expect
//! (`assess::written_difficulty`). Both are estimates made before anybody has answered.
//!
//! Of a proved question it is reckoned that the candidate picks among the key and what tempts in proportion to weights (the choice rule
//! of Luce 1959): 1 for the key, exp(-e / 4) for a temptation that would heal e ΔE00 worse. The 4 ΔE00 are representative, invented:
//! a colour that is worse by so much tempts about a third as strongly as the right one. Where drops are counted out, one more weight of
//! 1 stands for all the mixes nobody named.

use super::{Choice, Exercise, Form, Proof};

/// ΔE00 over which a temptation loses its force (representative, invented).
const FORCE: f64 = 4.0;
/// ΔE00 that count for a temptation that is no colour, such as to lighten first (representative, invented).
const NO_COLOUR: f64 = 6.0;
/// ΔE00 that count for the value of a known mistake where a number is asked for (representative, invented).
const WRONG_NUMBER: f64 = 4.0;

/// The difficulty of a question that the engine proved; `None` where there is no proof, or nothing in it that tempts.
pub fn engine_difficulty(exercise: &Exercise) -> Option<f64> {
    let proof = exercise.proof.as_ref()?;
    let weight = |choice: &Choice| libm::exp(-excess(choice, proof) / FORCE);
    let tempting: f64 = match &exercise.form {
        Form::One(one) => one
            .options
            .iter()
            .enumerate()
            .filter(|(place, _)| *place != one.key)
            .map(|(_, choice)| weight(choice))
            .sum(),
        Form::Several(several) => {
            several.options.iter().filter(|choice| choice.mark.credit < 1.0).map(weight).sum()
        }
        Form::Drops(drops) => 1.0 + drops.tempting.iter().map(weight).sum::<f64>(),
        Form::Number(number) => number.tempting.len() as f64 * libm::exp(-WRONG_NUMBER / FORCE),
        Form::Order(_) => return None,
    };
    Some(tempting / (1.0 + tempting))
}

/// By how much a temptation would heal worse than the key, ΔE00.
fn excess(choice: &Choice, proof: &Proof) -> f64 {
    match (choice.error, proof.margin) {
        (Some(error), _) => (error - proof.best_error).clamp(0.0, 20.0),
        // A pictured colour has no distance from a goal: it is worse by the margin at least.
        (None, Some(margin)) if choice.healed.is_some() && margin.is_finite() => margin.clamp(0.0, 20.0),
        _ => NO_COLOUR,
    }
}
