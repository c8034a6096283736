//! The course's home page and the page about the model.

use super::Pages;
use crate::colour::{BANDS, Light};
use crate::course::{Client, Module, Show, Technique};
use crate::exercise::foresee;
use crate::healing::{HEALED_MONTHS, Placement};
use crate::pigment::Mix;
use crate::render::RenderError;
use crate::render::drawing::Drawn;
use crate::render::frame::{Frame, Link, Section};
use crate::render::output::SiteFile;
use crate::render::plan::{self, href, text_path};
use crate::render::swatch::Swatch;
use crate::say;
use serde::Serialize;
use std::collections::BTreeSet;

/// Modules up to which the page is looked over without a list of them at its head.
const FEW_MODULES: usize = 8;
/// Lessons up to which the page says of each what one can do afterwards; beyond, each module's own page says it.
const FEW_LESSONS: usize = 24;

#[derive(Serialize)]
struct HomePage {
    frame: Frame,
    description: String,
    authors: String,
    /// "3 modules, 8 lessons, 2 h 45 min".
    extent: String,
    welcome: Vec<Link>,
    example: Option<Example>,
    modules: Vec<ModuleEntry>,
    /// Whether a list of the modules stands before them.
    listed: bool,
    instructors: Vec<Link>,
    /// Skills that can be practised, with their ids; none on the site of a part of a course.
    skills: Vec<(String, Link)>,
    /// What practice calls what is due on the device.
    due_record: String,
    progress: String,
    cautions: String,
    model: String,
}

/// One bottle, in the bottle and healed on several people: what the course is about, at a glance.
#[derive(Serialize)]
struct Example {
    bottle: String,
    swatches: Vec<Swatch>,
}

#[derive(Serialize)]
struct ModuleEntry {
    number: usize,
    title: Link,
    about: String,
    minutes: String,
    lessons: Vec<LessonEntry>,
    sheets: Vec<Link>,
}

/// A lesson in a list.
#[derive(Serialize)]
pub(super) struct LessonEntry {
    number: String,
    title: Link,
    minutes: String,
    objectives: Vec<String>,
}

#[derive(Serialize)]
struct ModelPage {
    frame: Frame,
    bands: usize,
    bottles: String,
    cautions: String,
}

impl Pages<'_> {
    /// The home page.
    pub(super) fn home(&self) -> Result<SiteFile, RenderError> {
        let course = self.course;
        let language = &course.language;
        let lessons = course.lessons().count();
        let entries = |module| -> Vec<LessonEntry> {
            let entries = self.lesson_entries(module, plan::HOME).into_iter();
            let brief = |entry| LessonEntry { objectives: Vec::new(), ..entry };
            if lessons > FEW_LESSONS { entries.map(brief).collect() } else { entries.collect() }
        };
        let modules: Vec<ModuleEntry> = course
            .modules
            .iter()
            .enumerate()
            .map(|(place, module)| ModuleEntry {
                number: place + 1,
                title: Link::new(&module.page.title, href(plan::HOME, &text_path(&module.page.path))),
                about: module.about.clone(),
                minutes: language.minutes(module.lessons.iter().map(|lesson| lesson.minutes).sum()),
                lessons: entries(module),
                sheets: self.sheet_links(module, plan::HOME),
            })
            .collect();
        let all_minutes: u32 = course.lessons().map(|(_, lesson)| lesson.minutes).sum();
        let extent = language.extent(modules.len(), lessons, all_minutes);
        let welcome = course
            .prefix
            .iter()
            .map(|page| Link::new(&page.title, href(plan::HOME, &text_path(&page.path))))
            .collect();
        let context = HomePage {
            frame: self.home_frame(),
            description: course.description.clone(),
            authors: course.authors.join(", "),
            extent,
            welcome,
            example: self.example(),
            listed: modules.len() > FEW_MODULES,
            modules,
            instructors: self.instructor_links(plan::HOME),
            skills: if self.is_part() { Vec::new() } else { self.practised_skills() },
            due_record: format!("{} due", course.record_name()),
            progress: href(plan::HOME, plan::PROGRESS),
            cautions: href(plan::HOME, plan::CAUTIONS),
            model: href(plan::HOME, plan::MODEL),
        };
        self.page(plan::HOME, "home.html", context)
    }

    fn home_frame(&self) -> Frame {
        let frame = self.frame(plan::HOME, &self.course.title, Section::Course);
        if self.is_part() { frame } else { frame.scripted_by(plan::HOME, plan::HOME_SCRIPT) }
    }

    /// Skills that some drill trains, each with the way to practise it.
    fn practised_skills(&self) -> Vec<(String, Link)> {
        let trained: BTreeSet<&str> = self.course.drills().map(|(_, drill)| drill.skill.as_str()).collect();
        let skills = self.course.skills.iter().filter(|skill| trained.contains(skill.id.as_str()));
        skills
            .map(|skill| {
                let to = format!("{}#skill={}", href(plan::HOME, plan::PRACTICE), skill.id);
                (skill.id.clone(), Link::new(&skill.name, to))
            })
            .collect()
    }

    /// The page about the model.
    pub(super) fn model(&self) -> Result<SiteFile, RenderError> {
        let language = &self.course.language;
        let frame = self
            .frame(plan::MODEL, &say!(language, "model-title"), Section::Model)
            .described(&say!(language, "model-description"));
        let bottles = href(plan::MODEL, plan::COLOURANTS);
        let cautions = href(plan::MODEL, plan::CAUTIONS);
        self.page(plan::MODEL, "model.html", ModelPage { frame, bands: BANDS, bottles, cautions })
    }

    /// The first bottle that is no modifier, on clients without old work from the lightest skin to the deepest.
    fn example(&self) -> Option<Example> {
        const PEOPLE: usize = 3;
        let course = self.course;
        let bottle = course.shelf.bottles.iter().find(|bottle| bottle.modifier.is_none())?;
        let mix = Mix::new([(bottle.id.clone(), 1)]);
        let mut seen: Vec<(&Client, _)> = course
            .clients
            .iter()
            .filter(|client| client.existing.is_empty())
            .filter_map(|client| {
                let show = Show {
                    label: client.name.clone(),
                    client: client.id.clone(),
                    bare: true,
                    mix: Some(mix.clone()),
                    months: HEALED_MONTHS,
                    placement: Placement::default(),
                    technique: Technique::default(),
                    light: Light::D65,
                };
                Some((client, foresee(course, &show)?))
            })
            .collect();
        if seen.len() < 2 {
            return None;
        }
        seen.sort_by(|(_, one), (_, other)| other.bare.lab.l.total_cmp(&one.bare.lab.l));
        let people = seen.len().min(PEOPLE);
        let mut swatches =
            vec![Swatch::bottle(&course.language, &bottle.name, course.shelf.label_colour(&mix))];
        swatches.extend((0..people).map(|place| {
            let (client, foreseen) = &seen[place * (seen.len() - 1) / (people - 1)];
            let on = Drawn::at(client, Light::D65);
            Swatch::foreseen(&course.language, &client.name, foreseen, on, Light::D65)
        }));
        Some(Example { bottle: bottle.name.clone(), swatches })
    }
}

impl Pages<'_> {
    /// A module's lessons as entries of a list on the page at `from`.
    pub(super) fn lesson_entries(&self, module: &Module, from: &str) -> Vec<LessonEntry> {
        module
            .lessons
            .iter()
            .map(|lesson| LessonEntry {
                number: self.number_of(lesson),
                title: Link::new(&lesson.page.title, href(from, &text_path(&lesson.page.path))),
                minutes: self.course.language.minutes(lesson.minutes),
                objectives: lesson.objectives.clone(),
            })
            .collect()
    }
}
