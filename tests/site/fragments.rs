//! What people read, as snapshots: an exercise, a worksheet and its key, with a course whose numbers do not follow the engine.

use super::fixture::{built, pages, tiny};
use healedhue::course::Course;
use healedhue::exercise::Pools;
use healedhue::pigment::{Bottle, Modifier};

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

/// A line with its bottles, then the bottles without a line; without any line just the bottles.
#[test]
fn the_library_goes_line_by_line() {
    let (mut course, pools) = tiny(str::to_owned);
    let alone = Bottle {
        id: "stray".into(),
        name: "Stray".into(),
        modifier: Some(Modifier::Darker),
        line: None,
        sites: Vec::new(),
        ..course.shelf.bottles[0].clone()
    };
    course.shelf.bottles.insert(0, alone);
    let library =
        |course: Course, pools: Pools| pages(&built(&(course, pools))).remove("bottles.html").unwrap();
    let html = library(course.clone(), pools.clone());
    insta::assert_snapshot!("library", between(&html, "<header class=\"opening\"", "</main>"));
    course.shelf.lines.clear();
    course.shelf.bottles.iter_mut().for_each(|bottle| bottle.line = None);
    let html = library(course, pools);
    assert!(!html.contains("class=\"line\"") && html.contains("<h2 id=\"stray_name\">Stray</h2>"));
}
