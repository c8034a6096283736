//! What the names of bottles tell of the right answer to somebody who has met them in other drills, and looks at neither client nor goal.
//!
//! Such a person gives each name the log-odds with which it stood in right options there, and takes the option whose names sum to most. They are right
//! more often than by chance, since some bottles suit more people than others: that much is knowledge of the shelf. Were it most of the time, a paper
//! could be passed by it. Bounds lie a little above what was measured, and what was measured stands in DEVELOPERS.md.

use crate::demo::course;
use crate::telling::{FIRST, generated};
use healedhue::course::{Drill, Family, Lesson};
use healedhue::exercise::{Action, Answer, Choice, Exercise, Form};
use std::collections::BTreeMap;

/// How often names stood in right options and in wrong ones; the wrong ones of a question count as one together.
type Met<'e> = BTreeMap<&'e str, (f64, f64)>;

/// Ids of the bottles in an option.
fn names(option: &Choice) -> impl Iterator<Item = &str> {
    let mix = match &option.action {
        Action::Place(mix) => Some(mix),
        _ => None,
    };
    mix.into_iter().flat_map(|mix| mix.drops().map(|(id, _)| id))
}

/// An exercise's options and the place of the right one.
fn options(exercise: &Exercise) -> Option<(&[Choice], usize)> {
    match (&exercise.form, exercise.form.key()) {
        (Form::One(one), Answer::One(key)) => Some((&one.options, key)),
        _ => None,
    }
}

fn met<'e>(exercises: impl Iterator<Item = &'e Exercise>) -> Met<'e> {
    let mut met = Met::new();
    for (options, key) in exercises.filter_map(options) {
        for (at, option) in options.iter().enumerate() {
            for name in names(option) {
                let (right, wrong) = met.entry(name).or_default();
                if at == key { *right += 1.0 } else { *wrong += 1.0 / (options.len() - 1) as f64 }
            }
        }
    }
    met
}

/// What the names of an option promise; one that was never met promises nothing.
fn promise(option: &Choice, met: &Met) -> f64 {
    names(option)
        .map(|name| {
            let (right, wrong) = met.get(name).copied().unwrap_or_default();
            ((right + 1.0) / (wrong + 1.0)).ln()
        })
        .sum()
}

/// How often somebody is right who has met the names in all other drills, how often somebody is who knows nothing, and in how many questions. Among
/// options that promise as much they take any.
fn guessed(made: &[Exercise]) -> (f64, f64, usize) {
    let mut by_drill: BTreeMap<&str, Vec<&Exercise>> = BTreeMap::new();
    for exercise in made {
        by_drill.entry(&exercise.drill).or_default().push(exercise);
    }
    let (mut right, mut by_chance, mut asked) = (0.0, 0.0, 0);
    for (drill, exercises) in &by_drill {
        let met = met(made.iter().filter(|exercise| exercise.drill != *drill));
        for (options, key) in exercises.iter().copied().filter_map(options) {
            let promises: Vec<f64> = options.iter().map(|option| promise(option, &met)).collect();
            let most = promises.iter().copied().fold(f64::NEG_INFINITY, f64::max);
            let taken = promises.iter().filter(|promise| most - **promise < 1e-9).count();
            right += if most - promises[key] < 1e-9 { 1.0 / taken as f64 } else { 0.0 };
            by_chance += 1.0 / options.len() as f64;
            asked += 1;
        }
    }
    (right, by_chance, asked)
}

/// So many exercises of each drill that asks for a mix.
fn made(each: u32) -> Vec<Exercise> {
    let wanted: Vec<(&Lesson, &Drill, u32)> = course()
        .drills()
        .filter(|(_, drill)| drill.family == Family::Bottle && drill.questions.is_empty())
        .flat_map(|(lesson, drill)| (0..each).map(move |number| (lesson, drill, FIRST + number)))
        .collect();
    generated(&wanted)
}

/// Shares in hundredths, as they are told.
fn shares((right, by_chance, asked): (f64, f64, usize)) -> (f64, f64) {
    (100.0 * right / asked as f64, 100.0 * by_chance / asked as f64)
}

/// Somebody who knows the names from other drills is right in at most so many of a hundred questions.
const MOST: f64 = 45.0;

#[test]
fn names_learnt_from_other_drills_are_little_help() {
    let told = shares(guessed(&made(12)));
    println!("who knows the names from other drills: {:.1}% ({:.1} by chance)", told.0, told.1);
    assert!(told.0 < MOST, "{told:?}");
}

/// The same on more exercises, with a table of the names.
#[test]
#[ignore = "takes half a minute; run it with --release -- --ignored"]
fn names_learnt_from_many_exercises_are_little_help() {
    let made = made(42);
    println!("name            right  wrong  log-odds");
    for (name, (right, wrong)) in met(made.iter()) {
        println!("{name:<14} {right:>6} {wrong:>6.1} {:>9.2}", ((right + 1.0) / (wrong + 1.0)).ln());
    }
    let told = shares(guessed(&made));
    println!(
        "who knows the names from other drills: {:.1}% ({:.1} by chance) of {}",
        told.0,
        told.1,
        made.len()
    );
    assert!(told.0 < MOST, "{told:?}");
}

/// Were only such questions asked whose right options alone hold one of these, nearly every guess would be right.
#[test]
fn names_that_tell_are_seen() {
    let tells =
        |option: &Choice| names(option).any(|name| ["emberlow", "kelderwick", "robinscote"].contains(&name));
    let asked = |exercise: &Exercise| {
        options(exercise).is_some_and(|(options, key)| {
            options.iter().enumerate().all(|(at, option)| tells(option) == (at == key))
        })
    };
    let made: Vec<Exercise> = made(12).into_iter().filter(asked).collect();
    let (share, by_chance) = shares(guessed(&made));
    assert!(made.len() > 20 && share > 80.0 && by_chance < 50.0, "{share} of {}", made.len());
}
