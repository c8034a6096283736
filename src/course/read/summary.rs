//! `SUMMARY.md`: which pages there are, and in which order; mdBook's published format.
//!
//! Pages before the list are the course's prefix, the list's first level are modules, its second level lessons.

use super::link::{Target, follow};
use super::suggest::quoted;
use super::{Reader, markdown};
use crate::course::source::{Place, Source};
use pulldown_cmark::{Event, Parser, Tag, TagEnd};
use std::collections::HashMap;
use std::ops::Range;
use std::sync::Arc;

/// The order of pages.
#[derive(Debug, Default)]
pub(crate) struct Summary {
    /// Pages before the first module.
    pub prefix: Vec<Entry>,
    /// Modules, each with its lessons.
    pub modules: Vec<(Entry, Vec<Entry>)>,
}

/// A page of the summary.
#[derive(Debug, Clone)]
pub(crate) struct Entry {
    /// Its title.
    pub title: String,
    /// The path of its `.md` file, relative to the course folder.
    pub path: String,
    /// Where the summary names it.
    pub place: Place,
}

impl Summary {
    /// Every page, in order.
    pub fn entries(&self) -> impl Iterator<Item = &Entry> {
        let modules =
            self.modules.iter().flat_map(|(module, lessons)| std::iter::once(module).chain(lessons));
        self.prefix.iter().chain(modules)
    }
}

/// Reads the summary; `top` is the folder of lessons.
pub(crate) fn read_summary(source: &Arc<Source>, top: &str, reader: &mut Reader) -> Summary {
    let mut walk = Walk {
        source,
        top,
        reader,
        summary: Summary::default(),
        seen: HashMap::new(),
        listed: false,
        skipping: false,
    };
    let mut depth = 0usize;
    let mut headings = 0usize;
    let mut link: Option<(String, Range<usize>, String)> = None;
    let mut items: Vec<bool> = Vec::new();
    for (event, range) in Parser::new_ext(&source.text, markdown::options()).into_offset_iter() {
        match event {
            Event::Start(Tag::List(_)) => depth += 1,
            Event::End(TagEnd::List(_)) => {
                depth = depth.saturating_sub(1);
                walk.listed = true;
            }
            Event::Start(Tag::Item) => items.push(false),
            Event::End(TagEnd::Item) => {
                let linked = items.pop().unwrap_or(true);
                if !linked {
                    let place = Place::new(source, range);
                    walk.reader
                        .error(&place, "an item without a link")
                        .help("every item of the summary is a link to a page: `[Title](folder/page.md)`");
                }
            }
            Event::Start(Tag::Heading { .. }) => {
                headings += 1;
                if headings > 1 {
                    let place = Place::new(source, range);
                    walk.reader
                        .warning(&place, "headings inside the summary are not shown")
                        .help("modules are the parts of a course");
                }
            }
            Event::Start(Tag::Link { dest_url, .. }) => {
                link = Some((dest_url.into_string(), range, String::new()))
            }
            Event::Text(text) | Event::Code(text) => {
                if let Some((_, _, title)) = &mut link {
                    title.push_str(&text);
                }
            }
            Event::End(TagEnd::Link) => {
                if let Some((destination, range, title)) = link.take() {
                    if let Some(item) = items.last_mut() {
                        *item = true;
                    }
                    walk.link(&destination, title.trim(), Place::new(source, range), depth);
                }
            }
            _ => {}
        }
    }
    let summary = walk.summary;
    if summary.modules.is_empty() {
        reader
            .error(&Place::start_of(source), "the summary lists no module")
            .help("a module is an item of the list, `- [Title](folder/module.md)`, and its lessons are indented below it");
    }
    summary
}

struct Walk<'s> {
    source: &'s Arc<Source>,
    top: &'s str,
    reader: &'s mut Reader,
    summary: Summary,
    /// Pages taken in, with the line of each.
    seen: HashMap<String, usize>,
    /// Whether a list has ended.
    listed: bool,
    /// Whether the module that is open could not be taken in, so that its lessons have no place.
    skipping: bool,
}

impl Walk<'_> {
    fn link(&mut self, destination: &str, title: &str, place: Place, depth: usize) {
        let entry = self.entry(destination, title, place.clone());
        match depth {
            0 if self.listed => {
                self.reader
                    .error(&place, "a page after the modules")
                    .help("put it before the list, or make it a lesson of a module");
            }
            0 => self.summary.prefix.extend(entry),
            1 => {
                self.skipping = entry.is_none();
                self.summary.modules.extend(entry.map(|entry| (entry, Vec::new())));
            }
            2 => {
                let module = self.summary.modules.last_mut().filter(|_| !self.skipping);
                if let (Some(entry), Some((module, lessons))) = (entry, module) {
                    if folder_of(&module.path) != folder_of(&entry.path) {
                        let message = format!(
                            "this lesson is not in the folder of its module {}",
                            quoted(&module.title)
                        );
                        self.reader
                            .error(&place, message)
                            .help(format!("move its files into `{}`", folder_of(&module.path)));
                    }
                    lessons.push(entry);
                }
            }
            _ => {
                self.reader
                    .error(&place, "a page below a lesson")
                    .help("modules hold lessons, and lessons hold no further pages");
            }
        }
    }

    /// A page, if its link is sound. A link without a destination is a draft, which is left out.
    fn entry(&mut self, destination: &str, title: &str, place: Place) -> Option<Entry> {
        if destination.is_empty() {
            return None;
        }
        if title.is_empty() {
            self.reader.error(&place, "a page without a title").help("write it between the square brackets");
        }
        let path = match follow(destination, &self.source.path, self.top) {
            Ok(Target::File(path)) if path.ends_with(".md") => path,
            Ok(_) => {
                self.reader
                    .error(&place, format!("{} is not a page", quoted(destination)))
                    .help("the summary links to `.md` files in the folder of lessons");
                return None;
            }
            Err((message, help)) => {
                self.reader.error(&place, message).help(help);
                return None;
            }
        };
        if let Some(line) = self.seen.get(&path) {
            self.reader
                .error(&place, format!("{} is in the summary twice", quoted(destination)))
                .help(format!("the first one is in line {line}"));
            return None;
        }
        let (line, _) = place.line_and_column();
        self.seen.insert(path.clone(), line);
        Some(Entry { title: title.to_owned(), path, place })
    }
}

/// The folder of a path.
fn folder_of(path: &str) -> &str {
    path.rsplit_once('/').map_or("", |(folder, _)| folder)
}
