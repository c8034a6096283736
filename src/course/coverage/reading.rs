//! How long a lesson is and how hard to read.
//!
//! Entry point: [`Reading::of`]. Words and sentences are those of Unicode's standard annex 29; code, drills and swatches do not
//! count.

use crate::course::{Block, Page, markdown_options};
use pulldown_cmark::{Event, Parser, Tag, TagEnd};
use serde::Serialize;
use unicode_segmentation::UnicodeSegmentation;

/// Languages that the index was tried on by its author: newspapers in eleven languages (Björnsson 1983, from memory).
const LANGUAGES: [&str; 13] = ["sv", "no", "nb", "nn", "da", "en", "fr", "de", "it", "es", "pt", "fi", "ru"];

/// Letters from which on a word counts as long.
const LONG: usize = 7;

/// What a lesson's text is like.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Reading {
    /// Words of its text, headings and tables included.
    pub words: usize,
    /// Readability index; nothing for a language that it is not defined for, or without a sentence.
    pub lix: Option<f64>,
}

/// What a page says, without markup.
#[derive(Debug, Default)]
pub(super) struct Said {
    /// Sentences: paragraphs and items of lists, a line each.
    pub sentences: String,
    /// Headings and tables.
    pub rest: String,
}

impl Reading {
    /// Words and readability of a page in this language.
    ///
    /// LIX = words per sentence + percentage of words of more than six letters (Björnsson 1968, from memory). It needs no
    /// syllables, and so no dictionary. About 20 reads like a book for children, 30 to 40 like a novel, 50 like a serious
    /// newspaper, 60 like an official letter (his bands, from memory).
    pub fn of(page: &Page, language: &str) -> Self {
        let said = Said::of(page);
        let primary = language.split('-').next().unwrap_or_default().to_ascii_lowercase();
        let lix = lix(&said.sentences).filter(|_| LANGUAGES.contains(&primary.as_str()));
        let words = said.sentences.unicode_words().count() + said.rest.unicode_words().count();
        Reading { words, lix }
    }
}

impl Said {
    /// What a page says.
    pub fn of(page: &Page) -> Self {
        let mut said = Said::default();
        let texts = page.blocks.iter().filter_map(|block| match block {
            Block::Text(text) => Some(text),
            _ => None,
        });
        for text in texts {
            let (mut in_code, mut apart) = (false, 0_usize);
            for event in Parser::new_ext(text, markdown_options()) {
                let line = if apart > 0 { &mut said.rest } else { &mut said.sentences };
                match event {
                    Event::Text(text) if !in_code => *line += &text,
                    Event::SoftBreak | Event::HardBreak => line.push(' '),
                    Event::Start(Tag::CodeBlock(_)) => in_code = true,
                    Event::End(TagEnd::CodeBlock) => in_code = false,
                    Event::Start(Tag::Heading { .. } | Tag::Table(_)) => apart += 1,
                    Event::End(TagEnd::Heading(_) | TagEnd::Table) => {
                        line.push('\n');
                        apart = apart.saturating_sub(1);
                    }
                    Event::End(TagEnd::Paragraph | TagEnd::Item | TagEnd::TableCell) => line.push('\n'),
                    _ => {}
                }
            }
        }
        said
    }
}

/// The readability index of a text.
fn lix(text: &str) -> Option<f64> {
    let sentences = text
        .lines()
        .flat_map(UnicodeSegmentation::unicode_sentences)
        .filter(|sentence| sentence.unicode_words().next().is_some())
        .count();
    let (mut words, mut long) = (0_usize, 0_usize);
    for word in text.unicode_words() {
        words += 1;
        long += usize::from(word.chars().filter(|c| c.is_alphabetic()).count() >= LONG);
    }
    let (words_f, long_f) = (words as f64, long as f64);
    (sentences > 0).then(|| words_f / sentences as f64 + 100.0 * long_f / words_f)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn page(text: &str) -> Page {
        let blocks = vec![Block::Text(text.to_owned()), Block::Drill("hard-words-everywhere".into())];
        Page { title: String::new(), path: String::new(), anchor: String::new(), blocks }
    }

    #[test]
    fn the_index_is_counted_by_hand() {
        // 4 and 6 words in two sentences; "colours" and "lightness" are long: 10/2 + 100·2/10.
        let text = "## A heading here\n\nSkin filters all *colours*. It\ntakes away its own lightness!\n";
        let reading = Reading::of(&page(text), "en-GB");
        assert_eq!(reading.words, 13);
        // "filters" has seven letters too.
        assert!((reading.lix.unwrap() - (10.0 / 2.0 + 100.0 * 3.0 / 10.0)).abs() < 1e-9, "{reading:?}");
    }

    #[test]
    fn code_and_tables_are_no_sentences_and_some_languages_have_no_index() {
        let table =
            "One two.\n\n| extraordinarily | long |\n|---|---|\n| words | here |\n\n    code in here\n";
        let reading = Reading::of(&page(table), "en");
        assert_eq!((reading.words, reading.lix), (6, Some(2.0)));
        assert_eq!(Reading::of(&page("One two."), "ja").lix, None);
        assert_eq!(Reading::of(&page("`code`"), "en"), Reading { words: 0, lix: None });
    }
}
