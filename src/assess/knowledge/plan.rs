//! A session that fits into so many minutes. Entry point: [`plan`].

use super::Seconds;
use super::choice::{Offer, Recent, SkillNeeds, choose};
use super::parameters::Parameters;
use super::progress::Progress;

/// Most questions of one plan: a bound for careless minutes, far beyond a sitting.
pub const MOST_STEPS: usize = 500;

/// One question of a plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    /// Index of the offer.
    pub offer: usize,
    /// Minutes from the beginning of the session at which it starts.
    pub from_minute: f64,
    /// Minutes it takes.
    pub minutes: f64,
    /// Chance, as the plan foresees it, that the skill is known by then.
    pub known: f64,
}

/// Questions in order, until no offer fits into the minutes that are left.
///
/// The plan chooses as [`choose`] does and takes every answer to turn out as it expects: with the credit that it foresees.
/// The real session may choose anew after every answer. Offers whose minutes are not above 0 are left out.
pub fn plan(
    offers: &[Offer<'_>],
    needs: &[SkillNeeds<'_>],
    progress: &Progress,
    parameters: &Parameters,
    minutes: f64,
    now: Seconds,
) -> Vec<Step> {
    let (mut progress, mut recent) = (progress.clone(), Recent::default());
    let (mut steps, mut used) = (Vec::new(), 0.0);
    while steps.len() < MOST_STEPS {
        let fitting: Vec<usize> = (0..offers.len())
            .filter(|&at| offers[at].minutes > 0.0 && used + offers[at].minutes <= minutes)
            .collect();
        let choices: Vec<Offer<'_>> = fitting.iter().map(|&at| offers[at]).collect();
        // The seconds of the session so far; whole ones, as everywhere.
        let then = now.saturating_add((used * 60.0) as Seconds);
        let Some(best) = choose(&choices, needs, &progress, parameters, &recent, then) else { break };
        let offer = &choices[best];
        let trace = progress.knowledge(offer.skill, parameters);
        let known = trace.known_at(parameters, then);
        let credit = trace.expected(parameters, offer.guess, then);
        steps.push(Step { offer: fitting[best], from_minute: used, minutes: offer.minutes, known });
        progress.answered(offer.skill, parameters, offer.guess, credit, then);
        recent.asked(offer);
        used += offer.minutes;
    }
    steps
}
