//! What every page of a report has around its content.
//!
//! The instructor's pages load their style from files beside them and lead to everybody. A page that is handed out leads to no other page of the
//! report, and holds its style: it is whole by itself.

use super::super::frame::{direction, policy_digest};
use super::super::plan::href;
use super::shown::cleaned;
use super::{EVERYBODY, HOME, Pages, STYLES, STYLES_ALONE};
use serde::Serialize;

/// The context of `report-frame.html`.
#[derive(Debug, Serialize)]
pub(super) struct Frame<'p> {
    lang: &'p str,
    dir: &'static str,
    course: &'p str,
    title: String,
    /// The style sheets beside the page; none of a page that holds its style.
    styles: Vec<String>,
    /// The style of a page that stands alone.
    style: Option<&'p Style>,
    /// The way back to the instructor's page.
    home: Option<String>,
    /// Everybody, where there is such a page.
    everybody: Option<String>,
}

/// The style as it stands in a page.
#[derive(Debug, Serialize)]
pub(super) struct Style {
    text: String,
    /// Its digest, by which the page's policy allows it.
    digest: String,
}

impl Style {
    /// The style sheets in one, as [`cleaned`] leaves them: the digest is of what comes to stand in the page.
    pub fn new() -> Self {
        let text = cleaned(STYLES_ALONE.join("\n"));
        Style { digest: policy_digest(&text), text }
    }
}

impl Pages<'_> {
    /// The frame of the instructor's page at `path`.
    pub(super) fn frame(&self, path: &str, title: String) -> Frame<'_> {
        Frame {
            styles: STYLES.iter().map(|style| href(path, style.0)).collect(),
            style: None,
            home: (path != HOME).then(|| href(path, HOME)),
            everybody: (self.has_everybody() && path != EVERYBODY).then(|| href(path, EVERYBODY)),
            ..self.frame_alone(title)
        }
    }

    /// The frame of a page that is handed out.
    pub(super) fn frame_alone(&self, title: String) -> Frame<'_> {
        let report = self.report;
        Frame {
            lang: &report.language,
            dir: direction(&report.language),
            course: &report.course,
            title,
            styles: Vec::new(),
            style: Some(&self.style),
            home: None,
            everybody: None,
        }
    }
}
