//! Plain words for the colours of lips and areolas: what anybody would call such a colour, not how far a brown has gone astray.
//!
//! Entry point: [`plain`]. Steps: colours with hardly any chroma are greys; the others are named by hue, and within a hue by how light,
//! how strong and how grey they are.
//!
//! The limits are representative: everyday words have none that all agree on. They follow the order that systematic naming has (pink is a
//! light red, brown a dark orange, rose and beige lie between them and grey; from memory), and were set by looking at every bottle of the
//! demo shelf in the lips and areolas of its clients, on the day and up to eight years later.

use super::Tone;
use crate::colour::Lab;

/// Chroma below which a colour is a grey.
const GREY: f64 = 6.0;
/// Chroma over lightness below which a red, and a brown, that is not light is dulled by grey: the darker, the less chroma it takes to be
/// seen, and brown is a dull colour anyway.
const DULL_RED: f64 = 0.29;
const DULL_BROWN: f64 = 0.24;
/// Least L* of what is too light to look dulled or brown.
const LIGHT: f64 = 60.0;
/// Share of the yellow of the place without work below which a grey looks blue there: the eye takes the lip around it for its white.
const BLUE_BESIDE: f64 = 0.15;

/// The word for `work` at a place that looks like `bare` without it.
pub(super) fn plain(work: Lab, bare: Lab) -> Tone {
    let l = work.l;
    // Degrees from red: below 0 towards blue, above 0 towards yellow.
    let hue = libm::atan2(work.b, work.a).to_degrees();
    if work.chroma() < GREY || !(-75.0..105.0).contains(&hue) {
        return grey(work, bare);
    }
    let dull = |share: f64| l < LIGHT && work.chroma() < share * l;
    let strong = work.chroma() >= 32.0;
    match hue {
        h if h < -12.0 => Tone::Violet,
        h if h < 32.0 && dull(DULL_RED) => Tone::DullRose,
        _ if dull(DULL_BROWN) => Tone::GreyishBrown,
        h if h < 8.0 && l < 50.0 => Tone::BluishRed,
        h if h < 8.0 => Tone::BluishPink,
        h if h < 30.0 && l >= 52.0 => Tone::Pink,
        h if h < 24.0 && (strong || l < 36.0) => Tone::Red,
        h if h < 24.0 => Tone::Rose,
        h if h < 30.0 => Tone::BrownishRed,
        h if h < 46.0 && strong && l < LIGHT => Tone::BrownishRed,
        h if h < 46.0 && l >= 54.0 => Tone::BrownishPink,
        h if h < 46.0 => Tone::ReddishBrown,
        h if h < 78.0 && l < LIGHT => Tone::Brown,
        _ if l >= LIGHT => Tone::Beige,
        _ => Tone::YellowishBrown,
    }
}

/// The word for a colour with hardly any chroma, or with a hue that no lip has.
fn grey(work: Lab, bare: Lab) -> Tone {
    let Lab { l, a, b } = work;
    let green = a < -2.0 && b > -2.0 || a < -0.5 && b > 0.5;
    if l < 22.0 {
        Tone::NearBlack
    } else if green {
        Tone::GreenGrey
    } else if b < BLUE_BESIDE * bare.b {
        Tone::BlueGrey
    } else {
        Tone::Grey
    }
}
