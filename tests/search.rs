//! Searching: exhaustive, honest about near-ties and about goals out of reach, and the same on any number of cores.

use crate::demo::course;
use assert_cmd::Command;
use healedhue::Cores;
use healedhue::colour::{JUST_VISIBLE, Lab, Light, Sense, difference};
use healedhue::healing::{HEALED_MONTHS, Placement, Scene};
use healedhue::pigment::{Bottle, Mix};
use healedhue::search::{Found, Goal, MOST_MIXES, Palette, Search};
use healedhue::skin::{Phototype, Redness, Site, Skin, Undertone};
use predicates::str::{contains, is_empty};
use proptest::prelude::*;
use std::collections::BTreeSet;

const FIVE: [&str; 5] = ["dunmere", "kelderwick", "corrick", "emberlow", "palewater"];

fn palette(bottles: &[&str], most_bottles: u32, drops: u32) -> Palette {
    Palette { bottles: bottles.iter().map(|id| (*id).to_owned()).collect(), most_bottles, drops }
}

fn scene(phototype: Phototype, redness: Redness) -> Scene<'static> {
    let skin = Skin::from_evidence(phototype, Undertone::Neutral, redness);
    Scene::new(&course().shelf, &skin, Site::Brow, &[], HEALED_MONTHS)
}

fn goal(l: f64, a: f64, b: f64) -> Goal {
    Goal { lab: Lab::new(l, a, b), tolerance: 4.0 }
}

fn found(scene: &Scene, goal: Goal, palette: &Palette, cores: Cores) -> Found {
    Search::new(&course().shelf, goal, palette.clone()).expect("the search can be made").run(
        scene,
        &Placement::default(),
        Light::D65,
        cores,
    )
}

/// Every vector of drops, counted up like a number; ratios made equal by halving, thirding and so on.
fn brute_force(bottles: &[&str], most_bottles: usize, drops: u32) -> (BTreeSet<Mix>, u64) {
    let (mut mixes, mut possible) = (BTreeSet::new(), 0);
    for code in 0..(drops + 1).pow(bottles.len() as u32) {
        let counts: Vec<u32> =
            (0..bottles.len() as u32).map(|place| code / (drops + 1).pow(place) % (drops + 1)).collect();
        let total: u32 = counts.iter().sum();
        let different = counts.iter().filter(|&&count| count > 0).count();
        if total == 0 || total > drops || different > most_bottles {
            continue;
        }
        possible += 1;
        let shared = (1..=total).rev().find(|by| counts.iter().all(|count| count % by == 0));
        let shared = shared.expect("everything is divided by one");
        mixes.insert(Mix::new(bottles.iter().zip(counts).map(|(id, n)| ((*id).to_owned(), n / shared))));
    }
    (mixes, possible)
}

#[test]
fn the_search_agrees_with_brute_force() {
    let scene = scene(Phototype::III, Redness::Rosy);
    let shelf = &course().shelf;
    for (bottles, most_bottles, drops) in [(1, 1, 4), (3, 1, 6), (3, 2, 5), (4, 4, 4), (5, 3, 6), (2, 8, 12)]
    {
        let bottles = &FIVE[..bottles];
        let (mixes, possible) = brute_force(bottles, most_bottles as usize, drops);
        let goal = goal(45.0, 9.0, 12.0);
        let mut expected: Vec<(f64, Mix)> = mixes
            .into_iter()
            .map(|mix| {
                let healed = scene.with(&shelf.paint_of(&mix), &Placement::default());
                (difference(Light::D65.lab_of(&healed), goal.lab), mix)
            })
            .collect();
        expected.sort_by(|one, other| one.0.total_cmp(&other.0).then(one.1.cmp(&other.1)));
        let found = found(&scene, goal, &palette(bottles, most_bottles, drops), Cores::All);
        let ranking: Vec<(f64, Mix)> =
            found.ranking.iter().map(|tried| (tried.error, tried.mix.clone())).collect();
        assert_eq!(ranking, expected, "{bottles:?}, {most_bottles}, {drops}");
        assert_eq!(found.possible, possible, "{bottles:?}, {most_bottles}, {drops}");
    }
}

#[test]
fn one_and_two_threads_find_the_same() {
    let scene = scene(Phototype::II, Redness::Flushed);
    let palette = palette(&FIVE, 3, 8);
    let run = |cores| found(&scene, goal(47.0, 8.0, 12.0), &palette, cores);
    let alone = run(Cores::One);
    for threads in [1, 2, 5] {
        let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).build().expect("threads start");
        assert_eq!(pool.install(|| run(Cores::All)), alone, "{threads} threads");
    }
}

/// Goals beyond what five browns can do on a skin: which way they fail is known beforehand.
#[test]
fn goals_out_of_reach_say_which_way_they_fail() {
    let few = palette(&["dunmere", "kelderwick"], 2, 6);
    let fair = scene(Phototype::II, Redness::Calm);
    let dark = scene(Phototype::VI, Redness::Calm);
    for (scene, goal, sense) in [
        (&dark, goal(60.0, 9.0, 12.0), Sense::Deeper),
        (&fair, goal(12.0, 6.0, 6.0), Sense::Lighter),
        (&fair, goal(48.0, -25.0, 10.0), Sense::Redder),
        (&fair, goal(48.0, 45.0, 12.0), Sense::Greener),
        (&fair, goal(48.0, 8.0, -35.0), Sense::Warmer),
        (&fair, goal(48.0, 8.0, 60.0), Sense::Cooler),
    ] {
        let found = found(scene, goal, &few, Cores::All);
        let miss = found.miss().expect("the goal is out of reach");
        assert!(!found.is_reached());
        assert!((miss.beyond - (found.best().error - goal.tolerance)).abs() < 1e-12 && miss.beyond > 0.0);
        assert!(miss.words.starts_with(sense.excess()), "{sense:?}: {}", miss.words);
        let change = match sense {
            Sense::Lighter | Sense::Deeper => miss.shift.l,
            Sense::Redder | Sense::Greener => miss.shift.a,
            Sense::Warmer | Sense::Cooler => miss.shift.b,
        };
        let up = matches!(sense, Sense::Lighter | Sense::Redder | Sense::Warmer);
        assert_eq!(change > 0.0, up, "{sense:?}: {miss:?}");
        let healed = found.best().healed;
        assert_eq!(miss.shift.l, healed.l - goal.lab.l);
    }
}

#[test]
fn a_goal_that_a_mix_heals_to_is_reached_without_a_miss() {
    let scene = scene(Phototype::III, Redness::Calm);
    let mix = Mix::new([("kelderwick".to_owned(), 3), ("emberlow".to_owned(), 1)]);
    let healed = Light::D65.lab_of(&scene.with(&course().shelf.paint_of(&mix), &Placement::default()));
    let goal = Goal { lab: healed, tolerance: 0.5 };
    let found = found(&scene, goal, &palette(&FIVE, 3, 8), Cores::All);
    assert_eq!((found.best().error, &found.best().mix), (0.0, &mix));
    assert!(found.is_reached() && found.miss().is_none());
    assert!(found.untouched_error() > 5.0);
}

#[test]
fn searches_that_cannot_be_made_are_refused_with_field_value_and_range() {
    let shelf = &course().shelf;
    let refused = |goal: Goal, palette: Palette| {
        let error = Search::new(shelf, goal, palette).expect_err("it is refused");
        format!("{}: {error}", error.field())
    };
    let fine = goal(45.0, 9.0, 12.0);
    for (goal, palette, words) in [
        (fine, palette(&FIVE, 2, 0), "drops: `drops` is 0, outside 1 to 100"),
        (fine, palette(&FIVE, 2, 101), "drops: `drops` is 101"),
        (fine, palette(&FIVE, 0, 6), "bottles: `bottles` is 0, outside 1 to 8"),
        (fine, palette(&[], 2, 6), "palette: there is no bottle to mix from"),
        (fine, palette(&["dunmere", "dunmore"], 2, 6), "palette[1]: there is no bottle `dunmore`"),
        (
            fine,
            palette(&["dunmere", "kelderwick", "dunmere"], 2, 6),
            "palette[2]: bottle `dunmere` is named twice",
        ),
        (goal(f64::NAN, 9.0, 12.0), palette(&FIVE, 2, 6), "goal: `L*` is NaN, outside 0 to 100"),
        (goal(45.0, 9.0, f64::INFINITY), palette(&FIVE, 2, 6), "goal: `b*` is inf, outside -128 to 128"),
        (Goal { tolerance: -1.0, ..fine }, palette(&FIVE, 2, 6), "tolerance: `tolerance` is -1, outside 0.5"),
        (
            fine,
            palette(&FIVE, 5, 40),
            "drops: 1221758 mixes are possible, more than the 200000 that are tried",
        ),
    ] {
        let refusal = refused(goal, palette);
        assert!(refusal.starts_with(words), "{refusal}");
    }
    // Limits whose mixes are beyond counting are refused at once.
    let many: Vec<String> = (0..3000).map(|_| "dunmere".to_owned()).collect();
    let endless = Palette { bottles: many, most_bottles: 8, drops: 100 };
    assert_eq!(endless.possible(), u64::MAX);
}

#[test]
fn the_largest_grid_allowed_is_counted_exactly() {
    let (mixes, possible) = brute_force(&FIVE, 5, 7);
    let palette = palette(&FIVE, 5, 7);
    assert_eq!(palette.possible(), possible);
    assert!(possible < MOST_MIXES && mixes.len() < possible as usize);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]
    /// Whatever the goal: the best is best, near-ties are all those within a just visible difference, every other mix is worse by
    /// the gap, and a miss is what is left beyond the tolerance.
    #[test]
    fn prop_near_ties_and_gap_are_honest(
        l in 15.0..80.0_f64,
        a in -10.0..30.0_f64,
        b in -10.0..40.0_f64,
        tolerance in 0.5..8.0_f64,
        phototype in 0..6_usize,
    ) {
        let scene = scene(Phototype::ALL[phototype].0, Redness::Rosy);
        let goal = Goal { lab: Lab::new(l, a, b), tolerance };
        let found = found(&scene, goal, &palette(&FIVE, 2, 5), Cores::All);
        let best = found.best();
        let ties = found.near_ties();
        let listed: BTreeSet<&Mix> = ties.iter().map(|tie| &tie.tried.mix).chain([&best.mix]).collect();
        prop_assert_eq!(listed.len(), ties.len() + 1);
        for tie in &ties {
            prop_assert!((best.error..=best.error + JUST_VISIBLE).contains(&tie.tried.error));
            prop_assert_eq!(tie.from_best, difference(tie.tried.healed, best.healed));
        }
        let others: Vec<f64> = found
            .ranking
            .iter()
            .filter(|tried| !listed.contains(&tried.mix))
            .map(|tried| tried.error - best.error)
            .collect();
        match found.gap() {
            Some(gap) => {
                prop_assert!(gap > JUST_VISIBLE && others.iter().all(|&worse| worse >= gap));
                prop_assert!(others.contains(&gap));
            }
            None => prop_assert!(others.is_empty()),
        }
        prop_assert_eq!(found.miss().is_none(), best.error <= tolerance);
        if let Some(miss) = found.miss() {
            prop_assert!(!miss.words.is_empty());
            prop_assert_eq!(miss.beyond, best.error - tolerance);
        }
    }
}

fn foresee(arguments: &[&str], request: &str) -> assert_cmd::assert::Assert {
    let mut command = Command::cargo_bin("healedhue").expect("the program is built");
    command.current_dir(env!("CARGO_MANIFEST_DIR")).env("NO_COLOR", "1").env_remove("COLUMNS");
    command.args(["foresee", "-"]).args(arguments).write_stdin(request.to_owned()).assert()
}

fn json(request: &str) -> serde_json::Value {
    let output = foresee(&["--json"], request).success().get_output().stdout.clone();
    serde_json::from_slice(&output).expect("the answer is JSON")
}

const EXAMPLE: &str = include_str!("../docs/examples/search.json");

#[test]
fn foresee_shows_the_ranking_in_the_terminal() {
    let output = foresee(&[], EXAMPLE).success().get_output().stdout.clone();
    insta::assert_snapshot!(String::from_utf8(output).expect("UTF-8"));
    let hopeless = r#"{"skin": {"phototype": "VI"}, "worlds": 0,
        "search": {"goal": [60, 9, 12], "palette": ["dunmere", "kelderwick"], "drops": 4}}"#;
    let output = foresee(&[], hopeless).success().get_output().stdout.clone();
    insta::assert_snapshot!(String::from_utf8(output).expect("UTF-8"));
}

/// Without a mix of its own, the answer is about the best one; with one, about that.
#[test]
fn foresee_answers_for_the_best_mix_or_for_the_one_given() {
    let searched = json(EXAMPLE);
    let search = &searched["search"];
    assert_eq!(searched["lab"], search["best"]["lab"]);
    assert!(search["mixes"].as_u64() < search["possible"].as_u64());
    assert_eq!(search["reached"], search["miss"].is_null());
    let mut given: serde_json::Value = serde_json::from_str(EXAMPLE).expect("JSON");
    given["mix"] = serde_json::json!({"wexcombe": 1});
    let given = json(&given.to_string());
    assert_eq!(given["search"], *search);
    assert_ne!(given["lab"], searched["lab"]);
}

#[test]
fn foresee_tells_the_likely_outcome_unless_told_not_to() {
    let outcome = |worlds: &str| {
        json(&format!(r#"{{"skin": {{"ita": 35}}, "mix": {{"kelderwick": 4}}{worlds}}}"#))["outcome"].clone()
    };
    let usual = outcome("");
    assert_eq!((usual["worlds"].as_u64(), usual["share"].as_f64()), (Some(256), Some(0.9)));
    assert!(usual["words"].as_str().is_some_and(|words| words.starts_with("likely within ")));
    assert_eq!(usual["region"]["axes"].as_array().map(Vec::len), Some(3));
    assert_eq!(outcome(r#", "worlds": 512"#)["worlds"], 512);
    assert!(outcome(r#", "worlds": 0"#).is_null());
}

#[test]
fn wrong_searches_in_a_request_are_refused_with_their_field() {
    for (search, words) in [
        (r#"{"goal": [45, 9, 12], "drops": 0}"#, "search.drops: `drops` is 0, outside 1 to 100"),
        (r#"{"goal": [45, 9, 12], "palette": []}"#, "search.palette: there is no bottle to mix from"),
        (
            r#"{"goal": [45, 9, 12], "palette": ["kelderwick", "emberlaw"]}"#,
            "search.palette[1]: there is no bottle `emberlaw`. Did you mean `emberlow`?",
        ),
        (r#"{"goal": [145, 9, 12]}"#, "search.goal: `L*` is 145, outside 0 to 100"),
        (r#"{"goal": [45, 9]}"#, "invalid length 2"),
        (r#"{"goal": [45, 9, 12], "bottles": 8, "drops": 30}"#, "search.drops: "),
        (r#"{"goal": [45, 9, 12], "drops": -3}"#, "invalid value: number `-3`"),
        (r#"{"palette": ["kelderwick"]}"#, "missing field `goal`"),
    ] {
        foresee(&[], &format!(r#"{{"skin": {{"phototype": "II"}}, "search": {search}}}"#))
            .code(1)
            .stdout(is_empty())
            .stderr(contains(words));
    }
    foresee(&[], r#"{"skin": {"phototype": "II"}, "worlds": 7}"#)
        .code(1)
        .stderr(contains("worlds: `worlds` is 7, outside 16 to 16384"));
}

#[test]
fn a_search_without_a_palette_mixes_what_is_meant_for_the_site() {
    let best = |site: &str| {
        let request = format!(
            r#"{{"skin": {{"phototype": "II"}}, "site": "{site}", "worlds": 0,
                "search": {{"goal": [54, 30, 10], "bottles": 1, "drops": 1}}}}"#
        );
        json(&request)["search"].clone()
    };
    let (brow, lip) = (best("brow"), best("lip"));
    let meant = |site: Site| {
        let shelf = &course().shelf;
        let free =
            |bottle: &&Bottle| bottle.is_meant_for(site) && shelf.restrictions_in(&bottle.recipe).is_empty();
        shelf.bottles.iter().filter(free).count()
    };
    assert_eq!(brow["possible"], meant(Site::Brow));
    assert_eq!(lip["possible"], meant(Site::Lip));
    assert!(
        lip["best"]["mix"].as_object().expect("a mix").contains_key("merlehurst"),
        "a coral for lips: {lip}"
    );
    assert!(!brow["best"]["mix"].as_object().expect("a mix").contains_key("merlehurst"), "{brow}");
}
