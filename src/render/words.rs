//! What the site's scripts say: a language's messages as a script, before the script that says them.
//!
//! Entry point: [`speaking`]. Beside it stands, for every script, with what the ids of its messages begin.

use crate::language::Language;

/// Reads messages in a browser.
const FLUENT: &str = include_str!("../../site/vendor/fluent.js");
/// `message(id, values)` for the scripts.
const WORDS: &str = include_str!("../../site/words.js");

/// What the bench says.
pub(super) const OF_BENCH: [&str; 3] = ["bench-", "screen-", "reading-"];
/// What practice says.
pub(super) const OF_PRACTICE: [&str; 2] = ["practice-", "screen-"];
/// What progress says.
pub(super) const OF_PROGRESS: [&str; 3] = ["practice-", "progress-", "screen-"];
/// What the exercises of study pages say.
pub(super) const OF_STUDY: [&str; 1] = ["drill-"];
/// What papers on a screen say.
pub(super) const OF_PAPERS: [&str; 2] = ["drill-", "paper-"];
/// What an assignment's page says.
pub(super) const OF_ASSIGNMENTS: [&str; 1] = ["assignment-"];
/// What the search says.
pub(super) const OF_SEARCH: [&str; 1] = ["search-"];

/// A script with what it says: it may call `message(id, values)` for every id that begins with one of these.
pub(super) fn speaking(language: &Language, beginnings: &[&str], script: &str) -> Vec<u8> {
    // Nothing in it ends a script element: papers hold their script themselves.
    let string = |text: &str| serde_json::Value::from(text).to_string().replace('<', "\\u003c");
    let (tag, messages) = (string(language.spoken_tag()), string(&language.part(beginnings)));
    let call = format!("const message = healedhueWords({tag}, {messages});");
    format!("\"use strict\";\n(() => {{\n{FLUENT}\n{WORDS}\n{call}\n{script}\n}})();\n").into_bytes()
}
