//! `healedhue report`.

use super::{COHORT, Cohort, files};
use assert_cmd::Command;
use predicates::prelude::*;
use predicates::str::contains;
use std::fs;
use std::path::Path;

fn healedhue() -> Command {
    let mut command = Command::cargo_bin("healedhue").expect("the program is built");
    command.current_dir(env!("CARGO_MANIFEST_DIR")).env("NO_COLOR", "1");
    command
}

fn marks(folder: &Path, cohort: &Cohort) -> std::path::PathBuf {
    let path = folder.join("marks.json");
    fs::write(&path, serde_json::to_vec(cohort).expect("JSON")).expect("it is written");
    path
}

/// The command of docs/reports.md on the example there.
#[test]
fn the_example_of_the_documentation_works() {
    let folder = tempfile::tempdir().expect("a folder");
    let out = folder.path().join("report");
    let docs = include_str!("../../docs/reports.md");
    assert!(docs.contains("healedhue report --marks docs/examples/marks.json"));
    assert!(docs.contains(include_str!("../../docs/examples/marks.json").trim_end()));
    healedhue()
        .args(["report", "--marks", "docs/examples/marks.json", "--out"])
        .arg(&out)
        .assert()
        .success()
        .stdout(contains("Weakest skill").and(contains("open ")))
        .stderr("");
    assert!(out.join("index.html").is_file() && out.join("people/id-venn.html").is_file());
}

#[test]
fn the_same_sheets_give_the_same_bytes_and_replace_each_other() {
    let folder = tempfile::tempdir().expect("a folder");
    let (out, tables) = (folder.path().join("report"), folder.path().join("tables"));
    let marks = marks(folder.path(), &COHORT.0);
    let run = || {
        let mut command = healedhue();
        command.arg("report").arg("--marks").arg(&marks).arg("--out").arg(&out).arg("--csv").arg(&tables);
        command.args(["--site", "../public"]).assert().success();
        (files(&out), files(&tables))
    };
    let once = run();
    assert_eq!(once, run());
    assert_eq!(once.1.keys().filter(|name| name.ends_with(".csv")).count(), 8);
    let page = String::from_utf8_lossy(&once.0["people/id-a00003.html"]).into_owned();
    assert!(page.contains("href=\"../../public/lessons/"), "lessons are linked");
    assert!(page.contains("href=\"../../public/practice.html#skill="), "practice is linked");
    assert!(!page.contains("healedhue practise"), "who has the site needs no command");
    let index = String::from_utf8_lossy(&once.0["index.html"]).into_owned();
    assert!(index.contains("href=\"../public/lessons/"));
}

/// All that is printed and written is in the course's language, not the report's sentences alone.
#[test]
fn a_german_report_is_german_to_its_last_line() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name);
    let cohort = r#"{
        "questions": [{"id": "haut-fuer-licht", "skill": "vorhersehen", "options": [
            {"say": "Ein Filter", "right": true}, {"say": "Ein Fenster", "misconception": "fensterglas"}, {"say": "Ein Spiegel"}]}],
        "sheets": [{"person": "venn", "name": "Ilsa Venn", "paper": {"blueprint": "anfang"},
            "answers": [{"question": "haut-fuer-licht", "credit": 0, "chosen": 1}]}]
    }"#;
    let mut command = healedhue();
    command.args(["report", "--marks", "-", "--course", "tests/site/german", "--due", "2026-06-01"]);
    command.arg("--out").arg(path("report")).arg("--assign").arg(path("next"));
    let output = command.write_stdin(cohort).assert().success().get_output().stdout.clone();
    let told = String::from_utf8(output).expect("UTF-8");
    let pages =
        told.lines().find(|line| line.starts_with("2 Seiten, 0,")).unwrap_or_else(|| panic!("{told}"));
    // A folder's name may hold anything.
    let times = pages.split_once("; gelesen in ").unwrap_or_else(|| panic!("{pages}")).1;
    assert!(times.contains(" s, geschrieben in ") && !times.contains('.'), "{pages}");
    assert!(told.contains("Öffnen Sie ") && told.contains("1 Zuweisung in "), "{told}");
    for english in ["pages", "open ", "assignment"] {
        assert!(!told.contains(english), "{english} in {told}");
    }
    let assignment = fs::read_to_string(path("next").join("next-2026-06-01-1.yaml")).expect("it is written");
    assert!(
        assignment.contains("\ntitle: \"Was als Nächstes zu üben ist, bis 1. Juni 2026\"\n"),
        "{assignment}"
    );
}

#[test]
fn what_is_no_report_is_left_alone() {
    let folder = tempfile::tempdir().expect("a folder");
    let marks = marks(folder.path(), &COHORT.0);
    let out = folder.path().join("thesis");
    fs::create_dir(&out).expect("a folder");
    fs::write(out.join("chapter.txt"), "mine").expect("it is written");
    let refused = |arguments: &[&str], folder: &Path| {
        healedhue()
            .arg("report")
            .arg("--marks")
            .arg(&marks)
            .args(arguments)
            .arg(folder)
            .assert()
            .code(1)
            .stderr(contains("nothing was changed"));
    };
    refused(&["--out"], &out);
    let fine = folder.path().join("report");
    refused(&["--out", fine.to_str().expect("a path"), "--csv"], &out);
    assert!(!fine.exists(), "nothing is written where something else is refused");
    assert_eq!(fs::read(out.join("chapter.txt")).expect("it is there"), b"mine");
}

#[test]
fn tables_hold_the_figures_and_no_formula() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut cohort = COHORT.0.clone();
    let names = ["=1+1", "+x", "-x", "@x", "\t=x", " =x", "plain, \"quoted\""];
    for (sheet, name) in cohort.sheets.iter_mut().zip(names) {
        sheet.name = name.to_owned();
    }
    let marks = marks(folder.path(), &cohort);
    let tables = folder.path().join("tables");
    let mut command = healedhue();
    command.arg("report").arg("--marks").arg(&marks).arg("--csv").arg(&tables).arg("--json");
    let output = command.assert().success().get_output().stdout.clone();
    let report: serde_json::Value = serde_json::from_slice(&output).expect("JSON");
    let mut seen = 0;
    for (name, content) in files(&tables).iter().filter(|file| file.0.ends_with(".csv")) {
        let mut reader = csv::Reader::from_reader(content.as_slice());
        for record in reader.records() {
            let record = record.expect("a row");
            for cell in &record {
                let number = cell.parse::<f64>().is_ok();
                let decimals = cell.split_once('.').filter(|_| number).map_or(0, |(_, rest)| rest.len());
                assert!(decimals <= 4 && (decimals == 0 || !cell.ends_with('0')), "{name}: {cell}");
                let formula = cell.trim_start().starts_with(['=', '+', '-', '@']);
                assert!(number || !formula, "{name}: {cell:?}");
            }
            seen += usize::from(record.iter().any(|cell| cell == "plain, \"quoted\""));
        }
    }
    assert!(seen > 1);
    let items = String::from_utf8(fs::read(tables.join("items.csv")).expect("the table")).expect("text");
    let first = &report["items"][0];
    let wanted = format!("{},", first["id"].as_str().expect("an id"));
    let row = items.lines().find(|line| line.starts_with(&wanted)).expect("a row");
    let mut fields = csv::ReaderBuilder::new().has_headers(false).from_reader(row.as_bytes());
    let fields = fields.records().next().expect("a row").expect("fields");
    let facility = first["classical"]["facility"].as_f64().expect("a share");
    let told: f64 = fields[5].parse().expect("a number");
    assert!((told - facility).abs() <= 0.5e-4 + 1e-12, "{facility} in {row}");
    assert!(!Path::new("report").exists(), "--json writes no pages");
}

/// As an editor may have written them.
#[test]
fn marked_sheets_are_read_in_utf_16_too() {
    let text = include_str!("../../docs/examples/marks.json");
    let json = |bytes: Vec<u8>| {
        let mut command = healedhue();
        command.args(["report", "--marks", "-", "--json"]).write_stdin(bytes);
        command.assert().success().get_output().stdout.clone()
    };
    let plain = json(text.as_bytes().to_vec());
    for text in [text.to_owned(), format!("\u{feff}{text}")] {
        assert!(json(text.encode_utf16().flat_map(u16::to_le_bytes).collect()) == plain);
        assert!(json(text.encode_utf16().flat_map(u16::to_be_bytes).collect()) == plain);
        assert!(json(text.into_bytes()) == plain);
    }
    let picture = healedhue()
        .args(["report", "--marks", "-", "--json"])
        .write_stdin(&b"\x89PNG\r\n\x1a\n"[..])
        .assert()
        .code(1);
    picture.stderr(contains("this is a picture (PNG), not text; marked sheets are an object"));
}

#[test]
fn wrong_input_is_named_and_nothing_is_written() {
    let folder = tempfile::tempdir().expect("a folder");
    let out = folder.path().join("report");
    let problem = |text: &str| {
        let assert = healedhue()
            .args(["report", "--marks", "-", "--out"])
            .arg(&out)
            .write_stdin(text)
            .assert()
            .code(1);
        assert!(!out.exists());
        String::from_utf8_lossy(&assert.get_output().stderr).into_owned()
    };
    let problems = [
        "{",
        "[]",
        r#"{"questions": [], "sheets": [{"person": "a", "paper": {"blueprint": "b"}, "answers": [{"question": "q", "credit": "x"}]}]}"#,
        r#"{"questions": [], "sheets": [{"person": "a", "paper": {"blueprint": "b"}, "answers": [{"question": "q", "credit": 1}]}]}"#,
        r#"{"questions": [], "sheets": [], "sheet": []}"#,
        r#"{"questions": [], "sheets": []} x"#,
    ]
    .map(problem);
    insta::assert_snapshot!(problems.concat());
    healedhue().arg("report").assert().code(2);
    healedhue()
        .args(["report", "--marks", "-", "--site", "javascript:x"])
        .write_stdin("")
        .assert()
        .code(2)
        .stderr(contains("--site"));
}
