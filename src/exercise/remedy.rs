//! `remedy`: correct existing work with colour, have it lightened first, or refer.
//!
//! What is right is not a matter of taste: a caution among the client's health answers decides for referring (or waiting);
//! otherwise the engine does. Colour is right if some mix of the drop grid reaches the goal. Lightening is right if every mix
//! misses it by more than an eye forgives, and some mix would reach it over the lightened work. Cases in between are not asked.

use super::draw::{Setting, ranked};
use super::generate::{Attempt, Discard, engine};
use super::grid::grid_of;
use super::judge::Judge;
use super::rules::Tempter;
use super::tempt::{Temptation, best_in, is_wrong, temptations};
use super::worlds::{WORLDS, scene_in, try_worlds};
use super::{Action, Choice, Exercise, Proof, marking};
use crate::course::words::CautionAction;
use crate::course::{Caution, Course, Drill, Lesson, Rule};
use crate::healing::{Placement, Scene, Trial, Work, World};
use crate::language::Language;
use crate::pigment::{Paint, Shelf};
use crate::say;
use crate::search::{Grid, Tried};

/// Share of the old work that lightening leaves (representative: after several sessions by somebody licensed).
const LIGHTENED: f64 = 0.1;

/// What is right for a client.
enum Verdict<'c> {
    /// Place the best mix.
    Colour,
    /// Lighten or remove first; the best mix then comes this near to the goal.
    Lighten { afterwards: f64 },
    /// A caution forbids work today.
    Refrain(&'c Caution),
}

/// One attempt at an exercise.
pub(super) fn attempt(
    course: &Course,
    lesson: &Lesson,
    drill: &Drill,
    mut draw: Attempt,
) -> Result<Exercise, Discard> {
    let setting = Setting::draw(course, drill, draw.client, &mut draw.rng).ok_or(Discard::Unresolved)?;
    if setting.existing.is_empty() {
        return Err(Discard::NothingToCorrect);
    }
    let shelf = &course.shelf;
    let scene = setting.scene(shelf);
    let grid = grid_of(shelf, &drill.limits);
    let ranking = ranked(&setting, &scene, &grid);
    let best_error = ranking.first().ok_or(Discard::Unresolved)?.error;
    let verdict = verdict(course, drill, &setting, &ranking, &grid)?;
    // Two options are always there: to have the work lightened, and to do nothing today.
    let colours = drill.options.saturating_sub(2).max(1);
    let tempter = Tempter::new(shelf, &setting, &drill.limits, &ranking);
    let wrong = match &verdict {
        Verdict::Colour => {
            let acceptable = |place| is_wrong(drill, &setting, &ranking, place);
            temptations(course, drill, &tempter, &mut draw, colours - 1, acceptable)?
        }
        // Where no mix is right, the best one is the first temptation, and the others need only be others.
        Verdict::Lighten { .. } | Verdict::Refrain(_) => {
            let colour_always =
                by_rule(course, drill, Rule::ColourAlways).ok_or(Discard::TooFewTemptations)?;
            let mut wrong = vec![Temptation { place: 0, misconception: colour_always.to_owned() }];
            wrong.extend(temptations(course, drill, &tempter, &mut draw, colours - 1, |place| place != 0)?);
            wrong
        }
    };
    let doubt = Doubt {
        shelf,
        setting: &setting,
        ranking: &ranking,
        tolerance: setting.goal.tolerance,
        margin: drill.margin,
    };
    let words = draw.words(drill);
    let trials = match &verdict {
        Verdict::Colour => Some(try_worlds(&setting, &words, |world| doubt.colour_holds(world, &wrong))),
        Verdict::Lighten { .. } => Some(try_worlds(&setting, &words, |world| doubt.lighten_holds(world))),
        // A caution does not depend on the colour of the skin: there is nothing to try.
        Verdict::Refrain(_) => None,
    };
    if trials.is_some_and(|(worlds, _)| worlds < WORLDS) {
        return Err(Discard::Unstable);
    }
    let judge = Judge {
        course,
        lesson,
        setting: &setting,
        scene: &scene,
        trial: scene.trial(&setting.placement),
        best_error: match &verdict {
            Verdict::Lighten { afterwards } => *afterwards,
            _ => best_error,
        },
    };
    let mut options = Vec::new();
    if matches!(verdict, Verdict::Colour) {
        options.push(judge.place(&ranking[0], None));
    }
    options.extend(wrong.iter().map(|wrong| judge.place(&ranking[wrong.place], Some(&wrong.misconception))));
    options.push(lighten(&judge, drill, &verdict)?);
    options.push(refrain(&judge, drill, &verdict)?);
    if let Verdict::Refrain(caution) = &verdict {
        forbid_colour(&course.language, &mut options, caution);
    }
    // The right answer first, as everywhere: finishing shuffles.
    options.sort_by(|one, other| other.mark.credit.total_cmp(&one.mark.credit));
    let proof = trials.map(|(worlds, held)| Proof {
        searched: ranking.len(),
        best_error: judge.best_error,
        margin: Some(marking::least_excess(&options, judge.best_error)),
        worlds,
        held,
        discarded: draw.number,
    });
    let source = match &verdict {
        Verdict::Refrain(caution) => caution.source.clone(),
        _ => engine(course),
    };
    let language = &course.language;
    let ask = say!(
        language,
        "exercise-remedy-ask",
        client = &setting.client.name,
        goal = marking::goal_in_words(language, setting.goal)
    );
    let form = draw.one_of(options);
    Ok(draw.finish(lesson, drill, ask, setting.case(course), form, proof, &source))
}

/// What is right in a setting.
fn verdict<'c>(
    course: &'c Course,
    drill: &Drill,
    setting: &Setting,
    ranking: &[Tried],
    grid: &Grid,
) -> Result<Verdict<'c>, Discard> {
    if let Some(caution) = setting.client.health.iter().find_map(|note| course.caution(&note.caution)) {
        return Ok(Verdict::Refrain(caution));
    }
    let best = ranking[0].error;
    if best <= setting.goal.tolerance {
        return Ok(Verdict::Colour);
    }
    if best < setting.goal.tolerance + drill.margin {
        return Err(Discard::Arguable);
    }
    let client = setting.client;
    let scene =
        Scene::new(&course.shelf, &client.skin, client.site, &lightened(&setting.existing), setting.months);
    let afterwards = ranked(setting, &scene, grid)[0].error;
    if afterwards <= setting.goal.tolerance {
        Ok(Verdict::Lighten { afterwards })
    } else {
        Err(Discard::GoalOutOfReach)
    }
}

/// The old work after lightening.
fn lightened(existing: &[Work]) -> Vec<Work> {
    existing
        .iter()
        .map(|work| Work {
            placement: Placement { load: work.placement.load * LIGHTENED, ..work.placement },
            ..work.clone()
        })
        .collect()
}

/// Asks of a world whether the verdict would turn into the other one there: colour where every mix misses the goal by the margin,
/// lightening where some mix reaches it, or where lightening does not help.
struct Doubt<'a> {
    shelf: &'a Shelf,
    setting: &'a Setting<'a>,
    ranking: &'a [Tried],
    tolerance: f64,
    margin: f64,
}

impl Doubt<'_> {
    /// The best mix beats the wrong ones, and some mix comes nearer to the goal than would call for lightening.
    fn colour_holds(&self, world: &World, wrong: &[Temptation]) -> bool {
        let scene = scene_in(world, self.shelf, self.setting, &self.setting.existing);
        let trial = scene.trial(&world.placement);
        let near = self.tolerance + self.margin;
        // The best mix is asked first, and its distance is known.
        best_in(&trial, self.setting, self.ranking, wrong)
            .is_some_and(|best| best <= near || self.comes_within(&trial, near))
    }

    /// No mix reaches the goal over the old work, and some mix comes near it over the lightened work.
    fn lighten_holds(&self, world: &World) -> bool {
        // Asked first, since the first mixes tell; that no mix reaches the goal takes all of them.
        let scene = scene_in(world, self.shelf, self.setting, &lightened(&self.setting.existing));
        if !self.comes_within(&scene.trial(&world.placement), self.tolerance + self.margin) {
            return false;
        }
        let scene = scene_in(world, self.shelf, self.setting, &self.setting.existing);
        !self.comes_within(&scene.trial(&world.placement), self.tolerance)
    }

    /// Whether some mix comes within this distance of the goal; the likeliest are tried first.
    fn comes_within(&self, trial: &Trial, distance: f64) -> bool {
        let error = |paint: &Paint| self.setting.error(self.setting.light.lab_of(&trial.with(paint)));
        self.ranking.iter().any(|tried| error(&tried.paint) <= distance)
    }
}

/// The drill's misconception with this rule.
fn by_rule<'d>(course: &Course, drill: &'d Drill, rule: Rule) -> Option<&'d str> {
    drill
        .tempts
        .iter()
        .find(|id| course.misconception(id).is_some_and(|misconception| misconception.rule == rule))
        .map(String::as_str)
}

/// The option to have the old work lightened.
fn lighten(judge: &Judge, drill: &Drill, verdict: &Verdict) -> Result<Choice, Discard> {
    let language = &judge.course.language;
    let label = language.say("exercise-remedy-lighten", &[]);
    let (credit, consequence, misconception) = match verdict {
        Verdict::Lighten { afterwards } => (
            1.0,
            say!(language, "exercise-remedy-lighten-right", distance = language.decimal(*afterwards, 1)),
            None,
        ),
        Verdict::Colour => (
            0.0,
            language.say("exercise-remedy-lighten-needless", &[]),
            Some(by_rule(judge.course, drill, Rule::AlwaysLighten).ok_or(Discard::TooFewTemptations)?),
        ),
        Verdict::Refrain(caution) => (
            0.0,
            say!(language, "exercise-remedy-lighten-unsafe", caution = &caution.name, say = &caution.say),
            Some(by_rule(judge.course, drill, Rule::AlwaysLighten).ok_or(Discard::TooFewTemptations)?),
        ),
    };
    Ok(judge.refrain(Action::Lighten, label, credit, consequence, misconception))
}

/// The option to do nothing today.
fn refrain(judge: &Judge, drill: &Drill, verdict: &Verdict) -> Result<Choice, Discard> {
    let language = &judge.course.language;
    let label = language.say("exercise-remedy-refrain", &[]);
    let (credit, consequence, misconception) = match verdict {
        Verdict::Refrain(caution) => {
            let what = match caution.action {
                CautionAction::Wait => "exercise-remedy-wait",
                CautionAction::Refer => "exercise-remedy-refer",
            };
            (
                1.0,
                say!(
                    language,
                    what,
                    caution = &caution.name,
                    say = &caution.say,
                    who = &caution.refer_to,
                    source = &caution.source
                ),
                None,
            )
        }
        _ => (
            0.0,
            language.say("exercise-remedy-refrain-needless", &[]),
            Some(by_rule(judge.course, drill, Rule::ReferAnything).ok_or(Discard::TooFewTemptations)?),
        ),
    };
    Ok(judge.refrain(Action::Refer, label, credit, consequence, misconception))
}

/// Safety is all or nothing: where a caution forbids work, colour earns nothing, however well it would heal.
fn forbid_colour(language: &Language, options: &mut [Choice], caution: &Caution) {
    for option in options.iter_mut().filter(|option| matches!(option.action, Action::Place(_))) {
        option.mark.credit = 0.0;
        option.mark.consequence = say!(
            language,
            "exercise-remedy-unsafe",
            caution = &caution.name,
            say = &caution.say,
            who = &caution.refer_to
        );
    }
}
