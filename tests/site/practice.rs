//! The page of practice: what it loads, what it takes along of a course, and that nothing else loads it.

use super::fixture::{DEMO, DEMO_SITE, built, pages, tiny};
use super::html::tags;
use serde_json::{Value, json};
use std::collections::BTreeSet;

/// What a course's practice takes along.
fn taken_along(script: &[u8]) -> Value {
    let script = std::str::from_utf8(script).unwrap();
    let literal = script.split_once("JSON.parse(").unwrap().1.trim_end_matches([')', ';', '\n']);
    serde_json::from_str(&serde_json::from_str::<String>(literal).unwrap()).unwrap()
}

#[test]
fn only_practice_and_progress_load_what_makes_exercises() {
    let loading: Vec<String> = pages(&DEMO_SITE)
        .into_iter()
        .filter(|(_, html)| {
            tags(html).iter().any(|tag| tag.get("src").is_some_and(|src| src.ends_with("practice-maker.js")))
        })
        .map(|(path, _)| path)
        .collect();
    assert_eq!(loading, ["practice.html", "progress.html"]);
}

/// Its script holds it compressed, and a server that compresses takes off what base64 adds.
#[test]
fn what_makes_exercises_weighs_less_than_400_kilobytes_compressed() {
    use std::io::Write as _;
    let mut gzip = flate2::write::GzEncoder::new(Vec::new(), flate2::Compression::best());
    gzip.write_all(&DEMO_SITE["practice-maker.js"]).unwrap();
    let weight = gzip.finish().unwrap().len();
    assert!(weight < 400_000, "{weight}");
}

#[test]
fn every_page_leads_to_practice_and_lessons_to_their_own() {
    let course = &DEMO.0;
    for (path, html) in pages(&DEMO_SITE) {
        assert!(
            tags(&html).iter().any(|tag| tag.get("href").is_some_and(|to| to.ends_with("practice.html"))),
            "{path}"
        );
    }
    for (_, lesson) in course.lessons() {
        let html = &pages(&DEMO_SITE)[&format!("lessons/{}.html", lesson.page.path)];
        let own = format!("practice.html#lesson={}", lesson.id);
        let leads = tags(html).iter().any(|tag| tag.get("href").is_some_and(|to| to.ends_with(&own)));
        assert_eq!(leads, !lesson.drills.is_empty(), "{}", lesson.id);
    }
}

#[test]
fn without_scripts_the_page_leads_to_lessons_and_worksheets() {
    let html = &pages(&DEMO_SITE)["practice.html"];
    let without = html.split_once("<noscript>").unwrap().1.split_once("</noscript>").unwrap().0;
    assert!(without.contains("needs scripts") && without.contains("href=\"index.html\""), "{without}");
    assert!(without.contains("href=\"worksheets/"), "{without}");
    let practice = tags(html).into_iter().find(|tag| tag.get("id") == Some("practice")).unwrap();
    assert!(practice.get("hidden").is_some(), "controls that do nothing are not shown");
    assert!(html.contains("never a promise of a result on a person"));
}

#[test]
fn the_course_is_taken_along_whole_with_where_its_pages_are() {
    let course = &DEMO.0;
    let along = taken_along(&DEMO_SITE["practice-course.js"]);
    let read = healedhue::practice::read_course(&along["course"].to_string()).unwrap();
    assert_eq!(read.version, course.version);
    assert_eq!(format!("{:?}", read.clients), format!("{:?}", course.clients));
    assert_eq!(read.drills().count(), course.drills().count());
    assert_eq!(along["record"], course.record_name());
    // Written questions lie in a file for each module, and all that its drills ask.
    assert!(read.questions.is_empty());
    for module in &course.modules {
        let asked =
            module.lessons.iter().flat_map(|lesson| &lesson.drills).flat_map(|drill| &drill.questions);
        let asked: BTreeSet<&str> = asked.map(String::as_str).collect();
        let file = along["links"]["questions"][&module.id].as_str().unwrap_or_default();
        let held = DEMO_SITE.get(file).map_or(json!([]), |script| taken_along(script));
        for question in held.as_array().unwrap() {
            let id = question["id"].as_str().unwrap();
            assert_eq!(question, &serde_json::to_value(course.question(id).unwrap()).unwrap());
        }
        let held: BTreeSet<&str> =
            held.as_array().unwrap().iter().filter_map(|question| question["id"].as_str()).collect();
        assert_eq!(held, asked, "{}", module.id);
    }
    for (_, lesson) in course.lessons() {
        assert_eq!(
            along["links"]["lessons"][&lesson.id],
            format!("lessons/{}.html#page_top", lesson.page.path)
        );
    }
}

#[test]
fn what_an_author_writes_is_data_to_practice() {
    const HOSTILE: &str = "</script><script>alert(1)</script><!-- \u{2028} \"); alert(1); (\" ${alert(1)} `";
    let files = built(&tiny(|text| format!("{text} {HOSTILE}")));
    let script = &files["practice-course.js"];
    let text = std::str::from_utf8(script).unwrap();
    for (path, content) in files.iter().filter(|(path, _)| path.starts_with("practice/")) {
        let text = std::str::from_utf8(content).unwrap();
        assert!(!text.contains('<') && !text.contains('\u{2028}') && text.lines().count() == 2, "{path}");
    }
    assert!(!text.contains('<') && !text.contains('\u{2028}'));
    assert_eq!(text.lines().count(), 2, "one literal, in one line");
    let along = taken_along(script);
    assert_eq!(along["course"]["shelf"]["bottles"][0]["name"], format!("Fallow {HOSTILE}"));
    assert_eq!(along["course"]["clients"][0]["wish"], format!("Something quiet. {HOSTILE}"));
    assert!(!pages(&files)["practice.html"].contains("<script>alert"));
}

/// Words reach the page as text only: no part of the script hands text to the reader of HTML, or makes code of it.
#[test]
fn the_script_never_reads_text_as_html_or_code_and_asks_no_other_machine() {
    let script = String::from_utf8(DEMO_SITE["practice.js"].clone()).unwrap();
    let ways = [
        "innerHTML",
        "outerHTML",
        "insertAdjacentHTML",
        "document.write",
        "eval(",
        "new Function",
        "fetch(",
        "XMLHttp",
        "sendBeacon",
        "WebSocket",
        "import(",
    ];
    for way in ways {
        assert!(!script.contains(way), "{way}");
    }
}
