//! Sites of the body, as far as they change the layers.

use serde::{Deserialize, Serialize};

/// Where the work goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Site {
    /// Brow.
    #[default]
    Brow,
    /// Eyelid, for liner.
    Eyelid,
}

impl Site {
    /// Every site with its word in files.
    pub const ALL: [(Site, &'static str); 2] = [(Site::Brow, "brow"), (Site::Eyelid, "eyelid")];

    /// Word in files and on screens.
    pub fn word(self) -> &'static str {
        match self {
            Site::Brow => "brow",
            Site::Eyelid => "eyelid",
        }
    }

    /// Thickness of the epidermis in mm: 0.08 on the brow (the project's design), 0.05 on the eyelid (representative: eyelid
    /// skin is the thinnest of the face).
    pub fn epidermis_mm(self) -> f64 {
        match self {
            Site::Brow => 0.08,
            Site::Eyelid => 0.05,
        }
    }
}
