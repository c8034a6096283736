//! Courses to build sites of: the demo, and a tiny one made by hand whose numbers do not follow the engine.

use crate::proofs::{PROOFS, keep};
use healedhue::colour::{BANDS, Lab, Light};
use healedhue::course::{
    Block, Caution, CautionAction, Client, Course, Drill, Family, Foresee, Goal, HealthNote, Judged, Lesson,
    Limits, Misconception, Module, OldWork, Page, Rule, Show, Skill, SkinAsks, SourceBasis, SourceEntry,
    SourceKind, Technique, Term, load,
};
use healedhue::exercise::{
    Action, Case, CaseGoal, Choice, Exercise, Form, Mark, OneOf, Placed, Pools, Proof, RunnerUp, pools_from,
};
use healedhue::healing::{Appearance, Placement, Reading, Tone, Work};
use healedhue::language::Language;
use healedhue::pigment::{Basis, Bottle, Colourant, ColourantClass, Line, Mix, Restriction, Shelf};
use healedhue::render::build_site;
use healedhue::skin::{Phototype, Redness, Site, Skin, Undertone};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::sync::LazyLock;

/// A placement of the usual size.
const PLACEMENT: Placement = Placement { depth_mm: 0.15, thickness_mm: 0.3, load: 1.0, coverage: 0.85 };

/// The demo course with its exercises.
pub static DEMO: LazyLock<(Course, Pools)> = LazyLock::new(|| {
    let loaded = load(Path::new(env!("CARGO_MANIFEST_DIR")));
    let course = loaded.course.unwrap_or_else(|| panic!("{:?}", loaded.diagnostics));
    let pools = pools_from(&course, &PROOFS, |_, _| ()).unwrap_or_else(|errors| panic!("{errors:?}"));
    keep();
    (course, pools)
});

/// The files of the demo course's site.
pub static DEMO_SITE: LazyLock<BTreeMap<String, Vec<u8>>> = LazyLock::new(|| {
    let folder = tempfile::tempdir().unwrap();
    let (course, pools) = &*DEMO;
    let written = build_site(course, pools, &folder.path().join("site")).unwrap();
    let files = files(&folder.path().join("site"));
    assert_eq!(written.pages, pages(&files).len());
    files
});

/// Every file of a folder by its path, with `/` on every system.
pub fn files(folder: &Path) -> BTreeMap<String, Vec<u8>> {
    let mut found = BTreeMap::new();
    add_files(folder, "", &mut found);
    found
}

fn add_files(folder: &Path, prefix: &str, found: &mut BTreeMap<String, Vec<u8>>) {
    for entry in fs::read_dir(folder).unwrap().map(Result::unwrap) {
        let path = format!("{prefix}{}", entry.file_name().to_str().unwrap());
        if entry.file_type().unwrap().is_dir() {
            add_files(&entry.path(), &format!("{path}/"), found);
        } else {
            found.insert(path, fs::read(entry.path()).unwrap());
        }
    }
}

/// Every page among these files.
pub fn pages(files: &BTreeMap<String, Vec<u8>>) -> BTreeMap<String, String> {
    let html = files.iter().filter(|(path, _)| path.ends_with(".html"));
    html.map(|(path, content)| (path.clone(), String::from_utf8(content.clone()).unwrap())).collect()
}

/// The files of the site of a course.
pub fn built((course, pools): &(Course, Pools)) -> BTreeMap<String, Vec<u8>> {
    let folder = tempfile::tempdir().unwrap();
    build_site(course, pools, &folder.path().join("site")).unwrap();
    files(&folder.path().join("site"))
}

/// A tiny course with one exercise about a client. Every text an author could write goes through `say`.
pub fn tiny(say: impl Fn(&str) -> String) -> (Course, Pools) {
    let say = &say;
    let course = Course {
        title: say("A tiny course"),
        description: say("About one brow."),
        authors: vec![say("The Academy")],
        language: Language::of("en"),
        seed: 1,
        strict: false,
        version: "0123456789abcdef".into(),
        prefix: vec![page(
            &say("Welcome"),
            "welcome",
            vec![Block::Text(say("See [the lesson](one/first.md#why)."))],
        )],
        modules: vec![module(say)],
        shelf: shelf(say),
        clients: vec![client(say)],
        goals: vec![goal(say)],
        skills: vec![Skill { id: "choose".into(), name: say("Choose a bottle") }],
        cautions: vec![Caution {
            id: "allergy".into(),
            name: say("Allergy"),
            say: say("Ask about it."),
            action: CautionAction::Refer,
            refer_to: say("a doctor"),
            not_met_by: Vec::new(),
            source: say("common practice, no source"),
        }],
        misconceptions: vec![Misconception {
            id: "darker-hides-it".into(),
            belief: say("Darker hides it."),
            tempting: say("It does on the day."),
            truth: say("It heals cold."),
            rule: Rule::CoverUp,
            lesson: "first".into(),
        }],
        terms: vec![Term {
            id: "hue".into(),
            term: say("hue"),
            forms: Vec::new(),
            not_in: Vec::new(),
            means: say("A direction."),
            see: vec!["hue".into()],
        }],
        questions: Vec::new(),
        blueprints: Vec::new(),
        sources: vec![SourceEntry {
            id: "rule".into(),
            title: say("An invented rule"),
            by: say("Nobody, 2020"),
            kind: SourceKind::Regulation,
            took: say("What may not be used."),
            basis: SourceBasis::Representative,
        }],
        assets: Vec::new(),
    };
    let pools = Pools::from([("brow".to_owned(), vec![exercise(say)])]);
    (course, pools)
}

fn page(title: &str, path: &str, blocks: Vec<Block>) -> Page {
    Page { title: title.to_owned(), path: path.into(), anchor: "title".into(), blocks }
}

fn module(say: &dyn Fn(&str) -> String) -> Module {
    let show = Show {
        label: say("On the brow"),
        client: "wren".into(),
        bare: false,
        mix: Some(mix(6)),
        months: 1.5,
        placement: PLACEMENT,
        technique: Technique::default(),
        light: Light::A,
    };
    let blocks = vec![
        Block::Text(format!("## Why\n\n{}\n\n> **Caution.** Wait.\n", say("Because."))),
        Block::Foresee(Foresee { caption: say("One brow"), show: vec![show] }),
        Block::Drill("brow".into()),
    ];
    let drill = Drill {
        id: "brow".into(),
        family: Family::Remedy,
        skill: "choose".into(),
        exercises: 1,
        options: 3,
        clients: vec!["wren".into()],
        goals: Vec::new(),
        further_goals: false,
        limits: Limits { bottles: vec!["fallow".into()], modifiers: Vec::new(), drops: 6, modifier_drops: 0 },
        judged: Judged { months: 1.5, light: Light::D65 },
        tempts: vec!["darker-hides-it".into()],
        margin: 3.0,
        difficulty: None,
        ages_months: vec![],
        skin_asks: SkinAsks::Reading,
        questions: Vec::new(),
        stands_at: "lessons/one/first.yaml:1:1".into(),
    };
    let lesson = Lesson {
        id: "first".into(),
        page: page(&say("The first lesson"), "one/first", blocks),
        objectives: vec![say("Choose for one brow")],
        minutes: 15,
        needs: Vec::new(),
        skills: vec!["choose".into()],
        drills: vec![drill],
    };
    Module {
        id: "one".into(),
        about: say("All there is."),
        page: page(&say("The only module"), "one/module", vec![Block::Text(say("Begin."))]),
        teaching: Some(page(
            &say("Teaching note"),
            "one/teaching",
            vec![Block::Text(format!(
                "{}\n\nSee [the lesson](first.md#why).\n",
                say("Let them look first.")
            ))],
        )),
        lessons: vec![lesson],
    }
}

fn shelf(say: &dyn Fn(&str) -> String) -> Shelf {
    let colourant = Colourant {
        id: "PBk7".into(),
        ci_number: "77266".into(),
        name: say("carbon black"),
        class: ColourantClass::Carbon,
        absorption: [20.0; BANDS],
        scattering: [1.0; BANDS],
        half_life_months: 200.0,
        drift_mm: 0.25,
        basis: Basis::Representative,
        note: say("Stays."),
        restrictions: vec![Restriction {
            place: say("Fernmark"),
            rule: say("not on eyelids"),
            since: "2020-01-01".into(),
            source: say("an invented rule"),
        }],
        of_bottle: None,
    };
    let bottle = Bottle {
        id: "fallow".into(),
        name: say("Fallow"),
        about: say("Brown."),
        recipe: vec![(0, 1.0)],
        modifier: None,
        line: Some("hedge".into()),
        sites: vec![Site::Brow, Site::Scalp],
    };
    let line = Line { id: "hedge".into(), name: say("Hedge"), about: say("Plain.") };
    Shelf { colourants: vec![colourant], bottles: vec![bottle], lines: vec![line] }
}

fn client(say: &dyn Fn(&str) -> String) -> Client {
    let placement = PLACEMENT;
    Client {
        id: "wren".into(),
        name: say("Wren"),
        age: 40,
        about: say("Fair skin."),
        phototype: Phototype::II,
        undertone: Undertone::Neutral,
        redness: Redness::Calm,
        scar: false,
        skin: Skin::from_evidence(Phototype::II, Undertone::Neutral, Redness::Calm),
        site: Site::Brow,
        hair: say("brown"),
        wish: say("Something quiet."),
        goal: "brown".into(),
        further_goals: Vec::new(),
        health: vec![HealthNote { caution: Some("allergy".into()), note: say("None known.") }],
        existing: vec![OldWork {
            work: Work { paint: vec![(0, 0.1)], placement, months: 36.0 },
            mix: None,
            placement,
            technique: Technique::default(),
            note: say("A faint grey."),
        }],
    }
}

fn goal(say: &dyn Fn(&str) -> String) -> Goal {
    Goal {
        id: "brown".into(),
        name: say("Brown"),
        hair: say("brown"),
        lab: Lab::new(45.0, 8.0, 14.0),
        tolerance: 4.0,
    }
}

fn mix(drops: u32) -> Mix {
    Mix::new([("fallow".to_owned(), drops)])
}

/// Words that the engine has no part in.
fn reading() -> Reading {
    Reading { depth: "deeper than the skin", tone: Tone::Ashy, words: "deeper than the skin, ashy".into() }
}

/// An appearance that the engine has no part in: the same reflectance at every wavelength.
fn grey(reflectance: f64) -> Appearance {
    Appearance::of([reflectance; BANDS], Light::D65)
}

fn exercise(say: &dyn Fn(&str) -> String) -> Exercise {
    let (bare, now) = (grey(0.4), grey(0.3));
    let choice =
        |label: &str, action: Action, healed: Option<Appearance>, error: Option<f64>, credit: f64| Choice {
            label: say(label),
            action,
            work: None,
            healed,
            reading: healed.map(|_| reading()),
            error,
            mark: Mark {
                credit,
                consequence: say(&format!("What follows from {}.", label.to_lowercase())),
                misconception: (credit < 1.0).then(|| "darker-hides-it".to_owned()),
                lesson: "first".into(),
            },
        };
    Exercise {
        drill: "brow".into(),
        number: 0,
        family: Family::Remedy,
        skill: "choose".into(),
        lesson: "first".into(),
        ask: say("What do you do?"),
        case: Some(Case {
            client: "wren".into(),
            goal: Some(CaseGoal { id: "brown".into(), lab: Lab::new(45.0, 8.0, 14.0), tolerance: 4.0 }),
            placed: Some(Placed { placement: PLACEMENT, months: 1.5 }),
            light: Light::D65,
            bare,
            now,
            now_reading: reading(),
            exhibits: Vec::new(),
            skin_is_told: true,
            device_reads: false,
        }),
        form: Form::One(OneOf {
            options: vec![
                choice("6 drops Fallow", Action::Place(mix(6)), Some(grey(0.1)), Some(9.25), 0.4),
                choice("1 drop Fallow", Action::Place(mix(1)), Some(grey(0.2)), Some(1.5), 1.0),
                choice("Refer", Action::Refer, None, None, 0.0),
            ],
            key: 1,
            pictured: false,
        }),
        proof: Some(Proof {
            searched: 7,
            best_error: 1.5,
            as_it_is: None,
            margin: Some(7.75),
            worlds: 200,
            held: 199,
            runners_up: vec![RunnerUp { label: say("6 drops Fallow"), error: 9.25 }],
            discarded: 0,
        }),
        source: say("computed by the engine"),
        written: None,
    }
}
