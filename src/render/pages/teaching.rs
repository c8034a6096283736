//! For instructors: the syllabus, and a teaching note for each module.

use super::Pages;
use super::home::LessonEntry;
use super::lesson::Part;
use crate::course::coverage::tempts;
use crate::course::{Course, Module};
use crate::render::RenderError;
use crate::render::exercise::skill_name;
use crate::render::frame::{Frame, Link, Section};
use crate::render::output::SiteFile;
use crate::render::plan::{self, href, href_to, text_path};
use crate::say;
use serde::Serialize;
use std::collections::BTreeSet;

#[derive(Serialize)]
struct SyllabusPage {
    frame: Frame,
    /// "3 modules, 8 lessons, 2 h 45 min".
    extent: String,
    modules: Vec<SyllabusModule>,
    papers: Vec<PaperView>,
}

#[derive(Serialize)]
struct SyllabusModule {
    number: usize,
    title: Link,
    about: String,
    minutes: String,
    lessons: Vec<LessonEntry>,
    skills: Vec<String>,
    note: Link,
}

/// An assessment in the syllabus.
#[derive(Serialize)]
struct PaperView {
    title: String,
    about: String,
    minutes: String,
    questions: u32,
}

#[derive(Serialize)]
struct NotePage {
    frame: Frame,
    number: usize,
    module: Link,
    about: String,
    minutes: String,
    /// What the author tells; may be nothing.
    parts: Vec<Part>,
    lessons: Vec<LessonEntry>,
    skills: Vec<String>,
    misconceptions: Vec<TemptedView>,
    sheets: Vec<Link>,
    cautions: String,
}

/// A misconception that the module's drills tempt into.
#[derive(Serialize)]
struct TemptedView {
    belief: Link,
    tempting: String,
    truth: String,
    /// How many of the module's drills.
    drills: String,
    lesson: Option<Link>,
}

impl Pages<'_> {
    /// Every page for instructors, as links from the page at `from`.
    pub(super) fn instructor_links(&self, from: &str) -> Vec<Link> {
        [
            ("home-syllabus", plan::SYLLABUS),
            ("home-swatch-book", plan::SWATCH_BOOK),
            ("home-consultation", plan::CONSULTATION),
            ("home-correction-planner", plan::CORRECTION_PLANNER),
            ("home-sources", plan::SOURCES),
        ]
        .map(|(id, path)| Link::new(say!(self.course.language, id), href(from, path)))
        .into()
    }

    /// The syllabus.
    pub(super) fn syllabus(&self) -> Result<SiteFile, RenderError> {
        let course = self.course;
        let language = &course.language;
        let path = plan::SYLLABUS;
        let modules: Vec<SyllabusModule> = course
            .modules
            .iter()
            .enumerate()
            .map(|(place, module)| SyllabusModule {
                number: place + 1,
                title: Link::new(&module.page.title, href(path, &text_path(&module.page.path))),
                about: module.about.clone(),
                minutes: language.minutes(module.lessons.iter().map(|lesson| lesson.minutes).sum()),
                lessons: self.lesson_entries(module, path),
                skills: skills_of(course, module),
                note: Link::new(say!(language, "teach-note"), href(path, &plan::note_path(module))),
            })
            .collect();
        let papers = course.blueprints.iter().map(|blueprint| PaperView {
            title: blueprint.title.clone(),
            about: blueprint.about.clone(),
            minutes: language.minutes(blueprint.minutes),
            questions: blueprint.sections.iter().map(|section| section.questions).sum(),
        });
        let lessons = course.lessons().count();
        let all: u32 = course.lessons().map(|(_, lesson)| lesson.minutes).sum();
        let context = SyllabusPage {
            frame: self
                .frame(path, &say!(language, "teach-syllabus"), Section::Course)
                .described(&say!(language, "teach-syllabus-description")),
            extent: language.extent(modules.len(), lessons, all),
            modules,
            papers: papers.collect(),
        };
        self.page(path, "syllabus.html", context)
    }

    /// The teaching note to a module.
    pub(super) fn note(&self, place: usize, module: &Module) -> Result<SiteFile, RenderError> {
        let course = self.course;
        let language = &course.language;
        let path = plan::note_path(module);
        let parts = match &module.teaching {
            Some(page) => self.body_at(path.clone(), page, &[])?.parts,
            None => Vec::new(),
        };
        let way = vec![Link::new(say!(language, "teach-syllabus"), href(&path, plan::SYLLABUS))];
        let title = say!(language, "teach-note-title", module = &module.page.title);
        let context = NotePage {
            frame: self.frame(&path, &title, Section::Course).below(way),
            number: place + 1,
            module: Link::new(&module.page.title, href(&path, &text_path(&module.page.path))),
            about: module.about.clone(),
            minutes: language.minutes(module.lessons.iter().map(|lesson| lesson.minutes).sum()),
            parts,
            lessons: self.lesson_entries(module, &path),
            skills: skills_of(course, module),
            misconceptions: tempted_by(course, module, &path),
            sheets: self.sheet_links(module, &path),
            cautions: href(&path, plan::CAUTIONS),
        };
        self.page(path, "teaching.html", context)
    }
}

/// The skills that a module trains, each once, in the order of its lessons.
fn skills_of(course: &Course, module: &Module) -> Vec<String> {
    let mut seen = BTreeSet::new();
    let skills = module.lessons.iter().flat_map(|lesson| &lesson.skills);
    skills.filter(|id| seen.insert(id.as_str())).map(|id| skill_name(course, id)).collect()
}

/// The misconceptions that a module's drills tempt into, the most tempting first.
fn tempted_by(course: &Course, module: &Module, from: &str) -> Vec<TemptedView> {
    let drills = || module.lessons.iter().flat_map(|lesson| &lesson.drills);
    let mut found: Vec<(usize, TemptedView)> = course
        .misconceptions
        .iter()
        .map(|misconception| {
            let count = drills().filter(|drill| tempts(course, drill, &misconception.id)).count();
            let treated = course.lesson(&misconception.lesson);
            let lesson = treated
                .map(|(_, lesson)| Link::new(&lesson.page.title, href(from, &text_path(&lesson.page.path))));
            let belief =
                Link::new(&misconception.belief, href_to(from, plan::MISCONCEPTIONS, &misconception.id));
            let (tempting, truth) = (misconception.tempting.clone(), misconception.truth.clone());
            let drills = say!(course.language, "teach-drills", count = count);
            (count, TemptedView { belief, tempting, truth, drills, lesson })
        })
        .filter(|(count, _)| *count > 0)
        .collect();
    found.sort_by_key(|(count, _)| std::cmp::Reverse(*count));
    found.into_iter().map(|(_, view)| view).collect()
}
