//! Which skills build on which, as the course's lessons have it. Entry point: [`prerequisites`].

use crate::course::{Course, Lesson};
use std::collections::BTreeSet;

/// A skill and what it builds on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SkillPrerequisites<'c> {
    /// Id of the skill.
    pub skill: &'c str,
    /// Ids of the skills it builds on, in the order of the course's file.
    pub needs: Vec<&'c str>,
}

/// For every skill that some lesson trains, in the order of the course's file: the skills it builds on.
///
/// A skill is introduced by the first lesson, in teaching order, that trains it. It builds on every skill that a lesson named in
/// that lesson's `needs` trains, and that was introduced before it. Since each need is introduced earlier, skills never need
/// each other in a circle.
pub fn prerequisites(course: &Course) -> Vec<SkillPrerequisites<'_>> {
    let lessons: Vec<(&Lesson, BTreeSet<&str>)> =
        course.lessons().map(|(_, lesson)| (lesson, trained(lesson))).collect();
    let introduced = |skill: &str| lessons.iter().position(|(_, skills)| skills.contains(skill));
    let needs_of = |skill: &str| {
        let first = introduced(skill)?;
        let needed: BTreeSet<&str> = lessons[first]
            .0
            .needs
            .iter()
            .filter_map(|id| lessons.iter().find(|(lesson, _)| lesson.id == *id))
            .flat_map(|(_, skills)| skills.iter().copied())
            .filter(|need| introduced(need).is_some_and(|at| at < first))
            .collect();
        Some(needed)
    };
    let ids = || course.skills.iter().map(|skill| skill.id.as_str());
    ids()
        .filter_map(|skill| {
            let needed = needs_of(skill)?;
            Some(SkillPrerequisites { skill, needs: ids().filter(|id| needed.contains(id)).collect() })
        })
        .collect()
}

/// Ids of the skills that a lesson or one of its drills trains.
fn trained(lesson: &Lesson) -> BTreeSet<&str> {
    lesson.skills.iter().chain(lesson.drills.iter().map(|drill| &drill.skill)).map(String::as_str).collect()
}
