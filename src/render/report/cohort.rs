//! The instructor's page.

use super::super::RenderError;
use super::super::output::SiteFile;
use super::frame::Frame;
use super::items::{ItemView, ReviseView, item_view, revise_view, tabled};
use super::person::{LessonView, NameView};
use super::plot::{Range, Scatter, bar};
use super::said::{NONE, mark_in_words, number, of, percent, range};
use super::shown::shown;
use super::{HOME, MOST_ON_PAGE, Pages};
use crate::assess::items::{Coefficient, FEWEST_ANSWERS};
use crate::assess::report::{
    MisconceptionEntry, PaperEntry, PersonEntry, SheetEntry, SkillEntry, Standing, unreliable,
};
use crate::assess::standard::{Certainty, Decision};
use crate::course::told_by_case;
use crate::language::Language;
use crate::say;
use serde::Serialize;

#[derive(Serialize)]
struct CohortPage<'p> {
    frame: Frame<'p>,
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
    /// Answers from which on an item is judged.
    fewest_answers: usize,
    /// Whether any page told a time.
    timed: bool,
    /// Items whose distractor tables are left out.
    tables_left_out: usize,
    scatter: Option<Scatter>,
    scale: Vec<ScaleRow>,
    why_no_difficulties: Option<String>,
    exact_errors: bool,
}

#[derive(Serialize)]
struct PaperView {
    title: String,
    anchor: String,
    facts: Vec<(String, String)>,
    marks: Vec<BarRow>,
    /// Titles of the sections, in the order of the columns.
    sections: Vec<String>,
    /// The same with the columns' numbers.
    legend: String,
    people: Vec<MarkRow>,
    /// How many sheets are left out of these.
    left_out: usize,
}

/// A sheet with its mark.
#[derive(Serialize)]
struct MarkRow {
    person: NameView,
    attempt: Option<u32>,
    mark: String,
    /// Passed, close or not, in a word or two.
    verdict: String,
    close: bool,
    sections: Vec<String>,
}

/// A row of counts with a bar.
#[derive(Serialize)]
struct BarRow {
    label: String,
    count: usize,
    length: String,
    title: String,
    note: String,
}

#[derive(Serialize)]
struct SkillView {
    number: usize,
    name: String,
    mean: String,
    range: String,
    answers: usize,
    /// People clearly below, of all.
    below: String,
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
    words: String,
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
        let (report, language) = (self.report, &self.language);
        let practice =
            report.people.iter().flat_map(|person| &person.sheets).filter(|sheet| sheet.practice).count();
        let sheets = report.people.iter().map(|person| person.sheets.len()).sum::<usize>() - practice;
        let tabled = tabled(&report.items);
        let title = match report.title.trim() {
            "" => say!(language, "report-title"),
            title => shown(title),
        };
        let context = CohortPage {
            frame: self.frame(HOME, format!("\u{2068}{title}\u{2069}")),
            title,
            extent: extent(language, report.people.len(), sheets, report.papers.len(), practice),
            summary: report.summary.clone(),
            notes: report.notes.clone(),
            papers: report.papers.iter().enumerate().map(|(at, paper)| self.paper_view(at, paper)).collect(),
            skills: report
                .skills
                .iter()
                .enumerate()
                .map(|(at, skill)| skill_view(language, at, skill))
                .collect(),
            matrix: self.matrix(),
            left_out: report.people.len().saturating_sub(MOST_ON_PAGE),
            misconceptions: report.misconceptions.iter().map(|entry| self.cohort_belief(entry)).collect(),
            revise: report
                .items
                .iter()
                .enumerate()
                .filter_map(|(at, item)| revise_view(language, at, item))
                .collect(),
            items: report
                .items
                .iter()
                .enumerate()
                .map(|(at, item)| item_view(language, at, item, tabled.contains(&at)))
                .collect(),
            fewest_answers: FEWEST_ANSWERS,
            timed: report.items.iter().any(|item| item.median_seconds.is_some()),
            tables_left_out: report.items.iter().filter(|item| !item.options.is_empty()).count()
                - tabled.len(),
            scatter: Scatter::new(language, &report.items),
            scale: self.scale(),
            why_no_difficulties: report.why_no_difficulties.clone(),
            exact_errors: report.exact_errors,
        };
        self.page(HOME, "report.html", context)
    }

    fn paper_view(&self, at: usize, paper: &PaperEntry) -> PaperView {
        let language = &self.language;
        let most = paper.marks.iter().copied().max().unwrap_or(0);
        let marks = paper.marks.iter().enumerate().map(|(at, &count)| {
            let label = say!(language, "report-mark-range", low = at * 10, high = at * 10 + 10);
            let holds_pass = paper.pass_mark.is_some_and(|mark| ((mark / 10.0) as usize).min(9) == at);
            BarRow {
                title: say!(language, "report-mark-bar", range = &label, count = count),
                length: bar(count, most),
                note: if holds_pass { say!(language, "report-pass-mark") } else { String::new() },
                label,
                count,
            }
        });
        let people = self.marks_of(paper);
        let names: Vec<(Option<String>, String)> = paper
            .sections
            .iter()
            .map(|section| (section.case.as_deref().map(shown), shown(&section.title)))
            .collect();
        let named = |case: Option<&str>, title: &str| told_by_case([(case, title.to_owned())]);
        PaperView {
            title: shown(&paper.title),
            anchor: format!("paper_{}", at + 1),
            facts: facts(language, paper),
            marks: if paper.mean.is_some() { marks.collect() } else { Vec::new() },
            sections: names.iter().map(|(case, title)| named(case.as_deref(), title)).collect(),
            legend: told_by_case(
                names.iter().zip(1..).map(|((case, title), at)| (case.as_deref(), format!("{at} {title}"))),
            ),
            left_out: paper.sheets - people.len(),
            people,
        }
    }

    /// Everybody's mark on a paper, by name; of too many those nearest to the pass mark, or with the least where there is none.
    fn marks_of(&self, paper: &PaperEntry) -> Vec<MarkRow> {
        let people = &self.report.people;
        let mut sheets: Vec<(usize, &SheetEntry)> = people
            .iter()
            .enumerate()
            .flat_map(|(at, person)| person.sheets.iter().map(move |sheet| (at, sheet)))
            .filter(|(_, sheet)| !sheet.practice && sheet.blueprint == paper.blueprint)
            .collect();
        if sheets.len() > MOST_ON_PAGE {
            let distance = |sheet: &SheetEntry| {
                sheet.percent.map_or(f64::INFINITY, |mark| (mark - sheet.pass_mark.unwrap_or(0.0)).abs())
            };
            sheets.sort_by(|one, other| distance(one.1).total_cmp(&distance(other.1)));
            sheets.truncate(MOST_ON_PAGE);
            sheets.sort_by_key(|(at, sheet)| (*at, sheet.attempt));
        }
        sheets
            .into_iter()
            .map(|(at, sheet)| MarkRow {
                person: self.name(&people[at], &self.paths[at], HOME),
                attempt: (sheet.attempt > 1).then_some(sheet.attempt),
                mark: sheet.percent.map_or(NONE.to_owned(), |mark| mark_in_words(&self.language, mark)),
                verdict: sheet.decision.map_or(NONE.to_owned(), |decision| verdict(&self.language, decision)),
                close: sheet.decision.is_some_and(|decision| decision.certainty == Certainty::WithinOneError),
                sections: paper
                    .sections
                    .iter()
                    .map(|section| {
                        let own = sheet.sections.iter().find(|own| own.section.id == section.id);
                        own.map_or(NONE.to_owned(), |own| number(&self.language, own.credit * 100.0, 0))
                    })
                    .collect(),
            })
            .collect()
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
                cells: self
                    .report
                    .skills
                    .iter()
                    .map(|skill| cell(&self.language, &people[at], skill))
                    .collect(),
            })
            .collect()
    }

    fn cohort_belief(&self, entry: &MisconceptionEntry) -> BeliefView {
        let language = &self.language;
        let count = entry.count.as_ref();
        let answers = match (count, entry.freely) {
            (None, 0) => say!(language, "report-not-offered"),
            (None, times) => say!(language, "report-not-offered-freely", times = times),
            (Some(count), 0) => {
                say!(language, "report-chosen-of", chosen = count.chosen, offered = count.offered)
            }
            (Some(count), times) => say!(
                language,
                "report-chosen-of-freely",
                chosen = count.chosen,
                offered = count.offered,
                times = times
            ),
        };
        BeliefView {
            belief: entry.belief.clone(),
            truth: entry.truth.clone(),
            lesson: entry.lesson.as_ref().map(|lesson| self.lesson(lesson, 0)),
            share: count.map_or(NONE.to_owned(), |count| percent(language, count.share)),
            range: count.map_or(NONE.to_owned(), |count| range(language, count.interval)),
            guessing: count.map_or(NONE.to_owned(), |count| percent(language, count.by_guessing)),
            answers,
            people: count
                .map_or(NONE.to_owned(), |count| of(language, count.people_chosen, count.people_offered)),
            stands_out: count.is_some_and(|count| count.stands_out),
            plot: count.map(|count| {
                let (chosen, beside) =
                    (say!(language, "report-chosen"), say!(language, "report-by-guessing"));
                let guessing = Some((beside.as_str(), count.by_guessing));
                Range::new(language, &chosen, count.share, count.interval, guessing)
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
                    label: step_label(&self.language, from),
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

/// What the scale's step from here is called.
fn step_label(language: &Language, from: f64) -> String {
    let [low, high] = [from, from + STEP].map(|logits| number(language, logits, 1));
    if from >= OUTERMOST - STEP {
        say!(language, "report-and-above", logits = low)
    } else if from <= -OUTERMOST {
        say!(language, "report-below", logits = high)
    } else {
        say!(language, "report-range", low = low, high = high)
    }
}

fn extent(language: &Language, people: usize, sheets: usize, papers: usize, sets: usize) -> String {
    let people = say!(language, "report-people", count = people);
    let sheets = say!(language, "report-sheets", count = sheets);
    let papers = say!(language, "report-papers", count = papers);
    if sets == 0 {
        return say!(language, "report-extent", people = people, sheets = sheets, papers = papers);
    }
    let sets = say!(language, "report-sets", count = sets);
    say!(language, "report-extent-sets", people = people, sheets = sheets, papers = papers, sets = sets)
}

fn coefficient(language: &Language, coefficient: Option<Coefficient>) -> Option<String> {
    coefficient.map(|c| {
        let (value, error) = (number(language, c.value, 2), number(language, c.standard_error, 1));
        say!(language, "report-coefficient", value = value, error = error)
    })
}

/// What was decided, in a word or two.
fn verdict(language: &Language, decision: Decision) -> String {
    let close = decision.certainty == Certainty::WithinOneError;
    let id = match (decision.passed, close) {
        (true, false) => "report-passed",
        (true, true) => "report-passed-closely",
        (false, false) => "report-not-passed",
        (false, true) => "report-not-passed-closely",
    };
    language.say(id, &[])
}

/// Name and value of each fact about a paper.
fn facts(language: &Language, paper: &PaperEntry) -> Vec<(String, String)> {
    let reliability = &paper.reliability;
    let share = |mark: f64| mark_in_words(language, mark);
    let mut facts = vec![
        (say!(language, "report-fact-sheets"), paper.sheets.to_string()),
        (say!(language, "report-fact-questions"), reliability.items.to_string()),
        (say!(language, "report-fact-mean"), paper.mean.map_or(NONE.to_owned(), share)),
    ];
    let PaperEntry { passed, decided, close, .. } = *paper;
    if decided > 0 {
        let words = match paper.pass_mark {
            None => say!(language, "report-passed-of", passed = passed, decided = decided),
            Some(mark) => {
                let mark = number(language, mark, 1);
                say!(language, "report-passed-of-mark", passed = passed, decided = decided, mark = mark)
            }
        };
        facts.push((say!(language, "report-fact-passed"), words));
        facts.push((say!(language, "report-fact-close"), say!(language, "report-close", count = close)));
    }
    if let (Some(mean), Some(deviation)) = (reliability.mean, reliability.deviation) {
        let [mean, deviation] = [mean, deviation].map(|score| number(language, score, 1));
        let items = reliability.items;
        let words = say!(language, "report-score", mean = mean, items = items, deviation = deviation);
        facts.push((say!(language, "report-fact-score"), words));
    }
    let coefficients = [("report-fact-alpha", reliability.alpha), ("report-fact-kr20", reliability.kr20)];
    for (name, value) in coefficients {
        facts.extend(coefficient(language, value).map(|words| (language.say(name, &[]), words)));
    }
    if let Some(why) = reliability.why_not {
        facts.push((say!(language, "report-fact-reliability"), unreliable(language, why)));
    }
    if reliability.left_out > 0 && reliability.items > 0 {
        let words = say!(language, "report-answer-missing", count = reliability.left_out);
        facts.push((say!(language, "report-fact-left-out"), words));
    }
    facts
}

fn skill_view(language: &Language, at: usize, skill: &SkillEntry) -> SkillView {
    let mean = &skill.mean;
    SkillView {
        number: at + 1,
        name: skill.name.clone(),
        mean: percent(language, mean.mean),
        range: range(language, mean.interval),
        answers: mean.answers,
        below: of(language, skill.below, skill.people),
        plot: Range::new(language, &say!(language, "report-credit"), mean.mean, mean.interval, None),
    }
}

fn cell(language: &Language, person: &PersonEntry, skill: &SkillEntry) -> Cell {
    let Some(own) = person.skills.iter().find(|own| own.mean.skill == skill.mean.skill) else {
        return Cell { mean: NONE.to_owned(), sign: "", words: say!(language, "report-no-answers") };
    };
    let (sign, words) = match own.standing {
        Some(Standing::Below) => ("▼", say!(language, "report-below-group")),
        Some(Standing::Above) => ("△", say!(language, "report-above-group")),
        _ => ("", String::new()),
    };
    Cell { mean: number(language, own.mean.mean * 100.0, 0), sign, words }
}
