//! Facility and discrimination of every item. Entry point: [`classical`].

use super::sitting::{Answer, Candidate, Sitting};
use serde::Serialize;

/// Classical statistics of one item.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Classical {
    /// People who answered it.
    pub answers: usize,
    /// Mean credit, 0 to 1: for right and wrong alone, the share who got it right. `None` without answers.
    pub facility: Option<f64>,
    /// Share who got it right to the full, 0 to 1. `None` without answers.
    pub right: Option<f64>,
    /// Corrected point-biserial, -1 to 1: the product-moment correlation of the credit for the item with the mean credit
    /// for the person's other answers. Where everybody answered everything this is the correlation with the score on the
    /// rest. With partial credit it is the corrected item-total correlation, by the same formula. Source: the standard
    /// definition in test analysis. `None` with fewer than three people, or where the item or the rest does not vary.
    pub discrimination: Option<f64>,
}

/// Deviation below which credits count as equal: far below any real difference in credit, far above rounding.
const NO_DEVIATION: f64 = 1e-9;
/// People below whom a correlation says nothing: through two points there is always a line.
const FEWEST_PAIRS: usize = 3;

/// Facility and discrimination of every item, in the order of the items.
pub fn classical(sitting: &Sitting) -> Vec<Classical> {
    let mut pairs: Vec<Vec<(f64, f64)>> = vec![Vec::new(); sitting.items().len()];
    let mut sums = vec![(0_usize, 0_usize, 0.0); sitting.items().len()];
    for person in sitting.candidates() {
        let total = total(person);
        for answer in &person.answers {
            let (answers, right, credit) = &mut sums[answer.item];
            *answers += 1;
            *right += usize::from(answer.is_right());
            *credit += answer.credit;
            if let Some(rest) = rest_share(person, total, answer) {
                pairs[answer.item].push((answer.credit, rest));
            }
        }
    }
    sums.into_iter()
        .zip(pairs)
        .map(|((answers, right, credit), pairs)| Classical {
            answers,
            facility: (answers > 0).then(|| (credit / answers as f64).clamp(0.0, 1.0)),
            right: (answers > 0).then(|| right as f64 / answers as f64),
            discrimination: correlation(&pairs),
        })
        .collect()
}

/// All of a person's credit.
pub(super) fn total(person: &Candidate) -> f64 {
    person.answers.iter().map(|answer| answer.credit).sum()
}

/// Mean credit for all other answers of a person, 0 to 1; `None` where there is no other.
pub(super) fn rest_share(person: &Candidate, total: f64, answer: &Answer) -> Option<f64> {
    let others = person.answers.len().checked_sub(1).filter(|&others| others > 0)?;
    Some(((total - answer.credit) / others as f64).clamp(0.0, 1.0))
}

/// Product-moment correlation.
fn correlation(pairs: &[(f64, f64)]) -> Option<f64> {
    if pairs.len() < FEWEST_PAIRS {
        return None;
    }
    let n = pairs.len() as f64;
    let mean_x = pairs.iter().map(|pair| pair.0).sum::<f64>() / n;
    let mean_y = pairs.iter().map(|pair| pair.1).sum::<f64>() / n;
    let (mut xx, mut yy, mut xy) = (0.0, 0.0, 0.0);
    for &(x, y) in pairs {
        let (dx, dy) = (x - mean_x, y - mean_y);
        xx += dx * dx;
        yy += dy * dy;
        xy += dx * dy;
    }
    let nothing = NO_DEVIATION * NO_DEVIATION * n;
    (xx > nothing && yy > nothing).then(|| (xy / libm::sqrt(xx * yy)).clamp(-1.0, 1.0))
}
