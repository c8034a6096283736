//! Accessibility as axe-core finds it (WCAG 2.2, levels A and AA), on every page.
//!
//! axe-core comes from npm, of the version in package-lock.json; where it lies is told by the environment.

use crate::chromium::Chromium;
use crate::pages::{all_pages, started};
use crate::tab::Tab;
use serde_json::json;
use std::fs;
use std::sync::LazyLock;

static AXE: LazyLock<String> = LazyLock::new(|| {
    let hint = "HEALEDHUE_AXE names the file axe.min.js: run `npm ci` in a copy of tests/browser/package.json and package-lock.json, \
                then set it to the absolute path of node_modules/axe-core/axe.min.js";
    let file = std::env::var("HEALEDHUE_AXE").unwrap_or_else(|_| panic!("{hint}"));
    fs::read_to_string(&file).unwrap_or_else(|error| panic!("{file}: {error}. {hint}"))
});

const RUN: &str = "axe.run({
    runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'], resultTypes: ['violations'],
}).then(({ violations }) => violations.map(({ id, nodes }) => `${id}, ${nodes.length} times: ${nodes[0].target} ${nodes[0].failureSummary}`))";

/// Has axe-core at hand on every page that the tab opens from now on.
pub fn install(tab: &mut Tab) {
    tab.call("Page.addScriptToEvaluateOnNewDocument", json!({"source": *AXE}));
}

/// Asserts that axe-core finds nothing amiss with what the tab shows now.
pub fn expect_accessible(tab: &mut Tab, what: &str) {
    let found = tab.texts(RUN);
    assert!(found.is_empty(), "{what}:\n{}", found.join("\n"));
}

fn all_are_accessible(wanted: impl Fn(&str) -> bool) {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    install(&mut tab);
    tab.width(1280);
    let mut wrong = Vec::new();
    for (address, _) in all_pages().into_iter().filter(|(address, _)| wanted(address)) {
        tab.open(&address);
        started(&mut tab);
        wrong.extend(tab.texts(RUN).into_iter().map(|found| format!("{address}: {found}")));
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn lessons_are_accessible() {
    all_are_accessible(|address| address.contains("/lessons/"));
}

#[test]
fn pages_that_are_no_lessons_are_accessible() {
    all_are_accessible(|address| !address.contains("/lessons/"));
}

#[test]
fn pages_are_accessible_in_the_dark_and_on_a_phone() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    install(&mut tab);
    tab.prefers("prefers-color-scheme", "dark");
    tab.width(390);
    for page in crate::site::ONE_OF_EACH {
        tab.open(&format!("{}{page}", *crate::site::SERVED));
        started(&mut tab);
        expect_accessible(&mut tab, page);
    }
}
