//! How paint is measured, and the reflectance it then has: the forward model.

use super::Optics;
use super::panel::Body;
use crate::colour::{BANDS, Spectrum};
use crate::optics::{Base, Cover, Lanes, Nodes, Scatter, Slab, WIDTH, pack, unpack};
use crate::quantity::Quantity;
use crate::skin::ANISOTROPY;

/// Bounds of a dried film's thickness.
pub const THICKNESS: Quantity = Quantity::new("thickness_mm", "mm", 0.001, 5.0);
/// Bounds of a dried film's refractive index.
pub const INDEX: Quantity = Quantity::new("refractive_index", "", 1.3, 1.8);
/// Bounds of the share of the colourant in a tint; the rest is white.
pub const SHARE: Quantity = Quantity::new("share", "as a fraction", 0.001, 0.999);
/// Bounds of a reading's error.
pub const NOISE: Quantity = Quantity::new("noise", "as a fraction", 0.0, 0.1);

/// Whether readings hold the light that the surface itself throws back.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Surface {
    /// They do: d/8 with the gloss trap closed ("specular included").
    Included,
    /// They do not: d/8 with the gloss trap open; 45/0 is nearly the same.
    Excluded,
}

/// How paint was measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Setup {
    /// Refractive index of the dried film. 1.5 by default: representative of dried binders.
    pub refractive_index: f64,
    /// Anisotropy g of scattering. By default as for all scattering in skin, where the results are used: only μs' counts there.
    pub anisotropy: f64,
    /// Whether readings hold the surface reflection. By default they do.
    pub surface: Surface,
}

impl Default for Setup {
    fn default() -> Self {
        Setup { refractive_index: 1.5, anisotropy: ANISOTROPY, surface: Surface::Included }
    }
}

impl Setup {
    /// Share of the light that the surface throws back before it enters the film.
    pub fn specular(&self) -> f64 {
        let step = (self.refractive_index - 1.0) / (self.refractive_index + 1.0);
        step * step
    }

    /// What of it readings hold.
    pub fn gloss(&self) -> f64 {
        if self.surface == Surface::Included { self.specular() } else { 0.0 }
    }
}

/// The instrument: what it reads off paint. `N` is the number of angles.
pub(super) struct Bench<const N: usize> {
    nodes: Nodes<N>,
    scatter: Scatter<N>,
    /// Taken off what comes back.
    trapped: f64,
    escape: f64,
    setup: Setup,
}

/// How deep paint is, in `W` bands at once.
#[derive(Debug, Clone, Copy)]
pub(super) enum Depth<const W: usize> {
    /// Thickness in mm, and the internal reflectance of the backing.
    Film(f64, Lanes<W>),
    /// Paint all the way down.
    Opaque,
}

impl<const N: usize> Bench<N> {
    pub fn new(setup: &Setup) -> Self {
        let nodes = Nodes::new(setup.refractive_index);
        let scatter = Scatter::new(&nodes, setup.anisotropy);
        let trapped = setup.specular() - setup.gloss();
        Bench { escape: nodes.escape(), nodes, scatter, trapped, setup: *setup }
    }

    /// Reading off paint of this absorption and reduced scattering, per mm.
    pub fn reading<const W: usize>(
        &self,
        absorption: Lanes<W>,
        reduced_scattering: Lanes<W>,
        depth: Depth<W>,
    ) -> Lanes<W> {
        let scattering = reduced_scattering * (1.0 / (1.0 - self.setup.anisotropy));
        let base = match depth {
            Depth::Film(thickness, backing) => {
                let slab = Slab::new(&self.scatter, absorption * thickness, scattering * thickness);
                Base::lambertian(&self.nodes, backing).under(&slab)
            }
            Depth::Opaque => Base::half_space(Slab::half_space(&self.scatter, absorption, scattering)),
        };
        Cover::surface(&self.nodes).reflectance(&base) - Lanes::all(self.trapped)
    }

    /// Internal reflectance of a bare backing, out of its reading: the even reflectance below a surface that gives this reading
    /// (Saunderson's correction with the bench's own angles).
    pub fn backing(&self, reading: f64) -> f64 {
        let inside = reading - self.setup.gloss();
        let enters = 1.0 - self.setup.specular();
        (inside / (inside * (1.0 - self.escape) + enters * self.escape)).clamp(0.0, 1.0)
    }

    /// What a panel's body is in these bands.
    pub fn depth<const W: usize>(&self, body: &Body, bands: [usize; W]) -> Depth<W> {
        match body {
            Body::Film { thickness_mm, backing } => {
                Depth::Film(*thickness_mm, Lanes(bands.map(|band| self.backing(backing[band]))))
            }
            Body::Opaque => Depth::Opaque,
        }
    }

    /// Reading in every band.
    pub fn spectrum(&self, optics: &Optics, body: &Body) -> Spectrum {
        let (absorption, scattering) = (pack(&optics.absorption), pack(&optics.scattering));
        unpack(&std::array::from_fn(|group| {
            let bands: [usize; WIDTH] = std::array::from_fn(|lane| (group * WIDTH + lane).min(BANDS - 1));
            self.reading(absorption[group], scattering[group], self.depth(body, bands))
        }))
    }
}

/// The reading of paint with these optics, in every band, computed with `N` angles.
///
/// ```
/// use healedhue::pigment::measure::{film_reflectance, Body, Optics, Setup};
/// let grey = Optics { absorption: [20.0; 31], scattering: [40.0; 31] };
/// let over = |backing| Body::Film { thickness_mm: 0.03, backing: [backing; 31] };
/// let (white, black) = (over(0.85), over(0.05));
/// let setup = Setup::default();
/// assert!(film_reflectance::<8>(&grey, &white, &setup)[0] > film_reflectance::<8>(&grey, &black, &setup)[0]);
/// ```
pub fn film_reflectance<const N: usize>(optics: &Optics, body: &Body, setup: &Setup) -> Spectrum {
    Bench::<N>::new(setup).spectrum(optics, body)
}
