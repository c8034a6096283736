//! Pass marks by the modified Angoff method. Entry point: [`angoff`].

use crate::quantity::{OutOfRange, Quantity};
use serde::Serialize;
use thiserror::Error;

/// How likely a judge thinks a right answer of a borderline candidate.
pub const ESTIMATE: Quantity = Quantity::new("estimate", "", 0.0, 1.0);
/// How many questions an estimate stands for.
pub const QUESTIONS: Quantity = Quantity::new("questions", "", 0.0, 1000.0);

/// One judge's estimates: the last round's, where they were revised after discussion (that is what "modified" means).
#[derive(Debug, Clone, PartialEq)]
pub struct Judge {
    /// Name or sign.
    pub name: String,
    /// For each item, the probability that a candidate who is just good enough gets it right.
    pub estimates: Vec<f64>,
}

/// A pass mark and what stands behind it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PassMark {
    /// In points of credit: the mean over judges of their sums.
    pub mark: f64,
    /// As a share of all questions, 0 to 1.
    pub share: f64,
    /// Standard error of the mark: the deviation of the judges' sums by the root of their number. `None` for a single judge.
    pub standard_error: Option<f64>,
    /// Each judge's own mark, in the order of the judges.
    pub by_judge: Vec<f64>,
    /// What the judges thought of each item.
    pub items: Vec<Estimate>,
}

/// What judges thought of one item.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Estimate {
    /// Mean of the estimates.
    pub mean: f64,
    /// Their standard deviation (divisor n - 1); `None` for a single judge.
    pub deviation: Option<f64>,
}

/// Why there is no pass mark.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum AngoffError {
    /// No judge.
    #[error("a pass mark needs at least one judge")]
    NoJudge,
    /// No question.
    #[error("a pass mark needs at least one question")]
    NoQuestion,
    /// A judge has too few or too many estimates.
    #[error("judge `{judge}` gives {found} estimates for {wanted} items")]
    Count {
        /// Who.
        judge: String,
        /// Estimates given.
        found: usize,
        /// Items.
        wanted: usize,
    },
    /// An estimate is no probability.
    #[error("judge `{judge}`, item number {item} (from 1): {error}")]
    Estimate {
        /// Who.
        judge: String,
        /// Which, from 1.
        item: usize,
        /// What is wrong.
        error: OutOfRange,
    },
    /// A number of questions is out of bounds.
    #[error("item number {item} (from 1): {error}")]
    Questions {
        /// Which, from 1.
        item: usize,
        /// What is wrong.
        error: OutOfRange,
    },
}

/// The pass mark: for each judge the sum of the estimated probabilities, then the mean over judges (Angoff 1971).
///
/// `questions` says for each item how many questions of the paper it stands for: 1 where every question has its own
/// estimate, more where one estimate stands for all questions a section draws.
///
/// # Errors
/// [`AngoffError`] where there is no judge or question, or where a number is missing or outside its range.
///
/// ```
/// use healedhue::assess::standard::{Judge, angoff};
/// let judge = |name: &str, estimates: [f64; 2]| Judge { name: name.to_owned(), estimates: estimates.to_vec() };
/// let mark = angoff(&[10.0, 5.0], &[judge("a", [0.6, 0.8]), judge("b", [0.7, 0.6])])?;
/// assert_eq!((mark.by_judge[0], mark.by_judge[1], mark.mark), (10.0, 10.0, 10.0));
/// assert_eq!(mark.standard_error, Some(0.0));
/// # Ok::<(), healedhue::assess::standard::AngoffError>(())
/// ```
pub fn angoff(questions: &[f64], judges: &[Judge]) -> Result<PassMark, AngoffError> {
    for (at, &count) in questions.iter().enumerate() {
        QUESTIONS.check(count).map_err(|error| AngoffError::Questions { item: at + 1, error })?;
    }
    let all: f64 = questions.iter().sum();
    if all <= 0.0 {
        return Err(AngoffError::NoQuestion);
    }
    if judges.is_empty() {
        return Err(AngoffError::NoJudge);
    }
    for judge in judges {
        if judge.estimates.len() != questions.len() {
            return Err(AngoffError::Count {
                judge: judge.name.clone(),
                found: judge.estimates.len(),
                wanted: questions.len(),
            });
        }
        for (at, &estimate) in judge.estimates.iter().enumerate() {
            ESTIMATE.check(estimate).map_err(|error| AngoffError::Estimate {
                judge: judge.name.clone(),
                item: at + 1,
                error,
            })?;
        }
    }
    let by_judge: Vec<f64> = judges
        .iter()
        .map(|judge| judge.estimates.iter().zip(questions).map(|(estimate, count)| estimate * count).sum())
        .collect();
    let (mark, deviation) = mean_and_deviation(&by_judge);
    let items = (0..questions.len())
        .map(|item| {
            let estimates: Vec<f64> = judges.iter().map(|judge| judge.estimates[item]).collect();
            let (mean, deviation) = mean_and_deviation(&estimates);
            Estimate { mean, deviation }
        })
        .collect();
    Ok(PassMark {
        mark,
        share: mark / all,
        standard_error: deviation.map(|deviation| deviation / libm::sqrt(judges.len() as f64)),
        by_judge,
        items,
    })
}

fn mean_and_deviation(values: &[f64]) -> (f64, Option<f64>) {
    let n = values.len() as f64;
    let mean = values.iter().sum::<f64>() / n;
    let squares: f64 = values.iter().map(|value| (value - mean) * (value - mean)).sum();
    (mean, (values.len() > 1).then(|| libm::sqrt(squares / (n - 1.0))))
}
