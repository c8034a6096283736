//! The demo course, loaded once for all tests.

use healedhue::course::{Course, load};
use std::path::Path;
use std::sync::OnceLock;

/// The demo course of this repository.
pub fn course() -> &'static Course {
    static COURSE: OnceLock<Course> = OnceLock::new();
    COURSE.get_or_init(|| {
        let loaded = load(Path::new(env!("CARGO_MANIFEST_DIR")));
        loaded.course.unwrap_or_else(|| panic!("the demo course has errors: {:?}", loaded.diagnostics))
    })
}

/// Its only warnings are about the bottle that holds a restricted blue: it is there to be warned of.
#[test]
fn the_demo_course_has_no_problem_but_the_restricted_blue() {
    let loaded = load(Path::new(env!("CARGO_MANIFEST_DIR")));
    let messages: Vec<&String> = loaded.diagnostics.iter().map(|diagnostic| &diagnostic.message).collect();
    assert!(!messages.is_empty());
    assert!(messages.iter().all(|message| message.contains("PB15:3")), "{messages:?}");
}

#[test]
fn the_demo_course_is_as_large_as_promised() {
    let course = course();
    assert!(course.modules.len() >= 3 && course.lessons().count() >= 6);
    assert!(course.clients.len() >= 12);
    let phototypes: std::collections::BTreeSet<_> =
        course.clients.iter().map(|client| client.phototype).collect();
    assert_eq!(phototypes.len(), 6, "clients from phototype I to VI");
    assert!(course.shelf.colourants.len() >= 14);
    let (modifiers, bottles): (Vec<_>, Vec<_>) =
        course.shelf.bottles.iter().partition(|bottle| bottle.modifier.is_some());
    assert!(bottles.len() >= 12 && modifiers.len() >= 4);
    let restricted = |id: &str| {
        let place = course.shelf.colourant_place(id).expect("the colourant is on the shelf");
        course.shelf.colourants[place].restrictions.iter().any(|rule| rule.since == "2023-01-04")
    };
    assert!(restricted("PB15:3") && restricted("PG7"), "REACH Annex XVII entry 75");
}
