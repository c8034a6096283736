//! The demo's papers, made once for all tests, and a small course whose papers never change.

use crate::loading::fixture::Fixture;
use crate::proofs::{PROOFS, cache, keep};
use assert_cmd::Command;
use healedhue::assess::{Key, MarkTables, Paper, PaperPool, Slip};
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;

/// A blueprint of the demo with engine questions of several forms.
pub const BLUEPRINT: &str = "module-choosing-for-the-client";

/// Its pool.
pub static POOL: LazyLock<PaperPool<'static>> = LazyLock::new(|| pool_of(BLUEPRINT));

/// The pool of a blueprint of the demo; what was proved for it is kept for the program, too.
pub fn pool_of(blueprint: &str) -> PaperPool<'static> {
    let pool = PaperPool::new(crate::demo::course(), blueprint, &PROOFS, || ())
        .unwrap_or_else(|error| panic!("{error}"));
    keep();
    pool
}

/// The program in the demo's folder, with the pool's proofs at hand.
pub fn healedhue() -> Command {
    LazyLock::force(&POOL);
    let mut command = Command::cargo_bin("healedhue").expect("the program is built");
    command.current_dir(env!("CARGO_MANIFEST_DIR")).env("NO_COLOR", "1");
    command
}

/// The same with the arguments every command here shares.
pub fn run(arguments: &[&str]) -> Command {
    let mut command = healedhue();
    command.args(arguments).arg("--cache").arg(cache());
    command
}

/// A slip whose answers are right but for every `wrong`th, which is empty or the first option.
pub fn filled(pool: &PaperPool, paper: &Paper, wrong: usize) -> Slip {
    let key = Key::new(pool, paper);
    let asked = paper.questions.iter().map(|picked| &pool.questions[picked.question]);
    let tables = MarkTables::new(pool.course, asked);
    let answers = key
        .questions()
        .enumerate()
        .map(|(at, name)| match at % wrong {
            0 => String::new(),
            1 if wrong != usize::MAX && is_letter(tables.questions[name].key()) => "A".to_owned(),
            _ => tables.questions[name].key().to_owned(),
        })
        .collect();
    Slip::new(paper.id.clone(), answers)
}

/// Whether an answer is one option: a number has one figure at times, too.
fn is_letter(answer: &str) -> bool {
    answer.len() == 1 && answer.starts_with(|first: char| first.is_ascii_uppercase())
}

/// A slip as a file.
pub fn write(folder: &Path, name: &str, slip: &Slip) -> PathBuf {
    let path = folder.join(name);
    fs::write(&path, serde_json::to_string_pretty(slip).expect("JSON")).expect("a slip");
    path
}

/// The standard output of a command that should succeed.
pub fn output(command: &mut Command) -> String {
    String::from_utf8(command.assert().success().get_output().stdout.clone()).expect("UTF-8")
}

/// A course with ten written questions and one blueprint.
pub fn small_course() -> Fixture {
    let question = |n: usize| {
        format!(
            "  - id: small-{n}\n    skill: foresee\n    ask: What is small thing {n}?\n    lesson: light\n    source: common practice, no source\n    options:\n      - {{say: Right {n}, right: true, why: It is so.}}\n      - {{say: Wrong {n}, why: It is not so., misconception: filter-of-glass}}\n      - {{say: Also wrong {n}, why: Nor is this.}}\n"
        )
    };
    let bank: String = (0..10).map(question).collect();
    Fixture::minimal().with("lessons/bank/small.yaml", format!("questions:\n{bank}")).with(
        "lessons/papers/small.yaml",
        "id: small
title: A small paper
about: Four questions.
minutes: 10
difficulty: {least: 0.3, most: 0.5}
sections:
  - {id: first, title: First part, skills: [foresee], bank: true, questions: 3, weight: 70}
  - {id: second, title: Second part, skills: [foresee], bank: true, questions: 1, weight: 30}
standard:
  basis: representative, invented for the demo
  judges:
    - {role: One judge, estimates: {first: 0.6, second: 0.5}}
    - {role: Another judge, estimates: {first: 0.7, second: 0.6}}
",
    )
}
