//! Pages, modules and lessons: each entry of the summary with its Markdown and the YAML file beside it; then what pages refer to.

use super::{Loading, Naming, stem_of, yaml_beside};
use crate::course::files::Refused;
use crate::course::read::asset::{MOST_BYTES, check_content};
use crate::course::read::lesson::{
    LessonNotes, ModuleNotes, check_needs, check_places, read_lesson, read_module,
};
use crate::course::read::markdown::{PageText, Surroundings, read_page};
use crate::course::read::names::Thing;
use crate::course::read::node::Node;
use crate::course::read::suggest::{nearest, quoted};
use crate::course::read::summary::{Entry, Summary};
use crate::course::shared::Shared;
use crate::course::source::{At, Place, Source};
use crate::course::{Asset, Block, Lesson, Module, Page};
use std::collections::BTreeMap;
use std::sync::Arc;

impl Loading<'_> {
    /// The page of an entry of the summary.
    fn page(&mut self, entry: &Entry, pages: &[String], shared: &Shared) -> (Page, Vec<At<Block>>) {
        self.used.insert(entry.path.clone());
        let text = self.markdown(entry).map(|source| {
            let pages = Some(pages).filter(|_| self.summary_is_sound);
            let (folder, top) = (&self.folder, self.top.as_str());
            let around =
                Surroundings { folder, top, pages, shelf: &shared.shelf, computed: shared.computed() };
            read_page(&source, &around, self.reader)
        });
        let is_read = text.is_some();
        let PageText { blocks, title, headings, anchors, assets } = text.unwrap_or_default();
        let anchor = title.unwrap_or_default();
        if is_read {
            let headings = std::iter::once(anchor.clone()).chain(headings).collect();
            self.headings.insert(entry.path.clone(), headings);
        }
        self.anchors.extend(anchors);
        self.assets.extend(assets);
        let below_top = self.below_top(&entry.path);
        let path = below_top.strip_suffix(".md").unwrap_or(below_top).to_owned();
        let texts = blocks.iter().map(|block| block.value.clone()).collect();
        (Page { title: entry.title.clone(), path, anchor, blocks: texts }, blocks)
    }

    /// A path below the folder of lessons.
    fn below_top<'p>(&self, path: &'p str) -> &'p str {
        path.strip_prefix(&self.top).unwrap_or(path).trim_start_matches('/')
    }

    /// Checks that every link to a heading leads to one.
    pub(super) fn check_anchors(&mut self) {
        // More wrong links than any author reads are not compared with every heading.
        const MOST_COMPARED: usize = 100;
        let mut wrong = 0;
        for At { value: (page, anchor), place } in std::mem::take(&mut self.anchors) {
            // A page that could not be read has been reported as such.
            let Some(headings) = self.headings.get(&page) else { continue };
            if headings.contains(&anchor) {
                continue;
            }
            wrong += 1;
            let compared = headings.iter().map(String::as_str).filter(|_| wrong <= MOST_COMPARED);
            let near = nearest(&anchor, compared);
            let message = if page == place.source.path {
                format!("there is no heading {} on this page", quoted(&anchor))
            } else {
                format!("there is no heading {} in {}", quoted(&anchor), quoted(&page))
            };
            let help = match near {
                Some(near) => format!("did you mean {}?", quoted(&format!("#{near}"))),
                None => "a heading `## How it heals` is reached by `#how-it-heals`".to_owned(),
            };
            self.reader.error(&place, message).help(help);
        }
    }

    /// Reads the files that pages show or offer; each is reported once, where it is first referred to.
    pub(super) fn assets(&mut self) -> Vec<Asset> {
        let mut first: BTreeMap<String, Place> = BTreeMap::new();
        for At { value, place } in std::mem::take(&mut self.assets) {
            first.entry(value).or_insert(place);
        }
        let mut assets = Vec::new();
        for (path, place) in first {
            let problem = match self.folder.content(&path, MOST_BYTES) {
                Ok(content) => match check_content(&path, &content) {
                    Ok(()) => {
                        assets.push(Asset { path: self.below_top(&path).to_owned(), content });
                        continue;
                    }
                    Err((message, help)) => (message, help),
                },
                Err(Refused::TooLong(size)) => (
                    format!("{} is {size} bytes long; at most {MOST_BYTES} are read", quoted(&path)),
                    "save it smaller: a picture of 1600 pixels across fills any page",
                ),
                Err(Refused::Unfit(message)) => {
                    (format!("{} cannot be used: {message}", quoted(&path)), "put the file itself here")
                }
            };
            self.reader.error(&place, problem.0).help(problem.1);
        }
        assets
    }

    fn markdown(&mut self, entry: &Entry) -> Option<Arc<Source>> {
        if !self.folder.has(&entry.path) {
            return None;
        }
        self.folder.read(&entry.path, &mut self.reader.problems).ok()
    }

    /// A page without drills.
    pub(super) fn plain_page(&mut self, entry: &Entry, pages: &[String], shared: &Shared) -> Page {
        let (page, blocks) = self.page(entry, pages, shared);
        for block in &blocks {
            if let Block::Drill(_) = &block.value {
                self.reader
                    .error(&block.place, "a drill on a page that is no lesson")
                    .help("only lessons have drills");
            }
        }
        page
    }

    /// The YAML file beside a page.
    fn beside(&mut self, entry: &Entry, things: &'static [Thing]) -> Option<Node> {
        let path = yaml_beside(&entry.path);
        let id = Some(stem_of(&path).to_owned());
        if self.folder.has(&path) {
            return self.yaml(&path, things, id);
        }
        // The error is reported in the summary, or where the file should be.
        let reported_in = if self.folder.is_absent(&path) { &entry.place.source.path } else { &path };
        self.named.push(Naming { path: reported_in.clone(), source: None, things, id });
        if self.folder.has(&entry.path) && self.folder.is_absent(&path) {
            self.reader
                .error(&entry.place, format!("there is no file {} beside this page", quoted(&path)))
                .help("every module and every lesson has a YAML file of the same name");
        }
        None
    }

    /// The teaching note beside a module's page, unless it is a page of the summary.
    fn teaching(&mut self, module: &Entry, pages: &[String], shared: &Shared) -> Option<Page> {
        let folder = module.path.rsplit_once('/').map_or("", |(folder, _)| folder);
        let path = format!("{folder}/teaching.md");
        if !self.folder.has(&path) || pages.contains(&path) {
            return None;
        }
        let title = format!("Teaching note: {}", module.title);
        Some(self.plain_page(&Entry { title, path, place: module.place.clone() }, pages, shared))
    }

    pub(super) fn modules(&mut self, summary: &Summary, pages: &[String], shared: &Shared) -> Vec<Module> {
        let mut notes: Vec<LessonNotes> = Vec::new();
        let mut texts: Vec<(usize, Vec<At<Block>>)> = Vec::new();
        let mut modules = Vec::new();
        for (entry, lessons) in &summary.modules {
            let page = self.plain_page(entry, pages, shared);
            let root = self.beside(entry, &[Thing::Module]);
            let module = root.and_then(|root| read_module(&root, self.reader));
            let ModuleNotes { id, about } =
                module.unwrap_or(ModuleNotes { id: String::new(), about: String::new() });
            if lessons.is_empty() {
                self.reader
                    .warning(&entry.place, format!("the module {} has no lessons", quoted(&entry.title)));
            }
            let mut taught = Vec::new();
            for entry in lessons {
                let (page, blocks) = self.page(entry, pages, shared);
                let root = self.beside(entry, &[Thing::Lesson, Thing::Drill]);
                let Some(lesson) = root.and_then(|root| read_lesson(&root, shared, self.reader)) else {
                    continue;
                };
                taught.push(Lesson {
                    id: lesson.id.value.clone(),
                    page,
                    objectives: lesson.objectives.clone(),
                    minutes: lesson.minutes,
                    needs: lesson.needs.iter().map(|need| need.value.clone()).collect(),
                    skills: lesson.skills.clone(),
                    drills: lesson.drills.iter().map(|drill| drill.value.clone()).collect(),
                });
                texts.push((notes.len(), blocks));
                notes.push(lesson);
            }
            let teaching = self.teaching(entry, pages, shared);
            modules.push(Module { id, about, page, teaching, lessons: taught });
        }
        // Only now every drill of every lesson is known.
        for (lesson, blocks) in &texts {
            check_places(&notes[*lesson], blocks, self.reader);
        }
        check_needs(&notes.iter().collect::<Vec<_>>(), self.reader);
        modules
    }
}
