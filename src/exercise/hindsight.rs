//! `hindsight`: what caused this residual?
//!
//! Steps: draw a client and a cause, that is, a mix of the drop grid and an age; what is left of it is shown; the key is the cause,
//! wrong causes are what misconceptions would blame; each must leave a visibly different residual, and the one shown must stay nearest
//! to what the key leaves in worlds that differ a little.

use super::draw::Setting;
use super::generate::{Attempt, Discard, engine};
use super::grid::sensible_grid_of;
use super::prediction::{Expected, Prediction};
use super::seed::below;
use super::{Exercise, Exhibit, Proof};
use crate::colour::{Lab, difference};
use crate::course::{Course, Drill, Lesson, Rule};
use crate::healing::{Appearance, HEALED_MONTHS, Reading, Scene, masstone};
use crate::pigment::{Mix, Paint};
use crate::say;
use crate::skin::{Redness, Skin, Undertone};

/// Least ΔE00 between skin and a residual that is asked about: it must be plain to see.
const VISIBLE: f64 = 3.0;

/// A mix and how long ago it was placed.
struct Cause<'g> {
    mix: &'g Mix,
    paint: &'g Paint,
    months: f64,
}

/// A skin at all times that are asked about: few times, each with many causes.
struct Years<'a> {
    setting: &'a Setting<'a>,
    scenes: Vec<(f64, Scene<'a>)>,
}

impl<'a> Years<'a> {
    fn of(course: &'a Course, drill: &Drill, setting: &'a Setting<'a>, skin: &Skin) -> Self {
        let times = drill.ages_months.iter().chain([&0.0, &HEALED_MONTHS]);
        let scene = |months| Scene::new(&course.shelf, skin, setting.client.site, &[], months);
        Years { setting, scenes: times.map(|&months| (months, scene(months))).collect() }
    }

    /// How work with this paint looks then.
    fn after(&self, paint: &Paint, months: f64) -> Appearance {
        let (_, scene) =
            &self.scenes[self.scenes.iter().position(|(known, _)| *known == months).unwrap_or(0)];
        Appearance::of(scene.with(paint, &self.setting.placement), self.setting.light)
    }
}

/// One attempt at an exercise.
pub(super) fn attempt(
    course: &Course,
    lesson: &Lesson,
    drill: &Drill,
    mut draw: Attempt,
) -> Result<Exercise, Discard> {
    let setting = Setting::draw(course, drill, draw.client, &mut draw.rng).ok_or(Discard::Unresolved)?;
    let Course { shelf, language, .. } = course;
    let grid = sensible_grid_of(shelf, &drill.limits);
    let causes: Vec<Cause> = grid
        .mixes()
        .iter()
        .flat_map(|(mix, paint)| drill.ages_months.iter().map(move |&months| Cause { mix, paint, months }))
        .collect();
    let client = setting.client;
    let own = Years::of(course, drill, &setting, &client.skin);
    let after = |paint: &Paint, months: f64| own.after(paint, months);
    let key = &causes[below(&mut draw.rng, causes.len())];
    let shown = after(key.paint, key.months);
    let bare = setting.light.lab_of(&Scene::today(shelf, &client.skin, client.site, &[]).bare());
    if difference(shown.lab, bare) < VISIBLE {
        return Err(Discard::NothingToSee);
    }
    // Somebody of a rule blames the cause that is least by this measure.
    let blamed = |measure: &dyn Fn(&Cause) -> f64| {
        let measured = causes.iter().map(|cause| (measure(cause), cause));
        measured.min_by(|one, other| one.0.total_cmp(&other.0)).map(|(_, cause)| cause)
    };
    // The same where it matters only what was placed: the first of its ages stands for all.
    let of_each_age = drill.ages_months.len().max(1);
    let mixed = |measure: &dyn Fn(&Paint) -> f64| {
        let measured = causes.iter().step_by(of_each_age).map(|cause| (measure(cause.paint), cause));
        measured.min_by(|one, other| one.0.total_cmp(&other.0)).map(|(_, cause)| cause)
    };
    let lean = |lab: Lab| {
        let (a, b) = (lab.a - shown.lab.a, lab.b - shown.lab.b);
        a * a + b * b
    };
    let expect = |rule: Rule| {
        let (cause, because) = match rule {
            Rule::MatchLabel => (mixed(&|paint| lean(masstone(shelf, paint)))?, "exercise-hindsight-label"),
            Rule::AllFadeAlike => {
                (mixed(&|paint| lean(after(paint, HEALED_MONTHS).lab))?, "exercise-hindsight-healed")
            }
            Rule::BlueMeansBlue => (mixed(&|paint| masstone(shelf, paint).b)?, "exercise-hindsight-blue"),
            Rule::FreshIsFinal => (mixed(&|paint| lean(after(paint, 0.0).lab))?, "exercise-hindsight-fresh"),
            Rule::OneForPhototype => {
                let textbook = client.site.skin_of(Skin::from_evidence(
                    client.phototype,
                    Undertone::Neutral,
                    Redness::Calm,
                ));
                let there = Years::of(course, drill, &setting, &textbook);
                (
                    blamed(&|cause| difference(there.after(cause.paint, cause.months).lab, shown.lab))?,
                    "exercise-hindsight-textbook",
                )
            }
            _ => return None,
        };
        let seen = after(cause.paint, cause.months);
        let reading = Reading::of(seen.lab, bare).said(language);
        Some((seen, said(course, cause), say!(language, because, reading = reading)))
    };
    let expected = Expected {
        seen: shown,
        label: said(course, key),
        because: say!(
            language,
            "exercise-hindsight-right",
            reading = Reading::of(shown.lab, bare).said(language)
        ),
        misconception: None,
    };
    let prediction = Prediction::draw(course, drill, &mut draw, bare, expected, expect)?;
    let (worlds, held) = prediction.hold(&setting, &draw.words(drill), |world| {
        let scene = world.scene(shelf, &[], key.months);
        setting.light.lab_of(&scene.with(key.paint, &world.placement))
    })?;
    let proof = Proof {
        searched: causes.len(),
        best_error: 0.0,
        margin: Some(prediction.margin()),
        worlds,
        held,
        discarded: draw.number,
    };
    let ask = say!(language, "exercise-hindsight-ask", client = &client.name);
    let exhibit = Exhibit {
        label: say!(language, "exercise-hindsight-left", client = &client.name),
        seen: shown,
        reading: Reading::of(shown.lab, bare).in_language(language),
        light: setting.light,
    };
    let choices = prediction.choices(course, lesson, bare);
    let mut case = super::Case { goal: None, placed: None, exhibits: vec![exhibit], ..setting.case(course) };
    // The question is about work that the client's own story does not tell of.
    case.now = case.bare;
    case.now_reading = Reading::of(case.bare.lab, case.bare.lab).in_language(language);
    let form = draw.one_of(drill, choices);
    Ok(draw.finish(lesson, drill, ask, case, form, Some(proof), &engine(course)))
}

/// A cause in words.
fn said(course: &Course, cause: &Cause) -> String {
    let Course { language, shelf, .. } = course;
    let years = language.count(cause.months / 12.0);
    say!(language, "exercise-hindsight-cause", mix = language.mix(shelf, cause.mix), years = years)
}
