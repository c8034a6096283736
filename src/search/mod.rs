//! Searching: every mix of a drop grid tried in one client's skin, ranked by how near it heals to the goal.
//!
//! Entry points: [`Search::run`] for a palette and limits; [`rank`] for any [`Grid`] in any [`Trial`](crate::healing::Trial), which is what exercises use.
//! Steps: list the grid, each ratio of drops once ([`Grid`]); see every mix in the client's skin, whose bare layers are computed
//! once ([`rank`]); read off the best, what an eye cannot tell from it, the gap to the rest, and how the goal is missed
//! ([`Found`]). Nothing is skipped: no bound is known that is cheaper than a mix and could rule one out exactly.

mod error;
mod found;
mod grid;
mod rank;

pub use error::SearchError;
pub use found::{Found, Miss, NearTie};
#[cfg(feature = "practice")]
pub(crate) use grid::with_additions;
pub use grid::{BOTTLES, DROPS, Grid, MOST_MIXES, Palette};
pub use rank::{Tried, healed_colours, rank};

use crate::Cores;
use crate::colour::{BLUE_YELLOW, GREEN_RED, LIGHTNESS, Lab, Light};
use crate::healing::{Placement, Scene};
use crate::pigment::Shelf;
use crate::quantity::Quantity;
use std::sync::Arc;

/// Bounds of the ΔE00 within which a goal counts as reached.
pub const TOLERANCE: Quantity = Quantity::new("tolerance", "ΔE00", 0.5, 20.0);

/// What the healed colour should be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Goal {
    /// The wished colour under D65; under another light the eye is taken to have adapted.
    pub lab: Lab,
    /// ΔE00 within which it counts as reached.
    pub tolerance: f64,
}

/// A goal, and every mix that may be tried for it.
#[derive(Debug, Clone)]
pub struct Search {
    goal: Goal,
    /// Shared, since a grid is large and requests are copied.
    grid: Arc<Grid>,
}

impl Search {
    /// A search for a goal among what can be mixed from a palette.
    ///
    /// # Errors
    /// [`SearchError`] when the goal or a limit is outside its bounds, a bottle is unknown or named twice, the palette is empty, or
    /// the grid is larger than [`MOST_MIXES`].
    pub fn new(shelf: &Shelf, goal: Goal, palette: &Palette) -> Result<Self, SearchError> {
        Ok(Search { goal: goal.checked()?, grid: Arc::new(Grid::of_palette(shelf, palette)?) })
    }

    /// Tries every mix in this scene, whose shelf is the one the search was made for. The result does not depend on the cores.
    pub fn run<const N: usize>(
        &self,
        scene: &Scene<N>,
        placement: &Placement,
        light: Light,
        cores: Cores,
    ) -> Found {
        let healed = self.healed(scene, placement, light, cores, 0, 1);
        self.found(healed, light.lab_of(&scene.existing()))
    }

    /// Different paints to try.
    pub fn mixes(&self) -> usize {
        self.grid.mixes().len()
    }

    /// The colours that every `of`-th mix heals to, from `place` on: one of `of` shares of the work, which must not be none.
    pub fn healed<const N: usize>(
        &self,
        scene: &Scene<N>,
        placement: &Placement,
        light: Light,
        cores: Cores,
        place: usize,
        of: usize,
    ) -> Vec<Lab> {
        let mixes = self.grid.mixes().iter().skip(place).step_by(of.max(1));
        let paints: Vec<_> = mixes.map(|(_, paint)| paint).collect();
        healed_colours(&scene.trial(placement), &paints, light, cores)
    }

    /// What is found when all mixes, in their order, heal to these colours, as many as [`Search::mixes`]; `untouched` is the colour
    /// without any new work.
    pub fn found(&self, healed: Vec<Lab>, untouched: Lab) -> Found {
        Found {
            goal: self.goal,
            ranking: rank::ranked(&self.grid, healed, self.goal.lab),
            possible: self.grid.possible(),
            untouched,
        }
    }
}

impl Goal {
    /// This goal, if its numbers lie within their bounds.
    ///
    /// # Errors
    /// [`SearchError::OutOfRange`] names the coordinate or the tolerance that does not, or is not a number.
    pub fn checked(self) -> Result<Self, SearchError> {
        let breach = |field| move |breach| SearchError::OutOfRange { field, breach };
        LIGHTNESS.check(self.lab.l).map_err(breach("goal"))?;
        GREEN_RED.check(self.lab.a).map_err(breach("goal"))?;
        BLUE_YELLOW.check(self.lab.b).map_err(breach("goal"))?;
        TOLERANCE.check(self.tolerance).map_err(breach("tolerance"))?;
        Ok(self)
    }
}
