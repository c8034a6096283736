//! What everybody should practise next, as assignments: the files that `healedhue assign` reads.
//!
//! Entry point: [`assignments`]. People with the same lessons share a file, since an assignment has one list of lessons.

use crate::assess::report::Report;
use crate::course::{Course, Date, read_assignment};
use crate::say;
use std::collections::{BTreeMap, BTreeSet};

/// Most people in one assignment.
const MOST_PEOPLE: usize = 500;

/// Assignments out of a report.
pub(super) struct Assignments {
    /// Name and text of each file.
    pub files: Vec<(String, String)>,
    /// Who is in none, and why.
    pub left_out: Vec<String>,
}

/// The lessons that the report tells each person to reread, due on this day.
pub(super) fn assignments(report: &Report, course: &Course, due: Date) -> Assignments {
    let mut groups: BTreeMap<Vec<usize>, Vec<(&str, &str)>> = BTreeMap::new();
    let mut left_out = Vec::new();
    let title = say!(course.language, "report-next-by", date = course.language.date(due));
    let order: Vec<&str> = course.lessons().map(|(_, lesson)| lesson.id.as_str()).collect();
    for person in &report.people {
        let wanted: BTreeSet<usize> = person
            .next
            .iter()
            .flat_map(|next| &next.lessons)
            .filter_map(|lesson| order.iter().position(|id| *id == lesson.id))
            .collect();
        let lessons: Vec<&str> = wanted.iter().map(|&place| order[place]).collect();
        let alone = text(&id_of(due, 0), &title, due, &lessons, &[(&person.id, &person.name)]);
        if lessons.is_empty() {
            left_out.push(format!("{}: there is nothing to practise", person.id));
        } else if let Err(problems) = read_assignment("next.yaml", &alone, course) {
            let why = problems.first().map_or_else(String::new, |problem| problem.message.clone());
            left_out.push(format!("{}: {why}", person.id));
        } else {
            groups.entry(wanted.into_iter().collect()).or_default().push((&person.id, &person.name));
        }
    }
    let mut files = Vec::new();
    for (lessons, people) in &groups {
        let lessons: Vec<&str> = lessons.iter().map(|&place| order[place]).collect();
        for some in people.chunks(MOST_PEOPLE) {
            let id = id_of(due, files.len() + 1);
            let text = text(&id, &title, due, &lessons, some);
            files.push((format!("{id}.yaml"), text));
        }
    }
    Assignments { files, left_out }
}

/// The day is part of the id, so that the next term's sets are others than this one's, in folders and in the mark book.
fn id_of(due: Date, number: usize) -> String {
    format!("next-{due}-{number}")
}

/// An assignment as YAML; texts are quoted as in JSON, which YAML reads alike.
fn text(id: &str, title: &str, due: Date, lessons: &[&str], people: &[(&str, &str)]) -> String {
    let quoted = |text: &str| serde_json::to_string(text).unwrap_or_default();
    let mut text = format!(
        "id: {id}\ntitle: {}\ndue: {due}\nlessons: [{}]\npeople:\n",
        quoted(title),
        lessons.join(", ")
    );
    for (id, name) in people {
        text += &format!("  - {{id: {}, name: {}}}\n", quoted(id), quoted(name));
    }
    text
}
