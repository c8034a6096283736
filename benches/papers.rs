//! What a paper and a slip cost, once the pool stands.

use criterion::{Criterion, criterion_group, criterion_main};
use healedhue::assess::{Key, MarkTables, PaperPool, Slip, mark_slip};
use healedhue::course::load;
use healedhue::exercise::Proofs;
use std::borrow::Cow;
use std::hint::black_box;
use std::path::Path;

fn papers(criterion: &mut Criterion) {
    let loaded = load(Path::new(env!("CARGO_MANIFEST_DIR")));
    let course = loaded.course.unwrap_or_else(|| panic!("{:?}", loaded.diagnostics));
    let kept =
        std::fs::read(Path::new(env!("CARGO_MANIFEST_DIR")).join(".healedhue/proofs")).unwrap_or_default();
    let pool = PaperPool::new(&course, "rehearsal", &Proofs::read(&kept), || ())
        .unwrap_or_else(|error| panic!("{error}"));
    let mut seed = 0;
    criterion.bench_function("a paper of 30 questions with its key", |bencher| {
        bencher.iter(|| {
            seed += 1;
            let paper = pool.paper("candidate", seed).unwrap_or_else(|error| panic!("{error}"));
            black_box((pool.paper_json(&paper), Key::new(&pool, &paper)))
        });
    });
    let paper = pool.paper("candidate", 1).unwrap_or_else(|error| panic!("{error}"));
    let key = Key::new(&pool, &paper);
    let tables = MarkTables::new(&course, &pool.questions);
    let answers = key.questions().map(|name| tables.questions[name].key().to_owned()).collect();
    let json = serde_json::to_vec(&Slip::new(paper.id.clone(), answers)).unwrap_or_default();
    criterion.bench_function("a slip of 30 answers", |bencher| {
        bencher.iter(|| {
            let slip = Slip::read(&json).unwrap_or_else(|error| panic!("{error}"));
            black_box(mark_slip(&course, &key, |name| tables.questions.get(name).map(Cow::Borrowed), &slip))
        });
    });
}

criterion_group!(benches, papers);
criterion_main!(benches);
