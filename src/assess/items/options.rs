//! What every option of an item drew (distractor analysis). Entry point: [`option_rows`].

use super::classical::{rest_share, total};
use super::sitting::Sitting;
use serde::Serialize;

/// One option in the distractor table of an item.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct OptionRow {
    /// In words.
    pub label: String,
    /// Whether it is a right answer.
    pub key: bool,
    /// Id of the misconception that leads to it.
    pub misconception: Option<String>,
    /// People who were shown it with this item.
    pub offered: usize,
    /// People who chose it.
    pub chosen: usize,
    /// Chosen by offered, 0 to 1; `None` where it was never shown.
    pub share: Option<f64>,
    /// Mean, over those who chose it, of the mean credit for their other answers, 0 to 1; `None` where nobody chose it or who
    /// did answered nothing else.
    pub mean_rest: Option<f64>,
}

/// The distractor table of every item: a row an option, in the order of items and options.
pub fn option_rows(sitting: &Sitting) -> Vec<Vec<OptionRow>> {
    let mut rows: Vec<Vec<OptionRow>> = sitting
        .items()
        .iter()
        .map(|item| {
            item.options
                .iter()
                .map(|option| OptionRow {
                    label: option.label.clone(),
                    key: option.key,
                    misconception: option.misconception.clone(),
                    offered: 0,
                    chosen: 0,
                    share: None,
                    mean_rest: None,
                })
                .collect()
        })
        .collect();
    // Sum of rest shares, and how many there were, per option.
    let mut rests: Vec<Vec<(f64, usize)>> = rows.iter().map(|rows| vec![(0.0, 0); rows.len()]).collect();
    for person in sitting.candidates() {
        let total = total(person);
        for answer in &person.answers {
            for (at, row) in rows[answer.item].iter_mut().enumerate() {
                row.offered += usize::from(answer.was_offered(at));
            }
            if let Some(chosen) = answer.chosen {
                rows[answer.item][chosen].chosen += 1;
                if let Some(rest) = rest_share(person, total, answer) {
                    let (sum, count) = &mut rests[answer.item][chosen];
                    *sum += rest;
                    *count += 1;
                }
            }
        }
    }
    for (rows, rests) in rows.iter_mut().zip(rests) {
        for (row, (sum, count)) in rows.iter_mut().zip(rests) {
            row.share = (row.offered > 0).then(|| row.chosen as f64 / row.offered as f64);
            row.mean_rest = (count > 0).then(|| sum / count as f64);
        }
    }
    rows
}
