//! A mark book as a cohort for a report. Entry points: [`BookReader::open`], [`BookReader::cohort`].
//!
//! Nothing is changed: a book of version 1 is read as it is. Such a book does not say what options were shown, so that its misconceptions
//! count as freely shown until its slips are marked again.

use super::tables::{WITH_QUESTIONS, WITH_TIME};
use super::{BookError, ResultKind, check};
use crate::assess::report::{Cohort, OptionPut, PaperSat, Question, Sheet, SheetAnswer, SheetMark};
use rusqlite::{Connection, ErrorCode, OpenFlags};
use std::collections::{BTreeMap, BTreeSet, HashMap, HashSet};
use std::path::Path;

/// Which results of a book are wanted.
#[derive(Debug, Clone, Default)]
pub struct Selection {
    /// Ids of blueprints and assignments; all where empty.
    pub blueprints: Vec<String>,
    /// Seeds of sittings; all where empty.
    pub seeds: Vec<u64>,
}

/// Results of one blueprint and seed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SittingKept {
    /// Of papers, or of practice.
    pub kind: ResultKind,
    /// Id of the blueprint or assignment.
    pub blueprint: String,
    /// The seed.
    pub seed: u64,
    /// How many results there are.
    pub results: usize,
}

/// A mark book that is only read.
#[derive(Debug)]
pub struct BookReader {
    connection: Connection,
    version: i32,
}

/// A row of results.
struct Result1 {
    id: i64,
    kind: ResultKind,
    sheet: Sheet,
}

impl BookReader {
    /// Opens a mark book that is there.
    ///
    /// # Errors
    /// [`BookError`] where there is none, or the file is something else.
    pub fn open(path: &Path) -> Result<Self, BookError> {
        if !path.is_file() {
            return Err(BookError::Missing);
        }
        let connection = connect(path)?;
        connection.busy_timeout(std::time::Duration::from_secs(20))?;
        let version = check(&connection)?;
        Ok(BookReader { connection, version })
    }

    /// What the book holds, by kind, blueprint and seed.
    ///
    /// # Errors
    /// [`BookError`] where it cannot be read.
    pub fn sittings(&self) -> Result<Vec<SittingKept>, BookError> {
        if self.version == 0 {
            return Ok(Vec::new());
        }
        let query = format!(
            "SELECT {kind} AS kind, blueprint, seed, count(*) FROM result GROUP BY 1, 2, 3 ORDER BY 1, 2, 3",
            kind = self.kind()
        );
        let mut statement = self.connection.prepare(&query)?;
        let rows = statement.query_map([], |row| {
            Ok(SittingKept {
                kind: ResultKind::of_word(&row.get::<_, String>(0)?),
                blueprint: row.get(1)?,
                seed: row.get::<_, i64>(2)?.unsigned_abs(),
                results: row.get::<_, i64>(3)?.unsigned_abs() as usize,
            })
        })?;
        Ok(rows.collect::<Result<_, _>>()?)
    }

    /// The selected results as a cohort. The same results give the same cohort, in whatever order they were recorded.
    ///
    /// # Errors
    /// [`BookError::Empty`] where nothing was ever recorded, [`BookError::Nothing`] where the selection finds nothing, and others where the book cannot be read.
    pub fn cohort(&self, selection: &Selection) -> Result<Cohort, BookError> {
        if self.version == 0 {
            return Err(BookError::Empty);
        }
        let mut results = self.results(selection)?;
        let selects = !selection.blueprints.is_empty() || !selection.seeds.is_empty();
        if results.is_empty() && selects {
            return Err(BookError::Nothing(in_words(&self.sittings()?)));
        }
        let mut naming = Naming::new(self.questions()?);
        let mut statement = self.connection.prepare(&format!(
            "SELECT section, question, skill, credit, misconception, {}, {} FROM answer WHERE result = ?1 ORDER BY number",
            if self.version < WITH_QUESTIONS { "NULL, NULL" } else { "put, chosen" },
            self.seconds()
        ))?;
        for result in &mut results {
            let mut rows = statement.query([result.id])?;
            while let Some(row) = rows.next()? {
                let put: Option<i64> = row.get(5)?;
                let question = match put {
                    Some(id) => naming.asked(id),
                    None => naming.unknown(&row.get::<_, String>(1)?, &row.get::<_, String>(2)?),
                };
                let chosen: Option<i64> = row.get(6)?;
                let chosen = chosen.and_then(|place| usize::try_from(place).ok());
                result.sheet.answers.push(SheetAnswer {
                    question,
                    section: row.get(0)?,
                    credit: row.get(3)?,
                    misconception: if chosen.is_some() { None } else { row.get(4)? },
                    chosen,
                    seconds: row.get(7)?,
                });
            }
        }
        Ok(Cohort {
            title: String::new(),
            questions: naming.questions(),
            sheets: results.into_iter().map(|result| result.sheet).collect(),
        })
    }

    fn kind(&self) -> &'static str {
        if self.version < WITH_QUESTIONS { "'paper'" } else { "kind" }
    }

    fn seconds(&self) -> &'static str {
        if self.version < WITH_TIME { "NULL" } else { "seconds" }
    }

    fn results(&self, selection: &Selection) -> Result<Vec<Result1>, BookError> {
        if self.version == 0 {
            return Ok(Vec::new());
        }
        let mut statement = self.connection.prepare(&format!(
            "SELECT id, {kind} AS kind, course, blueprint, candidate, seed, attempt, name, total, pass_mark, standard_error,
                {seconds}
             FROM result ORDER BY 2, blueprint, candidate, seed, course, attempt",
            kind = self.kind(),
            seconds = self.seconds()
        ))?;
        let rows = statement.query_map([], |row| {
            let kind = ResultKind::of_word(&row.get::<_, String>(1)?);
            Ok(Result1 {
                id: row.get(0)?,
                kind,
                sheet: Sheet {
                    person: row.get(4)?,
                    name: row.get(7)?,
                    practice: kind == ResultKind::Practice,
                    paper: PaperSat {
                        blueprint: row.get(3)?,
                        course: row.get(2)?,
                        seed: row.get::<_, i64>(5)?.unsigned_abs(),
                        attempt: row.get(6)?,
                    },
                    mark: Some(SheetMark {
                        total: row.get(8)?,
                        pass_mark: row.get(9)?,
                        standard_error: row.get(10)?,
                    }),
                    seconds: row.get(11)?,
                    answers: Vec::new(),
                },
            })
        })?;
        let mut results: Vec<Result1> = rows.collect::<Result<_, _>>()?;
        results.retain(|result| {
            let paper = &result.sheet.paper;
            (selection.blueprints.is_empty() || selection.blueprints.contains(&paper.blueprint))
                && (selection.seeds.is_empty() || selection.seeds.contains(&paper.seed))
        });
        debug_assert!(results.is_sorted_by_key(|result| result.kind));
        Ok(results)
    }

    /// Every question of the book by its id there.
    fn questions(&self) -> Result<BTreeMap<i64, Question>, BookError> {
        if self.version < WITH_QUESTIONS {
            return Ok(BTreeMap::new());
        }
        let mut statement = self.connection.prepare("SELECT id, name, drill, skill FROM question")?;
        let rows = statement.query_map([], |row| {
            let (name, drill): (String, Option<String>) = (row.get(1)?, row.get(2)?);
            // "first-bottle 10003" of the drill "first-bottle".
            let id = if drill.is_some() { name.replacen(' ', "/", 1) } else { name };
            Ok((row.get(0)?, Question { id, drill, skill: row.get(3)?, options: Vec::new() }))
        })?;
        let mut questions: BTreeMap<i64, Question> = rows.collect::<Result<_, _>>()?;
        let mut statement = self
            .connection
            .prepare("SELECT question, say, is_right, misconception FROM option ORDER BY question, place")?;
        let mut rows = statement.query([])?;
        while let Some(row) = rows.next()? {
            if let Some(question) = questions.get_mut(&row.get::<_, i64>(0)?) {
                question.options.push(OptionPut {
                    say: row.get(1)?,
                    right: row.get(2)?,
                    misconception: row.get(3)?,
                });
            }
        }
        Ok(questions)
    }
}

/// Questions under names that are unique in the cohort.
struct Naming {
    /// All of the book's.
    kept: BTreeMap<i64, Question>,
    /// Those that were answered, by their names.
    asked: BTreeMap<String, Question>,
    names: HashMap<i64, String>,
}

impl Naming {
    /// Two questions of one name, as of two versions of a course, are told apart by a number; a drill has the skill it had last.
    fn new(mut kept: BTreeMap<i64, Question>) -> Self {
        let drills: HashSet<String> = kept.values().filter_map(|question| question.drill.clone()).collect();
        let skills: HashMap<String, String> =
            kept.values().map(|question| (question.item().to_owned(), question.skill.clone())).collect();
        let mut taken = BTreeSet::new();
        for question in kept.values_mut() {
            question.skill.clone_from(&skills[question.item()]);
            if question.drill.is_none() && drills.contains(&question.id) {
                question.id += " (question)";
            }
            let first = question.id.clone();
            let mut number = 1;
            while !taken.insert(question.id.clone()) {
                number += 1;
                question.id = format!("{first} ({number})");
            }
        }
        Naming { kept, asked: BTreeMap::new(), names: HashMap::new() }
    }

    /// The name of a question of the book.
    fn asked(&mut self, id: i64) -> String {
        if let Some(name) = self.names.get(&id) {
            return name.clone();
        }
        // A book that refers to a question it does not hold was tampered with; the report says which.
        let Some(question) = self.kept.get(&id) else { return format!("question {id}") };
        self.names.insert(id, question.id.clone());
        self.asked.insert(question.id.clone(), question.clone());
        question.id.clone()
    }

    /// The name of a question of which an old book says its name alone.
    fn unknown(&mut self, name: &str, skill: &str) -> String {
        let drill = name.rsplit_once(' ').map_or(name, |(drill, _)| drill);
        let known = self.kept.values().find(|question| question.drill.as_deref() == Some(drill));
        let skill = known.map_or(skill, |question| &question.skill).to_owned();
        let id = format!("{} (options not kept)", name.replacen(' ', "/", 1));
        self.asked.entry(id.clone()).or_insert_with(|| Question {
            id: id.clone(),
            drill: Some(drill.to_owned()),
            skill,
            options: Vec::new(),
        });
        id
    }

    fn questions(self) -> Vec<Question> {
        self.asked.into_values().collect()
    }
}

/// A connection that changes nothing but what SQLite itself tidies up beside the file; of a folder that cannot be written, one that
/// takes the file as it is.
fn connect(path: &Path) -> Result<Connection, BookError> {
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let opened = Connection::open_with_flags(path, flags).and_then(|connection| {
        connection.query_row("SELECT count(*) FROM sqlite_master", [], |_| Ok(()))?;
        Ok(connection)
    });
    let log = {
        let mut name = path.as_os_str().to_owned();
        name.push("-wal");
        Path::new(&name).exists()
    };
    match opened {
        Err(error)
            if !log
                && matches!(
                    error.sqlite_error_code(),
                    Some(ErrorCode::CannotOpen | ErrorCode::ReadOnly | ErrorCode::PermissionDenied)
                ) =>
        {
            let text = path.to_string_lossy().replace('%', "%25").replace('?', "%3f").replace('#', "%23");
            let flags = OpenFlags::SQLITE_OPEN_READ_ONLY
                | OpenFlags::SQLITE_OPEN_URI
                | OpenFlags::SQLITE_OPEN_NO_MUTEX;
            Ok(Connection::open_with_flags(format!("file:{text}?immutable=1"), flags)?)
        }
        Err(error) if error.sqlite_error_code() == Some(ErrorCode::NotADatabase) => Err(BookError::NoBook),
        other => Ok(other?),
    }
}

/// What a book holds, in words.
fn in_words(sittings: &[SittingKept]) -> String {
    let told: Vec<String> = sittings
        .iter()
        .map(|sitting| {
            let results =
                if sitting.results == 1 { "1 result" } else { &format!("{} results", sitting.results) };
            format!("{} {} (seed {}, {results})", sitting.kind.word(), sitting.blueprint, sitting.seed)
        })
        .collect();
    if told.is_empty() { "nothing".to_owned() } else { told.join(", ") }
}
