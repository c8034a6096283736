//! From one colour to another, in words.

use super::Lab;
use serde::Serialize;

/// ΔE00 that is just visible side by side: about one unit, a common convention in colour science without a single source. Answers
/// that differ by less cannot be told apart by eye, so that none of them is called better.
pub const JUST_VISIBLE: f64 = 1.0;

/// The way from one colour to another in CIELAB.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Shift {
    /// ΔL*: lighter positive, deeper negative.
    pub l: f64,
    /// Δa*: redder positive, greener negative.
    pub a: f64,
    /// Δb*: warmer (yellower) positive, cooler (bluer) negative.
    pub b: f64,
}

/// One coordinate's sense.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sense {
    /// L* rises.
    Lighter,
    /// L* falls.
    Deeper,
    /// a* rises.
    Redder,
    /// a* falls.
    Greener,
    /// b* rises.
    Warmer,
    /// b* falls.
    Cooler,
}

impl Sense {
    /// "lighter".
    pub fn comparative(self) -> &'static str {
        self.words().1
    }

    /// "too light".
    pub fn excess(self) -> &'static str {
        self.words().0
    }

    /// The same coordinate the other way.
    pub fn opposite(self) -> Self {
        match self {
            Sense::Lighter => Sense::Deeper,
            Sense::Deeper => Sense::Lighter,
            Sense::Redder => Sense::Greener,
            Sense::Greener => Sense::Redder,
            Sense::Warmer => Sense::Cooler,
            Sense::Cooler => Sense::Warmer,
        }
    }

    fn words(self) -> (&'static str, &'static str) {
        match self {
            Sense::Lighter => ("too light", "lighter"),
            Sense::Deeper => ("too deep", "deeper"),
            Sense::Redder => ("too red", "redder"),
            Sense::Greener => ("too green", "greener"),
            Sense::Warmer => ("too warm", "warmer"),
            Sense::Cooler => ("too cool", "cooler"),
        }
    }
}

impl Shift {
    /// The way from one colour to the other.
    pub fn between(from: Lab, to: Lab) -> Self {
        Shift { l: to.l - from.l, a: to.a - from.a, b: to.b - from.b }
    }

    /// The senses of the coordinates that change by at least this much, the greatest change first; where none does, the one that
    /// changes most. Empty where nothing changes.
    pub fn senses(self, least: f64) -> Vec<Sense> {
        let sense = |change: f64, up, down| (change.abs(), if change > 0.0 { up } else { down });
        let mut senses = vec![
            sense(self.l, Sense::Lighter, Sense::Deeper),
            sense(self.a, Sense::Redder, Sense::Greener),
            sense(self.b, Sense::Warmer, Sense::Cooler),
        ];
        senses.sort_by(|one, other| other.0.total_cmp(&one.0));
        let counted = senses.iter().filter(|(change, _)| *change >= least).count().max(1);
        senses.truncate(counted);
        senses.retain(|(change, _)| *change > 0.0);
        senses.into_iter().map(|(_, sense)| sense).collect()
    }
}

/// Words in a row: "a", "a and b", "a, b and c".
pub fn in_a_row(words: &[&str]) -> String {
    match words {
        [] => String::new(),
        [one] => (*one).to_owned(),
        [first @ .., last] => format!("{} and {last}", first.join(", ")),
    }
}
