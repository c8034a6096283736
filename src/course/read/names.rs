//! The names a course gives to things, and references to them that are checked when every file has been read.

use super::suggest::{listed, nearest, quoted};
use crate::course::diagnostic::Problems;
use crate::course::source::{At, Place, Source};
use std::collections::{BTreeMap, BTreeSet};

/// What can be named.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[allow(missing_docs)]
pub(crate) enum Thing {
    Skill,
    Goal,
    Client,
    Caution,
    Misconception,
    Term,
    Question,
    Colourant,
    Line,
    Bottle,
    Module,
    Lesson,
    Drill,
    Blueprint,
    Assignment,
    Person,
    Source,
}

impl Thing {
    /// Its word with an article before it.
    pub fn with_article(self) -> String {
        let word = self.word();
        let article = if word.starts_with(['a', 'e', 'i', 'o', 'u']) { "an" } else { "a" };
        format!("{article} {word}")
    }

    /// Its word.
    pub fn word(self) -> &'static str {
        match self {
            Thing::Skill => "skill",
            Thing::Goal => "goal",
            Thing::Client => "client",
            Thing::Caution => "caution",
            Thing::Misconception => "misconception",
            Thing::Term => "term",
            Thing::Question => "question",
            Thing::Colourant => "colourant",
            Thing::Line => "line",
            Thing::Bottle => "bottle",
            Thing::Module => "module",
            Thing::Lesson => "lesson",
            Thing::Drill => "drill",
            Thing::Blueprint => "blueprint",
            Thing::Assignment => "assignment",
            Thing::Person => "person",
            Thing::Source => "source",
        }
    }

    /// Where things of this kind are named, below the folder of lessons.
    fn home(self) -> &'static str {
        match self {
            Thing::Skill => "`skills.yaml`",
            Thing::Goal => "`goals.yaml`",
            Thing::Client => "the folder `clients`",
            Thing::Caution => "`cautions.yaml`",
            Thing::Misconception => "`misconceptions.yaml`",
            Thing::Term => "`glossary.yaml`",
            Thing::Question => "the folder `bank`",
            Thing::Colourant => "`pigments/colourants.yaml`",
            Thing::Line | Thing::Bottle => "`pigments/bottles.yaml`",
            Thing::Module | Thing::Lesson => "the YAML files beside the pages of the summary",
            Thing::Drill => "the YAML file beside the lesson",
            Thing::Blueprint => "the folder `papers`",
            Thing::Assignment | Thing::Person => "the assignment",
            Thing::Source => "`sources.yaml`",
        }
    }
}

/// Names of one kind.
#[derive(Debug, Default)]
struct Kind {
    /// Names with the place of each.
    known: BTreeMap<String, Place>,
    /// Names seen in files that could not be read: a reference to one of them is no mistake of its own.
    perhaps: BTreeSet<String>,
    /// Whether a file of this kind could not even be searched for names.
    incomplete: bool,
}

/// Every name.
#[derive(Debug, Default)]
pub(crate) struct Names {
    kinds: BTreeMap<Thing, Kind>,
    /// References that nothing answers to, so far.
    unanswered: usize,
}

/// How many unanswered references are compared with every name: more than any author reads.
const MOST_COMPARED: usize = 1000;

/// Use of a name.
#[derive(Debug)]
pub(crate) struct Reference {
    /// What is meant.
    pub thing: Thing,
    /// The name as written.
    pub id: At<String>,
}

impl Names {
    /// Gives a name. A name given before is reported.
    pub fn declare(&mut self, thing: Thing, id: &At<String>, problems: &mut Problems) {
        if id.value.is_empty() {
            return;
        }
        let known = &mut self.kinds.entry(thing).or_default().known;
        match known.get(&id.value) {
            Some(first) => {
                problems
                    .error(&id.place, format!("a second {} with the id {}", thing.word(), quoted(&id.value)))
                    .help(format!("the first one is at {}; ids are unique", first.in_words()));
            }
            None => _ = known.insert(id.value.clone(), id.place.clone()),
        }
    }

    /// Notes that a file which names things could not be read, so that uses of its names are not reported as well.
    pub fn excuse(&mut self, thing: Thing, source: Option<&Source>) {
        let kind = self.kinds.entry(thing).or_default();
        match source {
            Some(source) => kind.perhaps.extend(ids_in(&source.text)),
            None => kind.incomplete = true,
        }
    }

    /// Notes that the file which names this one thing could not be read.
    pub fn excuse_one(&mut self, thing: Thing, id: &str) {
        self.kinds.entry(thing).or_default().perhaps.insert(id.to_owned());
    }

    /// Every name with its kind and its place.
    pub fn places(&self) -> impl Iterator<Item = (Thing, &str, &Place)> {
        let all = self.kinds.iter();
        all.flat_map(|(thing, kind)| kind.known.iter().map(move |(id, place)| (*thing, id.as_str(), place)))
    }

    /// Whether this name was given.
    pub fn has(&self, thing: Thing, id: &str) -> bool {
        self.kinds.get(&thing).is_some_and(|kind| kind.known.contains_key(id))
    }

    /// Reports a reference to a name that nothing has.
    pub fn check(&mut self, reference: &Reference, problems: &mut Problems) {
        let Reference { thing, id } = reference;
        if id.value.is_empty() || self.has(*thing, &id.value) {
            return;
        }
        let kind = self.kinds.get(thing);
        if kind.is_some_and(|kind| kind.incomplete || kind.perhaps.contains(&id.value)) {
            return;
        }
        self.unanswered += 1;
        if self.unanswered > MOST_COMPARED {
            problems.error(&id.place, format!("there is no {} {}", thing.word(), quoted(&id.value)));
            return;
        }
        let kind = self.kinds.get(thing);
        let known: Vec<&str> =
            kind.map(|kind| kind.known.keys().map(String::as_str).collect()).unwrap_or_default();
        let word = thing.word();
        let elsewhere = self
            .kinds
            .iter()
            .find(|(other, kind)| *other != thing && kind.known.contains_key(&id.value))
            .map(|(other, _)| other.with_article());
        let help = match (nearest(&id.value, known.iter().copied()), elsewhere) {
            (Some(near), _) => format!("did you mean {}?", quoted(near)),
            (None, Some(other)) => format!("{} is {other}", quoted(&id.value)),
            (None, None) if known.is_empty() && kind.is_none_or(|kind| kind.perhaps.is_empty()) => {
                format!("there are no {word}s yet; they are named in {}", thing.home())
            }
            (None, None) if (1..=12).contains(&known.len()) => {
                format!("the {word}s are {}; they are named in {}", listed(known), thing.home())
            }
            (None, None) => format!("{word}s are named in {}", thing.home()),
        };
        problems.error(&id.place, format!("there is no {word} {}", quoted(&id.value))).help(help);
    }
}

/// Whatever is written as an `id:` in a text that may be no YAML.
fn ids_in(text: &str) -> impl Iterator<Item = String> {
    text.match_indices("id:").filter_map(|(at, _)| {
        let alone = text[..at].chars().next_back().is_none_or(|c| !c.is_alphanumeric() && c != '_');
        let id: String = text[at + 3..]
            .trim_start_matches([' ', '"', '\''])
            .chars()
            .take_while(|c| c.is_alphanumeric() || matches!(c, '-' | ':'))
            .collect();
        (alone && !id.is_empty()).then_some(id)
    })
}
