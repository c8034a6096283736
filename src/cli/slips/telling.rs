//! What every command says of slips: those refused, what was passed over, and marks in JSON.

use super::super::lines::{named, note};
use super::super::terminal::{Painter, wrapped};
use super::files::PassedOver;
use crate::assess::{Recorded, visible};
use crate::language::Language;
use crate::say;
use serde::Serialize;
use std::path::Path;

/// Passed over files that are named each.
const MOST_NAMED: usize = 20;

/// A file with why it is refused or passed over, in JSON.
#[derive(Serialize)]
pub(in crate::cli) struct Refused {
    file: String,
    why: String,
}

/// Marks in JSON.
#[derive(Serialize)]
pub(in crate::cli) struct Marked<M> {
    file: String,
    /// The attempt it is in the mark book; none where there is no book.
    attempt: Option<u32>,
    #[serde(flatten)]
    pub marks: M,
}

impl<M> Marked<M> {
    pub fn new(path: &Path, recorded: Option<Recorded>, marks: M) -> Self {
        let attempt = recorded.map(|(Recorded::New(attempt) | Recorded::Already(attempt))| attempt);
        Marked { file: path.display().to_string(), attempt, marks }
    }
}

/// Says that a slip is refused, unless `json` tells of it.
pub(in crate::cli) fn tell_refused(path: &Path, why: &str, json: bool) -> Refused {
    // Names and answers on a slip are somebody else's words.
    let why = visible(why).into_owned();
    if !json {
        note(format_args!("refused: {}: {why}", named(path)));
    }
    Refused { file: path.display().to_string(), why }
}

/// Names those of whom no slip was marked.
pub(in crate::cli) fn no_slip_of<'n>(
    language: &Language,
    painter: Painter,
    names: impl Iterator<Item = &'n str>,
) -> String {
    let names = names.collect::<Vec<_>>().join("; ");
    painter.strong(&say!(language, "mark-told-missing")) + "\n" + &wrapped(&visible(&names), 2) + "\n"
}

/// Names what was passed over, a line each; of very many the first, and how many more there are.
pub(super) fn tell_passed_over(files: &[PassedOver]) {
    for one in files.iter().take(MOST_NAMED) {
        note(format_args!("passed over: {}: {}", named(&one.path), one.why));
    }
    if files.len() > MOST_NAMED {
        note(format_args!("passed over: {} more (--json names them all)", files.len() - MOST_NAMED));
    }
}

/// The same for JSON.
pub(in crate::cli) fn told_passed_over(files: &[PassedOver]) -> Vec<Refused> {
    let told = |one: &PassedOver| Refused { file: one.path.display().to_string(), why: one.why.clone() };
    files.iter().map(told).collect()
}
