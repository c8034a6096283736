//! What a share can be, seen so few times. Entry point: [`wilson`].

use serde::Serialize;

/// A 95% confidence interval of a share.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Interval {
    /// Lower end, 0 to 1.
    pub low: f64,
    /// Upper end, 0 to 1.
    pub high: f64,
}

/// The 0.975 quantile of the standard normal distribution.
const Z: f64 = 1.959_963_984_540_054;

/// Wilson's score interval (Wilson 1927), recommended for small numbers by Brown, Cai and DasGupta (2001): never empty,
/// never beyond 0 or 1, honest after a single answer. `successes` may be a sum of partial credits: a credit between 0 and 1
/// varies at most as much as right or wrong with the same mean, so that the interval is then rather too wide than too
/// narrow. `None` without answers.
///
/// ```
/// use healedhue::assess::cohort::wilson;
/// let once = wilson(1.0, 1).unwrap();
/// assert!((once.low - 0.2065).abs() < 1e-4 && once.high == 1.0);
/// ```
pub fn wilson(successes: f64, answers: usize) -> Option<Interval> {
    if answers == 0 || !successes.is_finite() {
        return None;
    }
    let n = answers as f64;
    let p = (successes / n).clamp(0.0, 1.0);
    let z2 = Z * Z;
    let middle = p + z2 / (2.0 * n);
    let half = Z * libm::sqrt(p * (1.0 - p) / n + z2 / (4.0 * n * n));
    let whole = 1.0 + z2 / n;
    // At the ends the formula meets 0 and 1 exactly but for rounding.
    let low = if p == 0.0 { 0.0 } else { ((middle - half) / whole).clamp(0.0, 1.0) };
    let high = if p == 1.0 { 1.0 } else { ((middle + half) / whole).clamp(0.0, 1.0) };
    Some(Interval { low, high })
}
