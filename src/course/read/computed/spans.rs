//! Where calls stand in a page: pairs of double braces in its text, but not in code.
//!
//! Entry point: [`find`].

use super::super::markdown::options;
use crate::course::source::Source;
use pulldown_cmark::{Event, Parser, Tag};
use std::ops::Range;

/// A pair of double braces.
#[derive(Debug)]
pub(super) struct Span {
    /// The whole call, braces included.
    pub whole: Range<usize>,
    /// What stands between the braces, without space around it; nothing where the second pair is missing.
    pub inside: Option<Range<usize>>,
    /// Whether it stands in a heading.
    pub in_heading: bool,
}

/// Every call of a page, in order.
pub(super) fn find(source: &Source) -> Vec<Span> {
    let text = source.text.as_str();
    if !text.contains("{{") {
        return Vec::new();
    }
    let (mut code, mut headings) = (Vec::new(), Vec::new());
    for (event, range) in Parser::new_ext(text, options()).into_offset_iter() {
        match event {
            Event::Code(_) | Event::Html(_) | Event::InlineHtml(_) | Event::Start(Tag::CodeBlock(_)) => {
                code.push(range);
            }
            Event::Start(Tag::Heading { .. }) => headings.push(range),
            _ => {}
        }
    }
    let mut spans = Vec::new();
    let mut from = 0;
    while let Some(at) = text[from..].find("{{").map(|found| from + found) {
        if let Some(range) = holder(&code, at) {
            from = range.end.max(at + 2);
            continue;
        }
        from = at + 2;
        if text[..at].ends_with('\\') {
            continue;
        }
        let paragraph = &text[from..from + end_of_paragraph(&text[from..])];
        let (whole, inside) = match paragraph.find("}}") {
            Some(length) => {
                let said = &paragraph[..length];
                let start = from + (said.len() - said.trim_start().len());
                let inside = start..start + said.trim().len();
                from += length + 2;
                (at..from, Some(inside))
            }
            None => (at..source.end_of_line(at), None),
        };
        let in_heading = holder(&headings, at).is_some();
        spans.push(Span { whole, inside, in_heading });
    }
    spans
}

/// The one of these ranges, which are in order, that holds a place.
fn holder(ranges: &[Range<usize>], at: usize) -> Option<&Range<usize>> {
    let before = ranges.partition_point(|range| range.start <= at);
    ranges[..before].last().filter(|range| range.contains(&at))
}

/// Where the first empty line begins, or the text ends.
fn end_of_paragraph(text: &str) -> usize {
    let mut at = 0;
    for line in text.split_inclusive('\n') {
        if at > 0 && line.trim().is_empty() {
            return at;
        }
        at += line.len();
    }
    text.len()
}
