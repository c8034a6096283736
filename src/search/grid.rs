//! Drop grids: everything that may be mixed within some limits, each paint once.
//!
//! Entry points: [`Grid::of_palette`] for up to so many bottles and drops; [`Grid::of_additions`] for one bottle with a few drops
//! of modifiers, as drills have it.

use super::SearchError;
use crate::pigment::{Mix, Paint, Shelf};
use crate::quantity::Quantity;

/// Mixes of a palette that may be listed: at twenty thousand a second on one core, all of them take about ten seconds.
pub const MOST_MIXES: u64 = 200_000;

/// Bounds of [`Palette::drops`].
pub const DROPS: Quantity = Quantity::new("drops", "", 1.0, 100.0);
/// Bounds of [`Palette::most_bottles`].
pub const BOTTLES: Quantity = Quantity::new("bottles", "", 1.0, 8.0);

/// What there is to mix from, and how.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Palette {
    /// Ids of the bottles, each once.
    pub bottles: Vec<String>,
    /// Different bottles in one mix, at most.
    pub most_bottles: u32,
    /// Drops in one mix, at most.
    pub drops: u32,
}

/// Mixes to try, with what each is made of.
#[derive(Debug, Clone)]
pub struct Grid {
    mixes: Vec<(Mix, Paint)>,
    possible: u64,
}

impl Grid {
    /// Every mix of 1 to [`Palette::drops`] drops of at most [`Palette::most_bottles`] different bottles. Equal ratios are the same
    /// paint: of 1:1, 2:2 and 3:3 only the first is in the grid.
    ///
    /// # Errors
    /// [`SearchError`] when a limit is outside its bounds, a bottle is unknown or named twice, there is none, or the mixes, equal
    /// ratios counted apart, are more than [`MOST_MIXES`].
    pub fn of_palette(shelf: &Shelf, palette: &Palette) -> Result<Self, SearchError> {
        DROPS
            .check(f64::from(palette.drops))
            .map_err(|breach| SearchError::OutOfRange { field: "drops", breach })?;
        BOTTLES
            .check(f64::from(palette.most_bottles))
            .map_err(|breach| SearchError::OutOfRange { field: "bottles", breach })?;
        if palette.bottles.is_empty() {
            return Err(SearchError::EmptyPalette);
        }
        for (place, bottle) in palette.bottles.iter().enumerate() {
            if shelf.bottle(bottle).is_none() {
                return Err(SearchError::UnknownBottle { bottle: bottle.clone(), place });
            }
            if palette.bottles[..place].contains(bottle) {
                return Err(SearchError::NamedTwice { bottle: bottle.clone(), place });
            }
        }
        let possible = palette.possible();
        if possible > MOST_MIXES {
            return Err(SearchError::TooManyMixes { possible });
        }
        let mut found = Vec::new();
        extend(palette, 0, palette.drops, &mut Vec::new(), &mut found);
        Ok(Grid { possible, ..Grid::of(shelf, found) })
    }

    /// Every mix of one of `bottles` with none to `most` drops of `modifiers`, `drops` in all; in the order of the bottles.
    pub fn of_additions(
        shelf: &Shelf,
        bottles: &[String],
        modifiers: &[String],
        drops: u32,
        most: u32,
    ) -> Self {
        Grid::of(shelf, with_additions(bottles, modifiers, drops, most))
    }

    fn of(shelf: &Shelf, mixes: Vec<Mix>) -> Self {
        let mixes: Vec<(Mix, Paint)> = mixes
            .into_iter()
            .map(|mix| {
                let paint = shelf.paint_of(&mix);
                (mix, paint)
            })
            .collect();
        Grid { possible: mixes.len() as u64, mixes }
    }

    /// The mixes with what each is made of.
    pub fn mixes(&self) -> &[(Mix, Paint)] {
        &self.mixes
    }

    /// The same without the mixes that this tells of.
    #[cfg(feature = "practice")]
    pub(crate) fn without(mut self, unwanted: impl Fn(&Mix) -> bool) -> Self {
        self.mixes.retain(|(mix, _)| !unwanted(mix));
        self
    }

    /// How many mixes the limits allow when equal ratios are counted apart.
    pub fn possible(&self) -> u64 {
        self.possible
    }
}

impl Palette {
    /// How many mixes there are, equal ratios counted apart: for each number k of bottles, the choices of k bottles times the ways to
    /// share at most so many drops among them, which is drops over k. Too many for a number count as the greatest.
    pub fn possible(&self) -> u64 {
        let most = u64::from(self.most_bottles).min(self.bottles.len() as u64).min(u64::from(self.drops));
        (1..=most).fold(0, |sum: u64, k| {
            let ways = choices(self.bottles.len() as u64, k).saturating_mul(choices(self.drops.into(), k));
            sum.saturating_add(ways)
        })
    }
}

/// n over k; too many for a number count as the greatest.
fn choices(n: u64, k: u64) -> u64 {
    let mut ways: u128 = 1;
    for i in 1..=u128::from(k) {
        ways = ways.saturating_mul(u128::from(n) + 1 - i) / i;
        if ways > u128::from(u64::MAX) {
            return u64::MAX;
        }
    }
    ways as u64
}

/// Adds every mix that begins with `begun` and goes on with bottles from place `from` and at most `left` further drops.
fn extend(palette: &Palette, from: usize, left: u32, begun: &mut Vec<(usize, u32)>, found: &mut Vec<Mix>) {
    if begun.iter().fold(0, |divisor, &(_, drops)| common_divisor(divisor, drops)) == 1 {
        found.push(Mix::new(begun.iter().map(|&(place, drops)| (palette.bottles[place].clone(), drops))));
    }
    if begun.len() == palette.most_bottles as usize {
        return;
    }
    for place in from..palette.bottles.len() {
        for drops in 1..=left {
            begun.push((place, drops));
            extend(palette, place + 1, left - drops, begun, found);
            begun.pop();
        }
    }
}

fn common_divisor(one: u32, other: u32) -> u32 {
    if other == 0 { one } else { common_divisor(other, one % other) }
}

/// Every mix of one bottle with none to `most` drops of the modifiers, `drops` in all; ordered by bottle, then by modifiers.
pub(crate) fn with_additions(bottles: &[String], modifiers: &[String], drops: u32, most: u32) -> Vec<Mix> {
    // Drops of the modifiers in their order, so that each choice comes up once.
    let mut additions = vec![vec![]];
    let mut last = additions.clone();
    for _ in 0..most.min(drops) {
        last = last
            .iter()
            .flat_map(|added: &Vec<usize>| {
                let from = added.last().copied().unwrap_or(0);
                (from..modifiers.len()).map(move |modifier| {
                    let mut longer = added.clone();
                    longer.push(modifier);
                    longer
                })
            })
            .collect();
        additions.extend(last.iter().cloned());
    }
    let mut all = Vec::with_capacity(bottles.len() * additions.len());
    for bottle in bottles {
        let mut of_bottle: Vec<Mix> = additions
            .iter()
            .map(|added| {
                let rest = drops - added.len() as u32;
                Mix::new(
                    std::iter::once((bottle.clone(), rest))
                        .chain(added.iter().map(|&modifier| (modifiers[modifier].clone(), 1))),
                )
            })
            .collect();
        of_bottle.sort();
        all.extend(of_bottle);
    }
    all
}
