//! Text for spreadsheets. Entry point: [`guarded`].

/// A text that no spreadsheet takes for a formula: such a one gets an apostrophe before it (OWASP, CSV injection).
pub(crate) fn guarded(text: &str) -> String {
    let begins_formula = text
        .trim_start_matches([' ', '\u{feff}'])
        .starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠']);
    if begins_formula { format!("'{text}") } else { text.to_owned() }
}
