//! A person's ability at known difficulties. Entry point: [`measure`].

use super::Answers;

/// An ability.
#[derive(Debug, Clone, Copy)]
pub(super) struct Measure {
    /// In logits.
    pub value: f64,
    /// Root of the inverse information, logits.
    pub standard_error: f64,
}

/// Most steps; each at least halves the interval in the worst case, and about six are needed.
const MOST_STEPS: usize = 200;
/// Change in logits below which the measure is found.
const DONE: f64 = 1e-12;

/// Chance of a right answer.
pub(super) fn chance(measure: f64, difficulty: f64) -> f64 {
    1.0 / (1.0 + libm::exp(difficulty - measure))
}

/// Warm's weighted likelihood estimate (Warm 1989): the root of
/// right - Σ p + Σ p(1 - p)(1 - 2p) / (2 Σ p(1 - p)), which exists for every number right. `None` without answers.
pub(super) fn measure(answers: &Answers, difficulties: &[f64]) -> Option<Measure> {
    let all = answers.0.len();
    if all == 0 {
        return None;
    }
    let right = answers.right() as f64;
    let of = |at: &(usize, bool)| difficulties[at.0];
    let least = answers.0.iter().map(of).fold(f64::INFINITY, f64::min);
    let most = answers.0.iter().map(of).fold(f64::NEG_INFINITY, f64::max);
    // Half a right answer is the least that the correction leaves; beyond these ends even that cannot be expected.
    let margin = libm::log(2.0 * all as f64) + 5.0;
    let (mut low, mut high) = (least - margin, most + margin);
    let mut value = (least + most) / 2.0;
    let mut information = 0.0;
    for _ in 0..MOST_STEPS {
        let (mut expected, mut skew) = (0.0, 0.0);
        information = 0.0;
        for answer in &answers.0 {
            let p = chance(value, of(answer));
            let variance = p * (1.0 - p);
            expected += p;
            information += variance;
            skew += variance * (1.0 - 2.0 * p);
        }
        let excess = right - expected + skew / (2.0 * information);
        if excess > 0.0 {
            low = value
        } else {
            high = value
        }
        let scored = value + excess / information;
        let next = if scored > low && scored < high { scored } else { (low + high) / 2.0 };
        let change = (next - value).abs();
        value = next;
        if change < DONE {
            break;
        }
    }
    Some(Measure { value, standard_error: 1.0 / libm::sqrt(information) })
}
