//! Lips and areolas: their colours have plain words and lie in the skin around them, wherever they are told or shown; and what a device reads is
//! told apart from the skin as it is.

use crate::demo::course;
use crate::site::fixture::{DEMO, DEMO_SITE, pages};
use healedhue::assess::QuestionAsked;
use healedhue::colour::{Lab, Light, difference};
use healedhue::course::{Client, Family, Show, SkinAsks, Technique};
use healedhue::exercise::{Exercise, foresee, generate};
use healedhue::foresee::{Request, Shown};
use healedhue::healing::{Appearance, Placement, Reading, Scene, Tone};
use healedhue::pigment::Mix;
use healedhue::practice::QuestionView;
use healedhue::skin::{Site, Skin};
use healedhue::wasm::Door;
use serde_json::{Value, json};

/// Words that judge a brown on a brow, and say nothing of a lip.
const OF_BROWS: [Tone; 8] = [
    Tone::Skin,
    Tone::BlackBlue,
    Tone::Ashy,
    Tone::Neutral,
    Tone::Warm,
    Tone::Orange,
    Tone::Salmon,
    Tone::PinkViolet,
];

fn with_edges() -> Vec<&'static Client> {
    let clients: Vec<_> = course().clients.iter().filter(|client| client.site.has_edge()).collect();
    assert!(clients.len() >= 7, "{}", clients.len());
    clients
}

/// Bare skin as the engine computes it at a site of a person without a scar.
fn bare(client: &Client, site: Site) -> Appearance {
    let brow = Skin::from_evidence(client.phototype, client.undertone, client.redness);
    let skin = site.skin_of(brow);
    Appearance::of(Scene::today(&course().shelf, &skin, site, &[]).bare(), Light::D65)
}

/// The words that anybody would use of these colours, on everybody who may wish for them.
#[test]
fn goals_of_lips_and_areolas_are_called_what_they_are() {
    let expected = [
        (Site::Lip, "quiet-rose", "dull rose"),
        (Site::Lip, "rosy-lip-brown", "reddish brown"),
        (Site::Lip, "light-coral", "pink"),
        (Site::Lip, "cool-pink", "bluish pink"),
        (Site::Lip, "soft-terracotta", "reddish brown"),
        (Site::Lip, "even-brick", "rose"),
        (Site::Areola, "soft-areola", "brown"),
        (Site::Areola, "middle-areola", "brown"),
        (Site::Areola, "rosy-areola", "reddish brown"),
        (Site::Areola, "deep-areola", "brown"),
    ];
    for client in with_edges() {
        let own = bare(client, client.site).lab;
        assert!(expected.iter().any(|(site, id, _)| (*site, *id) == (client.site, &client.goal)));
        for (_, id, word) in expected.iter().filter(|(site, ..)| *site == client.site) {
            let goal = course().goal(id).expect("the course has the goal");
            let reading = Reading::of(goal.lab, own, client.site);
            let beside = if client.site == Site::Lip { "the bare lip" } else { "the bare skin there" };
            assert_eq!(reading.words, format!("{}, {word}", reading.depth), "{id} of {}", client.id);
            assert!(reading.depth.ends_with(beside), "{}", reading.depth);
        }
    }
}

#[test]
fn no_work_in_a_lip_or_an_areola_is_told_with_the_words_of_brows() {
    let mut told = std::collections::BTreeSet::new();
    for client in with_edges() {
        for (bottle, months) in course()
            .shelf
            .bottles
            .iter()
            .flat_map(|bottle| [0.0, 1.5, 36.0, 96.0].map(|months| (bottle, months)))
        {
            let show = Show {
                label: String::new(),
                client: client.id.clone(),
                bare: false,
                mix: Some(Mix::new([(bottle.id.clone(), 6)])),
                months,
                placement: Placement::default(),
                technique: Technique::default(),
                light: Light::D65,
            };
            let seen = foresee(course(), &show).expect("the client is there").reading;
            assert!(!OF_BROWS.contains(&seen.tone), "{} in {}: {}", bottle.id, client.id, seen.words);
            told.insert(seen.tone);
        }
    }
    // From blue-grey and violet to red and beige: the words tell colours apart.
    assert!(told.len() >= 12, "{told:?}");
}

#[test]
fn where_hair_or_lashes_grow_the_words_are_those_of_brows() {
    let mut told = 0;
    for client in course().clients.iter().filter(|client| !client.site.has_edge()) {
        let own = bare(client, client.site).lab;
        for goal in &course().goals {
            let reading = Reading::of(goal.lab, own, client.site);
            assert_eq!(reading.tone, Tone::of(goal.lab, own));
            assert!(reading.depth.ends_with("the skin"), "{}", reading.depth);
            told += 1;
        }
    }
    assert!(told > 1000, "{told}");
}

fn door() -> Door {
    let mut door = Door::default();
    door.shelf(&serde_json::to_string(&course().shelf).unwrap()).unwrap();
    door
}

fn survey(case: &Value) -> Value {
    serde_json::from_str(&door().survey(&json!({ "case": case }).to_string()).unwrap()).unwrap()
}

/// The face of the same person under every light, however the skin is told.
#[test]
fn a_survey_tells_the_skin_around_a_place_that_has_an_edge() {
    let skin = json!({ "phototype": "IV", "redness": "flushed" });
    let brow = survey(&json!({ "skin": skin }));
    assert_eq!(brow["around"], json!([]), "a brow lies in its own skin");
    let scar = json!({ "phototype": "IV", "redness": "flushed", "scar": true });
    for case in [json!({ "skin": skin, "site": "lip" }), json!({ "skin": scar, "site": "areola" })] {
        let told = survey(&case);
        let around = told["around"].as_array().unwrap();
        assert_eq!(around.len(), Light::ALL.len());
        for (around, seen) in around.iter().zip(brow["bare"].as_array().unwrap()) {
            assert_eq!((&around["lab"], &around["srgb"]), (&seen["lab"], &seen["srgb"]), "{case}");
        }
        assert_ne!(told["bare"][0]["lab"], around[0]["lab"]);
    }
    // A number that is given for the lip is the person's: what is found in the lip is found in the face.
    let with = |melanin: f64| {
        let case = json!({ "skin": { "phototype": "II", "melanin": melanin }, "site": "lip" });
        survey(&case)["around"][0]["lab"][0].as_f64().unwrap()
    };
    assert!(with(0.05) < with(0.01) - 10.0);
    let measured = json!({ "skin": { "lab": [56.5, 17.4, 11.9], "phototype": "IV" }, "site": "lip" });
    let task = Request::from_json(&measured.to_string()).unwrap().resolve(&course().shelf).unwrap();
    let face = Light::D65.lab_of(&task.around().unwrap());
    assert!(difference(face, Lab::new(52.0, 9.4, 22.0)) < 3.0, "{face:?}");
}

/// The part of a page from the client's card on.
fn card<'h>(html: &'h str, id: &str) -> &'h str {
    let from = html.split_once(&format!("<section class=\"client\" id=\"{id}\">")).unwrap().1;
    from.split_once("</section>").unwrap().0
}

#[test]
fn lips_and_areolas_are_drawn_in_the_skin_around_them() {
    let site = pages(&DEMO_SITE);
    for client in with_edges() {
        let html = card(&site[&format!("clients/{}.html", client.phototype.word())], &client.id);
        let around = bare(client, Site::Brow).srgb.hex();
        let own = Scene::today(&course().shelf, &client.skin, client.site, &[]).bare();
        let own = Appearance::of(own, Light::D65).srgb.hex();
        let field = format!("height=\"116\" fill=\"{around}\"/><use href=\"#shape_");
        assert_eq!(html.matches("<svg").count(), html.matches(&field).count(), "{}", client.id);
        let shape = if client.site == Site::Lip { "upper_lip" } else { "disc" };
        assert!(html.contains(&format!("<use href=\"#shape_{shape}\" fill=\"{own}\"/>")), "{}", client.id);
    }
    let lips = card(&site["clients/II.html"], "wennel");
    assert!(lips.contains("<b>Bare lip</b>") && lips.contains("in this lip: pink"), "{lips}");
}

fn made(drill: &str, number: u32) -> Exercise {
    let (lesson, drill) = course().drill(drill).expect("the drill exists");
    generate(course(), lesson, drill, number).expect("the drill can be satisfied")
}

fn asked_in_practice(exercise: &Exercise) -> Value {
    serde_json::to_value(QuestionView::of(course(), exercise, 1.0)).unwrap()
}

#[test]
fn practice_tells_the_skin_around_lips_and_the_word_of_a_bare_lip() {
    let exercise = made("lip-choice", 0);
    let client = course().client(&exercise.case.as_ref().unwrap().client).unwrap();
    let case = &asked_in_practice(&exercise)["case"];
    let face = serde_json::to_value(Shown::of(bare(client, Site::Brow).lab)).unwrap();
    assert_eq!(case["around"], face);
    let word = Tone::by_itself(bare(client, Site::Lip).lab).word();
    assert_eq!(case["bare_words"], word);
    assert!(case["goal"]["words"].as_str().unwrap().ends_with("the bare lip"));
    let case = &asked_in_practice(&made("too-warm", 0))["case"];
    assert_eq!(
        (&case["around"], &case["bare_words"], &case["bare_label"]),
        (&Value::Null, &Value::Null, &Value::Null)
    );
}

/// A reading scatters a little, and is of bare skin even where there is old work: so it is not called the client as they are now.
#[test]
fn what_a_device_reads_is_told_apart_from_the_skin_as_it_is() {
    let angles = course()
        .drills()
        .filter(|(_, drill)| drill.skin_asks == SkinAsks::Angle && drill.family == Family::Skin);
    let (mut plain, mut beside) = (0, 0);
    for (lesson, drill) in angles {
        for number in 0..12 {
            let exercise = generate(course(), lesson, drill, number).expect("the drill can be satisfied");
            let case = exercise.case.as_ref().unwrap();
            let client = course().client(&case.client).unwrap();
            let expected = if client.existing.is_empty() {
                plain += 1;
                format!("{}’s skin, as the device reads it", client.name)
            } else {
                beside += 1;
                format!("{}’s skin beside the old work, as the device reads it", client.name)
            };
            assert_eq!(asked_in_practice(&exercise)["case"]["bare_label"], expected);
            let paper = serde_json::to_value(QuestionAsked::new(course(), &exercise)).unwrap();
            assert_eq!(paper["case"]["seen"][0]["label"], expected);
            assert_eq!(paper["case"]["seen"].as_array().unwrap().len(), 1);
        }
    }
    assert!(plain >= 5 && beside >= 5, "{plain} and {beside}");
    // On the pages of lessons too.
    let (course, pools) = &*DEMO;
    let shown = pools.values().flatten().find(|exercise| {
        course
            .drill(&exercise.drill)
            .is_some_and(|(_, drill)| drill.skin_asks == SkinAsks::Angle && drill.family == Family::Skin)
    });
    let exercise = shown.expect("a lesson shows an angle");
    let page = pages(&DEMO_SITE)
        .into_values()
        .find(|html| html.contains(&format!("id=\"exercise_{}_{}\"", exercise.drill, exercise.number)))
        .expect("a page holds it");
    assert!(page.contains("as the device reads it</b>"));
}
