//! What people read, as snapshots: an exercise, a worksheet and its key, with a course whose numbers do not follow the engine.

use super::fixture::{built, pages, tiny};

/// The part of a page between two marks, the first one included.
fn between<'a>(html: &'a str, start: &str, end: &str) -> &'a str {
    let from = html.find(start).unwrap_or_else(|| panic!("no {start}"));
    let to = html[from..].find(end).unwrap_or_else(|| panic!("no {end}"));
    &html[from..from + to]
}

/// Without the drawings' paths, which say nothing to a reader.
fn without_paths(html: &str) -> String {
    let mut shown = String::new();
    let mut rest = html;
    while let Some(at) = rest.find("<path d=\"") {
        shown += &rest[..at];
        shown += "<path";
        let after = &rest[at + 9..];
        rest = &after[after.find('"').unwrap() + 1..];
    }
    shown + rest
}

#[test]
fn an_exercise_a_worksheet_and_its_key() {
    let pages = pages(&built(&tiny(str::to_owned)));
    let lesson = &pages["lessons/one/first.html"];
    let exercise = between(lesson, "<section class=\"exercise\"", "</section>");
    let before_the_answer = between(exercise, "<form", "<details");
    assert!(!before_the_answer.contains("heals to"), "an option's healed colour shows before the answer");
    insta::assert_snapshot!("exercise", without_paths(exercise));
    insta::assert_snapshot!(
        "worksheet",
        without_paths(between(&pages["worksheets/one.html"], "<main", "</main>"))
    );
    insta::assert_snapshot!(
        "key",
        without_paths(between(&pages["worksheets/one-key.html"], "<main", "</main>"))
    );
}
