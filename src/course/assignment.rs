//! Assignments: the lessons and the practice that an instructor gives to named people.
//!
//! Entry point: [`read_assignment`]. An assignment is a YAML file outside the course, read as strictly as the course's own files.

use super::read::names::Thing;
use super::read::suggest::quoted;
use super::read::{Reader, assignment, yaml};
use super::source::{At, Place, Source};
use super::{Course, Diagnostic, Severity};
use std::fmt;

/// Lessons and practice for some people.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Assignment {
    /// Its id: part of every slip's identity.
    pub id: String,
    /// Its title.
    pub title: String,
    /// What the instructor says to it; may be empty.
    pub note: String,
    /// When it is due.
    pub due: Date,
    /// Ids of the lessons, in teaching order, each once.
    pub lessons: Vec<String>,
    /// Exercises in each person's practice set.
    pub exercises: u32,
    /// Seed of the practice sets, beside the course's own.
    pub seed: u64,
    /// Who it is for.
    pub people: Vec<Person>,
}

/// Somebody an assignment is for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Person {
    /// Id: lower-case words with hyphens, unique in the assignment.
    pub id: String,
    /// Name, as it is written: data, not markup.
    pub name: String,
}

/// A day of the calendar.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Date {
    /// Year, 1900 to 9999.
    pub year: u16,
    /// Month, from 1.
    pub month: u8,
    /// Day, from 1.
    pub day: u8,
}

impl Date {
    /// The date in a text of the form `2026-03-14` (ISO 8601), if there is such a day.
    ///
    /// ```
    /// use healedhue::course::Date;
    /// assert_eq!(Date::read("2028-02-29").map(Date::parts), Some((2028, 2, 29)));
    /// assert_eq!(Date::read("2026-02-29"), None);
    /// ```
    pub fn read(text: &str) -> Option<Self> {
        let parts: Vec<&str> = text.split('-').collect();
        let [year, month, day] = parts[..] else { return None };
        let digits = |text: &str, count: usize| {
            (text.len() == count && text.bytes().all(|byte| byte.is_ascii_digit()))
                .then(|| text.parse().ok())?
        };
        let (year, month, day): (u16, u16, u16) = (digits(year, 4)?, digits(month, 2)?, digits(day, 2)?);
        let leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
        let days = match month {
            2 if leap => 29,
            2 => 28,
            4 | 6 | 9 | 11 => 30,
            1..=12 => 31,
            _ => return None,
        };
        ((1900..=9999).contains(&year) && (1..=days).contains(&day)).then_some(Date {
            year,
            month: month as u8,
            day: day as u8,
        })
    }

    /// Year, month and day.
    pub fn parts(self) -> (u16, u8, u8) {
        (self.year, self.month, self.day)
    }
}

/// As in files: `2026-03-14`.
impl fmt::Display for Date {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

impl Assignment {
    /// The person with this id.
    pub fn person(&self, id: &str) -> Option<&Person> {
        self.people.iter().find(|person| person.id == id)
    }
}

/// Reads the text of an assignment for a course; `path` is what messages call the file.
///
/// # Errors
/// Everything that is wrong with it, each with its place; warnings too, where there is an error.
pub fn read_assignment(path: &str, text: &str, course: &Course) -> Result<Assignment, Vec<Diagnostic>> {
    let source = Source::new(path, text);
    let mut reader = Reader::default();
    name_lessons(course, &mut reader);
    let root = yaml::parse(&source, 0..source.text.len(), &mut reader.problems);
    let read = root.and_then(|root| assignment::read_assignment(&root, course, &mut reader));
    reader.check_references();
    let diagnostics = reader.problems.into_sorted();
    let sound = diagnostics.iter().all(|diagnostic| diagnostic.severity == Severity::Warning);
    match read.filter(|_| sound) {
        Some(assignment) => Ok(assignment),
        None => Err(diagnostics),
    }
}

/// Gives the names that the course has given already.
fn name_lessons(course: &Course, reader: &mut Reader) {
    let nowhere = Source::new("book.toml", "");
    let mut name = |thing: Thing, id: &str| {
        let id = At::new(id.to_owned(), Place::start_of(&nowhere));
        reader.names.declare(thing, &id, &mut reader.problems);
    };
    for module in &course.modules {
        name(Thing::Module, &module.id);
        for lesson in &module.lessons {
            name(Thing::Lesson, &lesson.id);
        }
    }
}

/// What may stand in a name, said of one that may not.
pub(crate) fn unfit_name(name: &str) -> Option<String> {
    const MOST: usize = 120;
    let turns =
        |c: char| matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{200e}' | '\u{200f}');
    if name.contains(turns) {
        Some("a name holds no characters that turn the direction of the text".to_owned())
    } else if name.contains(['\n', '\t']) {
        Some("a name is one line".to_owned())
    } else if name.chars().count() > MOST {
        Some(format!("{} is longer than {MOST} characters", quoted(name)))
    } else {
        None
    }
}
