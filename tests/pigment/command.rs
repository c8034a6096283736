//! `healedhue pigment`: readings in, entries for a course out, and a course that mixes them.

use super::{cards, films};
use crate::demo::course;
use crate::loading::fixture::Fixture;
use assert_cmd::Command;
use healedhue::colour::{Light, Spectrum, difference};
use healedhue::healing::{Placement, Scene};
use healedhue::pigment::measure::{Optics, Setup};
use healedhue::pigment::{Basis, Mix};
use healedhue::skin::{Phototype, Redness, Site, Skin, Undertone};
use std::fmt::Write;
use std::path::Path;
use tempfile::TempDir;

fn pigment(folder: &Path) -> Command {
    let mut command = Command::cargo_bin("healedhue").expect("the program is built");
    command.current_dir(folder).env("NO_COLOR", "1").env_remove("COLUMNS").arg("pigment");
    command
}

/// A CSV file of columns.
fn csv(columns: &[(&str, &Spectrum)]) -> String {
    let mut text = "wavelength_nm".to_owned();
    for (name, _) in columns {
        write!(text, ",{name}").expect("a text");
    }
    for band in 0..31 {
        write!(text, "\n{}", 400 + 10 * band).expect("a text");
        for (_, spectrum) in columns {
            write!(text, ",{:.6}", spectrum[band]).expect("a text");
        }
    }
    text + "\n"
}

/// Drawdowns of a paint at 0.005 and 0.04 mm, as a file.
fn sheet(truth: &Optics) -> String {
    let panels = films(truth, &[0.005, 0.04], &Setup::default());
    let (white, black) = cards();
    csv(&[
        ("white", &white),
        ("black", &black),
        ("over_white@0.005", &panels[0].reflectance),
        ("over_black@0.005", &panels[1].reflectance),
        ("over_white@0.04", &panels[2].reflectance),
        ("over_black@0.04", &panels[3].reflectance),
    ])
}

/// Dried paint of a demo bottle, of which a dose of 0.02 mm is one full pass.
fn dried_bottle(id: &str) -> Optics {
    let shelf = &course().shelf;
    let optics = shelf.optics_of(&shelf.paint_of(&Mix::new([(id.to_owned(), 1)])));
    let denser = Placement::default().thickness_mm / 0.02;
    Optics {
        absorption: optics.absorption.map(|v| v * denser),
        scattering: optics.scattering.map(|v| v * denser),
    }
}

fn told(assert: &assert_cmd::assert::Assert) -> String {
    String::from_utf8(assert.get_output().stderr.clone()).expect("UTF-8")
}

/// Two demo bottles, drawn down, read, written, loaded and mixed, heal as the demo's own recipes do, on the day and years later.
#[test]
fn measured_bottles_load_and_mix_as_what_they_were_measured_on() {
    let fixture = Fixture::minimal();
    // The course has the optics of the demo's colourants, so that parts can be shared out.
    let demo = std::fs::read(Path::new(env!("CARGO_MANIFEST_DIR")).join("lessons/pigments/colourants.yaml"));
    let fixture = fixture.with("lessons/pigments/colourants.yaml", demo.expect("the demo course"));
    let folder = TempDir::new().expect("a folder");
    let bottles = [("kelderwick", "PR101=3,PY42=16,PBk11=3.5"), ("gloamhurst", "PBk7=3,PBk11=5")];
    for (id, holds) in bottles {
        std::fs::write(folder.path().join(format!("{id}.csv")), sheet(&dried_bottle(id))).expect("a file");
        let out = fixture.path(&format!("lessons/pigments/{id}.yaml"));
        let assert = pigment(folder.path())
            .args([&format!("{id}.csv"), "--holds", holds, "--out"])
            .arg(&out)
            .assert()
            .success();
        assert!(told(&assert).is_empty());
        // Once more is refused, and nothing is lost.
        let before = std::fs::read(&out).expect("written");
        let again = pigment(folder.path()).args([&format!("{id}.csv"), "--out"]).arg(&out).assert().code(1);
        assert!(told(&again).contains("there already"));
        assert_eq!(std::fs::read(&out).expect("written"), before);
    }
    let loaded = fixture.load();
    let measured = loaded.course.unwrap_or_else(|| panic!("{:?}", loaded.diagnostics)).shelf;
    let own = &course().shelf;
    let mix = Mix::new([("kelderwick".to_owned(), 5), ("gloamhurst".to_owned(), 1)]);
    let (paint, recipe) = (measured.paint_of(&mix), own.paint_of(&mix));
    let (found, truth) = (measured.optics_of(&paint), own.optics_of(&recipe));
    for band in 0..31 {
        assert!((found.absorption[band] / truth.absorption[band] - 1.0).abs() < 0.01, "band {band}");
        assert!((found.scattering[band] / truth.scattering[band] - 1.0).abs() < 0.01, "band {band}");
    }
    assert!(paint.iter().all(|(place, _)| measured.colourants[*place].basis == Basis::Measured));
    let skin = Skin::from_evidence(Phototype::II, Undertone::Neutral, Redness::Rosy);
    for months in [0.0, 1.5, 24.0, 60.0] {
        let of = |shelf, paint| {
            let scene = Scene::new(shelf, &skin, Site::Brow, &[], months);
            Light::D65.lab_of(&scene.with(paint, &Placement::default()))
        };
        let off = difference(of(&measured, &paint), of(own, &recipe));
        assert!(off < 0.05, "{months} months: {off} ΔE00");
    }
}

#[test]
fn an_entry_and_its_report_read_well() {
    let folder = TempDir::new().expect("a folder");
    std::fs::write(folder.path().join("Soft brown.csv"), sheet(&dried_bottle("dunmere"))).expect("a file");
    let assert = pigment(folder.path())
        .args([
            "Soft brown.csv",
            "--name",
            "Soft \"brown\"",
            "--holds",
            "PR101,PY42,PBk11",
            "--half-life-months",
            "40",
        ])
        .assert()
        .success();
    let yaml = String::from_utf8(assert.get_output().stdout.clone()).expect("UTF-8");
    insta::assert_snapshot!(format!("{yaml}---\n{}", told(&assert)));
    // As a course has it.
    let loaded = Fixture::minimal().with("lessons/pigments/soft-brown.yaml", yaml).load();
    let shelf = loaded.course.unwrap_or_else(|| panic!("{:?}", loaded.diagnostics)).shelf;
    let bottle = shelf.bottle("soft-brown").expect("the bottle");
    let content = &shelf.colourants[bottle.recipe[0].0];
    assert_eq!((bottle.name.as_str(), content.half_life_months), ("Soft \"brown\"", 40.0));
    assert!(shelf.colourant_place("soft-brown").is_none());
}

#[test]
fn json_gives_everything() {
    let folder = TempDir::new().expect("a folder");
    for id in ["wexcombe", "corrick"] {
        std::fs::write(folder.path().join(format!("{id}.csv")), sheet(&dried_bottle(id))).expect("a file");
    }
    let assert = pigment(folder.path()).args(["wexcombe.csv", "corrick.csv", "--json"]).assert().success();
    let twice = pigment(folder.path()).args(["corrick.csv", "corrick.csv"]).assert().code(1);
    assert!(told(&twice).contains("two files give the id `corrick`"));
    let found: serde_json::Value = serde_json::from_slice(&assert.get_output().stdout).expect("JSON");
    assert_eq!(found.as_array().map(Vec::len), Some(2));
    for key in ["absorption_per_mm", "reduced_scattering_per_mm", "absorption_spread", "scattering_spread"] {
        assert_eq!(found[0][key].as_array().map(Vec::len), Some(31), "{key}");
    }
    assert!(found[0]["residual"]["rms"].as_f64().is_some_and(|rms| rms < 1e-4));
    assert!(found[0]["assumed"].as_array().is_some_and(|assumed| !assumed.is_empty()));
}

#[test]
fn a_colourant_comes_out_of_a_tint_with_the_course_s_white() {
    let fixture = Fixture::minimal();
    let demo = std::fs::read(Path::new(env!("CARGO_MANIFEST_DIR")).join("lessons/pigments/colourants.yaml"));
    let fixture = fixture.with("lessons/pigments/colourants.yaml", demo.expect("the demo course"));
    let shelf = fixture.load().course.expect("a course").shelf;
    let of = |id: &str| shelf.optics_of(&vec![(shelf.colourant_place(id).expect("there"), 1.0)]);
    let (truth, white) = (of("PV16"), of("PW6"));
    let tint = healedhue::pigment::measure::Tint { share: 0.3, white };
    let read = |optics: &Optics| {
        let body = healedhue::pigment::measure::Body::Opaque;
        healedhue::pigment::measure::film_reflectance::<24>(optics, &body, &Setup::default())
    };
    let folder = TempDir::new().expect("a folder");
    let text = csv(&[("masstone", &read(&truth)), ("tint", &read(&tint.mixed(&truth)))]);
    std::fs::write(folder.path().join("violet.csv"), text).expect("a file");
    let run = |extra: &[&str]| {
        pigment(folder.path()).args(["violet.csv", "--course"]).arg(fixture.path("")).args(extra).assert()
    };
    assert!(told(&run(&[]).code(1)).contains("`--share`"));
    assert!(
        told(&run(&["--share", "30"]).code(1))
            .contains("`share` is 30, outside 0.001 to 0.999 as a fraction; divide percentages by 100")
    );
    assert!(told(&run(&["--share", "0.3", "--white", "PW66"]).code(1)).contains("PW66"));
    let assert =
        run(&["--share", "0.3", "--colourant", "PV49", "--class", "other-inorganic", "--ci-number", "77362"])
            .success();
    let yaml = String::from_utf8(assert.get_output().stdout.clone()).expect("UTF-8");
    let shelf = fixture.with("lessons/pigments/violet.yaml", yaml).load();
    let shelf = shelf.course.unwrap_or_else(|| panic!("{:?}", shelf.diagnostics)).shelf;
    let found = &shelf.colourants[shelf.colourant_place("PV49").expect("read")];
    // The peak at 555 nm, where masstone and tint differ most.
    assert!((found.absorption[15] / truth.absorption[15] - 1.0).abs() < 0.01, "{}", found.absorption[15]);
    assert!((found.scattering[15] / truth.scattering[15] - 1.0).abs() < 0.01, "{}", found.scattering[15]);
}

#[test]
fn one_colour_gives_a_representative_bottle() {
    let folder = TempDir::new().expect("a folder");
    let run = |colour: &[&str]| pigment(folder.path()).args(colour).args(["--id", "guess"]).assert();
    for colour in [&["--hex", "#7a5236"][..], &["--lab", "38,14,22"]] {
        let assert = run(colour).success();
        assert!(told(&assert).contains("representative: a guess, not a measurement"));
        let yaml = String::from_utf8(assert.get_output().stdout.clone()).expect("UTF-8");
        assert!(yaml.contains("basis: representative"), "{yaml}");
        let loaded = Fixture::minimal().with("lessons/pigments/guess.yaml", yaml).load();
        let course = loaded.course.unwrap_or_else(|| panic!("{:?}", loaded.diagnostics));
        let place = course.shelf.bottle("guess").expect("the bottle").recipe[0].0;
        assert_eq!(course.shelf.colourants[place].basis, Basis::Representative);
        // The library shows it among the bottles and not among the colourants.
        let site = folder.path().join("site");
        healedhue::render::build_site(&course, &Default::default(), &site).expect("a site");
        let page = std::fs::read_to_string(site.join("bottles.html")).expect("the bottle library");
        assert_eq!(page.matches("the paint as a whole").count(), 1);
        assert!(page.contains("id=\"guess\"") && !page.contains("colourant_guess"));
    }
    assert!(told(&run(&["--hex", "brown"]).code(2)).contains("six hexadecimal digits"));
    assert!(told(&run(&["--lab", "38;14;22"]).code(2)).contains("three numbers"));
    assert!(told(&run(&["--lab", "NaN,0,0"]).code(1)).contains("`L*` is NaN, outside 2 to 98"));
    assert!(told(&run(&["--lab", "0,0,0"]).code(1)).contains("`L*` is 0, outside 2 to 98"));
}

#[test]
fn wrong_input_is_refused_in_words() {
    let folder = TempDir::new().expect("a folder");
    let write = |name: &str, text: &str| std::fs::write(folder.path().join(name), text).expect("a file");
    let flat = |value: f64| [value; 31];
    let two = |white: f64, black: f64| csv(&[("over_white", &flat(white)), ("over_black", &flat(black))]);
    write("fine.csv", &two(0.5, 0.3));
    write("percent.csv", &two(50.0, 30.0));
    write("twice-divided.csv", &two(0.005, 0.003));
    write("exchanged.csv", &two(0.3, 0.5));
    write("three.csv", "wavelength_nm,over_white,over_black\n400,0.5,0.3\n550,0.5,0.3\n700,0.5,0.3\n");
    write("short.csv", "wavelength_nm,over_white,over_black\n420,0.5,0.3\n430,0.5,0.3\n440,0.5,0.3\n");
    write("nan.csv", &two(0.5, 0.3).replacen("0.500000", "NaN", 1));
    write("half.csv", &csv(&[("over_white", &flat(0.5))]));
    write("strange.csv", &csv(&[("on_white", &flat(0.5))]));
    write(
        "cards.csv",
        &csv(&[
            ("over_white", &flat(0.5)),
            ("over_black", &flat(0.3)),
            ("white", &flat(0.05)),
            ("black", &flat(0.8)),
        ]),
    );
    write("gloss.csv", &two(0.02, 0.01));
    let cases: &[&[&str]] = &[
        &["fine.csv"],
        &["fine.csv", "--thickness-mm", "0"],
        &["fine.csv", "--thickness-mm", "-0.02"],
        &["fine.csv", "--thickness-mm", "20"],
        &["fine.csv", "--thickness-mm", "0.02", "--refractive-index", "3"],
        &["fine.csv", "--thickness-mm", "0.02", "--white-card", "85"],
        &["fine.csv", "--thickness-mm", "0.02", "--noise", "1"],
        &["fine.csv", "--thickness-mm", "0.02", "--colourant", "RP101", "--class", "organic"],
        &["fine.csv", "--thickness-mm", "0.02", "--holds", "PR101,pbk 7"],
        &["fine.csv", "--thickness-mm", "0.02", "--holds", "PR101=3,PY42"],
        &["fine.csv", "--thickness-mm", "0.02", "--dose-mm", "-1"],
        &["fine.csv", "--thickness-mm", "0.02", "--id", "Soft Brown"],
        &["percent.csv", "--thickness-mm", "0.02"],
        &["twice-divided.csv", "--thickness-mm", "0.02"],
        &["exchanged.csv", "--thickness-mm", "0.02"],
        &["three.csv", "--thickness-mm", "0.02"],
        &["short.csv", "--thickness-mm", "0.02"],
        &["nan.csv", "--thickness-mm", "0.02"],
        &["half.csv", "--thickness-mm", "0.02"],
        &["strange.csv", "--thickness-mm", "0.02"],
        &["cards.csv", "--thickness-mm", "0.02"],
        &["gloss.csv", "--thickness-mm", "0.02"],
    ];
    let mut text = String::new();
    for case in cases {
        let assert = pigment(folder.path()).args(*case).args(["--out", "never.yaml"]).assert().code(1);
        writeln!(text, "{}\n    {}", case.join(" "), told(&assert).trim_end()).expect("a text");
    }
    let no_number = ["fine.csv", "--thickness-mm", "NaN", "--out", "never.yaml"];
    pigment(folder.path())
        .args(no_number)
        .assert()
        .code(2)
        .stderr(predicates::str::contains("give a number, such as 0.25"));
    assert!(!folder.path().join("never.yaml").exists());
    insta::assert_snapshot!(text);
}
