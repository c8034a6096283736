//! What every page of a report has around its content.

use super::super::frame::direction;
use super::super::plan::href;
use super::{EVERYBODY, HOME, Pages, STYLES};
use serde::Serialize;

/// The context of `report-frame.html`.
#[derive(Debug, Serialize)]
pub(super) struct Frame {
    lang: String,
    dir: &'static str,
    course: String,
    title: String,
    styles: Vec<String>,
    /// The way back to the instructor's page, on all others.
    home: Option<String>,
    /// Everybody, where there is such a page.
    everybody: Option<String>,
}

impl Pages<'_> {
    /// The frame of the page at `path`.
    pub(super) fn frame(&self, path: &str, title: String) -> Frame {
        let report = self.report;
        Frame {
            lang: report.language.clone(),
            dir: direction(&report.language),
            course: report.course.clone(),
            title,
            styles: STYLES.iter().map(|style| href(path, style.0)).collect(),
            home: (path != HOME).then(|| href(path, HOME)),
            everybody: (self.has_everybody() && path != EVERYBODY).then(|| href(path, EVERYBODY)),
        }
    }
}
