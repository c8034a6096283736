//! Healing: what a placement looks like in a client's skin, and how it changes with time.
//!
//! Entry point: [`Scene`]. A scene is a client's skin with its existing work at a given time after a new placement; it keeps
//! the layers that do not change, so that many mixes can be tried in it. Steps: age every placement, cut the skin into layers
//! of one composition, add them up ([`crate::optics`]), mix covered and uncovered skin, and read off an [`Appearance`].

mod appearance;
mod chart;
mod layers;
mod measured;
mod outcome;
mod placement;
mod plain;
mod quasi;
mod reading;
mod regions;
mod scene;
mod spread;
mod strata;
mod time;
mod tone;
mod upkeep;
mod wear;

pub use appearance::Appearance;
pub use chart::Chart;
pub use layers::masstone;
pub use measured::healed_spread;
pub use outcome::{Case, DEFAULT_WORLDS, OUTCOME_WORLDS, Outcome, SHARE, Worlds};
pub use placement::{AMOUNT, COVERAGE, DEPTH, LOAD, MONTHS, MOST_WORKS, Placement, THICKNESS, Work};
pub use reading::Reading;
pub use regions::EXACT_WORKS;
pub use scene::{Scene, Trial};
pub use spread::{Deviation, Spread, World};
pub use time::{HEALED_MONTHS, retention};
pub use tone::Tone;
pub use upkeep::{TouchUp, Upkeep};
pub use wear::{Aftercare, Oil, Sun, Wear};
