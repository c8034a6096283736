//! `light`: judge the same work under another light.
//!
//! Steps: draw a setting and a mix; the work is shown by day; the key is how it looks, to an eye that has adapted, under the drill's
//! light; wrong expectations are: the same as by day, the turn the other way round or twice as far, softer work, and the lamp's own tint
//! laid over what is seen by day.

use super::draw::{Setting, any_mix};
use super::generate::{Attempt, Discard, ENGINE};
use super::grid::sensible_grid_of;
use super::prediction::{Expected, Prediction};
use super::worlds::scene_in;
use super::{Exercise, Exhibit, Proof, marking};
use crate::colour::{Lab, Light, Srgb, Xyz};
use crate::course::{Course, Drill, Lesson, Rule};
use crate::healing::{Appearance, Reading};

/// One attempt at an exercise.
pub(super) fn attempt<'c>(
    course: &'c Course,
    lesson: &Lesson,
    drill: &Drill,
    mut draw: Attempt<'c>,
) -> Result<Exercise, Discard> {
    let setting = Setting::safe(course, drill, &mut draw)?;
    let shelf = &course.shelf;
    let grid = sensible_grid_of(shelf, &drill.limits);
    let (mix, paint) = any_mix(&grid, &mut draw.rng);
    let scene = setting.scene(shelf);
    let reflectance = scene.with(paint, &setting.placement);
    let day = Appearance::of(reflectance, Light::D65);
    let lamp = Appearance::of(reflectance, setting.light);
    let bare = setting.light.lab_of(&scene.bare());
    let expect = |rule: Rule| match rule {
        Rule::SameInEveryLight => Some((
            repainted(&lamp, day.lab),
            "That is its colour by day. Under another light another part of its spectrum is lit.",
        )),
        Rule::OppositeShift => Some((
            repainted(&lamp, between(day.lab, lamp.lab, -1.0)),
            "The colour turns, but the other way round.",
        )),
        Rule::DoubleShift => Some((
            repainted(&lamp, between(day.lab, lamp.lab, 2.0)),
            "The colour turns this way, but half as far: the rest of it is what a camera makes of the lamp.",
        )),
        Rule::LampSoftens => Some((
            repainted(&lamp, between(lamp.lab, bare, SOFTENED)),
            "Soft light hides edges. The colour has turned, but it is as strong as it was.",
        )),
        Rule::SeesTheLamp => Some((
            repainted(&lamp, Lab::from_xyz(tinted(&day, setting.light), Light::D65.white())),
            "That is the tint of the lamp itself. The eye adapts to it within minutes, as a camera may not.",
        )),
        _ => None,
    };
    let key = Expected {
        seen: lamp,
        label: String::new(),
        because: "So the eye sees it once it has adapted to this light.".to_owned(),
        misconception: None,
    };
    let prediction = Prediction::draw(course, drill, &mut draw, bare, key, |rule| {
        expect(rule).map(|(seen, because)| (seen, String::new(), because.to_owned()))
    })?;
    // In another world the work looks different by day, too; what is asked for is how the lamp turns what was shown.
    let (worlds, held) = prediction.hold(&setting, &draw.words(drill), |world| {
        let reflectance = scene_in(world, shelf, &setting, &setting.existing).with(paint, &world.placement);
        let (there, here) = (setting.light.lab_of(&reflectance), Light::D65.lab_of(&reflectance));
        Lab::new(day.lab.l + there.l - here.l, day.lab.a + there.a - here.a, day.lab.b + there.b - here.b)
    })?;
    let proof = Proof {
        searched: prediction.options.len(),
        best_error: 0.0,
        margin: Some(prediction.margin()),
        worlds,
        held,
        discarded: draw.number,
    };
    let bare_by_day = Light::D65.lab_of(&scene.bare());
    let exhibit = Exhibit {
        label: format!("The work by day: {}", shelf.mix_in_words(mix)),
        seen: day,
        reading: Reading::of(day.lab, bare_by_day),
        light: Light::D65,
    };
    let ask = format!(
        "This work on {} was judged by daylight, {}. How does it look under {}, to an eye that has got used to that light?",
        setting.client.name,
        marking::when_in_words(setting.months),
        marking::light_in_words(setting.light)
    );
    let choices = prediction.choices(course, lesson, bare);
    let case = super::Case { goal: None, exhibits: vec![exhibit], ..setting.case(shelf) };
    let form = draw.one_of_pictured(choices);
    Ok(draw.finish(lesson, drill, ask, case, form, Some(proof), ENGINE))
}

/// How much of the way to bare skin work is expected to lose under a lamp that is said to soften it (representative).
const SOFTENED: f64 = 0.25;

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
