//! The drop grid of a drill: everything an apprentice may mix within its limits.
//!
//! A warmer and a cooler modifier in one mix, or a darker and a lighter one, are possible and absurd. So they are in the grid, or a
//! search of it would not be exhaustive: a key is better than those mixes too, and whoever counts one out is marked by the colour it heals
//! to. But no exercise has such a mix as its key, among its options or as the work it tells of: a draw in which one of them comes nearest to
//! the goal is thrown away. The same goes for a mix that the drill warns of for another reason than its colour when it heals.

use super::generate::Discard;
use crate::course::{Course, Drill, Limits, Rule};
use crate::pigment::{Mix, Modifier, Shelf};
use crate::search::{Grid, Tried, with_additions};

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

/// What somebody may have mixed on purpose: the grid without mixes whose modifiers are at odds.
pub(super) fn sensible_grid_of(shelf: &Shelf, limits: &Limits) -> Grid {
    grid_of(shelf, limits).without(|mix| shelf.is_at_odds(mix))
}

/// The best of a ranking, which must not be at odds with itself.
///
/// # Errors
/// [`Discard::Unresolved`] where there is none, [`Discard::AtOdds`] where its modifiers take back what the other does.
pub(super) fn sensible_best<'r>(shelf: &Shelf, ranking: &'r [Tried]) -> Result<&'r Tried, Discard> {
    let best = ranking.first().ok_or(Discard::Unresolved)?;
    if shelf.is_at_odds(&best.mix) { Err(Discard::AtOdds) } else { Ok(best) }
}

/// Makes sure that a mix may be the right answer of a drill, whatever it heals to: what `tempts` calls a mistake for what comes later may not.
///
/// # Errors
/// [`Discard::WarnedOf`] where the mix is such a mistake.
pub(super) fn may_be_right(course: &Course, drill: &Drill, mix: &Mix) -> Result<(), Discard> {
    let holds = |warned: Modifier| {
        mix.drops()
            .any(|(id, _)| course.shelf.bottle(id).is_some_and(|bottle| bottle.modifier == Some(warned)))
    };
    let rules = drill.tempts.iter().filter_map(|id| Some(course.misconception(id)?.rule));
    let mut warned = rules.filter_map(Rule::warned_of);
    if warned.any(holds) { Err(Discard::WarnedOf) } else { Ok(()) }
}
