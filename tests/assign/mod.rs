//! Assignments, as an instructor and an apprentice meet them: what is handed out. What comes back is in `collect`.

mod collect;
mod fixture;
mod language;

use crate::proofs::PROOFS;
use crate::site::fixture::files;
use fixture::{COURSE, Desk, WEEK, assignment, healedhue};
use healedhue::assess::assigned::{AssignmentSlip, practice_set, practice_sets};
use healedhue::course::{Assignment, read_assignment, report};
use healedhue::exercise::{Exercise, Form, Proofs};
use predicates::str::{contains, is_empty};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use tempfile::TempDir;

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
    for set in practice_sets(&COURSE, &assignment, &PROOFS).expect("exercises") {
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
    let sets = practice_sets(&COURSE, &assignment, &PROOFS).expect("exercises");
    for (set, person) in sets.iter().zip(&assignment.people) {
        let again = practice_set(&COURSE, &assignment, person, &Proofs::none()).expect("exercises");
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
        practice_set(&COURSE, &other, &other.people[0], &PROOFS).expect("exercises").identity.set
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
        let set = practice_set(course, &assignment, person, &Proofs::none()).expect("exercises");
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
    let example = include_str!("../../docs/examples/assignment.yaml");
    assert!(include_str!("../../docs/practice.md").contains(example.trim_end()));
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
    desk.assign()
        .arg("--collect")
        .arg(empty.path())
        .assert()
        .code(1)
        .stderr(contains("there is no slip in these folders"));
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
    let set = practice_set(&COURSE, &assignment, &assignment.people[0], &PROOFS).expect("a set");
    assert_eq!(set.exercises.len(), 20);
    let questions: BTreeSet<String> = set.exercises.iter().map(Exercise::question).collect();
    assert_eq!(questions.len(), 20, "a question comes twice");
    let single = set.exercises.iter().filter(|exercise| exercise.drill == "renewal-in-order").count();
    assert_eq!(single, 1);
}

/// Proving what was proved already costs nothing and changes nothing, whether it is handed out or collected.
#[test]
fn proofs_are_kept_where_they_shall_be_and_change_nothing() {
    let desk = Desk::new();
    let text = WEEK.replace("modules: [light-and-seeing]\n", "").replace("exercises: 12", "exercises: 6");
    fs::write(desk.path("week.yaml"), text).expect("a file");
    let assign = |more: &[&str]| {
        let mut command = healedhue();
        command.arg("assign").arg(desk.path("week.yaml")).args(["--course", fixture::ROOT]).args(more);
        command.current_dir(desk.folder.path()).assert()
    };
    let kept = desk.path("kept/proofs");
    let written = || fs::metadata(&kept).and_then(|found| found.modified()).expect("a file of proofs");
    assign(&["--out", "anew", "--no-cache"]).success();
    assert!(!kept.exists());
    assign(&["--out", "first", "--cache", "kept"]).success();
    let first = written();
    assign(&["--out", "second", "--cache", "kept"]).success();
    let assignment =
        read_assignment("week.yaml", &fs::read_to_string(desk.path("week.yaml")).expect("text"), &COURSE)
            .expect("a sound assignment");
    let set = practice_set(&COURSE, &assignment, &assignment.people[0], &Proofs::none()).expect("a set");
    let right = set.exercises.iter().map(|exercise| exercise.form.key().to_string()).collect();
    desk.slip("slip.json", AssignmentSlip::new(set.identity, right).write());
    assign(&["--cache", "kept", "--collect", "slip.json"]).success().stdout(contains("credit 100%, 6 of 6"));
    assert_eq!(written(), first, "nothing was proved again");
    let pages = ["anew", "first", "second"].map(|folder| files(&desk.path(folder)));
    assert!(pages[0] == pages[1] && pages[1] == pages[2]);
    assign(&["--cache", "kept", "--no-cache"]).code(2);
}
