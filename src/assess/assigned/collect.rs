//! Slips marked against the course. Entry points: [`mark_assigned`] marks one, [`Collected::of`] says what all of them tell.

use super::set::practice_set;
use super::slip::{AssignmentSlip, Identity};
use crate::assess::cohort::{MisconceptionCount, Shown, misconceptions, misconceptions_of};
use crate::assess::marking::{AnswerMarks, Given, MarkingError, check_count, unreadable};
use crate::assess::put::QuestionPut;
use crate::assess::session::{AnswerShown, answer_shown};
use crate::course::{Assignment, Course, Person};
use crate::exercise::{AnswerError, Exercise, Proofs};
use serde::Serialize;
use std::sync::Arc;
use thiserror::Error;

/// Why a slip is not marked.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum CollectError {
    /// It belongs to another assignment.
    #[error("this slip belongs to the assignment `{found}`, not to `{expected}`")]
    Assignment {
        /// On the slip.
        found: String,
        /// The one that is collected.
        expected: String,
    },
    /// The assignment does not name this person.
    #[error("the assignment names no person `{0}`")]
    Person(String),
    /// The course has changed.
    #[error(
        "this slip belongs to version {found} of the course; this is {expected}: collect it with the course it was made from"
    )]
    Course {
        /// First figures, on the slip.
        found: String,
        /// First figures of the course at hand.
        expected: String,
    },
    /// The assignment has changed.
    #[error(
        "this slip belongs to another set of exercises (`{found}`, not `{expected}`): the assignment's lessons, exercises or seed \
         were changed after the pages were written"
    )]
    Set {
        /// On the slip.
        found: String,
        /// The set made now.
        expected: String,
    },
    /// Its answers are too few, too many, or none.
    #[error(transparent)]
    Answers(#[from] MarkingError),
    /// The person's set cannot be made any more.
    #[error("the exercises cannot be made again: {0}")]
    Gone(String),
}

/// What all marked slips of an assignment tell together.
#[derive(Debug, Clone, Serialize)]
pub struct Collected {
    /// Ids of people from whom there is no marked slip, in the order of the assignment.
    pub missing: Vec<String>,
    /// Misconceptions that were chosen at least once.
    pub misconceptions: Vec<MisconceptionCount>,
}

impl Collected {
    /// What these tell.
    pub fn of<'m>(assignment: &Assignment, marked: impl Iterator<Item = &'m SlipMarked> + Clone) -> Self {
        let handed_in = |person: &Person| marked.clone().any(|one| one.person == person.id);
        Collected {
            missing: assignment
                .people
                .iter()
                .filter(|person| !handed_in(person))
                .map(|person| person.id.clone())
                .collect(),
            misconceptions: chosen(
                marked.clone().flat_map(|one| one.answers.iter().map(|answer| (one.person.as_str(), answer))),
                |shown| misconceptions(shown.iter().copied()),
            ),
        }
    }
}

/// One person's slip with its marks.
#[derive(Debug, Clone, Serialize)]
pub struct SlipMarked {
    /// Id of the person.
    pub person: String,
    /// The person's name.
    pub name: String,
    /// Exercises answered.
    pub answered: usize,
    /// Mean credit over all exercises, 0 to 1; blanks count as nothing.
    pub credit: f64,
    /// Ids of lessons to reread, in teaching order.
    pub reread: Vec<String>,
    /// Misconceptions that were chosen at least once.
    pub misconceptions: Vec<MisconceptionCount>,
    /// Every exercise with its mark.
    pub answers: Vec<AnswerMarked>,
    /// Which set it is.
    #[serde(skip)]
    pub identity: Identity,
}

/// One answer with its mark.
#[derive(Debug, Clone, Serialize)]
pub struct AnswerMarked {
    /// Place in the set, from 1.
    pub number: usize,
    /// Id of the drill.
    pub drill: String,
    /// Number in the drill's pool.
    pub exercise: u32,
    /// Id of the skill.
    pub skill: String,
    /// What was answered, as it was written; empty for a blank.
    pub answer: String,
    /// 0 to 1.
    pub credit: f64,
    /// What would follow.
    pub consequence: String,
    /// Id of the misconception it shows.
    pub misconception: Option<String>,
    /// Id of the lesson to reread, unless all was right.
    pub lesson: Option<String>,
    #[serde(skip)]
    shown: Option<AnswerShown>,
    #[serde(skip)]
    question: Question,
}

/// What the mark book keeps of a question that was answered.
#[derive(Debug, Clone, PartialEq)]
struct Question {
    /// The right answer.
    key: String,
    /// As it was put.
    put: Arc<QuestionPut>,
    lesson: String,
    source: String,
    proof: Option<String>,
    /// Which of its options was chosen.
    chosen: Option<usize>,
}

impl AnswerMarked {
    /// The same as the mark of an answer on a paper.
    pub(in crate::assess) fn as_marks(&self, section: &str) -> AnswerMarks {
        let Question { key, put, lesson, source, proof, chosen } = &self.question;
        AnswerMarks {
            number: self.number,
            section: section.to_owned(),
            question: format!("{} {}", self.drill, self.exercise),
            skill: self.skill.clone(),
            answer: self.answer.clone(),
            key: key.clone(),
            answer_said: self.answer.clone(),
            key_said: key.clone(),
            credit: self.credit,
            consequence: self.consequence.clone(),
            misconception: self.misconception.clone(),
            lesson: self.lesson.as_ref().unwrap_or(lesson).clone(),
            source: source.clone(),
            proof: proof.clone(),
            seconds: None,
            put: Arc::clone(put),
            chosen: *chosen,
        }
    }
}

/// Marks a slip against the set of exercises of the person it belongs to, which is made again, with earlier proofs taken from `proofs`.
///
/// # Errors
/// [`CollectError`] where it belongs elsewhere, or does not answer what was asked.
pub fn mark_assigned(
    course: &Course,
    assignment: &Assignment,
    slip: &AssignmentSlip,
    proofs: &Proofs,
) -> Result<SlipMarked, CollectError> {
    let person = identified(course, assignment, slip)?;
    let set = practice_set(course, assignment, person, proofs)
        .map_err(|error| CollectError::Gone(error.to_string()))?;
    if slip.identity.set != set.identity.set {
        let (found, expected) = (first(&slip.identity.set, 16), set.identity.set);
        return Err(CollectError::Set { found, expected });
    }
    check_count(&slip.answers, set.exercises.len())?;
    let answers: Vec<AnswerMarked> = set
        .exercises
        .iter()
        .zip(&slip.answers)
        .enumerate()
        .map(|(at, (exercise, raw))| {
            answer_marked(course, at + 1, exercise, raw).map_err(|why| unreadable(at + 1, raw, why))
        })
        .collect::<Result<_, _>>()?;
    let reread = course
        .lessons()
        .filter(|(_, lesson)| answers.iter().any(|answer| answer.lesson.as_ref() == Some(&lesson.id)))
        .map(|(_, lesson)| lesson.id.clone())
        .collect();
    let sum: f64 = answers.iter().map(|answer| answer.credit).sum();
    Ok(SlipMarked {
        person: person.id.clone(),
        name: person.name.clone(),
        answered: answers.iter().filter(|answer| !answer.answer.is_empty()).count(),
        credit: sum / answers.len().max(1) as f64,
        reread,
        misconceptions: chosen(answers.iter().map(|answer| (&*person.id, answer)), misconceptions_of),
        answers,
        identity: set.identity,
    })
}

/// The person a slip belongs to, if it belongs to this assignment of this course.
fn identified<'a>(
    course: &Course,
    assignment: &'a Assignment,
    slip: &AssignmentSlip,
) -> Result<&'a Person, CollectError> {
    let identity = &slip.identity;
    if identity.assignment != assignment.id {
        let (found, expected) = (first(&identity.assignment, 64), assignment.id.clone());
        return Err(CollectError::Assignment { found, expected });
    }
    let person = assignment
        .person(&identity.person)
        .ok_or_else(|| CollectError::Person(first(&identity.person, 64)))?;
    if identity.course != course.version {
        let (found, expected) = (first(&identity.course, 12), first(&course.version, 12));
        return Err(CollectError::Course { found, expected });
    }
    Ok(person)
}

/// The beginning of a text.
fn first(text: &str, most: usize) -> String {
    text.chars().take(most).collect()
}

fn answer_marked(
    course: &Course,
    number: usize,
    exercise: &Exercise,
    raw: &str,
) -> Result<AnswerMarked, AnswerError> {
    // Of the few mixes that were answered none was worked out before.
    let Given { answer, mark } = Given::read(course, exercise, &exercise.lesson, raw, |_| None)?;
    let put = Arc::new(QuestionPut::of(exercise));
    let chosen = answer.as_ref().and_then(|answer| put.chosen(answer));
    Ok(AnswerMarked {
        number,
        drill: exercise.drill.clone(),
        exercise: exercise.number,
        skill: exercise.skill.clone(),
        answer: raw.trim().to_owned(),
        credit: mark.credit,
        shown: answer.and_then(|answer| answer_shown(exercise, &answer, &mark)),
        lesson: (mark.credit < 1.0).then_some(mark.lesson),
        consequence: mark.consequence,
        misconception: mark.misconception,
        question: Question {
            key: exercise.form.key().to_string(),
            put,
            lesson: exercise.lesson.clone(),
            source: exercise.source.clone(),
            proof: exercise.proof.as_ref().map(|proof| proof.said(&course.language, exercise.family)),
            chosen,
        },
    })
}

/// Misconceptions that these people's answers show.
fn chosen<'a>(
    answers: impl Iterator<Item = (&'a str, &'a AnswerMarked)>,
    counted: impl FnOnce(&[Shown<'_>]) -> Vec<MisconceptionCount>,
) -> Vec<MisconceptionCount> {
    let leads: Vec<_> = answers
        .filter_map(|(person, answer)| answer.shown.as_ref().map(|shown| (person, shown, shown.leads())))
        .collect();
    let shown: Vec<_> = leads.iter().map(|(person, shown, leads)| shown.of(person, leads)).collect();
    let mut counts = counted(&shown);
    counts.retain(|count| count.chosen > 0);
    counts
}
