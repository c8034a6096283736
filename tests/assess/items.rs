//! Item statistics: small examples by hand, small and odd inputs, and what must hold for all answers.

use healedhue::assess::items::{
    Analysis, Answer, Candidate, Flag, Item, ItemOption, Sitting, SittingError, analyse,
};
use healedhue::language::Language;
use proptest::prelude::*;

/// A sitting from credits, `None` for a missing answer; a row a person.
fn sitting(rows: &[Vec<Option<f64>>]) -> Sitting {
    named(rows, &|item| format!("i{item:02}"), &|person| format!("p{person:03}"))
}

fn named(
    rows: &[Vec<Option<f64>>],
    item_name: &dyn Fn(usize) -> String,
    person_name: &dyn Fn(usize) -> String,
) -> Sitting {
    let items =
        (0..rows.first().map_or(0, Vec::len)).map(|at| Item { id: item_name(at), options: Vec::new() });
    let people = rows.iter().enumerate().map(|(at, row)| Candidate {
        id: person_name(at),
        answers: row
            .iter()
            .enumerate()
            .filter_map(|(item, credit)| {
                credit.map(|credit| Answer { item, credit, chosen: None, offered: None })
            })
            .collect(),
    });
    Sitting::new(items.collect(), people.collect()).expect("in order")
}

fn rows(text: &[&str]) -> Vec<Vec<Option<f64>>> {
    let credit = |sign| match sign {
        '1' => Some(1.0),
        'h' => Some(0.5),
        '0' => Some(0.0),
        _ => None,
    };
    text.iter().map(|row| row.chars().map(credit).collect()).collect()
}

fn near(found: Option<f64>, wanted: f64) -> bool {
    found.is_some_and(|found| (found - wanted).abs() < 1e-12)
}

/// Four people, three items, right 3, 2, 1, 0 times: item variances (divisor 3) 1/4, 1/3, 1/4; scores vary by 5/3;
/// alpha = 3/2 · (1 - (5/6)/(5/3)) = 3/4; error √(5/3 · 1/4).
#[test]
fn a_perfect_ladder_has_the_reliability_worked_out_by_hand() {
    let analysis = analyse(&sitting(&rows(&["111", "110", "100", "000"])));
    let reliability = &analysis.reliability;
    assert!(near(reliability.alpha.map(|c| c.value), 0.75));
    assert!(near(reliability.kr20.map(|c| c.value), 0.75));
    assert!(near(reliability.alpha.map(|c| c.standard_error), (5.0_f64 / 12.0).sqrt()));
    assert!(near(reliability.mean, 1.5));
    let facility = |at: usize| analysis.items[at].classical.facility;
    assert!(near(facility(0), 0.75) && near(facility(1), 0.5) && near(facility(2), 0.25));
    // Item 1 against the rest (2, 1, 1, 0): covariance 1/3, variances 1/3 and 2/3; r = 1/√2.
    assert!(near(analysis.items[1].classical.discrimination, 0.5_f64.sqrt()));
    // On a ladder the harder is never right without the easier: no finite difficulties, and it is said.
    assert_eq!(analysis.estimated, 0);
    assert!(analysis.why_no_difficulties.is_some());
    assert!(analysis.people.iter().all(|person| person.rasch.measure.is_none()));
}

#[test]
fn partial_credit_counts_as_it_is_for_facility_and_as_wrong_for_kr20() {
    let analysis = analyse(&sitting(&rows(&["1h1", "h10", "00h", "1hh"])));
    assert!(near(analysis.items[1].classical.facility, 0.5));
    assert!(near(analysis.items[1].classical.right, 0.25));
    let whole = analyse(&sitting(&rows(&["101", "010", "000", "100"])));
    assert_eq!(analysis.reliability.kr20, whole.reliability.kr20);
    assert_ne!(analysis.reliability.alpha, whole.reliability.alpha);
}

/// Two items, one right of two for each person: the odds of which one are e(1) to e(2), so that the difficulties differ by
/// the logarithm of the counts' ratio, and the difference varies by 1/a + 1/b.
#[test]
fn two_items_have_the_conditional_estimates_of_the_closed_form() {
    let mut people = vec!["10"; 30];
    people.extend(["01"; 10]);
    people.extend(["11", "00", "1.", ".0"]);
    let analysis = analyse(&sitting(&rows(&people)));
    let half = 3.0_f64.ln() / 2.0;
    let item = |at: usize| &analysis.items[at].rasch;
    assert!((item(0).difficulty.expect("a difficulty") + half).abs() < 1e-9);
    assert!((item(1).difficulty.expect("a difficulty") - half).abs() < 1e-9);
    let error = (1.0_f64 / 30.0 + 1.0 / 10.0).sqrt() / 2.0;
    assert!((item(0).standard_error.expect("an error") - error).abs() < 1e-9);
    // One right of two items of difficulty ±d: by symmetry the measure is 0, its information twice p(1 - p).
    let person = &analysis.people[0].rasch;
    assert!(person.measure.expect("a measure").abs() < 1e-9);
    let p = 1.0 / (1.0 + (-half).exp());
    assert!((person.standard_error.expect("an error") - 1.0 / (2.0 * p * (1.0 - p)).sqrt()).abs() < 1e-9);
    // All right and all wrong have measures too, mirrored.
    let (all, none) = (&analysis.people[40].rasch, &analysis.people[41].rasch);
    assert!(all.extreme && none.extreme);
    let (all, none) = (all.measure.expect("a measure"), none.measure.expect("a measure"));
    assert!(all > 0.5 && (all + none).abs() < 1e-9);
}

/// Warm's estimate for n equal items and r right is the log odds of (r + 1/2) to (n - r + 1/2): r - np + (1 - 2p)/2 = 0.
#[test]
fn measures_on_equal_items_follow_the_closed_form() {
    // Every way to get one or two of three right, each once: all items alike.
    let analysis = analyse(&sitting(&rows(&["100", "010", "001", "110", "101", "011", "111", "000"])));
    for item in &analysis.items {
        assert!(item.rasch.difficulty.expect("a difficulty").abs() < 1e-9);
    }
    for person in &analysis.people {
        let wanted = ((person.score + 0.5) / (3.5 - person.score)).ln();
        assert!((person.rasch.measure.expect("a measure") - wanted).abs() < 1e-9);
    }
}

#[test]
fn items_right_or_wrong_for_all_fall_out_with_words() {
    let analysis = analyse(&sitting(&rows(&["1010.", "1001.", "1010.", "1001."])));
    let english = Language::of("en");
    let said = |why| Flag::Unlinked { why }.words(&english);
    let why: Vec<_> = analysis.items.iter().map(|item| item.rasch.unlinked.map(said)).collect();
    insta::assert_debug_snapshot!(why);
    assert_eq!(analysis.estimated, 2);
    assert!(analysis.items[2].rasch.difficulty.expect("a difficulty").abs() < 1e-9);
}

/// Two groups that answered different items cannot be compared: the larger part is kept.
#[test]
fn of_parts_without_a_link_the_largest_is_kept() {
    let analysis = analyse(&sitting(&rows(&["10...", "01...", "..101", "..011", "..110"])));
    let kept: Vec<bool> = analysis.items.iter().map(|item| item.rasch.difficulty.is_some()).collect();
    assert_eq!(kept, [false, false, true, true, true]);
    assert!(analysis.people[0].rasch.measure.is_none());
    assert!(analysis.people[2].rasch.measure.is_some());
}

#[test]
fn the_smallest_inputs_give_words_not_numbers() {
    for (name, people) in [
        ("nobody", vec![]),
        ("one person", vec!["101"]),
        ("one item", vec!["1", "0", "1"]),
        ("all right", vec!["111", "111", "111"]),
        ("all wrong", vec!["000", "000"]),
        ("all missing", vec!["...", "..."]),
        ("one answer each", vec!["1..", ".0.", "..h"]),
    ] {
        let analysis = analyse(&sitting(&rows(&people)));
        assert_eq!(analysis.estimated, 0, "{name}");
        assert!(analysis.why_no_difficulties.is_some(), "{name}");
        assert!(analysis.reliability.alpha.is_none() && analysis.reliability.kr20.is_none(), "{name}");
        assert!(analysis.reliability.why_not.is_some(), "{name}");
        for item in &analysis.items {
            assert!(item.classical.discrimination.is_none(), "{name}");
            assert_eq!(item.flags, [Flag::FewAnswers { answers: item.classical.answers }], "{name}");
        }
        assert_finite(&analysis);
    }
}

/// JSON has no word for "not a number": `null` stands for it, and for `None`.
fn assert_finite(analysis: &Analysis) {
    for item in &analysis.items {
        let rasch = &item.rasch;
        let numbers =
            [item.classical.facility, item.classical.discrimination, rasch.difficulty, rasch.standard_error];
        assert!(numbers.into_iter().flatten().all(f64::is_finite), "{item:?}");
        assert!(rasch.fit.is_none_or(|fit| fit.infit.is_finite() && fit.outfit.is_finite()));
    }
    for person in &analysis.people {
        assert!(
            [person.rasch.measure, person.rasch.standard_error].into_iter().flatten().all(f64::is_finite)
        );
        assert!(person.rasch.fit.is_none_or(|fit| fit.infit.is_finite() && fit.outfit.is_finite()));
    }
    for coefficient in [analysis.reliability.alpha, analysis.reliability.kr20].into_iter().flatten() {
        assert!(coefficient.value.is_finite() && coefficient.standard_error.is_finite());
    }
    assert!(analysis.separation.is_none_or(|share| (0.0..=1.0).contains(&share)));
}

#[test]
fn options_count_only_where_they_were_shown() {
    let option = |label: &str, key| ItemOption {
        label: label.to_owned(),
        key,
        misconception: (!key).then(|| "opposite".to_owned()),
    };
    let items = vec![
        Item {
            id: "hue".to_owned(),
            options: vec![option("key", true), option("cool", false), option("warm", false)],
        },
        Item { id: "rest".to_owned(), options: Vec::new() },
    ];
    let person = |at: usize, chosen: usize, shown: Vec<u16>, rest: f64| Candidate {
        id: format!("p{at}"),
        answers: vec![
            Answer {
                item: 0,
                credit: if chosen == 0 { 1.0 } else { 0.0 },
                chosen: Some(chosen),
                offered: Some(shown),
            },
            Answer { item: 1, credit: rest, chosen: None, offered: None },
        ],
    };
    let people =
        vec![person(0, 0, vec![0, 1], 1.0), person(1, 1, vec![0, 1], 0.5), person(2, 0, vec![0, 2], 0.0)];
    let analysis = analyse(&Sitting::new(items, people).expect("in order"));
    let rows = &analysis.items[0].options;
    let table: Vec<_> = rows.iter().map(|row| (row.offered, row.chosen, row.share, row.mean_rest)).collect();
    assert_eq!(
        table,
        [(3, 2, Some(2.0 / 3.0), Some(0.5)), (2, 1, Some(0.5), Some(0.5)), (1, 0, Some(0.0), None)]
    );
    assert_eq!(rows[1].misconception.as_deref(), Some("opposite"));
}

#[test]
fn answers_that_cannot_be_are_named() {
    let answer = |item, credit, chosen| Answer { item, credit, chosen, offered: None };
    let attempt = |ids: &[&str], people: &[(&str, Vec<Answer>)]| {
        let option = ItemOption { label: "yes".to_owned(), key: true, misconception: None };
        let items = ids.iter().map(|id| Item { id: (*id).to_owned(), options: vec![option.clone()] });
        let people =
            people.iter().map(|(id, answers)| Candidate { id: (*id).to_owned(), answers: answers.clone() });
        Sitting::new(items.collect(), people.collect()).expect_err("wrong on purpose").to_string()
    };
    let said = [
        attempt(&["a", "a"], &[]),
        attempt(&["a"], &[("p", vec![]), ("p", vec![])]),
        attempt(&["a"], &[("p", vec![answer(1, 1.0, None)])]),
        attempt(&["a"], &[("p", vec![answer(0, 1.0, None), answer(0, 0.0, None)])]),
        attempt(&["a"], &[("p", vec![answer(0, 1.5, None)])]),
        attempt(&["a"], &[("p", vec![answer(0, f64::NAN, None)])]),
        attempt(&["a"], &[("p", vec![answer(0, 1.0, Some(1))])]),
        attempt(&["a"], &[("p", vec![Answer { offered: Some(vec![]), ..answer(0, 1.0, Some(0)) }])]),
    ];
    insta::assert_snapshot!(said.join("\n"));
    let error: Result<Sitting, SittingError> = Sitting::new(Vec::new(), Vec::new());
    assert!(error.is_ok());
}

/// Simulated people with papers of their own, so many of the items each: the truth and the analysis.
fn own_papers(items: usize, each: usize, people: usize) -> (Vec<f64>, Analysis) {
    // A seeded generator of the plainest kind (Knuth's numbers): enough to make answers.
    let mut state = 7_u64;
    let mut uniform = move || {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (state >> 11) as f64 / (1_u64 << 53) as f64
    };
    let step = 4.0 / (items as f64 - 1.0);
    let difficulty: Vec<f64> = (0..items).map(|at| at as f64 * step - 2.0).collect();
    let candidate = |at: usize, uniform: &mut dyn FnMut() -> f64| {
        let ability = (0..6).map(|_| uniform()).sum::<f64>() * 1.4 - 4.2;
        let mut chosen = std::collections::BTreeSet::new();
        while chosen.len() < each {
            chosen.insert((uniform() * items as f64) as usize);
        }
        let answers = chosen.into_iter().map(|item| {
            let likely = 1.0 / (1.0 + (difficulty[item] - ability).exp());
            let credit = if uniform() < likely { 1.0 } else { 0.0 };
            Answer { item, credit, chosen: None, offered: None }
        });
        Candidate { id: format!("p{at}"), answers: answers.collect() }
    };
    let candidates = (0..people).map(|at| candidate(at, &mut uniform)).collect();
    let items = (0..items).map(|at| Item { id: format!("i{at:03}"), options: Vec::new() }).collect();
    (difficulty, analyse(&Sitting::new(items, candidates).expect("in order")))
}

/// True difficulties must lie within the standard errors as often as those say: the mean square of the deviation by its
/// error is 1, give or take √(2/items), three times which is allowed. With 800 items the errors come from each item's own
/// information.
#[test]
fn large_cohorts_with_papers_of_their_own_are_estimated_with_honest_errors() {
    for (items, exact) in [(400, true), (800, false)] {
        let (difficulty, analysis) = own_papers(items, 30, items * 5);
        assert_eq!((analysis.estimated, analysis.exact_errors), (items, exact));
        let squares = analysis.items.iter().zip(&difficulty).map(|(item, truth)| {
            let off = item.rasch.difficulty.expect("a difficulty") - truth;
            let error = item.rasch.standard_error.expect("an error");
            off * off / (error * error)
        });
        let mean = squares.sum::<f64>() / items as f64;
        assert!((mean - 1.0).abs() < 3.0 * (2.0 / items as f64).sqrt(), "{items} items: {mean}");
        // No alpha without answers to everything; the measures' own reliability stands in.
        assert!(analysis.reliability.why_not.is_some());
        assert!(analysis.separation.is_some_and(|share| share > 0.5));
    }
}

/// Answers of a few people to a few items: full, half, no credit or missing.
fn answers() -> impl Strategy<Value = Vec<Vec<Option<f64>>>> {
    (1_usize..8, 0_usize..14).prop_flat_map(|(items, people)| {
        let answer = prop_oneof![
            4 => Just(Some(1.0)),
            4 => Just(Some(0.0)),
            1 => (0.0..=1.0).prop_map(Some),
            1 => Just(None),
        ];
        prop::collection::vec(prop::collection::vec(answer, items), people)
    })
}

fn close(one: Option<f64>, other: Option<f64>) -> bool {
    match (one, other) {
        // Sums in another order differ in the last digits; estimates stop within 1e-9.
        (Some(one), Some(other)) => (one - other).abs() <= 1e-6 * (1.0 + one.abs()),
        (one, other) => one == other,
    }
}

proptest! {
    #[test]
    fn prop_statistics_are_finite_and_within_their_bounds(rows in answers()) {
        let analysis = analyse(&sitting(&rows));
        assert_finite(&analysis);
        for item in &analysis.items {
            prop_assert!(item.classical.facility.is_none_or(|share| (0.0..=1.0).contains(&share)));
            prop_assert!(item.classical.discrimination.is_none_or(|r| (-1.0..=1.0).contains(&r)));
            prop_assert_eq!(item.rasch.difficulty.is_none(), item.rasch.unlinked.is_some());
        }
        let sum: f64 = analysis.items.iter().filter_map(|item| item.rasch.difficulty).sum();
        prop_assert!(sum.abs() < 1e-9);
        for coefficient in [analysis.reliability.alpha, analysis.reliability.kr20].into_iter().flatten() {
            prop_assert!(coefficient.value <= 1.0 + 1e-12);
        }
    }

    #[test]
    fn prop_the_order_of_people_and_items_changes_nothing(rows in answers(), turn in 0_usize..14) {
        let one = analyse(&sitting(&rows));
        let (people, items) = (rows.len(), rows.first().map_or(0, Vec::len));
        // People turned round by some places, items reversed; every name goes with its own.
        let person = |at: usize| (at + turn) % people.max(1);
        let item = |at: usize| items - 1 - at;
        let other: Vec<Vec<Option<f64>>> =
            (0..people).map(|p| (0..items).map(|i| rows[person(p)][item(i)]).collect()).collect();
        let other = analyse(&named(
            &other,
            &|at| format!("i{:02}", item(at)),
            &|at| format!("p{:03}", person(at)),
        ));
        prop_assert!(close(
            one.reliability.alpha.map(|c| c.value),
            other.reliability.alpha.map(|c| c.value),
        ));
        for (at, found) in other.items.iter().enumerate() {
            let wanted = &one.items[item(at)];
            prop_assert_eq!(&found.id, &wanted.id);
            prop_assert!(close(found.classical.facility, wanted.classical.facility));
            prop_assert!(close(found.classical.discrimination, wanted.classical.discrimination));
            prop_assert!(close(found.rasch.difficulty, wanted.rasch.difficulty));
            prop_assert!(close(found.rasch.standard_error, wanted.rasch.standard_error));
            prop_assert!(close(
                found.rasch.fit.map(|fit| fit.outfit),
                wanted.rasch.fit.map(|fit| fit.outfit),
            ));
        }
        for (at, found) in other.people.iter().enumerate() {
            let wanted = &one.people[person(at)];
            prop_assert_eq!(&found.id, &wanted.id);
            prop_assert!(close(found.rasch.measure, wanted.rasch.measure));
        }
    }
}
