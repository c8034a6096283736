//! The drop grid: everything an apprentice may mix within a drill's limits.

use crate::course::Limits;
use crate::pigment::Mix;

/// Every mix of one bottle with none to `modifier_drops` drops of the modifiers, `drops` in all; ordered by bottle, then by
/// modifiers.
pub fn mixes(limits: &Limits) -> Vec<Mix> {
    let mut additions = vec![Vec::new()];
    for _ in 0..limits.modifier_drops.min(limits.drops.saturating_sub(1)) {
        let longer: Vec<Vec<&str>> = additions
            .iter()
            .flat_map(|added: &Vec<&str>| {
                limits.modifiers.iter().map(|modifier| {
                    let mut added = added.clone();
                    added.push(modifier);
                    added
                })
            })
            .collect();
        additions.extend(longer);
    }
    let mut all = Vec::new();
    for bottle in &limits.bottles {
        let mut of_bottle: Vec<Mix> = additions
            .iter()
            .map(|added| {
                let rest = limits.drops - added.len() as u32;
                Mix::new(
                    std::iter::once((bottle.clone(), rest))
                        .chain(added.iter().map(|modifier| ((*modifier).to_owned(), 1))),
                )
            })
            .collect();
        of_bottle.sort();
        of_bottle.dedup();
        all.extend(of_bottle);
    }
    all
}
