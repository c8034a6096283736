//! A course, read from its folder: what an academy teaches, its clients, bottles, drills and words.
//!
//! Entry point: [`load`]. Steps: read the manifest and the summary, read every YAML file strictly, resolve every name, and
//! report all problems at once as [`Diagnostic`]s.

#[cfg(feature = "program")]
pub mod assignment;
mod blueprint;
pub mod bounds;
pub mod client;
#[cfg(feature = "program")]
pub mod coverage;
#[cfg(feature = "program")]
pub mod diagnostic;
pub mod drill;
#[cfg(feature = "program")]
mod files;
mod foreseen;
#[cfg(feature = "program")]
mod heading;
pub mod lesson;
#[cfg(feature = "program")]
mod load;
#[cfg(feature = "program")]
mod read;
#[cfg(feature = "program")]
mod shared;
#[cfg(feature = "program")]
mod source;
mod sources;
#[cfg(feature = "program")]
mod stands;
mod technique;
#[cfg(feature = "program")]
mod terms;
pub mod words;

#[cfg(feature = "program")]
pub use assignment::{Assignment, Date, Person, read_assignment};
#[cfg(feature = "program")]
pub(crate) use blueprint::told_by_case;
pub use blueprint::{Band, Blueprint, ClientCase, Judge, Section, Standard};
pub use client::{Client, Goal, HealthNote, OldWork};
#[cfg(feature = "program")]
pub use diagnostic::{Diagnostic, Severity, report};
pub use drill::{Drill, Family, Judged, Limits, Rule, SkinAsks};
pub use foreseen::{Foreseen, foresee_on};
#[cfg(feature = "program")]
pub use heading::{HeadingIds, plain_text};
pub use lesson::{Asset, Block, Foresee, Lesson, Module, Page, Show};
#[cfg(feature = "program")]
pub use load::{Loaded, load};
#[cfg(feature = "program")]
pub use read::markdown::options as markdown_options;
#[cfg(feature = "program")]
pub(crate) use read::slug;
#[cfg(feature = "program")]
pub(crate) use read::suggest::{nearest, quoted};
pub use sources::{SourceBasis, SourceEntry, SourceKind};
#[cfg(feature = "program")]
pub use stands::Stands;
pub use technique::Technique;
#[cfg(feature = "program")]
pub use terms::{TermFinder, is_of_word};
pub use words::{
    Asked, Caution, CautionAction, Misconception, Question, QuestionOption, QuestionStep, Skill, Term,
};

use crate::language::Language;
use crate::pigment::Shelf;
use serde::{Deserialize, Serialize};

/// A whole course with every name resolved: whatever an id points to exists.
///
/// In JSON it holds what exercises are made of, marked by and named after: practice in a browser takes it along. Texts of pages, terms,
/// blueprints and files are left out there.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct Course {
    /// Title of the course, from `book.toml`.
    pub title: String,
    /// One paragraph about the course, from `book.toml`.
    #[serde(skip)]
    pub description: String,
    /// Authors, from `book.toml`.
    #[serde(skip)]
    pub authors: Vec<String>,
    /// The program's words in the course's language.
    pub language: Language,
    /// Seed of all randomness in the course.
    pub seed: u64,
    /// Whether gaps in what the course covers are errors, not warnings.
    #[serde(skip)]
    pub strict: bool,
    /// SHA-256 of every course file's path and content, in hexadecimal: the course's version.
    pub version: String,
    /// Pages before the first module.
    #[serde(skip)]
    pub prefix: Vec<Page>,
    /// Modules in teaching order.
    pub modules: Vec<Module>,
    /// Colourants and bottles.
    pub shelf: Shelf,
    /// Clients, by id.
    pub clients: Vec<Client>,
    /// Goals, by id.
    pub goals: Vec<Goal>,
    /// Skills in the order of the file.
    pub skills: Vec<Skill>,
    /// Safety cautions.
    pub cautions: Vec<Caution>,
    /// Misconceptions in the order of the file.
    pub misconceptions: Vec<Misconception>,
    /// Glossary terms in alphabetical order.
    #[serde(skip)]
    pub terms: Vec<Term>,
    /// The question bank.
    pub questions: Vec<Question>,
    /// Recipes of assessments, by id.
    #[serde(skip)]
    pub blueprints: Vec<Blueprint>,
    /// What the course and the engine lean on, in the order of the file.
    #[serde(skip)]
    pub sources: Vec<SourceEntry>,
    /// Files that pages show or offer, by path.
    #[serde(skip)]
    pub assets: Vec<Asset>,
}

impl Course {
    /// What the records of progress in this course are called: its title in small letters with a digest of it, so that they outlive a
    /// course that is updated or moved.
    #[cfg(feature = "program")]
    pub fn record_name(&self) -> String {
        use sha2::{Digest, Sha256};
        let digest = Sha256::digest(self.title.as_bytes());
        let mark: String = digest.iter().take(4).map(|byte| format!("{byte:02x}")).collect();
        let title: String =
            slug(&self.title).unwrap_or_else(|| "course".to_owned()).chars().take(60).collect();
        format!("{title}-{mark}")
    }

    /// Every lesson, in teaching order, with its module.
    pub fn lessons(&self) -> impl Iterator<Item = (&Module, &Lesson)> {
        self.modules.iter().flat_map(|module| module.lessons.iter().map(move |lesson| (module, lesson)))
    }

    /// Every drill, in teaching order, with its lesson.
    pub fn drills(&self) -> impl Iterator<Item = (&Lesson, &Drill)> {
        self.lessons().flat_map(|(_, lesson)| lesson.drills.iter().map(move |drill| (lesson, drill)))
    }

    /// The client with this id.
    pub fn client(&self, id: &str) -> Option<&Client> {
        self.clients.iter().find(|client| client.id == id)
    }

    /// The goal with this id.
    pub fn goal(&self, id: &str) -> Option<&Goal> {
        self.goals.iter().find(|goal| goal.id == id)
    }

    /// The caution with this id.
    pub fn caution(&self, id: &str) -> Option<&Caution> {
        self.cautions.iter().find(|caution| caution.id == id)
    }

    /// The misconception with this id.
    pub fn misconception(&self, id: &str) -> Option<&Misconception> {
        self.misconceptions.iter().find(|misconception| misconception.id == id)
    }

    /// The lesson with this id and its module.
    pub fn lesson(&self, id: &str) -> Option<(&Module, &Lesson)> {
        self.lessons().find(|(_, lesson)| lesson.id == id)
    }

    /// The drill with this id and its lesson.
    pub fn drill(&self, id: &str) -> Option<(&Lesson, &Drill)> {
        self.drills().find(|(_, drill)| drill.id == id)
    }

    /// The blueprint with this id.
    pub fn blueprint(&self, id: &str) -> Option<&Blueprint> {
        self.blueprints.iter().find(|blueprint| blueprint.id == id)
    }

    /// The bank question with this id.
    pub fn question(&self, id: &str) -> Option<&Question> {
        self.questions.iter().find(|question| question.id == id)
    }
}
