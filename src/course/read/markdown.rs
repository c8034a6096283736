//! A page's Markdown: its title taken off, its fenced blocks `drill` and `foresee` taken out, its calls answered, its links checked.
//!
//! Entry points: [`read_page`]; [`options`] is the one place that says which Markdown the course is written in.

use super::asset::{Use, check_name};
use super::computed::{Answers, Computed};
use super::link::{Target, anchor_of, follow};
use super::suggest::{nearest, nearest_path, quoted};
use super::{Reader, foresee, yaml};
use crate::course::Block;
use crate::course::files::Folder;
use crate::course::heading::{HeadingIds, plain_text};
use crate::course::source::{At, Place, Source};
use crate::pigment::Shelf;
use pulldown_cmark::{CodeBlockKind, Event, HeadingLevel, LinkType, Options, Parser, Tag, TagEnd};
use std::ops::Range;
use std::sync::Arc;

/// The Markdown of a course: CommonMark with tables.
pub fn options() -> Options {
    Options::ENABLE_TABLES
}

/// What a page can refer to.
pub(crate) struct Surroundings<'c> {
    /// Which files there are.
    pub folder: &'c Folder,
    /// The folder of lessons, relative to the course folder.
    pub top: &'c str,
    /// Pages of the summary, relative to the course folder; nothing when the summary itself is broken.
    pub pages: Option<&'c [String]>,
    /// Bottles and colourants.
    pub shelf: &'c Shelf,
    /// What calls in the text may ask.
    pub computed: &'c Computed,
}

/// What a page says and what it refers to.
#[derive(Debug, Default)]
pub(crate) struct PageText {
    /// The blocks of its text.
    pub blocks: Vec<At<Block>>,
    /// Id of its title; nothing when it has none.
    pub title: Option<String>,
    /// Ids of its headings, in order.
    pub headings: Vec<String>,
    /// Links to a heading: the page, relative to the course folder, and the heading's id.
    pub anchors: Vec<At<(String, String)>>,
    /// Files that are shown or offered, relative to the course folder.
    pub assets: Vec<At<String>>,
}

/// Reads a page.
pub(crate) fn read_page(source: &Arc<Source>, around: &Surroundings<'_>, reader: &mut Reader) -> PageText {
    let answers = around.computed.calls_of(source, reader);
    let mut page = Page { source, around, reader, text: PageText::default(), answers, cursor: 0 };
    let parser = Parser::new_ext(&source.text, options());
    let mut definitions: Vec<Range<usize>> =
        parser.reference_definitions().iter().map(|(_, definition)| definition.span.clone()).collect();
    definitions.sort_by_key(|span| span.start);
    page.walk(parser.into_offset_iter());
    page.text_until(source.text.len());
    if page.text.title.is_none() {
        let place = Place::new(source, 0..source.end_of_line(0));
        page.reader
            .error(&place, "this page does not begin with a title")
            .help("write `# Title` in its first line");
    }
    let mut text = page.text;
    share_definitions(&mut text.blocks, source, &definitions);
    text
}

/// A page while it is read.
struct Page<'p> {
    source: &'p Arc<Source>,
    around: &'p Surroundings<'p>,
    reader: &'p mut Reader,
    text: PageText,
    /// What the calls in it come to.
    answers: Answers,
    /// Where the text begins that belongs to no block yet.
    cursor: usize,
}

impl Page<'_> {
    fn walk<'t>(&mut self, events: impl Iterator<Item = (Event<'t>, Range<usize>)>) {
        let mut depth = 0usize;
        let mut first = true;
        let mut fence: Option<(Fence, Range<usize>, Option<Range<usize>>)> = None;
        let mut html_until = 0;
        let mut image: Option<(Range<usize>, bool)> = None;
        let mut heading: Option<(bool, Vec<Event<'t>>)> = None;
        let mut ids = HeadingIds::below("");
        for (event, range) in events {
            match (&event, &mut heading) {
                (Event::Start(Tag::Heading { level, .. }), _) => {
                    heading = Some((first && *level == HeadingLevel::H1, Vec::new()));
                }
                (Event::End(TagEnd::Heading(_)), Some((is_title, said))) => {
                    let said = plain_text(said);
                    if *is_title {
                        let title = HeadingIds::of_title(&said);
                        ids = HeadingIds::below(&title);
                        self.text.title = Some(title);
                    } else {
                        self.text.headings.push(ids.next(&said));
                    }
                    heading = None;
                }
                (event, Some((_, said))) => said.push((*event).clone()),
                _ => {}
            }
            match &event {
                Event::Start(Tag::Heading { level: HeadingLevel::H1, .. }) if first => {
                    self.cursor = range.end;
                }
                Event::Start(Tag::CodeBlock(CodeBlockKind::Fenced(info))) => {
                    fence = self.fence(info, &range, depth).map(|fence| (fence, range.clone(), None));
                }
                Event::Text(_) if fence.is_some() => {
                    if let Some((_, _, body)) = &mut fence {
                        *body = Some(body.as_ref().map_or(range.start, |body| body.start)..range.end);
                    }
                }
                Event::End(TagEnd::CodeBlock) => {
                    if let Some((fence, range, body)) = fence.take() {
                        self.fenced(fence, range.clone(), body.unwrap_or(range.end..range.end));
                    }
                }
                Event::Start(Tag::Link { link_type, dest_url, .. }) if *link_type != LinkType::Email => {
                    self.link(dest_url, &range, false);
                }
                Event::Start(Tag::Image { dest_url, .. }) => {
                    self.link(dest_url, &range, true);
                    image = Some((range.clone(), false));
                }
                Event::Text(_) | Event::Code(_) => {
                    if let Some((_, described)) = &mut image {
                        *described = true;
                    }
                }
                Event::End(TagEnd::Image) => {
                    if let Some((range, false)) = image.take() {
                        let place = Place::new(self.source, range);
                        self.reader
                            .warning(&place, "an image without a description")
                            .help("write between the square brackets what is to be seen");
                    }
                }
                // Once a line: the rest belongs to the same piece of HTML.
                Event::Start(Tag::HtmlBlock) | Event::InlineHtml(_) if range.start >= html_until => {
                    html_until = self.source.end_of_line(range.start);
                    let place = Place::new(self.source, range.clone());
                    self.reader
                        .error(&place, "raw HTML in a page")
                        .help("pages are written in Markdown only; write `\\<` for the sign itself");
                }
                _ => {}
            }
            match event {
                Event::Start(_) => depth += 1,
                Event::End(_) => depth = depth.saturating_sub(1),
                _ => {}
            }
            first = false;
        }
    }

    /// Which of our blocks a fence opens.
    fn fence(&mut self, info: &str, range: &Range<usize>, depth: usize) -> Option<Fence> {
        let place = Place::new(self.source, range.clone());
        let fence = match info.trim() {
            "drill" => Fence::Drill,
            "foresee" => Fence::Foresee,
            other => {
                let word = other.split_whitespace().next().unwrap_or_default();
                if let Some(near) = nearest(word, ["drill", "foresee"]) {
                    self.reader
                        .warning(&place, format!("a block {} is shown as it is written", quoted(other)))
                        .help(format!("did you mean `{near}`, and nothing after it?"));
                }
                return None;
            }
        };
        if depth > 0 {
            self.reader
                .error(&place, format!("a block `{}` inside a list or a quotation", fence.word()))
                .help("begin its first line at the margin, after an empty line");
            return None;
        }
        let last_line =
            self.source.text[range.clone()].trim_end().lines().skip(1).last().unwrap_or_default().trim();
        if last_line.len() < 3 || !last_line.chars().all(|c| matches!(c, '`' | '~')) {
            self.reader
                .error(&place, format!("the block `{}` is never closed", fence.word()))
                .help("end it with a line of three backticks");
            return None;
        }
        Some(fence)
    }

    /// Takes a fenced block out of the text.
    fn fenced(&mut self, fence: Fence, range: Range<usize>, body: Range<usize>) {
        self.text_until(range.start);
        self.cursor = range.end;
        let block = match fence {
            Fence::Drill => {
                let text = self.source.text[body.clone()].trim();
                let start = body.start + self.source.text[body.clone()].find(text).unwrap_or(0);
                let place = Place::new(self.source, start..start + text.len());
                if text.is_empty() {
                    let place = Place::new(self.source, range);
                    self.reader
                        .error(&place, "this block names no drill")
                        .help("write the id of one drill in it");
                    return;
                }
                if text.contains(char::is_whitespace) {
                    self.reader
                        .error(&place, "this block holds more than the id of one drill")
                        .help("write one block for each drill");
                    return;
                }
                At::new(Block::Drill(text.to_owned()), place)
            }
            Fence::Foresee => {
                let root = yaml::parse(self.source, body, &mut self.reader.problems);
                let around = self.around;
                let foresee = root.and_then(|root| foresee::read_foresee(&root, around, self.reader));
                let Some(foresee) = foresee else { return };
                At::new(Block::Foresee(foresee), Place::new(self.source, range))
            }
        };
        self.text.blocks.push(block);
    }

    /// Makes a block of the text from the cursor to `end`.
    fn text_until(&mut self, end: usize) {
        let text = self.answers.fill(&self.source.text, self.cursor..end);
        if !text.trim().is_empty() {
            // A first line may be indented code: only whole empty lines are taken off.
            let text = text.replace("\r\n", "\n");
            let start = text
                .find(|c: char| !c.is_whitespace())
                .map_or(0, |at| text[..at].rfind('\n').map_or(0, |n| n + 1));
            let place = Place::new(self.source, self.cursor..end);
            self.text.blocks.push(At::new(Block::Text(text[start..].trim_end().to_owned() + "\n"), place));
        }
        self.cursor = end;
    }

    fn link(&mut self, destination: &str, range: &Range<usize>, is_image: bool) {
        let place = Place::new(self.source, range.clone());
        let around = self.around;
        let used = if is_image { Use::Shown } else { Use::Linked };
        match follow(destination, &self.source.path, around.top) {
            Err((message, help)) => _ = self.reader.error(&place, message).help(help),
            Ok(Target::Outside | Target::SamePage) if is_image => {
                self.reader
                    .error(&place, "an image that is not in the course")
                    .help("pages are read without a network: put the picture into the folder of lessons");
            }
            Ok(Target::Outside) => {}
            Ok(Target::SamePage) => {
                let anchor = anchor_of(destination).map(|anchor| (self.source.path.clone(), anchor));
                self.text.anchors.extend(anchor.map(|anchor| At::new(anchor, place)));
            }
            // What is there and unfit has been reported as such.
            Ok(Target::File(path)) if !around.folder.has(&path) && !around.folder.is_unfit(&path) => {
                let problem = self.reader.error(&place, format!("there is no file {}", quoted(&path)));
                if let Some(near) = nearest_path(&path, around.folder.files()) {
                    problem.help(format!("did you mean {}?", quoted(near)));
                }
            }
            Ok(Target::File(path))
                if !is_image
                    && path.ends_with(".md")
                    && around.pages.is_some_and(|pages| !pages.contains(&path)) =>
            {
                self.reader
                    .error(
                        &place,
                        format!("{} is not in the summary, so there is no such page", quoted(&path)),
                    )
                    .help("add it to SUMMARY.md, or remove the link");
            }
            Ok(Target::File(path)) if !is_image && path.ends_with(".md") => {
                let anchor = anchor_of(destination).map(|anchor| (path, anchor));
                self.text.anchors.extend(anchor.map(|anchor| At::new(anchor, place)));
            }
            Ok(Target::File(path)) if around.folder.is_unfit(&path) => {}
            Ok(Target::File(path)) => match check_name(&path, used) {
                Ok(()) => self.text.assets.push(At::new(path, place)),
                Err((message, help)) => _ = self.reader.error(&place, message).help(help),
            },
        }
    }
}

/// Our fenced blocks.
#[derive(Clone, Copy)]
enum Fence {
    Drill,
    Foresee,
}

impl Fence {
    fn word(self) -> &'static str {
        match self {
            Fence::Drill => "drill",
            Fence::Foresee => "foresee",
        }
    }
}

/// Gives every text the link definitions that stand in another text of the page: each text is rendered by itself.
fn share_definitions(blocks: &mut [At<Block>], source: &Source, definitions: &[Range<usize>]) {
    for block in blocks {
        let Block::Text(text) = &mut block.value else { continue };
        let elsewhere = definitions.iter().filter(|span| {
            !block.place.span.contains(&span.start) && !source.text[(*span).clone()].trim_end().contains('\n')
        });
        let lines: Vec<&str> = elsewhere.map(|span| source.text[span.clone()].trim_end()).collect();
        if !lines.is_empty() {
            text.push('\n');
            for line in lines {
                text.push_str(line);
                text.push('\n');
            }
        }
    }
}
