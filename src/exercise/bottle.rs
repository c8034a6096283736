//! `bottle`: choose the mix that heals nearest to the goal, among wrong mixes of misconceptions' making.

use super::contest::Contest;
use super::generate::{Attempt, Discard, ENGINE};
use super::{Exercise, marking};
use crate::course::{Course, Drill, Lesson};

/// One attempt at an exercise.
pub(super) fn attempt<'c>(
    course: &'c Course,
    lesson: &Lesson,
    drill: &Drill,
    mut draw: Attempt<'c>,
) -> Result<Exercise, Discard> {
    let contest = Contest::draw(course, drill, &mut draw, drill.options - 1)?;
    let setting = &contest.setting;
    let judge = contest.judge(course, lesson);
    let mut options = vec![judge.place(contest.best(), None)];
    options.extend(contest.tempting(&judge));
    let proof = contest.proof(&options, draw.number);
    let ask = format!(
        "{} wishes for {}. Which mix comes nearest to it, judged {}?",
        setting.client.name,
        marking::goal_in_words(setting.goal),
        marking::when_in_words(setting.months)
    );
    let form = draw.one_of(options);
    Ok(draw.finish(lesson, drill, ask, setting.case(&course.shelf), form, Some(proof), ENGINE))
}
