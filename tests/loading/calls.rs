//! Calls in the text of pages: what they come to, what is wrong with them, and numbers that should have been calls.

use super::fixture::Fixture;
use healedhue::colour::{Light, difference};
use healedhue::course::{Block, Course, Foreseen, Show, Technique, foresee_on};
use healedhue::healing::{HEALED_MONTHS, Placement, Tone, retention};
use healedhue::pigment::Mix;
use healedhue::skin::ita_degrees;
use insta::assert_snapshot;

const WELCOME: &str = "lessons/welcome.md";

/// What an author is told of a page that says this.
fn told(text: &str) -> String {
    Fixture::minimal().append(WELCOME, &format!("\n{text}\n")).told_briefly()
}

fn course_with(text: &str) -> Course {
    let fixture = Fixture::minimal().append(WELCOME, &format!("\n{text}\n"));
    let loaded = fixture.load();
    loaded.course.unwrap_or_else(|| panic!("{:?}", loaded.diagnostics))
}

/// The text of the page before the modules.
fn said(text: &str) -> String {
    let course = course_with(text);
    let block = |block: &Block| match block {
        Block::Text(text) => text.clone(),
        _ => String::new(),
    };
    course.prefix[0]
        .blocks
        .iter()
        .map(block)
        .collect::<String>()
        .trim()
        .lines()
        .last()
        .unwrap_or_default()
        .to_owned()
}

/// The engine's own answer, by the way that swatches take.
fn seen(course: &Course, mix: &[(&str, u32)], months: f64, light: Light, bare: bool) -> Foreseen {
    let mix = Mix::new(mix.iter().map(|(bottle, drops)| ((*bottle).to_owned(), *drops)));
    let show = Show {
        label: String::new(),
        client: "ruvan".into(),
        bare,
        mix: (mix.total() > 0).then_some(mix),
        months,
        placement: Placement::default(),
        technique: Technique::default(),
        light,
    };
    foresee_on(&course.shelf, course.client("ruvan").expect("a client"), &show)
}

#[test]
fn calls_say_what_the_engine_computes() {
    let course = course_with("");
    let healed = seen(&course, &[("umberly", 5), ("glowen", 1)], HEALED_MONTHS, Light::D65, false);
    let later = seen(&course, &[("umberly", 6)], 60.0, Light::A, true);
    let skin = seen(&course, &[], HEALED_MONTHS, Light::D65, true).bare.lab;
    let red = &course.shelf.colourants[course.shelf.colourant_place("PR101").expect("a colourant")];
    for (call, answer) in [
        (r#"healed("ruvan", "umberly 5, glowen 1").L"#, format!("{:.1}", healed.seen.lab.l)),
        (r#"healed(client="ruvan", mix="glowen 1, umberly 5").a"#, String::new()),
        (r#"healed("ruvan", mix="umberly 5,glowen 1").a"#, format!("{:.1}", healed.seen.lab.a)),
        (r#"healed("ruvan", "umberly 5, glowen 1") . words"#, healed.reading.words.clone()),
        (r#"healed("ruvan", "umberly 5, glowen 1").tone"#, healed.reading.tone.word().to_owned()),
        (r#"healed("ruvan", "umberly 6", months=60, light="A").b"#, format!("{:.1}", later.seen.lab.b)),
        (
            r#"healed("ruvan", "umberly 6", months=60, light="A").chroma|digits(2)"#,
            format!("{:.2}", later.seen.lab.chroma()),
        ),
        (r#"bare("ruvan").hue"#, format!("{:.1}", skin.hue_degrees())),
        (r#"ita("ruvan") | digits(0)"#, format!("{:.0}", ita_degrees(skin))),
        (r#"digits(bare("ruvan").ita, 0)"#, format!("{:.0}", ita_degrees(skin))),
        (
            r#"difference(healed("ruvan", "umberly 5, glowen 1"), bare("ruvan"))"#,
            format!("{:.1}", difference(healed.seen.lab, skin)),
        ),
        (r#"bottle("umberly 1").L"#, {
            format!("{:.1}", course.shelf.label_colour(&Mix::new([("umberly".to_owned(), 1)])).l)
        }),
        (r#"goal("soft-brown").a"#, "8.5".to_owned()),
        (r#"goal("soft-brown").tolerance"#, "4.0".to_owned()),
        (r#"half_life("PR101") | digits(0)"#, "60".to_owned()),
        (r#"left("PR101", 24) | digits(0)"#, format!("{:.0}", 100.0 * retention(red, 24.0))),
        (r#"(100 * bare("ruvan").a / bare("ruvan").a) | digits(0)"#, "100".to_owned()),
        ("-3", "\u{2212}3".to_owned()),
        (r#"goal("soft-brown").a - 10"#, "\u{2212}1.5".to_owned()),
        (r#""a*b""#, "a\\*b".to_owned()),
    ] {
        if !answer.is_empty() {
            assert_eq!(said(&format!("So {{{{ {call} }}}} here.")), format!("So {answer} here."), "{call}");
        }
    }
}

#[test]
fn calls_may_run_over_a_line_and_stand_in_tables_and_lists() {
    let a = said("So {{ goal(\"soft-brown\")\n.a }} here.");
    assert_eq!(a, "So 8.5 here.");
    assert_eq!(said("| x | y |\n|---|---|\n| {{ goal(\"soft-brown\").L | digits(0) }} | z |"), "| 46 | z |");
    assert_eq!(said("- **{{goal(\"soft-brown\").L}}** and {{ 12 }}"), "- **46.0** and 12");
}

#[test]
fn code_and_escaped_braces_are_left_alone() {
    for text in ["`{{ nothing() }}`", "    {{ nothing() }}", "\\{{ nothing() }}", "``{{ ` }}``"] {
        assert_eq!(said(text).trim(), text.trim());
    }
    assert_eq!(told("```text\n{{ nothing() }}\n```"), "");
}

#[test]
fn wrong_calls() {
    assert_snapshot!(
        "a_call_about_nobody",
        Fixture::minimal().append(WELCOME, "\nIt is {{ healed(\"ruvam\", \"umberly 6\").L }}.\n").told()
    );
    let wrong = [
        "{{ heald(\"ruvan\").L }}",
        "{{ ruvan }}",
        "{{ healed(\"ruvan\", \"umbrely 6\").L }}",
        "{{ healed(\"ruvan\", \"umberly\").L }}",
        "{{ healed(\"ruvan\", \"umberly 60\").L }}",
        "{{ healed(\"ruvan\", \"umberly 2, umberly 3\").L }}",
        "{{ healed(\"ruvan\", \"umberly 6\", \"glowen 1\").L }}",
        "{{ healed(\"ruvan\", \"umberly 6\").l }}",
        "{{ healed(\"ruvan\", \"umberly 6\").warmth }}",
        "{{ healed(\"ruvan\", \"umberly 6\") }}",
        "{{ bare(\"ruvan\").words }}",
        "{{ bare(\"ruvan\").tolerance }}",
        "{{ bare(\"ruvan\", month=3).L }}",
        "{{ healed(\"ruvan\", \"umberly 6\", month=3).L }}",
        "{{ healed(\"ruvan\", \"umberly 6\", months=-3).L }}",
        "{{ healed(\"ruvan\", \"umberly 6\", months=\"3\").L }}",
        "{{ healed(\"ruvan\", \"umberly 6\", light=\"B\").L }}",
        "{{ healed(\"ruvan\", \"umberly 6\", depth_mm=9).L }}",
        "{{ healed(\"ruvan\", depth_mm=0.2).L }}",
        "{{ healed(ruvan).L }}",
        "{{ healed(3).L }}",
        "{{ healed().L }}",
        "{{ ita(\"ruvan\", light=\"A\") }}",
        "{{ goal(\"soft-brwn\").L }}",
        "{{ left(\"PR10\", 3) }}",
        "{{ difference(3, 4) }}",
        "{{ digits(3.14159, 9) }}",
        "{{ 1 / 0 }}",
        "{{ 1.5 / 0 }}",
        "{{ 3 +  }}",
        "{{ true }}",
        "{{ [1] }}",
        "{{ \"x\" | upper }}",
        "{{  }}",
        "{{ 3 ",
        "# A {{ 3 }} b",
    ];
    let all: Vec<String> =
        wrong.iter().map(|text| format!("{text}\n  {}", told(text).replace('\n', "\n  "))).collect();
    assert_snapshot!("wrong_calls", all.join("\n\n"));
}

#[test]
fn a_call_about_a_broken_file_is_no_mistake_of_its_own() {
    let told = Fixture::minimal()
        .replace("lessons/pigments/bottles.yaml", "name: Umberly", "nam: Umberly")
        .append(WELCOME, "\nIt is {{ healed(\"ruvan\", \"nothere 6\").L }}.\n")
        .told_briefly();
    assert!(!told.contains("welcome.md"), "{told}");
    let told = Fixture::minimal()
        .replace("lessons/clients/ruvan.yaml", "age: 34", "age: old")
        .append(WELCOME, "\nIt is {{ bare(\"ruvan\").L }}.\n")
        .told_briefly();
    assert!(!told.contains("welcome.md"), "{told}");
}

#[test]
fn numbers_about_clients_and_bottles_are_calls() {
    assert_snapshot!(
        "a_number_that_nothing_computes",
        Fixture::minimal().append(WELCOME, "\nRuvan's brow has an a\\* of about 12.\n").told()
    );
    assert_eq!(
        told("A meter says L\\* 62.\n\nRuvan sees an a\\* of {{ bare(\"ruvan\").a }}, or {{ 12 }}."),
        ""
    );
}

#[test]
fn claims_of_swatches_are_held_to() {
    let with = |claim: &str| {
        Fixture::minimal()
            .replace(
                "lessons/first-steps/choosing.md",
                "caption: Two swatches\n",
                &format!("caption: Two swatches\nholds:\n  - {claim}\n"),
            )
            .told_briefly()
    };
    assert_eq!(with("healed(\"ruvan\", \"umberly 6\").L < bare(\"ruvan\").L"), "");
    assert_eq!(with("0.9 * goal(\"soft-brown\").a < 8 and true"), "");
    let wrong = [
        "healed(\"ruvan\", \"umberly 6\").L > bare(\"ruvan\").L",
        "bare(\"ruvan\").L",
        "bare(\"ruvam\").L > 3",
        "bear(\"ruvan\").L > 3",
        "bare(\"ruvan\").L >",
        "healed(\"ruvan\", \"umberly 6\").tone == \"neutral brown\"",
        "'\"gray\" != healed(\"ruvan\", \"umberly 6\").tone'",
        "healed(\"ruvan\", \"umberly 6\").tone not in (\"neutral\", \"mauve\")",
        "healed(\"ruvan\", \"umberly 6\").words == \"dark\"",
    ];
    let all: Vec<String> = wrong.iter().map(|claim| with(claim)).collect();
    assert_snapshot!("wrong_claims", all.join("\n"));
}

/// What is read is said in the course's language; what is claimed holds in every one.
#[test]
fn claims_of_tones_hold_in_every_language() {
    let call = "healed(\"ruvan\", \"umberly 6\").tone";
    let seen = seen(&course_with(""), &[("umberly", 6)], HEALED_MONTHS, Light::D65, false).reading.tone;
    for language in ["en", "de"] {
        let fixture = |claim: &str| {
            Fixture::minimal()
                .replace("book.toml", "language = \"en-GB\"", &format!("language = \"{language}\""))
                .replace(
                    "lessons/first-steps/choosing.md",
                    "caption: Two swatches\n",
                    &format!("caption: Two swatches\nholds:\n  - {claim}\n"),
                )
        };
        for (tone, word) in Tone::ALL {
            let holds = fixture(&format!("'{call} == \"{}\"'", tone.id())).told_briefly();
            assert_eq!(holds.is_empty(), tone == seen, "{word} in {language}: {holds}");
            let other = fixture(&format!("'{call} != \"{}\"'", tone.id())).told_briefly();
            assert_eq!(other.is_empty(), tone != seen, "{word} in {language}: {other}");
        }
    }
}

#[test]
fn a_page_of_very_many_calls_is_refused() {
    let page = format!("\n{}\n", "{{ bare(\"ruvan\").L }} ".repeat(30_000));
    let told = Fixture::minimal().append(WELCOME, &page).told_briefly();
    assert!(told.contains("30000 calls on one page; at most 300 are answered"), "{told}");
}
