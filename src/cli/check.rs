//! `healedhue check`: reads a course, proves every drill and says what it does not cover, without writing anything.

use super::CourseFolder;
use super::build::{seconds, slowest};
use super::cache::{Cache, CacheFolder};
use super::problem::{GIVE_MORE, Problem, told, unsatisfied};
use super::progress::{pool_or_why, prove};
use super::terminal::{Painter, fitted, hung, width};
use crate::assess::IdleDrill;
use crate::course::coverage::Coverage;
use crate::course::{Course, Diagnostic, Drill, Severity, Stands, load};
use crate::exercise::{Exercise, Pools};
use std::io::{IsTerminal, Write};

/// Reports every problem with file, line and column; exit code 1 if there is an error.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[command(flatten)]
    folder: CourseFolder,
    /// Print the problems as a JSON array of {file, line, column, severity, message, help}; gaps are among them.
    #[arg(long)]
    json: bool,
    /// Show everything that was counted for the coverage, not only the gaps; with --json, print {problems, coverage}.
    #[arg(long)]
    coverage: bool,
    /// Gaps in what the course covers are errors, as with `strict = true` in book.toml.
    #[arg(long)]
    strict: bool,
    /// Make the questions of every blueprint too, which takes longer the first time: names drills that give a paper nothing, and sections that too
    /// few questions are left for. Without it this is told of blueprints with cases alone.
    #[arg(long)]
    papers: bool,
    #[command(flatten)]
    cache: CacheFolder,
}

pub(super) fn run(arguments: &Arguments) -> Result<(), Problem> {
    let loaded = load(&arguments.folder.course);
    let mut diagnostics = loaded.diagnostics;
    let mut proved = None;
    if let Some(course) = &loaded.course {
        let cache = arguments.cache.open(&arguments.folder);
        match prove(course, &cache) {
            Ok(made) => proved = Some((course, made)),
            Err(errors) => diagnostics.extend(unsatisfied(&errors, &loaded.stands)),
        }
        diagnostics.extend(of_papers(course, &cache, &loaded.stands, arguments.papers));
    }
    let covered = loaded.course.as_ref().map(|course| (course, Coverage::of(course)));
    let gaps = covered.as_ref().map(|(_, coverage)| coverage.gaps()).unwrap_or_default();
    let strict = arguments.strict || loaded.course.as_ref().is_some_and(|course| course.strict);
    let mut out = std::io::stdout().lock();
    let is_terminal = out.is_terminal();
    if arguments.json {
        let severity = if strict { Severity::Error } else { Severity::Warning };
        diagnostics.extend(gaps.iter().map(|gap| gap.diagnostic(severity, &loaded.stands)));
        let coverage = covered.as_ref().map(|(_, coverage)| coverage);
        let written = if arguments.coverage {
            let all = serde_json::json!({ "problems": diagnostics, "coverage": coverage });
            serde_json::to_writer_pretty(&mut out, &all)
        } else {
            serde_json::to_writer_pretty(&mut out, &diagnostics)
        };
        written.map_err(std::io::Error::from)?;
        writeln!(out)?;
    } else {
        let coloured = is_terminal && Painter::for_stderr().has_colour();
        write!(out, "{}", told(&diagnostics, coloured, is_terminal))?;
        if let Some((course, (pools, timing))) = &proved {
            write!(out, "{}", table(course, pools))?;
            let took = format!("proved in {}; {}", seconds(timing.wall), slowest(timing));
            writeln!(out, "{}", fitted(&took, is_terminal))?;
        }
        if let Some((course, coverage)) = &covered {
            writeln!(out)?;
            if arguments.coverage {
                writeln!(out, "{}", fitted(&super::coverage::full(course, coverage), is_terminal))?;
            }
            write!(out, "{}", fitted(&super::coverage::gaps(&gaps, &loaded.stands), is_terminal))?;
        }
    }
    let has_error = diagnostics.iter().any(|diagnostic| diagnostic.severity == Severity::Error);
    if has_error || strict && !gaps.is_empty() {
        return Err(Problem::Reported);
    }
    Ok(())
}

/// What is amiss with the questions of blueprints, which is known once they are made: of those with cases, or of `all`. Where too few are left, or
/// too few clients can carry a case, is an error; a drill that gives nothing while others fill its section is told.
fn of_papers(course: &Course, cache: &Cache, stands: &Stands, all: bool) -> Vec<Diagnostic> {
    let mut found = Vec::new();
    for blueprint in course.blueprints.iter().filter(|blueprint| all || !blueprint.cases.is_empty()) {
        match pool_or_why(course, &blueprint.id, cache) {
            Ok(pool) => found.extend(pool.idle.iter().map(|idle| gives_nothing(idle, stands))),
            Err(error) => {
                let (stands_at, what) = error.parts();
                found.push(stands.diagnostic(stands_at, Severity::Error, what));
            }
        }
    }
    found
}

/// A drill that gives a section nothing, as a problem at the place where it stands.
fn gives_nothing(idle: &IdleDrill, stands: &Stands) -> Diagnostic {
    let mut diagnostic = stands.diagnostic(&idle.stands_at, Severity::Warning, idle.reasons());
    let helps = [
        (idle.unproved > 0, GIVE_MORE),
        (
            idle.outside.is_some(),
            "widen the section's `difficulty`, or name other `drills` or `skills` there",
        ),
    ];
    let helps: Vec<&str> = helps.iter().filter(|(applies, _)| *applies).map(|(_, help)| *help).collect();
    diagnostic.help(helps.join("; "));
    diagnostic
}

/// What was proved of a drill, in the words of the table.
struct Row<'c> {
    drill: &'c str,
    family: &'static str,
    shown: usize,
    on_worksheet: usize,
    margin: String,
    held: String,
    discarded: String,
}

impl Row<'_> {
    fn of<'c>(drill: &'c Drill, exercises: &[Exercise]) -> Row<'c> {
        let proofs: Vec<_> = exercises.iter().filter_map(|exercise| exercise.proof.as_ref()).collect();
        let margin = proofs.iter().filter_map(|proof| proof.margin).fold(f64::INFINITY, f64::min);
        let held =
            proofs.iter().map(|proof| f64::from(proof.held) / f64::from(proof.worlds)).fold(1.0, f64::min);
        let discarded: u32 = proofs.iter().map(|proof| proof.discarded).sum();
        let none = || "-".to_owned();
        let (margin, held, discarded) = if proofs.is_empty() {
            ("written".to_owned(), none(), none())
        } else {
            let margin = if margin.is_finite() { format!("{margin:.1}") } else { none() };
            (margin, format!("{:.1}%", held * 100.0), discarded.to_string())
        };
        let shown = exercises.len().min(drill.exercises as usize);
        let on_worksheet = exercises.len() - shown;
        Row { drill: &drill.id, family: drill.family.word(), shown, on_worksheet, margin, held, discarded }
    }

    /// Where a table is too wide.
    fn in_words(&self) -> String {
        let Row { drill, family, shown, on_worksheet, margin, held, discarded } = self;
        let places = format!("{drill} ({family}): {shown} in lesson, {on_worksheet} on worksheet");
        let proved = match margin.as_str() {
            "written" => "written".to_owned(),
            _ => format!("margin ΔE00 {margin}, worlds {held}, {discarded} thrown away"),
        };
        hung(&format!("{places}; {proved}"), 2)
    }
}

/// What was proved, a line a drill; in words where the terminal is too narrow for the table.
fn table(course: &Course, pools: &Pools) -> String {
    let rows: Vec<Row> = course
        .drills()
        .map(|(_, drill)| Row::of(drill, pools.get(&drill.id).map_or(&[], Vec::as_slice)))
        .collect();
    let wide = rows.iter().map(|row| row.drill.chars().count()).max().unwrap_or(0).max("drill".len());
    let line = |cells: [&str; 7]| {
        let [drill, family, shown, on_worksheet, margin, held, discarded] = cells;
        let line = format!(
            "{drill:wide$} {family:9} {shown:>6} {on_worksheet:>9} {margin:>7} {held:>6} {discarded:>6}"
        );
        line.trim_end().to_owned() + "\n"
    };
    let head = [
        ["", "", "in", "on", "margin", "", "thrown"],
        ["drill", "family", "lesson", "worksheet", "ΔE00", "worlds", "away"],
    ]
    .map(line)
    .concat();
    if head.lines().any(|line| line.chars().count() > width()) {
        return rows.iter().map(|row| row.in_words() + "\n").collect();
    }
    let body = rows.iter().map(|row| {
        let (shown, on_worksheet) = (row.shown.to_string(), row.on_worksheet.to_string());
        line([row.drill, row.family, &shown, &on_worksheet, &row.margin, &row.held, &row.discarded])
    });
    body.fold(head, |text, line| text + &line)
}
