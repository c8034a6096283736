//! What the lessons of a course draw on, read before them.

use super::{Caution, Client, Goal, Misconception, Question, Skill, Term};
use crate::pigment::Shelf;

/// Skills, goals, cautions, pigments, clients, misconceptions, terms and questions.
#[derive(Debug, Default)]
pub(crate) struct Shared {
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
    /// Questions, by file and in the order of each file.
    pub questions: Vec<Question>,
}
