//! Lesson pages: text, computed swatches and exercises in the order the author gave them.

use super::Pages;
use crate::colour::Light;
use crate::course::{Block, Drill, Foresee, Lesson, Module, Page, Show, Technique};
use crate::exercise::{Exercise, bottles_named, foresee};
use crate::healing::Placement;
use crate::render::RenderError;
use crate::render::drawing::Drawn;
use crate::render::exercise::{ExerciseView, skill_name};
use crate::render::frame::{Frame, Link, Section};
use crate::render::markdown::TextWriter;
use crate::render::output::SiteFile;
use crate::render::plan::{self, href, href_to, text_path};
use crate::render::swatch::Swatch;
use rayon::prelude::*;
use serde::Serialize;
use std::collections::BTreeSet;

#[derive(Serialize)]
struct LessonPage {
    frame: Frame,
    number: String,
    title: String,
    anchor: String,
    minutes: String,
    objectives: Vec<String>,
    needs: Vec<Link>,
    skills: Vec<String>,
    /// Where fresh exercises of this lesson are made.
    practice: Option<String>,
    body: Body,
    previous: Option<Link>,
    next: Option<Link>,
}

/// The text of a page.
#[derive(Serialize)]
pub(super) struct Body {
    /// Its parts, in the author's order.
    pub parts: Vec<Part>,
    /// Links to its headings.
    pub outline: Vec<Link>,
    /// How many exercises are among the parts.
    pub exercises: usize,
    /// The bottles that these exercises name, in the library.
    pub bottles: Vec<Link>,
}

/// A piece of a page's text.
#[derive(Serialize)]
#[serde(tag = "kind", rename_all = "lowercase")]
pub(super) enum Part {
    /// HTML made of the author's text.
    Text {
        /// Safe by construction: see [`TextWriter`].
        html: String,
    },
    /// Computed swatches.
    Foresee {
        /// What is to be seen.
        caption: String,
        /// The swatches.
        swatches: Vec<Swatch>,
        /// The bench with the first mix that is shown.
        bench: Option<String>,
    },
    /// Exercises of one drill.
    Drill {
        /// The first ones of its pool.
        exercises: Vec<ExerciseView>,
    },
}

impl Pages<'_> {
    /// A lesson's page.
    pub(super) fn lesson(&self, module: &Module, lesson: &Lesson) -> Result<SiteFile, RenderError> {
        let page = &lesson.page;
        let path = text_path(&page.path);
        let body = self.body(page, &lesson.drills)?;
        let (previous, next) = self.neighbours(&page.path);
        let way = vec![Link::new(&module.page.title, href(&path, &text_path(&module.page.path)))];
        let mut frame = self.frame(&path, &page.title, Section::Course).below(way);
        if body.exercises > 0 {
            frame = frame.scripted(&path);
        }
        if let Some(first) = lesson.objectives.first() {
            frame = frame.described(first);
        }
        let needs = lesson
            .needs
            .iter()
            .filter_map(|id| self.course.lesson(id))
            .map(|(_, needed)| Link::new(&needed.page.title, href(&path, &text_path(&needed.page.path))))
            .collect();
        let context = LessonPage {
            frame,
            number: self.number_of(lesson),
            title: page.title.clone(),
            anchor: page.anchor.clone(),
            minutes: self.course.language.minutes(lesson.minutes),
            objectives: lesson.objectives.clone(),
            needs,
            skills: lesson.skills.iter().map(|id| skill_name(self.course, id)).collect(),
            practice: (!lesson.drills.is_empty() && !self.is_part())
                .then(|| format!("{}#lesson={}", href(&path, plan::PRACTICE), lesson.id)),
            body,
            previous,
            next,
        };
        self.page(path, "lesson.html", context)
    }

    /// The text of a page.
    ///
    /// Drills of the page that its text does not place stand at its end.
    pub(super) fn body(&self, page: &Page, drills: &[Drill]) -> Result<Body, RenderError> {
        self.body_at(text_path(&page.path), page, drills)
    }

    /// The same for a page that is shown at another place of the site.
    pub(super) fn body_at(&self, path: String, page: &Page, drills: &[Drill]) -> Result<Body, RenderError> {
        let mut writer = TextWriter::new(
            &self.course.language,
            path.clone(),
            page,
            (&self.texts, &self.whole_texts),
            &self.assets,
            &self.glossary,
        );
        let mut exercises = 0;
        let mut told = BTreeSet::new();
        let mut named = BTreeSet::new();
        let mut health_is_said = false;
        let placed =
            |id: &str| page.blocks.iter().any(|block| matches!(block, Block::Drill(placed) if placed == id));
        let rest: Vec<Block> = drills
            .iter()
            .filter(|drill| !placed(&drill.id))
            .map(|drill| Block::Drill(drill.id.clone()))
            .collect();
        let mut parts = Vec::with_capacity(page.blocks.len() + rest.len());
        for block in page.blocks.iter().chain(&rest) {
            parts.push(match block {
                Block::Text(text) => Part::Text { html: writer.html(text)? },
                Block::Foresee(row) => self.foresee(&path, row),
                Block::Drill(id) => {
                    let asked = self.shown(id).iter();
                    named.extend(asked.flat_map(|exercise| bottles_named(self.course, exercise)));
                    let mut views: Vec<ExerciseView> = self
                        .shown(id)
                        .iter()
                        .enumerate()
                        .map(|(at, exercise)| ExerciseView {
                            bench: self.bench_of_exercise(&path, exercise),
                            ..ExerciseView::new(self.course, exercise, &path, exercises + at + 1)
                        })
                        .collect();
                    exercises += views.len();
                    for view in views.iter_mut().filter(|view| view.health_first) {
                        let tells = view
                            .case
                            .as_ref()
                            .is_some_and(|case| case.health.iter().any(|answer| answer.caution.is_some()));
                        view.health_first = tells || !health_is_said;
                        health_is_said = true;
                    }
                    for belief in views.iter_mut().flat_map(ExerciseView::beliefs_mut) {
                        belief.in_full = told.insert(belief.id.clone());
                    }
                    Part::Drill { exercises: views }
                }
            });
        }
        let bottles = self.course.shelf.bottles.iter().filter(|bottle| named.contains(bottle.id.as_str()));
        let bottles = bottles
            .map(|bottle| Link::new(&bottle.name, href_to(&path, plan::BOTTLES, &bottle.id)))
            .collect();
        Ok(Body { parts, outline: writer.into_outline(), exercises, bottles })
    }

    /// The exercises of a drill that its lesson shows.
    pub(super) fn shown(&self, drill: &str) -> &[&Exercise] {
        self.halves.get(drill).map_or(&[], |halves| &halves.lesson)
    }

    fn foresee(&self, path: &str, row: &Foresee) -> Part {
        let swatches = row
            .show
            .par_iter()
            .filter_map(|show| {
                let foreseen = foresee(self.course, show)?;
                let client = self.course.client(&show.client)?;
                let technique = if show.mix.is_some() { show.technique } else { client.technique_now() };
                let drawn = Drawn::on(client, technique, show.light);
                Some(Swatch::foreseen(&self.course.language, &show.label, &foreseen, drawn, show.light))
            })
            .collect();
        let bench = row.show.iter().find_map(|show| self.bench_of_show(path, show));
        Part::Foresee { caption: row.caption.clone(), swatches, bench }
    }

    /// The bench with the case of an exercise: its client, and what is asked of them.
    fn bench_of_exercise(&self, path: &str, exercise: &Exercise) -> Option<String> {
        let case = exercise.case.as_ref()?;
        let client = self.course.client(&case.client)?;
        let mut more = Vec::new();
        if let Some(goal) = case.goal.as_ref().filter(|goal| goal.id != client.goal) {
            more.push(("goal", goal.id.clone()));
        }
        if let Some(placed) = &case.placed {
            more.extend(judged_at(placed.months, case.light));
        }
        self.bench_with(path, client, &more)
    }

    /// The bench with a mix on a client, as a row of swatches shows it.
    fn bench_of_show(&self, path: &str, show: &Show) -> Option<String> {
        let client = self.course.client(&show.client)?;
        let drops: Vec<String> =
            show.mix.as_ref()?.drops().map(|(bottle, drops)| format!("{bottle}~{drops}")).collect();
        let Placement { depth_mm, thickness_mm, load, coverage } = show.placement;
        let manner = match show.technique {
            Technique::Strokes => "strokes",
            Technique::Powder => "powder",
            Technique::PowderWithStrokes => "both",
        };
        let mut more = vec![
            ("technique", manner.to_owned()),
            ("placement", format!("{depth_mm},{thickness_mm},{load},{coverage}")),
            ("mix", drops.join(",")),
        ];
        if show.bare {
            more.push(("old", "none".to_owned()));
        }
        more.extend(judged_at(show.months, show.light));
        self.bench_with(path, client, &more)
    }
}

/// What the bench is told of a time and a light, as far as it has them and does not begin with them.
fn judged_at(months: f64, light: Light) -> Vec<(&'static str, String)> {
    let months = [0.0, 12.0, 24.0, 36.0].contains(&months).then(|| ("months", months.to_string()));
    let light = (light != Light::D65).then(|| ("light", light.name().to_owned()));
    months.into_iter().chain(light).collect()
}
