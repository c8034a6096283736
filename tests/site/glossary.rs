//! Links to the glossary stand where the term is meant.

use super::decoded;
use super::fixture::{DEMO, DEMO_SITE, pages};

/// The words of a page in one line, in small letters, and for each of their bytes the term that it is linked to.
fn words(html: &str) -> (String, Vec<String>) {
    let (mut said, mut terms, mut term) = (String::new(), Vec::new(), String::new());
    for (at, piece) in html.split('<').enumerate() {
        let (tag, text) = piece.split_once('>').unwrap_or(("", piece));
        if at > 0 {
            if let Some(link) = tag.strip_prefix("a class=\"term\"") {
                term = link.split_once('#').unwrap().1.trim_end_matches('"').to_owned();
            } else if tag == "/a" {
                term.clear();
            }
        }
        for letter in decoded(text).to_lowercase().chars() {
            let letter = if letter.is_whitespace() { ' ' } else { letter };
            if letter != ' ' || !said.ends_with(' ') {
                said.push(letter);
                terms.resize(said.len(), term.clone());
            }
        }
    }
    (said, terms)
}

#[test]
fn a_term_is_linked_in_no_phrase_where_it_has_another_sense() {
    let (course, _) = &*DEMO;
    let pages: Vec<_> = pages(&DEMO_SITE)
        .into_iter()
        .filter(|(path, _)| path.starts_with("lessons/") || path.starts_with("teaching/"))
        .map(|(path, html)| (path, words(&html)))
        .collect();
    let linked = pages.iter().flat_map(|(_, (_, terms))| terms).filter(|term| !term.is_empty()).count();
    assert!(linked > 5_000, "{linked} letters are linked");
    for term in &course.terms {
        for phrase in &term.not_in {
            let mut found = 0;
            for (path, (said, terms)) in &pages {
                for (at, _) in said.match_indices(&phrase.to_lowercase()) {
                    found += 1;
                    let is_linked = terms[at..at + phrase.len()].contains(&term.id);
                    assert!(!is_linked, "{path}: {} in {phrase:?}", term.id);
                }
            }
            assert!(found > 0, "no page says {phrase:?}");
        }
    }
}
