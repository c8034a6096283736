//! What one slip enters into a mark book. Entry point: [`MarkBook::enter`](super::MarkBook::enter).

use super::{BookError, MarkBook, Recorded, ResultKind};
use crate::assess::assigned::{Identity, SlipMarked};
use crate::assess::marking::{AnswerMarks, SectionMarks, SlipMarks};
use crate::assess::paper::PaperId;
use crate::assess::put::QuestionPut;
use crate::assess::slip::{Slip, digest_of};
use crate::course::Assignment;
use rusqlite::{Connection, OptionalExtension, Transaction, TransactionBehavior, params};
use std::borrow::Cow;
use std::collections::HashMap;

/// The id of the one section that an assigned set has.
const PRACTICE: &str = "practice";

/// Everything that is recorded of a slip.
pub(super) struct Entry<'m> {
    kind: ResultKind,
    course: &'m str,
    blueprint: &'m str,
    candidate: &'m str,
    seed: i64,
    digest: &'m str,
    name: &'m str,
    /// Digest of the answers.
    slip: String,
    /// How long it took.
    seconds: Option<u32>,
    total: f64,
    standard: Option<Standard>,
    sections: Cow<'m, [SectionMarks]>,
    answers: Cow<'m, [AnswerMarks]>,
}

/// What the mark is held against.
struct Standard {
    pass_mark: f64,
    standard_error: f64,
    passed: bool,
}

impl<'m> Entry<'m> {
    /// The marks of a paper.
    pub fn of_paper(slip: &Slip, marks: &'m SlipMarks) -> Self {
        let paper = &marks.paper;
        Entry {
            kind: ResultKind::Paper,
            course: &paper.course,
            blueprint: &paper.blueprint,
            candidate: &paper.candidate,
            seed: signed(paper.seed),
            digest: &paper.digest,
            name: marks.name.as_deref().unwrap_or_default(),
            slip: slip.answers_digest(),
            seconds: marks.seconds,
            total: marks.total,
            standard: Some(Standard {
                pass_mark: marks.pass_mark,
                standard_error: marks.standard_error,
                passed: marks.passed,
            }),
            sections: Cow::Borrowed(&marks.sections),
            answers: Cow::Borrowed(&marks.answers),
        }
    }

    /// The marks of an assigned set: nothing is passed or failed by it.
    pub fn of_practice(assignment: &'m Assignment, marked: &'m SlipMarked) -> Self {
        let answers: Vec<AnswerMarks> =
            marked.answers.iter().map(|answer| answer.as_marks(PRACTICE)).collect();
        let section = SectionMarks {
            id: PRACTICE.to_owned(),
            title: assignment.title.clone(),
            weight: 100.0,
            credit: marked.credit,
        };
        Entry {
            kind: ResultKind::Practice,
            course: &marked.identity.course,
            blueprint: &assignment.id,
            candidate: &marked.person,
            seed: signed(assignment.seed),
            digest: &marked.identity.set,
            name: &marked.name,
            slip: digest_of(marked.answers.iter().map(|answer| answer.answer.as_str())),
            seconds: None,
            total: marked.credit * 100.0,
            standard: None,
            sections: Cow::Owned(vec![section]),
            answers: Cow::Owned(answers),
        }
    }
}

/// SQLite's whole numbers have a sign; seeds are kept below 2^53.
fn signed(seed: u64) -> i64 {
    i64::try_from(seed).unwrap_or(i64::MAX)
}

impl MarkBook {
    /// Enters a slip's marks, unless they are there.
    pub(super) fn enter(&mut self, entry: &Entry, another: bool) -> Result<Recorded, BookError> {
        let work = self.connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let (kind, identity) = (entry.kind.word(), (entry.course, entry.blueprint, entry.candidate));
        let same: Option<(i64, u32)> = work
            .prepare_cached(
                "SELECT id, attempt FROM result
                 WHERE kind = ?1 AND course = ?2 AND blueprint = ?3 AND candidate = ?4 AND seed = ?5 AND slip = ?6",
            )?
            .query_row(params![kind, identity.0, identity.1, identity.2, entry.seed, entry.slip], |row| {
                Ok((row.get(0)?, row.get(1)?))
            })
            .optional()?;
        let mut new = HashMap::new();
        if let Some((result, attempt)) = same {
            // Recorded by an earlier version, which did not know what was put.
            let lacking: i64 = work
                .prepare_cached("SELECT count(*) FROM answer WHERE result = ?1 AND put IS NULL")?
                .query_row([result], |row| row.get(0))?;
            if lacking > 0 {
                for answer in entry.answers.iter() {
                    let put = question(&work, &self.known, &mut new, answer)?;
                    work.prepare_cached(
                        "UPDATE answer SET put = ?3, chosen = ?4 WHERE result = ?1 AND number = ?2",
                    )?
                    .execute(params![
                        result,
                        answer.number as i64,
                        put,
                        place(answer.chosen)
                    ])?;
                }
                work.commit()?;
                self.known.extend(new);
            }
            return Ok(Recorded::Already(attempt));
        }
        let last = last_attempt(&work, kind, identity, entry.seed)?;
        if let Some((attempt, total)) = last.filter(|_| !another) {
            return Err(BookError::Another { kind: entry.kind, attempt, total });
        }
        let attempt = last.map_or(1, |(last, _)| last + 1);
        insert(&work, &self.known, &mut new, entry, attempt)?;
        work.commit()?;
        self.known.extend(new);
        Ok(Recorded::New(attempt))
    }

    /// Whether anything is recorded of a paper.
    ///
    /// # Errors
    /// [`BookError`] where the book cannot be read.
    pub fn holds(&self, paper: &PaperId) -> Result<bool, BookError> {
        let identity = (paper.course.as_str(), paper.blueprint.as_str(), paper.candidate.as_str());
        let last = last_attempt(&self.connection, ResultKind::Paper.word(), identity, signed(paper.seed))?;
        Ok(last.is_some())
    }

    /// Whether anything is recorded of an assigned set of exercises.
    ///
    /// # Errors
    /// As [`MarkBook::holds`].
    pub fn holds_practice(&self, assignment: &Assignment, set: &Identity) -> Result<bool, BookError> {
        let identity = (set.course.as_str(), set.assignment.as_str(), set.person.as_str());
        let (kind, seed) = (ResultKind::Practice.word(), signed(assignment.seed));
        Ok(last_attempt(&self.connection, kind, identity, seed)?.is_some())
    }
}

/// The last attempt at something with its mark in percent; `identity` is course, blueprint and candidate.
fn last_attempt(
    book: &Connection,
    kind: &str,
    identity: (&str, &str, &str),
    seed: i64,
) -> rusqlite::Result<Option<(u32, f64)>> {
    book.prepare_cached(
        "SELECT attempt, total FROM result
         WHERE kind = ?1 AND course = ?2 AND blueprint = ?3 AND candidate = ?4 AND seed = ?5
         ORDER BY attempt DESC LIMIT 1",
    )?
    .query_row(params![kind, identity.0, identity.1, identity.2, seed], |row| Ok((row.get(0)?, row.get(1)?)))
    .optional()
}

/// Ids of questions by name and digest.
type Known = HashMap<(String, String), i64>;

fn insert(
    work: &Transaction,
    known: &Known,
    new: &mut Known,
    entry: &Entry,
    attempt: u32,
) -> Result<(), BookError> {
    let standard = entry.standard.as_ref();
    work.prepare_cached(
        "INSERT INTO result VALUES (NULL, ?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14)",
    )?
    .execute(params![
        entry.kind.word(),
        entry.course,
        entry.blueprint,
        entry.candidate,
        entry.seed,
        entry.digest,
        attempt,
        entry.name,
        entry.slip,
        entry.total,
        standard.map(|standard| standard.pass_mark),
        standard.map(|standard| standard.standard_error),
        standard.map(|standard| standard.passed),
        entry.seconds,
    ])?;
    let result = work.last_insert_rowid();
    let mut add = work.prepare_cached("INSERT INTO section VALUES (?1, ?2, ?3, ?4, ?5, ?6)")?;
    for (place, section) in entry.sections.iter().enumerate() {
        add.execute(params![
            result,
            place as i64,
            section.id,
            section.title,
            section.weight,
            section.credit
        ])?;
    }
    for answer in entry.answers.iter() {
        let put = question(work, known, new, answer)?;
        work.prepare_cached(
            "INSERT INTO answer VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14)",
        )?
        .execute(params![
            result,
            answer.number as i64,
            answer.section,
            answer.question,
            answer.skill,
            answer.answer,
            answer.key,
            answer.credit,
            answer.consequence,
            answer.misconception,
            answer.lesson,
            put,
            place(answer.chosen),
            answer.seconds,
        ])?;
    }
    Ok(())
}

fn place(chosen: Option<usize>) -> Option<i64> {
    chosen.and_then(|place| i64::try_from(place).ok())
}

/// The id of the question that an answer was given to; the question is written down with its options where it is not in the book.
fn question(
    work: &Transaction,
    known: &Known,
    new: &mut Known,
    answer: &AnswerMarks,
) -> Result<i64, BookError> {
    let put: &QuestionPut = &answer.put;
    let name = put.written.as_ref().unwrap_or(&answer.question);
    let key = (name.clone(), put.digest.clone());
    if let Some(id) = known.get(&key).or_else(|| new.get(&key)) {
        return Ok(*id);
    }
    let there: Option<i64> = work
        .prepare_cached("SELECT id FROM question WHERE name = ?1 AND digest = ?2")?
        .query_row(params![name, put.digest], |row| row.get(0))
        .optional()?;
    let id =
        match there {
            Some(id) => id,
            None => {
                let drill = answer.question.rsplit_once(' ').map(|(drill, _)| drill);
                work.prepare_cached("INSERT INTO question VALUES (NULL, ?1, ?2, ?3, ?4)")?
                    .execute(params![name, drill.filter(|_| put.written.is_none()), put.skill, put.digest])?;
                let id = work.last_insert_rowid();
                let mut add = work.prepare_cached("INSERT INTO option VALUES (?1, ?2, ?3, ?4, ?5)")?;
                for (place, option) in put.options.iter().enumerate() {
                    add.execute(params![id, place as i64, option.say, option.right, option.misconception])?;
                }
                id
            }
        };
    new.insert(key, id);
    Ok(id)
}
