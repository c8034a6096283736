//! Progress of long work, on standard error, where that is a terminal.

use crate::assess::{PaperPool, PoolError};
use crate::course::{Course, Drill};
use crate::exercise::{GenerateError, Pools, Step, pool_size, pools_from};
use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};
use std::cell::Cell;
use std::collections::BTreeMap;
use std::sync::Mutex;
use std::time::{Duration, Instant};

use super::cache::Cache;
use super::problem::Problem;

/// How long the proofs took.
pub(super) struct Timing {
    /// All of them, on the clock.
    pub wall: Duration,
    /// Each drill's share of the work, the slowest first.
    pub drills: Vec<(String, Duration)>,
}

/// A progress bar.
pub(super) fn bar(total: u64, what: &'static str) -> ProgressBar {
    let bar = ProgressBar::with_draw_target(Some(total), ProgressDrawTarget::stderr());
    if let Ok(style) = ProgressStyle::with_template("{msg} [{bar:30}] {pos}/{len} {elapsed}") {
        bar.set_style(style.progress_chars("=> "));
    }
    bar.set_message(what);
    bar
}

/// The questions of a blueprint, with a progress bar.
pub(super) fn pool_of<'c>(
    course: &'c Course,
    blueprint: &str,
    cache: &Cache,
) -> Result<PaperPool<'c>, Problem> {
    pool_or_why(course, blueprint, cache).map_err(|error| match error {
        PoolError::NoBlueprint { .. } => Problem::Use(error.to_string()),
        PoolError::TooFew { .. } | PoolError::TooFewClients { .. } => Problem::Input(error.to_string()),
    })
}

/// The questions of a blueprint, or why it has none, with a progress bar.
pub(super) fn pool_or_why<'c>(
    course: &'c Course,
    blueprint: &str,
    cache: &Cache,
) -> Result<PaperPool<'c>, PoolError> {
    let total = course.blueprint(blueprint).map_or(0, |found| PaperPool::size(course, found));
    let bar = bar(total as u64, "making questions");
    let pool = PaperPool::new(course, blueprint, &cache.proofs, || bar.inc(1));
    bar.finish_and_clear();
    cache.save();
    pool
}

thread_local! {
    static STARTED: Cell<Option<Instant>> = const { Cell::new(None) };
}

/// Proves every exercise that the lessons and the worksheets show, with a progress bar.
pub(super) fn prove(course: &Course, cache: &Cache) -> Result<(Pools, Timing), Vec<GenerateError>> {
    let total: u32 = course.drills().map(|(_, drill)| pool_size(drill)).sum();
    let bar = bar(u64::from(total), "proving exercises");
    let spent: Mutex<BTreeMap<String, Duration>> = Mutex::new(BTreeMap::new());
    let start = Instant::now();
    let made = pools_from(course, &cache.proofs, |drill: &Drill, step| match step {
        Step::Started => STARTED.set(Some(Instant::now())),
        Step::Done => {
            let took = STARTED.take().map_or(Duration::ZERO, |started| started.elapsed());
            // A poisoned lock only means that another proof panicked; the figures are still good.
            let mut spent = spent.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
            *spent.entry(drill.id.clone()).or_default() += took;
            bar.inc(1);
        }
    });
    bar.finish_and_clear();
    cache.save();
    let mut drills: Vec<(String, Duration)> =
        spent.into_inner().unwrap_or_else(std::sync::PoisonError::into_inner).into_iter().collect();
    drills.sort_by(|one, other| other.1.cmp(&one.1).then_with(|| one.0.cmp(&other.0)));
    let timing = Timing { wall: start.elapsed(), drills };
    made.map(|pools| (pools, timing))
}
