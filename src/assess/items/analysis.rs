//! Everything about one sitting in one place. Entry point: [`analyse`].

use super::classical::{Classical, classical};
use super::flag::{Flag, flags};
use super::options::{OptionRow, option_rows};
use super::rasch::{ItemMeasure, NoDifficulties, PersonMeasure, rasch};
use super::reliability::{Reliability, reliability};
use super::sitting::Sitting;
use serde::Serialize;

/// Statistics of a paper sat by a cohort.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Analysis {
    /// One entry an item, in the order of the items.
    pub items: Vec<ItemReport>,
    /// One entry a candidate, in the order of the candidates.
    pub people: Vec<PersonReport>,
    /// Reliability of scores.
    pub reliability: Reliability,
    /// Person separation reliability of the Rasch measures, 0 to 1; serves where not everybody answered the same items.
    pub separation: Option<f64>,
    /// Items with a difficulty.
    pub estimated: usize,
    /// Whether the standard errors of difficulties are exact.
    pub exact_errors: bool,
    /// Why there are no difficulties.
    pub why_no_difficulties: Option<NoDifficulties>,
}

/// Statistics of one item.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ItemReport {
    /// Id of the item.
    pub id: String,
    /// Facility and discrimination.
    pub classical: Classical,
    /// The distractor table; empty where answers are not chosen from a list.
    pub options: Vec<OptionRow>,
    /// Difficulty and fit.
    pub rasch: ItemMeasure,
    /// Reasons to revise it; [`Flag::words`] says each.
    pub flags: Vec<Flag>,
}

/// Statistics of one candidate.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PersonReport {
    /// Id of the candidate.
    pub id: String,
    /// Items answered.
    pub answers: usize,
    /// Sum of credits.
    pub score: f64,
    /// Ability and fit.
    pub rasch: PersonMeasure,
}

/// All statistics of a sitting.
///
/// ```
/// use healedhue::assess::items::{Answer, Candidate, Item, Sitting, analyse};
/// let items = ["one", "two"].map(|id| Item { id: id.to_owned(), options: Vec::new() }).to_vec();
/// let answer = |item, credit| Answer { item, credit, chosen: None, offered: None };
/// let people = [("a", [1.0, 0.0]), ("b", [0.0, 1.0]), ("c", [1.0, 0.0])].map(|(id, credits)| Candidate {
///     id: id.to_owned(),
///     answers: credits.iter().enumerate().map(|(item, &credit)| answer(item, credit)).collect(),
/// });
/// let analysis = analyse(&Sitting::new(items, people.to_vec())?);
/// assert_eq!(analysis.items[0].classical.facility, Some(2.0 / 3.0));
/// // Two of three got only the first right: it is easier by ln 2, half of it to each side of 0.
/// let difficulty = analysis.items[1].rasch.difficulty.unwrap();
/// assert!((difficulty - f64::ln(2.0) / 2.0).abs() < 1e-9);
/// # Ok::<(), healedhue::assess::items::SittingError>(())
/// ```
pub fn analyse(sitting: &Sitting) -> Analysis {
    let rasch = rasch(sitting);
    let items = sitting
        .items()
        .iter()
        .zip(classical(sitting))
        .zip(option_rows(sitting))
        .zip(rasch.items)
        .map(|(((item, classical), options), rasch)| ItemReport {
            id: item.id.clone(),
            flags: flags(&classical, &options, &rasch),
            classical,
            options,
            rasch,
        })
        .collect();
    let people = sitting
        .candidates()
        .iter()
        .zip(rasch.people)
        .map(|(person, rasch)| PersonReport {
            id: person.id.clone(),
            answers: person.answers.len(),
            score: person.answers.iter().map(|answer| answer.credit).sum(),
            rasch,
        })
        .collect();
    Analysis {
        items,
        people,
        reliability: reliability(sitting),
        separation: rasch.reliability,
        estimated: rasch.estimated,
        exact_errors: rasch.exact_errors,
        why_no_difficulties: rasch.why_not,
    }
}
