//! `drops`: count out a mix in whole drops.
//!
//! Every mix within the drill's limits is a possible answer and is marked by what it would heal to. Steps: draw a setting; rank the
//! whole drop grid; the best mix must reach the goal; misconceptions must make visibly worse mixes, by which answers are diagnosed;
//! the best must stay better than all of those in worlds that differ a little.

use super::draw::{Setting, ranked};
use super::form::{DropsOf, Form};
use super::generate::{Attempt, Discard, ENGINE};
use super::grid::grid_of;
use super::judge::Judge;
use super::rules::Tempter;
use super::tempt::{is_wrong, key_is_best, temptations};
use super::worlds::{WORLDS, scene_in, try_worlds};
use super::{Exercise, Proof, marking};
use crate::course::{Course, Drill, Lesson};

/// Other mixes with full credit that are named beside the best.
const MOST_NEAR: usize = 5;

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
    let wrong = temptations(course, drill, &tempter, &mut draw, drill.options, acceptable)?;
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
    let tempting: Vec<_> =
        wrong.iter().map(|wrong| judge.place(&ranking[wrong.place], Some(&wrong.misconception))).collect();
    let near = ranking[1..]
        .iter()
        .take_while(|tried| tried.error - best.error <= marking::FREE)
        .take(MOST_NEAR)
        .map(|tried| judge.place(tried, None))
        .collect();
    let proof = Proof {
        searched: ranking.len(),
        best_error: best.error,
        margin: Some(marking::least_excess(&tempting, best.error)),
        worlds,
        held,
        discarded: draw.number,
    };
    let ask = format!(
        "{} wishes for {}. Mix {} drops that come as near to it as you can, judged {}.",
        setting.client.name,
        marking::goal_in_words(setting.goal),
        drill.limits.drops,
        marking::when_in_words(setting.months)
    );
    let form = Form::Drops(Box::new(DropsOf {
        limits: drill.limits.clone(),
        best: judge.place(best, None),
        near,
        tempting,
        best_error: best.error,
    }));
    Ok(draw.finish(lesson, drill, ask, setting.case(shelf), form, Some(proof), ENGINE))
}
