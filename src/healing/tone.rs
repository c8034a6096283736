//! The tone of work in skin: one word, chosen by where the colour lies against the client's own skin.
//!
//! Entry points: [`Tone::at`] a site, which is [`Tone::of`] where hair or lashes grow. Lips and areolas are no browns gone right or
//! wrong: their colours have plain words of their own ([`plain`](super::plain)). Steps of [`Tone::of`]: shade the skin to the work's lightness, see what the work has done to its red and its yellow,
//! enlarge that where the work is faint, and look the result up in a plane of red and yellow shares.
//!
//! The limits are representative. They were set on 32,000 simulated residuals: carbon black, black iron oxide, red and yellow iron
//! oxide, chromium oxide green, ultramarine, violets and the organics of the demo shelf, alone and in pairs, from thin to dense, one to
//! ten years old, 0.12 to 0.35 mm deep, on phototypes I to VI of every undertone, calm and rosy; and on every bottle of the shelf.
//! `tests/residuals.rs` holds which words each of them may get.

use super::plain::plain;
use crate::colour::{Lab, difference};
use crate::skin::Site;
use serde::Serialize;

/// The tone of work, as an eye trained on brows would name it; from [`Tone::NearBlack`] on, plain words for the colours of lips and areolas,
/// which share `blue-grey`, `grey`, `green-grey` and `red` with brows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Tone {
    /// Hardly different from the skin.
    Skin,
    /// Near black, without warmth.
    BlackBlue,
    /// Bluish.
    BlueGrey,
    /// Without colour of its own.
    Grey,
    /// Greenish.
    GreenGrey,
    /// A brown that has lost its warmth, on the way to grey.
    Ashy,
    /// Brown without a lean.
    Neutral,
    /// Brown leaning to gold or red.
    Warm,
    /// Reddish yellow.
    Orange,
    /// A light, pinkish orange.
    Salmon,
    /// Red.
    Red,
    /// Bluish red.
    PinkViolet,
    /// Hardly any light.
    NearBlack,
    /// More blue than red.
    Violet,
    /// Red with some blue, not light.
    BluishRed,
    /// The same, light.
    BluishPink,
    /// Light red.
    Pink,
    /// Red neither light nor strong.
    Rose,
    /// The same with much grey.
    DullRose,
    /// Red with some brown, not light or strong.
    BrownishRed,
    /// The same, light.
    BrownishPink,
    /// Brown with much red.
    ReddishBrown,
    /// Dark reddish yellow.
    Brown,
    /// The same with much grey.
    GreyishBrown,
    /// Brown with much yellow.
    YellowishBrown,
    /// Light brown.
    Beige,
}

/// ΔE00 below which work cannot be told from the skin beside it.
const HARDLY_SEEN: f64 = 1.5;

/// Work is faint while it differs from the skin by less than this share of the skin's lightness.
const FAINT_SHARE: f64 = 0.31;

/// What work has done to the skin that lies around it. `red` and `yellow` are shares of the a* and b* that the skin would have, were it
/// only shaded to the work's lightness: 1 and 1 is a plain shadow, 0 and 0 is grey.
struct Change {
    red: f64,
    yellow: f64,
    /// Chroma against the shaded skin's.
    strength: f64,
    /// Hue angle in degrees, -180 to 180.
    hue: f64,
    /// Lightness against the skin's: below 1 the work is darker.
    shade: f64,
    /// Red and yellow gained, as shares of what makes work plain to see.
    gain: (f64, f64),
    /// How far faintness was enlarged: 1 for work that is plain to see.
    enlarged: f64,
    /// L* of the skin.
    skin_l: f64,
}

impl Change {
    /// In CIELAB a shadow scales L* + 16, a* and b* alike, above its dark end.
    fn of(work: Lab, skin: Lab) -> Self {
        let shade = (work.l + 16.0) / (skin.l + 16.0);
        // Hardly any skin has less; it keeps the shares finite.
        let (shaded_a, shaded_b) = (skin.a.max(4.0) * shade, skin.b.max(6.0) * shade);
        let (depth, a, b) = (skin.l - work.l, work.a - shaded_a, work.b - shaded_b);
        let distance = libm::sqrt(depth * depth + a * a + b * b);
        let plain = FAINT_SHARE * skin.l.max(1.0);
        let enlarged = if distance < plain { plain / distance.max(1e-9) } else { 1.0 };
        let (a, b) = (a * enlarged, b * enlarged);
        let own = Lab::new(work.l, shaded_a + a, shaded_b + b);
        Change {
            red: own.a / shaded_a,
            yellow: own.b / shaded_b,
            hue: libm::atan2(own.b, own.a).to_degrees(),
            strength: own.chroma() / Lab::new(work.l, shaded_a, shaded_b).chroma(),
            shade,
            gain: (a / plain, b / plain),
            enlarged,
            skin_l: skin.l,
        }
    }
}

impl Tone {
    /// Every tone with its word.
    pub const ALL: [(Tone, &'static str); 26] = [
        (Tone::Skin, "close to the skin"),
        (Tone::BlackBlue, "black-blue"),
        (Tone::BlueGrey, "blue-grey"),
        (Tone::Grey, "grey"),
        (Tone::GreenGrey, "green-grey"),
        (Tone::Ashy, "ashy"),
        (Tone::Neutral, "neutral brown"),
        (Tone::Warm, "warm brown"),
        (Tone::Orange, "orange"),
        (Tone::Salmon, "salmon"),
        (Tone::Red, "red"),
        (Tone::PinkViolet, "pink-violet"),
        (Tone::NearBlack, "near black"),
        (Tone::Violet, "violet"),
        (Tone::BluishRed, "bluish red"),
        (Tone::BluishPink, "bluish pink"),
        (Tone::Pink, "pink"),
        (Tone::Rose, "rose"),
        (Tone::DullRose, "dull rose"),
        (Tone::BrownishRed, "brownish red"),
        (Tone::BrownishPink, "brownish pink"),
        (Tone::ReddishBrown, "reddish brown"),
        (Tone::Brown, "brown"),
        (Tone::GreyishBrown, "greyish brown"),
        (Tone::YellowishBrown, "yellowish brown"),
        (Tone::Beige, "beige"),
    ];

    /// In words.
    pub fn word(self) -> &'static str {
        Tone::ALL[self as usize].1
    }

    /// The tone of `work` at a site that looks like `bare` without it, both under the same light.
    pub fn at(site: Site, work: Lab, bare: Lab) -> Self {
        if site.has_edge() { plain(work, bare) } else { Tone::of(work, bare) }
    }

    /// The plain word of a colour by itself, as of a lip without work.
    pub fn by_itself(colour: Lab) -> Self {
        plain(colour, colour)
    }

    /// The tone of `work` on `skin`, both under the same light, as it is named on brows.
    ///
    /// ```
    /// use healedhue::{colour::Lab, healing::Tone};
    /// let skin = Lab::new(68.2, 7.2, 16.0);
    /// assert_eq!(Tone::of(Lab::new(61.6, 17.2, 18.9), skin), Tone::Orange);
    /// assert_eq!(Tone::of(Lab::new(59.2, 0.8, 7.0), skin), Tone::BlueGrey);
    /// ```
    pub fn of(work: Lab, skin: Lab) -> Self {
        if difference(work, skin) < HARDLY_SEEN {
            return Tone::Skin;
        }
        let change = Change::of(work, skin);
        let Change { red, yellow, strength, hue, shade, gain, enlarged, skin_l } = change;
        // On deep skin melanin takes yellow from every work, so that its loss says less: 0 from L* 38 up, 1 from 30 down.
        let deep = ((38.0 - skin_l) / 8.0).clamp(0.0, 1.0);
        // Plain work must have lost more red than faint work, whose loss was enlarged.
        let least_red = 0.28 + 0.12 * (enlarged - 1.0).min(1.0);
        if red < least_red || yellow < 0.15 && red < 0.6 {
            return change.cold();
        }
        let violet = 0.58 - 2.5 * (0.93 - shade).max(0.0) - 0.2 * (red - 1.0).max(0.0) - 0.29 * deep;
        // On deep skin black leaves more of the red, and browns do too: the border lies higher there.
        let ashy_red = 0.37 + 0.11 * ((46.0 - skin_l) / 6.0).clamp(0.0, 1.0) - 0.07 * deep;
        let (more_red, more_yellow) = gain;
        let gained = libm::sqrt(more_red * more_red + more_yellow * more_yellow);
        if yellow < violet && yellow < 0.8 * red - 0.5 * (0.7 - red).max(0.0) {
            Tone::PinkViolet
        } else if more_red > 0.287 && hue < 50.0 || more_red > 0.08 && more_yellow < 0.0 && gained > 0.68 {
            change.red()
        } else if more_red > 0.2 || more_red > 0.03 && gained > 0.55 {
            Tone::Warm
        } else if red < (least_red + 0.05).max(ashy_red)
            || strength < 0.42 - 0.12 * deep
            || yellow < violet + 0.05
            || yellow < 0.3
        {
            Tone::Ashy
        } else if strength > 0.95 || red > 1.3 {
            Tone::Warm
        } else {
            Tone::Neutral
        }
    }
}

impl Change {
    /// Work that has lost the skin's red.
    fn cold(&self) -> Tone {
        let darker = self.shade < 1.0;
        // Black takes about half as much of the yellow as of the red from middle skin, more from light and from deep skin; green takes
        // less.
        let green = 0.43 + 0.01 * (self.skin_l - 60.0).max(0.0) + 0.009 * (51.0 - self.skin_l).max(0.0);
        // Faint green and deep black look much alike; the word green waits until red is all but gone.
        let plain_red = 1.0 - (1.0 - self.red) / self.enlarged;
        let green = green - 0.12 * (plain_red / 0.08).clamp(0.0, 1.0);
        if darker && self.red < 0.1 && 1.0 - self.yellow < green * (1.0 - self.red) {
            Tone::GreenGrey
        } else if self.shade < 0.74 {
            Tone::BlackBlue
        } else if darker && (self.red < -0.1 || self.yellow < 0.2) {
            Tone::BlueGrey
        } else {
            Tone::Grey
        }
    }

    /// Work that has gained red.
    fn red(&self) -> Tone {
        let light = self.shade - 0.92;
        if light > 0.0 && self.yellow > 0.55 && self.yellow < 0.95 + 6.0 * light {
            Tone::Salmon
        } else if self.yellow > 0.80 - (0.86 - self.shade).max(0.0) {
            Tone::Orange
        } else {
            Tone::Red
        }
    }
}
