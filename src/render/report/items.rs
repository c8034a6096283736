//! Drills and questions on the instructor's page. Entry points: [`item_view`], [`revise_view`], [`tabled`].

use super::super::figures::{counted, fixed, percent};
use super::plot::bar;
use super::shown::shown;
use crate::assess::items::OptionRow;
use crate::assess::items::rasch::Fit;
use crate::assess::report::{ItemEntry, ItemKind};
use serde::Serialize;
use std::cmp::Reverse;
use std::collections::BTreeSet;

/// An item to look at again.
#[derive(Serialize)]
pub(super) struct ReviseView {
    number: usize,
    kind: &'static str,
    id: String,
    about: String,
    reasons: Vec<String>,
}

/// An item with all its figures.
#[derive(Serialize)]
pub(super) struct ItemView {
    number: usize,
    kind: &'static str,
    id: String,
    about: String,
    skill: String,
    answers: usize,
    exercises: String,
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

/// What stands where there is no figure.
pub(super) const NONE: &str = "–";

fn kind(kind: ItemKind) -> &'static str {
    match kind {
        ItemKind::Drill => "drill",
        ItemKind::Question => "question",
    }
}

/// An item of this place, if it is to be looked at again.
pub(super) fn revise_view(at: usize, item: &ItemEntry) -> Option<ReviseView> {
    (!item.revise.is_empty()).then(|| ReviseView {
        number: at + 1,
        kind: kind(item.kind),
        id: shown(&item.id),
        about: item.about.clone(),
        reasons: item.revise.clone(),
    })
}

/// An item of this place, with its distractor table if it is on the page.
pub(super) fn item_view(at: usize, item: &ItemEntry, is_tabled: bool) -> ItemView {
    let share = |value: Option<f64>| value.map_or(NONE.to_owned(), percent);
    let rasch = &item.rasch;
    let fit = |pick: fn(&Fit) -> (f64, Option<f64>)| {
        rasch.fit.as_ref().map_or(NONE.to_owned(), |fit| match pick(fit) {
            (square, Some(t)) => format!("{} (t {})", fixed(square, 2), fixed(t, 1)),
            (square, None) => fixed(square, 2),
        })
    };
    let most = item.options.iter().map(|option| option.chosen).max().unwrap_or(0);
    ItemView {
        number: at + 1,
        kind: kind(item.kind),
        id: shown(&item.id),
        about: item.about.clone(),
        skill: item.skill.clone(),
        answers: item.classical.answers,
        exercises: match item.kind {
            ItemKind::Drill => format!(" from {}", counted(item.questions, "exercise")),
            ItemKind::Question => String::new(),
        },
        facility: share(item.classical.facility),
        discrimination: item.classical.discrimination.map_or(NONE.to_owned(), |value| fixed(value, 2)),
        difficulty: match (rasch.difficulty, rasch.standard_error) {
            (Some(value), Some(error)) => format!("{} ± {}", fixed(value, 2), fixed(error, 2)),
            (Some(value), None) => fixed(value, 2),
            (None, _) => NONE.to_owned(),
        },
        infit: fit(|fit| (fit.infit, fit.infit_t)),
        outfit: fit(|fit| (fit.outfit, fit.outfit_t)),
        time: item.median_seconds.map_or(NONE.to_owned(), clock),
        verdict: match (item.revise.is_empty(), item.limits.is_empty()) {
            (false, _) => "look again".to_owned(),
            (true, false) => item.limits.join("; "),
            (true, true) => "fine".to_owned(),
        },
        options: item.options.iter().filter(|_| is_tabled).map(|option| option_view(option, most)).collect(),
    }
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

fn option_view(option: &OptionRow, most: usize) -> OptionView {
    OptionView {
        label: option.label.clone(),
        key: option.key,
        offered: option.offered,
        chosen: option.chosen,
        share: option.share.map_or(NONE.to_owned(), percent),
        rest: option.mean_rest.map_or(NONE.to_owned(), percent),
        length: (option.chosen > 0).then(|| bar(option.chosen, most)),
    }
}
