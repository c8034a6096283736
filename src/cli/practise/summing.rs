//! What a session says before its first exercise and after its last.

use super::super::belief::how_often;
use super::super::terminal::{Painter, wrapped};
use super::telling::percent;
use crate::assess::knowledge::{Progress, Step};
use crate::assess::session::{Level, Summary};
use crate::course::Course;
use crate::language::Language;
use crate::say;

/// A skill's name; its id where the course has no such skill.
pub(super) fn skill_name<'a>(course: &'a Course, id: &'a str) -> &'a str {
    course.skills.iter().find(|skill| skill.id == id).map_or(id, |skill| &skill.name)
}

/// What is known from earlier sessions; empty for a beginner.
pub(super) fn so_far(language: &Language, progress: &Progress) -> String {
    let answers: u64 = progress.skills.values().map(|trace| u64::from(trace.answers)).sum();
    let skills = progress.skills.len();
    let said = match answers {
        0 => return String::new(),
        1 => say!(language, "terminal-so-far-one"),
        _ => say!(language, "terminal-so-far", answers = answers, skills = skills),
    };
    wrapped(&said, 0) + "\n"
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
    let said = say!(course.language, "terminal-plan", count = steps.len(), skills = listed.join("; "));
    wrapped(&said, 0) + "\n"
}

/// The end of a session.
pub(super) fn summary(course: &Course, painter: Painter, summary: &Summary) -> String {
    let language = &course.language;
    let head = |id: &str| painter.strong(&language.say(id, &[])) + "\n";
    if summary.skills.is_empty() {
        return say!(language, "practice-summary-none") + "\n";
    }
    let mut text = head("terminal-summary");
    for change in &summary.skills {
        text += &(wrapped(skill_name(course, &change.skill), 2) + "\n");
        let level = |known| language.say(Level::of(known).message(), &[]);
        let said = say!(
            language,
            "terminal-change",
            count = change.answers,
            credit = percent(language, change.credit),
            before = level(change.before),
            share_before = percent(language, change.before),
            after = level(change.after),
            share_after = percent(language, change.after)
        );
        text += &(wrapped(&said, 4) + "\n");
    }
    if !summary.next.is_empty() {
        text += &head("practice-summary-next");
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
        text += &head("practice-summary-reread");
        for (title, count) in lessons {
            let said = say!(language, "terminal-reread", lesson = title, count = count);
            text += &(wrapped(&said, 2) + "\n");
        }
    }
    if !summary.misconceptions.is_empty() {
        text += &head("practice-summary-beliefs");
        for count in &summary.misconceptions {
            let Some(misconception) = course.misconception(&count.misconception) else { continue };
            let often = how_often(language, count);
            let mut said = say!(language, "terminal-belief", belief = &misconception.belief, often = often);
            if count.stands_out {
                said = format!("{said} {}", say!(language, "practice-habit"));
            }
            text += &(wrapped(&said, 2) + "\n");
        }
    }
    text + &wrapped(&say!(language, "terminal-percentages"), 0) + "\n"
}
