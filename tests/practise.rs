//! Practice in the terminal, as somebody who practises meets it.

use assert_cmd::Command;
use healedhue::colour::Light;
use healedhue::skin::Site;
use predicates::str::{contains, is_empty};
use std::fs;
use std::io::{BufRead, BufReader, Read, Write};
use std::path::{Path, PathBuf};
use std::process::{Child, ChildStdout, Stdio};
use tempfile::TempDir;

/// The arguments of a session whose exercises cost nothing to make.
const QUICK: [&str; 6] = ["practise", "--lesson", "records", "--seed", "5", "--now"];
const NOW: &str = "1700000000";

fn healedhue() -> Command {
    let mut command = Command::cargo_bin("healedhue").expect("the program is built");
    command.current_dir(env!("CARGO_MANIFEST_DIR")).env("NO_COLOR", "1").env_remove("COLUMNS");
    command
}

/// A session that keeps its progress in this file.
fn kept(path: &Path) -> Command {
    let mut command = healedhue();
    command.args(QUICK).arg(NOW).arg("--progress").arg(path);
    command
}

fn text(command: &mut Command, input: &str) -> String {
    let output = command.write_stdin(input).assert().success();
    String::from_utf8(output.get_output().stdout.clone()).expect("UTF-8")
}

fn record(path: &Path) -> serde_json::Value {
    serde_json::from_str(&fs::read_to_string(path).expect("a record")).expect("JSON")
}

fn folder() -> (TempDir, PathBuf) {
    let folder = TempDir::new().expect("a temporary folder");
    let path = folder.path().join("progress.json");
    (folder, path)
}

/// As it is seen where somebody presses Enter after each answer.
fn entered(told: &str) -> String {
    told.replace("q to end): ", "q to end):\n").replace("q to\nend): ", "q to\nend):\n")
}

/// One line for every form of answer; those that do not fit are asked again.
fn any_answer(times: usize) -> String {
    "a\na6\na b c d e\na b c d\na b c d e f\na b c\n41\n".repeat(times)
}

#[test]
fn a_session_by_minutes_reads_well() {
    let (_folder, path) = folder();
    let mut command = healedhue();
    command.args(["practise", "--minutes", "4", "--seed", "2", "--now", NOW, "--progress"]).arg(&path);
    command.args(["--lesson", "the-first-days"]);
    let told = text(&mut command, &any_answer(8)).replace(&path.display().to_string(), "PROGRESS");
    assert!(entered(&told).lines().all(|line| line.chars().count() <= 80), "{told}");
    insta::assert_snapshot!(told);
}

#[test]
fn a_session_speaks_the_language_of_its_course() {
    let (_folder, path) = folder();
    let mut command = healedhue();
    command.args(["practise", "--course", "tests/site/german", "--count", "8", "--seed", "4", "--now", NOW]);
    command.arg("--progress").arg(&path).env("COLUMNS", "100");
    let told = text(&mut command, &any_answer(9)).replace(&path.display().to_string(), "PROGRESS");
    for german in [
        "8 Aufgaben",
        "1 von 8",
        "Haut ohne Arbeit",
        "Ihre Antwort (",
        "Bitte antworten Sie so: ",
        "Wertung",
        "Zusammenfassung",
    ] {
        assert!(told.contains(german), "{german}: {told}");
    }
    let english = [
        "Your", "Please", "answer", "credit", "Right", "Summary", "hair", "Best", "Known", "exercise",
        "reread", " to ",
    ];
    for word in english {
        assert!(!told.contains(word), "{word}: {told}");
    }
}

#[test]
fn progress_goes_on_where_it_was_left() {
    let (_folder, path) = folder();
    let first = text(kept(&path).args(["--count", "2"]), "a\nb\n");
    assert!(!first.contains("So far") && first.contains("Your progress is kept in"), "{first}");
    assert_eq!(record(&path)["skills"]["consult-and-record"]["answers"], 2);
    let second = text(kept(&path).args(["--count", "1"]), "a\n");
    assert!(second.contains("So far: 2 answers in one skill."), "{second}");
    assert_eq!(record(&path)["skills"]["consult-and-record"]["answers"], 3);
    // Nothing answered, nothing written.
    let before = fs::read(&path).expect("a record");
    assert!(text(&mut kept(&path), "q\n").contains("No exercise was answered."));
    assert_eq!(fs::read(&path).expect("a record"), before);
}

#[test]
fn the_same_seed_progress_time_and_answers_give_the_same_session() {
    let once = || {
        let (_folder, path) = folder();
        let told = text(kept(&path).args(["--count", "3"]), "a\nb\nc\n");
        (told.replace(&path.display().to_string(), ""), fs::read_to_string(&path).expect("a record"))
    };
    assert_eq!(once(), once());
}

#[test]
fn progress_lies_among_the_users_data_by_default() {
    let folder = TempDir::new().expect("a temporary folder");
    let told =
        text(healedhue().args(QUICK).args([NOW, "--count", "1"]).env("XDG_DATA_HOME", folder.path()), "a\n");
    let own = folder.path().join("healedhue");
    let files: Vec<String> = fs::read_dir(&own)
        .expect("a folder of its own")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .filter(|name| name.ends_with(".json"))
        .collect();
    assert_eq!(files.len(), 1, "{files:?}");
    assert!(files[0].starts_with("reading-skin-choosing-colour-"), "{files:?}");
    assert!(told.replace('\n', " ").contains(&files[0]), "{told}");
    // Nothing is written at all where that is not wanted.
    let none = TempDir::new().expect("a temporary folder");
    text(
        healedhue()
            .args(QUICK)
            .args([NOW, "--count", "1", "--no-progress"])
            .env("XDG_DATA_HOME", none.path()),
        "a\n",
    );
    assert_eq!(fs::read_dir(none.path()).expect("a folder").count(), 0);
}

#[test]
fn what_is_no_record_is_refused_and_left_alone() {
    let (folder, path) = folder();
    for (content, words) in [
        (&b"{\"format\": 1, \"skills\": {\"work-sa"[..], "this is no record of progress"),
        (b"", "this is no record of progress"),
        (b"[1, 2]", "it is another kind of file; a record is a `.json` file"),
        (b"{\"skills\": {}}", "`format` is missing, which every record has"),
        (
            b"{\"format\": 1, \"skills\": {}]",
            "line 1, column 27 makes it unreadable; take the file as it was saved",
        ),
        (b"{\"format\": 99, \"skills\": {}}", "has format 99; this program reads up to 1"),
        (b"{\"format\": 1,\n", "it ends early, at line 2, column 1; perhaps it was not copied whole"),
        (b" \n", "this is no record of progress: it is empty"),
        (b"\xff\xfe", "this is no record of progress: it is empty"),
        (b"{\"format\": \xff", "line 1, column 12: the byte FF is no UTF-8"),
        (b"\x89PNG\r\n\x1a\n", "this is a picture (PNG), not text"),
    ] {
        fs::write(&path, content).expect("a file");
        kept(&path).write_stdin("a\n").assert().code(1).stdout(is_empty()).stderr(contains(words));
        assert_eq!(fs::read(&path).expect("the file"), content);
    }
    kept(folder.path()).write_stdin("a\n").assert().code(1).stderr(contains("this is a folder"));
    let nowhere = folder.path().join("nowhere").join("progress.json");
    kept(&nowhere).write_stdin("a\n").assert().code(1).stderr(contains("nowhere"));
}

#[test]
fn a_record_is_told_of_in_the_language_of_its_course() {
    let (_folder, path) = folder();
    let session = || {
        let mut command = healedhue();
        command.args(["practise", "--course", "tests/site/german", "--count", "1", "--seed", "4"]);
        command.args(["--now", NOW, "--progress"]).arg(&path).write_stdin("q\n");
        command
    };
    for (content, words) in [
        ("", "das ist keine Aufzeichnung eines Lernstands: sie ist leer; die Datei blieb, wie sie ist"),
        ("{\"format\": 1,\n", "sie endet zu früh, in Zeile 2, Spalte 1;"),
        ("{\"format\": 1, oops", "was in Zeile 1, Spalte 15 steht, macht sie unlesbar;"),
        ("Liebe Grüße", "es ist eine Datei anderer Art;"),
        ("{}", "es fehlt `format`,"),
        ("{\"format\": null}", "`format` muss die Zahl 1 sein"),
        ("{\"format\": 1, \"skills\": 3}", "`skills` muss ein JSON-Objekt sein"),
        ("{\"format\": 99}", "diese Aufzeichnung hat das Format 99"),
    ] {
        fs::write(&path, content).expect("a file");
        session().assert().code(1).stderr(contains(words));
        assert_eq!(fs::read_to_string(&path).expect("the file"), content);
    }
    let entry = r#"{"format": 1, "skills": {"x": {"known": 0.5, "answers": "two"}}}"#;
    fs::write(&path, entry).expect("a file");
    session().assert().success().stderr(contains(
        "der Lernstand in `x` ist unbrauchbar und gilt als leer: `answers` muss eine ganze Zahl von 0 bis 4294967295 sein",
    ));
}

#[test]
fn what_cannot_be_used_in_a_record_is_told_and_kept() {
    let (_folder, path) = folder();
    let content = r#"{"format": 1, "skills": {"read-skin": {"known": 7}, "whistling": {"known": 0.5, "answers": 2, "credit": 1.0, "last": 5, "spaced": 0, "last_spaced": null}}, "mine": [1]}"#;
    fs::write(&path, content).expect("a file");
    kept(&path)
        .args(["--count", "1"])
        .write_stdin("a\n")
        .assert()
        .success()
        .stderr(contains("progress in `read-skin` cannot be used"));
    let after = record(&path);
    assert_eq!(after["skills"]["read-skin"]["known"], 7);
    assert_eq!(after["skills"]["whistling"]["answers"], 2);
    assert_eq!(after["skills"]["consult-and-record"]["answers"], 1);
    assert_eq!(after["mine"][0], 1);
}

/// A session that can be watched and killed.
struct Watched {
    child: Child,
    out: BufReader<ChildStdout>,
}

impl Watched {
    fn begin(path: &Path) -> Self {
        let mut child = std::process::Command::new(assert_cmd::cargo::cargo_bin("healedhue"))
            .args(QUICK)
            .arg(NOW)
            .args(["--count", "50", "--progress"])
            .arg(path)
            .current_dir(env!("CARGO_MANIFEST_DIR"))
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()
            .expect("the program runs");
        let out = BufReader::new(child.stdout.take().expect("its output"));
        Watched { child, out }
    }

    /// Reads until it asks.
    fn asks(&mut self) {
        let mut seen = Vec::new();
        while !seen.ends_with(b"q to end): ") {
            let mut byte = [0];
            self.out.read_exact(&mut byte).expect("it asks");
            seen.push(byte[0]);
        }
    }

    fn say(&mut self, line: &str) {
        let input = self.child.stdin.as_mut().expect("its input");
        input.write_all(line.as_bytes()).and_then(|()| input.flush()).expect("it listens");
    }

    /// SIGKILL: it can neither notice nor tidy up.
    fn kill(mut self) {
        self.child.kill().expect("it is killed");
        self.child.wait().expect("it has ended");
    }
}

#[test]
fn a_kill_at_any_moment_loses_at_most_the_question_in_hand() {
    let (folder, path) = folder();
    let mut sure = 0;
    for round in 0..12_usize {
        let mut session = Watched::begin(&path);
        session.asks();
        for _ in 0..round % 4 {
            session.say("a\n");
            session.asks();
            sure += 1;
        }
        // Half of them are killed just after an answer, whether it has been read, marked, kept or none of these.
        let in_hand = round % 2;
        if in_hand == 1 {
            session.say("b\n");
            if round % 3 == 0 {
                session.out.read_until(b'\n', &mut Vec::new()).expect("it speaks");
            }
        }
        session.kill();
        let answers = match fs::read_to_string(&path) {
            Ok(_) => record(&path)["skills"]["consult-and-record"]["answers"].as_u64().expect("a number"),
            Err(_) => 0,
        };
        assert!((sure..=sure + in_hand as u64).contains(&answers), "round {round}: {answers}, {sure} sure");
        sure = answers;
    }
    assert!(sure >= 18, "{sure}");
    // A killed session holds up no later one.
    text(kept(&path).args(["--count", "1"]), "a\n");
    drop(folder);
}

#[test]
fn two_sessions_do_not_write_over_one_another() {
    let (_folder, path) = folder();
    let mut first = Watched::begin(&path);
    first.asks();
    kept(&path)
        .write_stdin("a\n")
        .assert()
        .code(1)
        .stderr(contains("another session keeps its progress there"));
    first.kill();
    text(kept(&path).args(["--count", "1"]), "a\n");
}

/// Whether the lock of a record stands beside it.
fn has_lock(path: &Path) -> bool {
    path.with_file_name(".progress.json.lock").exists()
}

/// The file that keeps sessions apart goes with the session, and what a killed one leaves goes with the next.
#[cfg(unix)]
#[test]
fn a_session_leaves_nothing_but_its_record() {
    let (_folder, path) = folder();
    for input in ["a\n", "q\n", ""] {
        text(kept(&path).args(["--count", "1"]), input);
        assert!(!has_lock(&path), "{input:?}");
    }
    let mut killed = Watched::begin(&path);
    killed.asks();
    kept(&path).write_stdin("a\n").assert().code(1).stderr(contains("another session keeps"));
    assert!(has_lock(&path), "who is refused takes nothing away");
    killed.kill();
    assert!(has_lock(&path));
    text(kept(&path).args(["--count", "1"]), "a\n");
    assert!(!has_lock(&path));
    fs::write(&path, "no record").expect("a file");
    kept(&path).write_stdin("a\n").assert().code(1);
    assert!(!has_lock(&path));
}

/// Sessions that begin and end at the same moments: each answer counts, or its session was refused.
#[test]
fn no_two_sessions_of_many_hold_one_record() {
    let (_folder, path) = folder();
    let kept_answers = std::thread::scope(|scope| {
        let begin = || {
            (0..5)
                .filter(|_| {
                    kept(&path).args(["--count", "1"]).write_stdin("a\n").assert().try_success().is_ok()
                })
                .count()
        };
        let all: Vec<_> = (0..4).map(|_| scope.spawn(begin)).collect();
        all.into_iter().map(|one| one.join().expect("it has ended")).sum::<usize>()
    });
    assert!(kept_answers > 0);
    assert_eq!(record(&path)["skills"]["consult-and-record"]["answers"], kept_answers);
}

/// Ctrl-C ends a session as q does.
#[cfg(unix)]
#[test]
fn ctrl_c_ends_a_session_with_its_summary() {
    let (_folder, path) = folder();
    let mut session = Watched::begin(&path);
    session.asks();
    session.say("a\n");
    session.asks();
    let sent = std::process::Command::new("kill").arg("-INT").arg(session.child.id().to_string()).status();
    assert!(sent.expect("kill is part of every Unix").success());
    let mut told = String::new();
    session.out.read_to_string(&mut told).expect("UTF-8");
    assert!(told.starts_with("\n\nSummary\n"), "{told}");
    assert!(told.contains("one answer") && told.contains("Your progress is kept in\n"), "{told}");
    assert!(session.child.wait().expect("it has ended").success());
    assert_eq!(record(&path)["skills"]["consult-and-record"]["answers"], 1);
    assert!(!has_lock(&path));
}

/// A record is for its owner alone, from its first answer on.
#[cfg(unix)]
#[test]
fn nobody_else_may_read_a_record() {
    use std::os::unix::fs::PermissionsExt;
    let (_folder, path) = folder();
    text(kept(&path).args(["--count", "1"]), "a\n");
    assert_eq!(fs::metadata(&path).expect("a record").permissions().mode() & 0o777, 0o600);
}

/// What is seen of a text with colours.
pub fn without_colours(text: &str) -> String {
    let mut seen = String::new();
    let mut rest = text;
    while let Some(at) = rest.find('\x1b') {
        seen += &rest[..at];
        let end = rest[at..].find('m').expect("a colour ends");
        rest = &rest[at + end + 1..];
    }
    seen + rest
}

#[test]
fn forty_columns_are_enough_for_every_form() {
    for (lesson, seed, colour) in [
        ("red-skin-and-warmth", "1", "never"),
        ("red-skin-and-warmth", "1", "always"),
        ("colour-lighten-or-refer", "2", "always"),
        ("reading-skin", "3", "never"),
        ("naming-a-colour", "4", "always"),
    ] {
        let told = text(
            healedhue()
                .args(["practise", "--lesson", lesson, "--count", "7", "--no-progress", "--now", NOW])
                .args(["--seed", seed, "--colour", colour])
                .env("COLUMNS", "40"),
            &any_answer(30),
        );
        assert!(told.contains("Summary"), "{told}");
        assert_eq!(told.contains('\x1b'), colour == "always");
        for line in entered(&without_colours(&told)).lines() {
            assert!(line.chars().count() <= 40, "{lesson}: {line:?}");
        }
    }
}

#[test]
fn drops_orders_and_numbers_are_asked_and_answered_by_keyboard() {
    let asked = |lesson: &str, words: &str| {
        let told = text(
            healedhue().args([
                "practise",
                "--lesson",
                lesson,
                "--count",
                "16",
                "--no-progress",
                "--now",
                NOW,
                "--seed",
                "9",
            ]),
            &any_answer(60),
        );
        assert!(told.contains(words) && told.contains("Summary"), "{told}");
    };
    asked("red-skin-and-warmth", "Your answer (drops by letter, such as a5 e1, q to end):");
    asked("order-and-waiting", "Your answer (a to e in their order, q to end):");
    asked("reading-skin", "Your answer (a number in °, q to end):");
}

/// All on one line, with one space between words.
fn flat(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Whoever gives another form of answer is asked for what the prompt names, with its letters.
#[test]
fn who_is_asked_again_is_asked_in_the_words_of_the_prompt() {
    // What is no answer to most forms, then something for each; what answers most questions comes last.
    let input = "nowhere 5\nz\n6\na b\na6\na b c d e\na b c d\na b c d e f\na b c\n41\na\n".repeat(60);
    let english = ["Your answer (", ", q to end): ", "Please answer with ", ", or q: "];
    let german = ["Ihre Antwort (", ", q zum Beenden): ", "Bitte antworten Sie so: ", ", oder q ("];
    let mut reasons = Vec::new();
    for (from, seed, [opens, closes, again, because]) in [
        (["--lesson", "red-skin-and-warmth"], "9", english),
        (["--lesson", "order-and-waiting"], "9", english),
        (["--lesson", "reading-skin"], "9", english),
        (["--course", "tests/site/german"], "4", german),
    ] {
        let mut command = healedhue();
        command.args(["practise", "--no-progress", "--now", NOW, "--count", "16", "--seed", seed]).args(from);
        let told = flat(&text(&mut command, &input));
        let before = reasons.len();
        for asked in told.split(opens).skip(1) {
            let (how, rest) = asked.split_once(closes).expect("a prompt ends");
            let Some(rest) = rest.strip_prefix(again) else { continue };
            let why = rest.strip_prefix(how).and_then(|rest| rest.strip_prefix(because));
            let why = why.unwrap_or_else(|| panic!("{how}: {rest}"));
            // Numbers are the one form without letters.
            assert!(how.contains('°') || !why.contains('`'), "{why}");
            let mut words = why.split(|c: char| !c.is_alphanumeric());
            assert!(!words.any(|word| ["A", "B", "C", "D", "E", "Z"].contains(&word)), "{why}");
            reasons.push(why.to_owned());
        }
        assert!(reasons.len() > before + 5, "{from:?}: {told}");
    }
    for reason in [
        "one letter alone is asked for",
        "letters alone are asked for, such as ",
        "of each bottle its letter and whole drops",
        "there is no z here, only a to ",
        "there is no bottle “nowhere” here, only a to ",
        "each of a to e stands once",
        "nur ein einzelner Buchstabe",
        "z gibt es hier nicht, nur a bis ",
        "eine Flasche „nowhere“ gibt es hier nicht, nur a bis ",
    ] {
        assert!(reasons.iter().any(|known| known.starts_with(reason)), "{reason}: {reasons:#?}");
    }
}

/// The person, the place and the wish are told in words too, as on the pages, and so is what an answer came to.
#[test]
fn a_case_is_told_in_words() {
    let course = crate::demo::course();
    let (mut cases, mut olds, mut goals, mut came_to) = (0, 0, 0, 0);
    for (lesson, seed) in [("red-skin-and-warmth", "9"), ("lips-as-a-filter", "3"), ("lips-as-a-filter", "4")]
    {
        let mut command = healedhue();
        command.args(["practise", "--no-progress", "--now", NOW, "--count", "12"]);
        let told = flat(&text(command.args(["--lesson", lesson, "--seed", seed]), &any_answer(80)));
        for client in &course.clients {
            let head = format!(" {}, {}: phototype ", client.name, client.age);
            let is_lip = client.site == Site::Lip;
            for case in told.split(&head).skip(1) {
                let case = case.split("Your answer (").next().unwrap_or_default();
                assert!(case.contains(&flat(&client.about)), "{}: {case}", client.id);
                for old in client.existing.iter().filter(|_| case.contains(" as it is now L* ")) {
                    assert!(case.contains(" Old work: ") && case.contains(&flat(&old.note)), "{case}");
                    olds += 1;
                }
                assert!(!is_lip || case.contains(" lip without work L* "), "{}: {case}", client.id);
                if let Some((_, goal)) = case.split_once(" goal L* ") {
                    let beside = if is_lip { "; in this lip: " } else { "; on this skin: " };
                    assert!(goal.contains(beside), "{goal}");
                    goals += 1;
                }
                cases += 1;
            }
        }
        for after in told.split(" yours L* ").skip(1) {
            let words: String = after.chars().take(100).collect();
            assert!(words.contains(" than the ") || words.contains(" as light as the "), "{words}");
            came_to += 1;
        }
    }
    assert!(cases > 9 && olds > 1 && goals > 3 && came_to > 5, "{cases}, {olds}, {goals}, {came_to}");
}

/// What lies beside a lip is the face, not more lip.
#[test]
fn lips_are_drawn_in_the_skin_around_them() {
    let mut command = healedhue();
    command.args(["practise", "--no-progress", "--now", NOW, "--count", "12", "--colour", "always"]);
    let told = text(command.args(["--lesson", "lips-as-a-filter", "--seed", "3"]), &any_answer(80));
    let mut seen = 0;
    for client in crate::demo::course().clients.iter().filter(|client| client.site == Site::Lip) {
        let face = client.around(Light::D65).expect("a lip has an edge").srgb;
        let face = format!("\x1b[48;2;{};{};{}m   ", face.r, face.g, face.b);
        for case in told.split(&format!("  {}, {}: ", client.name, client.age)).skip(1) {
            let bare = case.lines().find(|line| line.contains("lip without work")).expect("the lip is shown");
            assert_eq!(bare.matches(&face).count(), 2, "{bare:?}");
            seen += 1;
        }
    }
    assert!(seen > 3, "{told}");
}

/// Whoever does not know a bottle asks for it, and the question still waits.
#[test]
fn a_question_mark_tells_what_is_in_the_bottles_that_are_named() {
    let ask = |input: &str| {
        let mut command = healedhue();
        command.args([
            "practise",
            "--no-progress",
            "--seed",
            "3",
            "--count",
            "1",
            "--skill",
            "choose-bottle",
        ]);
        let told = text(&mut command, input);
        told.split_once("promise").expect("a promise stands above").1.to_owned()
    };
    let (asked, told) = (ask("q\n"), ask("?\nq\n"));
    let names = |bottle: &&healedhue::pigment::Bottle| {
        asked.split(|c: char| !c.is_alphanumeric()).any(|word| word == bottle.name)
    };
    let shelf = &crate::demo::course().shelf;
    let named: Vec<_> = shelf.bottles.iter().filter(names).collect();
    assert!(!named.is_empty(), "{asked}");
    let told = told.split_whitespace().collect::<Vec<_>>().join(" ");
    for bottle in &shelf.bottles {
        let line = told.split_once(&format!(" {}: {} ", bottle.name, bottle.about));
        assert_eq!(
            line.is_some(),
            named.iter().any(|known| known.id == bottle.id),
            "{}: {told}",
            bottle.name
        );
        for &(place, _) in bottle.recipe.iter().filter(|_| line.is_some()) {
            let contents =
                line.map_or("", |(_, after)| after.split_once(". ").map_or(after, |parts| parts.0));
            assert!(contents.contains(&shelf.colourants[place].id), "{}: {contents}", bottle.name);
        }
    }
    assert_eq!(told.matches("Your answer (").count(), 2, "{told}");
}

#[test]
fn wrong_use_of_practise_is_exit_code_2() {
    let (_folder, path) = folder();
    kept(&path).arg("--no-progress").assert().code(2).stderr(contains("cannot be used with"));
    kept(&path)
        .args(["--minutes", "0"])
        .assert()
        .code(2)
        .stderr(contains("give a whole number from 1 to 480"));
    for (option, wrong, right) in [
        ("--seed", "-1", "give a whole number from 0 to 18446744073709551615"),
        ("--seed", "-1x", "give a whole number from 0 to 18446744073709551615"),
        ("--seed", "18446744073709551616", "give a whole number from 0 to 18446744073709551615"),
        ("--count", "-5", "give a whole number from 1 to 200"),
        ("--minutes", "ten", "give a whole number from 1 to 480"),
    ] {
        let told = format!("error: invalid value '{wrong}' for '{option} <N>': {right}\n");
        healedhue()
            .args(["practise", "--no-progress", option, wrong])
            .assert()
            .code(2)
            .stderr(contains(told));
    }
    healedhue()
        .args([
            "practise",
            "--no-progress",
            "--minutes",
            "2",
            "--lesson",
            "touching-up",
            "--skill",
            "whistling",
        ])
        .assert()
        .code(2)
        .stderr(contains("there is no skill `whistling`"));
}
