//! How an exercise is answered on a page or on paper.
//!
//! Entry points: [`FormView::new`] says what to offer, [`options`] what there is to choose from or to learn from.

use super::drawing::Drawn;
use super::exercise::{OptionView, healed, option_view};
use super::figures::letter;
use super::swatch::Swatch;
use crate::course::Course;
use crate::exercise::{Action, mixes};
use crate::exercise::{Answer, Choice, Exercise, Form, Mark, outcome};
use crate::say;
use serde::Serialize;
use std::collections::BTreeMap;

/// The form of an answer.
#[derive(Debug, Serialize)]
pub(super) struct FormView {
    /// `one`, `several`, `order`, `drops` or `number`.
    pub kind: &'static str,
    /// What to do, in a sentence.
    pub how: String,
    /// Whether the options' colours are part of the question.
    pub pictured: bool,
    /// Places of the steps in their right order.
    pub order: Vec<usize>,
    /// Whether anything but the right order is worth nothing.
    pub all_or_nothing: bool,
    /// What may be taken, for drops.
    pub bottles: Vec<BottleChoice>,
    /// Drops in the whole mix.
    pub drops: u32,
    /// At most so many of them are modifiers.
    pub modifier_drops: u32,
    /// What every possible mix heals to, each in a line: drops in the order of the bottles, credit, ΔE00 and words, with `|` between.
    pub table: Option<String>,
    /// The readings that its rows tell the places of, from 0, with a bar between them.
    pub readings: String,
    /// The number asked for.
    pub number: Option<NumberView>,
}

/// A bottle to take drops of.
#[derive(Debug, Serialize)]
pub(super) struct BottleChoice {
    /// A, B, C …
    pub letter: String,
    /// Its name.
    pub name: String,
    /// Whether it is a modifier.
    pub modifier: bool,
}

/// A number asked for.
#[derive(Debug, Serialize)]
pub(super) struct NumberView {
    /// What it is.
    pub name: String,
    /// Its unit.
    pub unit: String,
    /// The right value.
    pub key: f64,
    /// The right value as it is written.
    pub written: String,
    /// Distance that costs nothing.
    pub tolerance: f64,
    /// Distance at which nothing is left of the credit.
    pub worthless: f64,
}

/// Most mixes whose outcomes a page holds: about 60 bytes each.
const MOST_IN_TABLE: u64 = 400;

impl FormView {
    /// The form of this exercise.
    pub fn new(course: &Course, exercise: &Exercise) -> Self {
        let language = &course.language;
        let mut view = FormView {
            kind: "one",
            how: say!(language, "question-choose-one"),
            pictured: false,
            order: Vec::new(),
            all_or_nothing: false,
            bottles: Vec::new(),
            drops: 0,
            modifier_drops: 0,
            table: None,
            readings: String::new(),
            number: None,
        };
        match &exercise.form {
            Form::One(one) => view.pictured = one.pictured,
            Form::Several(_) => {
                view.kind = "several";
                view.how = say!(language, "question-choose-several");
            }
            Form::Order(order) => {
                view.kind = "order";
                view.how = say!(language, "question-number-steps");
                view.order = order.key.clone();
                view.all_or_nothing = order.all_or_nothing;
            }
            Form::Drops(drops) => {
                view.kind = "drops";
                view.how = say!(
                    language,
                    "question-drops",
                    drops = drops.limits.drops,
                    modifiers = drops.limits.modifier_drops
                );
                view.drops = drops.limits.drops;
                view.modifier_drops = drops.limits.modifier_drops;
                let ids = drops.bottles();
                view.bottles = ids
                    .iter()
                    .enumerate()
                    .map(|(place, id)| BottleChoice {
                        letter: letter(place),
                        name: course.shelf.bottle(id).map_or(*id, |bottle| &bottle.name).to_owned(),
                        modifier: place >= drops.limits.bottles.len(),
                    })
                    .collect();
                if drops.limits.mixes() <= MOST_IN_TABLE {
                    let (table, readings) = table(course, exercise, &ids, &mixes(&drops.limits));
                    (view.table, view.readings) = (Some(table), readings.join("|"));
                }
            }
            Form::Number(number) => {
                view.kind = "number";
                view.how = say!(language, "question-number", name = &number.name, unit = &number.unit);
                view.number = Some(NumberView {
                    name: number.name.clone(),
                    unit: number.unit.clone(),
                    key: number.key,
                    written: number.in_words(&course.language, number.key),
                    tolerance: number.tolerance,
                    worthless: number.worthless,
                });
            }
        }
        view
    }
}

/// What each mix heals to and is worth, and the readings that its rows tell the places of: there are few of them.
fn table(
    course: &Course,
    exercise: &Exercise,
    ids: &[&str],
    mixes: &[crate::pigment::Mix],
) -> (String, Vec<String>) {
    let mut readings: Vec<String> = Vec::new();
    let rows: BTreeMap<String, String> = mixes
        .iter()
        .filter_map(|mix| {
            let seen = outcome(course, exercise, &Answer::Drops(mix.clone())).ok()?;
            let drops: Vec<String> = ids
                .iter()
                .map(|id| {
                    mix.drops().find(|(bottle, _)| bottle == id).map_or(0, |(_, count)| count).to_string()
                })
                .collect();
            let words = seen.reading.map_or(String::new(), |reading| reading.words);
            let reading = readings.iter().position(|known| *known == words).unwrap_or_else(|| {
                readings.push(words);
                readings.len() - 1
            });
            let error = seen.error.map_or(String::new(), |error| course.language.fixed(error, 1));
            let drops = drops.join(" ");
            let row = format!("{drops}|{}|{error}|{reading}", course.language.percent(seen.mark.credit));
            Some((drops, row))
        })
        .collect();
    (rows.into_values().collect::<Vec<_>>().join("\n"), readings)
}

/// Options in the order shown; for drops the best mix, others as good, and tempting ones; for a number the values of known mistakes;
/// for an order its steps.
pub(super) fn options(
    course: &Course,
    exercise: &Exercise,
    path: &str,
    on: Option<Drawn>,
) -> Vec<OptionView> {
    let view = |choice: &Choice| option_view(course, exercise, choice, path, on);
    let mut options: Vec<OptionView> = match &exercise.form {
        Form::One(one) => one
            .options
            .iter()
            .enumerate()
            .map(|(place, choice)| OptionView {
                right: place == one.key,
                picture: exercise
                    .case
                    .as_ref()
                    .filter(|_| one.pictured)
                    .and_then(|case| healed(&course.language, choice, case, on, &letter(place)))
                    // The distance from what is really seen would give the key away.
                    .map(|swatch| Swatch { note: None, ..swatch }),
                ..view(choice)
            })
            .collect(),
        Form::Several(several) => several
            .options
            .iter()
            .map(|choice| OptionView { right: choice.mark.credit == 1.0, ..view(choice) })
            .collect(),
        Form::Order(order) => order
            .steps
            .iter()
            .enumerate()
            .map(|(place, step)| {
                let turn = order.key.iter().position(|&key| key == place).unwrap_or(0) + 1;
                let mark = Mark {
                    credit: 1.0,
                    consequence: say!(course.language, "question-step", turn = turn, why = &step.why),
                    misconception: None,
                    lesson: order.lesson.clone(),
                };
                view(&said(&step.say, mark))
            })
            .collect(),
        Form::Drops(drops) => std::iter::once(&drops.best)
            .chain(&drops.near)
            .chain(&drops.tempting)
            .enumerate()
            // Whoever mixed what is as good has nothing to reread.
            .map(|(place, choice)| match place {
                0 => OptionView { right: true, ..view(choice) },
                _ if place <= drops.near.len() => OptionView { reread: None, ..view(choice) },
                _ => view(choice),
            })
            .collect(),
        Form::Number(number) => {
            let right = Mark {
                credit: 1.0,
                consequence: number.why.clone(),
                misconception: None,
                lesson: number.lesson.clone(),
            };
            let wrong = number.tempting.iter().map(|wrong| {
                let mark = Mark {
                    credit: 0.0,
                    consequence: wrong.why.clone(),
                    misconception: Some(wrong.misconception.clone()),
                    lesson: number.lesson.clone(),
                };
                view(&said(&number.in_words(&course.language, wrong.value), mark))
            });
            let right = OptionView {
                right: true,
                ..view(&said(&number.in_words(&course.language, number.key), right))
            };
            std::iter::once(right).chain(wrong).collect()
        }
    };
    for (place, option) in options.iter_mut().enumerate() {
        option.letter = letter(place);
    }
    options
}

fn said(label: &str, mark: Mark) -> Choice {
    Choice {
        label: label.to_owned(),
        action: Action::Say(label.to_owned()),
        work: None,
        healed: None,
        reading: None,
        error: None,
        mark,
    }
}

/// The right answer in short: a letter, letters, a mix, a number.
pub(super) fn key_in_short(course: &Course, exercise: &Exercise) -> String {
    match (&exercise.form, exercise.form.key()) {
        (_, Answer::Drops(mix)) => course.language.mix(&course.shelf, &mix),
        (Form::Number(number), Answer::Number(value)) => number.in_words(&course.language, value),
        (_, key) => key.to_string(),
    }
}
