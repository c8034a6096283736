//! What `assign` prints: whole lines in the language of the course.

use super::fixture::healedhue;
use crate::loading::fixture::Fixture;
use healedhue::assess::assigned::{AssignmentSlip, practice_set};
use healedhue::course::read_assignment;
use healedhue::exercise::Proofs;
use std::fs;

const FIRST: &str = "id: first\ntitle: First week\ndue: 2026-03-14\nlessons: [light]\nexercises: 1\npeople:\n  - {id: tamsel, name: Tamsel Orrick}\n  - {id: bren, name: Bren}\n";

/// What is printed when the assignment is handed out, and when a slip with one wrong answer has come back; spaces of all kinds are one.
fn told(language: &str) -> [String; 2] {
    let fixture = Fixture::minimal().replace(
        "book.toml",
        "language = \"en-GB\"",
        &format!("language = \"{language}\""),
    );
    let folder = tempfile::tempdir().expect("a temporary folder");
    let (file, slip) = (folder.path().join("first.yaml"), folder.path().join("slip.json"));
    fs::write(&file, FIRST).expect("a file");
    let course = fixture.load().course.expect("a course");
    let assignment = read_assignment("first.yaml", FIRST, &course).expect("a sound assignment");
    let set = practice_set(&course, &assignment, &assignment.people[0], &Proofs::none()).expect("a set");
    let options = set.exercises[0].form.options();
    let wrong = options.iter().position(|option| option.mark.misconception.is_some());
    let letter = ["A", "B", "C"][wrong.expect("an option that shows a misconception")].to_owned();
    fs::write(&slip, AssignmentSlip::new(set.identity, vec![letter]).write()).expect("a slip");
    let assign = |more: &[&str]| {
        let mut command = healedhue();
        command
            .current_dir(folder.path())
            .arg("assign")
            .arg(&file)
            .arg("--course")
            .arg(fixture.path(""))
            .arg("--no-cache");
        let output = command.args(more).assert().success().get_output().stdout.clone();
        let text = String::from_utf8(output).expect("UTF-8");
        text.split_whitespace().collect::<Vec<_>>().join(" ")
    };
    [assign(&["--out", "out"]), assign(&["--collect", "slip.json"])]
}

#[test]
fn assignments_and_their_marks_are_told_in_the_language_of_the_course() {
    let [handed_out, collected] = told("de");
    for german in [
        "First week, fällig am 14. März 2026: ",
        " Seiten in out",
        "Tamsel Orrick: 1 Aufgabe, ",
        "Geben Sie jeder Person ihren Ordner; sammeln Sie die Antwortzettel mit",
    ] {
        assert!(handed_out.contains(german), "{german}: {handed_out}");
    }
    for german in [
        "First week; Abgaben: 1 von 2 Personen.",
        "Wertung 0 %, 1 von 1 beantwortet",
        ", Wertung 0 %. ",
        "Wieder lesen: ",
        "Ohne Abgabe Bren",
        "Irrtümer, die sich zeigten",
        "„Skin is clear.“ Das eine Mal gewählt, das es angeboten war, bei 1 von 1 Person.",
    ] {
        assert!(collected.contains(german), "{german}: {collected}");
    }
    for word in [
        "due", "pages", "exercise", "give", "people", "handed", "credit", "answered", "reread", "Beliefs",
        "Chosen",
    ] {
        assert!(
            !handed_out.contains(&format!(" {word}")) && !collected.contains(&format!(" {word}")),
            "{word}"
        );
    }
}

#[test]
fn one_person_is_one_person() {
    let [handed_out, collected] = told("en-GB");
    assert!(handed_out.contains("First week, due 14 March 2026: "), "{handed_out}");
    assert!(collected.contains("First week: 1 of 2 people handed in."), "{collected}");
    let belief = "“Skin is clear.” Chosen the one time it was offered, by 1 of 1 person.";
    assert!(collected.contains(belief), "{collected}");
}
