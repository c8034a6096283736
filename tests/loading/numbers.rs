//! Numbers: units, quotes, bounds.

use super::fixture::Fixture;
use insta::assert_snapshot;

const CHOOSING: &str = "lessons/first-steps/choosing.yaml";
const RUVAN: &str = "lessons/clients/ruvan.yaml";
const SILKA: &str = "lessons/clients/silka.yaml";
const GOALS: &str = "lessons/goals.yaml";

#[test]
fn a_unit_after_the_number() {
    let written = |value: &str| {
        Fixture::minimal().replace(SILKA, "depth_mm: 0.5", &format!("depth_mm: {value}")).told_briefly()
    };
    assert_snapshot!(written("0.6 mm"), @r"
        lessons/clients/silka.yaml:18:27: `depth_mm` is a plain number in mm, because the key carries the unit
            write `depth_mm: 0.6`
    ");
    assert_snapshot!(written("0.06 cm"), @r"
        lessons/clients/silka.yaml:18:27: `depth_mm` is a plain number in mm, because the key carries the unit
            write `depth_mm: 0.6`
    ");
    assert_snapshot!(written("\"600µm\""), @r"
        lessons/clients/silka.yaml:18:27: `depth_mm` is a plain number in mm, because the key carries the unit
            write `depth_mm: 0.6`
    ");
    assert_snapshot!(written("0.6 furlongs"), @"lessons/clients/silka.yaml:18:27: `depth_mm` is a plain number in mm, because the key carries the unit");
    assert_snapshot!(written("\"0.6\""), @r"
        lessons/clients/silka.yaml:18:27: `depth_mm` is a plain number, without quotes
            write `depth_mm: 0.6`
    ");
    assert_snapshot!(written("\"0,6\""), @r"
        lessons/clients/silka.yaml:18:27: `depth_mm` is a number, and `0,6` is none
            write a point, not a comma: `depth_mm: 0.6`
    ");
    assert_snapshot!(written("deep"), @"lessons/clients/silka.yaml:18:27: `depth_mm` is a number, and `deep` is none");
    assert_snapshot!(written(".nan"), @"lessons/clients/silka.yaml:18:27: `depth_mm` is a number, and `.nan` is none");
    assert_snapshot!(written("0x1"), @"lessons/clients/silka.yaml:18:27: `depth_mm` is a number, and `0x1` is none");
    assert_snapshot!(written("[0.6]"), @"lessons/clients/silka.yaml:18:27: `depth_mm` is a number; this is a list");
}

#[test]
fn other_units() {
    let months = Fixture::minimal().replace(CHOOSING, "months: 1.5", "months: 6 weeks");
    assert_snapshot!(months.told(), @r"
        error: `months` is a plain number
          --> lessons/first-steps/choosing.yaml:17:13
           |
        17 |     months: 6 weeks
           |             ^^^^^^^
           |
           = help: write `months: 1.5`

        1 error, 0 warnings
    ");
    let coverage = Fixture::minimal().replace(SILKA, "depth_mm: 0.5", "coverage: 85%");
    assert_snapshot!(coverage.told(), @r"
        error: `coverage` is a plain number, as a fraction
          --> lessons/clients/silka.yaml:18:27
           |
        18 |     placement: {coverage: 85%}
           |                           ^^^
           |
           = help: write `coverage: 0.85`

        1 error, 0 warnings
    ");
}

#[test]
fn out_of_bounds() {
    let placed = |value: &str| Fixture::minimal().replace(SILKA, "depth_mm: 0.5", value).told_briefly();
    assert_snapshot!(placed("coverage: 85"), @r"
        lessons/clients/silka.yaml:18:27: `coverage` is 85, outside 0 to 1 as a fraction
            percent? write `coverage: 0.85`
    ");
    assert_snapshot!(placed("depth_mm: 350"), @r"
        lessons/clients/silka.yaml:18:27: `depth_mm` is 350, outside 0 to 3 mm
            micrometres? write `depth_mm: 0.35`
    ");
    assert_snapshot!(placed("depth_mm: 6"), @"lessons/clients/silka.yaml:18:27: `depth_mm` is 6, outside 0 to 3 mm");
    assert_snapshot!(placed("depth_mm: -0.1"), @"lessons/clients/silka.yaml:18:27: `depth_mm` is -0.1, outside 0 to 3 mm");
    assert_snapshot!(placed("load: 1e999"), @"lessons/clients/silka.yaml:18:23: `load` is a number, and `1e999` is none");
}

#[test]
fn bounds_of_drills() {
    let drill = |from: &str, to: &str| Fixture::minimal().replace(CHOOSING, from, to).told_briefly();
    assert_snapshot!(drill("options: 3", "options: 7"), @r"
        lessons/first-steps/choosing.yaml:11:14: `options` is 7, outside 2 to 6
        lessons/first-steps/choosing.yaml:19:5: 6 options need 5 wrong answers beside the right one, and only 2 misconceptions may give them
            give 4 to 8: not each applies to each client
    ");
    assert_snapshot!(drill("options: 3", "options: 1"), @"lessons/first-steps/choosing.yaml:11:14: `options` is 1, outside 2 to 6");
    assert_snapshot!(drill("exercises: 2", "exercises: 13"), @"lessons/first-steps/choosing.yaml:10:16: `exercises` is 13, outside 1 to 12");
    assert_snapshot!(drill("exercises: 2", "exercises: 2.5"), @r"
        lessons/first-steps/choosing.yaml:10:16: `exercises` is a whole number; this is 2.5
            write `2` or `3`
    ");
    assert_snapshot!(drill("margin: 3.0", "margin: 0.5"), @"lessons/first-steps/choosing.yaml:20:13: `margin` is 0.5, outside 1.5 to 20 ΔE00");
    assert_snapshot!(drill("margin: 3.0", "difficulty: {least: 0.6, most: 0.3}"), @"lessons/first-steps/choosing.yaml:20:17: `least` is 0.6, and `most` is 0.3: nothing lies between them");
    assert_snapshot!(drill("margin: 3.0", "margin: 21"), @"lessons/first-steps/choosing.yaml:20:13: `margin` is 21, outside 1.5 to 20 ΔE00");
    assert_snapshot!(drill("modifier_drops: 2", "modifier_drops: 6"), @r"
        lessons/first-steps/choosing.yaml:16:21: `modifier_drops` is 6, and the whole mix has 6 drops
            a mix needs at least one drop that is no modifier
    ");
}

#[test]
fn age_and_colour() {
    let fixture = Fixture::minimal().replace(RUVAN, "age: 34", "age: 15").replace(
        GOALS,
        "lab: [46, 8.5, 14]",
        "lab: [146, 8.5, 14]",
    );
    assert_snapshot!(fixture.told(), @r"
        error: `age` is 15, outside 16 to 110 years
         --> lessons/clients/ruvan.yaml:3:6
          |
        3 | age: 15
          |      ^^

        error: `L*` is 146, outside 0 to 100
         --> lessons/goals.yaml:5:11
          |
        5 |     lab: [146, 8.5, 14]
          |           ^^^

        2 errors, 0 warnings
    ");
    assert_snapshot!(Fixture::minimal().replace(GOALS, "lab: [46, 8.5, 14]", "lab: [46, 8.5]").told_briefly(), @r"
        lessons/goals.yaml:5:10: `lab` is a list of three numbers: L*, a*, b*
            such as `lab: [44, 9, 15]`
    ");
    assert_snapshot!(Fixture::minimal().replace(RUVAN, "age: 34", "age: 111").told_briefly(), @"lessons/clients/ruvan.yaml:3:6: `age` is 111, outside 16 to 110 years");
}
