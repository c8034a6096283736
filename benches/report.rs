//! How fast a report is: ten thousand sheets of sixty questions. `cargo bench --bench report`; what was measured stands in
//! docs/reports.md. With `HEALEDHUE_COHORT=FILE` the cohort is also written there, for `healedhue report --marks FILE`.

#[path = "../tests/report/cohort.rs"]
mod cohort;

use cohort::{Plan, simulated};
use criterion::{Criterion, criterion_group, criterion_main};
use healedhue::assess::report::{Cohort, report};
use healedhue::course::load;
use healedhue::render::ReportFolder;
use std::hint::black_box;
use std::path::Path;

fn ten_thousand_sheets(c: &mut Criterion) {
    let course = load(Path::new(env!("CARGO_MANIFEST_DIR"))).course.expect("the demo course is whole");
    let plan = Plan { people: 10_000, drills: 12, of_each: 3, bank: 24, seed: 1 };
    let (cohort, _) = simulated(&course, plan);
    let json = serde_json::to_vec(&cohort).expect("a cohort is JSON");
    if let Some(path) = std::env::var_os("HEALEDHUE_COHORT") {
        std::fs::write(path, &json).expect("the file can be written");
    }
    let folder = tempfile::tempdir().expect("a temporary folder");
    let made = report(&cohort, &course).expect("the cohort is in order");
    let mut group = c.benchmark_group("10,000 sheets of 60 questions");
    group.sample_size(10);
    group.bench_function("read", |b| {
        b.iter(|| serde_json::from_slice::<Cohort>(black_box(&json)).expect("a cohort"));
    });
    group.bench_function("count", |b| b.iter(|| report(black_box(&cohort), &course).expect("in order")));
    group.bench_function("write the pages", |b| {
        b.iter(|| {
            let out = ReportFolder::check(&folder.path().join("report")).expect("a new folder");
            out.write(black_box(&made), None).expect("it is written")
        });
    });
    group.finish();
}

criterion_group!(benches, ten_thousand_sheets);
criterion_main!(benches);
