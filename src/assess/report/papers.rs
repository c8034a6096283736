//! Scores and reliability of each blueprint. Entry point: [`papers`].
//!
//! Alpha and KR-20 are computed over places: the third question of a section is one place, whatever question a seed put there. As the
//! questions of a place are drawn for each person, differences between them count as error, which is what a score on such a paper
//! really bears: the coefficient is of the mark as it is, not only of the ranking.

use super::input::{Checked, Sheet, SheetMark};
use crate::assess::items::{Answer, Candidate, Item, Reliability, Sitting, reliability};
use crate::assess::standard::{Certainty, decide};
use crate::course::Course;
use serde::Serialize;
use std::collections::{BTreeMap, HashMap};

/// One blueprint and everybody who sat a paper of it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PaperEntry {
    /// Id of the blueprint.
    pub blueprint: String,
    /// Its title; the id where the course does not know it.
    pub title: String,
    /// Titles of the sections in the order of the paper, by id.
    pub sections: Vec<SectionName>,
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

/// A section of a paper.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct SectionName {
    /// Its id.
    pub id: String,
    /// The title of the case it asks about, where a paper has cases.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub case: Option<String>,
    /// Its title; the id where the course does not know it.
    pub title: String,
}

/// What a section earned on one sheet.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SectionCredit {
    /// Which.
    #[serde(flatten)]
    pub section: SectionName,
    /// Mean credit, 0 to 1.
    pub credit: f64,
}

/// What sections of a sheet earned, in the order of its answers; none of a sheet without sections.
pub(super) fn section_credits(sheet: &Sheet, course: &Course) -> Vec<SectionCredit> {
    let mut sums: Vec<(&str, f64, usize)> = Vec::new();
    for answer in sheet.answers.iter().filter(|answer| !answer.section.is_empty()) {
        match sums.iter_mut().find(|sum| sum.0 == answer.section) {
            Some(sum) => (sum.1, sum.2) = (sum.1 + answer.credit, sum.2 + 1),
            None => sums.push((&answer.section, answer.credit, 1)),
        }
    }
    sums.into_iter()
        .map(|(id, sum, count)| SectionCredit {
            section: section_name(course, &sheet.paper.blueprint, id),
            credit: (sum / count as f64).clamp(0.0, 1.0),
        })
        .collect()
}

fn section_name(course: &Course, blueprint: &str, id: &str) -> SectionName {
    let known = course.blueprint(blueprint).and_then(|known| Some((known, known.section(id)?)));
    SectionName {
        id: id.to_owned(),
        case: known.and_then(|(known, section)| Some(known.case_of(section)?.title.clone())),
        title: known.map_or(id, |(_, section)| &section.title).to_owned(),
    }
}

/// The title of a blueprint; the id where the course does not know it, as of an assignment.
pub(super) fn title_of(course: &Course, blueprint: &str) -> String {
    course.blueprint(blueprint).map_or(blueprint, |known| &known.title).to_owned()
}

/// One entry a blueprint, by id.
pub(super) fn papers(checked: &Checked, course: &Course) -> Vec<PaperEntry> {
    let mut by_blueprint: BTreeMap<&str, Vec<&Sheet>> = BTreeMap::new();
    for sheet in checked.cohort.sheets.iter().filter(|sheet| !sheet.practice) {
        by_blueprint.entry(&sheet.paper.blueprint).or_default().push(sheet);
    }
    by_blueprint.into_iter().map(|(blueprint, sheets)| paper(blueprint, &sheets, course)).collect()
}

fn paper(blueprint: &str, sheets: &[&Sheet], course: &Course) -> PaperEntry {
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
    let mut sections: Vec<SectionName> = Vec::new();
    for place in places.iter().filter(|place| !place.section.is_empty()) {
        if sections.iter().all(|known| known.id != place.section) {
            sections.push(section_name(course, blueprint, &place.section));
        }
    }
    PaperEntry {
        blueprint: blueprint.to_owned(),
        title: title_of(course, blueprint),
        sections,
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
