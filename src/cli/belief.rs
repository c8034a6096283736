//! How often a misconception was chosen, in the words of a course.

use crate::assess::cohort::MisconceptionCount;
use crate::language::Language;
use crate::say;

/// "Chosen 2 of the 3 times it was offered".
pub(super) fn how_often(language: &Language, count: &MisconceptionCount) -> String {
    match (count.chosen, count.offered) {
        (1, 1) => say!(language, "terminal-chosen-once"),
        (chosen, offered) if chosen == offered => say!(language, "terminal-chosen-always", offered = offered),
        (chosen, offered) => say!(language, "terminal-chosen", chosen = chosen, offered = offered),
    }
}
