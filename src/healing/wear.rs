//! What wears work out faster or slower than time alone: sun, oil of the skin, and how it is looked after while it heals.
//!
//! Entry point: [`Wear`]. That sun and oily skin shorten the life of cosmetic tattoos, organics above all, that oily skin and
//! picked crusts lose colour while it heals, and that shallow work suffers most, is common practice, no source. Every size below is
//! representative, invented for the demo. The default of each changes nothing at all.

use super::time::{retention, unhealed};
use crate::pigment::{Colourant, ColourantClass};
use serde::{Deserialize, Serialize};

/// How much sun the work gets, year in, year out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Sun {
    /// Covered or always protected.
    Sheltered,
    /// What half-lives are stated for.
    #[default]
    Everyday,
    /// Outdoors most days, little protection.
    Outdoors,
}

/// How oily the skin is at the site.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Oil {
    /// Dry.
    Dry,
    /// What half-lives are stated for.
    #[default]
    Balanced,
    /// Oily.
    Oily,
}

/// How the work is looked after while it heals.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Aftercare {
    /// As advised.
    #[default]
    Followed,
    /// Crusts picked or soaked off.
    Neglected,
}

impl Sun {
    /// Every grade with its word.
    pub const ALL: [(Sun, &'static str); 3] =
        [(Sun::Sheltered, "sheltered"), (Sun::Everyday, "everyday"), (Sun::Outdoors, "outdoors")];

    /// Word in files and on screens.
    pub fn word(self) -> &'static str {
        Sun::ALL[self as usize].1
    }

    /// What it adds to the rate of fading of a colourant that light destroys easily (representative).
    fn rate(self) -> f64 {
        [-0.25, 0.0, 0.6][self as usize]
    }
}

impl Oil {
    /// Every grade with its word.
    pub const ALL: [(Oil, &'static str); 3] =
        [(Oil::Dry, "dry"), (Oil::Balanced, "balanced"), (Oil::Oily, "oily")];

    /// Word in files and on screens.
    pub fn word(self) -> &'static str {
        Oil::ALL[self as usize].1
    }

    /// What it adds to the rate of fading of every colourant (representative).
    fn rate(self) -> f64 {
        [-0.05, 0.0, 0.25][self as usize]
    }

    /// Share of the colour lost while the skin heals (representative).
    fn loss(self) -> f64 {
        [0.0, 0.0, 0.12][self as usize]
    }
}

impl Aftercare {
    /// Both grades with their words.
    pub const ALL: [(Aftercare, &'static str); 2] =
        [(Aftercare::Followed, "followed"), (Aftercare::Neglected, "neglected")];

    /// Word in files and on screens.
    pub fn word(self) -> &'static str {
        Aftercare::ALL[self as usize].1
    }

    /// Share of the colour lost while the skin heals (representative).
    fn loss(self) -> f64 {
        [0.0, 0.2][self as usize]
    }
}

/// What light does to a colourant of this kind, against an organic one (representative): oxides, carbon and titanium white are
/// known as lightfast.
fn light_sensitivity(class: ColourantClass) -> f64 {
    match class {
        ColourantClass::Organic => 1.0,
        // What is in a bottle measured as a whole is not known: between oxides and organics.
        ColourantClass::OtherInorganic | ColourantClass::Mixture => 0.5,
        ColourantClass::IronOxide => 0.3,
        ColourantClass::ChromiumOxide => 0.2,
        ColourantClass::Carbon | ColourantClass::White => 0.1,
    }
}

/// Depth at which wear acts as stated: the usual one.
const USUAL_DEPTH_MM: f64 = 0.12;
/// Depth over which its action falls to 37% (representative; about as far as blue light gets into skin).
const REACH_MM: f64 = 0.3;

/// How much a placement whose top lies this deep is exposed to sun, oil and picking: 1 at the usual depth, more above it, less
/// below.
fn exposure(depth_mm: f64) -> f64 {
    libm::exp((USUAL_DEPTH_MM - depth_mm) / REACH_MM)
}

/// What wears all work on one client, old and new.
///
/// Shallow work is hit twice. What lies within the epidermis is gone after six weeks whatever is written here. What lies below it
/// wears the more the shallower it is: sun, oil and neglect act on it in proportion to how exposed it is.
///
/// ```
/// use healedhue::healing::{Oil, Sun, Wear};
/// assert_eq!(Wear::default(), Wear { sun: Sun::Everyday, oil: Oil::Balanced, ..Wear::default() });
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Wear {
    /// Sun.
    pub sun: Sun,
    /// Oil.
    pub oil: Oil,
    /// Care while it heals.
    pub aftercare: Aftercare,
}

impl Wear {
    /// Share of a colourant that is left this many months after it was placed with its top at `depth_mm`. Falls with time under
    /// every wear; with the default it is exactly [`retention`].
    pub fn retention(&self, colourant: &Colourant, depth_mm: f64, months: f64) -> f64 {
        let exposure = exposure(depth_mm);
        let wear = self.sun.rate() * light_sensitivity(colourant.class) + self.oil.rate();
        // However sheltered, a colourant fades at least half as fast as it would every day.
        let rate = 1.0 + (exposure * wear).max(-0.5);
        let lost = |share: f64| 1.0 - (share * exposure).min(0.9) * (1.0 - unhealed(months));
        retention(colourant, months * rate) * lost(self.oil.loss()) * lost(self.aftercare.loss())
    }

    /// In words, for example "outdoors, oily skin, aftercare neglected"; empty for the default.
    pub fn words(&self) -> String {
        let mut words = Vec::new();
        if self.sun != Sun::default() {
            words.push(format!("sun: {}", self.sun.word()));
        }
        if self.oil != Oil::default() {
            words.push(format!("{} skin", self.oil.word()));
        }
        if self.aftercare != Aftercare::default() {
            words.push(format!("aftercare {}", self.aftercare.word()));
        }
        words.join(", ")
    }
}
