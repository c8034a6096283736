//! Text for spreadsheets. Entry points: [`guarded`] for a cell, [`BYTE_ORDER_MARK`] for a file.

/// What a table in CSV begins with, in UTF-8: without it spreadsheets take what is beyond ASCII for something else.
pub(crate) const BYTE_ORDER_MARK: &[u8] = "\u{feff}".as_bytes();

/// A text that no spreadsheet takes for a formula: such a one gets an apostrophe before it (OWASP, CSV injection).
pub(crate) fn guarded(text: &str) -> String {
    let begins_formula = text
        .trim_start_matches([' ', '\u{feff}'])
        .starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠']);
    if begins_formula { format!("'{text}") } else { text.to_owned() }
}
