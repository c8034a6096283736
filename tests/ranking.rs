//! The head of a ranking, found without solving every mix, against all mixes solved.

use crate::demo::course;
use crate::door::{between, one_of};
use healedhue::colour::difference;
use healedhue::foresee::{Ranking, Request, Task};
use rand::{Rng, RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use serde_json::{Value, json};

fn placement(rng: &mut impl Rng) -> Value {
    json!({
        "depth_mm": between(rng, 0.0, 0.5),
        "thickness_mm": between(rng, 0.1, 0.5),
        "load": between(rng, 0.2, 2.0),
        "coverage": between(rng, 0.3, 1.0),
    })
}

/// Ids of so many bottles of the shelf, none twice.
fn bottles(rng: &mut impl Rng, count: usize) -> Vec<String> {
    let mut left: Vec<String> = course().shelf.bottles.iter().map(|bottle| bottle.id.clone()).collect();
    (0..count).map(|_| left.swap_remove(rng.random_range(0..left.len()))).collect()
}

/// A client with so many old works, for whom everything that can be mixed from so many bottles is ranked.
fn client(rng: &mut impl Rng, old: usize, palette: usize) -> Task {
    let mut existing = Vec::new();
    for _ in 0..old {
        let mix = json!({ bottles(rng, 1)[0].clone(): 1 });
        existing.push(json!({ "mix": mix, "placement": placement(rng), "months": between(rng, 1.0, 240.0) }));
    }
    let palette = bottles(rng, palette);
    // When the page shows a colour, and in between.
    let months =
        [0.0, 1.5, 12.0, 36.0, between(rng, 0.0, 1.5), between(rng, 1.5, 120.0)][rng.random_range(0..6)];
    let request = json!({
        "skin": { "phototype": one_of(rng, &["I", "II", "III", "IV", "V", "VI"]), "redness": one_of(rng, &["calm", "ruddy"]) },
        "site": one_of(rng, &["brow", "lip", "scalp"]),
        "light": one_of(rng, &["D65", "A", "FL2"]),
        "sun": one_of(rng, &["everyday", "outdoors"]),
        "months": months,
        "mix": { palette[0].clone(): 2, palette[1].clone(): 1 },
        "placement": placement(rng),
        "existing": existing,
        "worlds": 0,
        "search": {
            "goal": [between(rng, 20.0, 65.0), between(rng, 0.0, 20.0), between(rng, 0.0, 25.0)],
            "palette": palette, "bottles": 2, "drops": 6,
        },
    });
    let request = Request::from_json(&request.to_string()).expect("the request is fine");
    request.resolve(&course().shelf).expect("it can be answered")
}

/// Compares every number of the ranking with those of all mixes solved.
fn expect_exhaustive(task: &Task, what: &str) {
    let shelf = &course().shelf;
    let ranking = Ranking::of(shelf, task).expect("there is a search");
    let found = task.found(shelf).expect("there is a search");
    let colours: Vec<[f64; 3]> = ranking.first.iter().map(|tried| tried.lab).collect();
    let expected: Vec<[f64; 3]> =
        found.ranking.iter().take(12).map(|tried| [tried.healed.l, tried.healed.a, tried.healed.b]).collect();
    assert_eq!(colours, expected, "{what}");
    for (tried, expected) in ranking.first.iter().zip(&found.ranking) {
        let mix: Vec<(&str, u32)> =
            tried.mix.iter().map(|(bottle, drops)| (bottle.as_str(), *drops)).collect();
        assert_eq!(mix, expected.mix.drops().collect::<Vec<_>>(), "{what}");
        assert_eq!(tried.delta_e_2000, expected.error, "{what}");
        assert_eq!(tried.from_best, difference(expected.healed, found.best().healed), "{what}");
    }
    assert_eq!(ranking.mixes, found.mixes, "{what}");
    assert_eq!(ranking.near_ties, found.near_ties().len(), "{what}");
    assert_eq!((ranking.gap, ranking.miss), (found.gap(), found.miss()), "{what}");
    assert_eq!(ranking.untouched_delta_e_2000, found.untouched_error(), "{what}");
    let own = ranking.own.expect("the task has a mix");
    assert_eq!(
        own.nearer,
        found.ranking.iter().filter(|tried| tried.error < own.delta_e_2000).count(),
        "{what}"
    );
}

#[test]
fn prop_the_head_of_a_ranking_is_that_of_all_mixes_solved() {
    let mut rng = ChaCha8Rng::seed_from_u64(1);
    for old in 0..=4 {
        for client_no in 0..6 {
            // 1,015 mixes: enough for charts to be drawn.
            expect_exhaustive(
                &client(&mut rng, old, 14),
                &format!("client {client_no} with {old} old works"),
            );
        }
    }
}

#[test]
fn the_whole_shelf_is_ranked_as_if_every_mix_were_solved() {
    let mut rng = ChaCha8Rng::seed_from_u64(2);
    for old in [0, 0, 0, 1] {
        let all = course().shelf.bottles.len();
        expect_exhaustive(&client(&mut rng, old, all), &format!("{old} old works"));
    }
}

#[test]
fn few_mixes_and_the_best_itself_are_ranked() {
    let shelf = &course().shelf;
    let request = |mix: Value| {
        let search = json!({ "goal": [46, 8, 13], "palette": ["dunmere", "kelderwick", "emberlow", "corrick"], "drops": 5 });
        let request = json!({ "skin": { "phototype": "III" }, "mix": mix, "search": search });
        Request::from_json(&request.to_string()).unwrap().resolve(shelf).unwrap()
    };
    let task = request(json!({ "dunmere": 1 }));
    expect_exhaustive(&task, "few");
    let whole = Ranking::of(shelf, &task).unwrap();
    let own = whole.own.unwrap();
    assert!(own.nearer > 0 && own.delta_e_2000 > whole.first[0].delta_e_2000);
    let best = Ranking::of(shelf, &request(json!(whole.first[0].mix))).unwrap().own.unwrap();
    assert_eq!(
        (best.nearer, best.delta_e_2000),
        (0, whole.first[0].delta_e_2000),
        "the best mix stands first"
    );
    let none = Ranking::of(shelf, &request(json!({}))).unwrap();
    assert!(none.own.is_none() && none.near_ties == whole.near_ties);
    let without = Task { search: None, ..task };
    assert!(Ranking::of(shelf, &without).is_err(), "there is nothing to rank");
}

/// Nothing to tell apart: all mixes do nothing.
#[test]
fn work_that_covers_nothing_leaves_every_mix_a_tie() {
    let mut rng = ChaCha8Rng::seed_from_u64(3);
    let mut task = client(&mut rng, 1, 12);
    task.placement.coverage = 0.0;
    expect_exhaustive(&task, "no coverage");
}
