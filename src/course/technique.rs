//! How work on a brow is made, as far as it can be seen.

use serde::{Deserialize, Serialize};

/// How work on a brow is made. It says how work is drawn; what a technique does to colour is said by load and coverage.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Technique {
    /// Single strokes like hairs.
    Strokes,
    /// An even veil.
    Powder,
    /// A veil with strokes at its upper edge.
    #[default]
    PowderWithStrokes,
}

impl Technique {
    /// Every technique with the word that course files use.
    pub const ALL: [(Technique, &'static str); 3] = [
        (Technique::Strokes, "strokes"),
        (Technique::Powder, "powder"),
        (Technique::PowderWithStrokes, "powder-with-strokes"),
    ];
}
