//! Why a request cannot be answered.

use crate::quantity::OutOfRange;
use serde::Serialize;
use thiserror::Error;

/// Why a request cannot be answered: the field, and what is wrong with it.
#[derive(Debug, Clone, PartialEq, Serialize, Error)]
#[error("{field}: {why}")]
pub struct RequestError {
    /// The field, with dots and places in lists: `existing[0].mix`.
    pub field: String,
    /// What is wrong, and what would be right.
    pub why: String,
}

impl RequestError {
    /// An error of this field.
    pub(super) fn new(field: impl Into<String>, why: impl Into<String>) -> Self {
        RequestError { field: field.into(), why: why.into() }
    }

    /// A number of this field is outside its bounds.
    pub(super) fn breach(field: impl Into<String>) -> impl FnOnce(OutOfRange) -> Self {
        let field = field.into();
        move |breach| RequestError { field, why: breach.to_string() }
    }
}
