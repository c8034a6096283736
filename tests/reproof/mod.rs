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

/// Upper 0.1% of chi-square with 1 to 5 degrees of freedom (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4).
const CRITICAL: [f64; 5] = [10.828, 13.816, 16.266, 18.467, 20.515];

/// How often the key stands first, second and so on, by how many options there are.
fn places(proved: &[Proved]) -> BTreeMap<usize, Vec<usize>> {
    let mut places: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    for (key, options) in proved.iter().filter_map(|one| one.stands) {
        places.entry(options).or_insert_with(|| vec![0; options])[key] += 1;
    }
    places
}

/// Chi-square of these counts against equal ones.
fn chi_square(counts: &[usize]) -> f64 {
    let expected = counts.iter().sum::<usize>() as f64 / counts.len() as f64;
    counts.iter().map(|count| (*count as f64 - expected).powi(2) / expected).sum()
}

/// Each number of options with its counts, the chi-square and what it may be; and whether all are as even as chance makes them.
fn told_of_places(proved: &[Proved]) -> (String, bool) {
    let mut text =
        "options: where the key stands, chi-square (what is passed once in a thousand)\n".to_owned();
    let mut are_even = proved.iter().any(|one| one.stands.is_some());
    for (options, counts) in places(proved) {
        let (square, critical) = (chi_square(&counts), CRITICAL[options - 2]);
        are_even &= square < critical;
        text += &format!("{options}: {counts:?}, {square:.2} ({critical})\n");
    }
    (text, are_even)
}

#[test]
fn uneven_places_are_seen() {
    let standing = |at: usize| Proved {
        family: Family::Bottle,
        held: None,
        longest: None,
        middle: None,
        stands: Some((at, 3)),
    };
    let proved = |counts: [usize; 3]| -> Vec<Proved> {
        (0..3).flat_map(|at| (0..counts[at]).map(move |_| standing(at))).collect()
    };
    // 20 are expected of each: (100 + 25 + 225) / 20.
    assert_eq!(chi_square(&[30, 25, 5]), 17.5);
    assert!(!told_of_places(&proved([30, 25, 5])).1);
    assert!(told_of_places(&proved([22, 20, 18])).1);
}

#[test]
fn prop_exercises_of_every_family_prove_again_by_other_means() {
    let (proved, amiss) = prove_again(FIRST, 160);
    assert!(amiss.is_empty(), "{}", amiss.join("\n"));
    let families: BTreeSet<String> = proved.iter().map(|one| format!("{:?}", one.family)).collect();
    assert_eq!(families.len(), Family::ALL.len(), "{}", told(&proved));
    assert!(proved.iter().filter(|one| one.held.is_some()).count() >= 80, "{}", told(&proved));
    assert!(proved.iter().filter(|one| one.stands.is_some()).count() >= 80, "{}", told_of_places(&proved).0);
}

/// The whole promise. Too long for every run: about half an hour on two cores.
#[test]
#[ignore = "takes half an hour; run it with --release -- --ignored"]
fn prop_a_hundred_thousand_exercises_prove_again() {
    let count = std::env::var("HEALEDHUE_REPROOF").map_or(100_000, |count| count.parse().expect("a number"));
    let first =
        std::env::var("HEALEDHUE_REPROOF_FROM").map_or(FIRST, |first| first.parse().expect("a number"));
    let (proved, amiss) = prove_again(first, count);
    let (places, are_even) = told_of_places(&proved);
    println!(
        "{} proved again, {} not\n{}{places}{}",
        proved.len(),
        amiss.len(),
        told(&proved),
        amiss.join("\n")
    );
    assert!(amiss.is_empty());
    assert!(are_even, "{places}");
}
