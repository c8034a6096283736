//! The Rasch model: item difficulties, person measures, their standard errors and fit.
//!
//! P(right) = 1 / (1 + exp(difficulty - measure)), both in logits. Entry point: [`rasch`]. Steps:
//! 1. keep the items that can be compared (`linked`);
//! 2. difficulties by conditional maximum likelihood (`conditional`, `descent`): given how many a person got right, the
//!    person's ability drops out of the likelihood, so that nothing is assumed about the cohort, and the estimates do not
//!    drift on short papers as those of joint maximum likelihood do (Andersen 1970, 1972). Missing answers need no special
//!    care: every set of items answered has a likelihood of its own. Difficulties are centred at 0;
//! 3. standard errors from the information matrix (`errors`);
//! 4. person measures by Warm's weighted likelihood (Warm 1989; `measure`): finite for nothing right and for all right;
//! 5. infit and outfit (Wright and Masters 1982; `fit`).
//!
//! An item may be a drill of which one paper puts several exercises: they share its difficulty, and the likelihood of step 2 counts each.
//!
//! Right means full credit; partial credit counts as wrong here.

mod conditional;
mod descent;
mod errors;
mod fit;
mod linked;
mod measure;
mod pattern;

use super::sitting::Sitting;
use conditional::Conditional;
pub use fit::Fit;
pub use linked::Unlinked;
use serde::Serialize;

/// What the Rasch model says about a sitting.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Rasch {
    /// One entry an item, in the order of the items.
    pub items: Vec<ItemMeasure>,
    /// One entry a candidate, in the order of the candidates.
    pub people: Vec<PersonMeasure>,
    /// Items with a difficulty.
    pub estimated: usize,
    /// Whether standard errors of difficulties are exact; otherwise they come from each item's own information alone,
    /// because the sitting has too many different sets of items.
    pub exact_errors: bool,
    /// Person separation reliability: the share of the variance of the measures that is not their error, 0 to 1 (Wright and
    /// Masters 1982). `None` with fewer than two people or measures that are all equal.
    pub reliability: Option<f64>,
    /// Why there are no difficulties.
    pub why_not: Option<NoDifficulties>,
}

/// Why there are no difficulties.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum NoDifficulties {
    /// No two questions can be compared.
    NoLinks,
    /// The estimation did not settle.
    Unsettled,
}

/// One item on the scale.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ItemMeasure {
    /// Difficulty in logits; the mean over all estimated items is 0.
    pub difficulty: Option<f64>,
    /// Its standard error in logits.
    pub standard_error: Option<f64>,
    /// How well the answers fit.
    pub fit: Option<Fit>,
    /// Why there is no difficulty.
    pub unlinked: Option<Unlinked>,
}

/// One person on the scale.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PersonMeasure {
    /// Ability in logits, on the scale of the difficulties; `None` for who answered no estimated item.
    pub measure: Option<f64>,
    /// Its standard error in logits.
    pub standard_error: Option<f64>,
    /// How well the person's answers fit.
    pub fit: Option<Fit>,
    /// Whether all or none of the answers were right: then the measure leans on the estimator.
    pub extreme: bool,
}

/// Right and wrong of one person on the items with a difficulty: index among those items, and right or not.
struct Answers(Vec<(usize, bool)>);

impl Answers {
    fn right(&self) -> usize {
        self.0.iter().filter(|answer| answer.1).count()
    }

    fn is_extreme(&self) -> bool {
        let right = self.right();
        right == 0 || right == self.0.len()
    }
}

/// Estimates the model for a sitting.
pub fn rasch(sitting: &Sitting) -> Rasch {
    let links = linked::linked(sitting);
    let kept: Vec<usize> =
        links.iter().enumerate().filter(|(_, link)| link.is_none()).map(|(item, _)| item).collect();
    let mut place = vec![None; links.len()];
    for (at, &item) in kept.iter().enumerate() {
        place[item] = Some(at);
    }
    let people: Vec<Answers> = sitting
        .candidates()
        .iter()
        .map(|person| {
            Answers(
                person.answers.iter().filter_map(|a| place[a.item].map(|at| (at, a.is_right()))).collect(),
            )
        })
        .collect();
    let likelihood = Conditional::new(kept.len(), &people);
    let Some(difficulties) = descent::minimise(&likelihood) else {
        return without(sitting, &links, kept.is_empty());
    };
    let (standard_errors, exact_errors) = errors::standard_errors(&likelihood, &difficulties);
    let measures: Vec<Option<measure::Measure>> =
        people.iter().map(|answers| measure::measure(answers, &difficulties)).collect();
    let fits = fit::fits(&people, &measures, &difficulties);
    let items = links
        .iter()
        .enumerate()
        .map(|(item, link)| ItemMeasure {
            difficulty: place[item].map(|at| difficulties[at]),
            standard_error: place[item].and_then(|at| standard_errors[at]),
            fit: place[item].and_then(|at| fits.items[at]),
            unlinked: *link,
        })
        .collect();
    let people: Vec<PersonMeasure> = people
        .iter()
        .zip(&measures)
        .zip(fits.people)
        .map(|((answers, measure), fit)| PersonMeasure {
            measure: measure.map(|measure| measure.value),
            standard_error: measure.map(|measure| measure.standard_error),
            fit,
            extreme: measure.is_some() && answers.is_extreme(),
        })
        .collect();
    Rasch {
        items,
        reliability: separation(&people),
        people,
        estimated: kept.len(),
        exact_errors,
        why_not: None,
    }
}

/// No difficulties, and why.
fn without(sitting: &Sitting, links: &[Option<Unlinked>], nothing_links: bool) -> Rasch {
    Rasch {
        items: links
            .iter()
            .map(|&unlinked| ItemMeasure { difficulty: None, standard_error: None, fit: None, unlinked })
            .collect(),
        people: sitting
            .candidates()
            .iter()
            .map(|_| PersonMeasure { measure: None, standard_error: None, fit: None, extreme: false })
            .collect(),
        estimated: 0,
        exact_errors: false,
        reliability: None,
        why_not: Some(if nothing_links { NoDifficulties::NoLinks } else { NoDifficulties::Unsettled }),
    }
}

/// Person separation reliability.
fn separation(people: &[PersonMeasure]) -> Option<f64> {
    let measures: Vec<f64> = people.iter().filter_map(|person| person.measure).collect();
    let errors: Vec<f64> =
        people.iter().filter_map(|person| person.standard_error).map(|error| error * error).collect();
    let variance = super::reliability::variance(&measures).filter(|&variance| variance > 1e-12)?;
    let error = errors.iter().sum::<f64>() / errors.len() as f64;
    Some(((variance - error) / variance).clamp(0.0, 1.0))
}
