//! YAML to [`Node`]s, within limits, with what is wrong said in an author's words.
//!
//! The parser is that of the YAML crate; values are built here and not by serde, because serde stops at the first mistake
//! and does not keep the place of every key.

use super::node::{Node, NodeKind, Style};
use super::suggest::quoted;
use crate::course::diagnostic::Problems;
use crate::course::source::{At, Place, Source};
use serde_yaml::granit_parser::{ErrorKind, Event, Options, Parser, ScalarStyle, ScanError, Span};
use std::collections::HashMap;
use std::ops::Range;
use std::sync::Arc;

/// How deep lists and keys may be nested; course files need four levels.
const MOST_DEEP: usize = 32;
/// How many values aliases may add to a file.
const MOST_COPIED: usize = 10_000;

/// The one YAML document in a stretch of a file. What is wrong is reported; nothing is returned then.
pub(crate) fn parse(source: &Arc<Source>, within: Range<usize>, problems: &mut Problems) -> Option<Node> {
    let mut options = Options::default();
    options.emit_comments = false;
    options.flow_nesting_limit = MOST_DEEP;
    options.block_nesting_limit = MOST_DEEP;
    let text = source.text.get(within.clone())?;
    let mut builder = Builder { source, offset: within.start, ..Builder::new(source) };
    for event in Parser::new_from_str_with_options(text, options) {
        let outcome = match event {
            Ok((event, span)) => builder.take(event, &span, problems),
            Err(error) => {
                explain(&error, source, &within, problems);
                Err(Stop)
            }
        };
        if outcome.is_err() {
            return None;
        }
    }
    builder.root.filter(|root| !matches!(root.kind, NodeKind::Nothing)).or_else(|| {
        let place = Place::new(source, within.start..within.start);
        problems.error(&place, "there is nothing in here").help("fill it, or remove it");
        None
    })
}

/// The problem has been reported and the rest cannot be read.
struct Stop;

/// A node under construction.
struct Open {
    anchor: usize,
    place: Place,
    key: Option<At<String>>,
    is_map: bool,
    items: Vec<Node>,
    entries: Vec<(At<String>, Node)>,
    /// Where each key stands in `entries`.
    keys: HashMap<String, usize>,
    measure: Measure,
}

/// How large a value is.
#[derive(Clone, Copy)]
struct Measure {
    nodes: usize,
    depth: usize,
}

/// Builds nodes from events.
struct Builder<'s> {
    source: &'s Arc<Source>,
    offset: usize,
    open: Vec<Open>,
    anchors: HashMap<usize, (Node, Measure)>,
    copied: usize,
    documents: usize,
    root: Option<Node>,
}

impl<'s> Builder<'s> {
    fn new(source: &'s Arc<Source>) -> Self {
        Builder {
            source,
            offset: 0,
            open: Vec::new(),
            anchors: HashMap::new(),
            copied: 0,
            documents: 0,
            root: None,
        }
    }

    fn place(&self, span: &Span) -> Place {
        let byte =
            |marker: serde_yaml::granit_parser::Marker| self.offset + marker.byte_offset().unwrap_or(0);
        Place::new(self.source, byte(span.start)..byte(span.end))
    }

    fn take(&mut self, event: Event<'_>, span: &Span, problems: &mut Problems) -> Result<(), Stop> {
        let place = self.place(span);
        match event {
            Event::DocumentStart(..) => {
                self.documents += 1;
                if self.documents > 1 {
                    problems
                        .error(&place, "a second document begins here")
                        .help("a course file holds one document: remove the line `---`");
                    return Err(Stop);
                }
            }
            Event::Scalar(_, _, _, Some(tag))
            | Event::SequenceStart(_, _, Some(tag))
            | Event::MappingStart(_, _, Some(tag)) => {
                let place = span.tag_start.map_or(place.clone(), |start| {
                    let start = self.offset + start.byte_offset().unwrap_or(0);
                    Place::new(self.source, start..start + tag.original().len())
                });
                problems
                    .error(&place, format!("the tag {} means nothing here", quoted(&tag.original())))
                    .help("remove it; put a text that begins with `!` in quotes");
                return Err(Stop);
            }
            Event::Scalar(text, style, anchor, None) => {
                // An empty value comes as `~` that is written nowhere.
                let nothing = style == ScalarStyle::Plain
                    && (place.span.is_empty() || matches!(&*text, "~" | "null" | "Null" | "NULL"));
                let kind = match style {
                    _ if nothing => NodeKind::Nothing,
                    ScalarStyle::Plain => NodeKind::Scalar { text: text.into_owned(), style: Style::Plain },
                    _ => NodeKind::Scalar { text: text.into_owned(), style: Style::Text },
                };
                let node = Node { place, kind };
                let measure = Measure { nodes: 1, depth: 0 };
                if anchor != 0 {
                    self.anchors.insert(anchor, (node.clone(), measure));
                }
                return self.put(node, measure, problems);
            }
            Event::SequenceStart(_, anchor, None) => self.begin(anchor, place, false),
            Event::MappingStart(_, anchor, None) => self.begin(anchor, place, true),
            Event::SequenceEnd | Event::MappingEnd => return self.end(&place, problems),
            Event::Alias(anchor) => return self.copy(anchor, &place, problems),
            _ => {}
        }
        Ok(())
    }

    fn begin(&mut self, anchor: usize, place: Place, is_map: bool) {
        self.open.push(Open {
            anchor,
            place,
            key: None,
            is_map,
            items: Vec::new(),
            entries: Vec::new(),
            keys: HashMap::new(),
            measure: Measure { nodes: 1, depth: 0 },
        });
    }

    fn end(&mut self, end: &Place, problems: &mut Problems) -> Result<(), Stop> {
        let Some(open) = self.open.pop() else { return Ok(()) };
        let place = Place::new(self.source, open.place.span.start..end.span.end);
        let kind = if open.is_map { NodeKind::Map(open.entries) } else { NodeKind::List(open.items) };
        let node = Node { place, kind };
        let measure = Measure { nodes: open.measure.nodes, depth: open.measure.depth + 1 };
        if measure.depth > MOST_DEEP {
            problems.error(&node.place, format!("nested more than {MOST_DEEP} levels deep"));
            return Err(Stop);
        }
        if open.anchor != 0 {
            self.anchors.insert(open.anchor, (node.clone(), measure));
        }
        self.put(node, measure, problems)
    }

    /// Puts a copy of an anchored value where its alias stands.
    fn copy(&mut self, anchor: usize, place: &Place, problems: &mut Problems) -> Result<(), Stop> {
        let Some((_, measure)) = self.anchors.get(&anchor) else {
            problems.error(place, "an alias inside the very value it stands for").help("write the value out");
            return Err(Stop);
        };
        let measure = *measure;
        self.copied += measure.nodes;
        if self.copied > MOST_COPIED {
            problems
                .error(place, format!("aliases add more than {MOST_COPIED} values to this file"))
                .help("write the values out, or fewer of them");
            return Err(Stop);
        }
        let Some(node) = self.anchors.get(&anchor).map(|(node, _)| node.clone()) else { return Ok(()) };
        self.put(node, measure, problems)
    }

    /// Puts a finished value into what holds it.
    fn put(&mut self, node: Node, measure: Measure, problems: &mut Problems) -> Result<(), Stop> {
        let Some(open) = self.open.last_mut() else {
            self.root = Some(node);
            return Ok(());
        };
        open.measure.nodes += measure.nodes;
        open.measure.depth = open.measure.depth.max(measure.depth);
        if !open.is_map {
            open.items.push(node);
            return Ok(());
        }
        match (open.key.take(), node.kind) {
            (Some(key), kind) => {
                let node = Node { place: node.place, kind };
                match open.keys.get(&key.value) {
                    Some(first) => {
                        let (line, _) = open.entries[*first].0.place.line_and_column();
                        problems
                            .error(&key.place, format!("the key {} is here twice", quoted(&key.value)))
                            .help(format!("the first one is in line {line}; keep one of them"));
                    }
                    None => {
                        open.keys.insert(key.value.clone(), open.entries.len());
                        open.entries.push((key, node));
                    }
                }
                Ok(())
            }
            (None, NodeKind::Scalar { text, .. }) => {
                open.key = Some(At::new(text, node.place));
                Ok(())
            }
            (None, _) => {
                problems.error(&node.place, "a key must be a single word");
                Err(Stop)
            }
        }
    }
}

/// Reports what the parser could not read.
fn explain(error: &ScanError, source: &Arc<Source>, within: &Range<usize>, problems: &mut Problems) {
    let at = within.start + error.marker().byte_offset().unwrap_or(0);
    let place = Place::new(source, at..at + 1);
    // A tab in the indentation is invisible, and the parser stumbles over it later and in many ways.
    if let Some(tab) = tab_near(source, within, at) {
        problems
            .error(&Place::new(source, tab..tab + 1), "a tab in the indentation")
            .help("YAML is indented with spaces only");
        return;
    }
    let (message, help) = words(error.kind());
    let problem = problems.error(&place, message);
    if !help.is_empty() {
        problem.help(help);
    }
}

/// The tab in the indentation of the line of `at`, or of one of its neighbours.
fn tab_near(source: &Source, within: &Range<usize>, at: usize) -> Option<usize> {
    let text = source.text.get(within.clone())?;
    let line_of_error = text.get(..at.saturating_sub(within.start))?.matches('\n').count();
    let mut start = within.start;
    for (number, line) in text.split_inclusive('\n').enumerate() {
        let indentation = line.find(|c| c != ' ' && c != '\t').unwrap_or(0);
        if number.abs_diff(line_of_error) <= 1
            && let Some(tab) = line[..indentation].find('\t')
        {
            return Some(start + tab);
        }
        start += line.len();
    }
    None
}

/// What a mistake means for an author, and what to do about it.
fn words(kind: &ErrorKind) -> (String, &'static str) {
    use ErrorKind as E;
    let (message, help) = match kind {
        E::UnclosedQuotedScalar => ("a quotation mark that is never closed", "close it, or remove it"),
        E::UnclosedFlowCollection { open } => {
            return (format!("the bracket `{open}` is never closed"), "close it");
        }
        E::MismatchedFlowCollectionEnd { open, close } => {
            return (format!("the bracket `{open}` is closed by `{close}`"), "");
        }
        E::MisplacedFlowCollectionEnd => ("a closing bracket that was never opened", ""),
        E::UnexpectedEofFlowSequence | E::UnexpectedEofFlowMapping | E::UnexpectedEofImplicitFlowMapping => {
            ("the file ends inside a bracket", "close the bracket")
        }
        E::ExpectedFlowSequenceSeparator => ("a comma or `]` is missing here", ""),
        E::ExpectedFlowMappingSeparator => ("a comma or `}` is missing here", ""),
        E::InvalidColonPlacement => ("a colon where none can stand", "is a bracket above left open?"),
        E::MappingValueNotAllowed => (
            "a second colon in this line, or a key that is indented too far",
            "put a text that holds a colon in quotes; keys that belong together begin in the same column",
        ),
        E::SimpleKeyExpected | E::InvalidSimpleKey => (
            "a key is followed by a colon and a space",
            "a text of several lines is indented further than its key",
        ),
        E::ExpectedBlockMappingKey | E::ExpectedBlockSequenceEntry | E::InvalidIndentation => (
            "this line is indented differently from those it belongs to",
            "keys or dashes that belong together begin in the same column",
        ),
        E::InvalidTrailingSingleQuotedScalar => (
            "something follows the closing quotation mark",
            "an apostrophe inside single quotes is doubled: ''; or use double quotes",
        ),
        E::InvalidTrailingDoubleQuotedScalar => {
            ("something follows the closing quotation mark", "a quotation mark inside quotes is written \\\"")
        }
        E::UnexpectedCharacter { character } => {
            return (
                format!("{} cannot begin a text", quoted(&character.to_string())),
                "put the text in quotes",
            );
        }
        E::UnknownQuotedScalarEscape => {
            ("an unknown escape after the backslash", "write a backslash twice, or use single quotes")
        }
        E::UnknownAnchor => {
            ("an alias of something that has no anchor above", "put a text that begins with `*` in quotes")
        }
        E::MissingAnchorOrAliasName => {
            ("`*` or `&` without a name", "put a text that begins with it in quotes")
        }
        E::TabNotAllowed
        | E::TabInBlockIndentation
        | E::TabInIndentation
        | E::TabInPlainScalar
        | E::TabAtBlockScalarStart => {
            ("a tab where only spaces can stand", "YAML is indented with spaces only")
        }
        E::RecursionLimitExceeded => return (format!("nested more than {MOST_DEEP} levels deep"), ""),
        E::CommentNotSeparated => {
            ("a `#` straight after a word", "put a space before a comment, or quotes around the text")
        }
        other => return (format!("this is not YAML: {other}"), ""),
    };
    (message.to_owned(), help)
}
