//! `healedhue build`: the site and the worksheets of a course.

use super::CourseFolder;
use super::cache::CacheFolder;
use super::lines::{named, print};
use super::problem::{Problem, impossible};
use super::progress::{Timing, prove};
use super::terminal::Painter;
use crate::course::{Course, Stands, load, report};
use std::io::Write;
use std::path::PathBuf;
use std::time::{Duration, Instant};

/// Reads the course, proves every exercise and writes the site whole, or not at all.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[command(flatten)]
    folder: CourseFolder,
    /// Folder to write. It is replaced whole; a folder that healedhue did not make is refused.
    #[arg(long, value_name = "FOLDER", default_value = "public")]
    out: PathBuf,
    #[command(flatten)]
    cache: CacheFolder,
}

pub(super) fn run(arguments: &Arguments) -> Result<(), Problem> {
    let start = Instant::now();
    let (course, stands) = read(&arguments.folder)?;
    let read = start.elapsed();
    // Before the long work, so that a wrong folder is refused at once.
    crate::render::check_output(&arguments.out)?;
    let (pools, timing) = prove(&course, &arguments.cache.open(&arguments.folder))
        .map_err(|errors| impossible(&errors, &stands))?;
    let start = Instant::now();
    let written = crate::render::build_site(&course, &pools, &arguments.out)?;
    let render = start.elapsed();
    print(format_args!(
        "{}: {} pages, {:.1} MB in {}",
        course.title,
        written.pages,
        written.bytes as f64 / 1e6,
        named(&arguments.out)
    ))?;
    let exercises: usize = pools.values().map(Vec::len).sum();
    print(format_args!(
        "read the course {}, proved {exercises} exercises {}, wrote the site {}",
        seconds(read),
        seconds(timing.wall),
        seconds(render)
    ))?;
    print(slowest(&timing))?;
    print(format_args!("open {} in a browser", named(&arguments.out.join("index.html"))))
}

/// The course in a folder, and where its parts stand; its warnings are shown.
fn read(folder: &CourseFolder) -> Result<(Course, Stands), Problem> {
    let loaded = load(&folder.course);
    match loaded.course {
        Some(course) => {
            let told = report(&loaded.diagnostics, Painter::for_stderr().has_colour());
            let _ = write!(std::io::stderr(), "{told}");
            Ok((course, loaded.stands))
        }
        None => Err(Problem::Course(loaded.diagnostics)),
    }
}

/// The course in a folder, without its warnings, which are for its author.
pub(super) fn read_quietly(folder: &CourseFolder) -> Result<Course, Problem> {
    let loaded = load(&folder.course);
    loaded.course.ok_or(Problem::Course(loaded.diagnostics))
}

pub(super) fn seconds(duration: Duration) -> String {
    format!("{:.2} s", duration.as_secs_f64())
}

/// The drills that took longest to prove.
pub(super) fn slowest(timing: &Timing) -> String {
    let most: Vec<String> =
        timing.drills.iter().take(3).map(|(drill, took)| format!("{drill} {}", seconds(*took))).collect();
    if most.is_empty() { String::new() } else { format!("most of the proving: {}", most.join(", ")) }
}
