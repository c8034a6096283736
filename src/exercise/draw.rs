//! One draw of a drill: a client, a goal and a placement, with every mix of the drop grid tried in it.

use super::generate::{Attempt, Discard};
use super::grid::grid_of;
use super::kept::{View, healed};
use super::seed::below;
use super::{Case, CaseGoal, Placed};
use crate::colour::{Lab, Light, difference};
use crate::course::{Client, Course, Drill, Goal, Limits};
use crate::healing::{Appearance, Placement, Reading, Scene, Work};
use crate::pigment::{Mix, Paint, Shelf};
use crate::search::{Grid, Tried, rank_known};
use rand::Rng;

/// The situation of an exercise, as the engine needs it.
pub(super) struct Setting<'c> {
    pub seed: u64,
    pub client: &'c Client,
    pub goal: &'c Goal,
    pub placement: Placement,
    pub months: f64,
    pub light: Light,
    pub existing: Vec<Work>,
}

/// Depths, loads and coverages a case may have (representative).
const DEPTHS_MM: [f64; 4] = [0.10, 0.12, 0.14, 0.16];
const LOADS: [f64; 3] = [0.85, 1.0, 1.15];
pub(super) const COVERAGES: [f64; 3] = [0.8, 0.85, 0.9];

impl<'c> Setting<'c> {
    /// Draws a setting: the client is given, the rest is chosen.
    pub fn draw(course: &'c Course, drill: &Drill, client: &'c Client, rng: &mut impl Rng) -> Option<Self> {
        let further = client.further_goals.iter().filter(|_| drill.further_goals);
        let goals: Vec<&String> = match drill.goals.as_slice() {
            [] => [&client.goal].into_iter().chain(further).collect(),
            goals => goals.iter().collect(),
        };
        let goal = goals[below(rng, goals.len())];
        let placement = Placement {
            depth_mm: DEPTHS_MM[below(rng, DEPTHS_MM.len())],
            load: LOADS[below(rng, LOADS.len())],
            coverage: COVERAGES[below(rng, COVERAGES.len())],
            ..Placement::default()
        };
        Some(Setting {
            seed: course.seed,
            client,
            goal: course.goal(goal)?,
            placement,
            months: drill.judged.months,
            light: drill.judged.light,
            existing: client.works(),
        })
    }

    /// Draws a setting with the attempt's client, who may be worked on as far as the answers on health go.
    ///
    /// # Errors
    /// [`Discard::Caution`] where they do not allow it.
    pub fn safe(course: &'c Course, drill: &Drill, draw: &mut Attempt<'c>) -> Result<Self, Discard> {
        let setting = Setting::draw(course, drill, draw.client, &mut draw.rng).ok_or(Discard::Unresolved)?;
        if setting.client.cautions().next().is_none() { Ok(setting) } else { Err(Discard::Caution) }
    }

    /// The setting of a case that was told before.
    pub fn of_case(course: &'c Course, case: &Case) -> Option<Self> {
        let client = course.client(&case.client)?;
        let placed = case.placed?;
        Some(Setting {
            seed: course.seed,
            client,
            goal: course.goal(&case.goal.as_ref()?.id)?,
            placement: placed.placement,
            months: placed.months,
            light: case.light,
            existing: client.works(),
        })
    }

    /// The scene when the result is judged.
    pub fn scene<'s>(&self, shelf: &'s Shelf) -> Scene<'s> {
        Scene::new(shelf, &self.client.skin, self.client.site, &self.existing, self.months)
    }

    /// ΔE00 between a colour and the goal. The goal is a colour under D65; under another light the eye is taken to have adapted.
    pub fn error(&self, lab: Lab) -> f64 {
        difference(lab, self.goal.lab)
    }

    /// The case as it is told.
    pub fn case(&self, course: &Course) -> Case {
        let today = Scene::today(&course.shelf, &self.client.skin, self.client.site, &self.existing);
        let bare = Appearance::of(today.bare(), self.light);
        let now = Appearance::of(today.existing(), self.light);
        Case {
            client: self.client.id.clone(),
            goal: Some(CaseGoal {
                id: self.goal.id.clone(),
                lab: self.goal.lab,
                tolerance: self.goal.tolerance,
            }),
            placed: Some(Placed { placement: self.placement, months: self.months }),
            light: self.light,
            bare,
            now,
            now_reading: Reading::of(now.lab, bare.lab, self.client.site).in_language(&course.language),
            exhibits: Vec::new(),
            skin_is_told: true,
            device_reads: false,
        }
    }
}

/// One mix of a drill's grid.
pub(super) fn any_mix<'g>(grid: &'g Grid, rng: &mut impl Rng) -> &'g (Mix, Paint) {
    &grid.mixes()[below(rng, grid.mixes().len())]
}

/// The whole drop grid of a drill, tried in a setting over this existing work, nearest to the goal first; `scene` is the setting's with that
/// work.
pub(super) fn ranked(
    shelf: &Shelf,
    setting: &Setting,
    limits: &Limits,
    (existing, scene): (&[Work], &Scene),
) -> Vec<Tried> {
    let grid = grid_of(shelf, limits);
    let view = View { skin: &setting.client.skin, existing, months: setting.months };
    let mixes: Vec<(&Mix, &Paint)> = grid.mixes().iter().map(|(mix, paint)| (mix, paint)).collect();
    let healed = healed(shelf, setting, (limits, &mixes), &view, Some(scene));
    rank_known(&grid, healed, setting.goal.lab)
}
