//! Kept keys: what was changed by accident is noticed, and what is missing is made again.

use super::fixture::{POOL, output, run, small_course};
use crate::loading::fixture::Fixture;
use healedhue::assess::MarkTable;
use predicates::prelude::PredicateBooleanExt;
use predicates::str::contains;
use std::fs;
use std::path::PathBuf;

/// A small course, and papers of it for one person.
struct Kept {
    course: Fixture,
    folder: tempfile::TempDir,
}

impl Kept {
    fn new() -> Self {
        let kept = Kept { course: small_course(), folder: tempfile::tempdir().unwrap() };
        fs::write(kept.folder.path().join("people.csv"), "id,name\np1,Orrin Vell\n").unwrap();
        let mut paper = run(&["paper", "small", "--seed", "5"]);
        paper
            .arg("--course")
            .arg(kept.course.path(""))
            .arg("--register")
            .arg(kept.folder.path().join("people.csv"));
        paper.arg("--out").arg(kept.folder.path().join("sitting"));
        let told = output(&mut paper);
        assert!(told.contains("papers for 1 person, seed 5"), "{told}");
        kept
    }

    fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join("sitting").join(name)
    }

    fn mark(&self) -> assert_cmd::assert::Assert {
        let mut command = run(&["mark"]);
        command
            .arg("--course")
            .arg(self.course.path(""))
            .arg(self.path("blank-slips/p1.json"))
            .arg("--empty");
        command.arg("--keys").arg(self.folder.path().join("sitting")).assert()
    }

    /// Puts something else into a file of the keys.
    fn replace(&self, name: &str, from: &str, to: &str) {
        let text = fs::read_to_string(self.path(name)).unwrap();
        assert!(text.contains(from), "{from} in {name}");
        fs::write(self.path(name), text.replacen(from, to, 1)).unwrap();
    }
}

#[test]
fn a_key_that_was_changed_is_refused_and_a_missing_one_made_again() {
    let kept = Kept::new();
    let key = "keys/people/p1.json";
    kept.mark().success();
    // Other line ends are no other key.
    let text = fs::read_to_string(kept.path(key)).unwrap();
    fs::write(kept.path(key), text.replace('\n', "\r\n")).unwrap();
    kept.mark().success();
    fs::write(kept.path(key), text).unwrap();
    kept.replace(key, "\"pass_mark\": 62.0", "\"pass_mark\": 12.0");
    kept.mark()
        .code(1)
        .stderr(contains("keys/people/p1.json: this file was changed after it was written"))
        .stdout(contains("0 marked, 1 refused"));
    fs::remove_file(kept.path(key)).unwrap();
    kept.mark().success().stdout(contains("pass mark 62.0%"));
}

/// Whoever marks a printed sheet by hand finds every key in one table, and whoever is asked why finds what it rests on.
#[test]
fn keys_are_told_to_people_and_say_what_they_rest_on() {
    let kept = Kept::new();
    let read = |name: &str| -> serde_json::Value {
        serde_json::from_slice(&fs::read(kept.path(name)).unwrap()).unwrap()
    };
    let (key, tables) = (read("keys/people/p1.json"), read("keys/questions.json"));
    let sections = key["sections"].as_array().unwrap().iter();
    let asked = sections.flat_map(|section| section["questions"].as_array().unwrap());
    let asked: Vec<&str> = asked.map(|name| name.as_str().unwrap()).collect();
    let table = fs::read_to_string(kept.path("keys/answers.csv")).unwrap();
    let mut rows = csv::Reader::from_reader(table.trim_start_matches('\u{feff}').as_bytes());
    assert_eq!(rows.headers().unwrap(), vec!["id", "name", "number", "question", "key"]);
    let rows: Vec<csv::StringRecord> = rows.records().map(Result::unwrap).collect();
    assert_eq!(rows.len(), asked.len());
    for ((row, name), number) in rows.iter().zip(&asked).zip(1..) {
        assert_eq!((&row[0], &row[1], &row[2], &row[3]), ("p1", "Orrin Vell", &*number.to_string(), *name));
        let question = &tables["questions"][*name];
        let whole = question["key"].as_str().unwrap();
        let is_number = question["answer"]["form"] == "number";
        assert!(if is_number { whole.starts_with(row[4].trim_end_matches("0")) } else { whole == &row[4] });
        assert!(!question["source"].as_str().unwrap().is_empty(), "{name}");
    }
    // They stand with every answer that was marked, whether its key was kept or made again.
    let marked = |keys: bool| -> serde_json::Value {
        let mut command = run(&["mark", "--json", "--empty"]);
        command.arg("--course").arg(kept.course.path("")).arg(kept.path("blank-slips/p1.json"));
        if keys {
            command.arg("--keys").arg(kept.folder.path().join("sitting"));
        } else {
            command.arg("--register").arg(kept.folder.path().join("people.csv"));
        }
        serde_json::from_str(&output(&mut command)).unwrap()
    };
    let with_keys = marked(true);
    assert_eq!(with_keys, marked(false));
    for (answer, name) in with_keys["marked"][0]["answers"].as_array().unwrap().iter().zip(&asked) {
        assert_eq!(answer["source"], tables["questions"][*name]["source"]);
    }
    // Of questions that the engine proved, also what was proved.
    let mut proved = 0;
    for question in &POOL.questions {
        let (exercise, language) = (&question.exercise, &POOL.course.language);
        let table = MarkTable::new(POOL.course, exercise);
        let said = exercise.proof.as_ref().map(|proof| proof.said(language, exercise.family));
        assert_eq!(table.proof(), said.as_deref());
        proved += usize::from(said.is_some_and(|said| said.contains(" of 200 trials")));
    }
    assert!(proved > 10, "{proved}");
}

#[test]
fn mark_tables_that_were_changed_are_refused() {
    let kept = Kept::new();
    kept.replace("keys/questions.json", "\"credit\": 0.0", "\"credit\": 1.0");
    kept.mark().code(1).stderr(contains("questions.json: this file was changed after it was written"));
}

/// Where no digest was kept, as by earlier versions, or one was made anew, the blueprint at hand still says what passes.
#[test]
fn a_key_that_says_something_else_than_the_blueprint_is_refused_without_a_digest() {
    for (from, to, field) in [
        ("\"pass_mark\": 62.0", "\"pass_mark\": 12.0", "pass_mark"),
        ("\"weight\": 70.0", "\"weight\": 7.0", "standard_error"),
        ("\"estimate\": 0.55", "\"estimate\": 0.5", "standard_error"),
        ("\"pass_mark_error\": 5.0", "\"pass_mark_error\": null", "pass_mark_error"),
        ("\"id\": \"first\"", "\"id\": \"other\"", "sections"),
    ] {
        let kept = Kept::new();
        let record = fs::read(kept.path("keys/register.json")).unwrap();
        let mut record: serde_json::Value = serde_json::from_slice(&record).unwrap();
        record.as_object_mut().unwrap().remove("digests").expect("digests are kept");
        fs::write(kept.path("keys/register.json"), record.to_string()).unwrap();
        kept.mark().success();
        kept.replace("keys/people/p1.json", from, to);
        kept.mark().code(1).stderr(contains(format!("`{field}` is not as in the blueprint")));
    }
}

#[test]
fn damaged_keys_are_told_in_plain_words() {
    let programmers = ["EOF", "os error", "expected u", "expected struct", "expected a map", "Error"];
    let told = |change: &dyn Fn(&Kept)| {
        let kept = Kept::new();
        // Without digests: what is wrong is told from the files themselves.
        let record = fs::read_to_string(kept.path("keys/register.json")).unwrap();
        let end = record.find(",\n  \"digests\"").unwrap();
        fs::write(kept.path("keys/register.json"), format!("{}\n}}\n", &record[..end])).unwrap();
        change(&kept);
        let told = kept.mark().code(1).get_output().stderr.clone();
        let told = String::from_utf8(told).unwrap();
        assert!(programmers.iter().all(|word| !told.contains(word)), "{told}");
        told.replace(&kept.folder.path().display().to_string(), "")
    };
    let cut = |name: &'static str| {
        told(&move |kept: &Kept| {
            let text = fs::read_to_string(kept.path(name)).unwrap();
            fs::write(kept.path(name), &text[..text.len() / 2]).unwrap();
        })
    };
    let mut all = vec![cut("keys/people/p1.json"), cut("keys/questions.json"), cut("keys/register.json")];
    all.push(told(&|kept| kept.replace("keys/people/p1.json", "\"seed\": 5", "\"seed\": -5")));
    all.push(told(&|kept| kept.replace("keys/register.json", "\"seed\": 5", "\"seed\": \"5\"")));
    all.push(told(&|kept| fs::remove_dir_all(kept.path("keys")).unwrap()));
    all.push(told(&|kept| fs::remove_dir_all(kept.path("")).unwrap()));
    insta::assert_snapshot!("damaged_keys", all.concat());
}

/// Neither the page's foot nor the printed sheet says the seed; a slip carries it, and is all that is needed to make the paper again.
#[test]
fn no_seed_is_printed() {
    let kept = Kept::new();
    let text = |name: &str| fs::read_to_string(kept.path(name)).unwrap();
    let sheet = text("sheets/p1.html");
    assert!(!sheet.contains("seed"), "{sheet}");
    assert!(!text("papers/p1.html").contains("seed 5"));
    fs::remove_dir_all(kept.path("keys")).unwrap();
    let mut command = run(&["mark"]);
    command.arg("--course").arg(kept.course.path("")).arg(kept.path("blank-slips/p1.json")).arg("--empty");
    command.assert().success().stdout(contains("1 marked").and(contains("refused")));
}
