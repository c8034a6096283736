//! What people read, as snapshots: an exercise, a worksheet and its key, with a course whose numbers do not follow the engine.

use super::fixture::{built, pages, tiny};

/// The part of a page between two marks, the first one included.
fn between<'a>(html: &'a str, start: &str, end: &str) -> &'a str {
    let from = html.find(start).unwrap_or_else(|| panic!("no {start}"));
    let to = html[from..].find(end).unwrap_or_else(|| panic!("no {end}"));
    &html[from..from + to]
}

#[test]
fn an_exercise_a_worksheet_and_its_key() {
    let pages = pages(&built(&tiny(str::to_owned)));
    let lesson = &pages["lessons/one/first.html"];
    let exercise = between(lesson, "<section class=\"exercise\"", "</section>");
    let before_the_answer = between(exercise, "<form", "<details");
    assert!(!before_the_answer.contains("heals to"), "an option's healed colour shows before the answer");
    insta::assert_snapshot!("exercise", exercise);
    insta::assert_snapshot!("worksheet", between(&pages["worksheets/one.html"], "<main", "</main>"));
    insta::assert_snapshot!("key", between(&pages["worksheets/one-key.html"], "<main", "</main>"));
}
