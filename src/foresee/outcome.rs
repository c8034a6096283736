//! How sure the answer to a task is.

use super::Task;
use crate::colour::Lab;
use crate::healing::{Case, Outcome, Worlds};
use crate::pigment::Shelf;

impl Task {
    /// Where the colour will likely be, when `expected` is what is foreseen; `None` where no worlds were asked for.
    pub fn outcome(&self, shelf: &Shelf, expected: Lab) -> Option<Outcome> {
        if self.worlds == 0 {
            return None;
        }
        let mut colourants: Vec<usize> = self
            .existing
            .iter()
            .map(|work| &work.paint)
            .chain([&self.paint])
            .flatten()
            .map(|(place, _)| *place)
            .collect();
        colourants.sort_unstable();
        colourants.dedup();
        let case = Case { shelf, skin: &self.skin, placement: &self.placement, colourants: &colourants };
        let worlds = Worlds { count: self.worlds, ..Worlds::default() };
        let asked = Task { search: None, ..self.clone() };
        Some(Outcome::of(&case, &self.spread, worlds, expected, |shelf, world| {
            let there = Task { skin: world.skin, placement: world.placement, ..asked.clone() };
            there.at(shelf, there.months).1.lab
        }))
    }
}
