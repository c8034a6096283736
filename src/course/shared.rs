//! What the lessons of a course draw on, read before them.

use super::read::computed::Computed;
use super::{Caution, Client, Goal, Misconception, Question, Skill, SourceEntry, Term};
use crate::language::Language;
use crate::pigment::Shelf;
use std::sync::OnceLock;

/// Skills, goals, cautions, pigments, clients, misconceptions, terms and questions.
#[derive(Debug, Default)]
pub(crate) struct Shared {
    /// The program's words in the course's language.
    pub language: Language,
    /// Skills, in the order of the file.
    pub skills: Vec<Skill>,
    /// Goals, by id.
    pub goals: Vec<Goal>,
    /// Cautions, in the order of the file.
    pub cautions: Vec<Caution>,
    /// Colourants and bottles, in the order of the files.
    pub shelf: Shelf,
    /// Whether bottles may be missing from the shelf because their file has errors.
    pub shelf_is_broken: bool,
    /// Clients, by id.
    pub clients: Vec<Client>,
    /// Misconceptions, in the order of the file.
    pub misconceptions: Vec<Misconception>,
    /// Terms, in alphabetical order.
    pub terms: Vec<Term>,
    /// What the course and the engine lean on, in the order of the file.
    pub sources: Vec<SourceEntry>,
    /// Questions, by file and in the order of each file.
    pub questions: Vec<Question>,
    /// What calls in the text may ask, made when the first page is read.
    computed: OnceLock<Computed>,
}

impl Shared {
    /// Nothing yet.
    pub fn in_language(language: Language) -> Self {
        Shared { language, ..Shared::default() }
    }

    /// What calls in the text may ask; everything else has been read by then.
    pub fn computed(&self) -> &Computed {
        self.computed.get_or_init(|| Computed::new(self))
    }
}
