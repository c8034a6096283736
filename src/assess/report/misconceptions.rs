//! Wrong beliefs, of a cohort and of one person. Entry points: [`of_cohort`], [`of_person`].

use super::input::{Checked, Sheet};
use super::items::has_options;
use crate::assess::cohort::{Leads, MisconceptionCount, Shown, misconceptions, misconceptions_of};
use crate::course::Course;
use serde::Serialize;
use std::collections::BTreeMap;

/// One misconception, with what is true.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct MisconceptionEntry {
    /// Its id.
    pub id: String,
    /// What is believed; the id where the course does not know it any more.
    pub belief: String,
    /// What really happens; empty where the course does not know it.
    pub truth: String,
    /// The lesson that treats it.
    pub lesson: Option<Reread>,
    /// How often it was offered among options and chosen; `None` where it never was.
    pub count: Option<MisconceptionCount>,
    /// Answers that showed it without options to choose from.
    pub freely: usize,
}

/// A lesson to reread.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Reread {
    /// Its id.
    pub id: String,
    /// Its title.
    pub title: String,
    /// Its path below `lessons/`, without ending.
    pub path: String,
}

impl Reread {
    /// The lesson with this id, if the course has it.
    pub(super) fn of(course: &Course, id: &str) -> Option<Self> {
        let (_, lesson) = course.lesson(id)?;
        Some(Reread {
            id: lesson.id.clone(),
            title: lesson.page.title.clone(),
            path: lesson.page.path.clone(),
        })
    }
}

/// What leads to the options of every question, in the questions' order.
pub(super) struct Beliefs<'c>(Vec<Vec<Leads<&'c str>>>);

impl<'c> Beliefs<'c> {
    pub fn new(checked: &Checked<'c>) -> Self {
        let of = |question: &'c super::Question| {
            question
                .options
                .iter()
                .map(|option| Leads::new(option.right, option.misconception.as_deref()))
                .collect()
        };
        Beliefs(checked.cohort.questions.iter().map(of).collect())
    }
}

/// All misconceptions of a cohort: those that stand out first, then the most surely widespread: by the lower end of the likely range, so
/// that one unlucky answer does not lead.
pub(super) fn of_cohort(checked: &Checked, course: &Course) -> Vec<MisconceptionEntry> {
    let sheets = checked.cohort.sheets.iter().zip(&checked.questions);
    let sheets = sheets.map(|(sheet, questions)| (sheet, questions.as_slice()));
    let mut entries = entries(checked, &Beliefs::new(checked), course, sheets, |shown| {
        misconceptions(shown.iter().copied())
    });
    most_sure_first(&mut entries);
    entries
}

/// The misconceptions a person showed, at most [`MOST_TOLD`]: chosen more often than by blind guessing, or shown without options. Those
/// that stand out come first, then those told most surely. Every wrong option bears some belief; one of many chosen once is no news.
pub(super) fn of_person<'c>(
    checked: &Checked<'c>,
    beliefs: &Beliefs<'c>,
    course: &Course,
    sheets: &[usize],
) -> Vec<MisconceptionEntry> {
    let sheets = sheets.iter().map(|&at| (&checked.cohort.sheets[at], checked.questions[at].as_slice()));
    let mut entries = entries(checked, beliefs, course, sheets, misconceptions_of);
    entries.retain(|entry| {
        let more = entry.count.as_ref().is_some_and(|count| count.share > count.by_guessing);
        more || entry.freely > 0
    });
    most_sure_first(&mut entries);
    entries.truncate(MOST_TOLD);
    entries
}

/// Most misconceptions told to one person. Common practice, no source.
pub const MOST_TOLD: usize = 6;

/// Those that stand out, then by the lower end of the likely range, so that one unlucky answer does not lead.
fn most_sure_first(entries: &mut [MisconceptionEntry]) {
    let sure = |entry: &MisconceptionEntry| {
        entry.count.as_ref().map_or((false, 0.0), |count| (count.stands_out, count.interval.low))
    };
    entries.sort_by(|one, other| {
        let (one, other) = (sure(one), sure(other));
        other.0.cmp(&one.0).then_with(|| other.1.total_cmp(&one.1))
    });
}

fn entries<'c: 's, 's>(
    checked: &Checked<'c>,
    beliefs: &'s Beliefs<'c>,
    course: &Course,
    sheets: impl Iterator<Item = (&'s Sheet, &'s [usize])>,
    counted: impl FnOnce(&[Shown<'s>]) -> Vec<MisconceptionCount>,
) -> Vec<MisconceptionEntry> {
    let mut freely: BTreeMap<&str, usize> = BTreeMap::new();
    let mut shown = Vec::new();
    for (sheet, questions) in sheets {
        for (answer, &question) in sheet.answers.iter().zip(questions) {
            if has_options(&checked.cohort.questions[question]) {
                let options = beliefs.0[question].as_slice();
                shown.push(Shown { person: &sheet.person, options, chosen: answer.chosen });
            } else if let Some(id) = &answer.misconception {
                *freely.entry(id).or_default() += 1;
            }
        }
    }
    let counts = counted(&shown);
    let mut entries: Vec<MisconceptionEntry> = counts
        .into_iter()
        .map(|count| {
            let times = freely.remove(count.misconception.as_str()).unwrap_or_default();
            entry(course, count.misconception.clone(), Some(count), times)
        })
        .collect();
    entries.extend(freely.into_iter().map(|(id, times)| entry(course, id.to_owned(), None, times)));
    entries
}

fn entry(
    course: &Course,
    id: String,
    count: Option<MisconceptionCount>,
    freely: usize,
) -> MisconceptionEntry {
    let known = course.misconception(&id);
    MisconceptionEntry {
        belief: known.map_or_else(|| id.clone(), |known| known.belief.clone()),
        truth: known.map(|known| known.truth.clone()).unwrap_or_default(),
        lesson: known.and_then(|known| Reread::of(course, &known.lesson)),
        count,
        freely,
        id,
    }
}
