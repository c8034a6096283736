//! Searching: every mix of a drop grid tried in one client's skin, ranked by how near it heals to the goal.
//!
//! Entry points: [`Search::run`] for a palette and limits; [`rank`] for any [`Grid`] in any [`Trial`](crate::healing::Trial), which is what exercises use.
//! Steps: list the grid, each ratio of drops once ([`Grid`]); see every mix in the client's skin, whose bare layers are computed
//! once ([`rank`]); read off the best, what an eye cannot tell from it, the gap to the rest, and how the goal is missed
//! ([`Found`]). Nothing is skipped there. [`Search::nearest`] tells the head of the same ranking and solves only what is near it.

mod error;
mod found;
mod grid;
mod nearest;
mod rank;

pub use error::SearchError;
pub use found::{Found, Miss, NearTie};
#[cfg(feature = "practice")]
pub(crate) use grid::with_additions;
pub use grid::{BOTTLES, DROPS, Grid, MOST_MIXES, Palette};
pub use nearest::Nearest;
pub use rank::{Tried, healed_colours, rank, rank_known};

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
    palette: Palette,
    /// Shared, since a grid is large and requests are copied.
    grid: Arc<Grid>,
}

impl Search {
    /// A search for a goal among what can be mixed from a palette.
    ///
    /// # Errors
    /// [`SearchError`] when the goal or a limit is outside its bounds, a bottle is unknown or named twice, the palette is empty, or
    /// the grid is larger than [`MOST_MIXES`].
    pub fn new(shelf: &Shelf, goal: Goal, palette: Palette) -> Result<Self, SearchError> {
        Search::after(None, shelf, goal, palette)
    }

    /// The same after another search on the same shelf, whose grid is kept where the palette is the same.
    ///
    /// # Errors
    /// As [`Search::new`].
    pub fn after(
        before: Option<&Search>,
        shelf: &Shelf,
        goal: Goal,
        palette: Palette,
    ) -> Result<Self, SearchError> {
        let goal = goal.checked()?;
        let grid = match before {
            Some(before) if before.palette == palette => Arc::clone(&before.grid),
            _ => Arc::new(Grid::of_palette(shelf, &palette)?),
        };
        Ok(Search { goal, palette, grid })
    }

    /// Tries every mix in this scene, whose shelf is the one the search was made for. The result does not depend on the cores.
    pub fn run<const N: usize>(
        &self,
        scene: &Scene<N>,
        placement: &Placement,
        light: Light,
        cores: Cores,
    ) -> Found {
        let ranking = rank(&scene.trial(placement), &self.grid, self.goal.lab, light, cores);
        Found {
            goal: self.goal,
            mixes: self.mixes(),
            ranking,
            possible: self.grid.possible(),
            untouched: light.lab_of(&scene.existing()),
        }
    }

    /// The goal.
    pub fn goal(&self) -> Goal {
        self.goal
    }

    /// Different paints to try.
    pub fn mixes(&self) -> usize {
        self.grid.mixes().len()
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
