//! Statistics of the items of one paper sat by a cohort.
//!
//! Steps: a [`Sitting`] checks the answers; [`analyse`] computes facility and discrimination (`classical`), what each
//! option drew (`options`), reliability with its standard error (`reliability`), Rasch difficulties, measures and fit
//! (`rasch`), and says in words which items to revise (`flag`). What cannot be computed is `None`, with words that say why;
//! never "not a number".

mod analysis;
mod classical;
mod flag;
mod options;
pub mod rasch;
mod reliability;
mod sitting;

pub use analysis::{Analysis, ItemReport, PersonReport, analyse};
pub use classical::{Classical, classical};
pub use flag::{
    DISCRIMINATION_LEAST, FACILITY_LEAST, FACILITY_MOST, FEWEST_ANSWERS, FEWEST_CHOOSERS, FIT_LEAST,
    FIT_MOST, FIT_T, Flag,
};
pub use options::{OptionRow, option_rows};
pub use reliability::{Coefficient, Reliability, Unreliable, reliability};
pub use sitting::{Answer, Candidate, Item, ItemOption, RIGHT_FROM, Sitting, SittingError};
