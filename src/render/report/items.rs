//! Drills and questions on the instructor's page. Entry points: [`item_view`], [`revise_view`], [`tabled`].

use super::plot::bar_of_share;
use super::said::{NONE, number, percent};
use super::shown::shown;
use crate::assess::items::rasch::Fit;
use crate::assess::items::{FEWEST_ANSWERS, OptionRow};
use crate::assess::report::{ItemEntry, ItemKind};
use crate::language::Language;
use crate::say;
use serde::Serialize;
use std::cmp::Reverse;
use std::collections::BTreeSet;

/// An item to look at again.
#[derive(Serialize)]
pub(super) struct ReviseView {
    number: usize,
    kind: String,
    id: String,
    about: String,
    reasons: Vec<String>,
}

/// An item with all its figures.
#[derive(Serialize)]
pub(super) struct ItemView {
    number: usize,
    kind: String,
    id: String,
    about: String,
    skill: String,
    answers: usize,
    /// How many answers to how many exercises.
    put: String,
    facility: String,
    discrimination: String,
    difficulty: String,
    infit: String,
    outfit: String,
    time: String,
    verdict: String,
    options: Vec<OptionView>,
}

#[derive(Serialize)]
struct OptionView {
    label: String,
    key: bool,
    offered: usize,
    chosen: usize,
    share: String,
    rest: String,
    length: Option<String>,
}

fn kind(language: &Language, kind: ItemKind) -> String {
    match kind {
        ItemKind::Drill => say!(language, "report-drill"),
        ItemKind::Question => say!(language, "report-question"),
    }
}

/// An item of this place, if it is to be looked at again.
pub(super) fn revise_view(language: &Language, at: usize, item: &ItemEntry) -> Option<ReviseView> {
    (!item.revise.is_empty()).then(|| ReviseView {
        number: at + 1,
        kind: kind(language, item.kind),
        id: shown(&item.id),
        about: item.about.clone(),
        reasons: item.revise.clone(),
    })
}

/// An item of this place, with its distractor table if it is on the page.
pub(super) fn item_view(language: &Language, at: usize, item: &ItemEntry, is_tabled: bool) -> ItemView {
    let share = |value: Option<f64>| value.map_or(NONE.to_owned(), |share| percent(language, share));
    let rasch = &item.rasch;
    let fit = |pick: fn(&Fit) -> (f64, Option<f64>)| {
        rasch.fit.as_ref().map_or(NONE.to_owned(), |fit| match pick(fit) {
            (square, Some(t)) => {
                let (square, t) = (number(language, square, 2), number(language, t, 1));
                say!(language, "report-square-t", square = square, t = t)
            }
            (square, None) => number(language, square, 2),
        })
    };
    ItemView {
        number: at + 1,
        kind: kind(language, item.kind),
        id: shown(&item.id),
        about: item.about.clone(),
        skill: item.skill.clone(),
        answers: item.classical.answers,
        put: match item.kind {
            ItemKind::Drill => say!(
                language,
                "report-put-drill",
                answers = item.classical.answers,
                exercises = item.questions
            ),
            ItemKind::Question => {
                say!(language, "report-put-question", answers = item.classical.answers)
            }
        },
        facility: share(item.classical.facility),
        discrimination: item
            .classical
            .discrimination
            .map_or(NONE.to_owned(), |value| number(language, value, 2)),
        difficulty: match (rasch.difficulty, rasch.standard_error) {
            (Some(value), Some(error)) => {
                let (value, error) = (number(language, value, 2), number(language, error, 2));
                say!(language, "report-plus-minus", value = value, error = error)
            }
            (Some(value), None) => number(language, value, 2),
            (None, _) => NONE.to_owned(),
        },
        infit: fit(|fit| (fit.infit, fit.infit_t)),
        outfit: fit(|fit| (fit.outfit, fit.outfit_t)),
        time: item.median_seconds.map_or(NONE.to_owned(), clock),
        verdict: match (item.revise.is_empty(), item.limits.is_empty()) {
            (false, _) => say!(language, "report-look"),
            (true, false) if is_too_few(item) => {
                say!(language, "report-too-few", answers = item.classical.answers)
            }
            (true, false) => item.limits.join("; "),
            (true, true) => say!(language, "report-fine"),
        },
        options: item
            .options
            .iter()
            .filter(|_| is_tabled)
            .map(|option| option_view(language, option))
            .collect(),
    }
}

/// Whether an item has too few answers to be judged.
pub(super) fn is_too_few(item: &ItemEntry) -> bool {
    item.classical.answers < FEWEST_ANSWERS
}

/// Seconds as minutes and seconds: 1:30.
fn clock(seconds: f64) -> String {
    let whole = seconds.round() as u64;
    format!("{}:{:02}", whole / 60, whole % 60)
}

/// Items whose distractor tables are on the page: all to revise, and of the others those with the most answers.
pub(super) fn tabled(items: &[ItemEntry]) -> BTreeSet<usize> {
    let mut places: Vec<usize> = (0..items.len()).filter(|&at| !items[at].options.is_empty()).collect();
    places.sort_by_key(|&at| (items[at].revise.is_empty(), Reverse(items[at].classical.answers), at));
    let revise = places.iter().take_while(|&&at| !items[at].revise.is_empty()).count();
    places.truncate(MOST_TABLES.max(revise));
    places.into_iter().collect()
}

/// Distractor tables on the page, but for those of items to revise. The CSV has all.
const MOST_TABLES: usize = 60;

fn option_view(language: &Language, option: &OptionRow) -> OptionView {
    OptionView {
        label: option.label.clone(),
        key: option.key,
        offered: option.offered,
        chosen: option.chosen,
        share: option.share.map_or(NONE.to_owned(), |share| percent(language, share)),
        rest: option.mean_rest.map_or(NONE.to_owned(), |share| percent(language, share)),
        length: option.share.filter(|_| option.chosen > 0).map(bar_of_share),
    }
}
