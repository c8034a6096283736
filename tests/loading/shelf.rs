//! Colourants and bottles.

use super::fixture::Fixture;
use healedhue::skin::Site;
use insta::assert_snapshot;

const COLOURANTS: &str = "lessons/pigments/colourants.yaml";
const BOTTLES: &str = "lessons/pigments/bottles.yaml";

#[test]
fn numbers_of_a_colourant() {
    let fixture = Fixture::minimal()
        .replace(COLOURANTS, "{at_nm: 566, width_nm: 15, per_mm: 14}", "{at_nm: 56, width_nm: 0, per_mm: -1}")
        .replace(COLOURANTS, "{at_550_per_mm: 3, exponent: 0.4}", "{at_550_per_mm: 501, exponent: 5}")
        .replace(COLOURANTS, "half_life_months: 28", "half_life_months: 0")
        .replace(COLOURANTS, "drift_mm: 0.01", "drift_mm: 10")
        .replace(COLOURANTS, "flat_per_mm: 2", "flat_per_mm: two");
    assert_snapshot!(fixture.told_briefly(), @r"
        lessons/pigments/colourants.yaml:6:52: `at_nm` is 56, outside 200 to 1100 nm
        lessons/pigments/colourants.yaml:6:66: `width_nm` is 0, outside 1 to 300 nm
        lessons/pigments/colourants.yaml:6:77: `per_mm` is -1, outside 0 to 500 per mm
        lessons/pigments/colourants.yaml:7:33: `at_550_per_mm` is 501, outside 0 to 500 per mm
        lessons/pigments/colourants.yaml:7:48: `exponent` is 5, outside 0 to 4
        lessons/pigments/colourants.yaml:19:23: `half_life_months` is 0, outside 0.5 to 5000 months
        lessons/pigments/colourants.yaml:20:15: `drift_mm` is 10, outside 0 to 1 mm
            micrometres? write `drift_mm: 0.01`
        lessons/pigments/colourants.yaml:26:31: `flat_per_mm` is a number, and `two` is none
    ");
}

#[test]
fn words_of_a_colourant() {
    let fixture = Fixture::minimal()
        .replace(COLOURANTS, "class: organic", "class: organics")
        .replace(COLOURANTS, "ci_number: \"77491\"", "ci_number: CI 77491")
        .replace(COLOURANTS, "since: 2023-01-04", "since: January 2023")
        .replace(
            COLOURANTS,
            "    half_life_months: 60\n    basis: representative",
            "    half_life_months: 60\n    basis: invented",
        );
    assert_snapshot!(fixture.told_briefly(), @r#"
        lessons/pigments/colourants.yaml:3:16: `ci_number` is a Colour Index constitution number, such as "77491"
        lessons/pigments/colourants.yaml:9:12: `invented` is no value of `basis`
            it is one of `measured`, `published`, `representative`
        lessons/pigments/colourants.yaml:25:12: `organics` is no value of `class`
            did you mean `organic`? It is one of `white`, `iron-oxide`, `chromium-oxide`, `carbon`, `organic`, `other-inorganic`
        lessons/pigments/colourants.yaml:34:16: `since` is a date written as year-month-day, such as 2023-01-04
    "#);
}

#[test]
fn recipes() {
    let fixture = Fixture::minimal()
        .replace(BOTTLES, "{PY42: 3, PR101: 1}", "{PY24: 3, PR101: 0}")
        .replace(BOTTLES, "strength: 0.8", "strength: 80")
        .replace(BOTTLES, "{PR101: 1, PY42: 1}", "{}")
        .replace(BOTTLES, "{PR101: 2, PY42: 4}", "PR101")
        .replace(BOTTLES, "modifier: warmer", "modifier: hotter");
    assert_snapshot!(fixture.told_briefly(), @r"
        lessons/pigments/bottles.yaml:2:65: there is no colourant `PY24`
            did you mean `PY42`?
        lessons/pigments/bottles.yaml:2:81: `PR101` is 0, outside 0.001 to 1000
        lessons/pigments/bottles.yaml:2:95: `strength` is 80, outside 0.05 to 5
        lessons/pigments/bottles.yaml:3:62: nothing is in here
            a recipe gives parts by colourant: `{PR101: 3, PY42: 4}`
        lessons/pigments/bottles.yaml:4:61: a set of amounts is expected; this is a single value
            a recipe gives parts by colourant: `{PR101: 3, PY42: 4}`
        lessons/pigments/bottles.yaml:4:78: `hotter` is no value of `modifier`
            it is one of `warmer`, `cooler`, `darker`, `lighter`
    ");
}

#[test]
fn no_bottles() {
    assert_snapshot!(Fixture::minimal().with(BOTTLES, "bottles: []\n").told_briefly(), @r"
        lessons/clients/silka.yaml:13:11: there is no bottle `umberly`
            there are no bottles yet; they are named in `pigments/bottles.yaml`
        lessons/first-steps/choosing.md:14:11: there is no bottle `umberly`
            there are no bottles yet; they are named in `pigments/bottles.yaml`
        lessons/first-steps/choosing.md:14:23: there is no bottle `glowen`
            there are no bottles yet; they are named in `pigments/bottles.yaml`
        lessons/first-steps/choosing.yaml:13:15: there is no bottle `umberly`
            there are no bottles yet; they are named in `pigments/bottles.yaml`
        lessons/first-steps/choosing.yaml:13:24: there is no bottle `tawnell`
            there are no bottles yet; they are named in `pigments/bottles.yaml`
        lessons/first-steps/choosing.yaml:14:17: there is no bottle `glowen`
            there are no bottles yet; they are named in `pigments/bottles.yaml`
        lessons/pigments/bottles.yaml:1:10: `bottles` of the file of bottles is empty
    ");
}

/// A measured bottle, with something else in place of one of its lines.
fn measured(from: &str, to: &str) -> String {
    let flat = format!("[{}]", ["12.5"; 31].join(", "));
    let text = format!(
        "bottles:
  - id: drawn
    name: Drawn
    about: Measured.
    measured:
      basis: measured
      dose_mm: 0.02
      half_life_months: 40
      absorption_per_mm: {flat}
      reduced_scattering_per_mm: {flat}
"
    );
    assert_eq!(text.matches(from).count(), 1, "{from:?}");
    Fixture::minimal().with("lessons/pigments/drawn.yaml", text.replace(from, to)).told_briefly()
}

#[test]
fn measured_bottles() {
    assert_eq!(measured("basis", "basis"), "");
    let cases = [
        ("dose_mm: 0.02", "dose_mm: 20"),
        ("      half_life_months: 40\n", ""),
        ("half_life_months: 40", "holds: {PR101: 1, PY42: 3}\n      half_life_months: 40"),
        ("half_life_months: 40", "holds: [RP101, PR 101, PR122, \"PB15:3\"]\n      half_life_months: 40"),
        ("about: Measured.", "about: Measured.\n    recipe: {PR101: 1}"),
        ("about: Measured.", "about: Measured.\n    strength: 2"),
        ("reduced_scattering_per_mm: [12.5, 12.5,", "reduced_scattering_per_mm: [12.5,"),
        ("reduced_scattering_per_mm: [12.5, 12.5,", "reduced_scattering_per_mm: [12.5, -3,"),
        ("reduced_scattering_per_mm: [12.5, 12.5,", "reduced_scattering_per_mm: [12.5, .nan,"),
        ("bottles:", "bottle:"),
    ];
    let told: Vec<String> =
        cases.iter().map(|(from, to)| format!("{to:?}\n{}", measured(from, to))).collect();
    assert_snapshot!(told.join("\n"));
}

/// Bottles of a line, and for sites.
const LINED: &str = "lines:
  - {id: earthen, name: Earthen, about: Built on oxides.}
  - {id: sooty, name: Sooty, about: Built on carbon.}
bottles:
  - {id: umberly, name: Umberly, about: Medium brown., recipe: {PY42: 3, PR101: 1}, line: earthen, sites: [brow, eyelid]}
  - {id: tawnell, name: Tawnell, about: Warm brown., recipe: {PR101: 1, PY42: 1}, line: earthen, sites: [lip]}
  - {id: glowen, name: Glowen, about: Warms a mix., recipe: {PR101: 2, PY42: 4}, modifier: warmer}
";

#[test]
fn lines_and_sites() {
    let course = Fixture::minimal().with(BOTTLES, LINED).load().course.expect("a valid course");
    let told: Vec<String> = course
        .shelf
        .by_line()
        .iter()
        .map(|(line, bottles)| {
            let name = line.map_or("none", |line| &line.name);
            let bottles: Vec<String> =
                bottles.iter().map(|bottle| format!("{} {:?}", bottle.id, bottle.sites)).collect();
            format!("{name}: {}", bottles.join(", "))
        })
        .collect();
    // A line without bottles is no group.
    assert_eq!(told, ["Earthen: umberly [Brow, Eyelid], tawnell [Lip]", "none: glowen []"]);
    let meant = |id: &str, site| course.shelf.bottle(id).expect("the bottle").is_meant_for(site);
    assert!(meant("umberly", Site::Brow) && !meant("umberly", Site::Lip));
    assert!(Site::ALL.iter().all(|(site, _)| meant("glowen", *site)), "no sites are all sites");
}

#[test]
fn lines_and_sites_that_are_wrong() {
    let wrong = LINED
        .replace(
            "{id: sooty, name: Sooty, about: Built on carbon.}",
            "{id: earthen, name: Sooty, abot: Built.}",
        )
        .replace("line: earthen, sites: [brow, eyelid]", "line: earthn, sites: [brow, eyelids, brow]")
        .replace("line: earthen, sites: [lip]", "line: umberly, sites: []")
        .replace("modifier: warmer", "modifier: warmer, site: lip, sites: lip");
    assert_snapshot!(Fixture::minimal().with(BOTTLES, wrong).told());
}

#[test]
fn lines_stand_in_any_file_of_pigments_but_that_of_colourants() {
    let lines = "lines:\n  - {id: earthen, name: Earthen, about: Built on oxides.}\n";
    let of_a_line = "{id: umberly, line: earthen,";
    let fixture = Fixture::minimal().with("lessons/pigments/further.yaml", lines).replace(
        BOTTLES,
        "{id: umberly,",
        of_a_line,
    );
    assert_eq!(fixture.told_briefly(), "");
    let fixture = Fixture::minimal().append(COLOURANTS, lines).replace(BOTTLES, "{id: umberly,", of_a_line);
    assert_snapshot!(fixture.told_briefly());
}
