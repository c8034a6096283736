//! `healedhue paper`: one paper of a blueprint, or one for each person on a register.

pub(super) mod folder;

use super::CourseFolder;
use super::build::read_quietly;
use super::cache::CacheFolder;
use super::lines::{counted, note};
use super::problem::Problem;
use super::progress::pool_of;
use super::terminal::hung;
use super::whole;
use crate::assess::{Key, MarkTables, Paper, PaperPool, survey, visible};
use crate::course::Blueprint;
use serde::Serialize;
use std::io::Write;
use std::path::PathBuf;

/// The same course, blueprint, candidate and seed give the same paper, byte for byte, on every machine.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Id of the blueprint: the name of a file in lessons/papers; its path will do, too.
    #[arg(value_parser = blueprint)]
    blueprint: String,
    /// Seed, up to 9007199254740991. Without it, a single paper has the course's seed, and a register one that nobody can foresee.
    #[arg(long, value_name = "N", value_parser = whole::<u64>(0, MOST_SEED), allow_hyphen_values = true)]
    seed: Option<u64>,
    /// Who sits it.
    #[arg(long, value_name = "ID", default_value = "anybody", value_parser = candidate)]
    candidate: String,
    /// Print the paper as JSON, without any key.
    #[arg(long, conflicts_with_all = ["register", "survey"])]
    json: bool,
    /// Print the key instead, as JSON.
    #[arg(long, conflicts_with_all = ["register", "survey"])]
    key: bool,
    /// CSV with the columns id and name: write a paper for each person.
    #[arg(long, value_name = "FILE", requires = "out")]
    register: Option<PathBuf>,
    /// Folder for the papers, which must be new or empty.
    #[arg(long, value_name = "FOLDER", requires = "register")]
    out: Option<PathBuf>,
    /// Replace papers that were written into this folder before.
    #[arg(long, requires = "register")]
    replace: bool,
    /// Print how alike the papers of so many seeds are.
    #[arg(long, value_name = "COUNT", conflicts_with = "register", value_parser = whole::<u64>(1, 1_000_000),
        allow_hyphen_values = true)]
    survey: Option<u64>,
    #[command(flatten)]
    folder: CourseFolder,
    #[command(flatten)]
    cache: CacheFolder,
}

/// Greatest whole number that JSON carries everywhere.
const MOST_SEED: u64 = (1 << 53) - 1;

/// The id of a blueprint that is named by its file, or as it is.
fn blueprint(text: &str) -> Result<String, std::convert::Infallible> {
    let id = text.strip_suffix(".yaml").map(|path| path.rsplit(['/', '\\']).next().unwrap_or(path));
    Ok(id.unwrap_or(text).to_owned())
}

/// Whoever sits a paper alone may be called anything that can be seen.
fn candidate(text: &str) -> Result<String, String> {
    let seen = !text.trim().is_empty() && visible(text) == text;
    if seen { Ok(text.to_owned()) } else { Err("give an id of characters that can be seen".to_owned()) }
}

pub(super) fn run(arguments: &Arguments) -> Result<(), Problem> {
    let course = read_quietly(&arguments.folder)?;
    let sitting = match (&arguments.register, &arguments.out) {
        (Some(register), Some(out)) => Some(folder::Sitting::prepare(register, out, arguments.replace)?),
        _ => None,
    };
    let cache = arguments.cache.open(&arguments.folder);
    let pool = pool_of(&course, &arguments.blueprint, &cache)?;
    for idle in &pool.idle {
        note(format_args!("warning: {idle}"));
    }
    if let Some(sitting) = sitting {
        return sitting.write(&pool, arguments.seed.unwrap_or_else(unforeseeable));
    }
    let mut out = std::io::stdout().lock();
    let input = |error: crate::assess::AssembleError| Problem::Input(error.to_string());
    let seed = arguments.seed.unwrap_or(course.seed & MOST_SEED);
    if let Some(count) = arguments.survey {
        write!(out, "{}", survey(&pool, seed, count).map_err(input)?)?;
        return Ok(());
    }
    let paper = pool.paper(&arguments.candidate, seed).map_err(input)?;
    if arguments.key {
        serde_json::to_writer_pretty(&mut out, &WholeKey::new(&pool, &paper))
            .map_err(std::io::Error::from)?;
        writeln!(out)?;
    } else if arguments.json {
        write!(out, "{}", pool.paper_json(&paper))?;
    } else {
        write!(out, "{}", listing(&pool, &paper))?;
    }
    Ok(())
}

/// A key with the mark tables of its questions.
#[derive(Serialize)]
struct WholeKey {
    key: Key,
    marks: MarkTables,
}

impl WholeKey {
    fn new(pool: &PaperPool, paper: &Paper) -> Self {
        let asked = paper.questions.iter().map(|picked| &pool.questions[picked.question]);
        WholeKey { key: Key::new(pool, paper), marks: MarkTables::new(pool.course, asked) }
    }
}

/// A seed that nobody can foresee.
fn unforeseeable() -> u64 {
    use std::hash::{BuildHasher, Hasher};
    // The standard library keys its hash tables from the system's randomness.
    std::collections::hash_map::RandomState::new().build_hasher().finish() & MOST_SEED
}

/// The questions of a paper in words.
fn listing(pool: &PaperPool, paper: &Paper) -> String {
    let blueprint: &Blueprint = pool.blueprint;
    let head = format!(
        "{}\n{}, {}, pass mark {:.1}%, difficulty {:.3}\npaper {}, candidate {}, seed {}\n",
        blueprint.title,
        counted(blueprint.minutes as usize, "minute", "minutes"),
        counted(paper.questions.len(), "question", "questions"),
        blueprint.pass_mark(),
        paper.difficulty,
        paper.id.digest,
        paper.id.candidate,
        paper.id.seed,
    );
    let mut text: String = head.lines().map(|line| hung(line, 2) + "\n").collect();
    let mut number = 0;
    let mut told = None;
    for (place, section) in blueprint.sections.iter().enumerate() {
        if let Some(case) = section.case.filter(|_| told != section.case) {
            let client = &pool.course.clients[paper.clients[case]];
            let case = format!("{}: {}, {}", blueprint.cases[case].title, client.name, client.age);
            text += &format!("\n{}\n", hung(&case, 2));
        }
        told = section.case;
        text += &format!("\n{}\n", hung(&format!("{} ({}%)", section.title, section.weight), 2));
        for picked in paper.questions.iter().filter(|picked| picked.section == place) {
            number += 1;
            let label = format!("  {number}. ");
            let ask = format!("{label}{}", pool.questions[picked.question].exercise.ask);
            text += &(hung(&ask, label.len()) + "\n");
        }
    }
    text
}
