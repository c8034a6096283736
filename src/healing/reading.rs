//! A healed colour in words, relative to the client's skin.

use crate::colour::{Lab, difference};
use serde::Serialize;

/// The tone of healed work, as an eye trained on brows would name it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Tone {
    /// Hardly different from the skin.
    Skin,
    /// Bluish.
    BlueGrey,
    /// Greenish.
    GreenGrey,
    /// Neither blue nor green, and colourless.
    Ashy,
    /// Brown without a lean.
    Neutral,
    /// Brown leaning to gold.
    Warm,
    /// Reddish yellow.
    Orange,
    /// Red.
    Red,
}

impl Tone {
    /// In words.
    pub fn word(self) -> &'static str {
        match self {
            Tone::Skin => "close to the skin",
            Tone::BlueGrey => "blue-grey",
            Tone::GreenGrey => "green-grey",
            Tone::Ashy => "ashy",
            Tone::Neutral => "neutral brown",
            Tone::Warm => "warm brown",
            Tone::Orange => "orange",
            Tone::Red => "red",
        }
    }
}

/// A healed colour in words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Reading {
    /// How much lighter or deeper than the skin.
    pub depth: &'static str,
    /// The tone.
    pub tone: Tone,
    /// Both in one phrase: "deeper than the skin, neutral brown".
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
        let tone = tone_of(work, skin);
        let words = format!("{depth}, {}", tone.word());
        Reading { depth, tone, words }
    }
}

/// The tone, from the work's a* and b* as shares of what the skin would show if it were only shaded to the work's lightness.
///
/// The limits are representative: set so that the words fit the trade's use on skins from phototype I to VI.
fn tone_of(work: Lab, skin: Lab) -> Tone {
    if difference(work, skin) < 1.5 {
        return Tone::Skin;
    }
    let shade = work.l / skin.l.max(1.0);
    let shaded = Lab { l: work.l, a: skin.a.max(4.0) * shade, b: skin.b.max(8.0) * shade };
    let (red, yellow) = (work.a / shaded.a, work.b / shaded.b);
    let strength = work.chroma() / shaded.chroma();
    let hue = libm::atan2(work.b, work.a).to_degrees();
    if red < 0.2 {
        // Faint work is judged by what it takes from the skin, strong work by its own colour.
        let faint = skin.l - work.l < 10.0;
        if work.a < -1.2 {
            Tone::GreenGrey
        } else if yellow < 0.3 || faint && yellow < 0.75 {
            Tone::BlueGrey
        } else if faint {
            Tone::GreenGrey
        } else {
            Tone::Ashy
        }
    } else if yellow < 0.12 && red < 1.0 {
        Tone::BlueGrey
    } else if strength < 0.55 {
        Tone::Ashy
    } else if hue < 26.0 {
        Tone::Red
    } else if hue < 50.0 && strength > if skin.l - work.l < 8.0 { 1.05 } else { 1.2 } {
        Tone::Orange
    } else if strength > 0.95 || red > 1.3 {
        Tone::Warm
    } else {
        Tone::Neutral
    }
}
