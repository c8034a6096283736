//! What a session says before its first exercise and after its last.

use super::super::belief::belief_in_words;
use super::super::terminal::{Painter, wrapped};
use super::telling::percent;
use crate::assess::knowledge::{Progress, Step};
use crate::assess::session::{Level, Summary};
use crate::course::Course;

/// A skill's name; its id where the course has no such skill.
pub(super) fn skill_name<'a>(course: &'a Course, id: &'a str) -> &'a str {
    course.skills.iter().find(|skill| skill.id == id).map_or(id, |skill| &skill.name)
}

/// What is known from earlier sessions; empty for a beginner.
pub(super) fn so_far(progress: &Progress) -> String {
    let answers: u64 = progress.skills.values().map(|trace| u64::from(trace.answers)).sum();
    match (answers, progress.skills.len()) {
        (0, _) => String::new(),
        (1, _) => "So far: one answer.\n".to_owned(),
        (answers, 1) => format!("So far: {answers} answers in one skill.\n"),
        (answers, skills) => wrapped(&format!("So far: {answers} answers in {skills} skills."), 0) + "\n",
    }
}

/// What a session of so many minutes will probably ask.
pub(super) fn plan(course: &Course, steps: &[(&str, Step)]) -> String {
    let mut counts: Vec<(&str, usize)> = Vec::new();
    for (skill, _) in steps {
        match counts.iter_mut().find(|(id, _)| id == skill) {
            Some((_, count)) => *count += 1,
            None => counts.push((skill, 1)),
        }
    }
    let listed: Vec<String> =
        counts.iter().map(|(skill, count)| format!("{} ({count})", skill_name(course, skill))).collect();
    let about = match steps.len() {
        1 => "one exercise".to_owned(),
        count => format!("about {count} exercises"),
    };
    wrapped(&format!("Plan: {about}: {}. It changes with your answers.", listed.join("; ")), 0) + "\n"
}

/// The end of a session.
pub(super) fn summary(course: &Course, painter: Painter, summary: &Summary) -> String {
    if summary.skills.is_empty() {
        return "No exercise was answered.\n".to_owned();
    }
    let mut text = painter.strong("Summary") + "\n";
    for change in &summary.skills {
        text += &(wrapped(skill_name(course, &change.skill), 2) + "\n");
        let asked =
            if change.answers == 1 { "one answer".to_owned() } else { format!("{} answers", change.answers) };
        let (before, after) = (Level::of(change.before), Level::of(change.after));
        text += &(wrapped(
            &format!(
                "{asked}, credit {}. Known before: {} ({}), now: {} ({}).",
                percent(change.credit),
                before.words(),
                percent(change.before),
                after.words(),
                percent(change.after)
            ),
            4,
        ) + "\n");
    }
    if !summary.next.is_empty() {
        text += &(painter.strong("To practise next") + "\n");
        for skill in &summary.next {
            text += &(wrapped(skill_name(course, skill), 2) + "\n");
        }
    }
    let lessons: Vec<(&str, usize)> = summary
        .reread
        .iter()
        .filter_map(|(id, count)| Some((course.lesson(id)?.1.page.title.as_str(), *count)))
        .collect();
    if !lessons.is_empty() {
        text += &(painter.strong("To reread") + "\n");
        for (title, count) in lessons {
            let answers = if count == 1 { "one answer".to_owned() } else { format!("{count} answers") };
            text += &(wrapped(&format!("{title} ({answers})"), 2) + "\n");
        }
    }
    if !summary.misconceptions.is_empty() {
        text += &(painter.strong("Beliefs that showed") + "\n");
        for count in &summary.misconceptions {
            let Some(said) = belief_in_words(course, count) else { continue };
            let often = if count.stands_out { " It seems to be a habit." } else { "" };
            let said = format!("{said}.{often}");
            text += &(wrapped(&said, 2) + "\n");
        }
    }
    text + &wrapped(
        "Percentages are estimates of how well a skill is known. They fall with the days without practice.",
        0,
    ) + "\n"
}
