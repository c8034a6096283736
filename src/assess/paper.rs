//! Papers: a pure function of course version, blueprint, candidate and seed.
//!
//! Entry point: [`PaperPool::paper`]. Steps:
//!
//! 1. each case draws its client among those who can carry it, each another one; each section takes questions from its drills in turn,
//!    in an order drawn by the seed: no question twice, no client again while another can come, none more often than the blueprint
//!    allows; a case's sections ask about its client alone;
//! 2. while the difficulty of the whole lies outside the blueprint's band, a question drawn by the seed is exchanged for another of
//!    the same drill (later of the same section) that brings it nearer; where that is out of reach for the clients of the cases, others
//!    are drawn;
//! 3. the questions of each section are shuffled, but for those of a case, which keep the order of their drills.

use super::carriers::Carrier;
use super::pool::{Candidate, PaperPool};
use crate::exercise::{below, shuffle, stream};
use rand_chacha::ChaCha8Rng;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use thiserror::Error;

/// Orders tried before a section is found impossible to fill.
const MOST_ORDERS: u32 = 40;
/// Exchanges tried before the band is found out of reach.
const MOST_EXCHANGES: u32 = 20_000;
/// The same, where a paper has cases: other clients come sooner than the last exchange.
const MOST_EXCHANGES_OF_CASES: u32 = 3_000;
/// Draws of clients for the cases before the band is found out of reach.
const MOST_DRAWS: u32 = 60;
/// Of these, exchanges within a drill.
const WITHIN_DRILL: u32 = 2_000;

/// What a paper is made from, and by which it is made again.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
pub struct PaperId {
    /// Version of the course.
    pub course: String,
    /// Id of the blueprint.
    pub blueprint: String,
    /// Id of the candidate.
    pub candidate: String,
    /// The seed.
    pub seed: u64,
    /// Digest of what is asked: another one means another paper, whatever the rest says.
    pub digest: String,
}

/// One concrete assessment.
#[derive(Debug, Clone, PartialEq)]
pub struct Paper {
    /// What it is made from.
    pub id: PaperId,
    /// Its questions, section by section.
    pub questions: Vec<Picked>,
    /// The client of each case of the blueprint, as places in the course.
    pub clients: Vec<usize>,
    /// Its difficulty: that of its questions, weighted as the sections are; 0 to 1.
    pub difficulty: f64,
}

/// A question of a paper.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Picked {
    /// Place of the section in the blueprint.
    pub section: usize,
    /// Place of the question in the pool.
    pub question: usize,
    /// Its difficulty.
    pub difficulty: f64,
    /// The drill it comes from, numbered within the section.
    drill: usize,
}

/// Why no paper could be picked.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum AssembleError {
    /// Clients would come too often.
    #[error(
        "{stands_at}: the section `{section}` cannot be filled without a client coming more than {most} times; raise `most_per_client` \
         or `pool`, or ask fewer questions"
    )]
    Clients {
        /// Where the blueprint stands.
        stands_at: String,
        /// Id of the section.
        section: String,
        /// Questions in which one client may come.
        most: u32,
    },
    /// The band is out of reach.
    #[error(
        "{stands_at}: no paper of this seed has a difficulty within {least} to {most}; the nearest found has {nearest:.3}: move the band \
         there, widen it, or raise `pool`"
    )]
    Band {
        /// Where the blueprint stands.
        stands_at: String,
        /// Least difficulty allowed.
        least: f64,
        /// Most difficulty allowed.
        most: f64,
        /// What was reached.
        nearest: f64,
    },
}

/// A paper while it is picked.
struct Picking<'p> {
    pool: &'p PaperPool<'p>,
    questions: Vec<Picked>,
    /// Whether each question of the pool is in the paper.
    taken: Vec<bool>,
    /// How often each client comes.
    clients: BTreeMap<usize, u32>,
    /// Who carries each case.
    carriers: Vec<&'p Carrier>,
}

impl PaperPool<'_> {
    /// The paper of a candidate and a seed.
    ///
    /// # Errors
    /// [`AssembleError`] where the blueprint's rules cannot be kept.
    pub fn paper(&self, candidate: &str, seed: u64) -> Result<Paper, AssembleError> {
        let words = ["paper", &self.course.version, &self.blueprint.id, candidate];
        let mut rng = stream(seed, &words);
        let picking = self.pick(&mut rng)?;
        let clients = picking.carriers.iter().map(|carrier| carrier.client).collect();
        let difficulty = picking.difficulty();
        let mut questions = picking.questions;
        let mut start = 0;
        for section in &self.blueprint.sections {
            let end = start + section.questions as usize;
            shuffle(&mut rng, &mut questions[start..end]);
            if section.case.is_some() {
                questions[start..end].sort_by_key(|picked| picked.drill);
            }
            start = end;
        }
        let mut hash = Sha256::new();
        for word in words {
            hash.update((word.len() as u64).to_le_bytes());
            hash.update(word.as_bytes());
        }
        hash.update(seed.to_le_bytes());
        for picked in &questions {
            hash.update((picked.section as u64).to_le_bytes());
            hash.update(self.questions[picked.question].digest);
        }
        let digest: String = hash.finalize().iter().take(10).map(|byte| format!("{byte:02x}")).collect();
        let id = PaperId {
            course: self.course.version.clone(),
            blueprint: self.blueprint.id.clone(),
            candidate: candidate.to_owned(),
            seed,
            digest,
        };
        Ok(Paper { id, questions, clients, difficulty })
    }

    /// Every section filled, and the difficulty of the whole within its band.
    fn pick(&self, rng: &mut ChaCha8Rng) -> Result<Picking<'_>, AssembleError> {
        let draws = if self.cases.is_empty() { 1 } else { MOST_DRAWS };
        let mut drawn = 1;
        loop {
            let mut picking = self.fill(rng)?;
            match picking.repair(rng) {
                Ok(()) => return Ok(picking),
                Err(error) if drawn == draws => return Err(error),
                Err(_) => drawn += 1,
            }
        }
    }

    /// A client for each case, none twice.
    fn draw_carriers(&self, rng: &mut ChaCha8Rng) -> Vec<&Carrier> {
        let mut drawn: Vec<&Carrier> = Vec::with_capacity(self.cases.len());
        for carriers in &self.cases {
            let left: Vec<&Carrier> = carriers
                .iter()
                .filter(|carrier| drawn.iter().all(|other| other.client != carrier.client))
                .collect();
            // There are at least as many carriers of each case as there are cases.
            drawn.push(left[below(rng, left.len())]);
        }
        drawn
    }

    /// Every section filled; the difficulty of the whole is not looked at yet.
    fn fill(&self, rng: &mut ChaCha8Rng) -> Result<Picking<'_>, AssembleError> {
        let mut unfilled = 0;
        for _ in 0..MOST_ORDERS {
            let carriers = self.draw_carriers(rng);
            let mut picking = Picking {
                pool: self,
                questions: Vec::new(),
                taken: vec![false; self.questions.len()],
                // Who has a case comes nowhere else.
                clients: carriers
                    .iter()
                    .map(|carrier| (carrier.client, self.blueprint.most_per_client))
                    .collect(),
                carriers,
            };
            let stuck = (0..self.sections.len()).find(|&section| !picking.fill_section(section, rng));
            match stuck {
                None => return Ok(picking),
                Some(section) => unfilled = section,
            }
        }
        Err(AssembleError::Clients {
            stands_at: self.blueprint.stands_at.clone(),
            section: self.blueprint.sections[unfilled].id.clone(),
            most: self.blueprint.most_per_client,
        })
    }
}

impl Picking<'_> {
    /// What may be asked in a section.
    fn candidates(&self, section: usize) -> &[Candidate] {
        match self.pool.blueprint.sections[section].case {
            Some(case) => self.carriers[case].candidates(section),
            None => &self.pool.sections[section],
        }
    }

    /// Fills a section; false where its rules cannot be kept in this order.
    fn fill_section(&mut self, section: usize, rng: &mut ChaCha8Rng) -> bool {
        let mut candidates = self.candidates(section).to_vec();
        shuffle(rng, &mut candidates);
        // Drill by drill in turn, so that none of them fills the section alone; which one begins is drawn too.
        let mut turns: BTreeMap<usize, usize> = BTreeMap::new();
        let mut first_seen = Vec::new();
        for candidate in &candidates {
            if !first_seen.contains(&candidate.drill) {
                first_seen.push(candidate.drill);
            }
        }
        let mut ordered: Vec<(usize, usize, Candidate)> = candidates
            .into_iter()
            .map(|candidate| {
                let turn = turns.entry(candidate.drill).or_insert(0);
                *turn += 1;
                let begins = first_seen.iter().position(|drill| *drill == candidate.drill).unwrap_or(0);
                (*turn, begins, candidate)
            })
            .collect();
        ordered.sort_by_key(|(turn, begins, _)| (*turn, *begins));
        let mut missing = self.pool.blueprint.sections[section].questions;
        // A client comes again only when nobody else is left.
        for most in 1..=self.pool.blueprint.most_per_client {
            for (_, _, candidate) in &ordered {
                if missing == 0 {
                    return true;
                }
                if self.may_take(section, *candidate, most) {
                    self.take(section, *candidate);
                    missing -= 1;
                }
            }
        }
        missing == 0
    }

    fn may_take(&self, section: usize, candidate: Candidate, most: u32) -> bool {
        let is_of_case = self.pool.blueprint.sections[section].case.is_some();
        !self.taken[candidate.question] && (is_of_case || self.times(candidate.question) < most)
    }

    /// How often the client of a question comes already; a question without a client is always new.
    fn times(&self, question: usize) -> u32 {
        let client = self.pool.questions[question].client;
        client.and_then(|client| self.clients.get(&client)).copied().unwrap_or(0)
    }

    fn take(&mut self, section: usize, candidate: Candidate) {
        self.count(candidate.question, true);
        let Candidate { question, difficulty, drill } = candidate;
        self.questions.push(Picked { section, question, difficulty, drill });
    }

    /// Notes that a question comes in, or goes.
    fn count(&mut self, question: usize, comes: bool) {
        self.taken[question] = comes;
        if let Some(client) = self.pool.questions[question].client {
            let times = self.clients.entry(client).or_insert(0);
            *times = if comes { *times + 1 } else { times.saturating_sub(1) };
        }
    }

    /// Difficulty of the whole.
    fn difficulty(&self) -> f64 {
        self.questions.iter().map(|picked| self.share(picked.section) * picked.difficulty).sum()
    }

    /// A question's share of the whole mark, 0 to 1.
    fn share(&self, section: usize) -> f64 {
        let section = &self.pool.blueprint.sections[section];
        section.weight / 100.0 / f64::from(section.questions)
    }

    /// Exchanges questions until the difficulty of the whole lies within the band.
    fn repair(&mut self, rng: &mut ChaCha8Rng) -> Result<(), AssembleError> {
        let band = self.pool.blueprint.difficulty;
        let most_exchanges = if self.carriers.is_empty() { MOST_EXCHANGES } else { MOST_EXCHANGES_OF_CASES };
        let mut difficulty = self.difficulty();
        for tried in 0..most_exchanges {
            if band.holds(difficulty) {
                return Ok(());
            }
            let at = below(rng, self.questions.len());
            let old = self.questions[at];
            let candidates = self.candidates(old.section);
            let new = candidates[below(rng, candidates.len())];
            let changed = difficulty + self.share(old.section) * (new.difficulty - old.difficulty);
            let nearer = (changed - band.middle()).abs() < (difficulty - band.middle()).abs();
            if !nearer || (tried < WITHIN_DRILL && new.drill != old.drill) || self.taken[new.question] {
                continue;
            }
            self.count(old.question, false);
            if self.may_take(old.section, new, self.pool.blueprint.most_per_client) {
                self.count(new.question, true);
                let Candidate { question, difficulty: own, drill } = new;
                self.questions[at] = Picked { section: old.section, question, difficulty: own, drill };
                // Summed anew, so that no error of rounding gathers.
                difficulty = self.difficulty();
            } else {
                self.count(old.question, true);
            }
        }
        Err(AssembleError::Band {
            stands_at: self.pool.blueprint.stands_at.clone(),
            least: band.least,
            most: band.most,
            nearest: difficulty,
        })
    }
}
