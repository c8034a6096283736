//! `foresight`: which colour will this heal or age to?
//!
//! Steps: draw a setting and a mix of the drop grid; the key is what the engine computes; wrong expectations are computed too: the
//! colour on the day, in the bottle, on another skin, without the old work, at six weeks, under more skin, with some of it gone, all but the
//! black, or as if it grew stronger; then worlds.

use super::draw::{Setting, any_mix};
use super::generate::{Attempt, Discard, engine};
use super::grid::sensible_grid_of;
use super::prediction::{Expected, Prediction};
use super::{Exercise, Proof};
use crate::colour::{Lab, Srgb};
use crate::course::{Course, Drill, Lesson, Rule};
use crate::healing::{Appearance, HEALED_MONTHS, Placement, Scene, Work};
use crate::language::capital;
use crate::pigment::Paint;
use crate::say;
use crate::skin::{Redness, Skin, Undertone};

/// Share of the colour that somebody expects who expects little (representative).
const LITTLE: f64 = 0.1;
/// The same of somebody who takes two thirds of it for lost.
const THIRD: f64 = 1.0 / 3.0;
/// The same of somebody who expects it to grow stronger while it settles (representative).
const MORE: f64 = 2.5;
/// How many times as deep as it is the work lies for somebody who expects the skin to veil it (representative).
const VEILED: f64 = 2.0;

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
    let client = setting.client;
    let seen = |skin: &Skin, existing: &[Work], months: f64| {
        let scene = Scene::new(shelf, skin, client.site, existing, months);
        Appearance::of(scene.with(paint, &setting.placement), setting.light)
    };
    let placed = |paint: &Paint, placement: &Placement| {
        let scene = Scene::new(shelf, &client.skin, client.site, &setting.existing, setting.months);
        Appearance::of(scene.with(paint, placement), setting.light)
    };
    // As if so much of the colour stayed.
    let share =
        |share: f64| placed(paint, &Placement { load: share * setting.placement.load, ..setting.placement });
    let expect = |rule: Rule| match rule {
        Rule::FreshIsFinal if setting.months > 0.0 => {
            Some((seen(&client.skin, &setting.existing, 0.0), "exercise-foresight-fresh"))
        }
        Rule::IgnoreFading if setting.months > HEALED_MONTHS => {
            Some((seen(&client.skin, &setting.existing, HEALED_MONTHS), "exercise-foresight-unfaded"))
        }
        Rule::IgnoreOldWork if !setting.existing.is_empty() => {
            Some((seen(&client.skin, &[], setting.months), "exercise-foresight-bare"))
        }
        Rule::OneForPhototype => {
            let textbook =
                client.site.skin_of(Skin::from_evidence(client.phototype, Undertone::Neutral, Redness::Calm));
            (textbook != client.skin)
                .then(|| (seen(&textbook, &setting.existing, setting.months), "exercise-foresight-textbook"))
        }
        Rule::LittleRemains => Some((share(LITTLE), "exercise-foresight-little")),
        Rule::MostIsShed => Some((share(THIRD), "exercise-foresight-third")),
        Rule::GrowsStronger => Some((share(MORE), "exercise-foresight-stronger")),
        Rule::SkinVeilsAll => {
            let depth_mm = VEILED * setting.placement.depth_mm;
            Some((placed(paint, &Placement { depth_mm, ..setting.placement }), "exercise-foresight-veiled"))
        }
        Rule::BlackStays => {
            let black: Paint =
                paint.iter().copied().filter(|&(place, _)| shelf.colourants[place].is_black()).collect();
            (!black.is_empty()).then(|| (placed(&black, &setting.placement), "exercise-foresight-black"))
        }
        Rule::MatchLabel => {
            let lab: Lab = crate::healing::masstone(shelf, paint);
            let bottle =
                Appearance { lab, srgb: Srgb::from_lab(lab), ..seen(&client.skin, &[], setting.months) };
            Some((bottle, "exercise-foresight-bottle"))
        }
        _ => None,
    };
    let now = setting.scene(shelf);
    let bare = setting.light.lab_of(&now.bare());
    let key = seen(&client.skin, &setting.existing, setting.months);
    if crate::colour::difference(key.lab, bare) < drill.margin {
        return Err(Discard::Arguable);
    }
    let key = Expected {
        seen: key,
        label: String::new(),
        because: say!(language, "exercise-foresight-right", when = capital(&language.after(setting.months))),
        misconception: None,
    };
    let prediction = Prediction::draw(course, drill, &mut draw, bare, key, |rule| {
        let expected = expect(rule).map(|(seen, because)| (seen, String::new(), language.say(because, &[])));
        expected.into_iter().collect()
    })?;
    let (worlds, held) = prediction.hold(&setting, &draw.words(drill), |world| {
        let scene = world.scene(shelf, &setting.existing, setting.months);
        setting.light.lab_of(&scene.with(paint, &world.placement))
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
    let ask = say!(
        language,
        "exercise-foresight-ask",
        client = &client.name,
        mix = language.mix(shelf, mix),
        when = language.after(setting.months)
    );
    let choices = prediction.choices(course, lesson, bare);
    let case = super::Case { goal: None, ..setting.case(course) };
    let form = draw.one_of_pictured(drill, choices);
    Ok(draw.finish(lesson, drill, ask, case, form, Some(proof), &engine(course)))
}
