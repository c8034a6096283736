//! What came back of an assignment, in words. Entry point: [`told`].

use super::super::belief::how_often;
use super::super::slips::no_slip_of;
use super::super::terminal::{Painter, When, wrapped};
use super::CameBack;
use crate::assess::assigned::SlipMarked;
use crate::assess::visible;
use crate::course::{Assignment, Course};
use crate::say;

/// The marks of an assignment's slips.
pub(super) fn told(
    course: &Course,
    assignment: &Assignment,
    CameBack { marked, together }: &CameBack,
) -> String {
    let painter = Painter::new(When::Auto);
    let language = &course.language;
    let (all, missing) = (assignment.people.len(), together.missing.len());
    let handed =
        say!(language, "assign-told-handed-in", title = &assignment.title, count = all - missing, all = all);
    let mut text = wrapped(&visible(&handed), 0) + "\n";
    for one in marked {
        text += &person_told(course, painter, &one.marks);
    }
    if !together.missing.is_empty() {
        let names = together.missing.iter().filter_map(|id| assignment.person(id));
        text += &no_slip_of(language, painter, names.map(|person| person.name.as_str()));
    }
    if !together.misconceptions.is_empty() {
        text += &(painter.strong(&say!(language, "practice-summary-beliefs")) + "\n");
        for count in &together.misconceptions {
            let Some(found) = course.misconception(&count.misconception) else { continue };
            let said = say!(
                language,
                "assign-told-belief",
                belief = &found.belief,
                often = how_often(language, count),
                people = count.people_chosen,
                all = count.people_offered
            );
            text += &(wrapped(&said, 2) + "\n");
        }
    }
    text
}

fn person_told(course: &Course, painter: Painter, slip: &SlipMarked) -> String {
    let language = &course.language;
    let mut text = painter.strong(&visible(&slip.name)) + "\n";
    let said = say!(
        language,
        "assign-told-credit",
        credit = language.percent(slip.credit),
        answered = slip.answered,
        all = slip.answers.len()
    );
    text += &(wrapped(&said, 2) + "\n");
    for answer in slip.answers.iter().filter(|answer| answer.credit < 1.0) {
        let (given, consequence) = match answer.answer.is_empty() {
            true => (say!(language, "assign-told-blank"), ""),
            false => (answer.answer.clone(), answer.consequence.as_str()),
        };
        let credit = language.percent(answer.credit);
        let said =
            say!(language, "assign-told-answer", number = answer.number, given = given, credit = credit);
        text += &(wrapped(&format!("{said} {consequence}"), 4) + "\n");
    }
    for habit in slip.misconceptions.iter().filter(|count| count.stands_out) {
        if let Some(found) = course.misconception(&habit.misconception) {
            text += &(wrapped(&say!(language, "assign-told-habit", belief = &found.belief), 2) + "\n");
        }
    }
    let titles: Vec<&str> = slip
        .reread
        .iter()
        .filter_map(|id| course.lesson(id))
        .map(|(_, lesson)| lesson.page.title.as_str())
        .collect();
    if !titles.is_empty() {
        text += &(wrapped(&say!(language, "assign-told-reread", lessons = titles.join("; ")), 2) + "\n");
    }
    text
}
