//! A course in German, and one in a language that the program does not speak.

use super::fixture::{DEMO_SITE, built, files, pages, tiny};
use super::{decoded, tags};
use healedhue::course::load;
use healedhue::exercise::pools;
use healedhue::language::{Language, SPOKEN};
use healedhue::render::build_site;
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::LazyLock;

/// Pages whose words are those of their scripts.
const OF_SCRIPTS: [&str; 2] = ["bench.html", "practice.html"];

/// The pages of the German course.
static GERMAN: LazyLock<BTreeMap<String, String>> = LazyLock::new(|| {
    let loaded = load(&Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/site/german"));
    assert!(loaded.diagnostics.is_empty(), "{:?}", loaded.diagnostics);
    let course = loaded.course.expect("the course is whole");
    let pools = pools(&course, |_, _| ()).unwrap_or_else(|errors| panic!("{errors:?}"));
    let folder = tempfile::tempdir().unwrap();
    build_site(&course, &pools, &folder.path().join("site")).unwrap();
    pages(&files(&folder.path().join("site")))
});

/// Messages without values in one line, by id.
fn plain_messages(source: &'static str) -> BTreeMap<&'static str, &'static str> {
    let plain = |(id, text): &(&str, &str)| !text.contains(['{', '}']) && !id.starts_with(['#', ' ']);
    source.lines().filter_map(|line| line.split_once(" = ")).filter(plain).collect()
}

/// What a page says, its attributes and tags included.
fn said(html: &str) -> String {
    decoded(html).replace('\u{a0}', " ")
}

#[test]
fn every_page_says_its_language() {
    assert!(GERMAN.len() > 20, "{}", GERMAN.len());
    for (path, html) in &*GERMAN {
        assert_eq!(tags(html)[0].get("lang"), Some("de"), "{path}");
    }
}

#[test]
fn terms_are_found_in_the_forms_of_the_language() {
    let html = &GERMAN["lessons/erste-schritte/altes.html"];
    let link = "href=\"../../glossary.html#unterton\">Untertöne</a>";
    assert!(html.contains(link), "{html}");
}

#[test]
fn no_page_speaks_english() {
    let german = plain_messages(SPOKEN[1].1);
    let english: Vec<_> = plain_messages(SPOKEN[0].1)
        .into_iter()
        .filter(|(id, text)| {
            text.chars().filter(|c| c.is_alphabetic()).count() >= 12 && german.get(id) != Some(text)
        })
        .collect();
    assert!(english.len() > 200, "{}", english.len());
    for (path, html) in GERMAN.iter().filter(|(path, _)| !OF_SCRIPTS.contains(&path.as_str())) {
        let html = said(html);
        for (id, text) in &english {
            assert!(!html.contains(&said(text)), "{path} says {id} in English: {text}");
        }
    }
    // The other way round: the words are there, in German.
    let says = |path: &str, id: &str| said(&GERMAN[path]).contains(&*decoded(german[id]));
    for (path, id) in [
        ("index.html", "home-instructors-about"),
        ("display.html", "display-dark-about"),
        ("teaching/consultation.html", "consult-about"),
        ("lessons/erste-schritte/filter.html", "question-truth"),
    ] {
        assert!(says(path, id), "{path} lacks {id}");
    }
}

#[test]
fn numbers_are_written_as_in_german() {
    for path in ["clients.html", "worksheets/erste-schritte.html", "worksheets/erste-schritte-key.html"] {
        let html = &GERMAN[path];
        let start = html.find("L*\u{a0}").unwrap_or_else(|| panic!("{path} has no colour in numbers"));
        let triple: String = html[start..].chars().take_while(|c| !"<)".contains(*c)).collect();
        assert!(triple.contains(','), "{path}: {triple}");
        assert!(triple.contains(';') && !triple.contains('.'), "{path}: {triple}");
    }
    assert!(GERMAN["index.html"].contains("1 Modul, 2 Lektionen, 1\u{a0}Std. 30\u{a0}Min."));
    assert!(GERMAN["bottles.html"].contains("Halbwertszeit 28,5 Monate"));
    assert!(GERMAN["bottles.html"].contains("Gedacht für: Augenbraue und Kopfhaut."));
    assert!(GERMAN["clients.html"].contains("Fototyp III, warmer Unterton, gerötet"));
    assert!(GERMAN["clients.html"].contains("3 Jahre alt. Einmal nachgearbeitet."));
}

#[test]
fn a_caution_in_german_is_set_apart() {
    assert!(GERMAN["lessons/erste-schritte/filter.html"].contains("markdown-alert-caution"));
}

#[test]
fn no_page_of_either_language_lacks_a_message() {
    for (path, html) in pages(&DEMO_SITE).iter().chain(&*GERMAN) {
        assert!(!html.contains('⟨'), "{path}");
    }
}

#[test]
fn a_language_that_is_not_spoken_stays_that_of_the_page() {
    let (mut course, pools) = tiny(str::to_owned);
    course.language = Language::of("rm-CH");
    for (path, html) in pages(&built(&(course, pools))) {
        assert!(html.starts_with("<!doctype html>\n<html lang=\"rm-CH\" dir=\"ltr\">"), "{path}");
        assert!(html.contains("Skip to the text"), "{path}");
    }
}
