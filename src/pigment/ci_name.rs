//! Colour Index names: which texts can be one.

/// Hues of generic names.
const HUES: [&str; 10] = ["Y", "O", "R", "V", "B", "G", "Br", "Bk", "W", "M"];

/// What a Colour Index name looks like, for messages.
pub const CI_NAME_FORM: &str = "a Colour Index name without spaces: P (pigment) or N (natural), a hue (Y, O, R, V, B, G, Br, Bk, W or M) and a number, \
     such as `PR101`, `PBk7` or `PB15:3`, or a constitution number, such as `CI77491`";

/// Whether a text has the form of a Colour Index generic name without spaces (`PR101`, `PBk7`, `PB15:3`, `NBr7`) or of a
/// constitution number with `CI` before it (`CI77491`). Whether the Index lists it is another question.
///
/// ```
/// use healedhue::pigment::is_ci_name;
/// assert!(["PR101", "PBk7", "PB15:3", "PW6", "NBr7", "CI77491"].iter().all(|name| is_ci_name(name)));
/// assert!(["PR", "RP101", "PX7", "pr101", "CI 77491", "CI7", ""].iter().all(|name| !is_ci_name(name)));
/// ```
pub fn is_ci_name(text: &str) -> bool {
    let digits = |text: &str, counts: std::ops::RangeInclusive<usize>| {
        counts.contains(&text.len()) && text.bytes().all(|byte| byte.is_ascii_digit())
    };
    let (name, variant) = match text.split_once(':') {
        Some((name, variant)) => (name, Some(variant)),
        None => (text, None),
    };
    if variant.is_some_and(|variant| !digits(variant, 1..=1)) {
        return false;
    }
    if let Some(number) = name.strip_prefix("CI") {
        return digits(number, 5..=6);
    }
    let Some(rest) = name.strip_prefix('P').or_else(|| name.strip_prefix('N')) else { return false };
    let at = rest.find(|c: char| c.is_ascii_digit()).unwrap_or(rest.len());
    HUES.contains(&&rest[..at]) && digits(&rest[at..], 1..=4)
}

/// The Colour Index name that a text was probably meant as: "PR 101", "pr101" and "C.I. 77491" have one.
pub fn meant_ci_name(text: &str) -> Option<String> {
    let bare: String = text.chars().filter(|c| !c.is_whitespace() && !matches!(c, '.' | '-' | '_')).collect();
    let at = bare.find(|c: char| c.is_ascii_digit())?;
    let (letters, number) = bare.split_at(at);
    let prefixes = ["P", "N"].into_iter().flat_map(|kind| HUES.map(|hue| format!("{kind}{hue}")));
    let prefix = prefixes.chain(["CI".to_owned()]).find(|prefix| prefix.eq_ignore_ascii_case(letters))?;
    let name = prefix + number;
    is_ci_name(&name).then_some(name)
}
