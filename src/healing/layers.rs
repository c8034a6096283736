//! From work in the skin to layers of one composition, and from those to reflectance.
//!
//! Entry points: [`Canvas`] for skin with [`Deposit`]s of colour in it, [`masstone`] for colour in a bottle.

use super::placement::Work;
use super::time::{EPIDERMAL_SHARE, drift_mm, retention, unhealed};
use crate::colour::{BANDS, Lab, Light, Spectrum};
use crate::optics::{Base, Cover, Lanes, Nodes, Scatter, Slab};
use crate::pigment::{Paint, Shelf};
use crate::skin::{ANISOTROPY, REFRACTIVE_INDEX, Site, Skin};

/// Bands solved side by side.
const WIDTH: usize = 4;
/// Groups of bands; the last lane of the last one repeats 700 nm.
const GROUPS: usize = BANDS.div_ceil(WIDTH);

/// A spectrum in groups of lanes.
type Packed = [Lanes<WIDTH>; GROUPS];

/// A layer in every band.
type Slabs<const N: usize> = [Slab<N, WIDTH>; GROUPS];

/// The cover in every band.
pub(super) type Covers<const N: usize> = [Cover<N, WIDTH>; GROUPS];

fn pack(spectrum: &Spectrum) -> Packed {
    std::array::from_fn(|group| {
        Lanes(std::array::from_fn(|lane| spectrum[(group * WIDTH + lane).min(BANDS - 1)]))
    })
}

fn unpack(packed: &Packed) -> Spectrum {
    std::array::from_fn(|band| packed[band / WIDTH].0[band % WIDTH])
}

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

/// Colour of one work as it lies now, one deposit per range of depth. Empty when nothing is left.
pub(super) fn deposits_of(shelf: &Shelf, work: &Work, epidermis_mm: f64) -> Vec<Deposit> {
    let mut deposits = Vec::new();
    let place = &work.placement;
    let fresh = unhealed(work.months);
    for &(index, amount) in &work.paint {
        let colourant = &shelf.colourants[index];
        let amount = amount * place.load * retention(colourant, work.months);
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

/// A client's bare skin with everything about it that is worth keeping, at `N` angles.
pub(super) struct Canvas<const N: usize> {
    nodes: Nodes<N>,
    scatter: Scatter<N>,
    epidermis: Packed,
    dermis: Packed,
    scattering: Packed,
    deep: [Base<N, WIDTH>; GROUPS],
    /// Thickness of the epidermis, mm.
    pub epidermis_mm: f64,
    /// Surface and epidermis.
    epidermis_cover: Covers<N>,
    /// Reflectance without any work.
    pub bare: Spectrum,
}

impl<const N: usize> Canvas<N> {
    /// The canvas of this skin at this site.
    pub fn new(skin: &Skin, site: Site) -> Self {
        let nodes = Nodes::new(REFRACTIVE_INDEX);
        let scatter = Scatter::new(&nodes, ANISOTROPY);
        let epidermis = pack(&skin.epidermis_absorption());
        let dermis = pack(&skin.dermis_absorption());
        let scattering = pack(&skin.scattering_coefficient());
        let surface = Cover::surface(&nodes);
        let deep: [Base<N, WIDTH>; GROUPS] = std::array::from_fn(|group| {
            Base::half_space(Slab::half_space(&scatter, dermis[group], scattering[group]))
        });
        let epidermis_mm = site.epidermis_mm();
        let epidermis_cover: Covers<N> = std::array::from_fn(|group| {
            surface.with(&Slab::new(
                &scatter,
                epidermis[group] * epidermis_mm,
                scattering[group] * epidermis_mm,
            ))
        });
        let bare = unpack(&std::array::from_fn(|group| epidermis_cover[group].reflectance(&deep[group])));
        Canvas { nodes, scatter, epidermis, dermis, scattering, deep, epidermis_mm, epidermis_cover, bare }
    }

    /// Everything above this depth, without work. The depth lies in the dermis.
    pub fn cover(&self, depth_mm: f64) -> Covers<N> {
        let thickness = depth_mm - self.epidermis_mm;
        if thickness <= 0.0 {
            return self.epidermis_cover;
        }
        std::array::from_fn(|group| {
            self.epidermis_cover[group].with(&Slab::new(
                &self.scatter,
                self.dermis[group] * thickness,
                self.scattering[group] * thickness,
            ))
        })
    }

    /// Reflectance with these deposits. `cover` is that of the depth given with it; it is used where no deposit lies above.
    pub fn reflectance(&self, deposits: &[Deposit], cover: (f64, &Covers<N>)) -> Spectrum {
        if deposits.is_empty() {
            return self.bare;
        }
        let mut cuts: Vec<f64> = deposits.iter().flat_map(|deposit| [deposit.top, deposit.bottom]).collect();
        let highest = cuts.iter().copied().fold(f64::INFINITY, f64::min);
        if highest < self.epidermis_mm {
            cuts.extend([0.0, self.epidermis_mm]);
        }
        cuts.sort_by(f64::total_cmp);
        cuts.dedup();
        let mut base = self.deep;
        for pair in cuts.windows(2).rev() {
            for (base, slab) in base.iter_mut().zip(&self.slabs(deposits, pair[0], pair[1])) {
                *base = base.under(slab);
            }
        }
        let surface;
        let own;
        let covers = if cuts[0] == 0.0 {
            surface = [Cover::surface(&self.nodes); GROUPS];
            &surface
        } else if cuts[0] == cover.0 {
            cover.1
        } else {
            own = self.cover(cuts[0]);
            &own
        };
        unpack(&std::array::from_fn(|group| covers[group].reflectance(&base[group])))
    }

    /// The layer between two neighbouring cuts.
    fn slabs(&self, deposits: &[Deposit], top: f64, bottom: f64) -> Slabs<N> {
        let skin = if bottom <= self.epidermis_mm { &self.epidermis } else { &self.dermis };
        let (mut absorption, mut scattering) = (*skin, self.scattering);
        for deposit in deposits.iter().filter(|deposit| deposit.top <= top && deposit.bottom >= bottom) {
            for group in 0..GROUPS {
                absorption[group] += deposit.absorption[group];
                scattering[group] += deposit.scattering[group];
            }
        }
        let thickness = bottom - top;
        std::array::from_fn(|group| {
            Slab::new(&self.scatter, absorption[group] * thickness, scattering[group] * thickness)
        })
    }
}

/// The colour of paint in the bottle: an endless depth of it in clear liquid of the same refractive index as skin, under D65.
pub fn masstone(shelf: &Shelf, paint: &Paint) -> Lab {
    let nodes = Nodes::<4>::new(REFRACTIVE_INDEX);
    let scatter = Scatter::new(&nodes, ANISOTROPY);
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
    let surface = Cover::<4, WIDTH>::surface(&nodes);
    let reflectance: Packed = std::array::from_fn(|group| {
        let half = Slab::half_space(&scatter, deposit.absorption[group], deposit.scattering[group]);
        surface.reflectance(&Base::half_space(half))
    });
    Light::D65.lab_of(&unpack(&reflectance))
}
