//! The conditional likelihood of difficulties. Entry point: [`Conditional::at`].

use super::Answers;
use super::pattern::{Chances, Pattern};
use std::collections::BTreeMap;

/// Everything in the answers that bears on difficulties: the sufficient statistics.
pub(super) struct Conditional {
    /// How often each item was right.
    rights: Vec<f64>,
    /// How often each item was answered.
    answers: Vec<f64>,
    /// Scores by set of items answered.
    pub patterns: Vec<Pattern>,
}

/// The negative logarithm of the likelihood at some difficulties.
pub(super) struct Point {
    /// Its value.
    pub value: f64,
    /// Its slope along each difficulty: times right less times expected right.
    pub slope: Vec<f64>,
    /// Its curvature along each difficulty: the information about it if the others were known.
    pub curvature: Vec<f64>,
}

impl Conditional {
    pub fn new(items: usize, people: &[Answers]) -> Self {
        let mut rights = vec![0.0; items];
        let mut answers = vec![0.0; items];
        let mut scores: BTreeMap<Vec<usize>, Vec<f64>> = BTreeMap::new();
        for person in people.iter().filter(|person| !person.is_extreme()) {
            for &(item, right) in &person.0 {
                answers[item] += 1.0;
                rights[item] += f64::from(u8::from(right));
            }
            let set: Vec<usize> = person.0.iter().map(|answer| answer.0).collect();
            let all = set.len();
            scores.entry(set).or_insert_with(|| vec![0.0; all + 1])[person.right()] += 1.0;
        }
        let patterns = scores.into_iter().map(|(items, people)| Pattern { items, people }).collect();
        Conditional { rights, answers, patterns }
    }

    /// Number of items.
    pub fn items(&self) -> usize {
        self.rights.len()
    }

    /// A first guess: log odds of a wrong answer, centred at 0.
    pub fn start(&self) -> Vec<f64> {
        let mut at: Vec<f64> = self
            .rights
            .iter()
            .zip(&self.answers)
            .map(|(right, all)| libm::log((all - right + 0.5) / (right + 0.5)))
            .collect();
        centre(&mut at);
        at
    }

    /// Value, slope and curvature at some difficulties; `None` where they are too wild to compute with.
    pub fn at(&self, difficulties: &[f64]) -> Option<Point> {
        let mut value: f64 = self.rights.iter().zip(difficulties).map(|(right, d)| right * d).sum();
        let mut slope = self.rights.clone();
        let mut curvature = vec![0.0; self.rights.len()];
        for pattern in &self.patterns {
            let chances = Chances::new(pattern, difficulties);
            let mut right = vec![0.0; pattern.people.len()];
            for (people, log) in pattern.people.iter().zip(&chances.log_symmetric) {
                if *people > 0.0 {
                    value += people * log;
                }
            }
            for (i, &item) in pattern.items.iter().enumerate() {
                chances.right(i, &mut right);
                for (people, chance) in pattern.people.iter().zip(&right) {
                    if *people > 0.0 {
                        slope[item] -= people * chance;
                        curvature[item] += people * chance * (1.0 - chance);
                    }
                }
            }
        }
        let fine = value.is_finite() && slope.iter().chain(&curvature).all(|number| number.is_finite());
        fine.then_some(Point { value, slope, curvature })
    }
}

/// Shifts numbers so that their mean is 0.
pub(super) fn centre(numbers: &mut [f64]) {
    let mean = numbers.iter().sum::<f64>() / numbers.len().max(1) as f64;
    numbers.iter_mut().for_each(|number| *number -= mean);
}
