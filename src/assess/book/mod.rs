//! The mark book: all marks of a cohort in one SQLite file.
//!
//! Entry points: [`MarkBook::open`], [`MarkBook::record`], [`MarkBook::record_practice`] and the exports to CSV (`export`);
//! [`BookReader`] reads a book for a report and changes nothing. Every slip is one transaction: whatever happens, a result stands in the
//! book with all its answers or not at all, and what was recorded stays. A result is known by the paper's identity and its attempt, so
//! that marking again changes nothing. The tables stand in `tables`.

mod entry;
mod export;
mod reader;
mod tables;

pub(crate) use export::EXPORT_HEAD;
pub use reader::{BookReader, Selection, SittingKept};

use super::assigned::SlipMarked;
use super::marking::SlipMarks;
use super::slip::Slip;
use crate::course::Assignment;
use entry::Entry;
use rusqlite::Connection;
use std::collections::HashMap;
use std::path::Path;
use tables::{APPLICATION, VERSION};
use thiserror::Error;

/// Why a mark book cannot be used.
#[derive(Debug, Error)]
pub enum BookError {
    /// The file is something else.
    #[error("this file is no mark book of healedhue; nothing was changed")]
    NoBook,
    /// There is none.
    #[error("there is no mark book here")]
    Missing,
    /// A first run was killed before anything was recorded.
    #[error("nothing is recorded in this mark book yet")]
    Empty,
    /// Its tables do not fit together.
    #[error("this mark book is damaged: {0} of its rows belong to no result; nothing was changed")]
    Damaged(usize),
    /// Nothing in it is what was asked for.
    #[error("nothing in this mark book is what was asked for; it holds {0}")]
    Nothing(String),
    /// It was written by a later version.
    #[error(
        "this mark book was written by a later version of healedhue (its tables are of version {0}); nothing was changed"
    )]
    Later(i32),
    /// The person has handed in something else for this paper or assignment.
    #[error(
        "another slip of this person for this {} is in the book already, as attempt {attempt} with {total:.1}%; that one stays \
         (--second-attempt records this one too)",
        kind.of()
    )]
    Another {
        /// What it is of.
        kind: ResultKind,
        /// The last attempt in the book.
        attempt: u32,
        /// Its mark, percent.
        total: f64,
    },
    /// SQLite refused.
    #[error("the mark book: {}", refusal(.0))]
    Sqlite(#[from] rusqlite::Error),
    /// The export could not be written.
    #[error("the export: {0}")]
    Export(#[from] csv::Error),
}

/// Why SQLite refused, in the words of this program where it has some.
fn refusal(error: &rusqlite::Error) -> String {
    use rusqlite::ErrorCode;
    match error.sqlite_error_code() {
        Some(ErrorCode::CannotOpen) => {
            "it cannot be opened here: the folder is missing or may not be read".to_owned()
        }
        Some(ErrorCode::ReadOnly | ErrorCode::PermissionDenied) => "it may not be written".to_owned(),
        Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => {
            "another program is writing it; try again when that has ended".to_owned()
        }
        Some(ErrorCode::DiskFull) => "no room is left on the disk".to_owned(),
        Some(ErrorCode::DatabaseCorrupt) => {
            "the file is damaged; take the last copy that was whole".to_owned()
        }
        _ => error.to_string(),
    }
}

/// Tries again while another program is in the way, up to twenty seconds: when the kind of journal changes SQLite does not wait by itself.
fn patiently<T>(mut work: impl FnMut() -> rusqlite::Result<T>) -> rusqlite::Result<T> {
    use rusqlite::ErrorCode::{DatabaseBusy, DatabaseLocked};
    for _ in 0..400 {
        match work() {
            Err(error) if matches!(error.sqlite_error_code(), Some(DatabaseBusy | DatabaseLocked)) => {
                std::thread::sleep(std::time::Duration::from_millis(50));
            }
            done => return done,
        }
    }
    work()
}

/// What became of a result.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Recorded {
    /// It was recorded as this attempt.
    New(u32),
    /// The same slip was in the book already.
    Already(u32),
}

/// What a result is of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ResultKind {
    /// A paper.
    Paper,
    /// A set of exercises that was assigned.
    Practice,
}

impl ResultKind {
    /// As it stands in the book.
    pub fn word(self) -> &'static str {
        match self {
            ResultKind::Paper => "paper",
            ResultKind::Practice => "practice",
        }
    }

    /// What slips of it are handed in for.
    fn of(self) -> &'static str {
        match self {
            ResultKind::Paper => "paper",
            ResultKind::Practice => "assignment",
        }
    }

    fn of_word(word: &str) -> Self {
        if word == ResultKind::Practice.word() { ResultKind::Practice } else { ResultKind::Paper }
    }
}

/// An open mark book.
#[derive(Debug)]
pub struct MarkBook {
    connection: Connection,
    /// Ids of questions that are in the book, by name and digest.
    known: HashMap<(String, String), i64>,
}

impl MarkBook {
    /// Opens a mark book, or begins one where there is no file, for its owner alone to read. The tables of an older one are brought up to date, in one transaction.
    ///
    /// # Errors
    /// [`BookError`] where the file is something else, or cannot be written.
    pub fn open(path: &Path) -> Result<Self, BookError> {
        let is_new = std::fs::metadata(path).map_or(true, |found| found.len() == 0);
        begin(path);
        let mut connection = Connection::open(path)?;
        connection.busy_timeout(std::time::Duration::from_secs(20))?;
        if !is_new {
            check(&connection)?;
        }
        // Appended to a log beside the file: a kill loses nothing that was committed. Where the file system cannot do that, SQLite keeps
        // to its usual journal.
        patiently(|| connection.pragma_update_and_check(None, "journal_mode", "WAL", |_| Ok(())))?;
        connection.pragma_update(None, "synchronous", "NORMAL")?;
        tables::bring_up_to_date(&mut connection)?;
        Ok(MarkBook { connection, known: HashMap::new() })
    }

    /// Records the marks of a slip, unless they are in the book. Another slip for the same paper is recorded only if `another` allows
    /// it, as a further attempt.
    ///
    /// # Errors
    /// [`BookError::Another`] where it does not; nothing has changed then.
    pub fn record(&mut self, slip: &Slip, marks: &SlipMarks, another: bool) -> Result<Recorded, BookError> {
        self.enter(&Entry::of_paper(slip, marks), another)
    }

    /// Records the marks of an assigned set of exercises, likewise.
    ///
    /// # Errors
    /// As [`MarkBook::record`].
    pub fn record_practice(
        &mut self,
        assignment: &Assignment,
        marked: &SlipMarked,
        another: bool,
    ) -> Result<Recorded, BookError> {
        self.enter(&Entry::of_practice(assignment, marked), another)
    }

    /// How many results the book holds.
    ///
    /// # Errors
    /// [`BookError`] where it cannot be read.
    pub fn results(&self) -> Result<u64, BookError> {
        let count: i64 = self.connection.query_row("SELECT count(*) FROM result", [], |row| row.get(0))?;
        Ok(count.unsigned_abs())
    }
}

/// Makes an empty file for a book that is not there yet: what SQLite makes itself, others may read. What it keeps beside the book may be read by whoever may
/// read that. Where the file cannot be made, SQLite says why.
fn begin(path: &Path) {
    let mut new = std::fs::File::options();
    new.write(true).create_new(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut new, 0o600);
    drop(new.open(path));
}

/// Whether a file that is there is a mark book that can be read; the version of its tables, 0 where there are none yet.
fn check(connection: &Connection) -> Result<i32, BookError> {
    let pragma = |name: &str| connection.pragma_query_value(None, name, |row| row.get::<_, i32>(0));
    let known = pragma("application_id").map_err(|error| match error.sqlite_error_code() {
        Some(rusqlite::ErrorCode::NotADatabase) => BookError::NoBook,
        _ => BookError::Sqlite(error),
    })?;
    let version = pragma("user_version")?;
    // A first run that was killed before the tables stood leaves an empty database.
    let tables: i64 = connection.query_row("SELECT count(*) FROM sqlite_master", [], |row| row.get(0))?;
    if known != APPLICATION && tables > 0 {
        return Err(BookError::NoBook);
    }
    if version > VERSION { Err(BookError::Later(version)) } else { Ok(version) }
}
