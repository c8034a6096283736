//! The tables of a mark book, and how older ones become these. Entry point: [`bring_up_to_date`]. docs/papers.md says what the
//! columns mean.

use super::BookError;
use rusqlite::{Connection, Transaction, TransactionBehavior};

/// By which SQLite files of ours are known: "hhmb".
pub(super) const APPLICATION: i32 = 0x6868_6d62;
/// Version of the tables.
pub(super) const VERSION: i32 = 3;
/// The first version that knows what was put.
pub(super) const WITH_QUESTIONS: i32 = 2;
/// The first version that knows how long it took.
pub(super) const WITH_TIME: i32 = 3;

/// Results. `{name}` is what the table is called.
const RESULT: &str = "
CREATE TABLE {name} (
    id INTEGER PRIMARY KEY,
    kind TEXT NOT NULL,
    course TEXT NOT NULL,
    blueprint TEXT NOT NULL,
    candidate TEXT NOT NULL,
    seed INTEGER NOT NULL,
    digest TEXT NOT NULL,
    attempt INTEGER NOT NULL,
    name TEXT NOT NULL,
    slip TEXT NOT NULL,
    total REAL NOT NULL,
    pass_mark REAL,
    standard_error REAL,
    passed INTEGER,
    seconds INTEGER,
    UNIQUE (kind, course, blueprint, candidate, seed, attempt)
);
";

/// Questions as they were put, each once.
const QUESTIONS: &str = "
CREATE TABLE question (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    drill TEXT,
    skill TEXT NOT NULL,
    digest TEXT NOT NULL,
    UNIQUE (name, digest)
);
CREATE TABLE option (
    question INTEGER NOT NULL REFERENCES question (id),
    place INTEGER NOT NULL,
    say TEXT NOT NULL,
    is_right INTEGER NOT NULL,
    misconception TEXT,
    PRIMARY KEY (question, place)
) WITHOUT ROWID;
";

const SECTIONS_AND_ANSWERS: &str = "
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
    put INTEGER REFERENCES question (id),
    chosen INTEGER,
    seconds INTEGER,
    PRIMARY KEY (result, number)
) WITHOUT ROWID;
";

/// Makes the tables where there are none, and those of earlier versions into these; whatever ends it, the book is as it was or as it should be.
pub(super) fn bring_up_to_date(connection: &mut Connection) -> Result<(), BookError> {
    // Replacing a table others refer to needs this; it cannot be said within a transaction.
    connection.pragma_update(None, "foreign_keys", "OFF")?;
    let work = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
    let tables: i64 = work.query_row("SELECT count(*) FROM sqlite_master", [], |row| row.get(0))?;
    // Asked again now that nobody else can write.
    let version: i32 = work.pragma_query_value(None, "user_version", |row| row.get(0))?;
    if tables == 0 {
        work.execute_batch(&RESULT.replace("{name}", "result"))?;
        work.execute_batch(QUESTIONS)?;
        work.execute_batch(SECTIONS_AND_ANSWERS)?;
        work.pragma_update(None, "application_id", APPLICATION)?;
        work.pragma_update(None, "user_version", VERSION)?;
    } else if version > VERSION {
        return Err(BookError::Later(version));
    } else if version < VERSION {
        if version < WITH_QUESTIONS {
            from_the_first(&work)?;
        } else {
            work.execute_batch("ALTER TABLE result ADD COLUMN seconds INTEGER;")?;
        }
        work.execute_batch("ALTER TABLE answer ADD COLUMN seconds INTEGER;")?;
        work.pragma_update(None, "user_version", VERSION)?;
    }
    work.commit()?;
    connection.pragma_update(None, "foreign_keys", "ON")?;
    Ok(())
}

/// Version 1 had papers only, and did not know what options a question showed.
fn from_the_first(work: &Transaction) -> Result<(), BookError> {
    work.execute_batch(&RESULT.replace("{name}", "new_result"))?;
    work.execute_batch(
        "INSERT INTO new_result
            SELECT id, 'paper', course, blueprint, candidate, seed, digest, attempt, name, slip, total, pass_mark, standard_error,
                passed, NULL
            FROM result;
         DROP TABLE result;
         ALTER TABLE new_result RENAME TO result;",
    )?;
    work.execute_batch(QUESTIONS)?;
    work.execute_batch(
        "ALTER TABLE answer ADD COLUMN put INTEGER REFERENCES question (id);
         ALTER TABLE answer ADD COLUMN chosen INTEGER;",
    )?;
    let strays = work.prepare("PRAGMA foreign_key_check")?.query_map([], |_| Ok(()))?.count();
    if strays > 0 { Err(BookError::Damaged(strays)) } else { Ok(()) }
}
