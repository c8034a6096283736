//! `healedhue practise`: a session of exercises in the terminal.
//!
//! Steps: open the record of progress (`record`); let the session (`assess::session`) choose and make the exercise that is needed most;
//! ask it (`telling`), mark the answer, keep the record, tell what would have followed; at the end a summary (`summing`). What comes
//! next and what an answer is worth is decided by the session. Keyboard only (`keyboard`); words only where there is no colour.

mod clock;
mod keyboard;
mod lock;
mod record;
mod summing;
mod telling;

use super::CourseFolder;
use super::lines::named;
use super::problem::{Problem, impossible};
use super::terminal::{Painter, When, width, wrapped};
use super::whole;
use crate::assess::knowledge::{MOST_STEPS, Parameters, Progress, Seconds};
use crate::assess::session::{Session, minutes_of};
use crate::course::{Course, Drill, Lesson, Stands, load, nearest, quoted};
use crate::exercise::{Answer, Choice, Exercise};
use crate::say;
use clock::Clock;
use keyboard::{Heard, Keyboard};
use record::Record;
use std::io::Write;
use std::path::PathBuf;
use telling::{Telling, how_to_answer, once_more};

/// Type your answer and press Enter; q ends the session, and so does Ctrl-C. Each exercise is one of the skill you need most: what you know is estimated from
/// your answers, and fades with the days. Your progress is kept after every answer in a file of your own.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[command(flatten)]
    folder: CourseFolder,
    /// Exercises in the session; 6, unless --minutes is given.
    #[arg(long, value_name = "N", value_parser = whole::<u32>(1, 200), allow_hyphen_values = true)]
    count: Option<u32>,
    /// Minutes of the session: exercises are asked as long as another fits in.
    #[arg(long, value_name = "N", value_parser = whole::<u32>(1, 480), allow_hyphen_values = true)]
    minutes: Option<u32>,
    /// Only drills of this lesson.
    #[arg(long, value_name = "ID")]
    lesson: Option<String>,
    /// Only drills that train this skill.
    #[arg(long, value_name = "ID")]
    skill: Option<String>,
    /// File that your progress is kept in. Without it, one in the folder of your own data, which goes by the course's title.
    #[arg(long, value_name = "FILE", conflicts_with = "no_progress")]
    progress: Option<PathBuf>,
    /// Read and keep no progress.
    #[arg(long)]
    no_progress: bool,
    /// Seed of the session: the same seed, progress, time and answers give the same session. Without it, each session differs.
    #[arg(long, value_name = "N", value_parser = whole::<u64>(0, u64::MAX), allow_hyphen_values = true)]
    seed: Option<u64>,
    /// Seconds since 1970 at which the session begins; the clock then moves on by the minutes planned for each exercise.
    #[arg(long, hide = true, allow_negative_numbers = true)]
    now: Option<Seconds>,
    /// When to use colour.
    #[arg(long, value_name = "WHEN", default_value = "auto")]
    colour: When,
}

/// Exercises of a session for which neither a number nor minutes are given.
const USUAL_COUNT: u32 = 6;

pub(super) fn run(arguments: &Arguments) -> Result<(), Problem> {
    // Warnings are for the course's author, not for who practises.
    let loaded = load(&arguments.folder.course);
    let course = loaded.course.ok_or(Problem::Course(loaded.diagnostics))?;
    let drills = chosen(&course, arguments)?;
    let (record, progress) = if arguments.no_progress {
        (None, Progress::new())
    } else {
        let (record, progress) = Record::open(&course, arguments.progress.as_deref())?;
        (Some(record), progress)
    };
    let clock = Clock::new(arguments.now);
    let seed = arguments.seed.unwrap_or_else(seed_of_the_clock);
    let begun = clock.now();
    let count = match (arguments.count, arguments.minutes) {
        (Some(count), _) => Some(count),
        (None, Some(_)) => None,
        (None, None) => Some(USUAL_COUNT),
    };
    let mut sitting = Sitting {
        telling: Telling { course: &course, painter: Painter::new(arguments.colour) },
        session: Session::new(&course, drills, progress, Parameters::default(), seed, begun),
        stands: loaded.stands,
        record,
        clock,
        begun,
        count,
        minutes: arguments.minutes,
    };
    sitting.hold(&Keyboard::open(), &mut std::io::stdout().lock())
}

/// A seed from the clock: only for sessions that name none.
fn seed_of_the_clock() -> u64 {
    std::time::SystemTime::now()
        .duration_since(std::time::UNIX_EPOCH)
        .map_or(0, |since| since.as_nanos() as u64)
}

/// What is said of an id that the course does not have.
fn unknown(what: &str, id: &str, known: &[&str]) -> Problem {
    let all = known.join(", ");
    Problem::Use(match nearest(id, known.iter().copied()) {
        Some(meant) => format!("there is no {what} {}; did you mean `{meant}`? There are: {all}", quoted(id)),
        None => format!("there is no {what} {}; there are: {all}", quoted(id)),
    })
}

/// The drills that the arguments leave.
fn chosen<'c>(course: &'c Course, arguments: &Arguments) -> Result<Vec<(&'c Lesson, &'c Drill)>, Problem> {
    if let Some(id) = &arguments.lesson
        && course.lesson(id).is_none()
    {
        let known: Vec<&str> = course.lessons().map(|(_, lesson)| lesson.id.as_str()).collect();
        return Err(unknown("lesson", id, &known));
    }
    if let Some(id) = &arguments.skill
        && !course.skills.iter().any(|skill| &skill.id == id)
    {
        let known: Vec<&str> = course.skills.iter().map(|skill| skill.id.as_str()).collect();
        return Err(unknown("skill", id, &known));
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
    let shortest = drills.iter().map(|(_, drill)| minutes_of(drill)).fold(f64::INFINITY, f64::min);
    if let Some(minutes) = arguments.minutes
        && f64::from(minutes) < shortest
    {
        return Err(Problem::Use(format!(
            "no exercise fits into {minutes} minutes; the shortest here takes {shortest}"
        )));
    }
    Ok(drills)
}

/// A session at the terminal.
struct Sitting<'c> {
    telling: Telling<'c>,
    session: Session<'c>,
    stands: Stands,
    record: Option<Record>,
    clock: Clock,
    begun: Seconds,
    count: Option<u32>,
    minutes: Option<u32>,
}

/// What became of a question.
enum Asked {
    Answered,
    Ended,
}

impl Sitting<'_> {
    fn hold(&mut self, keyboard: &Keyboard, out: &mut impl Write) -> Result<(), Problem> {
        self.greet(out)?;
        let mut number = 0;
        while number < self.count.unwrap_or(MOST_STEPS as u32) {
            let left = self.minutes.map_or(f64::INFINITY, |minutes| f64::from(minutes) - self.passed());
            let made = self
                .session
                .next(left, self.clock.now())
                .map_err(|error| impossible(&[error], &self.stands))?;
            let Some(exercise) = made else {
                if self.minutes.is_some() && number > 0 {
                    writeln!(
                        out,
                        "\n{}",
                        wrapped(&say!(self.telling.course.language, "practice-fits-none"), 0)
                    )?;
                }
                break;
            };
            if keyboard.is_interrupted() {
                writeln!(out)?;
                break;
            }
            number += 1;
            write!(out, "\n{}{}", self.heading(number, &exercise), self.telling.question(&exercise))?;
            match self.ask(keyboard, out, &exercise) {
                Ok(Asked::Answered) => {}
                Ok(Asked::Ended) => break,
                // What went wrong is told after what the session has shown.
                Err(problem @ (Problem::File { .. } | Problem::Input(_))) => {
                    self.part(out)?;
                    return Err(problem);
                }
                Err(problem) => return Err(problem),
            }
        }
        self.part(out)?;
        if let Some(record) = self.record.as_ref().filter(|_| self.session.answers() > 0) {
            // Never broken, so that it can be copied.
            let kept = say!(self.telling.course.language, "terminal-kept");
            writeln!(out, "{kept}\n  {}", named(record.path()))?;
        }
        Ok(())
    }

    /// Minutes since the session began.
    fn passed(&self) -> f64 {
        self.clock.now().saturating_sub(self.begun).max(0) as f64 / 60.0
    }

    fn greet(&self, out: &mut impl Write) -> Result<(), Problem> {
        let course = self.telling.course;
        let language = &course.language;
        let exercises = |count: u32| say!(language, "terminal-exercises", count = count);
        let extent = match (self.count, self.minutes) {
            (Some(count), Some(minutes)) => {
                say!(language, "terminal-at-most", exercises = exercises(count), minutes = minutes)
            }
            (None, Some(minutes)) => say!(language, "terminal-minutes", minutes = minutes),
            (count, None) => exercises(count.unwrap_or(USUAL_COUNT)),
        };
        let greeting = say!(language, "terminal-greeting", course = &course.title, extent = extent);
        writeln!(out, "{}", wrapped(&greeting, 0))?;
        writeln!(out, "{}", wrapped(&say!(language, "terminal-promise"), 0))?;
        write!(out, "{}", summing::so_far(language, self.session.progress()))?;
        if let Some(minutes) = self.minutes {
            let mut steps = self.session.plan(f64::from(minutes), self.begun);
            steps.truncate(self.count.map_or(MOST_STEPS, |count| count as usize));
            write!(out, "{}", summing::plan(course, &steps))?;
        }
        Ok(())
    }

    fn part(&self, out: &mut impl Write) -> Result<(), Problem> {
        let summary = self.session.summary(self.clock.now());
        write!(out, "\n{}", summing::summary(self.telling.course, self.telling.painter, &summary))?;
        out.flush()?;
        Ok(())
    }

    fn heading(&self, number: u32, exercise: &Exercise) -> String {
        let language = &self.telling.course.language;
        let head = match (self.count, self.minutes) {
            (Some(count), _) => say!(language, "terminal-number", number = number, count = count),
            (None, Some(minutes)) => {
                let passed = self.passed().floor();
                say!(language, "terminal-number-minute", number = number, passed = passed, minutes = minutes)
            }
            (None, None) => number.to_string(),
        };
        let name = summing::skill_name(self.telling.course, &exercise.skill);
        let strong = self.telling.painter.strong(&head);
        if head.chars().count() + 2 + name.chars().count() <= width() {
            format!("{strong}  {name}\n")
        } else {
            format!("{strong}\n{}\n", wrapped(name, 2))
        }
    }

    /// Asks until there is an answer, keeps what it shows, and tells what follows from it.
    fn ask(
        &mut self,
        keyboard: &Keyboard,
        out: &mut impl Write,
        exercise: &Exercise,
    ) -> Result<Asked, Problem> {
        let language = &self.telling.course.language;
        let how = how_to_answer(language, &exercise.form);
        let prompt = wrapped(&say!(language, "terminal-prompt", how = how), 0);
        loop {
            write!(out, "{prompt} ")?;
            out.flush()?;
            let line = match keyboard.line()? {
                Heard::Line(line) if !line.is_empty() => line,
                // The prompt's line is still open.
                Heard::Line(_) | Heard::Interrupt => {
                    writeln!(out)?;
                    return Ok(Asked::Ended);
                }
            };
            // Whatever is typed, in whatever encoding, is an answer or is asked again.
            let line = String::from_utf8_lossy(&line).trim().to_lowercase();
            if line == "q" {
                return Ok(Asked::Ended);
            }
            if line == "?" {
                write!(out, "{}", self.telling.bottles(exercise))?;
                continue;
            }
            let marked = Answer::read(&exercise.form, &line)
                .and_then(|answer| self.session.answer(exercise, &answer, self.clock.now()));
            if marked.is_ok()
                && let Some((_, drill)) = self.telling.course.drill(&exercise.drill)
            {
                self.clock.pass(minutes_of(drill));
            }
            match marked {
                Ok(chosen) => return self.tell(out, exercise, &chosen).map(|()| Asked::Answered),
                Err(error) => {
                    let again = once_more(language, &exercise.form, &error);
                    writeln!(out, "{}", wrapped(&again, 0))?;
                }
            }
        }
    }

    /// Keeps the record first: whoever has seen what follows has the answer kept.
    fn tell(&self, out: &mut impl Write, exercise: &Exercise, chosen: &Choice) -> Result<(), Problem> {
        let kept = self.record.as_ref().map_or(Ok(()), |record| record.keep(self.session.progress()));
        write!(out, "\n{}", self.telling.answer(exercise, chosen))?;
        out.flush()?;
        kept
    }
}
