//! Which exercises of a drill its lesson shows, and which the worksheet of its module asks.
//!
//! Entry point: [`halves`].

use crate::course::{Course, Family, Module};
use crate::exercise::{Exercise, Pools};
use std::collections::{BTreeMap, BTreeSet};
use std::mem::swap;

/// The two halves of a drill's pool.
#[derive(Debug)]
pub(super) struct Halves<'a> {
    /// As many as the lesson shows.
    pub lesson: Vec<&'a Exercise>,
    /// The others.
    pub sheet: Vec<&'a Exercise>,
}

/// The halves of every drill, by its id: the first exercises of the pool for the lesson and the rest for the worksheet, but that an
/// exercise which would ask a [`Kind`] twice on one worksheet changes places with one of the lesson's, where that has another kind.
pub(super) fn halves<'a>(course: &'a Course, pools: &'a Pools) -> BTreeMap<&'a str, Halves<'a>> {
    course.modules.iter().flat_map(|module| of_module(module, pools)).collect()
}

fn of_module<'a>(module: &'a Module, pools: &'a Pools) -> Vec<(&'a str, Halves<'a>)> {
    let drills = module.lessons.iter().flat_map(|lesson| &lesson.drills);
    let mut halves: Vec<(&str, Halves)> = drills
        .map(|drill| {
            let pool = pools.get(&drill.id).map_or(&[][..], Vec::as_slice);
            let (lesson, sheet) = pool.split_at(pool.len().min(drill.exercises as usize));
            (drill.id.as_str(), Halves { lesson: lesson.iter().collect(), sheet: sheet.iter().collect() })
        })
        .collect();
    let sheets = halves.iter().flat_map(|(_, halves)| &halves.sheet);
    let mut on_sheet: BTreeSet<Kind> = sheets.copied().filter_map(Kind::of).collect();
    let mut before = BTreeSet::new();
    for (_, Halves { lesson, sheet }) in &mut halves {
        for exercise in sheet {
            let Some(kind) = Kind::of(exercise) else { continue };
            if before.insert(kind) {
                continue;
            }
            let other =
                lesson.iter_mut().find(|other| Kind::of(other).is_some_and(|kind| !on_sheet.contains(&kind)));
            if let Some(other) = other {
                swap(other, exercise);
                before.extend(Kind::of(exercise));
                on_sheet.extend(Kind::of(exercise));
            }
        }
    }
    halves
}

/// What makes two questions about a client look the same on one worksheet, however depth and load differ.
#[derive(PartialEq, Eq, PartialOrd, Ord)]
struct Kind<'a> {
    family: Family,
    client: &'a str,
    goal: Option<&'a str>,
    /// When new work is judged, to the bit.
    months: Option<u64>,
}

impl<'a> Kind<'a> {
    /// None for a question about no client.
    fn of(exercise: &'a Exercise) -> Option<Self> {
        let case = exercise.case.as_ref()?;
        Some(Kind {
            family: exercise.family,
            client: &case.client,
            goal: case.goal.as_ref().map(|goal| goal.id.as_str()),
            months: case.placed.map(|placed| placed.months.to_bits()),
        })
    }
}
