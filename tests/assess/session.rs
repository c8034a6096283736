//! Sessions of practice: what builds on what, what is asked next, what is noted.

use crate::site::fixture::DEMO;
use healedhue::assess::knowledge::{AnswerForm, DAY, MASTERED, Parameters, Progress, SPACED_BY};
use healedhue::assess::session::{Level, Session, answer_shown, prerequisites};
use healedhue::course::{Course, Drill, Lesson};
use healedhue::exercise::{Answer, AnswerError, Exercise, Form, outcome};
use std::collections::BTreeSet;

const NOW: i64 = 1_700_000_000;

/// Drills with written questions: their exercises cost nothing to make.
fn written(course: &Course) -> Vec<(&Lesson, &Drill)> {
    course.drills().filter(|(_, drill)| !drill.questions.is_empty()).collect()
}

fn session(course: &Course, progress: Progress, seed: u64) -> Session<'_> {
    Session::new(course, written(course), progress, Parameters::default(), seed, NOW)
}

/// Asks so many questions, answers each as `by` says, and tells the exercises.
fn sit(
    session: &mut Session<'_>,
    count: usize,
    by: impl Fn(&Exercise) -> Answer,
) -> Vec<(String, String, u32)> {
    (0..count)
        .map(|_| {
            let exercise = session.next(f64::INFINITY, NOW).unwrap().expect("something to practise");
            session.answer(&exercise, &by(&exercise), NOW).unwrap();
            (exercise.skill, exercise.drill, exercise.number)
        })
        .collect()
}

fn right(exercise: &Exercise) -> Answer {
    exercise.form.key()
}

/// An answer that is not right, of choices or an order.
fn wrong(exercise: &Exercise) -> Answer {
    match exercise.form.key() {
        Answer::One(key) => Answer::One(usize::from(key == 0)),
        Answer::Order(mut places) => {
            places.reverse();
            Answer::Order(places)
        }
        Answer::Several(right) => {
            let all = exercise.form.options().len();
            Answer::Several((0..all).filter(|place| !right.contains(place)).collect())
        }
        other => panic!("{other:?} is not asked here"),
    }
}

#[test]
fn skills_build_on_those_introduced_before_and_never_in_a_circle() {
    let course = &DEMO.0;
    let mut left = prerequisites(course);
    let trained: BTreeSet<&str> = course.drills().map(|(_, drill)| drill.skill.as_str()).collect();
    assert!(trained.iter().all(|skill| left.iter().any(|entry| entry.skill == *skill)));
    assert!(left.iter().any(|entry| !entry.needs.is_empty()), "some skills build on others");
    // By hand: mixing by drops is introduced by a lesson that needs "From bottle to skin", which trains the choice of a bottle.
    let mix = left.iter().find(|entry| entry.skill == "adjust-mix").expect("it is trained");
    assert!(mix.needs.contains(&"choose-bottle"), "{mix:?}");
    // What needs nothing that is left can be taken away; in a circle something would remain.
    loop {
        let names: Vec<&str> = left.iter().map(|entry| entry.skill).collect();
        let before = left.len();
        left.retain(|entry| entry.needs.iter().any(|need| names.contains(need)));
        if left.len() == before {
            break;
        }
    }
    assert!(left.is_empty(), "{left:?}");
}

#[test]
fn the_same_record_seed_and_answers_give_the_same_session() {
    let course = &DEMO.0;
    let asked = |seed| sit(&mut session(course, Progress::new(), seed), 20, right);
    assert_eq!(asked(7), asked(7));
    assert_ne!(asked(7), asked(8));
}

#[test]
fn questions_of_one_skill_do_not_follow_one_another() {
    let course = &DEMO.0;
    for by in [right as fn(&Exercise) -> Answer, wrong] {
        let mut session = session(course, Progress::new(), 3);
        let asked = sit(&mut session, 30, by);
        for window in asked.windows(SPACED_BY + 1) {
            let skills: BTreeSet<&str> = window.iter().map(|(skill, ..)| skill.as_str()).collect();
            assert_eq!(skills.len(), SPACED_BY + 1, "{asked:?}");
        }
        let exercises: BTreeSet<_> = asked.iter().collect();
        assert_eq!(exercises.len(), asked.len(), "nothing is asked twice");
    }
}

#[test]
fn what_is_answered_right_gives_way_to_what_is_not() {
    let course = &DEMO.0;
    let mut session = session(course, Progress::new(), 5);
    let asked = sit(&mut session, 120, right);
    let skills: BTreeSet<&str> = asked.iter().map(|(skill, ..)| skill.as_str()).collect();
    let trained: BTreeSet<&str> = written(course).iter().map(|(_, drill)| drill.skill.as_str()).collect();
    assert_eq!(skills, trained, "everything has had its turn");
    let summary = session.summary(NOW);
    assert!(summary.skills.iter().all(|change| change.after > change.before && change.credit == 1.0));
    assert!(summary.reread.is_empty() && summary.misconceptions.is_empty());
    // After two months most of it is to be practised again.
    assert!(session.summary(NOW + 60 * DAY).next.len() == 3);
}

#[test]
fn wrong_answers_are_summed_up_with_what_to_reread_and_what_they_show() {
    let course = &DEMO.0;
    let mut session = session(course, Progress::new(), 11);
    sit(&mut session, 24, wrong);
    let summary = session.summary(NOW);
    assert_eq!(summary.skills.iter().map(|change| change.answers).sum::<u32>(), 24);
    assert!(summary.skills.iter().all(|change| Level::of(change.after) == Level::Little));
    assert_eq!((summary.next.len(), summary.reread.len()), (3, 3));
    assert!(summary.reread.iter().all(|(lesson, count)| course.lesson(lesson).is_some() && *count > 0));
    assert!(!summary.misconceptions.is_empty());
    for count in &summary.misconceptions {
        assert!(course.misconception(&count.misconception).is_some() && count.chosen > 0);
    }
}

#[test]
fn every_form_of_answer_is_marked_and_noted() {
    let (course, pools) = &*DEMO;
    let kind = |exercise: &Exercise| match exercise.form {
        Form::One(_) => "one",
        Form::Several(_) => "several",
        Form::Order(_) => "order",
        Form::Drops(_) => "drops",
        Form::Number(_) => "number",
    };
    let mut seen = BTreeSet::new();
    for exercise in pools.values().flatten() {
        if !seen.insert(kind(exercise)) {
            continue;
        }
        let mut session = session(course, Progress::new(), 1);
        let chosen = session.answer(exercise, &exercise.form.key(), NOW).unwrap();
        assert_eq!(chosen.mark.credit, 1.0, "{}", exercise.drill);
        let trace = &session.progress().skills[&exercise.skill];
        assert_eq!((trace.answers, trace.credit), (1, 1.0));
        // What is hard to guess says more.
        let plain = Parameters::default();
        let guessed =
            Progress::new().knowledge("x", &plain).answered(&plain, AnswerForm::Choice(2).guess(), 1.0, NOW);
        assert!(trace.known >= guessed.known, "{}", exercise.drill);
    }
    assert_eq!(seen, BTreeSet::from(["drops", "number", "one", "order", "several"]));
}

#[test]
fn what_is_no_answer_is_not_noted() {
    let (course, pools) = &*DEMO;
    let exercise = pools.values().flatten().find(|exercise| matches!(exercise.form, Form::Drops(_))).unwrap();
    let mut session = session(course, Progress::new(), 1);
    let refused = session.answer(exercise, &Answer::One(0), NOW);
    assert!(matches!(refused, Err(AnswerError::Form(_))));
    assert_eq!((session.answers(), session.progress()), (0, &Progress::new()));
}

#[test]
fn a_tempting_mix_shows_its_misconception() {
    let (course, pools) = &*DEMO;
    let mut shown = 0;
    for exercise in pools.values().flatten() {
        let Form::Drops(drops) = &exercise.form else { continue };
        for tempting in &drops.tempting {
            let healedhue::exercise::Action::Place(mix) = &tempting.action else { continue };
            let answer = Answer::Drops(mix.clone());
            let mark = outcome(course, exercise, &answer).unwrap().mark;
            let said = answer_shown(exercise, &answer, &mark).unwrap();
            let chosen = said.chosen.and_then(|place| said.options[place].misconception());
            assert_eq!(chosen, mark.misconception.as_ref());
            shown += usize::from(chosen.is_some());
        }
    }
    assert!(shown > 0);
}

#[test]
fn minutes_limit_what_is_offered() {
    let course = &DEMO.0;
    let mut session = session(course, Progress::new(), 1);
    assert!(session.next(0.5, NOW).unwrap().is_none());
    let plan = session.plan(10.0, NOW);
    let minutes: f64 = plan.iter().map(|(_, step)| step.minutes).sum();
    assert!((9.0..=10.0).contains(&minutes), "{minutes}");
}

#[test]
fn skills_that_the_course_has_not_are_kept() {
    let course = &DEMO.0;
    let record = r#"{"format": 1, "skills": {"whistling": {"known": 0.5, "answers": 2, "credit": 1.0, "last": 5, "spaced": 0, "last_spaced": null}}, "note": "mine"}"#;
    let (progress, notes) = Progress::read(record).unwrap();
    assert!(notes.is_empty());
    let mut session = session(course, progress.clone(), 1);
    sit(&mut session, 3, right);
    assert_eq!(session.progress().skills["whistling"], progress.skills["whistling"]);
    assert!(session.progress().write().contains("\"note\": \"mine\""));
    assert!(!session.summary(NOW).skills.iter().any(|change| change.skill == "whistling"));
}

#[test]
fn mastered_skills_come_last() {
    let course = &DEMO.0;
    let mut progress = Progress::new();
    let parameters = Parameters::default();
    for _ in 0..8 {
        progress.answered("foresee-healed", &parameters, 0.25, 1.0, NOW);
    }
    assert!(progress.skills["foresee-healed"].known >= MASTERED);
    let mut session = session(course, progress, 2);
    let asked = sit(&mut session, 20, wrong);
    assert!(asked.iter().all(|(skill, ..)| skill != "foresee-healed"), "{asked:?}");
}
