//! `bottle`: choose the mix that heals nearest to the goal, among wrong mixes of misconceptions' making.

use super::contest::Contest;
use super::generate::{Attempt, Discard, engine};
use super::{Exercise, marking};
use crate::course::{Course, Drill, Lesson};
use crate::say;

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
    let proof = contest.proof(course, &options, draw.number);
    let language = &course.language;
    let ask = say!(
        language,
        "exercise-bottle-ask",
        client = &setting.client.name,
        goal = marking::goal_in_words(language, setting.goal),
        when = language.after(setting.months)
    );
    let form = draw.one_of(drill, options);
    Ok(draw.finish(lesson, drill, ask, setting.case(course), form, Some(proof), &engine(course)))
}
