//! Which wrong beliefs one person's answers speak for. Entry points: [`diagnosis`] for the one they speak for most, [`misconceptions_of`]
//! for how often each was offered and chosen, with those that stand out by the same measure.
//!
//! Two accounts of the same answers are compared. By the one, a person of some skill is right with that chance and otherwise takes any
//! wrong option. By the other, the person holds a belief of some firmness besides: where it is offered it decides the answer with
//! that chance, and elsewhere the skill does. Skill and firmness are not known, so each account is averaged over them; the ratio of
//! the averages is the Bayes factor (Kass and Raftery, "Bayes factors", Journal of the American Statistical Association 90, 1995). The
//! models are a mixture of guessing with a bug that always gives its own wrong answer, as in diagnosis of arithmetic by rules (Brown
//! and Burton, "Diagnostic models for procedural bugs in basic mathematical skills", Cognitive Science 2, 1978).

use super::misconceptions::{FEWEST_CHOICES, Leads, MisconceptionCount, Shown, misconceptions};
use std::collections::BTreeMap;

/// Skills over which an account is averaged, each as likely as the others. Common practice, no source.
const SKILLS: [f64; 10] = [0.05, 0.15, 0.25, 0.35, 0.45, 0.55, 0.65, 0.75, 0.85, 0.95];
/// Degrees of firmness of a belief, each as likely as the others. What decides fewer than three answers in ten is no habit. Common
/// practice, no source.
const FIRMNESSES: [f64; 7] = [0.35, 0.45, 0.55, 0.65, 0.75, 0.85, 0.95];
/// The Bayes factor from which a belief stands out: from here on Kass and Raftery call evidence strong.
const STRONG: f64 = 20.0;

/// A belief for which a person's answers speak.
#[derive(Debug, Clone, PartialEq)]
pub struct Belief {
    /// Id of the misconception.
    pub misconception: String,
    /// How many times as likely the answers are of somebody who holds it than of somebody who holds none.
    pub bayes_factor: f64,
}

/// The belief for which one person's answers speak most, if it stands out; `None` where none does. Of equals the first by id.
pub fn diagnosis(shown: &[Shown<'_>]) -> Option<Belief> {
    beliefs(shown)
        .into_iter()
        .filter(|(_, factor)| *factor >= STRONG)
        .rev()
        .max_by(|(_, one), (_, other)| one.total_cmp(other))
        .map(|(id, bayes_factor)| Belief { misconception: id.to_owned(), bayes_factor })
}

/// The misconceptions of one person, as [`misconceptions`] counts them, except that those stand out for which the answers speak.
pub fn misconceptions_of(shown: &[Shown<'_>]) -> Vec<MisconceptionCount> {
    let beliefs = beliefs(shown);
    let mut counts = misconceptions(shown.iter().copied());
    for count in &mut counts {
        count.stands_out = beliefs.get(&*count.misconception).is_some_and(|factor| *factor >= STRONG);
    }
    counts
}

/// Every belief that was chosen at least [`FEWEST_CHOICES`] times, with its Bayes factor against none.
fn beliefs<'a>(shown: &[Shown<'a>]) -> BTreeMap<&'a str, f64> {
    let mut tallies: BTreeMap<&str, Tally> = BTreeMap::new();
    let (mut right, mut wrong) = (0, 0);
    for question in shown {
        let Some(chosen) = question.chosen.and_then(|at| question.options.get(at)) else { continue };
        match chosen {
            Leads::Right => right += 1,
            _ => wrong += 1,
        }
        let wrong_options = question.options.iter().filter(|option| **option != Leads::Right).count();
        let mut leading: BTreeMap<&str, usize> = BTreeMap::new();
        for option in question.options {
            if let Leads::From(id) = option {
                *leading.entry(id).or_default() += 1;
            }
        }
        for (id, options) in leading {
            let tally = tallies.entry(id).or_default();
            match chosen {
                Leads::Right => tally.right += 1,
                Leads::From(other) if *other == id => {
                    tally.chosen.push(wrong_options as f64 / options as f64)
                }
                _ => tally.otherwise += 1,
            }
        }
    }
    tallies
        .into_iter()
        .filter(|(_, tally)| tally.chosen.len() >= FEWEST_CHOICES)
        .map(|(id, tally)| (id, tally.factor(right, wrong)))
        .collect()
}

/// The answers to questions that offered a belief.
#[derive(Default)]
struct Tally {
    right: usize,
    /// Wrong in some other way.
    otherwise: usize,
    /// Where an option to which it leads was chosen: wrong options for each such option.
    chosen: Vec<f64>,
}

impl Tally {
    /// The Bayes factor for the belief against none, of a person with so many right and wrong answers in all.
    fn factor(&self, right: usize, wrong: usize) -> f64 {
        // Logarithms of likelihoods, but for a factor that all accounts share: which of the wrong options is taken by chance.
        let skilled = |skill: f64| right as f64 * libm::log(skill) + wrong as f64 * libm::log(1.0 - skill);
        let without: Vec<f64> = SKILLS.iter().map(|&skill| skilled(skill)).collect();
        let most = without.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let mut with = 0.0;
        for (skill, without) in SKILLS.iter().zip(&without) {
            for firmness in FIRMNESSES {
                let spared = libm::log(1.0 - firmness) * (self.right + self.otherwise) as f64;
                let followed: f64 = self
                    .chosen
                    .iter()
                    .map(|options| libm::log(firmness * options / (1.0 - skill) + 1.0 - firmness))
                    .sum();
                with += libm::exp(without + spared + followed - most) / FIRMNESSES.len() as f64;
            }
        }
        with / without.iter().map(|without| libm::exp(without - most)).sum::<f64>()
    }
}
