//! How many exercises are newly proved in a second. `cargo bench --bench proofs`; what was measured, on what, stands in
//! docs/papers.md.
//!
//! Every drill whose exercises carry a proof makes exercises nobody made before, all drills in turn, on all cores; then each family by
//! itself on one. A single run is long enough to be its own statistics, so it is timed here and not by a harness.

use healedhue::course::{Course, Drill, Family, Lesson, load};
use healedhue::exercise::generate;
use rayon::prelude::*;
use std::collections::BTreeMap;
use std::path::Path;
use std::time::Instant;

/// Numbers of the pools from here on are made by this benchmark alone.
const FIRST: u32 = 700_000;
/// Exercises of each drill.
const OF_EACH: u32 = 8;

fn main() {
    let course = load(Path::new(env!("CARGO_MANIFEST_DIR"))).course.expect("the demo course is whole");
    // Drills whose answer the engine computes; a remedy may be decided by a caution, and is still tried.
    let proved: Vec<(&Lesson, &Drill)> = course
        .drills()
        .filter(|(lesson, drill)| {
            generate(&course, lesson, drill, FIRST - 1).is_ok_and(|exercise| exercise.proof.is_some())
        })
        .collect();
    let wanted: Vec<(&Lesson, &Drill, u32)> = (FIRST..FIRST + OF_EACH)
        .flat_map(|number| proved.iter().map(move |&(lesson, drill)| (lesson, drill, number)))
        .collect();
    let start = Instant::now();
    let made: Vec<(Family, f64)> = wanted
        .par_iter()
        .filter_map(|&(lesson, drill, number)| make(&course, lesson, drill, number))
        .collect();
    let all = start.elapsed().as_secs_f64();
    println!(
        "all families, {} cores: {} exercises in {all:.1} s, {:.1} a second",
        rayon::current_num_threads(),
        made.len(),
        made.len() as f64 / all
    );
    let mut families: BTreeMap<String, (usize, f64)> = BTreeMap::new();
    for (family, seconds) in made {
        let entry = families.entry(format!("{family:?}").to_lowercase()).or_default();
        *entry = (entry.0 + 1, entry.1 + seconds);
    }
    for (family, (count, seconds)) in families {
        println!("{family}: {count} exercises, {:.1} ms each on its core", 1e3 * seconds / count as f64);
    }
}

/// Makes an exercise; how long that took, in seconds. One whose verdict needed no proof does not count.
fn make(course: &Course, lesson: &Lesson, drill: &Drill, number: u32) -> Option<(Family, f64)> {
    let start = Instant::now();
    let exercise = generate(course, lesson, drill, number).ok()?;
    exercise.proof.is_some().then(|| (drill.family, start.elapsed().as_secs_f64()))
}
