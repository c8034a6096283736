//! The study site and the worksheets: a course as pages that work from any disk or server, with or without scripts.
//!
//! Entry point: [`build_site`]. Steps:
//!
//! 1. check that the output folder may be replaced (`output`);
//! 2. render every page in memory: text (`markdown`, with links to the `glossary`), swatches (`swatch`) and exercises (`exercise`)
//!    go through the embedded `templates`;
//!    the bench takes the `engine` along as a script, with the shapes it draws (`drawing`);
//! 3. write everything into a new folder and move it into place.
//!
//! The pages decide nothing: whatever they show of colour, marks and proofs was computed by the engine.

mod assignment;
mod drawing;
mod engine;
mod error;
mod exercise;
mod figures;
mod finished;
mod form;
mod frame;
mod glossary;
mod markdown;
mod output;
mod pages;
mod paper;
mod plain;
mod plan;
mod report;
mod spoken;
mod swatch;
mod templates;
mod timeline;
mod words;

pub use assignment::AssignedFolder;
pub use error::RenderError;
pub use output::MARKER;
pub use paper::{PaperFiles, PaperPages, PapersFolder};
pub(crate) use plain::bare_in_words;
pub use report::{FilesFolder, ReportFolder, SiteLink};
pub use timeline::timeline_svg;

use crate::course::Course;
use crate::exercise::Pools;
use std::path::Path;

/// What was written.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Written {
    /// Pages, worksheets included.
    pub pages: usize,
    /// Bytes of all files, the marker left out.
    pub bytes: u64,
}

/// Checks that [`build_site`] may write to the folder `out`, before any long work. Changes nothing.
///
/// # Errors
/// When it is a file, a link, a course's folder, among a course's lessons, or holds anything that an earlier build did not
/// write.
pub fn check_output(out: &Path) -> Result<(), RenderError> {
    output::OutputFolder::check(out, &output::SITE).map(drop)
}

/// Builds the study site and the worksheets of a course into the folder `out`, replacing an earlier site there.
///
/// `pools` holds the proved exercises of each drill; a lesson shows as many of them as its drill asks for, and a worksheet takes
/// those that follow. The same course and pools give the same bytes.
///
/// # Errors
/// When `out` may not be replaced (it is a file, a link, a course's folder, among a course's lessons, or holds anything that an
/// earlier build did not write), when a link leads to no page, or when the system refuses. The folder is then as it was.
pub fn build_site(course: &Course, pools: &Pools, out: &Path) -> Result<Written, RenderError> {
    let folder = output::OutputFolder::check(out, &output::SITE)?;
    let files = pages::Pages::new(course, pools)?.all()?;
    folder.replace(&files)
}
