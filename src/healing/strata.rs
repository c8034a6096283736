//! Layers of all regions of an area, solved together: what regions have in common is solved once.
//!
//! Entry point: [`Strata`]. Steps: name what is wanted of each region ([`Strata::alone`], [`Strata::around`], [`Strata::with_new`]), by
//! which layers and what they are put onto are listed, each once; then solve the list ([`Strata::solve`]). Two regions of works that
//! overlap by chance have the same layers wherever neither differs from the other, and the same below as far up as they are alike.
//! Nothing is computed in another order than for each region alone: the bits are the same.

use super::layers::{Deposit, cuts, range, slab};
use crate::colour::Spectrum;
use crate::optics::{Base, Cover, GROUPS, Lanes, Slab, WIDTH, unpack};
use crate::skin::Canvas;
use std::cell::LazyCell;
use std::ops::Range;

/// Place of the endless depth of dermis among bases.
const DEEP: usize = 0;
/// Place of the bare surface among covers.
const SURFACE: usize = 0;
/// Place of surface and epidermis among covers.
const EPIDERMIS: usize = 1;

/// A list of layers and of what they are put onto.
pub(super) struct Strata<'d> {
    epidermis_mm: f64,
    /// What the deposits of regions are places in.
    old: &'d [Deposit],
    /// What lies in every region besides.
    new: &'d [Deposit],
    layers: Vec<Layer>,
    /// Places of the deposits in layers, one layer after the other.
    within: Vec<usize>,
    bases: Piles,
    covers: Piles,
}

/// A layer of one composition.
struct Layer {
    top: f64,
    bottom: f64,
    /// Which of [`Strata::within`] are in it.
    deposits: Range<usize>,
    /// How many bases and covers it is put onto.
    uses: usize,
}

/// What layers are put onto, one after the other; places count on from what is known.
struct Piles {
    known: usize,
    /// The place of what lies there, and the layer that is put onto it.
    steps: Vec<(usize, usize)>,
}

/// A cover and a base, by their places: what is seen of a region.
pub(super) type Sight = (usize, usize);

/// Everything above and below a place for new work in one region: skin and older work.
pub(super) struct Around {
    /// A depth, and the place of the cover of everything above it.
    cover: (f64, usize),
    /// Depths, and the place of the base of everything below each, the deepest first. None where no older work lies below the place:
    /// the skin is endless there.
    bases: Vec<(f64, usize)>,
}

/// Bases and covers that are known in one group of bands. The bare surface goes without saying.
#[derive(Clone, Copy)]
pub(super) struct Known<'k, const N: usize> {
    pub bases: &'k [Base<N, WIDTH>],
    pub covers: &'k [Cover<N, WIDTH>],
}

/// Bases and covers that are kept, one group of bands after the other.
pub(super) struct Kept<const N: usize> {
    /// How many of the bases listed are kept.
    own_bases: usize,
    /// How many of the covers listed are kept.
    own_covers: usize,
    bases: Vec<Base<N, WIDTH>>,
    covers: Vec<Cover<N, WIDTH>>,
}

impl<'d> Strata<'d> {
    /// Nothing yet, in bare skin. Deposits of regions are places in `old`.
    pub fn new<const N: usize>(canvas: &Canvas<N>, old: &'d [Deposit]) -> Self {
        Strata {
            epidermis_mm: canvas.epidermis_mm,
            old,
            new: &[],
            layers: Vec::new(),
            within: Vec::new(),
            bases: Piles { known: 1, steps: Vec::new() },
            covers: Piles { known: 2, steps: Vec::new() },
        }
    }

    /// Nothing yet, with new work in every region, around which this much is known.
    pub fn with<const N: usize>(
        canvas: &Canvas<N>,
        old: &'d [Deposit],
        new: &'d [Deposit],
        kept: &Kept<N>,
    ) -> Self {
        let mut strata = Strata::new(canvas, old);
        strata.new = new;
        let Known { bases, covers } = kept.known(0);
        strata.bases.known = bases.len();
        strata.covers.known = 1 + covers.len();
        strata
    }

    /// A region with what lies there already and nothing else.
    pub fn alone(&mut self, own: &[usize]) -> Sight {
        if own.is_empty() {
            return (EPIDERMIS, DEEP);
        }
        let (highest, _) = range(self.deposits(own));
        let (begin, cover) = self.skin_above(highest);
        (cover, self.upwards(DEEP, own, begin, f64::INFINITY))
    }

    /// What lies in a region around work between these two depths.
    pub fn around(&mut self, own: &[usize], top: f64, bottom: f64) -> Around {
        let (top, bottom) = (top.max(self.epidermis_mm), bottom.max(self.epidermis_mm));
        let (highest, _) = range(self.deposits(own));
        let (begin, mut cover) = self.skin_above(highest.min(top));
        for pair in self.cuts(own, begin, top).windows(2) {
            let layer = self.layer(own, pair[0], pair[1]);
            cover = self.covers.put(cover, layer, &mut self.layers);
        }
        let (mut base, mut bases) = (DEEP, Vec::new());
        for pair in self.cuts(own, bottom, f64::INFINITY).windows(2).rev() {
            let layer = self.layer(own, pair[0], pair[1]);
            base = self.bases.put(base, layer, &mut self.layers);
            bases.push((pair[0], base));
        }
        Around { cover: (top, cover), bases }
    }

    /// A region with the new work in it.
    pub fn with_new(&mut self, own: &[usize], around: &Around) -> Sight {
        let (highest, lowest) = range(self.new);
        let (begin, cover) = if highest < around.cover.0 { (0.0, SURFACE) } else { around.cover };
        let reached = around.bases.iter().rev().find(|(depth, _)| *depth >= lowest);
        let &(end, base) = reached.unwrap_or(&(f64::INFINITY, DEEP));
        (cover, self.upwards(base, own, begin, end))
    }

    /// Solves what was listed, and gives the reflectance of each of these. `kept` takes what it is for.
    pub fn solve<'k, const N: usize>(
        &self,
        canvas: &Canvas<N>,
        known: impl Fn(usize) -> Known<'k, N>,
        sights: &[Sight],
        mut kept: Option<&mut Kept<N>>,
    ) -> Vec<Spectrum> {
        let surface = LazyCell::new(|| Cover::surface(&canvas.nodes));
        let mut seen = vec![[Lanes::ZERO; GROUPS]; sights.len()];
        let mut slabs = vec![None; self.layers.len()];
        let mut bases: Vec<Base<N, WIDTH>> = Vec::with_capacity(self.bases.steps.len());
        let mut covers: Vec<Cover<N, WIDTH>> = Vec::with_capacity(self.covers.steps.len());
        // One group of bands after the other: all its layers fit into the nearest cache.
        for group in 0..GROUPS {
            let known = known(group);
            slabs.fill(None);
            bases.clear();
            for &(below, layer) in &self.bases.steps {
                let base = base_at(known.bases, &bases, below);
                bases.push(self.with_slab(canvas, &mut slabs, layer, group, |slab| base.under(slab)));
            }
            covers.clear();
            for &(above, layer) in &self.covers.steps {
                let cover = cover_at(&surface, known.covers, &covers, above);
                covers.push(self.with_slab(canvas, &mut slabs, layer, group, |slab| cover.with(slab)));
            }
            for (seen, &(cover, base)) in seen.iter_mut().zip(sights) {
                let base = base_at(known.bases, &bases, base);
                seen[group] = cover_at(&surface, known.covers, &covers, cover).reflectance(base);
            }
            if let Some(kept) = &mut kept {
                kept.bases.extend(known.bases.iter().chain(&bases[..kept.own_bases]));
                kept.covers.extend(known.covers.iter().chain(&covers[..kept.own_covers]));
            }
        }
        seen.iter().map(unpack).collect()
    }

    /// The deposits at these places, and those of new work.
    fn deposits(&self, own: &[usize]) -> impl Iterator<Item = &'d Deposit> {
        let old = self.old;
        own.iter().map(move |&place| &old[place]).chain(self.new)
    }

    fn cuts(&self, own: &[usize], begin: f64, end: f64) -> Vec<f64> {
        cuts(self.epidermis_mm, self.deposits(own), begin, end)
    }

    /// Skin without work down to this depth, or where it lies in the epidermis the surface alone: how far down that is, and its place.
    fn skin_above(&mut self, depth: f64) -> (f64, usize) {
        if depth < self.epidermis_mm {
            return (0.0, SURFACE);
        }
        if depth == self.epidermis_mm {
            return (depth, EPIDERMIS);
        }
        let layer = self.layer(&[], self.epidermis_mm, depth);
        (depth, self.covers.put(EPIDERMIS, layer, &mut self.layers))
    }

    /// A region's layers between two depths put onto a base.
    fn upwards(&mut self, mut base: usize, own: &[usize], begin: f64, end: f64) -> usize {
        for pair in self.cuts(own, begin, end).windows(2).rev() {
            let layer = self.layer(own, pair[0], pair[1]);
            base = self.bases.put(base, layer, &mut self.layers);
        }
        base
    }

    /// The place of a region's layer between two neighbouring cuts.
    fn layer(&mut self, own: &[usize], top: f64, bottom: f64) -> usize {
        let from = self.within.len();
        for place in own.iter().copied().chain(self.old.len()..self.old.len() + self.new.len()) {
            let deposit = self.deposit(place);
            if deposit.top <= top && deposit.bottom >= bottom {
                self.within.push(place);
            }
        }
        let (listed, deposits) = self.within.split_at(from);
        let same = |layer: &Layer| {
            layer.top == top && layer.bottom == bottom && listed[layer.deposits.clone()] == *deposits
        };
        if let Some(place) = self.layers.iter().position(same) {
            self.within.truncate(from);
            return place;
        }
        self.layers.push(Layer { top, bottom, deposits: from..self.within.len(), uses: 0 });
        self.layers.len() - 1
    }

    fn deposit(&self, place: usize) -> &'d Deposit {
        self.old.get(place).unwrap_or_else(|| &self.new[place - self.old.len()])
    }

    /// What comes of a layer; it is solved once a group of bands, and kept only while something else is put onto it too.
    #[inline(always)]
    fn with_slab<const N: usize, T>(
        &self,
        canvas: &Canvas<N>,
        slabs: &mut [Option<Slab<N, WIDTH>>],
        place: usize,
        group: usize,
        put: impl Fn(&Slab<N, WIDTH>) -> T,
    ) -> T {
        let layer = &self.layers[place];
        let solved = || {
            let deposits = self.within[layer.deposits.clone()].iter().map(|&place| self.deposit(place));
            slab(canvas, deposits, (layer.top, layer.bottom), group)
        };
        if layer.uses == 1 { put(&solved()) } else { put(slabs[place].get_or_insert_with(solved)) }
    }
}

impl Piles {
    /// The place of this layer on what is there.
    fn put(&mut self, onto: usize, layer: usize, layers: &mut [Layer]) -> usize {
        let step = (onto, layer);
        let found = self.steps.iter().position(|one| *one == step);
        self.known
            + found.unwrap_or_else(|| {
                self.steps.push(step);
                layers[layer].uses += 1;
                self.steps.len() - 1
            })
    }
}

fn base_at<'k, const N: usize>(
    known: &'k [Base<N, WIDTH>],
    more: &'k [Base<N, WIDTH>],
    place: usize,
) -> &'k Base<N, WIDTH> {
    known.get(place).unwrap_or_else(|| &more[place - known.len()])
}

fn cover_at<'k, const N: usize>(
    surface: &'k Cover<N, WIDTH>,
    known: &'k [Cover<N, WIDTH>],
    more: &'k [Cover<N, WIDTH>],
    place: usize,
) -> &'k Cover<N, WIDTH> {
    match place.checked_sub(1) {
        None => surface,
        Some(place) => known.get(place).unwrap_or_else(|| &more[place - known.len()]),
    }
}

impl<const N: usize> Kept<N> {
    /// For what has been listed by now, and what was known.
    pub fn of(strata: &Strata) -> Self {
        let (own_bases, own_covers) = (strata.bases.steps.len(), strata.covers.steps.len());
        Kept { own_bases, own_covers, bases: Vec::new(), covers: Vec::new() }
    }

    /// What is kept of a group of bands.
    pub fn known(&self, group: usize) -> Known<'_, N> {
        let (bases, covers) = (self.bases.len() / GROUPS, self.covers.len() / GROUPS);
        Known {
            bases: &self.bases[group * bases..(group + 1) * bases],
            covers: &self.covers[group * covers..(group + 1) * covers],
        }
    }
}

/// What is known of bare skin.
pub(super) fn bare<const N: usize>(canvas: &Canvas<N>, group: usize) -> Known<'_, N> {
    Known {
        bases: std::slice::from_ref(&canvas.deep[group]),
        covers: std::slice::from_ref(&canvas.epidermis_cover[group]),
    }
}
