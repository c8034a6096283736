//! Accessibility as axe-core finds it (WCAG 2.2, levels A and AA), on every page.
//!
//! A page of each kind is looked at with every rule and every text. Its sisters, of which there are many, have the same style sheet: on them
//! contrast is judged on one text of each combination of colours, size and weight, and the size of targets not once more; all
//! other rules, which depend on what a page says and how it is built, see all of it.
//!
//! axe-core comes from npm, of the version in package-lock.json; where it lies is told by the environment.

use crate::chromium::Chromium;
use crate::pages::{all_pages, started};
use crate::site::{ONE_OF_EACH, SERVED};
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
    rules: { 'target-size': { enabled: !globalThis.axeOfSister }, 'landmark-unique': { enabled: true }, 'label-content-name-mismatch': { enabled: true } },
}).then(({ violations }) => violations.map(({ id, nodes }) => `${id}, ${nodes.length} times: ${nodes[0].target} ${nodes[0].failureSummary}`))";

/// Marks one text of each combination of colours, size and weight, and has contrast judged on those alone.
const OF_SISTER: &str = "(() => {
    const known = new Set();
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT, (text) =>
        (text.data.trim() ? NodeFilter.FILTER_ACCEPT : NodeFilter.FILTER_REJECT));
    const behind = (one) => {
        for (let at = one; at; at = at.parentElement) {
            const { backgroundColor, backgroundImage, opacity } = getComputedStyle(at);
            if (backgroundImage !== 'none' || opacity !== '1') return `${backgroundImage} ${opacity} ${backgroundColor} ${behind(at.parentElement)}`;
            if (backgroundColor !== 'rgba(0, 0, 0, 0)') return backgroundColor;
        }
        return '';
    };
    while (texts.nextNode()) {
        const one = texts.currentNode.parentElement;
        if (!one.checkVisibility()) continue;
        const { color, fontSize, fontWeight, textShadow } = getComputedStyle(one);
        const look = [color, fontSize, fontWeight, textShadow, behind(one)].join();
        if (known.has(look)) continue;
        known.add(look);
        one.dataset.axe = '';
    }
    axe.configure({ rules: [{ id: 'color-contrast', selector: '[data-axe]' }] });
    globalThis.axeOfSister = true;
    return known.size;
})()";

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
    let (mut wholly, mut sisters) = (0, 0);
    for (address, _) in all_pages().into_iter().filter(|(address, _)| wanted(address)) {
        tab.open(&address);
        started(&mut tab);
        if is_sister(&address) {
            sisters += 1;
            let looks = tab.value(OF_SISTER);
            assert!(looks.as_u64() > Some(3), "{address} has texts to judge contrast on: {looks}");
        } else {
            wholly += 1;
        }
        wrong.extend(tab.texts(RUN).into_iter().map(|found| format!("{address}: {found}")));
    }
    println!(
        "axe-core has looked at {} pages: {wholly} wholly, {sisters} as sisters of these",
        wholly + sisters
    );
    assert!(wholly > 0 && wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Whether a page is of a kind of which another one is looked at wholly.
fn is_sister(address: &str) -> bool {
    let Some(page) = address.strip_prefix(&*SERVED) else { return false };
    page.contains('/') && !ONE_OF_EACH.contains(&page)
}

#[test]
fn a_sister_shows_every_look_and_what_is_amiss() {
    let page = crate::site::place("sister.html");
    let text = "<p>Read well.</p>".repeat(5);
    let amiss = "<!doctype html><html lang=en><title>A page</title><main><h1>A</h1><h2>B</h2><small>C</small><em style='color:#bbb'>pale</em> <img src=a.png>";
    fs::write(&page, format!("{amiss}{text}<p style='background:#333'>black on black</p></main>"))
        .expect("a page");
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    install(&mut tab);
    tab.open(&crate::site::on_disk(&page));
    assert_eq!(tab.value(OF_SISTER), 6);
    let found = tab.texts(RUN);
    assert!(found.iter().any(|found| found.starts_with("color-contrast, 2 times")), "{found:?}");
    assert!(found.iter().any(|found| found.starts_with("image-alt")), "{found:?}");
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
fn the_bench_is_accessible_with_all_its_parts_open() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    install(&mut tab);
    for (width, scheme) in [(1280, "light"), (390, "dark")] {
        tab.prefers("prefers-color-scheme", scheme);
        tab.width(width);
        tab.open(&format!("{}bench.html#client=tessaly&mix=dunmere~4", *SERVED));
        started(&mut tab);
        tab.value("document.querySelectorAll('.bench details').forEach((part) => (part.open = true))");
        tab.wait_until("document.querySelector('#old_list button') && document.querySelector('#all td')");
        expect_accessible(&mut tab, &format!("the bench, all open, {width} px, {scheme}"));
        let names = tab.texts("[...document.querySelectorAll('.bench button[aria-label]')].map((one) => [one.getAttribute('aria-label'), one.textContent])
            .filter(([name, shown]) => /[a-z]/i.test(shown) && !name.includes(shown)).map(([name, shown]) => `${shown} is called ${name}`)");
        assert!(names.is_empty(), "{}", names.join("\n"));
    }
}

#[test]
fn pages_are_accessible_in_the_dark_and_on_a_phone() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    install(&mut tab);
    tab.prefers("prefers-color-scheme", "dark");
    tab.width(390);
    for page in ONE_OF_EACH {
        tab.open(&format!("{}{page}", *SERVED));
        started(&mut tab);
        expect_accessible(&mut tab, page);
    }
}
