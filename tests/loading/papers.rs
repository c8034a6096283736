//! Blueprints of papers.

use super::fixture::Fixture;
use insta::assert_snapshot;

const PAPER: &str = "lessons/papers/short.yaml";

const GOOD: &str = "id: short
title: A short paper
minutes: 10
difficulty: {least: 0.2, most: 0.6}
sections:
  - id: light
    title: Light
    skills: [foresee]
    bank: true
    questions: 1
    weight: 40
  - id: bottles
    title: Bottles
    drills: [first-choice]
    questions: 1
    weight: 60
standard:
  basis: representative, invented for the demo
  judges:
    - role: Instructor
      estimates: {light: 0.7, bottles: 0.6}
    - role: Practitioner
      estimates: {light: 0.5, bottles: 0.5}
";

fn with(text: &str) -> Fixture {
    Fixture::minimal().with(PAPER, text)
}

#[test]
fn a_blueprint_is_read_with_its_standard() {
    let loaded = with(GOOD).load();
    let course = loaded.course.unwrap_or_else(|| panic!("{:?}", loaded.diagnostics));
    let blueprint = course.blueprint("short").expect("the blueprint");
    assert_eq!((blueprint.questions(), blueprint.most_per_client, blueprint.pool), (2, 2, 12));
    // 40 (0.7 + 0.5) / 2 + 60 (0.6 + 0.5) / 2; the judges' own marks are 64 and 50, their mean's error 7.
    assert!((blueprint.pass_mark() - 57.0).abs() < 1e-9);
    assert!((blueprint.pass_mark_error().expect("two judges") - 7.0).abs() < 1e-9);
}

#[test]
fn everything_wrong_is_told_at_once() {
    let text = GOOD
        .replace("id: short\n", "id: brief\n")
        .replace("minutes: 10", "minutes: 10 min")
        .replace("least: 0.2, most: 0.6", "least: 60, most: 0.6")
        .replace("skills: [foresee]", "skills: [foresea]")
        .replace("drills: [first-choice]", "drills: [first-choise]\n    hard: true")
        .replace("weight: 60", "weight: 50")
        .replace("{light: 0.5, bottles: 0.5}", "{light: 1.5, bottels: 0.5}");
    assert_snapshot!(with(&text).told_briefly());
}

#[test]
fn a_section_needs_something_to_draw_on() {
    let text = GOOD
        .replace("    skills: [foresee]\n", "")
        .replace("least: 0.2, most: 0.6", "least: 0.6, most: 0.2")
        .replace("id: bottles", "id: light");
    assert_snapshot!(with(&text).told_briefly());
}

#[test]
fn a_paper_with_too_many_questions() {
    let text = GOOD.replace("questions: 1\n", "questions: 150\n");
    assert_snapshot!(with(&text).told_briefly());
}
