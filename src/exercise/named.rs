//! Which bottles an exercise names: what a reader may want to look up before answering.
//!
//! Entry point: [`bottles_named`].

use super::{Exercise, Form};
use crate::course::Course;

/// Ids of every bottle that an exercise names: in its answers, its question, or beside what it shows; in the order of the shelf.
pub fn bottles_named<'c>(course: &'c Course, exercise: &Exercise) -> Vec<&'c str> {
    let drops = match &exercise.form {
        Form::Drops(drops) => drops.bottles(),
        _ => Vec::new(),
    };
    let exhibits = exercise.case.iter().flat_map(|case| &case.exhibits);
    let options = exercise.form.options().iter();
    let texts: Vec<&str> = options
        .map(|option| option.label.as_str())
        .chain(exhibits.map(|exhibit| exhibit.label.as_str()))
        .chain([exercise.ask.as_str()])
        .collect();
    let is_named = |name: &str| {
        let mut words = texts.iter().flat_map(|text| text.split(|c: char| !c.is_alphanumeric()));
        words.any(|word| word == name) || name.contains(' ') && texts.iter().any(|text| text.contains(name))
    };
    let bottles = course.shelf.bottles.iter();
    bottles
        .filter(|bottle| drops.contains(&bottle.id.as_str()) || is_named(&bottle.name))
        .map(|bottle| bottle.id.as_str())
        .collect()
}
