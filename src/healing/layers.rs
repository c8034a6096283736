//! From work in the skin to layers of one composition, and from those to reflectance.
//!
//! Entry points: [`reflectance`] of a [`Canvas`] with [`Deposit`]s of colour in it, [`masstone`] for colour in a bottle.

use super::placement::Work;
use super::time::{EPIDERMAL_SHARE, drift_mm, unhealed};
use super::wear::Wear;
use crate::colour::{Lab, Light, Spectrum};
use crate::optics::{Base, Cover, GROUPS, Lanes, Nodes, Packed, Scatter, Slab, WIDTH, pack, unpack};
use crate::pigment::{Paint, Shelf};
use crate::skin::{ANISOTROPY, Canvas, Covers, REFRACTIVE_INDEX};
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

/// Colour of one work as it lies now, one deposit per range of depth. Empty when nothing is left.
pub(super) fn deposits_of(shelf: &Shelf, work: &Work, epidermis_mm: f64, wear: &Wear) -> Vec<Deposit> {
    let mut deposits = Vec::new();
    let place = &work.placement;
    let fresh = unhealed(work.months);
    for &(index, amount) in &work.paint {
        let colourant = &shelf.colourants[index];
        let amount = amount * place.load * wear.retention(colourant, place.depth_mm, work.months);
        let drift = drift_mm(colourant, work.months);
        let (top, bottom) = (place.depth_mm, place.depth_mm + place.thickness_mm + drift);
        // What was placed within the epidermis, and what was left there on the way down, goes as it sheds.
        let diluted = amount * place.thickness_mm / (bottom - top);
        add(&mut deposits, shelf, index, top.max(epidermis_mm), bottom.max(epidermis_mm), diluted);
        add(&mut deposits, shelf, index, top.min(epidermis_mm), bottom.min(epidermis_mm), diluted * fresh);
        add(&mut deposits, shelf, index, 0.0, epidermis_mm, amount * EPIDERMAL_SHARE * fresh);
    }
    deposits
}

/// Adds a colourant to the deposit of the same range, or a new one.
fn add(deposits: &mut Vec<Deposit>, shelf: &Shelf, colourant: usize, top: f64, bottom: f64, amount: f64) {
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
    let colourant = &shelf.colourants[colourant];
    let (absorption, scattering) = (pack(&colourant.absorption), pack(&colourant.scattering));
    for group in 0..GROUPS {
        deposits[at].absorption[group] += absorption[group] * amount;
        deposits[at].scattering[group] += scattering[group] * (amount / (1.0 - ANISOTROPY));
    }
}

/// Reflectance with these deposits. `cover` is that of the depth given with it; it is used where no deposit lies above.
pub(super) fn reflectance<const N: usize>(
    canvas: &Canvas<N>,
    deposits: &[Deposit],
    cover: (f64, &Covers<N>),
) -> Spectrum {
    if deposits.is_empty() {
        return canvas.bare;
    }
    let mut cuts: Vec<f64> = deposits.iter().flat_map(|deposit| [deposit.top, deposit.bottom]).collect();
    let highest = cuts.iter().copied().fold(f64::INFINITY, f64::min);
    if highest < canvas.epidermis_mm {
        cuts.extend([0.0, canvas.epidermis_mm]);
    }
    cuts.sort_by(f64::total_cmp);
    cuts.dedup();
    let surface;
    let own;
    let covers = if cuts[0] == 0.0 {
        surface = [Cover::surface(&canvas.nodes); GROUPS];
        &surface
    } else if cuts[0] == cover.0 {
        cover.1
    } else {
        own = canvas.cover(cuts[0]);
        &own
    };
    // One group of bands after the other: all its layers fit into the nearest cache.
    unpack(&std::array::from_fn(|group| {
        let mut base = canvas.deep[group];
        for pair in cuts.windows(2).rev() {
            base = base.under(&slab(canvas, deposits, (pair[0], pair[1]), group));
        }
        covers[group].reflectance(&base)
    }))
}

/// The layer between two neighbouring cuts, in one group of bands.
fn slab<const N: usize>(
    canvas: &Canvas<N>,
    deposits: &[Deposit],
    (top, bottom): (f64, f64),
    group: usize,
) -> Slab<N, WIDTH> {
    let skin = if bottom <= canvas.epidermis_mm { &canvas.epidermis } else { &canvas.dermis };
    let (mut absorption, mut scattering) = (skin[group], canvas.scattering[group]);
    for deposit in deposits.iter().filter(|deposit| deposit.top <= top && deposit.bottom >= bottom) {
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
