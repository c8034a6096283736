//! Pass marks: where the line is, and how sure it is who stands on which side.
//!
//! Entry points: [`angoff`] sets a pass mark from judges' estimates, [`decide`] holds a score against it.

mod angoff;
mod decision;

pub use angoff::{AngoffError, ESTIMATE, Estimate, Judge, PassMark, QUESTIONS, angoff};
pub use decision::{Certainty, Decision, decide};
