//! Links from the text of lessons to the glossary.
//!
//! Entry points: [`Glossary::new`], once for a course, and [`Mentions::linked`], for every piece of a page's text. The first
//! mention of each term on a page becomes a link: whole words, in capitals or not, in the plural with `s` and in given forms too, and the longest
//! term where several begin. Phrases in which the author says that a term has another sense are left as they are, and so are links,
//! headings, code, pictures, and a term that stands alone in a cell of a table: there it is a label or a value.

use super::plan::{self, href_to};
use crate::course::{Term, TermFinder, is_of_word};
use pulldown_cmark::{CowStr, Event, Tag, TagEnd};
use std::collections::BTreeSet;

/// The terms of a course, ready to be found.
#[derive(Debug, Default)]
pub(super) struct Glossary {
    /// Ids of the terms.
    ids: Vec<String>,
    /// Where they are mentioned.
    finder: TermFinder,
}

/// The terms of a page that have been mentioned.
#[derive(Debug)]
pub(super) struct Mentions<'g> {
    glossary: &'g Glossary,
    /// Path of the page in the site.
    page: String,
    /// Indices of the terms mentioned so far.
    seen: BTreeSet<usize>,
}

impl Glossary {
    /// Prepares the terms of a course.
    pub fn new(terms: &[Term]) -> Self {
        let ids = terms.iter().map(|term| term.id.clone()).collect();
        Glossary { ids, finder: TermFinder::new(terms) }
    }

    /// Nothing is mentioned yet on the page at this path of the site.
    pub fn mentions(&self, page: &str) -> Mentions<'_> {
        Mentions { glossary: self, page: page.to_owned(), seen: BTreeSet::new() }
    }
}

impl Mentions<'_> {
    /// The same text with a link at the first mention of each term.
    pub fn linked<'e>(&mut self, events: Vec<Event<'e>>) -> Vec<Event<'e>> {
        let mut linked = Vec::with_capacity(events.len());
        // How many links, headings, code blocks and pictures are open.
        let mut left_alone = 0_usize;
        for at in 0..events.len() {
            match &events[at] {
                Event::Start(tag) if is_left_alone(&tag.to_end()) => left_alone += 1,
                Event::End(tag) if is_left_alone(tag) => left_alone = left_alone.saturating_sub(1),
                Event::Text(text)
                    if left_alone == 0 && !self.is_alone(text, &events[..at], &events[at + 1..]) =>
                {
                    let before = beside(events[..at].iter().rev(), true);
                    let after = beside(events[at + 1..].iter(), false);
                    self.link_text(text, before, after, &mut linked);
                    continue;
                }
                _ => {}
            }
            linked.push(events[at].clone());
        }
        linked
    }

    /// Whether a text is all there is in a cell of a table, and nothing but a term.
    fn is_alone(&self, text: &str, before: &[Event], after: &[Event]) -> bool {
        let in_cell = matches!(before.last(), Some(Event::Start(Tag::TableCell)))
            && matches!(after.first(), Some(Event::End(TagEnd::TableCell)));
        let text = text.trim();
        in_cell && self.glossary.finder.term_at(text, None).is_some_and(|(end, _)| end == text.len())
    }

    fn link_text<'e>(
        &mut self,
        text: &CowStr<'e>,
        before: Option<char>,
        after: Option<char>,
        linked: &mut Vec<Event<'e>>,
    ) {
        let mut done = 0;
        let mut at = 0;
        let mut before = before;
        while let Some(next) = text[at..].chars().next() {
            let begins_word = is_of_word(next) && !before.is_some_and(is_of_word);
            let found = self.glossary.finder.term_at(&text[at..], after).filter(|_| begins_word);
            let length = found.map_or(next.len_utf8(), |(length, _)| length);
            if let Some((length, Some(term))) = found
                && self.seen.insert(term)
            {
                if done < at {
                    linked.push(Event::Text(text[done..at].to_owned().into()));
                }
                let target = href_to(&self.page, plan::GLOSSARY, &self.glossary.ids[term]);
                linked.push(Event::InlineHtml(format!("<a class=\"term\" href=\"{target}\">").into()));
                linked.push(Event::Text(text[at..at + length].to_owned().into()));
                linked.push(Event::InlineHtml("</a>".into()));
                done = at + length;
            }
            at += length;
            before = text[..at].chars().next_back();
        }
        if done == 0 {
            linked.push(Event::Text(text.clone()));
        } else if done < text.len() {
            linked.push(Event::Text(text[done..].to_owned().into()));
        }
    }
}

fn is_left_alone(tag: &TagEnd) -> bool {
    matches!(tag, TagEnd::Link | TagEnd::Image | TagEnd::Heading(_) | TagEnd::CodeBlock | TagEnd::TableHead)
}

/// The character that the nearest of these events brings, in the same paragraph: their last one or their first one.
fn beside<'e>(events: impl Iterator<Item = &'e Event<'e>>, last: bool) -> Option<char> {
    for event in events {
        match event {
            Event::Text(text) | Event::Code(text) => {
                return if last { text.chars().next_back() } else { text.chars().next() };
            }
            Event::Start(Tag::Emphasis | Tag::Strong | Tag::Link { .. })
            | Event::End(TagEnd::Emphasis | TagEnd::Strong | TagEnd::Link) => {}
            _ => return None,
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;
    use pulldown_cmark::{Parser, TextMergeStream};

    /// The text with `[term id|what is linked]`.
    fn marked(text: &str) -> String {
        let term = |id: &str, term: &str| Term {
            id: id.to_owned(),
            term: term.to_owned(),
            not_in: if id == "glass" {
                vec!["glass of  wine".to_owned(), "window glass".to_owned()]
            } else {
                Vec::new()
            },
            forms: if id == "glass" { vec!["glasses".to_owned()] } else { Vec::new() },
            means: String::new(),
            see: Vec::new(),
        };
        let glossary = Glossary::new(&[
            term("hue", "hue"),
            term("colour", "colour"),
            term("healed", "healed colour"),
            term("index", "Colour Index"),
            term("ita", "individual typology angle (ITA)"),
            term("blue-grey", "blue-grey"),
            term("odd", "a<b & \"c\""),
            term("glass", "glass"),
        ]);
        let parser = Parser::new_ext(text, crate::course::markdown_options()).map(|event| match event {
            Event::SoftBreak => Event::Text("\n".into()),
            event => event,
        });
        let events = glossary.mentions("lessons/a.html").linked(TextMergeStream::new(parser).collect());
        let mut html = String::new();
        pulldown_cmark::html::push_html(&mut html, events.into_iter());
        html.replace("<a class=\"term\" href=\"../glossary.html#", "[")
            .replace("\">", "|")
            .replace("</a>", "]")
    }

    #[test]
    fn the_first_mention_of_each_whole_word() {
        for (text, html) in [
            ("A hue, a Hue.", "<p>A [hue|hue], a Hue.</p>"),
            ("Hues and colours", "<p>[hue|Hues] and [colour|colours]</p>"),
            ("huey, hue-less, the hue's", "<p>huey, hue-less, the [hue|hue]'s</p>"),
            ("blue-grey", "<p>[blue-grey|blue-grey]</p>"),
            ("A glass, glasss", "<p>A [glass|glass], glasss</p>"),
            ("Glasses, glasse", "<p>[glass|Glasses], glasse</p>"),
            ("Ihue", "<p>Ihue</p>"),
        ] {
            assert_eq!(marked(text).trim(), html);
        }
    }

    #[test]
    fn a_phrase_of_another_sense_mentions_nothing() {
        for (text, html) in [
            ("A glass of wine, then a glass.", "<p>A glass of wine, then a [glass|glass].</p>"),
            ("Two glasses of wine", "<p>Two [glass|glasses] of wine</p>"),
            ("Window\nglass", "<p>Window\nglass</p>"),
            (
                "The window glass, the windowglass, a window",
                "<p>The window glass, the windowglass, a window</p>",
            ),
        ] {
            assert_eq!(marked(text).trim(), html);
        }
    }

    #[test]
    fn a_term_alone_in_a_cell_is_a_value() {
        let told = marked("| hue | what |\n|---|---|\n| hue | a hue |\n");
        assert!(told.contains("<td>hue</td>") && told.contains("<td>a [hue|hue]</td>"), "{told}");
    }

    #[test]
    fn the_longest_term_wins() {
        assert_eq!(
            marked("The healed\ncolour, the Colour  Index, a healed colour, a colour.").trim(),
            "<p>The [healed|healed\ncolour], the [index|Colour  Index], a healed colour, a [colour|colour].</p>"
        );
    }

    #[test]
    fn a_short_form_in_brackets_is_a_term_too() {
        assert_eq!(marked("The ITA.").trim(), "<p>The [ita|ITA].</p>");
        assert_eq!(
            marked("The individual typology angle (ITA).").trim(),
            "<p>The [ita|individual typology angle (ITA)].</p>"
        );
    }

    #[test]
    fn links_headings_code_and_pictures_are_left_alone() {
        for text in ["# A hue", "[a hue](x)", "`hue`", "    hue", "![a hue](x)", "<https://hue.example>"] {
            assert!(!marked(text).contains('['), "{text}");
        }
        assert_eq!(
            marked("**hue**s *hue*- **hue**").trim(),
            "<p><strong>hue</strong>s <em>hue</em>- <strong>[hue|hue]</strong></p>"
        );
    }

    #[test]
    fn what_is_linked_stays_text() {
        assert_eq!(marked("Say a<b & \"c\" & <").trim(), "<p>Say [odd|a&lt;b &amp; \"c\"] &amp; &lt;</p>");
    }
}
