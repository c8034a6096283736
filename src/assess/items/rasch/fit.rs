//! How well answers fit the model. Entry point: [`fits`].
//!
//! With x the answer (0 or 1), p its chance and w = p(1 - p): outfit is the mean of (x - p)²/w, infit is Σ(x - p)² / Σw;
//! both are about 1 where the model holds (Wright and Masters 1982). Their t is the cube-root transformation of Wilson and
//! Hilferty (1931) given there. Chances come from Warm's measures, of everybody who has one; on short papers they are drawn
//! a little towards the answers, and mean squares are then a little below 1.

use super::Answers;
use super::measure::{Measure, chance};
use serde::Serialize;

/// Fit of one item or one person.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Fit {
    /// Information-weighted mean square: sensitive to surprises near the person's own level.
    pub infit: f64,
    /// Plain mean square: sensitive to surprises far from it.
    pub outfit: f64,
    /// Infit as a deviate, about standard normal where the model holds; `None` where it cannot vary.
    pub infit_t: Option<f64>,
    /// Outfit likewise.
    pub outfit_t: Option<f64>,
}

/// Fit of all items with a difficulty and of all people.
pub(super) struct Fits {
    pub items: Vec<Option<Fit>>,
    pub people: Vec<Option<Fit>>,
}

#[derive(Clone, Copy, Default)]
struct Sums {
    count: f64,
    squares: f64,
    standardised: f64,
    information: f64,
    /// Σ(c - w²), c being the fourth central moment of an answer.
    infit_spread: f64,
    /// Σ c/w².
    outfit_spread: f64,
}

impl Sums {
    fn add(&mut self, right: bool, p: f64) {
        let w = p * (1.0 - p);
        let residual = if right { 1.0 - p } else { -p };
        let square = residual * residual;
        let c = w * ((1.0 - p) * (1.0 - p) * (1.0 - p) + p * p * p);
        self.count += 1.0;
        self.squares += square;
        self.standardised += square / w;
        self.information += w;
        self.infit_spread += c - w * w;
        self.outfit_spread += c / (w * w);
    }

    fn fit(&self) -> Option<Fit> {
        let (infit, outfit) = (self.squares / self.information, self.standardised / self.count);
        let infit_spread = self.infit_spread / (self.information * self.information);
        let outfit_spread = self.outfit_spread / (self.count * self.count) - 1.0 / self.count;
        (infit.is_finite() && outfit.is_finite()).then(|| Fit {
            infit,
            outfit,
            infit_t: deviate(infit, infit_spread),
            outfit_t: deviate(outfit, outfit_spread),
        })
    }
}

/// Wilson and Hilferty's transformation of a mean square with a given variance.
fn deviate(mean_square: f64, variance: f64) -> Option<f64> {
    // At even odds for all, squares cannot vary but for rounding.
    if variance <= 1e-12 || !variance.is_finite() {
        return None;
    }
    let q = libm::sqrt(variance);
    Some((libm::cbrt(mean_square) - 1.0) * 3.0 / q + q / 3.0)
}

/// Fit of every item and of every person who has a measure.
pub(super) fn fits(people: &[Answers], measures: &[Option<Measure>], difficulties: &[f64]) -> Fits {
    let mut items = vec![Sums::default(); difficulties.len()];
    let people = people
        .iter()
        .zip(measures)
        .map(|(answers, measure)| {
            let measure = measure.as_ref()?.value;
            let mut person = Sums::default();
            for &(item, right) in &answers.0 {
                let p = chance(measure, difficulties[item]);
                person.add(right, p);
                items[item].add(right, p);
            }
            person.fit()
        })
        .collect();
    Fits { items: items.iter().map(Sums::fit).collect(), people }
}
