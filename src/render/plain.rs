//! A colour by itself in plain words, such as "dark red-brown": of bottles, which are seen without skin, and of bare skin.
//!
//! Entry points: [`colour_in_words`], and [`bare_in_words`], which says how light a skin is and nothing that an exercise may ask for.
//! Work in skin is read against the skin around it instead ([`crate::healing::Reading`]). The limits are representative: everyday
//! words have none that all agree on.

use crate::colour::Lab;
use crate::healing::Tone;
use crate::language::Language;
use crate::say;
use crate::skin::Site;

/// Least L* of each word for lightness, darkest last.
const LIGHTNESS: [(f64, &str); 5] =
    [(80.0, "very-light"), (60.0, "light"), (38.0, "middle"), (20.0, "dark"), (0.0, "very-dark")];

/// Chroma below which a colour is called grey, white or black.
const GREYISH: f64 = 5.0;

/// Least L* of each word for bare skin, deepest last.
const SKIN: [(f64, &str); 7] = [
    (70.0, "skin-very-light"),
    (63.0, "skin-light"),
    (56.0, "skin-middle"),
    (48.0, "skin-tan"),
    (39.0, "skin-brown"),
    (30.0, "skin-deep"),
    (0.0, "skin-very-deep"),
];

/// A colour in words: "light orange", "very dark brown".
pub(super) fn colour_in_words(language: &Language, lab: Lab) -> String {
    let lightness = word_at(&LIGHTNESS, lab.l);
    let colour = match (lab.chroma() < GREYISH, lightness) {
        (true, "very-light") => return language.say("colour-white", &[]),
        (true, "very-dark") => return language.say("colour-black", &[]),
        (true, _) => "grey",
        (false, _) => hue(lab),
    };
    say!(language, &format!("colour-{lightness}"), colour = language.say(&format!("colour-{colour}"), &[]))
}

/// A place without work in words: how light the skin is, or the colour's own word where the place has an edge.
pub(crate) fn bare_in_words(language: &Language, site: Site, lab: Lab) -> String {
    if site.has_edge() { Tone::by_itself(lab).said(language) } else { skin_in_words(language, lab) }
}

/// Bare skin in words: how light it is.
fn skin_in_words(language: &Language, lab: Lab) -> String {
    language.say(&format!("colour-{}", word_at(&SKIN, lab.l)), &[])
}

/// What bare skin is called, with the least L* of each word, for scripts that say it themselves.
pub(super) fn skin_words(language: &Language) -> Vec<(f64, String)> {
    SKIN.iter().map(|(least, word)| (*least, language.say(&format!("colour-{word}"), &[]))).collect()
}

fn word_at(words: &[(f64, &'static str)], l: f64) -> &'static str {
    words.iter().find(|(least, _)| l >= *least).or(words.last()).map_or("", |(_, word)| word)
}

/// The name of a hue, as strong and as light as it is: orange that is dark or weak is brown, and pale red is pink.
fn hue(lab: Lab) -> &'static str {
    let is_light = lab.l >= 60.0;
    let is_strong = lab.chroma() >= 38.0;
    let degrees = libm::atan2(lab.b, lab.a).to_degrees().rem_euclid(360.0);
    match degrees {
        d if !(20.0..345.0).contains(&d) => {
            if is_light {
                "pink"
            } else {
                "red"
            }
        }
        d if d < 42.0 => match (is_strong, is_light) {
            (true, false) => "red",
            (true, true) => "coral",
            (false, false) => "red-brown",
            (false, true) => "pink-beige",
        },
        d if d < 72.0 => match (is_strong && lab.l >= 45.0, is_light) {
            (true, _) => "orange",
            (false, false) => "brown",
            (false, true) => "beige",
        },
        d if d < 84.0 => match (is_strong && lab.l >= 55.0, is_light) {
            (true, _) => "golden-yellow",
            (false, false) => "yellow-brown",
            (false, true) => "beige",
        },
        d if d < 110.0 => {
            if lab.l >= 55.0 {
                "yellow"
            } else {
                "olive"
            }
        }
        d if d < 185.0 => "green",
        // In CIELAB blue turns towards violet as it gets darker: ultramarine lies at 299, violet pigments from 302 on.
        d if d < 301.0 => "blue",
        d if d < 325.0 => "violet",
        _ => "purple",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn colours_have_their_everyday_names() {
        let language = Language::of("en");
        for (lab, words) in [
            ([50.0, 60.0, 40.0], "red"),
            ([65.0, 35.0, 60.0], "light orange"),
            ([30.0, 12.0, 15.0], "dark brown"),
            ([28.0, 20.0, 12.0], "dark red-brown"),
            ([45.0, 8.0, 30.0], "yellow-brown"),
            ([12.0, 1.0, -1.0], "near black"),
            ([95.0, 0.0, 1.0], "near white"),
            ([50.0, 0.0, 0.0], "grey"),
            ([85.0, 0.0, 70.0], "very light yellow"),
            ([40.0, -20.0, 10.0], "green"),
            ([35.0, 10.0, -40.0], "dark blue"),
            ([22.0, 16.7, -29.9], "dark blue"),
            ([23.0, 13.9, -18.4], "dark violet"),
        ] {
            assert_eq!(colour_in_words(&language, Lab::new(lab[0], lab[1], lab[2])), words, "{lab:?}");
        }
        // Undertone and redness are for the apprentice to read.
        let said = |a, b| skin_in_words(&language, Lab::new(58.0, a, b));
        assert_eq!(said(12.0, 8.0), said(4.0, 20.0));
    }
}
