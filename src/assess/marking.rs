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
use crate::exercise::{Answer, AnswerError, Exercise, Mark, outcome};
use crate::say;
use serde::Serialize;
use std::borrow::Cow;
use std::sync::Arc;
use thiserror::Error;

/// Why a slip is refused.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum MarkingError {
    /// It has too few or too many answers.
    #[error(
        "the slip has {} to {}; it needs one to each, empty where none was given",
        counted(*found, "answer"),
        counted(*asked, "question")
    )]
    Answers {
        /// Answers on the slip.
        found: usize,
        /// Questions that were asked.
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
    /// Where the key comes from; empty where the key was kept by an earlier version.
    pub source: String,
    /// What was proved of the key, in words; nothing of an answer that no colour decides.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub proof: Option<String>,
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
    check_count(&slip.answers, asked)?;
    let mut answers: Vec<AnswerMarks> = Vec::with_capacity(asked);
    let mut sections = Vec::with_capacity(key.sections.len());
    let mut total = 0.0;
    for section in &key.sections {
        let first = answers.len();
        for question in &section.questions {
            let number = answers.len() + 1;
            let table = table(question).ok_or(MarkingError::NoTable(number))?;
            let raw = &slip.answers[number - 1];
            let given = table.given(course, raw).map_err(|why| unreadable(number, raw, why))?;
            let put = Arc::clone(table.put());
            let said = |answer: &Answer| match answer {
                Answer::Drops(mix) => course.shelf.mix_in_words(mix),
                other => other.to_string(),
            };
            let chosen = given.answer.as_ref().and_then(|answer| put.chosen(answer));
            let best = Answer::read(&table.exercise.form, table.key());
            let mark = given.mark;
            answers.push(AnswerMarks {
                number,
                section: section.id.clone(),
                question: question.clone(),
                skill: table.skill().to_owned(),
                answer_said: given.answer.as_ref().map_or_else(String::new, said),
                key_said: best.map_or_else(|_| table.key().to_owned(), |best| said(&best)),
                answer: given.answer.as_ref().map_or_else(String::new, Answer::to_string),
                key: table.key().to_owned(),
                credit: mark.credit,
                consequence: mark.consequence,
                misconception: mark.misconception,
                lesson: mark.lesson,
                source: table.source().to_owned(),
                proof: table.proof().map(str::to_owned),
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

/// Whether a slip answers as many questions as were asked.
pub(super) fn check_count(answers: &[String], asked: usize) -> Result<(), MarkingError> {
    if answers.len() == asked { Ok(()) } else { Err(MarkingError::Answers { found: answers.len(), asked }) }
}

/// An answer that cannot be read.
pub(super) fn unreadable(number: usize, raw: &str, why: AnswerError) -> MarkingError {
    const MOST: usize = 40;
    let mut answer: String = raw.chars().take(MOST).collect();
    if raw.chars().nth(MOST).is_some() {
        answer.push('…');
    }
    MarkingError::Answer { number, answer, why }
}

/// An answer as it was understood, with its mark.
#[derive(Debug, Clone)]
pub struct Given {
    /// The answer; `None` where there is none.
    pub answer: Option<Answer>,
    /// What it is worth.
    pub mark: Mark,
}

impl Given {
    /// Reads and marks a raw answer to an exercise. An empty one is none and earns nothing; a mix outside the limits is one and earns nothing
    /// either. `known` gives the mark of an answer that was worked out before; `lesson` treats the question.
    ///
    /// # Errors
    /// [`AnswerError`] where it cannot be read.
    pub(super) fn read(
        course: &Course,
        exercise: &Exercise,
        lesson: &str,
        raw: &str,
        known: impl FnOnce(&Answer) -> Option<Mark>,
    ) -> Result<Self, AnswerError> {
        let language = &course.language;
        let worthless = |consequence: String| Mark {
            credit: 0.0,
            consequence,
            misconception: None,
            lesson: lesson.to_owned(),
        };
        if raw.trim().is_empty() {
            let mark = worthless(language.say("exercise-not-answered", &[]));
            return Ok(Given { answer: None, mark });
        }
        let answer = Answer::read(&exercise.form, raw)?;
        let mark = match known(&answer) {
            Some(mark) => mark,
            None => match outcome(course, exercise, &answer) {
                Ok(seen) => seen.mark,
                Err(AnswerError::Limits(why)) => {
                    worthless(say!(language, "exercise-not-a-mix", why = why.said(language)))
                }
                Err(other) => return Err(other),
            },
        };
        Ok(Given { answer: Some(answer), mark })
    }
}
