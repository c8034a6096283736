//! What is right loads, and becomes what it says.

use super::fixture::{Fixture, files_of, minimal};
use healedhue::colour::Light;
use healedhue::course::{Block, Course, Family, load};
use healedhue::healing::Placement;
use healedhue::pigment::Mix;
use healedhue::skin::{Phototype, Redness, Site, Skin, Undertone};
use insta::{assert_debug_snapshot, assert_snapshot};
use std::path::Path;

const RUVAN: &str = "lessons/clients/ruvan.yaml";

fn course() -> Course {
    load(&minimal()).course.expect("the minimal course is valid")
}

#[test]
fn nothing_is_wrong_with_the_minimal_course() {
    assert_eq!(Fixture::minimal().told(), "");
}

#[test]
fn the_demo_course_has_no_errors() {
    let loaded = load(Path::new(env!("CARGO_MANIFEST_DIR")));
    assert!(loaded.course.is_some(), "{}", healedhue::course::report(&loaded.diagnostics, false));
}

#[test]
fn manifest_and_order() {
    let course = course();
    let pages = course.modules.iter().map(|module| &module.page);
    let lessons = course.lessons().map(|(_, lesson)| &lesson.page);
    let order: Vec<_> =
        course.prefix.iter().chain(pages).chain(lessons).map(|page| (&page.title, &page.path)).collect();
    assert_debug_snapshot!(
        (&course.title, &course.description, &course.authors, course.language.tag(), course.seed, order),
        @r#"
        (
            "A small course",
            "As little as a course can be.",
            [
                "Ferrow Academy",
            ],
            "en-GB",
            7,
            [
                (
                    "Welcome",
                    "welcome",
                ),
                (
                    "First steps",
                    "first-steps/module",
                ),
                (
                    "Light and skin",
                    "first-steps/light",
                ),
                (
                    "Choosing",
                    "first-steps/choosing",
                ),
                (
                    "Correcting",
                    "first-steps/correcting",
                ),
            ],
        )
    "#
    );
}

#[test]
fn text_is_cut_at_drills_and_swatches() {
    let course = course();
    let (_, light) = course.lesson("light").expect("the lesson");
    // The definition of the link stands in the second piece and is given to the first as well.
    assert_debug_snapshot!(light.page.blocks, @r#"
        [
            Text(
                "Skin is a [filter][a]. See the [standard](https://cie.co.at) and *then* try:\n\n[a]: ../welcome.md\n",
            ),
            Drill(
                "light-check",
            ),
            Text(
                "After the questions, go on to [choosing](choosing.md#choosing \"next\").\n\n[a]: ../welcome.md\n",
            ),
        ]
    "#);
}

#[test]
fn swatches_have_the_usual_placement_unless_they_say_otherwise() {
    let course = course();
    let (_, choosing) = course.lesson("choosing").expect("the lesson");
    let [Block::Text(table), Block::Foresee(foresee), Block::Drill(drill)] = &choosing.page.blocks[..] else {
        panic!("{:?}", choosing.page.blocks);
    };
    assert!(table.starts_with("| bottle |"), "{table}");
    assert_eq!(drill, "first-choice");
    assert_eq!(foresee.caption, "Two swatches");
    let [bare, mixed] = &foresee.show[..] else { panic!("{foresee:?}") };
    let usual = Placement::default();
    assert_eq!((bare.label.as_str(), bare.client.as_str(), &bare.mix), ("Bare", "ruvan", &None));
    assert_eq!((bare.placement, bare.months, bare.light), (usual, 1.5, Light::D65));
    assert_eq!(mixed.mix, Some(Mix::new([("umberly".to_owned(), 5), ("glowen".to_owned(), 1)])));
    assert_eq!((mixed.placement, mixed.months), (Placement { depth_mm: 0.4, ..usual }, 12.0));
    assert_eq!((mixed.bare, mixed.light), (false, Light::A));
}

#[test]
fn a_client_becomes_a_skin_with_its_oldest_work_first() {
    let course = course();
    let silka = course.client("silka").expect("the client");
    assert_eq!(silka.site, Site::Brow);
    assert_eq!(silka.skin, Skin::from_evidence(Phototype::III, Undertone::Warm, Redness::Rosy));
    let months: Vec<f64> = silka.existing.iter().map(|old| old.work.months).collect();
    assert_eq!(months, [80.0, 20.0]);
    let first = &silka.existing[0];
    // By place on the shelf (PR101 before PY42), although written the other way round.
    assert_eq!(first.work.paint, [(0, 0.3), (1, 0.05)]);
    assert_eq!(first.placement, Placement { depth_mm: 0.5, ..Placement::default() });
    let second = &silka.existing[1];
    let mix = second.mix.as_ref().expect("the mix is known");
    assert_eq!(second.work.paint, course.shelf.paint_of(mix));
}

#[test]
fn work_in_a_scar_lies_in_a_scar() {
    let fixture = Fixture::minimal().replace(RUVAN, "redness: calm}", "redness: calm, scar: true}");
    let course = fixture.load().course.expect("a course");
    let ruvan = course.client("ruvan").expect("the client");
    let around = Skin::from_evidence(Phototype::II, Undertone::Neutral, Redness::Calm);
    assert!(ruvan.scar);
    assert_eq!(ruvan.skin, around.scarred());
    assert_eq!(ruvan.skin_with(ruvan.undertone, ruvan.redness), ruvan.skin);
    assert!(!course.client("silka").expect("the client").scar);
}

#[test]
fn a_recipe_is_parts_of_its_strength() {
    let course = course();
    let amounts = |id: &str| course.shelf.bottle(id).expect("the bottle").recipe.clone();
    assert_eq!(amounts("umberly"), [(0, 0.2), (1, 0.6000000000000001)]);
    assert_eq!(amounts("tawnell"), [(0, 0.5), (1, 0.5)]);
}

#[test]
fn a_drill_without_bottles_has_every_plain_bottle_that_nothing_restricts() {
    let course = course();
    let (_, drill) = course.drill("old-brows").expect("the drill");
    assert_eq!(drill.limits.bottles, ["umberly", "tawnell"], "inkmere is restricted");
    assert_eq!(drill.limits.modifiers, [""; 0]);
    assert_eq!((drill.limits.drops, drill.limits.modifier_drops), (4, 0));
    assert_eq!((drill.family, drill.judged.light, drill.margin), (Family::Remedy, Light::D65, 3.0));
    assert_eq!(drill.stands_at, "lessons/first-steps/correcting.yaml:7:5");
}

#[test]
fn lists_are_in_a_stable_order() {
    let course = course();
    let ids = |ids: Vec<&str>| ids.join(" ");
    assert_snapshot!(
        [
            ids(course.clients.iter().map(|client| client.id.as_str()).collect()),
            ids(course.skills.iter().map(|skill| skill.id.as_str()).collect()),
            ids(course.terms.iter().map(|term| term.id.as_str()).collect()),
            ids(course.shelf.bottles.iter().map(|bottle| bottle.id.as_str()).collect()),
        ]
        .join("\n"),
        @r"
        ruvan silka
        foresee choose
        brown filter
        umberly tawnell glowen inkmere
    "
    );
}

#[test]
fn the_version_changes_with_every_file_and_with_nothing_else() {
    let version = |fixture: &Fixture| fixture.load().course.expect("a valid course").version;
    let before = version(&Fixture::minimal());
    assert_eq!(before.len(), 64);
    assert_eq!(before, version(&Fixture::minimal()), "two copies of a course are one version");
    assert_eq!(
        before,
        version(&Fixture::minimal().with("lessons/.draft.yaml", "x")),
        "hidden files do not count"
    );
    for (path, _) in files_of(&minimal()) {
        let changed = Fixture::minimal().append(&path, "\n");
        assert_ne!(before, version(&changed), "{path} counts");
    }
}

#[test]
fn line_breaks_of_windows_and_byte_order_marks_are_accepted() {
    let mut fixture = Fixture::minimal();
    for (path, content) in files_of(&minimal()) {
        let text = String::from_utf8(content).expect("text").replace('\n', "\r\n");
        fixture = fixture.with(&path, format!("\u{feff}{text}"));
    }
    assert_eq!(fixture.told(), "");
    let course = fixture.load().course.expect("a valid course");
    let texts =
        |course: &Course| format!("{:?}", course.lessons().map(|(_, l)| &l.page.blocks).collect::<Vec<_>>());
    assert_eq!(texts(&course), texts(&self::course()));
}

#[test]
fn places_are_right_with_line_breaks_of_windows() {
    let fixture = Fixture::minimal()
        .with("lessons/skills.yaml", "\u{feff}skills:\r\n  - id: foresee\r\n    nam: é\r\n");
    let first =
        fixture.load().diagnostics.into_iter().find(|d| d.file == "lessons/skills.yaml").expect("a problem");
    assert_eq!((first.line, first.column), (3, 5));
}

#[test]
fn a_text_keeps_what_yaml_would_take_for_something_else() {
    let fixture = Fixture::minimal().replace("lessons/bank/light.yaml", "say: Clear", "say: No");
    let course = fixture.load().course.expect("a valid course");
    assert_eq!(course.questions[0].options()[1].say, "No");
}

#[test]
fn a_page_is_not_cut_inside_other_code() {
    let fixture = Fixture::minimal()
        .append("lessons/welcome.md", "\n```yaml\ndrill: x\n```\n\n    ```drill\n    light-check\n    ```\n");
    let course = fixture.load().course.expect("a valid course");
    assert_eq!(course.prefix[0].blocks.len(), 1);
    assert!(matches!(course.prefix[0].blocks[0], Block::Text(_)));
}
