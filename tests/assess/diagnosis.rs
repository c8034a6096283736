//! Simulated apprentices with known misconceptions, asked the demo course's own exercises, are diagnosed.

use crate::site::fixture::DEMO;
use healedhue::assess::cohort::{Leads, Shown, diagnosis};
use healedhue::exercise::{Exercise, Form, OneOf};
use rand::{Rng, RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::collections::BTreeSet;

/// Questions of a sitting.
const QUESTIONS: usize = 60;
/// People with a misconception.
const PEOPLE: usize = 300;
/// Times a sitting must offer a misconception for its diagnosis to be expected.
const OFFERED: usize = 3;

fn one_of(exercise: &Exercise) -> Option<&OneOf> {
    match &exercise.form {
        Form::One(one) if one.options.iter().any(|option| option.mark.misconception.is_some()) => Some(one),
        _ => None,
    }
}

fn beliefs(one: &OneOf) -> Vec<Option<&str>> {
    one.options.iter().map(|option| option.mark.misconception.as_deref()).collect()
}

fn leads(one: &OneOf) -> Vec<Leads<&str>> {
    let all = beliefs(one).into_iter().enumerate();
    all.map(|(place, belief)| Leads::new(place == one.key, belief)).collect()
}

/// Some questions of the course, none twice.
fn sitting<'p>(all: &[&'p OneOf], rng: &mut impl Rng) -> Vec<&'p OneOf> {
    let mut places: Vec<usize> = (0..all.len()).collect();
    for at in 0..QUESTIONS {
        let other = rng.random_range(at as u64..places.len() as u64) as usize;
        places.swap(at, other);
    }
    places[..QUESTIONS].iter().map(|&place| all[place]).collect()
}

/// Somebody who answers.
#[derive(Clone, Copy)]
struct Apprentice<'b> {
    /// What is believed wrongly.
    belief: Option<&'b str>,
    /// Chance that it decides the answer where it is offered.
    firmness: f64,
    /// Chance of a right answer elsewhere.
    skill: f64,
}

/// By the misconception where it is offered; else right with the chance `skill`, or any wrong option.
fn answer(one: &OneOf, by: Apprentice<'_>, rng: &mut impl Rng) -> usize {
    let tempting =
        by.belief.and_then(|belief| beliefs(one).iter().position(|option| *option == Some(belief)));
    if let Some(place) = tempting.filter(|_| rng.random::<f64>() < by.firmness) {
        return place;
    }
    if rng.random::<f64>() < by.skill {
        return one.key;
    }
    let wrong: Vec<usize> = (0..one.options.len()).filter(|place| *place != one.key).collect();
    wrong[rng.random_range(0..wrong.len() as u64) as usize]
}

/// What the answers of one person speak for.
fn diagnosed(asked: &[&OneOf], by: Apprentice<'_>, rng: &mut impl Rng) -> Option<String> {
    let leads: Vec<Vec<Leads<&str>>> = asked.iter().map(|one| leads(one)).collect();
    let shown: Vec<Shown<'_>> = asked
        .iter()
        .zip(&leads)
        .map(|(one, options)| Shown { person: "somebody", options, chosen: Some(answer(one, by, rng)) })
        .collect();
    diagnosis(&shown).map(|belief| belief.misconception)
}

/// How many of [`PEOPLE`] who hold some misconception so firmly are diagnosed with it, and misconceptions among them.
fn found(all: &[&OneOf], firmness: f64, rng: &mut impl Rng) -> (usize, usize) {
    let held: BTreeSet<&str> = all.iter().flat_map(|one| beliefs(one)).flatten().collect();
    let held: Vec<&str> = held.into_iter().collect();
    let (mut people, mut right, mut seen) = (0, 0, BTreeSet::new());
    while people < PEOPLE {
        let belief = held[rng.random_range(0..held.len() as u64) as usize];
        let asked = sitting(all, rng);
        if asked.iter().filter(|one| beliefs(one).contains(&Some(belief))).count() < OFFERED {
            continue;
        }
        people += 1;
        seen.insert(belief);
        let by = Apprentice { belief: Some(belief), firmness, skill: 0.4 + 0.5 * rng.random::<f64>() };
        right += usize::from(diagnosed(&asked, by, rng).as_deref() == Some(belief));
    }
    (right, seen.len())
}

/// 300 people each, of skill 0.4 to 0.9, answer 60 questions that offer their misconception at least three times. A paper offers three
/// to four misconceptions a question, so that chance alone must bring some of them to stand out. What was measured stands in
/// docs/reports.md.
#[test]
fn simulated_misconceptions_are_diagnosed() {
    let all: Vec<&OneOf> = DEMO.1.values().flatten().filter_map(one_of).collect();
    let mut rng = ChaCha8Rng::seed_from_u64(1);
    let (firm, seen) = found(&all, 1.0, &mut rng);
    let (wavering, _) = found(&all, 0.7, &mut rng);
    let mut alarms = 0;
    for _ in 0..PEOPLE {
        let by = Apprentice { belief: None, firmness: 0.0, skill: 0.4 + 0.5 * rng.random::<f64>() };
        alarms += usize::from(diagnosed(&sitting(&all, &mut rng), by, &mut rng).is_some());
    }
    println!("firm {firm}, wavering {wavering}, alarms {alarms} of {PEOPLE} each; {seen} misconceptions");
    assert!(seen >= 15, "{seen} misconceptions");
    assert!(firm * 100 >= PEOPLE * 95, "{firm} of {PEOPLE}");
    assert!(wavering * 100 >= PEOPLE * 65, "{wavering} of {PEOPLE}");
    assert!(alarms * 100 <= PEOPLE * 15, "{alarms} of {PEOPLE}");
}

/// Bayes factors by a program of their own: Python's math over the same grids of skill and firmness, each likelihood a plain product
/// over the questions (tests/data/diagnosis.py).
#[test]
fn bayes_factors_agree_with_plain_products() {
    let options = [Leads::Right, Leads::From("black"), Leads::From("opposite"), Leads::Wrong];
    let pair = [Leads::Right, Leads::From("black"), Leads::From("black")];
    let plain = [Leads::Right, Leads::From("opposite")];
    let shown = |options, chosen| Shown { person: "ana", options, chosen };
    let asked = [
        shown(&options[..], Some(1)),
        shown(&options[..], Some(1)),
        shown(&options[..], Some(3)),
        shown(&options[..], None),
        shown(&pair[..], Some(2)),
        shown(&pair[..], Some(0)),
        shown(&plain[..], Some(0)),
        shown(&plain[..], Some(0)),
    ];
    assert_eq!(diagnosis(&asked), None);
    // Once more and oftener: 24 questions in all.
    let often = [asked, asked, asked].concat();
    let found = diagnosis(&often).expect("nine of fifteen");
    assert_eq!(found.misconception, "black");
    assert!((found.bayes_factor / 100.218_602_668_149_53 - 1.0).abs() < 1e-12, "{}", found.bayes_factor);
}
