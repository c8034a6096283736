//! Numbers as authors write them, and what to say when one is wrong.

use super::Reader;
use super::node::{Node, NodeKind, Style};
use super::suggest::quoted;
use crate::quantity::{OutOfRange, Quantity};

/// Units people write after a number, what they measure, and their size in the unit that keys use for it.
const UNITS: [(&str, &str, f64); 26] = [
    ("mm", "mm", 1.0),
    ("millimetre", "mm", 1.0),
    ("millimetres", "mm", 1.0),
    ("cm", "mm", 10.0),
    ("µm", "mm", 0.001),
    ("μm", "mm", 0.001),
    ("um", "mm", 0.001),
    ("micron", "mm", 0.001),
    ("microns", "mm", 0.001),
    ("nm", "nm", 1.0),
    ("month", "months", 1.0),
    ("months", "months", 1.0),
    ("week", "months", 0.25),
    ("weeks", "months", 0.25),
    ("year", "months", 12.0),
    ("years", "months", 12.0),
    ("years", "years", 1.0),
    ("year", "years", 1.0),
    ("minute", "minutes", 1.0),
    ("minutes", "minutes", 1.0),
    ("min", "minutes", 1.0),
    ("hour", "minutes", 60.0),
    ("hours", "minutes", 60.0),
    ("h", "minutes", 60.0),
    ("%", "as a fraction", 0.01),
    ("percent", "as a fraction", 0.01),
];

/// The unit a key ends in: `depth_mm` is in mm.
pub(crate) fn unit_of_key(key: &str) -> Option<&str> {
    let (_, unit) = key.rsplit_once('_')?;
    UNITS.iter().any(|(name, _, _)| *name == unit).then_some(unit)
}

/// A plain decimal number.
fn parse(text: &str) -> Option<f64> {
    let plain = text.chars().all(|c| c.is_ascii_digit() || matches!(c, '+' | '-' | '.' | 'e' | 'E'))
        && text.starts_with(|c: char| c.is_ascii_digit() || matches!(c, '+' | '-' | '.'));
    plain.then(|| text.parse().ok()).flatten().filter(|value: &f64| value.is_finite())
}

/// A number as an author would write it.
fn shown(value: f64) -> String {
    let rounded = (value * 1e6).round() / 1e6;
    format!("{rounded}")
}

impl Reader {
    /// The number in `node`, if it lies within the bounds of `quantity`; otherwise the nearest bound, and a report.
    pub fn number(&mut self, node: &Node, quantity: &Quantity) -> f64 {
        self.number_called(quantity.name, node, quantity)
    }

    /// The number in `node`, which is not called as its quantity is.
    pub fn number_called(&mut self, name: &str, node: &Node, quantity: &Quantity) -> f64 {
        let NodeKind::Scalar { text, style } = &node.kind else {
            self.problems.error(&node.place, format!("`{name}` is a number; this is {}", node.in_words()));
            return quantity.least;
        };
        let Some(value) = parse(text).filter(|_| *style != Style::Text) else {
            self.explain_text(name, node, text, quantity);
            return quantity.least;
        };
        quantity.check(value).unwrap_or_else(|breach| {
            let problem = self.problems.error(&node.place, breach_in_words(name, &breach));
            if let Some(help) = likely_slip(name, &breach) {
                problem.help(help);
            }
            value.clamp(quantity.least, quantity.most)
        })
    }

    /// The whole number in `node`, within the bounds of `quantity`.
    pub fn whole(&mut self, node: &Node, quantity: &Quantity) -> u32 {
        self.whole_called(quantity.name, node, quantity)
    }

    /// The whole number in `node`, which is not called as its quantity is.
    pub fn whole_called(&mut self, name: &str, node: &Node, quantity: &Quantity) -> u32 {
        let value = self.number_called(name, node, quantity);
        if value.fract() != 0.0 {
            self.problems
                .error(&node.place, format!("`{name}` is a whole number; this is {value}"))
                .help(format!("write `{}` or `{}`", value.floor(), value.ceil()));
        }
        value as u32
    }

    /// Reports a text where a number is expected.
    fn explain_text(&mut self, name: &str, node: &Node, text: &str, quantity: &Quantity) {
        let text = text.trim();
        let end =
            text.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | '-' | '+'))).unwrap_or(text.len());
        let (digits, unit) = (parse(&text[..end]), text[end..].trim());
        let size = |kind: &str| UNITS.iter().find(|(word, of, _)| *word == unit && *of == kind).map(|u| u.2);
        let (message, help) = match digits {
            Some(value) if unit.is_empty() => (
                format!("`{name}` is a plain number, without quotes"),
                Some(format!("write `{name}: {}`", shown(value))),
            ),
            Some(value)
                if unit.chars().all(|c| c.is_alphabetic() || c == '%' || c == ' ') && !unit.is_empty() =>
            {
                let message = match quantity.unit {
                    unit if unit.is_empty() || unit == name => format!("`{name}` is a plain number"),
                    unit if unit_of_key(name).is_some() => {
                        format!("`{name}` is a plain number in {unit}, because the key carries the unit")
                    }
                    unit if unit.starts_with("as ") => format!("`{name}` is a plain number, {unit}"),
                    unit => format!("`{name}` is a plain number in {unit}"),
                };
                let value = size(quantity.unit).map(|size| value * size);
                (message, value.map(|value| format!("write `{name}: {}`", shown(value))))
            }
            Some(_) if unit.starts_with(',') && parse(&text.replace(',', ".")).is_some() => (
                format!("`{name}` is a number, and {} is none", quoted(text)),
                Some(format!("write a point, not a comma: `{name}: {}`", text.replace(',', "."))),
            ),
            _ => (format!("`{name}` is a number, and {} is none", quoted(text)), None),
        };
        let problem = self.problems.error(&node.place, message);
        if let Some(help) = help {
            problem.help(help);
        }
    }
}

/// "`depth_mm` is 6, outside 0 to 3 mm".
fn breach_in_words(name: &str, breach: &OutOfRange) -> String {
    let OutOfRange { quantity, value } = breach;
    let space = if quantity.unit.is_empty() { "" } else { " " };
    format!("`{name}` is {value}, outside {} to {}{space}{}", quantity.least, quantity.most, quantity.unit)
}

/// What a number out of bounds was probably meant as.
fn likely_slip(name: &str, breach: &OutOfRange) -> Option<String> {
    let OutOfRange { quantity, value } = *breach;
    let fits = |value: f64| value != 0.0 && quantity.check(value).is_ok();
    if quantity.least == 0.0 && quantity.most == 1.0 && quantity.unit != "mm" && fits(value / 100.0) {
        Some(format!("percent? write `{name}: {}`", shown(value / 100.0)))
    } else if quantity.unit == "mm" && value >= 10.0 && fits(value / 1000.0) {
        Some(format!("micrometres? write `{name}: {}`", shown(value / 1000.0)))
    } else {
        None
    }
}
