//! The mark book: all marks of a cohort in one SQLite file.
//!
//! Entry points: [`MarkBook::open`], [`MarkBook::record`] and the exports to CSV. Every slip is one transaction: whatever happens, a
//! result stands in the book with all its answers or not at all, and what was recorded stays. A result is known by the paper's
//! identity and its attempt, so that marking again changes nothing.

use super::marking::SlipMarks;
use super::slip::Slip;
use rusqlite::{Connection, OptionalExtension, Transaction, TransactionBehavior, params};
use sha2::{Digest, Sha256};
use std::io::Write;
use std::path::Path;
use thiserror::Error;

/// By which SQLite files of ours are known: "hhmb".
const APPLICATION: i32 = 0x6868_6d62;
/// Version of the tables.
const VERSION: i32 = 1;

/// The tables. docs/papers.md says what the columns mean.
const TABLES: &str = "
CREATE TABLE result (
    id INTEGER PRIMARY KEY,
    course TEXT NOT NULL,
    blueprint TEXT NOT NULL,
    candidate TEXT NOT NULL,
    seed INTEGER NOT NULL,
    digest TEXT NOT NULL,
    attempt INTEGER NOT NULL,
    name TEXT NOT NULL,
    slip TEXT NOT NULL,
    total REAL NOT NULL,
    pass_mark REAL NOT NULL,
    standard_error REAL NOT NULL,
    passed INTEGER NOT NULL,
    UNIQUE (course, blueprint, candidate, seed, attempt)
);
CREATE TABLE section (
    result INTEGER NOT NULL REFERENCES result (id),
    place INTEGER NOT NULL,
    section TEXT NOT NULL,
    title TEXT NOT NULL,
    weight REAL NOT NULL,
    credit REAL NOT NULL,
    PRIMARY KEY (result, place)
) WITHOUT ROWID;
CREATE TABLE answer (
    result INTEGER NOT NULL REFERENCES result (id),
    number INTEGER NOT NULL,
    section TEXT NOT NULL,
    question TEXT NOT NULL,
    skill TEXT NOT NULL,
    answer TEXT NOT NULL,
    key TEXT NOT NULL,
    credit REAL NOT NULL,
    consequence TEXT NOT NULL,
    misconception TEXT,
    lesson TEXT NOT NULL,
    PRIMARY KEY (result, number)
) WITHOUT ROWID;
";

/// Why a mark book cannot be used.
#[derive(Debug, Error)]
pub enum BookError {
    /// The file is something else.
    #[error("this file is no mark book of healedhue; nothing was changed")]
    NoBook,
    /// It was written by a later version.
    #[error(
        "this mark book was written by a later version of healedhue (its tables are of version {0}); nothing was changed"
    )]
    Later(i32),
    /// The candidate has handed in something else for this paper.
    #[error(
        "another slip of this person for this paper is in the book already, as attempt {0}; nothing was changed (--second-attempt \
         records this one too)"
    )]
    Another(u32),
    /// SQLite refused.
    #[error("the mark book: {0}")]
    Sqlite(#[from] rusqlite::Error),
    /// The export could not be written.
    #[error("the export: {0}")]
    Export(#[from] csv::Error),
}

/// What became of a result.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Recorded {
    /// It was recorded as this attempt.
    New(u32),
    /// The same slip was in the book already.
    Already(u32),
}

/// An open mark book.
#[derive(Debug)]
pub struct MarkBook {
    connection: Connection,
}

impl MarkBook {
    /// Opens a mark book, or begins one where there is no file.
    ///
    /// # Errors
    /// [`BookError`] where the file is something else, or cannot be written.
    pub fn open(path: &Path) -> Result<Self, BookError> {
        let is_new = std::fs::metadata(path).map_or(true, |found| found.len() == 0);
        let mut connection = Connection::open(path)?;
        connection.busy_timeout(std::time::Duration::from_secs(20))?;
        let pragma = |name: &str| connection.pragma_query_value(None, name, |row| row.get::<_, i32>(0));
        if !is_new {
            let known = pragma("application_id").map_err(|error| match error.sqlite_error_code() {
                Some(rusqlite::ErrorCode::NotADatabase) => BookError::NoBook,
                _ => BookError::Sqlite(error),
            })?;
            let version = pragma("user_version")?;
            // A first run that was killed before the tables stood leaves an empty database.
            let tables: i64 =
                connection.query_row("SELECT count(*) FROM sqlite_master", [], |row| row.get(0))?;
            if known != APPLICATION && tables > 0 {
                return Err(BookError::NoBook);
            }
            if version > VERSION {
                return Err(BookError::Later(version));
            }
        }
        // Appended to a log beside the file: a kill loses nothing that was committed. Where the file system cannot do that, SQLite keeps
        // to its usual journal.
        connection.pragma_update_and_check(None, "journal_mode", "WAL", |_| Ok(()))?;
        connection.pragma_update(None, "synchronous", "NORMAL")?;
        let begin = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let tables: i64 = begin.query_row("SELECT count(*) FROM sqlite_master", [], |row| row.get(0))?;
        if tables == 0 {
            begin.execute_batch(TABLES)?;
            begin.pragma_update(None, "application_id", APPLICATION)?;
            begin.pragma_update(None, "user_version", VERSION)?;
        }
        begin.commit()?;
        Ok(MarkBook { connection })
    }

    /// Records the marks of a slip, unless they are in the book. Another slip for the same paper is recorded only if `another` allows
    /// it, as a further attempt.
    ///
    /// # Errors
    /// [`BookError::Another`] where it does not; nothing has changed then.
    pub fn record(&mut self, slip: &Slip, marks: &SlipMarks, another: bool) -> Result<Recorded, BookError> {
        let answers = slip_digest(slip);
        let work = self.connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let paper = &marks.paper;
        // SQLite's whole numbers have a sign; seeds are kept below 2^53.
        let seed = i64::try_from(paper.seed).unwrap_or(i64::MAX);
        let identity = params![paper.course, paper.blueprint, paper.candidate, seed];
        let same: Option<u32> = work
            .prepare_cached(
                "SELECT attempt FROM result WHERE course = ?1 AND blueprint = ?2 AND candidate = ?3 AND seed = ?4 AND slip = ?5",
            )?
            .query_row(
                params![paper.course, paper.blueprint, paper.candidate, seed, answers],
                |row| row.get(0),
            )
            .optional()?;
        if let Some(attempt) = same {
            return Ok(Recorded::Already(attempt));
        }
        let last: u32 = work
            .prepare_cached(
                "SELECT coalesce(max(attempt), 0) FROM result WHERE course = ?1 AND blueprint = ?2 AND candidate = ?3 AND seed = ?4",
            )?
            .query_row(identity, |row| row.get(0))?;
        if last > 0 && !another {
            return Err(BookError::Another(last));
        }
        insert(&work, marks, seed, last + 1, &answers)?;
        work.commit()?;
        Ok(Recorded::New(last + 1))
    }

    /// How many results the book holds.
    ///
    /// # Errors
    /// [`BookError`] where it cannot be read.
    pub fn results(&self) -> Result<u64, BookError> {
        let count: i64 = self.connection.query_row("SELECT count(*) FROM result", [], |row| row.get(0))?;
        Ok(count.unsigned_abs())
    }

    /// Every result as CSV, a row each, with the credit of each section as text: `reading 0.75; mixing 0.5`.
    ///
    /// # Errors
    /// [`BookError`] where the book cannot be read or the export not be written.
    pub fn results_csv(&self, out: impl Write) -> Result<(), BookError> {
        self.export(
            out,
            "SELECT candidate, name, blueprint, attempt, round(total, 2) AS total, round(pass_mark, 2) AS pass_mark,
                round(standard_error, 2) AS standard_error, CASE passed WHEN 1 THEN 'yes' ELSE 'no' END AS passed,
                (SELECT group_concat(line, '; ') FROM
                    (SELECT section || ' ' || round(credit, 3) AS line FROM section WHERE result = result.id ORDER BY place)
                ) AS sections, seed, digest, course
             FROM result ORDER BY blueprint, candidate, seed, attempt",
        )
    }

    /// Every answer as CSV, a row each.
    ///
    /// # Errors
    /// As [`MarkBook::results_csv`].
    pub fn answers_csv(&self, out: impl Write) -> Result<(), BookError> {
        self.export(
            out,
            "SELECT candidate, name, blueprint, attempt, number, answer.section, question, skill, answer, key, round(credit, 4) AS credit,
                coalesce(misconception, '') AS misconception, lesson, consequence
             FROM answer JOIN result ON result.id = answer.result
             ORDER BY blueprint, candidate, seed, attempt, number",
        )
    }

    fn export(&self, out: impl Write, query: &str) -> Result<(), BookError> {
        let mut writer = csv::Writer::from_writer(out);
        let mut statement = self.connection.prepare(query)?;
        let names: Vec<String> = statement.column_names().map(str::to_owned).collect();
        writer.write_record(&names)?;
        let mut rows = statement.query([])?;
        while let Some(row) = rows.next()? {
            let mut record = Vec::with_capacity(names.len());
            for place in 0..names.len() {
                record.push(match row.get_ref(place)? {
                    rusqlite::types::ValueRef::Integer(value) => value.to_string(),
                    rusqlite::types::ValueRef::Real(value) => value.to_string(),
                    rusqlite::types::ValueRef::Text(text) => guarded(&String::from_utf8_lossy(text)),
                    _ => String::new(),
                });
            }
            writer.write_record(&record)?;
        }
        writer.flush().map_err(csv::Error::from)?;
        Ok(())
    }
}

fn insert(
    work: &Transaction,
    marks: &SlipMarks,
    seed: i64,
    attempt: u32,
    slip: &str,
) -> Result<(), BookError> {
    let paper = &marks.paper;
    work.prepare_cached(
        "INSERT INTO result (course, blueprint, candidate, seed, digest, attempt, name, slip, total, pass_mark, standard_error, passed)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12)",
    )?
    .execute(params![
        paper.course,
        paper.blueprint,
        paper.candidate,
        seed,
        paper.digest,
        attempt,
        marks.name.as_deref().unwrap_or(""),
        slip,
        marks.total,
        marks.pass_mark,
        marks.standard_error,
        marks.passed,
    ])?;
    let result = work.last_insert_rowid();
    let mut add = work.prepare_cached("INSERT INTO section VALUES (?1, ?2, ?3, ?4, ?5, ?6)")?;
    for (place, section) in marks.sections.iter().enumerate() {
        add.execute(params![
            result,
            place as i64,
            section.id,
            section.title,
            section.weight,
            section.credit
        ])?;
    }
    let mut add =
        work.prepare_cached("INSERT INTO answer VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11)")?;
    for answer in &marks.answers {
        add.execute(params![
            result,
            answer.number as i64,
            answer.section,
            answer.question,
            answer.skill,
            answer.answer,
            answer.key,
            answer.credit,
            answer.consequence,
            answer.misconception,
            answer.lesson,
        ])?;
    }
    Ok(())
}

/// Digest of a slip's answers, spaces around them left out.
fn slip_digest(slip: &Slip) -> String {
    let mut hash = Sha256::new();
    for answer in &slip.answers {
        hash.update(answer.trim().as_bytes());
        hash.update([0]);
    }
    hash.finalize().iter().take(16).map(|byte| format!("{byte:02x}")).collect()
}

/// A text that no spreadsheet takes for a formula: such a one gets an apostrophe before it (OWASP, CSV injection).
fn guarded(text: &str) -> String {
    let begins_formula = text
        .trim_start_matches(' ')
        .starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠']);
    if begins_formula { format!("'{text}") } else { text.to_owned() }
}
