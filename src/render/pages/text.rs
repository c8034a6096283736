//! Pages of plain text: the welcome page and each module's own page.

use super::Pages;
use super::home::LessonEntry;
use super::lesson::Body;
use crate::course::{Module, Page};
use crate::render::RenderError;
use crate::render::frame::{Frame, Link, Section};
use crate::render::output::SiteFile;
use crate::render::plan::text_path;
use serde::Serialize;

#[derive(Serialize)]
struct TextPage {
    frame: Frame,
    title: String,
    anchor: String,
    body: Body,
    previous: Option<Link>,
    next: Option<Link>,
}

#[derive(Serialize)]
struct ModulePage {
    frame: Frame,
    number: usize,
    title: String,
    anchor: String,
    about: String,
    minutes: String,
    body: Body,
    lessons: Vec<LessonEntry>,
    sheets: Vec<Link>,
    previous: Option<Link>,
    next: Option<Link>,
}

impl Pages<'_> {
    /// A page before the first module.
    pub(super) fn text(&self, page: &Page) -> Result<SiteFile, RenderError> {
        let path = text_path(&page.path);
        let body = self.body(page, &[])?;
        let (previous, next) = self.neighbours(&page.path);
        let frame = self.frame(&path, &page.title, Section::Course);
        let (title, anchor) = (page.title.clone(), page.anchor.clone());
        let context = TextPage { frame, title, anchor, body, previous, next };
        self.page(path, "text.html", context)
    }

    /// A module's own page.
    pub(super) fn module(&self, place: usize, module: &Module) -> Result<SiteFile, RenderError> {
        let page = &module.page;
        let path = text_path(&page.path);
        let body = self.body(page, &[])?;
        let (previous, next) = self.neighbours(&page.path);
        let context = ModulePage {
            frame: self.frame(&path, &page.title, Section::Course).described(&module.about),
            number: place + 1,
            title: page.title.clone(),
            anchor: page.anchor.clone(),
            about: module.about.clone(),
            minutes: self.course.language.minutes(module.lessons.iter().map(|lesson| lesson.minutes).sum()),
            body,
            lessons: self.lesson_entries(module, &path),
            sheets: self.sheet_links(module, &path),
            previous,
            next,
        };
        self.page(path, "module.html", context)
    }
}
