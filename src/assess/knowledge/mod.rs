//! Practice that adapts: what an apprentice probably knows, and what to practise next.
//!
//! Bayesian knowledge tracing (Corbett and Anderson 1995), one trace a skill: the apprentice either knows a skill or does
//! not; who knows it slips at times, who does not guesses; after every answer some more have learnt it. Added here: knowing
//! decays with the days that pass (see [`Parameters::new`]), and partial credit counts partly (see
//! [`Knowledge::answered`]).
//!
//! Steps: [`Progress::read`] a record or begin a new one; [`choose`] the next exercise, or [`plan`] a session by minutes;
//! when it is answered, [`Progress::answered`]; [`Progress::write`] the record. Time is an argument everywhere: seconds
//! since 1970, whatever clock they come from.

mod choice;
mod guess;
mod parameters;
mod plan;
mod progress;
mod trace;

pub use choice::{MASTERED, Offer, READY, Recent, SPACED_BY, SkillNeeds, choose};
pub use guess::AnswerForm;
pub use parameters::{GUESS_MOST, Parameters};
pub use plan::{MOST_STEPS, Step, plan};
pub use progress::{FORMAT, Progress, ReadError, Unusable, Unused, Wanted};
pub use trace::Knowledge;

/// Seconds since the beginning of 1970.
pub type Seconds = i64;

/// Seconds of a day.
pub const DAY: Seconds = 86_400;
