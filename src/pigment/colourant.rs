//! A colourant: one chemical pigment with its optics and how long it persists.

use crate::colour::Spectrum;
use serde::{Deserialize, Serialize};

/// Kind of a colourant, as chemistry has it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum ColourantClass {
    /// Titanium dioxide and other whites.
    White,
    /// Iron oxide.
    IronOxide,
    /// Chromium oxide.
    ChromiumOxide,
    /// Carbon black.
    Carbon,
    /// Organic pigment.
    Organic,
    /// Other inorganic pigment, such as ultramarine or manganese violet.
    OtherInorganic,
    /// The whole content of a bottle, measured as it is.
    Mixture,
}

impl ColourantClass {
    /// In words.
    pub fn words(self) -> &'static str {
        match self {
            ColourantClass::White => "white",
            ColourantClass::IronOxide => "iron oxide",
            ColourantClass::ChromiumOxide => "chromium oxide",
            ColourantClass::Carbon => "carbon",
            ColourantClass::Organic => "organic",
            ColourantClass::OtherInorganic => "other inorganic",
            ColourantClass::Mixture => "mixture",
        }
    }
}

/// Where a number comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Basis {
    /// Measured by the academy.
    Measured,
    /// Published, with its source in the note.
    Published,
    /// Representative, invented for the demo.
    Representative,
}

/// A rule that restricts a colourant somewhere.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Restriction {
    /// Where: "EU".
    pub place: String,
    /// What the rule says, in short.
    pub rule: String,
    /// Since when, `YYYY-MM-DD`.
    pub since: String,
    /// The rule's name.
    pub source: String,
}

/// One chemical pigment.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Colourant {
    /// Colour Index generic name without spaces: `PR101`. That of a whole measured content is its bottle's id.
    pub id: String,
    /// Colour Index constitution number, such as `77491`; empty where there is none.
    pub ci_number: String,
    /// Chemical name.
    pub name: String,
    /// Kind.
    pub class: ColourantClass,
    /// Absorption per mm at amount 1.
    pub absorption: Spectrum,
    /// Reduced scattering μs' per mm at amount 1.
    pub scattering: Spectrum,
    /// Months after which half of what healed is left.
    pub half_life_months: f64,
    /// How far below its first place it spreads with the years, in mm.
    pub drift_mm: f64,
    /// Where its numbers come from.
    pub basis: Basis,
    /// Remark with the source.
    pub note: String,
    /// Rules that restrict it.
    pub restrictions: Vec<Restriction>,
    /// The measured bottle whose content, or a part of it, this is; `None` for a colourant of the course's own list.
    pub of_bottle: Option<String>,
}

impl Colourant {
    /// Whether it is a black, which its Colour Index generic name says: Pigment Black.
    pub fn is_black(&self) -> bool {
        self.of_bottle.is_none() && self.id.starts_with("PBk")
    }
}
