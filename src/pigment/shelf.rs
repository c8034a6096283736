//! Everything there is to mix from.

use super::{Bottle, Colourant, Line, Mix, Paint, Restriction};
use crate::colour::Lab;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Colourants, bottles, and the lines that bottles belong to.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Shelf {
    /// Colourants, and contents of measured bottles; a [`Paint`] refers to them by their place here.
    pub colourants: Vec<Colourant>,
    /// Bottles.
    pub bottles: Vec<Bottle>,
    /// Lines of bottles.
    #[serde(default)]
    pub lines: Vec<Line>,
}

impl Shelf {
    /// Place of the colourant with this Colour Index name; what is only a part of a measured bottle does not count.
    pub fn colourant_place(&self, id: &str) -> Option<usize> {
        self.colourants.iter().position(|colourant| colourant.of_bottle.is_none() && colourant.id == id)
    }

    /// The bottle with this id.
    pub fn bottle(&self, id: &str) -> Option<&Bottle> {
        self.bottles.iter().find(|bottle| bottle.id == id)
    }

    /// Bottles in groups: each line with its bottles, then, without a line, those that belong to none; no group is empty.
    pub fn by_line(&self) -> Vec<(Option<&Line>, Vec<&Bottle>)> {
        let of =
            |id: Option<&str>| self.bottles.iter().filter(|bottle| bottle.line.as_deref() == id).collect();
        let lines = self.lines.iter().map(|line| (Some(line), of(Some(&line.id))));
        lines.chain([(None, of(None))]).filter(|(_, bottles): &(_, Vec<_>)| !bottles.is_empty()).collect()
    }

    /// What a mix is made of: amounts of colourants, averaged over its drops. Bottles that are not on the shelf count as
    /// empty.
    pub fn paint_of(&self, mix: &Mix) -> Paint {
        let total = f64::from(mix.total().max(1));
        let mut sum = BTreeMap::new();
        for (id, drops) in mix.drops() {
            for &(place, amount) in self.bottle(id).map_or(&[][..], |bottle| &bottle.recipe) {
                *sum.entry(place).or_insert(0.0) += amount * f64::from(drops) / total;
            }
        }
        sum.into_iter().collect()
    }

    /// Whether a mix holds modifiers that take back what the other does, a warmer and a cooler one or a darker and a lighter one: nobody
    /// in the trade would mix that on purpose.
    pub fn is_at_odds(&self, mix: &Mix) -> bool {
        let modifiers = || mix.drops().filter_map(|(id, _)| self.bottle(id)?.modifier);
        modifiers().any(|one| modifiers().any(|other| other == one.opposite()))
    }

    /// The mix in words: "4 drops Dunmere, 1 drop Emberlow".
    pub fn mix_in_words(&self, mix: &Mix) -> String {
        let mut drops: Vec<_> = mix.drops().collect();
        drops.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
        drops
            .iter()
            .map(|(id, count)| {
                let name = self.bottle(id).map_or(*id, |bottle| bottle.name.as_str());
                format!("{count} {} {name}", if *count == 1 { "drop" } else { "drops" })
            })
            .collect::<Vec<_>>()
            .join(", ")
    }

    /// Rules that restrict any colourant of a mix, with the colourant.
    pub fn restrictions_of(&self, mix: &Mix) -> Vec<(&Colourant, &Restriction)> {
        self.restrictions_in(&self.paint_of(mix))
    }

    /// Rules that restrict any colourant of paint, with the colourant.
    pub fn restrictions_in(&self, paint: &Paint) -> Vec<(&Colourant, &Restriction)> {
        paint
            .iter()
            .flat_map(|&(place, _)| {
                let colourant = &self.colourants[place];
                colourant.restrictions.iter().map(move |rule| (colourant, rule))
            })
            .collect()
    }

    /// The colour of a mix in the bottle: a thick layer of it in clear liquid, under D65.
    pub fn label_colour(&self, mix: &Mix) -> Lab {
        crate::healing::masstone(self, &self.paint_of(mix))
    }
}
