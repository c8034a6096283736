//! `foresight`: which colour will this heal or age to?
//!
//! Steps: draw a setting and some mixes of the drop grid; the key is what the engine computes; wrong expectations are computed too: the
//! colour on the day, in the bottle, on another skin, without the old work, at six weeks, under more skin, with some of it gone, all but the
//! black, or as if it grew stronger; the first mix is taken whose colour has its place among some of them; then worlds.

use super::draw::{Setting, any_mix};
use super::generate::{Attempt, Discard, engine};
use super::grid::sensible_grid_of;
use super::prediction::{Expected, LIGHT_GREY, Prediction, between, repainted};
use super::{Exercise, Proof};
use crate::colour::{Lab, difference};
use crate::course::{Course, Drill, Lesson, Rule};
use crate::healing::{Appearance, HEALED_MONTHS, Placement, Scene, Trial, Work, masstone};
use crate::language::capital;
use crate::pigment::Paint;
use crate::say;
use crate::skin::{Redness, Skin, Undertone};
use std::cell::OnceCell;

/// Share of the colour that somebody expects who expects little (representative).
const LITTLE: f64 = 0.1;
/// The same of somebody who takes two thirds of it for lost.
const THIRD: f64 = 1.0 / 3.0;
/// The same of somebody who expects it to grow stronger while it settles (representative).
const MORE: f64 = 2.5;
/// How far on the way to a middle grey somebody expects the colour who takes its warmth for lost (representative).
const HALF: f64 = 0.5;
/// What is left of a brown that is said to lose its warmth (representative).
const MIDDLE_GREY: Lab = Lab::new(45.0, 0.0, 0.0);
/// How far on the way to a light grey, or away from it, somebody expects the colour who sees a veil stay, or skin give depth (representative).
const GREYED: f64 = 0.25;
/// How many times as deep as it is the work lies for somebody who expects the skin to veil it (representative).
const VEILED: f64 = 2.0;

/// Mixes tried in one draw: a mix costs little once skin and old work are known.
const MIXES: usize = 8;

/// In which skin, with which old work and when somebody sees the new work before the mind's eye.
#[derive(Debug, Clone, Copy)]
enum View {
    /// As it will be.
    Then,
    /// On the day.
    Fresh,
    /// At six weeks.
    Healed,
    /// Without old work.
    Bare,
    /// In the skin that stands in books for the phototype.
    Textbook,
    /// As it would be, lay it that much deeper.
    Veiled,
}

/// How many there are.
const VIEWS: usize = 6;

/// What of a mix somebody takes to be seen.
#[derive(Debug, Clone, Copy)]
enum Part {
    Whole,
    Black,
    /// All of it, as it looks in the bottle.
    Bottled,
    /// All of it, half of the way to a middle grey.
    Duller,
    /// All of it, so far on the way to a light grey; away from it where this is negative.
    Greyed(f64),
}

/// What somebody of a rule expects of any mix.
struct Way {
    view: View,
    /// How much of it they expect there, of what there is.
    share: f64,
    part: Part,
    because: &'static str,
}

impl Way {
    /// The way of this rule, where it leads anywhere in this setting.
    fn of(rule: Rule, setting: &Setting, textbook: &Skin) -> Option<Way> {
        let (view, because) = match rule {
            Rule::FreshIsFinal if setting.months > 0.0 => (View::Fresh, "exercise-foresight-fresh"),
            Rule::IgnoreFading if setting.months > HEALED_MONTHS => {
                (View::Healed, "exercise-foresight-unfaded")
            }
            Rule::IgnoreOldWork if !setting.existing.is_empty() => (View::Bare, "exercise-foresight-bare"),
            Rule::OneForPhototype if *textbook != setting.client.skin => {
                (View::Textbook, "exercise-foresight-textbook")
            }
            Rule::LittleRemains => (View::Then, "exercise-foresight-little"),
            Rule::MostIsShed => (View::Then, "exercise-foresight-third"),
            Rule::GrowsStronger => (View::Then, "exercise-foresight-stronger"),
            Rule::SkinVeilsAll => (View::Veiled, "exercise-foresight-veiled"),
            Rule::BlackStays => (View::Then, "exercise-foresight-black"),
            Rule::MatchLabel => (View::Then, "exercise-foresight-bottle"),
            Rule::LosesWarmth => (View::Then, "exercise-foresight-warmth"),
            Rule::StaysMilky => (View::Then, "exercise-foresight-milky"),
            Rule::GrowsRicher => (View::Then, "exercise-foresight-richer"),
            _ => return None,
        };
        let share = match rule {
            Rule::LittleRemains => LITTLE,
            Rule::MostIsShed => THIRD,
            Rule::GrowsStronger => MORE,
            _ => 1.0,
        };
        let part = match rule {
            Rule::BlackStays => Part::Black,
            Rule::MatchLabel => Part::Bottled,
            Rule::LosesWarmth => Part::Duller,
            Rule::StaysMilky => Part::Greyed(GREYED),
            Rule::GrowsRicher => Part::Greyed(-GREYED),
            _ => Part::Whole,
        };
        Some(Way { view, share, part, because })
    }
}

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
    let client = setting.client;
    let textbook =
        client.site.skin_of(Skin::from_evidence(client.phototype, Undertone::Neutral, Redness::Calm));
    // What does not hang on the mix is worked out once for all of them, and only where somebody looks that way.
    let scenes: [OnceCell<Scene>; VIEWS] = Default::default();
    let scene = |view: View| {
        let (skin, existing, months) = match view {
            View::Then | View::Veiled => (&client.skin, &setting.existing[..], setting.months),
            View::Fresh => (&client.skin, &setting.existing[..], 0.0),
            View::Healed => (&client.skin, &setting.existing[..], HEALED_MONTHS),
            View::Bare => (&client.skin, &[][..], setting.months),
            View::Textbook => (&textbook, &setting.existing[..], setting.months),
        };
        scenes[view as usize].get_or_init(|| Scene::new(shelf, skin, client.site, existing, months))
    };
    let trials: [OnceCell<Trial>; VIEWS] = Default::default();
    let trial = |view: View| {
        let Placement { depth_mm, .. } = setting.placement;
        trials[view as usize].get_or_init(|| match view {
            View::Veiled => {
                scene(View::Then).trial(&Placement { depth_mm: depth_mm * VEILED, ..setting.placement })
            }
            _ => scene(view).trial(&setting.placement),
        })
    };
    let load = setting.placement.load;
    let bare = setting.light.lab_of(&scene(View::Then).bare());
    let ways: Vec<(Rule, Way)> = drill
        .tempts
        .iter()
        .filter_map(|id| {
            let rule = course.misconception(id)?.rule;
            Some((rule, Way::of(rule, &setting, &textbook)?))
        })
        .collect();
    let mut found = Err(Discard::Arguable);
    for _ in 0..MIXES {
        let (mix, paint) = any_mix(&grid, &mut draw.rng);
        let key = Appearance::of(trial(View::Then).with(paint), setting.light);
        if difference(key.lab, bare) < drill.margin {
            continue;
        }
        let expect = |rule: Rule| {
            let (_, way) = ways.iter().find(|(of, _)| *of == rule)?;
            let placed = |paint: &Paint| {
                Appearance::of(trial(way.view).with_load(paint, load * way.share), setting.light)
            };
            let seen = match way.part {
                Part::Whole => placed(paint),
                Part::Black => {
                    let is_black = |&(place, _): &(usize, f64)| shelf.colourants[place].is_black();
                    let black: Paint = paint.iter().copied().filter(is_black).collect();
                    if black.is_empty() {
                        return None;
                    }
                    placed(&black)
                }
                Part::Bottled => repainted(&key, masstone(shelf, paint)),
                Part::Duller => repainted(&key, between(key.lab, MIDDLE_GREY, HALF)),
                Part::Greyed(share) => repainted(&key, between(key.lab, LIGHT_GREY, share)),
            };
            Some((seen, String::new(), language.say(way.because, &[])))
        };
        let key = Expected {
            seen: key,
            label: String::new(),
            because: say!(
                language,
                "exercise-foresight-right",
                when = capital(&language.after(setting.months))
            ),
            misconception: None,
        };
        found =
            Prediction::draw(course, drill, &mut draw, bare, key, |rule| expect(rule).into_iter().collect())
                .map(|prediction| (mix, paint, prediction));
        if found.is_ok() {
            break;
        }
    }
    let (mix, paint, prediction) = found?;
    let (worlds, held) = prediction.hold(&setting, &draw.words(drill), |world| {
        let scene = world.scene(shelf, &setting.existing, setting.months);
        setting.light.lab_of(&scene.with(paint, &world.placement))
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
    let ask = say!(
        language,
        "exercise-foresight-ask",
        client = &client.name,
        mix = language.mix(shelf, mix),
        when = language.after(setting.months)
    );
    let mut choices = prediction.choices(course, lesson, bare);
    // Only the key is a colour that something leads to.
    choices[0].work =
        Some(Work { paint: paint.clone(), placement: setting.placement, months: setting.months });
    let case = super::Case { goal: None, ..setting.case(course) };
    let form = draw.one_of_pictured(drill, choices);
    Ok(draw.finish(lesson, drill, ask, case, form, Some(proof), &engine(course)))
}
