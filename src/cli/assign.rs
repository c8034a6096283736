//! `healedhue assign`: lessons and practice for named people, and their slips marked.
//!
//! Steps: read the course and the assignment; make everybody's set of exercises and write a folder for each person; or, with `--collect`,
//! read slips, make the sets again and mark the answers against them.

use super::CourseFolder;
use super::belief::belief_in_words;
use super::input::within;
use super::lines::{counted, named, note, print};
use super::mark::open_book;
use super::problem::{Problem, impossible};
use super::terminal::{Painter, wrapped};
use crate::assess::assigned::{
    Collected, MOST_BYTES, Refused, SlipError, SlipMarked, collect, lesson_pools, practice_sets,
};
use crate::assess::{MarkBook, visible};
use crate::course::{Assignment, Course, Stands, load, read_assignment};
use crate::exercise::GenerateError;
use crate::render::AssignedFolder;
use std::fs;
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
    /// Mark these slips instead: files, or folders whose .json files are slips.
    #[arg(long, value_name = "SLIP", num_args = 1..)]
    collect: Vec<PathBuf>,
    /// Mark book to record the marks in, as practice; it is begun where there is none.
    #[arg(long, value_name = "FILE", requires = "collect")]
    book: Option<PathBuf>,
    /// Record another slip of a person for the same set as a further attempt.
    #[arg(long, requires = "book")]
    second_attempt: bool,
    /// The marks as JSON.
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

fn take_in(course: &Course, assignment: &Assignment, arguments: &Arguments) -> Result<(), Problem> {
    let mut slips = Vec::new();
    for path in &arguments.collect {
        for path in files_of(path)? {
            slips.push((path.display().to_string(), content(&path)));
        }
    }
    if slips.is_empty() {
        return Err(Problem::Input("there are no slips: no file in these folders ends in .json".to_owned()));
    }
    let book = arguments.book.as_deref().map(open_book).transpose()?;
    let mut collected = collect(course, assignment, &slips);
    if let Some(mut book) = book {
        record(&mut book, assignment, &mut collected, arguments.second_attempt);
    }
    let mut out = std::io::stdout().lock();
    if arguments.json {
        serde_json::to_writer_pretty(&mut out, &collected).map_err(std::io::Error::from)?;
        writeln!(out)?;
    } else {
        write!(out, "{}", told(course, assignment, &collected))?;
    }
    out.flush()?;
    for refused in &collected.refused {
        note(format_args!("error: {}: {}", visible(&refused.slip), visible(&refused.why)));
    }
    if collected.refused.is_empty() { Ok(()) } else { Err(Problem::Reported) }
}

/// Records every marked slip. One that the book refuses stays marked, and gets a line as refused.
fn record(book: &mut MarkBook, assignment: &Assignment, collected: &mut Collected, another: bool) {
    for marked in &collected.marked {
        if let Err(error) = book.record_practice(assignment, marked, another) {
            collected.refused.push(Refused { slip: marked.slip.clone(), why: error.to_string() });
        }
    }
}

/// A file by itself, or every `.json` file of a folder by name.
fn files_of(path: &Path) -> Result<Vec<PathBuf>, Problem> {
    if !path.is_dir() {
        return Ok(vec![path.to_owned()]);
    }
    let file = |source| Problem::File { path: path.to_owned(), source };
    let mut files = Vec::new();
    for entry in fs::read_dir(path).map_err(file)? {
        let path = entry.map_err(file)?.path();
        if path.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("json")) && path.is_file() {
            files.push(path);
        }
    }
    files.sort();
    Ok(files)
}

/// A slip's content. One that is too long is not read at all.
fn content(path: &Path) -> Result<Vec<u8>, SlipError> {
    let unreadable = |error: std::io::Error| {
        SlipError::Unreadable(match error.kind() {
            std::io::ErrorKind::NotFound => "there is no such file".to_owned(),
            _ => error.to_string(),
        })
    };
    // A stream has no length: of what is too long no more is read than shows it.
    let length = fs::metadata(path).map_err(unreadable)?.len().max(MOST_BYTES + 1);
    within(path, MOST_BYTES).map_err(unreadable)?.ok_or(SlipError::TooLong(length))
}

/// The marks in words.
fn told(course: &Course, assignment: &Assignment, collected: &Collected) -> String {
    let painter = Painter::new(super::terminal::When::Auto);
    let people = counted(assignment.people.len(), "person", "people");
    let handed = format!("{}: {} of {people} handed in.", assignment.title, collected.marked.len());
    let mut text = wrapped(&visible(&handed), 0) + "\n";
    for slip in &collected.marked {
        text += &person_told(course, painter, slip);
    }
    if !collected.missing.is_empty() {
        let names: Vec<&str> = collected
            .missing
            .iter()
            .filter_map(|id| assignment.person(id))
            .map(|person| person.name.as_str())
            .collect();
        text += &(painter.strong("No slip marked") + "\n" + &wrapped(&visible(&names.join("; ")), 2) + "\n");
    }
    if !collected.misconceptions.is_empty() {
        text += &(painter.strong("Beliefs that showed") + "\n");
        for count in &collected.misconceptions {
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
