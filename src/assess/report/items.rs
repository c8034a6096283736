//! Statistics of drills and bank questions. Entry point: [`items`].
//!
//! The options of a drill's exercises are gathered by what leads to them: the right answer, and each misconception. So its distractor
//! table says which wrong belief tempts, whatever the exercise. A bank question has its own options. Practice does not count: it was
//! answered at leisure, with the lesson at hand.

use super::input::{Checked, Question};
use crate::assess::items::rasch::{ItemMeasure, NoDifficulties};
use crate::assess::items::{
    Answer, Candidate, Classical, Flag, Item, ItemOption, OptionRow, Sitting, analyse,
};
use crate::course::Course;
use crate::language::Language;
use crate::say;
use serde::Serialize;
use std::collections::HashMap;

/// What an item is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum ItemKind {
    /// A drill: all of its exercises that were put.
    Drill,
    /// A question of the bank.
    Question,
}

/// One drill or bank question.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ItemEntry {
    /// Id of the drill or question.
    pub id: String,
    /// Which of the two.
    pub kind: ItemKind,
    /// The question as asked, or the title of the drill's lesson; empty where the course has neither any more.
    pub about: String,
    /// Name of the skill.
    pub skill: String,
    /// Different exercises of it that were put.
    pub questions: usize,
    /// Median of the seconds that answers to it took, where pages told them.
    pub median_seconds: Option<f64>,
    /// Facility and discrimination.
    pub classical: Classical,
    /// Difficulty and fit.
    pub rasch: ItemMeasure,
    /// The distractor table; empty where answers are not chosen from a list.
    pub options: Vec<OptionRow>,
    /// Reasons to revise it, in words.
    pub revise: Vec<String>,
    /// What limits its statistics, in words: no reason to revise it.
    pub limits: Vec<String>,
}

/// Ability of a sheet on the scale of the difficulties.
#[derive(Debug, Clone, Copy)]
pub(super) struct SheetMeasure {
    pub measure: Option<f64>,
    pub standard_error: Option<f64>,
}

/// Everything items tell.
pub(super) struct Items {
    pub entries: Vec<ItemEntry>,
    pub why_no_difficulties: Option<String>,
    pub exact_errors: bool,
    /// One entry a sheet.
    pub measures: Vec<SheetMeasure>,
}

/// How options of one question count among its item's options.
struct Gathered<'c> {
    items: Vec<Item>,
    kinds: Vec<(ItemKind, &'c str)>,
    questions: Vec<usize>,
    /// For every question its item.
    item_of: Vec<usize>,
    /// For every question and option the option of the item.
    options: Vec<Vec<u16>>,
}

/// Statistics of all items.
pub(super) fn items(checked: &Checked, course: &Course) -> Items {
    let gathered = gather(checked, course);
    let candidates = checked.cohort.sheets.iter().zip(&checked.questions).enumerate().map(|(at, sheet)| {
        let (sheet, questions) = sheet;
        Candidate {
            id: format!("sheet {at}"),
            answers: sheet
                .answers
                .iter()
                .zip(questions)
                .filter(|_| !sheet.practice)
                .map(|(answer, &question)| {
                    let options = &gathered.options[question];
                    Answer {
                        item: gathered.item_of[question],
                        credit: answer.credit,
                        chosen: answer.chosen.map(|chosen| usize::from(options[chosen])),
                        offered: Some(options.clone()),
                    }
                })
                .collect(),
        }
    });
    // The cohort was checked, so that nothing can be wrong here; without items there is nothing to say.
    let Ok(sitting) = Sitting::of_drills(gathered.items.clone(), candidates.collect()) else {
        return Items {
            entries: Vec::new(),
            why_no_difficulties: None,
            exact_errors: false,
            measures: Vec::new(),
        };
    };
    let analysis = analyse(&sitting);
    let measures = analysis
        .people
        .iter()
        .map(|person| SheetMeasure {
            measure: person.rasch.measure,
            standard_error: person.rasch.standard_error,
        })
        .collect();
    let mut seconds = seconds_of(checked, &gathered);
    let mut entries: Vec<ItemEntry> = analysis
        .items
        .into_iter()
        .zip(gathered.kinds)
        .zip(gathered.questions)
        .zip(&mut seconds)
        .map(|(((item, (kind, skill)), questions), seconds)| {
            let (limits, revise): (Vec<&Flag>, Vec<&Flag>) = item
                .flags
                .iter()
                .partition(|flag| matches!(flag, Flag::FewAnswers { .. } | Flag::Unlinked { .. }));
            let words = |flags: Vec<&Flag>| flags.iter().map(|flag| flag.words(&course.language)).collect();
            ItemEntry {
                about: about(course, kind, &item.id),
                skill: super::people::skill_name(course, skill),
                questions,
                median_seconds: median(seconds),
                classical: item.classical,
                rasch: item.rasch,
                options: item.options,
                revise: words(revise),
                limits: words(limits),
                id: item.id,
                kind,
            }
        })
        .collect();
    entries.sort_by(|one, other| (one.revise.is_empty(), &one.id).cmp(&(other.revise.is_empty(), &other.id)));
    Items {
        entries,
        why_no_difficulties: analysis.why_no_difficulties.map(|why| no_difficulties(&course.language, why)),
        exact_errors: analysis.exact_errors,
        measures,
    }
}

/// Of every item the seconds of its answers, where they are known.
fn seconds_of(checked: &Checked, gathered: &Gathered) -> Vec<Vec<u32>> {
    let mut seconds = vec![Vec::new(); gathered.items.len()];
    for (sheet, questions) in checked.cohort.sheets.iter().zip(&checked.questions) {
        if sheet.practice {
            continue;
        }
        for (answer, &question) in sheet.answers.iter().zip(questions) {
            seconds[gathered.item_of[question]].extend(answer.seconds);
        }
    }
    seconds
}

/// The middle of some numbers, or the mean of the two in the middle.
fn median(numbers: &mut [u32]) -> Option<f64> {
    numbers.sort_unstable();
    let middle = numbers.len() / 2;
    let upper = f64::from(*numbers.get(middle)?);
    Some(if numbers.len() % 2 == 1 { upper } else { (f64::from(numbers[middle - 1]) + upper) / 2.0 })
}

fn gather<'c>(checked: &Checked<'c>, course: &Course) -> Gathered<'c> {
    let cohort = checked.cohort;
    let mut gathered = Gathered {
        items: Vec::new(),
        kinds: Vec::new(),
        questions: Vec::new(),
        item_of: Vec::with_capacity(cohort.questions.len()),
        options: Vec::with_capacity(cohort.questions.len()),
    };
    let mut places: HashMap<&str, usize> = HashMap::new();
    let practised = practised_only(checked);
    // Options of drills by what leads to them, and how many of an exercise's options that does.
    let mut known: HashMap<(usize, Option<&str>, bool, usize), u16> = HashMap::new();
    for (question, practised) in cohort.questions.iter().zip(practised) {
        if practised {
            // Never looked up.
            gathered.item_of.push(usize::MAX);
            gathered.options.push(Vec::new());
            continue;
        }
        let place = *places.entry(question.item()).or_insert_with(|| {
            let kind = if question.drill.is_some() { ItemKind::Drill } else { ItemKind::Question };
            gathered.items.push(Item { id: question.item().to_owned(), options: Vec::new() });
            gathered.kinds.push((kind, question.skill.as_str()));
            gathered.questions.push(0);
            gathered.items.len() - 1
        });
        gathered.item_of.push(place);
        gathered.questions[place] += 1;
        let options = &mut gathered.items[place].options;
        let mut here = Vec::with_capacity(question.options.len());
        let mut times: HashMap<(Option<&str>, bool), usize> = HashMap::new();
        for option in &question.options {
            let next = u16::try_from(options.len()).unwrap_or(u16::MAX);
            if question.drill.is_none() {
                options.push(ItemOption {
                    label: option.say.clone(),
                    key: option.right,
                    misconception: option.misconception.clone(),
                });
                here.push(next);
                continue;
            }
            let belief = option.misconception.as_deref().filter(|_| !option.right);
            let time = times.entry((belief, option.right)).or_default();
            *time += 1;
            let at = *known.entry((place, belief, option.right, *time)).or_insert_with(|| {
                let label = gathered_label(course, belief, option.right, *time);
                let misconception = belief.map(str::to_owned);
                options.push(ItemOption { label, key: option.right, misconception });
                next
            });
            here.push(at);
        }
        gathered.options.push(here);
    }
    gathered
}

/// For every question, whether practice alone has answered it.
fn practised_only(checked: &Checked) -> Vec<bool> {
    let count = checked.cohort.questions.len();
    let (mut practised, mut sat) = (vec![false; count], vec![false; count]);
    for (sheet, questions) in checked.cohort.sheets.iter().zip(&checked.questions) {
        let seen = if sheet.practice { &mut practised } else { &mut sat };
        for &question in questions {
            seen[question] = true;
        }
    }
    practised.into_iter().zip(sat).map(|(practised, sat)| practised && !sat).collect()
}

/// What an option of a drill is called, whatever the exercise.
fn gathered_label(course: &Course, belief: Option<&str>, right: bool, time: usize) -> String {
    let language = &course.language;
    let what = match belief {
        _ if right => say!(language, "report-right-answer"),
        Some(id) => course.misconception(id).map_or_else(|| id.to_owned(), |known| known.belief.clone()),
        None => say!(language, "report-no-belief"),
    };
    if time == 1 { what } else { say!(language, "report-option-time", what = what, time = time) }
}

fn no_difficulties(language: &Language, why: NoDifficulties) -> String {
    match why {
        NoDifficulties::NoLinks => say!(language, "report-no-links"),
        NoDifficulties::Unsettled => say!(language, "report-unsettled"),
    }
}

fn about(course: &Course, kind: ItemKind, id: &str) -> String {
    match kind {
        ItemKind::Drill => course.drill(id).map(|(lesson, _)| lesson.page.title.clone()),
        ItemKind::Question => course.question(id).map(|question| question.ask.clone()),
    }
    .unwrap_or_default()
}

/// Whether a question's answer is chosen from options.
pub(super) fn has_options(question: &Question) -> bool {
    !question.options.is_empty()
}
