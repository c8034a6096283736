//! Registers: who sits a paper.
//!
//! Entry points: [`Register::read`] for its text, [`Register::of_file`] for a file's content. A register is a CSV file with the columns `id` and `name`; further columns are not looked at. An id
//! names files, so it is made of letters, digits, `-`, `_` and `.` alone; a name is anything that can be seen.

use super::visible::{is_unseen, visible};
use crate::handed::{Before, NoText, text_of};
use serde::{Deserialize, Serialize};
use std::collections::HashMap;
use thiserror::Error;

/// People on a register.
const MOST_PEOPLE: usize = 100_000;
/// Characters of an id.
const MOST_IN_ID: usize = 64;
/// Characters of a name.
const MOST_IN_NAME: usize = 200;
/// Problems that are told.
const MOST_TOLD: usize = 20;

/// Why a register cannot be used: every problem, with its line.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("{}", .0.join("\n"))]
pub struct RegisterError(pub Vec<String>);

/// Somebody on a register.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Person {
    /// Id, unique on the register.
    pub id: String,
    /// Name, as written.
    pub name: String,
}

/// Everybody who sits a paper.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Register {
    /// In the order of the file.
    pub people: Vec<Person>,
}

impl Register {
    /// Reads a register out of a file, in UTF-8, or in UTF-16 that says so.
    ///
    /// # Errors
    /// As [`Register::read`], and where the file is no text, with the field in which that shows.
    pub fn of_file(content: &[u8]) -> Result<Self, RegisterError> {
        let text = text_of(content).map_err(|error| RegisterError(vec![no_text(&error)]))?;
        Register::read(&text)
    }

    /// Reads a register.
    ///
    /// # Errors
    /// [`RegisterError`] with every line that is wrong.
    pub fn read(text: &str) -> Result<Self, RegisterError> {
        let text = text.trim_start_matches('\u{feff}');
        if text.trim().is_empty() {
            return Err(RegisterError(vec![
                "the file is empty; a register has the columns `id` and `name`".to_owned(),
            ]));
        }
        let delimiter = delimiter(text);
        let mut reader = csv::ReaderBuilder::new()
            .trim(csv::Trim::All)
            .delimiter(delimiter)
            .flexible(true)
            .from_reader(text.as_bytes());
        let headers = reader.headers().map_err(|error| RegisterError(vec![error.to_string()]))?.clone();
        let column = |wanted: &str| headers.iter().position(|header| header.eq_ignore_ascii_case(wanted));
        let (Some(id), Some(name)) = (column("id"), column("name")) else {
            let found: Vec<String> = headers.iter().map(|header| format!("`{}`", visible(header))).collect();
            return Err(RegisterError(vec![format!(
                "line 1: a register has the columns `id` and `name`; these are {}",
                found.join(", ")
            )]));
        };
        let mut people: Vec<Person> = Vec::new();
        let mut lines: HashMap<String, u64> = HashMap::new();
        let mut problems = Vec::new();
        for record in reader.records() {
            let record = match record {
                Ok(record) => record,
                Err(error) => {
                    problems.push(error.to_string());
                    continue;
                }
            };
            let line = record.position().map_or(0, csv::Position::line);
            let field = |place: usize| record.get(place).unwrap_or("").to_owned();
            let person = Person { id: field(id), name: field(name) };
            if let Some(problem) = too_many(&record, headers.len(), name, delimiter) {
                problems.push(format!("line {line}: {problem}"));
            } else if let Some(problem) = problem_of(&person) {
                problems.push(format!("line {line}: {problem}"));
            } else if let Some(first) = lines.insert(person.id.to_lowercase(), line) {
                problems.push(format!("line {line}: the id `{}` stands in line {first} already", person.id));
            } else {
                people.push(person);
            }
            if people.len() > MOST_PEOPLE {
                problems.push(format!("more than {MOST_PEOPLE} people"));
                break;
            }
        }
        if people.is_empty() && problems.is_empty() {
            problems.push("there is nobody on this register".to_owned());
        }
        if problems.is_empty() {
            return Ok(Register { people });
        }
        let more = problems.len().saturating_sub(MOST_TOLD);
        problems.truncate(MOST_TOLD);
        if more > 0 {
            problems.push(format!("and {more} more"));
        }
        Err(RegisterError(problems))
    }

    /// The person with this id.
    pub fn person(&self, id: &str) -> Option<&Person> {
        self.people.iter().find(|person| person.id == id)
    }
}

/// What is said of a file that is no text: in which field it stops to be one, and what would be right.
fn no_text(error: &NoText) -> String {
    let (before, what) = match error {
        NoText::NotUtf8 { before, byte } => (before, format!("the byte {byte:02X} is no UTF-8")),
        NoText::NotUtf16 { before } => (before, "this is no UTF-16, as which the file begins".to_owned()),
        NoText::Kind(_) => return format!("{error}; a register is a CSV file: export the table as one"),
    };
    let (line, column) = (before.line(), before.column());
    format!(
        "line {line}, column {column}, {}: {what}; save the file as UTF-8, which spreadsheets call \"CSV UTF-8\"",
        field_at_end(before)
    )
}

/// The field that a register's text breaks off in, with what there is of it.
fn field_at_end(Before(text): &Before) -> String {
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .delimiter(delimiter(text))
        .flexible(true)
        .from_reader(text.as_bytes());
    let records: Vec<csv::StringRecord> = reader.records().flatten().collect();
    let (Some(head), Some(last)) = (records.first(), records.last()) else {
        return "at the beginning".to_owned();
    };
    if text.ends_with('\n') {
        return "at the beginning of the line".to_owned();
    }
    let begins: String = last.iter().next_back().unwrap_or_default().trim().chars().take(40).collect();
    match head.get(last.len() - 1).filter(|_| records.len() > 1) {
        Some(name) => format!("field `{}`, after \"{}\"", visible(name.trim()), visible(&begins)),
        None => format!("after \"{}\"", visible(&begins)),
    }
}

/// Some spreadsheets write semicolons, and tabs where they write UTF-16.
fn delimiter(text: &str) -> u8 {
    let head = text.lines().next().unwrap_or("");
    match (head.contains(','), head.contains(';'), head.contains('\t')) {
        (false, true, _) => b';',
        (false, false, true) => b'\t',
        _ => b',',
    }
}

/// What is said of a row that has more fields than the head: most likely the delimiter stands in a name, which would be cut short. Empty
/// fields at the end, which some spreadsheets write, cut nothing.
fn too_many(record: &csv::StringRecord, head: usize, name: usize, delimiter: u8) -> Option<String> {
    let fields = record
        .iter()
        .enumerate()
        .filter(|(_, field)| !field.is_empty())
        .last()
        .map_or(0, |(last, _)| last + 1);
    if fields <= head {
        return None;
    }
    let (mark, word) = match delimiter {
        b';' => ("; ", "semicolon"),
        b'\t' => ("\t", "tab"),
        _ => (", ", "comma"),
    };
    // The name as it was meant, if all that is too much belongs to it.
    let whole: Vec<&str> = record.iter().skip(name).take(fields - head + 1).collect();
    let whole: String = whole.join(mark).chars().take(60).collect();
    Some(format!(
        "{fields} fields, and the head has {head}: where a {word} belongs to `name`, put the name in quotation marks, \"{}\"",
        visible(&whole)
    ))
}

fn problem_of(person: &Person) -> Option<String> {
    let Person { id, name } = person;
    let plain = |c: char| c.is_ascii_alphanumeric() || matches!(c, '-' | '_' | '.');
    let shown: String = id.chars().take(40).collect();
    // Some systems keep these names for devices.
    let stem = id.split('.').next().unwrap_or("").to_ascii_lowercase();
    let device = matches!(stem.as_str(), "con" | "prn" | "aux" | "nul")
        || (stem.len() == 4
            && (stem.starts_with("com") || stem.starts_with("lpt"))
            && stem.ends_with(|c: char| c.is_ascii_digit()));
    if id.is_empty() {
        Some(format!("`{}` has no id", visible(&name.chars().take(40).collect::<String>())))
    } else if !id.chars().all(plain)
        || id.starts_with('.')
        || id.ends_with('.')
        || id.chars().count() > MOST_IN_ID
        || device
    {
        Some(format!(
            "the id {shown:?} cannot name a file: it has up to {MOST_IN_ID} letters a to z, digits, `-`, `_` and `.`, no `.` at either end"
        ))
    } else if name.is_empty() {
        Some(format!("`{shown}` has no name"))
    } else if let Some(unseen) = name.chars().find(|c| is_unseen(*c)) {
        Some(unseen_in(&shown, unseen))
    } else if name.chars().count() > MOST_IN_NAME {
        Some(format!(
            "the `name` of `{shown}` has {} characters; a name has up to {MOST_IN_NAME}",
            name.chars().count()
        ))
    } else {
        None
    }
}

/// What is said of a name that holds a character nobody sees.
fn unseen_in(id: &str, unseen: char) -> String {
    let (what, right) = match unseen {
        '\n' | '\r' => {
            ("a line break", "write it in one line, and close its quotation marks where it has any")
        }
        '\t' => ("a tab", "write a space instead"),
        '\u{2028}'..='\u{2069}' => {
            ("a character that is not seen and changes how names are shown", "write the name without it")
        }
        _ => ("a control character", "write the name without it"),
    };
    format!("the `name` of `{id}` holds {what} (U+{:04X}); {right}", u32::from(unseen))
}
