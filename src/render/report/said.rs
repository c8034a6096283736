//! How a report says its figures, in the course's language.

use super::super::figures::fixed;
use crate::assess::cohort::Interval;
use crate::language::Language;
use crate::say;

/// What stands where there is no figure.
pub(super) const NONE: &str = "–";

/// A number with so many decimals, with a true minus sign and the language's mark.
pub(super) fn number(language: &Language, value: f64, decimals: usize) -> String {
    let sign = if fixed(value, decimals).starts_with('\u{2212}') { "\u{2212}" } else { "" };
    format!("{sign}{}", language.decimal(value.abs(), decimals))
}

/// A mark, with the decimal by which it may pass or not.
pub(super) fn mark_in_words(language: &Language, mark: f64) -> String {
    say!(language, "report-percent", number = number(language, mark, 1))
}

/// A share in whole percent.
pub(super) fn percent(language: &Language, share: f64) -> String {
    say!(language, "report-percent", number = number(language, share * 100.0, 0))
}

/// From the one end of a range to the other.
pub(super) fn range(language: &Language, interval: Interval) -> String {
    let (low, high) = (percent(language, interval.low), percent(language, interval.high));
    say!(language, "report-range", low = low, high = high)
}

/// So many of so many.
pub(super) fn of(language: &Language, part: usize, whole: usize) -> String {
    say!(language, "report-of", part = part, whole = whole)
}
