//! What the terminal can show, and swatches in it.

use crate::colour::{Lab, Srgb};
use crate::healing::Appearance;
use std::io::IsTerminal;

/// Paints swatches where the terminal has true colour, and says them in words everywhere.
#[derive(Debug, Clone, Copy)]
pub(super) struct Painter {
    colour: bool,
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

    /// A swatch: work with the client's skin on both sides of it. Empty where there is no colour.
    pub fn swatch(self, skin: Srgb, work: Srgb) -> String {
        let (skin, work) = ([skin.r, skin.g, skin.b], [work.r, work.g, work.b]);
        let swatch = self.band(&[(skin, 3), (work, 8), (skin, 3)]);
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

    /// Bold text where there is colour.
    pub fn strong(self, text: &str) -> String {
        if self.colour { format!("\x1b[1m{text}\x1b[0m") } else { text.to_owned() }
    }
}

/// L*a*b* in words, with a mark where a screen cannot show it.
pub(super) fn lab_in_words(appearance: &Appearance) -> String {
    let Lab { l, a, b } = appearance.lab;
    let gamut = if appearance.srgb.in_gamut { "" } else { " (beyond sRGB)" };
    format!("L* {l:.1}  a* {a:.1}  b* {b:.1}{gamut}")
}

/// Columns of the terminal, 80 where that is unknown.
pub(super) fn width() -> usize {
    terminal_size::terminal_size()
        .map_or(80, |(terminal_size::Width(columns), _)| usize::from(columns).clamp(20, 100))
}

/// Text broken into lines of the terminal's width, each after `indent` spaces.
pub(super) fn wrapped(text: &str, indent: usize) -> String {
    let most = width().saturating_sub(indent).max(16);
    let mut lines = Vec::new();
    let mut line = String::new();
    for word in text.split_whitespace() {
        if !line.is_empty() && line.chars().count() + 1 + word.chars().count() > most {
            lines.push(std::mem::take(&mut line));
        }
        if !line.is_empty() {
            line.push(' ');
        }
        line.push_str(word);
    }
    lines.push(line);
    lines.iter().map(|line| format!("{:indent$}{line}", "")).collect::<Vec<_>>().join("\n")
}
