//! Practice in a browser: a session behind plain functions that take texts and give texts (JSON).
//!
//! Entry point: [`Practice`]. Steps: [`read_course`] once; [`Practice::overview`] tells what a record of progress says;
//! [`Practice::begin`] a session; [`Practice::next`] asks, [`Practice::answer`] marks and tells what follows, until
//! [`Practice::summary`]. What comes next, what an answer is worth and what it shows is decided by [`crate::assess::session`], as in
//! the terminal; the same code runs natively, and a test compares the two.
//!
//! In a browser's module the functions pass texts through one buffer: `reserve(length)` makes room for a question and returns where it
//! starts; `course`, `overview`, `begin`, `next`, `reply` and `summary` return 1, or 0 where the answer is an error
//! `{"error": {"field", "why"}}`; `answer` and `answer_length` say where the answer lies.

mod ask;
#[cfg(all(target_arch = "wasm32", not(feature = "program")))]
mod exports;
mod question;
mod standing;
mod told;

pub use ask::{Begin, Given, NextAsked, Refusal, Reply};
pub use question::{
    BottleOffered, CaseView, FormView, GoalView, OldWorkView, OptionView, QuestionView, SwatchView,
};
pub use standing::{BeliefView, LessonCount, Overview, Planned, SkillChangeView, SkillView, SummaryView};
pub use told::{Answered, LaterView, LessonView, MisconceptionView, SkillNow, Told, WorthView};

use crate::assess::knowledge::{Parameters, Progress, Seconds, Unused};
use crate::assess::session::{Session, minutes_of};
use crate::course::{Course, Drill, Lesson};
use crate::exercise::Exercise;
use crate::language::Language;
use crate::say;
use ask::{At, read, refusal, written};

/// A course out of the JSON that a page takes along ([`Course`]), checked as far as exercises rely on it.
///
/// # Errors
/// A refusal in JSON when the text is no course.
pub fn read_course(text: &str) -> Result<Course, String> {
    let course: Course = read(text, "course")?;
    let count = course.shelf.colourants.len();
    let sound =
        |paint: &[(usize, f64)]| paint.iter().all(|(place, amount)| *place < count && amount.is_finite());
    let bottles = course.shelf.bottles.iter().all(|bottle| sound(&bottle.recipe));
    let works = course.clients.iter().flat_map(|client| &client.existing).all(|old| sound(&old.work.paint));
    if bottles && works {
        Ok(course)
    } else {
        Err(refusal("course", "a bottle or an older work names a colourant that is not there"))
    }
}

/// A session of practice with a course, its last question open.
pub struct Practice<'c> {
    course: &'c Course,
    sitting: Option<Sitting<'c>>,
}

struct Sitting<'c> {
    session: Session<'c>,
    /// The question that waits for an answer.
    open: Option<Exercise>,
}

impl<'c> Practice<'c> {
    /// Practice with this course; no session yet.
    pub fn new(course: &'c Course) -> Self {
        Practice { course, sitting: None }
    }

    /// An [`Overview`] for `{"progress", "now"}`: what is known by skill. An empty text is the record of a beginner.
    ///
    /// # Errors
    /// A refusal in JSON when the question is not understood; its field is `progress` when the record cannot be read.
    pub fn overview(&self, text: &str) -> Result<String, String> {
        let At { progress, now } = read(text, "request")?;
        let language = &self.course.language;
        let (progress, unused) = record(language, &progress)?;
        let notes = unused.iter().map(|note| note.said(language)).collect();
        Ok(written(&Overview::of(self.course, &progress, notes, now)))
    }

    /// Begins a session, in place of any other, for a [`Begin`]; answers `{"drills", "plan"}`: how many drills it draws on and, where
    /// there are minutes, what it would ask in them.
    ///
    /// # Errors
    /// A refusal in JSON; its field is `lesson` or `skill` where the course has none of that name or no drill for it.
    pub fn begin(&mut self, text: &str) -> Result<String, String> {
        let asked: Begin = read(text, "request")?;
        let drills = self.chosen(&asked)?;
        let (progress, _) = record(&self.course.language, &asked.progress)?;
        let session =
            Session::new(self.course, drills, progress, Parameters::default(), asked.seed, asked.now);
        let plan = asked.minutes.map(|minutes| Planned::of(self.course, &session, minutes, asked.now));
        let begun = written(&Begun { drills: session.drills(), plan: plan.unwrap_or_default() });
        self.sitting = Some(Sitting { session, open: None });
        Ok(begun)
    }

    /// The drills that a session may draw on.
    fn chosen(&self, asked: &Begin) -> Result<Vec<(&'c Lesson, &'c Drill)>, String> {
        let course = self.course;
        let language = &course.language;
        if let Some(id) = &asked.lesson
            && course.lesson(id).is_none()
        {
            return Err(refusal("lesson", &say!(language, "exercise-no-lesson", id = id)));
        }
        if let Some(id) = &asked.skill
            && !course.skills.iter().any(|skill| &skill.id == id)
        {
            return Err(refusal("skill", &say!(language, "exercise-no-skill", id = id)));
        }
        let drills: Vec<_> = course
            .drills()
            .filter(|(lesson, drill)| {
                asked.lesson.as_ref().is_none_or(|id| id == &lesson.id)
                    && asked.skill.as_ref().is_none_or(|id| id == &drill.skill)
            })
            .collect();
        if drills.is_empty() {
            let field = if asked.lesson.is_some() { "lesson" } else { "skill" };
            return Err(refusal(field, &language.say("exercise-no-drill", &[])));
        }
        Ok(drills)
    }

    /// The exercise that is needed most, as a [`QuestionView`], for a [`NextAsked`]; `null` where none fits into the minutes. Nothing in
    /// it says what is right.
    ///
    /// # Errors
    /// A refusal in JSON, also where there is no session, or no drill that could be satisfied.
    pub fn next(&mut self, text: &str) -> Result<String, String> {
        let asked: NextAsked = read(text, "request")?;
        let course = self.course;
        let sitting = self.sitting.as_mut().ok_or_else(no_session)?;
        let minutes = asked.minutes.unwrap_or(f64::INFINITY);
        let made = sitting
            .session
            .next(minutes, asked.now)
            .map_err(|error| refusal("drills", &error.to_string()))?;
        let view = made.as_ref().map(|exercise| {
            let minutes = course.drill(&exercise.drill).map_or(0.0, |(_, drill)| minutes_of(drill));
            QuestionView::of(course, exercise, minutes)
        });
        let text = written(&view);
        sitting.open = made;
        Ok(text)
    }

    /// Marks a [`Reply`] to the open question, notes it in the record, and tells what follows: a [`Told`].
    ///
    /// # Errors
    /// A refusal in JSON, its field `answer` where it is none to this question; nothing is noted then and the question stays open.
    pub fn answer(&mut self, text: &str) -> Result<String, String> {
        let reply: Reply = read(text, "request")?;
        let sitting = self.sitting.as_mut().ok_or_else(no_session)?;
        let exercise = sitting.open.as_ref().ok_or_else(|| refusal("answer", "no question is open"))?;
        let given = reply
            .answer
            .to(&exercise.form)
            .map_err(|error| refusal("answer", &error.said(&self.course.language)))?;
        let (session, now) = (&mut sitting.session, reply.now);
        if let Some(elsewhere) = &reply.progress {
            session.take_up(record(&self.course.language, elsewhere)?.0);
        }
        let before = session.progress().clone();
        let language = &self.course.language;
        let chosen = session
            .answer(exercise, &given, now)
            .map_err(|error| refusal("answer", &error.said(language)))?;
        let told = Told::of(self.course, exercise, &chosen, (&before, session.progress()), now);
        let text = written(&told);
        sitting.open = None;
        Ok(text)
    }

    /// What the session has shown so far, as a [`SummaryView`], for `{"now"}`.
    ///
    /// # Errors
    /// A refusal in JSON, also where there is no session.
    pub fn summary(&self, text: &str) -> Result<String, String> {
        let asked: NextAsked = read(text, "request")?;
        let sitting = self.sitting.as_ref().ok_or_else(no_session)?;
        Ok(written(&SummaryView::of(self.course, &sitting.session.summary(asked.now))))
    }
}

/// What a session has to draw on.
#[derive(serde::Serialize)]
struct Begun {
    drills: usize,
    plan: Vec<Planned>,
}

fn no_session() -> String {
    refusal("session", "none has begun")
}

/// A record of progress, with notes on what in it cannot be used.
fn record(language: &Language, text: &str) -> Result<(Progress, Vec<Unused>), String> {
    if text.trim().is_empty() {
        return Ok((Progress::new(), Vec::new()));
    }
    Progress::read(text).map_err(|error| refusal("progress", &error.said(language)))
}

/// A skill's name; its id where the course has no such skill.
fn skill_name<'a>(course: &'a Course, id: &'a str) -> &'a str {
    course.skills.iter().find(|skill| skill.id == id).map_or(id, |skill| &skill.name)
}

/// Times as hosts give them.
type Now = Seconds;
