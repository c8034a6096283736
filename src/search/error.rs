//! Why a search cannot be made.

use super::MOST_MIXES;
use crate::quantity::OutOfRange;
use thiserror::Error;

/// Why a search cannot be made.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum SearchError {
    /// A number outside its bounds.
    #[error("{breach}")]
    OutOfRange {
        /// The field it stands in.
        field: &'static str,
        /// The number and its bounds.
        breach: OutOfRange,
    },
    /// There is nothing to mix from.
    #[error("there is no bottle to mix from; at least 1 is needed")]
    EmptyPalette,
    /// A bottle that is not on the shelf.
    #[error("there is no bottle `{bottle}` on the shelf")]
    UnknownBottle {
        /// Its id.
        bottle: String,
        /// Its place in the palette.
        place: usize,
    },
    /// A bottle that stands in the palette already.
    #[error("bottle `{bottle}` is named twice")]
    NamedTwice {
        /// Its id.
        bottle: String,
        /// The second place in the palette.
        place: usize,
    },
    /// The grid is too large.
    #[error(
        "{} mixes are possible, more than the {MOST_MIXES} that are tried; allow fewer drops, fewer bottles in a mix, or a smaller \
         palette",
        count(*possible)
    )]
    TooManyMixes {
        /// Mixes that would have to be listed; the greatest number there is where it is still larger.
        possible: u64,
    },
}

fn count(possible: u64) -> String {
    if possible == u64::MAX { format!("over {possible}") } else { possible.to_string() }
}

impl SearchError {
    /// The field that is wrong, as a request names it.
    pub fn field(&self) -> String {
        match self {
            SearchError::OutOfRange { field, .. } => (*field).to_owned(),
            SearchError::EmptyPalette => "palette".to_owned(),
            SearchError::UnknownBottle { place, .. } | SearchError::NamedTwice { place, .. } => {
                format!("palette[{place}]")
            }
            SearchError::TooManyMixes { .. } => "drops".to_owned(),
        }
    }
}
