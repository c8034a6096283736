//! Papers for everybody on a register, in one folder: `papers/` to work on a screen, `sheets/` to print, `blank-slips/` to type answers
//! of a printed sheet into, and apart from these `keys/`.

use super::super::input::read_input;
use super::super::lines::{counted, named, print};
use super::super::problem::Problem;
use crate::assess::{
    BYTE_ORDER_MARK, Key, MarkTable, MarkTables, Paper, PaperPool, Person, Register, Slip, digest_of_kept,
    guarded,
};
use crate::render::{PaperFiles, PaperPages, PapersFolder};
use rayon::prelude::*;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// People whose papers are made at once.
const AT_ONCE: usize = 64;

/// A register and a folder to write to, before any long work.
pub(super) struct Sitting {
    register: Register,
    folder: PapersFolder,
    out: std::path::PathBuf,
}

/// What is kept beside the keys: who sat what.
#[derive(Debug, Serialize, Deserialize)]
pub(in crate::cli) struct SittingRecord {
    /// Form of this record.
    pub form: String,
    /// Version of the course.
    pub course: String,
    /// Id of the blueprint.
    pub blueprint: String,
    /// Seed of all papers.
    pub seed: u64,
    /// Who was on the register.
    pub people: Vec<Person>,
    /// Digest of every file of the folder of keys, by its path there. Papers set by earlier versions have none.
    #[serde(default)]
    pub digests: BTreeMap<String, String>,
}

impl SittingRecord {
    /// Whether a file of the folder of keys is not as it was written.
    pub fn differs(&self, path: &str, content: &[u8]) -> bool {
        self.digests.get(path).is_some_and(|digest| *digest != digest_of_kept(content))
    }
}

/// Form of the record.
pub(in crate::cli) const FORM: &str = "healedhue-sitting-1";
/// Names in the folder of keys.
pub(in crate::cli) const RECORD: &str = "register.json";
/// See [`MarkTables`].
pub(in crate::cli) const TABLES: &str = "questions.json";
/// Everybody's key in one table, for whoever marks sheets by hand.
const ANSWERS: &str = "answers.csv";

/// Folders that `paper --register` writes into the one it is given.
pub(in crate::cli) const WRITTEN: [&str; 4] = ["papers", "sheets", "blank-slips", "keys"];

/// Path of a person's key below the folder of keys, where the names of ours cannot collide with an id.
pub(in crate::cli) fn key_path(candidate: &str) -> String {
    format!("people/{candidate}.json")
}

/// Longest register that is read, in bytes: of more people than one may hold.
const MOST_BYTES: u64 = 50_000_000;

/// The register in a file; every problem of it is told in a line.
pub(in crate::cli) fn read_register(path: &Path) -> Result<Register, Problem> {
    let content = read_input(path, MOST_BYTES)?;
    Register::of_file(&content).map_err(|error| {
        let lines: Vec<String> =
            error.0.iter().map(|problem| format!("{}: {problem}", named(path))).collect();
        Problem::Input(lines.join("\nerror: "))
    })
}

impl Sitting {
    /// Reads the register and checks the folder.
    pub fn prepare(register: &Path, out: &Path, replace: bool) -> Result<Self, Problem> {
        let register = read_register(register)?;
        Ok(Sitting { register, folder: PapersFolder::check(out, replace)?, out: out.to_owned() })
    }

    /// Writes everything, or nothing.
    pub fn write(&self, pool: &PaperPool, seed: u64) -> Result<(), Problem> {
        let pages = PaperPages::new(pool)?;
        let mut groups = self.register.people.chunks(AT_ONCE);
        let mut asked = BTreeSet::new();
        let mut sat: Vec<Vec<usize>> = Vec::new();
        let mut digests = BTreeMap::new();
        let mut ends = false;
        let written = self.folder.write(|| -> Result<PaperFiles, Problem> {
            if let Some(people) = groups.next() {
                let made: Vec<(Paper, PaperFiles)> = people
                    .par_iter()
                    .map(|person| files_of(pool, &pages, person, seed))
                    .collect::<Result<_, Problem>>()?;
                let mut files = Vec::new();
                for (paper, own) in made {
                    let questions: Vec<usize> =
                        paper.questions.iter().map(|picked| picked.question).collect();
                    asked.extend(questions.iter().copied());
                    sat.push(questions);
                    files.extend(own);
                }
                digests.extend(files.iter().filter_map(digest_of_key));
                return Ok(files);
            }
            if std::mem::replace(&mut ends, true) {
                return Ok(Vec::new());
            }
            let tables = MarkTables::new(pool.course, asked.iter().map(|&place| &pool.questions[place]));
            let answers = (format!("keys/{ANSWERS}"), answers(pool, &self.register.people, &sat, &tables)?);
            let tables = (format!("keys/{TABLES}"), json(&tables)?);
            digests.extend([&tables, &answers].into_iter().filter_map(digest_of_key));
            let record = SittingRecord {
                form: FORM.to_owned(),
                course: pool.course.version.clone(),
                blueprint: pool.blueprint.id.clone(),
                seed,
                people: self.register.people.clone(),
                digests: std::mem::take(&mut digests),
            };
            Ok(vec![tables, answers, (format!("keys/{RECORD}"), json(&record)?)])
        })?;
        let out = named(&self.out);
        print(format_args!(
            "{}: papers for {}, seed {seed}, {:.1} MB in {out}",
            pool.blueprint.title,
            counted(self.register.people.len(), "person", "people"),
            written.bytes as f64 / 1e6
        ))?;
        print(format_args!(
            "to work on a screen: {out}/papers; to print: {out}/sheets; to type printed answers into: {out}/blank-slips"
        ))?;
        print(format_args!(
            "keep {out}/keys and the seed to yourself: whoever has the course can make the keys from the seed; \
             `healedhue mark SLIP… --keys {out}` marks what is handed in"
        ))
    }
}

fn files_of(
    pool: &PaperPool,
    pages: &PaperPages,
    person: &Person,
    seed: u64,
) -> Result<(Paper, PaperFiles), Problem> {
    let paper = pool.paper(&person.id, seed).map_err(|error| Problem::Input(error.to_string()))?;
    let files = vec![
        (format!("papers/{}.html", person.id), pages.page(&paper, person)?.into_bytes()),
        (format!("sheets/{}.html", person.id), pages.sheet(&paper, person)?.into_bytes()),
        (
            format!("blank-slips/{}.json", person.id),
            Slip::blank(&paper.id, paper.questions.len()).into_bytes(),
        ),
        (format!("keys/{}", key_path(&person.id)), json(&Key::new(pool, &paper))?),
    ];
    Ok((paper, files))
}

/// The key of everybody's paper as CSV: a row a question, in the order of the register. `sat` holds each person's questions.
fn answers(
    pool: &PaperPool,
    people: &[Person],
    sat: &[Vec<usize>],
    tables: &MarkTables,
) -> Result<Vec<u8>, Problem> {
    let failed = |error: csv::Error| Problem::Print(std::io::Error::other(error));
    let mut writer = csv::Writer::from_writer(BYTE_ORDER_MARK.to_vec());
    writer.write_record(["id", "name", "number", "question", "key"]).map_err(failed)?;
    for (person, questions) in people.iter().zip(sat) {
        for (number, &question) in (1..).zip(questions) {
            let question = pool.questions[question].name();
            let key = tables.questions.get(&question).map_or_else(String::new, MarkTable::key_to_read);
            let number: u32 = number;
            let row =
                [guarded(&person.id), guarded(&person.name), number.to_string(), question, guarded(&key)];
            writer.write_record(&row).map_err(failed)?;
        }
    }
    writer.into_inner().map_err(|error| Problem::Print(std::io::Error::other(error.to_string())))
}

/// Path in the folder of keys and digest of a file that belongs there.
fn digest_of_key((path, content): &(String, Vec<u8>)) -> Option<(String, String)> {
    let path = path.strip_prefix("keys/")?;
    Some((path.to_owned(), digest_of_kept(content)))
}

fn json(value: &impl Serialize) -> Result<Vec<u8>, Problem> {
    let mut bytes = serde_json::to_vec_pretty(value).map_err(|error| Problem::Print(error.into()))?;
    bytes.push(b'\n');
    Ok(bytes)
}
