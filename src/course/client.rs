//! Clients, what they wish for, and what lies in their skin already.

use super::Technique;
use crate::colour::{Lab, Light};
use crate::healing::{Appearance, Placement, Work};
use crate::language::Language;
use crate::pigment::Mix;
use crate::say;
use crate::skin::{Phototype, Redness, Site, Skin, Undertone};
use serde::{Deserialize, Serialize};
use std::borrow::Cow;

/// An invented person who comes to be tattooed.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct Client {
    /// Unique id.
    pub id: String,
    /// Invented first name.
    pub name: String,
    /// Age in years.
    pub age: u32,
    /// One or two sentences about the person.
    pub about: String,
    /// Fitzpatrick phototype: the skin's answer to sun, not its colour.
    pub phototype: Phototype,
    /// Undertone seen.
    pub undertone: Undertone,
    /// Redness seen.
    pub redness: Redness,
    /// Whether the place is a flat, pale scar; the three words above are of the skin around it.
    #[serde(default)]
    pub scar: bool,
    /// The skin the engine works with at the site, estimated from what stands above.
    pub skin: Skin,
    /// Where the work goes.
    pub site: Site,
    /// Hair, in words.
    pub hair: String,
    /// The wish, in the client's voice.
    pub wish: String,
    /// Id of the goal.
    pub goal: String,
    /// Ids of other goals that the client might have as well: drills that say so draw from them too.
    #[serde(default)]
    pub further_goals: Vec<String>,
    /// Health answers: those that raise a caution, and others, from which they have to be told.
    pub health: Vec<HealthNote>,
    /// Older work, oldest first.
    pub existing: Vec<OldWork>,
}

impl Client {
    /// The skin at the site, were its undertone and redness these.
    pub fn skin_with(&self, undertone: Undertone, redness: Redness) -> Skin {
        skin_at(self.site, Skin::from_evidence(self.phototype, undertone, redness), self.scar)
    }

    /// The skin around the site under a light, where the site has an edge ([`Site::around`]).
    pub fn around(&self, light: Light) -> Option<Appearance> {
        let brow = Skin::from_evidence(self.phototype, self.undertone, self.redness);
        self.site.around(&brow).map(|reflectance| Appearance::of(reflectance, light))
    }

    /// How the youngest of the older works was made.
    pub fn technique_now(&self) -> Technique {
        self.existing.last().map_or_else(Technique::default, |old| old.technique)
    }

    /// Ids of the cautions that the health answers raise.
    pub fn cautions(&self) -> impl Iterator<Item = &str> {
        self.health.iter().filter_map(|health| health.caution.as_deref())
    }

    /// What lies in the skin already, as the engine takes it.
    pub fn works(&self) -> Vec<Work> {
        self.existing.iter().map(|old| old.work.clone()).collect()
    }
}

impl Client {
    /// What an exercise tells of the client in a sentence. Most descriptions name undertone and redness: where those are what is asked
    /// for, there is the age alone.
    pub fn told(&self, language: &Language, skin_is_told: bool) -> Cow<'_, str> {
        if skin_is_told {
            Cow::Borrowed(&self.about)
        } else {
            Cow::Owned(say!(language, "exercise-case-age", age = self.age))
        }
    }
}

/// The skin at a site of a person whose brow has the skin `brow`, or a scar in it.
pub(super) fn skin_at(site: Site, brow: Skin, scar: bool) -> Skin {
    let skin = site.skin_of(brow);
    if scar { skin.scarred() } else { skin }
}

/// A health answer of a client.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct HealthNote {
    /// Id of the caution it raises; none where it stands in nobody's way.
    pub caution: Option<String>,
    /// What the client said.
    pub note: String,
}

/// Older work in a client's skin.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct OldWork {
    /// What it is in the skin, as the engine takes it.
    pub work: Work,
    /// The mix it was made with, where it is known.
    pub mix: Option<Mix>,
    /// Where it lies.
    pub placement: Placement,
    /// How it was made.
    #[serde(default)]
    pub technique: Technique,
    /// What the client tells of it.
    pub note: String,
}

/// A wished healed colour.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct Goal {
    /// Unique id.
    pub id: String,
    /// In words, such as "a soft fair brown".
    pub name: String,
    /// The hair it goes with.
    pub hair: String,
    /// The colour, under D65.
    pub lab: Lab,
    /// Distance in ΔE00 within which the goal counts as reached.
    pub tolerance: f64,
}
