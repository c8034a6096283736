//! One person's set of exercises. Entry points: [`practice_set`], [`practice_sets`].

use super::slip::Identity;
use crate::course::{Assignment, Course, Drill, Lesson, Person};
use crate::exercise::{Exercise, GenerateError, Pools, Proofs, below, shuffle, stream};
use rand::Rng;
use rayon::prelude::*;
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;

/// Numbers from here on in a drill's pool belong to assignments: the study pages, worksheets and practice use those below.
const FIRST_NUMBER: u32 = 10_000_000;
/// How many of them there are for each drill.
const NUMBERS: usize = 1_000_000;
/// Exercises made in search of one that was not asked yet.
const MOST_TRIES: u32 = 8;

/// A set of exercises with its identity.
#[derive(Debug, Clone)]
pub struct PracticeSet {
    /// Whose it is, and of what.
    pub identity: Identity,
    /// The exercises, in order.
    pub exercises: Vec<Exercise>,
}

/// The sets of all people, in the order of the assignment; made on all cores, with earlier proofs taken from `proofs` and new ones added to them.
///
/// # Errors
/// Of every drill that could not be satisfied, one error.
pub fn practice_sets(
    course: &Course,
    assignment: &Assignment,
    proofs: &Proofs,
) -> Result<Vec<PracticeSet>, Vec<GenerateError>> {
    let made: Vec<Result<PracticeSet, GenerateError>> =
        assignment.people.par_iter().map(|person| practice_set(course, assignment, person, proofs)).collect();
    let (mut sets, mut errors) = (Vec::new(), Vec::<GenerateError>::new());
    for set in made {
        match set {
            Ok(set) => sets.push(set),
            Err(error) if errors.iter().any(|known| known.drill == error.drill) => {}
            Err(error) => errors.push(error),
        }
    }
    if errors.is_empty() { Ok(sets) } else { Err(errors) }
}

/// The set of one person: as many exercises as the assignment says, from the drills of its lessons in turn. No question comes twice
/// in a set as long as any of the drills has another, nor one that the lessons themselves show as long as its drill has another.
///
/// # Errors
/// [`GenerateError`] of a drill that could not be satisfied.
pub fn practice_set(
    course: &Course,
    assignment: &Assignment,
    person: &Person,
    proofs: &Proofs,
) -> Result<PracticeSet, GenerateError> {
    let seed = assignment.seed.to_string();
    let mut rng = stream(course.seed, &["assignment", &assignment.id, &seed, &person.id]);
    let mut drills: Vec<(&Lesson, &Drill)> = assignment
        .lessons
        .iter()
        .filter_map(|id| course.lesson(id))
        .flat_map(|(_, lesson)| lesson.drills.iter().map(move |drill| (lesson, drill)))
        .collect();
    shuffle(&mut rng, &mut drills);
    let mut exercises: Vec<Exercise> = Vec::new();
    let mut asked = BTreeSet::new();
    let wanted = if drills.is_empty() { 0 } else { assignment.exercises as usize };
    let mut turn = drills.clone();
    // Drills in turn; where there are more drills than exercises, some of every person's are left out. A drill that has nothing new
    // loses its turn, until none of them has: then all begin again.
    while exercises.len() < wanted {
        let mut fruitful = Vec::new();
        for (lesson, drill) in turn {
            if exercises.len() == wanted {
                break;
            }
            if let Some(exercise) = another((course, proofs), lesson, drill, &mut asked, &mut rng)? {
                exercises.push(exercise);
                fruitful.push((lesson, drill));
            }
        }
        turn = fruitful;
        if turn.is_empty() {
            asked.clear();
            turn.clone_from(&drills);
        }
    }
    let place = |exercise: &Exercise| assignment.lessons.iter().position(|lesson| *lesson == exercise.lesson);
    // In the order in which the lessons are read.
    exercises.sort_by_key(place);
    let identity = Identity {
        assignment: assignment.id.clone(),
        person: person.id.clone(),
        course: course.version.clone(),
        set: digest(assignment, person, &exercises),
    };
    Ok(PracticeSet { identity, exercises })
}

/// The exercises that the assigned lessons show, by drill; made on all cores.
///
/// # Errors
/// The errors of all exercises that could not be made.
pub fn lesson_pools(
    course: &Course,
    assignment: &Assignment,
    proofs: &Proofs,
) -> Result<Pools, Vec<GenerateError>> {
    let wanted: Vec<(&Lesson, &Drill, u32)> = course
        .drills()
        .filter(|(lesson, _)| assignment.lessons.contains(&lesson.id))
        .flat_map(|(lesson, drill)| (0..drill.exercises).map(move |number| (lesson, drill, number)))
        .collect();
    let made: Vec<Result<Exercise, GenerateError>> = wanted
        .par_iter()
        .map(|&(lesson, drill, number)| proofs.generate(course, lesson, drill, number))
        .collect();
    let (mut pools, mut errors) = (Pools::new(), Vec::new());
    for exercise in made {
        match exercise {
            Ok(exercise) => pools.entry(exercise.drill.clone()).or_default().push(exercise),
            Err(error) => errors.push(error),
        }
    }
    if errors.is_empty() { Ok(pools) } else { Err(errors) }
}

/// An exercise that asks what was not asked yet; `None` where the drill seems to have no other.
fn another(
    (course, proofs): (&Course, &Proofs),
    lesson: &Lesson,
    drill: &Drill,
    asked: &mut BTreeSet<String>,
    rng: &mut impl Rng,
) -> Result<Option<Exercise>, GenerateError> {
    let first = FIRST_NUMBER + below(rng, NUMBERS) as u32;
    let questions = drill.questions.len() as u32;
    let numbers: Vec<u32> = if questions > 0 {
        // Questions come in a round: the study page shows the first ones with their answers, so these come last.
        let shown = drill.exercises.min(questions - 1);
        let (others, turned) = (questions - shown, below(rng, (questions - shown) as usize) as u32);
        let places = (0..others).map(|at| shown + (turned + at) % others).chain(0..shown);
        places.map(|place| first - first % questions + place).collect()
    } else {
        (first..first + MOST_TRIES).collect()
    };
    let mut failed = None;
    let mut made_one = false;
    for number in numbers {
        match proofs.generate(course, lesson, drill, number) {
            Ok(exercise) if asked.insert(exercise.question()) => return Ok(Some(exercise)),
            Ok(_) => made_one = true,
            Err(error) => failed = Some(error),
        }
    }
    match failed.filter(|_| !made_one) {
        Some(error) => Err(error),
        None => Ok(None),
    }
}

/// Tells sets apart that are not the same: SHA-256 over whose it is and every exercise's place in its pool, the first 16 figures.
fn digest(assignment: &Assignment, person: &Person, exercises: &[Exercise]) -> String {
    let mut hash = Sha256::new();
    let mut add = |text: &str| {
        hash.update((text.len() as u64).to_le_bytes());
        hash.update(text.as_bytes());
    };
    add(&assignment.id);
    add(&person.id);
    for exercise in exercises {
        add(&exercise.drill);
        add(&exercise.number.to_string());
    }
    hash.finalize().iter().take(8).map(|byte| format!("{byte:02x}")).collect()
}
