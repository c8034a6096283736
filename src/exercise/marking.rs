//! Marks: what an answer would heal to, and what that is worth.

use super::Choice;
use crate::colour::{JUST_VISIBLE, Lab};
use crate::course::Goal;
use crate::language::Language;
use crate::say;

/// ΔE00 beyond the best possible that costs nothing: hardly visible side by side.
pub const FREE: f64 = JUST_VISIBLE;
/// ΔE00 beyond the best possible at which nothing is left of the credit (common practice, no source: another colour).
pub const WORTHLESS: f64 = 7.0;

/// Credit, 1 to 0, of an answer that heals to `error` ΔE00 from the goal when `best` was possible.
///
/// ```
/// use healedhue::exercise::credit;
/// assert_eq!(credit(2.0, 2.0), 1.0);
/// assert_eq!(credit(6.0, 2.0), 0.5);
/// assert_eq!(credit(12.0, 2.0), 0.0);
/// ```
pub fn credit(error: f64, best: f64) -> f64 {
    (1.0 - (error - best - FREE) / (WORTHLESS - FREE)).clamp(0.0, 1.0)
}

/// How a colour misses a goal, in words: "too dark and too grey"; empty where it hardly does.
pub(super) fn miss_in_words(language: &Language, lab: Lab, goal: Lab) -> String {
    let mut ways = Vec::new();
    match lab.l - goal.l {
        d if d < -2.0 => ways.push("exercise-too-dark"),
        d if d > 2.0 => ways.push("exercise-too-light"),
        _ => {}
    }
    let (chroma, wanted) = (lab.chroma(), goal.chroma());
    // Difference along the goal's own hue is strength, across it is hue.
    let across = (goal.a * lab.b - goal.b * lab.a) / wanted.max(1.0);
    if across.abs() > 2.0 {
        // Of the two axes, the one on which more is amiss gives the word. Nobody looks for green in what is red, nor for blue in what is yellow.
        let (red, yellow) = (lab.a - goal.a, lab.b - goal.b);
        ways.push(match (red.abs() > yellow.abs(), red > 0.0, yellow > 0.0) {
            (true, true, _) => "exercise-too-red",
            (true, false, _) if lab.a > 0.0 => "exercise-hardly-red",
            (true, false, _) => "exercise-too-green",
            (false, _, true) => "exercise-too-yellow",
            (false, _, false) if lab.b > 0.0 => "exercise-hardly-yellow",
            (false, _, false) => "exercise-too-blue",
        });
    }
    match chroma - wanted {
        d if d < -2.0 => ways.push("exercise-too-grey"),
        d if d > 2.0 => ways.push("exercise-too-strong"),
        _ => {}
    }
    let ways: Vec<String> = ways.iter().map(|way| language.say(way, &[])).collect();
    language.in_a_row(&ways)
}

/// How much worse than `best` the nearest wrong option heals, in ΔE00; infinite where no wrong option heals to a colour.
pub(super) fn least_excess(options: &[Choice], best: f64) -> f64 {
    options
        .iter()
        .filter(|option| option.mark.misconception.is_some())
        .filter_map(|option| option.error)
        .fold(f64::INFINITY, |least, error| least.min(error - best))
}

/// A goal in words: "soft brown (L* 47, a* 8, b* 14)".
pub(super) fn goal_in_words(language: &Language, goal: &Goal) -> String {
    let [l, a, b] = language.lab(goal.lab);
    say!(language, "exercise-goal", name = &goal.name, l = l, a = a, b = b)
}
