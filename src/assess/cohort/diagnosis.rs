//! The one wrong belief that a person's answers speak for most. Entry point: [`diagnosis`].

use super::misconceptions::MisconceptionCount;

/// Of one person's misconceptions, the one that stands out most; `None` where none does.
///
/// Not the greatest share: two of two is a share of 1 and may be chance, nine of ten is a habit. What counts is how far the lower end of
/// the share's interval lies above what guessing would give, which asks for evidence as much as for a high share. Of equals, the
/// one chosen more often, then the first by id.
pub fn diagnosis(counts: &[MisconceptionCount]) -> Option<&MisconceptionCount> {
    let above = |count: &MisconceptionCount| count.interval.low - count.by_guessing;
    counts.iter().filter(|count| count.stands_out).max_by(|one, other| {
        above(one)
            .total_cmp(&above(other))
            .then(one.chosen.cmp(&other.chosen))
            .then_with(|| other.misconception.cmp(&one.misconception))
    })
}
