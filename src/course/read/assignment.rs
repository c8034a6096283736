//! The file of an assignment.

use super::Reader;
use super::fields::Fields;
use super::names::Thing;
use super::node::{Node, NodeKind};
use super::suggest::quoted;
use crate::course::assignment::{Assignment, Date, Person, unfit_name};
use crate::course::source::Place;
use crate::course::{Course, bounds};
use std::collections::BTreeSet;

/// People that one assignment may be for.
const MOST_PEOPLE: usize = 500;
/// Longest id, so that it is fit for a name of a folder.
const MOST_ID: usize = 64;

/// Reads an assignment.
pub(crate) fn read_assignment(root: &Node, course: &Course, reader: &mut Reader) -> Option<Assignment> {
    let keys = ["id", "title", "note", "due", "modules", "lessons", "exercises", "seed", "people"];
    let mut fields = Fields::of(root, "an assignment", &keys, reader)?;
    let id = fields.id(Thing::Assignment);
    check_length(&id.value, &id.place, fields.reader);
    let title = fields.text("title").value;
    let note = fields.text_or("note", "").value;
    let due = due(&mut fields);
    let place = fields.place.clone();
    let modules = fields.references("modules", Thing::Module);
    let lessons = fields.references("lessons", Thing::Lesson);
    if fields.node("modules").is_none() && fields.node("lessons").is_none() {
        fields
            .reader
            .error(&place, "an assignment names `modules`, `lessons` or both")
            .help("such as `modules: [ID]`, with the id of a module's YAML file");
    }
    let named = |ids: &[crate::course::source::At<String>], id: &str| ids.iter().any(|at| at.value == id);
    for lesson in &lessons {
        if let Some((module, _)) =
            course.lesson(&lesson.value).filter(|(module, _)| named(&modules, &module.id))
        {
            let message = format!(
                "the lesson {} is in the module {}, which is named too",
                quoted(&lesson.value),
                quoted(&module.id)
            );
            fields.reader.warning(&lesson.place, message);
        }
    }
    let chosen: Vec<String> = course
        .lessons()
        .filter(|(module, lesson)| named(&modules, &module.id) || named(&lessons, &lesson.id))
        .map(|(_, lesson)| lesson.id.clone())
        .collect();
    let exercises = fields
        .node(bounds::ASSIGNED_EXERCISES.name)
        .map_or(12, |node| fields.reader.whole(node, &bounds::ASSIGNED_EXERCISES));
    let trains = |id: &String| course.lesson(id).is_some_and(|(_, lesson)| !lesson.drills.is_empty());
    if !chosen.is_empty() && !chosen.iter().any(trains) {
        fields.reader.error(&place, "none of these lessons has a drill to make exercises of");
    }
    let seed = fields.node(bounds::SEED.name).map_or(0, |node| fields.reader.whole(node, &bounds::SEED));
    let people = people(&mut fields);
    Some(Assignment {
        id: id.value,
        title,
        note,
        due: due?,
        lessons: chosen,
        exercises,
        seed: u64::from(seed),
        people,
    })
}

fn due(fields: &mut Fields<'_, '_>) -> Option<Date> {
    let text = fields.text("due");
    let date = Date::read(&text.value);
    if date.is_none() && !text.value.is_empty() {
        fields
            .reader
            .error(&text.place, format!("{} is no day of the calendar", quoted(&text.value)))
            .help("a day is written as year, month and day: `due: 2026-03-14`");
    }
    date
}

fn people(fields: &mut Fields<'_, '_>) -> Vec<Person> {
    let nodes = fields.some("people");
    if let Some(one_more) = nodes.get(MOST_PEOPLE) {
        fields.reader.error(
            &one_more.place,
            format!("{} people are more than the {MOST_PEOPLE} of one assignment", nodes.len()),
        );
    }
    let mut seen: BTreeSet<String> = BTreeSet::new();
    nodes
        .iter()
        .take(MOST_PEOPLE)
        .filter_map(|node| {
            let person = person(node, fields.reader)?;
            if !person.name.is_empty() && !seen.insert(person.name.to_lowercase()) {
                let place = node.point();
                fields.reader.warning(place, format!("a second person called {}", quoted(&person.name)));
            }
            Some(person)
        })
        .collect()
}

fn person(node: &Node, reader: &mut Reader) -> Option<Person> {
    if let NodeKind::Scalar { text, .. } = &node.kind {
        let id = super::slug(text).unwrap_or_else(|| "ada".to_owned());
        reader
            .error(&node.place, "a person has an `id` and a `name`")
            .help(format!("write `{{id: {id}, name: …}}`: the id names files and slips and stays the same"));
        return None;
    }
    let mut fields = Fields::of(node, "a person", &["id", "name"], reader)?;
    let id = fields.id(Thing::Person);
    check_length(&id.value, &id.place, fields.reader);
    let name = fields.text("name");
    // What any text must keep has been told already.
    if super::closes_directions(&name.value)
        && let Some(why) = unfit_name(&name.value)
    {
        fields.reader.error(&name.place, why);
    }
    Some(Person { id: id.value, name: name.value })
}

fn check_length(id: &str, place: &Place, reader: &mut Reader) {
    if id.len() > MOST_ID {
        reader.error(place, format!("an id has at most {MOST_ID} characters; this one has {}", id.len()));
    }
}
