//! Which items can stand on one scale. Entry point: [`linked`].
//!
//! Conditional estimates are finite and unique when, however the items are split in two, somebody got one of the first part
//! right and one of the second wrong (Fischer 1981). Seen as a graph with an arrow from i to j where somebody got i right
//! and j wrong, every item must be reachable from every other: the largest such part is kept. An item that all or none got
//! right falls out by itself.

use crate::assess::items::sitting::Sitting;
use serde::Serialize;

/// Why an item has no difficulty.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Unlinked {
    /// Nobody answered it.
    Unanswered,
    /// Everybody got it right.
    AllRight,
    /// Nobody got it right.
    NoneRight,
    /// Too few people got it right and other items wrong, or the other way round, to compare it with those.
    Apart,
}

/// For every item `None` where it belongs to the largest part that can be compared, otherwise why not.
pub(super) fn linked(sitting: &Sitting) -> Vec<Option<Unlinked>> {
    let items = sitting.items().len();
    let mut forward = Arrows::new(items);
    let mut backward = Arrows::new(items);
    let (mut answered, mut right) = (vec![0_usize; items], vec![0_usize; items]);
    for person in sitting.candidates() {
        let (mut rights, mut wrongs) = (Set::new(items), Set::new(items));
        for answer in &person.answers {
            answered[answer.item] += 1;
            right[answer.item] += usize::from(answer.is_right());
            if answer.is_right() { rights.add(answer.item) } else { wrongs.add(answer.item) }
        }
        for answer in &person.answers {
            if answer.is_right() {
                forward.rows[answer.item].unite(&wrongs);
            } else {
                backward.rows[answer.item].unite(&rights);
            }
        }
    }
    let mut best: Vec<usize> = Vec::new();
    let mut seen = Set::new(items);
    for item in 0..items {
        if seen.has(item) {
            continue;
        }
        let mut part = forward.reach(item);
        part.meet(&backward.reach(item));
        seen.unite(&part);
        let part: Vec<usize> = (0..items).filter(|&at| part.has(at)).collect();
        let first = |part: &[usize]| part.iter().map(|&at| sitting.items()[at].id.clone()).min();
        // Of two parts of one size, the one with the first id: whatever the order of the items.
        if part.len() > best.len() || (part.len() == best.len() && first(&part) < first(&best)) {
            best = part;
        }
    }
    let mut out: Vec<Option<Unlinked>> = (0..items)
        .map(|item| {
            Some(match (answered[item], right[item]) {
                (0, _) => Unlinked::Unanswered,
                (_, 0) => Unlinked::NoneRight,
                (all, right) if all == right => Unlinked::AllRight,
                _ => Unlinked::Apart,
            })
        })
        .collect();
    if best.len() > 1 {
        for item in best {
            out[item] = None;
        }
    }
    out
}

/// A set of items, a bit an item.
#[derive(Clone)]
struct Set(Vec<u64>);

impl Set {
    fn new(items: usize) -> Self {
        Set(vec![0; items.div_ceil(64)])
    }
    fn add(&mut self, item: usize) {
        self.0[item / 64] |= 1 << (item % 64);
    }
    fn has(&self, item: usize) -> bool {
        self.0[item / 64] >> (item % 64) & 1 == 1
    }
    fn unite(&mut self, other: &Set) {
        self.0.iter_mut().zip(&other.0).for_each(|(mine, theirs)| *mine |= theirs);
    }
    fn meet(&mut self, other: &Set) {
        self.0.iter_mut().zip(&other.0).for_each(|(mine, theirs)| *mine &= theirs);
    }
}

/// Where arrows lead from every item.
struct Arrows {
    rows: Vec<Set>,
}

impl Arrows {
    fn new(items: usize) -> Self {
        Arrows { rows: vec![Set::new(items); items] }
    }

    /// All items that can be reached from one, itself included.
    fn reach(&self, from: usize) -> Set {
        let mut reached = Set::new(self.rows.len());
        reached.add(from);
        let mut open = vec![from];
        while let Some(at) = open.pop() {
            for word in 0..reached.0.len() {
                let mut new = self.rows[at].0[word] & !reached.0[word];
                reached.0[word] |= new;
                while new != 0 {
                    open.push(word * 64 + new.trailing_zeros() as usize);
                    new &= new - 1;
                }
            }
        }
        reached
    }
}
