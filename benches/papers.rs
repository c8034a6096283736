//! What ten thousand people cost: their papers of sixty questions assembled from a warm pool, and their slips marked. `cargo bench --bench
//! papers`; what was measured stands in docs/benchmarks.md.

use criterion::{Criterion, criterion_group, criterion_main};
use healedhue::assess::{Key, MarkTables, Paper, PaperPool, Slip, mark_slip};
use healedhue::course::{Course, load};
use healedhue::exercise::Proofs;
use rayon::prelude::*;
use std::borrow::Cow;
use std::hint::black_box;
use std::path::Path;

const PEOPLE: u64 = 10_000;

/// Questions of the rehearsal's sections, sixty in all.
const SIXTY: [u32; 7] = [9, 13, 8, 6, 10, 7, 7];

/// The demo with the rehearsal cut to sixty questions.
fn course() -> Course {
    let loaded = load(Path::new(env!("CARGO_MANIFEST_DIR")));
    let mut course = loaded.course.unwrap_or_else(|| panic!("{:?}", loaded.diagnostics));
    let mut sixty = course.blueprint("rehearsal").expect("the rehearsal").clone();
    sixty.id = "sixty".to_owned();
    for (section, questions) in sixty.sections.iter_mut().zip(SIXTY) {
        section.questions = questions;
    }
    course.blueprints.push(sixty);
    course
}

fn papers(criterion: &mut Criterion) {
    let course = course();
    let kept =
        std::fs::read(Path::new(env!("CARGO_MANIFEST_DIR")).join(".healedhue/proofs")).unwrap_or_default();
    let pool = PaperPool::new(&course, "sixty", &Proofs::read(&kept), || ())
        .unwrap_or_else(|error| panic!("{error}"));
    let paper =
        |seed: u64| -> Paper { pool.paper("candidate", seed).unwrap_or_else(|error| panic!("{error}")) };
    let mut seed = 0;
    criterion.bench_function("a paper of 60 questions with its key", |bencher| {
        bencher.iter(|| {
            seed += 1;
            let paper = paper(seed);
            black_box((pool.paper_json(&paper), Key::new(&pool, &paper)))
        });
    });
    let tables = MarkTables::new(&course, &pool.questions);
    let slips: Vec<(Key, Vec<u8>)> = (0..PEOPLE)
        .into_par_iter()
        .map(|seed| {
            let paper = paper(seed);
            let key = Key::new(&pool, &paper);
            let answers = key.questions().map(|name| tables.questions[name].key().to_owned()).collect();
            let slip = serde_json::to_vec(&Slip::new(paper.id, answers)).unwrap_or_default();
            (key, slip)
        })
        .collect();
    let mark = |(key, json): &(Key, Vec<u8>)| {
        let slip = Slip::read(json).unwrap_or_else(|error| panic!("{error}"));
        black_box(mark_slip(&course, key, |name| tables.questions.get(name).map(Cow::Borrowed), &slip))
            .is_ok()
    };
    criterion.bench_function("a slip of 60 answers", |bencher| bencher.iter(|| mark(&slips[0])));
    let mut group = criterion.benchmark_group("10,000 people, 60 questions, all cores");
    group.sample_size(10);
    group.bench_function("papers with their keys", |bencher| {
        bencher.iter(|| {
            (0..PEOPLE)
                .into_par_iter()
                .map(|seed| {
                    let paper = paper(seed);
                    pool.paper_json(&paper).len() + Key::new(&pool, &paper).sections.len()
                })
                .sum::<usize>()
        });
    });
    group.bench_function("slips marked", |bencher| {
        bencher.iter(|| slips.par_iter().filter(|slip| mark(slip)).count());
    });
    group.finish();
}

criterion_group!(benches, papers);
criterion_main!(benches);
