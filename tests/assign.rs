//! Assignments, as an instructor and an apprentice meet them.

use crate::site::fixture::files;
use assert_cmd::Command;
use healedhue::assess::assigned::{AssignmentSlip, Identity, practice_set, practice_sets};
use healedhue::course::{Assignment, Course, load, read_assignment, report};
use healedhue::exercise::{Exercise, Form};
use predicates::str::{contains, is_empty};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;
use tempfile::TempDir;

const ROOT: &str = env!("CARGO_MANIFEST_DIR");

/// Three people, of whom one has a name that would like to be markup.
const WEEK: &str = r#"id: week-three
title: Week three, red skin
note: Read before the practice day.
due: 2026-03-14
modules: [light-and-seeing]
lessons: [red-skin-and-warmth]
exercises: 12
people:
  - {id: tamsel, name: Tamsel Orrick}
  - {id: bren, name: "Bren <script>alert(1)</script> & \"Co\""}
  - {id: ysolde, name: Ysolde Fenn}
"#;

static COURSE: LazyLock<Course> = LazyLock::new(|| load(Path::new(ROOT)).course.expect("the demo course"));

fn assignment() -> Assignment {
    read_assignment("week.yaml", WEEK, &COURSE).expect("a sound assignment")
}

fn healedhue() -> Command {
    let mut command = Command::cargo_bin("healedhue").expect("the program is built");
    command.current_dir(ROOT).env("NO_COLOR", "1").env_remove("COLUMNS");
    command
}

/// A folder with the assignment's file.
struct Desk {
    folder: TempDir,
}

impl Desk {
    fn new() -> Self {
        let folder = TempDir::new().expect("a temporary folder");
        fs::write(folder.path().join("week.yaml"), WEEK).expect("a file");
        Desk { folder }
    }

    fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    fn assign(&self) -> Command {
        let mut command = healedhue();
        command.arg("assign").arg(self.path("week.yaml"));
        command
    }

    fn hand_out(&self, more: &[&str]) -> assert_cmd::assert::Assert {
        self.assign().arg("--out").arg(self.path("out")).args(more).assert()
    }

    fn slip(&self, name: &str, content: impl AsRef<[u8]>) -> PathBuf {
        let path = self.path(name);
        fs::write(&path, content).expect("a slip");
        path
    }
}

/// A slip of this person with all the right answers.
fn perfect(id: &str) -> AssignmentSlip {
    let assignment = assignment();
    let person = assignment.person(id).expect("somebody of the assignment");
    let set = practice_set(&COURSE, &assignment, person).expect("exercises");
    let answers = set.exercises.iter().map(|exercise| exercise.form.key().to_string()).collect();
    AssignmentSlip::new(set.identity, answers)
}

#[test]
fn everybody_gets_exactly_the_lessons_and_exercises_of_their_own() {
    let desk = Desk::new();
    desk.hand_out(&[])
        .success()
        .stdout(contains("due 14 March 2026"))
        .stdout(contains("Tamsel Orrick: 12 exercises"));
    let all = files(&desk.path("out"));
    let people: BTreeSet<&str> =
        all.keys().filter_map(|path| path.split_once('/')).map(|(id, _)| id).collect();
    assert_eq!(people, BTreeSet::from(["bren", "tamsel", "ysolde"]));
    let assigned: BTreeSet<String> = COURSE
        .lessons()
        .filter(|(module, lesson)| module.id == "light-and-seeing" || lesson.id == "red-skin-and-warmth")
        .map(|(_, lesson)| format!("lessons/{}.html", lesson.page.path))
        .collect();
    let own = |id: &str| -> BTreeMap<&str, &Vec<u8>> {
        all.iter()
            .filter_map(|(path, content)| Some((path.strip_prefix(&format!("{id}/"))?, content)))
            .collect()
    };
    let tamsel = own("tamsel");
    let lessons: BTreeSet<String> = tamsel
        .keys()
        .filter(|path| {
            path.starts_with("lessons/") && path.ends_with(".html") && !path.ends_with("/module.html")
        })
        .map(|path| (*path).to_owned())
        .collect();
    assert_eq!(lessons, assigned);
    assert!(!tamsel.keys().any(|path| path.contains("worksheets")), "worksheets come with keys");
    // Of the pages only the first is one person's.
    let ysolde = own("ysolde");
    assert_eq!(tamsel.keys().collect::<Vec<_>>(), ysolde.keys().collect::<Vec<_>>());
    let differing: Vec<&&str> = tamsel.keys().filter(|path| tamsel[**path] != ysolde[**path]).collect();
    assert_eq!(differing, [&"index.html"]);
    // Every link leads to something in the person's own folder.
    for (path, content) in tamsel.iter().filter(|(path, _)| path.ends_with(".html")) {
        let html = std::str::from_utf8(content).expect("UTF-8");
        for link in html.split(" href=\"").skip(1).filter_map(|rest| rest.split('"').next()) {
            let file = link.split('#').next().unwrap_or_default();
            if file.is_empty() || link.contains(':') {
                continue;
            }
            let mut target: Vec<&str> = path.split('/').collect();
            target.pop();
            for part in file.split('/') {
                if part == ".." {
                    target.pop().expect("it stays inside");
                } else {
                    target.push(part);
                }
            }
            assert!(tamsel.contains_key(target.join("/").as_str()), "{path}: {link}");
        }
    }
}

#[test]
fn the_first_page_shows_names_as_text_and_nothing_of_the_key() {
    let desk = Desk::new();
    desk.hand_out(&[]).success();
    let assignment = assignment();
    for set in practice_sets(&COURSE, &assignment).expect("exercises") {
        let person = assignment.person(&set.identity.person).expect("a person");
        let script = fs::read_to_string(desk.path("out").join(&person.id).join("slip.js")).expect("a script");
        assert_eq!(crate::languages::unsaid(&script), [""; 0], "the page takes along what it says");
        let page = fs::read_to_string(desk.path("out").join(&person.id).join("index.html")).expect("a page");
        let plain = crate::site::decoded(&page);
        assert!(plain.contains(&format!("Assignment for {}", person.name)), "{}", person.name);
        assert!(!page.contains("<script>alert"), "a name is not obeyed");
        assert!(page.contains("data-set=\"") && page.contains(&set.identity.set));
        for exercise in &set.exercises {
            assert!(plain.contains(&exercise.ask), "{}", exercise.ask);
            for option in exercise.form.options() {
                assert!(plain.contains(&option.label), "{}", option.label);
                assert!(!plain.contains(&option.mark.consequence), "{}", option.mark.consequence);
                let belief = option.mark.misconception.as_deref().and_then(|id| COURSE.misconception(id));
                assert!(belief.is_none_or(|belief| !plain.contains(&belief.belief)));
            }
            assert!(!matches!(exercise.form, Form::Drops(_)) || !page.contains("data-table"));
        }
        for word in [
            "data-key",
            "data-order",
            "data-best",
            "data-credit",
            "from the goal",
            "really seen",
            "Proof",
            "proved",
        ] {
            assert!(!page.contains(word), "{word}");
        }
    }
}

/// What identifies an exercise.
fn identity(exercise: &Exercise) -> (&str, u32) {
    (&exercise.drill, exercise.number)
}

#[test]
fn sets_are_their_owners_and_the_same_every_time() {
    let assignment = assignment();
    let sets = practice_sets(&COURSE, &assignment).expect("exercises");
    for (set, person) in sets.iter().zip(&assignment.people) {
        let again = practice_set(&COURSE, &assignment, person).expect("exercises");
        assert_eq!(set.identity, again.identity);
        let both = [set, &again].map(|set| set.exercises.iter().map(identity).collect::<Vec<_>>());
        assert_eq!(both[0], both[1]);
        assert_eq!(set.exercises.len(), 12);
        let questions: BTreeSet<String> = set.exercises.iter().map(Exercise::question).collect();
        assert_eq!(questions.len(), 12, "no question comes twice");
        // Each drill of these lessons has its turn before any comes again.
        let drills: BTreeSet<&str> = set.exercises.iter().map(|exercise| exercise.drill.as_str()).collect();
        let lessons = assignment.lessons.iter().filter_map(|id| COURSE.lesson(id));
        let all: usize = lessons.map(|(_, lesson)| lesson.drills.len()).sum();
        assert_eq!(drills.len(), all.min(12));
    }
    let numbers = |at: usize| sets[at].exercises.iter().map(identity).collect::<BTreeSet<_>>();
    assert!(numbers(0) != numbers(1) && numbers(1) != numbers(2));
    // Another seed gives another set; another name or another person none.
    let other = |change: fn(&mut Assignment)| {
        let mut other = assignment.clone();
        change(&mut other);
        practice_set(&COURSE, &other, &other.people[0]).expect("exercises").identity.set
    };
    let first = &sets[0].identity.set;
    assert_ne!(&other(|assignment| assignment.seed = 1), first);
    assert_ne!(&other(|assignment| assignment.exercises = 11), first);
    assert_eq!(&other(|assignment| assignment.people[0].name = "Somebody else".to_owned()), first);
    assert_eq!(&other(|assignment| _ = assignment.people.pop()), first);
}

#[test]
fn questions_that_the_lessons_answer_are_not_asked_while_there_are_others() {
    // The lesson with its written drill alone.
    let mut course = COURSE.clone();
    let lessons = course.modules.iter_mut().flat_map(|module| &mut module.lessons);
    lessons.filter(|lesson| lesson.id == "layers-of-skin").for_each(|lesson| lesson.drills.truncate(1));
    let course = &course;
    let mut assignment = assignment();
    assignment.lessons = vec!["layers-of-skin".to_owned()];
    let drill = &course.lesson("layers-of-skin").expect("a lesson").1.drills[0];
    let (lesson, shown) = (&course.lesson("layers-of-skin").expect("a lesson").1, drill.exercises);
    let answered: BTreeSet<String> = (0..shown)
        .map(|number| {
            healedhue::exercise::generate(course, lesson, drill, number).expect("an exercise").question()
        })
        .collect();
    assignment.exercises = drill.questions.len() as u32 - shown;
    for person in &assignment.people {
        let set = practice_set(course, &assignment, person).expect("exercises");
        let asked: BTreeSet<String> = set.exercises.iter().map(Exercise::question).collect();
        assert_eq!(asked.len(), set.exercises.len());
        let free = asked.difference(&answered).count();
        assert!(free >= 1, "{asked:?}");
        assert!(!answered.contains(&set.exercises[0].question()));
    }
}

#[test]
fn nothing_is_overwritten_without_being_told() {
    let desk = Desk::new();
    desk.hand_out(&[]).success();
    let before = files(&desk.path("out"));
    desk.hand_out(&[]).code(1).stdout(is_empty()).stderr(contains("give --replace to write it anew"));
    assert_eq!(files(&desk.path("out")), before);
    desk.hand_out(&["--replace"]).success();
    assert_eq!(files(&desk.path("out")), before, "the same bytes again");
    // A slip that was saved there is nobody's to delete.
    fs::write(desk.path("out").join("slip.json"), "{}").expect("a file");
    desk.hand_out(&["--replace"]).code(1).stderr(contains("slip.json"));
    let other = Desk::new();
    fs::create_dir(other.path("out")).expect("a folder");
    fs::write(other.path("out").join("mine.txt"), "mine").expect("a file");
    other.hand_out(&["--replace"]).code(1).stderr(contains("no earlier assignment of healedhue"));
    assert_eq!(fs::read_to_string(other.path("out").join("mine.txt")).ok().as_deref(), Some("mine"));
}

#[test]
fn slips_are_marked_against_the_course_alone() {
    let desk = Desk::new();
    let right = perfect("tamsel");
    // Whatever else a slip claims is not looked at.
    let mut boasting: serde_json::Value = serde_json::from_str(&perfect("bren").write()).expect("JSON");
    boasting["answers"][0] = "".into();
    boasting["answers"][1] = "nonsense".into();
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
    assert_eq!((bren["answered"].as_u64(), bren["credit"].as_f64()), (Some(11), Some(10.0 / 12.0)));
    assert_eq!(bren["answers"][1]["answer"], "nonsense");
    assert!(bren["answers"][1]["consequence"].as_str().is_some_and(|why| why.starts_with("Not an answer")));
    assert_eq!(marks["missing"], serde_json::json!(["ysolde"]));
    // A folder of slips is as good as their names.
    let folder = desk.path("slips");
    fs::create_dir(&folder).expect("a folder");
    fs::copy(&slips[0], folder.join("a.json")).expect("a copy");
    fs::write(folder.join("note.txt"), "no slip").expect("a file");
    desk.assign()
        .arg("--collect")
        .arg(&folder)
        .assert()
        .success()
        .stdout(contains("1 of 3 people handed in"));
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

#[test]
fn an_assignment_that_is_wrong_is_told_where_and_what_would_be_right() {
    let told = |text: &str| match read_assignment("week.yaml", text, &COURSE) {
        Ok(assignment) => panic!("{assignment:?}"),
        Err(diagnostics) => report(&diagnostics, false),
    };
    let with = |from: &str, to: &str| {
        assert!(WEEK.contains(from), "{from}");
        told(&WEEK.replacen(from, to, 1))
    };
    let all = [
        with("due: 2026-03-14", "due: 2026-02-30"),
        with("due: 2026-03-14", "dues: 2026-03-14"),
        with("lessons: [red-skin-and-warmth]", "lessons: [red-skin-and-warmht]"),
        with("modules: [light-and-seeing]", "modules: light-and-seeing"),
        with("modules: [light-and-seeing]\nlessons: [red-skin-and-warmth]\n", ""),
        with("exercises: 12", "exercises: 400"),
        with("id: ysolde", "id: tamsel"),
        with("id: ysolde", "id: Ysolde Fenn"),
        with("{id: ysolde, name: Ysolde Fenn}", "Ysolde Fenn"),
        with("Ysolde Fenn", "\"Ysolde \\u202e nneF\""),
        with("Ysolde Fenn", "\"Ysolde \\u202e nneF \\u202c\""),
        told("people: []\n"),
        told("- a\n- b\n"),
        told(""),
    ];
    insta::assert_snapshot!(all.join("\n----\n"));
}

#[test]
fn the_example_in_the_documentation_is_an_assignment_of_the_demo_course() {
    let example = include_str!("../docs/examples/assignment.yaml");
    assert!(include_str!("../docs/practice.md").contains(example.trim_end()));
    let read =
        read_assignment("assignment.yaml", example, &COURSE).map_err(|problems| report(&problems, false));
    let read = read.unwrap_or_else(|problems| panic!("{problems}"));
    assert_eq!((read.people.len(), read.exercises, read.due.to_string().as_str()), (3, 12, "2026-03-14"));
}

#[test]
fn wrong_use_of_assign_is_told() {
    let desk = Desk::new();
    healedhue().arg("assign").assert().code(2);
    desk.assign().arg("--json").assert().code(2).stderr(contains("--collect"));
    healedhue().args(["assign", "nowhere.yaml"]).assert().code(1).stderr(contains("nowhere.yaml"));
    fs::write(desk.path("week.yaml"), WEEK.replace("2026-03-14", "soon")).expect("a file");
    desk.hand_out(&[])
        .code(1)
        .stderr(contains("week.yaml:4:6"))
        .stderr(contains("`soon` is no day of the calendar"));
    assert!(!desk.path("out").exists());
    let empty = TempDir::new().expect("a temporary folder");
    let desk = Desk::new();
    desk.assign().arg("--collect").arg(empty.path()).assert().code(1).stderr(contains("there are no slips"));
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
        .stderr(contains("another slip of this person for this paper is in the book already"));
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

/// A drill of one question does not come round again while others have something new.
#[test]
fn a_set_repeats_nothing_while_any_drill_has_something_new() {
    let text = WEEK
        .replace("modules: [light-and-seeing]\n", "")
        .replace("[red-skin-and-warmth]", "[planning-for-years]");
    let (_, lesson) = COURSE.lesson("planning-for-years").expect("the lesson");
    assert!(lesson.drills.iter().any(|drill| drill.questions.len() == 1), "a drill of one question");
    let text = text.replace("exercises: 12", "exercises: 20");
    let assignment = read_assignment("week.yaml", &text, &COURSE).expect("a sound assignment");
    let set = practice_set(&COURSE, &assignment, &assignment.people[0]).expect("a set");
    assert_eq!(set.exercises.len(), 20);
    let questions: BTreeSet<String> = set.exercises.iter().map(Exercise::question).collect();
    assert_eq!(questions.len(), 20, "a question comes twice");
    let single = set.exercises.iter().filter(|exercise| exercise.drill == "renewal-in-order").count();
    assert_eq!(single, 1);
}
