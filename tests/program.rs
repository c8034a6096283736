//! The program as a user meets it: commands, wrong input, exit codes.

use assert_cmd::Command;
use predicates::prelude::PredicateBooleanExt;
use predicates::str::{contains, is_empty};
use std::path::Path;

fn healedhue() -> Command {
    let mut command = Command::cargo_bin("healedhue").expect("the program is built");
    command.current_dir(env!("CARGO_MANIFEST_DIR")).env("NO_COLOR", "1").env_remove("COLUMNS");
    command
}

/// Runs `foresee` on a request from standard input.
fn foresee(request: &str) -> assert_cmd::assert::Assert {
    healedhue().args(["foresee", "-", "--json"]).write_stdin(request).assert()
}

fn answer(request: &str) -> serde_json::Value {
    let output = foresee(request).success().get_output().stdout.clone();
    serde_json::from_slice(&output).expect("the answer is JSON")
}

#[test]
fn layers_reads_its_json_and_answers_in_kind() {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/data/layered-media.json");
    let output = healedhue()
        .args(["layers", "--json", "--angles", "24"])
        .arg(file)
        .assert()
        .success()
        .get_output()
        .stdout
        .clone();
    let answer: Vec<std::collections::BTreeMap<String, f64>> = serde_json::from_slice(&output).expect("JSON");
    assert_eq!(answer.len(), 80);
    assert_eq!(
        answer[0].keys().collect::<Vec<_>>(),
        ["reflectance_normal_incidence", "transmittance_normal_incidence"]
    );
}

#[test]
fn foresee_needs_only_a_skin() {
    let bare = answer(r#"{"skin": {"phototype": "III"}}"#);
    assert_eq!(bare["reflectance"].as_array().map(Vec::len), Some(31));
    assert_eq!(bare["lab"], bare["bare_skin_lab"]);
    assert_eq!(bare["reading"]["tone"], "skin");
    for key in ["xyz", "srgb", "warnings"] {
        assert!(!bare[key].is_null(), "{key}");
    }
    let worked = answer(r#"{"skin": {"phototype": "III"}, "mix": {"kelderwick": 6}}"#);
    assert_eq!(worked["bare_skin_lab"], bare["lab"]);
    assert!(worked["lab"][0].as_f64() < bare["lab"][0].as_f64());
    let triples = ["xyz", "lab", "srgb", "bare_skin_lab"];
    assert!(triples.iter().all(|key| worked[key].as_array().is_some_and(|triple| triple.len() == 3)));
}

#[test]
fn foresee_takes_everything_the_design_names() {
    let seen = answer(
        r#"{"skin": {"ita": 30, "undertone": "olive", "redness": "rosy", "blood": 0.012}, "site": "eyelid", "light": "A",
            "months": 24, "mix": {"netherquill": 2, "kelderwick": 4},
            "placement": {"depth_mm": 0.2, "thickness_mm": 0.2, "load": 0.8, "coverage": 0.7},
            "existing": [{"colourants": {"PR101": 0.3}, "months": 60}, {"mix": {"dunmere": 6}, "placement": {"depth_mm": 0.4}}]}"#,
    );
    assert!(seen["lab"][0].as_f64().is_some_and(|l| (20.0..70.0).contains(&l)));
    let warning = seen["warnings"][0].as_str().expect("a restricted colourant is warned of");
    assert!(warning.contains("PB15:3") && warning.contains("2020/2081"), "{warning}");
}

#[test]
fn foresee_shows_swatches_where_there_is_colour_and_words_everywhere() {
    let request =
        r#"{"skin": {"phototype": "II", "redness": "rosy"}, "mix": {"kelderwick": 5, "emberlow": 1}}"#;
    let run = |colour: &str| {
        let output =
            healedhue().args(["foresee", "-", "--colour", colour]).write_stdin(request).assert().success();
        String::from_utf8(output.get_output().stdout.clone()).expect("UTF-8")
    };
    let (plain, coloured) = (run("auto"), run("always"));
    assert!(!plain.contains('\x1b') && coloured.contains("\x1b[48;2;"));
    insta::assert_snapshot!(plain);
}

#[test]
fn wrong_requests_are_refused_with_field_value_and_range() {
    for (request, words) in [
        (
            r#"{"skin": {"phototype": "II"}, "mix": {"kelderwick": 6}, "placement": {"thickness_mm": -0.2}}"#,
            "`thickness_mm` is -0.2, outside 0.01 to 2 mm",
        ),
        (r#"{"skin": {"phototype": "II"}, "placement": {"coverage": 85}}"#, "`coverage` is 85"),
        (r#"{"skin": {"melanin": 3}}"#, "`melanin` is 3"),
        (r#"{"skin": {"ita": 100}}"#, "`ita` is 100"),
        (r#"{"skin": {}}"#, "one of `phototype` (I to VI), `ita` (degrees), `lab`"),
        (r#"{"skin": {"phototype": "II", "ita": 40}}"#, "not `ita` and another"),
        (
            r#"{"skin": {"phototype": "VII"}}"#,
            "skin.phototype: unknown word `VII`, expected one of `I`, `II`",
        ),
        (
            r#"{"skin": {"phototype": "II"}, "sun": "noon"}"#,
            "sun: unknown word `noon`, expected one of `sheltered`, `everyday`",
        ),
        (r#"{"skin": {"phototype": "II"}, "oil": 3}"#, "oil: "),
        (
            r#"{"skin": {"phototype": "II"}, "aftercare": "none"}"#,
            "aftercare: unknown word `none`, expected `followed` or `neglected`",
        ),
        (
            r#"{"skin": {"phototype": "II"}, "touch_ups": [{"months": -2}]}"#,
            "touch_ups[0].months: `months` is -2, outside 0 to 600 months",
        ),
        (
            r#"{"skin": {"phototype": "II"}, "touch_ups": [{"months": NaN}]}"#,
            "touch_ups[0].months: `NaN` is no number, text, list or object",
        ),
        (
            r#"{"skin": {"phototype": "II"}, "touch_ups": [{"months": 1e999}]}"#,
            "touch_ups[0].months: number out of range",
        ),
        (r#"{"skin": {"phototype": "II"}, "touch_ups": [{}]}"#, "touch_ups[0]: missing field `months`"),
        (
            r#"{"skin": {"phototype": "II"}, "touch_ups": [{"months": 12, "mix": {"kelderwik": 6}}]}"#,
            "touch_ups[0].mix: there is no bottle `kelderwik`. Did you mean `kelderwick`?",
        ),
        (
            r#"{"skin": {"phototype": "II"}, "touch_ups": [{"months": 12, "placement": {"load": 9}}]}"#,
            "touch_ups[0].placement: `load` is 9",
        ),
        (r#"{"skin": {"phototype": "II"}, "mix": {"kelderwik": 6}}"#, "Did you mean `kelderwick`?"),
        (
            r#"{"skin": {"phototype": "II"}, "existing": [{"colourants": {"PR999": 0.3}}]}"#,
            "existing[0].colourants: there is no colourant `PR999`",
        ),
        (
            r#"{"skin": {"phototype": "II"}, "existing": [{"colourants": {"CI 77491": 0.3}}]}"#,
            "existing[0].colourants: there is no colourant `CI 77491`. CI 77491 is `PR101`",
        ),
        (
            r#"{"skin": {"phototype": "II"}, "existing": [{}]}"#,
            "existing[0]: give either `mix` or `colourants`",
        ),
        (r#"{"skin": {"phototype": "II"}, "months": -1}"#, "`months` is -1"),
        (r#"{"skin": {"phototype": "II"}, "lamp": "A"}"#, "unknown field `lamp`"),
        (r#"{"skin": {"phototype": "II"}, "light": "D50"}"#, "unknown word `D50`"),
        (
            r#"{"skin": {"phototype": "II"}, "placement": {"load": "much"}}"#,
            "expected a number at line 1 column 58; it must be 0 to 5 times a full pass",
        ),
        (
            r#"{"skin": {"phototype": "II"}, "mix": {"kelderwick": 4.5}}"#,
            "expected a whole number, 0 or more",
        ),
        (
            r#"{"skin": {"phototype": "II"}, "touch_ups": [12]}"#,
            "touch_ups[0]: invalid type: number `12`, expected an object",
        ),
        (r#"{"skin": {"phototype": "II" "#, "-: skin: the text ends inside an object"),
        (r#"{"skin": "#, "-: skin: the text ends inside a value"),
        ("", "-: request: the text ends inside a value"),
    ] {
        foresee(request).code(1).stdout(is_empty()).stderr(contains(words));
    }
}

#[test]
fn wrong_files_are_refused_with_place_value_and_range() {
    let layers = |input: &[u8]| healedhue().args(["layers", "-"]).write_stdin(input).assert();
    let one = |layer: &str| {
        let stack = format!(
            r#"[{{"refractive_index": 1.4, "layers": [{{{layer}, "anisotropy": 0.8, "thickness_mm": 1}}]}}]"#
        );
        layers(stack.as_bytes()).code(1).stdout(is_empty())
    };
    one(r#""absorption_per_mm": NaN, "scattering_per_mm": 1"#).stderr(contains(
        "-: stack 1: layer 1: `absorption_per_mm`: `NaN` is no number, text, list or object at line 1 column 61; it must be 0 to 100000 per mm",
    ));
    one(r#""absorption_per_mm": 1e300, "scattering_per_mm": 1"#)
        .stderr(contains("stack 1: layer 1: `absorption_per_mm` is 1e300, outside 0 to 100000 per mm"));
    one(r#""absorption_per_mm": 1"#).stderr(contains("stack 1: layer 1: missing field `scattering_per_mm`"));
    layers(br#"{"refractive_index": 1.4}"#).code(1).stderr(contains("expected a list"));
    // As editors write it.
    layers(b"\xef\xbb\xbf[]").success();

    let skin = |heading: &str, of: fn(f64) -> f64| {
        let rows: String = (0..=30)
            .map(|i| 400.0 + 10.0 * f64::from(i))
            .map(|nm| format!("{nm},{0},{0}\n", of(nm)))
            .collect();
        healedhue().args(["skin", "-"]).write_stdin(format!("wavelength_nm,{heading}\n{rows}")).assert()
    };
    let rising = |nm: f64| 0.2 + 0.4 * (nm - 400.0) / 300.0;
    skin("one,one", rising).code(1).stderr(contains("line 1: the column `one` is there twice"));
    skin("one,", rising).code(1).stderr(contains("line 1: the heading of column 3 is ``"));
    skin("one,\u{1b}[2J", rising).code(1).stderr(contains("column 3 is `\\u{1b}[2J`"));
    skin("one", rising).code(1).stderr(contains("line 2: there are 3 values for 2 headings"));
    healedhue()
        .args(["skin", "-"])
        .write_stdin("wavelength_nm;one\n400;0,3\n")
        .assert()
        .code(1)
        .stderr(contains("the first column is `wavelength_nm;one`").and(contains("separated by commas")));
    skin("one,two", rising).success().stdout(contains("no skin").not());
    skin("sky,two", |nm| 0.9 - 0.8 * (nm - 400.0) / 300.0)
        .success()
        .stdout(contains("sky: no skin of the model looks like this (ΔE00 "));
}

#[test]
fn wrong_use_is_exit_code_2() {
    healedhue().assert().code(2);
    healedhue().arg("bake").assert().code(2).stderr(contains("unrecognized subcommand"));
    healedhue()
        .args(["layers", "x.json", "--angles", "5"])
        .assert()
        .code(2)
        .stderr(contains("give one of 4, 8, 12, 16, 20, 24, 28, 32"));
    healedhue()
        .args(["practise", "--lesson", "nowhere"])
        .assert()
        .code(2)
        .stderr(contains("there is no lesson `nowhere`; there are: "));
    healedhue().args(["practise", "--lesson", "red-skin-and-warmt"]).assert().code(2).stderr(contains(
        "there is no lesson `red-skin-and-warmt`; did you mean `red-skin-and-warmth`? There are: ",
    ));
    healedhue().args(["layers", "missing.json"]).assert().code(1).stderr(contains("missing.json"));
    healedhue().args(["check", "--course", "tests"]).assert().code(1);
}

#[test]
fn practise_asks_marks_and_sums_up() {
    let session = |input: &str| {
        let output = healedhue()
            .args(["practise", "--seed", "5", "--count", "3", "--skill", "read-residual"])
            .args(["--no-progress", "--now", "1700000000"])
            .write_stdin(input)
            .assert()
            .success();
        String::from_utf8(output.get_output().stdout.clone()).expect("UTF-8")
    };
    let text = session("a\nnonsense\nb\nc\n");
    assert_eq!(text, session("a\nnonsense\nb\nc\n"), "the same seed and answers give the same session");
    assert!(text.contains("Please answer with"));
    insta::assert_snapshot!(text);
    assert!(session("").contains("No exercise was answered."));
    assert!(session("q\n").contains("No exercise was answered."));
}

#[test]
fn check_proves_the_demo_and_its_json_is_machine_readable() {
    let mut check = healedhue();
    check.args(["check", "--cache"]).arg(crate::proofs::cache());
    check.assert().success().stdout(contains("every-door")).stdout(contains("proved in"));
    let output = healedhue()
        .args(["check", "--json", "--no-cache", "--course", "tests/loading/minimal"])
        .assert()
        .code(1);
    let problems: Vec<serde_json::Value> = serde_json::from_slice(&output.get_output().stdout).expect("JSON");
    assert!(!problems.is_empty());
    for key in ["file", "line", "column", "severity", "message", "help"] {
        assert!(problems.iter().all(|problem| problem.get(key).is_some()), "{key}");
    }
}

#[test]
fn too_many_existing_works_are_refused_before_they_are_solved() {
    let works = vec![r#"{"colourants": {"PBk7": 0.1}}"#; 40].join(",");
    foresee(&format!(r#"{{"skin": {{"phototype": "II"}}, "existing": [{works}]}}"#))
        .code(1)
        .stderr(contains("existing: 40 works are more than the 24 that can be solved"));
    let touch_ups = vec![r#"{"months": 12}"#; 30].join(",");
    foresee(&format!(r#"{{"skin": {{"phototype": "II"}}, "touch_ups": [{touch_ups}]}}"#))
        .code(1)
        .stderr(contains("touch_ups: 30 touch-ups and 0 existing works are more than the 24"));
}

/// A request that uses everything about time.
const KEPT: &str = r#"{"skin": {"phototype": "III", "undertone": "warm"}, "mix": {"kelderwick": 4, "corrick": 2}, "sun": "outdoors",
    "oil": "oily", "touch_ups": [{"months": 18, "mix": {"dunmere": 6}}]}"#;

#[test]
fn foresee_tells_the_course_over_time_in_words_and_json() {
    let run = |options: &[&str]| {
        let output = healedhue()
            .args(["foresee", "-", "--timeline"])
            .args(options)
            .write_stdin(KEPT)
            .assert()
            .success();
        String::from_utf8(output.get_output().stdout.clone()).expect("UTF-8")
    };
    let plain = run(&[]);
    assert!(!plain.contains('\x1b') && plain.lines().all(|line| line.chars().count() <= 80), "{plain}");
    assert!(run(&["--colour", "always"]).contains("\x1b[48;2;"));
    insta::assert_snapshot!("a_course_over_time", plain);
    let moments: Vec<serde_json::Value> = serde_json::from_str(&run(&["--json"])).expect("JSON");
    assert!(moments.len() >= 16);
    for key in [
        "months",
        "when",
        "event",
        "lab",
        "srgb",
        "in_gamut",
        "bare_skin_lab",
        "reading",
        "delta_e_2000_to_skin",
        "delta_e_2000_to_healed",
    ] {
        assert!(moments.iter().all(|moment| moment.get(key).is_some()), "{key}");
    }
}

#[test]
fn foresee_draws_the_course_over_time_whole_or_not_at_all() {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let path = folder.path().join("course.svg");
    let draw = |request: &str, path: &Path| {
        healedhue().args(["foresee", "-", "--timeline", "--svg"]).arg(path).write_stdin(request).assert()
    };
    draw(KEPT, &path).success().stdout(contains("18 months, touch-up"));
    let svg = std::fs::read_to_string(&path).expect("the picture is there");
    assert!(svg.starts_with("<svg xmlns=\"http://www.w3.org/2000/svg\"") && svg.ends_with("</svg>\n"));
    for part in [
        "<title id=\"title\">4 drops Kelderwick, 2 drops Corrick",
        "<desc id=\"desc\">on the day: ",
        "never a promise",
    ] {
        assert!(svg.contains(part), "{part}");
    }
    assert!(!svg.contains("NaN") && !svg.contains("<script"));
    // A wrong request leaves the earlier picture alone; so does a folder that is not there.
    draw(r#"{"skin": {"phototype": "II"}, "months": -1}"#, &path).code(1);
    assert_eq!(std::fs::read_to_string(&path).ok(), Some(svg));
    draw(KEPT, &folder.path().join("nowhere/course.svg"))
        .code(1)
        .stdout(is_empty())
        .stderr(contains("nowhere"));
    draw(KEPT, folder.path()).code(1).stderr(contains("this is a folder"));
    let left: Vec<_> = std::fs::read_dir(folder.path()).expect("a folder").collect();
    assert_eq!(left.len(), 1, "{left:?}");
    healedhue()
        .args(["foresee", "-", "--svg", "x.svg"])
        .write_stdin(KEPT)
        .assert()
        .code(2)
        .stderr(contains("--timeline"));
}

#[test]
fn foresee_shows_the_work_under_every_light() {
    let run = |options: &[&str]| {
        let output =
            healedhue().args(["foresee", "-", "--lights"]).args(options).write_stdin(KEPT).assert().success();
        String::from_utf8(output.get_output().stdout.clone()).expect("UTF-8")
    };
    insta::assert_snapshot!("under_every_light", run(&[]));
    let lights: Vec<serde_json::Value> = serde_json::from_str(&run(&["--json"])).expect("JSON");
    assert_eq!(
        lights.iter().map(|light| light["light"].as_str()).collect::<Vec<_>>(),
        ["D65", "A", "LED-B3", "FL2"].map(Some)
    );
    assert_eq!(lights[0]["lab"], answer(KEPT)["lab"]);
    healedhue().args(["foresee", "-", "--lights", "--timeline"]).write_stdin(KEPT).assert().code(2);
}

#[test]
fn an_answer_in_any_encoding_is_asked_again() {
    healedhue()
        .args(["practise", "--seed", "5", "--count", "1", "--no-progress"])
        .write_stdin(&b"\xff\xfe\nq\n"[..])
        .assert()
        .success()
        .stdout(contains("Please answer with"));
}

/// Two people simulated by the engine, and what a wrong file is told.
#[test]
fn skin_reads_spectra_and_refuses_what_is_none() {
    let people: Vec<serde_json::Value> = ["II", "V"]
        .iter()
        .map(|phototype| answer(&format!(r#"{{"skin": {{"phototype": "{phototype}"}}}}"#)))
        .collect();
    let mut csv = "wavelength_nm,fair,dark\n".to_owned();
    let (fair, dark) = (&people[0]["reflectance"], &people[1]["reflectance"]);
    for band in 0..31 {
        csv += &format!("{},{},{}\n", 400 + 10 * band, fair[band], dark[band]);
    }
    let run = |text: String| healedhue().args(["skin", "-", "--json"]).write_stdin(text).assert();
    let found: Vec<serde_json::Value> =
        serde_json::from_slice(&run(csv.clone()).success().get_output().stdout).expect("JSON");
    assert_eq!((found[0]["name"].as_str(), found.len()), (Some("fair"), 2));
    assert!(found.iter().all(|one| one["delta_e_2000"].as_f64().is_some_and(|off| off < 0.1)), "{found:?}");
    let melanin = |i: usize| found[i]["melanin"].as_f64().expect("a number");
    assert!((melanin(0) / 0.02 - 1.0).abs() < 0.2 && (melanin(1) / 0.14 - 1.0).abs() < 0.2, "{found:?}");

    for (text, words) in [
        ("nm,a\n400,0.2\n".to_owned(), "it must be `wavelength_nm`"),
        ("wavelength_nm\n400\n".to_owned(), "no column of reflectance"),
        ("wavelength_nm,a\n400,0.2\n410,0.2\n420,0.2\n".to_owned(), "they must cover 400 to 700 nm"),
        (csv.replace("500,", "500,x"), "is not a number"),
        (csv.replace("500,0.", "500,40."), "divide percentages by 100"),
        (csv.replace("\n500,", "\n495,"), "nothing is wrong"),
    ] {
        if words == "nothing is wrong" {
            run(text).success();
        } else {
            run(text).code(1).stderr(contains(words));
        }
    }
}

/// A stream has no end and no length: every command that reads one stops at its bound, and says so.
#[cfg(unix)]
#[test]
fn endless_input_is_read_up_to_a_bound() {
    use std::fs::File;
    use std::process::{Command, Stdio};
    let folder = tempfile::tempdir().expect("a temporary folder");
    let out = folder.path().join("out");
    let zero = "/dev/zero";
    let told = |arguments: &[&str]| {
        let program = healedhue().get_program().to_owned();
        let run = Command::new(program)
            .current_dir(env!("CARGO_MANIFEST_DIR"))
            .env("NO_COLOR", "1")
            .args(arguments)
            .stdin(Stdio::from(File::open(zero).expect("a stream of zeros")))
            .output()
            .expect("the program runs");
        assert_eq!(run.status.code(), Some(1), "{arguments:?}");
        String::from_utf8(run.stderr).expect("UTF-8")
    };
    let out = out.to_str().expect("UTF-8");
    for file in ["-", zero] {
        let beyond = |most: &str| format!("error: {file}: more than the {most} bytes that are read\n");
        for arguments in [
            vec!["layers", file],
            vec!["foresee", file],
            vec!["skin", file],
            vec!["pigment", file],
            vec!["assign", file, "--out", out],
            vec!["paper", "practical", "--register", file, "--out", out],
        ] {
            assert_eq!(told(&arguments), beyond("50000000"), "{arguments:?}");
        }
    }
    assert_eq!(told(&["mark", zero]), "refused: /dev/zero: this is no file: save the slip as one\n");
    let line = told(&["practise", "--no-progress", "--lesson", "eye-safety", "--seed", "1"]);
    assert_eq!(line, "error: standard input: a line of more than 10000 bytes is no answer\n");
    assert!(!Path::new(out).exists());
}

/// Whoever reads the first line and goes away ends every command, and none of them by a panic.
#[test]
fn nobody_reading_ends_every_command_quietly() {
    use std::process::{Command, Stdio};
    let folder = tempfile::tempdir().expect("a temporary folder");
    let (people, out) = (folder.path().join("people.csv"), folder.path().join("out"));
    std::fs::write(&people, "id,name\nq1,Orrin Vell\n").expect("a register");
    let fixture = crate::papers::small_course();
    let (course, people) = (fixture.path(""), people.to_str().expect("UTF-8").to_owned());
    let (course, out) = (course.to_str().expect("UTF-8"), out.to_str().expect("UTF-8"));
    let small = ["paper", "small", "--seed", "5", "--course", course];
    let slip = format!("{out}/blank-slips/q1.json");
    let book = folder.path().join("book.sqlite");
    let book = book.to_str().expect("UTF-8");
    let report = folder.path().join("report");
    let with =
        |more: &[&str]| [&small[..], more].concat().iter().map(ToString::to_string).collect::<Vec<_>>();
    let words = |words: &[&str]| words.iter().map(ToString::to_string).collect::<Vec<_>>();
    for arguments in [
        with(&[]),
        with(&["--json"]),
        with(&["--key"]),
        with(&["--survey", "20"]),
        with(&["--register", &people, "--out", out]),
        words(&["mark", &slip, "--empty", "--keys", out, "--course", course, "--book", book]),
        words(&["mark", &slip, "--empty", "--course", course]),
        words(&["mark", &slip, &slip, "missing.json", "--empty", "--json", "--course", course]),
        words(&["report", "--marks", "docs/examples/marks.json", "--out", report.to_str().expect("UTF-8")]),
        words(&["report", "--marks", "docs/examples/marks.json", "--json"]),
        words(&["practise", "--no-progress", "--lesson", "eye-safety", "--count", "1", "--seed", "1"]),
        words(&["layers", "tests/data/layered-media.json", "--json"]),
        words(&["foresee", "docs/examples/red-skin.json"]),
        words(&["paper", "--help"]),
    ] {
        for closed in ["output", "both"] {
            let (reader, writer) = std::io::pipe().expect("a pipe");
            drop(reader);
            let mut command = Command::new(healedhue().get_program());
            command.current_dir(env!("CARGO_MANIFEST_DIR")).env("NO_COLOR", "1").args(&arguments);
            command.args(if arguments.iter().any(|word| word == "--register") {
                &["--replace"][..]
            } else {
                &[]
            });
            command.stdin(Stdio::null()).stderr(Stdio::piped());
            if closed == "both" {
                command.stderr(writer.try_clone().expect("a pipe"));
            }
            let run = command.stdout(writer).output().expect("the program runs");
            let told = String::from_utf8_lossy(&run.stderr);
            assert!(matches!(run.status.code(), Some(0 | 1)), "{arguments:?}: {:?}\n{told}", run.status);
            assert!(!told.contains("panicked") && !told.contains("pipe"), "{arguments:?}: {told}");
        }
    }
    // What was to be recorded is, though nobody reads of it.
    assert_eq!(
        healedhue::assess::MarkBook::open(Path::new(book)).expect("a book").results().expect("results"),
        1
    );
}

/// A drill that turns out impossible when it is proved is shown where it stands, whichever command finds it.
#[test]
fn an_impossible_drill_is_shown_with_its_line() {
    let fixture = crate::loading::fixture::Fixture::minimal();
    let course = fixture.path("");
    let out = fixture.path("../public");
    for arguments in [
        vec!["build", "--out", out.to_str().expect("UTF-8")],
        vec!["practise", "--no-progress", "--lesson", "choosing"],
    ] {
        let run = healedhue().args(&arguments).arg("--course").arg(&course).assert().code(1);
        let told = String::from_utf8(run.get_output().stderr.clone()).expect("UTF-8");
        let expected = " --> lessons/first-steps/choosing.yaml:7:5\n  |\n7 |   - id: first-choice\n  |     ^^^^^^^^^^^^^^^^\n";
        assert!(told.starts_with("error: drill `first-choice` gives no exercise "), "{told}");
        assert!(told.contains(expected) && told.ends_with(", 0 warnings\n"), "{told}");
    }
    let run = healedhue().args(["check", "--no-cache"]).arg("--course").arg(&course).assert().code(1);
    let told = String::from_utf8(run.get_output().stdout.clone()).expect("UTF-8");
    assert!(told.contains("7 |   - id: first-choice\n  |     ^^^^^^^^^^^^^^^^\n"), "{told}");
    assert_eq!(told.matches("drill `first-choice` gives no exercise").count(), 1, "{told}");
    assert!(told.contains(" more exercises likewise)"), "{told}");
}

#[test]
fn numbers_that_cannot_be_are_told_with_what_would_be_right() {
    for (arguments, told) in [
        (
            &["paper", "rehearsal", "--seed", "-1"][..],
            "'--seed <N>': give a whole number from 0 to 9007199254740991",
        ),
        (
            &["paper", "rehearsal", "--seed", "1.5"],
            "'--seed <N>': give a whole number from 0 to 9007199254740991",
        ),
        (
            &["paper", "rehearsal", "--seed", "9007199254740992"],
            "'--seed <N>': give a whole number from 0 to 9007199254740991",
        ),
        (
            &["paper", "rehearsal", "--survey", "-3"],
            "'--survey <COUNT>': give a whole number from 1 to 1000000",
        ),
        (
            &["report", "--book", "x", "--seed", "-1"],
            "'--seed <N>': give a whole number from 0 to 9223372036854775807",
        ),
        (
            &["layers", "x.json", "--angles", "five"],
            "'--angles <ANGLES>': give one of 4, 8, 12, 16, 20, 24, 28, 32",
        ),
        (
            &["layers", "x.json", "--angles", "-4"],
            "'--angles <ANGLES>': give one of 4, 8, 12, 16, 20, 24, 28, 32",
        ),
        (
            &["pigment", "x.csv", "--thickness-mm", "thin"],
            "'--thickness-mm <MM>': give a number, such as 0.25",
        ),
        (&["pigment", "x.csv", "--dose-mm", "nan"], "'--dose-mm <MM>': give a number, such as 0.25"),
    ] {
        let output = healedhue().args(arguments).assert().code(2).get_output().clone();
        let stderr = String::from_utf8(output.stderr).expect("UTF-8");
        assert!(stderr.lines().next().is_some_and(|line| line.ends_with(told)), "{stderr}");
        assert!(output.stdout.is_empty());
    }
}

/// Lines that somebody reads fit the terminal, here of the width that COLUMNS asks for; the words stay as they are where nobody does.
#[test]
fn papers_marks_and_assignments_fit_forty_and_eighty_columns() {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let fixture = crate::papers::small_course().with(
        "week.yaml",
        "id: week\ntitle: A week in which a great deal is read and practised by everybody\ndue: 2026-03-14\nlessons: [light]\nexercises: 2\npeople:\n  - {id: q1, name: Orrin Vell of the long name that needs two lines}\n",
    );
    std::fs::write(folder.path().join("people.csv"), "id,name\nq1,Orrin Vell\nq2,Tamsel Brook\n")
        .expect("a register");
    let course = fixture.path("").to_str().expect("UTF-8").to_owned();
    let told = |columns: Option<&str>, arguments: &[&str]| {
        let mut command = assert_cmd::Command::cargo_bin("healedhue").expect("the program is built");
        command.current_dir(folder.path()).env("NO_COLOR", "1").env_remove("COLUMNS");
        command.envs(columns.map(|columns| ("COLUMNS", columns)));
        command.args(arguments).args(["--course", &course]);
        let output = command.output().expect("the program runs");
        let text = |bytes: &[u8]| String::from_utf8(bytes.to_vec()).expect("UTF-8");
        (text(&output.stderr), text(&output.stdout))
    };
    let out = |name: &str| {
        ["paper", "small", "--seed", "5", "--register", "people.csv", "--out", name].map(str::to_owned)
    };
    told(None, &out("first").each_ref().map(String::as_str));
    let week = format!("{course}/week.yaml");
    let mut again = 0;
    for arguments in [
        vec!["paper", "small", "--seed", "5", "--candidate", "q1"],
        vec!["paper", "small", "--seed", "5", "--register", "people.csv", "--out", "first", "--replace"],
        vec!["mark", "first/blank-slips", "--empty", "--keys", "first"],
        vec!["mark", "first/blank-slips/q1.json", "--empty"],
        vec!["mark", "first/blank-slips/q1.json"],
        vec!["assign", &week, "--out", "given", "--replace"],
    ] {
        let (err, out) = told(None, &arguments);
        for columns in [40, 80] {
            let (fitted_err, fitted_out) = told(Some(&columns.to_string()), &arguments);
            for (whole, fitted) in [(&err, &fitted_err), (&out, &fitted_out)] {
                for line in fitted.lines() {
                    let is_word = line.split_whitespace().count() < 2;
                    assert!(
                        line.chars().count() <= columns || is_word,
                        "{arguments:?} at {columns}: {line:?}"
                    );
                }
                let words = |text: &str| text.split_whitespace().map(str::to_owned).collect::<Vec<_>>();
                assert!(words(whole) == words(fitted), "{arguments:?}:\n{whole}\n{fitted}");
                again += usize::from(whole.lines().count() < fitted.lines().count());
            }
        }
    }
    assert!(again > 6, "{again}");
}

/// Work in a lip, over older work, with a search.
const LIP: &str = r#"{"skin": {"phototype": "II"}, "site": "lip", "worlds": 0, "existing": [{"colourants": {"PBk7": 0.1}, "months": 60}],
    "search": {"goal": [60, 9, 12], "bottles": 2, "drops": 3}}"#;

/// Rows are a table where there is room for every one of them; otherwise their words stand below. No word is lost, and no line ends in spaces.
#[test]
fn foresee_fits_every_terminal() {
    let brow = r#"{"skin": {"phototype": "V", "redness": "ruddy"}, "worlds": 16, "months": 7,
        "mix": {"netherquill": 2, "kelderwick": 4}}"#;
    for request in [brow, LIP] {
        let told = |columns: Option<usize>, colour: &str| {
            let mut command = healedhue();
            command.args(["foresee", "-", "--colour", colour]).write_stdin(request);
            command.envs(columns.map(|columns| ("COLUMNS", columns.to_string())));
            let output = command.assert().success().get_output().stdout.clone();
            crate::practise::without_colours(&String::from_utf8(output).expect("UTF-8"))
        };
        let whole = told(None, "never");
        assert!(whole.lines().all(|line| line.trim_end() == line), "{whole}");
        let words = |text: &str| text.split_whitespace().map(str::to_owned).collect::<Vec<_>>();
        for columns in [40, 60, 80, 120] {
            for colour in ["never", "always"] {
                let fitted = told(Some(columns), colour);
                for line in fitted.lines() {
                    assert!(line.chars().count() <= columns, "{columns}: {line:?}");
                    assert!(colour == "always" || line.trim_end() == line, "{columns}: {line:?}");
                }
                assert_eq!(words(&fitted), words(&whole), "{columns}, {colour}");
            }
        }
        // Into a pipe each row is whole.
        assert!(
            whole.lines().any(|line| line.starts_with("  after six weeks") && line.contains(", ")),
            "{whole}"
        );
    }
}

/// No label calls a lip skin, and what lies beside it is the face.
#[test]
fn foresee_shows_a_lip_in_the_skin_around_it() {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let path = folder.path().join("lip.svg");
    let run = |options: &[&str]| {
        let output = healedhue().args(["foresee", "-"]).args(options).write_stdin(LIP).assert().success();
        String::from_utf8(output.get_output().stdout.clone()).expect("UTF-8")
    };
    for options in [&[][..], &["--timeline"], &["--lights"]] {
        let plain = run(options);
        assert!(plain.contains("bare lip") && !plain.contains("skin"), "{plain}");
    }
    let request = healedhue::foresee::Request::from_json(LIP).expect("a request");
    let task = request.resolve(&crate::demo::course().shelf).expect("a task");
    let around =
        healedhue::healing::Appearance::of(task.around().expect("a lip has an edge"), task.light).srgb;
    let face = format!("\x1b[48;2;{};{};{}m", around.r, around.g, around.b);
    let coloured = run(&["--colour", "always"]);
    for line in coloured.lines().filter(|line| line.contains("\x1b[48;2;")) {
        assert_eq!(line.matches(&format!("{face}   ")).count(), 2, "{line:?}");
    }
    assert!(coloured.matches(&face).count() > 10, "{coloured:?}");
    for options in [["--timeline", "--colour", "always"], ["--lights", "--colour", "always"]] {
        assert!(run(&options).contains(&face), "{options:?}");
    }
    // The request names no mix: without new work the picture shows what is left of the old one.
    run(&["--timeline", "--svg", path.to_str().expect("UTF-8")]);
    let svg = std::fs::read_to_string(&path).expect("the picture is there");
    assert!(svg.contains("dashed: bare") && !svg.contains("dashed: skin"));
    assert!(svg.contains(&format!("fill=\"{}\"", around.hex())) && svg.contains("<path transform="));
    assert!(!svg.contains("rx=\"14\""), "a lip is no round patch");
}

/// Whoever reads at a terminal has messages broken between words; a program finds each on one line.
#[test]
fn diagnostics_are_broken_where_somebody_reads_them() {
    let told = |columns: Option<&str>, options: &[&str]| {
        let mut command = healedhue();
        command.args(["check", "--no-cache", "--course", "tests/loading/minimal"]).args(options);
        command.envs(columns.map(|columns| ("COLUMNS", columns)));
        String::from_utf8(command.assert().code(1).get_output().stdout.clone()).expect("UTF-8")
    };
    let problems: Vec<serde_json::Value> = serde_json::from_str(&told(None, &["--json"])).expect("JSON");
    let (whole, fitted) = (told(None, &[]), told(Some("40"), &[]));
    let flat = fitted.split_whitespace().collect::<Vec<_>>().join(" ");
    let mut errors = 0;
    for problem in problems.iter().filter(|problem| problem["severity"] == "error") {
        let message = format!("error: {}", problem["message"].as_str().expect("a message"));
        assert!(whole.lines().any(|line| line == message), "{whole}");
        assert!(flat.contains(&message), "{fitted}");
        if let Some(help) = problem["help"].as_str() {
            assert!(whole.lines().any(|line| line.ends_with(&format!("= help: {help}"))), "{whole}");
            assert!(flat.contains(&format!("= help: {help}")), "{fitted}");
        }
        errors += 1;
    }
    assert!(errors > 0);
    for line in fitted.lines().filter(|line| !line.contains("-->")) {
        assert!(line.chars().count() <= 40 || line.split_whitespace().count() < 2, "{line:?}");
    }
}

/// A table where there is room for it, words where there is none.
#[test]
fn check_fits_forty_and_eighty_columns() {
    let fixture = crate::papers::provable();
    for (columns, row) in [(40, "first-choice (bottle): "), (80, "first-choice bottle ")] {
        let mut check = healedhue();
        check.args(["check", "--course"]).arg(fixture.path("")).env("COLUMNS", columns.to_string());
        let told = String::from_utf8(check.assert().success().get_output().stdout.clone()).expect("UTF-8");
        // A path is never cut.
        let fits = |line: &str| line.chars().count() <= columns || line.split_whitespace().count() < 2;
        assert!(told.lines().all(fits), "{told}");
        assert!(
            told.lines().any(|line| line.split_whitespace().collect::<Vec<_>>().join(" ").starts_with(row)),
            "{told}"
        );
    }
}
