//! Where a text mentions glossary terms: whole words, in capitals or not, in the plural with `s` and in the forms that the author gives
//! too, and the longest term where several begin. A phrase that holds a term in another sense, as the author gives it, is found like a term
//! and mentions none.
//!
//! Entry points: [`TermFinder::new`], once for a course; [`TermFinder::term_at`] at the beginning of a word;
//! [`TermFinder::terms_in`] for a whole text.

use super::Term;
use std::collections::{BTreeSet, HashMap};

/// The terms of a course, ready to be found.
#[derive(Debug, Default)]
pub struct TermFinder {
    /// What to look for by its first word, the longest first.
    phrases: HashMap<String, Vec<Phrase>>,
}

/// A way to write a term.
#[derive(Debug, PartialEq, Eq)]
struct Phrase {
    /// Its characters in lower case; a space stands for any white space.
    characters: Vec<char>,
    /// Index of the term; none where the phrase holds one in another sense.
    term: Option<usize>,
}

impl TermFinder {
    /// Prepares these terms; they are found by their places among them.
    pub fn new(terms: &[Term]) -> Self {
        let mut finder = TermFinder::default();
        for (place, term) in terms.iter().enumerate() {
            let meant = std::iter::once(&term.term).chain(&term.forms).flat_map(|form| ways_to_write(form));
            let not_meant = term.not_in.iter().map(|phrase| (single_spaced(phrase), None));
            for (written, term) in meant.map(|written| (written, Some(place))).chain(not_meant) {
                let characters: Vec<char> = written.to_lowercase().chars().collect();
                let first = first_word(&written);
                // What does not begin with a word cannot be found by one.
                if !first.is_empty() {
                    finder.phrases.entry(first.to_lowercase()).or_default().push(Phrase { characters, term });
                }
            }
        }
        for phrases in finder.phrases.values_mut() {
            phrases.sort_by(|one, other| {
                other.characters.len().cmp(&one.characters.len()).then(one.term.cmp(&other.term))
            });
        }
        finder
    }

    /// The longest phrase at the beginning of `text`: its length there, and the term that it mentions, if any; `after` follows the text.
    pub fn term_at(&self, text: &str, after: Option<char>) -> Option<(usize, Option<usize>)> {
        let first = first_word(text).to_lowercase();
        let singular = first.strip_suffix('s').unwrap_or(&first);
        [first.as_str(), singular]
            .into_iter()
            .filter_map(|word| {
                let phrases = self.phrases.get(word)?;
                phrases.iter().find_map(|phrase| Some((phrase.end_in(text, after)?, phrase.term)))
            })
            .max_by_key(|&(end, _)| end)
    }

    /// Every term that a text mentions.
    pub fn terms_in(&self, text: &str) -> BTreeSet<usize> {
        let mut found = BTreeSet::new();
        let (mut at, mut before) = (0, None);
        while let Some(next) = text[at..].chars().next() {
            let begins_word = is_of_word(next) && !before.is_some_and(is_of_word);
            let term = self.term_at(&text[at..], None).filter(|_| begins_word);
            found.extend(term.and_then(|(_, term)| term));
            at += term.map_or(next.len_utf8(), |(length, _)| length);
            before = text[..at].chars().next_back();
        }
        found
    }
}

impl Phrase {
    /// Where this phrase, or its plural, ends if `text` begins with it; `after` follows the text.
    fn end_in(&self, text: &str, after: Option<char>) -> Option<usize> {
        let mut rest = text.chars();
        let mut wanted = self.characters.iter().copied().peekable();
        while let Some(&next) = wanted.peek() {
            let found = rest.next()?;
            if next == ' ' {
                if !found.is_whitespace() {
                    return None;
                }
                rest = rest.as_str().trim_start().chars();
                wanted.next();
            } else if !found.to_lowercase().all(|c| wanted.next() == Some(c)) {
                return None;
            }
        }
        let is_end = |rest: &str| !rest.chars().next().or(after).is_some_and(is_of_word);
        let ends_in_letter = self.characters.last().is_some_and(|c| c.is_alphabetic());
        let rest = rest.as_str();
        let plural = rest.strip_prefix(['s', 'S']).filter(|_| ends_in_letter);
        let rest = [Some(rest), plural].into_iter().flatten().find(|rest| is_end(rest))?;
        Some(text.len() - rest.len())
    }
}

/// A term as it is given; one like "individual typology angle (ITA)" also without the brackets, and what they hold.
fn ways_to_write(term: &str) -> Vec<String> {
    let whole = single_spaced(term);
    let mut ways = Vec::new();
    if let Some((long, short)) = whole.strip_suffix(')').and_then(|whole| whole.split_once(" (")) {
        ways.extend([long.to_owned(), short.to_owned()]);
    }
    ways.push(whole);
    ways
}

fn single_spaced(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Whether a character can be part of a word; `blue-grey` is one.
pub fn is_of_word(c: char) -> bool {
    c.is_alphanumeric() || c == '_' || c == '-'
}

/// The word at the beginning of a text, which may be none.
fn first_word(text: &str) -> &str {
    &text[..text.find(|c| !is_of_word(c)).unwrap_or(text.len())]
}
