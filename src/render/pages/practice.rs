//! Practice: a page on which exercises are made afresh, proved and marked, as `healedhue practise` does.
//!
//! Entry points: [`Pages::practice`] for the page, [`Pages::practice_assets`] for what it loads. The page holds what is always there;
//! what a session shows is drawn by the script (`site/practice/`) from what the engine answers.

use super::Pages;
use super::bench::{EyesFilter, eyes_filters};
use super::bottles::BottleInShort;
use crate::course::{Course, Module, Question, Technique};
use crate::render::RenderError;
use crate::render::drawing::{SURROUND, shapes};
use crate::render::engine::{data_script, practice_script, questions_script};
use crate::render::frame::{Frame, Link, Section};
use crate::render::output::SiteFile;
use crate::render::plain::skin_words;
use crate::render::plan::{self, href, href_to, text_path};
use crate::render::templates::{PRACTICE_CSS, PRACTICE_JS};
use crate::render::words::{OF_PRACTICE, speaking};
use crate::say;
use crate::skin::Site;
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};

#[derive(Serialize)]
struct PracticePage {
    frame: Frame,
    lessons: String,
    model: String,
    cautions: String,
    modules: Vec<ModuleChoice>,
    skills: Vec<(String, String)>,
    sheets: Vec<Link>,
    display: String,
    filters: [EyesFilter; 3],
}

/// A module's lessons to choose from.
#[derive(Serialize)]
struct ModuleChoice {
    title: String,
    /// Id, number and title of each.
    lessons: Vec<(String, String, String)>,
}

/// Everything, as `healedhueCourse` in the page.
#[derive(Serialize)]
struct PracticeCourse<'c> {
    /// What the engine is told of the course, but for its written questions.
    course: Course,
    /// What the record of progress is called on the device and as a file.
    record: String,
    surround: &'static str,
    /// Words of bare skin with the least L* of each.
    skin_words: Vec<(f64, String)>,
    /// Paths by site and manner.
    drawings: BTreeMap<&'static str, BTreeMap<&'static str, &'static [&'static str]>>,
    /// What a question tells of the bottles it names, by id.
    bottles: BTreeMap<&'c str, BottleInShort>,
    links: Links<'c>,
}

/// Where pages lie that an outcome refers to, by id.
#[derive(Serialize)]
struct Links<'c> {
    lessons: BTreeMap<&'c str, String>,
    misconceptions: BTreeMap<&'c str, String>,
    clients: BTreeMap<&'c str, String>,
    /// The files of written questions, by module; one that asks none has none.
    questions: BTreeMap<&'c str, String>,
    cautions: String,
    model: String,
    practice: String,
}

impl Pages<'_> {
    /// The page of practice.
    pub(super) fn practice(&self) -> Result<SiteFile, RenderError> {
        let course = self.course;
        let path = plan::PRACTICE;
        let frame = self
            .frame(path, &say!(course.language, "practice-title"), Section::Practice)
            .described(&say!(course.language, "practice-about"))
            .with_engine(
                path,
                &[plan::BENCH_STYLE, plan::PRACTICE_STYLE],
                &[plan::PRACTICE_MAKER, plan::PRACTICE_COURSE, plan::PRACTICE_SCRIPT],
            );
        let modules = course.modules.iter().map(|module| ModuleChoice {
            title: module.page.title.clone(),
            lessons: module
                .lessons
                .iter()
                .filter(|lesson| !lesson.drills.is_empty())
                .map(|lesson| (lesson.id.clone(), self.number_of(lesson), lesson.page.title.clone()))
                .collect(),
        });
        let trained = |id: &str| course.drills().any(|(_, drill)| drill.skill == id);
        let skills = course.skills.iter().filter(|skill| trained(&skill.id));
        let sheets = course.modules.iter().filter(|module| self.has_exercises(module));
        let context = PracticePage {
            frame,
            lessons: href(path, plan::HOME),
            model: href(path, plan::MODEL),
            cautions: href(path, plan::CAUTIONS),
            modules: modules.filter(|module| !module.lessons.is_empty()).collect(),
            skills: skills.map(|skill| (skill.id.clone(), skill.name.clone())).collect(),
            display: href(path, plan::DISPLAY),
            filters: eyes_filters(),
            sheets: sheets
                .map(|module| Link::new(&module.page.title, href(path, &plan::worksheet_path(module))))
                .collect(),
        };
        self.page(path, "practice.html", context)
    }

    /// What practice loads: its style and script, the course, what makes exercises of it, and a file of written questions for each module,
    /// loaded by the sessions that ask them.
    pub(super) fn practice_assets(&self) -> Result<Vec<SiteFile>, RenderError> {
        let course = data_script(&PracticeCourse::of(self.course, self.bottles_in_short(plan::PRACTICE)))
            .map_err(|source| RenderError::Data { file: plan::PRACTICE_COURSE, source })?;
        let file = |path: &str, content: Vec<u8>| SiteFile { path: path.to_owned(), content };
        let mut files = vec![
            file(plan::PRACTICE_STYLE, PRACTICE_CSS.into()),
            file(plan::PRACTICE_SCRIPT, speaking(&self.course.language, &OF_PRACTICE, PRACTICE_JS)),
            file(plan::PRACTICE_COURSE, course),
            file(plan::PRACTICE_MAKER, practice_script().to_vec()),
        ];
        for module in &self.course.modules {
            let questions = questions_of(self.course, module);
            if !questions.is_empty() {
                let script = questions_script(&questions)
                    .map_err(|source| RenderError::Data { file: plan::PRACTICE_QUESTIONS, source })?;
                files.push(file(&plan::questions_path(module), script));
            }
        }
        Ok(files)
    }
}

/// The written questions that a module's drills ask, each once.
fn questions_of<'c>(course: &'c Course, module: &Module) -> Vec<&'c Question> {
    let drills = module.lessons.iter().flat_map(|lesson| &lesson.drills);
    let asked: BTreeSet<&str> = drills.flat_map(|drill| &drill.questions).map(String::as_str).collect();
    course.questions.iter().filter(|question| asked.contains(question.id.as_str())).collect()
}

impl<'c> PracticeCourse<'c> {
    fn of(course: &'c Course, bottles: BTreeMap<&'c str, BottleInShort>) -> Self {
        let path = plan::PRACTICE;
        let drawn = |site| {
            BTreeMap::from(Technique::ALL.map(|(technique, word)| (word, shapes(site, technique.into()))))
        };
        let lessons = course.lessons().map(|(_, lesson)| {
            let href = href_to(path, &text_path(&lesson.page.path), "page_top");
            (lesson.id.as_str(), href)
        });
        let misconceptions = course.misconceptions.iter().map(|misconception| {
            (misconception.id.as_str(), href_to(path, plan::MISCONCEPTIONS, &misconception.id))
        });
        let clients = course
            .clients
            .iter()
            .map(|client| (client.id.as_str(), plan::href_to_client(path, course, client)));
        let asking = course.modules.iter().filter(|module| !questions_of(course, module).is_empty());
        let questions = asking.map(|module| (module.id.as_str(), href(path, &plan::questions_path(module))));
        PracticeCourse {
            course: Course { questions: Vec::new(), ..course.clone() },
            record: course.record_name(),
            surround: SURROUND,
            skin_words: skin_words(&course.language),
            drawings: Site::ALL.iter().map(|&(site, word)| (word, drawn(site))).collect(),
            bottles,
            links: Links {
                lessons: lessons.collect(),
                misconceptions: misconceptions.collect(),
                clients: clients.collect(),
                questions: questions.collect(),
                cautions: href(path, plan::CAUTIONS),
                model: href(path, plan::MODEL),
                practice: href(path, plan::PRACTICE),
            },
        }
    }
}
