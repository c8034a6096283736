//! The report of a cohort: what an instructor wants to know after a paper, and what each apprentice should practise next.
//!
//! Entry point: [`report`], from a [`Cohort`] of marked sheets to a typed [`Report`]. Steps:
//!
//! 1. the cohort is checked (`input`);
//! 2. each blueprint's sheets give scores and reliability over the *places* of the paper (`papers`): papers drawn with different
//!    seeds put different questions in the same place;
//! 3. drills and bank questions are the *items* of every other statistic (`items`): the exercises of one drill are siblings, each of
//!    which too few people answer, and a drill is what an author revises;
//! 4. skills and misconceptions are counted for the cohort and for every person (`people`);
//! 5. the report says in words what stands out (`words`).
//!
//! Pure: no files, no clock, no HTML. What cannot be computed is `None`, with words that say why. Sentences are in the course's language; names
//! of fields and values that programs tell apart are the same in every language.

mod input;
mod items;
mod misconceptions;
mod papers;
mod people;
mod words;

pub use input::{
    Cohort, CohortError, MOST_IN_ID, OptionPut, PaperSat, Question, Sheet, SheetAnswer, SheetMark,
};
pub use items::{ItemEntry, ItemKind};
pub use misconceptions::{MOST_TOLD, MisconceptionEntry, Reread};
pub use papers::{PaperEntry, Place, SectionCredit, SectionName};
pub use people::{MOST_NEXT, Next, PersonEntry, PersonSkill, SheetEntry, SkillEntry, Standing};
pub use words::unreliable;

use crate::course::Course;
use serde::Serialize;

/// Everything a report says, in the order of its pages.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Report {
    /// What the report is called; may be empty.
    pub title: String,
    /// Title of the course.
    pub course: String,
    /// BCP 47 tag of its language.
    pub language: String,
    /// What stands out, a sentence each.
    pub summary: Vec<String>,
    /// What a reader must know to read it rightly, a sentence each.
    pub notes: Vec<String>,
    /// One entry a blueprint, by its id.
    pub papers: Vec<PaperEntry>,
    /// Skills of the whole cohort, weakest first.
    pub skills: Vec<SkillEntry>,
    /// Misconceptions of the whole cohort: those that stand out first, then the most surely widespread.
    pub misconceptions: Vec<MisconceptionEntry>,
    /// Drills and bank questions: those to revise first, then by id.
    pub items: Vec<ItemEntry>,
    /// Why there are no difficulties, in words.
    pub why_no_difficulties: Option<String>,
    /// Whether the standard errors of difficulties are exact.
    pub exact_errors: bool,
    /// One entry a person, by name.
    pub people: Vec<PersonEntry>,
}

/// The report of a cohort; `course` gives names, truths and lessons.
///
/// # Errors
/// [`CohortError`] where the cohort is not in order.
pub fn report(cohort: &Cohort, course: &Course) -> Result<Report, CohortError> {
    let checked = cohort.checked()?;
    let items = items::items(&checked, course);
    let skills = people::skills(&checked, course);
    let papers = papers::papers(&checked, course);
    let misconceptions = misconceptions::of_cohort(&checked, course);
    let people = people::people(&checked, course, &skills, &items.measures);
    let mut report = Report {
        title: cohort.title.clone(),
        course: course.title.clone(),
        language: course.language.tag().to_owned(),
        summary: Vec::new(),
        notes: words::notes(&checked, course),
        papers,
        skills,
        misconceptions,
        items: items.entries,
        why_no_difficulties: items.why_no_difficulties,
        exact_errors: items.exact_errors,
        people,
    };
    report.summary = words::summary(&report, &course.language);
    Ok(report)
}
