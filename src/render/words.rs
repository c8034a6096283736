//! What the site's scripts say: a language's messages as a script, before the script that says them.
//!
//! Entry point: [`speaking`].

use crate::language::Language;

/// Reads messages in a browser.
const FLUENT: &str = include_str!("../../site/vendor/fluent.js");
/// `message(id, values)` for the scripts.
const WORDS: &str = include_str!("../../site/words.js");

/// A script with what it says: it may call `message(id, values)` for every id that begins with one of these.
pub(super) fn speaking(language: &Language, beginnings: &[&str], script: &str) -> Vec<u8> {
    let string = |text: &str| serde_json::Value::from(text).to_string();
    let (tag, messages) = (string(language.tag()), string(&language.part(beginnings)));
    let call = format!("const message = healedhueWords({tag}, {messages});");
    format!("(() => {{\n{FLUENT}\n{WORDS}\n{call}\n{script}\n}})();\n").into_bytes()
}
