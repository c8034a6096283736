//! A score held against a pass mark. Entry point: [`decide`].

use serde::Serialize;
use std::fmt;

/// Whether a candidate passed, and how sure that is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Decision {
    /// The score reaches the pass mark. This alone decides.
    pub passed: bool,
    /// Whether another paper as hard might have turned out the other way.
    pub certainty: Certainty,
}

/// How far from the pass mark a score is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Certainty {
    /// More than one standard error of measurement away.
    Clear,
    /// Within one standard error of measurement: look at other evidence before a certificate hangs on it.
    WithinOneError,
    /// The standard error of measurement is not known.
    Unknown,
}

/// Points within which a score equals the pass mark: sums of credits are rounded.
const SAME: f64 = 1e-9;

/// Holds a score against a pass mark, both in points of credit, with the standard error of measurement of the scores (see
/// [`Coefficient::standard_error`](crate::assess::items::Coefficient)). A score that meets the mark passes.
///
/// ```
/// use healedhue::assess::standard::decide;
/// assert_eq!(decide(44.0, 40.0, Some(3.0)).to_string(), "clearly passed");
/// assert_eq!(decide(41.0, 40.0, Some(3.0)).to_string(), "passed, within one standard error of the pass mark");
/// assert_eq!(decide(38.0, 40.0, Some(3.0)).to_string(), "not passed, within one standard error of the pass mark");
/// assert_eq!(decide(36.0, 40.0, Some(3.0)).to_string(), "clearly not passed");
/// ```
pub fn decide(score: f64, pass_mark: f64, standard_error: Option<f64>) -> Decision {
    let certainty = match standard_error {
        Some(error) if error.is_finite() && error >= 0.0 => {
            // Exactly one error away counts as within, and with no error at all only the mark itself does.
            if (score - pass_mark).abs() <= error + SAME {
                Certainty::WithinOneError
            } else {
                Certainty::Clear
            }
        }
        _ => Certainty::Unknown,
    };
    Decision { passed: score >= pass_mark - SAME, certainty }
}

impl fmt::Display for Decision {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match (self.certainty, self.passed) {
            (Certainty::Clear, true) => "clearly passed",
            (Certainty::Clear, false) => "clearly not passed",
            (Certainty::WithinOneError, true) => "passed, within one standard error of the pass mark",
            (Certainty::WithinOneError, false) => "not passed, within one standard error of the pass mark",
            (Certainty::Unknown, true) => "passed; how sure that is cannot be said",
            (Certainty::Unknown, false) => "not passed; how sure that is cannot be said",
        })
    }
}
