//! The README's walk, from an empty folder to a mark book, run as it stands there.

use super::fixture::{POOL, cache, filled, healedhue, write};
use healedhue::assess::MarkBook;
use std::fs;

const README: &str = include_str!("../../README.md");

#[test]
fn the_walk_of_the_readme_leads_to_a_mark_book() {
    let walk = README.split("## Setting and marking a paper").nth(1).expect("the README has the walk");
    let walk = walk.split("\n## ").next().unwrap_or_default();
    let commands: Vec<&str> = walk.lines().filter_map(|line| line.strip_prefix("healedhue ")).collect();
    assert_eq!(commands.len(), 3, "{commands:?}");
    let register =
        walk.split("```csv\n").nth(1).and_then(|rest| rest.split("```").next()).expect("a register");
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("people.csv"), register).unwrap();
    fs::create_dir(folder.path().join("slips")).unwrap();
    for command in commands {
        if command.starts_with("mark") {
            // The slips that come in.
            let record = fs::read(folder.path().join("sitting/keys/register.json")).unwrap();
            let record: serde_json::Value = serde_json::from_slice(&record).unwrap();
            assert_eq!(record["blueprint"], POOL.blueprint.id.as_str());
            for person in record["people"].as_array().unwrap() {
                let id = person["id"].as_str().unwrap();
                let paper = POOL.paper(id, record["seed"].as_u64().unwrap()).unwrap();
                write(&folder.path().join("slips"), &format!("{id}.json"), &filled(&POOL, &paper, 4));
            }
        }
        let mut program = healedhue();
        program.current_dir(folder.path()).args(command.split_whitespace());
        program.arg("--course").arg(env!("CARGO_MANIFEST_DIR")).arg("--cache").arg(cache());
        program.assert().success();
    }
    let people = register.lines().count() - 1;
    let book = MarkBook::open(&folder.path().join("marks.sqlite")).unwrap();
    assert_eq!(book.results().unwrap() as usize, people);
    let csv = fs::read_to_string(folder.path().join("marks.csv")).unwrap();
    assert_eq!(csv.lines().count(), 1 + people);
}
