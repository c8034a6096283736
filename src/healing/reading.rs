//! A healed colour in words, relative to the client's skin.

use super::Tone;
use crate::colour::Lab;
use serde::Serialize;

/// A healed colour in words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Reading {
    /// How much lighter or deeper than the skin.
    pub depth: &'static str,
    /// The tone.
    pub tone: Tone,
    /// Both in one phrase: "deeper than the skin, neutral brown". In English, unless an exercise or a page says it in a course's language.
    pub words: String,
}

impl Reading {
    /// Reads `work` on `skin`, both under the same light.
    pub fn of(work: Lab, skin: Lab) -> Self {
        let depth = match skin.l - work.l {
            d if d > 25.0 => "far deeper than the skin",
            d if d > 12.0 => "much deeper than the skin",
            d if d > 5.0 => "deeper than the skin",
            d if d > 1.5 => "a little deeper than the skin",
            d if d >= -1.5 => "as light as the skin",
            d if d >= -5.0 => "a little lighter than the skin",
            _ => "lighter than the skin",
        };
        let tone = Tone::of(work, skin);
        let words = format!("{depth}, {}", tone.word());
        Reading { depth, tone, words }
    }
}
