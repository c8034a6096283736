//! `bottle`: choose the mix that heals nearest to the goal.
//!
//! Steps: draw a setting; rank the whole drop grid; take as key the best mix, if it reaches the goal; let misconceptions make
//! wrong mixes that are visibly worse; try everything in worlds that differ a little.

use super::draw::{Setting, ranked};
use super::generate::ENGINE;
use super::generate::{Attempt, Discard};
use super::grid::grid_of;
use super::judge::Judge;
use super::rules::Tempter;
use super::tempt::{is_wrong, key_is_best, temptations};
use super::worlds::{WORLDS, scene_in, try_worlds};
use super::{Exercise, Proof, marking};
use crate::course::{Course, Drill, Lesson};

/// One attempt at an exercise.
pub(super) fn attempt(
    course: &Course,
    lesson: &Lesson,
    drill: &Drill,
    mut draw: Attempt,
) -> Result<Exercise, Discard> {
    let setting = Setting::draw(course, drill, draw.client, &mut draw.rng).ok_or(Discard::Unresolved)?;
    if !setting.client.health.is_empty() {
        return Err(Discard::Caution);
    }
    let shelf = &course.shelf;
    let scene = setting.scene(shelf);
    let ranking = ranked(&setting, &scene, &grid_of(shelf, &drill.limits));
    let best = ranking.first().ok_or(Discard::Unresolved)?;
    if best.error > setting.goal.tolerance {
        return Err(Discard::GoalOutOfReach);
    }
    let tempter = Tempter::new(shelf, &setting, &drill.limits, &ranking);
    let acceptable = |place| is_wrong(drill, &setting, &ranking, place);
    let wrong = temptations(course, drill, &tempter, &mut draw, drill.options - 1, acceptable)?;
    let (worlds, held) = try_worlds(&setting, &draw.words(drill), |world| {
        let scene = scene_in(world, shelf, &setting, &setting.existing);
        key_is_best(&scene.trial(&world.placement), &setting, &ranking, &wrong)
    });
    if worlds < WORLDS {
        return Err(Discard::Unstable);
    }
    let judge = Judge {
        course,
        lesson,
        setting: &setting,
        scene: &scene,
        trial: scene.trial(&setting.placement),
        best_error: best.error,
    };
    let mut options = vec![judge.place(best, None)];
    options.extend(wrong.iter().map(|wrong| judge.place(&ranking[wrong.place], Some(&wrong.misconception))));
    let proof = Proof {
        searched: ranking.len(),
        best_error: best.error,
        margin: Some(marking::least_excess(&options, best.error)),
        worlds,
        held,
        discarded: draw.number,
    };
    let ask = format!(
        "{} wishes for {}. Which mix comes nearest to it, judged {}?",
        setting.client.name,
        marking::goal_in_words(setting.goal),
        marking::when_in_words(setting.months)
    );
    let form = draw.one_of(options);
    Ok(draw.finish(lesson, drill, ask, setting.case(shelf), form, Some(proof), ENGINE))
}
