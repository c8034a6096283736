//! The engine and the course's bottles as scripts: a page from a disk may not fetch a file, but may load a script.
//!
//! Entry points: [`engine_script`] and [`practice_script`], the kept WebAssembly files; [`data_script`] and
//! [`questions_script`], anything that pages take along for it.

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use serde::Serialize;
use std::sync::LazyLock;

/// The bench's engine, built by `site/engine/rebuild`.
const ENGINE: &[u8] = include_bytes!("../../site/engine/engine.wasm.gz");
/// What practice runs on, built by the same.
const PRACTICE: &[u8] = include_bytes!("../../site/engine/practice.wasm.gz");

/// A script that leaves the engine, compressed and in base64, in `healedhueEngine`.
pub(super) fn engine_script() -> &'static [u8] {
    static SCRIPT: LazyLock<Vec<u8>> = LazyLock::new(|| in_script(ENGINE));
    &SCRIPT
}

/// The same for what makes, proves and marks exercises.
pub(super) fn practice_script() -> &'static [u8] {
    static SCRIPT: LazyLock<Vec<u8>> = LazyLock::new(|| in_script(PRACTICE));
    &SCRIPT
}

fn in_script(packed: &[u8]) -> Vec<u8> {
    format!("\"use strict\";\nglobalThis.healedhueEngine = \"{}\";\n", STANDARD.encode(packed)).into_bytes()
}

/// A script that leaves `data` in `healedhueCourse`. It is read as JSON from one string literal, so that no key and no value of it,
/// whatever an author wrote, is ever read as anything but data.
///
/// # Errors
/// When something in it has no JSON, such as a map whose keys are no text.
pub(super) fn data_script(data: &impl Serialize) -> Result<Vec<u8>, serde_json::Error> {
    Ok(format!("\"use strict\";\nglobalThis.healedhueCourse = {};\n", data_literal(data)?).into_bytes())
}

/// A script that adds a list to what lies in `healedhueQuestions`, read in the same way.
///
/// # Errors
/// As [`data_script`].
pub(super) fn questions_script(list: &impl Serialize) -> Result<Vec<u8>, serde_json::Error> {
    let list = data_literal(list)?;
    Ok(format!("\"use strict\";\n(globalThis.healedhueQuestions ??= []).push(...{list});\n").into_bytes())
}

fn data_literal(data: &impl Serialize) -> Result<String, serde_json::Error> {
    let json = serde_json::to_string(data)?;
    let literal = serde_json::to_string(&json)?;
    // No end of a script element, no comment of HTML, no line end that JSON has and older scripts have not.
    let literal =
        literal.replace('<', "\\u003c").replace('\u{2028}', "\\u2028").replace('\u{2029}', "\\u2029");
    Ok(format!("JSON.parse({literal})"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn data_stays_data() {
        let hostile = "</script><!--<script>\u{2028}\"\\'`${x}";
        let script = String::from_utf8(data_script(&[hostile]).unwrap()).unwrap();
        assert!(!script.contains(['<', '\u{2028}']), "{script}");
        let literal = script.split_once("JSON.parse(").unwrap().1.strip_suffix(");\n").unwrap();
        let json: String = serde_json::from_str(literal).unwrap();
        assert_eq!(serde_json::from_str::<Vec<String>>(&json).unwrap(), [hostile]);
    }
}
