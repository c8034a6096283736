//! Reports at the public edge: figures that are the library's, words that people read, names that are only names, and the odd cohorts.

mod alone;
pub mod cohort;
mod command;
mod figures;
mod names;
mod odd;

use crate::site::{decoded, files, pages, tags};
use cohort::{Plan, simulated};
use healedhue::assess::report::{Cohort, Report, report};
use healedhue::course::{Course, load};
use healedhue::render::ReportFolder;
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::LazyLock;

static COURSE: LazyLock<Course> =
    LazyLock::new(|| load(Path::new(env!("CARGO_MANIFEST_DIR"))).course.expect("the demo course is whole"));

/// A cohort large enough for every statistic, with everybody's belief.
static COHORT: LazyLock<(Cohort, Vec<String>)> =
    LazyLock::new(|| simulated(&COURSE, Plan { people: 90, drills: 8, of_each: 3, bank: 6, seed: 4 }));

static REPORT: LazyLock<Report> =
    LazyLock::new(|| report(&COHORT.0, &COURSE).expect("the cohort is in order"));

static PAGES: LazyLock<BTreeMap<String, String>> = LazyLock::new(|| written(&REPORT));

/// The pages of a report.
fn written(report: &Report) -> BTreeMap<String, String> {
    let folder = tempfile::tempdir().expect("a folder");
    let out = folder.path().join("report");
    ReportFolder::check(&out).expect("a new folder").write(report, None).expect("it is written");
    pages(&files(&out))
}

/// The pages of a cohort.
fn pages_of(cohort: &Cohort) -> BTreeMap<String, String> {
    written(&report(cohort, &COURSE).expect("the cohort is in order"))
}

/// What is read on a page: its text without tags, spaces run together.
fn text(page: &str) -> String {
    let body = page.split_once("<main").expect("a page has a main part").1;
    let mut text = String::new();
    for part in body.split('<').skip(1) {
        let (tag, words) = part.split_once('>').unwrap_or(("", part));
        if !tag.starts_with("title") && !tag.starts_with("desc") {
            text.push_str(words);
        }
        text.push(' ');
    }
    decoded(&text).split_whitespace().collect::<Vec<_>>().join(" ")
}
