//! Papers as pages: one that is worked on a screen, without a network, and one to print with an answer grid. Neither holds a key.
//!
//! Entry points: [`PaperPages::new`] renders every question of a pool once, [`PaperPages::page`] and [`PaperPages::sheet`] put a
//! person's paper together from them; [`PapersFolder`] takes what is written.

use super::RenderError;
use super::Written;
use super::drawing::with_shapes;
use super::exercise::{CaseView, ExerciseView};
use super::figures::{colour_index, percent, short};
use super::frame::{direction, policy_digest};
use super::output::{OutputFolder, PAPERS, SiteFile};
use super::swatch::Swatch;
use super::templates::{PAPER_CSS, PAPER_JS, STYLE_CSS, Templates};
use super::words::{OF_PAPERS, speaking};
use crate::assess::{Paper, PaperPool, Person, PoolQuestion};
use crate::course::Course;
use crate::language::Language;
use crate::pigment::{Bottle, Mix};
use crate::say;
use rayon::prelude::*;
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// Stands for the number of a question until it is known.
const NUMBER: &str = "\u{1}";

/// Pages of the papers of one pool.
pub struct PaperPages<'p> {
    pool: &'p PaperPool<'p>,
    templates: Templates,
    /// The script of the page, and its digest in base64.
    script: String,
    script_digest: String,
    /// One a question of the pool.
    questions: Vec<Rendered>,
    /// The same below a case, for the questions of cases.
    within: BTreeMap<usize, Rendered>,
    bottles: Vec<BottleView>,
}

/// A question in HTML, without its number.
struct Rendered {
    page: String,
    sheet: String,
    grid: String,
}

/// The context of `paper-question.html`: an exercise, or a case with its title.
#[derive(Serialize)]
struct QuestionPage<'v, T> {
    item: &'v T,
    part: &'static str,
    title: &'v str,
}

/// The context of `paper.html` and `paper-sheet.html`.
#[derive(Serialize)]
struct PaperPage<'p> {
    language: &'p str,
    dir: &'static str,
    course: &'p str,
    title: &'p str,
    about: &'p str,
    minutes: u32,
    count: usize,
    pass_mark: String,
    name: &'p str,
    candidate: &'p str,
    digest: &'p str,
    version: String,
    style: &'p str,
    script: &'p str,
    script_digest: &'p str,
    /// The paper's identity in JSON, fit for a script element.
    identity: String,
    sections: Vec<SectionView<'p>>,
    bottles: Vec<&'p BottleView>,
}

#[derive(Serialize)]
struct SectionView<'p> {
    /// The case that begins here, in HTML; empty where none does.
    case: String,
    title: &'p str,
    weight: String,
    questions: Vec<String>,
    grid: Vec<String>,
}

/// A bottle as it is told in a paper.
#[derive(Serialize)]
struct BottleView {
    name: String,
    about: String,
    modifier: bool,
    swatch: Swatch,
    contents: String,
}

impl<'p> PaperPages<'p> {
    /// Every question of a pool.
    ///
    /// # Errors
    /// When a template fails, which is a bug.
    pub fn new(pool: &'p PaperPool<'p>) -> Result<Self, RenderError> {
        let templates = Templates::new(&pool.course.language)?;
        let course = pool.course;
        let questions = pool
            .questions
            .par_iter()
            .map(|question| rendered(&templates, &course.language, view_of(course, question)))
            .collect::<Result<_, RenderError>>()?;
        let within = pool
            .questions
            .par_iter()
            .enumerate()
            .filter(|(_, question)| question.within_case.is_some())
            .map(|(place, question)| {
                let mut view = view_of(course, question);
                let told =
                    question.client.map(|client| CaseView::of_client(course, &course.clients[client], true));
                view.case = view.case.zip(told).and_then(|(case, told)| case.below(&course.language, &told));
                Ok((place, rendered(&templates, &course.language, view)?))
            })
            .collect::<Result<_, RenderError>>()?;
        let bottles = course.shelf.bottles.iter().map(|bottle| bottle_view(course, bottle)).collect();
        let script = speaking(&course.language, &OF_PAPERS, PAPER_JS);
        let script_digest = policy_digest(&script);
        let script = String::from_utf8_lossy(&script).into_owned();
        Ok(PaperPages { pool, templates, script, script_digest, questions, within, bottles })
    }

    /// The page on which a person works the paper: one file, without a key, that asks for nothing from outside.
    ///
    /// # Errors
    /// When a template fails, which is a bug.
    pub fn page(&self, paper: &Paper, person: &Person) -> Result<String, RenderError> {
        self.render("paper.html", paper, person, |rendered| &rendered.page)
    }

    /// The sheet to print, with an answer grid.
    ///
    /// # Errors
    /// When a template fails, which is a bug.
    pub fn sheet(&self, paper: &Paper, person: &Person) -> Result<String, RenderError> {
        self.render("paper-sheet.html", paper, person, |rendered| &rendered.sheet)
    }

    /// What a case of a paper tells, once above its first section.
    fn case(&self, paper: &Paper, case: usize) -> Result<String, RenderError> {
        let course = self.pool.course;
        let client = &course.clients[paper.clients[case]];
        let view = CaseView::of_client(course, client, self.pool.tells_skin(paper, case));
        let title = &self.pool.blueprint.cases[case].title;
        self.templates.render("paper-question.html", QuestionPage { item: &view, part: "case", title })
    }

    fn render(
        &self,
        template: &'static str,
        paper: &Paper,
        person: &Person,
        part: impl Fn(&Rendered) -> &String,
    ) -> Result<String, RenderError> {
        let blueprint = self.pool.blueprint;
        let mut number = 0;
        let mut bottles: BTreeSet<usize> = BTreeSet::new();
        let mut sections = Vec::with_capacity(blueprint.sections.len());
        let mut told = None;
        for (place, section) in blueprint.sections.iter().enumerate() {
            let case = match section.case.filter(|_| told != section.case) {
                Some(case) => self.case(paper, case)?,
                None => String::new(),
            };
            told = section.case;
            let mut view = SectionView {
                case,
                title: &section.title,
                weight: short(section.weight),
                questions: Vec::new(),
                grid: Vec::new(),
            };
            for picked in paper.questions.iter().filter(|picked| picked.section == place) {
                number += 1;
                let within = self.within.get(&picked.question).filter(|_| section.case.is_some());
                let rendered = within.unwrap_or(&self.questions[picked.question]);
                let word = number.to_string();
                view.questions.push(part(rendered).replace(NUMBER, &word));
                view.grid.push(rendered.grid.replace(NUMBER, &word));
                bottles.extend(&self.pool.questions[picked.question].bottles);
            }
            sections.push(view);
        }
        // No closing tag can be read out of it.
        let identity = serde_json::to_string(&paper.id).unwrap_or_default().replace('<', "\\u003c");
        let context = PaperPage {
            language: self.pool.course.language.tag(),
            dir: direction(self.pool.course.language.tag()),
            course: &self.pool.course.title,
            title: &blueprint.title,
            about: &blueprint.about,
            minutes: blueprint.minutes,
            count: number,
            pass_mark: self.pool.course.language.decimal(blueprint.pass_mark(), 1),
            name: &person.name,
            candidate: &person.id,
            digest: &paper.id.digest,
            version: self.pool.course.version.chars().take(12).collect(),
            style: &format!("{STYLE_CSS}\n{PAPER_CSS}"),
            script: &self.script,
            script_digest: &self.script_digest,
            identity,
            sections,
            bottles: bottles.into_iter().map(|place| &self.bottles[place]).collect(),
        };
        self.templates.render(template, context).map(with_shapes)
    }
}

/// A question without what would tell the drill, and by it where the same exercise could be looked up.
fn view_of(course: &Course, question: &PoolQuestion) -> ExerciseView {
    let mut view = ExerciseView::new(course, &question.exercise, "", 0);
    view.anchor = format!("q{NUMBER}");
    view.identity = String::new();
    view
}

fn rendered(
    templates: &Templates,
    language: &Language,
    mut view: ExerciseView,
) -> Result<Rendered, RenderError> {
    let part = |view: &ExerciseView, part| {
        templates.render("paper-question.html", QuestionPage { item: view, part, title: "" })
    };
    let (page, grid) = (part(&view, "page")?, part(&view, "grid")?);
    // On a sheet steps have no boxes for numbers: what is answered goes on the first page, as letters.
    if view.form.kind == "order" {
        view.form.how = say!(language, "question-order-letters");
    }
    Ok(Rendered { page, sheet: part(&view, "sheet")?, grid })
}

fn bottle_view(course: &Course, bottle: &Bottle) -> BottleView {
    let shelf = &course.shelf;
    let contents: Vec<String> = bottle
        .shares()
        .into_iter()
        .map(|(place, share)| format!("{} {}", colour_index(&shelf.colourants[place].id), percent(share)))
        .collect();
    BottleView {
        name: bottle.name.clone(),
        about: bottle.about.clone(),
        modifier: bottle.modifier.is_some(),
        swatch: Swatch::bottle(
            &course.language,
            &bottle.name,
            shelf.label_colour(&Mix::new([(bottle.id.clone(), 1)])),
        ),
        contents: contents.join(", "),
    }
}

/// Files with their paths, with `/` on every system.
pub type PaperFiles = Vec<(String, Vec<u8>)>;

/// A folder that papers are written to, whole or not at all.
#[derive(Debug)]
pub struct PapersFolder(OutputFolder);

impl PapersFolder {
    /// Checks that papers may be written to this folder. Changes nothing.
    ///
    /// # Errors
    /// As [`check_output`](super::check_output), and when there are papers already that are not to be replaced.
    pub fn check(out: &Path, replace: bool) -> Result<Self, RenderError> {
        let folder = OutputFolder::check(out, &PAPERS)?;
        if folder.holds_output() && !replace {
            return Err(RenderError::HasPapers(out.to_owned()));
        }
        Ok(PapersFolder(folder))
    }

    /// Writes the files that `next` gives, some at a time, until it gives none; then moves all into place.
    ///
    /// # Errors
    /// When the system refuses, or `next` fails; the folder is then as it was.
    pub fn write<E: From<RenderError>>(
        &self,
        mut next: impl FnMut() -> Result<PaperFiles, E>,
    ) -> Result<Written, E> {
        let mut failed = None;
        let written = self.0.replace_with(|writer| {
            loop {
                let files = match next() {
                    Ok(files) if files.is_empty() => return Ok(()),
                    Ok(files) => files,
                    Err(error) => {
                        failed = Some(error);
                        // Anything that is no success makes the folder stay as it was.
                        return Err(RenderError::BadPath(String::new()));
                    }
                };
                for (path, content) in files {
                    writer.put(&SiteFile { path, content })?;
                }
            }
        });
        match failed {
            Some(error) => Err(error),
            None => written.map_err(E::from),
        }
    }
}
