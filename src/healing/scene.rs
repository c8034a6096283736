//! A client's skin with its existing work, at a given time after a new placement, ready for mixes to be tried in it.
//!
//! Entry points: [`Scene::new`]; [`Scene::kept`] where wear and touch-ups matter.

use super::layers::{Deposit, Laid, deposits_of};
use super::placement::{Placement, Work};
use super::regions::{Shared, regions};
use super::strata::{Around, Kept, Strata, bare};
use super::time::{HEALED_MONTHS, drift_mm, healing_skin, unhealed};
use super::upkeep::Upkeep;
use super::wear::Wear;
use crate::colour::{BANDS, Spectrum};
use crate::optics::unpack;
use crate::pigment::{Colourant, Paint, Shelf};
use crate::skin::{ANISOTROPY, Canvas, Site, Skin};
use std::sync::{Arc, OnceLock};

/// Skin and existing work at one time. `N` is the number of angles; 4 stays within about 0.1 ΔE00 of 24.
pub struct Scene<'a, const N: usize = 4> {
    shelf: &'a Shelf,
    canvas: Arc<Canvas<N>>,
    months: f64,
    wear: Wear,
    /// Existing work and touch-ups.
    deposits: Vec<Deposit>,
    /// Regions of them; a share may be negative where there are very many.
    regions: Vec<Shared>,
    /// Reflectance of each region, once it was asked for.
    existing: OnceLock<Vec<Spectrum>>,
}

/// A [`Scene`] with a place chosen for new work: mixes can be tried quickly.
pub struct Trial<'s, 'a, const N: usize = 4> {
    scene: &'s Scene<'a, N>,
    placement: Placement,
    /// Reflectance of each region without new work.
    existing: &'s [Spectrum],
    /// What lies around that place, in each region.
    around: Vec<Around>,
    kept: Kept<N>,
}

impl<'a> Scene<'a> {
    /// A scene at the default number of angles; see [`Scene::with_angles`].
    pub fn new(shelf: &'a Shelf, skin: &Skin, site: Site, existing: &[Work], months: f64) -> Self {
        Scene::with_angles(shelf, skin, site, existing, months)
    }

    /// The client as they come in: calm skin, existing work as old as it is, nothing new.
    pub fn today(shelf: &'a Shelf, skin: &Skin, site: Site, existing: &[Work]) -> Self {
        Scene::on(shelf, Arc::new(Canvas::new(skin, site)), existing, 0.0, Wear::default())
    }

    /// What [`Scene::new`] gives from [`HEALED_MONTHS`] on, for a skin that is worked out already: many scenes may share it.
    pub fn healed(shelf: &'a Shelf, canvas: Arc<Canvas<4>>, existing: &[Work], months: f64) -> Self {
        debug_assert!(months >= HEALED_MONTHS, "the skin is still red");
        let works: Vec<Work> =
            existing.iter().map(|work| Work { months: work.months + months, ..work.clone() }).collect();
        Scene::on(shelf, canvas, &works, months, Wear::default())
    }

    /// [`Scene::today`] on a client who wears work out like this.
    pub fn today_worn(shelf: &'a Shelf, skin: &Skin, site: Site, existing: &[Work], wear: Wear) -> Self {
        Scene::on(shelf, Arc::new(Canvas::new(skin, site)), existing, 0.0, wear)
    }
}

impl<'a, const N: usize> Scene<'a, N> {
    /// The scene `months` after a new placement in this skin, whose existing work has the ages given plus those months; everyday
    /// wear, no touch-up.
    ///
    /// Areas of several works overlap by chance: a work that covers 85% also covers 85% of what another one covers
    /// (Demichel).
    pub fn with_angles(shelf: &'a Shelf, skin: &Skin, site: Site, existing: &[Work], months: f64) -> Self {
        Scene::kept(shelf, skin, site, existing, &Upkeep::default(), months)
    }

    /// The scene `months` after a new placement, with wear, and with the touch-ups made by then. They lie in the scene like
    /// existing work, so that [`Scene::with`] adds the first placement to them.
    ///
    /// Continuous in every number but for the moment of a touch-up, when the colour jumps as it does on the day.
    pub fn kept(
        shelf: &'a Shelf,
        skin: &Skin,
        site: Site,
        existing: &[Work],
        upkeep: &Upkeep,
        months: f64,
    ) -> Self {
        let canvas = Arc::new(Canvas::new(&healing_skin(skin, upkeep.unhealed(months)), site));
        let aged = existing.iter().map(|work| Work { months: work.months + months, ..work.clone() });
        let works: Vec<Work> = aged.chain(upkeep.made_by(months)).collect();
        Scene::on(shelf, canvas, &works, months, upkeep.wear)
    }

    /// Works are as old as they are at this time.
    fn on(shelf: &'a Shelf, canvas: Arc<Canvas<N>>, works: &[Work], months: f64, wear: Wear) -> Self {
        let works: Vec<(f64, Vec<Deposit>)> = works
            .iter()
            .map(|work| {
                let deposits = deposits_of(shelf, work, canvas.epidermis_mm, &wear);
                (if deposits.is_empty() { 0.0 } else { work.placement.coverage }, deposits)
            })
            .collect();
        let (deposits, regions) = regions(works);
        Scene { shelf, canvas, months, wear, deposits, regions, existing: OnceLock::new() }
    }

    /// Reflectance of the skin without any work.
    pub fn bare(&self) -> Spectrum {
        self.canvas.bare
    }

    /// Reflectance of the skin with its existing work and the touch-ups, without the new placement.
    pub fn existing(&self) -> Spectrum {
        let existing = self.existing.get_or_init(|| {
            let mut strata = Strata::new(&self.canvas, &self.deposits);
            let sights: Vec<_> = self.regions.iter().map(|(_, own)| strata.alone(own)).collect();
            strata.solve(&self.canvas, |group| bare(&self.canvas, group), &sights, None)
        });
        mixed(self.regions.iter().zip(existing).map(|((share, _), reflectance)| (*share, *reflectance)))
    }

    /// Reflectance with this paint placed in addition.
    pub fn with(&self, paint: &Paint, placement: &Placement) -> Spectrum {
        self.trial(placement).with(paint)
    }

    /// The scene with a place chosen, for trying many mixes there.
    pub fn trial<'s>(&'s self, placement: &Placement) -> Trial<'s, 'a, N> {
        let (top, bottom) = (placement.depth_mm, placement.depth_mm + placement.thickness_mm);
        let mut strata = Strata::new(&self.canvas, &self.deposits);
        let around = self.regions.iter().map(|(_, own)| strata.around(own, top, bottom)).collect();
        let mut kept = Kept::of(&strata);
        let sights: Vec<_> = match self.existing.get() {
            Some(_) => Vec::new(),
            None => self.regions.iter().map(|(_, own)| strata.alone(own)).collect(),
        };
        let seen = strata.solve(&self.canvas, |group| bare(&self.canvas, group), &sights, Some(&mut kept));
        let existing = self.existing.get_or_init(|| seen);
        Trial { scene: self, placement: *placement, existing, around, kept }
    }
}

impl<const N: usize> Trial<'_, '_, N> {
    /// Reflectance with this paint placed here. A coverage or load of 0 gives exactly what is there without it.
    pub fn with(&self, paint: &Paint) -> Spectrum {
        self.with_load(paint, self.placement.load)
    }

    /// The same with another load: it lies where it would.
    pub fn with_load(&self, paint: &Paint, load: f64) -> Spectrum {
        self.seen(&self.deposits(paint, load))
    }

    /// The same at each of these coverages instead of the place's own.
    pub fn at_coverages<const C: usize>(&self, paint: &Paint, coverages: &[f64; C]) -> [Spectrum; C] {
        let new = self.deposits(paint, self.placement.load);
        if new.is_empty() {
            return [self.beside(&[], 0.0); C];
        }
        let covered = self.covered(&new);
        coverages.map(|coverage| self.beside(&covered, coverage))
    }

    /// What this paint leaves in the skin at a load.
    fn deposits(&self, paint: &Paint, load: f64) -> Vec<Deposit> {
        let scene = self.scene;
        let placement = Placement { load, ..self.placement };
        let work = Work { paint: paint.clone(), placement, months: scene.months };
        deposits_of(scene.shelf, &work, scene.canvas.epidermis_mm, &scene.wear)
    }

    /// Reflectance with these deposits.
    pub(super) fn seen(&self, new: &[Deposit]) -> Spectrum {
        let coverage = if new.is_empty() { 0.0 } else { self.placement.coverage };
        let covered = if coverage > 0.0 { self.covered(new) } else { Vec::new() };
        self.beside(&covered, coverage)
    }

    /// Reflectance of each region where these deposits are.
    fn covered(&self, new: &[Deposit]) -> Vec<Spectrum> {
        let scene = self.scene;
        let mut strata = Strata::with(&scene.canvas, &scene.deposits, new, &self.kept);
        let works = scene.regions.iter().zip(&self.around);
        let sights: Vec<_> = works.map(|((_, own), around)| strata.with_new(own, around)).collect();
        strata.solve(&scene.canvas, |group| self.kept.known(group), &sights, None)
    }

    /// Reflectance of regions that are covered like this, to this share.
    fn beside(&self, covered: &[Spectrum], coverage: f64) -> Spectrum {
        let mut parts = Vec::with_capacity(2 * self.scene.regions.len());
        for (place, (share, _)) in self.scene.regions.iter().enumerate() {
            parts.push((share * (1.0 - coverage), self.existing[place]));
            parts.extend(covered.get(place).map(|covered| (share * coverage, *covered)));
        }
        mixed(parts)
    }

    /// Where something placed here lies.
    pub(super) fn laid(&self) -> Laid<'_> {
        let fresh = unhealed(self.scene.months);
        Laid { place: &self.placement, epidermis_mm: self.scene.canvas.epidermis_mm, fresh }
    }

    /// What is left of an amount of 1 of a colourant placed here, and how far below its place it has spread.
    pub(super) fn left(&self, colourant: &Colourant) -> (f64, f64) {
        let Placement { load, depth_mm, .. } = self.placement;
        let months = self.scene.months;
        (load * self.scene.wear.retention(colourant, depth_mm, months), drift_mm(colourant, months))
    }

    /// Absorption and reduced scattering of the dermis, per mm.
    pub(super) fn skin(&self) -> [Spectrum; 2] {
        let canvas = &self.scene.canvas;
        [unpack(&canvas.dermis), unpack(&canvas.scattering).map(|whole| whole * (1.0 - ANISOTROPY))]
    }

    /// What there is to mix from.
    pub(super) fn shelf(&self) -> &Shelf {
        self.scene.shelf
    }
}

/// Reflectance of areas side by side, with the optical dot gain of light that enters in one and leaves in another: Yule and
/// Nielsen (1951) with n = 2, the value for full diffusion in the substrate.
fn mixed(parts: impl IntoIterator<Item = (f64, Spectrum)>) -> Spectrum {
    let parts: Vec<(f64, Spectrum)> = parts.into_iter().filter(|(share, _)| *share != 0.0).collect();
    if let [(_, only)] = parts[..] {
        return only;
    }
    let mut roots = [0.0; BANDS];
    for (share, reflectance) in &parts {
        for (sum, r) in roots.iter_mut().zip(reflectance) {
            // Rounded right by IEEE 754, hence the same everywhere, and one instruction.
            *sum += share * r.max(0.0).sqrt();
        }
    }
    roots.map(|root| {
        let root = root.max(0.0);
        root * root
    })
}
