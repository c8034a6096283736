//! What is wrong with a course, where, and what to do about it.
//!
//! Entry points: [`Diagnostic::render`] shows one problem with its excerpt and caret, [`report`] shows them all; serialised,
//! a diagnostic is a flat record of file, line, column, severity, message and help.

use super::source::Place;
use annotate_snippets::renderer::DecorStyle;
use annotate_snippets::{AnnotationKind, Group, Level, Renderer, Snippet};
use serde::Serialize;
use std::borrow::Cow;
use std::collections::BTreeSet;
use std::fmt;

/// How grave a problem is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Severity {
    /// The course cannot be used.
    Error,
    /// The course can be used, and is probably not what its author means.
    Warning,
}

/// One problem in a course file.
#[derive(Debug, Clone, Serialize)]
pub struct Diagnostic {
    /// Path relative to the course folder, with `/` on every system.
    pub file: String,
    /// Line, from 1.
    pub line: usize,
    /// Column in characters, from 1.
    pub column: usize,
    /// How grave it is.
    pub severity: Severity,
    /// What is wrong.
    pub message: String,
    /// What to do about it.
    pub help: Option<String>,
    #[serde(skip)]
    place: Option<Place>,
}

impl Diagnostic {
    /// A problem in a file whose text is not at hand: it is shown without an excerpt.
    pub fn new(
        severity: Severity,
        file: impl Into<String>,
        line: usize,
        column: usize,
        message: impl Into<String>,
    ) -> Self {
        let (file, message) = (visible(&file.into()), visible(&message.into()));
        Diagnostic { file, line, column, severity, message, help: None, place: None }
    }

    /// A problem at a place in a file.
    pub(crate) fn at(place: &Place, severity: Severity, message: impl Into<String>) -> Self {
        let (line, column) = place.line_and_column();
        let mut diagnostic = Diagnostic::new(severity, &place.source.path, line, column, message);
        diagnostic.place = Some(place.clone());
        diagnostic
    }

    /// Says what to do about it.
    pub fn help(&mut self, help: impl Into<String>) -> &mut Self {
        self.help = Some(visible(&help.into()));
        self
    }

    /// The problem with an excerpt of the file, a caret under the mistake, and the suggestion; several lines without a
    /// final line break. `coloured` adds ANSI colours.
    pub fn render(&self, coloured: bool) -> String {
        let level = match self.severity {
            Severity::Error => Level::ERROR,
            Severity::Warning => Level::WARNING,
        };
        let title = level.primary_title(&self.message);
        let mut group = match &self.place {
            Some(place) => {
                // One line is enough to find it; a long text would fill the screen.
                let source = &place.source;
                let line = source.start_of_line(place.span.start)..source.end_of_line(place.span.start);
                let span = place.span.start - line.start
                    ..place.span.end.min(line.end).max(place.span.start) - line.start;
                Group::with_title(title).element(
                    Snippet::source(without_c1(&source.text[line]))
                        .line_start(self.line)
                        .path(source.path.as_str())
                        .annotation(AnnotationKind::Primary.span(span)),
                )
            }
            None => Group::with_title(title).element(
                annotate_snippets::Origin::path(self.file.as_str()).line(self.line).char_column(self.column),
            ),
        };
        if let Some(help) = &self.help {
            group = group.element(Level::HELP.message(help));
        }
        let renderer = if coloured { Renderer::styled() } else { Renderer::plain() };
        renderer.decor_style(DecorStyle::Ascii).render(&[group])
    }
}

impl fmt::Display for Diagnostic {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.render(false))
    }
}

/// A text without characters that would command a terminal or turn its direction.
fn visible(text: &str) -> String {
    let unseen = |c: char| c.is_control() || matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}');
    text.chars().map(|c| if unseen(c) { char::REPLACEMENT_CHARACTER } else { c }).collect()
}

/// A text whose C1 controls are replaced by a character of the same length, so that offsets stay right. Whatever else is
/// unseen, the renderer of excerpts replaces.
fn without_c1(text: &str) -> Cow<'_, str> {
    let is_c1 = |c: char| matches!(c, '\u{80}'..='\u{9f}');
    if text.contains(is_c1) { text.replace(is_c1, "·").into() } else { text.into() }
}

/// Every problem, one after the other, and a line that counts them; empty when there is none.
pub fn report(diagnostics: &[Diagnostic], coloured: bool) -> String {
    if diagnostics.is_empty() {
        return String::new();
    }
    let count = |severity, one: &str| {
        let found = diagnostics.iter().filter(|diagnostic| diagnostic.severity == severity).count();
        format!("{found} {one}{}", if found == 1 { "" } else { "s" })
    };
    let mut text: String =
        diagnostics.iter().map(|diagnostic| diagnostic.render(coloured) + "\n\n").collect();
    text += &format!("{}, {}\n", count(Severity::Error, "error"), count(Severity::Warning, "warning"));
    text
}

/// Problems of one file that are shown.
const MOST_PER_FILE: usize = 100;

/// The problems found so far.
#[derive(Debug, Default)]
pub(crate) struct Problems(Vec<Diagnostic>);

impl Problems {
    /// Adds an error; the answer takes a suggestion.
    pub fn error(&mut self, place: &Place, message: impl Into<String>) -> &mut Diagnostic {
        self.add(Diagnostic::at(place, Severity::Error, message))
    }

    /// Adds a warning; the answer takes a suggestion.
    pub fn warning(&mut self, place: &Place, message: impl Into<String>) -> &mut Diagnostic {
        self.add(Diagnostic::at(place, Severity::Warning, message))
    }

    /// Adds an error about a file or folder as a whole; the answer takes a suggestion.
    pub fn file_error(&mut self, path: &str, message: impl Into<String>) -> &mut Diagnostic {
        self.add(Diagnostic::new(Severity::Error, path, 1, 1, message))
    }

    /// Adds a warning about a file as a whole; the answer takes a suggestion.
    pub fn file_warning(&mut self, path: &str, message: impl Into<String>) -> &mut Diagnostic {
        self.add(Diagnostic::new(Severity::Warning, path, 1, 1, message))
    }

    fn add(&mut self, diagnostic: Diagnostic) -> &mut Diagnostic {
        self.0.push(diagnostic);
        let last = self.0.len() - 1;
        &mut self.0[last]
    }

    /// Files in which an error was found.
    pub fn files_with_errors(&self) -> BTreeSet<&str> {
        self.0.iter().filter(|d| d.severity == Severity::Error).map(|d| d.file.as_str()).collect()
    }

    /// Every problem once, by file, line and column; of a file with very many only the first, so that a screen can hold
    /// them.
    pub fn into_sorted(self) -> Vec<Diagnostic> {
        let key = |d: &Diagnostic| (d.file.clone(), d.line, d.column, d.severity, d.message.clone());
        let mut all = self.0;
        all.sort_by_cached_key(key);
        all.dedup_by(|one, other| key(one) == key(other));
        let mut shown = Vec::new();
        for file in all.chunk_by(|one, other| one.file == other.file) {
            shown.extend(file.iter().take(MOST_PER_FILE).cloned());
            let Some(more) = file.get(MOST_PER_FILE..).filter(|more| !more.is_empty()) else { continue };
            let severity = more.iter().map(|d| d.severity).min().unwrap_or(Severity::Warning);
            let (first, message) = (&more[0], format!("and {} more problems in this file", more.len()));
            shown.push(Diagnostic::new(severity, &first.file, first.line, first.column, message));
        }
        shown
    }
}
