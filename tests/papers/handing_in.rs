//! What is handed in as people hand it in: in folders below folders, under other endings, twice, under names that nobody sees whole.

use super::fixture::{BLUEPRINT, POOL, filled, output, run, write};
use healedhue::assess::{MarkBook, Slip, SlipTime};
use predicates::prelude::PredicateBooleanExt;
use predicates::str::contains;
use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};

/// A slip of the paper with seed 3.
fn slip_of(candidate: &str, wrong: usize) -> Slip {
    filled(&POOL, &POOL.paper(candidate, 3).unwrap(), wrong)
}

/// Writes a slip below a folder, which is made.
fn put(folder: &Path, name: &str, slip: &Slip) -> PathBuf {
    fs::create_dir_all(folder.join(name).parent().unwrap()).unwrap();
    write(folder, name, slip)
}

fn results(book: &Path) -> u64 {
    MarkBook::open(book).unwrap().results().unwrap()
}

#[test]
fn folders_below_are_read_and_what_is_passed_over_is_named() {
    let folder = tempfile::tempdir().unwrap();
    let slips = folder.path().join("slips");
    put(&slips, "q1.json", &slip_of("q1", 3));
    put(&slips, "monday/q2.json", &slip_of("q2", 3));
    put(&slips, "monday/late/q3.TXT", &slip_of("q3", 3));
    put(&slips, "monday/q4.json.download", &slip_of("q4", 3));
    put(&slips, ".kept/q5.json", &slip_of("q5", 3));
    fs::write(slips.join(".DS_Store"), "left by a file manager").unwrap();
    let mut passed_over = 2;
    #[cfg(unix)]
    {
        std::os::unix::fs::symlink(&slips, slips.join("monday/again")).unwrap();
        passed_over += 1;
    }
    // A file that is named beside its folder is one slip still.
    let mark = || {
        let mut command = run(&["mark"]);
        command.arg(&slips).arg(slips.join("q1.json"));
        command
    };
    let told = mark().assert().success().get_output().clone();
    let (marked, told) = (String::from_utf8(told.stdout).unwrap(), String::from_utf8(told.stderr).unwrap());
    assert!(marked.ends_with(&format!("3 marked, 0 refused, {passed_over} passed over\n")), "{marked}");
    assert_eq!(told.lines().count(), passed_over, "{told}");
    assert!(told.contains("q4.json.download: its name does not end in .json or .txt"), "{told}");
    assert!(told.contains(".kept: it is hidden"), "{told}");
    assert_eq!(told.contains("again: it is a link to a folder"), cfg!(unix), "{told}");
    let json: Value = serde_json::from_str(&output(mark().arg("--json"))).unwrap();
    assert_eq!(json["passed_over"].as_array().map(Vec::len), Some(passed_over), "{json}");
}

#[test]
fn of_very_many_files_passed_over_the_rest_is_counted() {
    let folder = tempfile::tempdir().unwrap();
    put(folder.path(), "q1.json", &slip_of("q1", 3));
    for number in 0..50 {
        fs::write(folder.path().join(format!("photo-{number:02}.jpg")), "a picture").unwrap();
    }
    let told = run(&["mark"]).arg(folder.path()).assert().success().get_output().stderr.clone();
    let told = String::from_utf8(told).unwrap();
    assert_eq!(told.lines().count(), 21, "{told}");
    assert!(
        told.contains("photo-19.jpg") && told.ends_with("passed over: 30 more (--json names them all)\n")
    );
}

/// The blank slips that `paper` writes beside the papers are no answers.
#[test]
fn a_folder_of_papers_is_no_folder_of_slips() {
    let folder = tempfile::tempdir().unwrap();
    let (people, sitting) = (folder.path().join("people.csv"), folder.path().join("in/sitting"));
    fs::write(&people, "id,name\nq1,Orrin Vell\n").unwrap();
    let mut paper = run(&["paper", BLUEPRINT, "--seed", "3"]);
    paper.arg("--register").arg(&people).arg("--out").arg(&sitting).assert().success();
    let book = folder.path().join("book.sqlite");
    for named in [&sitting, &folder.path().join("in")] {
        let mut mark = run(&["mark"]);
        mark.arg(named).arg("--keys").arg(&sitting).arg("--book").arg(&book);
        mark.assert().code(1).stderr(
            contains("blank-slips: `paper` wrote this folder")
                .and(contains("there is no slip in these folders")),
        );
    }
    assert!(!book.exists());
    // By its own name it is one.
    let mut mark = run(&["mark"]);
    mark.arg(sitting.join("blank-slips")).arg("--keys").arg(&sitting).arg("--empty");
    mark.assert().success().stdout(contains("1 marked, 0 refused"));
}

#[test]
fn slips_of_one_person_that_differ_are_never_chosen_by_their_file_names() {
    let folder = tempfile::tempdir().unwrap();
    let slips = folder.path().join("slips");
    let first = put(&slips, "a.json", &slip_of("q1", 3));
    let second = put(&slips, "b.json", &slip_of("q1", 5));
    put(&slips, "c.json", &slip_of("q2", 3));
    put(&slips, "d.json", &slip_of("q2", 3));
    // Of the same person for the same paper, but none that could be marked.
    let broken = slip_of("q2", 4);
    put(&slips, "e.json", &Slip::new(broken.paper.clone(), broken.answers[1..].to_vec()));
    let book = folder.path().join("book.sqlite");
    let mark = |paths: &[&Path]| {
        let mut command = run(&["mark"]);
        command.arg("--book").arg(&book).args(paths);
        command
    };
    let told = mark(&[&slips]).assert().code(1).get_output().clone();
    let (marked, told) = (String::from_utf8(told.stdout).unwrap(), String::from_utf8(told.stderr).unwrap());
    assert!(marked.ends_with("1 marked, 4 refused\n"), "{marked}");
    for (line, file, other) in [(0, "a.json", "b.json"), (1, "b.json", "a.json")] {
        let line = told.lines().nth(line).unwrap();
        assert!(
            line.contains(file) && line.contains(&format!("this one and {}", slips.join(other).display()))
        );
        assert!(line.contains("answer differently") && line.contains("--second-attempt"), "{line}");
    }
    assert!(told.contains("d.json: it answers like ") && told.contains("c.json, which is marked"), "{told}");
    assert_eq!(results(&book), 1);
    // Once one of them is in the book it stays, whatever the others are called.
    mark(&[&second]).assert().success();
    let told = mark(&[&slips]).assert().code(1).get_output().clone();
    let (marked, told) = (String::from_utf8(told.stdout).unwrap(), String::from_utf8(told.stderr).unwrap());
    assert!(marked.contains("q1: ") && marked.contains("in the book already"), "{marked}");
    let line = told.lines().find(|line| line.contains("a.json: ")).unwrap();
    assert!(
        line.contains("in the book already, as attempt 1 with ") && line.contains("that one stays"),
        "{line}"
    );
    assert_eq!(results(&book), 2);
    mark(&[&first]).arg("--second-attempt").assert().success().stdout(contains("a further attempt"));
    assert_eq!(results(&book), 3);
}

/// Two sittings are two papers.
#[test]
fn slips_for_papers_of_two_seeds_are_both_marked() {
    let folder = tempfile::tempdir().unwrap();
    put(folder.path(), "third.json", &slip_of("q1", 3));
    put(folder.path(), "fourth.json", &filled(&POOL, &POOL.paper("q1", 4).unwrap(), 3));
    run(&["mark"]).arg(folder.path()).assert().success().stdout(contains("2 marked, 0 refused"));
}

#[cfg(unix)]
#[test]
fn names_from_outside_reach_no_terminal_as_commands() {
    let folder = tempfile::tempdir().unwrap();
    let bad = "q\u{1b}]0;owned\u{7}\u{202e}nosj.json";
    put(folder.path(), bad, &slip_of("q1", 3));
    fs::write(folder.path().join("\u{1b}[2Jx.jpg"), "").unwrap();
    fs::write(folder.path().join("line\nbreak.json"), "none").unwrap();
    let who = "q\u{1b}[31m\u{2066}1";
    put(folder.path(), "q2.json", &slip_of(who, 3));
    let missing = folder.path().join("no\u{9b}where\u{1b}.csv");
    for arguments in [vec![], vec![Path::new("--register"), &missing], vec![Path::new("--keys"), &missing]] {
        let mut command = run(&["mark"]);
        let told = command.arg(folder.path()).args(&arguments).assert().code(1).get_output().clone();
        for text in [told.stdout, told.stderr] {
            let text = String::from_utf8(text).unwrap();
            let unseen = |c: char| c.is_control() && c != '\n' || ('\u{202a}'..='\u{2069}').contains(&c);
            assert!(!text.contains(unseen), "{text:?}");
            assert!(text.is_empty() || arguments.is_empty() || text.contains("\\u{9b}"), "{text}");
        }
    }
}

#[test]
fn drops_are_told_by_the_names_of_their_bottles() {
    let folder = tempfile::tempdir().unwrap();
    // Papers of several, since not every paper asks for drops; each by itself, since a slip alone is told in full. Lines are wrapped.
    let told: String = (1..=8)
        .map(|person| {
            put(folder.path(), &format!("q{person}.json"), &slip_of(&format!("q{person}"), usize::MAX))
        })
        .map(|path| output(run(&["mark"]).arg(path)).replace("\n       ", " "))
        .collect();
    let shelf = &POOL.course.shelf;
    let drops = told.lines().filter(|line| line.contains(", best ") && line.contains(" drop")).count();
    assert!(drops > 0, "{told}");
    for line in told.lines().filter(|line| line.contains(", best ")) {
        let ids = shelf.bottles.iter().filter(|bottle| line.split([' ', ',']).any(|word| word == bottle.id));
        assert_eq!(ids.count(), 0, "{line}");
    }
}

/// A blank slip that nobody filled in would stand in the book as a mark of nothing, and keep the real one out.
#[test]
fn blank_slips_are_marked_only_when_they_shall_be() {
    let folder = tempfile::tempdir().unwrap();
    let book = folder.path().join("book.sqlite");
    let slips = folder.path().join("slips");
    fs::create_dir(&slips).unwrap();
    let paper = POOL.paper("q1", 3).unwrap();
    let blank = Slip::new(paper.id.clone(), vec![String::new(); paper.questions.len()]);
    put(&slips, "blank.json", &blank);
    put(&slips, "q1.json", &slip_of("q1", 3));
    let mark = |more: &[&str]| {
        let mut command = run(&["mark"]);
        command.arg("--book").arg(&book).arg(&slips).args(more);
        command
    };
    mark(&[]).assert().code(1).stderr(contains("nothing is answered").and(contains("`--empty`")));
    assert_eq!(results(&book), 1, "the slip that was filled in is no rival's");
    fs::remove_file(slips.join("q1.json")).unwrap();
    mark(&["--empty", "--second-attempt"]).assert().success();
    assert_eq!(results(&book), 2);
    // A page tells the time that it took: somebody sat there.
    put(&slips, "blank.json", &blank.with_time(SlipTime::new(60, Vec::new())));
    run(&["mark"]).arg(&slips).assert().success();
}
