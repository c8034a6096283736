//! The manifest, `book.toml`.

use super::fixture::Fixture;
use insta::assert_snapshot;

const BOOK: &str = "book.toml";

#[test]
fn unknown_keys() {
    let fixture =
        Fixture::minimal().replace(BOOK, "authors =", "author =").replace(BOOK, "seed = 7", "sed = 7");
    assert_snapshot!(fixture.told(), @r#"
        error: unknown key `author` in the table `[book]`
         --> book.toml:4:1
          |
        4 | author = ["Ferrow Academy"]
          | ^^^^^^
          |
          = help: did you mean `authors`? The keys here are `title`, `description`, `authors`, `language`, `src`, `multilingual`, `text-direction`

        error: unknown key `sed` in the table `[output.healedhue]`
          --> book.toml:16:1
           |
        16 | sed = 7
           | ^^^
           |
           = help: did you mean `seed`? The keys here are `optional`, `seed`, `strict`

        2 errors, 0 warnings
    "#);
}

#[test]
fn values_of_the_wrong_type() {
    let fixture = Fixture::minimal()
        .replace(BOOK, "\"A small course\"", "5")
        .replace(BOOK, "[\"Ferrow Academy\"]", "\"Ferrow Academy\"")
        .replace(BOOK, "\"en-GB\"", "\"British English\"")
        .replace(BOOK, "seed = 7", "seed = -7")
        .replace(BOOK, "optional = true", "optional = \"true\"");
    assert_snapshot!(fixture.told(), @r#"
        error: `title` is a text: put it in quotes
         --> book.toml:2:9
          |
        2 | title = 5
          |         ^

        error: `authors` is a list; this is a single value
         --> book.toml:4:11
          |
        4 | authors = "Ferrow Academy"
          |           ^^^^^^^^^^^^^^^^
          |
          = help: a list of one: `authors = ["Ferrow Academy"]`

        error: `British English` is no language tag
         --> book.toml:5:12
          |
        5 | language = "British English"
          |            ^^^^^^^^^^^^^^^^^
          |
          = help: write a tag such as `en` or `pt-BR`

        error: `optional` is `true` or `false`
          --> book.toml:15:12
           |
        15 | optional = "true"
           |            ^^^^^^

        error: `seed` is a whole number, 0 or more
          --> book.toml:16:8
           |
        16 | seed = -7
           |        ^^
           |
           = help: such as `seed = 2026`

        5 errors, 0 warnings
    "#);
}

#[test]
fn misspelt_tables() {
    let fixture = Fixture::minimal()
        .replace(BOOK, "[output.healedhue]", "[output.healdhue]")
        .append(BOOK, "[outputs]\n");
    assert_snapshot!(fixture.told(), @r"
        warning: nothing reads the table `[output.healdhue]`
          --> book.toml:14:9
           |
        14 | [output.healdhue]
           |         ^^^^^^^^
           |
           = help: did you mean `[output.healedhue]`?

        warning: nothing reads the table `outputs`
          --> book.toml:17:2
           |
        17 | [outputs]
           |  ^^^^^^^
           |
           = help: did you mean `output`?

        0 errors, 2 warnings
    ");
}

#[test]
fn keys_of_mdbook_and_a_large_seed() {
    let fixture = Fixture::minimal()
        .replace(BOOK, "src =", "multilingual = false\ntext-direction = \"ltr\"\nsrc =")
        .replace(BOOK, "seed = 7", "seed = 0xFFFF_FFFF")
        .append(BOOK, "[preprocessor.links]\nanything = 1\n[rust]\nedition = \"2021\"\n");
    assert_eq!(fixture.told(), "");
    assert_eq!(fixture.load().course.expect("a valid course").seed, 0xFFFF_FFFF);
}

#[test]
fn a_manifest_with_little_in_it() {
    let fixture = Fixture::minimal().with(BOOK, "[book]\ntitle = \"T\"\nsrc = \"lessons\"\n");
    let course = fixture.load().course.expect("a valid course");
    assert_eq!((course.language.tag(), course.seed, course.authors.len()), ("en", 0, 0));
}

#[test]
fn a_language_that_the_program_does_not_speak() {
    let fixture = Fixture::minimal().replace(BOOK, "en-GB", "rm-CH");
    assert_snapshot!(fixture.told(), @r#"
        warning: the program does not speak `rm-CH`: its own words are in English
         --> book.toml:5:12
          |
        5 | language = "rm-CH"
          |            ^^^^^^^
          |
          = help: what the course says is shown as it is written; spoken are `en`, `de`

        0 errors, 1 warning
    "#);
    let course = fixture.load().course.expect("a warning leaves the course whole");
    assert_eq!(course.language.tag(), "rm-CH");
    for spoken in ["en", "en-GB", "de", "de-AT", "DE-ch"] {
        assert_eq!(Fixture::minimal().replace(BOOK, "en-GB", spoken).told(), "", "{spoken}");
    }
}

#[test]
fn no_book() {
    assert_snapshot!(Fixture::minimal().with(BOOK, "").told(), @r"
        error: the table `[book]` is missing
         --> book.toml:1:1
          |
        1 |
          | ^
          |
          = help: it holds the course's `title` and more

        1 error, 0 warnings
    ");
}

#[test]
fn no_toml() {
    assert_snapshot!(Fixture::minimal().replace(BOOK, "\"A small course\"", "\"A small course").told(), @r#"
        error: this is not TOML: invalid basic string, expected `"`
         --> book.toml:2:24
          |
        2 | title = "A small course
          |                        ^

        1 error, 0 warnings
    "#);
}

#[test]
fn a_folder_of_lessons_that_is_not_there() {
    assert_snapshot!(Fixture::minimal().replace(BOOK, "src = \"lessons\"\n", "").told(), @r#"
        error: the folder of lessons `src` cannot be used: it is missing
         --> book.toml:2:1
          |
        2 | title = "A small course"
          | ^^^^^
          |
          = help: `src` in the table `[book]` names it, such as `src = "lessons"`

        1 error, 0 warnings
    "#);
    assert_snapshot!(Fixture::minimal().replace(BOOK, "src = \"lessons\"", "src = \"leson\"").told(), @r#"
        error: the folder of lessons `leson` cannot be used: it is missing
         --> book.toml:6:7
          |
        6 | src = "leson"
          |       ^^^^^^^
          |
          = help: `src` in the table `[book]` names it, such as `src = "lessons"`

        1 error, 0 warnings
    "#);
    assert_snapshot!(Fixture::minimal().replace(BOOK, "src = \"lessons\"", "src = \"book.toml\"").told_briefly(), @r#"
        book.toml:6:7: the folder of lessons `book.toml` cannot be used: a file, where a folder is expected
            `src` in the table `[book]` names it, such as `src = "lessons"`
    "#);
    assert_snapshot!(Fixture::minimal().replace(BOOK, "src = \"lessons\"", "src = \"../course\"").told_briefly(), @r#"
        book.toml:6:7: `../course` is no folder inside the course
            write its name, such as `src = "lessons"`
    "#);
    assert_snapshot!(Fixture::minimal().replace(BOOK, "src = \"lessons\"", "src = \"/etc\"").told_briefly(), @r#"
        book.toml:6:7: `/etc` is no folder inside the course
            write its name, such as `src = "lessons"`
    "#);
}

#[test]
fn no_manifest_and_no_folder() {
    assert_snapshot!(Fixture::minimal().without(BOOK).told(), @r"
        error: there is no `book.toml`
        --> book.toml:1:1
         = help: it is the manifest of a course; is this the folder of one? `--course FOLDER` names another

        1 error, 0 warnings
    ");
    let file = healedhue::course::load(&Fixture::minimal().path(BOOK));
    assert_eq!(file.diagnostics.len(), 1);
    let fixture = Fixture::minimal();
    let nowhere = healedhue::course::load(&fixture.path("nowhere"));
    assert_snapshot!(healedhue::course::report(&nowhere.diagnostics, false), @r"
        error: the folder of the course cannot be opened: it is missing
        --> .:1:1

        1 error, 0 warnings
    ");
}

#[test]
fn a_broken_manifest_hides_nothing_in_the_lessons() {
    let lessons = |fixture: Fixture| {
        fixture.replace("lessons/clients/ruvan.yaml", "age: 34", "age: 340").told_briefly()
    };
    assert_snapshot!(lessons(Fixture::minimal().without(BOOK)), @r"
        book.toml:1:1: there is no `book.toml`
            it is the manifest of a course; is this the folder of one? `--course FOLDER` names another
        lessons/clients/ruvan.yaml:3:6: `age` is 340, outside 16 to 110 years
    ");
    assert_snapshot!(lessons(Fixture::minimal().with(BOOK, "[book\n")), @r"
        book.toml:1:6: this is not TOML: unclosed table, expected `]`
        lessons/clients/ruvan.yaml:3:6: `age` is 340, outside 16 to 110 years
    ");
    assert_snapshot!(lessons(Fixture::minimal().replace(BOOK, "src = \"lessons\"", "src = \"lesons\"")), @r#"
        book.toml:6:7: the folder of lessons `lesons` cannot be used: it is missing
            `src` in the table `[book]` names it, such as `src = "lessons"`
        lessons/clients/ruvan.yaml:3:6: `age` is 340, outside 16 to 110 years
    "#);
}
