//! Making exercises: a drill's numbered pool, each number a pure function of the course's seed, the drill and the number.
//!
//! Entry point: [`generate`]. A draw that cannot be proved is thrown away and the next one tried, up to [`MAX_DRAWS`].

use super::difficulty::engine_difficulty;
use super::place::{Place, Shown, order_of};
use super::remedy::Sought;
use super::seed::{below, shuffle, stream};
use super::tempt::Wording;
use super::worlds::{Melanin, Named};
use super::{Case, Choice, Exercise, Form, OneOf, Proof};
use super::{bank, bottle, drops, foresight, hindsight, light, remedy, skin, triage};
use crate::course::{Client, Course, Drill, Family, Lesson};
use rand_chacha::ChaCha8Rng;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use thiserror::Error;

/// Draws tried for one exercise before the drill is called impossible: enough that a drill of which one draw in twenty can be proved fails
/// in less than one number in a hundred thousand (0.95 to the power of 240), where 60 draws would fail in one of twenty.
pub const MAX_DRAWS: u32 = 240;

/// Source of what the engine decides.
pub(super) fn engine(course: &Course) -> String {
    course.language.say("exercise-by-the-engine", &[])
}

/// Draws tried with one client before the next one's turn: all of them see the client in the same skins, so that what does not hold in
/// those fails again and again.
const DRAWS_PER_CLIENT: u32 = 4;

/// The same for a drill: of a skin that is to be read nothing is drawn but whose it is, of what is left of old work many causes are tried in one
/// draw, and whose old work it is mostly decides what to do about it.
fn draws_per_client(drill: &Drill) -> u32 {
    match drill.family {
        Family::Skin | Family::Hindsight | Family::Remedy => 1,
        _ => DRAWS_PER_CLIENT,
    }
}

/// Why a draw was thrown away.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Discard {
    /// No mix within the drill's limits reaches the goal.
    GoalOutOfReach,
    /// Too few misconceptions lead to visibly worse answers.
    TooFewTemptations,
    /// The right answer would be known among such answers by how light it is, or by how long its text is.
    OneSided,
    /// The right answer changes when skin, depth or load are a little different.
    Unstable,
    /// Neither colour nor lightening is clearly right.
    Arguable,
    /// A caution among the client's health answers forbids work.
    Caution,
    /// The mix nearest to the goal has modifiers that take back what the other does.
    AtOdds,
    /// The goal is a brown, and the mix nearest to it would be read as something else.
    OtherTone,
    /// The mix nearest to the goal is a mistake that the drill warns of.
    WarnedOf,
    /// The client has no old work.
    NothingToCorrect,
    /// Hardly anything is left of the work.
    NothingToSee,
    /// The exercise would be easier or harder than the drill asks for.
    OtherDifficulty,
    /// The drill names something the course does not have.
    Unresolved,
}

impl Discard {
    /// In words, as a condition that failed.
    pub fn words(self) -> &'static str {
        match self {
            Discard::GoalOutOfReach => "no mix within the limits reaches the goal",
            Discard::TooFewTemptations => "too few of `tempts` give an answer that is worse by the margin",
            Discard::OneSided => {
                "the right answer would not be of the kind, or have the places in lightness and length, that were drawn for it"
            }
            Discard::Unstable => "the best mix changes when skin, depth or load vary",
            Discard::Arguable => "neither colour nor lightening is clearly right",
            Discard::Caution => "a caution forbids work on the client",
            Discard::AtOdds => "the best mix takes back with one modifier what it does with another",
            Discard::OtherTone => "the best mix does not read as the brown that the goal is",
            Discard::WarnedOf => "the best mix is what one of `tempts` warns of, whatever it heals to",
            Discard::NothingToCorrect => "the client has no existing work",
            Discard::NothingToSee => "hardly anything of the work can be seen",
            Discard::OtherDifficulty => "the exercise would be easier or harder than `difficulty` allows",
            Discard::Unresolved => "the drill has no clients, mixes or questions",
        }
    }
}

/// What proving one number of a drill's pool came to.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Finding {
    /// A draw was accepted.
    Accepted {
        /// The draw.
        draw: u32,
        /// Worlds that held, where worlds were tried.
        held: Option<u32>,
        /// How often each condition failed before.
        failed: BTreeMap<Discard, u32>,
    },
    /// No draw was.
    Impossible {
        /// How often each condition failed.
        failed: BTreeMap<Discard, u32>,
    },
}

/// Why a drill gives no exercise.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("drill `{drill}` gives no exercise {number}: of {draws} draws, {}", tally(failed))]
pub struct GenerateError {
    /// Id of the drill.
    pub drill: String,
    /// Number in its pool.
    pub number: u32,
    /// Draws tried.
    pub draws: u32,
    /// How often each condition failed.
    pub failed: BTreeMap<Discard, u32>,
    /// Where the drill stands: `lessons/module/lesson.yaml:12:5`.
    pub stands_at: String,
}

fn tally(failed: &BTreeMap<Discard, u32>) -> String {
    let mut counts: Vec<(&Discard, &u32)> = failed.iter().collect();
    counts.sort_by(|one, other| other.1.cmp(one.1).then(one.0.cmp(other.0)));
    counts
        .iter()
        .map(|(why, count)| format!("{count} failed because {}", why.words()))
        .collect::<Vec<_>>()
        .join("; ")
}

/// One draw in progress.
pub(super) struct Attempt<'c> {
    /// The course's seed.
    seed: u64,
    pub client: &'c Client,
    pub rng: ChaCha8Rng,
    /// Number of the exercise in the pool, in decimal.
    exercise: String,
    /// Number of the draw, in decimal.
    draw: String,
    /// Number of the draw.
    pub number: u32,
    /// How often all clients of the drill have had their turn before.
    pub round: u32,
    /// Of this draw's worlds, how many are known to hold from an earlier proof.
    held: Option<u32>,
}

impl Attempt<'_> {
    /// The name of this draw's worlds.
    pub fn words<'w>(&'w self, drill: &'w Drill) -> Named<'w> {
        let words = ["worlds", &drill.id, &self.exercise, &self.draw];
        Named { words, melanin: Melanin::Varies, round: self.round, held: self.held }
    }

    /// Where the key shall stand among so many options of which this is shown.
    pub fn place(&self, drill: &Drill, options: usize, shown: Shown) -> Place {
        Place::of_exercise(self.seed, &drill.id, &self.exercise, (options, shown), self.number)
    }

    /// What shall be right in an exercise about old work.
    pub fn sought(&self, drill: &Drill) -> Sought {
        Sought::in_exercise(self.seed, drill, &self.exercise)
    }

    /// In which of so many wordings, all meaning the same, the exercise speaks of something.
    pub fn wording(&self, drill: &Drill, of: &str, wordings: usize) -> usize {
        below(&mut stream(self.seed, &["wording", of, &drill.id, &self.exercise]), wordings)
    }

    /// How the mixes of the exercise are worded.
    pub fn wording_of_mixes(&self, drill: &Drill) -> Wording {
        let any = [Wording::Plain, Wording::Full][self.wording(drill, "mixes", 2)];
        // Where all are bottles alone there is nothing to tell.
        if drill.limits.most_modifier_drops() == 0 { Wording::Plain } else { any }
    }

    /// Options in random order. The right option is given first.
    pub fn one_of(&self, drill: &Drill, options: Vec<Choice>) -> Form {
        let order = order_of(self.seed, &drill.id, &self.exercise, options.len());
        let key = order.iter().position(|&from| from == 0).unwrap_or(0);
        let mut slots: Vec<Option<Choice>> = options.into_iter().map(Some).collect();
        let options = order.iter().filter_map(|&from| slots[from].take()).collect();
        Form::One(OneOf { options, key, pictured: false })
    }

    /// The same, where the options' colours are part of the question.
    pub fn one_of_pictured(&self, drill: &Drill, options: Vec<Choice>) -> Form {
        match self.one_of(drill, options) {
            Form::One(one) => Form::One(OneOf { pictured: true, ..one }),
            other => other,
        }
    }

    /// The exercise.
    #[allow(clippy::too_many_arguments)] // The parts of an exercise, each once.
    pub fn finish(
        self,
        lesson: &Lesson,
        drill: &Drill,
        ask: String,
        case: Case,
        form: Form,
        proof: Option<Proof>,
        source: &str,
    ) -> Exercise {
        Exercise {
            drill: drill.id.clone(),
            number: self.exercise.parse().unwrap_or(0),
            family: drill.family,
            skill: drill.skill.clone(),
            lesson: lesson.id.clone(),
            ask,
            case: Some(case),
            form,
            proof,
            source: source.to_owned(),
            written: None,
        }
    }
}

/// The exercise with this number in a drill's pool.
///
/// # Errors
/// [`GenerateError`] when [`MAX_DRAWS`] draws could not be proved.
pub fn generate(
    course: &Course,
    lesson: &Lesson,
    drill: &Drill,
    number: u32,
) -> Result<Exercise, GenerateError> {
    prove(course, lesson, drill, number).0
}

/// The exercise with this number, and what proving it came to.
pub(super) fn prove(
    course: &Course,
    lesson: &Lesson,
    drill: &Drill,
    number: u32,
) -> (Result<Exercise, GenerateError>, Finding) {
    let mut failed = BTreeMap::new();
    if !drill.questions.is_empty() {
        if let Some(exercise) = bank::make(course, lesson, drill, number) {
            return (Ok(exercise), Finding::Accepted { draw: 0, held: None, failed });
        }
        failed.insert(Discard::Unresolved, 1);
    } else {
        let clients = clients_of(course, drill, number);
        for draw in 0..MAX_DRAWS {
            if clients.is_empty() {
                failed.insert(Discard::Unresolved, 1);
                break;
            }
            match attempt(course, lesson, drill, &clients, (number, draw), None) {
                Ok(exercise) => {
                    let held = exercise.proof.as_ref().map(|proof| proof.held);
                    return (Ok(exercise), Finding::Accepted { draw, held, failed });
                }
                Err(why) => *failed.entry(why).or_insert(0) += 1,
            }
        }
    }
    (Err(impossible(drill, number, failed.clone())), Finding::Impossible { failed })
}

#[cfg(feature = "program")]
/// The same as [`prove`] gives, from what an earlier proof found; `None` where that does not fit this drill.
pub(super) fn again(
    course: &Course,
    lesson: &Lesson,
    drill: &Drill,
    number: u32,
    finding: &Finding,
) -> Option<Result<Exercise, GenerateError>> {
    match finding {
        Finding::Impossible { failed } => Some(Err(impossible(drill, number, failed.clone()))),
        Finding::Accepted { draw, held, .. } => {
            let clients = clients_of(course, drill, number);
            if clients.is_empty() {
                return None;
            }
            attempt(course, lesson, drill, &clients, (number, *draw), *held)
                .ok()
                .filter(|exercise| exercise.proof.as_ref().map(|proof| proof.held) == *held)
                .map(Ok)
        }
    }
}

fn impossible(drill: &Drill, number: u32, failed: BTreeMap<Discard, u32>) -> GenerateError {
    GenerateError {
        drill: drill.id.clone(),
        number,
        draws: failed.values().sum(),
        failed,
        stands_at: drill.stands_at.clone(),
    }
}

/// A drill's clients in the order of their turns, of whom this number of its pool may tell.
fn clients_of<'c>(course: &'c Course, drill: &Drill, number: u32) -> Vec<&'c Client> {
    let mut clients: Vec<&Client> = drill.clients.iter().filter_map(|id| course.client(id)).collect();
    shuffle(&mut stream(course.seed, &["clients", &drill.id]), &mut clients);
    match drill.family {
        Family::Remedy => Sought::in_exercise(course.seed, drill, &number.to_string()).among(clients),
        _ => clients,
    }
}

/// One draw for a number of the pool; `held` is the count of worlds that held, where it is known.
fn attempt(
    course: &Course,
    lesson: &Lesson,
    drill: &Drill,
    clients: &[&Client],
    (number, draw): (u32, u32),
    held: Option<u32>,
) -> Result<Exercise, Discard> {
    let (exercise, draw_word) = (number.to_string(), draw.to_string());
    let turns = draw / draws_per_client(drill);
    let turn = number.wrapping_add(turns) as usize;
    let attempt = Attempt {
        seed: course.seed,
        client: clients[turn % clients.len()],
        rng: stream(course.seed, &["draw", &drill.id, &exercise, &draw_word]),
        exercise,
        draw: draw_word,
        number: draw,
        round: turns / clients.len() as u32,
        held,
    };
    let made = match drill.family {
        Family::Bottle => bottle::attempt(course, lesson, drill, attempt),
        Family::Drops => drops::attempt(course, lesson, drill, attempt),
        Family::Foresight => foresight::attempt(course, lesson, drill, attempt),
        Family::Hindsight => hindsight::attempt(course, lesson, drill, attempt),
        Family::Remedy => remedy::attempt(course, lesson, drill, attempt),
        Family::Skin => skin::attempt(course, lesson, drill, attempt),
        Family::Triage => triage::attempt(course, lesson, drill, attempt),
        Family::Light => light::attempt(course, lesson, drill, attempt),
        // Their drills have questions.
        Family::Sequence | Family::Recall => Err(Discard::Unresolved),
    }?;
    let asked_for =
        drill.difficulty.is_none_or(|band| engine_difficulty(&made).is_some_and(|of| band.holds(of)));
    if asked_for { Ok(made) } else { Err(Discard::OtherDifficulty) }
}
