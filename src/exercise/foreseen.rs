//! What one swatch of a lesson shows.

pub use crate::course::Foreseen;
use crate::course::{Course, Show, foresee_on};

/// Computes a swatch. A client that the course does not have is the loader's error; `None` then.
pub fn foresee(course: &Course, show: &Show) -> Option<Foreseen> {
    let seen = foresee_on(&course.shelf, course.client(&show.client)?, show);
    Some(Foreseen { reading: seen.reading.in_language(&course.language), ..seen })
}
