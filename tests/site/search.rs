//! What the search can find: every part of the course, each where it says.

use super::fixture::{DEMO, DEMO_SITE, built, pages, tiny};
use super::html::tags;
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// What the script of a site holds to be found.
fn findings(files: &BTreeMap<String, Vec<u8>>) -> Vec<Value> {
    let script = std::str::from_utf8(&files["search-data.js"]).unwrap();
    let literal = script.split_once("JSON.parse(").unwrap().1.trim_end().strip_suffix(");").unwrap();
    let json: String = serde_json::from_str(literal).unwrap();
    serde_json::from_str(&json).unwrap()
}

fn text<'v>(finding: &'v Value, key: &str) -> &'v str {
    finding[key].as_str().unwrap()
}

#[test]
fn every_finding_stands_where_it_says() {
    let pages = pages(&DEMO_SITE);
    let ids: BTreeMap<&String, BTreeSet<String>> = pages
        .iter()
        .map(|(path, html)| {
            (path, tags(html).iter().filter_map(|tag| tag.get("id").map(str::to_owned)).collect())
        })
        .collect();
    let findings = findings(&DEMO_SITE);
    for (place, finding) in findings.iter().enumerate() {
        assert_eq!(finding["id"], place);
        let href = text(finding, "href");
        let (path, anchor) = href.split_once('#').unwrap_or((href, ""));
        let page = ids.get(&path.to_owned()).unwrap_or_else(|| panic!("{href} leads to no page"));
        assert!(anchor.is_empty() || page.contains(anchor), "{href} leads to no anchor");
        assert!(!text(finding, "title").is_empty() && !text(finding, "text").trim().is_empty(), "{href}");
    }
}

#[test]
fn everything_that_has_a_name_can_be_found() {
    let (course, _) = &*DEMO;
    let findings = findings(&DEMO_SITE);
    let found = |kind: &str| -> BTreeSet<&str> {
        findings.iter().filter(|one| one["kind"] == kind).map(|one| text(one, "title")).collect()
    };
    let lessons = found("Lesson");
    for (_, lesson) in course.lessons() {
        assert!(lessons.contains(lesson.page.title.as_str()), "{}", lesson.id);
    }
    assert_eq!(found("Term").len(), course.terms.len());
    assert_eq!(found("Bottle").len(), course.shelf.bottles.len());
    assert_eq!(found("Client").len(), course.clients.len());
    assert_eq!(found("Misconception").len(), course.misconceptions.len());
    assert_eq!(found("Caution").len(), course.cautions.len());
    let colourants = course.shelf.colourants.iter().filter(|colourant| colourant.of_bottle.is_none()).count();
    assert_eq!(found("Colourant").len(), colourants);
    assert_eq!(found("Worksheet").len(), course.modules.len());
}

#[test]
fn nothing_that_is_found_is_told_as_html_escapes_it() {
    for finding in findings(&DEMO_SITE) {
        for key in ["title", "part", "text", "also"] {
            assert!(
                !text(&finding, key).contains("&#") && !text(&finding, key).contains("&amp;"),
                "{finding}"
            );
        }
    }
}

#[test]
fn rules_that_restrict_a_colourant_are_found() {
    let (course, _) = &*DEMO;
    let findings = findings(&DEMO_SITE);
    let mut rules = 0;
    for colourant in &course.shelf.colourants {
        for rule in &colourant.restrictions {
            rules += 1;
            let of_it = |one: &&Value| one["kind"] == "Colourant" && text(one, "also") == colourant.id;
            let told = text(findings.iter().find(of_it).unwrap(), "text");
            assert!(
                [&rule.rule, &rule.place, &rule.source].iter().all(|part| told.contains(*part)),
                "{told}"
            );
        }
    }
    assert!(rules > 3, "{rules}");
}

/// Every page of the menu and of those for instructors, by its own title.
#[test]
fn every_page_of_the_menu_is_found_by_its_name() {
    let findings = findings(&DEMO_SITE);
    let pages = pages(&DEMO_SITE);
    let menu = pages["search.html"].split_once("<header").unwrap().1.split_once("</header>").unwrap().0;
    let mut led_to: Vec<String> =
        tags(menu).iter().filter_map(|tag| tag.get("href").map(str::to_owned)).collect();
    led_to.extend(pages.keys().filter(|path| path.starts_with("teaching/")).cloned());
    for path in led_to.iter().filter(|path| *path != "search.html") {
        let is_whole = |one: &&Value| {
            let (page, part) = text(one, "href").split_once('#').unwrap_or((text(one, "href"), "page_top"));
            page == path && part == "page_top"
        };
        let whole = findings.iter().find(is_whole).unwrap_or_else(|| panic!("{path} cannot be found"));
        let title = pages[path].split_once("<title>").unwrap().1.split_once("</title>").unwrap().0;
        let name = super::decoded(title.split(" – ").next().unwrap());
        assert_eq!(text(whole, "title"), name, "{path}");
    }
}

/// Every heading of the pages that are put together out of messages, with what stands below it.
#[test]
fn the_model_and_the_check_of_a_screen_can_be_found() {
    let all = findings(&DEMO_SITE);
    let pages = pages(&DEMO_SITE);
    for path in ["model.html", "display.html", "teaching/sources.html"] {
        let headed = tags(&pages[path]).into_iter().filter(|tag| tag.name == "h2");
        let ids: BTreeSet<String> = headed.filter_map(|tag| tag.get("id").map(str::to_owned)).collect();
        assert!(ids.len() > 3, "{path}");
        for id in ids {
            let href = format!("{path}#{id}");
            let found = all.iter().find(|one| text(one, "href") == href);
            let found = found.unwrap_or_else(|| panic!("{href} cannot be found"));
            assert!(!text(found, "text").contains('<') && !text(found, "part").is_empty(), "{found:?}");
        }
    }
}

/// A heading's words belong to it, and the words below it to its text.
#[test]
fn headings_divide_a_page() {
    let site = built(&tiny(|text| format!("{text}\n\n## A *heading* of two\n\nWords `below` it.\n")));
    let all = findings(&site);
    let below: Vec<_> = all.iter().filter(|one| text(one, "part") == "A heading of two").collect();
    assert!(!below.is_empty());
    assert!(text(below[0], "text").contains("Words below it."), "{:?}", below[0]);
    assert!(text(below[0], "href").ends_with("#a-heading-of-two"), "{:?}", below[0]);
}

#[test]
fn the_script_sets_what_it_finds_as_text() {
    let script = std::str::from_utf8(&DEMO_SITE["search.js"]).unwrap();
    for way in [
        "innerHTML",
        "outerHTML",
        "insertAdjacentHTML",
        "document.write",
        "eval(",
        "new Function",
        "XMLHttp",
        "https:",
    ] {
        assert!(!script.contains(way), "{way}");
    }
}
