//! `book.toml`: the manifest, in mdBook's published format.
//!
//! Strict within `[book]` and `[output.healedhue]`; what belongs to mdBook or to other programs is left alone.

use super::Reader;
use super::fields::Fields;
use super::node::{Node, NodeKind, Style};
use super::suggest::{nearest, quoted};
use crate::course::source::{At, Place, Source};
use crate::language::{Language, SPOKEN};
use std::sync::Arc;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// Keys of mdBook's `[book]`.
const BOOK_KEYS: [&str; 7] =
    ["title", "description", "authors", "language", "src", "multilingual", "text-direction"];
/// Tables that mdBook has.
const TABLES: [&str; 5] = ["book", "build", "rust", "output", "preprocessor"];

/// What `book.toml` says.
#[derive(Debug, Clone)]
pub(crate) struct Manifest {
    /// Title of the course.
    pub title: String,
    /// One paragraph about it.
    pub description: String,
    /// Its authors.
    pub authors: Vec<String>,
    /// BCP 47 language tag.
    pub language: String,
    /// Folder of lessons, relative to the course folder, with the place where it is named; nothing when what is written is
    /// no such folder.
    pub top: Option<At<String>>,
    /// Seed of all randomness.
    pub seed: u64,
    /// Whether gaps in what the course covers are errors.
    pub strict: bool,
}

/// Reads the manifest. What cannot be read is as if it were not there.
pub(crate) fn read_manifest(source: &Arc<Source>, reader: &mut Reader) -> Manifest {
    let start = Place::start_of(source);
    let mut manifest = Manifest {
        title: String::new(),
        description: String::new(),
        authors: Vec::new(),
        language: "en".to_owned(),
        top: None,
        seed: 0,
        strict: false,
    };
    let (table, errors) = DeTable::parse_recoverable(&source.text);
    for error in &errors {
        let place = Place::new(source, error.span().unwrap_or(0..0));
        reader.error(&place, format!("this is not TOML: {}", error.message().trim().replace('\n', "; ")));
    }
    let span = table.span();
    let root = node_of_table(table.into_inner(), span, source);
    let NodeKind::Map(tables) = &root.kind else { return manifest };
    for (name, _) in tables.iter().filter(|(name, _)| !TABLES.contains(&name.value.as_str())) {
        if let Some(near) = nearest(&name.value, TABLES) {
            reader
                .warning(&name.place, format!("nothing reads the table {}", quoted(&name.value)))
                .help(format!("did you mean `{near}`?"));
        }
    }
    match tables.iter().find(|(name, _)| name.value == "book") {
        Some((_, book)) if errors.is_empty() => read_book(book, &mut manifest, reader),
        None if errors.is_empty() => {
            reader
                .error(&start, "the table `[book]` is missing")
                .help("it holds the course's `title` and more");
        }
        // What seems to be missing may be in the part that cannot be read. The folder of lessons is worth looking for.
        Some((_, book)) => {
            let named =
                matches!(&book.kind, NodeKind::Map(keys) if keys.iter().any(|(key, _)| key.value == "src"));
            if named {
                read_book(book, &mut manifest, &mut Reader::default());
            }
        }
        None => {}
    }
    if let Some((_, Node { kind: NodeKind::Map(outputs), .. })) =
        tables.iter().find(|(name, _)| name.value == "output")
    {
        read_outputs(outputs, &mut manifest, reader);
    }
    manifest
}

fn read_book(book: &Node, manifest: &mut Manifest, reader: &mut Reader) {
    let Some(mut fields) = Fields::of(book, "the table `[book]`", &BOOK_KEYS, reader) else { return };
    manifest.title = fields.text("title").value;
    manifest.description = fields.text_or("description", "").value;
    let authors = fields.list("authors");
    manifest.authors = authors.iter().map(|author| fields.reader.text("authors", author).value).collect();
    let language = fields.text_or("language", "en");
    if !is_language(&language.value) {
        fields
            .reader
            .error(&language.place, format!("{} is no language tag", quoted(&language.value)))
            .help("write a tag such as `en` or `pt-BR`");
    } else if !Language::is_spoken(&language.value) {
        let spoken: Vec<String> = SPOKEN.iter().map(|(tag, _)| quoted(tag)).collect();
        let what =
            format!("the program does not speak {}: its own words are in English", quoted(&language.value));
        let help =
            format!("what the course says is shown as it is written; spoken are {}", spoken.join(", "));
        fields.reader.warning(&language.place, what).help(help);
    }
    manifest.language = language.value;
    fields.flag("multilingual");
    fields.word_or_none("text-direction", &[((), "ltr"), ((), "rtl")]);
    // The folder that mdBook takes when nothing is said.
    let top = fields.text_or("src", "src");
    let inside =
        top.value.split('/').all(|part| !matches!(part, "" | "." | "..")) && !top.value.contains(['\\', ':']);
    if inside {
        manifest.top = Some(top);
    } else if !top.value.is_empty() {
        fields
            .reader
            .error(&top.place, format!("{} is no folder inside the course", quoted(&top.value)))
            .help("write its name, such as `src = \"lessons\"`");
    }
}

fn read_outputs(outputs: &[(At<String>, Node)], manifest: &mut Manifest, reader: &mut Reader) {
    for (name, node) in outputs {
        if name.value == "healedhue" {
            let what = "the table `[output.healedhue]`";
            let Some(mut fields) = Fields::of(node, what, &["optional", "seed", "strict"], reader) else {
                continue;
            };
            fields.flag("optional");
            manifest.strict = fields.flag("strict").unwrap_or_default();
            if let Some(seed) = fields.node("seed") {
                manifest.seed = read_seed(seed, fields.reader);
            }
        } else if nearest(&name.value, ["healedhue"]).is_some() {
            reader
                .warning(&name.place, format!("nothing reads the table `[output.{}]`", name.value))
                .help("did you mean `[output.healedhue]`?");
        }
    }
}

/// A seed: a whole number that is not negative.
fn read_seed(node: &Node, reader: &mut Reader) -> u64 {
    let seed = match &node.kind {
        NodeKind::Scalar { text, style: Style::Bare } => text.parse().ok(),
        _ => None,
    };
    seed.unwrap_or_else(|| {
        reader.error(&node.place, "`seed` is a whole number, 0 or more").help("such as `seed = 2026`");
        0
    })
}

/// Whether a text has the form of a BCP 47 language tag.
fn is_language(tag: &str) -> bool {
    let mut parts = tag.split('-');
    let first = parts.next().unwrap_or_default();
    (2..=8).contains(&first.len())
        && first.chars().all(|c| c.is_ascii_alphabetic())
        && parts.all(|part| (1..=8).contains(&part.len()) && part.chars().all(|c| c.is_ascii_alphanumeric()))
}

fn node_of_table(table: DeTable<'_>, span: std::ops::Range<usize>, source: &Arc<Source>) -> Node {
    let entries = table.into_iter().map(|(key, value)| {
        let place = Place::new(source, key.span());
        (At::new(key.into_inner().into_owned(), place), node_of(value, source))
    });
    let mut entries: Vec<_> = entries.collect();
    // The parser sorts keys by name.
    entries.sort_by_key(|(key, _)| key.place.span.start);
    Node { place: Place::new(source, span), kind: NodeKind::Map(entries) }
}

fn node_of(value: Spanned<DeValue<'_>>, source: &Arc<Source>) -> Node {
    let span = value.span();
    let place = Place::new(source, span.clone());
    let bare = |text: String| NodeKind::Scalar { text, style: Style::Bare };
    let kind = match value.into_inner() {
        DeValue::Table(table) => return node_of_table(table, span, source),
        DeValue::Array(items) => {
            NodeKind::List(items.into_iter().map(|item| node_of(item, source)).collect())
        }
        DeValue::String(text) => NodeKind::Scalar { text: text.into_owned(), style: Style::Text },
        DeValue::Integer(number) => bare(match number.radix() {
            10 => number.as_str().to_owned(),
            radix => {
                u64::from_str_radix(number.as_str(), radix).map_or_else(|_| String::new(), |n| n.to_string())
            }
        }),
        DeValue::Float(number) => bare(number.as_str().to_owned()),
        DeValue::Boolean(truth) => bare(truth.to_string()),
        DeValue::Datetime(date) => bare(date.to_string()),
    };
    Node { place, kind }
}
