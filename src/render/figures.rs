//! Numbers and names as people read them.

pub(super) use crate::exercise::letter;
pub(super) use crate::figure::fixed;
use crate::pigment::Basis;

/// A share between 0 and 1 in whole percent.
pub(super) fn percent(share: f64) -> String {
    format!("{}%", fixed(share * 100.0, 0))
}

/// A number with at most two decimals, none of them a closing zero.
pub(super) fn short(value: f64) -> String {
    let text = fixed(value, 2);
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
}

/// Minutes, from an hour on with hours: "22 min", "2 h 45 min".
pub(super) fn minutes(minutes: u32) -> String {
    match (minutes / 60, minutes % 60) {
        (0, rest) => format!("{rest} min"),
        (hours, 0) => format!("{hours} h"),
        (hours, rest) => format!("{hours} h {rest} min"),
    }
}

/// Where a number comes from, in words.
pub(super) fn basis(basis: Basis) -> &'static str {
    match basis {
        Basis::Measured => "measured",
        Basis::Published => "published",
        Basis::Representative => "representative",
    }
}

/// A Colour Index name as it is printed: `PB15:3` as "PB 15:3".
pub(super) fn colour_index(id: &str) -> String {
    match id.find(|c: char| c.is_ascii_digit()) {
        Some(at) if at > 0 => format!("{}\u{a0}{}", &id[..at], &id[at..]),
        _ => id.to_owned(),
    }
}

/// The first letter in upper case.
pub(super) fn capitalised(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_read_well() {
        assert_eq!(fixed(-0.04, 1), "0.0");
        assert_eq!(fixed(-1.25, 1), "\u{2212}1.2");
        assert_eq!([short(0.15), short(7.0), short(1.5)], ["0.15", "7", "1.5"]);
        assert_eq!(percent(0.946), "95%");
        assert_eq!([minutes(22), minutes(60), minutes(165)], ["22 min", "1 h", "2 h 45 min"]);
        assert_eq!([colour_index("PB15:3"), colour_index("PW6")], ["PB\u{a0}15:3", "PW\u{a0}6"]);
        assert_eq!([letter(0), letter(5), letter(26)], ["A", "F", "27"]);
    }
}
