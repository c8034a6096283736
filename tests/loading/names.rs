//! Names: twice, of the wrong form, and references to what does not exist.

use super::fixture::Fixture;
use insta::assert_snapshot;

const CHOOSING: &str = "lessons/first-steps/choosing.yaml";
const RUVAN: &str = "lessons/clients/ruvan.yaml";
const SILKA: &str = "lessons/clients/silka.yaml";
const BANK: &str = "lessons/bank/light.yaml";

#[test]
fn an_id_that_is_there_twice() {
    assert_snapshot!(Fixture::minimal().append("lessons/skills.yaml", "  - {id: choose, name: Again}\n").told(), @r"
        error: a second skill with the id `choose`
         --> lessons/skills.yaml:6:10
          |
        6 |   - {id: choose, name: Again}
          |          ^^^^^^
          |
          = help: the first one is at lessons/skills.yaml:4:9; ids are unique

        1 error, 0 warnings
    ");
}

#[test]
fn an_id_that_is_there_twice_in_two_files() {
    let bank = std::fs::read_to_string(super::fixture::minimal().join(BANK)).expect("the bank");
    assert_snapshot!(Fixture::minimal().with("lessons/bank/more.yaml", bank).told(), @r"
        error: a second question with the id `what-is-skin`
         --> lessons/bank/more.yaml:2:9
          |
        2 |   - id: what-is-skin
          |         ^^^^^^^^^^^^
          |
          = help: the first one is at lessons/bank/light.yaml:2:9; ids are unique

        1 error, 0 warnings
    ");
}

#[test]
fn ids_of_the_wrong_form() {
    let fixture = Fixture::minimal()
        .append(
            "lessons/skills.yaml",
            "  - {id: Fine Lines, name: A}\n  - {id: -x, name: B}\n  - {id: ü, name: C}\n",
        )
        .replace("lessons/pigments/colourants.yaml", "id: PB15:3", "id: blue 15");
    assert_snapshot!(fixture.told_briefly(), @r"
        lessons/pigments/bottles.yaml:5:57: there is no colourant `PB15:3`
            the colourants are `PR101`, `PY42`, `blue 15`; they are named in `pigments/colourants.yaml`
        lessons/pigments/colourants.yaml:23:9: `blue 15` is not the id of a colourant
            a colourant is named by a Colour Index name without spaces: P (pigment) or N (natural), a hue (Y, O, R, V, B, G, Br, Bk, W or M) and a number, such as `PR101`, `PBk7` or `PB15:3`, or a constitution number, such as `CI77491`
        lessons/skills.yaml:6:10: `Fine Lines` is not the id of a skill
            ids are lower-case words joined by hyphens: `fine-lines`
        lessons/skills.yaml:7:10: `-x` is not the id of a skill
            ids are lower-case words joined by hyphens: `x`
        lessons/skills.yaml:8:10: `ü` is not the id of a skill
            ids are lower-case words joined by hyphens, such as `red-skin`
    ");
}

#[test]
fn a_client_in_a_file_of_another_name() {
    assert_snapshot!(Fixture::minimal().replace(RUVAN, "id: ruvan", "id: ruven").told_briefly(), @r"
        lessons/clients/ruvan.yaml:1:5: the id `ruven` is not the name of this file
            write `id: ruvan`, or call the file `ruven.yaml`
    ");
}

#[test]
fn references_to_what_does_not_exist() {
    let fixture = Fixture::minimal()
        .replace(CHOOSING, "clients: [ruvan]", "clients: [ruvna]")
        .replace(CHOOSING, "[umberly, tawnell]", "[umbrely, tawnell, glowen]")
        .replace(CHOOSING, "[glowen]", "[tawnell]")
        .replace(CHOOSING, "[label-is-result, day-one]", "[label-is-reslut, day-one]")
        .replace(CHOOSING, "    skill: choose\n", "    skill: chose\n")
        .replace(CHOOSING, "needs: [light]", "needs: [lihgt]")
        .replace(SILKA, "caution: blood-thinners", "caution: blood-thinner")
        .replace(SILKA, "goal: soft-brown", "goal: softbrown")
        .replace(SILKA, "PY42: 0.05", "PY43: 0.05")
        .replace(SILKA, "mix: {umberly: 4}", "mix: {umber: 4}")
        .replace("lessons/first-steps/light.yaml", "[what-is-skin]", "[what-was-skin]")
        .replace("lessons/glossary.yaml", "see: [brown]", "see: [brwon]")
        .replace("lessons/first-steps/light.md", "```drill\nlight-check", "```drill\nlight-chek")
        .replace(BANK, "    lesson: light", "    lesson: lights")
        .replace(BANK, "misconception: filter-of-glass", "misconception: glass-filter");
    assert_snapshot!(fixture.told_briefly(), @r"
        lessons/bank/light.yaml:5:13: there is no lesson `lights`
            did you mean `light`?
        lessons/bank/light.yaml:13:24: there is no misconception `glass-filter`
            the misconceptions are `bare-canvas`, `day-one`, `filter-of-glass`, `label-is-result`; they are named in `misconceptions.yaml`
        lessons/clients/silka.yaml:8:7: there is no goal `softbrown`
            did you mean `soft-brown`?
        lessons/clients/silka.yaml:10:14: there is no caution `blood-thinner`
            did you mean `blood-thinners`?
        lessons/clients/silka.yaml:13:11: there is no bottle `umber`
            did you mean `umberly`?
        lessons/clients/silka.yaml:16:18: there is no colourant `PY43`
            did you mean `PY42`?
        lessons/first-steps/choosing.yaml:4:9: there is no lesson `lihgt`
            did you mean `light`?
        lessons/first-steps/choosing.yaml:9:12: there is no skill `chose`
            did you mean `choose`?
        lessons/first-steps/choosing.yaml:12:15: there is no client `ruvna`
            did you mean `ruvan`?
        lessons/first-steps/choosing.yaml:13:15: there is no bottle `umbrely`
            did you mean `umberly`?
        lessons/first-steps/choosing.yaml:13:33: `glowen` is a modifier, not a bottle to choose
            name it under `modifiers`
        lessons/first-steps/choosing.yaml:14:17: `tawnell` is not a modifier
            name it under `bottles`
        lessons/first-steps/choosing.yaml:19:14: there is no misconception `label-is-reslut`
            did you mean `label-is-result`?
        lessons/first-steps/light.md:6:1: this lesson has no drill `light-chek`
            did you mean `light-check`?
        lessons/first-steps/light.yaml:8:9: the drill `light-check` is placed nowhere in the text
            put a fenced block `drill` that holds its id where its exercises shall stand
        lessons/first-steps/light.yaml:13:17: there is no question `what-was-skin`
            did you mean `what-is-skin`?
        lessons/glossary.yaml:2:79: there is no term `brwon`
            did you mean `brown`?
    ");
}

#[test]
fn a_name_of_another_kind() {
    assert_snapshot!(Fixture::minimal().replace(CHOOSING, "clients: [ruvan]", "clients: [soft-brown]").told(), @r"
        error: there is no client `soft-brown`
          --> lessons/first-steps/choosing.yaml:12:15
           |
        12 |     clients: [soft-brown]
           |               ^^^^^^^^^^
           |
           = help: `soft-brown` is a goal

        1 error, 0 warnings
    ");
}

#[test]
fn a_name_twice_in_one_list() {
    assert_snapshot!(Fixture::minimal().replace(CHOOSING, "clients: [ruvan]", "clients: [ruvan, ruvan]").told(), @r"
        error: `ruvan` is here twice
          --> lessons/first-steps/choosing.yaml:12:22
           |
        12 |     clients: [ruvan, ruvan]
           |                      ^^^^^

        1 error, 0 warnings
    ");
}

#[test]
fn phrases_in_which_a_term_is_not_meant_hold_it_and_more() {
    let with = |phrases: &str| {
        let glossary = format!("means: Something that takes light away., not_in: {phrases}, see: [brown]");
        Fixture::minimal().replace(
            "lessons/glossary.yaml",
            "means: Something that takes light away., see: [brown]",
            &glossary,
        )
    };
    assert_snapshot!(with("[coffee filter, Filters, brown paper]").told());
    assert!(with("[coffee filter]").load().course.is_some());
}

#[test]
fn a_term_that_refers_to_itself() {
    assert_snapshot!(
        Fixture::minimal().replace("lessons/glossary.yaml", "see: [brown]", "see: [filter]").told_briefly(),
        @"lessons/glossary.yaml:2:79: a term that refers to itself"
    );
}

#[test]
fn a_broken_file_is_one_problem_and_hides_no_other() {
    let fixture = Fixture::minimal()
        .replace("lessons/pigments/bottles.yaml", "{id: umberly,", "{id: umberly")
        .replace(CHOOSING, "[umberly, tawnell]", "[umberly, towlen]");
    // Bottles of the broken file are known by name; `towlen` is not among them.
    assert_snapshot!(fixture.told_briefly(), @r"
        lessons/first-steps/choosing.yaml:13:24: there is no bottle `towlen`
            bottles are named in `pigments/bottles.yaml`
        lessons/pigments/bottles.yaml:2:22: a comma or `}` is missing here
    ");
}

#[test]
fn a_broken_client_is_one_problem() {
    assert_snapshot!(Fixture::minimal().with(RUVAN, "\"").told_briefly(), @r"
        lessons/clients/ruvan.yaml:1:1: a quotation mark that is never closed
            close it, or remove it
    ");
}

#[test]
fn what_a_broken_thing_is_called_is_no_second_problem() {
    let fixture = Fixture::minimal()
        .with("lessons/goals.yaml", "- id: soft-brown\n")
        .replace("lessons/skills.yaml", "skills:", "skill:")
        .replace("lessons/cautions.yaml", "    action: refer\n", "");
    assert_snapshot!(fixture.told_briefly(), @r"
        lessons/cautions.yaml:2:5: the key `action` is missing in a caution
        lessons/goals.yaml:1:1: the file of goals is a set of keys; this is a list
            it begins with the key `goals`
        lessons/skills.yaml:1:1: unknown key `skill` in the file of skills
            did you mean `skills`? The keys here are `skills`
    ");
}
