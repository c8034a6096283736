//! Marks as they are told: lines for people, one JSON document for programs.

use super::super::problem::Problem;
use super::super::terminal::wrapped;
use crate::assess::{Recorded, SlipMarks};
use serde::Serialize;
use std::io::Write;
use std::path::Path;

/// Tells marks as they come, so that they need not all be in memory.
pub(super) struct Telling<W> {
    out: W,
    json: bool,
    /// Whether every answer is told: of a single slip it is.
    whole: bool,
    marked: usize,
    refused: Vec<Refused>,
}

#[derive(Serialize)]
struct Refused {
    file: String,
    why: String,
}

#[derive(Serialize)]
struct Marked<'m> {
    file: String,
    /// The attempt it is in the mark book; none where there is no book.
    attempt: Option<u32>,
    #[serde(flatten)]
    marks: &'m SlipMarks,
}

impl<W: Write> Telling<W> {
    pub fn new(out: W, json: bool, slips: usize) -> Self {
        Telling { out, json, whole: slips == 1, marked: 0, refused: Vec::new() }
    }

    pub fn begin(&mut self) -> Result<(), Problem> {
        if self.json {
            write!(self.out, "{{\"marked\": [")?;
        }
        Ok(())
    }

    pub fn marked(
        &mut self,
        path: &Path,
        marks: &SlipMarks,
        recorded: Option<Recorded>,
    ) -> Result<(), Problem> {
        self.marked += 1;
        if self.json {
            let attempt = recorded.map(|(Recorded::New(attempt) | Recorded::Already(attempt))| attempt);
            let marked = Marked { file: path.display().to_string(), attempt, marks };
            write!(self.out, "{}", if self.marked == 1 { "\n" } else { ",\n" })?;
            serde_json::to_writer(&mut self.out, &marked).map_err(std::io::Error::from)?;
            return Ok(());
        }
        writeln!(self.out, "{}", line(marks, recorded))?;
        if self.whole {
            self.out.write_all(answers(marks).as_bytes())?;
        }
        Ok(())
    }

    pub fn refused(&mut self, path: &Path, why: &str) -> Result<(), Problem> {
        // Names and answers on a slip are somebody else's words.
        let why: String = why.chars().map(|c| if c.is_control() { '\u{fffd}' } else { c }).collect();
        if !self.json {
            eprintln!("refused: {}: {why}", path.display());
        }
        self.refused.push(Refused { file: path.display().to_string(), why });
        Ok(())
    }

    pub fn end(&mut self) -> Result<(), Problem> {
        if self.json {
            write!(self.out, "\n], \"refused\": ")?;
            serde_json::to_writer_pretty(&mut self.out, &self.refused).map_err(std::io::Error::from)?;
            writeln!(self.out, "}}")?;
        } else {
            writeln!(self.out, "{} marked, {} refused", self.marked, self.refused.len())?;
        }
        self.out.flush()?;
        Ok(())
    }
}

/// One line: who, how much, and what it means.
fn line(marks: &SlipMarks, recorded: Option<Recorded>) -> String {
    let who = match &marks.name {
        Some(name) => format!("{name} ({})", marks.paper.candidate),
        None => marks.paper.candidate.clone(),
    };
    let verdict = if marks.passed { "passed" } else { "not passed" };
    let close = if marks.close { ", within one standard error of the pass mark" } else { "" };
    let book = match recorded {
        Some(Recorded::Already(_)) => "; in the book already",
        Some(Recorded::New(attempt)) if attempt > 1 => "; a further attempt",
        _ => "",
    };
    let sections: Vec<String> = marks
        .sections
        .iter()
        .map(|section| format!("{} {:.0}%", section.id, section.credit * 100.0))
        .collect();
    format!(
        "{who}: {:.1}% of 100, pass mark {:.1}% with a standard error of {:.1}: {verdict}{close}{book}; {}",
        marks.total,
        marks.pass_mark,
        marks.standard_error,
        sections.join(", ")
    )
}

/// Every answer of a slip.
fn answers(marks: &SlipMarks) -> String {
    let mut text = String::new();
    for answer in &marks.answers {
        let given = if answer.answer.is_empty() { "nothing" } else { &answer.answer };
        text += &format!(
            "  {:>3}. {given}, best {}, credit {:.0}%{}\n",
            answer.number,
            answer.key,
            answer.credit * 100.0,
            answer.misconception.as_ref().map_or_else(String::new, |id| format!(", shows {id}")),
        );
        if answer.credit < 1.0 {
            text += &wrapped(&answer.consequence, 7);
            text.push('\n');
        }
    }
    text
}
