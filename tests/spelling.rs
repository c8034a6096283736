//! Every word of the course and of the documents is one that a British dictionary, the course's own names or the project's word list
//! knows.
//!
//! The dictionary is the British one with "-ise" made from SCOWL, as the package dictionary-en-gb 3.0.0 brings it, with its licence
//! beside it (`data/spelling`). Names of clients and bottles, terms and colourants come from the course. Whatever else is right
//! stands in `lessons/words.txt`, a word a line, sorted.

use crate::demo::course;
use spellbook::Dictionary;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;

static DICTIONARY: LazyLock<Dictionary> = LazyLock::new(|| {
    let text = |name: &str| {
        fs::read_to_string(root().join("tests/data/spelling").join(name)).expect("the dictionary")
    };
    Dictionary::new(&text("en_GB.aff"), &text("en_GB.dic")).expect("a dictionary that can be read")
});

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// Words of a line, with apostrophes inside them; a piece with a digit, such as PR101, is none.
fn words(line: &str) -> impl Iterator<Item = &str> {
    line.split(|c: char| !(c.is_alphanumeric() || matches!(c, '\'' | '’')))
        .map(|piece| piece.trim_matches(['\'', '’']))
        .filter(|piece| !piece.is_empty() && !piece.contains(|c: char| c.is_numeric()))
}

/// A line without code, calls and addresses.
fn said(line: &str) -> String {
    let mut said = String::new();
    let mut rest = line;
    while let Some(next) = rest.chars().next() {
        let ticks = rest.len() - rest.trim_start_matches('`').len();
        let skipped = if ticks > 0 {
            let end = rest[ticks..].find(&"`".repeat(ticks)).map(|end| end + 2 * ticks);
            Some(end.unwrap_or(ticks))
        } else if rest.starts_with("{{") {
            Some(rest.find("}}").map_or(rest.len(), |end| end + 2))
        } else if rest.starts_with("http://") || rest.starts_with("https://") {
            Some(rest.find([' ', ')', '>', '"']).unwrap_or(rest.len()))
        } else if rest.starts_with('(') && said.ends_with(']') {
            Some(rest.find(')').map_or(rest.len(), |end| end + 1))
        } else {
            None
        };
        match skipped {
            Some(_) => said.push(' '),
            None => said.push(next),
        }
        rest = &rest[skipped.unwrap_or(next.len_utf8())..];
    }
    said
}

/// Files below a folder with one of these endings.
fn files(folder: &Path, endings: &[&str]) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).expect("a folder").map(|entry| entry.expect("an entry").path()) {
        if entry.is_dir() {
            found.extend(files(&entry, endings));
        } else if endings.iter().any(|ending| entry.to_string_lossy().ends_with(ending)) {
            found.push(entry);
        }
    }
    found.sort();
    found
}

/// Ids of questions, drills and sources, which are spelt like addresses: `pus-on-a-sunday`.
fn ids() -> BTreeSet<&'static str> {
    let course = course();
    let questions = course.questions.iter().map(|question| question.id.as_str());
    let drills = course.drills().map(|(_, drill)| drill.id.as_str());
    questions.chain(drills).chain(course.sources.iter().map(|source| source.id.as_str())).collect()
}

/// A line without the ids in it.
fn without_ids(line: &str, ids: &BTreeSet<&str>) -> String {
    let is_between = |c: char| !(c.is_alphanumeric() || c == '-');
    let piece = |piece: &str| {
        let id = piece.trim_end_matches(is_between);
        if ids.contains(id) { piece[id.len()..].to_owned() } else { piece.to_owned() }
    };
    line.split_inclusive(is_between).map(piece).collect()
}

/// Every word with the places where it stands, `lessons/x.md:3`.
fn used() -> BTreeMap<String, Vec<String>> {
    let mut paths = files(&root().join("lessons"), &[".md", ".yaml"]);
    paths.extend(files(&root().join("docs"), &[".md"]));
    paths.extend(["README.md", "DEVELOPERS.md", "CHANGELOG.md", "book.toml"].map(|name| root().join(name)));
    let ids = ids();
    let mut used: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for path in paths {
        let text = fs::read_to_string(&path).expect("a file of the project");
        let name =
            path.strip_prefix(root()).expect("a file of the project").to_string_lossy().replace('\\', "/");
        let mut fence: Option<bool> = None;
        let (mut in_call, mut in_claims) = (false, false);
        for (number, line) in text.lines().enumerate() {
            if let Some(info) = line.trim_start().strip_prefix("```") {
                // What swatches say is read like any text; what they claim is code.
                fence = if fence.is_none() { Some(info.trim() == "foresee") } else { None };
                in_claims = false;
                continue;
            }
            in_claims = fence == Some(true)
                && (line.starts_with("holds:") || in_claims && line.starts_with([' ', '-']));
            if fence == Some(false) || in_claims {
                continue;
            }
            // A call may run over the end of a line.
            let line = match (in_call, line.split_once("}}")) {
                (false, _) => line,
                (true, Some((_, rest))) => rest,
                (true, None) => continue,
            };
            in_call = line.rfind("{{") > line.rfind("}}");
            let line = without_ids(&said(line), &ids);
            for word in words(&line) {
                used.entry(word.to_owned()).or_default().push(format!("{name}:{}", number + 1));
            }
        }
    }
    used
}

/// Words that the course itself brings: names, terms, ids.
fn own_words() -> BTreeSet<String> {
    let course = course();
    let mut own = BTreeSet::new();
    let mut add = |text: &str| own.extend(words(text).map(str::to_lowercase));
    course.clients.iter().for_each(|client| add(&client.name));
    course.shelf.bottles.iter().for_each(|bottle| add(&bottle.name));
    course.shelf.lines.iter().for_each(|line| add(&format!("{} {}", line.name, line.id)));
    course.shelf.colourants.iter().for_each(|colourant| add(&colourant.name));
    course.terms.iter().for_each(|term| add(&term.term));
    own
}

/// The project's word list.
fn word_list() -> Vec<String> {
    let text = fs::read_to_string(root().join("lessons/words.txt")).expect("the word list");
    text.lines().filter(|line| !line.trim().is_empty()).map(str::to_owned).collect()
}

/// A word without the ending of a possessive.
fn stem(word: &str) -> &str {
    ["'s", "’s", "s'", "s’"].iter().find_map(|end| word.strip_suffix(end)).unwrap_or(word)
}

#[test]
fn every_word_is_known() {
    let (own, list) = (own_words(), word_list());
    let list: BTreeSet<&str> = list.iter().map(String::as_str).collect();
    let is_known = |word: &str| {
        [word, stem(word)].iter().any(|word| {
            word.chars().count() == 1
                || DICTIONARY.check(word)
                || list.contains(word)
                || list.contains(word.to_lowercase().as_str())
                || own.contains(&word.to_lowercase())
        })
    };
    let unknown: Vec<String> = used()
        .iter()
        .filter(|(word, _)| !is_known(word))
        .map(|(word, places)| {
            let more =
                if places.len() > 1 { format!(" and {} more", places.len() - 1) } else { String::new() };
            format!("{}: {word}{more}", places[0])
        })
        .collect();
    assert!(
        unknown.is_empty(),
        "{} words that no list knows; mend them, or add them to lessons/words.txt:\n{}",
        unknown.len(),
        unknown.join("\n")
    );
}

#[test]
fn the_word_list_is_sorted_and_holds_nothing_idle() {
    let list = word_list();
    let mut sorted = list.clone();
    sorted.sort();
    sorted.dedup();
    assert_eq!(list, sorted, "sort the list, each word once");
    let used: BTreeSet<String> =
        used().into_keys().flat_map(|word| [word.to_lowercase(), stem(&word).to_lowercase()]).collect();
    let own = own_words();
    for word in &list {
        assert!(used.contains(&word.to_lowercase()), "nothing says {word:?} any more");
        assert!(
            !DICTIONARY.check(word) && !own.contains(&word.to_lowercase()),
            "{word:?} is known without the list"
        );
    }
}

#[test]
fn code_calls_and_addresses_are_not_read() {
    let read = |line: &str| words(&said(line)).collect::<Vec<_>>().join(" ").to_owned();
    assert_eq!(read("Skin’s `colr` {{ bare(\"tovi\").L }} of [hue](../huu.md), PR101"), "Skin’s of hue");
    let ids = BTreeSet::from(["pus-on-a-sunday"]);
    assert_eq!(
        without_ids("questions: [pus-on-a-sunday, pus-on-a-sundy]", &ids),
        "questions: [, pus-on-a-sundy]"
    );
    assert_eq!(read("See https://exmple.org/x (or not)"), "See or not");
}
