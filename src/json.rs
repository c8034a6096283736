//! JSON that people write: what is wrong with it and what would be right, in words for people instead of for programmers.
//!
//! Entry point: [`read`].

use crate::quantity::Quantity;
use serde::de::DeserializeOwned;
use serde_path_to_error::Path;

/// Why a text is not what was asked for.
pub(crate) struct Wrong {
    /// Where in the text's structure; nothing for the text as a whole.
    pub path: Option<Path>,
    /// What is wrong, with line and column, and what would be right.
    pub why: String,
}

impl Wrong {
    /// The field with dots and places in lists, `existing[0].mix`; nothing for the text as a whole.
    pub fn field(&self) -> Option<String> {
        let path = self.path.as_ref()?.to_string();
        // Where the text stops making sense inside of something, the path ends in a question mark.
        let field = path.trim_end_matches('?').trim_end_matches('.');
        (!field.is_empty()).then(|| field.to_owned())
    }
}

/// Reads something. `bounds` are those of the numbers in it, for what is said where one is none.
pub(crate) fn read<T: DeserializeOwned>(text: &str, bounds: &[Quantity]) -> Result<T, Wrong> {
    let mut json = serde_json::Deserializer::from_str(text);
    let found = serde_path_to_error::deserialize(&mut json).map_err(|error| {
        let path = error.path().clone();
        let name = path.iter().next_back().map(ToString::to_string);
        let quantity = bounds.iter().find(|quantity| name.as_deref() == Some(quantity.name));
        let said = said(error.inner(), text);
        let why = match quantity {
            Some(quantity) => format!("{said}; it must be {}", quantity.range()),
            None => said,
        };
        Wrong { why, path: Some(path) }
    })?;
    json.end().map_err(|error| Wrong { path: None, why: said(&error, text) })?;
    Ok(found)
}

/// Reads something out of JSON that was read already: what is said names no line, since there is none any more.
#[cfg(feature = "program")]
pub(crate) fn of_value<T: DeserializeOwned>(value: serde_json::Value) -> Result<T, Wrong> {
    serde_path_to_error::deserialize(value)
        .map_err(|error| Wrong { why: said(error.inner(), ""), path: Some(error.path().clone()) })
}

/// The last line, from 1, of a text that ends before it is whole.
#[cfg(feature = "program")]
pub(crate) fn ends_early(text: &str) -> Option<usize> {
    let error = serde_json::from_str::<serde::de::IgnoredAny>(text).err()?;
    error.is_eof().then(|| error.line())
}

/// What the parser says, and how people say it.
const WORDS: [(&str, &str); 17] = [
    ("expected f64", "expected a number"),
    ("expected u8", "expected a whole number, 0 or more"),
    ("expected u32", "expected a whole number, 0 or more"),
    ("expected u64", "expected a whole number, 0 or more"),
    ("expected usize", "expected a whole number, 0 or more"),
    ("expected a boolean", "expected true or false"),
    ("expected a string", "expected a text in quotation marks"),
    ("expected a sequence", "expected a list"),
    ("expected a map", "expected an object"),
    ("expected an array of length", "expected a list of length"),
    ("invalid type: map", "invalid type: object"),
    ("invalid type: sequence", "invalid type: list"),
    ("invalid type: string", "invalid type: text"),
    ("floating point `", "number `"),
    ("integer `", "number `"),
    ("unknown variant", "unknown word"),
    ("EOF while parsing", "the text ends inside"),
];

/// What the parser says about a text, in words.
pub(crate) fn said(error: &serde_json::Error, text: &str) -> String {
    let mut said = error.to_string();
    for (from, to) in WORDS {
        said = said.replace(from, to);
    }
    // "expected struct Request": a name of ours, which says nothing to anybody else.
    if let Some((before, after)) = said.split_once("expected struct ") {
        let rest = after.trim_start_matches(|c: char| c.is_alphanumeric());
        said = format!("{before}expected an object{rest}");
    }
    let word = word_at(text, error.line(), error.column());
    if !word.is_empty() && said.starts_with("expected value") {
        said = said.replacen("expected value", &format!("`{word}` is no number, text, list or object"), 1);
    }
    said
}

/// The word that begins at this line and column, counted from 1, at most twenty characters of it.
fn word_at(text: &str, line: usize, column: usize) -> String {
    let line = text.lines().nth(line.wrapping_sub(1)).unwrap_or_default();
    let rest = line.get(column.wrapping_sub(1)..).unwrap_or_default();
    rest.chars().take_while(|c| c.is_alphanumeric() || "+-._".contains(*c)).take(20).collect()
}
