//! The pool of a blueprint: every question its papers may ask, made once; papers then pick numbers.
//!
//! Entry point: [`PaperPool::new`]. Steps: find the drills each section draws on; make the exercises of their pools, proofs kept from
//! before being used; leave out what asks the same; give each question its difficulty, and leave out what lies outside the section's
//! band. A drill of which nothing is left is no error while others fill the section; it is kept among [`PaperPool::idle`].

use super::carriers::{Carrier, carriers_of};
use super::counted::counted;
use super::difficulty::{engine_difficulty, written_difficulty};
use super::idle::IdleDrill;
use super::question::{BottleTold, CaseTold, QuestionAsked, bottles_of};
use crate::course::{Blueprint, Course, Drill, Family, Judged, Lesson, Limits, nearest, quoted};
use crate::exercise::{Exercise, GenerateError, Proofs};
use rayon::prelude::*;
use sha2::{Digest, Sha256};
use std::collections::{BTreeMap, BTreeSet};
use thiserror::Error;

/// First number of a drill's pool that papers ask: none that a study page or a worksheet shows.
pub(super) const FIRST_NUMBER: u32 = 10_000;

/// How the names of the drills begin that stand for the bank's questions on one skill.
const BANK: &str = "bank:";

/// Why a blueprint has no pool.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum PoolError {
    /// There is no such blueprint.
    #[error("there is no blueprint {}; {}: {}", quoted(wanted), meant(nearest), known.join(", "))]
    NoBlueprint {
        /// The id asked for.
        wanted: String,
        /// The one that may be meant.
        nearest: Option<String>,
        /// Ids of all there are.
        known: Vec<String>,
    },
    /// A section has fewer questions than it is to ask.
    #[error(
        "{stands_at}: the section `{section}` asks {}, and its drills give {found}{}; name more `skills` or `drills`, \
         draw on the `bank`, widen its `difficulty`, or raise `pool`",
        counted(*wanted as usize, "question"),
        hints(failed)
    )]
    TooFew {
        /// Where the blueprint stands.
        stands_at: String,
        /// Id of the section.
        section: String,
        /// Questions to be asked.
        wanted: u32,
        /// Questions there are.
        found: usize,
        /// Exercises that could not be proved.
        failed: Vec<GenerateError>,
    },
    /// Too few clients can carry a case.
    #[error(
        "{stands_at}: {} the case `{case}`, and {wanted} are needed; clients with enough questions: {}; in the section with the fewest, \
         name more `clients` in its drills, name more `drills`, or raise `pool`",
        carrying(found),
        counts(enough)
    )]
    TooFewClients {
        /// Where the case stands.
        stands_at: String,
        /// Id of the case.
        case: String,
        /// Clients that are needed.
        wanted: usize,
        /// Ids of the clients who can carry it.
        found: Vec<String>,
        /// Of each section of the case, its id and how many clients have enough questions in it.
        enough: Vec<(String, usize)>,
    },
}

impl PoolError {
    /// Where it stands, in words, and what is wrong there.
    pub fn parts(&self) -> (&str, String) {
        let whole = self.to_string();
        let stands_at = match self {
            PoolError::NoBlueprint { .. } => "",
            PoolError::TooFew { stands_at, .. } | PoolError::TooFewClients { stands_at, .. } => stands_at,
        };
        let what = whole.strip_prefix(stands_at).and_then(|rest| rest.strip_prefix(": ")).unwrap_or(&whole);
        (stands_at, what.to_owned())
    }
}

fn meant(nearest: &Option<String>) -> String {
    let meant = nearest.as_ref().map(|nearest| format!("did you mean `{nearest}`? There are"));
    meant.unwrap_or_else(|| "there are".to_owned())
}

fn carrying(found: &[String]) -> String {
    match found {
        [] => "no client can carry".to_owned(),
        [one] => format!("only {one} can carry"),
        some => format!("only {} can carry", some.join(", ")),
    }
}

fn counts(enough: &[(String, usize)]) -> String {
    let told: Vec<String> =
        enough.iter().map(|(section, clients)| format!("`{section}` {clients}")).collect();
    told.join(", ")
}

fn hints(failed: &[GenerateError]) -> String {
    failed.first().map_or_else(String::new, |first| {
        format!(" ({} could not be proved, such as: {first})", failed.len())
    })
}

/// A question that papers may ask.
#[derive(Debug)]
pub struct PoolQuestion {
    /// The exercise.
    pub exercise: Exercise,
    /// What is asked, in JSON, without a key.
    pub json: String,
    /// The same below a case that tells of the client; none where no case asks it.
    pub within_case: Option<String>,
    /// Digest of what is asked.
    pub digest: [u8; 32],
    /// Place of the client in the course.
    pub client: Option<usize>,
    /// Places on the shelf of the bottles it names.
    pub bottles: BTreeSet<usize>,
}

impl PoolQuestion {
    /// The drill and the number in its pool, by which the same exercise is made again: "wider-choice 10003".
    pub fn name(&self) -> String {
        format!("{} {}", self.exercise.drill, self.exercise.number)
    }
}

/// A question among those of a section.
#[derive(Debug, Clone, Copy)]
pub(super) struct Candidate {
    /// Place in [`PaperPool::questions`].
    pub question: usize,
    /// Its difficulty in this section.
    pub difficulty: f64,
    /// The drill it comes from, numbered within the section.
    pub drill: usize,
}

/// Every question of a blueprint.
#[derive(Debug)]
pub struct PaperPool<'c> {
    /// The course.
    pub course: &'c Course,
    /// The blueprint.
    pub blueprint: &'c Blueprint,
    /// Every question once.
    pub questions: Vec<PoolQuestion>,
    /// Drills that give a section nothing, each once.
    pub idle: Vec<IdleDrill>,
    /// Those of each section.
    pub(super) sections: Vec<Vec<Candidate>>,
    /// Who can carry each case.
    pub(super) cases: Vec<Vec<Carrier>>,
    /// Every bottle of the shelf as a paper tells of it, in JSON.
    pub(super) bottles: Vec<String>,
}

impl<'c> PaperPool<'c> {
    /// The pool of the blueprint with this id, made on all cores; `observe` is told of each exercise made.
    ///
    /// # Errors
    /// [`PoolError`] where there is no such blueprint, or a section of it cannot be filled.
    pub fn new(
        course: &'c Course,
        blueprint: &str,
        proofs: &Proofs,
        observe: impl Fn() + Sync,
    ) -> Result<Self, PoolError> {
        let blueprint = course.blueprint(blueprint).ok_or_else(|| {
            let known: Vec<String> = course.blueprints.iter().map(|known| known.id.clone()).collect();
            let nearest = nearest(blueprint, known.iter().map(String::as_str)).map(str::to_owned);
            PoolError::NoBlueprint { wanted: blueprint.to_owned(), nearest, known }
        })?;
        let sources: Vec<Vec<(&Lesson, Drill)>> =
            blueprint.sections.iter().map(|section| sources_of(course, section)).collect();
        let wanted: BTreeMap<(&str, u32), (&Lesson, &Drill)> = sources
            .iter()
            .flatten()
            .flat_map(|(lesson, drill)| {
                numbers_of(drill, blueprint.pool)
                    .map(move |number| ((drill.id.as_str(), number), (*lesson, drill)))
            })
            .collect();
        let made: BTreeMap<(&str, u32), Result<Exercise, GenerateError>> = wanted
            .par_iter()
            .map(|(&(id, number), &(lesson, drill))| {
                let exercise = proofs.generate(course, lesson, drill, number);
                observe();
                ((id, number), exercise)
            })
            .collect();
        let mut pool = PaperPool {
            course,
            blueprint,
            questions: Vec::new(),
            idle: Vec::new(),
            sections: Vec::new(),
            cases: Vec::new(),
            bottles: bottles_json(course),
        };
        let mut places: BTreeMap<(&str, u32), usize> = BTreeMap::new();
        let mut asked: BTreeMap<String, usize> = BTreeMap::new();
        for (&name, exercise) in &made {
            let Ok(exercise) = exercise else { continue };
            let next = pool.questions.len();
            let place = *asked.entry(exercise.question()).or_insert(next);
            if place == next {
                pool.questions.push(pool_question(course, exercise.clone()));
            }
            places.insert(name, place);
        }
        for (at, drills) in sources.iter().enumerate() {
            let candidates = pool.candidates_of(at, drills, &made, &places)?;
            pool.sections.push(candidates);
        }
        for case in 0..blueprint.cases.len() {
            let carriers = carriers_of(course, blueprint, case, &pool.sections, &pool.questions)?;
            pool.cases.push(carriers);
        }
        pool.tell_within_cases();
        Ok(pool)
    }

    /// What a section may ask, of the exercises made and where they are among the questions.
    fn candidates_of(
        &mut self,
        at: usize,
        drills: &[(&Lesson, Drill)],
        made: &BTreeMap<(&str, u32), Result<Exercise, GenerateError>>,
        places: &BTreeMap<(&str, u32), usize>,
    ) -> Result<Vec<Candidate>, PoolError> {
        let section = &self.blueprint.sections[at];
        let mut candidates: Vec<Candidate> = Vec::new();
        let mut seen = BTreeSet::new();
        let mut failed = Vec::new();
        for (drill_place, (_, drill)) in drills.iter().enumerate() {
            let before = candidates.len();
            let mut idle = IdleDrill::new(drill, self.blueprint, section);
            for number in numbers_of(drill, self.blueprint.pool) {
                let name = (drill.id.as_str(), number);
                if let Some(Err(error)) = made.get(&name) {
                    failed.push(error.clone());
                    idle.count_unproved(error);
                }
                let Some(&question) = places.get(&name) else { continue };
                let difficulty = engine_difficulty(&self.questions[question].exercise)
                    .unwrap_or_else(|| written_difficulty(self.blueprint, at));
                if !section.difficulty.holds(difficulty) {
                    idle.count_outside(difficulty, section.difficulty);
                } else if seen.insert(question) {
                    candidates.push(Candidate { question, difficulty, drill: drill_place });
                } else {
                    idle.same += 1;
                }
            }
            if candidates.len() == before {
                note(&mut self.idle, idle);
            }
        }
        if candidates.len() < section.questions as usize {
            return Err(PoolError::TooFew {
                stands_at: self.blueprint.stands_at.clone(),
                section: section.id.clone(),
                wanted: section.questions,
                found: candidates.len(),
                failed,
            });
        }
        Ok(candidates)
    }

    /// Words the questions of cases without what a case tells.
    fn tell_within_cases(&mut self) {
        let in_cases: BTreeSet<usize> = self
            .blueprint
            .sections
            .iter()
            .zip(&self.sections)
            .filter(|(section, _)| section.case.is_some())
            .flat_map(|(_, candidates)| candidates.iter().map(|candidate| candidate.question))
            .collect();
        for place in in_cases {
            let question = &mut self.questions[place];
            let told =
                question.client.map(|client| CaseTold::new(self.course, &self.course.clients[client], true));
            let asked = QuestionAsked::new(self.course, &question.exercise);
            let within = asked.within(told.as_ref());
            question.within_case = Some(serde_json::to_string(&within).unwrap_or_default());
        }
    }

    /// How many exercises [`PaperPool::new`] makes for a blueprint.
    pub fn size(course: &Course, blueprint: &Blueprint) -> usize {
        let sections = blueprint.sections.iter();
        let all: BTreeSet<(String, u32)> = sections
            .flat_map(|section| sources_of(course, section))
            .flat_map(|(_, drill)| {
                numbers_of(&drill, blueprint.pool)
                    .map(move |number| (drill.id.clone(), number))
                    .collect::<Vec<_>>()
            })
            .collect();
        all.len()
    }
}

/// Notes a drill that gives a section nothing, once where that has the same reasons in several sections. A drill that asks only what others ask
/// is none: its questions come.
fn note(noted: &mut Vec<IdleDrill>, idle: IdleDrill) {
    if idle.unproved == 0 && idle.outside.is_none() {
        return;
    }
    let reasons = |one: &IdleDrill| (one.drill.clone(), one.unproved, one.same, one.outside);
    match noted.iter_mut().find(|known| reasons(known) == reasons(&idle)) {
        Some(known) => known.sections.extend(idle.sections),
        None => noted.push(idle),
    }
}

fn bottles_json(course: &Course) -> Vec<String> {
    let told = course.shelf.bottles.iter().map(|bottle| BottleTold::new(course, bottle));
    told.map(|bottle| serde_json::to_string(&bottle).unwrap_or_default()).collect()
}

fn pool_question(course: &Course, exercise: Exercise) -> PoolQuestion {
    let asked = QuestionAsked::new(course, &exercise);
    // A struct of texts and numbers always serialises.
    let json = serde_json::to_string(&asked).unwrap_or_default();
    let client = exercise.case.as_ref().map(|case| case.client.as_str());
    PoolQuestion {
        client: client.and_then(|id| course.clients.iter().position(|client| client.id == id)),
        digest: Sha256::digest(json.as_bytes()).into(),
        bottles: bottles_of(course, &exercise),
        exercise,
        json,
        within_case: None,
    }
}

/// Numbers of a drill's pool that papers pick from. A drill with written questions asks each of them once.
fn numbers_of(drill: &Drill, pool: u32) -> std::ops::Range<u32> {
    let count = if drill.questions.is_empty() { pool } else { drill.questions.len() as u32 };
    FIRST_NUMBER..FIRST_NUMBER + count
}

/// Drills that a section draws on, in teaching order, the bank's questions last.
fn sources_of<'c>(course: &'c Course, section: &crate::course::Section) -> Vec<(&'c Lesson, Drill)> {
    let mut sources: Vec<(&Lesson, Drill)> = course
        .drills()
        .filter(|(_, drill)| section.skills.contains(&drill.skill) || section.drills.contains(&drill.id))
        .map(|(lesson, drill)| (lesson, drill.clone()))
        .collect();
    if section.case.is_some() {
        // A case takes its course in the order that the blueprint names.
        sources.sort_by_key(|(_, drill)| {
            section.drills.iter().position(|id| *id == drill.id).unwrap_or(section.drills.len())
        });
    }
    if section.bank {
        sources.extend(section.skills.iter().filter_map(|skill| bank_drill(course, skill)));
    }
    sources
}

/// All questions of the bank about a skill, as a drill.
fn bank_drill<'c>(course: &'c Course, skill: &str) -> Option<(&'c Lesson, Drill)> {
    let questions: Vec<String> = course
        .questions
        .iter()
        .filter(|question| question.skill == skill)
        .map(|question| question.id.clone())
        .collect();
    let (_, lesson) = course.lessons().next().filter(|_| !questions.is_empty())?;
    let drill = Drill {
        id: format!("{BANK}{skill}"),
        family: Family::Recall,
        skill: skill.to_owned(),
        exercises: 0,
        options: 0,
        clients: Vec::new(),
        goals: Vec::new(),
        further_goals: false,
        limits: Limits { bottles: Vec::new(), modifiers: Vec::new(), drops: 0, modifier_drops: 0 },
        judged: Judged { months: 0.0, light: crate::colour::Light::D65 },
        tempts: Vec::new(),
        margin: 0.0,
        difficulty: None,
        questions,
        ages_months: Vec::new(),
        skin_asks: crate::course::SkinAsks::Reading,
        stands_at: String::new(),
    };
    Some((lesson, drill))
}
