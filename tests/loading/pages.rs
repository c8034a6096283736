//! Pages: titles, HTML, links, images and fenced blocks.

use super::fixture::Fixture;
use healedhue::course::Asset;
use insta::assert_snapshot;

const WELCOME: &str = "lessons/welcome.md";
const CHOOSING: &str = "lessons/first-steps/choosing.md";

/// What a PNG file begins with.
const PNG: &[u8] = b"\x89PNG\r\n\x1a\n";

fn asset(path: &str, content: &[u8]) -> Asset {
    Asset { path: path.to_owned(), content: content.to_vec() }
}

fn welcome(text: &str) -> String {
    Fixture::minimal().append(WELCOME, &format!("\n{text}\n")).told_briefly()
}

#[test]
fn a_page_without_a_title() {
    assert_snapshot!(Fixture::minimal().with(WELCOME, "Hello.\n\n# Welcome\n").told(), @r"
        error: this page does not begin with a title
         --> lessons/welcome.md:1:1
          |
        1 | Hello.
          | ^^^^^^
          |
          = help: write `# Title` in its first line

        1 error, 0 warnings
    ");
    assert_snapshot!(Fixture::minimal().with(WELCOME, "").told(), @r"
        error: this page does not begin with a title
         --> lessons/welcome.md:1:1
          |
        1 |
          | ^
          |
          = help: write `# Title` in its first line

        1 error, 0 warnings
    ");
    assert_snapshot!(Fixture::minimal().with(WELCOME, "## Welcome\n").told_briefly(), @r"
        lessons/welcome.md:1:1: this page does not begin with a title
            write `# Title` in its first line
    ");
}

#[test]
fn raw_html() {
    assert_snapshot!(Fixture::minimal().append(WELCOME, "\n<div>\nA block.\n</div>\n\nAnd <b>inside</b> a line.\n").told(), @r"
        error: raw HTML in a page
         --> lessons/welcome.md:5:1
          |
        5 | <div>
          | ^^^^^
          |
          = help: pages are written in Markdown only; write `\<` for the sign itself

        error: raw HTML in a page
         --> lessons/welcome.md:9:5
          |
        9 | And <b>inside</b> a line.
          |     ^^^
          |
          = help: pages are written in Markdown only; write `\<` for the sign itself

        2 errors, 0 warnings
    ");
    assert_snapshot!(welcome("<!-- a comment -->"), @r"
        lessons/welcome.md:5:1: raw HTML in a page
            pages are written in Markdown only; write `\<` for the sign itself
    ");
}

#[test]
fn links_with_a_scheme() {
    assert_eq!(
        welcome("[a](http://a.example) <https://b.example> [c](mailto:c@d.example) <e@f.example> [g](#)"),
        ""
    );
    assert_snapshot!(welcome("[a](javascript:alert) and [b](FILE:///etc/passwd) and <data:text/html,x>"), @r"
        lessons/welcome.md:5:1: a link with the scheme `javascript`
            links begin with http:, https: or mailto:, or are paths relative to the page
        lessons/welcome.md:5:27: a link with the scheme `FILE`
            links begin with http:, https: or mailto:, or are paths relative to the page
        lessons/welcome.md:5:55: a link with the scheme `data`
            links begin with http:, https: or mailto:, or are paths relative to the page
    ");
}

#[test]
fn links_that_lead_nowhere() {
    assert_snapshot!(welcome("[a](frist-steps/light.md)"), @r"
        lessons/welcome.md:5:1: there is no file `lessons/frist-steps/light.md`
            did you mean `lessons/first-steps/light.md`?
    ");
    assert_snapshot!(welcome("[a]()"), @r"
        lessons/welcome.md:5:1: a link that leads nowhere
            write its destination between the brackets
    ");
    assert_snapshot!(welcome("[a](/first-steps/light.md)"), @r"
        lessons/welcome.md:5:1: `/first-steps/light.md` is not relative to the page
            write the way from this page's folder
    ");
    assert_snapshot!(welcome("[a](../book.toml)"), @r"
        lessons/welcome.md:5:1: `../book.toml` leads out of the folder of lessons
            keep what pages show in the folder of lessons
    ");
    assert_snapshot!(welcome("[a](first-steps%2F..%2F..%2Fbook.toml)"), @r"
        lessons/welcome.md:5:1: `first-steps/../../book.toml` leads out of the folder of lessons
            keep what pages show in the folder of lessons
    ");
    assert_snapshot!(welcome("[a](//evil.example/x)"), @r"
        lessons/welcome.md:5:1: `//evil.example/x` is not relative to the page
            write the way from this page's folder
    ");
    assert_snapshot!(welcome("[a](first-steps\\light.md)"), @r"
        lessons/welcome.md:5:1: `first-steps\light.md` holds a backslash
            write `/` between folders
    ");
    assert_snapshot!(welcome("[a](%FF.md)"), @r"
        lessons/welcome.md:5:1: `%FF.md` is not valid UTF-8
            write the file's name as it is
    ");
    assert_snapshot!(welcome("[a][b]\n\n[b]: nowhere.md"), @"lessons/welcome.md:5:1: there is no file `lessons/nowhere.md`");
}

#[test]
fn links_with_escapes_and_other_files() {
    let fixture = Fixture::minimal().with("lessons/first steps.pdf", "%PDF-1.7").append(
        WELCOME,
        "\n[a](first%20steps.pdf) [b](<first steps.pdf#page=2>) [c](./first-steps/../welcome.md?x#welcome)\n",
    );
    assert_eq!(fixture.told(), "");
    let assets = fixture.load().course.expect("a valid course").assets;
    assert_eq!(assets, [asset("first steps.pdf", b"%PDF-1.7")]);
}

#[test]
fn links_to_headings() {
    let page = "\n## How it heals\n\n### Größe `m`\n\n## How it heals\n";
    assert_eq!(
        Fixture::minimal()
            .append(CHOOSING, page)
            .append(
                WELCOME,
                "\n[a](first-steps/choosing.md#how-it-heals-1) [b](first-steps/choosing.md#gr%C3%B6%C3%9Fe-m) \
                 [c](#welcome) [d](#)\n"
            )
            .told(),
        ""
    );
    let fixture = Fixture::minimal().append(CHOOSING, page).append(
        WELCOME,
        "\n[a](first-steps/choosing.md#How-it-heels) [b](#anywhere) [c](first-steps/module.md#x)\n",
    );
    assert_snapshot!(fixture.told(), @r"
        error: there is no heading `How-it-heels` in `lessons/first-steps/choosing.md`
         --> lessons/welcome.md:5:1
          |
        5 | [a](first-steps/choosing.md#How-it-heels) [b](#anywhere) [c](first-steps/module.md#x)
          | ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
          |
          = help: did you mean `#how-it-heals`?

        error: there is no heading `anywhere` on this page
         --> lessons/welcome.md:5:43
          |
        5 | [a](first-steps/choosing.md#How-it-heels) [b](#anywhere) [c](first-steps/module.md#x)
          |                                           ^^^^^^^^^^^^^^
          |
          = help: a heading `## How it heals` is reached by `#how-it-heals`

        error: there is no heading `x` in `lessons/first-steps/module.md`
         --> lessons/welcome.md:5:58
          |
        5 | [a](first-steps/choosing.md#How-it-heels) [b](#anywhere) [c](first-steps/module.md#x)
          |                                                          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^
          |
          = help: a heading `## How it heals` is reached by `#how-it-heals`

        3 errors, 0 warnings
    ");
}

#[test]
fn a_link_to_a_page_that_is_not_in_the_summary() {
    let fixture =
        Fixture::minimal().with("lessons/draft.md", "# Draft\n").append(WELCOME, "\n[a](draft.md)\n");
    assert_snapshot!(fixture.told(), @r"
        warning: this page is not in the summary, so nobody sees it
        --> lessons/draft.md:1:1
         = help: add it to SUMMARY.md

        error: `lessons/draft.md` is not in the summary, so there is no such page
         --> lessons/welcome.md:5:1
          |
        5 | [a](draft.md)
          | ^^^^^^^^^^^^^
          |
          = help: add it to SUMMARY.md, or remove the link

        1 error, 1 warning
    ");
}

#[test]
fn images() {
    assert_eq!(
        Fixture::minimal().with("lessons/skin.png", PNG).append(WELCOME, "\n![Skin](skin.png)\n").told(),
        ""
    );
    assert_snapshot!(welcome("![Skin](skni.png)"), @"lessons/welcome.md:5:1: there is no file `lessons/skni.png`");
    assert_snapshot!(welcome("![Skin](https://a.example/skin.png)"), @r"
        lessons/welcome.md:5:1: an image that is not in the course
            pages are read without a network: put the picture into the folder of lessons
    ");
    let silent = Fixture::minimal().with("lessons/skin.png", PNG).append(WELCOME, "\n![](skin.png)\n");
    assert_snapshot!(silent.told(), @r"
        warning: an image without a description
         --> lessons/welcome.md:5:1
          |
        5 | ![](skin.png)
          | ^^^^^^^^^^^^^
          |
          = help: write between the square brackets what is to be seen

        0 errors, 1 warning
    ");
}

#[test]
fn pictures_and_downloads_are_part_of_the_course() {
    let fixture = Fixture::minimal()
        .with("lessons/first-steps/skin.png", PNG)
        .with("lessons/draw.svg", "<svg/>")
        .with("lessons/unused.png", PNG)
        .append(CHOOSING, "\n![Skin](skin.png) [the same](skin.png)\n\n![Layers](../draw.svg)\n");
    let course = fixture.load().course.expect("a valid course");
    assert_eq!(course.assets, [asset("draw.svg", b"<svg/>"), asset("first-steps/skin.png", PNG)]);
    let changed = fixture.with("lessons/draw.svg", "<svg />").load().course.expect("a valid course");
    assert_ne!(course.version, changed.version, "a picture counts");
    let unused = changed.version;
    let fixture = Fixture::minimal()
        .with("lessons/first-steps/skin.png", PNG)
        .with("lessons/draw.svg", "<svg />")
        .append(CHOOSING, "\n![Skin](skin.png) [the same](skin.png)\n\n![Layers](../draw.svg)\n");
    let course = fixture.load().course.expect("a valid course");
    assert_eq!(course.version, unused, "what no page refers to does not count");
}

#[test]
fn files_that_a_page_cannot_show_or_offer() {
    let fixture = Fixture::minimal()
        .with("lessons/page.html", "x")
        .with("lessons/draw.svg", "<svg/>")
        .with("lessons/sheet.pdf", "%PDF-1.7")
        .append(WELCOME, "\n[a](page.html) [b](draw.svg)\n\n![c](sheet.pdf) [d](goals.yaml)\n");
    assert_snapshot!(fixture.told_briefly(), @r"
        lessons/welcome.md:5:1: `lessons/page.html` is no file that a page can offer
            pages link to pages (`.md`), to pictures, and to `.pdf`, `.csv`, `.tsv`, `.txt`, `.ods`, `.odt`, `.odp`, `.xlsx`, `.docx`, `.pptx`, `.zip`
        lessons/welcome.md:5:16: a link to the drawing `lessons/draw.svg`, which could hold scripts
            show it in the page, where it runs nothing: `![what is to be seen](drawing.svg)`
        lessons/welcome.md:7:1: `lessons/sheet.pdf` is no picture that a page can show
            pictures end in `.png`, `.jpg`, `.jpeg`, `.webp`, `.gif`, `.avif`, `.svg`
        lessons/welcome.md:7:17: `lessons/goals.yaml` is no file that a page can offer
            pages link to pages (`.md`), to pictures, and to `.pdf`, `.csv`, `.tsv`, `.txt`, `.ods`, `.odt`, `.odp`, `.xlsx`, `.docx`, `.pptx`, `.zip`
    ");
}

#[test]
fn drawings_that_would_act_where_they_are_opened_by_themselves() {
    let svg = |inside| format!("<svg xmlns=\"http://www.w3.org/2000/svg\">\n{inside}\n</svg>");
    let fixture = Fixture::minimal()
        .with("lessons/good.svg", svg("<circle r='9'/>"))
        .with("lessons/script.svg", svg("<script>alert(1)</script>"))
        .with("lessons/event.svg", svg("<g onload='alert(1)'/>"))
        .with("lessons/broken.svg", svg("<g>"))
        .append(WELCOME, "\n![a](good.svg) ![b](script.svg)\n\n![c](event.svg)\n\n![d](broken.svg)\n");
    assert_snapshot!(fixture.told_briefly(), @r"
        lessons/welcome.md:5:16: `lessons/script.svg` is more than a drawing: an element `script` in line 2
            opened by itself it would act in the reader's browser: export it anew as plain SVG, without scripts, links, animation and linked files, or as a PNG
        lessons/welcome.md:7:1: `lessons/event.svg` is more than a drawing: an attribute `onload`, which reacts to events, in line 2
            opened by itself it would act in the reader's browser: export it anew as plain SVG, without scripts, links, animation and linked files, or as a PNG
        lessons/welcome.md:9:1: `lessons/broken.svg` is more than a drawing: expected 'g' tag, not 'svg' at 3:1
            opened by itself it would act in the reader's browser: export it anew as plain SVG, without scripts, links, animation and linked files, or as a PNG
    ");
}

#[test]
fn files_that_are_not_what_their_names_say() {
    let fixture = Fixture::minimal()
        .with("lessons/skin.png", "<script>")
        .append(WELCOME, "\n![Skin](skin.png) and ![again](skin.png)\n");
    assert_snapshot!(fixture.told(), @r"
        error: `lessons/skin.png` is no PNG file, whatever its name says
         --> lessons/welcome.md:5:1
          |
        5 | ![Skin](skin.png) and ![again](skin.png)
          | ^^^^^^^^^^^^^^^^^
          |
          = help: save it anew in that format, or give it the ending of the format that it is in

        1 error, 0 warnings
    ");
}

#[test]
fn a_picture_that_is_too_large() {
    let picture = |length: usize| [PNG, &vec![0; length - PNG.len()]].concat();
    let with = |length| {
        Fixture::minimal()
            .with("lessons/skin.png", picture(length))
            .append(WELCOME, "\n![Skin](skin.png)\n")
            .told()
    };
    assert_eq!(with(4_000_000), "");
    assert_snapshot!(with(4_000_001), @r"
        error: `lessons/skin.png` is 4000001 bytes long; at most 4000000 are read
         --> lessons/welcome.md:5:1
          |
        5 | ![Skin](skin.png)
          | ^^^^^^^^^^^^^^^^^
          |
          = help: save it smaller: a picture of 1600 pixels across fills any page

        1 error, 0 warnings
    ");
}

#[cfg(unix)]
#[test]
fn a_picture_that_is_a_link() {
    let fixture = Fixture::minimal()
        .with("lessons/real.png", PNG)
        .append(WELCOME, "\n![Skin](linked.png) ![Far](far.png)\n");
    std::os::unix::fs::symlink("real.png", fixture.path("lessons/linked.png")).expect("a link");
    std::os::unix::fs::symlink("../../far.png", fixture.path("lessons/far.png")).expect("a link");
    std::fs::write(fixture.path("../far.png"), PNG).expect("a file");
    assert_snapshot!(fixture.told_briefly(), @"lessons/far.png:1:1: a link that leaves the course folder");
}

#[test]
fn blocks_in_the_wrong_place() {
    assert_snapshot!(welcome("```drill\nfirst-choice\n```"), @r"
        lessons/welcome.md:6:1: a drill on a page that is no lesson
            only lessons have drills
    ");
    assert_snapshot!(welcome("- an item\n\n  ```drill\n  first-choice\n  ```"), @r"
        lessons/welcome.md:7:3: a block `drill` inside a list or a quotation
            begin its first line at the margin, after an empty line
    ");
    assert_snapshot!(welcome("> ```foresee\n> caption: x\n> ```"), @r"
        lessons/welcome.md:5:3: a block `foresee` inside a list or a quotation
            begin its first line at the margin, after an empty line
    ");
}

#[test]
fn blocks_of_the_wrong_form() {
    assert_snapshot!(welcome("```drills\nfirst-choice\n```"), @r"
        lessons/welcome.md:5:1: a block `drills` is shown as it is written
            did you mean `drill`, and nothing after it?
    ");
    assert_snapshot!(welcome("```drill first-choice\n```"), @r"
        lessons/welcome.md:5:1: a block `drill first-choice` is shown as it is written
            did you mean `drill`, and nothing after it?
    ");
    assert_snapshot!(welcome("```drill\n```"), @r"
        lessons/welcome.md:5:1: this block names no drill
            write the id of one drill in it
    ");
    assert_snapshot!(welcome("```drill\nfirst-choice\nlight-check\n```"), @r"
        lessons/welcome.md:6:1: this block holds more than the id of one drill
            write one block for each drill
    ");
    assert_snapshot!(welcome("```drill\nfirst-choice"), @r"
        lessons/welcome.md:5:1: the block `drill` is never closed
            end it with a line of three backticks
    ");
}

#[test]
fn mistakes_in_swatches_are_shown_in_the_page() {
    let fixture = Fixture::minimal()
        .replace(CHOOSING, "depth_mm: 0.4", "depth_mm: 0.4 mm")
        .replace(CHOOSING, "    light: A", "    lihgt: A")
        .replace(
            CHOOSING,
            "client: ruvan\n  - label: With",
            "client: ruven\n    coverage: 0.5\n  - label: With",
        )
        .replace(CHOOSING, "glowen: 1", "glown: 1");
    assert_snapshot!(fixture.told(), @r"
        error: there is no client `ruven`
          --> lessons/first-steps/choosing.md:11:13
           |
        11 |     client: ruven
           |             ^^^^^
           |
           = help: did you mean `ruvan`?

        warning: `coverage` means nothing without a `mix`
          --> lessons/first-steps/choosing.md:12:5
           |
        12 |     coverage: 0.5
           |     ^^^^^^^^
           |
           = help: add a `mix`, or remove the key

        error: there is no bottle `glown`
          --> lessons/first-steps/choosing.md:15:23
           |
        15 |     mix: {umberly: 5, glown: 1}
           |                       ^^^^^
           |
           = help: did you mean `glowen`?

        error: `depth_mm` is a plain number in mm, because the key carries the unit
          --> lessons/first-steps/choosing.md:17:15
           |
        17 |     depth_mm: 0.4 mm
           |               ^^^^^^
           |
           = help: write `depth_mm: 0.4`

        error: unknown key `lihgt` in a swatch
          --> lessons/first-steps/choosing.md:18:5
           |
        18 |     lihgt: A
           |     ^^^^^
           |
           = help: did you mean `light`? The keys here are `label`, `client`, `bare`, `mix`, `months`, `depth_mm`, `thickness_mm`, `load`, `coverage`, `technique`, `light`

        4 errors, 1 warning
    ");
}

#[test]
fn swatches_that_are_no_yaml() {
    assert_snapshot!(welcome("```foresee\ncaption: a: b\n```"), @r"
        lessons/welcome.md:6:11: a second colon in this line, or a key that is indented too far
            put a text that holds a colon in quotes; keys that belong together begin in the same column
    ");
    assert_snapshot!(welcome("```foresee\n```"), @r"
        lessons/welcome.md:6:4: there is nothing in here
            fill it, or remove it
    ");
    assert_snapshot!(welcome("```foresee\ncaption: x\nshow: []\n```"), @"lessons/welcome.md:7:7: `show` of a foresee block is empty");
    assert_snapshot!(welcome("```foresee\ncaption: x\nshow:\n  - {label: a, client: ruvan, mix: {}}\n```"), @r"
        lessons/welcome.md:8:36: nothing is in here
            a mix gives drops by bottle: `{dunmere: 6}`
    ");
}
