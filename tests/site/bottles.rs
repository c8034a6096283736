//! What pages tell of bottles and colourants, and the ways there from where they are named.

use super::fixture::{DEMO, DEMO_SITE, pages};
use super::html::tags;
use healedhue::exercise::bottles_named;
use std::collections::BTreeSet;

/// The anchors in the library that a page leads to.
fn led_to(html: &str) -> BTreeSet<String> {
    let anchor = |link: &str| link.split_once("bottles.html#").map(|(_, anchor)| anchor.to_owned());
    tags(html).iter().filter_map(|tag| anchor(tag.get("href")?)).collect()
}

#[test]
fn a_lesson_leads_to_every_bottle_its_exercises_name() {
    let (course, pools) = &*DEMO;
    let pages = pages(&DEMO_SITE);
    let mut named_in_all = 0;
    for (_, lesson) in course.lessons() {
        let page = &pages[&format!("lessons/{}.html", lesson.page.path)];
        let made = lesson.drills.iter().filter_map(|drill| pools.get(&drill.id)).flatten();
        let shown = made.filter(|exercise| {
            page.contains(&format!("\"exercise_{}_{}\"", exercise.drill, exercise.number))
        });
        let named: BTreeSet<&str> = shown.flat_map(|exercise| bottles_named(course, exercise)).collect();
        let led_to = led_to(page);
        for bottle in &named {
            assert!(led_to.contains(*bottle), "{}: {bottle}", lesson.id);
        }
        named_in_all += named.len();
    }
    assert!(named_in_all > 100, "{named_in_all}");
}

#[test]
fn every_colourant_is_shown_and_every_page_leads_there() {
    let (course, _) = &*DEMO;
    let pages = pages(&DEMO_SITE);
    let html = &pages["colourants.html"];
    for colourant in &course.shelf.colourants {
        let anchor = format!("id=\"colourant_{}\"", colourant.id.replace(':', "-"));
        let entry = html.split_once(&anchor).unwrap_or_else(|| panic!("{anchor}")).1;
        let entry = entry.split_once("</section>").unwrap().0;
        assert!(entry.contains("<figure class=\"swatch\"><svg") && entry.contains("<small>L*"), "{entry}");
        let is_used = course.shelf.bottles.iter().any(|bottle| {
            bottle.recipe.iter().any(|(place, _)| course.shelf.colourants[*place].id == colourant.id)
        });
        assert_eq!(entry.contains("In no bottle of this course."), !is_used, "{entry}");
        assert_eq!(entry.contains("bottles.html#"), is_used, "{entry}");
    }
    for (path, html) in &pages {
        let leads =
            |tag: &super::html::Tag| tag.get("href").is_some_and(|to| to.ends_with("colourants.html"));
        assert!(tags(html).iter().any(leads), "{path}");
    }
}
