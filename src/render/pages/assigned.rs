//! The pages of an assignment: its lessons with what they refer to, the same for everybody, and each person's own first page.

use super::Pages;
use super::bottles::BottleView;
use super::home::LessonEntry;
use crate::assess::assigned::{FORM, PracticeSet};
use crate::course::{Assignment, Person};
use crate::exercise::bottles_named;
use crate::render::RenderError;
use crate::render::exercise::ExerciseView;
use crate::render::figures::minutes;
use crate::render::frame::{Frame, Link, Section};
use crate::render::output::SiteFile;
use crate::render::plan::{self, href, text_path};
use crate::render::templates::{EXERCISE_JS, SLIP_JS, STYLE_CSS};
use crate::render::words::{OF_ASSIGNMENTS, OF_STUDY, speaking};
use crate::say;
use rayon::prelude::*;
use serde::Serialize;
use std::collections::BTreeSet;

/// Whom an assignment's page is for.
pub(in crate::render) struct AssignedTo<'a> {
    /// The assignment.
    pub assignment: &'a Assignment,
    /// The person.
    pub person: &'a Person,
    /// The person's exercises.
    pub set: &'a PracticeSet,
}

/// The context of `assignment.html`. The views hold what is right, too; the template shows nothing of it.
#[derive(Serialize)]
struct AssignmentPage {
    frame: Frame,
    title: String,
    note: String,
    person: String,
    due: String,
    /// The same for machines: `2026-03-14`.
    due_date: String,
    extent: String,
    modules: Vec<ModuleEntry>,
    exercises: Vec<ExerciseView>,
    bottles: Vec<BottleView>,
    slip: SlipView,
}

#[derive(Serialize)]
struct ModuleEntry {
    title: Link,
    lessons: Vec<LessonEntry>,
}

/// What the page writes on a slip, beside the answers.
#[derive(Serialize)]
struct SlipView {
    form: &'static str,
    assignment: String,
    person: String,
    course: String,
    set: String,
}

impl Pages<'_> {
    /// Every page but the first: the assigned lessons and what they refer to.
    pub(in crate::render) fn assigned(&self) -> Result<Vec<SiteFile>, RenderError> {
        let place = |id: &str| self.whole.modules.iter().position(|module| module.id == id).unwrap_or(0);
        let language = &self.course.language;
        let mut files = vec![
            SiteFile { path: plan::STYLE.to_owned(), content: STYLE_CSS.as_bytes().to_vec() },
            SiteFile { path: plan::SCRIPT.to_owned(), content: speaking(language, &OF_STUDY, EXERCISE_JS) },
            SiteFile {
                path: plan::SLIP_SCRIPT.to_owned(),
                content: speaking(language, &OF_ASSIGNMENTS, SLIP_JS),
            },
            self.bottles()?,
            self.colourants()?,
            self.misconceptions()?,
            self.glossary()?,
            self.cautions()?,
            self.model()?,
        ];
        files.extend(self.clients()?);
        let parts: Vec<Result<Vec<SiteFile>, RenderError>> = self
            .course
            .modules
            .par_iter()
            .map(|module| self.module_files(place(&module.id), module))
            .collect();
        let mut texts = Vec::new();
        for part in parts {
            texts.extend(part?);
        }
        for asset in &self.course.assets {
            let path = plan::asset_path(&asset.path);
            let used = texts.iter().any(|file| {
                let link = href(&file.path, &path);
                std::str::from_utf8(&file.content).is_ok_and(|html| html.contains(&link))
            });
            if used {
                files.push(SiteFile { path, content: asset.content.clone() });
            }
        }
        files.extend(texts);
        Ok(files)
    }

    /// A person's first page: what is assigned, the exercises, and what makes the answer slip.
    pub(in crate::render) fn assignment(&self, to: &AssignedTo<'_>) -> Result<SiteFile, RenderError> {
        let AssignedTo { assignment, person, set } = to;
        let path = plan::HOME;
        let language = &self.course.language;
        let used: BTreeSet<&str> =
            set.exercises.iter().flat_map(|exercise| bottles_named(self.course, exercise)).collect();
        let bottles = self.course.shelf.bottles.iter().filter(|bottle| used.contains(bottle.id.as_str()));
        let lessons = self.course.lessons().count();
        let all_minutes: u32 = self.course.lessons().map(|(_, lesson)| lesson.minutes).sum();
        let context = AssignmentPage {
            frame: self.frame(path, &assignment.title, Section::Course).scripted_by(path, plan::SLIP_SCRIPT),
            title: assignment.title.clone(),
            note: assignment.note.clone(),
            person: person.name.clone(),
            due: language.date(assignment.due),
            due_date: assignment.due.to_string(),
            extent: say!(
                language,
                "assignment-extent",
                lessons = say!(language, "assignment-lessons", count = lessons),
                time = minutes(all_minutes),
                exercises = say!(language, "assignment-exercises", count = set.exercises.len())
            ),
            modules: self
                .course
                .modules
                .iter()
                .map(|module| ModuleEntry {
                    title: Link::new(&module.page.title, href(path, &text_path(&module.page.path))),
                    lessons: self.lesson_entries(module, path),
                })
                .collect(),
            exercises: set
                .exercises
                .iter()
                .enumerate()
                .map(|(at, exercise)| ExerciseView::new(self.course, exercise, path, at + 1))
                .collect(),
            bottles: bottles.map(|bottle| self.bottle_view(bottle)).collect(),
            slip: SlipView {
                form: FORM,
                assignment: set.identity.assignment.clone(),
                person: set.identity.person.clone(),
                course: set.identity.course.clone(),
                set: set.identity.set.clone(),
            },
        };
        self.page(path, "assignment.html", context)
    }
}
