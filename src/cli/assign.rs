//! `healedhue assign`: lessons and practice for named people, and their slips marked.
//!
//! Steps: read the course and the assignment; make everybody's set of exercises and write a folder for each person; or, with `--collect`,
//! take slips in as every command does ([`super::slips`]), make the sets again and mark the answers against them.

use super::CourseFolder;
use super::belief::belief_in_words;
use super::lines::{counted, named, print};
use super::mark::open_book;
use super::problem::{Problem, impossible};
use super::slips::{
    Counting, Found, Handed, Intake, Marked, Marker, Refused, tell_refused, told_passed_over,
};
use super::terminal::{Painter, wrapped};
use crate::assess::assigned::{
    AssignmentSlip, Collected, Identity, SlipMarked, lesson_pools, mark_assigned, practice_sets,
};
use crate::assess::{BookError, MarkBook, Recorded, SlipError, visible};
use crate::course::{Assignment, Course, Stands, load, read_assignment};
use crate::exercise::GenerateError;
use crate::render::AssignedFolder;
use serde::Serialize;
use std::io::Write;
use std::path::{Path, PathBuf};

/// Writes a folder for each person named in FILE: their lessons and their own exercises on pages that work without a network. With
/// --collect, marks the answer slips that come back.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// The assignment (YAML): id, title, due, modules or lessons, people.
    #[arg(value_name = "FILE")]
    file: PathBuf,
    #[command(flatten)]
    folder: CourseFolder,
    /// Folder to write; assigned/ID without it.
    #[arg(long, value_name = "FOLDER", conflicts_with = "collect")]
    out: Option<PathBuf>,
    /// Replace what an earlier run wrote to the folder.
    #[arg(long, conflicts_with = "collect")]
    replace: bool,
    /// Mark these slips instead: files, or folders, of which all .json and .txt files are read, those in folders below too.
    #[arg(long, value_name = "SLIP", num_args = 1..)]
    collect: Vec<PathBuf>,
    /// Mark book to record the marks in, as practice; it is begun where there is none.
    #[arg(long, value_name = "FILE", requires = "collect")]
    book: Option<PathBuf>,
    /// Record another slip of a person for the same set as a further attempt.
    #[arg(long, requires = "book")]
    second_attempt: bool,
    /// Mark slips without any answer too.
    #[arg(long, requires = "collect")]
    empty: bool,
    /// Print JSON: {marked: [...], missing: [...], misconceptions: [...], refused: [{file, why}], passed_over: [{file, why}]}.
    #[arg(long, requires = "collect")]
    json: bool,
}

pub(super) fn run(arguments: &Arguments) -> Result<(), Problem> {
    // Warnings are for the course's author, not for who assigns it.
    let loaded = load(&arguments.folder.course);
    let course = loaded.course.ok_or(Problem::Course(loaded.diagnostics))?;
    let text = super::input::read_text(&arguments.file)?;
    let assignment =
        read_assignment(&arguments.file.to_string_lossy(), &text, &course).map_err(Problem::Course)?;
    if arguments.collect.is_empty() {
        hand_out(&course, &loaded.stands, &assignment, arguments)
    } else {
        take_in(&course, &assignment, arguments)
    }
}

fn hand_out(
    course: &Course,
    stands: &Stands,
    assignment: &Assignment,
    arguments: &Arguments,
) -> Result<(), Problem> {
    let out = match &arguments.out {
        Some(out) => out.clone(),
        None => Path::new("assigned").join(&assignment.id),
    };
    // Before the long work, so that a wrong folder is refused at once.
    let folder = AssignedFolder::check(&out, arguments.replace)?;
    let told = |errors: Vec<GenerateError>| impossible(&errors, stands);
    let pools = lesson_pools(course, assignment).map_err(told)?;
    let sets = practice_sets(course, assignment).map_err(told)?;
    let written = folder.write(course, &pools, assignment, &sets)?;
    print(format_args!(
        "{}, due {}: {} in {}",
        visible(&assignment.title),
        assignment.due.in_words(),
        counted(written.pages, "page", "pages"),
        named(&out)
    ))?;
    for (person, set) in assignment.people.iter().zip(&sets) {
        let page = out.join(&person.id).join("index.html");
        let exercises = counted(set.exercises.len(), "exercise", "exercises");
        print(format_args!("  {}: {exercises}, {}", visible(&person.name), named(&page)))?;
    }
    print("give each person their folder; collect their slips with `healedhue assign FILE --collect SLIP…`")
}

impl Handed for AssignmentSlip {
    type Of = Identity;
    const FOR: &'static str = "assignment";
    const BLANK: &'static str = ": ask for the slip that is filled in, or mark this one with `--empty`";

    fn read(bytes: &[u8]) -> Result<Self, SlipError> {
        AssignmentSlip::read(bytes)
    }

    fn of(&self) -> &Identity {
        &self.identity
    }

    fn person(of: &Identity) -> &str {
        &of.person
    }

    fn is_blank(&self) -> bool {
        self.answers.iter().all(|answer| answer.trim().is_empty())
    }

    fn answers_digest(&self) -> String {
        AssignmentSlip::answers_digest(self)
    }
}

/// Marks slips of an assignment.
struct Sets<'c> {
    course: &'c Course,
    assignment: &'c Assignment,
}

impl Marker for Sets<'_> {
    type Slip = AssignmentSlip;
    type Marks = SlipMarked;

    /// A set is made again for each slip by itself.
    fn prepare<'s>(&mut self, _: impl Iterator<Item = &'s AssignmentSlip>) {}

    fn mark(&self, slip: &AssignmentSlip) -> Result<SlipMarked, String> {
        mark_assigned(self.course, self.assignment, slip).map_err(|error| error.to_string())
    }

    fn holds(&self, book: &MarkBook, of: &Identity) -> Result<bool, BookError> {
        book.holds_practice(self.assignment, of)
    }

    fn record(
        &self,
        book: &mut MarkBook,
        _: &AssignmentSlip,
        marks: &SlipMarked,
        another: bool,
    ) -> Result<Recorded, BookError> {
        book.record_practice(self.assignment, marks, another)
    }
}

/// What came back, in JSON.
#[derive(Serialize)]
struct CameBack {
    /// In the order of the assignment's people.
    marked: Vec<Marked<SlipMarked>>,
    #[serde(flatten)]
    together: Collected,
    refused: Vec<Refused>,
    passed_over: Vec<Refused>,
}

fn take_in(course: &Course, assignment: &Assignment, arguments: &Arguments) -> Result<(), Problem> {
    let found = Found::among(&arguments.collect, arguments.json)?;
    let mut book = arguments.book.as_deref().map(open_book).transpose()?;
    let mut sets = Sets { course, assignment };
    let counting = Counting { empty: arguments.empty, another: arguments.second_attempt };
    let (mut marked, mut refused) = (Vec::new(), Vec::new());
    Intake::new(&mut sets, &found.slips, book.as_ref(), counting)?.take(book.as_mut(), |path, one| {
        match one {
            Ok((marks, recorded)) => marked.push(Marked::new(path, recorded, marks)),
            Err(why) => refused.push(tell_refused(path, &why, arguments.json)),
        }
        Ok(())
    })?;
    marked.sort_by_key(|one| assignment.people.iter().position(|person| person.id == one.marks.person));
    let together = Collected::of(assignment, marked.iter().map(|one| &one.marks));
    let passed_over = told_passed_over(&found.passed_over);
    let came_back = CameBack { marked, together, refused, passed_over };
    let mut out = std::io::stdout().lock();
    if arguments.json {
        serde_json::to_writer_pretty(&mut out, &came_back).map_err(std::io::Error::from)?;
        writeln!(out)?;
    } else {
        write!(out, "{}", told(course, assignment, &came_back))?;
    }
    out.flush()?;
    if came_back.refused.is_empty() { Ok(()) } else { Err(Problem::Reported) }
}

/// The marks in words.
fn told(course: &Course, assignment: &Assignment, CameBack { marked, together, .. }: &CameBack) -> String {
    let painter = Painter::new(super::terminal::When::Auto);
    let (all, missing) = (assignment.people.len(), together.missing.len());
    let handed =
        format!("{}: {} of {} handed in.", assignment.title, all - missing, counted(all, "person", "people"));
    let mut text = wrapped(&visible(&handed), 0) + "\n";
    for one in marked {
        text += &person_told(course, painter, &one.marks);
    }
    if !together.missing.is_empty() {
        let names: Vec<&str> = together
            .missing
            .iter()
            .filter_map(|id| assignment.person(id))
            .map(|person| person.name.as_str())
            .collect();
        text += &(painter.strong("No slip marked") + "\n" + &wrapped(&visible(&names.join("; ")), 2) + "\n");
    }
    if !together.misconceptions.is_empty() {
        text += &(painter.strong("Beliefs that showed") + "\n");
        for count in &together.misconceptions {
            let Some(said) = belief_in_words(course, count) else { continue };
            let said = format!("{said}, by {} of {} people.", count.people_chosen, count.people_offered);
            text += &(wrapped(&said, 2) + "\n");
        }
    }
    text
}

fn person_told(course: &Course, painter: Painter, slip: &SlipMarked) -> String {
    let mut text = painter.strong(&visible(&slip.name)) + "\n";
    let said =
        format!("credit {:.0}%, {} of {} answered", slip.credit * 100.0, slip.answered, slip.answers.len());
    text += &(wrapped(&said, 2) + "\n");
    for answer in slip.answers.iter().filter(|answer| answer.credit < 1.0) {
        let given = if answer.answer.is_empty() { "blank".to_owned() } else { answer.answer.clone() };
        let consequence = if answer.answer.is_empty() { "" } else { &answer.consequence };
        let said = format!("{}. {given}, credit {:.0}%. {consequence}", answer.number, answer.credit * 100.0);
        text += &(wrapped(&said, 4) + "\n");
    }
    for habit in slip.misconceptions.iter().filter(|count| count.stands_out) {
        if let Some(found) = course.misconception(&habit.misconception) {
            text += &(wrapped(&format!("A habit, it seems: “{}”", found.belief), 2) + "\n");
        }
    }
    let titles: Vec<&str> = slip
        .reread
        .iter()
        .filter_map(|id| course.lesson(id))
        .map(|(_, lesson)| lesson.page.title.as_str())
        .collect();
    if !titles.is_empty() {
        text += &(wrapped(&format!("To reread: {}", titles.join("; ")), 2) + "\n");
    }
    text
}
