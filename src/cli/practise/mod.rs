//! `healedhue practise`: a session of exercises in the terminal.
//!
//! Steps: pick the skill most in need, make and prove an exercise for it, ask, mark, show what would have followed; at the end
//! a summary. Keyboard only; words only where there is no colour.

mod telling;

use super::CourseFolder;
use super::cache::{Cache, CacheFolder};
use super::problem::Problem;
use super::terminal::{Painter, When, wrapped};
use crate::course::{Course, Drill, Lesson, load};
use crate::exercise::{Answer, AnswerError, Exercise, outcome};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::collections::BTreeMap;
use std::io::{BufRead, Write};
use telling::{Telling, how_to_answer};

/// Type your answer and press Enter; q ends the session.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[command(flatten)]
    folder: CourseFolder,
    /// Exercises in the session.
    #[arg(long, default_value_t = 6, value_parser = clap::value_parser!(u32).range(1..=200))]
    count: u32,
    /// Only drills of this lesson.
    #[arg(long, value_name = "ID")]
    lesson: Option<String>,
    /// Only drills that train this skill.
    #[arg(long, value_name = "ID")]
    skill: Option<String>,
    /// Seed of the session; the same seed and answers give the same session. Without it, each session differs.
    #[arg(long)]
    seed: Option<u64>,
    /// When to use colour.
    #[arg(long, value_name = "WHEN", default_value = "auto")]
    colour: When,
    #[command(flatten)]
    cache: CacheFolder,
}

/// What a session knows of one skill.
#[derive(Debug, Default)]
struct Record {
    asked: u32,
    credit: f64,
}

pub(super) fn run(arguments: &Arguments) -> Result<(), Problem> {
    // Warnings are for the course's author, not for who practises.
    let loaded = load(&arguments.folder.course);
    let course = loaded.course.ok_or(Problem::Course(loaded.diagnostics))?;
    let drills = chosen(&course, arguments)?;
    let seed = arguments.seed.unwrap_or_else(rand_seed);
    let cache = arguments.cache.open(&arguments.folder);
    let mut session = Session {
        course: &course,
        cache: &cache,
        drills,
        rng: ChaCha8Rng::seed_from_u64(seed),
        telling: Telling { course: &course, painter: Painter::new(arguments.colour) },
        records: BTreeMap::new(),
        // Numbers beyond those the study pages show.
        next: 1_000,
        numbers: BTreeMap::new(),
        last_client: None,
    };
    let mut input = std::io::stdin().lock();
    let mut out = std::io::stdout().lock();
    writeln!(
        out,
        "{}",
        wrapped(
            &format!(
                "{}: practice, {} exercises. Type your answer and press Enter; q ends the session.",
                course.title, arguments.count
            ),
            0
        )
    )?;
    writeln!(
        out,
        "{}",
        wrapped("Colours are predictions for teaching, never a promise of a result on a person.", 0)
    )?;
    for number in 1..=arguments.count {
        let (lesson, drill) = session.pick();
        let exercise = session.make(lesson, drill)?;
        write!(out, "\n{}", session.question(number, arguments.count, &exercise))?;
        if !ask(&mut input, &mut out, &exercise, &mut session)? {
            break;
        }
    }
    cache.save();
    write!(out, "\n{}", session.summary())?;
    Ok(())
}

/// A seed from the clock: only for sessions that name none.
fn rand_seed() -> u64 {
    std::time::SystemTime::now()
        .duration_since(std::time::UNIX_EPOCH)
        .map_or(0, |since| since.as_nanos() as u64)
}

/// The drills that the arguments leave.
fn chosen<'c>(course: &'c Course, arguments: &Arguments) -> Result<Vec<(&'c Lesson, &'c Drill)>, Problem> {
    if let Some(id) = &arguments.lesson
        && course.lesson(id).is_none()
    {
        let known: Vec<&str> = course.lessons().map(|(_, lesson)| lesson.id.as_str()).collect();
        return Err(Problem::Use(format!("there is no lesson `{id}`; there are: {}", known.join(", "))));
    }
    if let Some(id) = &arguments.skill
        && !course.skills.iter().any(|skill| &skill.id == id)
    {
        let known: Vec<&str> = course.skills.iter().map(|skill| skill.id.as_str()).collect();
        return Err(Problem::Use(format!("there is no skill `{id}`; there are: {}", known.join(", "))));
    }
    let drills: Vec<_> = course
        .drills()
        .filter(|(lesson, drill)| {
            arguments.lesson.as_ref().is_none_or(|id| id == &lesson.id)
                && arguments.skill.as_ref().is_none_or(|id| id == &drill.skill)
        })
        .collect();
    if drills.is_empty() {
        return Err(Problem::Use("no drill trains that; leave out --lesson or --skill".to_owned()));
    }
    Ok(drills)
}

/// Asks until there is an answer, and tells what follows from it. `false` ends the session.
fn ask(
    input: &mut impl BufRead,
    out: &mut impl Write,
    exercise: &Exercise,
    session: &mut Session,
) -> Result<bool, Problem> {
    let how = how_to_answer(&exercise.form);
    loop {
        write!(out, "Your answer ({how}, q to end): ")?;
        out.flush()?;
        let mut line = Vec::new();
        if input.read_until(b'\n', &mut line)? == 0 {
            writeln!(out)?;
            return Ok(false);
        }
        // Whatever is typed, in whatever encoding, is an answer or is asked again.
        let line = String::from_utf8_lossy(&line).trim().to_lowercase();
        if line == "q" {
            return Ok(false);
        }
        let told = Answer::read(&exercise.form, &line).and_then(|answer| session.answer(exercise, &answer));
        match told {
            Ok(told) => {
                write!(out, "\n{told}")?;
                out.flush()?;
                return Ok(true);
            }
            Err(error) => {
                writeln!(out, "{}", wrapped(&format!("Please answer with {how}, or q: {error}."), 0))?
            }
        }
    }
}

/// Exercises made in search of another client.
const MOST_TRIES: u32 = 4;

struct Session<'c> {
    course: &'c Course,
    cache: &'c Cache,
    drills: Vec<(&'c Lesson, &'c Drill)>,
    rng: ChaCha8Rng,
    telling: Telling<'c>,
    records: BTreeMap<&'c str, Record>,
    next: u32,
    numbers: BTreeMap<&'c str, u32>,
    last_client: Option<String>,
}

impl<'c> Session<'c> {
    /// A drill, the likelier the less its skill has been shown.
    fn pick(&mut self) -> (&'c Lesson, &'c Drill) {
        let need = |drill: &Drill| {
            let record = self.records.get(drill.skill.as_str());
            let (asked, credit) =
                record.map_or((0.0, 0.0), |record| (f64::from(record.asked), record.credit));
            // One imagined half-right answer stands for what is not known yet.
            1.0 - (credit + 0.5) / (asked + 1.0) + 0.1
        };
        let total: f64 = self.drills.iter().map(|(_, drill)| need(drill)).sum();
        let mut at = self.rng.random::<f64>() * total;
        for &(lesson, drill) in &self.drills {
            at -= need(drill);
            if at <= 0.0 {
                return (lesson, drill);
            }
        }
        self.drills[self.drills.len() - 1]
    }

    /// A new exercise of a drill, from a random place of its pool; with another client than the last, where there is one.
    fn make(&mut self, lesson: &'c Lesson, drill: &'c Drill) -> Result<Exercise, Problem> {
        let first = self.next + self.rng.random_range(0..1_000_000_u32);
        let number = self.numbers.entry(&drill.id).or_insert(first);
        let mut tries = 0;
        loop {
            *number += 1;
            tries += 1;
            let made = self.cache.proofs.generate(self.course, lesson, drill, *number);
            let exercise = made.map_err(|error| Problem::Drills(vec![error]))?;
            let client = exercise.case.as_ref().map(|case| case.client.clone());
            if client.is_none() || client != self.last_client || tries == MOST_TRIES {
                self.last_client = client;
                return Ok(exercise);
            }
        }
    }

    fn question(&self, number: u32, count: u32, exercise: &Exercise) -> String {
        let skill = self.course.skills.iter().find(|skill| skill.id == exercise.skill);
        let head = self.telling.painter.strong(&format!("{number} of {count}"));
        let name = skill.map_or(exercise.skill.as_str(), |skill| &skill.name);
        format!("{head}  {name}\n{}", self.telling.question(exercise))
    }

    /// Marks an answer, notes it and tells what follows.
    fn answer(&mut self, exercise: &Exercise, answer: &Answer) -> Result<String, AnswerError> {
        let chosen = outcome(self.course, exercise, answer)?;
        if let Some(skill) = self.course.skills.iter().find(|skill| skill.id == exercise.skill) {
            let record = self.records.entry(&skill.id).or_default();
            record.asked += 1;
            record.credit += chosen.mark.credit;
        }
        Ok(self.telling.answer(exercise, &chosen))
    }

    fn summary(&self) -> String {
        if self.records.is_empty() {
            return "No exercise was answered.\n".to_owned();
        }
        let mut text = self.telling.painter.strong("Summary") + "\n";
        for skill in &self.course.skills {
            if let Some(record) = self.records.get(skill.id.as_str()) {
                let share = 100.0 * record.credit / f64::from(record.asked);
                text += &format!("  {share:3.0}%  of {} asked: {}\n", record.asked, skill.name);
            }
        }
        text
    }
}
