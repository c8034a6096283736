//! Marks of an answer slip.
//!
//! Entry point: [`mark_slip`]. Nothing is taken from the slip but its raw answers; what they are worth stands in the key and the mark
//! tables, which were made with the paper or are made again from its identity: the marks are the same either way.

use super::counted::counted;
use super::key::Key;
use super::paper::PaperId;
use super::put::QuestionPut;
use super::slip::Slip;
use super::table::MarkTable;
use crate::course::Course;
use crate::exercise::{Answer, AnswerError, Mark, outcome};
use crate::say;
use serde::Serialize;
use std::borrow::Cow;
use std::sync::Arc;
use thiserror::Error;

/// Why a slip is refused.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum MarkingError {
    /// It has too few or too many answers.
    #[error("the slip has {}; the paper has {}", counted(*found, "answer"), counted(*asked, "question"))]
    Answers {
        /// Answers on the slip.
        found: usize,
        /// Questions of the paper.
        asked: usize,
    },
    /// An answer cannot be read.
    #[error("question {number}: {answer:?} is no answer: {why}; leave it empty where none was given")]
    Answer {
        /// Number of the question.
        number: usize,
        /// What stands on the slip, cut to a few words.
        answer: String,
        /// Why.
        why: AnswerError,
    },
    /// A question of the key has no mark table.
    #[error("the kept keys do not say what answers to question {0} are worth")]
    NoTable(usize),
}

/// Marks of one slip.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SlipMarks {
    /// The paper.
    pub paper: PaperId,
    /// The candidate's name, where the register says it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// The whole mark, percent.
    pub total: f64,
    /// What passes, percent.
    pub pass_mark: f64,
    /// Standard error of measurement at the pass mark, percent.
    pub standard_error: f64,
    /// Standard error of the pass mark itself, percent; none with one judge.
    pub pass_mark_error: Option<f64>,
    /// Whether the whole mark reaches the pass mark.
    pub passed: bool,
    /// Whether it lies within one standard error of measurement of the pass mark, on either side: another paper might have decided
    /// otherwise.
    pub close: bool,
    /// How long it took, as the slip tells: whole seconds.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub seconds: Option<u32>,
    /// Marks by section.
    pub sections: Vec<SectionMarks>,
    /// Marks by question.
    pub answers: Vec<AnswerMarks>,
}

/// Marks of one section.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SectionMarks {
    /// Id.
    pub id: String,
    /// Title.
    pub title: String,
    /// Share of the whole mark, percent.
    pub weight: f64,
    /// Mean credit, 0 to 1.
    pub credit: f64,
}

/// The mark of one answer.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct AnswerMarks {
    /// Number of the question, from 1.
    pub number: usize,
    /// Id of the section.
    pub section: String,
    /// Name of the question: the drill and the number in its pool.
    pub question: String,
    /// Id of the skill.
    pub skill: String,
    /// The answer as it was understood; empty where there is none.
    pub answer: String,
    /// The answer with full credit.
    pub key: String,
    /// Credit, 0 to 1.
    pub credit: f64,
    /// What would follow, in words.
    pub consequence: String,
    /// Id of the misconception it shows.
    pub misconception: Option<String>,
    /// Id of the lesson to reread.
    pub lesson: String,
    /// How long it took, as the slip tells: whole seconds.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub seconds: Option<u32>,
    /// The answer for people: of drops by the names of their bottles.
    #[serde(skip)]
    pub answer_said: String,
    /// The answer with full credit, likewise.
    #[serde(skip)]
    pub key_said: String,
    /// The question as it was put.
    #[serde(skip)]
    pub put: Arc<QuestionPut>,
    /// Which of its options was chosen.
    #[serde(skip)]
    pub chosen: Option<usize>,
}

/// Marks the answers of a slip by the key of its paper; `table` gives the mark table of a question by its name.
///
/// # Errors
/// [`MarkingError`] where the number of answers is wrong, or one of them cannot be read. A mix outside the limits can be read, and
/// earns nothing.
pub fn mark_slip<'t>(
    course: &Course,
    key: &Key,
    table: impl Fn(&str) -> Option<Cow<'t, MarkTable>>,
    slip: &Slip,
) -> Result<SlipMarks, MarkingError> {
    let asked = key.questions().count();
    if slip.answers.len() != asked {
        return Err(MarkingError::Answers { found: slip.answers.len(), asked });
    }
    let mut answers: Vec<AnswerMarks> = Vec::with_capacity(asked);
    let mut sections = Vec::with_capacity(key.sections.len());
    let mut total = 0.0;
    for section in &key.sections {
        let first = answers.len();
        for question in &section.questions {
            let number = answers.len() + 1;
            let table = table(question).ok_or(MarkingError::NoTable(number))?;
            let raw = &slip.answers[number - 1];
            let (answer, mark) = mark_table(course, &table, raw).map_err(|why| MarkingError::Answer {
                number,
                answer: raw.chars().take(40).collect(),
                why,
            })?;
            let put = Arc::clone(table.put());
            let read = |text: &str| Answer::read(&table.exercise.form, text).ok();
            let said = |text: &str| match read(text) {
                Some(Answer::Drops(mix)) => course.shelf.mix_in_words(&mix),
                _ => text.to_owned(),
            };
            let chosen = read(raw).and_then(|answer| put.chosen(&answer));
            answers.push(AnswerMarks {
                number,
                section: section.id.clone(),
                question: question.clone(),
                skill: table.skill().to_owned(),
                answer_said: said(&answer),
                key_said: said(table.key()),
                answer,
                key: table.key().to_owned(),
                credit: mark.credit,
                consequence: mark.consequence,
                misconception: mark.misconception,
                lesson: mark.lesson,
                seconds: slip.time.as_ref().and_then(|time| time.each.get(number - 1).copied()),
                put,
                chosen,
            });
        }
        let earned: f64 = answers[first..].iter().map(|answer| answer.credit).sum();
        let credit = earned / section.questions.len().max(1) as f64;
        total += section.weight * credit;
        sections.push(SectionMarks {
            id: section.id.clone(),
            title: section.title.clone(),
            weight: section.weight,
            credit,
        });
    }
    Ok(SlipMarks {
        paper: key.paper.clone(),
        name: None,
        total,
        pass_mark: key.pass_mark,
        standard_error: key.standard_error,
        pass_mark_error: key.pass_mark_error,
        // A billionth of a percent is rounding, and nobody fails by it.
        passed: total >= key.pass_mark - 1e-9,
        close: (total - key.pass_mark).abs() <= key.standard_error,
        seconds: slip.time.as_ref().map(|time| time.seconds),
        sections,
        answers,
    })
}

/// The mark of one raw answer, with the answer as it was understood. An empty one is no answer and earns nothing.
///
/// # Errors
/// [`AnswerError`] where it cannot be read.
pub fn mark_table(course: &Course, table: &MarkTable, raw: &str) -> Result<(String, Mark), AnswerError> {
    let worthless = |consequence: String| Mark {
        credit: 0.0,
        consequence,
        misconception: None,
        lesson: table.lesson().to_owned(),
    };
    if raw.trim().is_empty() {
        return Ok((String::new(), worthless(course.language.say("exercise-not-answered", &[]))));
    }
    let answer = Answer::read(&table.exercise.form, raw)?;
    let written = answer.to_string();
    if let Some(mark) = table.of_mix(&answer) {
        return Ok((written, mark));
    }
    match outcome(course, &table.exercise, &answer) {
        Ok(seen) => Ok((written, seen.mark)),
        Err(AnswerError::Limits(why)) => {
            let language = &course.language;
            Ok((written, worthless(say!(language, "exercise-not-a-mix", why = why.said(language)))))
        }
        Err(other) => Err(other),
    }
}
