//! The README's commands do what it shows.

use assert_cmd::Command;

const README: &str = include_str!("../README.md");

/// The sessions shown: command and what it prints.
fn sessions() -> Vec<(Vec<&'static str>, String)> {
    README
        .split("```console\n$ healedhue ")
        .skip(1)
        .map(|rest| {
            let block = rest.split("\n```").next().expect("the block ends");
            let (command, output) = block.split_once('\n').expect("something is printed");
            (command.split_whitespace().collect(), output.to_owned())
        })
        .collect()
}

#[test]
fn every_session_shown_prints_what_is_shown() {
    let sessions = sessions();
    assert_eq!(sessions.len(), 2, "foresee and practise");
    for (arguments, shown) in sessions {
        let mut command = Command::cargo_bin("healedhue").expect("the program is built");
        command.current_dir(env!("CARGO_MANIFEST_DIR")).env("NO_COLOR", "1").args(&arguments);
        // What a user types in the session is shown after the prompt.
        let typed: String = shown
            .lines()
            .filter_map(|line| line.split_once("to end): "))
            .map(|(_, typed)| format!("{typed}\n"))
            .collect();
        let output = command.write_stdin(typed.clone()).output().expect("the program runs");
        let printed = String::from_utf8(output.stdout).expect("UTF-8")
            + &String::from_utf8(output.stderr).expect("UTF-8");
        let shown: Vec<&str> = shown
            .lines()
            .map(|line| line.split_once("to end): ").map_or(line, |(prompt, _)| prompt))
            .map(str::trim_end)
            .collect();
        let printed: Vec<&str> = printed
            .lines()
            .map(|line| line.split_once("to end): ").map_or(line, |(prompt, _)| prompt))
            .map(str::trim_end)
            .collect();
        assert_eq!(printed, shown, "healedhue {}", arguments.join(" "));
    }
}

/// The two commands that the README promises first, as written.
#[test]
fn the_two_commands_stand_as_promised() {
    assert!(README.contains("\ncargo run --release -- build\n") && README.contains("\ncargo test\n"));
}

/// The request in the README is the example file.
#[test]
fn the_request_shown_is_the_example() {
    let example = include_str!("../docs/examples/red-skin.json").trim_end();
    assert!(README.contains(example));
}

/// The mistakes shown are what `check` says of the demo course with these two words misspelt.
#[test]
fn the_mistakes_shown_are_reported_so() {
    let shown = README
        .split("```text\n")
        .nth(1)
        .and_then(|rest| rest.split("\n```").next())
        .expect("the README shows mistakes");
    let copy = tempfile::TempDir::new().expect("a temporary folder");
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR"));
    copy_folder(&root.join("lessons"), &copy.path().join("lessons"));
    std::fs::copy(root.join("book.toml"), copy.path().join("book.toml")).expect("book.toml is copied");
    let drill = copy.path().join("lessons/choosing-for-the-client/red-skin-and-warmth.yaml");
    let text = std::fs::read_to_string(&drill).expect("the lesson exists");
    assert!(text.contains("    tempts: [") && text.contains("clients: [maren"));
    let text =
        text.replacen("    tempts: [", "    tempt: [", 1).replacen("clients: [maren", "clients: [marren", 1);
    std::fs::write(&drill, text).expect("the copy is written");
    let mut command = Command::cargo_bin("healedhue").expect("the program is built");
    let output = command.arg("check").arg("--course").arg(copy.path()).output().expect("the program runs");
    let printed = String::from_utf8(output.stdout).expect("UTF-8");
    assert!(printed.contains(shown), "{printed}");
    assert_eq!(output.status.code(), Some(1));
}

fn copy_folder(from: &std::path::Path, to: &std::path::Path) {
    std::fs::create_dir_all(to).expect("the folder is made");
    for entry in std::fs::read_dir(from).expect("the folder is read") {
        let entry = entry.expect("the entry is read");
        let target = to.join(entry.file_name());
        if entry.path().is_dir() {
            copy_folder(&entry.path(), &target);
        } else {
            std::fs::copy(entry.path(), target).expect("the file is copied");
        }
    }
}
