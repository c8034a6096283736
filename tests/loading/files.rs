//! Files that are no files, too long, or no text.

use super::fixture::Fixture;
use insta::assert_snapshot;
use std::fs;

const SKILLS: &str = "lessons/skills.yaml";

#[test]
fn no_utf8() {
    let fixture = Fixture::minimal()
        .with(SKILLS, b"skills:\n  - id: foresee\n    name: Vor\xe4us\n  - {id: choose, name: x}\n")
        .with("lessons/welcome.md", b"# Wel\xffcome\n");
    assert_snapshot!(fixture.told(), @r"
        error: this file is not valid UTF-8: byte 38 is out of place
         --> lessons/skills.yaml:3:14
          |
        3 |     name: Vor�us
          |              ^
          |
          = help: save the file as UTF-8

        error: this file is not valid UTF-8: byte 6 is out of place
         --> lessons/welcome.md:1:6
          |
        1 | # Wel�come
          |      ^
          |
          = help: save the file as UTF-8

        2 errors, 0 warnings
    ");
}

#[test]
fn utf_16() {
    let utf_16 = |text: &str| text.encode_utf16().flat_map(u16::to_le_bytes).collect::<Vec<u8>>();
    for text in ["skills:\n", "\u{feff}skills:\n"] {
        let fixture = Fixture::minimal().with(SKILLS, utf_16(text));
        insta::allow_duplicates!(assert_snapshot!(fixture.told(), @r"
            error: this file is UTF-16, and a course is written in UTF-8
            --> lessons/skills.yaml:1:1
             = help: save the file as UTF-8

            1 error, 0 warnings
        "));
    }
}

#[test]
fn a_file_that_is_too_long() {
    let fixture = Fixture::minimal().append("lessons/welcome.md", &"x".repeat(1_000_000));
    assert_snapshot!(fixture.told(), @r"
        error: this file is 1000062 bytes long; at most 1000000 are read
        --> lessons/welcome.md:1:1
         = help: split it into several files

        1 error, 0 warnings
    ");
    let just_right =
        1_000_000 - fs::metadata(super::fixture::minimal().join("lessons/welcome.md")).expect("a file").len();
    let fixture = Fixture::minimal().append("lessons/welcome.md", &"x".repeat(just_right as usize));
    assert_eq!(fixture.told(), "");
}

#[test]
fn a_folder_where_a_file_is_expected() {
    let fixture = Fixture::minimal().without(SKILLS).without("lessons/SUMMARY.md");
    fs::create_dir(fixture.path(SKILLS)).expect("a folder");
    fs::create_dir(fixture.path("lessons/SUMMARY.md")).expect("a folder");
    assert_snapshot!(fixture.told_briefly(), @r"
        lessons/SUMMARY.md:1:1: a folder, where a file is expected
        lessons/skills.yaml:1:1: a folder, where a file is expected
    ");
}

#[cfg(unix)]
#[test]
fn links_that_leave_the_course() {
    use std::os::unix::fs::symlink;
    let fixture = Fixture::minimal().without(SKILLS).without("lessons/welcome.md");
    fs::write(fixture.path("../outside.yaml"), "skills: []").expect("a file");
    fs::create_dir(fixture.path("../folder")).expect("a folder");
    symlink("../../outside.yaml", fixture.path(SKILLS)).expect("a link");
    symlink("nothing.md", fixture.path("lessons/welcome.md")).expect("a link");
    symlink("../../folder", fixture.path("lessons/more")).expect("a link");
    symlink("first-steps", fixture.path("lessons/again")).expect("a link");
    assert_snapshot!(fixture.told_briefly(), @r"
        lessons/again:1:1: a link to a folder
            put the folder itself here: a file that is reached in two ways would count twice
        lessons/more:1:1: a link that leaves the course folder
        lessons/skills.yaml:1:1: a link that leaves the course folder
        lessons/welcome.md:1:1: a link to nothing
    ");
}

#[cfg(unix)]
#[test]
fn a_link_inside_the_course_is_a_file_like_any_other() {
    let fixture =
        Fixture::minimal().without("lessons/welcome.md").with("lessons/first-steps/hello.txt", "# Welcome\n");
    std::os::unix::fs::symlink("first-steps/hello.txt", fixture.path("lessons/welcome.md")).expect("a link");
    assert_eq!(fixture.told(), "");
}

#[cfg(unix)]
#[test]
fn a_folder_of_lessons_that_is_a_link() {
    let fixture = Fixture::minimal();
    fs::rename(fixture.path("lessons"), fixture.path("../lessons")).expect("a folder that can be moved");
    std::os::unix::fs::symlink("../lessons", fixture.path("lessons")).expect("a link");
    assert_snapshot!(fixture.told(), @r#"
        error: the folder of lessons `lessons` cannot be used: a link that leaves the course folder
         --> book.toml:6:7
          |
        6 | src = "lessons"
          |       ^^^^^^^^^
          |
          = help: `src` in the table `[book]` names it, such as `src = "lessons"`

        1 error, 0 warnings
    "#);
}
