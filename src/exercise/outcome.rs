//! What follows from an answer.
//!
//! Entry point: [`outcome`]. An answer that is one of the options has its outcome already; drops are simulated on the client; an
//! order and a number are measured against the right one.

use super::draw::Setting;
use super::form::{DropsOf, NumberOf, OrderOf, SeveralOf};
use super::judge::Judge;
use super::tempt::Wording;
use super::{Action, Answer, AnswerError, Choice, Exercise, Form, LimitsError, Mark, marking};
use crate::colour::difference;
use crate::course::Course;
use crate::language::Language;
use crate::pigment::Mix;
use crate::say;

/// What would follow from an answer to this exercise, and what it is worth.
///
/// # Errors
/// [`AnswerError`] where the answer is of another form, names an option that is not there, or lies outside the limits.
pub fn outcome(course: &Course, exercise: &Exercise, answer: &Answer) -> Result<Choice, AnswerError> {
    match (&exercise.form, answer) {
        (Form::One(one), Answer::One(place)) => {
            let count = one.options.len();
            one.options.get(*place).cloned().ok_or(AnswerError::NoOption { place: *place, count })
        }
        (Form::Several(several), Answer::Several(places)) => of_several(&course.language, several, places),
        (Form::Order(order), Answer::Order(places)) => of_order(&course.language, order, places),
        (Form::Drops(drops), Answer::Drops(mix)) => of_drops(course, exercise, drops, mix),
        (Form::Number(number), Answer::Number(value)) => of_number(&course.language, number, *value),
        (form, _) => Err(AnswerError::Form(form.asks_for())),
    }
}

/// The mark of an answer; see [`outcome`].
///
/// # Errors
/// As [`outcome`].
pub fn mark(course: &Course, exercise: &Exercise, answer: &Answer) -> Result<Mark, AnswerError> {
    outcome(course, exercise, answer).map(|choice| choice.mark)
}

/// Credit: of the statements that hold, the share found, less as much for each one chosen that does not.
fn of_several(language: &Language, several: &SeveralOf, places: &[usize]) -> Result<Choice, AnswerError> {
    let count = several.options.len();
    if let Some(&place) = places.iter().find(|&&place| place >= count) {
        return Err(AnswerError::NoOption { place, count });
    }
    let right = several.right();
    let chosen: Vec<bool> = (0..count).map(|place| places.contains(&place)).collect();
    let found = right.iter().filter(|&&place| chosen[place]).count();
    let wrong: Vec<&Choice> = (0..count)
        .filter(|place| chosen[*place] && !right.contains(place))
        .map(|place| &several.options[place])
        .collect();
    let credit = ((found as f64 - wrong.len() as f64) / right.len().max(1) as f64).max(0.0);
    let amiss: Vec<String> = (0..count)
        .filter(|place| chosen[*place] != right.contains(place))
        .map(|place| {
            let Choice { label, mark, .. } = &several.options[place];
            let amiss = if chosen[place] { "exercise-several-wrong" } else { "exercise-several-missed" };
            say!(language, amiss, statement = label, why = &mark.consequence)
        })
        .collect();
    let consequence =
        if amiss.is_empty() { language.say("exercise-several-right", &[]) } else { amiss.join(" ") };
    let shown = wrong.iter().find(|choice| choice.mark.misconception.is_some()).or(wrong.first());
    let lesson =
        shown.copied().or(several.options.first()).map_or(String::new(), |choice| choice.mark.lesson.clone());
    let misconception = shown.and_then(|choice| choice.mark.misconception.clone());
    Ok(said(
        Answer::Several(places.to_vec()).to_string(),
        Mark { credit, consequence, misconception, lesson },
    ))
}

/// Credit: Kendall's rank correlation with the right order, nothing where it is not positive (Kendall 1938).
fn of_order(language: &Language, order: &OrderOf, places: &[usize]) -> Result<Choice, AnswerError> {
    let count = order.steps.len();
    let mut sorted = places.to_vec();
    sorted.sort_unstable();
    if sorted != (0..count).collect::<Vec<_>>() {
        return Err(AnswerError::NotAnOrder(count));
    }
    // When each step comes in the right order.
    let mut rank = vec![0; count];
    for (turn, &place) in order.key.iter().enumerate() {
        rank[place] = turn;
    }
    let turns: Vec<usize> = places.iter().map(|&place| rank[place]).collect();
    let pairs = count * count.saturating_sub(1) / 2;
    let swapped = (0..count)
        .flat_map(|i| (i + 1..count).map(move |j| (i, j)))
        .filter(|&(i, j)| turns[i] > turns[j])
        .count();
    let tau = if pairs == 0 { 1.0 } else { 1.0 - 2.0 * swapped as f64 / pairs as f64 };
    let credit = match (swapped, order.all_or_nothing) {
        (0, _) => 1.0,
        (_, true) => 0.0,
        _ => tau.max(0.0),
    };
    let consequence = match turns.iter().enumerate().find(|(turn, right)| turn != *right) {
        None => language.say("exercise-order-right", &[]),
        Some((turn, _)) => {
            let step = &order.steps[order.key[turn]];
            say!(language, "exercise-order-amiss", turn = turn + 1, step = &step.say, why = &step.why)
        }
    };
    let mark = Mark { credit, consequence, misconception: None, lesson: order.lesson.clone() };
    Ok(said(Answer::Order(places.to_vec()).to_string(), mark))
}

/// Simulated on the client. What a misconception would have mixed, or what heals to the same colour to the eye, shows it.
fn of_drops(course: &Course, exercise: &Exercise, drops: &DropsOf, mix: &Mix) -> Result<Choice, AnswerError> {
    check_limits(drops, mix)?;
    let (lesson, setting) = exercise
        .case
        .as_ref()
        .and_then(|case| Setting::of_case(course, case))
        .zip(course.lesson(&exercise.lesson))
        .map(|(setting, (_, lesson))| (lesson, setting))
        .ok_or(AnswerError::Limits(LimitsError::CourseChanged))?;
    let scene = setting.scene(&course.shelf);
    let judge = Judge {
        course,
        lesson,
        setting: &setting,
        scene: &scene,
        trial: scene.trial(&setting.placement),
        best_error: drops.best_error,
        wording: Wording::Plain,
    };
    let tried = judge.tried(mix.clone());
    let seen = judge.place(&tried, None);
    let same = |other: &&Choice| {
        other.healed.zip(seen.healed).is_some_and(|(one, two)| difference(one.lab, two.lab) < marking::FREE)
    };
    let shown = (seen.mark.credit < 1.0)
        .then(|| {
            drops
                .tempting
                .iter()
                .filter(same)
                .min_by(|one, two| apart(one, &seen).total_cmp(&apart(two, &seen)))
        })
        .flatten()
        .and_then(|choice| choice.mark.misconception.as_deref());
    Ok(if shown.is_some() { judge.place(&tried, shown) } else { seen })
}

/// ΔE00 between what two choices heal to.
fn apart(one: &Choice, other: &Choice) -> f64 {
    one.healed.zip(other.healed).map_or(f64::INFINITY, |(one, other)| difference(one.lab, other.lab))
}

/// Whether a mix may be given: bottles of the exercise, as many drops as asked, not too many of them modifiers.
fn check_limits(drops: &DropsOf, mix: &Mix) -> Result<(), AnswerError> {
    let limits = &drops.limits;
    let known = drops.bottles();
    if let Some((id, _)) = mix.drops().find(|(id, _)| !known.contains(id)) {
        return Err(AnswerError::Limits(LimitsError::NoBottle {
            bottle: id.to_owned(),
            known: known.join(", "),
        }));
    }
    if mix.total() != limits.drops {
        return Err(AnswerError::Limits(LimitsError::Total { given: mix.total(), wanted: limits.drops }));
    }
    let of = |ids: &[String]| {
        mix.drops().filter(|(id, _)| ids.iter().any(|known| known == id)).collect::<Vec<_>>()
    };
    let bottles = of(&limits.bottles);
    if bottles.len() != 1 {
        return Err(AnswerError::Limits(LimitsError::OneBottle));
    }
    let modifiers: u32 = of(&limits.modifiers).iter().map(|(_, count)| count).sum();
    if modifiers > limits.modifier_drops {
        return Err(AnswerError::Limits(LimitsError::Modifiers {
            given: modifiers,
            most: limits.modifier_drops,
        }));
    }
    Ok(())
}

/// Full credit within the tolerance, falling to nothing at the worthless distance.
fn of_number(language: &Language, number: &NumberOf, value: f64) -> Result<Choice, AnswerError> {
    if !value.is_finite() {
        return Err(AnswerError::NotANumber);
    }
    let away = (value - number.key).abs();
    let credit = (1.0 - (away - number.tolerance) / (number.worthless - number.tolerance)).clamp(0.0, 1.0);
    let shown = number
        .tempting
        .iter()
        .filter(|wrong| credit < 1.0 && (value - wrong.value).abs() <= number.tolerance)
        .min_by(|one, other| (value - one.value).abs().total_cmp(&(value - other.value).abs()));
    let key = number.in_words(language, number.key);
    let right = say!(language, "exercise-number-right", number = key, why = &number.why);
    let mark = Mark {
        credit,
        consequence: shown.map_or_else(|| right.clone(), |wrong| format!("{} {right}", wrong.why)),
        misconception: shown.map(|wrong| wrong.misconception.clone()),
        lesson: number.lesson.clone(),
    };
    Ok(said(number.in_words(language, value), mark))
}

/// An outcome in words alone.
fn said(label: String, mark: Mark) -> Choice {
    Choice {
        action: Action::Say(label.clone()),
        label,
        work: None,
        healed: None,
        reading: None,
        error: None,
        mark,
    }
}
