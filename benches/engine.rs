//! How fast the engine is. `cargo bench --bench engine`; what was measured, on what, stands in docs/benchmarks.md.

use criterion::{BatchSize, Criterion, Throughput, criterion_group, criterion_main};
use healedhue::Cores;
use healedhue::colour::{Lab, Light};
use healedhue::course::{Course, load};
use healedhue::foresee::{Request, Task};
use healedhue::healing::{HEALED_MONTHS, Placement, Scene};
use healedhue::pigment::{Mix, Paint};
use healedhue::search::{Goal, Palette, Search};
use healedhue::skin::{Prior, Site, fit_spectrum};
use healedhue::wasm::Door;
use std::hint::black_box;
use std::path::Path;

fn demo() -> Course {
    load(Path::new(env!("CARGO_MANIFEST_DIR"))).course.expect("the demo course is whole")
}

/// Different paints, so that nothing can be remembered from one to the next.
fn paints(course: &Course) -> Vec<Paint> {
    let bottles: Vec<&str> = ["dunmere", "kelderwick", "wexcombe", "corrick"].to_vec();
    (1..=6u32)
        .flat_map(|drops| {
            bottles.iter().map(move |bottle| {
                Mix::new([((*bottle).to_owned(), drops), ("emberlow".to_owned(), 7 - drops)])
            })
        })
        .map(|mix| course.shelf.paint_of(&mix))
        .collect()
}

fn healed_colour(c: &mut Criterion) {
    let course = demo();
    let paints = paints(&course);
    let mut group = c.benchmark_group("healed colour");
    group.throughput(Throughput::Elements(paints.len() as u64));
    for (name, id) in [("bare skin", "ansa"), ("old work", "kerrin")] {
        let client = course.client(id).expect("the client exists");
        let (works, placement) = (client.works(), Placement::default());
        group.bench_function(format!("cold client, {name}"), |b| {
            b.iter(|| {
                for paint in &paints {
                    let scene = Scene::new(
                        &course.shelf,
                        black_box(&client.skin),
                        client.site,
                        &works,
                        HEALED_MONTHS,
                    );
                    black_box(Light::D65.lab_of(&scene.with(paint, &placement)));
                }
            });
        });
        let scene = Scene::new(&course.shelf, &client.skin, client.site, &works, HEALED_MONTHS);
        let trial = scene.trial(&placement);
        group.bench_function(format!("warm client, {name}"), |b| {
            b.iter(|| {
                for paint in &paints {
                    black_box(Light::D65.lab_of(&trial.with(black_box(paint))));
                }
            });
        });
    }
    group.finish();
}

fn ranking(c: &mut Criterion) {
    let course = demo();
    let client = course.client("ansa").expect("the client exists");
    let palette = Palette {
        bottles: course.shelf.bottles.iter().take(16).map(|bottle| bottle.id.clone()).collect(),
        most_bottles: 3,
        drops: 7,
    };
    let goal = Goal { lab: Lab::new(46.0, 8.0, 13.0), tolerance: 4.0 };
    let search = Search::new(&course.shelf, goal, palette).expect("the palette is fine");
    let scene = Scene::new(&course.shelf, &client.skin, client.site, &[], HEALED_MONTHS);
    let mixes = search.run(&scene, &Placement::default(), Light::D65, Cores::All).ranking.len() as u64;
    let mut group = c.benchmark_group("ranking");
    group.sample_size(10).throughput(Throughput::Elements(mixes));
    for (name, cores) in [("one core", Cores::One), ("all cores", Cores::All)] {
        group.bench_function(name, |b| {
            b.iter(|| search.run(&scene, &Placement::default(), Light::D65, cores));
        });
    }
    group.finish();
}

fn fit(c: &mut Criterion) {
    let course = demo();
    let client = course.client("ansa").expect("the client exists");
    let bare = Scene::new(&course.shelf, &client.skin, Site::Brow, &[], HEALED_MONTHS).bare();
    c.bench_function("fit of a spectrum", |b| {
        b.iter(|| fit_spectrum(black_box(&bare), Site::Brow, &Prior::anybody()));
    });
}

fn task(course: &Course, text: &str) -> Task {
    Request::from_json(text).expect("the request is fine").resolve(&course.shelf).expect("it can be answered")
}

fn outcome(c: &mut Criterion) {
    let course = demo();
    let task = task(&course, r#"{"skin": {"phototype": "II"}, "mix": {"kelderwick": 4, "emberlow": 2}}"#);
    let expected = task.at(&course.shelf, task.months).1.lab;
    let mut group = c.benchmark_group("region of outcomes");
    group.sample_size(20);
    group.bench_function("256 worlds", |b| b.iter(|| task.outcome(&course.shelf, black_box(expected))));
    group.finish();
}

/// The text door, natively: what a browser asks for one healed colour without a region.
fn door(c: &mut Criterion) {
    let course = demo();
    let shelf = serde_json::to_string(&course.shelf).expect("a shelf is JSON");
    // For benches/browser.mjs, which asks the kept WebAssembly file the same.
    let kept = concat!(env!("CARGO_TARGET_TMPDIR"), "/shelf.json");
    std::fs::write(kept, &shelf).unwrap_or_else(|error| panic!("{kept}: {error}"));
    let request = r#"{"skin": {"phototype": "II"}, "mix": {"kelderwick": 4, "emberlow": 2}, "worlds": 0}"#;
    c.bench_function("one request through the browser's door, native", |b| {
        b.iter_batched_ref(
            || {
                let mut door = Door::default();
                door.shelf(&shelf).expect("the shelf is fine");
                door
            },
            |door| door.foresee(black_box(request)),
            BatchSize::LargeInput,
        );
    });
}

criterion_group!(benches, healed_colour, ranking, fit, outcome, door);
criterion_main!(benches);
