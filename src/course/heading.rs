//! The ids of a page's headings, by which links lead to them.
//!
//! Entry points: [`HeadingIds`], one for each page, and [`plain_text`], which says what a heading reads. Ids are made as mdBook
//! makes them, so that a link to a heading works in both; the loader checks links against them, and the site's pages carry them.

use pulldown_cmark::Event;
use std::collections::{BTreeMap, BTreeSet};

/// Ids that the site's own markup uses on pages with text.
const TAKEN: [&str; 7] = [
    "page_top",
    "page_main",
    "outline_title",
    "brief_objectives",
    "module_lessons",
    "note_title",
    "note_misconceptions",
];

/// Gives the title and the headings of one page their ids, in order.
#[derive(Debug, Clone)]
pub struct HeadingIds {
    given: BTreeSet<String>,
    /// For each id without a number, the number that was given last.
    counts: BTreeMap<String, usize>,
}

impl HeadingIds {
    /// The ids of a page whose title, its first heading, has the id `title`.
    pub fn below(title: &str) -> Self {
        let mut given: BTreeSet<String> = TAKEN.map(str::to_owned).into();
        given.insert(title.to_owned());
        HeadingIds { given, counts: BTreeMap::new() }
    }

    /// The id of a page's title that reads like this.
    pub fn of_title(text: &str) -> String {
        HeadingIds { given: TAKEN.map(str::to_owned).into(), counts: BTreeMap::new() }.next(text)
    }

    /// The id of the next heading, which reads like this: unique on the page.
    pub fn next(&mut self, text: &str) -> String {
        let stem = slug(text);
        let count = self.counts.entry(stem.clone()).or_insert(0);
        let mut id = if *count == 0 { stem.clone() } else { format!("{stem}-{count}") };
        while !self.given.insert(id.clone()) {
            *count += 1;
            id = format!("{stem}-{count}");
        }
        id
    }
}

/// What a piece of Markdown says, without markup.
pub fn plain_text(events: &[Event]) -> String {
    events
        .iter()
        .map(|event| match event {
            Event::Text(text) | Event::Code(text) => text.as_ref(),
            Event::SoftBreak | Event::HardBreak => " ",
            _ => "",
        })
        .collect()
}

/// An id for a heading, made as mdBook makes it.
fn slug(heading: &str) -> String {
    let slug: String = heading
        .trim()
        .chars()
        .filter_map(|c| match c {
            c if c.is_whitespace() => Some('-'),
            c if c.is_alphanumeric() || c == '_' || c == '-' => Some(c),
            _ => None,
        })
        .flat_map(char::to_lowercase)
        .collect();
    if slug.is_empty() { "section".to_owned() } else { slug }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ids_are_unique_and_read_like_their_headings() {
        let mut ids = HeadingIds::below(&HeadingIds::of_title("A title"));
        let headings = [
            "A title",
            "Main part",
            "Main part",
            "Main part-1",
            "Main part",
            "100 % ?",
            "Größe",
            "?",
            "Page_top",
        ];
        assert_eq!(
            headings.map(|heading| ids.next(heading)),
            [
                "a-title-1",
                "main-part",
                "main-part-1",
                "main-part-1-1",
                "main-part-2",
                "100--",
                "größe",
                "section",
                "page_top-1"
            ]
        );
    }
}
