//! YAML that is none, or too much.

use super::fixture::Fixture;
use insta::assert_snapshot;

const SKILLS: &str = "lessons/skills.yaml";
const RUVAN: &str = "lessons/clients/ruvan.yaml";

/// What is said about the file of skills alone.
fn skills(text: &str) -> String {
    let fixture = Fixture::minimal().with(SKILLS, text);
    let told = fixture.told_briefly();
    let about: Vec<&str> = told.lines().skip_while(|line| !line.starts_with(SKILLS)).collect();
    about.join("\n")
}

#[test]
fn a_tab() {
    assert_snapshot!(Fixture::minimal().replace(RUVAN, "health: []", "health:\n\t- caution: x").told(), @r"
        error: a tab in the indentation
          --> lessons/clients/ruvan.yaml:11:1
           |
        11 |     - caution: x
           | ^^^^
           |
           = help: YAML is indented with spaces only

        1 error, 0 warnings
    ");
    assert_snapshot!(skills("skills:\n  - id: foresee\n\tname: x\n"), @r"
        lessons/skills.yaml:3:1: a tab in the indentation
            YAML is indented with spaces only
    ");
}

#[test]
fn two_documents() {
    assert_snapshot!(Fixture::minimal().append(RUVAN, "---\nid: other\n").told(), @r"
        error: a second document begins here
          --> lessons/clients/ruvan.yaml:12:1
           |
        12 | ---
           | ^^^
           |
           = help: a course file holds one document: remove the line `---`

        1 error, 0 warnings
    ");
}

#[test]
fn nothing() {
    assert_snapshot!(skills(""), @r"
        lessons/skills.yaml:1:1: there is nothing in here
            fill it, or remove it
    ");
    assert_snapshot!(skills("# only a comment\n"), @r"
        lessons/skills.yaml:1:1: there is nothing in here
            fill it, or remove it
    ");
    assert_snapshot!(skills("---\n"), @r"
        lessons/skills.yaml:1:1: there is nothing in here
            fill it, or remove it
    ");
}

#[test]
fn only_a_text() {
    assert_snapshot!(skills("skills\n"), @r"
        lessons/skills.yaml:1:1: the file of skills is a set of keys; this is a single value
            it begins with the key `skills`
    ");
}

#[test]
fn mistakes_of_every_day() {
    assert_snapshot!(skills("skills:\n  - id: a: b\n"), @r"
        lessons/skills.yaml:2:10: a second colon in this line, or a key that is indented too far
            put a text that holds a colon in quotes; keys that belong together begin in the same column
    ");
    assert_snapshot!(skills("skills:\n  - id: \"a\n"), @r"
        lessons/skills.yaml:2:9: a quotation mark that is never closed
            close it, or remove it
    ");
    assert_snapshot!(skills("skills: [a, b\nmore: c\n"), @r"
        lessons/skills.yaml:2:5: a colon where none can stand
            is a bracket above left open?
    ");
    assert_snapshot!(skills("skills: [{id: a, name: 'it's'}]\n"), @r"
        lessons/skills.yaml:1:28: something follows the closing quotation mark
            an apostrophe inside single quotes is doubled: ''; or use double quotes
    ");
    assert_snapshot!(skills("skills: {id: a]\n"), @"lessons/skills.yaml:1:9: the bracket `{` is closed by `]`");
    assert_snapshot!(skills("skills:\n  - id: @a\n"), @r"
        lessons/skills.yaml:2:9: `@` cannot begin a text
            put the text in quotes
    ");
    assert_snapshot!(skills("skills:\n  - id: a\n name: b\n"), @r"
        lessons/skills.yaml:3:2: this line is indented differently from those it belongs to
            keys or dashes that belong together begin in the same column
    ");
    assert_snapshot!(skills("skills:\n  - id: a\n    name\n"), @r"
        lessons/skills.yaml:3:5: a key is followed by a colon and a space
            a text of several lines is indented further than its key
    ");
    assert_snapshot!(skills("skills:\n  - name: \"a\\qb\"\n"), @r"
        lessons/skills.yaml:2:11: an unknown escape after the backslash
            write a backslash twice, or use single quotes
    ");
    assert_snapshot!(skills("skills:\n  - name: *a\n"), @r"
        lessons/skills.yaml:2:11: an alias of something that has no anchor above
            put a text that begins with `*` in quotes
    ");
    assert_snapshot!(skills("? [a, b]\n: c\n"), @"lessons/skills.yaml:1:3: a key must be a single word");
}

#[test]
fn tags_and_merge_keys() {
    assert_snapshot!(skills("skills:\n  - !include x.yaml\n"), @r"
        lessons/skills.yaml:2:5: the tag `!include` means nothing here
            remove it; put a text that begins with `!` in quotes
    ");
    assert_snapshot!(skills("skills:\n  - &a {id: foresee, name: A}\n  - {<<: *a, id: choose}\n"), @r"
        lessons/skills.yaml:3:6: the key `name` is missing in a skill
        lessons/skills.yaml:3:6: unknown key `<<` in a skill
            the keys here are `id`, `name`
    ");
}

#[test]
fn an_alias_is_what_it_stands_for() {
    let fixture = Fixture::minimal()
        .with(SKILLS, "skills:\n  - {id: foresee, name: &name Seeing}\n  - {id: choose, name: *name}\n");
    assert_eq!(fixture.told(), "");
    assert_eq!(fixture.load().course.expect("a valid course").skills[1].name, "Seeing");
}

#[test]
fn an_alias_inside_its_own_anchor() {
    assert_snapshot!(skills("skills: &a\n  - *a\n"), @r"
        lessons/skills.yaml:2:5: an alias inside the very value it stands for
            write the value out
    ");
}

#[test]
fn aliases_that_explode() {
    let mut text = "a0: &a0 [x, x, x, x, x, x, x, x, x]\n".to_owned();
    for level in 1..9 {
        let below = format!("*a{}", level - 1);
        text += &format!("a{level}: &a{level} [{}]\n", vec![below; 9].join(", "));
    }
    assert_snapshot!(skills(&text), @r"
        lessons/skills.yaml:5:10: aliases add more than 10000 values to this file
            write the values out, or fewer of them
    ");
}

#[test]
fn nesting_without_end() {
    assert_snapshot!(skills(&"[".repeat(100_000)), @"lessons/skills.yaml:1:33: nested more than 32 levels deep");
    assert_snapshot!(skills(&(0..1000).map(|n| " ".repeat(n) + "-\n").collect::<String>()), @"lessons/skills.yaml:33:33: nested more than 32 levels deep");
    // Every level by itself is shallow; together they are deep.
    let mut text = "a0: &a0 [[[[[[[[[[x]]]]]]]]]]\n".to_owned();
    for level in 1..9 {
        text += &format!("a{level}: &a{level} [[[[[[[[[[*a{}]]]]]]]]]]\n", level - 1);
    }
    assert_snapshot!(skills(&text), @"lessons/skills.yaml:4:16: nested more than 32 levels deep");
}

#[test]
fn very_many_problems_are_counted() {
    let told = skills(&format!("skills:\n{}", "  - 1\n".repeat(5000)));
    assert_eq!(told.matches("a skill is a set of keys").count(), 100);
    assert!(told.contains("lessons/skills.yaml:102:5: and 4900 more problems in this file"), "{told}");
}
