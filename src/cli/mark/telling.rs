//! Marks as they are told: lines for people, in the language of the course, and one JSON document for programs.

use super::super::problem::Problem;
use super::super::slips::{Marked, Refused, no_slip_of, tell_refused};
use super::super::terminal::{Painter, When, fitted, hung, wrapped};
use crate::assess::{Recorded, SlipMarks, visible};
use crate::course::{Course, told_by_case};
use crate::say;
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
                let names = missing.iter().map(|(_, name)| name.as_str());
                let text = no_slip_of(&self.course.language, Painter::new(When::Auto), names);
                self.tell(|out| out.write_all(text.as_bytes()))?;
            }
            let language = &self.course.language;
            let (refused, passed) = (refused.len(), passed_over.len());
            let count = match passed {
                0 => say!(language, "mark-told-count", marked = marked, refused = refused),
                _ => say!(
                    language,
                    "mark-told-count-passed-over",
                    marked = marked,
                    refused = refused,
                    passed = passed
                ),
            };
            self.tell(|out| writeln!(out, "{count}"))?;
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
    let language = &course.language;
    let mut decided = say!(language, if marks.passed { "report-passed" } else { "report-not-passed" });
    if marks.answers.iter().all(|answer| answer.answer.is_empty()) {
        decided = say!(language, "mark-told-nothing-answered", decided = decided);
    }
    if marks.close {
        decided = say!(language, "mark-told-close", decided = decided);
    }
    decided = match recorded {
        Some(Recorded::Already(_)) => say!(language, "mark-told-already", decided = decided),
        Some(Recorded::New(attempt)) if attempt > 1 => say!(language, "mark-told-further", decided = decided),
        _ => decided,
    };
    let blueprint = course.blueprint(&marks.paper.blueprint);
    let sections = marks.sections.iter().map(|section| {
        // A key of another version of the course may have sections that this one does not have.
        let known = blueprint.and_then(|known| Some((known, known.section(&section.id)?)));
        let case = known.and_then(|(known, section)| Some(known.case_of(section)?.title.as_str()));
        (case, format!("{} {}", section.title, language.percent(section.credit)))
    });
    let line = say!(
        language,
        "mark-told",
        who = who,
        total = language.decimal(marks.total, 1),
        mark = language.decimal(marks.pass_mark, 1),
        error = language.decimal(marks.standard_error, 1),
        decided = decided,
        sections = told_by_case(sections)
    );
    // Names and titles are somebody else's words.
    visible(&line).into_owned()
}

/// Columns before what is told of an answer.
const ANSWER: usize = 7;

/// Every answer of a slip.
fn answers(course: &Course, marks: &SlipMarks) -> String {
    let language = &course.language;
    let mut text = String::new();
    for answer in &marks.answers {
        let given = match answer.answer.is_empty() {
            true => say!(language, "mark-told-nothing"),
            false => answer.answer_said.clone(),
        };
        let credit = language.percent(answer.credit);
        let told =
            say!(language, "mark-told-answer", given = given, best = &answer.key_said, credit = credit);
        let head = format!("  {:>3}. {told}", answer.number);
        text += &(hung(&head, ANSWER) + "\n");
        if answer.credit < 1.0 {
            text += &(wrapped(&answer.consequence, ANSWER) + "\n");
        }
        if let Some(id) = &answer.misconception {
            // A slip of another version of the course may show one that this one does not have.
            let belief = course.misconception(id).map_or(id, |found| &found.belief);
            text += &(wrapped(&say!(language, "terminal-behind", belief = belief), ANSWER) + "\n");
        }
        // What a mark below the full one rests on.
        if answer.credit < 1.0 && !answer.source.is_empty() {
            let proof = answer.proof.as_deref().map_or_else(String::new, |proof| format!(" {proof}"));
            let rests =
                say!(language, "mark-told-rests", question = &answer.question, source = &answer.source)
                    + &proof;
            text += &(wrapped(&rests, ANSWER) + "\n");
        }
    }
    text
}
