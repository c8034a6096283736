//! Exercises of every family proved again, from the public parts of the engine and the course, by other code than makes them, in worlds
//! drawn from another seed.
//!
//! A few hundred are proved again in every test run. `cargo test --release reproof -- --ignored` proves 100,000 of them, or as many as
//! `HEALEDHUE_REPROOF` says; with `HEALEDHUE_REPROOF_FROM` from another number of the pools on, so that it can be done in parts.

mod proof;

use crate::demo::course;
use healedhue::course::{Drill, Family, Lesson};
use healedhue::exercise::generate;
use proof::{Proved, prove};
use rayon::prelude::*;
use std::collections::{BTreeMap, BTreeSet};

/// Numbers of the pools from here on are proved again here, and shown nowhere.
const FIRST: u32 = 3_000_000;
/// How many rounds it takes until a drill of the family `recall` comes again: there are many of them, and little to prove about each.
const WRITTEN_EVERY: u32 = 16;

/// So many exercises of all drills in turn, from this number of their pools on, proved again; every one that fails, with its reason.
fn prove_again(first: u32, count: usize) -> (Vec<Proved>, Vec<String>) {
    let drills: Vec<(&Lesson, &Drill)> = course().drills().collect();
    let wanted: Vec<(&Lesson, &Drill, u32)> = (first..)
        .flat_map(|number| {
            let comes = move |at: usize, drill: &Drill| {
                drill.family != Family::Recall || (at as u32 + number).is_multiple_of(WRITTEN_EVERY)
            };
            let drills = drills.iter().enumerate().filter(move |(at, drill)| comes(*at, drill.1));
            drills.map(move |(_, &(lesson, drill))| (lesson, drill, number))
        })
        .take(count)
        .collect();
    let proved: Vec<Option<Result<Proved, String>>> = wanted
        .par_iter()
        .map(|&(lesson, drill, number)| {
            // What cannot be made within the draws is not issued: there is nothing to prove.
            let exercise = generate(course(), lesson, drill, number).ok()?;
            Some(prove(&exercise, drill).map_err(|why| format!("{} {number}: {why}", drill.id)))
        })
        .collect();
    let (mut fine, mut amiss) = (Vec::new(), Vec::new());
    for one in proved.into_iter().flatten() {
        match one {
            Ok(proved) => fine.push(proved),
            Err(why) => amiss.push(why),
        }
    }
    (fine, amiss)
}

/// What the proofs come to by family, as text.
fn told(proved: &[Proved]) -> String {
    let mut families: BTreeMap<String, Vec<&Proved>> = BTreeMap::new();
    for one in proved {
        families.entry(format!("{:?}", one.family)).or_default().push(one);
    }
    let share = |holds: Vec<bool>| match holds.len() {
        0 => "–".to_owned(),
        all => format!("{:.1}%", 100.0 * holds.iter().filter(|holds| **holds).count() as f64 / all as f64),
    };
    let mut text = "family: exercises; key the longest text, the middle colour; least and mean share of new worlds, share of exercises \
                    below 95%\n"
        .to_owned();
    for (family, all) in families {
        let shares: Vec<f64> =
            all.iter().filter_map(|one| one.held).map(|held| held.held as f64 / held.of as f64).collect();
        text += &format!(
            "{family}: {}; {}, {}; {:.3}, {:.4}, {}\n",
            all.len(),
            share(all.iter().filter_map(|one| one.longest).collect()),
            share(all.iter().filter_map(|one| one.middle).collect()),
            shares.iter().copied().fold(f64::INFINITY, f64::min),
            shares.iter().sum::<f64>() / shares.len().max(1) as f64,
            share(shares.iter().map(|share| *share < 0.95).collect()),
        );
    }
    text
}

#[test]
fn prop_exercises_of_every_family_prove_again_by_other_means() {
    let (proved, amiss) = prove_again(FIRST, 160);
    assert!(amiss.is_empty(), "{}", amiss.join("\n"));
    let families: BTreeSet<String> = proved.iter().map(|one| format!("{:?}", one.family)).collect();
    assert_eq!(families.len(), Family::ALL.len(), "{}", told(&proved));
    assert!(proved.iter().filter(|one| one.held.is_some()).count() >= 80, "{}", told(&proved));
}

/// The whole promise. Too long for every run: about half an hour on two cores.
#[test]
#[ignore = "takes half an hour; run it with --release -- --ignored"]
fn prop_a_hundred_thousand_exercises_prove_again() {
    let count = std::env::var("HEALEDHUE_REPROOF").map_or(100_000, |count| count.parse().expect("a number"));
    let first =
        std::env::var("HEALEDHUE_REPROOF_FROM").map_or(FIRST, |first| first.parse().expect("a number"));
    let (proved, amiss) = prove_again(first, count);
    println!("{} proved again, {} not\n{}{}", proved.len(), amiss.len(), told(&proved), amiss.join("\n"));
    assert!(amiss.is_empty());
}
