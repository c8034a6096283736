//! Keys: unknown, missing, twice, of the wrong type.

use super::fixture::Fixture;
use insta::assert_snapshot;

const CHOOSING: &str = "lessons/first-steps/choosing.yaml";
const RUVAN: &str = "lessons/clients/ruvan.yaml";
const SILKA: &str = "lessons/clients/silka.yaml";

#[test]
fn an_unknown_key() {
    assert_snapshot!(Fixture::minimal().replace(CHOOSING, "tempts:", "tempt:").told(), @r"
        error: unknown key `tempt` in a drill
          --> lessons/first-steps/choosing.yaml:19:5
           |
        19 |     tempt: [label-is-result, day-one]
           |     ^^^^^
           |
           = help: did you mean `tempts`? The keys here are `id`, `family`, `skill`, `exercises`, `options`, `clients`, `light`, `tempts`, `margin`, `difficulty`, `bottles`, `modifiers`, `drops`, `modifier_drops`, `months`, `goals`, `further_goals`, `questions`, `ages_months`, `asks`

        1 error, 0 warnings
    ");
}

#[test]
fn an_unknown_key_like_no_other() {
    assert_snapshot!(Fixture::minimal().replace(RUVAN, "site: brow", "shoe_size: 41").told(), @r"
        error: unknown key `shoe_size` in a client
         --> lessons/clients/ruvan.yaml:6:1
          |
        6 | shoe_size: 41
          | ^^^^^^^^^
          |
          = help: the keys here are `id`, `name`, `age`, `about`, `skin`, `site`, `hair`, `wish`, `goal`, `further_goals`, `health`, `existing`

        1 error, 0 warnings
    ");
}

#[test]
fn a_key_with_another_unit() {
    assert_snapshot!(Fixture::minimal().replace(SILKA, "depth_mm: 0.5", "depth_cm: 0.05").told(), @r"
        error: unknown key `depth_cm` in a placement
          --> lessons/clients/silka.yaml:18:17
           |
        18 |     placement: {depth_cm: 0.05}
           |                 ^^^^^^^^
           |
           = help: did you mean `depth_mm`, a number in mm? The keys here are `depth_mm`, `thickness_mm`, `load`, `coverage`

        1 error, 0 warnings
    ");
}

#[test]
fn a_missing_key() {
    assert_snapshot!(Fixture::minimal().replace(CHOOSING, "    drops: 6\n", "").told(), @r"
        error: the key `drops` is missing in a drill
         --> lessons/first-steps/choosing.yaml:7:5
          |
        7 |   - id: first-choice
          |     ^^

        1 error, 0 warnings
    ");
}

#[test]
fn an_empty_key() {
    assert_snapshot!(Fixture::minimal().replace(RUVAN, "goal: soft-brown", "goal:").told(), @r"
        error: `goal` is empty
         --> lessons/clients/ruvan.yaml:9:1
          |
        9 | goal:
          | ^^^^

        1 error, 0 warnings
    ");
}

#[test]
fn an_empty_text() {
    assert_snapshot!(Fixture::minimal().replace(RUVAN, "name: Ruvan", "name: \"  \"").told(), @r#"
        error: `name` is empty
         --> lessons/clients/ruvan.yaml:2:7
          |
        2 | name: "  "
          |       ^^^^

        1 error, 0 warnings
    "#);
}

#[test]
fn a_key_that_is_there_twice() {
    assert_snapshot!(Fixture::minimal().append(RUVAN, "name: Ruvan again\n").told(), @r"
        error: the key `name` is here twice
          --> lessons/clients/ruvan.yaml:12:1
           |
        12 | name: Ruvan again
           | ^^^^
           |
           = help: the first one is in line 2; keep one of them

        1 error, 0 warnings
    ");
}

#[test]
fn a_list_for_a_text_and_a_text_for_a_list() {
    let fixture = Fixture::minimal()
        .replace(RUVAN, "wish: Brows I need not draw.", "wish: [draw, less]")
        .replace(CHOOSING, "clients: [ruvan]", "clients: ruvan");
    assert_snapshot!(fixture.told(), @r"
        error: `wish` is a text; this is a list
         --> lessons/clients/ruvan.yaml:8:7
          |
        8 | wish: [draw, less]
          |       ^^^^^^^^^^^^

        error: `clients` is a list; this is a single value
          --> lessons/first-steps/choosing.yaml:12:14
           |
        12 |     clients: ruvan
           |              ^^^^^
           |
           = help: a list of one: `clients: [ruvan]`

        2 errors, 0 warnings
    ");
}

#[test]
fn a_colon_in_a_text() {
    assert_snapshot!(
        Fixture::minimal().replace(RUVAN, "about: Fair, calm skin.", "about: {fair: calm}").told(),
        @r"
        error: `about` is a text; this is a set of keys
         --> lessons/clients/ruvan.yaml:4:8
          |
        4 | about: {fair: calm}
          |        ^^^^^^^^^^^^
          |
          = help: put a text that holds a colon, or begins with a bracket, in quotes

        1 error, 0 warnings
    "
    );
}

#[test]
fn keys_where_a_list_is_expected() {
    assert_snapshot!(Fixture::minimal().with("lessons/skills.yaml", "- id: foresee\n- id: choose\n").told_briefly(), @r"
        lessons/skills.yaml:1:1: the file of skills is a set of keys; this is a list
            it begins with the key `skills`
    ");
}

#[test]
fn an_unknown_word() {
    let fixture = Fixture::minimal().replace(RUVAN, "undertone: neutral", "undertone: nuetral").replace(
        RUVAN,
        "phototype: II,",
        "phototype: 2,",
    );
    assert_snapshot!(fixture.told(), @r"
        error: `2` is no value of `phototype`
         --> lessons/clients/ruvan.yaml:5:19
          |
        5 | skin: {phototype: 2, undertone: nuetral, redness: calm}
          |                   ^
          |
          = help: it is one of `I`, `II`, `III`, `IV`, `V`, `VI`

        error: `nuetral` is no value of `undertone`
         --> lessons/clients/ruvan.yaml:5:33
          |
        5 | skin: {phototype: 2, undertone: nuetral, redness: calm}
          |                                 ^^^^^^^
          |
          = help: did you mean `neutral`? It is one of `cool`, `neutral`, `warm`, `olive`

        2 errors, 0 warnings
    ");
}

#[test]
fn a_scar_is_told_as_true_or_false() {
    let fixture = Fixture::minimal().replace(RUVAN, "redness: calm}", "redness: calm, scar: pale}");
    assert_snapshot!(fixture.told(), @r"
    error: `scar` is `true` or `false`
     --> lessons/clients/ruvan.yaml:5:64
      |
    5 | skin: {phototype: II, undertone: neutral, redness: calm, scar: pale}
      |                                                                ^^^^

    1 error, 0 warnings
    ");
}

#[test]
fn neither_true_nor_false() {
    assert_snapshot!(
        Fixture::minimal().replace("lessons/bank/light.yaml", "right: true", "right: yes").told(),
        @r"
        error: `right` is `true` or `false`
         --> lessons/bank/light.yaml:9:16
          |
        9 |         right: yes
          |                ^^^

        warning: `what-is-skin` has fewer options than the 3 this drill shows
          --> lessons/first-steps/light.yaml:13:17
           |
        13 |     questions: [what-is-skin]
           |                 ^^^^^^^^^^^^

        1 error, 1 warning
    "
    );
}

#[test]
fn a_direction_that_is_not_turned_back() {
    let named = |name: &str| Fixture::minimal().replace(RUVAN, "name: Ruvan", &format!("name: \"{name}\""));
    for name in ["Ru\u{202e}van", "Ru\u{2067}van", "Ru\u{202c}van", "Ru\u{2066}v\u{202c}an"] {
        let told = named(name).told();
        assert!(told.contains("`name` turns the direction of writing and does not turn it back"), "{told}");
        assert!(told.contains("lessons/clients/ruvan.yaml:2:7"), "{told}");
    }
    assert!(!named("\u{2067}Ruvan\u{2069}").told().contains("error"));
}

#[test]
fn a_control_character() {
    assert_snapshot!(
        Fixture::minimal().replace(RUVAN, "name: Ruvan", "name: \"Ru\\e[31mvan\"").told(),
        @r#"
        error: `name` holds a control character
         --> lessons/clients/ruvan.yaml:2:7
          |
        2 | name: "Ru\e[31mvan"
          |       ^^^^^^^^^^^^^

        1 error, 0 warnings
    "#
    );
}

#[test]
fn either_colourants_or_a_mix() {
    let both = Fixture::minimal().replace(
        SILKA,
        "  - mix: {umberly: 4}\n",
        "  - mix: {umberly: 4}\n    colourants: {PR101: 1}\n",
    );
    assert_snapshot!(both.told_briefly(), @r"
        lessons/clients/silka.yaml:13:5: existing work is made of either `colourants` or a `mix`
            keep one of the two
    ");
    let neither = Fixture::minimal().replace(SILKA, "  - mix: {umberly: 4}\n    months", "  - months");
    assert_snapshot!(neither.told_briefly(), @r"
        lessons/clients/silka.yaml:13:5: existing work is made of either `colourants` or a `mix`
            write one of the two
    ");
}
