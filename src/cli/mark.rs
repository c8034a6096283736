//! `healedhue mark`: marks answer slips and writes the mark book.
//!
//! Slips are taken in as by every command ([`super::slips`]); what is the papers' own is the key of each, which is found, or made again with the paper
//! from its identity. A slip that is refused stops nothing: it is told in a line, and the exit code is 1.

mod export;
mod keys;
mod places;
mod telling;

use super::CourseFolder;
use super::build::read_quietly;
use super::cache::CacheFolder;
use super::lines::{counted, named, print};
use super::paper::folder::read_register;
use super::problem::Problem;
use super::replacement::check_place;
use super::slips::{Counting, Found, Handed, Intake, Marker, told_passed_over};
use crate::assess::{BookError, MarkBook, PaperId, Recorded, Slip, SlipError, SlipMarks};
use export::export;
use keys::Keys;
use places::check_exports;
use std::io::BufWriter;
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
    /// Print JSON: {marked: [...], missing: [ids], refused: [{file, why}], passed_over: [{file, why}]}.
    #[arg(long)]
    json: bool,
    #[command(flatten)]
    folder: CourseFolder,
    #[command(flatten)]
    cache: CacheFolder,
}

impl Handed for Slip {
    type Of = PaperId;
    const FOR: &'static str = "paper";
    const BLANK: &'static str = ", as on the blank slips that `paper` writes: fill it in; if the sheet was handed in empty, mark it with `--empty`";

    fn read(bytes: &[u8]) -> Result<Self, SlipError> {
        Slip::read(bytes)
    }

    fn of(&self) -> &PaperId {
        &self.paper
    }

    fn person(of: &PaperId) -> &str {
        &of.candidate
    }

    fn is_blank(&self) -> bool {
        // A page tells the time that it took, also of somebody who answered nothing.
        self.time.is_none() && self.answers.iter().all(|answer| answer.trim().is_empty())
    }

    fn answers_digest(&self) -> String {
        Slip::answers_digest(self)
    }
}

impl Marker for Keys<'_> {
    type Slip = Slip;
    type Marks = SlipMarks;

    fn prepare<'s>(&mut self, slips: impl Iterator<Item = &'s Slip>) {
        Keys::prepare(self, slips);
    }

    fn mark(&self, slip: &Slip) -> Result<SlipMarks, String> {
        Keys::mark(self, slip)
    }

    fn name(&self, of: &PaperId) -> Option<String> {
        self.name_of(&of.candidate)
    }

    fn holds(&self, book: &MarkBook, of: &PaperId) -> Result<bool, BookError> {
        book.holds(of)
    }

    fn record(
        &self,
        book: &mut MarkBook,
        slip: &Slip,
        marks: &SlipMarks,
        another: bool,
    ) -> Result<Recorded, BookError> {
        book.record(slip, marks, another)
    }
}

pub(super) fn run(arguments: &Arguments) -> Result<(), Problem> {
    if arguments.slips.is_empty() && arguments.csv.is_none() && arguments.answers_csv.is_none() {
        return Err(Problem::Use("name at least one slip, or a --csv to export".to_owned()));
    }
    let Found { slips, passed_over, .. } = if arguments.slips.is_empty() {
        Found::default()
    } else {
        Found::among(&arguments.slips, arguments.json)?
    };
    check_exports(arguments, &slips)?;
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
        let mut telling = Telling::new(out, &course, arguments.json, slips.len(), book.is_some());
        let counting = Counting { empty: arguments.empty, another: arguments.second_attempt };
        let intake = Intake::new(&mut keys, &slips, book.as_ref(), counting)?;
        telling.begin()?;
        let mut marked_now = Vec::new();
        intake.take(book.as_mut(), |path, marked| match marked {
            Ok((marks, recorded)) => {
                marked_now.push(marks.paper.clone());
                telling.marked(path, &marks, recorded)
            }
            Err(why) => {
                telling.refused(path, &why);
                Ok(())
            }
        })?;
        let missing = keys.missing(&marked_now, book.as_ref());
        let missing = missing.map_err(|error| Problem::Input(error.to_string()))?;
        refused = telling.end(&missing, &told_passed_over(&passed_over))?;
    }
    if let Some((book, book_path)) = book.as_ref().zip(arguments.book.as_deref()) {
        for (file, answers) in [(&arguments.csv, false), (&arguments.answers_csv, true)] {
            if let Some(file) = file {
                export((book, book_path), file, answers)?;
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

/// Opens the mark book of a command, or begins it.
pub(super) fn open_book(path: &Path) -> Result<MarkBook, Problem> {
    check_place(path).map_err(|source| Problem::File { path: path.to_owned(), source })?;
    MarkBook::open(path).map_err(|error| Problem::Input(format!("{}: {error}", named(path))))
}
