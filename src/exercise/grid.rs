//! The drop grid: everything an apprentice may mix within a drill's limits.

use crate::course::Limits;
use crate::pigment::Mix;

/// Every mix of one bottle with none to `modifier_drops` drops of the modifiers, `drops` in all; ordered by bottle, then by
/// modifiers.
pub fn mixes(limits: &Limits) -> Vec<Mix> {
    // Drops of the modifiers in their order, so that each choice comes up once.
    let mut additions = vec![vec![]];
    let mut last = additions.clone();
    for _ in 0..limits.most_modifier_drops() {
        last = last
            .iter()
            .flat_map(|added: &Vec<usize>| {
                let from = added.last().copied().unwrap_or(0);
                (from..limits.modifiers.len()).map(move |modifier| {
                    let mut longer = added.clone();
                    longer.push(modifier);
                    longer
                })
            })
            .collect();
        additions.extend(last.iter().cloned());
    }
    let mut all = Vec::with_capacity(limits.bottles.len() * additions.len());
    for bottle in &limits.bottles {
        let mut of_bottle: Vec<Mix> = additions
            .iter()
            .map(|added| {
                let rest = limits.drops - added.len() as u32;
                Mix::new(
                    std::iter::once((bottle.clone(), rest))
                        .chain(added.iter().map(|&modifier| (limits.modifiers[modifier].clone(), 1))),
                )
            })
            .collect();
        of_bottle.sort();
        all.extend(of_bottle);
    }
    all
}
