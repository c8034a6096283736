//! `light`: judge the same work under another light.
//!
//! Steps: draw a setting and some mixes; the work is shown by day; the key is how it looks, to an eye that has adapted, under the drill's
//! light; wrong expectations are: the same as by day, the turn the other way round or twice as far, softer, harder, paler, greyer, darker or
//! fuller work, and the lamp's own tint laid over what is seen by day; the first mix is taken whose colour has its place among some of them.

use super::draw::{Setting, any_mix};
use super::generate::{Attempt, Discard, engine};
use super::grid::sensible_grid_of;
use super::prediction::{Expected, LIGHT_GREY, Prediction, between, repainted};
use super::{Exercise, Exhibit, Proof};
use crate::colour::{Lab, Light, Xyz};
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
    let scene = setting.scene(shelf);
    let trial = scene.trial(&setting.placement);
    let bare = setting.light.lab_of(&scene.bare());
    let mut found = Err(Discard::OneSided);
    for _ in 0..MIXES {
        let (mix, paint) = any_mix(&grid, &mut draw.rng);
        let reflectance = trial.with(paint);
        let day = Appearance::of(reflectance, Light::D65);
        let lamp = Appearance::of(reflectance, setting.light);
        let expect = |rule: Rule| {
            let (lab, because) = expected(rule, (&day, &lamp), bare, setting.light)?;
            Some((repainted(&lamp, lab), String::new(), language.say(because, &[])))
        };
        let key = Expected {
            seen: lamp,
            label: String::new(),
            because: language.say("exercise-lamp-right", &[]),
            misconception: None,
        };
        found =
            Prediction::draw(course, drill, &mut draw, bare, key, |rule| expect(rule).into_iter().collect())
                .map(|prediction| (mix, paint, day, prediction));
        if found.is_ok() {
            break;
        }
    }
    let (mix, paint, day, prediction) = found?;
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
        as_it_is: None,
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
        reading: Reading::of(day.lab, bare_by_day, setting.client.site).in_language(language),
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

/// Mixes tried in one draw: a mix costs little once the skin is known.
const MIXES: usize = 24;

/// What somebody of a rule expects under this lamp of work that looks like this by day and under the lamp, on skin that looks like `bare` there; and
/// the message that says why.
fn expected(
    rule: Rule,
    (day, lamp): (&Appearance, &Appearance),
    bare: Lab,
    light: Light,
) -> Option<(Lab, &'static str)> {
    Some(match rule {
        Rule::SameInEveryLight => (day.lab, "exercise-lamp-same"),
        Rule::OppositeShift => (between(day.lab, lamp.lab, -1.0), "exercise-lamp-opposite"),
        Rule::DoubleShift => (between(day.lab, lamp.lab, 2.0), "exercise-lamp-double"),
        Rule::LampSoftens => (between(lamp.lab, bare, SOFTENED), "exercise-lamp-softens"),
        Rule::LampHardens => (between(lamp.lab, bare, -SOFTENED), "exercise-lamp-hardens"),
        Rule::LampWashesOut => (between(lamp.lab, WHITE, CHANGED), "exercise-lamp-washes-out"),
        Rule::LampGreys => (between(lamp.lab, LIGHT_GREY, GREYED), "exercise-lamp-greys"),
        Rule::LampDims => (between(lamp.lab, BLACK, CHANGED), "exercise-lamp-dims"),
        Rule::LampEnriches => (between(lamp.lab, WHITE, -CHANGED), "exercise-lamp-enriches"),
        Rule::SeesTheLamp => (Lab::from_xyz(tinted(day, light), Light::D65.white()), "exercise-lamp-tint"),
        _ => return None,
    })
}

/// How much of the way to bare skin work is expected to go under a lamp that is said to soften it, or away from it under one that is said to
/// harden it (representative).
const SOFTENED: f64 = 0.25;
/// How much of the way to white or to black, or away from white, it is expected to go under a lamp that is said to change it (representative).
const CHANGED: f64 = 0.1;
/// The same to a light grey.
const GREYED: f64 = 0.25;
const WHITE: Lab = Lab::new(100.0, 0.0, 0.0);
const BLACK: Lab = Lab::new(0.0, 0.0, 0.0);

/// What is seen by day, with the tint of the lamp laid over it.
fn tinted(day: &Appearance, light: Light) -> Xyz {
    let (seen, from, to) = (day.xyz, Light::D65.white(), light.white());
    Xyz { x: seen.x * to.x / from.x, y: seen.y * to.y / from.y, z: seen.z * to.z / from.z }
}
