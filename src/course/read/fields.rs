//! The keys of one set: each is asked for by name, and whatever is wrong with it is reported where it stands.
//!
//! A value that is missing or wrong is replaced by an empty one, so that reading goes on and finds everything else that is
//! wrong; the course is given out only when nothing was reported.

use super::Reader;
use super::names::Thing;
use super::node::{Node, NodeKind, Style};
use super::number;
use super::suggest::{listed, nearest, quoted};
use crate::course::source::{At, Place};
use crate::quantity::Quantity;
use std::collections::HashSet;

/// The keys of one set.
pub(crate) struct Fields<'n, 'r> {
    /// Where problems, names and references go.
    pub reader: &'r mut Reader,
    /// What the keys describe, with its article: "a drill".
    what: &'static str,
    /// Where the set begins.
    pub place: Place,
    entries: &'n [(At<String>, Node)],
    /// Keys that are absent because they were misspelt, which has been said.
    explained: Vec<&'static str>,
}

impl<'n, 'r> Fields<'n, 'r> {
    /// The keys of `node`, which describes `what`; keys other than `known` are reported.
    pub fn of(
        node: &'n Node,
        what: &'static str,
        known: &[&'static str],
        reader: &'r mut Reader,
    ) -> Option<Self> {
        let NodeKind::Map(entries) = &node.kind else {
            reader
                .problems
                .error(&node.place, format!("{what} is a set of keys; this is {}", node.in_words()))
                .help(match known {
                    [only] => format!("it begins with the key `{only}`"),
                    _ => format!("the keys are {}", listed(known.iter().copied())),
                });
            return None;
        };
        let place = node.point().clone();
        let mut fields = Fields { reader, what, place, entries, explained: Vec::new() };
        let absent: Vec<&'static str> =
            known.iter().copied().filter(|key| fields.node(key).is_none()).collect();
        for (key, _) in entries {
            if !known.contains(&key.value.as_str()) {
                fields.unknown(key, known, &absent);
            }
        }
        Some(fields)
    }

    fn unknown(&mut self, key: &At<String>, known: &[&'static str], absent: &[&'static str]) {
        let keys = listed(known.iter().copied());
        let help = match nearest(&key.value, absent.iter().copied())
            .or_else(|| nearest(&key.value, known.iter().copied()))
        {
            Some(near) => {
                self.explained.extend(known.iter().find(|known| **known == near));
                match number::unit_of_key(near) {
                    Some(unit) if number::unit_of_key(&key.value) != Some(unit) => {
                        format!("did you mean `{near}`, a number in {unit}? The keys here are {keys}")
                    }
                    _ => format!("did you mean `{near}`? The keys here are {keys}"),
                }
            }
            None => format!("the keys here are {keys}"),
        };
        let message = format!("unknown key {} in {}", quoted(&key.value), self.what);
        self.reader.problems.error(&key.place, message).help(help);
    }

    /// The value of a key, whatever it is.
    pub fn node(&self, key: &str) -> Option<&'n Node> {
        self.entries
            .iter()
            .find(|(entry, node)| entry.value == key && !matches!(node.kind, NodeKind::Nothing))
            .map(|(_, node)| node)
    }

    /// Where a key stands.
    pub fn key(&self, key: &str) -> Option<&'n Place> {
        self.entries.iter().find(|(entry, _)| entry.value == key).map(|(entry, _)| &entry.place)
    }

    /// Every key with its value.
    pub fn entries(&self) -> &'n [(At<String>, Node)] {
        self.entries
    }

    /// The value of a key that must be there.
    pub fn required(&mut self, key: &'static str) -> Option<&'n Node> {
        let node = self.node(key);
        if node.is_none() && !self.explained.contains(&key) {
            match self.key(key) {
                Some(place) => {
                    self.reader.problems.error(place, format!("`{key}` is empty"));
                }
                None => {
                    let message = format!("the key `{key}` is missing in {}", self.what);
                    self.reader.problems.error(&self.place, message);
                }
            }
        }
        node
    }

    /// A text that must be there and not be empty.
    pub fn text(&mut self, key: &'static str) -> At<String> {
        match self.required(key) {
            Some(node) => self.reader.text(key, node),
            None => At::new(String::new(), self.place.clone()),
        }
    }

    /// A text, or `otherwise`.
    pub fn text_or(&mut self, key: &'static str, otherwise: &str) -> At<String> {
        match self.node(key) {
            Some(node) => self.reader.text(key, node),
            None => At::new(otherwise.to_owned(), self.place.clone()),
        }
    }

    /// The id that names this thing.
    pub fn id(&mut self, thing: Thing) -> At<String> {
        let id = self.text("id");
        self.reader.name(thing, id)
    }

    /// The id of a thing named elsewhere.
    pub fn reference(&mut self, key: &'static str, thing: Thing) -> At<String> {
        let id = self.text(key);
        self.reader.refer(thing, id.clone());
        id
    }

    /// A list of ids of things named elsewhere, each once; an absent key is an empty list.
    pub fn references(&mut self, key: &'static str, thing: Thing) -> Vec<At<String>> {
        let mut ids: Vec<At<String>> = Vec::new();
        let mut seen = HashSet::new();
        for node in self.list(key) {
            let id = self.reader.text(key, node);
            if !seen.insert(id.value.clone()) && !id.value.is_empty() {
                self.reader.problems.error(&id.place, format!("{} is here twice", quoted(&id.value)));
            } else {
                self.reader.refer(thing, id.clone());
                ids.push(id);
            }
        }
        ids
    }

    /// The items of a list; an absent key is an empty list.
    pub fn list(&mut self, key: &'static str) -> &'n [Node] {
        match self.node(key) {
            Some(Node { kind: NodeKind::List(items), .. }) => items,
            Some(node) => {
                let message = format!("`{key}` is a list; this is {}", node.in_words());
                let problem = self.reader.problems.error(&node.place, message);
                if let NodeKind::Scalar { text, .. } = &node.kind {
                    let one: String = text.chars().take(40).filter(|c| !c.is_control()).collect();
                    problem.help(if node.place.source.path.ends_with(".toml") {
                        format!("a list of one: `{key} = [\"{one}\"]`")
                    } else {
                        format!("a list of one: `{key}: [{one}]`")
                    });
                }
                &[]
            }
            None => &[],
        }
    }

    /// The items of a list that must be there and not be empty.
    pub fn some(&mut self, key: &'static str) -> &'n [Node] {
        let Some(node) = self.required(key) else { return &[] };
        if matches!(&node.kind, NodeKind::List(items) if items.is_empty()) {
            let message = format!("`{key}` of {} is empty", self.what);
            self.reader.problems.error(&node.place, message);
        }
        self.list(key)
    }

    /// A number that must be there; its key is the quantity's name.
    pub fn number(&mut self, quantity: &Quantity) -> f64 {
        match self.required(quantity.name) {
            Some(node) => self.reader.number(node, quantity),
            None => quantity.least,
        }
    }

    /// A number, or `otherwise`.
    pub fn number_or(&mut self, quantity: &Quantity, otherwise: f64) -> f64 {
        self.node(quantity.name).map_or(otherwise, |node| self.reader.number(node, quantity))
    }

    /// A whole number that must be there.
    pub fn whole(&mut self, quantity: &Quantity) -> u32 {
        match self.required(quantity.name) {
            Some(node) => self.reader.whole(node, quantity),
            None => quantity.least as u32,
        }
    }

    /// A word out of a few, with its value; `None` if the key is absent or wrong.
    pub fn word_or_none<T: Copy>(&mut self, key: &'static str, words: &[(T, &'static str)]) -> Option<T> {
        let node = self.node(key)?;
        let text = self.reader.text(key, node);
        self.word_of(key, &text, words)
    }

    /// The value of a word out of a few; any other word is reported.
    fn word_of<T: Copy>(
        &mut self,
        key: &'static str,
        text: &At<String>,
        words: &[(T, &'static str)],
    ) -> Option<T> {
        let found = words.iter().find(|(_, word)| *word == text.value).map(|(value, _)| *value);
        if found.is_none() && !text.value.is_empty() {
            let all = || words.iter().map(|(_, word)| *word);
            let help = match nearest(&text.value, all()) {
                Some(near) => format!("did you mean `{near}`? It is one of {}", listed(all())),
                None => format!("it is one of {}", listed(all())),
            };
            self.reader
                .problems
                .error(&text.place, format!("{} is no value of `{key}`", quoted(&text.value)))
                .help(help);
        }
        found
    }

    /// A word out of a few that must be there.
    pub fn word<T: Copy>(&mut self, key: &'static str, words: &[(T, &'static str)]) -> Option<T> {
        self.required(key)?;
        self.word_or_none(key, words)
    }

    /// Words out of a few, each once, in a list that must be there and not be empty; their values, in the order of the list.
    pub fn words<T: Copy + PartialEq>(&mut self, key: &'static str, words: &[(T, &'static str)]) -> Vec<T> {
        let mut values = Vec::new();
        for node in self.some(key) {
            let text = self.reader.text(key, node);
            let Some(value) = self.word_of(key, &text, words) else { continue };
            if values.contains(&value) {
                self.reader.problems.error(&text.place, format!("{} is here twice", quoted(&text.value)));
            } else {
                values.push(value);
            }
        }
        values
    }

    /// `true` or `false`; an absent key is `false`. `None` if it is neither.
    pub fn flag(&mut self, key: &'static str) -> Option<bool> {
        let Some(node) = self.node(key) else { return Some(false) };
        match &node.kind {
            NodeKind::Scalar { text, style } if text == "true" && *style != Style::Text => Some(true),
            NodeKind::Scalar { text, style } if text == "false" && *style != Style::Text => Some(false),
            _ => {
                self.reader.problems.error(&node.place, format!("`{key}` is `true` or `false`"));
                None
            }
        }
    }
}
