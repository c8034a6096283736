//! The first exercises of every drill, side by side on all cores: what lessons and worksheets show.
//!
//! Entry point: [`pools_from`].

use super::proofs::Proofs;
use super::{Exercise, GenerateError, Pools};
use crate::course::{Course, Drill, Lesson};
use rayon::prelude::*;
use std::collections::BTreeSet;

/// Exercises made for each one that a lesson shows: the first part of a drill's pool is the lesson's, and as many again are the
/// worksheet's, so that paper asks what the screen has not answered yet.
pub const EXERCISES_PER_SHOWN: u32 = 2;

/// How many times as many numbers are looked through where some of a pool ask the same.
const LOOKED_THROUGH: u32 = 8;

/// A step of [`pools`], told to its observer on the thread that makes the exercise.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Step {
    /// Work on an exercise begins.
    Started,
    /// It is made, or was found impossible.
    Done,
}

/// How many exercises of a drill [`pools`] makes.
pub fn pool_size(drill: &Drill) -> u32 {
    drill.exercises * EXERCISES_PER_SHOWN
}

/// Every exercise that the lessons and the worksheets show, proved on all cores; `observe` is told when each begins and ends. A drill's
/// come in order of number. Of those that ask what one before them asks already each gives way to a later number that does not; where there is none
/// to be had soon, it stands at the end.
///
/// # Errors
/// The errors of all exercises that could not be made.
pub fn pools(course: &Course, observe: impl Fn(&Drill, Step) + Sync) -> Result<Pools, Vec<GenerateError>> {
    pools_from(course, &Proofs::none(), observe)
}

/// The same as [`pools`] gives, with earlier proofs taken from `proofs` and new ones added to them.
///
/// # Errors
/// As [`pools`].
pub fn pools_from(
    course: &Course,
    proofs: &Proofs,
    observe: impl Fn(&Drill, Step) + Sync,
) -> Result<Pools, Vec<GenerateError>> {
    let wanted: Vec<(&Lesson, &Drill, u32)> = course
        .drills()
        .flat_map(|(lesson, drill)| (0..pool_size(drill)).map(move |number| (lesson, drill, number)))
        .collect();
    let made: Vec<Result<Exercise, GenerateError>> = wanted
        .par_iter()
        .map(|&(lesson, drill, number)| {
            observe(drill, Step::Started);
            let exercise = proofs.generate(course, lesson, drill, number);
            observe(drill, Step::Done);
            exercise
        })
        .collect();
    let mut pools = Pools::new();
    let mut errors = Vec::new();
    for exercise in made {
        match exercise {
            Ok(exercise) => pools.entry(exercise.drill.clone()).or_default().push(exercise),
            Err(error) => errors.push(error),
        }
    }
    pools.par_iter_mut().for_each(|(id, pool)| {
        let mut asked = BTreeSet::new();
        let (mut new, mut again): (Vec<Exercise>, Vec<Exercise>) =
            pool.drain(..).partition(|exercise| asked.insert(exercise.question()));
        if let Some((lesson, drill)) = course.drill(id).filter(|(_, drill)| drill.questions.is_empty()) {
            for number in pool_size(drill)..LOOKED_THROUGH * pool_size(drill) {
                if again.is_empty() {
                    break;
                }
                if let Ok(exercise) = proofs.generate(course, lesson, drill, number)
                    && asked.insert(exercise.question())
                {
                    new.push(exercise);
                    again.pop();
                }
            }
        }
        pool.extend(new.into_iter().chain(again));
    });
    if errors.is_empty() { Ok(pools) } else { Err(errors) }
}
