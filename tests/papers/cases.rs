//! Cases: one client throughout, told once, equally hard, and made again to the byte.

use super::fixture::{filled, healedhue, output, pool_of, run, small_course, write};
use healedhue::assess::PaperPool;
use healedhue::exercise::Proofs;
use predicates::prelude::PredicateBooleanExt;
use predicates::str::contains;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::sync::LazyLock;

/// The demo's paper of three cases.
static POOL: LazyLock<PaperPool<'static>> = LazyLock::new(|| pool_of("practical"));

#[test]
fn every_question_of_a_case_is_about_its_client_or_about_nobody() {
    let blueprint = POOL.blueprint;
    let mut carried: Vec<BTreeMap<usize, u32>> = vec![BTreeMap::new(); blueprint.cases.len()];
    for seed in 0..400 {
        let paper = POOL.paper("candidate", seed).unwrap();
        assert!(blueprint.difficulty.holds(paper.difficulty), "seed {seed}: {}", paper.difficulty);
        assert_eq!(paper.clients.len(), blueprint.cases.len());
        assert_eq!(paper.clients.iter().collect::<BTreeSet<_>>().len(), paper.clients.len(), "seed {seed}");
        let mut asked = BTreeSet::new();
        for picked in &paper.questions {
            assert!(asked.insert(picked.question), "seed {seed} asks twice");
            let case = blueprint.sections[picked.section].case.expect("every section is of a case");
            let client = POOL.questions[picked.question].client;
            assert!(client.is_none_or(|client| client == paper.clients[case]), "seed {seed}");
        }
        for (section, wanted) in blueprint.sections.iter().enumerate() {
            let found = paper.questions.iter().filter(|picked| picked.section == section).count();
            assert_eq!(found, wanted.questions as usize, "seed {seed}");
        }
        for (times, client) in carried.iter_mut().zip(&paper.clients) {
            *times.entry(*client).or_default() += 1;
        }
        assert_eq!(paper, POOL.paper("candidate", seed).unwrap());
    }
    for (times, case) in carried.iter().zip(&blueprint.cases) {
        assert!(times.len() >= case.clients as usize, "{}: {times:?}", case.id);
    }
    // Of the last case not everybody may be worked on, and not nobody.
    let last = carried.last().expect("a case");
    let waits = |client: &usize| POOL.course.clients[*client].cautions().next().is_some();
    assert!(last.keys().any(waits) && !last.keys().all(waits));
}

#[test]
fn a_case_is_told_once_and_its_skin_only_where_nothing_asks_for_it() {
    let (mut told, mut asked_for) = (0, 0);
    for seed in 0..40 {
        let paper = POOL.paper("candidate", seed).unwrap();
        let json: serde_json::Value = serde_json::from_str(&POOL.paper_json(&paper)).unwrap();
        let text = json.to_string();
        let sections = json["sections"].as_array().unwrap();
        let mut heads = Vec::new();
        for (section, of) in sections.iter().zip(&POOL.blueprint.sections) {
            heads.extend(section.get("case").map(|case| (case, of.case)));
            for question in section["questions"].as_array().unwrap() {
                let case = &question["question"]["case"];
                for key in ["client", "about", "wish", "skin", "hair", "health", "old_work"] {
                    assert!(case.get(key).is_none(), "seed {seed}: {question}");
                }
            }
        }
        assert_eq!(heads.len(), 3);
        for (place, (head, case)) in heads.iter().enumerate() {
            assert_eq!(*case, Some(place));
            let client = &POOL.course.clients[paper.clients[place]];
            assert_eq!(head["client"]["client"], client.name);
            let about = serde_json::to_string(&client.about).unwrap();
            // It says what the skin is like.
            let times = usize::from(POOL.tells_skin(&paper, place));
            assert_eq!(text.matches(about.trim_matches('"')).count(), times, "seed {seed}");
            assert_eq!(head["client"].get("skin").is_some(), POOL.tells_skin(&paper, place));
            assert_eq!(head["client"]["seen"].as_array().unwrap().len(), 1);
            if POOL.tells_skin(&paper, place) {
                told += 1;
            } else {
                asked_for += 1;
            }
        }
    }
    assert!(told > 0 && asked_for > 0, "{told} {asked_for}");
}

#[test]
fn pages_and_marks_of_cases() {
    let folder = tempfile::tempdir().unwrap();
    let people = folder.path().join("people.csv");
    fs::write(&people, "id,name\nq1,Orrin Vell\n").unwrap();
    let out = folder.path().join("sitting");
    let paper = POOL.paper("q1", 7).unwrap();
    let mut command = run(&["paper", "practical", "--seed", "7"]);
    command.arg("--register").arg(&people).arg("--out").arg(&out).assert().success();
    for name in ["papers/q1.html", "sheets/q1.html"] {
        let page = fs::read_to_string(out.join(name)).unwrap();
        assert_eq!(page.matches("class=\"client-case\"").count(), 3, "{name}");
        for (case, client) in POOL.blueprint.cases.iter().zip(&paper.clients) {
            let client = &POOL.course.clients[*client];
            assert_eq!(page.matches(&format!("<h2>{}</h2>", case.title)).count(), 1, "{name}");
            let hair = format!("<dd>{}</dd>", client.hair);
            assert_eq!(page.matches(&hair).count(), 1, "{name}: {hair}");
        }
        let told = (0..3).filter(|case| POOL.tells_skin(&paper, *case)).count();
        assert_eq!(page.matches("<dt>Skin</dt>").count(), told, "{name}");
    }
    let slip = write(folder.path(), "q1.json", &filled(&POOL, &paper, 3));
    let mark = |keys: bool| {
        let mut command = run(&["mark", "--json"]);
        command.arg(&slip);
        if keys {
            command.arg("--keys").arg(&out)
        } else {
            command.arg("--register").arg(&people)
        };
        output(&mut command)
    };
    assert_eq!(mark(true), mark(false), "a paper made again has the marks of the kept key");
    let listing = output(&mut run(&["paper", "practical", "--seed", "7", "--candidate", "q1"]));
    let first = &POOL.course.clients[paper.clients[0]];
    assert!(listing.contains(&format!("First client: {}, {}\n", first.name, first.age)), "{listing}");
}

/// Sections of several cases have one title, and are told apart by that of their case wherever they stand by themselves.
#[test]
fn sections_of_cases_are_told_with_their_case() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    fs::write(path("people.csv"), "id,name\nq1,Orrin Vell\n").unwrap();
    let slip = write(folder.path(), "q1.json", &filled(&POOL, &POOL.paper("q1", 7).unwrap(), 3));
    let mut mark = run(&["mark"]);
    mark.arg("--register").arg(path("people.csv")).arg("--book").arg(path("book.sqlite")).arg(&slip);
    let told = output(&mut mark);
    let mut report = healedhue();
    report.args(["report", "--book"]).arg(path("book.sqlite")).arg("--out").arg(path("report"));
    report.assert().success();
    let page = |name: &str| fs::read_to_string(path("report").join(name)).unwrap();
    let (index, own) = (page("index.html"), page("people/id-q1.html"));
    let mut titles = BTreeSet::new();
    for (place, section) in POOL.blueprint.sections.iter().enumerate() {
        let case = &POOL.blueprint.cases[section.case.expect("every section is of a case")];
        let title = format!("{}: {}", case.title, section.title);
        let is_first = place == 0 || POOL.blueprint.sections[place - 1].case != section.case;
        // The title of a case stands before the first of its sections only.
        let before = if is_first { format!("{}: ", case.title) } else { "; ".to_owned() };
        let earned = format!("{before}{} ", section.title);
        assert!(told.contains(&earned), "{earned} in {told}");
        assert!(own.contains(&earned), "{earned}");
        let numbered = format!("{before}{} {}", place + 1, section.title);
        assert!(index.contains(&numbered), "{numbered}");
        assert!(index.contains(&format!("<abbr title=\"{title}\">{}</abbr>", place + 1)), "{title}");
        assert!(titles.insert(title), "told apart");
    }
    for case in &POOL.blueprint.cases {
        for text in [&told, &own] {
            assert_eq!(text.matches(&format!("{}: ", case.title)).count(), 1, "{}", case.title);
        }
    }
    // Where there are no cases, a section has its own title.
    let without = POOL.course.blueprint(super::fixture::BLUEPRINT).expect("a blueprint");
    assert!(without.cases.is_empty());
    assert!(without.sections.iter().all(|section| without.title_of(section) == section.title));
}

/// The small course with a case that asks one skin reading of each client.
fn with_case(drill_clients: &str, clients: u32) -> crate::loading::fixture::Fixture {
    let drill = format!(
        "  - id: angles\n    family: skin\n    asks: angle\n    skill: foresee\n    exercises: 1\n    clients: [{drill_clients}]\n    tempts: [turned]\n"
    );
    small_course()
        .append("lessons/first-steps/light.yaml", &drill)
        .replace(
            "lessons/papers/small.yaml",
            "sections:\n",
            &format!("cases:\n  - {{id: one, title: One client, clients: {clients}}}\nsections:\n"),
        )
        .replace(
            "lessons/papers/small.yaml",
            "{id: second, title: Second part, skills: [foresee], bank: true,",
            "{id: second, title: Second part, case: one, drills: [angles],",
        )
}

#[test]
fn too_few_clients_are_told_by_check_with_the_place() {
    let fixture = with_case("ruvan, silka", 3)
        .append("lessons/first-steps/light.md", "\n```drill\nangles\n```\n")
        .append(
            "lessons/misconceptions.yaml",
            "  - id: turned\n    belief: One divides b* into L*.\n    tempting: Both are numbers.\n    truth: It is the other way round.\n    rule: angle-upside-down\n    lesson: light\n",
        );
    let loaded = fixture.load();
    let course = loaded.course.unwrap_or_else(|| panic!("{:?}", loaded.diagnostics));
    let error = PaperPool::new(&course, "small", &Proofs::none(), || ()).expect_err("too few clients");
    insta::assert_snapshot!("too_few_clients", error.to_string());
    run(&["check"])
        .arg("--course")
        .arg(fixture.path(""))
        .assert()
        .code(1)
        .stdout(contains("error: only ruvan, silka can carry the case `one`, and 3 are needed"))
        .stdout(contains("{id: one, title: One client, clients: 3}\n").and(contains("^^^")));
}
