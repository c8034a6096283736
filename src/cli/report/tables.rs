//! The tables of a report as CSV. Entry point: [`tables`].
//!
//! Text that a spreadsheet would take for a formula gets an apostrophe before it (OWASP, CSV injection). Numbers have as many decimals as can be
//! read, and no zeros at their end: [`Percent`] and [`Clock`] those of a mark book's exports, all others [`DECIMALS`]. Every digit is in the JSON.

use crate::assess::items::rasch::Fit;
use crate::assess::report::{MisconceptionEntry, Report};
use crate::assess::{BYTE_ORDER_MARK, guarded};
use crate::cli::problem::Problem;

/// Decimals of credits, shares, coefficients and logits: a tenth of what a thousand answers could tell apart.
const DECIMALS: usize = 4;

/// A mark in percent.
struct Percent(Option<f64>);

/// Minutes or seconds.
struct Clock(Option<f64>);

/// A cell.
enum Cell {
    Text(String),
    /// With so many decimals at most.
    Number(Option<f64>, usize),
    Count(usize),
}

impl From<&str> for Cell {
    fn from(text: &str) -> Self {
        Cell::Text(text.to_owned())
    }
}
impl From<String> for Cell {
    fn from(text: String) -> Self {
        Cell::Text(text)
    }
}
impl From<&String> for Cell {
    fn from(text: &String) -> Self {
        Cell::Text(text.clone())
    }
}
impl From<f64> for Cell {
    fn from(number: f64) -> Self {
        Cell::Number(Some(number), DECIMALS)
    }
}
impl From<Option<f64>> for Cell {
    fn from(number: Option<f64>) -> Self {
        Cell::Number(number, DECIMALS)
    }
}
impl From<Percent> for Cell {
    fn from(Percent(mark): Percent) -> Self {
        Cell::Number(mark, 2)
    }
}
impl From<Clock> for Cell {
    fn from(Clock(time): Clock) -> Self {
        Cell::Number(time, 1)
    }
}
impl From<usize> for Cell {
    fn from(count: usize) -> Self {
        Cell::Count(count)
    }
}
impl From<bool> for Cell {
    fn from(holds: bool) -> Self {
        Cell::Text(if holds { "yes" } else { "no" }.to_owned())
    }
}

/// A row from anything that can be a cell.
macro_rules! row {
    ($($cell:expr),* $(,)?) => { vec![$(Cell::from($cell)),*] };
}

/// Every table by its file name.
///
/// # Errors
/// When the system refuses.
pub(super) fn tables(report: &Report) -> Result<Vec<(String, Vec<u8>)>, Problem> {
    let made = [
        ("papers.csv", papers(report)),
        ("scores.csv", scores(report)),
        ("skills.csv", skills(report)),
        ("skills-by-person.csv", skills_by_person(report)),
        ("misconceptions.csv", misconceptions(report)),
        ("misconceptions-by-person.csv", misconceptions_by_person(report)),
        ("items.csv", items(report)),
        ("options.csv", options(report)),
    ];
    made.into_iter().map(|(name, table)| Ok((name.to_owned(), written(&table)?))).collect()
}

/// A table: the names of its columns, and its rows.
struct Table(Vec<&'static str>, Vec<Vec<Cell>>);

fn written(table: &Table) -> Result<Vec<u8>, Problem> {
    let failed = |error: csv::Error| Problem::Print(std::io::Error::other(error));
    let mut writer = csv::Writer::from_writer(BYTE_ORDER_MARK.to_vec());
    writer.write_record(&table.0).map_err(failed)?;
    for row in &table.1 {
        let cells = row.iter().map(|cell| match cell {
            Cell::Text(text) => guarded(text),
            Cell::Number(number, decimals) => {
                number.map_or_else(String::new, |number| rounded(number, *decimals))
            }
            Cell::Count(count) => count.to_string(),
        });
        writer.write_record(cells).map_err(failed)?;
    }
    writer.into_inner().map_err(|error| Problem::Print(std::io::Error::other(error.to_string())))
}

/// A number with so many decimals at most; never "-0".
fn rounded(number: f64, decimals: usize) -> String {
    let text = format!("{number:.decimals$}");
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

fn papers(report: &Report) -> Table {
    let columns = vec![
        "blueprint",
        "sheets",
        "questions",
        "mean_percent",
        "passed",
        "with_pass_mark",
        "alpha",
        "alpha_standard_error",
        "kr20",
        "kr20_standard_error",
        "sheets_with_all_answers",
        "why_not",
    ];
    let rows = report.papers.iter().map(|paper| {
        let reliability = &paper.reliability;
        let (alpha, kr20) = (reliability.alpha, reliability.kr20);
        row![
            &paper.blueprint,
            paper.sheets,
            reliability.items,
            Percent(paper.mean),
            paper.passed,
            paper.decided,
            alpha.map(|c| c.value),
            alpha.map(|c| c.standard_error),
            kr20.map(|c| c.value),
            kr20.map(|c| c.standard_error),
            reliability.people,
            reliability.why_not.map(|why| why.to_string()).unwrap_or_default(),
        ]
    });
    Table(columns, rows.collect())
}

fn scores(report: &Report) -> Table {
    let columns = vec![
        "person",
        "name",
        "kind",
        "blueprint",
        "attempt",
        "answers",
        "score",
        "percent",
        "decision",
        "minutes",
        "ability_logits",
        "ability_standard_error",
    ];
    let rows = report.people.iter().flat_map(|person| {
        person.sheets.iter().map(|sheet| {
            row![
                &person.id,
                &person.name,
                if sheet.practice { "practice" } else { "paper" },
                &sheet.blueprint,
                sheet.attempt as usize,
                sheet.answers,
                sheet.score,
                Percent(sheet.percent),
                sheet.decision.map(|decision| decision.to_string()).unwrap_or_default(),
                Clock(sheet.minutes),
                sheet.measure,
                sheet.standard_error,
            ]
        })
    });
    Table(columns, rows.collect())
}

fn skills(report: &Report) -> Table {
    let columns = vec!["skill", "name", "answers", "mean", "low", "high", "people", "people_clearly_below"];
    let rows = report.skills.iter().map(|skill| {
        let mean = &skill.mean;
        row![
            &mean.skill,
            &skill.name,
            mean.answers,
            mean.mean,
            mean.interval.low,
            mean.interval.high,
            skill.people,
            skill.below,
        ]
    });
    Table(columns, rows.collect())
}

fn skills_by_person(report: &Report) -> Table {
    let columns = vec!["person", "name", "skill", "answers", "mean", "low", "high", "mean_of_the_group"];
    let rows = report.people.iter().flat_map(|person| {
        person.skills.iter().map(|skill| {
            let mean = &skill.mean;
            row![
                &person.id,
                &person.name,
                &mean.skill,
                mean.answers,
                mean.mean,
                mean.interval.low,
                mean.interval.high,
                skill.cohort,
            ]
        })
    });
    Table(columns, rows.collect())
}

fn belief(entry: &MisconceptionEntry) -> Vec<Cell> {
    let count = entry.count.as_ref();
    row![
        &entry.id,
        &entry.belief,
        count.map_or(0, |count| count.offered),
        count.map_or(0, |count| count.chosen),
        count.map(|count| count.share),
        count.map(|count| count.interval.low),
        count.map(|count| count.interval.high),
        count.map(|count| count.by_guessing),
        entry.freely,
        count.is_some_and(|count| count.stands_out),
    ]
}

/// Columns of [`belief`].
const BELIEF: [&str; 10] = [
    "misconception",
    "belief",
    "offered",
    "chosen",
    "share",
    "low",
    "high",
    "by_guessing",
    "without_options",
    "stands_out",
];

fn misconceptions(report: &Report) -> Table {
    let columns = BELIEF.iter().copied().chain(["people_offered", "people_chosen"]).collect();
    let rows = report.misconceptions.iter().map(|entry| {
        let count = entry.count.as_ref();
        let mut row = belief(entry);
        row.extend(row![
            count.map_or(0, |count| count.people_offered),
            count.map_or(0, |count| count.people_chosen)
        ]);
        row
    });
    Table(columns, rows.collect())
}

fn misconceptions_by_person(report: &Report) -> Table {
    let columns = ["person", "name"].into_iter().chain(BELIEF).collect();
    let rows = report.people.iter().flat_map(|person| {
        person.misconceptions.iter().map(|entry| {
            let mut row = row![&person.id, &person.name];
            row.extend(belief(entry));
            row
        })
    });
    Table(columns, rows.collect())
}

fn items(report: &Report) -> Table {
    let columns = vec![
        "item",
        "kind",
        "skill",
        "exercises",
        "answers",
        "facility",
        "right",
        "discrimination",
        "difficulty_logits",
        "difficulty_standard_error",
        "infit",
        "infit_t",
        "outfit",
        "outfit_t",
        "median_seconds",
        "revise",
        "limits",
    ];
    let rows = report.items.iter().map(|item| {
        let (classical, rasch) = (&item.classical, &item.rasch);
        let fit = |pick: fn(&Fit) -> Option<f64>| rasch.fit.as_ref().and_then(pick);
        row![
            &item.id,
            match item.kind {
                crate::assess::report::ItemKind::Drill => "drill",
                crate::assess::report::ItemKind::Question => "question",
            },
            &item.skill,
            item.questions,
            classical.answers,
            classical.facility,
            classical.right,
            classical.discrimination,
            rasch.difficulty,
            rasch.standard_error,
            fit(|fit| Some(fit.infit)),
            fit(|fit| fit.infit_t),
            fit(|fit| Some(fit.outfit)),
            fit(|fit| fit.outfit_t),
            Clock(item.median_seconds),
            &item.revise.join("; "),
            &item.limits.join("; "),
        ]
    });
    Table(columns, rows.collect())
}

fn options(report: &Report) -> Table {
    let columns =
        vec!["item", "option", "right", "misconception", "offered", "chosen", "share", "right_elsewhere"];
    let rows = report.items.iter().flat_map(|item| {
        item.options.iter().map(|option| {
            row![
                &item.id,
                &option.label,
                option.key,
                option.misconception.as_deref().unwrap_or_default(),
                option.offered,
                option.chosen,
                option.share,
                option.mean_rest,
            ]
        })
    });
    Table(columns, rows.collect())
}
