//! Text from outside as it can be shown: anything may be a name, and none may spoil a page. Entry points: [`shown`] for names,
//! [`cleaned`] for a whole page.

/// Longest name shown, in characters; what is longer is cut with an ellipsis.
const MOST: usize = 80;

/// A name in one line: no control characters, none that turn the direction of what follows, and not too long. Templates put it into
/// a `bdi`, so that its own direction stays its own.
pub(super) fn shown(name: &str) -> String {
    let mut text = String::new();
    let mut space = false;
    let mut count = 0;
    for c in name.chars() {
        if c.is_whitespace() || c.is_control() || turns_direction(c) {
            space = !text.is_empty();
            continue;
        }
        if count + usize::from(space) >= MOST {
            text.push('…');
            return text;
        }
        if space {
            text.push(' ');
            count += 1;
            space = false;
        }
        text.push(c);
        count += 1;
    }
    text
}

/// A page without characters that control or turn what follows, wherever they came from. Isolates stay: the frame uses them, and they
/// end with their line.
pub(super) fn cleaned(page: String) -> String {
    let bad = |c: char| {
        c.is_control() && c != '\n' || turns_direction(c) && !('\u{2066}'..='\u{2069}').contains(&c)
    };
    if page.contains(bad) { page.replace(bad, " ") } else { page }
}

/// Embeddings, overrides, isolates and marks of direction (Unicode Standard Annex 9), and line and paragraph separators.
fn turns_direction(c: char) -> bool {
    matches!(c, '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}')
}

#[cfg(test)]
mod tests {
    use super::{cleaned, shown};

    #[test]
    fn names_fit_a_line() {
        assert_eq!(shown("  Ilsa \n\t Venn\u{202e}gnp.\u{0}x  "), "Ilsa Venn gnp. x");
        assert_eq!(shown("مريم"), "مريم");
        assert_eq!(cleaned("a\u{202e}b\u{7}\n\u{2068}c\u{2069}".to_owned()), "a b \n\u{2068}c\u{2069}");
        let long = shown(&"a".repeat(10_000));
        assert_eq!((long.chars().count(), long.ends_with('…')), (81, true));
        assert_eq!(shown(&"a".repeat(80)), "a".repeat(80));
    }
}
