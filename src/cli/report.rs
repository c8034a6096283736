//! `healedhue report`: the report of a cohort as pages, and as tables.
//!
//! Steps: read the marked sheets ([`cohort`], the one place where they come from), make the report, write the pages and the tables.

mod tables;

use super::CourseFolder;
use super::build::{read_quietly, seconds};
use super::problem::Problem;
use crate::assess::report::{Cohort, Report, report};
use crate::render::{ReportFolder, SiteLink, TablesFolder};
use std::fs::File;
use std::io::{BufWriter, Read, Write};
use std::path::{Path, PathBuf};
use std::time::Instant;

/// Skills, misconceptions, statistics of drills and questions, and a page for each apprentice. docs/reports.md says what every figure
/// means, and shows the JSON of --marks.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Marked sheets: JSON, {"questions": [...], "sheets": [...]}; - reads standard input.
    #[arg(long, value_name = "FILE")]
    marks: PathBuf,
    /// Folder to write. It is replaced whole; a folder that is no earlier report is refused.
    #[arg(long, value_name = "FOLDER", default_value = "report")]
    out: PathBuf,
    /// Folder to write the tables into as CSV, likewise.
    #[arg(long, value_name = "FOLDER")]
    csv: Option<PathBuf>,
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
    let tables = arguments.csv.as_deref().map(TablesFolder::check).transpose()?;
    let start = Instant::now();
    let course = read_quietly(&arguments.folder)?;
    let file = &arguments.marks;
    let cohort = read_marks(file)?;
    let read = start.elapsed();
    let start = Instant::now();
    let report =
        report(&cohort, &course).map_err(|error| Problem::Input(format!("{}: {error}", file.display())))?;
    let counted = start.elapsed();
    let start = Instant::now();
    if let Some(tables) = &tables {
        tables.write(tables::tables(&report)?)?;
    }
    let Some(pages) = &pages else { return print(&report) };
    let written = pages.write(&report, site.as_ref())?;
    for sentence in report.summary.iter().chain(&report.notes) {
        println!("{sentence}");
    }
    println!(
        "{} pages, {:.1} MB in {}; read {}, counted {}, wrote {}",
        written.pages,
        written.bytes as f64 / 1e6,
        arguments.out.display(),
        seconds(read),
        seconds(counted),
        seconds(start.elapsed())
    );
    println!("open {} in a browser", arguments.out.join("index.html").display());
    Ok(())
}

/// Largest file of marked sheets, in bytes: ten thousand sheets of sixty questions take about 50 MB.
const MOST_BYTES: u64 = 500_000_000;

fn read_marks(path: &Path) -> Result<Cohort, Problem> {
    let failed = |source| Problem::File { path: path.to_owned(), source };
    let mut text = Vec::new();
    let input: Box<dyn Read> = if path.as_os_str() == "-" {
        Box::new(std::io::stdin())
    } else {
        Box::new(File::open(path).map_err(failed)?)
    };
    input.take(MOST_BYTES + 1).read_to_end(&mut text).map_err(failed)?;
    if text.len() as u64 > MOST_BYTES {
        return Err(Problem::Input(format!(
            "{}: more than the {MOST_BYTES} bytes that are read",
            path.display()
        )));
    }
    if text.trim_ascii_start().starts_with(b"[") {
        return Err(Problem::Input(format!(
            "{}: this is a list; marked sheets are an object, {{\"questions\": [...], \"sheets\": [...]}} (docs/reports.md)",
            path.display()
        )));
    }
    serde_json::from_slice(&text).or_else(|_| {
        // Once more, slower, to say which field is wrong.
        let mut reader = serde_json::Deserializer::from_slice(&text);
        serde_path_to_error::deserialize(&mut reader)
            .map_err(|error| match error.path().to_string().as_str() {
                "." | "?" => error.inner().to_string(),
                at => format!("{at}: {}", error.inner()),
            })
            .and_then(|cohort| reader.end().map(|()| cohort).map_err(|error| error.to_string()))
            .map_err(|why| Problem::Input(format!("{}: {why}", path.display())))
    })
}

fn print(report: &Report) -> Result<(), Problem> {
    let mut out = BufWriter::new(std::io::stdout().lock());
    serde_json::to_writer_pretty(&mut out, report).map_err(std::io::Error::from)?;
    writeln!(out)?;
    Ok(out.flush()?)
}
