//! A value in a YAML or TOML file, with the place where it was written and the way it was written.

use crate::course::source::{At, Place};

/// A value in a file.
#[derive(Debug, Clone)]
pub(crate) struct Node {
    /// Where it was written.
    pub place: Place,
    /// What it is.
    pub kind: NodeKind,
}

/// What a value is.
#[derive(Debug, Clone)]
pub(crate) enum NodeKind {
    /// Nothing was written.
    Nothing,
    /// A text, number or truth value.
    Scalar {
        /// What was written, after escapes.
        text: String,
        /// How it was written.
        style: Style,
    },
    /// A list.
    List(Vec<Node>),
    /// Keys with their values, in the order of the file, each key once.
    Map(Vec<(At<String>, Node)>),
}

/// How a scalar was written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Style {
    /// Without quotes: a number, a truth value or a text.
    Plain,
    /// In quotes or as a block: always a text.
    Text,
    /// A TOML number, truth value or date: never a text.
    Bare,
}

impl Node {
    /// What it is, in words.
    pub fn in_words(&self) -> &'static str {
        match self.kind {
            NodeKind::Nothing => "nothing",
            NodeKind::Scalar { .. } => "a single value",
            NodeKind::List(_) => "a list",
            NodeKind::Map(_) => "a set of keys",
        }
    }

    /// Where to point to: the first key of a set of keys, otherwise the value.
    pub fn point(&self) -> &Place {
        match &self.kind {
            NodeKind::Map(entries) => entries.first().map_or(&self.place, |(key, _)| &key.place),
            _ => &self.place,
        }
    }
}
