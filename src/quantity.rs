//! Bounds of the numbers people write: each is declared once, and the error that reports a breach prints that declaration.

use thiserror::Error;

/// What a number may be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Quantity {
    /// Name as in files, with its unit: `depth_mm`.
    pub name: &'static str,
    /// Unit in words; empty for a pure number.
    pub unit: &'static str,
    /// Least value allowed.
    pub least: f64,
    /// Greatest value allowed.
    pub most: f64,
}

/// A number outside its bounds.
#[derive(Debug, Clone, PartialEq, Error)]
#[error("`{}` is {}, outside {}{}", quantity.name, shown(*value), quantity.range(), percent(quantity, *value))]
pub struct OutOfRange {
    /// The declaration that was breached.
    pub quantity: Quantity,
    /// The value found.
    pub value: f64,
}

/// A number as people read it: very large and very small ones with a power of ten.
fn shown(value: f64) -> String {
    let usual = value == 0.0 || !value.is_finite() || (1e-6..1e9).contains(&value.abs());
    if usual { value.to_string() } else { format!("{value:e}") }
}

/// What to do about a fraction that looks like a percentage.
fn percent(quantity: &Quantity, value: f64) -> &'static str {
    let is_percentage = quantity.unit.starts_with(FRACTION) && value > 1.0 && value <= 100.0;
    if is_percentage { "; divide percentages by 100" } else { "" }
}

/// How the units of shares begin.
const FRACTION: &str = "as a fraction";

impl Quantity {
    /// A declaration.
    pub const fn new(name: &'static str, unit: &'static str, least: f64, most: f64) -> Self {
        Quantity { name, unit, least, most }
    }

    /// What is allowed, with its unit: "0 to 3 mm".
    pub fn range(&self) -> String {
        let range = format!("{} to {}", self.least, self.most);
        if self.unit.is_empty() { range } else { format!("{range} {}", self.unit) }
    }

    /// The value, if it lies within the bounds.
    ///
    /// # Errors
    /// [`OutOfRange`] when it does not, or is not a number.
    pub fn check(&self, value: f64) -> Result<f64, OutOfRange> {
        if (self.least..=self.most).contains(&value) {
            Ok(value)
        } else {
            Err(OutOfRange { quantity: *self, value })
        }
    }
}
