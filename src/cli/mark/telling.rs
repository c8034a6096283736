//! Marks as they are told: lines for people, one JSON document for programs.

use super::super::problem::Problem;
use super::super::slips::{Marked, Refused, no_slip_of, tell_refused};
use super::super::terminal::{Painter, When, fitted, hung, wrapped};
use crate::assess::{Recorded, SlipMarks, visible};
use crate::course::{Course, told_by_case};
use std::io::{self, ErrorKind, IsTerminal, Write};
use std::path::Path;

/// Tells marks as they come, so that they need not all be in memory.
pub(super) struct Telling<'c, W> {
    out: W,
    course: &'c Course,
    json: bool,
    /// Whether every answer is told: of a single slip it is.
    whole: bool,
    /// Whether marks are recorded, too: then nothing stops because nobody reads any more what is told.
    recorded: bool,
    marked: usize,
    refused: Vec<Refused>,
}

impl<'c, W: Write> Telling<'c, W> {
    pub fn new(out: W, course: &'c Course, json: bool, slips: usize, recorded: bool) -> Self {
        Telling { out, course, json, whole: slips == 1, recorded, marked: 0, refused: Vec::new() }
    }

    pub fn begin(&mut self) -> Result<(), Problem> {
        if self.json { self.tell(|out| write!(out, "{{\"marked\": [")) } else { Ok(()) }
    }

    fn tell(&mut self, say: impl FnOnce(&mut W) -> io::Result<()>) -> Result<(), Problem> {
        match say(&mut self.out) {
            Err(error) if self.recorded && error.kind() == ErrorKind::BrokenPipe => Ok(()),
            told => Ok(told?),
        }
    }

    pub fn marked(
        &mut self,
        path: &Path,
        marks: &SlipMarks,
        recorded: Option<Recorded>,
    ) -> Result<(), Problem> {
        self.marked += 1;
        if self.json {
            let marked = Marked::new(path, recorded, marks);
            let before = if self.marked == 1 { "\n" } else { ",\n" };
            return self.tell(|out| {
                write!(out, "{before}")?;
                Ok(serde_json::to_writer(out, &marked)?)
            });
        }
        let mut text = fitted(&line(self.course, marks, recorded), io::stdout().is_terminal()) + "\n";
        if self.whole {
            text += &answers(self.course, marks);
        }
        self.tell(|out| out.write_all(text.as_bytes()))
    }

    pub fn refused(&mut self, path: &Path, why: &str) {
        self.refused.push(tell_refused(path, why, self.json));
    }

    /// Ends, and tells of whom there is no slip and what was passed over; gives how many slips were refused.
    pub fn end(&mut self, missing: &[(String, String)], passed_over: &[Refused]) -> Result<usize, Problem> {
        let (marked, refused) = (self.marked, std::mem::take(&mut self.refused));
        if self.json {
            self.tell(|out| {
                write!(out, "\n], \"missing\": ")?;
                let ids: Vec<&String> = missing.iter().map(|(id, _)| id).collect();
                serde_json::to_writer_pretty(&mut *out, &ids)?;
                write!(out, ", \"refused\": ")?;
                serde_json::to_writer_pretty(&mut *out, &refused)?;
                write!(out, ", \"passed_over\": ")?;
                serde_json::to_writer_pretty(&mut *out, passed_over)?;
                writeln!(out, "}}")
            })?;
        } else {
            // A single slip is somebody's own, told in full; who else has handed in is no question then.
            if !self.whole && !missing.is_empty() {
                let text =
                    no_slip_of(Painter::new(When::Auto), missing.iter().map(|(_, name)| name.as_str()));
                self.tell(|out| out.write_all(text.as_bytes()))?;
            }
            let passed = match passed_over.len() {
                0 => String::new(),
                count => format!(", {count} passed over"),
            };
            self.tell(|out| writeln!(out, "{marked} marked, {} refused{passed}", refused.len()))?;
        }
        self.tell(W::flush)?;
        Ok(refused.len())
    }
}

/// One line: who, how much, and what it means.
fn line(course: &Course, marks: &SlipMarks, recorded: Option<Recorded>) -> String {
    let who = match &marks.name {
        Some(name) => format!("{name} ({})", marks.paper.candidate),
        None => marks.paper.candidate.clone(),
    };
    let verdict = if marks.passed { "passed" } else { "not passed" };
    let blank =
        if marks.answers.iter().all(|answer| answer.answer.is_empty()) { ", nothing answered" } else { "" };
    let close = if marks.close { ", within one standard error of the pass mark" } else { "" };
    let book = match recorded {
        Some(Recorded::Already(_)) => "; in the book already",
        Some(Recorded::New(attempt)) if attempt > 1 => "; a further attempt",
        _ => "",
    };
    let blueprint = course.blueprint(&marks.paper.blueprint);
    let sections = marks.sections.iter().map(|section| {
        // A key of another version of the course may have sections that this one does not have.
        let known = blueprint.and_then(|known| Some((known, known.section(&section.id)?)));
        let case = known.and_then(|(known, section)| Some(known.case_of(section)?.title.as_str()));
        (case, format!("{} {:.0}%", section.title, section.credit * 100.0))
    });
    let line = format!(
        "{who}: {:.1}%, pass mark {:.1}% with a standard error of {:.1}: {verdict}{blank}{close}{book}; {}",
        marks.total,
        marks.pass_mark,
        marks.standard_error,
        told_by_case(sections)
    );
    // Names and titles are somebody else's words.
    visible(&line).into_owned()
}

/// Columns before what is told of an answer.
const ANSWER: usize = 7;

/// Every answer of a slip.
fn answers(course: &Course, marks: &SlipMarks) -> String {
    let mut text = String::new();
    for answer in &marks.answers {
        let given = if answer.answer.is_empty() { "nothing" } else { &answer.answer_said };
        let head = format!(
            "  {:>3}. {given}, best {}, credit {:.0}%",
            answer.number,
            answer.key_said,
            answer.credit * 100.0
        );
        text += &(hung(&head, ANSWER) + "\n");
        if answer.credit < 1.0 {
            text += &(wrapped(&answer.consequence, ANSWER) + "\n");
        }
        if let Some(id) = &answer.misconception {
            // A slip of another version of the course may show one that this one does not have.
            let belief = course.misconception(id).map_or(id, |found| &found.belief);
            text += &(wrapped(&format!("Behind it often: “{belief}”"), ANSWER) + "\n");
        }
        // What a mark below the full one rests on.
        if answer.credit < 1.0 && !answer.source.is_empty() {
            let proof = answer.proof.as_deref().map_or_else(String::new, |proof| format!(" {proof}"));
            let rests = format!("{}; source: {}.{proof}", answer.question, answer.source);
            text += &(wrapped(&rests, ANSWER) + "\n");
        }
    }
    text
}
