//! Slips: marked from the kept key or from a paper made again, refused in a line each, never in the way of others.

use super::fixture::{BLUEPRINT, POOL, filled, healedhue, output, run, write};
use healedhue::assess::{PaperId, Slip, SlipError, SlipTime};
use proptest::prelude::*;
use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};

/// A folder with papers for four people and their slips.
struct Sitting {
    folder: tempfile::TempDir,
    slips: Vec<PathBuf>,
}

impl Sitting {
    fn new() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let people = folder.path().join("people.csv");
        fs::write(&people, "id,name\nq1,Orrin Vell\nq2,Tamsel Brook\nq3,Perrin Ash\nq4,Aldra Moor\n")
            .unwrap();
        run(&["paper", BLUEPRINT, "--seed", "3"])
            .arg("--register")
            .arg(&people)
            .arg("--out")
            .arg(folder.path().join("sitting"))
            .assert()
            .success();
        let slips = ["q1", "q2", "q3", "q4"]
            .iter()
            .enumerate()
            .map(|(at, id)| {
                let slip = filled(&POOL, &POOL.paper(id, 3).unwrap(), 2 + at);
                write(folder.path(), &format!("{id}.json"), &slip)
            })
            .collect();
        Sitting { folder, slips }
    }

    fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }
}

fn marked(text: &str) -> Value {
    let value: Value = serde_json::from_str(text).unwrap();
    assert_eq!(value["refused"], serde_json::json!([]), "{value}");
    value["marked"].clone()
}

/// Whoever writes into a pipe may never come.
#[cfg(unix)]
#[test]
fn a_pipe_among_the_slips_keeps_nobody_waiting() {
    let sitting = Sitting::new();
    let pipe = sitting.path("slip.json");
    let made =
        std::process::Command::new("mkfifo").arg(&pipe).status().expect("mkfifo is part of every Unix");
    assert!(made.success());
    let mut command = run(&["mark"]);
    let output = command.arg(&pipe).args(&sitting.slips).assert().code(1).get_output().clone();
    let (marked, refused) =
        (String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr));
    assert!(marked.contains("4 marked, 1 refused"), "{marked}");
    assert!(refused.contains("this is no file: save the slip as one"), "{refused}");
}

#[test]
fn marks_are_the_same_with_the_kept_key_and_without() {
    let sitting = Sitting::new();
    let mark = |extra: &[&Path]| {
        let mut command = run(&["mark", "--json"]);
        command.args(&sitting.slips).args(extra);
        marked(&output(&mut command))
    };
    let (keys, people) = (sitting.path("sitting"), sitting.path("people.csv"));
    let with_keys = mark(&[Path::new("--keys"), &keys]);
    assert_eq!(with_keys, mark(&[Path::new("--register"), &people]));
    fs::remove_file(keys.join("keys/people/q2.json")).unwrap();
    assert_eq!(with_keys, mark(&[Path::new("--keys"), &keys]), "one key is missing");
    fs::remove_file(keys.join("keys/questions.json")).unwrap();
    assert_eq!(with_keys, mark(&[Path::new("--keys"), &keys]), "the mark tables are missing");
    let all = with_keys.as_array().unwrap();
    assert_eq!(all.len(), 4);
    for one in all {
        // The whole is the weighted sum of the sections, and these the mean of their questions.
        let sections = one["sections"].as_array().unwrap();
        let total: f64 =
            sections.iter().map(|s| s["weight"].as_f64().unwrap() * s["credit"].as_f64().unwrap()).sum();
        assert!((total - one["total"].as_f64().unwrap()).abs() < 1e-9);
        let answers = one["answers"].as_array().unwrap();
        let bottle: Vec<f64> = answers
            .iter()
            .filter(|answer| answer["section"] == "bottle")
            .map(|answer| answer["credit"].as_f64().unwrap())
            .collect();
        let mean = bottle.iter().sum::<f64>() / bottle.len() as f64;
        assert!((mean - sections[0]["credit"].as_f64().unwrap()).abs() < 1e-9);
        assert!(answers.iter().all(|answer| answer["credit"] != 1.0 || answer["misconception"].is_null()));
        assert_eq!(one["passed"].as_bool().unwrap(), one["total"].as_f64() >= one["pass_mark"].as_f64());
    }
}

/// Who is on the register and has no slip marked, in this run or in the book, is named at the end.
#[test]
fn who_has_not_handed_in_is_named() {
    let sitting = Sitting::new();
    let mark = |slips: &[usize], more: &[&str]| {
        let mut command = run(&["mark"]);
        command.args(slips.iter().map(|&slip| &sitting.slips[slip])).args(more);
        output(command.current_dir(sitting.folder.path()).args(["--course", env!("CARGO_MANIFEST_DIR")]))
    };
    let told = mark(&[0, 1], &["--keys", "sitting"]);
    assert!(
        told.ends_with("\nNothing handed in by\n  Perrin Ash; Aldra Moor\n2 marked, 0 refused\n"),
        "{told}"
    );
    let json = mark(&[0, 1], &["--keys", "sitting", "--json"]);
    let json: Value = serde_json::from_str(&json).unwrap();
    assert_eq!(json["missing"], serde_json::json!(["q3", "q4"]));
    mark(&[2], &["--keys", "sitting", "--book", "book.sqlite"]);
    let told = mark(&[0, 1], &["--register", "people.csv", "--book", "book.sqlite"]);
    assert!(told.contains("Nothing handed in by\n  Aldra Moor\n"), "{told}");
    assert!(!mark(&[0, 3], &["--keys", "sitting", "--book", "book.sqlite"]).contains("Nothing handed in by"));
    assert!(!mark(&[0, 1], &[]).contains("Nothing handed in by"), "without a register nobody is known");
}

#[test]
fn a_slip_of_right_answers_earns_everything_and_an_empty_one_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let paper = POOL.paper("q1", 9).unwrap();
    let right = filled(&POOL, &paper, usize::MAX);
    let right = Slip::new(right.paper.clone(), {
        let mut answers = right.answers.clone();
        let key = healedhue::assess::Key::new(&POOL, &paper);
        let first = key.questions().next().unwrap().to_owned();
        let question = POOL.questions.iter().find(|question| question.name() == first).unwrap();
        answers[0] = question.exercise.form.key().to_string().to_lowercase();
        answers
    });
    let blank = Slip::blank(&paper.id, paper.questions.len());
    let paths = [write(folder.path(), "right.json", &right), folder.path().join("blank.json")];
    fs::write(&paths[1], blank).unwrap();
    for (path, total) in paths.iter().zip([100.0, 0.0]) {
        let one = marked(&output(run(&["mark", "--json", "--empty"]).arg(path)));
        assert!((one[0]["total"].as_f64().unwrap() - total).abs() < 1e-9, "{one}");
    }
}

/// Whoever marks knows people, sections and beliefs by their names.
#[test]
fn what_is_told_of_a_slip_names_people_sections_and_beliefs() {
    let sitting = Sitting::new();
    let again = write(sitting.folder.path(), "again.json", &filled(&POOL, &POOL.paper("q1", 3).unwrap(), 7));
    let mark = |slips: &[&Path]| {
        let mut command = run(&["mark"]);
        command.args(slips).arg("--keys").arg(sitting.path("sitting"));
        command.assert().get_output().clone()
    };
    let told = |bytes: &[u8]| String::from_utf8(bytes.to_vec()).unwrap();
    let all = mark(&[&sitting.slips[0], &sitting.slips[1], &again]);
    let refused = told(&all.stderr);
    assert_eq!(
        refused.matches("Orrin Vell (q1) handed in slips for this paper that answer differently").count(),
        2,
        "{refused}"
    );
    let line = told(&all.stdout).lines().next().unwrap().to_owned();
    assert!(line.starts_with("Tamsel Brook (q2): "), "{line}");
    let sections = line.rsplit_once("passed").unwrap().1;
    let titles: Vec<&str> = POOL.blueprint.sections.iter().map(|section| section.title.as_str()).collect();
    for title in titles {
        assert!(sections.contains(&format!("; {title} ")), "{title}: {line}");
    }
    // A single slip is told whole.
    let whole = told(&mark(&[&sitting.slips[1]]).stdout);
    let key = run(&["mark", "--json"])
        .arg(&sitting.slips[1])
        .arg("--keys")
        .arg(sitting.path("sitting"))
        .output()
        .unwrap();
    let marks = marked(&told(&key.stdout));
    let ids: Vec<&str> = marks[0]["answers"]
        .as_array()
        .unwrap()
        .iter()
        .filter_map(|answer| answer["misconception"].as_str())
        .collect();
    assert!(!ids.is_empty());
    let run_together = whole.split_whitespace().collect::<Vec<_>>().join(" ");
    for id in ids {
        let belief = &POOL.course.misconception(id).unwrap().belief;
        assert!(run_together.contains(&format!("Behind it often: “{belief}”")), "{whole}");
        assert!(!whole.contains(id), "{whole}");
    }
}

/// An editor may write a mark first, or another encoding.
#[test]
fn a_slip_is_read_in_every_encoding_an_editor_writes() {
    let slip = filled(&POOL, &POOL.paper("q1", 3).unwrap(), 2);
    let text = serde_json::to_string_pretty(&slip).unwrap();
    for text in [format!("\u{feff}{text}"), text] {
        let little: Vec<u8> = text.encode_utf16().flat_map(u16::to_le_bytes).collect();
        let big: Vec<u8> = text.encode_utf16().flat_map(u16::to_be_bytes).collect();
        for bytes in [text.into_bytes(), little, big] {
            assert_eq!(Slip::read(&bytes).as_ref(), Ok(&slip));
        }
    }
}

/// A code that came by mail is saved with what stands around it.
#[test]
fn a_code_is_found_in_a_mail() {
    let slip = filled(&POOL, &POOL.paper("q1", 3).unwrap(), 2);
    let code = slip.code();
    let lines: Vec<&str> =
        code.as_bytes().chunks(72).map(|line| std::str::from_utf8(line).unwrap()).collect();
    for mail in [
        format!("Hello, here is my code:\n\n{code}\n"),
        format!("{}\n\nBest wishes\nOrrin", lines.join("\n")),
        lines.iter().map(|line| format!("> {line}\r\n")).collect::<String>() + "> Best wishes\r\n",
        format!("See below.\n{}", lines.iter().map(|line| format!(">> {line}\n")).collect::<String>()),
    ] {
        assert_eq!(Slip::read(mail.as_bytes()).as_ref(), Ok(&slip), "{mail}");
    }
    let after_the_hyphen = code.replacen("healedhue-", "healedhue-\n", 1);
    for mail in [
        format!("[12/05/2026, 14:03] Orrin: {code}\n"),
        format!("\"{code}\""),
        format!("{after_the_hyphen}\n"),
        // Quoted-printable, RFC 2045: lines are broken softly by `=`.
        format!("Content-Transfer-Encoding: quoted-printable\n\n{}", lines.join("=\r\n")),
        lines.iter().map(|line| format!("| {line}\n")).collect::<String>(),
        lines.join("\u{200B}"),
        lines.join("\u{AD}"),
        format!("{code}\n\nOnce more, to be sure:\n{code}\n"),
    ] {
        assert_eq!(Slip::read(mail.as_bytes()).as_ref(), Ok(&slip), "{mail}");
    }
    // Of two that differ nobody knows which counts.
    let other = filled(&POOL, &POOL.paper("q1", 3).unwrap(), 1).code();
    let both = format!("{code}\n\nThis one is right:\n{other}\n");
    assert_eq!(Slip::read(both.as_bytes()), Err(SlipError::Codes(2)));
    // A letter near the beginning, where the name of the form stands.
    let damaged = code.replacen("healedhue-slip:ey", "healedhue-slip:ez", 1);
    assert_ne!(damaged, code);
    assert_eq!(Slip::read(damaged.as_bytes()), Err(SlipError::CodeDamaged));
    for cut in (20..code.len() - 1).step_by(7) {
        let told = Slip::read(format!("Here:\n{}", &code[..cut]).as_bytes()).unwrap_err();
        assert_eq!(told, SlipError::CodeCutShort, "{cut}");
    }
}

#[test]
fn bad_slips_are_told_in_a_line_each_and_the_others_are_marked() {
    let sitting = Sitting::new();
    let good = fs::read_to_string(&sitting.slips[0]).unwrap();
    let value: Value = serde_json::from_str(&good).unwrap();
    let changed = |change: &dyn Fn(&mut Value)| {
        let mut value = value.clone();
        change(&mut value);
        // A check over what stands there now, where that is possible.
        let paper: Option<PaperId> = serde_json::from_value(value["paper"].clone()).ok();
        let answers: Option<Vec<String>> = serde_json::from_value(value["answers"].clone()).ok();
        if let (Some(paper), Some(answers)) = (paper, answers) {
            value["check"] = serde_json::to_value(Slip::new(paper, answers)).unwrap()["check"].clone();
        }
        value.to_string()
    };
    let code = Slip::read(good.as_bytes()).unwrap().code();
    let bad: Vec<(&str, Vec<u8>)> = [
        ("another-version", changed(&|v| v["paper"]["course"] = "0123456789abcdef".into())),
        ("another-seed", changed(&|v| v["paper"]["seed"] = 4.into())),
        ("another-person", changed(&|v| v["paper"]["candidate"] = "q2".into())),
        ("another-paper", changed(&|v| v["paper"]["digest"] = "00".into())),
        ("another-blueprint", changed(&|v| v["paper"]["blueprint"] = "rehearsal".into())),
        ("answers-missing", changed(&|v| v["answers"] = serde_json::json!(["A", "B"]))),
        ("answers-wrong-kind", changed(&|v| v["answers"][3] = serde_json::json!(["A"]))),
        ("answer-unreadable", changed(&|v| v["answers"][0] = "Z".into())),
        ("code-cut-short", code[..code.len() / 2].to_owned()),
        ("edited", good.replacen("\"A\"", "\"B\"", 1)),
        ("empty", String::new()),
        ("no-json", "dear instructor, \u{1b}[31mhere are my answers".to_owned()),
        ("no-slip", "{\"answers\": []}".to_owned()),
        ("outside", changed(&|v| v["paper"]["candidate"] = "../../../etc/passwd".into())),
        ("truncated", good[..good.find("candidate").expect("a slip names the candidate")].to_owned()),
        ("twice", good.clone()),
        ("unknown", changed(&|v| v["paper"]["candidate"] = "q9".into())),
        (
            "time-negative",
            changed(&|v| v["time"] = serde_json::json!({"form": "healedhue-time-1", "seconds": -3})),
        ),
        (
            "time-of-others",
            changed(&|v| {
                v["time"] = serde_json::json!({"form": "healedhue-time-1", "seconds": 60, "each": [20, 40]})
            }),
        ),
        ("time-of-later-form", changed(&|v| v["time"] = serde_json::json!({"form": "healedhue-time-2"}))),
        (
            "time-too-long",
            changed(&|v| v["time"] = serde_json::json!({"form": "healedhue-time-1", "seconds": 36_001})),
        ),
        (
            "time-with-more",
            changed(&|v| v["time"] = serde_json::json!({"form": "healedhue-time-1", "seconds": 1, "who": 2})),
        ),
        ("later-form", good.replace("healedhue-slip-1", "healedhue-slip-7")),
        ("only-spaces", " \n".to_owned()),
        ("page", "<!doctype html>\n<title>A paper</title>".to_owned()),
        ("twice-in-utf-16", format!("\u{feff}{good}")),
    ]
    .into_iter()
    .map(|(name, text)| {
        let utf_16 = || text.encode_utf16().flat_map(u16::to_le_bytes).collect();
        (name, if name == "twice-in-utf-16" { utf_16() } else { text.into_bytes() })
    })
    .chain([
        ("picture", b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR".to_vec()),
        ("document", b"%PDF-1.7\n".to_vec()),
        ("packed", b"PK\x03\x04\x14\0".to_vec()),
        ("latin", b"{\"form\": \"\xe9\"}".to_vec()),
        ("half-utf-16", b"\xff\xfe{\0\"".to_vec()),
    ])
    .collect();
    let mut command = run(&["mark"]);
    command.args(&sitting.slips);
    for (name, content) in &bad {
        let path = sitting.path(&format!("{name}.json"));
        fs::write(&path, content).unwrap();
        command.arg(path);
    }
    let huge = sitting.path("huge.json");
    fs::File::create(&huge).unwrap().set_len(50_000_000).unwrap();
    command.arg(&huge).arg(sitting.path("missing.json"));
    command.arg("--keys").arg(sitting.path("sitting")).arg("--book").arg(sitting.path("book.sqlite"));
    let output = command.assert().code(1).get_output().clone();
    let clean = |bytes: &[u8]| {
        String::from_utf8(bytes.to_vec())
            .unwrap()
            .replace(&format!("{}/", sitting.folder.path().display()), "")
            .replace(&POOL.course.version[..12], "[version]")
            .replace(&POOL.paper("q1", 3).unwrap().id.digest, "[digest 1]")
            .replace(&POOL.paper("q2", 3).unwrap().id.digest, "[digest 2]")
    };
    let refused = clean(&output.stderr);
    assert_eq!(refused.lines().count(), bad.len() + 2, "{refused}");
    assert!(!refused.contains('\u{1b}'));
    // Checks and answers follow the demo's questions, so these are masked.
    let masked: Vec<String> = refused
        .lines()
        .map(|line| {
            let told = ["its check is", "there is no option 26; there are"];
            match told.iter().find_map(|told| Some((line.split_once(told)?.0, told))) {
                Some((before, told)) => format!("{before}{told} …"),
                None => line.to_owned(),
            }
        })
        .collect();
    insta::assert_snapshot!("refused_slips", masked.join("\n"));
    assert!(clean(&output.stdout).ends_with("4 marked, 33 refused\n"), "{}", clean(&output.stdout));
    let book = healedhue::assess::MarkBook::open(&sitting.path("book.sqlite")).unwrap();
    assert_eq!(book.results().unwrap(), 4);
}

#[test]
fn a_slip_of_another_course_version_is_still_marked_by_its_kept_key() {
    let fixture = super::fixture::small_course();
    let folder = tempfile::tempdir().unwrap();
    let people = folder.path().join("people.csv");
    fs::write(&people, "id;name\np1;Orrin\n").unwrap();
    let sitting = folder.path().join("sitting");
    run(&["paper", "small", "--seed", "5"])
        .arg("--course")
        .arg(fixture.path(""))
        .arg("--register")
        .arg(&people)
        .arg("--out")
        .arg(&sitting)
        .assert()
        .success();
    let slip = sitting.join("blank-slips/p1.json");
    let later = fixture.append("lessons/bank/small.yaml", "\n# a remark\n");
    let mark = |keys: bool| {
        let mut command = run(&["mark"]);
        command.arg(&slip).args(["--empty", "--course"]).arg(later.path(""));
        if keys {
            command.arg("--keys").arg(&sitting);
        }
        command
    };
    mark(true).assert().success();
    mark(false).assert().code(1).stderr(predicates::str::contains("mark it with the keys kept then"));
}

/// What a slip tells of time changes no mark, and is kept with the marks; a slip without it is as good.
#[test]
fn time_is_told_and_weighs_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let paper = POOL.paper("q1", 3).unwrap();
    let plain = filled(&POOL, &paper, 3);
    let each: Vec<u32> = (0..16).map(|at| 30 + at).collect();
    let timed = plain.clone().with_time(SlipTime::new(1_500, each));
    let mark =
        |slip: &Slip| marked(&output(run(&["mark", "--json"]).arg(write(folder.path(), "slip.json", slip))));
    let (before, mut after) = (mark(&plain), mark(&timed));
    assert_eq!((&after[0]["seconds"], &after[0]["answers"][15]["seconds"]), (&1_500.into(), &45.into()));
    let one = after[0].as_object_mut().unwrap();
    one.remove("seconds");
    for answer in one["answers"].as_array_mut().unwrap() {
        answer.as_object_mut().unwrap().remove("seconds");
    }
    assert_eq!(before, after);
    let code = folder.path().join("code.txt");
    fs::write(&code, timed.code()).unwrap();
    let book = folder.path().join("book.sqlite");
    let (results, answers) = (folder.path().join("results.csv"), folder.path().join("answers.csv"));
    let mut command = run(&["mark"]);
    command.arg(&code).arg("--book").arg(&book).arg("--csv").arg(&results).arg("--answers-csv").arg(&answers);
    command.assert().success();
    let column = |path: &Path, name: &str| -> Vec<String> {
        let mut reader = csv::Reader::from_path(path).unwrap();
        let at = reader.headers().unwrap().iter().position(|header| header == name).unwrap();
        reader.records().map(|record| record.unwrap()[at].to_owned()).collect()
    };
    assert_eq!(column(&results, "minutes"), ["25"]);
    assert_eq!(column(&answers, "seconds")[..2], ["30", "31"]);
    let tables = folder.path().join("tables");
    let mut command = healedhue();
    command.args(["report", "--csv"]);
    command.arg(&tables).arg("--book").arg(&book).arg("--out").arg(folder.path().join("report"));
    command.assert().success();
    assert_eq!(column(&tables.join("scores.csv"), "minutes"), ["25"]);
    let medians = column(&tables.join("items.csv"), "median_seconds");
    assert!(
        medians.iter().all(|median| (30.0..=45.0).contains(&median.parse::<f64>().unwrap())),
        "{medians:?}"
    );
}

proptest! {
    /// Whatever is answered, a slip and its code read back as they were.
    #[test]
    fn prop_slips_and_codes_read_back(answers in proptest::collection::vec(".{0,12}", 0..80), seed in 0..1_u64 << 53, who in "\\PC{1,20}") {
        let paper = PaperId { course: "c".into(), blueprint: "b".into(), candidate: who, seed, digest: "d".into() };
        let slip = Slip::new(paper, answers);
        prop_assert_eq!(&Slip::read(&serde_json::to_vec(&slip).unwrap()).unwrap(), &slip);
        prop_assert_eq!(&Slip::read(slip.code().as_bytes()).unwrap(), &slip);
    }

    /// Nothing at all makes reading panic.
    #[test]
    fn prop_any_bytes_are_a_slip_or_an_error(bytes in proptest::collection::vec(any::<u8>(), 0..400)) {
        prop_assert!(Slip::read(&bytes).is_err());
    }
}
