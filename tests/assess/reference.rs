//! Agreement with independent packages on simulated cohorts: tests/data/item_statistics.json, made by item_statistics.py
//! beside it, which says which package computed what.

use healedhue::assess::cohort::wilson;
use healedhue::assess::items::{Analysis, Answer, Candidate, Flag, Item, ItemOption, Sitting, analyse};
use healedhue::assess::knowledge::{Knowledge, Parameters};
use healedhue::language::Language;
use serde_json::Value;
use std::sync::LazyLock;

static REFERENCE: LazyLock<Value> = LazyLock::new(|| {
    serde_json::from_str(include_str!("../data/item_statistics.json")).expect("the reference is JSON")
});

/// What the reference was rounded to, nine digits, and a little for sums in another order.
const ROUNDED: f64 = 2e-9;

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().expect("a list").iter().map(|number| number.as_f64().expect("a number")).collect()
}

/// The people of the reference: option 0 is the key, option 1 worth `half`, "." no answer.
fn sitting(people: &Value, half: f64) -> Sitting {
    let rows: Vec<&str> =
        people.as_array().expect("a list").iter().map(|row| row.as_str().expect("digits")).collect();
    let option = |at: usize| ItemOption { label: format!("option {at}"), key: at == 0, misconception: None };
    let items = (0..rows[0].len())
        .map(|at| Item { id: format!("item {at:02}"), options: (0..4).map(option).collect() });
    let candidates = rows.iter().enumerate().map(|(at, row)| Candidate {
        id: format!("person {at:03}"),
        answers: row
            .bytes()
            .enumerate()
            .filter(|(_, digit)| *digit != b'.')
            .map(|(item, digit)| Answer {
                item,
                credit: match digit {
                    b'0' => 1.0,
                    b'1' => half,
                    _ => 0.0,
                },
                chosen: Some(usize::from(digit - b'0')),
                offered: None,
            })
            .collect(),
    });
    Sitting::new(items.collect(), candidates.collect()).expect("the cohort is in order")
}

static FULL: LazyLock<Analysis> = LazyLock::new(|| analyse(&sitting(&REFERENCE["people"], 0.0)));

/// Largest difference, after checking that there are equally many.
fn largest(found: impl IntoIterator<Item = Option<f64>>, wanted: &Value) -> f64 {
    let found: Vec<f64> = found.into_iter().map(|value| value.expect("a value for all")).collect();
    let wanted = numbers(wanted);
    assert_eq!(found.len(), wanted.len());
    found.iter().zip(&wanted).map(|(a, b)| (a - b).abs()).fold(0.0, f64::max)
}

#[test]
fn classical_statistics_agree_with_numpy_scipy_and_pingouin() {
    let (full, classical) = (&*FULL, &REFERENCE["classical"]);
    assert!(largest(full.items.iter().map(|item| item.classical.facility), &classical["facility"]) < ROUNDED);
    let found = full.items.iter().map(|item| item.classical.discrimination);
    assert!(largest(found, &classical["point_biserial"]) < ROUNDED);
    let near = |found: Option<f64>, wanted: &Value| {
        (found.expect("a value") - wanted.as_f64().expect("a number")).abs() < ROUNDED
    };
    let kr20_found = full.reliability.kr20;
    assert!(near(kr20_found.map(|c| c.value), &classical["kr20"]));
    assert!(near(full.reliability.deviation, &classical["deviation"]));
    // The standard error by its definition, from the reference's own figures.
    let deviation = classical["deviation"].as_f64().expect("a number");
    let kr20 = classical["kr20"].as_f64().expect("a number");
    let error = kr20_found.expect("a coefficient").standard_error;
    assert!((error - deviation * (1.0 - kr20).sqrt()).abs() < 1e-7);
    // Nothing is worth a half here, so that alpha is KR-20.
    assert!(near(full.reliability.alpha.map(|c| c.value), &classical["kr20"]));

    let half = analyse(&sitting(&REFERENCE["people"], 0.5));
    assert!(near(half.reliability.alpha.map(|c| c.value), &classical["alpha_half"]));
    assert!(near(half.reliability.kr20.map(|c| c.value), &classical["kr20"]));
    let found = half.items.iter().map(|item| item.classical.discrimination);
    assert!(largest(found, &classical["item_rest_half"]) < ROUNDED);
}

#[test]
fn the_distractor_tables_agree_with_numpy() {
    let wanted = REFERENCE["classical"]["options"].as_array().expect("a list");
    for (item, rows) in FULL.items.iter().zip(wanted) {
        for (row, pair) in item.options.iter().zip(rows.as_array().expect("a list")) {
            assert!((row.share.expect("a share") - pair[0].as_f64().expect("a number")).abs() < ROUNDED);
            match (row.mean_rest, pair[1].as_f64()) {
                (Some(found), Some(wanted)) => assert!((found - wanted).abs() < ROUNDED, "{}", item.id),
                (found, wanted) => assert_eq!(found, wanted, "{}", item.id),
            }
        }
    }
}

/// The tolerances, in logits or in units of the statistic: difficulties 1e-8, ten times what nine digits and a search that stops
/// at 1e-9 leave; their errors 1e-5, since statsmodels takes its curvature from differences of slopes; measures 1e-6, since
/// mirt looks for the greatest value of a function, which near it is flat to half the digits; mean squares and t 1e-6, since
/// they follow the measures. A wrong formula is off by far more: joint instead of conditional likelihood by 1/60 of a difficulty.
fn agrees_with_the_reference(analysis: &Analysis, wanted: &Value) {
    let (items, people) = (&analysis.items, &analysis.people);
    let fit = |pick: fn(&healedhue::assess::items::rasch::Fit) -> Option<f64>| {
        items.iter().map(move |item| item.rasch.fit.as_ref().and_then(pick))
    };
    let person = |pick: fn(&healedhue::assess::items::rasch::Fit) -> Option<f64>| {
        people.iter().map(move |person| person.rasch.fit.as_ref().and_then(pick))
    };
    let differences = [
        (
            "difficulties",
            largest(items.iter().map(|item| item.rasch.difficulty), &wanted["difficulties"]),
            1e-8,
        ),
        (
            "difficulty errors",
            largest(items.iter().map(|item| item.rasch.standard_error), &wanted["difficulty_errors"]),
            1e-5,
        ),
        ("measures", largest(people.iter().map(|person| person.rasch.measure), &wanted["measures"]), 1e-6),
        (
            "measure errors",
            largest(people.iter().map(|person| person.rasch.standard_error), &wanted["measure_errors"]),
            1e-6,
        ),
        ("infit", largest(fit(|fit| Some(fit.infit)), &wanted["item_infit"]), 1e-6),
        ("outfit", largest(fit(|fit| Some(fit.outfit)), &wanted["item_outfit"]), 1e-6),
        ("infit t", largest(fit(|fit| fit.infit_t), &wanted["item_infit_t"]), 1e-6),
        ("outfit t", largest(fit(|fit| fit.outfit_t), &wanted["item_outfit_t"]), 1e-6),
        ("person infit", largest(person(|fit| Some(fit.infit)), &wanted["person_infit"]), 1e-6),
        ("person outfit", largest(person(|fit| Some(fit.outfit)), &wanted["person_outfit"]), 1e-6),
    ];
    for (name, difference, tolerance) in differences {
        assert!(difference < tolerance, "{name}: {difference}");
    }
    assert!(analysis.exact_errors);
    assert!(items.iter().filter_map(|item| item.rasch.difficulty).sum::<f64>().abs() < 1e-9);
}

#[test]
fn rasch_agrees_with_statsmodels_and_mirt() {
    agrees_with_the_reference(&FULL, &REFERENCE["rasch"]);
}

#[test]
fn rasch_with_missing_answers_agrees_with_statsmodels_and_mirt() {
    let sparse = analyse(&sitting(&REFERENCE["sparse_people"], 0.0));
    agrees_with_the_reference(&sparse, &REFERENCE["sparse_rasch"]);
    assert_eq!(sparse.reliability.left_out + sparse.reliability.people, 200);
}

/// girth stops where a round over the items changes none by 1e-3.
#[test]
fn difficulties_agree_with_girth() {
    let found = FULL.items.iter().map(|item| item.rasch.difficulty);
    assert!(largest(found, &REFERENCE["rasch"]["difficulties_girth"]) < 1e-3);
}

#[test]
fn the_items_that_misbehave_on_purpose_are_flagged() {
    let flags = |at: usize| &FULL.items[at].flags;
    let has = |at: usize, is: fn(&Flag) -> bool| flags(at).iter().any(is);
    assert!(has(0, |flag| matches!(flag, Flag::Unchosen { option, .. } if option == "option 3")));
    assert!(has(1, |flag| matches!(flag, Flag::DrawsBetter { option, .. } if option == "option 1")));
    assert!(has(56, |flag| matches!(flag, Flag::WeakDiscrimination { .. })), "{:?}", flags(56));
    assert!(!has(56, |flag| matches!(flag, Flag::NegativeDiscrimination { .. })));
    assert!(has(56, |flag| matches!(flag, Flag::Erratic { .. })), "{:?}", flags(56));
    assert!(has(57, |flag| matches!(flag, Flag::NegativeDiscrimination { .. })));
    assert!(has(57, |flag| matches!(flag, Flag::Erratic { .. })));
    assert!(has(58, |flag| matches!(flag, Flag::TooEasy { .. })));
    assert!(has(59, |flag| matches!(flag, Flag::TooHard { .. })));
    // Of the 54 that behave, a few at most, by chance.
    let behaved = (2..56).filter(|&at| !flags(at).is_empty()).count();
    assert!(behaved <= 5, "{behaved}");
    let english = Language::of("en");
    let english = &english;
    let words: Vec<String> = [0, 1, 56, 57, 58, 59]
        .iter()
        .flat_map(|&at| {
            flags(at).iter().map(move |flag| format!("{}: {}", FULL.items[at].id, flag.words(english)))
        })
        .collect();
    insta::assert_snapshot!(words.join("\n"));
}

#[test]
fn wilson_intervals_agree_with_statsmodels() {
    for row in REFERENCE["wilson"].as_array().expect("a list") {
        let row = numbers(row);
        let found = wilson(row[0], row[1] as usize).expect("an interval");
        assert!((found.low - row[2]).abs() < 1e-10 && (found.high - row[3]).abs() < 1e-10, "{row:?}");
    }
}

/// Answers at one moment: nothing is forgotten between them, as in the package's model.
#[test]
fn knowledge_tracing_agrees_with_mirt() {
    let wanted = &REFERENCE["tracing"];
    let number = |key: &str| wanted[key].as_f64().expect("a number");
    let parameters =
        Parameters::new(number("initial"), number("learn"), number("slip"), 14.0).expect("within bounds");
    let mut trace = Knowledge::new(&parameters);
    for (credit, step) in
        numbers(&wanted["answers"]).into_iter().zip(wanted["steps"].as_array().expect("a list"))
    {
        let step = numbers(step);
        assert!((trace.expected(&parameters, number("guess"), 0) - step[0]).abs() < 1e-11);
        trace = trace.answered(&parameters, number("guess"), credit, 0);
        assert!((trace.known - step[1]).abs() < 1e-11);
    }
}
