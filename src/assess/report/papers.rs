//! Scores and reliability of each blueprint. Entry point: [`papers`].
//!
//! Alpha and KR-20 are computed over places: the third question of a section is one place, whatever question a seed put there. As the
//! questions of a place are drawn for each person, differences between them count as error, which is what a score on such a paper
//! really bears: the coefficient is of the mark as it is, not only of the ranking.

use super::input::{Checked, Sheet, SheetMark};
use crate::assess::items::{Answer, Candidate, Item, Reliability, Sitting, reliability};
use crate::assess::standard::{Certainty, decide};
use serde::Serialize;
use std::collections::{BTreeMap, HashMap};

/// One blueprint and everybody who sat a paper of it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PaperEntry {
    /// Id of the blueprint.
    pub blueprint: String,
    /// Sheets handed in.
    pub sheets: usize,
    /// The places of the paper, in order.
    pub places: Vec<Place>,
    /// Reliability over the places.
    pub reliability: Reliability,
    /// Mean mark in percent: the mark given, or the mean credit where none was given. `None` without sheets that have answers.
    pub mean: Option<f64>,
    /// Sheets by mark: from 0 to under 10 percent, and so on; the last holds 100 too.
    pub marks: [usize; 10],
    /// Pass mark in percent, where all sheets have the same.
    pub pass_mark: Option<f64>,
    /// Sheets that had a pass mark.
    pub decided: usize,
    /// Of these, those that passed.
    pub passed: usize,
    /// Of these, those within one standard error of the pass mark, on either side.
    pub close: usize,
}

/// One place of a paper.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Place {
    /// Id of the section; empty where a paper has none.
    pub section: String,
    /// Which question of the section, from 1.
    pub number: usize,
}

/// One entry a blueprint, by id.
pub(super) fn papers(checked: &Checked) -> Vec<PaperEntry> {
    let mut by_blueprint: BTreeMap<&str, Vec<&Sheet>> = BTreeMap::new();
    for sheet in checked.cohort.sheets.iter().filter(|sheet| !sheet.practice) {
        by_blueprint.entry(&sheet.paper.blueprint).or_default().push(sheet);
    }
    by_blueprint.into_iter().map(|(blueprint, sheets)| paper(blueprint, &sheets)).collect()
}

fn paper(blueprint: &str, sheets: &[&Sheet]) -> PaperEntry {
    let mut places: Vec<Place> = Vec::new();
    let mut known: HashMap<(&str, usize), usize> = HashMap::new();
    let candidates: Vec<Candidate> = sheets
        .iter()
        .enumerate()
        .map(|(at, sheet)| {
            let mut counts: HashMap<&str, usize> = HashMap::new();
            let answers = sheet.answers.iter().map(|answer| {
                let number = counts.entry(&answer.section).or_default();
                *number += 1;
                let item = *known.entry((&answer.section, *number)).or_insert_with(|| {
                    places.push(Place { section: answer.section.clone(), number: *number });
                    places.len() - 1
                });
                Answer { item, credit: answer.credit, chosen: None, offered: None }
            });
            Candidate { id: format!("sheet {at}"), answers: answers.collect() }
        })
        .collect();
    let items = (0..places.len()).map(|at| Item { id: format!("place {at}"), options: Vec::new() }).collect();
    let marks: Vec<f64> = sheets.iter().filter_map(|sheet| percent_of(sheet)).collect();
    let mut bins = [0; 10];
    for mark in &marks {
        // Between 0 and 100: checked, or a mean of credits.
        bins[((mark / 10.0) as usize).min(9)] += 1;
    }
    let decided: Vec<_> = sheets
        .iter()
        .filter_map(|sheet| sheet.mark)
        .filter_map(|mark| Some((mark.pass_mark?, decide(mark.total, mark.pass_mark?, mark.standard_error))))
        .collect();
    let first = decided.first().map(|decision| decision.0);
    PaperEntry {
        blueprint: blueprint.to_owned(),
        sheets: sheets.len(),
        reliability: reliability(&in_order(items, candidates)),
        places,
        mean: (!marks.is_empty()).then(|| marks.iter().sum::<f64>() / marks.len() as f64),
        marks: bins,
        pass_mark: first.filter(|&mark| decided.iter().all(|decision| decision.0 == mark)),
        decided: decided.len(),
        passed: decided.iter().filter(|decision| decision.1.passed).count(),
        close: decided.iter().filter(|decision| decision.1.certainty == Certainty::WithinOneError).count(),
    }
}

/// A sitting of answers whose places were counted up, with nothing twice.
fn in_order(items: Vec<Item>, candidates: Vec<Candidate>) -> Sitting {
    Sitting::new(items, candidates).unwrap_or_else(|_| Sitting::empty())
}

/// The mark of a sheet in percent: as given, or the mean credit. `None` for a sheet without answers.
pub(super) fn percent_of(sheet: &Sheet) -> Option<f64> {
    if let Some(SheetMark { total, .. }) = sheet.mark {
        return Some(total);
    }
    let earned: f64 = sheet.answers.iter().map(|answer| answer.credit).sum();
    (!sheet.answers.is_empty()).then(|| (100.0 * earned / sheet.answers.len() as f64).clamp(0.0, 100.0))
}
