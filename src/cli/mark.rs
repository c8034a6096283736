//! `healedhue mark`: marks answer slips and writes the mark book.
//!
//! Steps: find the slips; see which of one person differ; then, for some slips at a time: read them; find the key of each paper, or make
//! the paper again from its identity; mark on all cores; record and tell one after another. A slip that is refused stops nothing: it is told in
//! a line, and the exit code is 1.

mod files;
mod keys;
mod rivals;
mod telling;

use super::CourseFolder;
use super::build::read_quietly;
use super::cache::CacheFolder;
use super::input::read_text;
use super::lines::{counted, named, print};
use super::paper::folder::unfit_register;
use super::problem::Problem;
use super::replacement::{Replacement, check_place};
use crate::assess::{MarkBook, PaperId, Recorded, Register, Slip, SlipMarks};
use files::Found;
use keys::Keys;
use rayon::prelude::*;
use rivals::Rivals;
use std::collections::HashMap;
use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};
use telling::Telling;

/// Marks answer slips: from the keys that were kept with the papers, or from papers made again. Exit code 1 if a slip is refused.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Slips: files, or folders, of which all .json and .txt files are read, those in folders below too.
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
    /// Mark slips without any answer too, of sheets that were handed in empty.
    #[arg(long)]
    empty: bool,
    /// Export all results of the mark book as CSV.
    #[arg(long, value_name = "FILE", requires = "book")]
    csv: Option<PathBuf>,
    /// Export all answers of the mark book as CSV.
    #[arg(long, value_name = "FILE", requires = "book")]
    answers_csv: Option<PathBuf>,
    /// Print JSON: {marked: [...], refused: [{file, why}], passed_over: [{file, why}]}.
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
    let files::Found { slips, passed_over, .. } = Found::among(&arguments.slips)?;
    if !arguments.json || slips.is_empty() {
        telling::passed_over(&passed_over);
    }
    if slips.is_empty() && !arguments.slips.is_empty() {
        return Err(Problem::Input(
            "there is no slip in these folders, nor in folders below: no .json and no .txt file".to_owned(),
        ));
    }
    for file in [&arguments.csv, &arguments.answers_csv].into_iter().flatten() {
        check_place(file).map_err(|source| Problem::File { path: file.clone(), source })?;
    }
    // Before a mark book is begun: without a course there is nothing to put into one.
    let course = (!slips.is_empty()).then(|| read_quietly(&arguments.folder)).transpose()?;
    let missing = arguments.book.as_ref().filter(|book| slips.is_empty() && !book.exists());
    if let Some(book) = missing {
        return Err(Problem::Input(format!("{}: there is no mark book here to export from", named(book))));
    }
    let mut book = arguments.book.as_deref().map(open_book).transpose()?;
    let mut refused = 0;
    if let Some(course) = course {
        let register = arguments.register.as_deref().map(read_register).transpose()?;
        let cache = arguments.cache.open(&arguments.folder);
        let mut keys = Keys::open(&course, arguments.keys.as_deref(), register, &cache)?;
        let out = BufWriter::new(std::io::stdout().lock());
        let mut telling = Telling::new(out, arguments.json, slips.len(), book.is_some());
        let rivals = if arguments.second_attempt {
            Rivals::none()
        } else {
            let found = Rivals::among((&slips, arguments.empty), &mut keys, book.as_ref());
            found.map_err(|error| Problem::Input(error.to_string()))?
        };
        let mut seen = Seen::new();
        telling.begin()?;
        for (chunk, some) in slips.chunks(AT_ONCE).enumerate() {
            let read: Vec<Result<Slip, String>> =
                some.par_iter().map(|path| files::slip(path, arguments.empty)).collect();
            // Papers are made again by all cores together, so before the slips are shared out.
            keys.prepare(read.iter().flatten());
            let marked: Vec<Result<(Slip, SlipMarks), String>> = read
                .into_par_iter()
                .map(|slip| slip.and_then(|slip| keys.mark(&slip).map(|marks| (slip, marks))))
                .collect();
            for (at, (path, marked)) in some.iter().zip(marked).enumerate() {
                let recorded = marked.and_then(|(slip, marks)| {
                    if let Some(why) = rivals.refused(chunk * AT_ONCE + at) {
                        return Err(why.to_owned());
                    }
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
        telling.end(&passed_over)?;
    }
    if let Some(book) = &book {
        for (file, answers) in [(&arguments.csv, false), (&arguments.answers_csv, true)] {
            if let Some(file) = file {
                export(book, file, answers)?;
                if slips.is_empty() && !arguments.json {
                    let results = book.results().map_err(|error| Problem::Input(error.to_string()))?;
                    print(format_args!(
                        "{}: {}",
                        named(file),
                        counted(results as usize, "result", "results")
                    ))?;
                }
            }
        }
    }
    if refused > 0 { Err(Problem::Reported) } else { Ok(()) }
}

/// Slips marked in this run: by paper, the first with the digest of its answers.
type Seen = HashMap<PaperId, (PathBuf, String)>;

/// Records the marks of a slip. Nobody is marked twice in one run, or recorded twice at all.
fn record(
    path: &Path,
    slip: &Slip,
    marks: &SlipMarks,
    seen: &mut Seen,
    book: Option<&mut MarkBook>,
    another: bool,
) -> Result<Option<Recorded>, String> {
    let answers = slip.answers_digest();
    let first = seen.get(&slip.paper).filter(|_| !another);
    if let Some((first, _)) = first.filter(|(_, known)| *known == answers) {
        return Err(format!("it answers like {}, which is marked: a copy", named(first)));
    }
    let recorded =
        book.map(|book| book.record(slip, marks, another)).transpose().map_err(|error| match first {
            Some((first, _)) => format!("{error}; {} is that slip", named(first)),
            None => error.to_string(),
        })?;
    seen.entry(slip.paper.clone()).or_insert_with(|| (path.to_owned(), answers));
    Ok(recorded)
}

/// Opens the mark book of a command, or begins it.
pub(super) fn open_book(path: &Path) -> Result<MarkBook, Problem> {
    check_place(path).map_err(|source| Problem::File { path: path.to_owned(), source })?;
    MarkBook::open(path).map_err(|error| Problem::Input(format!("{}: {error}", named(path))))
}

fn read_register(path: &Path) -> Result<Register, Problem> {
    Register::read(&read_text(path)?).map_err(|error| unfit_register(path, &error))
}

/// Writes an export beside the old one and moves it into its place.
fn export(book: &MarkBook, path: &Path, answers: bool) -> Result<(), Problem> {
    let failed = |source| Problem::File { path: path.to_owned(), source };
    let mut new = Replacement::begin(path).map_err(failed)?;
    let mut out = BufWriter::new(new.file());
    let written = if answers { book.answers_csv(&mut out) } else { book.results_csv(&mut out) };
    written.map_err(|error| Problem::Input(format!("{}: {error}", named(path))))?;
    out.flush().map_err(failed)?;
    drop(out);
    new.finish().map_err(failed)
}
