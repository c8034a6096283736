//! How far the scores of a paper can be trusted. Entry point: [`reliability`].

use super::sitting::Sitting;
use serde::{Serialize, Serializer};
use std::fmt;

/// A coefficient of internal consistency.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Coefficient {
    /// 1 at best; below 0 where items work against each other.
    pub value: f64,
    /// Standard error of measurement, in questions (points of credit): the deviation of scores times the root of one minus
    /// the coefficient. Below 0 the coefficient counts as 0, so that the error is never more than the deviation.
    pub standard_error: f64,
}

/// Scores and their reliability, over the candidates who answered every item.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Reliability {
    /// Items.
    pub items: usize,
    /// Candidates who answered all of them: only these count here.
    pub people: usize,
    /// Candidates left out because an answer is missing.
    pub left_out: usize,
    /// Mean score, in points of credit.
    pub mean: Option<f64>,
    /// Standard deviation of the scores (divisor n - 1), in points of credit.
    pub deviation: Option<f64>,
    /// Cronbach's alpha (Cronbach 1951), of the credits as they are.
    pub alpha: Option<Coefficient>,
    /// Kuder and Richardson's formula 20 (1937): alpha of right and wrong, where only full credit is right.
    pub kr20: Option<Coefficient>,
    /// Why a coefficient is missing; in JSON in words.
    pub why_not: Option<Unreliable>,
}

/// Why a coefficient of reliability is missing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unreliable {
    /// Items are drills that are put several times.
    Repeats,
    /// Fewer than two items.
    FewQuestions,
    /// Fewer than two people answered all items.
    FewPeople {
        /// Items.
        items: usize,
        /// Who answered all of them.
        people: usize,
    },
    /// All have the same score.
    SameScore,
}

impl fmt::Display for Unreliable {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Unreliable::Repeats => {
                f.write_str("reliability is of the places on a paper, not of drills put several times")
            }
            Unreliable::FewQuestions => f.write_str("reliability needs at least two questions"),
            Unreliable::FewPeople { items, people } => write!(
                f,
                "reliability needs at least two people who answered all {items} questions; there are {people}"
            ),
            Unreliable::SameScore => {
                f.write_str("there is nothing to tell people apart by: all have the same score")
            }
        }
    }
}

impl Serialize for Unreliable {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

/// Reliability of the whole paper.
///
/// alpha = n / (n - 1) · (1 - sum of the items' variances / variance of the scores).
pub fn reliability(sitting: &Sitting) -> Reliability {
    let items = sitting.items().len();
    let countable = items > 0 && !sitting.has_repeats();
    let whole: Vec<_> =
        sitting.candidates().iter().filter(|person| countable && person.answers.len() == items).collect();
    // One row a person: complete and sorted, so that the place is the item.
    let credits: Vec<Vec<f64>> =
        whole.iter().map(|person| person.answers.iter().map(|answer| answer.credit).collect()).collect();
    let rights: Vec<Vec<f64>> = whole
        .iter()
        .map(|person| person.answers.iter().map(|answer| f64::from(u8::from(answer.is_right()))).collect())
        .collect();
    let people = whole.len();
    let scores: Vec<f64> = credits.iter().map(|row| row.iter().sum()).collect();
    let (alpha, kr20) = (coefficient(&credits, items), coefficient(&rights, items));
    let why_not = if sitting.has_repeats() {
        Some(Unreliable::Repeats)
    } else if items < 2 {
        Some(Unreliable::FewQuestions)
    } else if people < 2 {
        Some(Unreliable::FewPeople { items, people })
    } else if alpha.is_none() || kr20.is_none() {
        Some(Unreliable::SameScore)
    } else {
        None
    };
    Reliability {
        items,
        people,
        left_out: sitting.candidates().len() - people,
        mean: (people > 0).then(|| scores.iter().sum::<f64>() / people as f64),
        deviation: variance(&scores).map(libm::sqrt),
        alpha,
        kr20,
        why_not,
    }
}

/// Variance below which scores count as equal: rounding, not people.
const NO_VARIANCE: f64 = 1e-18;

fn coefficient(rows: &[Vec<f64>], items: usize) -> Option<Coefficient> {
    if items < 2 {
        return None;
    }
    let scores: Vec<f64> = rows.iter().map(|row| row.iter().sum()).collect();
    let total = variance(&scores).filter(|&variance| variance > NO_VARIANCE)?;
    let mut single = 0.0;
    for item in 0..items {
        let column: Vec<f64> = rows.iter().map(|row| row[item]).collect();
        single += variance(&column)?;
    }
    let n = items as f64;
    let value = n / (n - 1.0) * (1.0 - single / total);
    Some(Coefficient { value, standard_error: libm::sqrt(total * (1.0 - value.clamp(0.0, 1.0))) })
}

/// Variance with divisor n - 1; `None` below two values.
pub(super) fn variance(values: &[f64]) -> Option<f64> {
    if values.len() < 2 {
        return None;
    }
    let mean = values.iter().sum::<f64>() / values.len() as f64;
    Some(values.iter().map(|value| (value - mean) * (value - mean)).sum::<f64>() / (values.len() - 1) as f64)
}
