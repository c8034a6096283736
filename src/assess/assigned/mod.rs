//! Practice that an instructor assigns: every person's own set of exercises, and what comes back of it.
//!
//! Entry points: [`practice_sets`] makes the sets, [`AssignmentSlip::read`] reads an answer slip, [`mark_assigned`] marks it. A set is a pure function of the
//! course, the assignment and the person's id. Marks are worked out anew from the course; of a slip nothing is trusted but whose it is
//! and the raw answers.

mod collect;
mod set;
mod slip;

pub use collect::{AnswerMarked, CollectError, Collected, SlipMarked, mark_assigned};
pub use set::{PracticeSet, lesson_pools, practice_set, practice_sets};
pub use slip::{AssignmentSlip, FORM, Identity};
