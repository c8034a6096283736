//! Pages for instructors: syllabus, teaching notes, blank sheets, sources.

use super::fixture::{DEMO, DEMO_SITE, built, pages, tiny};
use super::html::{decoded, tags};

/// The main part of a page.
fn main(html: &str) -> &str {
    let from = html.find("<main").unwrap();
    &html[from..html.find("</main>").unwrap()]
}

#[test]
fn what_instructors_read() {
    let pages = pages(&built(&tiny(str::to_owned)));
    let read = |path: &str| main(&pages[&format!("teaching/{path}.html")]);
    insta::assert_snapshot!("syllabus", read("syllabus"));
    insta::assert_snapshot!("teaching_note", read("notes/one"));
    insta::assert_snapshot!("swatch_book", read("swatch-book"));
    insta::assert_snapshot!("consultation", read("consultation"));
    insta::assert_snapshot!("correction_planner", read("correction-planner"));
    insta::assert_snapshot!("sources", read("sources"));
}

#[test]
fn the_home_page_links_to_every_page_for_instructors() {
    let site = pages(&built(&tiny(str::to_owned)));
    let links: Vec<String> =
        tags(&site["index.html"]).iter().filter_map(|tag| tag.get("href").map(str::to_owned)).collect();
    for page in ["syllabus", "swatch-book", "consultation", "correction-planner", "sources"] {
        assert!(links.contains(&format!("teaching/{page}.html")), "{page}");
    }
    let syllabus = tags(&site["teaching/syllabus.html"]);
    assert!(syllabus.iter().any(|tag| tag.get("href") == Some("notes/one.html")));
}

#[test]
fn a_module_without_a_note_still_has_its_computed_page() {
    let (mut course, pools) = tiny(str::to_owned);
    course.modules[0].teaching = None;
    course.cautions.clear();
    course.sources.clear();
    let site = pages(&built(&(course, pools)));
    assert!(site["teaching/notes/one.html"].contains("It heals cold."));
    assert!(!site["teaching/consultation.html"].contains("consult_health"));
}

#[test]
fn every_module_of_the_demo_has_a_note_that_says_what_its_drills_tempt_into() {
    let (course, _) = &*DEMO;
    let site = pages(&DEMO_SITE);
    for module in &course.modules {
        let note = module.teaching.as_ref().unwrap_or_else(|| panic!("{} has no teaching.md", module.id));
        assert!(!note.blocks.is_empty());
        let page = decoded(&site[&format!("teaching/notes/{}.html", module.id)]);
        for misconception in &course.misconceptions {
            let drills = module.lessons.iter().flat_map(|lesson| &lesson.drills);
            let tempts = drills.clone().any(|drill| drill.tempts.contains(&misconception.id));
            assert!(!tempts || page.contains(&misconception.truth), "{} {}", module.id, misconception.id);
        }
    }
    let sources = decoded(&site["teaching/sources.html"]);
    assert!(course.sources.iter().all(|source| sources.contains(&source.title)));
    let consultation = decoded(&site["teaching/consultation.html"]);
    assert!(course.cautions.iter().all(|caution| consultation.contains(&caution.name)));
}
