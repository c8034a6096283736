//! `healedhue mark`: marks answer slips and writes the mark book.
//!
//! Steps, for some slips at a time: read them; find the key of each paper, or make the paper again from its identity; mark on all
//! cores; record and tell one after another. A slip that is refused stops nothing: it is told in a line, and the exit code is 1.

mod files;
mod keys;
mod telling;

use super::CourseFolder;
use super::build::read_quietly;
use super::cache::CacheFolder;
use super::input::read_text;
use super::problem::Problem;
use crate::assess::{MarkBook, Recorded, Register, Slip, SlipMarks};
use keys::Keys;
use rayon::prelude::*;
use std::collections::HashMap;
use std::fs::File;
use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};
use telling::Telling;

/// Marks answer slips: from the keys that were kept with the papers, or from papers made again. Exit code 1 if a slip is refused.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Slips: files, or folders of .json and .txt files.
    #[arg(value_name = "SLIP")]
    slips: Vec<PathBuf>,
    /// Folder that `paper --register` wrote, or its folder of keys.
    #[arg(long, value_name = "FOLDER")]
    keys: Option<PathBuf>,
    /// CSV with the columns id and name: who may hand in. Without it, the register kept with the keys says so.
    #[arg(long, value_name = "FILE")]
    register: Option<PathBuf>,
    /// Mark book to record the marks in; it is begun where there is none.
    #[arg(long, value_name = "FILE")]
    book: Option<PathBuf>,
    /// Record another slip of a person for the same paper as a further attempt.
    #[arg(long, requires = "book")]
    second_attempt: bool,
    /// Export all results of the mark book as CSV.
    #[arg(long, value_name = "FILE", requires = "book")]
    csv: Option<PathBuf>,
    /// Export all answers of the mark book as CSV.
    #[arg(long, value_name = "FILE", requires = "book")]
    answers_csv: Option<PathBuf>,
    /// Print JSON: {marked: [...], refused: [{file, why}]}.
    #[arg(long)]
    json: bool,
    #[command(flatten)]
    folder: CourseFolder,
    #[command(flatten)]
    cache: CacheFolder,
}

/// Slips read and marked at once: the most that are in memory together.
const AT_ONCE: usize = 256;

pub(super) fn run(arguments: &Arguments) -> Result<(), Problem> {
    if arguments.slips.is_empty() && arguments.csv.is_none() && arguments.answers_csv.is_none() {
        return Err(Problem::Use("name at least one slip, or a --csv to export".to_owned()));
    }
    let slips = files::all(&arguments.slips)?;
    // Before a mark book is begun: without a course there is nothing to put into one.
    let course = (!slips.is_empty()).then(|| read_quietly(&arguments.folder)).transpose()?;
    let mut book = arguments.book.as_deref().map(open_book).transpose()?;
    let mut refused = 0;
    if let Some(course) = course {
        let register = arguments.register.as_deref().map(read_register).transpose()?;
        let cache = arguments.cache.open(&arguments.folder);
        let mut keys = Keys::open(&course, arguments.keys.as_deref(), register, &cache)?;
        let out = BufWriter::new(std::io::stdout().lock());
        let mut telling = Telling::new(out, arguments.json, slips.len());
        let mut seen: HashMap<(String, String), PathBuf> = HashMap::new();
        telling.begin()?;
        for some in slips.chunks(AT_ONCE) {
            let read: Vec<Result<Slip, String>> = some.par_iter().map(|path| files::slip(path)).collect();
            // Papers are made again by all cores together, so before the slips are shared out.
            keys.prepare(read.iter().flatten());
            let marked: Vec<Result<(Slip, SlipMarks), String>> = read
                .into_par_iter()
                .map(|slip| slip.and_then(|slip| keys.mark(&slip).map(|marks| (slip, marks))))
                .collect();
            for (path, marked) in some.iter().zip(marked) {
                let recorded = marked.and_then(|(slip, marks)| {
                    let recorded =
                        record(path, &slip, &marks, &mut seen, book.as_mut(), arguments.second_attempt)?;
                    Ok((marks, recorded))
                });
                match recorded {
                    Ok((marks, recorded)) => telling.marked(path, &marks, recorded)?,
                    Err(why) => {
                        refused += 1;
                        telling.refused(path, &why)?;
                    }
                }
            }
        }
        telling.end()?;
    }
    if let Some(book) = &book {
        for (file, answers) in [(&arguments.csv, false), (&arguments.answers_csv, true)] {
            if let Some(file) = file {
                export(book, file, answers)?;
            }
        }
    }
    if refused > 0 { Err(Problem::Reported) } else { Ok(()) }
}

/// Records the marks of a slip. Nobody is marked twice in one run, or recorded twice at all.
fn record(
    path: &Path,
    slip: &Slip,
    marks: &SlipMarks,
    seen: &mut HashMap<(String, String), PathBuf>,
    book: Option<&mut MarkBook>,
    another: bool,
) -> Result<Option<Recorded>, String> {
    let who = (slip.paper.blueprint.clone(), slip.paper.candidate.clone());
    if let Some(first) = seen.get(&who)
        && !another
    {
        return Err(format!("`{}` has a slip among these already: {}", who.1, first.display()));
    }
    let recorded =
        book.map(|book| book.record(slip, marks, another)).transpose().map_err(|error| error.to_string())?;
    seen.insert(who, path.to_owned());
    Ok(recorded)
}

/// Opens the mark book of a command, or begins it.
pub(super) fn open_book(path: &Path) -> Result<MarkBook, Problem> {
    MarkBook::open(path).map_err(|error| Problem::Input(format!("{}: {error}", path.display())))
}

fn read_register(path: &Path) -> Result<Register, Problem> {
    Register::read(&read_text(path)?).map_err(|error| {
        let lines: Vec<String> =
            error.0.iter().map(|problem| format!("{}: {problem}", path.display())).collect();
        Problem::Input(lines.join("\nerror: "))
    })
}

/// Writes an export beside the old one and moves it into its place.
fn export(book: &MarkBook, path: &Path, answers: bool) -> Result<(), Problem> {
    let failed = |source| Problem::File { path: path.to_owned(), source };
    let folder = path.parent().filter(|parent| !parent.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let mut file = tempfile::Builder::new().prefix(".export-").tempfile_in(folder).map_err(failed)?;
    let mut out = BufWriter::new(file.as_file_mut());
    let written = if answers { book.answers_csv(&mut out) } else { book.results_csv(&mut out) };
    written.map_err(|error| Problem::Input(format!("{}: {error}", path.display())))?;
    out.flush().map_err(failed)?;
    drop(out);
    let _: File = file.persist(path).map_err(|error| failed(error.error))?;
    Ok(())
}
