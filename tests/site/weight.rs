//! Reading pages are light: what they weigh beside their pictures and the pictures' captions.

use super::fixture::{DEMO_SITE, pages};

/// Bytes of a page without its figures and the shapes they are drawn with.
fn bytes_of_text(html: &str) -> usize {
    let without = |html: &str, start: &str, end: &str| -> String {
        let mut rest = html;
        let mut kept = String::new();
        while let Some(at) = rest.find(start) {
            kept += &rest[..at];
            let after = rest[at..].find(end).unwrap_or_else(|| panic!("{start} without {end}"));
            rest = &rest[at + after + end.len()..];
        }
        kept + rest
    };
    without(&without(html, "<figure", "</figure>"), "<svg class=\"shapes\"", "</svg>").len()
}

#[test]
fn pages_that_are_read_weigh_less_than_sixty_kilobytes_without_pictures() {
    for (path, html) in pages(&DEMO_SITE) {
        assert!(bytes_of_text(&html) < 60_000, "{path}: {} bytes", bytes_of_text(&html));
    }
}

/// The engine is loaded by pages that run it, and by no other.
#[test]
fn only_pages_that_run_the_engine_load_it() {
    for (path, html) in pages(&DEMO_SITE) {
        let loads =
            ["engine.js", "practice-maker.js"].iter().any(|script| html.contains(&format!("{script}\"")));
        let runs = html.contains("'wasm-unsafe-eval'");
        assert_eq!(loads, runs, "{path}");
    }
}
