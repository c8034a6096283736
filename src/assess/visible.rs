//! Words from outside, such as names of people and of files, as a terminal may show them: nothing in them moves the cursor, colours the
//! screen or turns the direction of writing.
//!
//! Entry points: [`visible`], and [`is_unseen`] for what a name may not hold.

use std::borrow::Cow;

/// Whether a character is a command to whatever shows it and not something to see: a control character, a break of line or paragraph, or one
/// that embeds, overrides or isolates a direction of writing (Unicode Standard Annex 9). Marks that a script needs within its
/// words, such as a zero-width joiner, are none.
pub(crate) fn is_unseen(c: char) -> bool {
    c.is_control() || matches!(c, '\u{2028}' | '\u{2029}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

/// The text with every unseen character written out, as `\u{1b}`.
pub(crate) fn visible(text: &str) -> Cow<'_, str> {
    if !text.contains(is_unseen) {
        return Cow::Borrowed(text);
    }
    let mut shown = String::with_capacity(text.len() + 16);
    for c in text.chars() {
        if is_unseen(c) {
            shown.extend(c.escape_unicode());
        } else {
            shown.push(c);
        }
    }
    Cow::Owned(shown)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_not_seen_is_written_out_and_the_rest_is_as_it_was() {
        assert_eq!(visible("a\u{1b}[31mb\nc\u{9b}"), "a\\u{1b}[31mb\\u{a}c\\u{9b}");
        assert_eq!(visible("q\u{202e}nosj\u{2069}"), "q\\u{202e}nosj\\u{2069}");
        for name in ["Orrin Vell", "Åsa Ødegård", "می\u{200c}خواهم", "שרה", "梅"] {
            assert!(matches!(visible(name), Cow::Borrowed(same) if same == name), "{name}");
        }
    }
}
