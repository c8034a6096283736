//! What is left of old work gets the word that an expert would use: on every client and typical skin of the demo, for every family of
//! colourants, and without leaps between words that have nothing to do with each other.
//!
//! The expectations are common practice, no source.

use crate::demo::course;
use healedhue::colour::{Lab, Light, difference};
use healedhue::healing::{Placement, Reading, Scene, Tone, Work};
use healedhue::pigment::Paint;
use healedhue::skin::{Phototype, Redness, Site, Skin, Undertone};
use proptest::prelude::*;
use std::collections::{BTreeMap, BTreeSet};

const BLACKS: &[Tone] = &[Tone::BlackBlue, Tone::BlueGrey, Tone::Grey];

/// A kind of residual: what it is made of, how strong it may have been, and the words it may get. Every one may be too faint to see.
struct Family {
    name: &'static str,
    colourants: &'static [(&'static str, f64)],
    /// Words on light and middle skin, phototypes I to IV.
    fair: &'static [Tone],
    /// Words on deep skin, V and VI, where the melanin above takes yellow from everything: a faint violet cannot be told from a brown
    /// there, nor the two greens from grey.
    deep: &'static [Tone],
    /// Least share of the residuals that get one of them; the rest lie at the borders between words.
    least: f64,
}

#[rustfmt::skip]
const FAMILIES: [Family; 13] = [
    Family { name: "carbon black", colourants: &[("PBk7", 0.3)], fair: BLACKS, deep: &[Tone::Grey, Tone::Ashy], least: 0.95 },
    Family { name: "black iron oxide", colourants: &[("PBk11", 0.6)], fair: BLACKS, deep: &[Tone::Grey, Tone::Ashy], least: 0.95 },
    Family { name: "red iron oxide", colourants: &[("PR101", 0.4)], fair: &[Tone::Salmon, Tone::Red, Tone::Orange], deep: &[Tone::Salmon, Tone::Red, Tone::Orange], least: 0.95 },
    Family { name: "red with a rest of yellow", colourants: &[("PR101", 0.25), ("PY42", 0.7)], fair: &[Tone::Orange, Tone::Salmon, Tone::Red], deep: &[Tone::Orange, Tone::Salmon, Tone::Red, Tone::Warm, Tone::Neutral], least: 0.94 },
    Family { name: "organic orange", colourants: &[("PO13", 0.4)], fair: &[Tone::Orange, Tone::Salmon], deep: &[Tone::Salmon, Tone::Orange, Tone::Red], least: 0.95 },
    Family { name: "organic red", colourants: &[("PR170", 0.5)], fair: &[Tone::Red, Tone::Salmon, Tone::PinkViolet], deep: &[Tone::Red, Tone::Salmon], least: 0.95 },
    Family { name: "organic magenta", colourants: &[("PR122", 0.5)], fair: &[Tone::Red, Tone::Salmon, Tone::PinkViolet], deep: &[Tone::Red, Tone::Salmon], least: 0.95 },
    Family { name: "manganese violet", colourants: &[("PV16", 1.2)], fair: &[Tone::PinkViolet, Tone::Ashy], deep: &[Tone::PinkViolet, Tone::Ashy, Tone::Neutral], least: 0.9 },
    Family { name: "dioxazine violet", colourants: &[("PV23", 0.25)], fair: &[Tone::PinkViolet, Tone::Ashy], deep: &[Tone::PinkViolet, Tone::Ashy, Tone::Neutral], least: 0.9 },
    Family { name: "chromium oxide green", colourants: &[("PG17", 0.5)], fair: &[Tone::GreenGrey, Tone::Grey], deep: &[Tone::GreenGrey, Tone::Grey, Tone::Ashy], least: 0.88 },
    Family { name: "phthalocyanine green", colourants: &[("PG7", 0.2)], fair: &[Tone::GreenGrey], deep: &[Tone::GreenGrey, Tone::Grey, Tone::BlueGrey], least: 0.95 },
    Family { name: "red made paler with white", colourants: &[("PR101", 0.3), ("PW6", 0.7)], fair: &[Tone::Salmon, Tone::Orange, Tone::Warm], deep: &[Tone::Salmon, Tone::Red], least: 0.95 },
    Family { name: "yellow iron oxide", colourants: &[("PY42", 1.2)], fair: &[Tone::Warm, Tone::Neutral], deep: &[Tone::Warm, Tone::Neutral, Tone::Ashy, Tone::Orange, Tone::Salmon, Tone::Grey], least: 0.95 },
];

fn paint(amounts: &[(&str, f64)], times: f64) -> Paint {
    let place = |id: &str| course().shelf.colourant_place(id).expect("the colourant is on the shelf");
    let mut paint: Paint = amounts.iter().map(|(id, amount)| (place(id), amount * times)).collect();
    paint.sort_by_key(|(place, _)| *place);
    paint
}

/// The colour of old work, and of the skin around it.
fn seen(skin: &Skin, site: Site, paint: Paint, placement: Placement, months: f64) -> (Lab, Lab) {
    let old = [Work { paint, placement, months }];
    let scene = Scene::today(&course().shelf, skin, site, &old);
    (Light::D65.lab_of(&scene.existing()), Light::D65.lab_of(&scene.bare()))
}

/// Every demo client's bare brow, and typical skins of every phototype and undertone.
fn skins() -> Vec<(String, Phototype, Skin, Site)> {
    let clients = course().clients.iter().filter(|client| client.site == Site::Brow);
    let mut skins: Vec<_> =
        clients.map(|client| (client.id.clone(), client.phototype, client.skin, client.site)).collect();
    for (phototype, word) in Phototype::ALL {
        for (undertone, name) in Undertone::ALL {
            let skin = Skin::from_evidence(phototype, undertone, Redness::Calm);
            skins.push((format!("{word} {name}"), phototype, skin, Site::Brow));
        }
    }
    skins
}

/// Loads, ages and depths tried for each family: what is usual on a brow.
const LOADS: [f64; 3] = [0.3, 0.6, 1.0];
const MONTHS: [f64; 3] = [12.0, 36.0, 60.0];
const DEPTHS_MM: [f64; 2] = [0.12, 0.16];

#[test]
fn each_family_of_residuals_reads_as_an_expert_would_name_it() {
    let mut failures = Vec::new();
    for family in &FAMILIES {
        for deep in [false, true] {
            let allowed = if deep { family.deep } else { family.fair };
            let mut found: BTreeMap<Tone, u32> = BTreeMap::new();
            let mut odd = BTreeSet::new();
            for (name, phototype, skin, site) in skins() {
                if (phototype >= Phototype::V) != deep {
                    continue;
                }
                for (load, months, depth_mm) in LOADS
                    .iter()
                    .flat_map(|load| MONTHS.iter().map(move |months| (*load, *months)))
                    .flat_map(|(load, months)| DEPTHS_MM.iter().map(move |depth| (load, months, *depth)))
                {
                    let placement = Placement { depth_mm, ..Placement::default() };
                    let (work, bare) = seen(&skin, site, paint(family.colourants, load), placement, months);
                    let tone = Reading::of(work, bare, site).tone;
                    if tone != Tone::Skin {
                        *found.entry(tone).or_default() += 1;
                        if !allowed.contains(&tone) {
                            odd.insert(format!("{name}: {}", tone.word()));
                        }
                    }
                }
            }
            let all: u32 = found.values().sum();
            let right: u32 = allowed.iter().filter_map(|tone| found.get(tone)).sum();
            if f64::from(right) < family.least * f64::from(all) || all == 0 {
                failures.push(format!(
                    "{} (deep skin: {deep}): {right} of {all}; {found:?} {odd:?}",
                    family.name
                ));
            }
        }
    }
    assert!(failures.is_empty(), "{}", failures.join("\n"));
}

/// The clients who come with old work, with the word that their story asks for.
#[test]
fn the_old_work_of_each_client_reads_as_it_is_told() {
    let expected = [
        ("bastrel", Tone::Warm),
        ("coveny", Tone::Neutral),
        ("dovarel", Tone::Orange),
        ("ferrand", Tone::Grey),
        ("gaura", Tone::Grey),
        ("hadrin", Tone::Orange),
        ("hallam", Tone::BlueGrey),
        ("hettin", Tone::Red),
        ("ilvane", Tone::Salmon),
        ("jessom", Tone::BlueGrey),
        ("kerrin", Tone::Grey),
        ("lirrane", Tone::BlueGrey),
        ("lowena", Tone::Grey),
        ("lunet", Tone::Grey),
        // White below light skin: hardly a residual by its tone.
        ("merrick", Tone::Warm),
        ("mirrel", Tone::Grey),
        ("norrin", Tone::Red),
        ("ondrey", Tone::PinkViolet),
        // Two works that lie over each other.
        ("orrila", Tone::Ashy),
        ("pellam", Tone::Red),
        ("quenna", Tone::BlueGrey),
        ("tamsor", Tone::GreenGrey),
        ("tessaly", Tone::Red),
        ("thorrela", Tone::BlueGrey),
        ("velsin", Tone::Grey),
        ("vessan", Tone::PinkViolet),
        ("wistra", Tone::BlackBlue),
        ("yarrel", Tone::GreenGrey),
    ];
    let found: Vec<(&str, Tone)> = course()
        .clients
        .iter()
        .filter(|client| !client.existing.is_empty())
        .map(|client| {
            let scene = Scene::today(&course().shelf, &client.skin, client.site, &client.works());
            let lab = |reflectance| Light::D65.lab_of(&reflectance);
            (client.id.as_str(), Reading::of(lab(scene.existing()), lab(scene.bare()), client.site).tone)
        })
        .collect();
    assert_eq!(found, expected);
}

/// Faint black was once taken for brown on middle and deep skin.
#[test]
fn faint_black_is_never_a_neutral_brown() {
    for (phototype, numeral) in Phototype::ALL {
        for (undertone, word) in Undertone::ALL {
            let skin = Skin::from_evidence(phototype, undertone, Redness::Calm);
            for load in [0.05, 0.1, 0.2, 0.4] {
                let black = paint(&[("PBk7", 0.5)], load);
                let (work, bare) = seen(&skin, Site::Brow, black, Placement::default(), 60.0);
                let tone = Reading::of(work, bare, Site::Brow).tone;
                assert!(
                    !matches!(tone, Tone::Neutral | Tone::Warm),
                    "{numeral} {word}, load {load}: {tone:?}, {work:?} on {bare:?}"
                );
            }
        }
    }
}

/// The more carbon, the deeper the word: never back to brown.
#[test]
fn black_reads_darker_words_with_more_of_it() {
    let skin = Skin::from_evidence(Phototype::II, Undertone::Neutral, Redness::Calm);
    let tones: Vec<Tone> = [0.05, 0.15, 0.3, 1.0, 2.0]
        .iter()
        .map(|&load| {
            let (work, bare) =
                seen(&skin, Site::Brow, paint(&[("PBk7", 0.5)], load), Placement::default(), 60.0);
            Reading::of(work, bare, Site::Brow).tone
        })
        .collect();
    assert_eq!((tones[0], tones[4]), (Tone::BlueGrey, Tone::BlackBlue), "{tones:?}");
    assert!(tones.windows(2).all(|pair| pair[0] >= pair[1]), "{tones:?}");
}

/// Words that may lie side by side: a step too small to see may lead from one to the other.
const NEIGHBOURS: [(Tone, Tone); 28] = [
    (Tone::BlackBlue, Tone::BlueGrey),
    (Tone::BlackBlue, Tone::Grey),
    (Tone::BlackBlue, Tone::GreenGrey),
    (Tone::BlackBlue, Tone::Ashy),
    (Tone::BlackBlue, Tone::PinkViolet),
    (Tone::BlueGrey, Tone::Grey),
    (Tone::BlueGrey, Tone::GreenGrey),
    (Tone::BlueGrey, Tone::Ashy),
    (Tone::BlueGrey, Tone::PinkViolet),
    (Tone::Grey, Tone::GreenGrey),
    (Tone::Grey, Tone::Ashy),
    (Tone::GreenGrey, Tone::Ashy),
    (Tone::Grey, Tone::PinkViolet),
    (Tone::Grey, Tone::Warm),
    (Tone::Ashy, Tone::Neutral),
    (Tone::Ashy, Tone::Warm),
    (Tone::Ashy, Tone::PinkViolet),
    (Tone::Ashy, Tone::Red),
    (Tone::Neutral, Tone::Warm),
    (Tone::Warm, Tone::Orange),
    (Tone::Warm, Tone::Salmon),
    (Tone::Warm, Tone::Red),
    (Tone::Warm, Tone::PinkViolet),
    (Tone::Red, Tone::Orange),
    (Tone::Red, Tone::Salmon),
    (Tone::Salmon, Tone::Orange),
    (Tone::Salmon, Tone::PinkViolet),
    (Tone::Red, Tone::PinkViolet),
];

fn may_touch(one: Tone, other: Tone) -> bool {
    let known = [(one, other), (other, one)];
    one == other
        || one == Tone::Skin
        || other == Tone::Skin
        || known.iter().any(|pair| NEIGHBOURS.contains(pair))
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 3000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn prop_no_tiny_step_flips_between_words_that_are_far_apart(
        phototype in 0..6usize, undertone in 0..4usize, redness in 0..4usize,
        (lighter, a, b) in (-0.6..0.25f64, -8.0..26.0f64, -8.0..34.0f64), step in (-1.0..1.0f64, -1.0..1.0f64, -1.0..1.0f64),
    ) {
        let skin = Skin::from_evidence(Phototype::ALL[phototype].0, Undertone::ALL[undertone].0, Redness::ALL[redness].0);
        let bare = Light::D65.lab_of(&Scene::today(&course().shelf, &skin, Site::Brow, &[]).bare());
        let work = Lab::new(bare.l * (1.0 + lighter), a, b);
        // Walks in steps that nobody can see: 0.1 a coordinate, and no more than a hundredth of what there is to see of the work.
        let (mut before, mut tone) = (work, Tone::of(work, bare));
        for _ in 0..80 {
            let (l, a, b) = (before.l - bare.l, before.a - bare.a, before.b - bare.b);
            let size = (0.01 * libm::sqrt(l * l + a * a + b * b)).min(0.1);
            let next = Lab::new(before.l + size * step.0, before.a + size * step.1, before.b + size * step.2);
            let word = Tone::of(next, bare);
            prop_assert!(difference(before, next) < 0.35);
            prop_assert!(may_touch(tone, word), "{:?} at {:?}, {:?} at {:?} on {:?}", tone, before, word, next, bare);
            (before, tone) = (next, word);
        }
    }
}
