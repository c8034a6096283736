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
use crate::skin::Phototype;
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
    /// Other ways to name it, by which it is found as by its name.
    also: String,
}

impl Finding {
    /// Something as a whole, known by its name; its place in the list is given last.
    fn new(href: String, kind: &'static str, title: &str, text: String) -> Self {
        Finding { id: 0, href, kind, title: title.to_owned(), part: String::new(), text, also: String::new() }
    }

    /// The same under further names.
    fn also(self, names: impl Into<String>) -> Self {
        Finding { also: names.into(), ..self }
    }
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
        findings.extend(self.whole_pages());
        let found = |page: &str, anchor: &str, kind, title: &str, text: String| {
            Finding::new(href_to(plan::SEARCH, page, anchor), kind, title, text)
        };
        findings.extend(course.terms.iter().map(|term| {
            found(plan::GLOSSARY, &term.id, "Term", &term.term, term.means.clone()).also(term.forms.join(" "))
        }));
        findings.extend(
            course
                .shelf
                .bottles
                .iter()
                .map(|bottle| found(plan::BOTTLES, &bottle.id, "Bottle", &bottle.name, bottle.about.clone())),
        );
        let colourants = course.shelf.colourants.iter().filter(|colourant| colourant.of_bottle.is_none());
        findings.extend(colourants.map(|colourant| {
            let name = format!("{} {}", colour_index(&colourant.id), colourant.name);
            let rules = colourant
                .restrictions
                .iter()
                .map(|rule| format!(" {}: {} ({}; {}).", rule.place, rule.rule, rule.since, rule.source));
            let text = format!("CI {}. {}{}", colourant.ci_number, colourant.note, rules.collect::<String>());
            // As it is written in one word, too.
            found(plan::COLOURANTS, &colourant_anchor(colourant), "Colourant", &name, text)
                .also(colourant.id.as_str())
        }));
        findings.extend(course.clients.iter().map(|client| {
            let page = plan::client_path(course, client);
            let text = format!("{} {}", client.about, client.wish);
            found(&page, &client.id, "Client", &client.name, text)
        }));
        findings.extend(self.phototypes());
        findings.extend(course.misconceptions.iter().map(|belief| {
            let text = format!("{} {}", belief.tempting, belief.truth);
            found(plan::MISCONCEPTIONS, &belief.id, "Misconception", &belief.belief, text)
        }));
        findings.extend(course.cautions.iter().map(|caution| {
            found(plan::CAUTIONS, &caution.id, "Caution", &caution.name, caution.say.clone())
        }));
        let sheets = course.modules.iter().filter(|module| self.has_exercises(module));
        findings.extend(sheets.map(|module| {
            let asked: Vec<&str> =
                self.sheet_exercises(module).into_iter().map(|exercise| exercise.ask.as_str()).collect();
            let title = say!(course.language, "sheet-title", module = &module.page.title);
            found(&plan::worksheet_path(module), "page_top", "Worksheet", &title, asked.join(" "))
        }));
        for (id, finding) in findings.iter_mut().enumerate() {
            finding.id = id;
        }
        findings
    }

    /// Pages by their own names, whose entries are found one by one or made by a script: those of the menu, and those for instructors.
    fn whole_pages(&self) -> Vec<Finding> {
        let language = &self.course.language;
        let page = |path: &str, title: &str, text: String| {
            Finding::new(href_to(plan::SEARCH, path, "page_top"), "Page", title, text)
        };
        let course = page(plan::HOME, &self.course.title, self.course.description.clone())
            .also(say!(language, "frame-course"));
        let named = WHOLE_PAGES
            .iter()
            .map(|(path, title, about)| page(path, &say!(language, title), say!(language, about)));
        let notes = self.course.modules.iter().map(|module| {
            let title = say!(language, "teach-note-title", module = &module.page.title);
            page(&plan::note_path(module), &title, module.about.clone())
        });
        std::iter::once(course).chain(named).chain(notes).collect()
    }

    /// The clients of each phototype, whose number people also write in Arabic figures.
    fn phototypes(&self) -> Vec<Finding> {
        let of_phototype = |&(phototype, word): &(Phototype, &str)| {
            let names: Vec<&str> = self
                .course
                .clients
                .iter()
                .filter(|client| client.phototype == phototype)
                .map(|client| client.name.as_str())
                .collect();
            if names.is_empty() {
                return None;
            }
            let language = &self.course.language;
            let title = say!(language, "clients-of-phototype", phototype = word);
            let place = Phototype::ALL.iter().take_while(|(other, _)| *other != phototype).count() + 1;
            let also = say!(language, "clients-of-phototype", phototype = place.to_string());
            let href = href_to(plan::SEARCH, plan::CLIENTS, &format!("phototype_{word}"));
            let text = format!("{}: {}.", say!(language, "frame-clients"), names.join(", "));
            Some(Finding::new(href, "Page", &title, text).also(also))
        };
        Phototype::ALL.iter().filter_map(of_phototype).collect()
    }
}

/// Pages that are found by their names: where each lies, and the messages that name it and say what is on it.
const WHOLE_PAGES: [(&str, &str, &str); 10] = [
    (plan::PRACTICE, "practice-title", "practice-about"),
    (plan::PROGRESS, "progress-title", "progress-about"),
    (plan::BENCH, "bench-title", "bench-about"),
    (plan::BOTTLES, "frame-bottles", "bottles-description"),
    (plan::COLOURANTS, "bottles-colourants", "colourants-description"),
    (plan::CLIENTS, "frame-clients", "clients-description"),
    (plan::MISCONCEPTIONS, "frame-misconceptions", "misconceptions-description"),
    (plan::GLOSSARY, "frame-glossary", "glossary-description"),
    (plan::CAUTIONS, "frame-cautions", "cautions-description"),
    (plan::SYLLABUS, "teach-syllabus", "teach-syllabus-description"),
];

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
    let finding = |part: finished::PartOfPage| {
        let href = href_to_part(&file.path, &part.anchor);
        Finding { part: part.heading, ..Finding::new(href, "Page", &title, part.text) }
    };
    finished::parts(&html).into_iter().map(finding).collect()
}

/// The link to a part of a page, or to the page where its anchor is empty.
fn href_to_part(path: &str, anchor: &str) -> String {
    if anchor.is_empty() { href(plan::SEARCH, path) } else { href_to(plan::SEARCH, path, anchor) }
}

/// The parts of a page of text: what stands before its first heading, and what stands under each.
fn parts(page: &Page) -> Vec<Finding> {
    let path = text_path(&page.path);
    let part = |part: String, anchor: &str| Finding {
        part,
        ..Finding::new(href_to_part(&path, anchor), "Lesson", &page.title, String::new())
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
