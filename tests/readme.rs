//! The README does what it shows.

use assert_cmd::Command;

const README: &str = include_str!("../README.md");

#[test]
fn the_session_shown_prints_what_is_shown() {
    let session = README.split("```console\n$ healedhue ").nth(1).and_then(|rest| rest.split("\n```").next());
    let (command, shown) =
        session.and_then(|session| session.split_once('\n')).expect("the README shows a session");
    let mut healedhue = Command::cargo_bin("healedhue").expect("the program is built");
    healedhue
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .env("NO_COLOR", "1")
        .env_remove("COLUMNS")
        .args(command.split_whitespace());
    let output = healedhue.output().expect("the program runs");
    assert_eq!(String::from_utf8_lossy(&output.stdout).trim_end(), shown);
}

#[test]
fn the_request_shown_is_the_example() {
    assert!(README.contains(include_str!("../docs/examples/red-skin.json").trim_end()));
}

#[test]
fn the_two_commands_stand_as_promised() {
    assert!(README.contains("\ncargo run --release -- build\n") && README.contains("\ncargo test\n"));
}
