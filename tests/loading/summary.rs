//! The summary, and the files it names.

use super::fixture::Fixture;
use insta::assert_snapshot;

const SUMMARY: &str = "lessons/SUMMARY.md";

#[test]
fn a_page_that_does_not_exist() {
    assert_snapshot!(Fixture::minimal().replace(SUMMARY, "first-steps/light.md", "first-steps/lihgt.md").told(), @r"
        error: there is no file `lessons/first-steps/lihgt.md`
         --> lessons/SUMMARY.md:6:7
          |
        6 |     - [Light and skin](first-steps/lihgt.md)
          |       ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
          |
          = help: did you mean `lessons/first-steps/light.md`?

        1 error, 0 warnings
    ");
}

#[test]
fn a_page_without_its_yaml_file() {
    assert_snapshot!(Fixture::minimal().without("lessons/first-steps/light.yaml").told(), @r"
        error: there is no file `lessons/first-steps/light.yaml` beside this page
         --> lessons/SUMMARY.md:6:7
          |
        6 |     - [Light and skin](first-steps/light.md)
          |       ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
          |
          = help: every module and every lesson has a YAML file of the same name

        1 error, 0 warnings
    ");
    assert_snapshot!(Fixture::minimal().without("lessons/first-steps/module.yaml").told_briefly(), @r"
        lessons/SUMMARY.md:5:3: there is no file `lessons/first-steps/module.yaml` beside this page
            every module and every lesson has a YAML file of the same name
    ");
}

#[test]
fn files_that_are_not_in_the_summary() {
    let fixture = Fixture::minimal()
        .with("lessons/first-steps/choosin.yaml", "id: x")
        .with("lessons/welcome.yaml", "id: x")
        .with("lessons/glosary.yaml", "terms: []")
        .with("lessons/skills.yml", "skills: []")
        .with("lessons/first-steps/draft.md", "# Draft")
        .with("lessons/first-steps/draft.yaml", "id: draft")
        .with("lessons/first-steps/notes.txt", "anything");
    assert_snapshot!(fixture.told_briefly(), @r"
        lessons/first-steps/choosin.yaml:1:1: nothing in the course reads this file
            a lesson's YAML file stands beside its page and has the same name
        lessons/first-steps/draft.md:1:1: this page is not in the summary, so nobody sees it
            add it to SUMMARY.md
        lessons/glosary.yaml:1:1: nothing in the course reads this file
            a lesson's YAML file stands beside its page and has the same name
        lessons/skills.yml:1:1: course files end in `.yaml`
            rename it
        lessons/welcome.yaml:1:1: a page before the modules has no YAML file
            make it a lesson of a module, or remove the file
    ");
}

#[test]
fn a_course_without_modules() {
    assert_snapshot!(Fixture::minimal().with(SUMMARY, "# Summary\n\n[Welcome](welcome.md)\n").told(), @r"
        error: the summary lists no module
         --> lessons/SUMMARY.md:1:1
          |
        1 | # Summary
          | ^
          |
          = help: a module is an item of the list, `- [Title](folder/module.md)`, and its lessons are indented below it

        1 error, 0 warnings
    ");
}

#[test]
fn a_module_without_lessons() {
    let fixture = Fixture::minimal()
        .append(SUMMARY, "- [More](more/module.md)\n")
        .with("lessons/more/module.md", "# More\n")
        .with("lessons/more/module.yaml", "id: more\nabout: More.\n");
    assert_snapshot!(fixture.told(), @r"
        warning: the module `More` has no lessons
         --> lessons/SUMMARY.md:9:3
          |
        9 | - [More](more/module.md)
          |   ^^^^^^^^^^^^^^^^^^^^^^

        0 errors, 1 warning
    ");
}

#[test]
fn links_that_are_no_pages() {
    let fixture = Fixture::minimal()
        .append(SUMMARY, "    - [Twice](first-steps/light.md)\n    - [Web](https://a.example)\n    - [Out](../book.md)\n    - [](first-steps/x.md)\n    - no link\n    - [Deep](first-steps/deep.md)\n        - [Deeper](first-steps/deeper.md)\n");
    assert_snapshot!(fixture.told_briefly(), @r"
        lessons/SUMMARY.md:9:7: `first-steps/light.md` is in the summary twice
            the first one is in line 6
        lessons/SUMMARY.md:10:7: `https://a.example` is not a page
            the summary links to `.md` files in the folder of lessons
        lessons/SUMMARY.md:11:7: `../book.md` leads out of the folder of lessons
            keep what pages show in the folder of lessons
        lessons/SUMMARY.md:12:7: a page without a title
            write it between the square brackets
        lessons/SUMMARY.md:12:7: there is no file `lessons/first-steps/x.md`
        lessons/SUMMARY.md:13:3: an item without a link
            every item of the summary is a link to a page: `[Title](folder/page.md)`
        lessons/SUMMARY.md:14:7: there is no file `lessons/first-steps/deep.md`
        lessons/SUMMARY.md:15:11: a page below a lesson
            modules hold lessons, and lessons hold no further pages
    ");
}

#[test]
fn pages_in_the_wrong_order() {
    let fixture = Fixture::minimal()
        .append(SUMMARY, "\n# Part\n\n[After](after.md)\n")
        .with("lessons/after.md", "# After\n");
    assert_snapshot!(fixture.told(), @r"
        warning: headings inside the summary are not shown
          --> lessons/SUMMARY.md:10:1
           |
        10 | # Part
           | ^^^^^^
           |
           = help: modules are the parts of a course

        error: a page after the modules
          --> lessons/SUMMARY.md:12:1
           |
        12 | [After](after.md)
           | ^^^^^^^^^^^^^^^^^
           |
           = help: put it before the list, or make it a lesson of a module

        1 error, 1 warning
    ");
}

#[test]
fn a_lesson_in_another_folder() {
    let fixture = Fixture::minimal()
        .append(SUMMARY, "    - [Away](away.md)\n")
        .with("lessons/away.md", "# Away\n")
        .with("lessons/away.yaml", "{id: away, objectives: [x], minutes: 5}");
    assert_snapshot!(fixture.told(), @r"
        error: this lesson is not in the folder of its module `First steps`
         --> lessons/SUMMARY.md:9:7
          |
        9 |     - [Away](away.md)
          |       ^^^^^^^^^^^^^^^
          |
          = help: move its files into `lessons/first-steps`

        1 error, 0 warnings
    ");
}

#[test]
fn a_draft_is_left_out() {
    assert_eq!(Fixture::minimal().append(SUMMARY, "    - [To come]()\n").told(), "");
}

#[test]
fn no_summary() {
    assert_snapshot!(Fixture::minimal().without(SUMMARY).told_briefly(), @r"
        lessons/SUMMARY.md:1:1: there is no `SUMMARY.md`
            it lists the pages of the course in their order
    ");
}
