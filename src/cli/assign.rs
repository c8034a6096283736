//! `healedhue assign`: lessons and practice for named people, and their slips marked.
//!
//! Steps: read the course and the assignment; make everybody's set of exercises and write a folder for each person; or, with `--collect`,
//! take slips in as every command does ([`super::slips`]), make the sets again and mark the answers against them. What is printed is in the course's
//! language; errors and notes are not.

mod telling;

use super::CourseFolder;
use super::cache::{Cache, CacheFolder};
use super::lines::{named, print};
use super::mark::open_book;
use super::problem::{Problem, impossible};
use super::slips::{
    Counting, Found, Handed, Intake, Marked, Marker, Refused, tell_refused, told_passed_over,
};
use crate::assess::assigned::{
    AssignmentSlip, Collected, Identity, SlipMarked, lesson_pools, mark_assigned, practice_sets,
};
use crate::assess::{BookError, MarkBook, Recorded, SlipError, visible};
use crate::course::{Assignment, Course, Stands, load, read_assignment};
use crate::exercise::{GenerateError, Proofs};
use crate::render::AssignedFolder;
use crate::say;
use serde::Serialize;
use std::io::Write;
use std::path::{Path, PathBuf};
use telling::told;

/// Writes a folder for each person named in FILE: their lessons and their own exercises on pages that work without a network. With
/// --collect, marks the answer slips that come back.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// Assignments (YAML): id, title, due, modules or lessons, people. Files, or folders, of which all .yaml files are read.
    #[arg(value_name = "FILE", required = true)]
    files: Vec<PathBuf>,
    #[command(flatten)]
    folder: CourseFolder,
    /// Folder to write, or of several assignments the one that gets a folder for each; assigned/ID without it.
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
    /// Print JSON: {marked: [...], missing: [...], misconceptions: [...], refused: [{file, why}], passed_over: [{file, why}]}; of several
    /// assignments {assignments: [{assignment, marked, missing, misconceptions}], refused, passed_over}.
    #[arg(long, requires = "collect")]
    json: bool,
    #[command(flatten)]
    cache: CacheFolder,
}

pub(super) fn run(arguments: &Arguments) -> Result<(), Problem> {
    // Warnings are for the course's author, not for who assigns it.
    let loaded = load(&arguments.folder.course);
    let course = loaded.course.ok_or(Problem::Course(loaded.diagnostics))?;
    let assignments = read_all(&arguments.files, &course)?;
    let cache = arguments.cache.open(&arguments.folder);
    if arguments.collect.is_empty() {
        hand_out((&course, &cache), &loaded.stands, &assignments, arguments)
    } else {
        take_in((&course, &cache), &assignments, arguments)
    }
}

/// Every assignment in these files and folders; each has an id of its own.
fn read_all(paths: &[PathBuf], course: &Course) -> Result<Vec<Assignment>, Problem> {
    let mut problems = Vec::new();
    let mut read: Vec<(PathBuf, Assignment)> = Vec::new();
    for file in files_among(paths)? {
        let text = super::input::read_text(&file)?;
        match read_assignment(&file.to_string_lossy(), &text, course) {
            Err(found) => problems.extend(found),
            Ok(assignment) => match read.iter().find(|(_, known)| known.id == assignment.id) {
                Some((first, _)) => {
                    return Err(Problem::Input(format!(
                        "{}: {} has the id `{}` too; every assignment has its own",
                        named(&file),
                        named(first),
                        assignment.id
                    )));
                }
                None => read.push((file, assignment)),
            },
        }
    }
    if !problems.is_empty() {
        return Err(Problem::Course(problems));
    }
    Ok(read.into_iter().map(|(_, assignment)| assignment).collect())
}

/// The files named, and those ending in .yaml or .yml of folders, by name.
fn files_among(paths: &[PathBuf]) -> Result<Vec<PathBuf>, Problem> {
    let mut files = Vec::new();
    for path in paths {
        if !path.is_dir() {
            files.push(path.clone());
            continue;
        }
        let failed = |source| Problem::File { path: path.clone(), source };
        let entries = std::fs::read_dir(path).map_err(failed)?;
        let entries = entries.map(|entry| Ok(entry?.path())).collect::<std::io::Result<Vec<PathBuf>>>();
        let mut inside: Vec<PathBuf> = entries
            .map_err(failed)?
            .into_iter()
            .filter(|file| file.extension().is_some_and(|ending| ending == "yaml" || ending == "yml"))
            .collect();
        if inside.is_empty() {
            return Err(Problem::Input(format!(
                "{}: there is no assignment here: no .yaml file",
                named(path)
            )));
        }
        inside.sort();
        files.extend(inside);
    }
    Ok(files)
}

/// An assignment on its way out.
struct Outgoing<'a> {
    assignment: &'a Assignment,
    out: PathBuf,
    folder: AssignedFolder,
}

fn hand_out(
    (course, cache): (&Course, &Cache),
    stands: &Stands,
    assignments: &[Assignment],
    arguments: &Arguments,
) -> Result<(), Problem> {
    // All before the long work, so that a wrong folder is refused at once.
    let outgoing: Vec<Outgoing> = assignments
        .iter()
        .map(|assignment| {
            let out = match &arguments.out {
                Some(out) if assignments.len() == 1 => out.clone(),
                Some(out) => out.join(&assignment.id),
                None => Path::new("assigned").join(&assignment.id),
            };
            let folder = AssignedFolder::check(&out, arguments.replace)?;
            Ok(Outgoing { assignment, out, folder })
        })
        .collect::<Result<_, Problem>>()?;
    let written = outgoing.iter().try_for_each(|one| write_out((course, cache), stands, one));
    cache.save();
    written?;
    print(say!(course.language, "assign-told-next"))
}

fn write_out(
    (course, cache): (&Course, &Cache),
    stands: &Stands,
    Outgoing { assignment, out, folder }: &Outgoing,
) -> Result<(), Problem> {
    let told = |errors: Vec<GenerateError>| impossible(&errors, stands);
    let pools = lesson_pools(course, assignment, &cache.proofs).map_err(told)?;
    let sets = practice_sets(course, assignment, &cache.proofs).map_err(told)?;
    let written = folder.write(course, &pools, assignment, &sets)?;
    let language = &course.language;
    print(say!(
        language,
        "assign-told-pages",
        title = visible(&assignment.title).into_owned(),
        date = language.date(assignment.due),
        pages = written.pages,
        folder = named(out)
    ))?;
    for (person, set) in assignment.people.iter().zip(&sets) {
        let page = out.join(&person.id).join("index.html");
        let exercises = say!(language, "assignment-exercises", count = set.exercises.len());
        print(format_args!("  {}: {exercises}, {}", visible(&person.name), named(&page)))?;
    }
    Ok(())
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

/// Marks slips of assignments.
struct Sets<'c> {
    course: &'c Course,
    assignments: &'c [Assignment],
    proofs: &'c Proofs,
}

impl Sets<'_> {
    /// The assignment that something belongs to, or why it cannot be marked. One that is collected alone says itself what is not its own.
    fn assignment(&self, of: &Identity) -> Result<&Assignment, String> {
        match self.assignments {
            [only] => Ok(only),
            all => all.iter().find(|assignment| assignment.id == of.assignment).ok_or_else(|| {
                let found: String = of.assignment.chars().take(40).collect();
                format!("this slip belongs to the assignment `{found}`, which is none of those collected")
            }),
        }
    }

    /// The same of a slip that is marked, and so belongs to one.
    fn known(&self, of: &Identity) -> &Assignment {
        self.assignment(of).unwrap_or(&self.assignments[0])
    }
}

impl Marker for Sets<'_> {
    type Slip = AssignmentSlip;
    type Marks = SlipMarked;

    /// A set is made again for each slip by itself.
    fn prepare<'s>(&mut self, _: impl Iterator<Item = &'s AssignmentSlip>) {}

    fn mark(&self, slip: &AssignmentSlip) -> Result<SlipMarked, String> {
        mark_assigned(self.course, self.assignment(&slip.identity)?, slip, self.proofs)
            .map_err(|error| error.to_string())
    }

    fn name(&self, of: &Identity) -> Option<String> {
        Some(self.assignment(of).ok()?.person(&of.person)?.name.clone())
    }

    fn holds(&self, book: &MarkBook, of: &Identity) -> Result<bool, BookError> {
        match self.assignment(of) {
            Ok(assignment) => book.holds_practice(assignment, of),
            Err(_) => Ok(false),
        }
    }

    fn record(
        &self,
        book: &mut MarkBook,
        _: &AssignmentSlip,
        marks: &SlipMarked,
        another: bool,
    ) -> Result<Recorded, BookError> {
        book.record_practice(self.known(&marks.identity), marks, another)
    }
}

/// What came back of an assignment, in JSON.
#[derive(Serialize)]
struct CameBack {
    /// In the order of the assignment's people.
    marked: Vec<Marked<SlipMarked>>,
    #[serde(flatten)]
    together: Collected,
}

/// What came back in all, in JSON: of a single assignment without its id.
#[derive(Serialize)]
struct AllBack<'a> {
    #[serde(flatten)]
    of: OfOneOrMore<'a>,
    refused: Vec<Refused>,
    passed_over: Vec<Refused>,
}

#[derive(Serialize)]
#[serde(untagged)]
enum OfOneOrMore<'a> {
    One(CameBack),
    More { assignments: Vec<NamedBack<'a>> },
}

#[derive(Serialize)]
struct NamedBack<'a> {
    assignment: &'a str,
    #[serde(flatten)]
    back: CameBack,
}

fn take_in(
    (course, cache): (&Course, &Cache),
    assignments: &[Assignment],
    arguments: &Arguments,
) -> Result<(), Problem> {
    let found = Found::among(&arguments.collect, arguments.json)?;
    let mut book = arguments.book.as_deref().map(open_book).transpose()?;
    let mut sets = Sets { course, assignments, proofs: &cache.proofs };
    let counting = Counting { empty: arguments.empty, another: arguments.second_attempt };
    let (mut all, mut refused) = (Vec::new(), Vec::new());
    let intake = Intake::new(&mut sets, &found.slips, book.as_ref(), counting)?;
    let taken = intake.take(book.as_mut(), |path, one| {
        match one {
            Ok((marks, recorded)) => all.push(Marked::new(path, recorded, marks)),
            Err(why) => refused.push(tell_refused(path, &why, arguments.json)),
        }
        Ok(())
    });
    cache.save();
    taken?;
    let mut back = Vec::new();
    for assignment in assignments {
        let (mut marked, others): (Vec<_>, Vec<_>) =
            all.into_iter().partition(|one| one.marks.identity.assignment == assignment.id);
        all = others;
        marked.sort_by_key(|one| assignment.people.iter().position(|person| person.id == one.marks.person));
        let together = Collected::of(assignment, marked.iter().map(|one| &one.marks));
        back.push((assignment, CameBack { marked, together }));
    }
    let is_refused = !refused.is_empty();
    let mut out = std::io::stdout().lock();
    if arguments.json {
        let passed_over = told_passed_over(&found.passed_over);
        let of = match <[_; 1]>::try_from(back) {
            Ok([(_, back)]) => OfOneOrMore::One(back),
            Err(back) => {
                let back = back.into_iter();
                let assignments =
                    back.map(|(assignment, back)| NamedBack { assignment: &assignment.id, back }).collect();
                OfOneOrMore::More { assignments }
            }
        };
        serde_json::to_writer_pretty(&mut out, &AllBack { of, refused, passed_over })
            .map_err(std::io::Error::from)?;
        writeln!(out)?;
    } else {
        for (assignment, back) in &back {
            write!(out, "{}", told(course, assignment, back))?;
        }
    }
    out.flush()?;
    if is_refused { Err(Problem::Reported) } else { Ok(()) }
}
