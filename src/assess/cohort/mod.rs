//! What a cohort can do, and what it believes wrongly.
//!
//! Entry points: [`skills`] for the mean credit of every apprentice in every skill, [`misconceptions`] for how often each
//! wrong belief was offered and chosen by a whole cohort, [`misconceptions_of`] the same of one person, [`diagnosis`] for the one
//! that explains a person's answers best.

mod diagnosis;
mod interval;
mod misconceptions;
mod skills;

pub use diagnosis::{Belief, diagnosis, misconceptions_of};
pub use interval::{Interval, wilson};
pub use misconceptions::{FEWEST_CHOICES, Leads, MisconceptionCount, Shown, misconceptions};
pub use skills::{PersonSkills, SkillAnswer, SkillMean, SkillTable, skills};
