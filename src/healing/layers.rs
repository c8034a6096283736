//! From work in the skin to layers of one composition.
//!
//! Entry points: [`deposits_of`] a work, [`cuts`] between which there is one composition, and the [`slab`] there, which
//! [`strata`](super::strata) puts together; [`masstone`] for colour in a bottle.

use super::placement::{Placement, Work};
use super::time::{EPIDERMAL_SHARE, drift_mm, unhealed};
use super::wear::Wear;
use crate::colour::{Lab, Light, Spectrum};
use crate::optics::{Base, Cover, GROUPS, Lanes, Nodes, Packed, Scatter, Slab, WIDTH, pack, unpack};
use crate::pigment::{Paint, Shelf};
use crate::skin::{ANISOTROPY, Canvas, REFRACTIVE_INDEX};
use std::sync::LazyLock;

/// Colour between two depths, on top of the skin's own absorption and scattering.
#[derive(Debug, Clone, Copy)]
pub(super) struct Deposit {
    /// Upper end, mm.
    pub top: f64,
    /// Lower end, mm.
    pub bottom: f64,
    absorption: Packed,
    scattering: Packed,
}

impl Deposit {
    /// The same range with this share of the colour.
    pub fn times(&self, share: f64) -> Self {
        Deposit {
            absorption: self.absorption.map(|lanes| lanes * share),
            scattering: self.scattering.map(|lanes| lanes * share),
            ..*self
        }
    }
}

/// What something does to light, per mm at amount 1.
pub(super) struct Tint {
    absorption: Packed,
    /// Reduced, as colourants have it.
    scattering: Packed,
}

impl Tint {
    /// Of this absorption and reduced scattering.
    pub fn new(absorption: &Spectrum, scattering: &Spectrum) -> Self {
        Tint { absorption: pack(absorption), scattering: pack(scattering) }
    }
}

/// Where what is placed there lies by now, in this skin.
pub(super) struct Laid<'p> {
    pub place: &'p Placement,
    pub epidermis_mm: f64,
    /// How unhealed the skin is.
    pub fresh: f64,
}

impl Laid<'_> {
    /// Adds this much of a tint that has wandered so far down to deposits, one per range of depth.
    pub fn lay(&self, deposits: &mut Vec<Deposit>, tint: &Tint, amount: f64, drift_mm: f64) {
        let Laid { place, epidermis_mm, fresh } = *self;
        let (top, bottom) = (place.depth_mm, place.depth_mm + place.thickness_mm + drift_mm);
        // What was placed within the epidermis, and what was left there on the way down, goes as it sheds.
        let diluted = amount * place.thickness_mm / (bottom - top);
        add(deposits, tint, top.max(epidermis_mm), bottom.max(epidermis_mm), diluted);
        add(deposits, tint, top.min(epidermis_mm), bottom.min(epidermis_mm), diluted * fresh);
        add(deposits, tint, 0.0, epidermis_mm, amount * EPIDERMAL_SHARE * fresh);
    }

    /// Share of what was placed that has not been shed with the epidermis, when it has wandered so far down.
    pub fn kept(&self, drift_mm: f64) -> f64 {
        let (top, bottom) = (self.place.depth_mm, self.place.depth_mm + self.place.thickness_mm + drift_mm);
        let within = bottom.min(self.epidermis_mm) - top.min(self.epidermis_mm);
        1.0 - within * (1.0 - self.fresh) / (bottom - top)
    }
}

/// Colour of one work as it lies now, one deposit per range of depth. Empty when nothing is left.
pub(super) fn deposits_of(shelf: &Shelf, work: &Work, epidermis_mm: f64, wear: &Wear) -> Vec<Deposit> {
    let mut deposits = Vec::new();
    let place = &work.placement;
    let laid = Laid { place, epidermis_mm, fresh: unhealed(work.months) };
    for &(index, amount) in &work.paint {
        let colourant = &shelf.colourants[index];
        let tint = Tint::new(&colourant.absorption, &colourant.scattering);
        let amount = amount * place.load * wear.retention(colourant, place.depth_mm, work.months);
        laid.lay(&mut deposits, &tint, amount, drift_mm(colourant, work.months));
    }
    deposits
}

/// Adds a tint to the deposit of the same range, or a new one.
fn add(deposits: &mut Vec<Deposit>, tint: &Tint, top: f64, bottom: f64, amount: f64) {
    if amount <= 0.0 || bottom <= top {
        return;
    }
    let found = deposits.iter().position(|deposit| deposit.top == top && deposit.bottom == bottom);
    let at = found.unwrap_or_else(|| {
        deposits.push(Deposit {
            top,
            bottom,
            absorption: [Lanes::ZERO; GROUPS],
            scattering: [Lanes::ZERO; GROUPS],
        });
        deposits.len() - 1
    });
    for group in 0..GROUPS {
        deposits[at].absorption[group] += tint.absorption[group] * amount;
        deposits[at].scattering[group] += tint.scattering[group] * (amount / (1.0 - ANISOTROPY));
    }
}

/// Depths of the highest and the lowest end of these deposits.
pub(super) fn range<'d>(deposits: impl IntoIterator<Item = &'d Deposit>) -> (f64, f64) {
    deposits.into_iter().fold((f64::INFINITY, 0.0), |(highest, lowest), deposit| {
        (deposit.top.min(highest), deposit.bottom.max(lowest))
    })
}

/// Depths at which something changes from `begin` to `end`, both included; an infinite end means the last change.
pub(super) fn cuts<'d>(
    epidermis_mm: f64,
    deposits: impl IntoIterator<Item = &'d Deposit>,
    begin: f64,
    end: f64,
) -> Vec<f64> {
    let edges = deposits.into_iter().flat_map(|deposit| [deposit.top, deposit.bottom]);
    let mut cuts: Vec<f64> =
        edges.chain([epidermis_mm]).filter(|&depth| begin < depth && depth < end).collect();
    cuts.push(begin);
    if end < f64::INFINITY {
        cuts.push(end);
    }
    cuts.sort_by(f64::total_cmp);
    cuts.dedup();
    cuts
}

/// The layer between two neighbouring cuts with these deposits in it, in one group of bands.
pub(super) fn slab<'d, const N: usize>(
    canvas: &Canvas<N>,
    deposits: impl Iterator<Item = &'d Deposit>,
    (top, bottom): (f64, f64),
    group: usize,
) -> Slab<N, WIDTH> {
    let skin = if bottom <= canvas.epidermis_mm { &canvas.epidermis } else { &canvas.dermis };
    let (mut absorption, mut scattering) = (skin[group], canvas.scattering[group]);
    for deposit in deposits {
        absorption += deposit.absorption[group];
        scattering += deposit.scattering[group];
    }
    let thickness = bottom - top;
    Slab::new(&canvas.scatter, absorption * thickness, scattering * thickness)
}

/// The colour of paint in the bottle: an endless depth of it in clear liquid of the same refractive index as skin, under D65.
pub fn masstone(shelf: &Shelf, paint: &Paint) -> Lab {
    static LIQUID: LazyLock<(Nodes<4>, Scatter<4>)> = LazyLock::new(|| {
        let nodes = Nodes::new(REFRACTIVE_INDEX);
        let scatter = Scatter::new(&nodes, ANISOTROPY);
        (nodes, scatter)
    });
    let (nodes, scatter) = &*LIQUID;
    // A trace of absorption and scattering stands for the liquid, so that an empty bottle has a colour too.
    let mut deposit = Deposit {
        top: 0.0,
        bottom: 1.0,
        absorption: [Lanes::all(1e-3); GROUPS],
        scattering: [Lanes::all(1e-2); GROUPS],
    };
    for &(index, amount) in paint {
        let colourant = &shelf.colourants[index];
        let (absorption, scattering) = (pack(&colourant.absorption), pack(&colourant.scattering));
        for group in 0..GROUPS {
            deposit.absorption[group] += absorption[group] * amount;
            deposit.scattering[group] += scattering[group] * (amount / (1.0 - ANISOTROPY));
        }
    }
    let surface = Cover::<4, WIDTH>::surface(nodes);
    let reflectance: Packed = std::array::from_fn(|group| {
        let half = Slab::half_space(scatter, deposit.absorption[group], deposit.scattering[group]);
        surface.reflectance(&Base::half_space(half))
    });
    Light::D65.lab_of(&unpack(&reflectance))
}
