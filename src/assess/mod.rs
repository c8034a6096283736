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

#[cfg(feature = "program")]
pub mod assigned;
#[cfg(feature = "program")]
mod book;
#[cfg(feature = "program")]
mod carriers;
pub mod cohort;
#[cfg(feature = "program")]
mod counted;
#[cfg(feature = "program")]
mod difficulty;
#[cfg(feature = "program")]
mod given;
#[cfg(feature = "program")]
mod idle;
#[cfg(feature = "program")]
pub mod items;
#[cfg(feature = "program")]
mod key;
pub mod knowledge;
#[cfg(feature = "program")]
mod marking;
#[cfg(feature = "program")]
mod paper;
#[cfg(feature = "program")]
mod pool;
#[cfg(feature = "program")]
mod put;
#[cfg(feature = "program")]
mod question;
#[cfg(feature = "program")]
mod register;
#[cfg(feature = "program")]
pub mod report;
pub mod session;
#[cfg(feature = "program")]
mod slip;
#[cfg(feature = "program")]
mod spreadsheet;
#[cfg(feature = "program")]
pub mod standard;
#[cfg(feature = "program")]
mod survey;
#[cfg(feature = "program")]
mod table;
#[cfg(feature = "program")]
mod visible;

#[cfg(feature = "program")]
pub(crate) use book::EXPORT_HEAD;
#[cfg(feature = "program")]
pub use book::{BookError, BookReader, MarkBook, Recorded, ResultKind, Selection, SittingKept};
#[cfg(feature = "program")]
pub use difficulty::{engine_difficulty, written_difficulty};
#[cfg(feature = "program")]
pub use idle::{IdleDrill, Outside};
#[cfg(feature = "program")]
pub use key::{Key, KeyError, KeySection, MarkTables};
#[cfg(feature = "program")]
pub(crate) use key::{digest_of_kept, read_kept};
#[cfg(feature = "program")]
pub use marking::{AnswerMarks, Given, MarkingError, SectionMarks, SlipMarks, mark_slip};
#[cfg(feature = "program")]
pub use paper::{AssembleError, Paper, PaperId, Picked};
#[cfg(feature = "program")]
pub use pool::{PaperPool, PoolError, PoolQuestion};
#[cfg(feature = "program")]
pub use put::QuestionPut;
#[cfg(feature = "program")]
pub use question::{CaseTold, QuestionAsked};
#[cfg(feature = "program")]
pub use register::{Person, Register, RegisterError};
#[cfg(feature = "program")]
pub use slip::{MOST_BYTES as MOST_SLIP_BYTES, Slip, SlipError, SlipTime};
#[cfg(feature = "program")]
pub(crate) use spreadsheet::{BYTE_ORDER_MARK, guarded};
#[cfg(feature = "program")]
pub use survey::{Survey, survey};
#[cfg(feature = "program")]
pub use table::MarkTable;
#[cfg(feature = "program")]
pub(crate) use visible::visible;

use crate::quantity::Quantity;

/// What an answer is worth.
pub const CREDIT: Quantity = Quantity::new("credit", "", 0.0, 1.0);
