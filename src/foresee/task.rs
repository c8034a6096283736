//! A request that was understood.

use crate::colour::{Light, Spectrum};
use crate::healing::{Appearance, Placement, Scene, Spread, Upkeep, Work};
use crate::pigment::{Mix, Paint, Shelf};
use crate::search::Search;
use crate::skin::{Site, Skin};

/// A request with every name resolved and every number checked.
#[derive(Debug, Clone)]
pub struct Task {
    /// The client's skin at the site.
    pub skin: Skin,
    /// The skin of the same person's brow, if it is like what the request says.
    pub brow: Skin,
    /// Where the work goes.
    pub site: Site,
    /// The light it is judged under.
    pub light: Light,
    /// Months after the placement.
    pub months: f64,
    /// The mix.
    pub mix: Mix,
    /// What it is made of.
    pub paint: Paint,
    /// Where it lies.
    pub placement: Placement,
    /// What lies there already.
    pub existing: Vec<Work>,
    /// How wrong one can be about all this.
    pub spread: Spread,
    /// Worlds from which the likely outcome is told; 0 for none.
    pub worlds: u32,
    /// What mixes are to be searched for.
    pub search: Option<Search>,
    /// Wear and touch-ups.
    pub upkeep: Upkeep,
}

impl Task {
    /// Bare skin and everything seen, so many months after the placement.
    pub fn at(&self, shelf: &Shelf, months: f64) -> (Appearance, Appearance) {
        self.at_under(shelf, months, &self.upkeep)
    }

    /// The same just before any touch-up that is made at this time.
    pub fn just_before(&self, shelf: &Shelf, months: f64) -> (Appearance, Appearance) {
        self.at_under(shelf, months, &self.upkeep.before(months))
    }

    fn at_under(&self, shelf: &Shelf, months: f64, upkeep: &Upkeep) -> (Appearance, Appearance) {
        let scene = self.scene(shelf, months, upkeep);
        let seen = scene.with(&self.paint, &self.placement);
        (Appearance::of(scene.bare(), self.light), Appearance::of(seen, self.light))
    }

    /// The scene this long after the first placement.
    pub(crate) fn scene<'s>(&self, shelf: &'s Shelf, months: f64, upkeep: &Upkeep) -> Scene<'s> {
        Scene::kept(shelf, &self.skin, self.site, &self.existing, upkeep, months)
    }

    /// The client as they come in: bare skin and skin with existing work.
    pub fn today(&self, shelf: &Shelf) -> (Appearance, Appearance) {
        let scene = Scene::today_worn(shelf, &self.skin, self.site, &self.existing, self.upkeep.wear);
        (Appearance::of(scene.bare(), self.light), Appearance::of(scene.existing(), self.light))
    }

    /// Reflectance of the skin around the site, where it has an edge ([`Site::around`]).
    pub fn around(&self) -> Option<Spectrum> {
        self.site.around(&self.brow)
    }

    /// Restrictions of what is in the mix, in words.
    pub fn warnings(&self, shelf: &Shelf) -> Vec<String> {
        shelf
            .restrictions_of(&self.mix)
            .iter()
            .map(|(colourant, rule)| {
                format!(
                    "{} ({}): {}, {} since {} ({})",
                    colourant.id, colourant.name, rule.place, rule.rule, rule.since, rule.source
                )
            })
            .collect()
    }
}
