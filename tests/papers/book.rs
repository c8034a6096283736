//! The mark book: never a result twice, never half a one, whenever the program dies.

use super::fixture::{POOL, filled, healedhue, run, write};
use crate::proofs::cache;
use healedhue::assess::{BookError, MarkBook, Recorded, Slip, mark_slip};
use predicates::str::contains;
use std::borrow::Cow;
use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};

fn marks_of(slip: &Slip) -> healedhue::assess::SlipMarks {
    let paper = POOL.paper(&slip.paper.candidate, slip.paper.seed).unwrap();
    let key = healedhue::assess::Key::new(&POOL, &paper);
    let tables = healedhue::assess::MarkTables::new(
        POOL.course,
        paper.questions.iter().map(|picked| &POOL.questions[picked.question]),
    );
    mark_slip(POOL.course, &key, |name| tables.questions.get(name).map(Cow::Borrowed), slip).unwrap()
}

fn answers(book: &MarkBook) -> String {
    let mut text = Vec::new();
    book.answers_csv(&mut text).unwrap();
    String::from_utf8(text).unwrap()
}

#[test]
fn marking_again_changes_nothing_and_another_slip_needs_leave() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.sqlite");
    let first = filled(&POOL, &POOL.paper("q1", 3).unwrap(), 3);
    let second = filled(&POOL, &POOL.paper("q1", 3).unwrap(), 5);
    let mut book = MarkBook::open(&path).unwrap();
    assert_eq!(book.record(&first, &marks_of(&first), false).unwrap(), Recorded::New(1));
    let before = answers(&book);
    assert_eq!(before.lines().count(), 17, "a line of names and sixteen answers");
    assert_eq!(book.record(&first, &marks_of(&first), true).unwrap(), Recorded::Already(1));
    assert!(matches!(
        book.record(&second, &marks_of(&second), false),
        Err(BookError::Another { attempt: 1, .. })
    ));
    assert_eq!(before, answers(&book));
    assert_eq!(book.record(&second, &marks_of(&second), true).unwrap(), Recorded::New(2));
    assert_eq!(book.record(&second, &marks_of(&second), false).unwrap(), Recorded::Already(2));
    assert_eq!(book.results().unwrap(), 2);
    drop(book);
    assert_eq!(MarkBook::open(&path).unwrap().results().unwrap(), 2);
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1, "one file when it is closed");
}

#[test]
fn a_file_that_is_no_mark_book_is_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("holiday.jpg");
    let content = vec![7; 5000];
    fs::write(&path, &content).unwrap();
    assert!(matches!(MarkBook::open(&path), Err(BookError::NoBook)));
    assert_eq!(fs::read(&path).unwrap(), content);
    run(&["mark", "--csv", "out.csv"])
        .arg("--book")
        .arg(&path)
        .assert()
        .code(1)
        .stderr(contains("no mark book"));
}

#[test]
fn exports_hold_no_formula() {
    let folder = tempfile::tempdir().unwrap();
    let people = folder.path().join("people.csv");
    fs::write(&people, "id,name\nq1,\"=HYPERLINK(\"\"x\"\",\"\"y\"\")\"\n-q2,@sum\n").unwrap();
    let slips = ["q1", "-q2"].map(|id| {
        write(folder.path(), &format!("slip{id}.json"), &filled(&POOL, &POOL.paper(id, 3).unwrap(), 3))
    });
    let (results, all) = (folder.path().join("results.csv"), folder.path().join("answers.csv"));
    run(&["mark"])
        .args(&slips)
        .arg("--register")
        .arg(&people)
        .arg("--book")
        .arg(folder.path().join("book.sqlite"))
        .arg("--csv")
        .arg(&results)
        .arg("--answers-csv")
        .arg(&all)
        .assert()
        .success();
    for path in [results, all] {
        let mut reader = csv::Reader::from_path(&path).unwrap();
        let records: Vec<csv::StringRecord> = reader.records().map(Result::unwrap).collect();
        assert!(records.len() >= 2);
        let fields = records.iter().flatten();
        let formula = fields.filter(|field| field.starts_with(['=', '+', '-', '@'])).collect::<Vec<_>>();
        assert!(formula.is_empty(), "{formula:?}");
        assert!(records.iter().any(|record| record.get(1) == Some("'=HYPERLINK(\"x\",\"y\")")));
    }
}

/// What a killed export leaves goes with the next one; what is somebody else's, or another export's, stays.
#[test]
fn leftovers_of_killed_exports_are_removed() {
    let folder = tempfile::tempdir().unwrap();
    let slip = write(folder.path(), "q1.json", &filled(&POOL, &POOL.paper("q1", 3).unwrap(), 3));
    let (left, others) = (
        ".healedhue-new-marks.csv-Ab3dEf9h",
        [".healedhue-new-answers.csv-Ab3dEf9h", ".healedhue-new-marks.csv-mine"],
    );
    for name in [left].iter().chain(&others) {
        fs::write(folder.path().join(name), "half a line").unwrap();
    }
    // Earlier versions named it so that it is known as ours by its content alone.
    let earlier = folder.path().join(".export-Ab3dEf");
    fs::write(&earlier, "candidate,name,blueprint\nq1,Orr").unwrap();
    let strange =
        [".export-Zz9yXw", ".export-notes", ".export-Ab3dEfgh"].map(|name| folder.path().join(name));
    fs::write(&strange[0], "a list of somebody's").unwrap();
    strange[1..].iter().for_each(|path| fs::write(path, "candidate,name,x").unwrap());
    let export = || {
        let mut command = run(&["mark"]);
        command.arg("--book").arg(folder.path().join("book.sqlite"));
        command.arg("--csv").arg(folder.path().join("marks.csv"));
        command
    };
    export().assert().code(1).stderr(contains("there is no mark book here to export from"));
    export().arg(&slip).assert().success();
    assert!(!folder.path().join(left).exists());
    assert!(others.iter().all(|name| folder.path().join(name).exists()));
    assert!(!earlier.exists() && strange.iter().all(|path| path.exists()));
    export().assert().success().stdout(contains("marks.csv: 1 result\n"));
    let mut elsewhere = run(&["mark"]);
    elsewhere.arg(&slip).arg("--book").arg(folder.path().join("new.sqlite"));
    elsewhere.arg("--csv").arg(folder.path().join("nowhere/marks.csv"));
    elsewhere.assert().code(1).stderr(contains("its folder is not there; make it first"));
    assert!(!folder.path().join("new.sqlite").exists(), "nothing is begun that cannot be ended");
}

/// The real program is killed while it records; whatever stands in the book is whole, and a second run completes it.
#[test]
fn a_kill_at_any_moment_leaves_whole_results_and_the_next_run_completes_them() {
    const SLIPS: usize = 300;
    let folder = tempfile::tempdir().unwrap();
    let slips = folder.path().join("slips");
    fs::create_dir(&slips).unwrap();
    for number in 0..SLIPS {
        let paper = POOL.paper(&format!("k{number:03}"), 3).unwrap();
        write(&slips, &format!("{number:03}.json"), &filled(&POOL, &paper, 3 + number % 4));
    }
    let whole = |path: &Path| {
        let book = MarkBook::open(path).unwrap();
        let results = book.results().unwrap() as usize;
        assert_eq!(answers(&book).lines().count(), 1 + results * 16, "every result has all its answers");
        results
    };
    let program = healedhue().get_program().to_owned();
    for wanted in [0, 1, 40, 150] {
        let book = folder.path().join(format!("book-{wanted}.sqlite"));
        let mut child = Command::new(&program)
            .current_dir(env!("CARGO_MANIFEST_DIR"))
            .args(["mark", "--book"])
            .arg(&book)
            .arg(&slips)
            .arg("--cache")
            .arg(cache())
            .stdout(Stdio::null())
            .spawn()
            .unwrap();
        // Killed when at least so many results stand in the book, or when all do.
        while child.try_wait().unwrap().is_none() {
            let so_far =
                if book.exists() { MarkBook::open(&book).and_then(|b| b.results()).unwrap_or(0) } else { 0 };
            if so_far >= wanted && book.exists() {
                // SIGKILL on Unix.
                child.kill().unwrap();
                break;
            }
            // Looking locks the book: without a pause the other would hardly come to write.
            std::thread::sleep(std::time::Duration::from_millis(2));
        }
        child.wait().unwrap();
        let left = whole(&book);
        assert!(left as u64 >= wanted, "what was recorded stays: {left} of {wanted}");
        let again = || {
            let mut command = run(&["mark"]);
            command.arg("--book").arg(&book).arg(&slips);
            command
        };
        again().assert().success().stdout(contains(format!("{SLIPS} marked, 0 refused")));
        assert_eq!(whole(&book), SLIPS);
    }
}
