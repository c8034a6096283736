//! The demo course, loaded once for all tests.

use healedhue::colour::{Light, difference};
use healedhue::course::{Course, Family, load};
use healedhue::healing::{Placement, Reading, Scene, Tone};
use healedhue::pigment::Mix;
use healedhue::skin::Site;
use std::path::Path;
use std::sync::OnceLock;

/// The demo course of this repository.
pub fn course() -> &'static Course {
    static COURSE: OnceLock<Course> = OnceLock::new();
    COURSE.get_or_init(|| {
        let loaded = load(Path::new(env!("CARGO_MANIFEST_DIR")));
        loaded.course.unwrap_or_else(|| panic!("the demo course has errors: {:?}", loaded.diagnostics))
    })
}

/// Its only warnings are about the bottle that holds a restricted blue: it is there to be warned of.
#[test]
fn the_demo_course_has_no_problem_but_the_restricted_blue() {
    let loaded = load(Path::new(env!("CARGO_MANIFEST_DIR")));
    let messages: Vec<&String> = loaded.diagnostics.iter().map(|diagnostic| &diagnostic.message).collect();
    assert!(!messages.is_empty());
    assert!(messages.iter().all(|message| message.contains("PB15:3")), "{messages:?}");
}

#[test]
fn the_demo_course_is_as_large_as_promised() {
    let course = course();
    assert!(course.modules.len() >= 3 && course.lessons().count() >= 6);
    assert!(course.clients.len() >= 12);
    let phototypes: std::collections::BTreeSet<_> =
        course.clients.iter().map(|client| client.phototype).collect();
    assert_eq!(phototypes.len(), 6, "clients from phototype I to VI");
    assert!(course.shelf.colourants.len() >= 14);
    let (modifiers, bottles): (Vec<_>, Vec<_>) =
        course.shelf.bottles.iter().partition(|bottle| bottle.modifier.is_some());
    assert!(bottles.len() >= 24 && modifiers.len() >= 8);
    let since = |id: &str, day: &str| {
        let place = course.shelf.colourant_place(id).expect("the colourant is on the shelf");
        course.shelf.colourants[place].restrictions.iter().any(|rule| rule.since == day)
    };
    assert!(["PB15:3", "PG7"].iter().all(|id| since(id, "2023-01-04")), "REACH Annex XVII entry 75");
    assert!(["PY83", "PV23", "PR122", "PO13"].iter().all(|id| since(id, "2022-01-04")), "the same entry");
}

/// One bottle holds a restricted colourant, to be taught with; nothing else in the lines does.
#[test]
fn netherquill_alone_holds_something_restricted() {
    let shelf = &course().shelf;
    let holding: Vec<&str> = shelf
        .bottles
        .iter()
        .filter(|bottle| !shelf.restrictions_in(&bottle.recipe).is_empty())
        .map(|bottle| bottle.id.as_str())
        .collect();
    assert_eq!(holding, ["netherquill"]);
}

/// Two lines, one of oxides and one of carbon and organics, whose sisters heal alike and age apart.
#[test]
fn sisters_of_the_two_lines_heal_alike_and_age_apart() {
    let shelf = &course().shelf;
    let classes = |line: &str| -> std::collections::BTreeSet<&str> {
        let bottles = shelf.bottles.iter().filter(|bottle| bottle.line.as_deref() == Some(line));
        let used =
            bottles.flat_map(|bottle| bottle.recipe.iter().map(|&(place, _)| &shelf.colourants[place]));
        used.map(|colourant| colourant.class.words()).collect()
    };
    assert_eq!(
        shelf.lines.iter().map(|line| line.id.as_str()).collect::<Vec<_>>(),
        ["loamgate", "cindermarsh"]
    );
    assert!(shelf.bottles.iter().all(|bottle| bottle.line.is_some()), "every bottle belongs to a line");
    assert!(!classes("cindermarsh").contains("iron oxide") && classes("loamgate").contains("iron oxide"));
    let sisters = [
        ("dunmere", "linnetford"),
        ("kelderwick", "thrushcote"),
        ("quernstow", "rookhanger"),
        ("brindlefold", "siskinholt"),
        ("corrick", "robinscote"),
    ];
    // 1 ΔE00 is just visible side by side. Melanin veils what the years do, the more the deeper the skin.
    for (client, least) in [("tovi", 3.5), ("brisel", 3.5), ("delphen", 2.0)] {
        let client = course().client(client).expect("a client of the demo");
        let seen = |bottle: &str, months: f64| {
            let mix = Mix::new([(bottle.to_owned(), 6)]);
            let scene = Scene::new(shelf, &client.skin, client.site, &[], months);
            let reflectance = scene.with(&shelf.paint_of(&mix), &Placement::default());
            Light::D65.lab_of(&reflectance)
        };
        for (one, other) in sisters {
            let apart = [1.5, 60.0].map(|months| difference(seen(one, months), seen(other, months)));
            assert!(apart[0] < 0.5 && apart[1] > least, "{one} and {other} on {}: {apart:?}", client.id);
        }
    }
}

/// What may be drawn where a drill names no bottles is meant for the place where the client wants it.
#[test]
fn no_drill_draws_a_bottle_for_another_site_by_itself() {
    let (_, drill) = course().drill("foresee-six-weeks").expect("a drill that names no bottles");
    for lips_alone in ["orrindale", "pellowick", "stannerby", "merlehurst"] {
        assert!(!drill.limits.bottles.iter().any(|id| id == lips_alone), "{lips_alone} on a brow");
    }
    assert!(drill.limits.bottles.iter().any(|id| id == "thrushcote"));
}

/// Nobody is given a brow that the engine calls grey, blue, red or orange on their skin. A little ash is for goals that say so by their name.
#[test]
fn the_goals_of_brows_are_believable_on_the_skins_of_those_who_have_them() {
    let course = course();
    let mut cold = Vec::new();
    for client in course.clients.iter().filter(|client| client.site == Site::Brow) {
        let scene = Scene::today(&course.shelf, &client.skin, client.site, &[]);
        let bare = Light::D65.lab_of(&scene.bare());
        for id in client.further_goals.iter().chain([&client.goal]) {
            let tone = Reading::of(course.goal(id).unwrap().lab, bare, client.site).tone;
            let says_so = ["cool", "black", "ash"].iter().any(|word| id.contains(word));
            let is_believable = match tone {
                Tone::Neutral | Tone::Warm => true,
                Tone::Ashy => says_so,
                _ => false,
            };
            if !is_believable {
                cold.push(format!("{}: {id} is {tone:?}", client.id));
            }
        }
    }
    assert!(cold.is_empty(), "{cold:#?}");
}

/// Whoever is asked about at the door has said something about their health: were it said of some that there is nothing, they would be known for those
/// who may be worked on.
#[test]
fn who_may_be_worked_on_is_not_told_by_silence() {
    let course = course();
    let at_the_door =
        course.drills().filter(|(_, drill)| matches!(drill.family, Family::Triage | Family::Remedy));
    let clients: Vec<_> =
        at_the_door.flat_map(|(_, drill)| &drill.clients).map(|id| course.client(id).unwrap()).collect();
    assert!(clients.iter().any(|client| client.cautions().next().is_none()));
    assert!(clients.iter().any(|client| client.cautions().next().is_some()));
    for client in clients {
        assert!(!client.health.is_empty(), "{}", client.id);
    }
}
