//! Practice that adapts: the model of knowledge, the choice of what comes next, the record.

use healedhue::assess::knowledge::{
    AnswerForm, DAY, Knowledge, MASTERED, Offer, Parameters, Progress, ReadError, Recent, SkillNeeds, choose,
    plan,
};
use proptest::prelude::*;

fn traced(known: f64, last: i64) -> Knowledge {
    Knowledge { known, answers: 3, credit: 2.0, last: Some(last), spaced: 1, last_spaced: Some(last) }
}

/// By hand, with initial 0.2, learn 0.15, slip 0.1, guess 1/4. Right: 0.18 / 0.38, wrong: 0.02 / 0.62; a half is the mean
/// of both; then 15% of the rest is learnt.
#[test]
fn one_answer_moves_the_trace_as_worked_out_by_hand() {
    let parameters = Parameters::default();
    let fresh = Knowledge::new(&parameters);
    let (right, wrong) = (0.18 / 0.38, 0.02 / 0.62);
    for (credit, seen) in
        [(1.0, right), (0.0, wrong), (0.5, (right + wrong) / 2.0), (0.25, 0.25 * right + 0.75 * wrong)]
    {
        let after = fresh.answered(&parameters, 0.25, credit, 0);
        assert!((after.known - (seen + 0.15 * (1.0 - seen))).abs() < 1e-12, "{credit}");
    }
    let odd = fresh.answered(&parameters, f64::NAN, f64::NAN, 0);
    assert!((0.0..=1.0).contains(&odd.known) && odd.credit == 0.0);
}

/// Half of what lies above the initial 0.2 is lost in 14 days; after three right answers on different days, in 56.
#[test]
fn forgetting_halves_what_was_learnt() {
    let parameters = Parameters::default();
    let trace = traced(0.8, 0);
    assert!((trace.known_at(&parameters, 14 * DAY) - 0.5).abs() < 1e-12);
    assert!((trace.known_at(&parameters, 28 * DAY) - 0.35).abs() < 1e-12);
    let spaced = Knowledge { spaced: 3, ..trace.clone() };
    assert!((spaced.known_at(&parameters, 56 * DAY) - 0.5).abs() < 1e-12);
    // A clock set back takes nothing; a beginner's chance, or less, is not forgotten.
    assert_eq!(trace.known_at(&parameters, -DAY), 0.8);
    assert_eq!(traced(0.1, 0).known_at(&parameters, 1000 * DAY), 0.1);
    assert_eq!(Knowledge::new(&parameters).known_at(&parameters, i64::MAX), 0.2);
}

#[test]
fn only_right_answers_on_another_day_slow_forgetting() {
    let parameters = Parameters::default();
    let mut trace = Knowledge::new(&parameters);
    for (now, credit, spaced) in [
        (0, 1.0, 1),
        (3_600, 1.0, 1),
        (DAY, 0.9, 1),
        (DAY + 60, 1.0, 2),
        (2 * DAY, 1.0, 2),
        (2 * DAY + 60, 1.0, 3),
    ] {
        trace = trace.answered(&parameters, 0.25, credit, now);
        assert_eq!(trace.spaced, spaced, "{now}");
    }
    let days = |spaced| Knowledge { spaced, ..trace.clone() }.half_life_days(&parameters);
    assert_eq!([0, 1, 2, 6, 60].map(days), [14.0, 14.0, 28.0, 448.0, 448.0]);
}

#[test]
fn guessing_follows_the_form_of_the_answer() {
    assert_eq!(AnswerForm::Choice(4).guess(), 0.25);
    assert_eq!(AnswerForm::Choice(1).guess(), 0.5);
    assert_eq!(AnswerForm::Choice(0).guess(), 0.5);
    assert_eq!(AnswerForm::Order(4).guess(), 1.0 / 24.0);
    assert!(AnswerForm::Order(1_000).guess() > 0.0 && AnswerForm::Several(1_000).guess() > 0.0);
    assert_eq!(AnswerForm::Open.guess(), 0.05);
    // Orders of five steps by their pairs the wrong way round: 1, 4, 9, 15, 20, 22 … of 120 (OEIS A008302).
    for (tau, orders) in [(1.0, 1.0), (0.8, 5.0), (0.6, 14.0), (0.4, 29.0), (0.2, 49.0)] {
        assert!((AnswerForm::Order(5).guess_at(tau) - orders / 120.0).abs() < 1e-12, "{tau}");
    }
    // Three of six orders of three steps come by something; the model takes a half at most.
    assert_eq!(AnswerForm::Order(3).guess_at(0.01), 0.5);
    assert_eq!(AnswerForm::Choice(4).guess_at(0.3), 0.25);
    assert!(AnswerForm::Order(1_000).guess_at(0.5).is_finite());
}

#[test]
fn parameters_have_bounds() {
    let error = |initial, learn, slip, days| {
        Parameters::new(initial, learn, slip, days).expect_err("out").to_string()
    };
    assert_eq!(error(1.2, 0.1, 0.1, 14.0), "`initial` is 1.2, outside 0 to 1");
    assert_eq!(error(0.2, f64::NAN, 0.1, 14.0), "`learn` is NaN, outside 0 to 1");
    assert_eq!(error(0.2, 0.1, 0.6, 14.0), "`slip` is 0.6, outside 0 to 0.5");
    assert_eq!(error(0.2, 0.1, 0.1, 0.0), "`half_life_days` is 0, outside 0.1 to 10000 days");
    let default = Parameters::default();
    assert_eq!(Parameters::new(0.2, 0.15, 0.1, 14.0), Ok(default));
}

fn offer<'a>(id: &'a str, skill: &'a str, client: Option<&'a str>) -> Offer<'a> {
    Offer { id, skill, client, minutes: 2.0, guess: 0.25 }
}

fn progress(skills: &[(&str, f64)]) -> Progress {
    let mut progress = Progress::new();
    for (skill, known) in skills {
        progress.skills.insert((*skill).to_owned(), traced(*known, 0));
    }
    progress
}

#[test]
fn the_next_question_goes_where_the_need_is() {
    let parameters = Parameters::default();
    let offers = [
        offer("d1", "undertone", Some("mira")),
        offer("d2", "undertone", Some("tove")),
        offer("d3", "warmth", Some("mira")),
        offer("d4", "ageing", None),
    ];
    let needs = [SkillNeeds { skill: "warmth", needs: &["undertone"] }];
    let next = |progress: &Progress, recent: &Recent| {
        choose(&offers, &needs, progress, &parameters, recent, 0).map(|at| offers[at].id)
    };
    let recent = |skills: &[&str], client: Option<&str>, offer: Option<&str>| Recent {
        skills: skills.iter().map(|skill| (*skill).to_owned()).collect(),
        client: client.map(str::to_owned),
        offer: offer.map(str::to_owned),
    };
    let none = Recent::default();
    // The least known.
    let some = progress(&[("undertone", 0.7), ("warmth", 0.5), ("ageing", 0.9)]);
    assert_eq!(next(&some, &none), Some("d3"));
    // What it builds on comes first.
    let little = progress(&[("undertone", 0.3), ("warmth", 0.1), ("ageing", 0.9)]);
    assert_eq!(next(&little, &none), Some("d1"));
    // Not the same client again.
    assert_eq!(next(&little, &recent(&[], Some("mira"), None)), Some("d2"));
    assert_eq!(next(&some, &recent(&[], Some("mira"), None)), Some("d2"));
    // Not the same skill again while others need practice.
    assert_eq!(next(&little, &recent(&["undertone"], None, Some("d1"))), Some("d4"));
    // Mastered skills wait, even if the others were asked just now; then another drill of the skill comes.
    let most = progress(&[("undertone", 0.7), ("warmth", 0.96), ("ageing", 0.97)]);
    assert_eq!(next(&most, &recent(&["undertone"], None, Some("d1"))), Some("d2"));
    // Equal in all: the longest not practised, then the order of the offers.
    let mut equal = progress(&[("undertone", 0.7), ("warmth", 0.7), ("ageing", 0.7)]);
    assert_eq!(next(&equal, &none), Some("d1"));
    equal.skills.insert("ageing".to_owned(), traced(0.7, -DAY));
    let at =
        choose(&offers[..], &needs, &equal, &Parameters::new(0.7, 0.1, 0.1, 14.0).expect("in"), &none, -DAY);
    assert_eq!(at, Some(3));
    // Needs that nothing trains, or that go round in a circle, hold nothing up.
    let circle = [
        SkillNeeds { skill: "warmth", needs: &["undertone", "nothing", "warmth"] },
        SkillNeeds { skill: "undertone", needs: &["warmth"] },
        SkillNeeds { skill: "ageing", needs: &["nothing"] },
    ];
    assert_eq!(choose(&offers, &circle, &Progress::new(), &parameters, &none, 0), Some(3));
    assert_eq!(choose(&offers[..3], &circle, &Progress::new(), &parameters, &none, 0), Some(0));
    assert_eq!(choose(&[], &circle, &Progress::new(), &parameters, &none, 0), None);
}

#[test]
fn a_plan_fits_into_its_minutes_and_moves_on() {
    let parameters = Parameters::default();
    let offers = [
        Offer { minutes: 3.0, ..offer("d1", "undertone", Some("mira")) },
        Offer { minutes: 2.0, ..offer("d2", "warmth", Some("tove")) },
        Offer { minutes: 1.5, ..offer("d3", "ageing", None) },
        Offer { minutes: 0.0, ..offer("d4", "ageing", None) },
        Offer { minutes: f64::NAN, ..offer("d5", "ageing", None) },
    ];
    let steps = plan(&offers, &[], &Progress::new(), &parameters, 20.0, 0);
    let minutes: f64 = steps.iter().map(|step| step.minutes).sum();
    assert!(minutes <= 20.0 && minutes > 18.0, "{minutes}");
    assert!(steps.windows(2).all(|pair| pair[0].from_minute + pair[0].minutes == pair[1].from_minute));
    // All three skills turn by turn, none twice running, nothing without minutes.
    assert!(
        steps.windows(3).all(|three| three[0].offer != three[1].offer && three[0].offer != three[2].offer)
    );
    assert!(steps.iter().all(|step| step.offer < 3));
    // Practice is expected to help.
    let first = steps.iter().find(|step| step.offer == 0).expect("asked");
    let last = steps.iter().rev().find(|step| step.offer == 0).expect("asked");
    assert!(last.known > first.known);
    for minutes in [0.0, 1.0, -5.0, f64::NAN] {
        assert!(plan(&offers, &[], &Progress::new(), &parameters, minutes, 0).is_empty());
    }
    assert!(plan(&offers, &[], &Progress::new(), &parameters, f64::INFINITY, i64::MAX).len() >= 100);
}

#[test]
fn a_record_comes_back_as_it_was() {
    let parameters = Parameters::default();
    let mut progress = Progress::new();
    progress.answered("undertone", &parameters, 0.25, 0.8, 1_700_000_000);
    progress.answered("warmth", &parameters, 0.2, 1.0, 1_700_000_060);
    let text = progress.write();
    insta::assert_snapshot!(text);
    let (read, notes) = Progress::read(&text).expect("a record");
    assert_eq!((read.clone(), notes), (progress, vec![]));
    assert_eq!(read.write(), text);
}

#[test]
fn what_a_record_holds_besides_is_kept() {
    let text = r#"{"format": 1, "note": "kept", "skills": {
        "gone from the course": {"known": 0.5, "answers": 1, "credit": 1, "last": 5, "spaced": 1, "last_spaced": 5},
        "odd": {"known": 7.0, "answers": 1, "credit": 1, "last": 5, "spaced": 1, "last_spaced": 5},
        "strange": "seventeen"}}"#;
    let (mut progress, notes) = Progress::read(text).expect("a record");
    let notes: Vec<String> = notes.iter().map(ToString::to_string).collect();
    insta::assert_debug_snapshot!(notes);
    assert_eq!(progress.skills["gone from the course"].known, 0.5);
    let again: serde_json::Value = serde_json::from_str(&progress.write()).expect("JSON");
    assert_eq!(again["note"], "kept");
    assert_eq!(again["skills"]["strange"], "seventeen");
    assert_eq!(again["skills"]["odd"]["known"], 7.0);
    assert_eq!(again["skills"]["gone from the course"]["known"], 0.5);
    // Practised again, an entry begins anew.
    progress.answered("strange", &Parameters::default(), 0.25, 1.0, 10);
    let (progress, notes) = Progress::read(&progress.write()).expect("a record");
    assert_eq!((progress.skills["strange"].answers, notes.len()), (1, 1));
}

#[test]
fn a_field_of_an_entry_that_cannot_be_is_named() {
    let right = [
        ("known", "0.5"),
        ("answers", "2"),
        ("credit", "1.5"),
        ("last", "5"),
        ("spaced", "1"),
        ("last_spaced", "null"),
    ];
    let with = |field: &str, value: Option<&str>| {
        let fields = right.iter().filter_map(|(name, usual)| {
            let value = if *name == field { value } else { Some(*usual) };
            value.map(|value| format!("\"{name}\": {value}"))
        });
        let fields: Vec<String> = fields.collect();
        let text = format!("{{\"format\": 1, \"skills\": {{\"warmth\": {{{}}}}}}}", fields.join(", "));
        let (_, notes) = Progress::read(&text).expect("a record");
        notes.iter().map(|note| note.why.to_string()).collect::<Vec<_>>()
    };
    assert_eq!(with("", None), [""; 0]);
    // Before the first answer there is no time; a record may leave it out.
    for field in ["last", "last_spaced"] {
        assert_eq!(with(field, None), [""; 0]);
        assert_eq!(
            with(field, Some("5.5")),
            [format!("`{field}` must be a whole number of seconds, or `null`")]
        );
    }
    for field in ["known", "answers", "credit", "spaced"] {
        assert_eq!(with(field, None), [format!("`{field}` is missing")]);
    }
    for field in ["known", "credit"] {
        assert_eq!(with(field, Some("\"much\"")), [format!("`{field}` must be a number")]);
    }
    for (field, value) in [("answers", "-1"), ("answers", "4294967296"), ("spaced", "0.5")] {
        assert_eq!(
            with(field, Some(value)),
            [format!("`{field}` must be a whole number from 0 to 4294967295")]
        );
    }
}

#[test]
fn what_is_no_record_is_said_to_be_none() {
    let error = |text: &str| Progress::read(text).expect_err("no record").to_string();
    let said = [
        "",
        "{\"format\": 1, \"skills\": {",
        "[]",
        "<!doctype html>",
        "{\"form\": \"another\"}",
        "{\"format\": \"one\"}",
        "{\"format\": 0}",
        "{\"format\": 1, \"skills\": []}",
        "{\"format\": 1,\n \"skills\": {\"Töne\": oops}}",
        "{\"format\": 1} and more",
        "{\"format\": 2, \"skills\": []}",
    ]
    .map(error);
    insta::assert_snapshot!(said.join("\n"));
    assert_eq!(Progress::read("{\"format\": 9}"), Err(ReadError::Newer { found: 9 }));
}

fn parameters() -> impl Strategy<Value = Parameters> {
    (0.0..=1.0, 0.0..=1.0, 0.0..=0.5, 0.1..=10_000.0).prop_map(|(initial, learn, slip, days)| {
        Parameters::new(initial, learn, slip, days).expect("within bounds")
    })
}

/// Answers as seconds since the one before, guess and credit.
fn answers() -> impl Strategy<Value = Vec<(i64, f64, f64)>> {
    let credit = prop_oneof![Just(1.0), Just(0.0), 0.0..=1.0];
    prop::collection::vec((0..40 * DAY, 0.0..=0.5, credit), 0..20)
}

/// The trace after answers, and the time then.
fn after(parameters: &Parameters, answers: &[(i64, f64, f64)]) -> (Knowledge, i64) {
    answers.iter().fold((Knowledge::new(parameters), 0), |(trace, now), &(wait, guess, credit)| {
        (trace.answered(parameters, guess, credit, now + wait), now + wait)
    })
}

proptest! {
    #[test]
    fn prop_chances_stay_within_0_and_1(
        parameters in parameters(),
        answers in answers(),
        wait in any::<i64>(),
        guess in any::<f64>(),
    ) {
        let (trace, now) = after(&parameters, &answers);
        prop_assert!((0.0..=1.0).contains(&trace.known));
        let later = now.saturating_add(wait);
        prop_assert!((0.0..=1.0).contains(&trace.known_at(&parameters, later)));
        prop_assert!((0.0..=1.0).contains(&trace.expected(&parameters, guess, later)));
        let odd = trace.answered(&parameters, guess, guess, later);
        prop_assert!((0.0..=1.0).contains(&odd.known) && (0.0..=1.0).contains(&odd.known_at(&parameters, i64::MAX)));
    }

    #[test]
    fn prop_forgetting_never_goes_back_and_composes(
        parameters in parameters(),
        answers in answers(),
        one in 0..4000 * DAY,
        two in 0..4000 * DAY,
    ) {
        let (trace, now) = after(&parameters, &answers);
        let soon = trace.known_at(&parameters, now + one);
        let late = trace.known_at(&parameters, now + one + two);
        prop_assert!(late <= soon && soon <= trace.known);
        let moved = Knowledge { known: soon, last: Some(now + one), ..trace.clone() };
        prop_assert!((moved.known_at(&parameters, now + one + two) - late).abs() < 1e-12);
    }

    #[test]
    fn prop_a_right_answer_never_lowers_and_credit_never_hurts(
        parameters in parameters(),
        answers in answers(),
        guess in 0.0..=0.5,
        credit in 0.0..=1.0,
    ) {
        let (trace, now) = after(&parameters, &answers);
        let right = trace.answered(&parameters, guess, 1.0, now);
        let part = trace.answered(&parameters, guess, credit, now);
        let wrong = trace.answered(&parameters, guess, 0.0, now);
        // The last digit of a quotient may fall the other way.
        let rounding = 1e-12;
        prop_assert!(right.known >= trace.known - rounding);
        prop_assert!(right.known >= part.known - rounding && part.known >= wrong.known - rounding);
    }

    #[test]
    fn prop_one_more_right_answer_anywhere_never_lowers_mastery(
        parameters in parameters(),
        answers in answers(),
        at in 0_usize..20,
        share in 0.0..1.0,
        guess in 0.0..=0.5,
        wait in 0..400 * DAY,
    ) {
        let (without, now) = after(&parameters, &answers);
        let mut more = answers.clone();
        // Some time within the pause before an answer, or right after the last.
        let at = at % (answers.len() + 1);
        if at < more.len() {
            let pause = more[at].0;
            let first = (pause as f64 * share) as i64;
            more[at].0 = pause - first;
            more.insert(at, (first, guess, 1.0));
        } else {
            more.push((0, guess, 1.0));
        }
        let (with, then) = after(&parameters, &more);
        prop_assert_eq!(now, then);
        prop_assert!(with.known_at(&parameters, now + wait) >= without.known_at(&parameters, now + wait) - 1e-9);
    }

    #[test]
    fn prop_a_record_is_read_as_it_was_written(
        parameters in parameters(),
        answers in answers(),
        skill in "\\PC{0,12}",
    ) {
        let mut progress = Progress::new();
        let mut now = 0;
        for (wait, guess, credit) in answers {
            now += wait;
            progress.answered(&skill, &parameters, guess, credit, now);
        }
        let (read, notes) = Progress::read(&progress.write()).expect("a record");
        prop_assert!(notes.is_empty());
        prop_assert_eq!(read, progress);
    }

    #[test]
    fn prop_a_record_cut_short_is_no_record(answers in answers(), cut in 0.0..1.0) {
        let mut progress = Progress::new();
        for (wait, guess, credit) in answers {
            progress.answered("undertone", &Parameters::default(), guess, credit, wait);
        }
        let text = progress.write();
        // The last two bytes are the closing brace and the line break.
        let end = ((text.len() - 2) as f64 * cut) as usize;
        prop_assert!(matches!(Progress::read(&text[..end]), Err(ReadError::NoRecord(_))));
    }

    #[test]
    fn prop_a_client_does_not_come_twice_running_where_another_waits(
        known in prop::collection::vec(0.0..=1.0, 3),
        last in 0_usize..3,
    ) {
        let clients = ["mira", "tove", "lin"];
        let skills = ["a", "b", "c"];
        let offers: Vec<Offer<'_>> = (0..3).map(|at| offer(skills[at], skills[at], Some(clients[at]))).collect();
        let progress = progress(&[("a", known[0]), ("b", known[1]), ("c", known[2])]);
        let recent = Recent { client: Some(clients[last].to_owned()), ..Recent::default() };
        let next = choose(&offers, &[], &progress, &Parameters::default(), &recent, 0).expect("offers");
        prop_assert_ne!(next, last);
        // The one not taken, of the two that may come, is known no worse, or it is mastered.
        let other = (0..3).find(|&at| at != last && at != next).expect("a third");
        prop_assert!(known[other] >= known[next] || known[other] >= MASTERED);
    }
}
