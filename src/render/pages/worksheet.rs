//! Worksheets for the classroom, one for each module, and their keys.

use super::Pages;
use super::bottles::BottleView;
use super::halves::Halves;
use crate::course::Module;
use crate::exercise::{Exercise, bottles_named};
use crate::render::RenderError;
use crate::render::exercise::ExerciseView;
use crate::render::frame::{Frame, Link, Section};
use crate::render::output::SiteFile;
use crate::render::plan::{self, href, text_path};
use crate::say;
use serde::Serialize;
use std::collections::BTreeSet;

/// The context of both `worksheet.html` and `key.html`.
#[derive(Serialize)]
struct SheetPage {
    frame: Frame,
    number: usize,
    module: String,
    /// From the worksheet to its key, and back.
    other: Link,
    exercises: Vec<ExerciseView>,
    /// Every bottle that an option names.
    bottles: Vec<BottleView>,
}

impl Pages<'_> {
    /// A module's worksheet.
    pub(super) fn worksheet(&self, place: usize, module: &Module) -> Result<SiteFile, RenderError> {
        let path = plan::worksheet_path(module);
        let other =
            Link::new(say!(self.course.language, "sheet-to-key"), href(&path, &plan::key_path(module)));
        let title = say!(self.course.language, "sheet-title", module = &module.page.title);
        let context = self.sheet(place, module, &path, &title, other);
        self.page(path, "worksheet.html", context)
    }

    /// The key to a module's worksheet.
    pub(super) fn key(&self, place: usize, module: &Module) -> Result<SiteFile, RenderError> {
        let path = plan::key_path(module);
        let other = Link::new(
            say!(self.course.language, "sheet-to-sheet"),
            href(&path, &plan::worksheet_path(module)),
        );
        let title = say!(self.course.language, "sheet-key-title", module = &module.page.title);
        let context = self.sheet(place, module, &path, &title, other);
        self.page(path, "key.html", context)
    }

    fn sheet(&self, place: usize, module: &Module, path: &str, title: &str, other: Link) -> SheetPage {
        let exercises = self.sheet_exercises(module);
        let used: BTreeSet<&str> =
            exercises.iter().flat_map(|exercise| bottles_named(self.course, exercise)).collect();
        let bottles = self.course.shelf.bottles.iter().filter(|bottle| used.contains(bottle.id.as_str()));
        let way = vec![Link::new(&module.page.title, href(path, &text_path(&module.page.path)))];
        SheetPage {
            frame: self.frame(path, title, Section::Course).below(way),
            number: place + 1,
            module: module.page.title.clone(),
            other,
            exercises: exercises
                .iter()
                .enumerate()
                .map(|(at, exercise)| ExerciseView::new(self.course, exercise, path, at + 1))
                .collect(),
            bottles: bottles.map(|bottle| self.bottle_view(bottle)).collect(),
        }
    }

    /// For each drill as many exercises as its lesson shows: the worksheet's half of its pool, and only if that does not suffice the
    /// lesson's own. Nothing is asked twice.
    pub(super) fn sheet_exercises(&self, module: &Module) -> Vec<&Exercise> {
        let mut asked = BTreeSet::new();
        let mut chosen = Vec::new();
        for drill in module.lessons.iter().flat_map(|lesson| &lesson.drills) {
            let Some(Halves { lesson, sheet }) = self.halves.get(drill.id.as_str()) else { continue };
            let new =
                sheet.iter().chain(lesson).copied().filter(|exercise| asked.insert(exercise.question()));
            chosen.extend(new.take(lesson.len()));
        }
        chosen
    }
}
