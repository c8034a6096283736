//! What the terminal can show, and swatches in it.

use crate::colour::{Lab, Srgb};
use crate::figure::fixed;
use crate::healing::Appearance;
use std::io::IsTerminal;

/// Paints swatches where the terminal has true colour, and says them in words everywhere.
#[derive(Debug, Clone, Copy)]
pub(super) struct Painter {
    colour: bool,
}

/// Columns of a swatch.
const SWATCH: usize = 14;
/// Columns of a label before it.
const LABEL: usize = 18;

/// A colour in a table: what it is, what lies beside it, and what is said of it.
pub(super) struct Row {
    pub label: String,
    /// What is drawn on both sides of it.
    pub beside: Srgb,
    pub seen: Srgb,
    /// Numbers.
    pub said: Vec<String>,
    pub words: String,
}

/// When to use colour.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
pub(super) enum When {
    /// Where the terminal has true colour and NO_COLOR is not set.
    Auto,
    /// Even into a file or a pipe.
    Always,
    /// Words only.
    Never,
}

impl Painter {
    /// A painter for standard output.
    pub fn new(when: When) -> Self {
        let colour = match when {
            When::Always => true,
            When::Never => false,
            When::Auto => {
                std::io::stdout().is_terminal()
                    && !anstyle_query::no_color()
                    && anstyle_query::term_supports_color()
                    && anstyle_query::truecolor()
            }
        };
        Painter { colour }
    }

    /// Whether standard error takes colour, for diagnostics.
    pub fn for_stderr() -> Self {
        let colour = std::io::stderr().is_terminal()
            && !anstyle_query::no_color()
            && anstyle_query::term_supports_color();
        Painter { colour }
    }

    pub fn has_colour(self) -> bool {
        self.colour
    }

    /// A swatch: work with the client's skin on both sides of it; of a place that has an edge, the skin around it. Empty where there is no
    /// colour.
    pub fn swatch(self, beside: Srgb, work: Srgb) -> String {
        let (beside, work) = (bytes(beside), bytes(work));
        let swatch = self.band(&[(beside, 3), (work, SWATCH - 6), (beside, 3)]);
        if swatch.is_empty() { swatch } else { swatch + "  " }
    }

    /// Colours side by side, each so many columns wide. Empty where there is no colour.
    pub fn band(self, cells: &[([u8; 3], usize)]) -> String {
        if !self.colour {
            return String::new();
        }
        let cell = |([r, g, b], columns): &([u8; 3], usize)| {
            format!("\x1b[48;2;{r};{g};{b}m{:columns$}", "", columns = *columns)
        };
        cells.iter().map(cell).collect::<String>() + "\x1b[0m"
    }

    /// A label, a swatch where there is colour, and what is said of it: in one line where the terminal is wide enough, otherwise below
    /// one another.
    pub fn labelled(self, label: &str, beside: Srgb, work: Srgb, said: &[String], words: &str) -> String {
        let swatch = self.swatch(beside, work);
        let swatch_columns = self.swatch_columns();
        let said_columns = said.join("  ").chars().count();
        let wide = 2 + label.chars().count().max(LABEL) + 1 + swatch_columns + said_columns <= width();
        let (mut text, indent) = if wide {
            (format!("  {label:LABEL$} {swatch}{}\n", said.join("  ")), 2 + LABEL + 1)
        } else {
            let mut text = if label.is_empty() { String::new() } else { wrapped(label, 2) + "\n" };
            if !swatch.is_empty() {
                text += &format!("    {}\n", swatch.trim_end());
            }
            (text + &flowed(said, 4) + "\n", 4)
        };
        if !words.is_empty() {
            text += &(wrapped(words, indent) + "\n");
        }
        text
    }

    /// A table: a line a row where there is room for every one of them; otherwise each row as [`Painter::labelled`] has it.
    pub fn rows(self, rows: &[Row]) -> String {
        let columns = |row: &Row| {
            let words = if row.words.is_empty() { 0 } else { 2 + row.words.chars().count() };
            let said = row.said.join("  ").chars().count();
            2 + row.label.chars().count().max(LABEL) + 1 + self.swatch_columns() + said + words
        };
        let room = room();
        let is_table = rows.iter().all(|row| columns(row) <= room);
        let told = rows.iter().map(|Row { label, beside, seen, said, words }| {
            if !is_table {
                return self.labelled(label, *beside, *seen, said, words);
            }
            let gap = if words.is_empty() { "" } else { "  " };
            format!("  {label:LABEL$} {}{}{gap}{words}\n", self.swatch(*beside, *seen), said.join("  "))
        });
        told.collect()
    }

    /// Columns of a swatch with the gap after it.
    fn swatch_columns(self) -> usize {
        if self.colour { SWATCH + 2 } else { 0 }
    }

    /// Bold text where there is colour.
    pub fn strong(self, text: &str) -> String {
        if self.colour { format!("\x1b[1m{text}\x1b[0m") } else { text.to_owned() }
    }
}

/// Red, green and blue.
pub(super) fn bytes(colour: Srgb) -> [u8; 3] {
    [colour.r, colour.g, colour.b]
}

/// L*a*b* in words, in pieces that belong together, with a mark where a screen cannot show it.
pub(super) fn lab_in_pieces(appearance: &Appearance) -> Vec<String> {
    let gamut = if appearance.srgb.in_gamut { "" } else { " (beyond sRGB)" };
    let [l, a, b] = axes(appearance.lab);
    vec![l, a, b + gamut]
}

/// L*, a* and b*, each by its name: with one decimal and a true minus sign, as on every other face.
pub(super) fn axes(Lab { l, a, b }: Lab) -> [String; 3] {
    [("L*", l), ("a*", a), ("b*", b)].map(|(name, value)| format!("{name} {}", fixed(value, 1)))
}

/// Columns of the terminal; those of the environment's COLUMNS where there is no terminal, and 80 where nobody says.
pub(super) fn width() -> usize {
    columns().map_or(80, |columns| columns.clamp(20, 100))
}

/// Columns that a line of a table may have: all of the terminal's; any number where its reader needs it whole ([`fitted`]).
fn room() -> usize {
    if is_fitted(std::io::stdout().is_terminal()) { columns().unwrap_or(80) } else { usize::MAX }
}

fn columns() -> Option<usize> {
    match terminal_size::terminal_size() {
        Some((terminal_size::Width(columns), _)) => Some(usize::from(columns)),
        None => columns_asked_for(),
    }
}

/// The width that the environment's COLUMNS asks for.
fn columns_asked_for() -> Option<usize> {
    std::env::var("COLUMNS").ok().and_then(|columns| columns.parse().ok())
}

/// Text broken into lines of the terminal's width, each after `indent` spaces. A word longer than a line is broken too.
pub(super) fn wrapped(text: &str, indent: usize) -> String {
    let most = width().saturating_sub(indent).max(16);
    let mut lines = Lines { most, between: " ", done: Vec::new(), line: String::new() };
    for word in text.split_whitespace() {
        let mut rest = word;
        while let Some((cut, _)) = rest.char_indices().nth(most) {
            lines.add(&rest[..cut]);
            rest = &rest[cut..];
        }
        lines.add(rest);
    }
    lines.indented(indent)
}

/// A text as its reader needs it: for somebody at a terminal each line too long for it is [`hung`], two spaces deeper than it began; for a program that looks
/// for lines they stay whole, unless COLUMNS asks for a width.
pub(super) fn fitted(text: &str, is_terminal: bool) -> String {
    if !is_fitted(is_terminal) {
        return text.to_owned();
    }
    let fit = |line: &str| match line.chars().count() > width() {
        true => hung(line, indent_of(line) + 2),
        false => line.to_owned(),
    };
    text.split('\n').map(fit).collect::<Vec<_>>().join("\n")
}

/// Whether lines are broken at a width at all.
pub(super) fn is_fitted(is_terminal: bool) -> bool {
    is_terminal || columns_asked_for().is_some()
}

/// A line broken between words at the terminal's width; what follows the first line stands after `indent` spaces. No word is cut, so that a path can be copied.
pub(super) fn hung(line: &str, indent: usize) -> String {
    hung_within(line, indent, width())
}

/// The same within so many columns.
pub(super) fn hung_within(line: &str, indent: usize, columns: usize) -> String {
    let mut text = " ".repeat(indent_of(line));
    let mut column = text.len();
    // Spaces before the next word: as many as there are, where the line goes on.
    let mut gap = 0;
    for word in line.trim().split(char::is_whitespace) {
        if word.is_empty() {
            gap += 1;
            continue;
        }
        let length = word.chars().count();
        if gap > 0 && column + gap + length > columns {
            text += &format!("\n{:indent$}", "");
            column = indent;
        } else {
            text += &" ".repeat(gap);
            column += gap;
        }
        text += word;
        column += length;
        gap = 1;
    }
    text
}

/// Spaces that a line begins with.
fn indent_of(line: &str) -> usize {
    line.len() - line.trim_start_matches(' ').len()
}

/// Pieces two spaces apart, in lines of the terminal's width, each after `indent` spaces. A piece is never broken.
pub(super) fn flowed(pieces: &[String], indent: usize) -> String {
    let most = width().saturating_sub(indent).max(16);
    let mut lines = Lines { most, between: "  ", done: Vec::new(), line: String::new() };
    pieces.iter().for_each(|piece| lines.add(piece));
    lines.indented(indent)
}

/// Lines being filled.
struct Lines {
    most: usize,
    between: &'static str,
    done: Vec<String>,
    line: String,
}

impl Lines {
    fn add(&mut self, piece: &str) {
        let length = self.line.chars().count() + self.between.len() + piece.chars().count();
        if !self.line.is_empty() && length > self.most {
            self.done.push(std::mem::take(&mut self.line));
        }
        if !self.line.is_empty() {
            self.line.push_str(self.between);
        }
        self.line.push_str(piece);
    }

    fn indented(mut self, indent: usize) -> String {
        self.done.push(self.line);
        self.done.iter().map(|line| format!("{:indent$}{line}", "")).collect::<Vec<_>>().join("\n")
    }
}
