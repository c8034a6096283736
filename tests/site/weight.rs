//! Reading pages are light: what they weigh beside their pictures. What stands below a picture counts.

use super::fixture::{DEMO_SITE, pages};

/// Bytes of a page without its drawings and images.
fn bytes_without_pictures(html: &str) -> usize {
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
    without(&without(html, "<svg", "</svg>"), "<img", ">").len()
}

#[test]
fn pages_that_are_read_weigh_less_than_sixty_kilobytes_without_pictures() {
    let heavy: Vec<String> = pages(&DEMO_SITE)
        .into_iter()
        .map(|(path, html)| (bytes_without_pictures(&html), path))
        .filter(|(bytes, _)| *bytes >= 60_000)
        .map(|(bytes, path)| format!("{path}: {bytes} bytes"))
        .collect();
    assert!(heavy.is_empty(), "{}", heavy.join("\n"));
}

#[test]
fn what_stands_below_a_picture_counts() {
    assert_eq!(bytes_without_pictures("<p>a</p><svg><path d=\"M0\"/></svg><b>c</b><img src=\"x\">"), 16);
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
