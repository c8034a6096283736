//! What comes back of an assignment: slips gathered, marked, refused and recorded, in the ways of those of papers.

use super::fixture::{COURSE, Desk, WEEK, healedhue, perfect};
use crate::proofs::{PROOFS, cache};
use healedhue::assess::assigned::{AssignmentSlip, Identity, practice_set};
use healedhue::course::read_assignment;
use healedhue::exercise::Form;
use predicates::prelude::PredicateBooleanExt;
use predicates::str::{contains, is_empty};
use std::fs;
use std::path::Path;

#[test]
fn slips_are_marked_against_the_course_alone() {
    let desk = Desk::new();
    let right = perfect("tamsel");
    // Whatever else a slip claims is not looked at.
    let mut boasting: serde_json::Value = serde_json::from_str(&perfect("bren").write()).expect("JSON");
    boasting["answers"][0] = "".into();
    boasting["answers"][1] = serde_json::Value::Null;
    boasting["credit"] = 1.into();
    boasting["marks"] = serde_json::json!([1, 1, 1]);
    let slips = [desk.slip("tamsel.json", right.write()), desk.slip("bren.json", boasting.to_string())];
    let told = desk.assign().arg("--collect").args(&slips).assert().success();
    let told = String::from_utf8(told.get_output().stdout.clone()).expect("UTF-8");
    insta::assert_snapshot!(told);
    let output = desk.assign().arg("--collect").args(&slips).arg("--json").assert().success();
    let marks: serde_json::Value = serde_json::from_slice(&output.get_output().stdout).expect("JSON");
    let (tamsel, bren) = (&marks["marked"][0], &marks["marked"][1]);
    assert_eq!((tamsel["person"].as_str(), tamsel["credit"].as_f64()), (Some("tamsel"), Some(1.0)));
    assert_eq!((bren["answered"].as_u64(), bren["credit"].as_f64()), (Some(10), Some(10.0 / 12.0)));
    assert_eq!(marks["missing"], serde_json::json!(["ysolde"]));
}

/// As handed in: in folders below folders, in any encoding of an editor, beside what is no slip.
#[test]
fn slips_are_gathered_as_those_of_papers_are() {
    let desk = Desk::new();
    let slips = desk.path("slips");
    fs::create_dir_all(slips.join("monday/late")).expect("folders");
    let utf_16 = |text: String| -> Vec<u8> {
        format!("\u{feff}{text}").encode_utf16().flat_map(u16::to_le_bytes).collect()
    };
    desk.slip("slips/tamsel.json", perfect("tamsel").write());
    desk.slip("slips/monday/bren.txt", utf_16(perfect("bren").write()));
    desk.slip("slips/monday/late/picture.json", b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR");
    desk.slip("slips/monday/late/paper.json", r#"{"form": "healedhue-slip-1", "answers": []}"#);
    desk.slip("slips/monday/ysolde.json.download", perfect("ysolde").write());
    desk.slip("slips/.DS_Store", "left by a file manager");
    let collect = || {
        let mut command = desk.assign();
        command.arg("--collect").arg(&slips).arg(slips.join("tamsel.json"));
        command
    };
    let output = collect().assert().code(1).stdout(contains("2 of 3 people handed in")).get_output().clone();
    let told = String::from_utf8(output.stderr).expect("UTF-8");
    let told: Vec<String> =
        told.lines().map(|line| line.replace(&format!("{}/", slips.display()), "")).collect();
    assert_eq!(
        told,
        [
            "passed over: monday/ysolde.json.download: its name does not end in .json or .txt; give it that ending if it is a slip",
            "refused: monday/late/paper.json: this is a slip of a paper: `healedhue mark` marks it",
            "refused: monday/late/picture.json: the file is a picture (PNG), not an answer slip",
        ]
    );
    let json = collect().arg("--json").assert().code(1).stderr(is_empty()).get_output().stdout.clone();
    let json: serde_json::Value = serde_json::from_slice(&json).expect("JSON");
    let files = |name: &str| -> Vec<String> {
        let all = json[name].as_array().expect("a list").iter();
        let file = |one: &serde_json::Value| {
            Path::new(one["file"].as_str().expect("a file"))
                .file_name()
                .map(|name| name.display().to_string())
        };
        all.filter_map(file).collect()
    };
    assert_eq!(files("marked"), ["tamsel.json", "bren.txt"], "in the order of the people");
    assert_eq!(files("refused"), ["paper.json", "picture.json"]);
    assert_eq!(files("passed_over"), ["ysolde.json.download"]);
}

/// A folder of assignments is handed out in one run, and all their slips are collected in one, each with its own.
#[test]
fn several_assignments_are_handed_out_and_collected_in_one_run() {
    let desk = Desk::new();
    fs::create_dir(desk.path("next")).expect("a folder");
    let of = |id: &str, people: &str| {
        WEEK.replace("id: week-three", &format!("id: {id}"))
            .split("people:")
            .next()
            .unwrap_or_default()
            .to_owned()
            + "people:\n"
            + people
    };
    let (first, second) = (
        of("first", "  - {id: tamsel, name: Tamsel Orrick}\n  - {id: bren, name: Bren}\n"),
        of("second", "  - {id: ysolde, name: Ysolde Fenn}\n"),
    );
    fs::write(desk.path("next/first.yaml"), &first).expect("a file");
    fs::write(desk.path("next/second.yaml"), &second).expect("a file");
    let assign = |paths: &[&str]| {
        let mut command = healedhue();
        command.current_dir(desk.folder.path()).arg("assign").args(paths);
        command.args(["--course", super::fixture::ROOT]).arg("--cache").arg(cache());
        command
    };
    assign(&["next"]).args(["--out", "out"]).assert().success();
    for page in ["first/tamsel", "first/bren", "second/ysolde"] {
        assert!(desk.path("out").join(page).join("index.html").is_file(), "{page}");
    }
    fs::create_dir(desk.path("slips")).expect("a folder");
    for (text, id) in [(&first, "tamsel"), (&second, "ysolde")] {
        let assignment = read_assignment("next.yaml", text, &COURSE).expect("a sound assignment");
        let person = assignment.person(id).expect("somebody of the assignment");
        let set = practice_set(&COURSE, &assignment, person, &PROOFS).expect("exercises");
        let answers = set.exercises.iter().map(|exercise| exercise.form.key().to_string()).collect();
        desk.slip(&format!("slips/{id}.json"), AssignmentSlip::new(set.identity, answers).write());
    }
    let collected = assign(&["next/first.yaml", "next/second.yaml"])
        .args(["--collect", "slips", "--book", "book.sqlite"])
        .assert()
        .success();
    let told = String::from_utf8(collected.get_output().stdout.clone()).expect("UTF-8");
    assert!(told.contains("1 of 2 people handed in") && told.contains("1 of 1 person handed in"), "{told}");
    let json =
        assign(&["next", "--json", "--collect", "slips"]).assert().success().get_output().stdout.clone();
    let json: serde_json::Value = serde_json::from_slice(&json).expect("JSON");
    let of = |place: usize| {
        let one = &json["assignments"][place];
        (one["assignment"].clone(), one["marked"][0]["person"].clone(), one["missing"].clone())
    };
    assert_eq!(of(0), ("first".into(), "tamsel".into(), serde_json::json!(["bren"])));
    assert_eq!(of(1), ("second".into(), "ysolde".into(), serde_json::json!([])));
    // A slip of neither is told, and nothing is handed out under one id twice.
    desk.slip("slips/other.json", perfect("bren").write());
    assign(&["next", "--collect", "slips"])
        .assert()
        .code(1)
        .stderr(contains("belongs to the assignment `week-three`, which is none of those collected"));
    fs::write(desk.path("again.yaml"), &first).expect("a file");
    assign(&["next", "again.yaml"]).assert().code(1).stderr(contains("has the id `first` too"));
}

#[test]
fn of_two_slips_of_a_person_that_differ_none_is_chosen_by_its_name() {
    let desk = Desk::new();
    let (slips, book) = (desk.path("slips"), desk.path("marks.sqlite"));
    fs::create_dir(&slips).expect("a folder");
    let mut other = perfect("bren");
    other.answers[0].clear();
    desk.slip("slips/a.json", other.write());
    let second = desk.slip("slips/b.json", perfect("bren").write());
    desk.slip("slips/c.json", perfect("tamsel").write());
    desk.slip("slips/d.json", perfect("tamsel").write());
    // Of the same person, but none that could be marked.
    desk.slip("slips/e.json", AssignmentSlip::new(perfect("tamsel").identity, vec!["A".to_owned()]).write());
    let collect = |paths: &[&Path]| {
        let mut command = desk.assign();
        command.arg("--collect").args(paths).arg("--book").arg(&book);
        command
    };
    let output = collect(&[&slips]).assert().code(1).get_output().clone();
    let out = String::from_utf8(output.stdout).expect("UTF-8");
    assert!(out.contains("1 of 3 people handed in") && out.contains("Bren"), "{out}");
    let told = String::from_utf8(output.stderr).expect("UTF-8");
    let of = |name: &str| {
        told.lines().find(|line| line.starts_with(&format!("refused: {}/{name}: ", slips.display())))
    };
    for (name, rival) in [("a.json", "b.json"), ("b.json", "a.json")] {
        let line = of(name).expect("a line");
        assert!(
            line.contains(": Bren ")
                && line.contains("(bren) handed in slips for this assignment that answer differently"),
            "{line}"
        );
        assert!(line.contains(rival) && line.contains("--second-attempt"), "{line}");
    }
    assert!(of("d.json").is_some_and(|line| line.contains("c.json, which is marked: a copy")), "{told}");
    assert!(
        of("e.json").is_some_and(|line| line.contains("the slip has 1 answer to 12 questions")),
        "{told}"
    );
    // The one that counts, by itself; then it stays, whatever the other is called.
    collect(&[&second]).assert().success().stdout(contains("credit 100%"));
    collect(&[&slips])
        .assert()
        .code(1)
        .stderr(contains("a.json: another slip of this person for this assignment is in the book already"));
    collect(&[&slips.join("a.json")]).arg("--second-attempt").assert().success();
}

/// An answer that cannot be read is no wrong answer: whoever typed it is asked again.
#[test]
fn answers_are_read_as_strictly_as_those_of_papers() {
    let desk = Desk::new();
    let text = WEEK
        .replace("modules: [light-and-seeing]\n", "")
        .replace("[red-skin-and-warmth]", "[planning-for-years]")
        .replace("exercises: 12", "exercises: 20");
    fs::write(desk.path("week.yaml"), &text).expect("a file");
    let assignment = read_assignment("week.yaml", &text, &COURSE).expect("a sound assignment");
    let set = practice_set(&COURSE, &assignment, &assignment.people[0], &PROOFS).expect("a set");
    let order = set.exercises.iter().position(|exercise| matches!(exercise.form, Form::Order(_)));
    let order = order.expect("a question that asks for an order");
    let right: Vec<String> = set.exercises.iter().map(|exercise| exercise.form.key().to_string()).collect();
    let told = |answer: serde_json::Value| {
        let mut slip =
            serde_json::to_value(AssignmentSlip::new(set.identity.clone(), right.clone())).expect("a slip");
        slip["answers"][order] = answer;
        let slip = desk.slip("slip.json", slip.to_string());
        let output = desk.assign().arg("--collect").arg(slip).output().expect("an answer");
        (output.status.code(), String::from_utf8(output.stderr).expect("UTF-8"))
    };
    let (code, short) = told("A B".into());
    let number = order + 1;
    assert_eq!(code, Some(1));
    assert!(short.contains(&format!("question {number}: \"A B\" is no answer: ")), "{short}");
    assert!(short.contains("leave it empty where none was given"), "{short}");
    let (code, list) = told(serde_json::json!(["A", "B"]));
    assert_eq!(code, Some(1));
    assert!(list.contains(&format!("answer {number} is a list")), "{list}");
    // Every step once, in a wrong order, is an answer; so is none.
    let mut turned: Vec<&str> = right[order].split(' ').collect();
    turned.rotate_left(1);
    assert_eq!(told(turned.join(" ").into()), (Some(0), String::new()));
    assert_eq!(told(serde_json::Value::Null), (Some(0), String::new()));
}

#[test]
fn a_slip_that_answers_nothing_counts_only_when_it_shall() {
    let desk = Desk::new();
    let perfect = perfect("tamsel");
    let blank = AssignmentSlip::new(perfect.identity.clone(), vec![String::new(); perfect.answers.len()]);
    let slip = desk.slip("a.json", blank.write());
    let collect = || {
        let mut command = desk.assign();
        command.arg("--collect").arg(&slip);
        command
    };
    collect().assert().code(1).stderr(contains("nothing is answered").and(contains("`--empty`")));
    collect().arg("--empty").assert().success().stdout(contains("credit 0%, 0 of 12 answered"));
    // Beside the one that was filled in it is no rival.
    let filled = desk.slip("b.json", perfect.write());
    collect().arg(filled).assert().code(1).stdout(contains("credit 100%"));
}

#[test]
fn a_slip_that_cannot_be_marked_gets_a_line_and_holds_up_no_other() {
    let desk = Desk::new();
    let good = perfect("tamsel");
    let of = |change: fn(&mut Identity)| {
        let mut identity = perfect("bren").identity;
        change(&mut identity);
        AssignmentSlip::new(identity, good.answers.clone()).write()
    };
    let text = good.write();
    let huge = desk.slip("huge.json", "");
    fs::OpenOptions::new()
        .write(true)
        .open(&huge)
        .and_then(|file| file.set_len(50_000_000))
        .expect("a large file");
    let mut slips = vec![
        desk.slip("cut.json", &text[..text.len() / 2]),
        desk.slip("noise.json", "\u{1b}[31m<slip>"),
        desk.slip("bytes.json", b"\xff\xfe{}"),
        desk.slip("number.json", "7"),
        desk.slip("other-form.json", text.replace("healedhue-assignment-1", "healedhue-assignment-9")),
        desk.slip("other-assignment.json", of(|identity| identity.assignment = "week-four".to_owned())),
        desk.slip("stranger.json", of(|identity| identity.person = "nobody\u{1b}[31m".to_owned())),
        desk.slip("other-course.json", of(|identity| identity.course = "0123456789abcdef".to_owned())),
        desk.slip("other-set.json", of(|identity| identity.set = "0123456789abcdef".to_owned())),
        desk.slip(
            "short.json",
            AssignmentSlip::new(perfect("ysolde").identity, vec!["A".to_owned()]).write(),
        ),
        huge,
        desk.path("missing.json"),
        desk.slip("tamsel.json", &text),
        desk.slip("tamsel-again.json", &text),
    ];
    slips.reverse();
    slips.sort();
    let output = desk.assign().arg("--collect").args(&slips).assert().code(1);
    let out = String::from_utf8(output.get_output().stdout.clone()).expect("UTF-8");
    assert!(
        out.contains("1 of 3 people handed in") && out.contains("credit 100%, 12 of 12 answered"),
        "{out}"
    );
    let errors = String::from_utf8(output.get_output().stderr.clone()).expect("UTF-8");
    assert!(!errors.contains('\u{1b}'));
    let version = &COURSE.version[..12];
    let shown = errors.replace(&format!("{}/", desk.folder.path().display()), "").replace(version, "VERSION");
    insta::assert_snapshot!(shown);
}

/// Practice is recorded beside papers: once, apart from marks, and reported for skills and misconceptions.
#[test]
fn slips_are_recorded_in_a_mark_book_as_practice() {
    let desk = Desk::new();
    let (book, report) = (desk.path("marks.sqlite"), desk.path("report"));
    let perfect = perfect("tamsel");
    let mut blank = self::perfect("bren");
    blank.answers.iter_mut().skip(3).for_each(String::clear);
    let slips = [desk.slip("tamsel.json", perfect.write()), desk.slip("bren.json", blank.write())];
    let collect = |more: &[&str]| {
        let mut command = desk.assign();
        command.arg("--collect").args(&slips).arg("--book").arg(&book).args(more);
        command.assert()
    };
    collect(&[]).success();
    collect(&[]).success();
    blank.answers[0].clear();
    desk.slip("bren.json", blank.write());
    collect(&[])
        .code(1)
        .stderr(contains("another slip of this person for this assignment is in the book already"));
    collect(&["--second-attempt"]).success();
    let json = healedhue().args(["report", "--json", "--book"]).arg(&book).assert().success();
    let told: serde_json::Value = serde_json::from_slice(&json.get_output().stdout).expect("JSON");
    assert_eq!(told["papers"].as_array().map(Vec::len), Some(0), "practice is no paper");
    assert_eq!(told["items"].as_array().map(Vec::len), Some(0), "and judges no question");
    assert!(told["skills"].as_array().is_some_and(|skills| !skills.is_empty()));
    let people = told["people"].as_array().expect("people");
    let sheets: Vec<(&str, usize)> = people
        .iter()
        .map(|person| {
            let sheets = person["sheets"].as_array().expect("sheets");
            assert!(sheets.iter().all(|sheet| sheet["practice"] == true && sheet["decision"].is_null()));
            (person["id"].as_str().expect("an id"), sheets.len())
        })
        .collect();
    assert_eq!(sheets, [("bren", 2), ("tamsel", 1)]);
    healedhue().args(["report", "--book"]).arg(&book).arg("--out").arg(&report).assert().success();
    let page = fs::read_to_string(report.join("people/id-tamsel.html")).expect("a page");
    assert!(page.contains("<dt>Practice</dt>") && !page.contains("<dt>Paper</dt>"));
}
