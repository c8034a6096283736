//! A session of practice: which exercise comes next, what an answer to it is worth, and what the answers have shown.
//!
//! Entry point: [`Session::new`]. Steps: [`Session::next`] makes the exercise that is needed most; [`Session::answer`] marks what is
//! given to it and notes it in the record; [`Session::progress`] is to be kept then, by whoever has a place for it; at the end
//! [`Session::summary`]. There is no terminal, no page, no file and no clock in here: time is an argument, in seconds since 1970.

mod needs;
mod offers;
mod shown;
mod summary;

pub use needs::{SkillPrerequisites, prerequisites};
pub use offers::minutes_of;
pub use shown::{AnswerShown, answer_shown};
pub use summary::{Level, SkillChange, Summary};

use super::knowledge::{
    AnswerForm, MASTERED, Offer, Parameters, Progress, READY, Recent, SPACED_BY, Seconds, SkillNeeds, Step,
    choose, plan,
};
use crate::course::{Course, Drill, Lesson};
use crate::exercise::{Answer, AnswerError, Choice, Exercise, Form, GenerateError, generate, outcome};
use offers::guess_of;
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::collections::BTreeMap;

/// Numbers below this in a drill's pool belong to the study pages and the worksheets.
const FIRST_NUMBER: u32 = 1_000;
/// Numbers from which a session begins.
const NUMBERS: u32 = 1_000_000;
/// Skills that are open at any time, as far as the drills train so many: one more than lie between two questions of one skill.
const OPEN: usize = SPACED_BY + 1;
/// Exercises made in search of another client than the last.
const MOST_TRIES: u32 = 4;

/// A session of practice with some drills of a course.
pub struct Session<'c> {
    course: &'c Course,
    drills: Vec<Trained<'c>>,
    needs: Vec<SkillPrerequisites<'c>>,
    parameters: Parameters,
    /// The record as it was when the session began.
    before: Progress,
    progress: Progress,
    begun: Seconds,
    recent: Recent,
    rng: ChaCha8Rng,
    given: Vec<Given>,
}

/// A drill in a session.
struct Trained<'c> {
    lesson: &'c Lesson,
    drill: &'c Drill,
    /// Number of its next exercise, once it has begun.
    number: Option<u32>,
    /// How often it was asked in this session.
    asked: u32,
}

/// An answer of this session.
struct Given {
    skill: String,
    credit: f64,
    /// Id of the lesson to reread, unless all was right.
    lesson: Option<String>,
    shown: Option<AnswerShown>,
}

impl<'c> Session<'c> {
    /// A session that begins at `now`. The same record, drills, seed, times and answers give the same session. `progress` may
    /// hold skills that the course does not have; they are kept as they are.
    pub fn new(
        course: &'c Course,
        drills: impl IntoIterator<Item = (&'c Lesson, &'c Drill)>,
        progress: Progress,
        parameters: Parameters,
        seed: u64,
        now: Seconds,
    ) -> Self {
        Session {
            course,
            drills: drills
                .into_iter()
                .map(|(lesson, drill)| Trained { lesson, drill, number: None, asked: 0 })
                .collect(),
            needs: prerequisites(course),
            parameters,
            before: progress.clone(),
            progress,
            begun: now,
            recent: Recent::default(),
            rng: ChaCha8Rng::seed_from_u64(seed),
            given: Vec::new(),
        }
    }

    /// The record as it is now.
    pub fn progress(&self) -> &Progress {
        &self.progress
    }

    /// Goes on with another record, as where it was changed elsewhere since. What the session has shown so far stays.
    pub fn take_up(&mut self, progress: Progress) {
        self.progress = progress;
    }

    /// Answers given so far.
    pub fn answers(&self) -> usize {
        self.given.len()
    }

    /// What a session of so many minutes would ask, if every answer turned out as foreseen: ids of skills with their chance of being
    /// known, in order. The session itself chooses anew after every answer.
    pub fn plan(&self, minutes: f64, now: Seconds) -> Vec<(&'c str, Step)> {
        let offers = self.offers();
        with_needs(&self.closed(now), |needs| {
            plan(&offers, needs, &self.progress, &self.parameters, minutes, now)
                .into_iter()
                .map(|step| (self.drills[step.offer].drill.skill.as_str(), step))
                .collect()
        })
    }

    /// How many drills the session has to draw on.
    pub fn drills(&self) -> usize {
        self.drills.len()
    }

    /// The exercise most needed now, of those that take at most `minutes`; `None` when there is none. A drill that cannot be
    /// satisfied is left out for the rest of the session.
    ///
    /// # Errors
    /// [`GenerateError`] of the last drill, when none is left that could be satisfied.
    pub fn next(&mut self, minutes: f64, now: Seconds) -> Result<Option<Exercise>, GenerateError> {
        let mut failed = None;
        while let Some(at) = self.choose(minutes, now) {
            match self.make(at) {
                Ok(exercise) => return Ok(Some(exercise)),
                Err(error) => {
                    self.drills.remove(at);
                    failed = Some(error);
                }
            }
        }
        match failed {
            Some(error) if self.drills.is_empty() => Err(error),
            _ => Ok(None),
        }
    }

    /// Marks an answer and notes it in the record.
    ///
    /// # Errors
    /// [`AnswerError`] where it is no answer to this exercise; nothing is noted then.
    pub fn answer(
        &mut self,
        exercise: &Exercise,
        answer: &Answer,
        now: Seconds,
    ) -> Result<Choice, AnswerError> {
        let chosen = outcome(self.course, exercise, answer)?;
        let credit = chosen.mark.credit;
        let guess = form_of(&exercise.form).guess_at(credit);
        self.progress.answered(&exercise.skill, &self.parameters, guess, credit, now);
        self.recent.asked(&Offer {
            id: &exercise.drill,
            skill: &exercise.skill,
            client: exercise.case.as_ref().map(|case| case.client.as_str()),
            minutes: 0.0,
            guess,
        });
        self.given.push(Given {
            skill: exercise.skill.clone(),
            credit,
            lesson: (credit < 1.0).then(|| chosen.mark.lesson.clone()),
            shown: answer_shown(exercise, answer, &chosen.mark),
        });
        Ok(chosen)
    }

    /// What the session has shown so far.
    pub fn summary(&self, now: Seconds) -> Summary {
        summary::of(self, now)
    }

    fn offers(&self) -> Vec<Offer<'c>> {
        self.drills
            .iter()
            .map(|trained| Offer {
                id: &trained.drill.id,
                skill: &trained.drill.skill,
                client: None,
                minutes: minutes_of(trained.drill),
                guess: guess_of(trained.drill),
            })
            .collect()
    }

    /// Skills that wait for others, with what they wait for.
    ///
    /// Questions of one skill should not follow one another, so that at least [`OPEN`] skills are open at any time: where fewer are
    /// ready, those that are taught first wait no longer.
    fn closed(&self, now: Seconds) -> Vec<SkillPrerequisites<'c>> {
        let known =
            |skill: &str| self.progress.knowledge(skill, &self.parameters).known_at(&self.parameters, now);
        let mut skills: Vec<&str> = Vec::new();
        for trained in &self.drills {
            if !skills.contains(&trained.drill.skill.as_str()) {
                skills.push(&trained.drill.skill);
            }
        }
        let waits = |skill: &str| {
            self.needs
                .iter()
                .filter(|entry| entry.skill == skill)
                .flat_map(|entry| &entry.needs)
                .any(|need| skills.contains(need) && known(need) < READY)
        };
        let (waiting, ready): (Vec<&str>, Vec<&str>) =
            skills.iter().copied().filter(|skill| known(skill) < MASTERED).partition(|skill| waits(skill));
        let opened = &waiting[..OPEN.saturating_sub(ready.len()).min(waiting.len())];
        self.needs.iter().filter(|entry| !opened.contains(&entry.skill)).cloned().collect()
    }

    /// Place of the drill most needed. Of drills that train the same, the one asked least in this session, then any of them.
    fn choose(&mut self, minutes: f64, now: Seconds) -> Option<usize> {
        let mut order: Vec<(u32, u64, usize)> = self
            .drills
            .iter()
            .enumerate()
            .map(|(at, trained)| (trained.asked, self.rng.random::<u64>(), at))
            .collect();
        order.sort_unstable();
        let offers = self.offers();
        let (places, offers): (Vec<usize>, Vec<Offer<'_>>) = order
            .into_iter()
            .map(|(.., at)| (at, offers[at]))
            .filter(|(_, offer)| offer.minutes <= minutes)
            .unzip();
        let best = with_needs(&self.closed(now), |needs| {
            choose(&offers, needs, &self.progress, &self.parameters, &self.recent, now)
        });
        best.map(|best| places[best])
    }

    /// The next exercise of a drill; with another client than the last, where there is one.
    fn make(&mut self, at: usize) -> Result<Exercise, GenerateError> {
        let first = FIRST_NUMBER + self.rng.random_range(0..NUMBERS);
        let trained = &mut self.drills[at];
        trained.asked += 1;
        let mut number = trained.number.unwrap_or(first);
        let mut made = None;
        for _ in 0..MOST_TRIES {
            let exercise = generate(self.course, trained.lesson, trained.drill, number);
            number += 1;
            let last = self.recent.client.as_deref();
            let again = exercise.as_ref().is_ok_and(|exercise| last.is_some() && client_of(exercise) == last);
            let found = exercise.is_ok() && !again;
            // A number without an exercise is passed over, as is one more of the same client, unless there is nothing else.
            if exercise.is_ok() || made.is_none() {
                made = Some(exercise);
            }
            if found {
                break;
            }
        }
        trained.number = Some(number);
        made.unwrap_or_else(|| generate(self.course, trained.lesson, trained.drill, number))
    }
}

fn client_of(exercise: &Exercise) -> Option<&str> {
    exercise.case.as_ref().map(|case| case.client.as_str())
}

/// How an exercise is answered, as far as guessing goes.
fn form_of(form: &Form) -> AnswerForm {
    match form {
        Form::One(one) => AnswerForm::Choice(one.options.len()),
        Form::Several(several) => AnswerForm::Several(several.options.len()),
        Form::Order(order) => AnswerForm::Order(order.steps.len()),
        Form::Drops(_) | Form::Number(_) => AnswerForm::Open,
    }
}

/// Lends prerequisites to the choice of exercises.
fn with_needs<T>(needs: &[SkillPrerequisites<'_>], of: impl FnOnce(&[SkillNeeds<'_>]) -> T) -> T {
    let lent: Vec<SkillNeeds<'_>> =
        needs.iter().map(|entry| SkillNeeds { skill: entry.skill, needs: &entry.needs }).collect();
    of(&lent)
}

/// Mean credit by skill, in the order of first answers.
fn by_skill(given: &[Given]) -> Vec<(&str, u32, f64)> {
    let mut order: Vec<&str> = Vec::new();
    let mut sums: BTreeMap<&str, (u32, f64)> = BTreeMap::new();
    for answer in given {
        if !order.contains(&answer.skill.as_str()) {
            order.push(&answer.skill);
        }
        let (count, sum) = sums.entry(&answer.skill).or_default();
        *count += 1;
        *sum += answer.credit;
    }
    order
        .into_iter()
        .filter_map(|skill| sums.get(skill).map(|&(count, sum)| (skill, count, sum / f64::from(count))))
        .collect()
}
