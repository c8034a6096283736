//! Progress: what an apprentice's record says of each skill, at the module that trains it first, and what is due.
//!
//! Entry points: [`Pages::progress`], [`Pages::progress_assets`]; the page runs what practice runs and asks it to read the record.

use super::Pages;
use crate::render::RenderError;
use crate::render::frame::{Frame, Link, Section};
use crate::render::output::SiteFile;
use crate::render::plan::{self, href, text_path};
use crate::render::templates::PROGRESS_JS;
use crate::render::words::{OF_PROGRESS, speaking};
use crate::say;
use serde::Serialize;
use std::collections::BTreeSet;

#[derive(Serialize)]
struct ProgressPage {
    frame: Frame,
    frame_title: String,
    lessons: String,
    practice: String,
    modules: Vec<ModuleSkills>,
}

/// A module with the skills that are first trained in it.
#[derive(Serialize)]
struct ModuleSkills {
    title: Link,
    /// Ids, with a space between them.
    skills: String,
}

impl Pages<'_> {
    /// The page of progress.
    pub(super) fn progress(&self) -> Result<SiteFile, RenderError> {
        let (course, path) = (self.course, plan::PROGRESS);
        let title = say!(course.language, "progress-title");
        let frame = self
            .frame(path, &title, Section::Progress)
            .described(&say!(course.language, "progress-about"))
            .with_engine(
                path,
                &[plan::BENCH_STYLE, plan::PRACTICE_STYLE],
                &[plan::PRACTICE_MAKER, plan::PRACTICE_COURSE, plan::PROGRESS_SCRIPT],
            );
        let mut seen = BTreeSet::new();
        let modules = course.modules.iter().filter_map(|module| {
            let drills = module.lessons.iter().flat_map(|lesson| &lesson.drills);
            let own: Vec<&str> =
                drills.map(|drill| drill.skill.as_str()).filter(|skill| seen.insert(*skill)).collect();
            let title = Link::new(&module.page.title, href(path, &text_path(&module.page.path)));
            (!own.is_empty()).then(|| ModuleSkills { title, skills: own.join(" ") })
        });
        let context = ProgressPage {
            frame,
            frame_title: title,
            lessons: href(path, plan::HOME),
            practice: href(path, plan::PRACTICE),
            modules: modules.collect(),
        };
        self.page(path, "progress.html", context)
    }

    /// The page's script; its styles, course and engine are those of practice.
    pub(super) fn progress_assets(&self) -> SiteFile {
        SiteFile {
            path: plan::PROGRESS_SCRIPT.to_owned(),
            content: speaking(&self.course.language, &OF_PROGRESS, PROGRESS_JS),
        }
    }
}
