//! Adding layers: downwards from the surface, upwards from the deep.

use super::matrix::dot;
use super::{Column, Lanes, Nodes, Slab, Symmetric};

/// Everything above some depth, surface included, for light that enters straight down and leaves in all directions.
///
/// In the fields u and v of [`Slab`] it gives v = `lit` - `load`·u there, and of that u the share `out` leaves at the top.
#[derive(Debug, Clone, Copy)]
pub struct Cover<const N: usize, const W: usize> {
    /// Share of the light that leaves at the top where u is zero at this depth.
    reflected: Lanes<W>,
    /// v at this depth where u is zero.
    lit: Column<N, W>,
    /// What u leaves at the top.
    out: Column<N, W>,
    /// v that u sends up.
    load: Symmetric<N, W>,
}

/// Everything below some depth: v = `load`·u there.
#[derive(Debug, Clone, Copy)]
pub struct Base<const N: usize, const W: usize> {
    load: Symmetric<N, W>,
}

impl<const N: usize, const W: usize> Cover<N, W> {
    /// The bare surface.
    pub fn surface(nodes: &Nodes<N>) -> Self {
        // What goes down is what enters and Fresnel's share r of what goes up: u + v = 2·enters + r(u - v). What goes up is
        // (u - enters)/(1 + r), and 1 - r of it leaves.
        let enters = (1.0 - nodes.specular) / libm::sqrt(nodes.weight[N - 1]);
        let straight = enters / (1.0 + nodes.specular);
        let mut lit = [Lanes::ZERO; N];
        lit[N - 1] = Lanes::all(2.0 * straight);
        let out = leaving(nodes);
        Cover {
            reflected: Lanes::all(nodes.specular - out[N - 1] * enters),
            lit,
            out: out.map(Lanes::all),
            load: surface(nodes),
        }
    }

    /// With a layer added below.
    pub fn with(&self, slab: &Slab<N, W>) -> Self {
        let across = slab.across();
        let split = self.load.plus(&slab.even).plus(&across).split();
        let lit = split.solve(&self.lit);
        let out = split.solve(&self.out);
        Cover {
            reflected: self.reflected + dot(&self.out, &lit),
            lit: across.times_column(&lit),
            out: across.times_column(&out),
            load: slab.onto(&self.load),
        }
    }

    /// Reflectance with this below.
    pub fn reflectance(&self, base: &Base<N, W>) -> Lanes<W> {
        self.reflected + dot(&self.out, &self.field(&base.load))
    }

    /// Transmittance where air begins at this depth.
    pub fn transmittance(&self, nodes: &Nodes<N>) -> Lanes<W> {
        dot(&leaving(nodes).map(Lanes::all), &self.field(&surface(nodes)))
    }

    /// u where this load lies below.
    fn field(&self, load: &Symmetric<N, W>) -> Column<N, W> {
        self.load.plus(load).split().solve(&self.lit)
    }
}

impl<const N: usize, const W: usize> Base<N, W> {
    /// The bottom surface, with air below.
    pub fn surface(nodes: &Nodes<N>) -> Self {
        Base { load: surface(nodes) }
    }

    /// An endless depth of one medium, from [`Slab::half_space`].
    pub fn half_space(load: Symmetric<N, W>) -> Self {
        Base { load }
    }

    /// A backing in optical contact that reflects this share of what reaches it, evenly in all directions (Lambert), and lets
    /// nothing through.
    pub fn lambertian(nodes: &Nodes<N>, share: Lanes<W>) -> Self {
        let root = nodes.root_flux();
        let whole: f64 = root.iter().map(|root| root * root).sum();
        // (1 - R)(1 + R)⁻¹ of a reflection R that is one column times itself.
        let kept_back = share / (Lanes::ONE + share) * (2.0 / whole);
        let load = Symmetric::of(|i, j| {
            let shared = kept_back * (root[i] * root[j]);
            if i == j { Lanes::ONE - shared } else { Lanes::ZERO - shared }
        });
        Base { load }
    }

    /// With a layer added above.
    pub fn under(&self, slab: &Slab<N, W>) -> Self {
        Base { load: slab.onto(&self.load) }
    }
}

impl<const N: usize, const W: usize> Slab<N, W> {
    /// Half of what the odd side takes more than the even one: what couples the layer's two sides.
    #[inline(always)]
    fn across(&self) -> Symmetric<N, W> {
        self.odd.minus(&self.even).scaled(0.5)
    }

    /// What the layer takes on one side when this load lies on the other; nothing here is the difference of two large numbers.
    #[inline(always)]
    fn onto(&self, load: &Symmetric<N, W>) -> Symmetric<N, W> {
        self.even.plus(&load.plus(&self.even).beside(&self.across()))
    }
}

/// What the surface takes: (1 - r)/(1 + r) in each direction.
fn surface<const N: usize, const W: usize>(nodes: &Nodes<N>) -> Symmetric<N, W> {
    Symmetric::diagonal(&nodes.fresnel.map(|r| (1.0 - r) / (1.0 + r)))
}

/// Flux that leaves through the surface, of u there when nothing enters.
fn leaving<const N: usize>(nodes: &Nodes<N>) -> [f64; N] {
    let root = nodes.root_flux();
    std::array::from_fn(|i| root[i] * (1.0 - nodes.fresnel[i]) / (1.0 + nodes.fresnel[i]))
}
