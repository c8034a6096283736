//! Cohorts that have little to say, and say so in words.

use super::{COHORT, COURSE, Cohort, pages_of, report, text};
use healedhue::assess::report::{CohortError, SheetMark};

/// The first so many sheets of the cohort.
fn first(people: usize) -> Cohort {
    let mut cohort = COHORT.0.clone();
    cohort.sheets.truncate(people);
    cohort
}

fn words(cohort: &Cohort) -> String {
    let report = report(cohort, &COURSE).expect("in order");
    let pages = pages_of(cohort);
    assert_eq!(pages.len(), 1 + report.people.len());
    for page in pages.values() {
        for bad in ["NaN", "inf ", "None,", "Some("] {
            assert!(!text(page).contains(bad), "{bad}");
        }
    }
    let people = report.people.iter().take(2).map(|person| {
        let next = person.next.iter().map(|next| format!("{}: {}", next.name, next.why));
        let next: Vec<String> = next.chain(person.nothing_next.clone()).collect();
        format!("{}: {}", person.name, next.join(" | "))
    });
    report.summary.iter().chain(&report.notes).cloned().chain(people).collect::<Vec<_>>().join("\n")
}

#[test]
fn an_empty_cohort_says_so() {
    insta::assert_snapshot!(words(&Cohort::default()));
    insta::assert_snapshot!(text(&pages_of(&Cohort::default())["index.html"]));
}

#[test]
fn one_person_is_compared_with_nobody() {
    let cohort = first(1);
    insta::assert_snapshot!(words(&cohort));
    let page = text(&pages_of(&cohort)["people/id-a00000.html"]);
    assert!(!page.contains("group"), "there is no group: {page}");
}

#[test]
fn all_right_leaves_nothing_to_practise() {
    let mut cohort = first(30);
    cohort.sheets.iter_mut().for_each(|sheet| sheet.mark = None);
    for answer in cohort.sheets.iter_mut().flat_map(|sheet| &mut sheet.answers) {
        let question = cohort.questions.iter().find(|question| question.id == answer.question);
        answer.credit = 1.0;
        answer.chosen = question.and_then(|question| question.options.iter().position(|option| option.right));
    }
    insta::assert_snapshot!(words(&cohort));
}

#[test]
fn missing_answers_are_told() {
    let mut cohort = first(30);
    // One sheet without any answer, one without the last ones; and one person's second attempt.
    cohort.sheets[0].answers.clear();
    cohort.sheets[0].mark = None;
    cohort.sheets[1].answers.truncate(20);
    cohort.sheets[2].person = cohort.sheets[3].person.clone();
    cohort.sheets[2].paper.attempt = 2;
    insta::assert_snapshot!(words(&cohort));
    let page = text(&pages_of(&cohort)["index.html"]);
    assert!(page.contains("Left out of it 2 sheets with an answer missing"), "{page}");
}

#[test]
fn what_cannot_be_is_named() {
    let problem = |change: &dyn Fn(&mut Cohort)| {
        let mut cohort = first(3);
        change(&mut cohort);
        let error: CohortError = report(&cohort, &COURSE).expect_err("it cannot be");
        assert_eq!(cohort.check(), Err(error.clone()));
        error.to_string()
    };
    let problems = [
        problem(&|cohort| cohort.sheets[1].answers[2].credit = 1.5),
        problem(&|cohort| cohort.sheets[1].answers[2].credit = f64::NAN),
        problem(&|cohort| cohort.sheets[1].answers[2].question = "nowhere".to_owned()),
        problem(&|cohort| cohort.sheets[1].answers[2].chosen = Some(9)),
        problem(&|cohort| cohort.sheets[1].answers[3] = cohort.sheets[1].answers[2].clone()),
        problem(&|cohort| cohort.sheets[2] = cohort.sheets[1].clone()),
        problem(&|cohort| cohort.sheets[2].person = String::new()),
        problem(&|cohort| cohort.questions[1] = cohort.questions[0].clone()),
        problem(&|cohort| cohort.questions[1].skill = "another".to_owned()),
        problem(&|cohort| cohort.questions[1].drill = Some("x".repeat(300))),
        problem(&|cohort| {
            cohort.sheets[0].mark = Some(SheetMark { total: 101.0, pass_mark: None, standard_error: None });
        }),
    ];
    insta::assert_snapshot!(problems.join("\n"));
}
