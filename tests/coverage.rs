//! What a course covers: gaps with their places, limits from both sides, and the command that tells them.

use crate::demo::course;
use crate::loading::fixture::Fixture;
use assert_cmd::Command;
use healedhue::course::Severity;
use healedhue::course::coverage::{
    Coverage, DRILLS_PER_MISCONCEPTION, DRILLS_PER_SKILL, FAMILIES_PER_SKILL, LessonCover,
    MisconceptionCover, QUESTIONS_PER_SKILL, Reading, SkillCover, TermCover,
};
use std::path::Path;

/// The smallest course without the two drills that need proving.
fn small() -> Fixture {
    let lessons = "lessons/first-steps";
    let fixture = Fixture::minimal();
    let yaml = |name: &str| {
        let text =
            std::fs::read_to_string(fixture.path(&format!("{lessons}/{name}.yaml"))).expect("a lesson");
        format!("{}drills: []\n", &text[..text.find("drills:").expect("drills")])
    };
    let text = |name: &str| {
        let text = std::fs::read_to_string(fixture.path(&format!("{lessons}/{name}.md"))).expect("a lesson");
        text[..text.find("```drill").expect("a place for a drill")].to_owned()
    };
    let (choosing, correcting) = (yaml("choosing"), yaml("correcting"));
    let (choosing_text, correcting_text) = (text("choosing"), text("correcting"));
    fixture
        .with("lessons/first-steps/choosing.yaml", choosing)
        .with("lessons/first-steps/correcting.yaml", correcting)
        .with("lessons/first-steps/choosing.md", choosing_text)
        .with("lessons/first-steps/correcting.md", correcting_text)
}

fn check(folder: &Path, options: &[&str]) -> assert_cmd::assert::Assert {
    let mut command = Command::cargo_bin("healedhue").expect("the program is built");
    command.env("NO_COLOR", "1").args(["check", "--no-cache", "--course"]).arg(folder).args(options).assert()
}

fn text(assert: &assert_cmd::assert::Assert) -> String {
    String::from_utf8(assert.get_output().stdout.clone()).expect("UTF-8")
}

#[test]
fn gaps_are_told_with_their_places() {
    let fixture = small();
    let plain = check(&fixture.path(""), &[]).success();
    let told = text(&plain);
    insta::assert_snapshot!("gaps", &told[told.find("coverage:").expect("the gaps")..]);
    let full = text(&check(&fixture.path(""), &["--coverage"]).success());
    let from = full.find("\nskill ").expect("the full table");
    insta::assert_snapshot!("coverage_in_full", &full[from..]);
}

#[test]
fn gaps_are_errors_where_the_author_wants_it() {
    let fixture = small();
    check(&fixture.path(""), &["--strict"]).code(1);
    let fixture = fixture.replace("book.toml", "seed = 7", "seed = 7\nstrict = true");
    check(&fixture.path(""), &[]).code(1);
    let problems: Vec<serde_json::Value> =
        serde_json::from_str(&text(&check(&fixture.path(""), &["--json"]).code(1))).expect("an array");
    assert!(problems.iter().any(|problem| problem["severity"] == "error"
        && problem["file"] == "lessons/skills.yaml"
        && problem["line"] == 2
        && problem["message"] == "skill `foresee`: 1 drill, at least 3 wanted"));
}

#[test]
fn programs_get_gaps_and_counts() {
    let fixture = small();
    let plain: Vec<serde_json::Value> =
        serde_json::from_str(&text(&check(&fixture.path(""), &["--json"]).success())).expect("an array");
    let all: serde_json::Value =
        serde_json::from_str(&text(&check(&fixture.path(""), &["--json", "--coverage"]).success()))
            .expect("an object");
    assert_eq!(all["problems"].as_array(), Some(&plain));
    assert!(plain.iter().all(|problem| problem["severity"] == "warning" && problem["help"].is_string()));
    let foresee = &all["coverage"]["skills"][0];
    assert_eq!((&foresee["id"], &foresee["drills"]), (&"foresee".into(), &1.into()));
    assert_eq!(foresee["families"], serde_json::json!(["recall"]));
    let light = &all["coverage"]["lessons"][0];
    assert!(light["words"].as_u64() > Some(10) && light["lix"].as_f64() > Some(1.0), "{light}");
    // A question's option tempts as much as a drill's list does.
    let skin_is_clear = all["coverage"]["misconceptions"].as_array().expect("a list").last().expect("one");
    assert_eq!((&skin_is_clear["drills"], &skin_is_clear["lesson"]), (&1.into(), &"light".into()));
}

#[test]
fn every_limit_holds_from_both_sides() {
    let lesson = |words, drills, lix| LessonCover { id: "a".into(), drills, reading: Reading { words, lix } };
    let skill = |drills, families: usize, questions| SkillCover {
        id: "a".into(),
        drills,
        families: ["bottle", "drops", "recall"][..families].to_vec(),
        questions,
    };
    let wrong = |drills| MisconceptionCover { id: "a".into(), drills, lesson: Some("a".into()) };
    let term = |pages, questions| TermCover { id: "a".into(), pages, questions };
    let gaps = |coverage: Coverage| coverage.gaps().len();
    let empty = Coverage { skills: vec![], misconceptions: vec![], terms: vec![], lessons: vec![] };
    for (one, expected) in [
        (lesson(500, 2, Some(40.0)), 0),
        (lesson(1200, 4, None), 0),
        (lesson(499, 2, Some(40.0)), 1),
        (lesson(1201, 2, Some(40.1)), 2),
        (lesson(800, 1, Some(20.0)), 1),
        (lesson(800, 5, Some(20.0)), 1),
    ] {
        assert_eq!(gaps(Coverage { lessons: vec![one.clone()], ..empty.clone() }), expected, "{one:?}");
    }
    let (drills, families, questions) = (DRILLS_PER_SKILL, FAMILIES_PER_SKILL, QUESTIONS_PER_SKILL);
    for (one, expected) in [
        (skill(drills, families, questions), 0),
        (skill(drills - 1, families, questions), 1),
        (skill(drills, families - 1, questions), 1),
        (skill(drills, families, questions - 1), 1),
        (skill(0, 0, 0), 3),
    ] {
        assert_eq!(gaps(Coverage { skills: vec![one.clone()], ..empty.clone() }), expected, "{one:?}");
    }
    for (one, expected) in [(DRILLS_PER_MISCONCEPTION, 0), (DRILLS_PER_MISCONCEPTION - 1, 1)] {
        assert_eq!(gaps(Coverage { misconceptions: vec![wrong(one)], ..empty.clone() }), expected);
    }
    for (pages, questions, expected) in [(0, 0, 1), (1, 0, 0), (0, 1, 0)] {
        assert_eq!(gaps(Coverage { terms: vec![term(pages, questions)], ..empty.clone() }), expected);
    }
}

#[test]
fn the_demo_uses_every_term_and_reads_like_a_novel_at_most() {
    let coverage = Coverage::of(course());
    assert_eq!(coverage.lessons.len(), course().lessons().count());
    let gaps = coverage.gaps();
    let idle: Vec<_> = gaps.iter().filter(|gap| gap.kind == "term").collect();
    assert!(idle.is_empty(), "{idle:?}");
    let hard: Vec<_> = gaps.iter().filter(|gap| gap.lacks.starts_with("readability")).collect();
    assert!(hard.is_empty(), "{hard:?}");
    let long: Vec<_> =
        gaps.iter().filter(|gap| gap.kind == "lesson" && gap.lacks.contains("words")).collect();
    assert!(long.is_empty(), "{long:?}");
}

#[test]
fn a_gap_is_a_problem_where_its_thing_is_written() {
    let fixture = small();
    let loaded = fixture.load();
    let course = loaded.course.expect("a course");
    let gaps = Coverage::of(&course).gaps();
    let told: Vec<String> = gaps
        .iter()
        .map(|gap| gap.diagnostic(Severity::Warning, &loaded.stands))
        .map(|problem| format!("{}:{}:{}", problem.file, problem.line, problem.column))
        .collect();
    assert!(told.contains(&"lessons/first-steps/light.yaml:1:5".to_owned()), "{told:?}");
    assert!(told.contains(&"lessons/misconceptions.yaml:2:9".to_owned()), "{told:?}");
}
