//! What the site's scripts say: each takes the messages along that it says, in the course's language.

use super::fixture::{DEMO_SITE, built, tiny};
use crate::languages::unsaid;
use healedhue::language::Language;

#[test]
fn every_script_takes_along_what_it_says() {
    for path in ["bench.js", "practice.js", "progress.js", "exercise.js", "search.js"] {
        let script = std::str::from_utf8(&DEMO_SITE[path]).unwrap();
        assert_eq!(unsaid(script), [""; 0], "{path}");
    }
}

#[test]
fn a_german_course_has_german_pages_and_scripts() {
    let (mut course, pools) = tiny(str::to_owned);
    course.language = Language::of("de");
    let files = built(&(course, pools));
    let text = |path: &str| String::from_utf8(files[path].clone()).unwrap();
    for (path, words) in [
        ("bench.html", "Der Mischtisch"),
        ("practice.html", "Was Sie können"),
        ("search.html", "Gesuchte Wörter"),
        ("bench.js", "Noch nichts in der Mischung."),
        ("practice.js", "Wählen Sie zuerst eine Antwort."),
        ("exercise.js", "Nicht die beste Antwort."),
        ("search.js", "Nichts gefunden."),
    ] {
        assert!(text(path).contains(words), "{path}");
        // A message that is missing would stand in such brackets.
        assert!(!path.ends_with(".html") || !text(path).contains('⟨'), "{path}");
    }
    assert!(text("bench.js").contains("healedhueWords(\"de\", "));
}
