//! Search over the course without a server: the page, and what can be found as a script it loads.
//!
//! Entry points: [`Pages::search`] and [`Pages::search_assets`]. A finding is a part of a lesson or of another page under one heading, a
//! term, a bottle, a colourant, a client, a misconception, a caution or a worksheet. The library that searches is
//! `site/vendor/minisearch.js`.

use super::Pages;
use super::bottles::colourant_anchor;
use crate::course::{Block, HeadingIds, Page, markdown_options, plain_text};
use crate::render::RenderError;
use crate::render::engine::data_script;
use crate::render::figures::colour_index;
use crate::render::finished;
use crate::render::frame::{Frame, Section};
use crate::render::output::SiteFile;
use crate::render::plan::{self, href, href_to, text_path};
use crate::render::templates::SEARCH_JS;
use crate::render::words::{OF_SEARCH, speaking};
use crate::say;
use pulldown_cmark::{Event, Parser, Tag, TagEnd};
use serde::Serialize;

#[derive(Serialize)]
struct SearchPage {
    frame: Frame,
}

/// Something that can be found.
#[derive(Debug, Serialize)]
struct Finding {
    /// Place in the list, by which the library knows it.
    id: usize,
    /// Where it stands, from the search page.
    href: String,
    /// What kind of thing it is; the script says it in words.
    kind: &'static str,
    /// Its name.
    title: String,
    /// The heading above it, where it is a part of something.
    part: String,
    /// What it says.
    text: String,
}

impl Pages<'_> {
    /// The page on which to search.
    pub(super) fn search(&self) -> Result<SiteFile, RenderError> {
        let language = &self.course.language;
        let frame = self
            .frame(plan::SEARCH, &say!(language, "search-title"), Section::Search)
            .described(&say!(language, "search-about"))
            .scripted_by(plan::SEARCH, plan::SEARCH_DATA)
            .scripted_by(plan::SEARCH, plan::SEARCH_SCRIPT);
        self.page(plan::SEARCH, "search.html", SearchPage { frame })
    }

    /// What can be found, on these finished pages too, and the script that finds it.
    pub(super) fn search_assets(&self, finished: &[SiteFile]) -> Result<Vec<SiteFile>, RenderError> {
        let content = data_script(&self.findings(finished))
            .map_err(|source| RenderError::Data { file: plan::SEARCH_DATA, source })?;
        Ok(vec![
            SiteFile { path: plan::SEARCH_DATA.to_owned(), content },
            SiteFile {
                path: plan::SEARCH_SCRIPT.to_owned(),
                content: speaking(&self.course.language, &OF_SEARCH, SEARCH_JS),
            },
        ])
    }

    fn findings(&self, finished: &[SiteFile]) -> Vec<Finding> {
        let course = self.course;
        let mut findings = Vec::new();
        for page in plan::reading_order(course) {
            findings.extend(parts(page));
        }
        for path in READ_BACK {
            findings.extend(finished.iter().filter(|file| file.path == path).flat_map(parts_of_page));
        }
        let mut add = |page: &str, anchor: &str, kind, title: &str, text: String| {
            let href = href_to(plan::SEARCH, page, anchor);
            findings.push(Finding { id: 0, href, kind, title: title.to_owned(), part: String::new(), text });
        };
        for term in &course.terms {
            add(plan::GLOSSARY, &term.id, "Term", &term.term, term.means.clone());
        }
        for bottle in &course.shelf.bottles {
            add(plan::BOTTLES, &bottle.id, "Bottle", &bottle.name, bottle.about.clone());
        }
        for colourant in course.shelf.colourants.iter().filter(|colourant| colourant.of_bottle.is_none()) {
            let name = format!("{} {}", colour_index(&colourant.id), colourant.name);
            // As it is written in one word, too.
            let text = format!("{}, CI {}. {}", colourant.id, colourant.ci_number, colourant.note);
            add(plan::COLOURANTS, &colourant_anchor(colourant), "Colourant", &name, text);
        }
        for client in &course.clients {
            add(
                &plan::client_path(course, client),
                &client.id,
                "Client",
                &client.name,
                format!("{} {}", client.about, client.wish),
            );
        }
        for belief in &course.misconceptions {
            let text = format!("{} {}", belief.tempting, belief.truth);
            add(plan::MISCONCEPTIONS, &belief.id, "Misconception", &belief.belief, text);
        }
        for caution in &course.cautions {
            add(plan::CAUTIONS, &caution.id, "Caution", &caution.name, caution.say.clone());
        }
        for module in course.modules.iter().filter(|module| self.has_exercises(module)) {
            let asked: Vec<&str> =
                self.sheet_exercises(module).into_iter().map(|exercise| exercise.ask.as_str()).collect();
            let title = say!(course.language, "sheet-title", module = &module.page.title);
            add(&plan::worksheet_path(module), "page_top", "Worksheet", &title, asked.join(" "));
        }
        for (id, finding) in findings.iter_mut().enumerate() {
            finding.id = id;
        }
        findings
    }
}

/// Pages whose text is read back from what was written.
const READ_BACK: [&str; 6] = [
    plan::MODEL,
    plan::DISPLAY,
    plan::SWATCH_BOOK,
    plan::CONSULTATION,
    plan::CORRECTION_PLANNER,
    plan::SOURCES,
];

/// The parts of a finished page.
fn parts_of_page(file: &SiteFile) -> Vec<Finding> {
    let html = String::from_utf8_lossy(&file.content);
    let title = finished::title(&html);
    let finding = |part: finished::PartOfPage| Finding {
        id: 0,
        href: if part.anchor.is_empty() {
            href(plan::SEARCH, &file.path)
        } else {
            href_to(plan::SEARCH, &file.path, &part.anchor)
        },
        kind: "Page",
        title: title.clone(),
        part: part.heading,
        text: part.text,
    };
    finished::parts(&html).into_iter().map(finding).collect()
}

/// The parts of a page of text: what stands before its first heading, and what stands under each.
fn parts(page: &Page) -> Vec<Finding> {
    let path = text_path(&page.path);
    let part = |part: String, anchor: &str| Finding {
        id: 0,
        href: if anchor.is_empty() {
            href(plan::SEARCH, &path)
        } else {
            href_to(plan::SEARCH, &path, anchor)
        },
        kind: "Lesson",
        title: page.title.clone(),
        part,
        text: String::new(),
    };
    let mut ids = HeadingIds::below(&page.anchor);
    let mut parts = vec![part(String::new(), "")];
    for block in &page.blocks {
        let Block::Text(text) = block else { continue };
        let mut heading: Option<Vec<Event>> = None;
        for event in Parser::new_ext(text, markdown_options()) {
            match (&mut heading, event) {
                (None, Event::Start(Tag::Heading { .. })) => heading = Some(Vec::new()),
                (_, Event::End(TagEnd::Heading(_))) => {
                    let name = plain_text(&heading.take().unwrap_or_default());
                    let anchor = ids.next(&name);
                    parts.push(part(name, &anchor));
                }
                (Some(heading), event) => heading.push(event),
                (None, Event::End(_)) => append(&mut parts, " "),
                (None, event) => append(&mut parts, &plain_text(&[event])),
            }
        }
    }
    parts.retain(|part| !part.text.trim().is_empty());
    parts
}

fn append(parts: &mut [Finding], words: &str) {
    if let Some(part) = parts.last_mut()
        && !(words.trim().is_empty() && part.text.ends_with(' '))
    {
        part.text.push_str(words);
    }
}
