//! `healedhue report`: the report of a cohort as pages, and as tables.
//!
//! Steps: read the marked sheets ([`cohort`], the one place where they come from), make the report, write the pages and the tables.

mod next;
mod tables;

use super::CourseFolder;
use super::build::{read_quietly, seconds};
use super::input::read_input;
use super::problem::Problem;
use crate::assess::report::{Cohort, Report, report};
use crate::assess::{BookReader, Selection};
use crate::course::{Course, Date};
use crate::json;
use crate::render::{FilesFolder, ReportFolder, SiteLink};
use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};
use std::time::Instant;

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
    #[arg(long, value_name = "N", requires = "book")]
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
    /// Where the study site lies, seen from the report, or its address: lessons are linked then.
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
    let read = start.elapsed();
    let start = Instant::now();
    let report =
        report(&cohort, &course).map_err(|error| Problem::Input(format!("{}: {error}", file.display())))?;
    let counted = start.elapsed();
    let start = Instant::now();
    if let Some(tables) = &tables {
        tables.write(tables::tables(&report)?)?;
    }
    if let Some((folder, due)) = assignments.as_ref().zip(arguments.due) {
        assign(folder, &report, &course, due)?;
    }
    let Some(pages) = &pages else { return print(&report) };
    let written = pages.write(&report, site.as_ref())?;
    for sentence in report.summary.iter().chain(&report.notes) {
        println!("{sentence}");
    }
    println!(
        "{} {}, {:.1} MB in {}; read {}, counted {}, wrote {}",
        written.pages,
        if written.pages == 1 { "page" } else { "pages" },
        written.bytes as f64 / 1e6,
        arguments.out.display(),
        seconds(read),
        seconds(counted),
        seconds(start.elapsed())
    );
    println!("open {} in a browser", arguments.out.join("index.html").display());
    Ok(())
}

fn date(text: &str) -> Result<Date, String> {
    Date::read(text).ok_or_else(|| "there is no such day; write it as 2026-03-14".to_owned())
}

/// Writes what everybody should practise next as assignments; who is in none gets a line.
fn assign(folder: &FilesFolder, report: &Report, course: &Course, due: Date) -> Result<(), Problem> {
    let made = next::assignments(report, course, due);
    for why in &made.left_out {
        // An id may be anybody's words.
        let why: String =
            why.chars().map(|c| if c.is_control() { char::REPLACEMENT_CHARACTER } else { c }).collect();
        eprintln!("not assigned: {why}");
    }
    folder.write(made.files.into_iter().map(|(name, text)| (name, text.into_bytes())).collect())?;
    Ok(())
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
    Ok((file, cohort.map_err(|error| Problem::Input(format!("{}: {error}", file.display())))?))
}

/// Largest file of marked sheets, in bytes: ten thousand sheets of sixty questions take about 50 MB.
const MOST_BYTES: u64 = 500_000_000;

fn read_marks(path: &Path) -> Result<Cohort, Problem> {
    let text = read_input(path, MOST_BYTES)?;
    if text.trim_ascii_start().starts_with(b"[") {
        return Err(Problem::Input(format!(
            "{}: this is a list; marked sheets are an object, {{\"questions\": [...], \"sheets\": [...]}} (docs/reports.md)",
            path.display()
        )));
    }
    serde_json::from_slice(&text).or_else(|_| {
        // Once more, slower, to say which field is wrong.
        let text = String::from_utf8_lossy(&text);
        json::read(&text, &[]).map_err(|wrong| {
            let at = wrong.field().map_or_else(String::new, |field| format!("{field}: "));
            Problem::Input(format!("{}: {at}{}", path.display(), wrong.why))
        })
    })
}

fn print(report: &Report) -> Result<(), Problem> {
    let mut out = BufWriter::new(std::io::stdout().lock());
    serde_json::to_writer_pretty(&mut out, report).map_err(std::io::Error::from)?;
    writeln!(out)?;
    Ok(out.flush()?)
}
