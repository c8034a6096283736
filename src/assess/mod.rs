//! Assessment: papers out of pools of proved exercises, answer slips, marks and the mark book; and what answers say about questions,
//! about a cohort and about one apprentice.
//!
//! Entry points, in the order of the work: [`PaperPool::new`] makes the questions of a blueprint once, [`PaperPool::paper`] picks a
//! paper out of them, [`Register::read`] says who sits it, [`Key`] and [`MarkTables`] say what answers are worth, [`Slip::read`] reads
//! what somebody handed in, [`mark_slip`] marks it, and [`MarkBook`] keeps the marks. Then [`items::analyse`] for the statistics of
//! a paper sat by a cohort, [`standard::angoff`] and [`standard::decide`] for pass marks, [`cohort::skills`] and
//! [`cohort::misconceptions`] for what to teach next, [`report::report`] for all of it on a cohort's marked sheets, [`knowledge`] for
//! practice that adapts, [`session`] for a session of it, [`assigned`] for practice that an instructor assigns: pure functions of
//! typed answers.

pub mod assigned;
mod book;
pub mod cohort;
mod difficulty;
pub mod items;
mod key;
pub mod knowledge;
mod marking;
mod paper;
mod pool;
mod put;
mod question;
mod register;
pub mod report;
pub mod session;
mod slip;
mod spreadsheet;
pub mod standard;
mod survey;
mod table;

pub use book::{BookError, BookReader, MarkBook, Recorded, ResultKind, Selection, SittingKept};
pub use difficulty::{engine_difficulty, written_difficulty};
pub use key::{Key, KeyError, KeySection, MarkTables};
pub use marking::{AnswerMarks, MarkingError, SectionMarks, SlipMarks, mark_slip, mark_table};
pub use paper::{AssembleError, Paper, PaperId, Picked};
pub use pool::{PaperPool, PoolError, PoolQuestion};
pub use put::QuestionPut;
pub use question::QuestionAsked;
pub use register::{Person, Register, RegisterError};
pub use slip::{Slip, SlipError};
pub(crate) use spreadsheet::guarded;
pub use survey::{Survey, survey};
pub use table::MarkTable;

use crate::quantity::Quantity;

/// What an answer is worth.
pub const CREDIT: Quantity = Quantity::new("credit", "", 0.0, 1.0);
