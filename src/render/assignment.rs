//! An assignment as a folder for each person: their own first page, and the lessons with what they refer to.
//!
//! Entry points: [`AssignedFolder::check`], before any long work, and [`AssignedFolder::write`].

use super::output::{ASSIGNED, OutputFolder, SiteFile};
use super::pages::{AssignedTo, Pages};
use super::{RenderError, Written};
use crate::assess::assigned::PracticeSet;
use crate::course::{Assignment, Course};
use crate::exercise::Pools;
use rayon::prelude::*;
use std::path::Path;

/// A folder that an assignment is written to, whole or not at all.
#[derive(Debug)]
pub struct AssignedFolder(OutputFolder);

impl AssignedFolder {
    /// Checks that an assignment may be written to this folder. Changes nothing.
    ///
    /// # Errors
    /// As [`check_output`](super::check_output), and when there is an assignment already that is not to be replaced.
    pub fn check(out: &Path, replace: bool) -> Result<Self, RenderError> {
        let folder = OutputFolder::check(out, &ASSIGNED)?;
        if folder.holds_output() && !replace {
            return Err(RenderError::HasAssignment(out.to_owned()));
        }
        Ok(AssignedFolder(folder))
    }

    /// Writes a folder for each set, named by the person's id, that works by itself from any disk.
    ///
    /// `pools` holds the exercises that the assigned lessons show (see [`lesson_pools`](crate::assess::assigned::lesson_pools)).
    /// The same course, assignment and sets give the same bytes.
    ///
    /// # Errors
    /// As [`build_site`](super::build_site); the folder is then as it was.
    pub fn write(
        &self,
        course: &Course,
        pools: &Pools,
        assignment: &Assignment,
        sets: &[PracticeSet],
    ) -> Result<Written, RenderError> {
        let part = part_of(course, assignment);
        let pages = Pages::of_part(&part, course, pools)?;
        let shared = pages.assigned()?;
        let own: Vec<Result<Vec<SiteFile>, RenderError>> = sets
            .par_iter()
            .filter_map(|set| Some((set, assignment.person(&set.identity.person)?)))
            .map(|(set, person)| {
                let first = pages.assignment(&AssignedTo { assignment, person, set })?;
                let below = |file: &SiteFile| SiteFile {
                    path: format!("{}/{}", person.id, file.path),
                    content: file.content.clone(),
                };
                Ok(std::iter::once(&first).chain(&shared).map(below).collect())
            })
            .collect();
        let mut files = Vec::new();
        for one in own {
            files.extend(one?);
        }
        self.0.replace(&files)
    }
}

/// The course with the assigned lessons alone, and without the pages before its modules.
fn part_of(course: &Course, assignment: &Assignment) -> Course {
    let mut part = course.clone();
    part.prefix.clear();
    for module in &mut part.modules {
        module.lessons.retain(|lesson| assignment.lessons.contains(&lesson.id));
    }
    part.modules.retain(|module| !module.lessons.is_empty());
    part
}
