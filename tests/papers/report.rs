//! From the mark book to the report: the same figures as from marked sheets in JSON, and no book ever damaged.

use super::fixture::{POOL, filled, healedhue, output, run, write};
use crate::site::fixture::files;
use healedhue::assess::report::{Cohort, OptionPut, PaperSat, Question, Sheet, SheetAnswer, SheetMark};
use healedhue::assess::{
    BookError, BookReader, Key, MarkBook, MarkTables, Recorded, Selection, Slip, SlipTime, mark_slip,
};
use healedhue::exercise::{Answer, Form};
use predicates::prelude::*;
use predicates::str::contains;
use rusqlite::Connection;
use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

const BLUEPRINT: &str = super::fixture::BLUEPRINT;

fn marks_of(slip: &Slip) -> healedhue::assess::SlipMarks {
    let paper = POOL.paper(&slip.paper.candidate, slip.paper.seed).unwrap();
    let key = Key::new(&POOL, &paper);
    let tables =
        MarkTables::new(POOL.course, paper.questions.iter().map(|picked| &POOL.questions[picked.question]));
    mark_slip(POOL.course, &key, |name| tables.questions.get(name).map(Cow::Borrowed), slip).unwrap()
}

/// A cohort out of what `mark --json` prints, by the questions' own content: nothing of the mark book's code has a part in it.
fn cohort_of(marked: &serde_json::Value) -> Cohort {
    let text = |value: &serde_json::Value| value.as_str().unwrap_or_default().to_owned();
    let mut questions: BTreeMap<String, Question> = BTreeMap::new();
    let mut sheets = Vec::new();
    for marks in marked["marked"].as_array().unwrap() {
        let mut answers = Vec::new();
        for answer in marks["answers"].as_array().unwrap() {
            let name = answer["question"].as_str().unwrap();
            let exercise = &POOL.questions.iter().find(|question| question.name() == name).unwrap().exercise;
            let written = exercise.written.clone();
            let id = written.clone().unwrap_or_else(|| name.replace(' ', "/"));
            let mut options: Vec<(usize, OptionPut)> = match &exercise.form {
                Form::One(one) => one
                    .options
                    .iter()
                    .map(|option| OptionPut {
                        say: option.label.clone(),
                        right: option.mark.credit == 1.0,
                        misconception: option.mark.misconception.clone(),
                    })
                    .enumerate()
                    .collect(),
                _ => Vec::new(),
            };
            if written.is_some() {
                options.sort_by(|one, other| one.1.say.cmp(&other.1.say));
            }
            let given = answer["answer"].as_str().unwrap();
            let chosen = match (&exercise.form, given) {
                (Form::One(_), letter) if !letter.is_empty() => {
                    let shown = usize::from(letter.as_bytes()[0] - b'A');
                    options.iter().position(|option| option.0 == shown)
                }
                _ => None,
            };
            answers.push(SheetAnswer {
                seconds: None,
                question: id.clone(),
                section: text(&answer["section"]),
                credit: answer["credit"].as_f64().unwrap(),
                misconception: answer["misconception"]
                    .as_str()
                    .filter(|_| chosen.is_none())
                    .map(str::to_owned),
                chosen,
            });
            questions.entry(id.clone()).or_insert_with(|| Question {
                id,
                drill: written.is_none().then(|| exercise.drill.clone()),
                skill: exercise.skill.clone(),
                options: options.into_iter().map(|option| option.1).collect(),
            });
        }
        let paper = &marks["paper"];
        sheets.push(Sheet {
            seconds: None,
            person: text(&paper["candidate"]),
            name: text(&marks["name"]),
            practice: false,
            paper: PaperSat {
                blueprint: text(&paper["blueprint"]),
                course: text(&paper["course"]),
                seed: paper["seed"].as_u64().unwrap(),
                attempt: 1,
            },
            mark: Some(SheetMark {
                total: marks["total"].as_f64().unwrap(),
                pass_mark: marks["pass_mark"].as_f64(),
                standard_error: marks["standard_error"].as_f64(),
            }),
            answers,
        });
    }
    Cohort { title: String::new(), questions: questions.into_values().collect(), sheets }
}

/// Slips of so many people, each wrong in another way.
fn slips(folder: &Path, people: usize, seed: u64) {
    fs::create_dir_all(folder).unwrap();
    for person in 0..people {
        let paper = POOL.paper(&format!("p{person:02}"), seed).unwrap();
        write(folder, &format!("{seed}-{person:02}.json"), &filled(&POOL, &paper, 2 + person % 7));
    }
}

#[test]
fn the_book_gives_the_same_report_as_the_marked_sheets() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    let people: String = (0..20).map(|person| format!("p{person:02},Person {person}\n")).collect();
    fs::write(path("people.csv"), format!("id,name\n{people}")).unwrap();
    run(&["paper", BLUEPRINT, "--seed", "7"])
        .arg("--register")
        .arg(path("people.csv"))
        .arg("--out")
        .arg(path("sitting"))
        .assert()
        .success();
    slips(&path("slips"), 20, 7);
    let mut mark = run(&["mark", "--json"]);
    mark.arg("--keys").arg(path("sitting")).arg("--book").arg(path("book.sqlite")).arg(path("slips"));
    let marked: serde_json::Value = serde_json::from_str(&output(&mut mark)).unwrap();
    let cohort = cohort_of(&marked);
    assert_eq!(cohort.sheets.len(), 20);
    fs::write(path("marks.json"), serde_json::to_vec(&cohort).unwrap()).unwrap();
    let report = |input: [&str; 2], name: &str| {
        let mut command = healedhue();
        command.args(["report", input[0]]).arg(path(input[1])).arg("--out").arg(path(name));
        command.arg("--csv").arg(path(&format!("{name}-tables")));
        command.assert().success().stderr("");
        (files(&path(name)), files(&path(&format!("{name}-tables"))))
    };
    let from_book = report(["--book", "book.sqlite"], "from-book");
    let from_sheets = report(["--marks", "marks.json"], "from-sheets");
    for (name, content) in &from_sheets.1 {
        let (book, sheets) = (from_book.1.get(name).map(Vec::as_slice), content.as_slice());
        let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
        assert_eq!(text(book.unwrap_or_default()), text(sheets), "{name}");
    }
    assert_eq!(from_book, from_sheets);
    let options = String::from_utf8(from_book.1["options.csv"].clone()).unwrap();
    assert!(options.lines().count() > 20, "what was chosen is known: {options}");
    let before = fs::read(path("book.sqlite")).unwrap();
    report(["--book", "book.sqlite"], "from-book");
    assert!(fs::read(path("book.sqlite")).unwrap() == before, "a report changes nothing in the book");
}

#[test]
fn a_book_of_several_sittings_is_reported_whole_or_in_part() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    slips(&path("slips"), 3, 7);
    slips(&path("slips"), 2, 8);
    run(&["mark", "--second-attempt"])
        .arg("--book")
        .arg(path("book.sqlite"))
        .arg(path("slips"))
        .assert()
        .success();
    let report = |arguments: &[&str]| {
        let mut command = healedhue();
        command.arg("report").args(arguments).arg("--book").arg(path("book.sqlite")).arg("--json");
        command
    };
    let sheets = |arguments: &[&str]| {
        let told: serde_json::Value = serde_json::from_str(&output(&mut report(arguments))).unwrap();
        told["papers"][0]["sheets"].as_u64().unwrap()
    };
    assert_eq!(sheets(&[]), 5);
    assert_eq!(sheets(&["--seed", "8"]), 2);
    assert_eq!(sheets(&["--blueprint", BLUEPRINT, "--seed", "7", "--title", "Spring"]), 3);
    report(&["--blueprint", "certificate"]).assert().code(1).stdout("").stderr(contains(format!(
        "nothing in this mark book is what was asked for; it holds paper {BLUEPRINT} (seed 7, 3 results), paper {BLUEPRINT} (seed 8, 2 \
         results)"
    )));
}

/// Everybody's mark stands on the instructor's page as `mark` gave it, and on their own with the pass mark, its error and the sections.
#[test]
fn everybody_finds_their_mark_in_the_report() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    slips(&path("slips"), 5, 7);
    let mut mark = run(&["mark", "--json"]);
    let marked = output(mark.arg("--book").arg(path("book.sqlite")).arg(path("slips")));
    let marked: serde_json::Value = serde_json::from_str(&marked).unwrap();
    let mut report = healedhue();
    report.args(["report", "--book"]).arg(path("book.sqlite")).arg("--out").arg(path("report"));
    report.assert().success().stdout(contains(format!("{}: 5 sheets", POOL.blueprint.title)));
    let read = |name: String| fs::read_to_string(path("report").join(name)).unwrap();
    let index = read("index.html".to_owned());
    assert!(index.contains(&format!("<bdi>{}</bdi></h3>", POOL.blueprint.title)));
    let mut verdicts = BTreeSet::new();
    for one in marked["marked"].as_array().unwrap() {
        let (id, number) =
            (one["paper"]["candidate"].as_str().unwrap(), |key: &str| one[key].as_f64().unwrap());
        let verdict = match (one["passed"].as_bool().unwrap(), one["close"].as_bool().unwrap()) {
            (true, true) => "passed, closely",
            (true, false) => "passed",
            (false, true) => "not passed, closely",
            (false, false) => "not passed",
        };
        verdicts.insert(verdict);
        let sections = one["sections"].as_array().unwrap();
        let credits: String = sections
            .iter()
            .map(|section| {
                format!("<td class=\"number\">{:.0}</td>", section["credit"].as_f64().unwrap() * 100.0)
            })
            .collect();
        let row = index
            .lines()
            .find(|line| line.contains(&format!("people/id-{id}.html")) && line.contains(verdict))
            .unwrap_or_else(|| panic!("a row of {id}"));
        let told = format!("<td class=\"number\">{:.1}%</td>", number("total"));
        assert!(row.contains(&told) && row.contains(&format!(">{verdict}</td>{credits}</tr>")), "{row}");
        let own = read(format!("people/id-{id}.html"));
        let bound = format!(
            "(pass mark {:.1}%, standard error {:.1})",
            number("pass_mark"),
            number("standard_error")
        );
        assert!(own.contains(&bound) && own.contains(&format!("{:.1}%", number("total"))), "{id}: {bound}");
        for section in sections {
            let earned = format!(
                "{} {:.0}%",
                section["title"].as_str().unwrap(),
                section["credit"].as_f64().unwrap() * 100.0
            );
            assert!(own.contains(&earned), "{id}: {earned}");
        }
    }
    assert!(verdicts.len() > 1, "{verdicts:?}");
}

#[test]
fn what_is_no_book_is_refused_in_a_line() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    fs::write(path("notes.txt"), "mine, and long enough to hold a header of a database file ".repeat(20))
        .unwrap();
    let refused = |name: &str, why: &str| {
        healedhue()
            .args(["report", "--out"])
            .arg(path("report"))
            .arg("--book")
            .arg(path(name))
            .assert()
            .code(1)
            .stdout("")
            .stderr(contains(why).and(contains(name)));
        assert!(!path("report").exists());
    };
    refused("missing.sqlite", "there is no mark book here");
    assert!(!path("missing.sqlite").exists(), "none is begun");
    refused("notes.txt", "no mark book of healedhue");
    // What a first run leaves that is killed before anything is recorded.
    fs::write(path("nothing.sqlite"), "").unwrap();
    refused("nothing.sqlite", "nothing is recorded in this mark book yet");
    drop(MarkBook::open(&path("later.sqlite")).unwrap());
    let later = Connection::open(path("later.sqlite")).unwrap();
    later.pragma_update(None, "user_version", 99).unwrap();
    drop(later);
    let before = fs::read(path("later.sqlite")).unwrap();
    refused("later.sqlite", "written by a later version");
    assert!(matches!(MarkBook::open(&path("later.sqlite")), Err(BookError::Later(99))));
    assert!(fs::read(path("later.sqlite")).unwrap() == before);
}

/// Out of a report come assignments that `assign` takes as they are, with the lessons the report names for each person.
#[test]
fn a_report_leads_to_assignments() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    slips(&path("slips"), 4, 7);
    run(&["mark"]).arg("--book").arg(path("book.sqlite")).arg(path("slips")).assert().success();
    let report = |more: &[&str]| {
        let mut command = healedhue();
        command.args(["report", "--json", "--book"]).arg(path("book.sqlite")).args(more);
        command
    };
    report(&["--assign", "anywhere"]).assert().code(2).stderr(contains("--due"));
    report(&["--assign", "anywhere", "--due", "2026-02-30"]).assert().code(2).stderr(contains("no such day"));
    let mut command = report(&["--due", "2026-03-14", "--assign"]);
    let told: serde_json::Value = serde_json::from_str(&output(command.arg(path("next")))).unwrap();
    let course = POOL.course;
    let mut assigned: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for (name, text) in files(&path("next")).iter().filter(|file| file.0.ends_with(".yaml")) {
        let text = std::str::from_utf8(text).unwrap();
        // Another term's sets are others, in their folder as in the mark book.
        assert!(name.starts_with("next-2026-03-14-"), "{name}");
        let assignment = healedhue::course::read_assignment(name, text, course).unwrap();
        assert_eq!(assignment.due.to_string(), "2026-03-14");
        for person in &assignment.people {
            assigned.insert(person.id.clone(), assignment.lessons.clone());
        }
    }
    assert_eq!(assigned.len(), 4);
    // Whoever writes pages, too, is told where they are.
    let mut command = healedhue();
    command.args(["report", "--due", "2026-03-14", "--book"]).arg(path("book.sqlite"));
    command.arg("--assign").arg(path("next")).arg("--out").arg(path("report"));
    command.assert().success().stdout(contains(" out with `healedhue assign FOLDER`"));
    for person in told["people"].as_array().unwrap() {
        let mut wanted: Vec<&str> = person["next"]
            .as_array()
            .unwrap()
            .iter()
            .flat_map(|next| next["lessons"].as_array().unwrap())
            .map(|lesson| lesson["id"].as_str().unwrap())
            .collect();
        wanted.sort_unstable();
        wanted.dedup();
        let mut found = assigned[person["id"].as_str().unwrap()].clone();
        found.sort_unstable();
        assert_eq!(found, wanted);
    }
}

/// The tables of version 1, as that version made them.
const FIRST_TABLES: &str = "
CREATE TABLE result (
    id INTEGER PRIMARY KEY, course TEXT NOT NULL, blueprint TEXT NOT NULL, candidate TEXT NOT NULL, seed INTEGER NOT NULL,
    digest TEXT NOT NULL, attempt INTEGER NOT NULL, name TEXT NOT NULL, slip TEXT NOT NULL, total REAL NOT NULL,
    pass_mark REAL NOT NULL, standard_error REAL NOT NULL, passed INTEGER NOT NULL,
    UNIQUE (course, blueprint, candidate, seed, attempt)
);
CREATE TABLE section (
    result INTEGER NOT NULL REFERENCES result (id), place INTEGER NOT NULL, section TEXT NOT NULL, title TEXT NOT NULL,
    weight REAL NOT NULL, credit REAL NOT NULL, PRIMARY KEY (result, place)
) WITHOUT ROWID;
CREATE TABLE answer (
    result INTEGER NOT NULL REFERENCES result (id), number INTEGER NOT NULL, section TEXT NOT NULL, question TEXT NOT NULL,
    skill TEXT NOT NULL, answer TEXT NOT NULL, key TEXT NOT NULL, credit REAL NOT NULL, consequence TEXT NOT NULL,
    misconception TEXT, lesson TEXT NOT NULL, PRIMARY KEY (result, number)
) WITHOUT ROWID;
PRAGMA application_id = 0x68686d62;
PRAGMA user_version = 1;
";

#[test]
fn a_book_of_the_first_version_is_read_as_it_is_and_kept_whole_when_it_grows() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    let mut now = MarkBook::open(&path("now.sqlite")).unwrap();
    let slips: Vec<Slip> =
        (0..3).map(|person| filled(&POOL, &POOL.paper(&format!("p{person}"), 3).unwrap(), 3)).collect();
    for slip in &slips {
        now.record(slip, &marks_of(slip), false).unwrap();
    }
    drop(now);
    let first = Connection::open(path("first.sqlite")).unwrap();
    first.execute_batch(FIRST_TABLES).unwrap();
    first.execute("ATTACH ?1 AS now", [path("now.sqlite").to_str().unwrap()]).unwrap();
    first
        .execute_batch(
            "INSERT INTO result SELECT id, course, blueprint, candidate, seed, digest, attempt, name, slip, total, pass_mark,
                standard_error, passed FROM now.result;
             INSERT INTO section SELECT * FROM now.section;
             INSERT INTO answer SELECT result, number, section, question, skill, answer, key, credit, consequence, misconception,
                lesson FROM now.answer;",
        )
        .unwrap();
    drop(first);
    let exported = |book: &MarkBook| {
        let (mut results, mut answers) = (Vec::new(), Vec::new());
        book.results_csv(&mut results).unwrap();
        book.answers_csv(&mut answers).unwrap();
        (String::from_utf8(results).unwrap(), String::from_utf8(answers).unwrap())
    };
    let wanted = exported(&MarkBook::open(&path("now.sqlite")).unwrap());
    let whole = BookReader::open(&path("now.sqlite")).unwrap().cohort(&Selection::default()).unwrap();

    let before = fs::read(path("first.sqlite")).unwrap();
    let old = BookReader::open(&path("first.sqlite")).unwrap().cohort(&Selection::default()).unwrap();
    assert!(fs::read(path("first.sqlite")).unwrap() == before, "reading changes nothing");
    let credits = |cohort: &Cohort| -> Vec<Vec<f64>> {
        cohort.sheets.iter().map(|sheet| sheet.answers.iter().map(|answer| answer.credit).collect()).collect()
    };
    assert_eq!(credits(&old), credits(&whole));
    assert!(old.questions.iter().all(|question| question.options.is_empty()));
    old.check().unwrap();

    let mut grown = MarkBook::open(&path("first.sqlite")).unwrap();
    assert_eq!(exported(&grown), wanted, "not a mark is lost");
    for slip in &slips[..2] {
        assert_eq!(grown.record(slip, &marks_of(slip), false).unwrap(), Recorded::Already(1));
    }
    assert_eq!(exported(&grown), wanted);
    drop(grown);
    let half = BookReader::open(&path("first.sqlite")).unwrap().cohort(&Selection::default()).unwrap();
    half.check().unwrap();
    assert_eq!(half.sheets[..2], whole.sheets[..2], "marking again says what was put");
    let mut grown = MarkBook::open(&path("first.sqlite")).unwrap();
    grown.record(&slips[2], &marks_of(&slips[2]), false).unwrap();
    drop(grown);
    assert_eq!(
        BookReader::open(&path("first.sqlite")).unwrap().cohort(&Selection::default()).unwrap(),
        whole
    );
}

/// The second version knew no time: it is read as it is, and gets a column when it grows.
#[test]
fn a_book_of_the_second_version_is_read_as_it_is_and_learns_of_time() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("second.sqlite");
    let slips: Vec<Slip> = (0..2)
        .map(|person| filled(&POOL, &POOL.paper(&format!("p{person}"), 3).unwrap(), 3))
        .map(|slip| slip.with_time(SlipTime::new(600, vec![30; 16])))
        .collect();
    let mut book = MarkBook::open(&path).unwrap();
    book.record(&slips[0], &marks_of(&slips[0]), false).unwrap();
    drop(book);
    let second = Connection::open(&path).unwrap();
    second
        .execute_batch(
            "ALTER TABLE result DROP COLUMN seconds; ALTER TABLE answer DROP COLUMN seconds; PRAGMA user_version = 2;
             PRAGMA wal_checkpoint(TRUNCATE); PRAGMA journal_mode = DELETE;",
        )
        .unwrap();
    drop(second);
    let before = fs::read(&path).unwrap();
    let old = BookReader::open(&path).unwrap().cohort(&Selection::default()).unwrap();
    assert!(fs::read(&path).unwrap() == before, "reading changes nothing");
    assert_eq!((old.sheets.len(), old.sheets[0].seconds), (1, None));
    assert!(old.sheets[0].answers.iter().all(|answer| answer.seconds.is_none()));
    let mut grown = MarkBook::open(&path).unwrap();
    assert_eq!(grown.record(&slips[0], &marks_of(&slips[0]), false).unwrap(), Recorded::Already(1));
    assert_eq!(grown.record(&slips[1], &marks_of(&slips[1]), false).unwrap(), Recorded::New(1));
    drop(grown);
    let new = BookReader::open(&path).unwrap().cohort(&Selection::default()).unwrap();
    assert_eq!(new.sheets[0], old.sheets[0]);
    assert_eq!((new.sheets[1].seconds, new.sheets[1].answers[5].seconds), (Some(600), Some(30)));
}

/// A book whose answers belong to no result is left as it was.
#[test]
fn a_damaged_book_of_the_first_version_is_refused_and_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("first.sqlite");
    let first = Connection::open(&path).unwrap();
    first.execute_batch(FIRST_TABLES).unwrap();
    first.pragma_update(None, "foreign_keys", "OFF").unwrap();
    first.execute("INSERT INTO section VALUES (7, 0, 'a', 'A', 100, 0.5)", []).unwrap();
    drop(first);
    assert!(matches!(MarkBook::open(&path), Err(BookError::Damaged(1))));
    let again = Connection::open(&path).unwrap();
    let version: i32 = again.pragma_query_value(None, "user_version", |row| row.get(0)).unwrap();
    let rows: i32 = again.query_row("SELECT count(*) FROM section", [], |row| row.get(0)).unwrap();
    assert_eq!((version, rows), (1, 1));
    drop(again);
    run(&["mark", "--csv", "out.csv"]).arg("--book").arg(&path).assert().code(1).stderr(contains(
        "this mark book is damaged: 1 of its rows belong to no result; nothing was changed",
    ));
}

/// The place of an answer in the book is that of the option, however the paper shuffled it.
#[test]
fn answers_on_a_paper_keep_their_place_among_the_options() {
    let paper = POOL.paper("p1", 3).unwrap();
    let slip = filled(&POOL, &paper, usize::MAX);
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.sqlite");
    MarkBook::open(&path).unwrap().record(&slip, &marks_of(&slip), false).unwrap();
    let cohort = BookReader::open(&path).unwrap().cohort(&Selection::default()).unwrap();
    let mut chosen = 0;
    for answer in cohort.sheets[0].answers.iter().skip(1) {
        let question = cohort.questions.iter().find(|question| question.id == answer.question).unwrap();
        if let Some(place) = answer.chosen {
            assert!(question.options[place].right, "every answer but the first is the key");
            chosen += 1;
        }
    }
    let of_one = |picked: &healedhue::assess::Picked| {
        matches!(POOL.questions[picked.question].exercise.form.key(), Answer::One(_))
    };
    assert_eq!(chosen, paper.questions[1..].iter().filter(|picked| of_one(picked)).count());
}
