//! How problems are shown: with colours, as JSON, many at once.

use super::fixture::Fixture;
use healedhue::course::{Diagnostic, Severity, report};
use insta::{assert_json_snapshot, assert_snapshot};

fn broken() -> Fixture {
    Fixture::minimal()
        .replace("lessons/clients/ruvan.yaml", "age: 34", "age: 340")
        .replace("lessons/first-steps/choosing.yaml", "clients: [ruvan]", "clients: [ruvna]")
        .replace("lessons/first-steps/choosing.md", "client: ruvan\n    mix", "client: rovan\n    mix")
        .append("lessons/welcome.md", "\nÄrger mit <b>HTML</b>.\n")
        .with("lessons/draft.md", "# Draft\n")
}

#[test]
fn several_problems_in_several_files() {
    assert_snapshot!(broken().told(), @r"
        error: `age` is 340, outside 16 to 110 years
         --> lessons/clients/ruvan.yaml:3:6
          |
        3 | age: 340
          |      ^^^

        warning: this page is not in the summary, so nobody sees it
        --> lessons/draft.md:1:1
         = help: add it to SUMMARY.md

        error: there is no client `rovan`
          --> lessons/first-steps/choosing.md:13:13
           |
        13 |     client: rovan
           |             ^^^^^
           |
           = help: did you mean `ruvan`?

        error: there is no client `ruvna`
          --> lessons/first-steps/choosing.yaml:12:15
           |
        12 |     clients: [ruvna]
           |               ^^^^^
           |
           = help: did you mean `ruvan`?

        error: raw HTML in a page
         --> lessons/welcome.md:5:11
          |
        5 | Ärger mit <b>HTML</b>.
          |           ^^^
          |
          = help: pages are written in Markdown only; write `\<` for the sign itself

        4 errors, 1 warning
    ");
}

#[test]
fn problems_as_json() {
    assert_json_snapshot!(broken().load().diagnostics, @r#"
        [
          {
            "file": "lessons/clients/ruvan.yaml",
            "line": 3,
            "column": 6,
            "severity": "error",
            "message": "`age` is 340, outside 16 to 110 years",
            "help": null
          },
          {
            "file": "lessons/draft.md",
            "line": 1,
            "column": 1,
            "severity": "warning",
            "message": "this page is not in the summary, so nobody sees it",
            "help": "add it to SUMMARY.md"
          },
          {
            "file": "lessons/first-steps/choosing.md",
            "line": 13,
            "column": 13,
            "severity": "error",
            "message": "there is no client `rovan`",
            "help": "did you mean `ruvan`?"
          },
          {
            "file": "lessons/first-steps/choosing.yaml",
            "line": 12,
            "column": 15,
            "severity": "error",
            "message": "there is no client `ruvna`",
            "help": "did you mean `ruvan`?"
          },
          {
            "file": "lessons/welcome.md",
            "line": 5,
            "column": 11,
            "severity": "error",
            "message": "raw HTML in a page",
            "help": "pages are written in Markdown only; write `\\<` for the sign itself"
          }
        ]
    "#);
}

#[test]
fn colours() {
    let fixture = Fixture::minimal().replace("lessons/clients/ruvan.yaml", "age: 34", "age: 340");
    let coloured = report(&fixture.load().diagnostics, true);
    assert_snapshot!(coloured.replace('\u{1b}', "ESC"), @r"
        ESC[1mESC[91merrorESC[0mESC[1m: `age` is 340, outside 16 to 110 yearsESC[0m
         ESC[1mESC[94m--> ESC[0mlessons/clients/ruvan.yaml:3:6
          ESC[1mESC[94m|ESC[0m
        ESC[1mESC[94m3ESC[0m ESC[1mESC[94m|ESC[0m age: 340
          ESC[1mESC[94m|ESC[0m      ESC[1mESC[91m^^^ESC[0m

        1 error, 0 warnings
    ");
}

#[test]
fn what_authors_write_cannot_command_a_terminal() {
    let fixture = Fixture::minimal()
        .replace("lessons/clients/ruvan.yaml", "goal: soft-brown", "goal: \"soft\\e[2Jbrown\"")
        .replace("lessons/clients/ruvan.yaml", "site: brow", "site: \"\u{202e}\u{9b}2J\"");
    let told = fixture.told();
    assert!(told.chars().all(|c| c == '\n' || !c.is_control()), "{told:?}");
}

#[test]
fn a_problem_without_an_excerpt() {
    let mut problem = Diagnostic::new(Severity::Warning, "lessons/a.yaml", 12, 5, "too hard to prove");
    problem.help("give it a smaller margin");
    assert_snapshot!(problem.to_string(), @r"
        warning: too hard to prove
        --> lessons/a.yaml:12:5
         = help: give it a smaller margin
    ");
}
