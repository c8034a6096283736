//! The instructor's page.

use super::super::RenderError;
use super::super::figures::{counted, fixed, percent};
use super::super::output::SiteFile;
use super::frame::Frame;
use super::items::{ItemView, NONE, ReviseView, item_view, revise_view, tabled};
use super::person::{LessonView, NameView};
use super::plot::{Range, Scatter, bar};
use super::shown::shown;
use super::{HOME, MOST_ON_PAGE, Pages};
use crate::assess::items::Coefficient;
use crate::assess::report::{MisconceptionEntry, PaperEntry, PersonEntry, SkillEntry, Standing};
use serde::Serialize;

#[derive(Serialize)]
struct CohortPage {
    frame: Frame,
    title: String,
    extent: String,
    summary: Vec<String>,
    notes: Vec<String>,
    papers: Vec<PaperView>,
    skills: Vec<SkillView>,
    matrix: Vec<MatrixRow>,
    /// How many people are left out of the matrix.
    left_out: usize,
    misconceptions: Vec<BeliefView>,
    revise: Vec<ReviseView>,
    items: Vec<ItemView>,
    /// Items whose distractor tables are left out.
    tables_left_out: usize,
    scatter: Option<Scatter>,
    scale: Vec<ScaleRow>,
    why_no_difficulties: Option<String>,
    exact_errors: bool,
}

#[derive(Serialize)]
struct PaperView {
    blueprint: String,
    anchor: String,
    facts: Vec<(&'static str, String)>,
    marks: Vec<BarRow>,
}

/// A row of counts with a bar.
#[derive(Serialize)]
struct BarRow {
    label: String,
    count: usize,
    length: String,
    title: String,
    note: &'static str,
}

#[derive(Serialize)]
struct SkillView {
    number: usize,
    name: String,
    mean: String,
    range: String,
    answers: usize,
    people: usize,
    below: usize,
    plot: Range,
}

#[derive(Serialize)]
struct MatrixRow {
    person: NameView,
    cells: Vec<Cell>,
}

#[derive(Serialize)]
struct Cell {
    mean: String,
    /// Below or above the cohort, as a sign and in words.
    sign: &'static str,
    words: &'static str,
}

#[derive(Serialize)]
struct BeliefView {
    belief: String,
    truth: String,
    lesson: Option<LessonView>,
    share: String,
    range: String,
    guessing: String,
    answers: String,
    people: String,
    stands_out: bool,
    plot: Option<Range>,
}

/// People and items between two points of the scale.
#[derive(Serialize)]
struct ScaleRow {
    label: String,
    people: usize,
    items: usize,
    people_length: String,
    items_length: String,
}

impl Pages<'_> {
    /// The instructor's page.
    pub(super) fn cohort(&self) -> Result<SiteFile, RenderError> {
        let report = self.report;
        let practice =
            report.people.iter().flat_map(|person| &person.sheets).filter(|sheet| sheet.practice).count();
        let sheets = report.people.iter().map(|person| person.sheets.len()).sum::<usize>() - practice;
        let tabled = tabled(&report.items);
        let title = match report.title.trim() {
            "" => "Report".to_owned(),
            title => shown(title),
        };
        let context = CohortPage {
            frame: self.frame(HOME, format!("\u{2068}{title}\u{2069}")),
            title,
            extent: format!(
                "{}, {}, {}{}",
                people_words(report.people.len()),
                counted(sheets, "sheet"),
                counted(report.papers.len(), "paper"),
                if practice > 0 { format!(", {}", counted(practice, "assigned set")) } else { String::new() }
            ),
            summary: report.summary.clone(),
            notes: report.notes.clone(),
            papers: report.papers.iter().enumerate().map(|(at, paper)| paper_view(at, paper)).collect(),
            skills: report.skills.iter().enumerate().map(|(at, skill)| skill_view(at, skill)).collect(),
            matrix: self.matrix(),
            left_out: report.people.len().saturating_sub(MOST_ON_PAGE),
            misconceptions: report.misconceptions.iter().map(|entry| self.cohort_belief(entry)).collect(),
            revise: report.items.iter().enumerate().filter_map(|(at, item)| revise_view(at, item)).collect(),
            items: report
                .items
                .iter()
                .enumerate()
                .map(|(at, item)| item_view(at, item, tabled.contains(&at)))
                .collect(),
            tables_left_out: report.items.iter().filter(|item| !item.options.is_empty()).count()
                - tabled.len(),
            scatter: Scatter::new(&report.items),
            scale: self.scale(),
            why_no_difficulties: report.why_no_difficulties.clone(),
            exact_errors: report.exact_errors,
        };
        self.page(HOME, "report.html", context)
    }

    /// Everybody by name; of too many those with the least credit.
    fn matrix(&self) -> Vec<MatrixRow> {
        let people = &self.report.people;
        let mut places: Vec<usize> = (0..people.len()).collect();
        if people.len() > MOST_ON_PAGE {
            places.sort_by(|&one, &other| {
                let mean = |at: usize| people[at].mean.unwrap_or(2.0);
                mean(one).total_cmp(&mean(other)).then(one.cmp(&other))
            });
            places.truncate(MOST_ON_PAGE);
        }
        places
            .into_iter()
            .map(|at| MatrixRow {
                person: self.name(&people[at], &self.paths[at], HOME),
                cells: self.report.skills.iter().map(|skill| cell(&people[at], skill)).collect(),
            })
            .collect()
    }

    fn cohort_belief(&self, entry: &MisconceptionEntry) -> BeliefView {
        let count = entry.count.as_ref();
        let freely = match entry.freely {
            0 => String::new(),
            times => format!("; {times} more without options"),
        };
        BeliefView {
            belief: entry.belief.clone(),
            truth: entry.truth.clone(),
            lesson: entry.lesson.as_ref().map(|lesson| self.lesson(lesson, 0)),
            share: count.map_or(NONE.to_owned(), |count| percent(count.share)),
            range: count.map_or(NONE.to_owned(), |count| {
                format!("{} to {}", percent(count.interval.low), percent(count.interval.high))
            }),
            guessing: count.map_or(NONE.to_owned(), |count| percent(count.by_guessing)),
            answers: count.map_or(format!("not offered{freely}"), |count| {
                format!("{} of {}{freely}", count.chosen, count.offered)
            }),
            people: count.map_or(NONE.to_owned(), |count| {
                format!("{} of {}", count.people_chosen, count.people_offered)
            }),
            stands_out: count.is_some_and(|count| count.stands_out),
            plot: count.map(|count| {
                Range::new("Chosen", count.share, count.interval, Some(("by guessing", count.by_guessing)))
            }),
        }
    }

    /// How people and items lie on the scale of difficulties, the highest first, in steps of half a logit.
    fn scale(&self) -> Vec<ScaleRow> {
        let measures: Vec<f64> = self
            .report
            .people
            .iter()
            .flat_map(|person| &person.sheets)
            .filter_map(|sheet| sheet.measure)
            .collect();
        let difficulties: Vec<f64> =
            self.report.items.iter().filter_map(|item| item.rasch.difficulty).collect();
        if difficulties.is_empty() {
            return Vec::new();
        }
        // What lies further out stands in the outermost steps.
        let step = |value: &f64| libm::floor(value.clamp(-OUTERMOST, OUTERMOST - 0.01) / STEP) as i32;
        let all = || measures.iter().chain(&difficulties).map(step);
        let (low, high) = (all().min().unwrap_or(0), all().max().unwrap_or(0));
        let counts: Vec<(i32, usize, usize)> = (low..=high)
            .rev()
            .map(|at| {
                let count = |values: &[f64]| values.iter().filter(|value| step(value) == at).count();
                (at, count(&measures), count(&difficulties))
            })
            .collect();
        let most = |pick: fn(&(i32, usize, usize)) -> usize| counts.iter().map(pick).max().unwrap_or(0);
        let (most_people, most_items) = (most(|row| row.1), most(|row| row.2));
        counts
            .iter()
            .map(|&(at, people, items)| {
                let from = f64::from(at) * STEP;
                ScaleRow {
                    label: match from {
                        _ if from >= OUTERMOST - STEP => format!("{} and above", fixed(from, 1)),
                        _ if from <= -OUTERMOST => format!("below {}", fixed(from + STEP, 1)),
                        _ => format!("{} to {}", fixed(from, 1), fixed(from + STEP, 1)),
                    },
                    people,
                    items,
                    people_length: bar(people, most_people),
                    items_length: bar(items, most_items),
                }
            })
            .collect()
    }
}

/// A step of the scale, in logits.
const STEP: f64 = 0.5;
/// Logits beyond which everything stands in one step.
const OUTERMOST: f64 = 5.0;

fn people_words(count: usize) -> String {
    if count == 1 { "1 person".to_owned() } else { format!("{count} people") }
}

fn coefficient(coefficient: Option<Coefficient>) -> Option<String> {
    coefficient
        .map(|c| format!("{}, standard error {} questions", fixed(c.value, 2), fixed(c.standard_error, 1)))
}

fn paper_view(at: usize, paper: &PaperEntry) -> PaperView {
    let reliability = &paper.reliability;
    let mut facts = vec![
        ("Sheets", paper.sheets.to_string()),
        ("Questions", reliability.items.to_string()),
        ("Mean mark", paper.mean.map_or(NONE.to_owned(), |mean| fixed(mean, 1) + "%")),
    ];
    if paper.decided > 0 {
        let pass = paper.pass_mark.map_or(String::new(), |mark| format!(" (pass mark {}%)", fixed(mark, 1)));
        facts.push(("Passed", format!("{} of {}{pass}", paper.passed, paper.decided)));
        facts.push(("Close", format!("{} within one standard error of the pass mark", paper.close)));
    }
    if let (Some(mean), Some(deviation)) = (reliability.mean, reliability.deviation) {
        facts.push((
            "Score",
            format!(
                "{} of {} on average, deviation {}",
                fixed(mean, 1),
                reliability.items,
                fixed(deviation, 1)
            ),
        ));
    }
    facts.extend(coefficient(reliability.alpha).map(|words| ("Alpha", words)));
    facts.extend(coefficient(reliability.kr20).map(|words| ("KR-20", words)));
    facts.extend(reliability.why_not.clone().map(|why| ("Reliability", why)));
    if reliability.left_out > 0 && reliability.items > 0 {
        let words = format!("{} with an answer missing", counted(reliability.left_out, "sheet"));
        facts.push(("Left out of it", words));
    }
    let most = paper.marks.iter().copied().max().unwrap_or(0);
    let marks = paper.marks.iter().enumerate().map(|(at, &count)| {
        let label = format!("{} to {}%", at * 10, at * 10 + 10);
        let holds_pass = paper.pass_mark.is_some_and(|mark| ((mark / 10.0) as usize).min(9) == at);
        BarRow {
            title: format!("Marks of {label}: {}", counted(count, "sheet")),
            length: bar(count, most),
            note: if holds_pass { "pass mark" } else { "" },
            label,
            count,
        }
    });
    let marks = if paper.mean.is_some() { marks.collect() } else { Vec::new() };
    PaperView { blueprint: shown(&paper.blueprint), anchor: format!("paper_{}", at + 1), facts, marks }
}

fn skill_view(at: usize, skill: &SkillEntry) -> SkillView {
    let mean = &skill.mean;
    SkillView {
        number: at + 1,
        name: skill.name.clone(),
        mean: percent(mean.mean),
        range: format!("{} to {}", percent(mean.interval.low), percent(mean.interval.high)),
        answers: mean.answers,
        people: skill.people,
        below: skill.below,
        plot: Range::new("Credit", mean.mean, mean.interval, None),
    }
}

fn cell(person: &PersonEntry, skill: &SkillEntry) -> Cell {
    let Some(own) = person.skills.iter().find(|own| own.mean.skill == skill.mean.skill) else {
        return Cell { mean: NONE.to_owned(), sign: "", words: "no answers" };
    };
    let (sign, words) = match own.standing {
        Some(Standing::Below) => ("▼", "below the group"),
        Some(Standing::Above) => ("△", "above the group"),
        _ => ("", ""),
    };
    Cell { mean: fixed(own.mean.mean * 100.0, 0), sign, words }
}
