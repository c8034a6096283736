//! Skin from what one sees and asks: phototype, undertone and redness, each a word.
//!
//! The numbers are representative, invented to give plausible faces: a phototype is the skin's answer to sun and not a
//! colour, so the estimate is no better than a picture of a typical person. They lie among those that this model fits to the
//! forearms of 50 people (NIST, Cooksey, Allen and Tsai 2017): median melanin 0.021, blood 0.010, oxygenation 0.61, scattering
//! 1.7, background 0.3, vessel radius 0.002 mm.

use super::Skin;
use serde::{Deserialize, Serialize};

/// Fitzpatrick phototype.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[allow(missing_docs)]
pub enum Phototype {
    I,
    II,
    III,
    IV,
    V,
    VI,
}

/// Undertone seen under the surface colour.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Undertone {
    /// Pinkish.
    Cool,
    /// Neither.
    #[default]
    Neutral,
    /// Golden.
    Warm,
    /// Greenish yellow.
    Olive,
}

/// Redness: how much blood shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Redness {
    /// Little.
    #[default]
    Calm,
    /// Some.
    Rosy,
    /// Much.
    Flushed,
    /// Very much: dense visible vessels.
    Ruddy,
}

impl Phototype {
    /// Every phototype with its numeral.
    pub const ALL: [(Phototype, &'static str); 6] = [
        (Phototype::I, "I"),
        (Phototype::II, "II"),
        (Phototype::III, "III"),
        (Phototype::IV, "IV"),
        (Phototype::V, "V"),
        (Phototype::VI, "VI"),
    ];

    /// Roman numeral.
    pub fn word(self) -> &'static str {
        Phototype::ALL[self as usize].1
    }

    /// Typical volume fraction of melanosomes in the epidermis (representative).
    fn melanin(self) -> f64 {
        [0.010, 0.020, 0.038, 0.072, 0.14, 0.28][self as usize]
    }
}

impl Undertone {
    /// Every undertone with its word.
    pub const ALL: [(Undertone, &'static str); 4] = [
        (Undertone::Cool, "cool"),
        (Undertone::Neutral, "neutral"),
        (Undertone::Warm, "warm"),
        (Undertone::Olive, "olive"),
    ];

    /// Word in files and on screens.
    pub fn word(self) -> &'static str {
        Undertone::ALL[self as usize].1
    }
}

impl Redness {
    /// Every grade with its word.
    pub const ALL: [(Redness, &'static str); 4] = [
        (Redness::Calm, "calm"),
        (Redness::Rosy, "rosy"),
        (Redness::Flushed, "flushed"),
        (Redness::Ruddy, "ruddy"),
    ];

    /// Word in files and on screens.
    pub fn word(self) -> &'static str {
        Redness::ALL[self as usize].1
    }
}

impl Skin {
    /// A typical person of this phototype, undertone and redness (representative).
    pub fn from_evidence(phototype: Phototype, undertone: Undertone, redness: Redness) -> Skin {
        let blood = [0.005, 0.010, 0.018, 0.030][redness as usize];
        let (background, oxygenation, blood_factor) = match undertone {
            Undertone::Cool => (0.3, 0.65, 1.15),
            Undertone::Neutral => (0.5, 0.65, 1.0),
            Undertone::Warm => (1.0, 0.7, 0.9),
            Undertone::Olive => (1.3, 0.45, 0.75),
        };
        Skin {
            melanin: phototype.melanin(),
            blood: blood * blood_factor,
            oxygenation,
            scattering: 1.2,
            background,
            vessel_radius_mm: 0.005,
        }
    }
}
