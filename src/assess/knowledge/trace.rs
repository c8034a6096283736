//! What one apprentice probably knows of one skill. Entry points: [`Knowledge::answered`], [`Knowledge::known_at`].

use super::parameters::{GUESS_MOST, Parameters};
use super::{DAY, Seconds};
use serde::Serialize;

/// How often spaced right answers double the half-life at most.
const MOST_DOUBLINGS: u32 = 5;

/// The trace of one skill.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Knowledge {
    /// Chance that the skill was known right after the last answer, 0 to 1.
    pub known: f64,
    /// Answers so far.
    pub answers: u32,
    /// Sum of their credits.
    pub credit: f64,
    /// When the last one was given; `None` before the first.
    pub last: Option<Seconds>,
    /// Right answers at least a day after the one counted before: each doubles the half-life.
    pub spaced: u32,
    /// When the last of those was given.
    pub last_spaced: Option<Seconds>,
}

impl Knowledge {
    /// Before the first answer.
    pub fn new(parameters: &Parameters) -> Self {
        Knowledge {
            known: parameters.initial,
            answers: 0,
            credit: 0.0,
            last: None,
            spaced: 0,
            last_spaced: None,
        }
    }

    /// Days in which half of what was learnt is lost.
    pub fn half_life_days(&self, parameters: &Parameters) -> f64 {
        // The first right answer begins the first half-life; every further one on another day doubles it.
        (1..self.spaced.min(MOST_DOUBLINGS + 1)).fold(parameters.half_life_days, |days, _| days * 2.0)
    }

    /// Chance that the skill is known at some time. A time before the last answer counts as that answer's: a clock set back
    /// takes nothing away.
    pub fn known_at(&self, parameters: &Parameters, now: Seconds) -> f64 {
        let Some(last) = self.last else { return self.known };
        let days = now.saturating_sub(last).max(0) as f64 / DAY as f64;
        let base = self.known.min(parameters.initial);
        let kept = libm::exp2(-days / self.half_life_days(parameters));
        (base + (self.known - base) * kept).clamp(0.0, 1.0)
    }

    /// Days from `now` until the chance that the skill is known falls below `least`, without practice; 0 where it is below already, `None`
    /// where it never falls so far, or nothing was answered yet.
    pub fn days_above(&self, parameters: &Parameters, least: f64, now: Seconds) -> Option<f64> {
        let last = self.last?;
        if self.known_at(parameters, now) < least {
            return Some(0.0);
        }
        let base = self.known.min(parameters.initial);
        if base >= least {
            return None;
        }
        // known_at solved for the time: known - base halves in every half-life until it is least - base.
        let after = self.half_life_days(parameters) * libm::log2((self.known - base) / (least - base));
        let passed = now.saturating_sub(last).max(0) as f64 / DAY as f64;
        Some((after - passed).max(0.0))
    }

    /// Chance of a right answer at some time, to a question that is guessed with chance `guess`.
    pub fn expected(&self, parameters: &Parameters, guess: f64, now: Seconds) -> f64 {
        let known = self.known_at(parameters, now);
        known * (1.0 - parameters.slip) + (1.0 - known) * bounded(guess)
    }

    /// The trace after an answer.
    ///
    /// Right: known · (1 - slip) / chance of right; wrong: known · slip / chance of wrong (Bayes' rule); then learning:
    /// what is not known yet is with chance `learn`. A credit between 0 and 1 is weighted evidence: the mean of both
    /// outcomes, the right one weighted by the credit (Jeffrey's rule of conditioning on evidence that is itself
    /// uncertain). Credit outside 0 to 1 counts as the nearer end, and one that is no number as 0.
    pub fn answered(&self, parameters: &Parameters, guess: f64, credit: f64, now: Seconds) -> Knowledge {
        let (guess, slip) = (bounded(guess), parameters.slip);
        let credit = if credit.is_nan() { 0.0 } else { credit.clamp(0.0, 1.0) };
        let known = self.known_at(parameters, now);
        let right = posterior(known, 1.0 - slip, guess);
        let wrong = posterior(known, slip, 1.0 - guess);
        let seen = credit * right + (1.0 - credit) * wrong;
        let spaced = credit >= 1.0 && self.last_spaced.is_none_or(|last| now.saturating_sub(last) >= DAY);
        Knowledge {
            known: (seen + (1.0 - seen) * parameters.learn).clamp(0.0, 1.0),
            answers: self.answers.saturating_add(1),
            credit: self.credit + credit,
            last: Some(self.last.map_or(now, |last| last.max(now))),
            spaced: self.spaced.saturating_add(u32::from(spaced)),
            last_spaced: if spaced { Some(now) } else { self.last_spaced },
        }
    }
}

fn bounded(guess: f64) -> f64 {
    if guess.is_nan() { GUESS_MOST } else { guess.clamp(0.0, GUESS_MOST) }
}

/// Bayes' rule; where the evidence is impossible both ways, nothing is learnt from it.
fn posterior(known: f64, if_known: f64, if_not: f64) -> f64 {
    let both = known * if_known + (1.0 - known) * if_not;
    if both > 0.0 { (known * if_known / both).clamp(0.0, 1.0) } else { known }
}
