//! Which key a slip is marked by: the one that was kept when its paper was set, or one made again.

use super::super::cache::Cache;
use super::super::input::read_input;
use super::super::lines::named;
use super::super::paper::folder::{FORM, RECORD, SittingRecord, TABLES, key_path};
use super::super::problem::Problem;
use super::super::progress::pool_of;
use crate::assess::{
    BookError, Key, MarkBook, MarkTable, MarkTables, PaperId, PaperPool, Register, Slip, SlipMarks,
    mark_slip, read_kept,
};
use crate::course::Course;
use std::borrow::Cow;
use std::collections::{BTreeMap, HashMap, HashSet};
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

/// What is said of a kept file that is not as `paper` wrote it.
const CHANGED: &str = "this file was changed after it was written; put it back as it was, or take it away: the paper is then made again";

/// Longest file among kept keys that is read, in bytes.
const MOST_BYTES: u64 = 500_000_000;

/// Keys of a course's papers.
pub(super) struct Keys<'c> {
    course: &'c Course,
    cache: &'c Cache,
    kept: Option<Kept>,
    /// Names by id, of everybody who may hand in; `None` where nobody said who may.
    people: Option<HashMap<String, String>>,
    /// Pools of blueprints whose papers had to be made again, or why there is none.
    pools: BTreeMap<String, Result<Again<'c>, String>>,
}

/// What was kept when papers were set.
struct Kept {
    folder: PathBuf,
    record: SittingRecord,
    /// Ids of everybody on the register.
    people: HashSet<String>,
    /// What answers are worth; `None` where the file is missing, and all papers are made again.
    tables: Option<MarkTables>,
}

/// A pool, with the mark tables made from it so far.
struct Again<'c> {
    pool: PaperPool<'c>,
    places: HashMap<String, usize>,
    tables: Vec<OnceLock<MarkTable>>,
}

impl<'c> Keys<'c> {
    /// Keys kept in a folder, if one is given.
    pub fn open(
        course: &'c Course,
        folder: Option<&Path>,
        register: Option<Register>,
        cache: &'c Cache,
    ) -> Result<Self, Problem> {
        let kept = folder.map(open).transpose()?;
        let people = register
            .map(|register| register.people)
            .or_else(|| kept.as_ref().map(|kept| kept.record.people.clone()))
            .map(|people| people.into_iter().map(|person| (person.id, person.name)).collect());
        Ok(Keys { course, cache, kept, people, pools: BTreeMap::new() })
    }

    /// Makes the pools of the blueprints whose papers these slips need made again.
    pub fn prepare<'s>(&mut self, slips: impl Iterator<Item = &'s Slip>) {
        for slip in slips {
            let paper = &slip.paper;
            let asked = self.pools.contains_key(&paper.blueprint)
                || self.course.blueprint(&paper.blueprint).is_none();
            if asked
                || paper.course != self.course.version
                || self.kept_path(paper).is_some_and(|path| path.is_file())
            {
                continue;
            }
            let pool = pool_of(self.course, &paper.blueprint, self.cache)
                .map(Again::new)
                .map_err(|error| error.to_string());
            self.pools.insert(paper.blueprint.clone(), pool);
        }
    }

    /// The marks of a slip, or why it is refused.
    pub fn mark(&self, slip: &Slip) -> Result<SlipMarks, String> {
        let paper = &slip.paper;
        if let Some(people) = &self.people
            && !people.contains_key(&paper.candidate)
        {
            return Err(format!("there is nobody with the id {:?} on the register", cut(&paper.candidate)));
        }
        let kept = self.kept.as_ref().zip(self.kept_path(paper)).filter(|(_, path)| path.is_file());
        let mut marks = match kept {
            Some((kept, path)) => {
                let key = self.kept_key(kept, &path, &paper.candidate)?;
                check_same(&key.paper, paper)?;
                let table = |name: &str| {
                    kept.tables.as_ref().and_then(|tables| tables.questions.get(name)).map(Cow::Borrowed)
                };
                mark_slip(self.course, &key, table, slip).map_err(|error| error.to_string())?
            }
            None => self.mark_again(slip)?,
        };
        marks.name = self.name_of(&paper.candidate);
        Ok(marks)
    }

    /// The name of somebody who may hand in.
    pub fn name_of(&self, candidate: &str) -> Option<String> {
        self.people.as_ref()?.get(candidate).cloned()
    }

    /// Ids and names of those on the register of whom nothing was marked, neither now nor, where there is a book, before; by id. None where nobody
    /// said who may hand in, or the slips that were marked are of several sittings.
    pub fn missing(
        &self,
        marked: &[PaperId],
        book: Option<&MarkBook>,
    ) -> Result<Vec<(String, String)>, BookError> {
        let (Some(people), Some(sitting)) = (&self.people, marked.first()) else { return Ok(Vec::new()) };
        let is_same = |paper: &PaperId| {
            (&paper.course, &paper.blueprint, paper.seed)
                == (&sitting.course, &sitting.blueprint, sitting.seed)
        };
        if !marked.iter().all(is_same) {
            return Ok(Vec::new());
        }
        let handed: HashSet<&String> = marked.iter().map(|paper| &paper.candidate).collect();
        let mut missing = BTreeMap::new();
        for (id, name) in people.iter().filter(|(id, _)| !handed.contains(id)) {
            let paper = PaperId { candidate: id.clone(), ..sitting.clone() };
            if !book.map(|book| book.holds(&paper)).transpose()?.unwrap_or(false) {
                missing.insert(id.clone(), name.clone());
            }
        }
        Ok(missing.into_iter().collect())
    }

    /// A kept key, as it was written.
    fn kept_key(&self, kept: &Kept, path: &Path, candidate: &str) -> Result<Key, String> {
        let unfit = |why: &str| format!("the key {}: {why}", named(path));
        let bytes = read_input(path, MOST_BYTES).map_err(|error| format!("the key {error}"))?;
        if kept.record.differs(&key_path(candidate), &bytes) {
            return Err(unfit(CHANGED));
        }
        let key = Key::read(&bytes).map_err(|error| unfit(&error.to_string()))?;
        let blueprint = self.course.blueprint(&key.paper.blueprint);
        let differs = blueprint
            .filter(|_| key.paper.course == self.course.version)
            .and_then(|blueprint| key.differs_from(blueprint));
        match differs {
            Some(field) => Err(unfit(&format!(
                "`{field}` is not as in the blueprint of this course, from which the paper was set; put back the file as it was written, or \
                 take it away: the paper is then made again"
            ))),
            None => Ok(key),
        }
    }

    /// Marks by a paper made again from its identity.
    fn mark_again(&self, slip: &Slip) -> Result<SlipMarks, String> {
        let paper = &slip.paper;
        if let Some(kept) = &self.kept
            && (kept.record.seed != paper.seed || kept.record.blueprint != paper.blueprint)
        {
            return Err(format!(
                "the slip names the paper {:?} of seed {}; the papers of these keys are {:?} of seed {}",
                cut(&paper.blueprint),
                paper.seed,
                kept.record.blueprint,
                kept.record.seed
            ));
        }
        if paper.course != self.course.version {
            return Err(format!(
                "its paper was set from the version {} of a course, and this one is {}: mark it with the keys kept then, or with the \
                 course as it was",
                version(&paper.course),
                version(&self.course.version)
            ));
        }
        let again = match self.pools.get(&paper.blueprint) {
            Some(Ok(again)) => again,
            Some(Err(error)) => return Err(error.clone()),
            None => return Err(format!("the course has no blueprint {:?}", cut(&paper.blueprint))),
        };
        let made = again.pool.paper(&paper.candidate, paper.seed).map_err(|error| error.to_string())?;
        check_same(&made.id, paper)?;
        let key = Key::new(&again.pool, &made);
        mark_slip(self.course, &key, |name| again.table(name), slip).map_err(|error| error.to_string())
    }

    /// Where the key of a paper is kept, if it was.
    fn kept_path(&self, paper: &PaperId) -> Option<PathBuf> {
        let kept = self.kept.as_ref()?;
        // A slip's id leads to a file only if a register knows it, so that it cannot name one elsewhere.
        (kept.tables.is_some() && kept.people.contains(&paper.candidate))
            .then(|| kept.folder.join(key_path(&paper.candidate)))
    }
}

impl<'c> Again<'c> {
    fn new(pool: PaperPool<'c>) -> Self {
        let places =
            pool.questions.iter().enumerate().map(|(place, question)| (question.name(), place)).collect();
        let tables = pool.questions.iter().map(|_| OnceLock::new()).collect();
        Again { pool, places, tables }
    }

    fn table(&self, name: &str) -> Option<Cow<'_, MarkTable>> {
        let place = *self.places.get(name)?;
        let exercise = &self.pool.questions[place].exercise;
        Some(Cow::Borrowed(self.tables[place].get_or_init(|| MarkTable::new(self.pool.course, exercise))))
    }
}

/// What was kept in a folder, or in its folder `keys`.
fn open(folder: &Path) -> Result<Kept, Problem> {
    let inner = folder.join("keys");
    let folder = if inner.join(RECORD).is_file() { inner } else { folder.to_owned() };
    let read = |name: &str| {
        let path = folder.join(name);
        read_input(&path, MOST_BYTES)
    };
    let unfit = |name: &str, why: String| Problem::Input(format!("{}: {why}", named(&folder.join(name))));
    if !folder.join(RECORD).is_file() {
        return Err(Problem::Input(format!(
            "{}: there are no keys here: no {RECORD}, nor one in a folder `keys`; name the folder that `paper --register` wrote",
            named(&folder)
        )));
    }
    let record: SittingRecord = read_kept(&read(RECORD)?)
        .map_err(|error| unfit(RECORD, format!("the register kept with the keys: {error}")))?;
    if record.form != FORM {
        return Err(unfit(
            RECORD,
            format!("this is a register of the form {:?}, which is not read", record.form),
        ));
    }
    let tables = match read(TABLES) {
        Ok(bytes) if record.differs(TABLES, &bytes) => return Err(unfit(TABLES, CHANGED.to_owned())),
        Ok(bytes) => Some(MarkTables::read(&bytes).map_err(|error| unfit(TABLES, error.to_string()))?),
        Err(Problem::File { source, .. }) if source.kind() == std::io::ErrorKind::NotFound => None,
        Err(other) => return Err(other),
    };
    let people = record.people.iter().map(|person| person.id.clone()).collect();
    Ok(Kept { folder, record, people, tables })
}

/// Whether a slip is for the paper that was set.
fn check_same(set: &PaperId, slip: &PaperId) -> Result<(), String> {
    if set.course != slip.course {
        return Err(format!(
            "it is for the version {} of the course; the papers of these keys were set from {}: mark it with the keys kept when its own was \
             set",
            version(&slip.course),
            version(&set.course)
        ));
    }
    if set == slip {
        return Ok(());
    }
    let differs = if set.seed != slip.seed
        || set.blueprint != slip.blueprint
        || set.candidate != slip.candidate
    {
        "the slip names another paper than the one set for this person"
    } else {
        "the questions on the slip are not those of this paper: it was changed, or the paper was made by another version of healedhue"
    };
    Err(format!(
        "{differs} (slip: {:?} {} {}; set: {:?} {} {})",
        cut(&slip.blueprint),
        slip.seed,
        cut(&slip.digest),
        set.blueprint,
        set.seed,
        set.digest
    ))
}

fn version(version: &str) -> String {
    version.chars().take(12).collect()
}

fn cut(text: &str) -> String {
    text.chars().take(40).collect()
}
