//! Searching for mixes in JSON.

use super::request::unknown;
use super::{RequestError, Task};
use crate::Cores;
use crate::colour::{JUST_VISIBLE, Lab};
use crate::pigment::{Mix, Shelf};
use crate::search::{Found, Goal, Miss, Palette, Search, SearchError, Tried};
use crate::skin::Site;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// What is searched for, as written. Everything but `goal` has a default.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SearchRequest {
    /// L*, a*, b* that the work should have under D65, seen through the skin.
    pub goal: [f64; 3],
    /// ΔE00 within which the goal counts as reached; 4 by default, as most goals of the demo course have it.
    #[serde(default = "tolerance")]
    pub tolerance: f64,
    /// Ids of the bottles to mix from; by default all that are meant for the site and hold nothing restricted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub palette: Option<Vec<String>>,
    /// Different bottles in one mix, at most; 2 by default.
    #[serde(default = "bottles")]
    pub bottles: u32,
    /// Drops in one mix, at most; 6 by default.
    #[serde(default = "drops")]
    pub drops: u32,
}

fn tolerance() -> f64 {
    4.0
}

fn bottles() -> u32 {
    2
}

fn drops() -> u32 {
    6
}

/// What was found.
#[derive(Debug, Clone, Serialize)]
pub struct SearchAnswer {
    /// Different paints tried: all there are within the limits.
    pub mixes: usize,
    /// Mixes within the limits when equal ratios (1:1, 2:2) are counted apart.
    pub possible: u64,
    /// L*, a*, b* searched for.
    pub goal: [f64; 3],
    /// ΔE00 within which it counts as reached.
    pub tolerance: f64,
    /// Whether the best mix reaches it.
    pub reached: bool,
    /// The mix that heals nearest to the goal.
    pub best: TriedAnswer,
    /// ΔE00 that an eye just sees: mixes farther from the goal than the best by no more than this are near-ties.
    pub just_visible: f64,
    /// Every near-tie, nearest to the goal first.
    pub near_ties: Vec<TriedAnswer>,
    /// ΔE00 by which every other mix is farther from the goal than the best, at least; none where there is no other mix.
    pub gap: Option<f64>,
    /// How the goal is missed, where it is.
    pub miss: Option<Miss>,
    /// ΔE00 from the goal if nothing new is placed.
    pub untouched_delta_e_2000: f64,
    /// All this in words.
    pub words: String,
}

/// A mix that was tried.
#[derive(Debug, Clone, Serialize)]
pub struct TriedAnswer {
    /// Drops by bottle, in the fewest drops of the ratio.
    pub mix: BTreeMap<String, u32>,
    /// L*, a*, b* it heals to.
    pub lab: [f64; 3],
    /// ΔE00 from the goal.
    pub delta_e_2000: f64,
    /// ΔE00 from what the best heals to.
    pub from_best: f64,
}

impl SearchRequest {
    /// Checks what is searched for at this site against what is on the shelf.
    ///
    /// # Errors
    /// [`RequestError`] names the first field that holds an unknown bottle, one named twice or none, a number outside its bounds, or
    /// limits that allow too many mixes.
    pub fn resolve(&self, shelf: &Shelf, site: Site) -> Result<Search, RequestError> {
        self.resolve_after(None, shelf, site)
    }

    /// The same after another search on this shelf, whose grid is kept where it can be.
    pub(super) fn resolve_after(
        &self,
        before: Option<&Search>,
        shelf: &Shelf,
        site: Site,
    ) -> Result<Search, RequestError> {
        let [l, a, b] = self.goal;
        let goal = Goal { lab: Lab::new(l, a, b), tolerance: self.tolerance };
        let plain = || {
            let plain = shelf.bottles.iter().filter(|bottle| {
                bottle.is_meant_for(site) && shelf.restrictions_in(&bottle.recipe).is_empty()
            });
            plain.map(|bottle| bottle.id.clone()).collect()
        };
        let palette = Palette {
            bottles: self.palette.clone().unwrap_or_else(plain),
            most_bottles: self.bottles,
            drops: self.drops,
        };
        Search::after(before, shelf, goal, palette).map_err(|error| {
            let field = format!("search.{}", error.field());
            match error {
                SearchError::UnknownBottle { bottle, .. } => {
                    let known = shelf.bottles.iter().map(|bottle| bottle.id.as_str());
                    unknown(&field, "bottle", &bottle, known)
                }
                other => RequestError::new(field, other.to_string()),
            }
        })
    }
}

impl Task {
    /// What the search finds, if one was asked for.
    pub fn found(&self, shelf: &Shelf) -> Option<Found> {
        let search = self.search.as_ref()?;
        let scene = self.scene(shelf, self.months, &self.upkeep);
        Some(search.run(&scene, &self.placement, self.light, Cores::All))
    }

    /// This task with the best mix found, where it names none itself.
    pub fn with_best(&self, found: Option<&Found>) -> Task {
        match found {
            Some(found) if self.mix.total() == 0 => {
                let best = found.best();
                Task { mix: best.mix.clone(), paint: best.paint.clone(), search: None, ..self.clone() }
            }
            _ => self.clone(),
        }
    }
}

impl SearchAnswer {
    /// What was found for work at a site, for JSON.
    pub fn of(shelf: &Shelf, found: &Found, site: Site) -> Self {
        let tried = TriedAnswer::of;
        let goal = found.goal.lab;
        SearchAnswer {
            mixes: found.mixes,
            possible: found.possible,
            goal: [goal.l, goal.a, goal.b],
            tolerance: found.goal.tolerance,
            reached: found.is_reached(),
            best: tried(found.best(), 0.0),
            just_visible: JUST_VISIBLE,
            near_ties: found.near_ties().iter().map(|tie| tried(tie.tried, tie.from_best)).collect(),
            gap: found.gap(),
            miss: found.miss(),
            untouched_delta_e_2000: found.untouched_error(),
            words: words(shelf, found, site),
        }
    }
}

impl TriedAnswer {
    /// A mix that was tried, for JSON, with its ΔE00 from the best.
    pub fn of(tried: &Tried, from_best: f64) -> Self {
        TriedAnswer {
            mix: drops_of(&tried.mix),
            lab: [tried.healed.l, tried.healed.a, tried.healed.b],
            delta_e_2000: tried.error,
            from_best,
        }
    }
}

fn drops_of(mix: &Mix) -> BTreeMap<String, u32> {
    mix.drops().map(|(bottle, drops)| (bottle.to_owned(), drops)).collect()
}

fn words(shelf: &Shelf, found: &Found, site: Site) -> String {
    let best = found.best();
    let name = shelf.mix_in_words(&best.mix);
    let reach = match found.miss() {
        None => format!("the best of {} mixes is {name}, ΔE00 {:.1} from the goal", found.mixes, best.error),
        Some(miss) => format!(
            "none of {} mixes reaches the goal: the best, {name}, is ΔE00 {:.1} from it, {:.1} more than the tolerance, {} (ΔL* {:+.1}, \
             Δa* {:+.1}, Δb* {:+.1})",
            found.mixes, best.error, miss.beyond, miss.words, miss.shift.l, miss.shift.a, miss.shift.b
        ),
    };
    let ties = match found.near_ties().len() {
        0 => String::new(),
        1 => "; an eye cannot rank 1 other below it".to_owned(),
        ties => format!("; an eye cannot rank {ties} others below it"),
    };
    let gap = found.gap().map_or_else(String::new, |gap| {
        format!(
            "; every {}mix is worse by ΔE00 {:.1} or more",
            if ties.is_empty() { "other " } else { "further " },
            rounded_down(gap)
        )
    });
    let untouched = if found.untouched_error() <= best.error {
        let place = if site == Site::Lip { "lip" } else { "skin" };
        format!("; without any new work the {place} is nearer to it (ΔE00 {:.1})", found.untouched_error())
    } else {
        String::new()
    };
    format!("{reach}{ties}{gap}{untouched}")
}

/// To one decimal, never more than the number itself.
fn rounded_down(value: f64) -> f64 {
    libm::floor(value * 10.0) / 10.0
}
