//! Loading a course from its folder.
//!
//! Entry point: [`load`]. Steps: the manifest, the summary, what lessons draw on (skills, goals, cautions, pigments, clients,
//! misconceptions, terms, questions), the modules and lessons, the headings and files that pages refer to, files that belong to
//! nothing, and at last every reference.

mod pages;

use super::Course;
use super::blueprint::Blueprint;
use super::diagnostic::{Diagnostic, Severity};
use super::files::{Folder, Unreadable, is_course_file};
use super::read::manifest::{Manifest, read_manifest};
use super::read::names::Thing;
use super::read::node::Node;
use super::read::suggest::{nearest_path, quoted};
use super::read::summary::{Summary, read_summary};
use super::read::{Reader, bank, client, paper, pigment, sources, words, yaml};
use super::shared::Shared;
use super::source::{At, Source};
use super::stands::Stands;
use crate::language::Language;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::sync::Arc;

/// A course and what is wrong with it.
#[derive(Debug)]
pub struct Loaded {
    /// The course, when there is no error.
    pub course: Option<Course>,
    /// Every problem, by file, line and column.
    pub diagnostics: Vec<Diagnostic>,
    /// Where everything that has an id is written.
    pub stands: Stands,
}

/// Files that hold one list, below the folder of lessons.
const SHARED_FILES: [&str; 8] = [
    "skills.yaml",
    "goals.yaml",
    "cautions.yaml",
    "misconceptions.yaml",
    "glossary.yaml",
    "sources.yaml",
    "pigments/colourants.yaml",
    "pigments/bottles.yaml",
];

/// Loads the course in the folder `root` and reports all problems of all its files at once.
pub fn load(root: &Path) -> Loaded {
    let mut reader = Reader::default();
    let course = Folder::open(root, &mut reader.problems).and_then(|folder| {
        let mut loading = Loading {
            folder,
            top: String::new(),
            used: BTreeSet::new(),
            summary_is_sound: true,
            named: Vec::new(),
            headings: BTreeMap::new(),
            anchors: Vec::new(),
            assets: Vec::new(),
            reader: &mut reader,
        };
        loading.course()
    });
    let stands = Stands::of_names(&reader.names);
    let diagnostics = reader.problems.into_sorted();
    let sound = diagnostics.iter().all(|diagnostic| diagnostic.severity == Severity::Warning);
    Loaded { course: course.filter(|_| sound), diagnostics, stands }
}

/// A course while it is loaded.
struct Loading<'r> {
    folder: Folder,
    /// The folder of lessons, relative to the course folder.
    top: String,
    /// Files that are part of the course, relative to the course folder.
    used: BTreeSet<String>,
    /// Whether the summary could be read without an error.
    summary_is_sound: bool,
    /// YAML files that were read.
    named: Vec<Naming>,
    /// Ids of every page's title and headings.
    headings: BTreeMap<String, BTreeSet<String>>,
    /// Links to headings: the page and the heading's id.
    anchors: Vec<At<(String, String)>>,
    /// Files that pages show or offer.
    assets: Vec<At<String>>,
    reader: &'r mut Reader,
}

/// A YAML file and what it names.
struct Naming {
    path: String,
    /// The text, unless there is none.
    source: Option<Arc<Source>>,
    things: &'static [Thing],
    /// The one id it is expected to name.
    id: Option<String>,
}

impl Loading<'_> {
    fn course(&mut self) -> Option<Course> {
        let manifest = self.manifest();
        self.top = self.top_of(manifest.as_ref())?;
        self.folder.explore(&self.top, &mut self.reader.problems);
        let summary = self.summary();
        let language = manifest.as_ref().map(|manifest| Language::of(&manifest.language)).unwrap_or_default();
        let shared = self.shared(language);
        self.summary_is_sound =
            !self.reader.problems.files_with_errors().contains(self.summary_path().as_str());
        let pages: Vec<String> = summary.entries().map(|entry| entry.path.clone()).collect();
        let prefix = summary.prefix.iter().map(|entry| self.plain_page(entry, &pages, &shared)).collect();
        let modules = self.modules(&summary, &pages, &shared);
        let blueprints = self.blueprints();
        self.check_anchors();
        let assets = self.assets();
        self.report_strays(&summary);
        self.excuse_names_of_broken_files();
        self.reader.check_references();
        let manifest = manifest?;
        Some(Course {
            title: manifest.title,
            description: manifest.description,
            authors: manifest.authors,
            language: shared.language,
            seed: manifest.seed,
            strict: manifest.strict,
            version: self.folder.version(),
            prefix,
            modules,
            shelf: shared.shelf,
            clients: shared.clients,
            goals: shared.goals,
            skills: shared.skills,
            cautions: shared.cautions,
            misconceptions: shared.misconceptions,
            terms: shared.terms,
            questions: shared.questions,
            blueprints,
            sources: shared.sources,
            assets,
        })
    }

    fn manifest(&mut self) -> Option<Manifest> {
        let path = "book.toml";
        if self.folder.is_absent(path) {
            self.reader.problems.file_error(path, "there is no `book.toml`").help(
                "it is the manifest of a course; is this the folder of one? `--course FOLDER` names another",
            );
            return None;
        }
        let source = self.folder.read(path, &mut self.reader.problems).ok()?;
        Some(read_manifest(&source, self.reader))
    }

    /// The folder of lessons. When the manifest does not name one, the usual folder is looked into all the same, since there
    /// may be more to say about it.
    fn top_of(&mut self, manifest: Option<&Manifest>) -> Option<String> {
        const USUAL: &str = "lessons";
        if let Some(top) = manifest.and_then(|manifest| manifest.top.as_ref()) {
            match self.folder.has_folder(&top.value) {
                Ok(()) => return Some(top.value.clone()),
                Err(message) => {
                    let message =
                        format!("the folder of lessons {} cannot be used: {message}", quoted(&top.value));
                    self.reader
                        .error(&top.place, message)
                        .help("`src` in the table `[book]` names it, such as `src = \"lessons\"`");
                }
            }
        }
        self.folder.has_folder(USUAL).ok().map(|()| USUAL.to_owned())
    }

    fn summary_path(&self) -> String {
        format!("{}/SUMMARY.md", self.top)
    }

    fn summary(&mut self) -> Summary {
        let path = self.summary_path();
        self.used.insert(path.clone());
        if self.folder.is_absent(&path) {
            self.reader
                .problems
                .file_error(&path, "there is no `SUMMARY.md`")
                .help("it lists the pages of the course in their order");
            return Summary::default();
        }
        let Ok(source) = self.folder.read(&path, &mut self.reader.problems) else {
            return Summary::default();
        };
        let summary = read_summary(&source, &self.top, self.reader);
        // A folder, or a link that leads out, has been reported as such.
        for entry in summary.entries().filter(|entry| self.folder.is_absent(&entry.path)) {
            let near = nearest_path(&entry.path, self.folder.files().filter(|path| path.ends_with(".md")));
            let problem =
                self.reader.error(&entry.place, format!("there is no file {}", quoted(&entry.path)));
            if let Some(near) = near {
                problem.help(format!("did you mean {}?", quoted(near)));
            }
        }
        summary
    }

    /// What lessons draw on.
    fn shared(&mut self, language: Language) -> Shared {
        let mut shared = Shared::in_language(language);
        if let Some(root) = self.shared_file("skills.yaml", &[Thing::Skill]) {
            shared.skills =
                words::read_list(&root, "the file of skills", "skills", words::read_skill, self.reader);
        }
        if let Some(root) = self.shared_file("goals.yaml", &[Thing::Goal]) {
            shared.goals =
                words::read_list(&root, "the file of goals", "goals", words::read_goal, self.reader);
            shared.goals.sort_by(|one, other| one.id.cmp(&other.id));
        }
        if let Some(root) = self.shared_file("cautions.yaml", &[Thing::Caution]) {
            let what = "the file of cautions";
            shared.cautions = words::read_list(&root, what, "cautions", words::read_caution, self.reader);
        }
        if let Some(root) = self.shared_file("misconceptions.yaml", &[Thing::Misconception]) {
            let (what, read) = ("the file of misconceptions", words::read_misconception);
            shared.misconceptions = words::read_list(&root, what, "misconceptions", read, self.reader);
        }
        if let Some(root) = self.shared_file("glossary.yaml", &[Thing::Term]) {
            shared.terms = words::read_list(&root, "the glossary", "terms", words::read_term, self.reader);
            shared.terms.sort_by_cached_key(|term| (term.term.to_lowercase(), term.id.clone()));
        }
        if let Some(root) = self.shared_file("sources.yaml", &[Thing::Source]) {
            let (what, read) = ("the file of sources", sources::read_source);
            shared.sources = words::read_list(&root, what, "sources", read, self.reader);
        }
        self.shelf(&mut shared);
        for path in self.files_in("clients") {
            let stem = stem_of(&path).to_owned();
            let root = self.yaml(&path, &[Thing::Client], Some(stem.clone()));
            shared
                .clients
                .extend(root.and_then(|root| client::read_client(&root, &stem, &shared.shelf, self.reader)));
        }
        shared.clients.sort_by(|one, other| one.id.cmp(&other.id));
        for path in self.files_in("bank") {
            if let Some(root) = self.yaml(&path, &[Thing::Question], None) {
                let (what, read) = ("a file of questions", bank::read_question);
                shared.questions.extend(words::read_list(&root, what, "questions", read, self.reader));
            }
        }
        shared
    }

    /// Colourants, bottles and lines: of their two files, and of any other file in the same folder.
    fn shelf(&mut self, shared: &mut Shared) {
        const COLOURANTS: &str = "pigments/colourants.yaml";
        const BOTTLES: &str = "pigments/bottles.yaml";
        let mut roots = Vec::new();
        roots.extend(
            self.shared_file(COLOURANTS, &[Thing::Colourant]).map(|root| (root, &["colourants"][..])),
        );
        let of_bottles = self.shared_file(BOTTLES, &[Thing::Bottle, Thing::Line]);
        roots.extend(of_bottles.map(|root| (root, &["bottles", "lines"][..])));
        let own = [COLOURANTS, BOTTLES].map(|name| format!("{}/{name}", self.top));
        let mut paths = self.files_in("pigments");
        paths.retain(|path| !own.contains(path));
        for path in &paths {
            let root = self.yaml(path, &[Thing::Colourant, Thing::Bottle, Thing::Line], None);
            roots.extend(root.map(|root| (root, &["colourants", "bottles", "lines"][..])));
        }
        let bottles: Vec<&Node> = roots
            .iter()
            .flat_map(|(root, holds)| {
                pigment::read_colourants_and_lines_of(root, holds, &mut shared.shelf, self.reader)
            })
            .collect();
        for node in bottles {
            pigment::read_bottle(node, &mut shared.shelf, self.reader);
        }
        paths.push(format!("{}/{BOTTLES}", self.top));
        let broken = self.reader.problems.files_with_errors();
        shared.shelf_is_broken = paths.iter().any(|path| broken.contains(path.as_str()));
    }

    /// Recipes of assessments.
    fn blueprints(&mut self) -> Vec<Blueprint> {
        let mut blueprints = Vec::new();
        for path in self.files_in("papers") {
            let stem = stem_of(&path).to_owned();
            let root = self.yaml(&path, &[Thing::Blueprint], Some(stem.clone()));
            blueprints.extend(root.and_then(|root| paper::read_blueprint(&root, &stem, self.reader)));
        }
        blueprints
    }

    /// A file that holds one list, if there is one.
    fn shared_file(&mut self, name: &str, things: &'static [Thing]) -> Option<Node> {
        let path = format!("{}/{name}", self.top);
        if self.folder.has(&path) {
            self.yaml(&path, things, None)
        } else {
            // A folder, or a link that leads out, has been reported as such.
            if !self.folder.is_absent(&path) {
                self.named.push(Naming { path, source: None, things, id: None });
            }
            None
        }
    }

    /// YAML files in a folder, sorted.
    fn files_in(&self, folder: &str) -> Vec<String> {
        let folder = format!("{}/{folder}/", self.top);
        let inside = |path: &&str| path.strip_prefix(&folder).is_some_and(|name| !name.contains('/'));
        self.folder.files().filter(inside).filter(|path| path.ends_with(".yaml")).map(str::to_owned).collect()
    }

    /// The content of a YAML file that names `things`, or of one that names `id` alone.
    fn yaml(&mut self, path: &str, things: &'static [Thing], id: Option<String>) -> Option<Node> {
        self.used.insert(path.to_owned());
        let (source, sound) = match self.folder.read(path, &mut self.reader.problems) {
            Ok(source) => (Some(source), true),
            Err(Unreadable(source)) => (source, false),
        };
        let parsed = source
            .as_ref()
            .filter(|_| sound)
            .map(|source| yaml::parse(source, 0..source.text.len(), &mut self.reader.problems));
        self.named.push(Naming { path: path.to_owned(), source, things, id });
        parsed.flatten()
    }

    /// A file with an error may not have named all it was meant to name: uses of those names are no mistakes of their own.
    fn excuse_names_of_broken_files(&mut self) {
        let broken = self.reader.problems.files_with_errors();
        for naming in self.named.iter().filter(|naming| broken.contains(naming.path.as_str())) {
            for thing in naming.things {
                if let Some(id) = &naming.id {
                    self.reader.names.excuse_one(*thing, id);
                }
                if naming.source.is_some() || naming.id.is_none() {
                    self.reader.names.excuse(*thing, naming.source.as_deref());
                }
            }
        }
    }

    /// Reports files that look as if they belonged to the course and do not.
    fn report_strays(&mut self, summary: &Summary) {
        let strays: Vec<String> = self
            .folder
            .files()
            .filter(|path| is_course_file(path) && !self.used.contains(*path))
            .map(str::to_owned)
            .collect();
        for path in strays {
            if !self.summary_is_sound && path.ends_with(".md") {
                continue;
            }
            let page = path.strip_suffix(".yaml").map(|stem| format!("{stem}.md"));
            let problems = &mut self.reader.problems;
            if path.ends_with(".yml") {
                problems.file_error(&path, "course files end in `.yaml`").help("rename it");
            } else if path.ends_with(".md") {
                problems
                    .file_warning(&path, "this page is not in the summary, so nobody sees it")
                    .help("add it to SUMMARY.md");
            } else if summary.prefix.iter().any(|entry| Some(&entry.path) == page.as_ref()) {
                problems
                    .file_error(&path, "a page before the modules has no YAML file")
                    .help("make it a lesson of a module, or remove the file");
            } else if page.is_some_and(|page| self.folder.has(&page)) {
                // The page has been warned of; or the summary means it and is wrong.
                if !self.summary_is_sound {
                    let source = self.folder.read(&path, &mut self.reader.problems).ok();
                    let things = &[Thing::Lesson, Thing::Drill];
                    self.named.push(Naming { path: self.summary_path(), source, things, id: None });
                }
            } else {
                let expected = SHARED_FILES.iter().map(|name| format!("{}/{name}", self.top));
                let beside = summary
                    .modules
                    .iter()
                    .flat_map(|(module, lessons)| std::iter::once(module).chain(lessons));
                let expected: Vec<String> =
                    expected.chain(beside.map(|entry| yaml_beside(&entry.path))).collect();
                let missing = expected.iter().map(String::as_str).filter(|path| !self.folder.has(path));
                let help = match nearest_path(&path, missing) {
                    Some(near) => format!("did you mean {}?", quoted(near)),
                    None => "a lesson's YAML file stands beside its page and has the same name".to_owned(),
                };
                problems.file_error(&path, "nothing in the course reads this file").help(help);
            }
        }
    }
}

/// The path of the YAML file beside a page.
fn yaml_beside(page: &str) -> String {
    format!("{}.yaml", page.strip_suffix(".md").unwrap_or(page))
}

/// A file's name without its ending.
fn stem_of(path: &str) -> &str {
    let name = path.rsplit_once('/').map_or(path, |(_, name)| name);
    name.rsplit_once('.').map_or(name, |(stem, _)| stem)
}
