//! Adding layers: downwards from the surface, upwards from the deep.

use super::{Column, Lanes, Nodes, Slab, Square};

/// Everything above some depth, surface included, for light that enters straight down and leaves in all directions.
#[derive(Debug, Clone, Copy)]
pub struct Cover<const N: usize, const W: usize> {
    /// Share of the light that has left by reflection above this depth.
    reflected: Lanes<W>,
    /// Light that goes down at this depth.
    down: Column<N, W>,
    /// Share of light that goes up at this depth which leaves.
    up: Column<N, W>,
    /// Reflection back down of light that goes up at this depth.
    under: Square<N, W>,
}

/// Everything below some depth.
#[derive(Debug, Clone, Copy)]
pub struct Base<const N: usize, const W: usize> {
    /// Reflection of light that goes down at this depth.
    reflection: Square<N, W>,
    /// Share of it that leaves below.
    through: Column<N, W>,
}

impl<const N: usize, const W: usize> Cover<N, W> {
    /// The bare surface.
    pub fn surface(nodes: &Nodes<N>) -> Self {
        let mut down = [Lanes::ZERO; N];
        down[N - 1] = Lanes::all((1.0 - nodes.specular) / libm::sqrt(nodes.weight[N - 1]));
        let root = nodes.root_flux();
        Cover {
            reflected: Lanes::all(nodes.specular),
            down,
            up: std::array::from_fn(|i| Lanes::all(root[i] * (1.0 - nodes.fresnel[i]))),
            under: Square::diagonal(&nodes.fresnel),
        }
    }

    /// With a layer added below.
    pub fn with(&self, slab: &Slab<N, W>) -> Self {
        // x goes down at the old depth, u goes up there, y goes up at the new one:
        // x = down + under·u, u = R·x + T·y.
        let inner =
            self.under.times(&slab.reflection).blend(-1.0, &Square::ZERO, 0.0).plus_identity(1.0).factor();
        let lit = inner.solve_column(&self.down);
        let answered = inner.solve(&self.under.times(&slab.transmission));
        let returned = slab.reflection.times_column(&lit);
        // Light y arrives at the old depth as T·y + R·answered·y.
        let arrives = slab.transmission.blend(1.0, &slab.reflection.times(&answered), 1.0);
        Cover {
            reflected: self.reflected + dot(&self.up, &returned),
            down: slab.transmission.times_column(&lit),
            up: arrives.times_row(&self.up),
            under: slab.reflection.blend(1.0, &slab.transmission.times(&answered), 1.0),
        }
    }

    /// Reflectance with this below.
    pub fn reflectance(&self, base: &Base<N, W>) -> Lanes<W> {
        let lit = self.lit(base);
        self.reflected + dot(&self.up, &base.reflection.times_column(&lit))
    }

    /// Transmittance with this below.
    pub fn transmittance(&self, base: &Base<N, W>) -> Lanes<W> {
        dot(&base.through, &self.lit(base))
    }

    /// Light that goes down where cover and base meet.
    fn lit(&self, base: &Base<N, W>) -> Column<N, W> {
        self.under
            .times(&base.reflection)
            .blend(-1.0, &Square::ZERO, 0.0)
            .plus_identity(1.0)
            .factor()
            .solve_column(&self.down)
    }
}

impl<const N: usize, const W: usize> Base<N, W> {
    /// The bottom surface, with air below.
    pub fn surface(nodes: &Nodes<N>) -> Self {
        let root = nodes.root_flux();
        Base {
            reflection: Square::diagonal(&nodes.fresnel),
            through: std::array::from_fn(|i| Lanes::all(root[i] * (1.0 - nodes.fresnel[i]))),
        }
    }

    /// An endless depth of one medium, from [`Slab::half_space`].
    pub fn half_space(reflection: Square<N, W>) -> Self {
        Base { reflection, through: [Lanes::ZERO; N] }
    }

    /// A backing in optical contact that reflects this share of what reaches it, evenly in all directions (Lambert), and lets
    /// nothing through.
    pub fn lambertian(nodes: &Nodes<N>, share: Lanes<W>) -> Self {
        let root = nodes.root_flux();
        let whole: f64 = root.iter().map(|root| root * root).sum();
        let mut reflection = Square::ZERO;
        for (row, one) in reflection.0.iter_mut().zip(&root) {
            for (entry, other) in row.iter_mut().zip(&root) {
                *entry = share * (one * other / whole);
            }
        }
        Base { reflection, through: [Lanes::ZERO; N] }
    }

    /// With a layer added above.
    pub fn under(&self, slab: &Slab<N, W>) -> Self {
        // x goes down between the layer and this: x = T·light + R·base·x.
        let x = slab
            .reflection
            .times(&self.reflection)
            .blend(-1.0, &Square::ZERO, 0.0)
            .plus_identity(1.0)
            .factor()
            .solve(&slab.transmission);
        let back = slab.transmission.times(&self.reflection.times(&x));
        Base { reflection: slab.reflection.blend(1.0, &back, 1.0), through: x.times_row(&self.through) }
    }
}

/// Σ one·other.
#[inline(always)]
fn dot<const N: usize, const W: usize>(one: &Column<N, W>, other: &Column<N, W>) -> Lanes<W> {
    let mut sum = Lanes::ZERO;
    for (&a, &b) in one.iter().zip(other) {
        sum += a * b;
    }
    sum
}
