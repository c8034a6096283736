//! What only instructors read: teaching notes and sources.

use super::fixture::Fixture;
use healedhue::course::{Block, SourceBasis, SourceKind};
use insta::assert_snapshot;

const NOTE: &str = "lessons/first-steps/teaching.md";
const SOURCES: &str = "lessons/sources.yaml";

#[test]
fn a_note_beside_a_module_is_read_like_a_page() {
    let text = "# Note\n\nBegin with [light](light.md#light-and-skin). The goal has an a\\* of {{ goal(\"soft-brown\").a }}.\n";
    let fixture = Fixture::minimal().with(NOTE, text);
    assert_eq!(fixture.told_briefly(), "");
    let course = fixture.load().course.expect("a course");
    let note = course.modules[0].teaching.as_ref().expect("the note");
    assert_eq!(note.path, "first-steps/teaching");
    let [Block::Text(said)] = &note.blocks[..] else { panic!("{note:?}") };
    assert!(said.contains("an a\\* of 8.5."), "{said}");
    assert!(Fixture::minimal().load().course.expect("a course").modules[0].teaching.is_none());
}

#[test]
fn a_note_has_no_drills_and_no_readers_among_apprentices() {
    let fixture = Fixture::minimal()
        .with(NOTE, "# Note\n\n```drill\nfirst-choice\n```\n")
        .append("lessons/welcome.md", "\n[note](first-steps/teaching.md)\n");
    assert_snapshot!("wrong_notes", fixture.told_briefly());
}

#[test]
fn a_page_of_the_summary_is_no_note() {
    let fixture = Fixture::minimal()
        .with(NOTE, "# Teaching\n\nText.\n")
        .with(
            "lessons/first-steps/teaching.yaml",
            "id: teaching\nobjectives: [Teach]\nminutes: 5\nneeds: []\nskills: [choose]\ndrills: []\n",
        )
        .append("lessons/SUMMARY.md", "    - [Teaching](first-steps/teaching.md)\n");
    let course = fixture.load().course.expect("a course");
    assert!(course.modules[0].teaching.is_none());
    assert!(course.lesson("teaching").is_some());
}

#[test]
fn sources_are_read_in_their_order() {
    let text = "sources:\n  - {id: b, title: A rule, by: \"Somebody, 2020\", kind: regulation, took: A limit., basis: from-memory}\n  - {id: a, title: A guess, kind: practice, took: A number., basis: representative}\n";
    let course = Fixture::minimal().with(SOURCES, text).load().course.expect("a course");
    let [rule, guess] = &course.sources[..] else { panic!("{:?}", course.sources) };
    assert_eq!(
        (rule.id.as_str(), rule.by.as_str(), rule.kind),
        ("b", "Somebody, 2020", SourceKind::Regulation)
    );
    assert_eq!(
        (guess.by.as_str(), guess.kind, guess.basis),
        ("", SourceKind::Practice, SourceBasis::Representative)
    );
}

#[test]
fn wrong_sources() {
    let text = "sources:\n  - {id: a, title: A rule, kind: regulaton, took: A limit., basis: remembered}\n  - {id: a, titel: Another, kind: book, basis: checked}\n";
    assert_snapshot!("wrong_sources", Fixture::minimal().with(SOURCES, text).told_briefly());
}

#[test]
fn every_word_for_a_source_is_its_own() {
    for (kind, word) in SourceKind::ALL {
        assert_eq!(kind.word(), word);
    }
    for (basis, word) in SourceBasis::ALL {
        assert_eq!(basis.word(), word);
    }
}
