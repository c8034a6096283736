//! Searching: every mix of a drop grid tried in one client's skin, ranked by how near it heals to the goal.
//!
//! Entry points: [`Search::run`] for a palette and limits; [`rank`] for any [`Grid`] in any [`Trial`], which is what exercises use.
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
use crate::colour::{BLUE_YELLOW, GREEN_RED, LIGHTNESS, Lab, Light, difference};
use crate::healing::{Placement, Scene, Trial};
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

/// A mix by its place in the grid, as one of several shares of a search came to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Placed {
    /// The place, from 0.
    pub place: usize,
    /// The colour it heals to.
    pub healed: Lab,
    /// ΔE00 between that colour and the goal.
    pub error: f64,
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
        let healed = self.healed(&scene.trial(placement), light, cores, 0, 1);
        self.found(healed.into_iter().enumerate(), light.lab_of(&scene.existing()))
    }

    /// The goal.
    pub fn goal(&self) -> Goal {
        self.goal
    }

    /// Different paints to try.
    pub fn mixes(&self) -> usize {
        self.grid.mixes().len()
    }

    /// Tries every `of`-th mix, from `place` on: one of `of` shares of the work, which must not be none. Nearest to the goal first,
    /// in the order of [`Found::ranking`].
    pub fn share<const N: usize>(
        &self,
        trial: &Trial<N>,
        light: Light,
        cores: Cores,
        place: usize,
        of: usize,
    ) -> Vec<Placed> {
        let healed = self.healed(trial, light, cores, place, of);
        let placed = |(at, healed)| Placed {
            place: place + at * of,
            healed,
            error: difference(healed, self.goal.lab),
        };
        let mut tried: Vec<Placed> = healed.into_iter().enumerate().map(placed).collect();
        let mix = |placed: &Placed| &self.grid.mixes()[placed.place].0;
        tried.sort_by(|one, other| one.error.total_cmp(&other.error).then_with(|| mix(one).cmp(mix(other))));
        tried
    }

    fn healed<const N: usize>(
        &self,
        trial: &Trial<N>,
        light: Light,
        cores: Cores,
        place: usize,
        of: usize,
    ) -> Vec<Lab> {
        let mixes = self.grid.mixes().iter().skip(place).step_by(of.max(1));
        let paints: Vec<_> = mixes.map(|(_, paint)| paint).collect();
        healed_colours(trial, &paints, light, cores)
    }

    /// What is found when all mixes were tried and the nearest to the goal, by their places in the grid, heal to these colours; at
    /// least one, and places there are. `untouched` is the colour without any new work.
    pub fn found(&self, nearest: impl IntoIterator<Item = (usize, Lab)>, untouched: Lab) -> Found {
        Found {
            goal: self.goal,
            mixes: self.mixes(),
            ranking: rank::ranked(&self.grid, nearest, self.goal.lab),
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
