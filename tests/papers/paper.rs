//! Papers: the same everywhere, different from seed to seed, equally hard; what is written for a register.

use super::fixture::{BLUEPRINT, POOL, output, pool_of, run, small_course};
use healedhue::assess::{Key, MarkTables, PaperPool, Person, engine_difficulty};
use healedhue::exercise::{Action, Proofs, outcome};
use healedhue::render::PaperPages;
use predicates::str::contains;
use proptest::prelude::*;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;

#[test]
fn a_paper_in_json_reads_well_and_never_changes() {
    let fixture = small_course();
    let loaded = fixture.load();
    let course = loaded.course.unwrap_or_else(|| panic!("{:?}", loaded.diagnostics));
    let pool = PaperPool::new(&course, "small", &Proofs::none(), || ()).unwrap();
    let paper = pool.paper("p1", 5).unwrap();
    insta::assert_snapshot!("small_paper", pool.paper_json(&paper));
    insta::assert_snapshot!("small_key", serde_json::to_string_pretty(&Key::new(&pool, &paper)).unwrap());
    let program = run(&["paper", "small", "--seed", "5", "--candidate", "p1", "--json"])
        .arg("--course")
        .arg(fixture.path(""))
        .assert()
        .success()
        .get_output()
        .stdout
        .clone();
    assert_eq!(String::from_utf8(program).unwrap(), pool.paper_json(&paper));
}

#[test]
fn the_program_prints_the_same_bytes_every_time_and_the_key_apart() {
    let paper = output(&mut run(&["paper", BLUEPRINT, "--seed", "7", "--json"]));
    assert_eq!(paper, output(&mut run(&["paper", BLUEPRINT, "--seed", "7", "--json"])));
    assert_eq!(
        paper,
        output(run(&["paper", BLUEPRINT, "--seed", "7", "--json"]).env("RAYON_NUM_THREADS", "1"))
    );
    let file = format!("lessons/papers/{BLUEPRINT}.yaml");
    assert_eq!(paper, output(&mut run(&["paper", &file, "--seed", "7", "--json"])), "named by its file");
    assert_eq!(paper, POOL.paper_json(&POOL.paper("anybody", 7).unwrap()));
    for word in ["\"credit\"", "\"key\"", "consequence", "misconception", "drill", "difficulty", "margin"] {
        assert!(!paper.contains(word), "{word}");
    }
    let key: serde_json::Value =
        serde_json::from_str(&output(&mut run(&["paper", BLUEPRINT, "--seed", "7", "--key"]))).unwrap();
    let paper: serde_json::Value = serde_json::from_str(&paper).unwrap();
    assert_eq!(key["key"]["paper"], paper["paper"]);
    assert_eq!(key["marks"]["questions"].as_object().map(|tables| tables.len()), Some(16));
    run(&["paper", "nothing"])
        .assert()
        .code(2)
        .stderr(contains("there is no blueprint `nothing`; there are: diagnostic, module-"));
    run(&["paper", "module-choosing-for-the-clint"])
        .assert()
        .code(2)
        .stderr(contains("did you mean `module-choosing-for-the-client`? There are: diagnostic, "));
}

#[test]
fn two_hundred_seeds_keep_every_rule_of_the_blueprint() {
    let blueprint = POOL.blueprint;
    let mut papers = BTreeSet::new();
    for seed in 0..200 {
        let paper = POOL.paper("candidate", seed).unwrap();
        assert!(blueprint.difficulty.holds(paper.difficulty), "seed {seed}: {}", paper.difficulty);
        let mut asked = BTreeSet::new();
        let mut clients: BTreeMap<usize, u32> = BTreeMap::new();
        for picked in &paper.questions {
            let question = &POOL.questions[picked.question];
            assert!(asked.insert(&question.json), "seed {seed} asks twice: {}", question.json);
            if let Some(client) = question.client {
                *clients.entry(client).or_insert(0) += 1;
            }
        }
        assert!(clients.values().all(|times| *times <= blueprint.most_per_client), "seed {seed}");
        let weights: Vec<(f64, usize)> = Key::new(&POOL, &paper)
            .sections
            .iter()
            .map(|section| (section.weight, section.questions.len()))
            .collect();
        assert_eq!(weights, [(40.0, 6), (35.0, 5), (25.0, 5)]);
        let questions: Vec<usize> = paper.questions.iter().map(|picked| picked.question).collect();
        assert!(papers.insert(questions), "seed {seed} gives an earlier paper");
    }
}

/// All blueprints share one cache of proofs, which is kept for the next run.
#[test]
fn every_blueprint_of_the_demo_makes_papers_within_its_band() {
    let blueprints = &crate::demo::course().blueprints;
    let mut wrong = Vec::new();
    for blueprint in blueprints {
        let pool = pool_of(&blueprint.id);
        for seed in 1..=6 {
            match pool.paper("candidate", seed) {
                Ok(paper) if !blueprint.difficulty.holds(paper.difficulty) => {
                    wrong.push(format!("{} {seed}: difficulty {}", blueprint.id, paper.difficulty));
                }
                Ok(paper) => {
                    let asked: u32 = blueprint.sections.iter().map(|section| section.questions).sum();
                    assert_eq!(paper.questions.len(), asked as usize, "{} {seed}", blueprint.id);
                }
                Err(error) => wrong.push(format!("{} {seed}: {error}", blueprint.id)),
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(blueprints.len() >= 20, "{} blueprints", blueprints.len());
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// Candidate and seed alone decide.
    #[test]
    fn prop_the_same_seed_gives_the_same_paper(seed in 0..u64::MAX, candidate in "[a-z0-9]{1,12}") {
        let paper = POOL.paper(&candidate, seed).unwrap();
        prop_assert_eq!(&paper, &POOL.paper(&candidate, seed).unwrap());
        let other = POOL.paper(&candidate, seed.wrapping_add(1)).unwrap();
        prop_assert_ne!(&paper.id.digest, &other.id.digest);
        let somebody = POOL.paper(&format!("{candidate}x"), seed).unwrap();
        prop_assert_ne!(&paper.id.digest, &somebody.id.digest);
    }
}

/// Difficulty rises with temptation: among questions with as many options, a smaller margin is harder.
#[test]
fn engine_questions_are_the_harder_the_nearer_a_wrong_answer_lies() {
    let proved: Vec<_> = POOL
        .questions
        .iter()
        .filter_map(|question| {
            let exercise = &question.exercise;
            Some((
                engine_difficulty(exercise)?,
                exercise.form.options().len(),
                exercise.proof.as_ref()?.margin?,
            ))
        })
        .filter(|(_, options, _)| *options == 3)
        .collect();
    assert!(proved.len() > 20);
    let mean = |near: bool| {
        let of: Vec<f64> = proved
            .iter()
            .filter(|(_, _, margin)| (*margin < 4.0) == near)
            .map(|(difficulty, ..)| *difficulty)
            .collect();
        of.iter().sum::<f64>() / of.len() as f64
    };
    assert!(mean(true) > mean(false) + 0.05, "{} {}", mean(true), mean(false));
    // Luce's rule by hand for every question of three options: 1 - 1 / (1 + the sum of exp(-excess / 4)), 20 at most.
    for question in &POOL.questions {
        let exercise = &question.exercise;
        let Some(proof) = exercise.proof.as_ref().filter(|_| exercise.form.options().len() == 3) else {
            continue;
        };
        let wrong = exercise.form.options().iter().filter(|option| option.mark.misconception.is_some());
        let sum: f64 = wrong
            .map(|option| (-(option.error.unwrap() - proof.best_error).clamp(0.0, 20.0) / 4.0).exp())
            .sum();
        assert!((engine_difficulty(exercise).unwrap() - (1.0 - 1.0 / (1.0 + sum))).abs() < 1e-9);
    }
}

/// A mark table gives what the engine gives, for every question's key and, of drops, for every mix.
#[test]
fn mark_tables_agree_with_the_engine() {
    let tables = MarkTables::new(POOL.course, &POOL.questions);
    let kept = MarkTables::read(&serde_json::to_vec(&tables).unwrap()).unwrap();
    let mut drops = 0;
    for question in &POOL.questions {
        let (name, exercise) = (question.name(), &question.exercise);
        let mut answers = vec![exercise.form.key()];
        if let healedhue::exercise::Form::Drops(form) = &exercise.form {
            drops += 1;
            answers.extend(
                healedhue::exercise::mixes(&form.limits).into_iter().map(healedhue::exercise::Answer::Drops),
            );
        } else {
            answers.extend((0..exercise.form.options().len()).map(healedhue::exercise::Answer::One));
        }
        for answer in answers {
            let mark = outcome(POOL.course, exercise, &answer).unwrap().mark;
            let raw = answer.to_string();
            for table in [&tables.questions[&name], &kept.questions[&name]] {
                let found = table.given(POOL.course, &raw).unwrap().mark;
                assert_eq!(
                    (found.credit, found.consequence, found.misconception, found.lesson),
                    (mark.credit, mark.consequence.clone(), mark.misconception.clone(), mark.lesson.clone()),
                    "{name} {raw}"
                );
            }
        }
    }
    assert!(drops > 0);
}

#[test]
fn papers_for_a_register_hold_no_key_and_escape_every_name() {
    let folder = tempfile::tempdir().unwrap();
    let people = folder.path().join("people.csv");
    fs::write(&people, "id,name\nq1,\"Orrin <script>alert(1)</script> & \"\"Vell\"\"\"\nq2,Tamsel Brook\n")
        .unwrap();
    let out = folder.path().join("sitting");
    let write = || {
        let mut command = run(&["paper", BLUEPRINT, "--seed", "3"]);
        command.arg("--register").arg(&people).arg("--out").arg(&out);
        command
    };
    write().assert().success().stdout(contains("papers for 2 people, seed 3"));
    let files = crate::site::files(&out);
    let names: Vec<&str> = files.keys().map(String::as_str).collect();
    insta::assert_snapshot!("files_of_a_register", names.join("\n"));
    let tables = MarkTables::new(POOL.course, &POOL.questions);
    let whole = serde_json::to_string(&tables).unwrap();
    assert!(whole.contains("\"consequence\""));
    for (name, content) in
        files.iter().filter(|(name, _)| !name.starts_with("keys/") && name.ends_with(".html"))
    {
        let text = String::from_utf8(content.clone()).unwrap();
        assert!(!text.contains("<script>alert"), "{name}");
        assert!(
            !text.contains("http:") && !text.contains("https:") && !text.contains("src="),
            "{name} asks for something"
        );
        assert!(text.contains("default-src 'none'"), "{name}");
        for word in [
            "wasm",
            "data-key",
            "data-table",
            "data-best",
            "data-credit",
            "consequence",
            "misconception",
            "data-order",
        ] {
            assert!(!text.contains(word), "{name} holds {word}");
        }
        let paper = POOL.paper(if name.contains("q1") { "q1" } else { "q2" }, 3).unwrap();
        for picked in &paper.questions {
            let exercise = &POOL.questions[picked.question].exercise;
            assert!(
                !text.contains(&format!("{} {}", exercise.drill, exercise.number)),
                "{name} names an exercise"
            );
            for option in exercise.form.options() {
                let said = option.mark.consequence.split(['&', '\'', '"']).next().unwrap_or_default();
                assert!(said.len() < 12 || !text.contains(said), "{name} says what follows: {said}");
            }
        }
    }
    let page = String::from_utf8_lossy(&files["papers/q1.html"]);
    assert!(page.contains("Orrin &lt;script&gt;alert(1)&lt;/script&gt; &amp;"));
    assert_eq!(crate::languages::unsaid(&page), [""; 0], "the page takes along what it says");
    // Papers are not overwritten unless it is asked for, and strangers never.
    write().assert().code(1).stderr(contains("there are papers in this folder already; nothing was changed"));
    write().arg("--replace").assert().success();
    assert_eq!(crate::site::files(&out), files, "the same register and seed give the same bytes");
    fs::write(out.join("notes.txt"), "mine").unwrap();
    write().arg("--replace").assert().code(1).stderr(contains("also holds `notes.txt`"));
    // A site and papers never replace each other.
    run(&["build"]).arg("--out").arg(&out).assert().code(1).stderr(contains("no earlier site of healedhue"));
}

/// A question about a bottle that is told nowhere would be a riddle about an invented name.
#[test]
fn every_bottle_that_a_sheet_names_stands_in_its_table() {
    let pages = PaperPages::new(&POOL).unwrap();
    let (mut seen, mut beyond_mixes) = (0, 0);
    for seed in 0..20 {
        let paper = POOL.paper("q1", seed).unwrap();
        let person = Person { id: "q1".to_owned(), name: "Orrin Vell".to_owned() };
        let sheet = pages.sheet(&paper, &person).unwrap();
        let (asked, table) = sheet.split_once("<section class=\"sheet-bottles\"").expect("bottles are told");
        let words: Vec<&str> = asked.split(|c: char| !c.is_alphanumeric()).collect();
        for bottle in POOL.course.shelf.bottles.iter().filter(|bottle| words.contains(&bottle.name.as_str()))
        {
            assert!(
                table.contains(&format!("<th scope=\"row\">{} ", bottle.name)),
                "seed {seed}: {}",
                bottle.name
            );
            seen += 1;
        }
        let json: serde_json::Value = serde_json::from_str(&POOL.paper_json(&paper)).unwrap();
        for bottle in json["bottles"].as_array().unwrap() {
            let name = bottle["name"].as_str().unwrap();
            assert!(words.contains(&name), "seed {seed}: nothing is asked about {name}");
        }
        let asked = paper.questions.iter().map(|picked| &POOL.questions[picked.question]);
        let places = |action: &Action| matches!(action, Action::Place(_));
        beyond_mixes += asked
            .filter(|question| !question.bottles.is_empty())
            .filter(|question| !question.exercise.form.options().iter().any(|option| places(&option.action)))
            .count();
    }
    assert!(seen > 100 && beyond_mixes > 20, "{seen} {beyond_mixes}");
}

#[test]
fn wrong_registers_are_told_line_by_line() {
    let folder = tempfile::tempdir().unwrap();
    let people = folder.path().join("people.csv");
    let told = |content: &dyn AsRef<[u8]>| {
        fs::write(&people, content).unwrap();
        let mut command = run(&["paper", BLUEPRINT]);
        command.arg("--register").arg(&people).arg("--out").arg(folder.path().join("out"));
        let stderr = command.assert().code(1).get_output().stderr.clone();
        String::from_utf8(stderr).unwrap().replace(&people.display().to_string(), "people.csv")
    };
    let all = [
        told(&"name,mail\nOrrin,x\n"),
        told(&"id,name\n"),
        told(&""),
        told(b"PK\x03\x04\x14\0"),
        told(b"\xff\xfei\0d\0\t\0n\0a\0m\0e\0\n\0"),
        told(b"id,name\nq1,Ren\xe9\n"),
        // Saved by a spreadsheet in an encoding of its own; the name stands after a comma of its own.
        told(b"mail;id;name\nx;q1;\"Vell; Orrin\"\ny;q2;\"Brook; Zo\xeb\"\n"),
        told(b"id,na\xefve\n"),
        told(b"\xff\xfei\0d\0,\0n\0a\0m\0e\0\n\0q\x001\0,\0R\0\0\xd8b\0"),
        told(&"id,name\n../up,Orrin\nq1,Tamsel\nQ1,Perrin\nq2,\ncon,Aldra\n,Nobody\n"),
    ];
    insta::assert_snapshot!("wrong_registers", all.join("---\n"));
    assert!(!folder.path().join("out").exists());
}

/// A name with a comma would be cut short, and characters nobody sees would change how other names are shown.
#[test]
fn names_that_would_be_cut_short_or_are_not_seen_whole_are_refused_with_line_and_field() {
    let folder = tempfile::tempdir().unwrap();
    let people = folder.path().join("people.csv");
    let told = |content: &str| {
        fs::write(&people, content).unwrap();
        let mut command = run(&["paper", "small"]);
        command.arg("--register").arg(&people).arg("--out").arg(folder.path().join("out"));
        let stderr = command.assert().code(1).get_output().stderr.clone();
        String::from_utf8(stderr).unwrap().replace(&people.display().to_string(), "people.csv")
    };
    let all = [
        told("id,name\nq1,Orrin Vell\nq2,Brook, Tamsel\n"),
        told("id,name,group\nq1,\"Vell, Orrin\",one\nq2,Brook, Tamsel,two\n"),
        told("name;id\nVell; Orrin;q1\n"),
        told(
            "id,name\nq1,Orrin \u{202e}lleV\nq2,Tamsel\u{2066} Brook\nq3,Perrin\u{1b}[31m Ash\nq4,Aldra\u{9b}Moor\n",
        ),
        told("id,name\nq1,\"Orrin\nq2,Tamsel\n"),
        told("id,name\nq1,Orrin\tVell\n"),
        told(&format!("id,name\nq1,{}\n", "long ".repeat(60))),
        told("id,na\u{1b}me\nq1,Orrin\n"),
    ];
    insta::assert_snapshot!("names_refused", all.join("---\n"));
    // Quoted, with empty fields at the end, and in scripts that need joiners, names are names.
    let register =
        healedhue::assess::Register::read("id,name\nq1,\"Vell, Orrin\"\nq2,Tamsel Brook,\nq3,می\u{200c}نا\n");
    let names: Vec<String> = register.unwrap().people.into_iter().map(|person| person.name).collect();
    assert_eq!(names, ["Vell, Orrin", "Tamsel Brook", "می\u{200c}نا"]);
}

/// The section is filled by others: papers are made, and whoever makes them hears of it.
#[test]
fn a_drill_that_gives_a_section_nothing_is_named_with_the_conditions_that_failed() {
    let first = "{id: first, title: First part, skills: [foresee], bank: true,";
    let fixture = small_course()
        .replace("lessons/papers/small.yaml", "minutes: 10\n", "minutes: 10\npool: 2\n")
        .replace(
            "lessons/papers/small.yaml",
            first,
            &first.replace("bank:", "drills: [first-choice], bank:"),
        );
    let paper = |arguments: &[&str]| {
        let mut command = run(&["paper", "small", "--seed", "5"]);
        command.arg("--course").arg(fixture.path("")).args(arguments);
        command.assert().success().get_output().clone()
    };
    let told = paper(&["--json"]);
    let paper_of_it: serde_json::Value = serde_json::from_slice(&told.stdout).unwrap();
    assert_eq!(paper_of_it["sections"][0]["questions"].as_array().map(Vec::len), Some(3));
    let told = String::from_utf8(told.stderr).unwrap();
    assert_eq!(told.matches("first-choice").count(), 1, "{told}");
    insta::assert_snapshot!("idle_drill", told);
    // `check` names it, too, once it makes the questions of blueprints: with file, line and field, and what would be right.
    let check = |papers: &[&str]| {
        let mut command = run(&["check", "--json"]);
        command.arg("--course").arg(fixture.path("")).args(papers);
        // The drill has nothing for its lesson either, which is an error.
        let told = command.assert().code(1).get_output().stdout.clone();
        let told: serde_json::Value = serde_json::from_slice(&told).unwrap();
        let problems = told.as_array().unwrap().clone();
        problems.into_iter().find(|one| one["message"].as_str().unwrap().contains("no question"))
    };
    assert_eq!(check(&[]), None);
    let idle = check(&["--papers"]).unwrap();
    let field = |name: &str| idle[name].as_str().unwrap().to_owned();
    assert_eq!(
        (field("file").as_str(), &idle["line"], &idle["column"]),
        ("lessons/first-steps/choosing.yaml", &7.into(), &5.into())
    );
    assert_eq!(field("severity"), "warning");
    assert!(field("message").contains("480 failed because no mix within the limits"), "{idle}");
    assert!(field("message").contains("the section `first` of `small`"), "{idle}");
    assert!(field("help").contains("other `clients`, `goals` or `bottles`"), "{idle}");
    // Out of the section's band is another reason.
    let narrow = small_course().append("lessons/papers/small.yaml", "").replace(
        "lessons/papers/small.yaml",
        "questions: 1, weight: 30}",
        "questions: 1, weight: 30, difficulty: {least: 0.9, most: 1}}",
    );
    let course = narrow.load().course.expect("a course");
    let error = PaperPool::new(&course, "small", &Proofs::none(), || ()).expect_err("nothing in the band");
    assert!(error.to_string().contains("the section `second` asks 1 question, and"), "{error}");
}

#[test]
fn a_blueprint_that_cannot_be_kept_says_what_to_change() {
    let told = |from: &str, to: &str| {
        let fixture = small_course().replace("lessons/papers/small.yaml", from, to);
        let course = fixture.load().course.expect("a course");
        match PaperPool::new(&course, "small", &Proofs::none(), || ()) {
            Err(error) => error.to_string(),
            Ok(pool) => pool.paper("p1", 1).expect_err("no paper").to_string(),
        }
    };
    let all = [
        told("least: 0.3, most: 0.5", "least: 0.8, most: 0.9"),
        told("questions: 3", "questions: 30"),
        told("skills: [foresee], bank: true, questions: 3", "drills: [first-choice], questions: 3"),
    ];
    insta::assert_snapshot!("impossible_blueprints", all.join("\n"));
}

/// By hand: the weights times the root of p (1 - p) / n, of the sections 70 % of 3 at 0.65 and 30 % of 1 at 0.55.
#[test]
fn the_standard_error_is_that_of_binomial_sampling() {
    let fixture = small_course();
    let course = fixture.load().course.expect("a course");
    let pool = PaperPool::new(&course, "small", &Proofs::none(), || ()).unwrap();
    let key = Key::new(&pool, &pool.paper("p1", 1).unwrap());
    let by_hand = (70.0_f64.powi(2) * 0.65 * 0.35 / 3.0 + 30.0_f64.powi(2) * 0.55 * 0.45).sqrt();
    assert!((key.standard_error - by_hand).abs() < 1e-9, "{} {by_hand}", key.standard_error);
    assert!((key.pass_mark - (70.0 * 0.65 + 30.0 * 0.55)).abs() < 1e-9);
}
