//! A cohort's report as pages: one for the instructor, one for each apprentice.
//!
//! Entry points: [`ReportFolder::check`] before any work, [`ReportFolder::write`]. Steps: the instructor's page (`cohort`), everybody on a
//! page of names where they are too many for it, and the apprentices' pages (`person`) on all cores, some at a time; each from its
//! template. An apprentice's page is handed out alone: it holds its style, and leads to nobody else's.
//! Plots are drawings of our own (`plot`, `report-plots.html`): they take the page's ink and its words, and stay small.
//! Like every output, the folder is written beside the old one and exchanged with it whole.
//!
//! The pages decide nothing: every figure is the report's.

mod cohort;
mod frame;
mod items;
mod person;
mod plot;
mod said;
mod shown;

use super::output::{ASSIGNMENTS, OutputFolder, REPORT, SiteFile, TABLES};
use super::templates::{BASE_CSS, REPORT_CSS, STYLE_CSS, Templates};
use super::{RenderError, Written, plan};
use crate::assess::report::{PersonEntry, Report};
use crate::language::Language;
use frame::Style;
use rayon::prelude::*;
use serde::Serialize;
use std::path::Path;

/// The instructor's page.
const HOME: &str = "index.html";
/// Everybody, where they are too many for the instructor's page.
const EVERYBODY: &str = "everybody.html";
/// The style sheets beside the instructor's pages, in order.
const STYLES: [(&str, &str); 2] = [("style.css", STYLE_CSS), ("report.css", REPORT_CSS)];
/// Those that stand in a page that is handed out: ten thousand of them hold nothing that none of them shows.
const STYLES_ALONE: [&str; 2] = [BASE_CSS, REPORT_CSS];
/// People rendered at once: the most that are in memory together.
const AT_ONCE: usize = 512;
/// People on the instructor's page. A table of more is no help to anybody; they have a page of their own then.
const MOST_ON_PAGE: usize = 120;

/// Where the study site of the course lies, so that lessons can be linked.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SiteLink(String);

impl SiteLink {
    /// An address that begins with `https://` or `http://`, or a path as a link takes it, seen from the report's folder:
    /// `../public`. `None` for anything else.
    pub fn new(prefix: &str) -> Option<Self> {
        let is_address = ["https://", "http://"].iter().any(|scheme| prefix.starts_with(scheme));
        let is_path = !prefix.contains([':', '\\']) && !prefix.starts_with('/');
        let is_text = !prefix.is_empty() && !prefix.contains(|c: char| c.is_control() || c.is_whitespace());
        let fine = is_text && (is_address || is_path) && !prefix.contains(['?', '#']);
        fine.then(|| SiteLink(prefix.trim_end_matches('/').to_owned()))
    }

    /// The link to a lesson, from a page so many folders below the report's.
    fn lesson(&self, path: &str, below: usize) -> String {
        self.page(&plan::text_path(path), below)
    }

    /// The link to the page of practice with a skill chosen, likewise.
    fn practice(&self, skill: &str, below: usize) -> String {
        format!("{}#skill={}", self.page(plan::PRACTICE, below), plan::percent_encoded(skill))
    }

    /// The link to a page of the site, likewise.
    fn page(&self, path: &str, below: usize) -> String {
        let up = if self.0.contains("://") { String::new() } else { "../".repeat(below) };
        format!("{up}{}/{}", self.0, plan::href("x", path))
    }
}

/// A folder that may hold a report.
#[derive(Debug)]
pub struct ReportFolder(OutputFolder);

impl ReportFolder {
    /// Checks that a report may be written here. Changes nothing.
    ///
    /// # Errors
    /// When it is a file, a link, a course's folder, among a course's lessons, or holds anything that an earlier report did not write.
    pub fn check(out: &Path) -> Result<Self, RenderError> {
        OutputFolder::check(out, &REPORT).map(ReportFolder)
    }

    /// Writes the report, replacing an earlier one. The same report gives the same bytes.
    ///
    /// # Errors
    /// When the system refuses; the folder is then as it was.
    pub fn write(&self, report: &Report, site: Option<&SiteLink>) -> Result<Written, RenderError> {
        let language = Language::of(&report.language);
        let pages = Pages {
            report,
            site,
            templates: Templates::new(&language)?,
            style: Style::new(),
            language,
            paths: person::paths(&report.people),
        };
        self.0.replace_with(|writer| {
            for (path, content) in STYLES {
                writer.put(&SiteFile { path: path.to_owned(), content: content.as_bytes().to_vec() })?;
            }
            writer.put(&pages.cohort()?)?;
            if pages.has_everybody() {
                writer.put(&pages.everybody()?)?;
            }
            let people: Vec<(&PersonEntry, &String)> = report.people.iter().zip(&pages.paths).collect();
            for some in people.chunks(AT_ONCE) {
                let files: Result<Vec<SiteFile>, RenderError> =
                    some.par_iter().map(|(person, path)| pages.person(person, path)).collect();
                writer.put_all(&files?)?;
            }
            Ok(())
        })
    }
}

/// A folder that may hold files which a report leads to.
#[derive(Debug)]
pub struct FilesFolder(OutputFolder);

impl FilesFolder {
    /// Checks that tables may be written here. Changes nothing.
    ///
    /// # Errors
    /// As [`ReportFolder::check`].
    pub fn of_tables(out: &Path) -> Result<Self, RenderError> {
        OutputFolder::check(out, &TABLES).map(FilesFolder)
    }

    /// Checks that assignments may be written here. Changes nothing.
    ///
    /// # Errors
    /// As [`ReportFolder::check`].
    pub fn of_assignments(out: &Path) -> Result<Self, RenderError> {
        OutputFolder::check(out, &ASSIGNMENTS).map(FilesFolder)
    }

    /// Writes these files, by name, replacing earlier ones.
    ///
    /// # Errors
    /// When the system refuses; the folder is then as it was.
    pub fn write(&self, files: Vec<(String, Vec<u8>)>) -> Result<Written, RenderError> {
        let files: Vec<SiteFile> =
            files.into_iter().map(|(path, content)| SiteFile { path, content }).collect();
        self.0.replace(&files)
    }
}

/// A report on its way to becoming pages.
struct Pages<'r> {
    report: &'r Report,
    site: Option<&'r SiteLink>,
    language: Language,
    templates: Templates,
    style: Style,
    /// For every person the path of the page.
    paths: Vec<String>,
}

impl Pages<'_> {
    /// A page from its template and context.
    fn page(
        &self,
        path: &str,
        template: &'static str,
        context: impl Serialize,
    ) -> Result<SiteFile, RenderError> {
        let page = shown::cleaned(self.templates.render(template, context)?);
        Ok(SiteFile { path: path.to_owned(), content: page.into_bytes() })
    }

    fn has_everybody(&self) -> bool {
        self.report.people.len() > MOST_ON_PAGE
    }
}

#[cfg(test)]
mod tests {
    use super::SiteLink;

    #[test]
    fn only_pages_are_linked() {
        for good in ["../public", "https://example.org/course/", "site"] {
            assert!(SiteLink::new(good).is_some(), "{good}");
        }
        for bad in
            ["", "javascript:alert(1)", "//example.org", "/etc", "a b", "data:text/html,x", "..\\x", "a?b"]
        {
            assert!(SiteLink::new(bad).is_none(), "{bad}");
        }
        let link = SiteLink::new("../public/").expect("a path");
        assert_eq!(link.lesson("a/b c", 1), "../../public/lessons/a/b%20c.html");
        assert_eq!(link.practice("a\"&b", 1), "../../public/practice.html#skill=a%22%26b");
        let link = SiteLink::new("https://example.org/course/").expect("an address");
        assert_eq!(link.practice("foresee", 1), "https://example.org/course/practice.html#skill=foresee");
    }
}
