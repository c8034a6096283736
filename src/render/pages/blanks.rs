//! Sheets to print and fill in by hand: a page of a swatch book, a consultation, the plan of a correction.

use super::Pages;
use crate::colour::Light;
use crate::course::CautionAction;
use crate::render::RenderError;
use crate::render::frame::{Frame, Link, Section};
use crate::render::output::SiteFile;
use crate::render::plan::{self, href};
use crate::say;
use serde::Serialize;

/// Rows of a page of the swatch book: what fills a sheet of A4 with room for a stitched patch in each.
const SWATCH_ROWS: usize = 7;
/// Mixes that a correction is thought through with.
const PLANNED_MIXES: usize = 3;
/// Visits of a correction.
const PLANNED_VISITS: usize = 4;

#[derive(Serialize)]
struct BlankPage {
    frame: Frame,
    /// Numbers of the rows.
    rows: Vec<usize>,
    lights: Vec<String>,
}

#[derive(Serialize)]
struct ConsultationPage {
    frame: Frame,
    cautions: Vec<AskedView>,
    all_cautions: String,
}

/// A caution as a question with boxes.
#[derive(Serialize)]
struct AskedView {
    name: String,
    action: String,
    refer_to: String,
}

#[derive(Serialize)]
struct PlannerPage {
    frame: Frame,
    lights: Vec<String>,
    mixes: Vec<usize>,
    visits: Vec<usize>,
    cautions: String,
}

impl Pages<'_> {
    /// A page of a swatch book.
    pub(super) fn swatch_book(&self) -> Result<SiteFile, RenderError> {
        let frame = self.blank(plan::SWATCH_BOOK, &say!(self.course.language, "book-title"));
        let rows = (1..=SWATCH_ROWS).collect();
        self.page(plan::SWATCH_BOOK, "swatch-book.html", BlankPage { frame, rows, lights: self.lights() })
    }

    /// The sheet for a consultation.
    pub(super) fn consultation(&self) -> Result<SiteFile, RenderError> {
        let cautions = self.course.cautions.iter().map(|caution| AskedView {
            name: caution.name.clone(),
            action: match caution.action {
                CautionAction::Wait => say!(self.course.language, "consult-wait"),
                CautionAction::Refer => say!(self.course.language, "consult-refer"),
            },
            refer_to: caution.refer_to.clone(),
        });
        let context = ConsultationPage {
            frame: self.blank(plan::CONSULTATION, &say!(self.course.language, "consult-title")),
            cautions: cautions.collect(),
            all_cautions: href(plan::CONSULTATION, plan::CAUTIONS),
        };
        self.page(plan::CONSULTATION, "consultation.html", context)
    }

    /// The plan of a correction.
    pub(super) fn correction_planner(&self) -> Result<SiteFile, RenderError> {
        let context = PlannerPage {
            frame: self.blank(plan::CORRECTION_PLANNER, &say!(self.course.language, "planner-title")),
            lights: self.lights(),
            mixes: (1..=PLANNED_MIXES).collect(),
            visits: (1..=PLANNED_VISITS).collect(),
            cautions: href(plan::CORRECTION_PLANNER, plan::CAUTIONS),
        };
        self.page(plan::CORRECTION_PLANNER, "correction-planner.html", context)
    }

    fn blank(&self, path: &str, title: &str) -> Frame {
        let way = vec![Link::new(say!(self.course.language, "teach-syllabus"), href(path, plan::SYLLABUS))];
        self.frame(path, title, Section::Course).below(way)
    }

    /// The lights that the course judges work under.
    fn lights(&self) -> Vec<String> {
        Light::ALL.iter().map(|(known, _)| self.course.language.light(*known)).collect()
    }
}
