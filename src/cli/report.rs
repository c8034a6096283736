//! `healedhue report`: the report of a cohort as pages, and as tables.
//!
//! Steps: read the marked sheets ([`cohort`], the one place where they come from), make the report, write the pages and the tables. What is printed
//! is in the course's language, as the report's own sentences are; errors and notes are not.

mod next;
mod tables;

use super::CourseFolder;
use super::build::read_quietly;
use super::input::read_input;
use super::lines::{named, note, print};
use super::problem::Problem;
use super::whole;
use crate::assess::report::{Cohort, Report, report};
use crate::assess::{BookReader, Selection, visible};
use crate::course::{Course, Date};
use crate::handed::text_of;
use crate::json;
use crate::render::{FilesFolder, ReportFolder, SiteLink};
use crate::say;
use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

/// Skills, misconceptions, statistics of drills and questions, and a page for each apprentice. docs/reports.md says what every figure
/// means, and shows the JSON of --marks.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Mark book that `mark` or `assign --collect` wrote.
    #[arg(long, value_name = "FILE", required_unless_present = "marks", conflicts_with = "marks")]
    book: Option<PathBuf>,
    /// Of the mark book only this blueprint or assignment; may be given several times.
    #[arg(long, value_name = "ID", requires = "book")]
    blueprint: Vec<String>,
    /// Of the mark book only the sitting with this seed; may be given several times.
    #[arg(long, value_name = "N", requires = "book", value_parser = whole::<u64>(0, i64::MAX as u64),
        allow_hyphen_values = true)]
    seed: Vec<u64>,
    /// Marked sheets instead: JSON, {"questions": [...], "sheets": [...]}; - reads standard input.
    #[arg(long, value_name = "FILE")]
    marks: Option<PathBuf>,
    /// What the report is called: a group, a term.
    #[arg(long, value_name = "TEXT")]
    title: Option<String>,
    /// Folder to write. It is replaced whole; a folder that is no earlier report is refused.
    #[arg(long, value_name = "FOLDER", default_value = "report")]
    out: PathBuf,
    /// Folder to write the tables into as CSV, likewise.
    #[arg(long, value_name = "FOLDER")]
    csv: Option<PathBuf>,
    /// Folder to write assignments into, for `healedhue assign`: what each person should practise next. Needs --due.
    #[arg(long, value_name = "FOLDER", requires = "due")]
    assign: Option<PathBuf>,
    /// When they are due, as 2026-03-14.
    #[arg(long, value_name = "DATE", requires = "assign", value_parser = date)]
    due: Option<Date>,
    /// Where the study site lies, seen from the report, or its address: lessons and practice are linked then.
    #[arg(long, value_name = "LINK")]
    site: Option<String>,
    /// Print the report as JSON and write no pages.
    #[arg(long)]
    json: bool,
    #[command(flatten)]
    folder: CourseFolder,
}

pub(super) fn run(arguments: &Arguments) -> Result<(), Problem> {
    let site = match &arguments.site {
        Some(prefix) => Some(SiteLink::new(prefix).ok_or_else(|| {
            Problem::Use(format!(
                "--site {prefix:?}: give a path as a link has it, seen from the report, such as ../public, or an address that begins with \
                 https://"
            ))
        })?),
        None => None,
    };
    // Before the long work, so that a wrong folder is refused at once.
    let pages = if arguments.json { None } else { Some(ReportFolder::check(&arguments.out)?) };
    let tables = arguments.csv.as_deref().map(FilesFolder::of_tables).transpose()?;
    let assignments = arguments.assign.as_deref().map(FilesFolder::of_assignments).transpose()?;
    let start = Instant::now();
    let course = read_quietly(&arguments.folder)?;
    let (file, mut cohort) = cohort(arguments)?;
    if let Some(title) = &arguments.title {
        cohort.title.clone_from(title);
    }
    let took_to_read = start.elapsed();
    let start = Instant::now();
    let report =
        report(&cohort, &course).map_err(|error| Problem::Input(format!("{}: {error}", named(file))))?;
    let took_to_count = start.elapsed();
    let start = Instant::now();
    if let Some(tables) = &tables {
        tables.write(tables::tables(&report)?)?;
    }
    let assigned = match assignments.as_ref().zip(arguments.due) {
        Some((folder, due)) => assign(folder, &report, &course, due)?,
        None => 0,
    };
    let Some(pages) = &pages else { return print_json(&report) };
    let written = pages.write(&report, site.as_ref())?;
    for sentence in report.summary.iter().chain(&report.notes) {
        print(visible(sentence))?;
    }
    let language = &course.language;
    let seconds = |took: Duration| language.decimal(took.as_secs_f64(), 2);
    print(say!(
        language,
        "report-told-pages",
        count = written.pages,
        size = language.decimal(written.bytes as f64 / 1e6, 1),
        folder = named(&arguments.out),
        read = seconds(took_to_read),
        counted = seconds(took_to_count),
        wrote = seconds(start.elapsed())
    ))?;
    print(say!(language, "report-told-open", page = named(&arguments.out.join("index.html"))))?;
    if let Some(folder) = &arguments.assign {
        print(say!(language, "report-told-assignments", count = assigned, folder = named(folder)))?;
    }
    Ok(())
}

fn date(text: &str) -> Result<Date, String> {
    Date::read(text).ok_or_else(|| "there is no such day; write it as 2026-03-14".to_owned())
}

/// Writes what everybody should practise next as assignments, and gives how many; who is in none gets a line.
fn assign(folder: &FilesFolder, report: &Report, course: &Course, due: Date) -> Result<usize, Problem> {
    let made = next::assignments(report, course, due);
    for why in &made.left_out {
        // An id may be anybody's words.
        note(format_args!("not assigned: {}", visible(why)));
    }
    let count = made.files.len();
    folder.write(made.files.into_iter().map(|(name, text)| (name, text.into_bytes())).collect())?;
    Ok(count)
}

/// Where the marked sheets come from, and what they are.
fn cohort(arguments: &Arguments) -> Result<(&Path, Cohort), Problem> {
    if let Some(file) = &arguments.marks {
        return Ok((file, read_marks(file)?));
    }
    // One of the two is required.
    let file = arguments.book.as_deref().unwrap_or(Path::new(""));
    let selection = Selection { blueprints: arguments.blueprint.clone(), seeds: arguments.seed.clone() };
    let cohort = BookReader::open(file).and_then(|book| book.cohort(&selection));
    Ok((file, cohort.map_err(|error| Problem::Input(format!("{}: {error}", named(file))))?))
}

/// Largest file of marked sheets, in bytes: ten thousand sheets of sixty questions take about 50 MB.
const MOST_BYTES: u64 = 500_000_000;

fn read_marks(path: &Path) -> Result<Cohort, Problem> {
    let bytes = read_input(path, MOST_BYTES)?;
    let unfit = |what: &str| {
        Problem::Input(format!(
            "{}: {what}; marked sheets are an object, {{\"questions\": [...], \"sheets\": [...]}} (docs/reports.md)",
            named(path)
        ))
    };
    if bytes.starts_with(b"SQLite format 3") {
        return Err(unfit("this is a mark book, which is given with --book, or another file of SQLite"));
    }
    let text = text_of(&bytes).map_err(|error| unfit(&error.to_string()))?;
    drop(bytes);
    match text.trim_start().as_bytes() {
        [] => return Err(unfit("the file is empty")),
        [b'{', ..] => {}
        [b'[', ..] => return Err(unfit("this is a list")),
        _ => return Err(unfit("this is no JSON")),
    }
    serde_json::from_str(&text).or_else(|_| {
        // Once more, slower, to say which field is wrong.
        json::read(&text, &[]).map_err(|wrong| {
            let at = wrong.field().map_or_else(String::new, |field| format!("{field}: "));
            Problem::Input(format!("{}: {at}{}", named(path), wrong.why))
        })
    })
}

fn print_json(report: &Report) -> Result<(), Problem> {
    let mut out = BufWriter::new(std::io::stdout().lock());
    serde_json::to_writer_pretty(&mut out, report).map_err(std::io::Error::from)?;
    writeln!(out)?;
    Ok(out.flush()?)
}
