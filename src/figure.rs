//! Numbers as people read them, on every face alike.
//!
//! Entry point: [`fixed`].

/// A number with so many decimals, with a true minus sign and without a negative zero.
pub fn fixed(value: f64, decimals: usize) -> String {
    let text = format!("{:.decimals$}", value.abs());
    let is_zero = text.bytes().all(|byte| matches!(byte, b'0' | b'.'));
    if value < 0.0 && !is_zero { format!("\u{2212}{text}") } else { text }
}
