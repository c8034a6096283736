//! What a course and the engine lean on: standards, regulations, papers, tables, and values that nobody published.

/// Something that is leant on.
#[derive(Debug, Clone)]
pub struct SourceEntry {
    /// Unique id.
    pub id: String,
    /// Its title, or what it is.
    pub title: String,
    /// Who wrote or issued it, and when; empty where nobody did.
    pub by: String,
    /// What it is.
    pub kind: SourceKind,
    /// What was taken from it.
    pub took: String,
    /// How it was taken.
    pub basis: SourceBasis,
}

/// What a source is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum SourceKind {
    /// An international standard.
    Standard,
    /// A law or a regulation.
    Regulation,
    /// Advice of a public body.
    Guideline,
    /// An article in a journal.
    Paper,
    /// A book.
    Book,
    /// A table or a set of data.
    Table,
    /// What the trade does, or this project chose.
    Practice,
}

impl SourceKind {
    /// Each with its word in course files.
    pub const ALL: [(SourceKind, &'static str); 7] = [
        (SourceKind::Standard, "standard"),
        (SourceKind::Regulation, "regulation"),
        (SourceKind::Guideline, "guideline"),
        (SourceKind::Paper, "paper"),
        (SourceKind::Book, "book"),
        (SourceKind::Table, "table"),
        (SourceKind::Practice, "practice"),
    ];

    /// The word in course files.
    pub fn word(self) -> &'static str {
        SourceKind::ALL[self as usize].1
    }
}

/// How something was taken from its source.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum SourceBasis {
    /// Tests reproduce numbers quoted from it.
    Checked,
    /// Numbers were copied from a file that carries them.
    Copied,
    /// Named and used as the author remembers it; not looked up.
    FromMemory,
    /// Common practice of the trade, without a source.
    CommonPractice,
    /// Invented for teaching: of the right kind and size, measured on nothing.
    Representative,
}

impl SourceBasis {
    /// Each with its word in course files.
    pub const ALL: [(SourceBasis, &'static str); 5] = [
        (SourceBasis::Checked, "checked"),
        (SourceBasis::Copied, "copied"),
        (SourceBasis::FromMemory, "from-memory"),
        (SourceBasis::CommonPractice, "common-practice"),
        (SourceBasis::Representative, "representative"),
    ];

    /// The word in course files.
    pub fn word(self) -> &'static str {
        SourceBasis::ALL[self as usize].1
    }
}
