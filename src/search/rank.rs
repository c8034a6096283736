//! The exhaustive search itself.

use super::Grid;
use crate::colour::{Lab, Light, difference};
use crate::healing::Trial;
use crate::parallel::{Cores, map};
use crate::pigment::{Mix, Paint};

/// A mix that was tried.
#[derive(Debug, Clone, PartialEq)]
pub struct Tried {
    /// The mix, in the fewest drops of its ratio.
    pub mix: Mix,
    /// What it is made of.
    pub paint: Paint,
    /// The colour it heals to, under the light it is judged under.
    pub healed: Lab,
    /// ΔE00 between that colour and the goal.
    pub error: f64,
}

/// The colours that these paints heal to, in their order.
pub fn healed_colours<const N: usize>(
    trial: &Trial<N>,
    paints: &[&Paint],
    light: Light,
    cores: Cores,
) -> Vec<Lab> {
    map(cores, paints, || (), |(), paint| light.lab_of(&trial.with(paint)))
}

/// Every mix of a grid tried, nearest to the goal first; equally near ones in the order of [`Mix`].
pub fn rank<const N: usize>(
    trial: &Trial<N>,
    grid: &Grid,
    goal: Lab,
    light: Light,
    cores: Cores,
) -> Vec<Tried> {
    let paints: Vec<&Paint> = grid.mixes().iter().map(|(_, paint)| paint).collect();
    rank_known(grid, healed_colours(trial, &paints, light, cores), goal)
}

/// The same of a grid whose mixes are known to heal to these colours, in their order.
pub fn rank_known(grid: &Grid, healed: Vec<Lab>, goal: Lab) -> Vec<Tried> {
    ranked(grid, healed.into_iter().enumerate(), goal)
}

/// The same of mixes by their places in the grid, when the colours that they heal to are known.
pub(super) fn ranked(grid: &Grid, healed: impl IntoIterator<Item = (usize, Lab)>, goal: Lab) -> Vec<Tried> {
    let mut tried: Vec<Tried> = healed
        .into_iter()
        .map(|(place, healed)| {
            let (mix, paint) = grid.mixes()[place].clone();
            Tried { mix, paint, healed, error: difference(healed, goal) }
        })
        .collect();
    tried.sort_by(|one, other| one.error.total_cmp(&other.error).then_with(|| one.mix.cmp(&other.mix)));
    tried
}
