//! Clients who can carry a case of a blueprint: for each of them every question of the case can be taken from the drills' pools.
//!
//! Entry point: [`carriers_of`], once a pool. A question without a client is about nobody, and goes with every client.

use super::pool::{Candidate, PoolError, PoolQuestion};
use crate::course::{Blueprint, Course};
use std::collections::BTreeSet;

/// A client who can carry a case.
#[derive(Debug)]
pub(super) struct Carrier {
    /// Place in the course.
    pub client: usize,
    /// The case's sections, by their places in the blueprint, each with the questions that this client can be asked there.
    sections: Vec<(usize, Vec<Candidate>)>,
}

impl Carrier {
    /// What this client can be asked in a section of the blueprint.
    pub fn candidates(&self, section: usize) -> &[Candidate] {
        let own = self.sections.iter().find(|(place, _)| *place == section);
        own.map_or(&[], |(_, candidates)| candidates)
    }
}

/// The clients who can carry a case, in the order of the course.
///
/// # Errors
/// [`PoolError::TooFewClients`] where there are fewer than the case wants, or fewer than there are cases: each has another client.
pub(super) fn carriers_of(
    course: &Course,
    blueprint: &Blueprint,
    case: usize,
    sections: &[Vec<Candidate>],
    questions: &[PoolQuestion],
) -> Result<Vec<Carrier>, PoolError> {
    let places: Vec<usize> =
        (0..blueprint.sections.len()).filter(|&place| blueprint.sections[place].case == Some(case)).collect();
    // Of two sections that could ask one question, the first has it.
    let mut seen = BTreeSet::new();
    let own: Vec<Vec<Candidate>> = places
        .iter()
        .map(|&place| {
            sections[place].iter().copied().filter(|candidate| seen.insert(candidate.question)).collect()
        })
        .collect();
    let of_client = |client: usize, candidates: &[Candidate]| -> Vec<Candidate> {
        let fits =
            |candidate: &&Candidate| questions[candidate.question].client.is_none_or(|asked| asked == client);
        candidates.iter().filter(fits).copied().collect()
    };
    // How many clients have enough questions in each of the sections.
    let mut enough = vec![0; places.len()];
    let mut carriers = Vec::new();
    for client in 0..course.clients.len() {
        let all: Vec<(usize, Vec<Candidate>)> = places
            .iter()
            .zip(&own)
            .map(|(&place, candidates)| (place, of_client(client, candidates)))
            .collect();
        let is_asked = |candidates: &[Candidate]| {
            candidates.iter().any(|candidate| questions[candidate.question].client.is_some())
        };
        let mut can = all.iter().any(|(_, candidates)| is_asked(candidates));
        for (at, (place, candidates)) in all.iter().enumerate() {
            let fills = candidates.len() >= blueprint.sections[*place].questions as usize;
            enough[at] += usize::from(fills);
            can &= fills;
        }
        if can {
            carriers.push(Carrier { client, sections: all });
        }
    }
    let wanted = (blueprint.cases[case].clients as usize).max(blueprint.cases.len());
    if carriers.len() >= wanted {
        return Ok(carriers);
    }
    let of_sections = places.iter().zip(&enough);
    Err(PoolError::TooFewClients {
        stands_at: blueprint.cases[case].stands_at.clone(),
        case: blueprint.cases[case].id.clone(),
        wanted,
        found: carriers.iter().map(|carrier| course.clients[carrier.client].id.clone()).collect(),
        enough: of_sections
            .map(|(&place, &clients)| (blueprint.sections[place].id.clone(), clients))
            .collect(),
    })
}
