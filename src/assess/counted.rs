//! Counts in words. Entry point: [`counted`].

/// A count with what is counted: "1 answer", "2 answers".
pub(super) fn counted(count: usize, what: &str) -> String {
    format!("{count} {what}{}", if count == 1 { "" } else { "s" })
}
