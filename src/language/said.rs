//! How a language says what the engine finds: readings, words of skins, times, mixes.
//!
//! The engine's own words stay as they are in its JSON, which programs read; what people read is said here.

use super::{Language, Value};
use crate::colour::Lab;
use crate::healing::{HEALED_MONTHS, Reading, Tone};
use crate::pigment::{Colourant, Mix, Restriction, Shelf};
use crate::skin::{Redness, Undertone};

impl Reading {
    /// The reading in a language: "deeper than the skin, neutral brown".
    pub fn said(&self, language: &Language) -> String {
        let depth = self.depth_said(language);
        crate::say!(language, "reading-words", depth = depth, tone = self.tone.said(language))
    }

    /// The depth alone: "deeper than the skin".
    pub fn depth_said(&self, language: &Language) -> String {
        language.say(&format!("reading-depth-{}", self.depth.replace(' ', "-")), &[])
    }

    /// The same with its words in a language; depth and tone stay as programs know them.
    pub fn in_language(self, language: &Language) -> Self {
        Reading { words: self.said(language), ..self }
    }
}

impl Tone {
    /// The tone's word in a language.
    pub fn said(self, language: &Language) -> String {
        language.say(self.message(), &[])
    }

    /// How claims and programs know it, such as `blue-grey`.
    pub fn id(self) -> &'static str {
        self.message().trim_start_matches("reading-tone-")
    }

    fn message(self) -> &'static str {
        match self {
            Tone::Skin => "reading-tone-skin",
            Tone::BlackBlue => "reading-tone-black-blue",
            Tone::BlueGrey => "reading-tone-blue-grey",
            Tone::Grey => "reading-tone-grey",
            Tone::GreenGrey => "reading-tone-green-grey",
            Tone::Ashy => "reading-tone-ashy",
            Tone::Neutral => "reading-tone-neutral",
            Tone::Warm => "reading-tone-warm",
            Tone::Orange => "reading-tone-orange",
            Tone::Salmon => "reading-tone-salmon",
            Tone::Red => "reading-tone-red",
            Tone::PinkViolet => "reading-tone-pink-violet",
            Tone::NearBlack => "reading-tone-near-black",
            Tone::Violet => "reading-tone-violet",
            Tone::BluishRed => "reading-tone-bluish-red",
            Tone::BluishPink => "reading-tone-bluish-pink",
            Tone::Pink => "reading-tone-pink",
            Tone::Rose => "reading-tone-rose",
            Tone::DullRose => "reading-tone-dull-rose",
            Tone::BrownishRed => "reading-tone-brownish-red",
            Tone::BrownishPink => "reading-tone-brownish-pink",
            Tone::ReddishBrown => "reading-tone-reddish-brown",
            Tone::Brown => "reading-tone-brown",
            Tone::GreyishBrown => "reading-tone-greyish-brown",
            Tone::YellowishBrown => "reading-tone-yellowish-brown",
            Tone::Beige => "reading-tone-beige",
        }
    }
}

impl Undertone {
    /// The undertone's word in a language.
    pub fn said(self, language: &Language) -> String {
        language.say(&format!("exercise-undertone-{}", self.word()), &[])
    }
}

impl Redness {
    /// The word of a grade of redness in a language.
    pub fn said(self, language: &Language) -> String {
        language.say(&format!("exercise-redness-{}", self.word()), &[])
    }
}

impl Language {
    /// A mix: "4 drops Dunmere, 1 drop Emberlow".
    pub fn mix(&self, shelf: &Shelf, mix: &Mix) -> String {
        let mut drops: Vec<_> = mix.drops().collect();
        drops.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
        let part = |(id, count): (&str, u32)| {
            let name = shelf.bottle(id).map_or(id, |bottle| bottle.name.as_str());
            crate::say!(self, "exercise-drops", count = count, bottle = name)
        };
        drops.into_iter().map(part).collect::<Vec<_>>().join(", ")
    }

    /// When something is seen, after a placement: "on the day", "after six weeks", "after 3 years".
    pub fn after(&self, months: f64) -> String {
        match months {
            0.0 => self.say("exercise-after-today", &[]),
            m if m == HEALED_MONTHS => self.say("exercise-after-healed", &[]),
            m if m % 12.0 == 0.0 => crate::say!(self, "exercise-after-years", years = self.count(m / 12.0)),
            m => crate::say!(self, "exercise-after-months", months = self.count(m)),
        }
    }

    /// A rule that restricts a colourant, in the message with this id.
    pub fn restriction(&self, id: &str, colourant: &Colourant, rule: &Restriction) -> String {
        let Restriction { place, since, rule, source, .. } = rule;
        let colourant = &colourant.id;
        crate::say!(
            self,
            id,
            colourant = colourant,
            place = place,
            since = since,
            rule = rule,
            source = source
        )
    }

    /// Words in a row: "a", "a and b", "a, b and c".
    pub fn in_a_row(&self, words: &[String]) -> String {
        match words {
            [] => String::new(),
            [one] => one.clone(),
            [first @ .., last] => crate::say!(self, "exercise-row", first = first.join(", "), last = last),
        }
    }

    /// L*, a* and b* as people read them, in words and beside swatches alike: with one decimal.
    pub fn lab(&self, lab: Lab) -> [String; 3] {
        [lab.l, lab.a, lab.b].map(|value| self.decimal(value, 1))
    }

    /// A number that decides about singular and plural where it is whole, and is written with its decimals where it is not.
    pub fn count(&self, number: f64) -> Value {
        if number.fract() == 0.0 { number.into() } else { self.number(number).into() }
    }
}
