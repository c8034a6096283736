//! The program's words: every language has every message, with the same values; every message is said somewhere.

use healedhue::language::{Language, SPOKEN};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

/// Ids of a language's messages with the names of the values each is filled with.
fn messages(source: &str) -> BTreeMap<String, BTreeSet<String>> {
    let mut found: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let mut id = String::new();
    for line in source.lines().filter(|line| !line.starts_with('#')) {
        if line.starts_with(|first: char| first.is_ascii_alphabetic()) {
            id = line.split_once('=').expect("a message has a sign of equality").0.trim().to_owned();
            assert!(found.insert(id.clone(), BTreeSet::new()).is_none(), "{id} comes twice");
        }
        let values = line.split('$').skip(1).map(|rest| {
            rest.chars().take_while(|c| c.is_ascii_alphanumeric() || "_-".contains(*c)).collect::<String>()
        });
        if let Some(own) = found.get_mut(&id) {
            own.extend(values);
        }
    }
    found
}

fn files(folder: &Path, endings: &[&str]) -> Vec<PathBuf> {
    let mut all = Vec::new();
    for entry in fs::read_dir(folder).expect("the folder is there") {
        let path = entry.expect("the folder can be read").path();
        if path.is_dir() {
            all.extend(files(&path, endings));
        } else if endings.iter().any(|ending| path.extension().is_some_and(|found| found == *ending)) {
            all.push(path);
        }
    }
    all
}

/// What program, templates and scripts say: whole ids, and beginnings of ids that are put together.
fn said() -> (BTreeSet<String>, BTreeSet<String>) {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let (mut whole, mut beginnings) = (BTreeSet::new(), BTreeSet::new());
    let mut sources = files(&root.join("src"), &["rs"]);
    sources.extend(files(&root.join("site"), &["html", "js"]));
    for path in sources.iter().filter(|path| !path.components().any(|part| part.as_os_str() == "vendor")) {
        let text = fs::read_to_string(path).expect("sources are text");
        // What may be an id: letters, digits and hyphens between quotes.
        for quote in ['"', '`'] {
            for piece in text.split(quote) {
                let id: String = piece
                    .chars()
                    .take_while(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || *c == '-')
                    .collect();
                if !id.contains('-') {
                    continue;
                }
                if id.len() == piece.len() && !id.ends_with('-') {
                    whole.insert(id);
                } else if id.ends_with('-')
                    && (piece[id.len()..].starts_with(['{', '$']) || id.len() == piece.len())
                {
                    beginnings.insert(id);
                }
            }
        }
    }
    (whole, beginnings)
}

/// The first text in quotes after each of these calls.
fn first_texts<'t>(source: &'t str, calls: &[&str]) -> Vec<&'t str> {
    let mut found = Vec::new();
    for call in calls {
        for rest in source.split(call).skip(1) {
            let Some((before, rest)) = rest.split_once('"') else { continue };
            // A call whose id is no text in quotes: another call or a statement stands before the next text.
            if before.contains(['(', ')', ';', '}']) {
                continue;
            }
            found.extend(rest.split_once('"').map(|(text, _)| text));
        }
    }
    found
}

/// Ids that a script says, of a page that holds it with its messages, and that those lack. Fails where the script says none.
pub fn unsaid(script: &str) -> Vec<String> {
    let (_, rest) = script.split_once("const message = healedhueWords(").expect("a script that speaks");
    let (call, script) = rest.split_once(");\n").expect("the call ends");
    let literal = call.split_once(", ").expect("a tag and messages").1;
    let source: String = serde_json::from_str(literal).expect("the messages are a text");
    let known = messages(&source);
    let mut ids: Vec<&str> = Vec::new();
    for call in ["message(", "around("] {
        for rest in script.split(call).skip(1) {
            // An id, a beginning of one, or a choice between two.
            let argument = rest.split([',', ')']).next().unwrap_or_default();
            for quote in ['"', '`'] {
                ids.extend(
                    argument.split(quote).skip(1).step_by(2).map(|id| id.split('$').next().unwrap_or(id)),
                );
            }
        }
    }
    assert!(!ids.is_empty(), "the script says something");
    let is_known = |id: &str| match id.ends_with('-') {
        true => known.keys().any(|known| known.starts_with(id)),
        false => known.contains_key(id),
    };
    // Other texts in such a call are names that end an id.
    ids.into_iter().filter(|id| id.contains('-') && !is_known(id)).map(str::to_owned).collect()
}

#[test]
fn every_id_that_is_said_has_a_message() {
    let known = messages(SPOKEN[0].1);
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut said = 0;
    for path in files(&root.join("src"), &["rs"]).into_iter().chain(files(&root.join("site"), &["html"])) {
        let text = fs::read_to_string(&path).expect("sources are text");
        let calls: &[&str] = if path.extension().is_some_and(|ending| ending == "html") {
            &["say(", "html("]
        } else {
            &["say!("]
        };
        // Documentation shows calls of its own.
        let code: String = text
            .lines()
            .filter(|line| !line.trim_start().starts_with("//"))
            .flat_map(|line| [line, "\n"])
            .collect();
        for id in first_texts(&code, calls) {
            let fine = match id.ends_with('-') {
                true => known.keys().any(|known| known.starts_with(id)),
                false => known.contains_key(id),
            };
            assert!(fine, "{}: {id:?} is no message", path.display());
            said += 1;
        }
    }
    assert!(said > 100, "{said}");
}

#[test]
fn every_language_has_every_message_with_the_same_values() {
    let (reference, english) = SPOKEN[0];
    assert_eq!(reference, "en");
    let english = messages(english);
    assert!(!english.is_empty());
    for (tag, source) in SPOKEN {
        assert!(Language::read(tag, source).is_ok(), "{tag}: a message cannot be read");
        let own = messages(source);
        for (id, values) in &english {
            let found = own.get(id).unwrap_or_else(|| panic!("{tag} lacks {id}"));
            assert_eq!(found, values, "{tag}: the values of {id}");
        }
        let more: Vec<_> = own.keys().filter(|id| !english.contains_key(*id)).collect();
        assert!(more.is_empty(), "{tag} has messages that English lacks: {more:?}");
    }
}

#[test]
fn every_message_is_said_somewhere() {
    let (whole, beginnings) = said();
    let idle: Vec<_> = messages(SPOKEN[0].1)
        .into_keys()
        .filter(|id| !whole.contains(id) && !beginnings.iter().any(|start| id.starts_with(start)))
        .filter(|id| id != "decimal-mark")
        .collect();
    assert!(idle.is_empty(), "messages that nothing says: {idle:?}");
}

#[test]
fn a_message_is_filled_in_and_a_missing_one_is_named() {
    let language = Language::read(
        "de",
        "one-two = { $count ->\n    [one] ein Tropfen\n   *[other] { $count } Tropfen\n } für { $name }\n",
    )
    .expect("these can be read");
    let say = |count: u32| healedhue::say!(language, "one-two", count = count, name = "Öhm <b>");
    assert_eq!((say(1).as_str(), say(3).as_str()), ("ein Tropfen für Öhm <b>", "3 Tropfen für Öhm <b>"));
    assert_eq!(healedhue::say!(language, "none-such"), "⟨none-such⟩");
    assert_eq!(Language::of("de-AT").decimal(2.25, 1), "2,2");
    assert_eq!(Language::of("fr").decimal(2.25, 1), "2.2", "English where the language is not spoken");
}

/// German has one word for each of these things, and not now this one, now that one.
#[test]
fn german_has_one_word_for_one_thing() {
    let (_, german) = SPOKEN.iter().find(|(tag, _)| *tag == "de").expect("German");
    for (thing, word, others) in [
        ("placement", "Pigmentierung", &["Lage", "Platzierung", "Gesetzt"][..]),
        ("load", "Pigmentmenge", &["Beladung", "Auftrag", "Ladung"]),
        ("modifier", "Korrektor", &["Modifikator", "Modifizierer"]),
    ] {
        let words: Vec<&str> = german.split(|c: char| !c.is_alphanumeric()).collect();
        assert!(words.iter().any(|said| said.starts_with(word)), "{thing}: {word}");
        let other = words.iter().find(|said| others.iter().any(|other| said.starts_with(other)));
        assert_eq!(other, None, "{thing} is {word}");
    }
}
