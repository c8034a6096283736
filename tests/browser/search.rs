//! The search: what it finds, and what it forgives.

use crate::chromium::Chromium;
use crate::site::SERVED;
use crate::tab::Tab;

/// What is found for some words: where each finding leads.
fn found(tab: &mut Tab, words: &str) -> Vec<String> {
    tab.value(&format!(
        "{{ const field = document.querySelector('#search_words'); field.value = {words:?}; field.dispatchEvent(new Event('input')); }}"
    ));
    tab.texts("[...document.querySelectorAll('#search_findings a')].map((link) => link.getAttribute('href'))")
}

#[test]
fn everything_of_the_site_is_found() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.open(&format!("{}search.html", *SERVED));
    for (words, place) in [
        ("PR101", "colourants.html#colourant_PR101"),
        ("carbon black PBk7", "colourants.html#colourant_PBk7"),
        ("layers of skin scattering bands", "model.html#model-steps"),
        ("near-neutral steps", "display.html#display-neutral"),
        ("worksheet residual", "worksheets/reading-a-residual.html#page_top"),
        ("tessaly", "clients/"),
        ("glossary", "glossary.html#page_top"),
        ("syllabus", "teaching/syllabus.html#page_top"),
        ("practice", "practice.html#page_top"),
        ("progress", "progress.html#page_top"),
        ("bench", "bench.html#page_top"),
        ("colourants", "colourants.html#page_top"),
        ("about the model", "model.html"),
        ("teaching note", "teaching/notes/"),
        ("touch-up", "glossary.html#touch-up"),
        ("ΔE", "glossary.html#ciede2000"),
        ("delta e", "glossary.html#ciede2000"),
        ("phototype 3", "clients.html#phototype_III"),
        ("phototype III", "clients.html#phototype_III"),
        ("Annex XVII aromatic amines", "colourants.html#colourant_"),
    ] {
        let all = found(&mut tab, words);
        assert!(all.iter().any(|link| link.starts_with(place)), "{words}: {all:?}");
    }
    tab.expect_quiet(&SERVED);
}

#[test]
fn a_slip_is_forgiven_and_does_not_flood() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.open(&format!("{}search.html", *SERVED));
    for (slip, word) in [
        ("sallow", "sallow"),
        ("carbin", "carbon"),
        ("laser", "laser"),
        ("lazer", "laser"),
        ("sunn", "sun"),
        ("browm", "brown"),
        ("ahsy", "ashy"),
        ("bleu", "blue"),
        ("orgnaic", "organic"),
        ("ahsy brown", "ashy brown"),
    ] {
        let meant = found(&mut tab, word);
        let all = found(&mut tab, slip);
        assert!(
            !meant.is_empty() && meant.iter().any(|link| all.contains(link)),
            "{slip}: {all:?}, not {meant:?}"
        );
    }
    // Where the word is there, nothing that is only like it is found besides.
    let exact = found(&mut tab, "liner");
    let marked =
        tab.texts("[...document.querySelectorAll('#search_findings mark')].map((mark) => mark.textContent)");
    assert!(!exact.is_empty());
    assert!(marked.iter().all(|word| word.to_lowercase().starts_with("liner")), "{marked:?}");
    tab.expect_quiet(&SERVED);
}
