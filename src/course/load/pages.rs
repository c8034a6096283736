//! Pages, modules and lessons: each entry of the summary with its Markdown and the YAML file beside it.

use super::{Loading, Naming, stem_of, yaml_beside};
use crate::course::read::lesson::{
    LessonNotes, ModuleNotes, check_needs, check_places, read_lesson, read_module,
};
use crate::course::read::markdown::{Surroundings, read_page};
use crate::course::read::names::Thing;
use crate::course::read::node::Node;
use crate::course::read::suggest::quoted;
use crate::course::read::summary::{Entry, Summary};
use crate::course::shared::Shared;
use crate::course::source::{At, Source};
use crate::course::{Block, Lesson, Module, Page};
use std::sync::Arc;

impl Loading<'_> {
    /// The page of an entry of the summary.
    fn page(&mut self, entry: &Entry, pages: &[String], shared: &Shared) -> (Page, Vec<At<Block>>) {
        self.used.insert(entry.path.clone());
        let blocks = self.markdown(entry).map_or_else(Vec::new, |source| {
            let pages = Some(pages).filter(|_| self.summary_is_sound);
            let around = Surroundings { folder: &self.folder, top: &self.top, pages, shelf: &shared.shelf };
            read_page(&source, &around, self.reader)
        });
        let below_top = entry.path.strip_prefix(&self.top).unwrap_or(&entry.path).trim_start_matches('/');
        let path = below_top.strip_suffix(".md").unwrap_or(below_top).to_owned();
        let texts = blocks.iter().map(|block| block.value.clone()).collect();
        (Page { title: entry.title.clone(), path, blocks: texts }, blocks)
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
            modules.push(Module { id, about, page, lessons: taught });
        }
        // Only now every drill of every lesson is known.
        for (lesson, blocks) in &texts {
            check_places(&notes[*lesson], blocks, self.reader);
        }
        check_needs(&notes.iter().collect::<Vec<_>>(), self.reader);
        modules
    }
}
