//! Slips marked against the course. Entry point: [`collect`].

use super::set::{PracticeSet, practice_set};
use super::slip::{AssignmentSlip, Identity, SlipError, seen};
use crate::assess::cohort::{MisconceptionCount, Shown, misconceptions, misconceptions_of};
use crate::assess::marking::AnswerMarks;
use crate::assess::put::QuestionPut;
use crate::assess::session::{AnswerShown, answer_shown};
use crate::course::{Assignment, Course, Person};
use crate::exercise::{Answer, Exercise, outcome};
use rayon::prelude::*;
use serde::Serialize;
use std::collections::BTreeMap;
use std::sync::Arc;

/// What came back of an assignment.
#[derive(Debug, Clone, Serialize)]
pub struct Collected {
    /// Marked slips, in the order of the assignment's people.
    pub marked: Vec<SlipMarked>,
    /// Slips that are not marked, in the order given.
    pub refused: Vec<Refused>,
    /// Ids of people from whom there is no marked slip, in the order of the assignment.
    pub missing: Vec<String>,
    /// Misconceptions over all marked slips that were chosen at least once.
    pub misconceptions: Vec<MisconceptionCount>,
}

/// A slip that is not marked.
#[derive(Debug, Clone, Serialize)]
pub struct Refused {
    /// Where it was.
    pub slip: String,
    /// Why, in words.
    pub why: String,
}

/// One person's slip with its marks.
#[derive(Debug, Clone, Serialize)]
pub struct SlipMarked {
    /// Id of the person.
    pub person: String,
    /// The person's name.
    pub name: String,
    /// Where the slip was.
    pub slip: String,
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
    /// What would follow, or why it is no answer.
    pub consequence: String,
    /// Id of the misconception it shows.
    pub misconception: Option<String>,
    /// Id of the lesson to reread, unless all was right.
    pub lesson: Option<String>,
    #[serde(skip)]
    shown: Option<AnswerShown>,
    /// The right answer, the question as it was put, its lesson, and what was chosen.
    #[serde(skip)]
    put: (String, Arc<QuestionPut>, String, Option<usize>),
}

impl AnswerMarked {
    /// The same as the mark of an answer on a paper.
    pub(in crate::assess) fn as_marks(&self, section: &str) -> AnswerMarks {
        let (key, put, lesson, chosen) = &self.put;
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
            seconds: None,
            put: Arc::clone(put),
            chosen: *chosen,
        }
    }
}

/// Reads and marks slips, each given with the name of where it lies and its content (or why there is none). One that cannot be marked
/// holds up no other.
pub fn collect(
    course: &Course,
    assignment: &Assignment,
    slips: &[(String, Result<Vec<u8>, SlipError>)],
) -> Collected {
    let mut first: BTreeMap<String, &str> = BTreeMap::new();
    let mut refused = Vec::new();
    let mut fit: Vec<(&str, AssignmentSlip, &Person)> = Vec::new();
    for (place, content) in slips {
        let read = content
            .as_ref()
            .map_err(Clone::clone)
            .and_then(|content| AssignmentSlip::read(content))
            .and_then(|slip| identified(course, assignment, &slip).map(|person| (slip, person)));
        match read {
            Err(error) => refused.push((place.as_str(), error)),
            Ok((slip, person)) => match first.get(&person.id) {
                Some(&first) => {
                    let (person, first) = (person.id.clone(), first.to_owned());
                    refused.push((place, SlipError::Again { person, first }));
                }
                None => {
                    first.insert(person.id.clone(), place);
                    fit.push((place, slip, person));
                }
            },
        }
    }
    let marked: Vec<Result<SlipMarked, (&str, SlipError)>> = fit
        .par_iter()
        .map(|(place, slip, person)| {
            let set = practice_set(course, assignment, person)
                .map_err(|error| (*place, SlipError::Gone(error.to_string())))?;
            marked(course, place, slip, person, &set).map_err(|error| (*place, error))
        })
        .collect();
    let mut done = Vec::new();
    for one in marked {
        match one {
            Ok(one) => done.push(one),
            Err(error) => refused.push(error),
        }
    }
    let turn = |id: &str| assignment.people.iter().position(|person| person.id == id);
    done.sort_by_key(|one| turn(&one.person));
    let missing = assignment
        .people
        .iter()
        .filter(|person| !done.iter().any(|one| one.person == person.id))
        .map(|person| person.id.clone())
        .collect();
    let order = |place: &str| slips.iter().position(|(other, _)| other == place);
    refused.sort_by_key(|(place, _)| order(place));
    Collected {
        misconceptions: chosen(
            done.iter().flat_map(|one| one.answers.iter().map(|answer| (&*one.person, answer))),
            |shown| misconceptions(shown.iter().copied()),
        ),
        marked: done,
        refused: refused
            .into_iter()
            .map(|(place, error)| Refused { slip: place.to_owned(), why: error.to_string() })
            .collect(),
        missing,
    }
}

/// The person a slip belongs to, if it belongs to this assignment of this course.
fn identified<'a>(
    course: &Course,
    assignment: &'a Assignment,
    slip: &AssignmentSlip,
) -> Result<&'a Person, SlipError> {
    let short = |text: &str| seen(text, 12);
    let identity = &slip.identity;
    if identity.assignment != assignment.id {
        let (found, expected) = (seen(&identity.assignment, 64), assignment.id.clone());
        return Err(SlipError::Assignment { found, expected });
    }
    let person =
        assignment.person(&identity.person).ok_or_else(|| SlipError::Person(seen(&identity.person, 64)))?;
    if identity.course != course.version {
        let (found, expected) = (short(&identity.course), short(&course.version));
        return Err(SlipError::Course { found, expected });
    }
    Ok(person)
}

fn marked(
    course: &Course,
    place: &str,
    slip: &AssignmentSlip,
    person: &Person,
    set: &PracticeSet,
) -> Result<SlipMarked, SlipError> {
    if slip.identity.set != set.identity.set {
        let (found, expected) = (seen(&slip.identity.set, 16), set.identity.set.clone());
        return Err(SlipError::Set { found, expected });
    }
    let (found, expected) = (slip.answers.len(), set.exercises.len());
    if found != expected {
        return Err(SlipError::Answers { found, expected });
    }
    let answers: Vec<AnswerMarked> = set
        .exercises
        .iter()
        .zip(&slip.answers)
        .enumerate()
        .map(|(at, (exercise, raw))| answer_marked(course, at + 1, exercise, raw))
        .collect();
    let reread = course
        .lessons()
        .filter(|(_, lesson)| answers.iter().any(|answer| answer.lesson.as_ref() == Some(&lesson.id)))
        .map(|(_, lesson)| lesson.id.clone())
        .collect();
    let sum: f64 = answers.iter().map(|answer| answer.credit).sum();
    Ok(SlipMarked {
        person: person.id.clone(),
        name: person.name.clone(),
        slip: place.to_owned(),
        answered: answers.iter().filter(|answer| !answer.answer.is_empty()).count(),
        credit: sum / answers.len().max(1) as f64,
        reread,
        misconceptions: chosen(answers.iter().map(|answer| (&*person.id, answer)), misconceptions_of),
        answers,
        identity: set.identity.clone(),
    })
}

fn answer_marked(course: &Course, number: usize, exercise: &Exercise, raw: &str) -> AnswerMarked {
    let raw = raw.trim();
    let put = Arc::new(QuestionPut::of(exercise));
    let blank = AnswerMarked {
        number,
        drill: exercise.drill.clone(),
        exercise: exercise.number,
        skill: exercise.skill.clone(),
        answer: raw.to_owned(),
        credit: 0.0,
        consequence: "No answer.".to_owned(),
        misconception: None,
        lesson: Some(exercise.lesson.clone()),
        shown: None,
        put: (exercise.form.key().to_string(), put, exercise.lesson.clone(), None),
    };
    if raw.is_empty() {
        return blank;
    }
    let given = Answer::read(&exercise.form, &raw.to_lowercase())
        .and_then(|answer| outcome(course, exercise, &answer).map(|choice| (answer, choice.mark)));
    match given {
        Err(error) => {
            AnswerMarked { consequence: format!("Not an answer to this question: {error}."), ..blank }
        }
        Ok((answer, mark)) => AnswerMarked {
            put: (
                blank.put.0.clone(),
                Arc::clone(&blank.put.1),
                blank.put.2.clone(),
                blank.put.1.chosen(&answer),
            ),
            credit: mark.credit,
            shown: answer_shown(exercise, &answer, &mark),
            lesson: (mark.credit < 1.0).then_some(mark.lesson),
            consequence: mark.consequence,
            misconception: mark.misconception,
            ..blank
        },
    }
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
