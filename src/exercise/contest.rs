//! Mixes that contest for a goal: what `bottle` and `drops` have in common.
//!
//! Entry point: [`Contest::draw`]. Steps: draw a setting; rank the whole drop grid; the best mix must reach the goal; misconceptions
//! must make visibly worse mixes; the best must stay better than all of those in worlds that differ a little. What is cheap comes
//! first.

use super::draw::{Setting, ranked};
use super::generate::{Attempt, Discard};
use super::grid::{may_be_right, sensible_best};
use super::judge::Judge;
use super::place::Shown;
use super::rules::Tempter;
use super::tempt::{Fit, Temptation, Wording, best_in, is_wrong, temptations};
use super::worlds::{WORLDS, try_worlds};
use super::{Choice, Proof, RUNNERS_UP, RunnerUp, marking};
use crate::course::{Course, Drill, Family, Lesson};
use crate::healing::{Reading, Scene, Tone};
use crate::search::Tried;

/// A setting in which one mix is proved to be the best.
pub(super) struct Contest<'c> {
    pub setting: Setting<'c>,
    /// Every mix, nearest to the goal first.
    pub ranking: Vec<Tried>,
    scene: Scene<'c>,
    wrong: Vec<Temptation>,
    wording: Wording,
    worlds: u32,
    held: u32,
}

impl<'c> Contest<'c> {
    /// A contest with so many wrong mixes.
    ///
    /// # Errors
    /// [`Discard`] says which condition failed.
    pub fn draw(
        course: &'c Course,
        drill: &Drill,
        draw: &mut Attempt<'c>,
        wrong: usize,
    ) -> Result<Self, Discard> {
        let setting = Setting::safe(course, drill, draw)?;
        let shelf = &course.shelf;
        let scene = setting.scene(shelf);
        let ranking = ranked(shelf, &setting, &drill.limits, (&setting.existing, &scene));
        let best = sensible_best(shelf, &ranking)?;
        if best.error > setting.goal.tolerance {
            return Err(Discard::GoalOutOfReach);
        }
        may_be_right(course, drill, &best.mix)?;
        reads_as_wished(&setting, &scene, best)?;
        let tempter = Tempter::new(shelf, &setting, &drill.limits, &ranking);
        let acceptable = |place| is_wrong(drill, shelf, &setting, &ranking, place);
        // Where mixes are counted out, none is shown.
        let (wording, fit) = match drill.family {
            Family::Bottle => {
                let wording = draw.wording_of_mixes(drill);
                let shown = Shown::of(&drill.limits, wording);
                (wording, Fit::Beside(draw.place(drill, wrong + 1, shown)))
            }
            _ => (Wording::Plain, Fit::Any),
        };
        let wrong = temptations(course, drill, &tempter, draw, (wrong, wording), acceptable, &fit)?;
        let (worlds, held) = try_worlds(&setting, &draw.words(drill), |world| {
            let scene = world.scene(shelf, &setting.existing, setting.months);
            best_in(&scene.trial(&world.placement), &setting, &ranking, &wrong).is_some()
        });
        if worlds < WORLDS {
            return Err(Discard::Unstable);
        }
        Ok(Contest { setting, ranking, scene, wrong, wording, worlds, held })
    }

    /// The best mix.
    pub fn best(&self) -> &Tried {
        // A contest without any mix is none: `draw` refuses it.
        &self.ranking[0]
    }

    /// Who judges mixes here.
    pub fn judge<'j>(&'j self, course: &'j Course, lesson: &'j Lesson) -> Judge<'j, 'j> {
        Judge {
            course,
            lesson,
            setting: &self.setting,
            scene: &self.scene,
            trial: self.scene.trial(&self.setting.placement),
            best_error: self.best().error,
            wording: self.wording,
        }
    }

    /// The wrong mixes with their marks.
    pub fn tempting(&self, judge: &Judge) -> Vec<Choice> {
        let choice = |wrong: &Temptation| judge.place(&self.ranking[wrong.place], Some(&wrong.misconception));
        self.wrong.iter().map(choice).collect()
    }

    /// What was proved of the best mix among these wrong ones; draws were thrown away before.
    pub fn proof(&self, course: &Course, tempting: &[Choice], discarded: u32) -> Proof {
        let best_error = self.best().error;
        Proof {
            searched: self.ranking.len(),
            best_error,
            as_it_is: None,
            margin: Some(marking::least_excess(tempting, best_error)),
            worlds: self.worlds,
            held: self.held,
            runners_up: runners_up(course, &self.ranking[1..]),
            discarded,
        }
    }
}

/// Makes sure that the best mix is as plain a brown as its goal, however small the distance: nobody who wishes for brown is told that grey is the best.
fn reads_as_wished(setting: &Setting, scene: &Scene, best: &Tried) -> Result<(), Discard> {
    let bare = setting.light.lab_of(&scene.bare());
    let is_brown =
        |lab| matches!(Reading::of(lab, bare, setting.client.site).tone, Tone::Neutral | Tone::Warm);
    if is_brown(setting.goal.lab) && !is_brown(best.healed) { Err(Discard::OtherTone) } else { Ok(()) }
}

/// The first of these mixes, in words.
pub(super) fn runners_up(course: &Course, ranking: &[Tried]) -> Vec<RunnerUp> {
    let mixes = ranking.iter().take(RUNNERS_UP);
    mixes
        .map(|tried| RunnerUp { label: course.language.mix(&course.shelf, &tried.mix), error: tried.error })
        .collect()
}
