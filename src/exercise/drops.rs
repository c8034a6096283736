//! `drops`: count out a mix in whole drops.
//!
//! Every mix within the drill's limits is a possible answer and is marked by what it would heal to; wrong mixes of misconceptions' making
//! serve to diagnose answers.

use super::contest::Contest;
use super::form::{DropsOf, Form};
use super::generate::{Attempt, Discard, engine};
use super::{Exercise, marking};
use crate::course::{Course, Drill, Lesson};
use crate::say;

/// Other mixes with full credit that are named beside the best.
const MOST_NEAR: usize = 3;

/// One attempt at an exercise.
pub(super) fn attempt<'c>(
    course: &'c Course,
    lesson: &Lesson,
    drill: &Drill,
    mut draw: Attempt<'c>,
) -> Result<Exercise, Discard> {
    let contest = Contest::draw(course, drill, &mut draw, drill.options)?;
    let (setting, best) = (&contest.setting, contest.best());
    let judge = contest.judge(course, lesson);
    let tempting = contest.tempting(&judge);
    let near = contest.ranking[1..]
        .iter()
        .take_while(|tried| tried.error - best.error <= marking::FREE)
        .filter(|tried| !course.shelf.is_at_odds(&tried.mix))
        .take(MOST_NEAR)
        .map(|tried| judge.place(tried, None))
        .collect();
    let proof = contest.proof(course, &tempting, draw.number);
    let language = &course.language;
    let ask = say!(
        language,
        "exercise-drops-ask",
        client = &setting.client.name,
        goal = marking::goal_in_words(language, setting.goal),
        drops = drill.limits.drops,
        when = language.after(setting.months)
    );
    let form = Form::Drops(Box::new(DropsOf {
        limits: drill.limits.clone(),
        best: judge.place(best, None),
        near,
        tempting,
        best_error: best.error,
    }));
    Ok(draw.finish(lesson, drill, ask, setting.case(course), form, Some(proof), &engine(course)))
}
