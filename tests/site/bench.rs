//! The bench: what it loads, what it takes along of a course, and that nothing else loads the engine.

use super::fixture::{DEMO, DEMO_SITE, built, pages, tiny};
use super::html::tags;
use healedhue::foresee::Request;
use healedhue::pigment::Shelf;
use serde_json::{Value, json};

/// What a course's bench takes along.
fn taken_along(script: &[u8]) -> Value {
    let script = std::str::from_utf8(script).unwrap();
    let literal = script.split_once("JSON.parse(").unwrap().1.strip_suffix(");\n").unwrap();
    serde_json::from_str(&serde_json::from_str::<String>(literal).unwrap()).unwrap()
}

#[test]
fn only_the_bench_loads_the_engine() {
    let mut with_engine = Vec::new();
    for (path, html) in pages(&DEMO_SITE) {
        let loads = tags(&html)
            .iter()
            .any(|tag| tag.get("src").or(tag.get("href")).is_some_and(|link| link.ends_with("engine.js")));
        if loads {
            with_engine.push(path);
        }
    }
    assert_eq!(with_engine, ["bench.html"]);
}

#[test]
fn every_page_leads_to_the_bench() {
    for (path, html) in pages(&DEMO_SITE) {
        assert!(
            tags(&html).iter().any(|tag| tag.get("href").is_some_and(|to| to.ends_with("bench.html"))),
            "{path}"
        );
    }
}

/// The engine is compressed within its script, so that this is its weight on any server and on any stick.
#[test]
fn the_engine_weighs_less_than_400_kilobytes() {
    let weight = DEMO_SITE["engine.js"].len();
    assert!(weight < 400_000, "{weight}");
}

/// The script holds the kept file, whole.
#[test]
fn the_engine_comes_out_of_its_script_as_it_was() {
    use base64::Engine as _;
    let script = String::from_utf8(DEMO_SITE["engine.js"].clone()).unwrap();
    let text = script.split('"').nth(3).unwrap();
    let packed = base64::engine::general_purpose::STANDARD.decode(text).unwrap();
    let kept = std::fs::read(concat!(env!("CARGO_MANIFEST_DIR"), "/site/engine/engine.wasm.gz")).unwrap();
    assert!(packed == kept);
}

#[test]
fn the_bench_says_what_it_needs_where_there_are_no_scripts() {
    let html = &pages(&DEMO_SITE)["bench.html"];
    let without = html.split_once("<noscript>").unwrap().1.split_once("</noscript>").unwrap().0;
    assert!(without.contains("needs scripts") && without.contains("href=\"index.html\""), "{without}");
    let bench = tags(html).into_iter().find(|tag| tag.get("id") == Some("bench")).unwrap();
    assert!(bench.get("hidden").is_some(), "controls that do nothing are not shown");
    assert!(html.contains("never a promise of a result on a person"));
}

/// A client on the bench is the client of the exercises, to the last bit.
#[test]
fn the_bench_asks_about_the_clients_as_the_course_has_them() {
    let (course, _) = &*DEMO;
    let along = taken_along(&DEMO_SITE["bench-course.js"]);
    let shelf: Shelf = serde_json::from_value(along["shelf"].clone()).unwrap();
    assert_eq!(shelf, course.shelf);
    let people = along["clients"].as_array().unwrap();
    assert_eq!(people.len(), course.clients.len());
    for (person, client) in people.iter().zip(&course.clients) {
        let existing: Vec<&Value> =
            person["existing"].as_array().unwrap().iter().map(|old| &old["work"]).collect();
        let skin = json!({
            "phototype": person["phototype"], "undertone": person["undertone"], "redness": person["redness"],
            "scar": person["scar"],
        });
        let request = json!({ "skin": skin, "site": person["site"], "existing": existing }).to_string();
        let task = Request::from_json(&request).unwrap().resolve(&shelf).unwrap();
        assert_eq!((task.skin, task.existing), (client.skin, client.works()), "{}", client.id);
        assert_eq!(person["health"].as_array().unwrap().len(), client.cautions().count(), "{}", client.id);
    }
}

#[test]
fn what_an_author_writes_is_data_to_the_bench() {
    const HOSTILE: &str = "</script><script>alert(1)</script><!-- \u{2028} \"); alert(1); (\" ${alert(1)} `";
    let files = built(&tiny(|text| format!("{text} {HOSTILE}")));
    let script = &files["bench-course.js"];
    let text = std::str::from_utf8(script).unwrap();
    assert!(!text.contains('<') && !text.contains('\u{2028}'));
    assert_eq!(text.lines().count(), 2, "one literal, in one line");
    let along = taken_along(script);
    assert_eq!(along["shelf"]["bottles"][0]["name"], format!("Fallow {HOSTILE}"));
    assert_eq!(along["clients"][0]["wish"], format!("Something quiet. {HOSTILE}"));
}

/// Words reach the page as text only: no part of the script hands text to the reader of HTML, or makes code of it.
#[test]
fn the_script_never_reads_text_as_html_or_code() {
    let script = String::from_utf8(DEMO_SITE["bench.js"].clone()).unwrap();
    for way in [
        "innerHTML",
        "outerHTML",
        "insertAdjacentHTML",
        "document.write",
        "eval(",
        "new Function",
        "fetch(",
        "XMLHttp",
    ] {
        assert!(!script.contains(way), "{way}");
    }
}

/// The page draws with the paths that the other pages' swatches are drawn with.
#[test]
fn the_bench_draws_what_swatches_draw() {
    let along = taken_along(&DEMO_SITE["bench-course.js"]);
    let paths = |site: &str, manner: &str| -> Vec<String> {
        serde_json::from_value(along["drawings"][site][manner].clone()).unwrap()
    };
    let clients: String = pages(&DEMO_SITE)
        .into_iter()
        .filter(|(path, _)| path.starts_with("clients/"))
        .map(|(_, html)| html)
        .collect();
    for path in paths("brow", "both").iter().chain(&paths("lip", "both")) {
        assert!(clients.contains(&format!("d=\"{path}\"")), "{path}");
    }
    assert_ne!(paths("brow", "strokes"), paths("brow", "powder"));
}
