//! The drop grid of a drill: everything an apprentice may mix within its limits.

use crate::course::Limits;
use crate::pigment::{Mix, Shelf};
use crate::search::{Grid, with_additions};

/// Every mix of one bottle with none to `modifier_drops` drops of the modifiers, `drops` in all; ordered by bottle, then by
/// modifiers.
pub fn mixes(limits: &Limits) -> Vec<Mix> {
    with_additions(&limits.bottles, &limits.modifiers, limits.drops, limits.most_modifier_drops())
}

/// The same with what each mix is made of.
pub(super) fn grid_of(shelf: &Shelf, limits: &Limits) -> Grid {
    let most = limits.most_modifier_drops();
    Grid::of_additions(shelf, &limits.bottles, &limits.modifiers, limits.drops, most)
}
