//! A question as it was put to somebody: what a report must know of it, apart from its case.
//!
//! Entry point: [`QuestionPut::of`]. Options are kept where one of them is chosen. Those of a written question stand in the order of
//! their words, since every paper shuffles them anew, and one question should be one question.

use super::report::OptionPut;
use crate::exercise::{Answer, Exercise, Form};
use sha2::{Digest, Sha256};

/// A question as it was put.
#[derive(Debug, Clone, PartialEq)]
pub struct QuestionPut {
    /// Id of the question of the bank; none for an exercise the engine made.
    pub written: Option<String>,
    /// Id of the skill.
    pub skill: String,
    /// The options; empty where the answer is not one of a list.
    pub options: Vec<OptionPut>,
    /// Tells questions apart that have one name and not the same content.
    pub digest: String,
    /// For each option as it was shown its place in `options`.
    places: Vec<usize>,
}

impl QuestionPut {
    /// What an exercise puts.
    pub fn of(exercise: &Exercise) -> Self {
        let mut shown: Vec<(usize, OptionPut)> = match &exercise.form {
            Form::One(one) => one
                .options
                .iter()
                .enumerate()
                .map(|(place, choice)| {
                    let misconception = choice.mark.misconception.clone();
                    (place, OptionPut { say: choice.label.clone(), right: place == one.key, misconception })
                })
                .collect(),
            _ => Vec::new(),
        };
        if exercise.written.is_some() {
            shown.sort_by(|one, other| one.1.say.cmp(&other.1.say));
        }
        let mut places = vec![0; shown.len()];
        for (place, (from, _)) in shown.iter().enumerate() {
            places[*from] = place;
        }
        let options: Vec<OptionPut> = shown.into_iter().map(|(_, option)| option).collect();
        let digest = digest(exercise, &options);
        QuestionPut {
            written: exercise.written.clone(),
            skill: exercise.skill.clone(),
            options,
            digest,
            places,
        }
    }

    /// The place in `options` that an answer chooses; `None` where it chooses none of a list.
    pub fn chosen(&self, answer: &Answer) -> Option<usize> {
        match answer {
            Answer::One(place) => self.places.get(*place).copied(),
            _ => None,
        }
    }
}

/// SHA-256 over what distinguishes one question from another, the first 16 figures.
fn digest(exercise: &Exercise, options: &[OptionPut]) -> String {
    let mut hash = Sha256::new();
    let mut add = |text: &str| {
        hash.update((text.len() as u64).to_le_bytes());
        hash.update(text.as_bytes());
    };
    add(exercise.written.as_deref().unwrap_or_default());
    add(&exercise.skill);
    for option in options {
        add(&option.say);
        add(if option.right { "right" } else { "wrong" });
        add(option.misconception.as_deref().unwrap_or_default());
    }
    hash.finalize().iter().take(8).map(|byte| format!("{byte:02x}")).collect()
}
