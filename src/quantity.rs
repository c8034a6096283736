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
#[error("`{}` is {value}{}, outside {} to {}{}", quantity.name, unit(quantity), quantity.least, quantity.most, unit(quantity))]
pub struct OutOfRange {
    /// The declaration that was breached.
    pub quantity: Quantity,
    /// The value found.
    pub value: f64,
}

fn unit(quantity: &Quantity) -> String {
    if quantity.unit.is_empty() { String::new() } else { format!(" {}", quantity.unit) }
}

impl Quantity {
    /// A declaration.
    pub const fn new(name: &'static str, unit: &'static str, least: f64, most: f64) -> Self {
        Quantity { name, unit, least, most }
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
