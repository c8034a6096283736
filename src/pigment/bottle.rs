//! Bottles and mixes of them.

use crate::skin::Site;
use serde::{Deserialize, Serialize};

/// What a modifier does to a mix.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Modifier {
    /// Towards orange.
    Warmer,
    /// Towards green.
    Cooler,
    /// Towards black.
    Darker,
    /// Towards white.
    Lighter,
}

impl Modifier {
    /// What takes back what this one does.
    pub fn opposite(self) -> Self {
        match self {
            Modifier::Warmer => Modifier::Cooler,
            Modifier::Cooler => Modifier::Warmer,
            Modifier::Darker => Modifier::Lighter,
            Modifier::Lighter => Modifier::Darker,
        }
    }

    /// In words.
    pub fn word(self) -> &'static str {
        match self {
            Modifier::Warmer => "warmer",
            Modifier::Cooler => "cooler",
            Modifier::Darker => "darker",
            Modifier::Lighter => "lighter",
        }
    }
}

/// A line of bottles: those that one maker builds on the same chemistry.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Line {
    /// Unique id.
    pub id: String,
    /// Name on every label of the line.
    pub name: String,
    /// What its bottles have in common, in a sentence or two.
    pub about: String,
}

/// What one buys: a recipe of colourants.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Bottle {
    /// Unique id.
    pub id: String,
    /// Name on the label.
    pub name: String,
    /// One sentence.
    pub about: String,
    /// Colourants by their place on the shelf, with the amount of each in a drop of this bottle. Those of a measured bottle are its
    /// own ([`Shelf::add_measured`](super::Shelf::add_measured)).
    pub recipe: Paint,
    /// What it modifies, for a modifier.
    pub modifier: Option<Modifier>,
    /// Id of the line it belongs to, if any.
    #[serde(default)]
    pub line: Option<String>,
    /// Sites it is meant for; none stands for every site.
    #[serde(default)]
    pub sites: Vec<Site>,
}

impl Bottle {
    /// Whether it is meant for this site.
    pub fn is_meant_for(&self, site: Site) -> bool {
        self.sites.is_empty() || self.sites.contains(&site)
    }

    /// Share of each colourant in the recipe, by its place on the shelf, the most first; all of them add up to 1.
    pub fn shares(&self) -> Vec<(usize, f64)> {
        let whole: f64 = self.recipe.iter().map(|(_, amount)| amount).sum();
        let mut shares: Vec<(usize, f64)> =
            self.recipe.iter().map(|&(place, amount)| (place, amount / whole)).collect();
        shares.sort_by(|(_, one), (_, other)| other.total_cmp(one));
        shares
    }
}

/// Amounts of colourants, by their place on the shelf, in rising order of place, none zero.
pub type Paint = Vec<(usize, f64)>;

/// Bottles with whole drops, ordered by bottle id, none zero.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Mix(Vec<(String, u32)>);

impl Mix {
    /// A mix of these drops; drops of one bottle named twice are added up, empty entries left out.
    pub fn new(drops: impl IntoIterator<Item = (String, u32)>) -> Self {
        let mut sum = std::collections::BTreeMap::new();
        for (bottle, count) in drops {
            *sum.entry(bottle).or_insert(0) += count;
        }
        Mix(sum.into_iter().filter(|(_, count)| *count > 0).collect())
    }

    /// Bottle ids with their drops.
    pub fn drops(&self) -> impl Iterator<Item = (&str, u32)> {
        self.0.iter().map(|(bottle, count)| (bottle.as_str(), *count))
    }

    /// Drops in all.
    pub fn total(&self) -> u32 {
        self.0.iter().map(|(_, count)| count).sum()
    }
}
