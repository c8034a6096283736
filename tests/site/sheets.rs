//! Worksheets ask what their lessons do not, and nothing twice.

use super::fixture::{DEMO, DEMO_SITE, built, pages, tiny};
use super::html::decoded;
use healedhue::course::{Course, Drill};
use healedhue::exercise::{EXERCISES_PER_SHOWN, Exercise, Pools};
use std::collections::BTreeSet;

/// The questions of a worksheet, in order.
fn asked(worksheet: &str) -> Vec<String> {
    let after = |part: &str| part.split_once("</span> ").unwrap().1.split_once("</h2>").unwrap().0.to_owned();
    worksheet.split("<span class=\"question-number\">").skip(1).map(|part| decoded(&after(part))).collect()
}

#[test]
fn the_demo_shows_one_half_of_each_pool_in_its_lesson_and_the_other_on_the_worksheet() {
    let (course, pools) = &*DEMO;
    let site = pages(&DEMO_SITE);
    let (mut drills, mut borrowing) = (0, 0);
    for module in &course.modules {
        let sheet = &site[&format!("worksheets/{}.html", module.id)];
        let (mut on_sheet, mut all_differ) = (Vec::new(), true);
        let mut of_module: BTreeSet<String> = BTreeSet::new();
        for lesson in &module.lessons {
            let page = &site[&format!("lessons/{}.html", lesson.page.path)];
            for drill in &lesson.drills {
                let pool = &pools[&drill.id];
                assert_eq!(pool.len(), (drill.exercises * EXERCISES_PER_SHOWN) as usize);
                let questions: BTreeSet<String> = pool.iter().map(Exercise::question).collect();
                drills += 1;
                let is_asked_elsewhere = !of_module.is_disjoint(&questions);
                of_module.extend(questions.iter().cloned());
                if questions.len() < pool.len() || is_asked_elsewhere {
                    // So few that differ are found, or another drill of the module asks one of them, that the sheet borrows of the lesson.
                    borrowing += 1;
                    all_differ = false;
                    continue;
                }
                let mut shown = 0;
                for exercise in pool {
                    let anchor = format!("\"exercise_{}_{}_ask\"", drill.id, exercise.number);
                    let in_lesson = format!("\"exercise_{}_{}\"", drill.id, exercise.number);
                    let is_shown = page.contains(&in_lesson);
                    shown += u32::from(is_shown);
                    assert_eq!(sheet.contains(&anchor), !is_shown, "{} {}", drill.id, exercise.number);
                    on_sheet.extend((!is_shown).then(|| exercise.ask.clone()));
                }
                assert_eq!(shown, drill.exercises, "{}", drill.id);
            }
        }
        let mut asked = asked(sheet);
        asked.sort();
        on_sheet.sort();
        assert!(!all_differ || asked == on_sheet, "{}", module.id);
    }
    assert!(borrowing * 7 < drills, "{borrowing} of {drills} drills do not fill their worksheet");
}

/// What a reader takes for the same question: asked in one way of one client, for one goal, judged at one time.
fn kind(exercise: &Exercise) -> Option<String> {
    let case = exercise.case.as_ref()?;
    let goal = case.goal.as_ref().map(|goal| &goal.id);
    Some(format!(
        "{:?} {} {goal:?} {:?}",
        exercise.family,
        case.client,
        case.placed.map(|placed| placed.months)
    ))
}

#[test]
fn a_worksheet_asks_the_same_of_a_client_twice_only_where_nothing_else_is_left() {
    let (course, pools) = &*DEMO;
    let site = pages(&DEMO_SITE);
    let mut twice = 0;
    for module in &course.modules {
        let sheet = &site[&format!("worksheets/{}.html", module.id)];
        let is_asked = |exercise: &&Exercise| {
            sheet.contains(&format!("\"exercise_{}_{}_ask\"", exercise.drill, exercise.number))
        };
        let drills: Vec<&Drill> = module.lessons.iter().flat_map(|lesson| &lesson.drills).collect();
        let all = || drills.iter().flat_map(|drill| &pools[&drill.id]);
        let on_sheet: BTreeSet<String> = all().filter(is_asked).filter_map(kind).collect();
        let mut before = BTreeSet::new();
        for drill in &drills {
            let pool = &pools[&drill.id];
            let kinds: Vec<String> = pool.iter().filter(is_asked).filter_map(kind).collect();
            let repeated = kinds.into_iter().filter(|kind| !before.insert(kind.clone())).count();
            twice += repeated;
            let left = pool.iter().filter(|exercise| !is_asked(exercise)).filter_map(kind);
            let others: Vec<String> = left.filter(|kind| !on_sheet.contains(kind)).collect();
            assert!(repeated == 0 || others.is_empty(), "{}: {others:?} are left", drill.id);
        }
    }
    println!("{twice} questions of the worksheets repeat a kind");
    assert!(twice > 0, "the demo has pools in which nothing else is left");
}

/// The tiny course with a drill that shows `shown` written questions, for which there are `questions`.
fn with_questions(shown: u32, questions: u32) -> (Course, Pools) {
    let (mut course, mut pools) = tiny(str::to_owned);
    let drills = &mut course.modules[0].lessons[0].drills;
    drills.push(Drill { id: "words".into(), exercises: shown, ..drills[0].clone() });
    let one = pools["brow"][0].clone();
    let written = |number: u32| Exercise {
        drill: "words".into(),
        number,
        ask: format!("Question {}?", number % questions),
        case: None,
        ..one.clone()
    };
    pools.insert("words".into(), (0..shown * EXERCISES_PER_SHOWN).map(written).collect());
    (course, pools)
}

#[test]
fn a_worksheet_asks_nothing_twice() {
    for (shown, questions, expected) in [
        // Enough for both.
        (2, 4, vec![2, 3]),
        // The last ones are the lesson's own again.
        (3, 4, vec![3, 0, 1]),
        (2, 2, vec![0, 1]),
        // Fewer than asked for.
        (3, 2, vec![1, 0]),
        (3, 1, vec![0]),
    ] {
        let sheet = &pages(&built(&with_questions(shown, questions)))["worksheets/one.html"];
        let numbers: Vec<String> =
            asked(sheet).into_iter().filter(|ask| ask.starts_with("Question")).collect();
        let expected: Vec<String> = expected.iter().map(|number| format!("Question {number}?")).collect();
        assert_eq!(numbers, expected, "{shown} of {questions}");
        assert_eq!(numbers.iter().collect::<BTreeSet<_>>().len(), numbers.len());
    }
}
