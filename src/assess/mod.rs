//! Assessment: what answers say about questions, about a cohort and about one apprentice.
//!
//! Pure functions of typed answers: no files, no clock, no screens. Entry points: [`items::analyse`] for the statistics of
//! a paper sat by a cohort, [`standard::angoff`] and [`standard::decide`] for pass marks, [`cohort::skills`] and
//! [`cohort::misconceptions`] for what to teach next, [`knowledge`] for practice that adapts, [`session`] for a session of it,
//! [`assigned`] for practice that an instructor assigns.

pub mod assigned;
pub mod cohort;
pub mod items;
pub mod knowledge;
pub mod session;
pub mod standard;

use crate::quantity::Quantity;

/// What an answer is worth.
pub const CREDIT: Quantity = Quantity::new("credit", "", 0.0, 1.0);
