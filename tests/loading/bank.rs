//! Questions of the bank.

use super::fixture::Fixture;
use insta::assert_snapshot;

const BANK: &str = "lessons/bank/light.yaml";

#[test]
fn no_right_option() {
    assert_snapshot!(Fixture::minimal().replace(BANK, "        right: true\n", "").told(), @r"
        error: no option is right
         --> lessons/bank/light.yaml:7:5
          |
        7 |     options:
          |     ^^^^^^^
          |
          = help: write `right: true` at exactly one of them

        1 error, 0 warnings
    ");
}

#[test]
fn two_right_options() {
    assert_snapshot!(
        Fixture::minimal().replace(BANK, "say: A mirror\n", "say: A mirror\n        right: true\n").told(),
        @r"
        error: a second right option
          --> lessons/bank/light.yaml:14:14
           |
        14 |       - say: A mirror
           |              ^^^^^^^^
           |
           = help: the first one is in line 8; exactly one option is right

        1 error, 0 warnings
    "
    );
}

#[test]
fn a_right_option_with_a_misconception() {
    assert_snapshot!(
        Fixture::minimal().replace(BANK, "right: true\n", "right: true\n        misconception: day-one\n").told(),
        @r"
        error: the right option shows no misconception
          --> lessons/bank/light.yaml:10:24
           |
        10 |         misconception: day-one
           |                        ^^^^^^^
           |
           = help: remove the key

        1 error, 0 warnings
    "
    );
}

#[test]
fn too_few_and_too_many_options() {
    let options = |count: usize| -> String {
        (0..count)
            .map(|n| format!("      - {{say: Option {n}, why: Because., right: {}}}\n", n == 0))
            .collect()
    };
    let question = |count| {
        format!(
            "questions:\n  - id: what-is-skin\n    skill: foresee\n    ask: Which?\n    lesson: light\n    source: none\n    options:\n{}",
            options(count)
        )
    };
    assert_eq!(Fixture::minimal().with(BANK, question(5)).told(), "");
    assert_snapshot!(Fixture::minimal().with(BANK, question(6)).told_briefly(), @"lessons/bank/light.yaml:7:5: a question has 3 to 5 options; this one has 6");
    assert_snapshot!(Fixture::minimal().with(BANK, question(2)).told_briefly(), @r"
        lessons/bank/light.yaml:7:5: a question has 3 to 5 options; this one has 2
        lessons/first-steps/light.yaml:13:17: `what-is-skin` has fewer options than the 3 this drill shows
    ");
}

#[test]
fn options_that_cannot_be_told_apart() {
    let fixture = Fixture::minimal().replace(BANK, "say: Clear", "say: a filter").replace(
        BANK,
        "say: A mirror",
        "say: All of the above",
    );
    assert_snapshot!(fixture.told(), @r"
        error: two options say the same
          --> lessons/bank/light.yaml:11:14
           |
        11 |       - say: a filter
           |              ^^^^^^^^

        error: options are shuffled, so nothing is above
          --> lessons/bank/light.yaml:14:14
           |
        14 |       - say: All of the above
           |              ^^^^^^^^^^^^^^^^
           |
           = help: write an option that stands for itself

        2 errors, 0 warnings
    ");
}

#[test]
fn an_option_without_a_reason_or_a_text() {
    let fixture = Fixture::minimal().replace(BANK, "        why: It takes much of the light.\n", "").replace(
        BANK,
        "say: A mirror",
        "say: ''",
    );
    assert_snapshot!(fixture.told(), @r"
        error: the key `why` is missing in an option
          --> lessons/bank/light.yaml:11:9
           |
        11 |       - say: Clear
           |         ^^^

        error: `say` is empty
          --> lessons/bank/light.yaml:13:14
           |
        13 |       - say: ''
           |              ^^

        2 errors, 0 warnings
    ");
}

#[test]
fn an_empty_bank() {
    assert_snapshot!(Fixture::minimal().with(BANK, "questions: []\n").told(), @r"
        error: `questions` of a file of questions is empty
         --> lessons/bank/light.yaml:1:12
          |
        1 | questions: []
          |            ^^

        error: there is no question `what-is-skin`
          --> lessons/first-steps/light.yaml:13:17
           |
        13 |     questions: [what-is-skin]
           |                 ^^^^^^^^^^^^
           |
           = help: there are no questions yet; they are named in the folder `bank`

        2 errors, 0 warnings
    ");
}
