//! `hindsight`: what caused this residual?
//!
//! Steps: draw a client and a cause, that is, a mix of the drop grid and an age; what is left of it is shown; the key is the cause,
//! wrong causes are what misconceptions would blame; each must leave a visibly different residual, and the one shown must stay nearest
//! to what the key leaves in worlds that differ a little.

use super::draw::Setting;
use super::generate::{Attempt, Discard, engine};
use super::grid::sensible_grid_of;
use super::prediction::{Expected, Prediction};
use super::seed::shuffle;
use super::{Exercise, Exhibit, Proof};
use crate::colour::{Lab, difference};
use crate::course::{Course, Drill, Lesson, Rule};
use crate::healing::{Appearance, HEALED_MONTHS, Reading, Scene, Work, masstone};
use crate::pigment::{Mix, Paint};
use crate::say;
use crate::skin::{Redness, Skin, Undertone};
use std::cell::OnceCell;

/// Least ΔE00 between skin and a residual that is asked about: it must be plain to see.
const VISIBLE: f64 = 3.0;
/// Causes tried for a key in one draw.
const KEYS: usize = 12;
/// Difference, in units of L*a*b*, within which two mixes look as likely to be blamed (representative).
const ALIKE: f64 = 2.0;

/// A mix and how long ago it was placed.
struct Cause<'g> {
    mix: &'g Mix,
    paint: &'g Paint,
    months: f64,
}

/// All causes in one skin, as they look when they are asked about, and on the way there; each is seen when it is first asked for.
struct Seen<'a> {
    course: &'a Course,
    setting: &'a Setting<'a>,
    skin: Skin,
    causes: &'a [Cause<'a>],
    /// Causes in a row that differ in their ages alone.
    ages: usize,
    now: OnceCell<Vec<Appearance>>,
    healed: OnceCell<Vec<Lab>>,
    fresh: OnceCell<Vec<Lab>>,
}

impl<'a> Seen<'a> {
    fn of(
        course: &'a Course,
        setting: &'a Setting<'a>,
        skin: Skin,
        causes: &'a [Cause<'a>],
        ages: usize,
    ) -> Self {
        let (now, healed, fresh) = Default::default();
        Seen { course, setting, skin, causes, ages, now, healed, fresh }
    }

    fn scene(&self, months: f64) -> Scene<'a> {
        Scene::new(&self.course.shelf, &self.skin, self.setting.client.site, &[], months)
    }

    /// What each cause has left.
    fn now(&self) -> &[Appearance] {
        let look = || {
            let ages: Vec<f64> = self.causes[..self.ages].iter().map(|cause| cause.months).collect();
            let scenes: Vec<Scene> = ages.iter().map(|&months| self.scene(months)).collect();
            let seen = |(at, cause): (usize, &Cause)| {
                let reflectance = scenes[at % self.ages].with(cause.paint, &self.setting.placement);
                Appearance::of(reflectance, self.setting.light)
            };
            self.causes.iter().enumerate().map(seen).collect()
        };
        self.now.get_or_init(look)
    }

    /// How each mix looked so many months after it was placed.
    fn mixes_after(&self, months: f64) -> Vec<Lab> {
        let scene = self.scene(months);
        let seen =
            |cause: &Cause| self.setting.light.lab_of(&scene.with(cause.paint, &self.setting.placement));
        self.causes.iter().step_by(self.ages).map(seen).collect()
    }

    fn healed(&self) -> &[Lab] {
        self.healed.get_or_init(|| self.mixes_after(HEALED_MONTHS))
    }

    fn fresh(&self) -> &[Lab] {
        self.fresh.get_or_init(|| self.mixes_after(0.0))
    }
}

/// The places of the least of these values and of those that are hardly greater.
fn about_least(values: impl Iterator<Item = f64>) -> Vec<usize> {
    let values: Vec<f64> = values.collect();
    let least = values.iter().copied().fold(f64::INFINITY, f64::min);
    (0..values.len()).filter(|&at| values[at] <= least + ALIKE).collect()
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
    if causes.is_empty() {
        return Err(Discard::Unresolved);
    }
    let (client, ages) = (setting.client, drill.ages_months.len());
    let bare = setting.light.lab_of(&Scene::today(shelf, &client.skin, client.site, &[]).bare());
    let own = Seen::of(course, &setting, client.skin, &causes, ages);
    let textbook =
        client.site.skin_of(Skin::from_evidence(client.phototype, Undertone::Neutral, Redness::Calm));
    let textbook = Seen::of(course, &setting, textbook, &causes, ages);
    let labels: Vec<Lab> = causes.iter().step_by(ages).map(|cause| masstone(shelf, cause.paint)).collect();
    let is_visible = |seen: &Appearance| difference(seen.lab, bare) >= VISIBLE;
    if !own.now().iter().any(is_visible) {
        return Err(Discard::NothingToSee);
    }
    // What all causes look like is known: so several of them are tried for a key that has its place among what is blamed.
    let mut found = Err(Discard::NothingToSee);
    let mut keys: Vec<usize> = (0..causes.len()).collect();
    shuffle(&mut draw.rng, &mut keys);
    for at in keys.into_iter().take(KEYS) {
        let shown = own.now()[at];
        if !is_visible(&shown) {
            continue;
        }
        let lean = |lab: &Lab| libm::hypot(lab.a - shown.lab.a, lab.b - shown.lab.b);
        // Somebody of a rule blames a mix, whatever its age, or one cause.
        let expect = |rule: Rule| -> Vec<(Appearance, String, String)> {
            let by_lean = |labs: &[Lab]| about_least(labs.iter().map(lean));
            let (mixes, because) = match rule {
                Rule::MatchLabel => (by_lean(&labels), "exercise-hindsight-label"),
                Rule::AllFadeAlike => (by_lean(own.healed()), "exercise-hindsight-healed"),
                Rule::BlueMeansBlue => {
                    (about_least(labels.iter().map(|lab| lab.b)), "exercise-hindsight-blue")
                }
                Rule::FreshIsFinal => (by_lean(own.fresh()), "exercise-hindsight-fresh"),
                Rule::OneForPhototype => {
                    let distances = textbook.now().iter().map(|seen| difference(seen.lab, shown.lab));
                    (about_least(distances), "exercise-hindsight-textbook")
                }
                _ => (Vec::new(), ""),
            };
            let of_each_age = |mix: usize| mix * ages..(mix + 1) * ages;
            let blamed: Vec<usize> = match rule {
                Rule::OneForPhototype => mixes,
                _ => mixes.into_iter().flat_map(of_each_age).collect(),
            };
            let said = |at: usize| {
                let seen = own.now()[at];
                let reading = Reading::of(seen.lab, bare, client.site).said(language);
                (seen, said(course, &causes[at]), say!(language, because, reading = reading))
            };
            blamed.into_iter().map(said).collect()
        };
        let expected = Expected {
            seen: shown,
            label: said(course, &causes[at]),
            because: say!(
                language,
                "exercise-hindsight-right",
                reading = Reading::of(shown.lab, bare, client.site).said(language)
            ),
            misconception: None,
        };
        found = Prediction::draw(course, drill, &mut draw, bare, expected, expect)
            .map(|prediction| (&causes[at], prediction));
        if found.is_ok() {
            break;
        }
    }
    let (key, prediction) = found?;
    let shown = prediction.options[0].seen;
    let (worlds, held) = prediction.hold(&setting, &draw.words(drill), |world| {
        let scene = world.scene(shelf, &[], key.months);
        setting.light.lab_of(&scene.with(key.paint, &world.placement))
    })?;
    let proof = Proof {
        searched: causes.len(),
        best_error: 0.0,
        as_it_is: None,
        margin: Some(prediction.margin()),
        worlds,
        held,
        runners_up: prediction.runners_up(),
        discarded: draw.number,
    };
    let ask = say!(language, "exercise-hindsight-ask", client = &client.name);
    let exhibit = Exhibit {
        label: say!(language, "exercise-hindsight-left", client = &client.name),
        seen: shown,
        reading: Reading::of(shown.lab, bare, client.site).in_language(language),
        light: setting.light,
    };
    let mut choices = prediction.choices(course, lesson, bare);
    for choice in &mut choices {
        let cause = own.now().iter().zip(&causes).find(|(seen, _)| Some(**seen) == choice.healed);
        choice.work = cause.map(|(_, cause)| Work {
            paint: cause.paint.clone(),
            placement: setting.placement,
            months: cause.months,
        });
    }
    let mut case = super::Case { goal: None, placed: None, exhibits: vec![exhibit], ..setting.case(course) };
    // The question is about work that the client's own story does not tell of.
    case.now = case.bare;
    case.now_reading = Reading::of(case.bare.lab, case.bare.lab, client.site).in_language(language);
    let form = draw.one_of(drill, choices);
    Ok(draw.finish(lesson, drill, ask, case, form, Some(proof), &engine(course)))
}

/// A cause in words.
fn said(course: &Course, cause: &Cause) -> String {
    let Course { language, shelf, .. } = course;
    let years = language.count(cause.months / 12.0);
    say!(language, "exercise-hindsight-cause", mix = language.mix(shelf, cause.mix), years = years)
}
