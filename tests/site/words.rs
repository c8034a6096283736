//! What the site's scripts say: each takes the messages along that it says, in the course's language.

use super::fixture::{DEMO_SITE, built, pages, tiny};
use super::html::decoded;
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

/// Lessons and messages are written with the signs that are set in print; straight ones belong to code.
#[test]
fn no_page_shows_a_straight_quotation_mark_or_apostrophe() {
    for (path, page) in pages(&DEMO_SITE) {
        let straight: Vec<String> =
            read_on(&page).into_iter().filter(|text| text.contains(['\'', '"'])).collect();
        assert_eq!(straight, [""; 0], "{path}");
    }
}

/// What stands between a page's tags, without scripts, styles and code.
fn read_on(page: &str) -> Vec<String> {
    let mut read = Vec::new();
    let mut rest = page;
    while let Some((text, tag)) = rest.split_once('<') {
        read.push(decoded(text));
        let skipped = ["script", "style", "code", "pre"]
            .into_iter()
            .find(|name| tag.strip_prefix(*name).is_some_and(|after| after.starts_with(['>', ' ', '\n'])));
        let end = skipped.map_or_else(|| ">".to_owned(), |name| format!("</{name}>"));
        rest = tag.split_once(end.as_str()).map_or("", |(_, after)| after);
    }
    read
}

#[test]
fn scripts_styles_and_code_are_not_read() {
    let page = "<p class=\"a\">It&#39;s <code>'x'</code> here</p><script>\"y\"</script><pre class=\"b\">'z'</pre><style>'</style>";
    assert_eq!(read_on(page).concat(), "It's  here");
}
