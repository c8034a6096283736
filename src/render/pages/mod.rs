//! Every page of the site.
//!
//! Entry point: [`Pages::all`]. Each kind of page has a file here and a template of the same name.

mod assigned;
mod bench;
mod blanks;
mod bottles;
mod clients;
mod display;
mod halves;
mod home;
mod lesson;
mod practice;
mod progress;
mod search;
mod sources;
mod teaching;
mod text;
mod words;
mod worksheet;

use super::RenderError;
use super::drawing::with_shapes;
use super::frame::{Frame, Link, Section};
use super::glossary::Glossary;
use super::output::SiteFile;
use super::plan::{self, href, text_path};
use super::templates::{EXERCISE_JS, HOME_JS, STYLE_CSS, Templates};
use super::words::{OF_STUDY, speaking};
use crate::course::{Client, Course, Lesson, Module};
use crate::exercise::{Exercise, Pools};
use crate::say;
use rayon::prelude::*;
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};

use self::halves::{Halves, halves};
pub(super) use assigned::AssignedTo;

/// A course on its way to becoming pages.
pub(super) struct Pages<'a> {
    course: &'a Course,
    /// The course of which this one may be a part.
    whole: &'a Course,
    /// Course paths of every page of text of the whole.
    whole_texts: BTreeSet<String>,
    pools: &'a Pools,
    /// Of every drill of the whole, what its lesson shows and what a worksheet asks.
    halves: BTreeMap<&'a str, Halves<'a>>,
    templates: Templates,
    /// Course paths of every page of text.
    texts: BTreeSet<String>,
    /// Course paths of every picture and download.
    assets: BTreeSet<String>,
    glossary: Glossary,
}

/// What makes one file, or several.
type Making<P, F> = fn(&P) -> Result<F, RenderError>;

impl<'a> Pages<'a> {
    /// Prepares the pages of a course.
    pub fn new(course: &'a Course, pools: &'a Pools) -> Result<Self, RenderError> {
        Pages::of_part(course, course, pools)
    }

    /// Prepares the pages of a part of a course: some of its lessons. Links to the others stay text, lessons keep their numbers, and there
    /// are no worksheets.
    pub fn of_part(course: &'a Course, whole: &'a Course, pools: &'a Pools) -> Result<Self, RenderError> {
        let paths = |course| plan::reading_order(course).map(|page| page.path.clone()).collect();
        let (texts, whole_texts) = (paths(course), paths(whole));
        let assets = course.assets.iter().map(|asset| asset.path.clone()).collect();
        let glossary = Glossary::new(&course.terms);
        Ok(Pages {
            course,
            whole,
            whole_texts,
            pools,
            halves: halves(whole, pools),
            templates: Templates::new(&course.language)?,
            texts,
            assets,
            glossary,
        })
    }

    /// Whether this is only a part of a course: for learners, and for reading. It has no bench, which would answer the exercises, no
    /// practice but what it sets, and no search.
    fn is_part(&self) -> bool {
        !std::ptr::eq(self.course, self.whole)
    }

    /// The frame of the page at `path`.
    fn frame(&self, path: &str, title: &str, section: Section) -> Frame {
        let only_whole = [Section::Practice, Section::Progress, Section::Bench, Section::Search];
        Frame::new(self.course, path, title, section, |entry| {
            !(self.is_part() && only_whole.contains(&entry))
        })
    }

    /// Every file of the site.
    pub fn all(&self) -> Result<Vec<SiteFile>, RenderError> {
        let singles: [Making<Self, SiteFile>; 17] = [
            Self::home,
            Self::bottles,
            Self::colourants,
            Self::bench,
            Self::practice,
            Self::progress,
            Self::misconceptions,
            Self::glossary,
            Self::cautions,
            Self::model,
            Self::display,
            Self::search,
            Self::syllabus,
            Self::swatch_book,
            Self::consultation,
            Self::correction_planner,
            Self::sources,
        ];
        let several: [Making<Self, Vec<SiteFile>>; 4] =
            [Self::clients, Self::bench_assets, Self::practice_assets, Self::plain_assets];
        let of_modules = || {
            let modules = self.course.modules.par_iter().enumerate();
            modules.map(|(place, module)| self.module_files(place, module)).collect::<Vec<_>>()
        };
        let (singles, (several, modules)) = rayon::join(
            || singles.par_iter().map(|page| page(self)).collect::<Vec<_>>(),
            || rayon::join(|| several.par_iter().map(|files| files(self)).collect::<Vec<_>>(), of_modules),
        );
        let mut files = singles.into_iter().collect::<Result<Vec<_>, _>>()?;
        let found = self.search_assets(&files)?;
        files.extend(found);
        for page in &self.course.prefix {
            files.push(self.text(page)?);
        }
        for part in several.into_iter().chain(modules) {
            files.extend(part?);
        }
        Ok(files)
    }

    /// Style, scripts of the plain pages, and the course's own files.
    fn plain_assets(&self) -> Result<Vec<SiteFile>, RenderError> {
        let file = |path: &str, content: Vec<u8>| SiteFile { path: path.to_owned(), content };
        let mut files = vec![
            file(plan::STYLE, STYLE_CSS.into()),
            file(plan::SCRIPT, speaking(&self.course.language, &OF_STUDY, EXERCISE_JS)),
            file(plan::HOME_SCRIPT, HOME_JS.into()),
            self.progress_assets(),
        ];
        files.extend(
            self.course
                .assets
                .iter()
                .map(|asset| file(&plan::asset_path(&asset.path), asset.content.clone())),
        );
        Ok(files)
    }

    fn module_files(&self, place: usize, module: &Module) -> Result<Vec<SiteFile>, RenderError> {
        let mut files = vec![self.module(place, module)?];
        if !self.is_part() {
            files.push(self.note(place, module)?);
        }
        let lessons: Vec<Result<SiteFile, RenderError>> =
            module.lessons.par_iter().map(|lesson| self.lesson(module, lesson)).collect();
        for lesson in lessons {
            files.push(lesson?);
        }
        if self.has_exercises(module) {
            files.push(self.worksheet(place, module)?);
            files.push(self.key(place, module)?);
        }
        Ok(files)
    }

    /// A page from its template and context.
    fn page(
        &self,
        path: impl Into<String>,
        template: &'static str,
        context: impl Serialize,
    ) -> Result<SiteFile, RenderError> {
        let html = with_shapes(self.templates.render(template, context)?);
        Ok(SiteFile { path: path.into(), content: html.into_bytes() })
    }

    /// The pool of a drill.
    fn pool(&self, drill: &str) -> &[Exercise] {
        self.pools.get(drill).map_or(&[], Vec::as_slice)
    }

    /// The link to the bench with a client chosen and further parts of the case; none where there is no bench.
    fn bench_with(&self, from: &str, client: &Client, more: &[(&str, String)]) -> Option<String> {
        (!self.is_part()).then(|| plan::href_to_bench(from, &client.id, more))
    }

    /// A lesson's number in the whole course: "3.2".
    fn number_of(&self, lesson: &Lesson) -> String {
        let places = self.whole.modules.iter().enumerate().find_map(|(place, module)| {
            let at = module.lessons.iter().position(|other| other.id == lesson.id)?;
            Some(format!("{}.{}", place + 1, at + 1))
        });
        places.unwrap_or_default()
    }

    /// Whether there is anything to put on a worksheet of this module.
    fn has_exercises(&self, module: &Module) -> bool {
        !self.is_part()
            && module
                .lessons
                .iter()
                .flat_map(|lesson| &lesson.drills)
                .any(|drill| !self.pool(&drill.id).is_empty())
    }

    /// Links to a module's worksheet and its key, where there are any.
    fn sheet_links(&self, module: &Module, from: &str) -> Vec<Link> {
        if !self.has_exercises(module) {
            return Vec::new();
        }
        vec![
            Link::new(
                say!(self.course.language, "text-worksheet"),
                href(from, &plan::worksheet_path(module)),
            ),
            Link::new(say!(self.course.language, "text-key"), href(from, &plan::key_path(module))),
        ]
    }

    /// The page of text before and the one after this one.
    fn neighbours(&self, course_path: &str) -> (Option<Link>, Option<Link>) {
        let from = text_path(course_path);
        let link = |page: &crate::course::Page| Link::new(&page.title, href(&from, &text_path(&page.path)));
        let all: Vec<_> = plan::reading_order(self.course).collect();
        let Some(here) = all.iter().position(|page| page.path == course_path) else { return (None, None) };
        (here.checked_sub(1).map(|before| link(all[before])), all.get(here + 1).map(|after| link(after)))
    }
}
