//! A person's bare skin as layers, with everything about it that is worth keeping.

use super::{ANISOTROPY, REFRACTIVE_INDEX, Site, Skin};
use crate::colour::Spectrum;
use crate::optics::{Base, Cover, GROUPS, Nodes, Packed, Scatter, Slab, WIDTH, pack, unpack};

/// The cover in every band.
pub type Covers<const N: usize> = [Cover<N, WIDTH>; GROUPS];
/// The base in every band.
pub type Bases<const N: usize> = [Base<N, WIDTH>; GROUPS];

/// A client's bare skin with everything about it that is worth keeping, at `N` angles.
pub struct Canvas<const N: usize> {
    /// Directions inside the skin.
    pub nodes: Nodes<N>,
    /// Scattering between them.
    pub scatter: Scatter<N>,
    /// Absorption of the epidermis, per mm.
    pub epidermis: Packed,
    /// Absorption of the dermis, per mm.
    pub dermis: Packed,
    /// Scattering coefficient of all layers, per mm.
    pub scattering: Packed,
    /// An endless depth of dermis.
    pub deep: Bases<N>,
    /// Thickness of the epidermis, mm.
    pub epidermis_mm: f64,
    /// Surface and epidermis.
    pub epidermis_cover: Covers<N>,
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
        let deep: Bases<N> = std::array::from_fn(|group| {
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
}
