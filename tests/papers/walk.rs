//! The README's walk, from an empty folder to the report, run as it stands there.

use super::fixture::{POOL, filled, healedhue, write};
use crate::proofs::cache;
use healedhue::assess::{MarkBook, Slip};
use std::fs;
use std::path::Path;

const README: &str = include_str!("../../README.md");
const PEOPLE: &str = include_str!("../../docs/examples/people.csv");

#[test]
fn the_walk_of_the_readme_leads_to_a_report() {
    let walk = README.split("## Setting and marking a paper").nth(1).expect("the README has the walk");
    let walk = walk.split("\n## ").next().unwrap_or_default();
    let commands: Vec<&str> = walk.lines().filter_map(|line| line.strip_prefix("healedhue ")).collect();
    assert_eq!(commands.len(), 4, "{commands:?}");
    let register =
        walk.split("```csv\n").nth(1).and_then(|rest| rest.split("```").next()).expect("a register");
    assert!(PEOPLE.starts_with(register), "the README shows the beginning of the example");
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("people.csv"), PEOPLE).unwrap();
    fs::create_dir(folder.path().join("slips")).unwrap();
    for command in commands {
        if command.starts_with("mark") {
            // The slips that come in.
            let record = fs::read(folder.path().join("sitting/keys/register.json")).unwrap();
            let record: serde_json::Value = serde_json::from_slice(&record).unwrap();
            assert_eq!(record["blueprint"], POOL.blueprint.id.as_str());
            for (at, person) in record["people"].as_array().unwrap().iter().enumerate() {
                let id = person["id"].as_str().unwrap();
                let paper = POOL.paper(id, record["seed"].as_u64().unwrap()).unwrap();
                hand_in(folder.path(), id, at, &filled(&POOL, &paper, 2 + at % 6));
            }
        }
        let mut program = healedhue();
        program.current_dir(folder.path()).args(words(command));
        program.arg("--course").arg(env!("CARGO_MANIFEST_DIR"));
        if !command.starts_with("report") {
            program.arg("--cache").arg(cache());
        }
        program.assert().success();
    }
    let people = PEOPLE.lines().count() - 1;
    assert_eq!(people, 20);
    let book = MarkBook::open(&folder.path().join("marks.sqlite")).unwrap();
    assert_eq!(book.results().unwrap() as usize, people);
    let csv = fs::read_to_string(folder.path().join("marks.csv")).unwrap();
    assert_eq!(csv.lines().count(), 1 + people);
    let page = fs::read_to_string(folder.path().join("report/index.html")).unwrap();
    assert!(page.contains("Spring group") && page.contains("20 people, 20 sheets, 1 paper"));
    assert!(page.contains("Orrin Vell"));
    assert_eq!(fs::read_dir(folder.path().join("report/people")).unwrap().count(), people);
}

/// A command's words, as a shell reads them; quotes hold words together.
fn words(command: &str) -> Vec<String> {
    let parts = command.split('"').enumerate();
    parts
        .flat_map(|(at, part)| match at % 2 {
            0 => part.split_whitespace().map(str::to_owned).collect(),
            _ => vec![part.to_owned()],
        })
        .collect()
}

/// Slips come in three ways: as the file a page saves, as a code that was copied, and typed into a blank slip from paper.
fn hand_in(folder: &Path, id: &str, at: usize, slip: &Slip) {
    let slips = folder.join("slips");
    match at % 3 {
        0 => drop(write(&slips, &format!("{id}.json"), slip)),
        1 => fs::write(slips.join(format!("{id}.txt")), slip.code()).unwrap(),
        _ => {
            let blanks = folder.join("sitting/blank-slips");
            let blank = fs::read_dir(&blanks)
                .unwrap()
                .map(|entry| entry.unwrap().path())
                .find(|path| path.to_string_lossy().contains(id))
                .unwrap();
            let typed = fs::read_to_string(blank).unwrap();
            let mut answers = slip.answers.iter();
            let lines = typed.lines().map(|line| match line.strip_prefix("    \"\"") {
                Some(rest) => format!("    {:?}{rest}", answers.next().unwrap()),
                None => line.to_owned(),
            });
            let typed: String = lines.map(|line| line + "\n").collect();
            assert_eq!(answers.next(), None, "there is a line for every answer");
            fs::write(slips.join(format!("{id}.json")), typed).unwrap();
        }
    }
}
