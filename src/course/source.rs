//! The text of a course file, and places in it.

use std::ops::Range;
use std::sync::Arc;

/// The text of one file. Offsets into it are in bytes; lines and columns are worked out when a place is reported.
#[derive(Debug)]
pub(crate) struct Source {
    /// Path relative to the course folder, with `/`.
    pub path: String,
    /// The text, without a byte order mark.
    pub text: String,
    /// Offsets at which lines begin.
    lines: Vec<usize>,
    /// How many characters begin before each whole multiple of [`STEP`]: a file may be one long line, and hold many problems.
    characters: Vec<usize>,
}

/// Bytes between two counts of characters.
const STEP: usize = 1024;

impl Source {
    /// A file's text, without a byte order mark.
    pub fn new(path: &str, text: &str) -> Arc<Self> {
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        let lines =
            std::iter::once(0).chain(text.match_indices('\n').map(|(newline, _)| newline + 1)).collect();
        let mut before = 0;
        let steps = text.as_bytes().chunks(STEP);
        let characters = steps.map(|step| {
            let here = before;
            before += step.iter().filter(|byte| begins_character(**byte)).count();
            here
        });
        let characters = characters.collect();
        Arc::new(Source { path: path.to_owned(), text: text.to_owned(), lines, characters })
    }

    /// Line and column of an offset, both from 1; columns count characters.
    pub fn line_and_column(&self, offset: usize) -> (usize, usize) {
        let offset = self.floor(offset);
        let line = self.lines.partition_point(|start| *start <= offset);
        (line, self.characters_before(offset) - self.characters_before(self.lines[line - 1]) + 1)
    }

    /// How many characters begin before an offset.
    fn characters_before(&self, offset: usize) -> usize {
        let step = (offset / STEP).min(self.characters.len().saturating_sub(1));
        let counted = self.characters.get(step).copied().unwrap_or(0);
        let rest = &self.text.as_bytes()[step * STEP..offset];
        counted + rest.iter().filter(|byte| begins_character(**byte)).count()
    }

    /// Offset of the beginning of the line that holds `offset`.
    pub fn start_of_line(&self, offset: usize) -> usize {
        self.lines[self.line_and_column(offset).0 - 1]
    }

    /// Offset of the end of the line that holds `offset`, without its line break.
    pub fn end_of_line(&self, offset: usize) -> usize {
        let offset = self.floor(offset);
        let rest = &self.text[offset..];
        offset + rest.find(['\n', '\r']).unwrap_or(rest.len())
    }

    /// Offset of a line and a column, both from 1; `None` where the text has no such line. A column beyond the line's end is its end.
    pub fn offset_of(&self, line: usize, column: usize) -> Option<usize> {
        let start = *self.lines.get(line.checked_sub(1)?)?;
        let end = self.end_of_line(start);
        let place = self.text[start..end].char_indices().nth(column.saturating_sub(1));
        Some(place.map_or(end, |(offset, _)| start + offset))
    }

    /// The nearest offset at or before `offset` that begins a character.
    fn floor(&self, offset: usize) -> usize {
        let mut offset = offset.min(self.text.len());
        while !self.text.is_char_boundary(offset) {
            offset -= 1;
        }
        offset
    }
}

/// Whether a byte of UTF-8 begins a character.
fn begins_character(byte: u8) -> bool {
    byte & 0b1100_0000 != 0b1000_0000
}

/// A stretch of a file.
#[derive(Debug, Clone)]
pub(crate) struct Place {
    /// The file.
    pub source: Arc<Source>,
    /// Byte offsets into its text.
    pub span: Range<usize>,
}

impl Place {
    /// The stretch `span` of `source`, kept within the text and to whole characters.
    pub fn new(source: &Arc<Source>, span: Range<usize>) -> Self {
        let start = source.floor(span.start);
        let end = source.floor(span.end).max(start);
        Place { source: Arc::clone(source), span: start..end }
    }

    /// The first character of a file.
    pub fn start_of(source: &Arc<Source>) -> Self {
        Place::new(source, 0..0)
    }

    /// Line and column, both from 1.
    pub fn line_and_column(&self) -> (usize, usize) {
        self.source.line_and_column(self.span.start)
    }

    /// `path:line:column`.
    pub fn in_words(&self) -> String {
        let (line, column) = self.line_and_column();
        format!("{}:{line}:{column}", self.source.path)
    }
}

/// A value with the place where it was written.
#[derive(Debug, Clone)]
pub(crate) struct At<T> {
    /// The value.
    pub value: T,
    /// Where it was written.
    pub place: Place,
}

impl<T> At<T> {
    /// A value written at `place`.
    pub fn new(value: T, place: Place) -> Self {
        At { value, place }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_count_characters_in_lines_of_any_length() {
        for line in ["", "a", "é", "aé—𝄞"].map(|piece| piece.repeat(700)) {
            for before in ["", "\n", "é\r\n"] {
                let source = Source::new("x", &format!("{before}{line}\nlast"));
                let first = before.len();
                for (at, _) in line.char_indices().chain([(line.len(), ' ')]) {
                    let expected = (before.lines().count() + 1, line[..at].chars().count() + 1);
                    assert_eq!(source.line_and_column(first + at), expected);
                    assert_eq!(source.offset_of(expected.0, expected.1), Some(first + at));
                }
                assert_eq!(source.line_and_column(usize::MAX).1, 5);
                assert_eq!(source.offset_of(source.lines.len() + 1, 1), None);
            }
        }
    }
}
