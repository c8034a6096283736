//! `light`: judge the same work under another light.
//!
//! Steps: draw a setting and a mix; the work is shown by day; the key is how it looks, to an eye that has adapted, under the drill's
//! light; wrong expectations are: the same as by day, the turn the other way round or twice as far, softer work, and the lamp's own tint
//! laid over what is seen by day.

use super::draw::{Setting, any_mix};
use super::generate::{Attempt, Discard, engine};
use super::grid::sensible_grid_of;
use super::prediction::{Expected, Prediction};
use super::{Exercise, Exhibit, Proof};
use crate::colour::{Lab, Light, Srgb, Xyz};
use crate::course::{Course, Drill, Lesson, Rule};
use crate::healing::{Appearance, Reading};
use crate::say;

/// One attempt at an exercise.
pub(super) fn attempt<'c>(
    course: &'c Course,
    lesson: &Lesson,
    drill: &Drill,
    mut draw: Attempt<'c>,
) -> Result<Exercise, Discard> {
    let setting = Setting::safe(course, drill, &mut draw)?;
    let Course { shelf, language, .. } = course;
    let grid = sensible_grid_of(shelf, &drill.limits);
    let (mix, paint) = any_mix(&grid, &mut draw.rng);
    let scene = setting.scene(shelf);
    let reflectance = scene.with(paint, &setting.placement);
    let day = Appearance::of(reflectance, Light::D65);
    let lamp = Appearance::of(reflectance, setting.light);
    let bare = setting.light.lab_of(&scene.bare());
    let expect = |rule: Rule| match rule {
        Rule::SameInEveryLight => Some((repainted(&lamp, day.lab), "exercise-lamp-same")),
        Rule::OppositeShift => {
            Some((repainted(&lamp, between(day.lab, lamp.lab, -1.0)), "exercise-lamp-opposite"))
        }
        Rule::DoubleShift => {
            Some((repainted(&lamp, between(day.lab, lamp.lab, 2.0)), "exercise-lamp-double"))
        }
        Rule::LampSoftens => {
            Some((repainted(&lamp, between(lamp.lab, bare, SOFTENED)), "exercise-lamp-softens"))
        }
        Rule::LampHardens => {
            Some((repainted(&lamp, between(lamp.lab, bare, -SOFTENED)), "exercise-lamp-hardens"))
        }
        Rule::LampWashesOut => {
            Some((repainted(&lamp, between(lamp.lab, WHITE, CHANGED)), "exercise-lamp-washes-out"))
        }
        Rule::LampGreys => Some((repainted(&lamp, between(lamp.lab, GREY, GREYED)), "exercise-lamp-greys")),
        Rule::LampDims => Some((repainted(&lamp, between(lamp.lab, BLACK, CHANGED)), "exercise-lamp-dims")),
        Rule::LampEnriches => {
            Some((repainted(&lamp, between(lamp.lab, WHITE, -CHANGED)), "exercise-lamp-enriches"))
        }
        Rule::SeesTheLamp => Some((
            repainted(&lamp, Lab::from_xyz(tinted(&day, setting.light), Light::D65.white())),
            "exercise-lamp-tint",
        )),
        _ => None,
    };
    let key = Expected {
        seen: lamp,
        label: String::new(),
        because: language.say("exercise-lamp-right", &[]),
        misconception: None,
    };
    let prediction = Prediction::draw(course, drill, &mut draw, bare, key, |rule| {
        let expected = expect(rule).map(|(seen, because)| (seen, String::new(), language.say(because, &[])));
        expected.into_iter().collect()
    })?;
    // In another world the work looks different by day, too; what is asked for is how the lamp turns what was shown.
    let (worlds, held) = prediction.hold(&setting, &draw.words(drill), |world| {
        let scene = world.scene(shelf, &setting.existing, setting.months);
        let reflectance = scene.with(paint, &world.placement);
        let (there, here) = (setting.light.lab_of(&reflectance), Light::D65.lab_of(&reflectance));
        Lab::new(day.lab.l + there.l - here.l, day.lab.a + there.a - here.a, day.lab.b + there.b - here.b)
    })?;
    let proof = Proof {
        searched: prediction.options.len(),
        best_error: 0.0,
        margin: Some(prediction.margin()),
        worlds,
        held,
        runners_up: prediction.runners_up(),
        discarded: draw.number,
    };
    let bare_by_day = Light::D65.lab_of(&scene.bare());
    let exhibit = Exhibit {
        label: say!(language, "exercise-lamp-day", mix = language.mix(shelf, mix)),
        seen: day,
        reading: Reading::of(day.lab, bare_by_day).in_language(language),
        light: Light::D65,
    };
    let lamp = format!("exercise-lamp-{}", setting.light.name().to_ascii_lowercase());
    let ask = say!(
        language,
        "exercise-lamp-ask",
        client = &setting.client.name,
        when = language.after(setting.months),
        lamp = language.say(&lamp, &[])
    );
    let choices = prediction.choices(course, lesson, bare);
    let case = super::Case { goal: None, exhibits: vec![exhibit], ..setting.case(course) };
    let form = draw.one_of_pictured(drill, choices);
    Ok(draw.finish(lesson, drill, ask, case, form, Some(proof), &engine(course)))
}

/// How much of the way to bare skin work is expected to go under a lamp that is said to soften it, or away from it under one that is said to
/// harden it (representative).
const SOFTENED: f64 = 0.25;
/// How much of the way to white or to black, or away from white, it is expected to go under a lamp that is said to change it (representative).
const CHANGED: f64 = 0.1;
/// The same to a light grey.
const GREYED: f64 = 0.25;
const GREY: Lab = Lab::new(75.0, 0.0, 0.0);
const WHITE: Lab = Lab::new(100.0, 0.0, 0.0);
const BLACK: Lab = Lab::new(0.0, 0.0, 0.0);

/// The colour this far on the way from one to another; below 0 and above 1 beyond them.
fn between(one: Lab, other: Lab, way: f64) -> Lab {
    let at = |one: f64, other: f64| one + way * (other - one);
    Lab::new(at(one.l, other.l), at(one.a, other.a), at(one.b, other.b))
}

/// What is seen by day, with the tint of the lamp laid over it.
fn tinted(day: &Appearance, light: Light) -> Xyz {
    let (seen, from, to) = (day.xyz, Light::D65.white(), light.white());
    Xyz { x: seen.x * to.x / from.x, y: seen.y * to.y / from.y, z: seen.z * to.z / from.z }
}

/// The same surface, expected in another colour.
fn repainted(surface: &Appearance, lab: Lab) -> Appearance {
    Appearance { lab, srgb: Srgb::from_lab(lab), ..*surface }
}
