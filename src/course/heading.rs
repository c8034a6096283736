//! The ids of a page's headings, by which links lead to them.
//!
//! Entry point: [`HeadingIds`], one for each page. Ids are made as mdBook makes them, so that a link to a heading works in both;
//! the loader checks links against them and the site's pages carry them.

use super::read::markdown::options;
use pulldown_cmark::{Event, Parser, Tag, TagEnd};
use std::collections::BTreeSet;

/// Ids that the site's own markup uses on pages with text.
const TAKEN: [&str; 5] = ["page_top", "page_main", "outline_title", "brief_objectives", "module_lessons"];

/// Gives the headings of one page their ids, in order.
#[derive(Debug, Clone)]
pub struct HeadingIds {
    given: BTreeSet<String>,
}

impl HeadingIds {
    /// The ids of a page whose title has the id `title`.
    pub fn below(title: &str) -> Self {
        let mut given: BTreeSet<String> = TAKEN.map(str::to_owned).into();
        given.insert(title.to_owned());
        HeadingIds { given }
    }

    /// The id of a page's title that reads like this.
    pub fn of_title(text: &str) -> String {
        HeadingIds { given: TAKEN.map(str::to_owned).into() }.next(text)
    }

    /// The id of the next heading, which reads like this: unique on the page.
    pub fn next(&mut self, text: &str) -> String {
        let stem = slug(text);
        let mut id = stem.clone();
        let mut count = 0;
        while !self.given.insert(id.clone()) {
            count += 1;
            id = format!("{stem}-{count}");
        }
        id
    }

    /// Gives ids to every heading of a piece of the page's text, and returns them.
    pub(crate) fn of_text(&mut self, text: &str) -> Vec<String> {
        let mut ids = Vec::new();
        let mut heading: Option<Vec<Event>> = None;
        for event in Parser::new_ext(text, options()) {
            match event {
                Event::Start(Tag::Heading { .. }) => heading = Some(Vec::new()),
                Event::End(TagEnd::Heading(_)) => {
                    if let Some(events) = heading.take() {
                        ids.push(self.next(&plain_text(&events)));
                    }
                }
                event => {
                    if let Some(events) = &mut heading {
                        events.push(event);
                    }
                }
            }
        }
        ids
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
        let mut ids = HeadingIds::below(&HeadingIds::of_title("A *title*"));
        let text = "# A title\n## `Main` *part*\n## Main part\n## 100 % ?\n## Größe\n## ?\n## Page_top";
        assert_eq!(
            ids.of_text(text),
            ["a-title-1", "main-part", "main-part-1", "100--", "größe", "section", "page_top-1"]
        );
    }

    #[test]
    fn every_piece_of_a_page_counts() {
        let mut ids = HeadingIds::below("welcome");
        assert_eq!(ids.of_text("## Why"), ["why"]);
        assert_eq!(ids.of_text("## Welcome\n\n## Why"), ["welcome-1", "why-1"]);
    }
}
