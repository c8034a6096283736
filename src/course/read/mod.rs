//! Reading course files: every key strictly, every mistake reported, every name noted.
//!
//! Entry point: [`Reader`], which holds what has been found so far. The files of this folder each read one kind of course
//! file; [`fields`] is what they all ask for keys.

pub(crate) mod asset;
pub(crate) mod assignment;
pub(crate) mod bank;
pub(crate) mod client;
pub(crate) mod computed;
mod drawing;
pub(crate) mod drill;
pub(crate) mod fields;
pub(crate) mod foresee;
pub(crate) mod lesson;
pub(crate) mod link;
pub(crate) mod manifest;
pub(crate) mod markdown;
pub(crate) mod mix;
pub(crate) mod names;
pub(crate) mod node;
pub(crate) mod number;
pub(crate) mod paper;
pub(crate) mod pigment;
pub(crate) mod sources;
pub(crate) mod suggest;
pub(crate) mod summary;
pub(crate) mod words;
pub(crate) mod yaml;

use super::diagnostic::Problems;
use super::source::{At, Place};
use crate::pigment::{CI_NAME_FORM, is_ci_name, meant_ci_name};
use names::{Names, Reference, Thing};
use node::{Node, NodeKind, Style};
use suggest::quoted;

/// What has been found so far.
#[derive(Debug, Default)]
pub(crate) struct Reader {
    /// What is wrong.
    pub problems: Problems,
    /// What is named.
    pub names: Names,
    /// What is referred to.
    pub references: Vec<Reference>,
}

impl Reader {
    /// The text of `key`; an empty one is reported.
    pub fn text(&mut self, key: &str, node: &Node) -> At<String> {
        let text = match &node.kind {
            NodeKind::Scalar { text, style } if *style != Style::Bare => text.trim(),
            NodeKind::Scalar { .. } => {
                self.problems.error(&node.place, format!("`{key}` is a text: put it in quotes"));
                ""
            }
            NodeKind::Nothing => {
                self.problems.error(&node.place, format!("an empty entry in `{key}`"));
                ""
            }
            _ => {
                let problem = self
                    .problems
                    .error(&node.place, format!("`{key}` is a text; this is {}", node.in_words()));
                if matches!(node.kind, NodeKind::Map(_)) {
                    problem.help("put a text that holds a colon, or begins with a bracket, in quotes");
                }
                ""
            }
        };
        if let NodeKind::Scalar { style, .. } = &node.kind
            && *style != Style::Bare
            && text.is_empty()
        {
            self.problems.error(&node.place, format!("`{key}` is empty"));
        }
        if text.contains(|c: char| c.is_control() && c != '\n' && c != '\t') {
            self.problems.error(&node.place, format!("`{key}` holds a control character"));
        }
        if !closes_directions(text) {
            self.problems
                .error(
                    &node.place,
                    format!("`{key}` turns the direction of writing and does not turn it back"),
                )
                .help("end it with U+202C or U+2069, or take the unseen character out");
        }
        At::new(text.to_owned(), node.place.clone())
    }

    /// Gives a name, after checking its form.
    pub fn name(&mut self, thing: Thing, id: At<String>) -> At<String> {
        if !id.value.is_empty() && !has_form(thing, &id.value) {
            let problem = self
                .problems
                .error(&id.place, format!("{} is not the id of {}", quoted(&id.value), thing.with_article()));
            match thing {
                Thing::Colourant => problem.help(match meant_ci_name(&id.value) {
                    Some(name) => format!("write {}", quoted(&name)),
                    None => format!("a colourant is named by {CI_NAME_FORM}"),
                }),
                _ => problem.help(match slug(&id.value) {
                    Some(slug) => format!("ids are lower-case words joined by hyphens: {}", quoted(&slug)),
                    None => "ids are lower-case words joined by hyphens, such as `red-skin`".to_owned(),
                }),
            };
        }
        self.names.declare(thing, &id, &mut self.problems);
        id
    }

    /// Notes a reference, to be checked when everything has been read.
    pub fn refer(&mut self, thing: Thing, id: At<String>) {
        self.references.push(Reference { thing, id });
    }

    /// Checks every reference.
    pub fn check_references(&mut self) {
        for reference in std::mem::take(&mut self.references) {
            self.names.check(&reference, &mut self.problems);
        }
    }

    /// Reports something at a place.
    pub fn error(&mut self, place: &Place, message: impl Into<String>) -> &mut super::Diagnostic {
        self.problems.error(place, message)
    }

    /// Warns of something at a place.
    pub fn warning(&mut self, place: &Place, message: impl Into<String>) -> &mut super::Diagnostic {
        self.problems.warning(place, message)
    }
}

/// Whether every embedding, override and isolate of the bidirectional algorithm (Unicode Standard Annex 9) is closed in the line it is
/// opened in, so that what stands after the text on a page or in a terminal keeps its order.
fn closes_directions(text: &str) -> bool {
    text.lines().all(|line| {
        let mut open = Vec::new();
        for c in line.chars() {
            match c {
                '\u{202a}' | '\u{202b}' | '\u{202d}' | '\u{202e}' => open.push('\u{202c}'),
                '\u{2066}'..='\u{2068}' => open.push('\u{2069}'),
                '\u{202c}' | '\u{2069}' if open.pop() != Some(c) => return false,
                _ => {}
            }
        }
        open.is_empty()
    })
}

/// Whether an id has the form that ids of this kind have.
fn has_form(thing: Thing, id: &str) -> bool {
    if thing != Thing::Colourant {
        return id.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-')
            && !id.starts_with('-');
    }
    is_ci_name(id)
}

/// An id made of a text, if anything is left of it.
pub(crate) fn slug(text: &str) -> Option<String> {
    let words: Vec<String> = text
        .to_lowercase()
        .split(|c: char| !c.is_ascii_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_owned)
        .collect();
    (!words.is_empty()).then(|| words.join("-"))
}
