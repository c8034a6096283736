//! Drills: what their keys mean together.

use super::fixture::Fixture;
use insta::assert_snapshot;

const LIGHT: &str = "lessons/first-steps/light.yaml";
const CHOOSING: &str = "lessons/first-steps/choosing.yaml";
const CORRECTING: &str = "lessons/first-steps/correcting.yaml";
const BOTTLES: &str = "lessons/pigments/bottles.yaml";
const SILKA: &str = "lessons/clients/silka.yaml";

#[test]
fn keys_of_another_family() {
    let fixture = Fixture::minimal()
        .replace(LIGHT, "[what-is-skin]", "[what-is-skin]\n    drops: 6")
        .replace(CHOOSING, "    drops: 6", "    drops: 6\n    questions: [what-is-skin]");
    assert_snapshot!(fixture.told(), @r"
        error: `questions` belongs to triage, sequence and recall drills; this is a bottle drill
          --> lessons/first-steps/choosing.yaml:16:5
           |
        16 |     questions: [what-is-skin]
           |     ^^^^^^^^^
           |
           = help: remove the key, or change `family`

        error: `drops` belongs to bottle, drops, foresight, hindsight, remedy and light drills; this is a recall drill
          --> lessons/first-steps/light.yaml:14:5
           |
        14 |     drops: 6
           |     ^^^^^
           |
           = help: remove the key, or change `family`

        2 errors, 0 warnings
    ");
}

/// Either a drill's goals are listed, or they are the clients'.
#[test]
fn goals_of_a_drill_and_of_its_clients() {
    let told = |key: &str| Fixture::minimal().replace(CHOOSING, "    months: 1.5", key).told();
    assert_snapshot!(told("    goals: [soft-brown]\n    further_goals: true"), @r"
        error: the goals of this drill are listed, so no client's `further_goals` are drawn
          --> lessons/first-steps/choosing.yaml:18:5
           |
        18 |     further_goals: true
           |     ^^^^^^^^^^^^^
           |
           = help: leave out either `goals` or `further_goals`

        1 error, 0 warnings
    ");
    assert_eq!(told("    further_goals: true"), told("    months: 1.5"));
    assert_ne!(told("    further_goals: often"), told("    months: 1.5"));
}

#[test]
fn a_family_that_does_not_exist() {
    assert_snapshot!(Fixture::minimal().replace(CHOOSING, "family: bottle", "family: botle").told(), @r"
        error: `botle` is no value of `family`
         --> lessons/first-steps/choosing.yaml:8:13
          |
        8 |     family: botle
          |             ^^^^^
          |
          = help: did you mean `bottle`? It is one of `bottle`, `drops`, `foresight`, `hindsight`, `remedy`, `skin`, `triage`, `sequence`, `light`, `recall`

        1 error, 0 warnings
    ");
}

#[test]
fn nobody_and_nothing_to_choose_from() {
    let fixture = Fixture::minimal()
        .replace(CHOOSING, "clients: [ruvan]", "clients: []")
        .replace(CHOOSING, "bottles: [umberly, tawnell]", "bottles: []")
        .replace(LIGHT, "questions: [what-is-skin]", "questions: []")
        .replace(CORRECTING, "    clients: [silka]\n", "");
    assert_snapshot!(fixture.told_briefly(), @r"
        lessons/first-steps/choosing.yaml:12:14: `clients` of a drill is empty
        lessons/first-steps/choosing.yaml:13:14: `bottles` of a drill is empty
        lessons/first-steps/correcting.yaml:7:5: the key `clients` is missing in a drill
        lessons/first-steps/light.yaml:13:16: `questions` of a drill is empty
    ");
}

/// The bottles of the valid course, for these sites.
fn bottles_for(umberly: &str, tawnell: &str) -> Fixture {
    Fixture::minimal()
        .replace(BOTTLES, "{id: umberly,", &format!("{{id: umberly, sites: [{umberly}],"))
        .replace(BOTTLES, "{id: tawnell,", &format!("{{id: tawnell, sites: [{tawnell}],"))
        .replace(CHOOSING, "    bottles: [umberly, tawnell]\n", "")
}

#[test]
fn a_drill_that_names_no_bottles_draws_those_for_the_sites_of_its_clients() {
    let bottles = |fixture: &Fixture| {
        let course = fixture.load().course.expect("a valid course");
        ["first-choice", "old-brows"]
            .map(|id| course.drill(id).expect("the drill").1.limits.bottles.join(" "))
    };
    // `first-choice` is about ruvan and `old-brows` about silka; both come for the brow.
    assert_eq!(bottles(&bottles_for("brow", "lip, brow")), ["umberly tawnell", "umberly tawnell"]);
    assert_eq!(bottles(&bottles_for("brow", "lip")), ["umberly", "umberly"]);
    let lips = bottles_for("brow", "lip").replace(SILKA, "hair: brown", "site: lip\nhair: brown");
    assert_eq!(bottles(&lips), ["umberly", "tawnell"]);
    // What is named may be meant for any site.
    let named =
        bottles_for("brow", "lip").replace(CHOOSING, "    drops:", "    bottles: [tawnell]\n    drops:");
    assert_eq!(bottles(&named), ["tawnell", "umberly"]);
}

#[test]
fn a_drill_without_a_bottle_for_the_sites_of_its_clients() {
    assert_snapshot!(bottles_for("areola", "lip").told_briefly());
    let two = bottles_for("brow", "lip").replace(SILKA, "hair: brown", "site: lip\nhair: brown").replace(
        CORRECTING,
        "clients: [silka]",
        "clients: [silka, ruvan]",
    );
    assert_snapshot!(two.told_briefly());
}

#[test]
fn a_shelf_without_a_bottle_to_choose() {
    let fixture = Fixture::minimal()
        .with(
            "lessons/pigments/bottles.yaml",
            "bottles:\n  - {id: glowen, name: G, about: W., recipe: {PR101: 2}, modifier: warmer}\n",
        )
        .replace(CHOOSING, "    bottles: [umberly, tawnell]\n", "")
        .replace("lessons/first-steps/choosing.md", "umberly: 5, ", "")
        .replace("lessons/clients/silka.yaml", "umberly: 4", "glowen: 4");
    assert_snapshot!(fixture.told_briefly(), @r"
        lessons/first-steps/choosing.yaml:7:5: there are no bottles to choose from
        lessons/first-steps/correcting.yaml:7:5: there are no bottles to choose from
    ");
}

#[test]
fn modifiers_and_bottles_mixed_up() {
    let fixture = Fixture::minimal().replace(CHOOSING, "[umberly, tawnell]", "[umberly, glowen]").replace(
        CHOOSING,
        "modifiers: [glowen]",
        "modifiers: [tawnell]",
    );
    assert_snapshot!(fixture.told(), @r"
        error: `glowen` is a modifier, not a bottle to choose
          --> lessons/first-steps/choosing.yaml:13:24
           |
        13 |     bottles: [umberly, glowen]
           |                        ^^^^^^
           |
           = help: name it under `modifiers`

        error: `tawnell` is not a modifier
          --> lessons/first-steps/choosing.yaml:14:17
           |
        14 |     modifiers: [tawnell]
           |                 ^^^^^^^
           |
           = help: name it under `bottles`

        2 errors, 0 warnings
    ");
}

#[test]
fn drops_of_modifiers() {
    let drill = |from: &str, to: &str| Fixture::minimal().replace(CHOOSING, from, to).told_briefly();
    assert_snapshot!(drill("    modifier_drops: 2\n", ""), @"lessons/first-steps/choosing.yaml:7:5: the key `modifier_drops` is missing in a drill");
    assert_snapshot!(drill("modifier_drops: 2", "modifier_drops: 0"), @"lessons/first-steps/choosing.yaml:16:21: no drop of the `modifiers` can be used");
    assert_snapshot!(drill("    modifiers: [glowen]\n", ""), @"lessons/first-steps/choosing.yaml:15:21: there are no `modifiers` to take these drops from");
}

#[test]
fn misconceptions_that_cannot_tempt() {
    let fixture =
        Fixture::minimal().replace(CHOOSING, "[label-is-result, day-one]", "[filter-of-glass, bare-canvas]");
    assert_snapshot!(fixture.told(), @r"
        error: `filter-of-glass` makes no wrong answer: its rule is `stated`
          --> lessons/first-steps/choosing.yaml:19:14
           |
        19 |     tempts: [filter-of-glass, bare-canvas]
           |              ^^^^^^^^^^^^^^^
           |
           = help: only options of written questions can show it

        1 error, 0 warnings
    ");
}

#[test]
fn too_few_misconceptions() {
    assert_snapshot!(Fixture::minimal().replace(CHOOSING, "[label-is-result, day-one]", "[day-one]").told(), @r"
        warning: 3 options need 2 wrong answers beside the right one, and only 1 misconception may give them
          --> lessons/first-steps/choosing.yaml:19:5
           |
        19 |     tempts: [day-one]
           |     ^^^^^^
           |
           = help: give 4 to 8: not each applies to each client

        0 errors, 1 warning
    ");
}

#[test]
fn a_remedy_for_a_client_without_old_work() {
    assert_snapshot!(Fixture::minimal().replace(CORRECTING, "[silka]", "[silka, ruvan]").told(), @r"
        warning: `ruvan` has no existing work to correct
          --> lessons/first-steps/correcting.yaml:12:22
           |
        12 |     clients: [silka, ruvan]
           |                      ^^^^^
           |
           = help: a remedy drill is about clients with existing work

        0 errors, 1 warning
    ");
}

/// The valid course with its first drill asking what has left a residual on these clients.
fn hindsight(clients: &str) -> Fixture {
    Fixture::minimal()
        .replace(CHOOSING, "family: bottle", "family: hindsight")
        .replace(CHOOSING, "    months: 1.5", "    ages_months: [60]")
        .replace(CHOOSING, "[ruvan]", clients)
}

#[test]
fn a_residual_on_a_client_who_has_old_work() {
    assert_snapshot!(hindsight("[ruvan, silka]").told());
    assert!(hindsight("[ruvan]").load().course.is_some());
}

#[test]
fn more_than_the_questions_give() {
    let fixture = Fixture::minimal().replace(LIGHT, "exercises: 1", "exercises: 2").replace(
        LIGHT,
        "options: 3",
        "options: 4",
    );
    assert_snapshot!(fixture.told(), @r"
        warning: 2 exercises are shown out of 1 question
          --> lessons/first-steps/light.yaml:11:5
           |
        11 |     exercises: 2
           |     ^^^^^^^^^
           |
           = help: give more questions, or show fewer exercises

        warning: `what-is-skin` has fewer options than the 4 this drill shows
          --> lessons/first-steps/light.yaml:13:17
           |
        13 |     questions: [what-is-skin]
           |                 ^^^^^^^^^^^^

        0 errors, 2 warnings
    ");
}

#[test]
fn a_restricted_colourant_that_is_chosen() {
    let fixture = Fixture::minimal().replace(CHOOSING, "[umberly, tawnell]", "[umberly, inkmere]").replace(
        "lessons/first-steps/choosing.md",
        "{umberly: 5, glowen: 1}",
        "{inkmere: 6}",
    );
    assert_snapshot!(fixture.told(), @r"
        warning: `inkmere` holds PB15:3, which is restricted in EU since 2023-01-04: not to be used
          --> lessons/first-steps/choosing.md:14:11
           |
        14 |     mix: {inkmere: 6}
           |           ^^^^^^^
           |
           = help: source: an annex

        warning: `inkmere` holds PB15:3, which is restricted in EU since 2023-01-04: not to be used
          --> lessons/first-steps/choosing.yaml:13:24
           |
        13 |     bottles: [umberly, inkmere]
           |                        ^^^^^^^
           |
           = help: source: an annex

        0 errors, 2 warnings
    ");
}

#[test]
fn a_drill_that_is_placed_nowhere_twice_or_elsewhere() {
    let fixture = Fixture::minimal()
        .with("lessons/first-steps/light.md", "# Light\n\n```drill\nfirst-choice\n```\n")
        .append("lessons/first-steps/choosing.md", "\n```drill\nfirst-choice\n```\n");
    assert_snapshot!(fixture.told(), @r"
        warning: the drill `first-choice` is placed twice
          --> lessons/first-steps/choosing.md:25:1
           |
        25 | first-choice
           | ^^^^^^^^^^^^
           |
           = help: the first place is in line 21

        error: this lesson has no drill `first-choice`
         --> lessons/first-steps/light.md:4:1
          |
        4 | first-choice
          | ^^^^^^^^^^^^
          |
          = help: it belongs to another lesson

        warning: the drill `light-check` is placed nowhere in the text
         --> lessons/first-steps/light.yaml:8:9
          |
        8 |   - id: light-check
          |         ^^^^^^^^^^^
          |
          = help: put a fenced block `drill` that holds its id where its exercises shall stand

        1 error, 2 warnings
    ");
}

#[test]
fn needs_in_a_circle() {
    assert_snapshot!(Fixture::minimal().replace(LIGHT, "needs: []", "needs: [correcting]").told(), @r"
        error: lessons that need each other: `light` needs `correcting` needs `choosing` needs `light`
         --> lessons/first-steps/light.yaml:5:9
          |
        5 | needs: [correcting]
          |         ^^^^^^^^^^
          |
          = help: remove one of the needs

        1 error, 0 warnings
    ");
    assert_snapshot!(Fixture::minimal().replace(LIGHT, "needs: []", "needs: [light]").told_briefly(), @r"
        lessons/first-steps/light.yaml:5:9: lessons that need each other: `light` needs `light`
            remove one of the needs
    ");
}

#[test]
fn a_need_that_comes_later() {
    let fixture = Fixture::minimal().replace(LIGHT, "needs: []", "needs: [correcting]").replace(
        CORRECTING,
        "needs: [choosing]",
        "needs: []",
    );
    assert_snapshot!(fixture.told(), @r"
        warning: `correcting` comes later in the summary
         --> lessons/first-steps/light.yaml:5:9
          |
        5 | needs: [correcting]
          |         ^^^^^^^^^^
          |
          = help: put it before this lesson, or remove the need

        0 errors, 1 warning
    ");
}

/// Nothing is proved of an angle, so that none would ever lie in a band.
#[test]
fn an_angle_has_no_difficulty() {
    let drill = |asks: &str| {
        format!(
            "  - id: angles\n    family: skin\n{asks}    skill: foresee\n    exercises: 1\n    clients: [ruvan]\n    tempts: [turned]\n    difficulty: {{least: 0.1, most: 0.4}}\n"
        )
    };
    let fixture = || {
        Fixture::minimal()
            .append("lessons/first-steps/light.md", "\n```drill\nangles\n```\n")
            .append(
                "lessons/misconceptions.yaml",
                "  - id: turned\n    belief: One divides b* into L*.\n    tempting: Both are numbers.\n    truth: It is the other way round.\n    rule: angle-upside-down\n    lesson: light\n",
            )
    };
    let told = fixture().append(LIGHT, &drill("    asks: angle\n")).told();
    assert_snapshot!(told);
    let reading = fixture().append(LIGHT, &drill("    options: 2\n")).told_briefly();
    assert!(!reading.contains("difficulty"), "{reading}");
}
