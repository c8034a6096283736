//! Numbers about a client or a bottle that nothing computes: they go stale when a bottle or the engine changes.
//!
//! Entry point: [`find`]. A number is one of these when it stands beside the name of a measure (L\*, a\*, b\*, ΔE00, ITA) or is an
//! angle in degrees, in a paragraph that names a client or a bottle. Numbers of no one in particular are left alone.

use super::super::markdown::options;
use pulldown_cmark::{Event, Parser, TagEnd};
use std::ops::Range;

/// Names of measures.
const MEASURES: [&str; 6] = ["ΔE00", "ΔE", "ITA", "L*", "a*", "b*"];

/// Words that may stand between the name of a measure and its number.
const BETWEEN: [&str; 24] = [
    "of", "is", "was", "at", "to", "about", "near", "nearly", "around", "roughly", "only", "below", "above",
    "under", "over", "just", "by", "less", "more", "than", "=", "a", "an", "comes",
];

/// Most words between them.
const MOST_BETWEEN: usize = 3;

/// Stands for code, calls and pictures.
const ELSEWHERE: char = '\u{fffc}';

/// A number that nothing computes.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Bare {
    /// Where it stands, with its measure.
    pub span: Range<usize>,
    /// Whom or what its paragraph names.
    pub about: String,
}

/// Every such number in a page; `calls` are left out, and `names` are those of clients and bottles.
pub(super) fn find(text: &str, calls: &[Range<usize>], names: &[&str]) -> Vec<Bare> {
    let mut found = Vec::new();
    // Most pages need no second look, and a page may be very long.
    if !names.iter().any(|name| text.contains(name)) {
        return found;
    }
    let mut paragraph = Paragraph::default();
    let mut in_code = false;
    for (event, range) in Parser::new_ext(text, options()).into_offset_iter() {
        match event {
            Event::Start(pulldown_cmark::Tag::CodeBlock(_)) => in_code = true,
            Event::End(TagEnd::CodeBlock) => in_code = false,
            Event::Text(said) if !in_code => paragraph.add(&said, range.start, calls),
            Event::Code(_) => paragraph.add(&ELSEWHERE.to_string(), range.start, &[]),
            Event::SoftBreak | Event::HardBreak => paragraph.add(" ", range.start, calls),
            Event::End(TagEnd::TableCell) => paragraph.add("\n", range.end, &[]),
            Event::End(
                TagEnd::Paragraph | TagEnd::Item | TagEnd::TableHead | TagEnd::TableRow | TagEnd::Heading(_),
            ) => {
                found.extend(paragraph.bare_numbers(names));
                paragraph = Paragraph::default();
            }
            _ => {}
        }
    }
    found
}

/// The words of a paragraph, with the place of each piece.
#[derive(Default)]
struct Paragraph {
    said: String,
    /// Where pieces begin: here, and in the page.
    pieces: Vec<(usize, usize)>,
}

impl Paragraph {
    fn add(&mut self, said: &str, at: usize, calls: &[Range<usize>]) {
        self.pieces.push((self.said.len(), at));
        // A piece of text never reaches over a line break, and is as long in the page as here.
        for (offset, c) in said.char_indices() {
            if holds(calls, at + offset) {
                if !self.said.ends_with(ELSEWHERE) {
                    self.said.push(ELSEWHERE);
                }
                self.pieces.push((self.said.len(), at + offset + c.len_utf8()));
            } else {
                self.said.push(c);
            }
        }
    }

    /// Where a place of this paragraph is in the page.
    fn place(&self, at: usize) -> usize {
        let before = self.pieces.partition_point(|(start, _)| *start <= at);
        before.checked_sub(1).map_or(0, |piece| self.pieces[piece].1 + (at - self.pieces[piece].0))
    }

    fn bare_numbers(&self, names: &[&str]) -> Vec<Bare> {
        let Some(about) = names.iter().find(|name| mentions(&self.said, name)) else { return Vec::new() };
        let words = words(&self.said);
        let mut found: Vec<Bare> = Vec::new();
        for (place, (start, word)) in words.iter().enumerate() {
            let span = match measure_at_start(word) {
                // `a* 12`, `an ITA of about 31`, `L*=50`.
                Some(rest) => {
                    number_after(rest, start + word.len(), &words[place + 1..]).map(|end| *start..end)
                }
                // `3.1 ΔE00`.
                None if is_number(word) => {
                    let next = words.get(place + 1);
                    next.filter(|(_, next)| next.starts_with("ΔE")).map(|(at, next)| *start..at + next.len())
                }
                // `31°`.
                None => {
                    let angle = word.split_once('°').is_some_and(|(number, _)| is_number(number));
                    angle.then(|| *start..start + word.len())
                }
            };
            if let Some(span) = span {
                let span = self.place(span.start)..self.place(span.end.saturating_sub(1)) + 1;
                if found.last().is_none_or(|last| last.span.end <= span.start) {
                    found.push(Bare { span, about: (*about).to_owned() });
                }
            }
        }
        found
    }
}

/// Whether one of these ranges, which are in order, holds a place.
fn holds(ranges: &[Range<usize>], at: usize) -> bool {
    let before = ranges.partition_point(|range| range.start <= at);
    before.checked_sub(1).is_some_and(|last| ranges[last].contains(&at))
}

/// Words with their places, without the signs around them; `*` and `°` belong to a word.
fn words(text: &str) -> Vec<(usize, &str)> {
    let is_around = |c: char| "(),.;:?!\"'“”‘’".contains(c);
    let mut words = Vec::new();
    let mut start = 0;
    for piece in text.split(char::is_whitespace) {
        let begun = piece.trim_start_matches(is_around);
        let word = begun.trim_end_matches(is_around);
        if !word.is_empty() {
            words.push((start + piece.len() - begun.len(), word));
        }
        start += piece.len() + text[start + piece.len()..].chars().next().map_or(0, char::len_utf8);
    }
    words
}

/// What follows the name of a measure at the beginning of a word.
fn measure_at_start(word: &str) -> Option<&str> {
    let rest = MEASURES.iter().find_map(|measure| word.strip_prefix(measure))?;
    (!rest.starts_with(char::is_alphabetic)).then_some(rest)
}

/// Where the number of a measure ends, if there is one: in the rest of its word, or a few words on.
fn number_after(rest: &str, end: usize, next: &[(usize, &str)]) -> Option<usize> {
    let rest = rest.trim_start_matches(['=', '≈', ':']);
    if !rest.is_empty() {
        return is_number(rest).then_some(end);
    }
    for (at, word) in next.iter().take(MOST_BETWEEN + 1) {
        if is_number(word.trim_end_matches('°')) {
            return Some(at + word.len());
        }
        if !BETWEEN.contains(word) {
            return None;
        }
    }
    None
}

fn is_number(word: &str) -> bool {
    let plain = word.trim_start_matches(['-', '\u{2212}', '+', '~', '≈']);
    plain.starts_with(|c: char| c.is_ascii_digit())
        && plain.chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | ',' | '–' | '-'))
}

/// Whether a text names this, as a word of its own.
fn mentions(text: &str, name: &str) -> bool {
    let beside = |c: Option<char>| c.is_some_and(char::is_alphanumeric);
    text.match_indices(name).any(|(at, _)| {
        !beside(text[..at].chars().next_back()) && !beside(text[at + name.len()..].chars().next())
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn bare(text: &str) -> Vec<&str> {
        let calls: Vec<Range<usize>> =
            text.find("{{").map(|at| at..text.find("}}").map_or(at, |end| end + 2)).into_iter().collect();
        find(text, &calls, &["Tovi", "Kelderwick"]).iter().map(|bare| &text[bare.span.clone()]).collect()
    }

    #[test]
    fn numbers_about_somebody_are_found() {
        assert_eq!(bare("Tovi's brow heals to an a\\* of 12, and b\\* 7.5."), ["a\\* of 12", "b\\* 7.5"]);
        assert_eq!(
            bare("Kelderwick lies a ΔE00 of\nabout 3.1 away, or 4 ΔE00."),
            ["ΔE00 of\nabout 3.1", "4 ΔE00"]
        );
        assert_eq!(bare("Tovi has an ITA of -12° and an angle of 31°."), ["ITA of -12°", "31°"]);
        assert_eq!(bare("| name | L\\* 50 |\n|---|---|\n| Tovi | ITA 31 |"), ["ITA 31"]);
    }

    #[test]
    fn numbers_of_nobody_and_calls_are_left_alone() {
        for text in [
            "A meter says L\\* 62 and b\\* 18.",
            "Tovi has an a\\* of {{ bare(\"tovi\").a }} there.",
            "Tovi comes back in 6 weeks; L\\* is lightness.",
            "Tovi: `a* = 12`.",
            "# Tovi\n\nThe angle is 31°.",
            "Kelderwickian a\\* of 12",
        ] {
            assert_eq!(bare(text), Vec::<&str>::new(), "{text}");
        }
    }
}
