//! Answers as people write them: a letter, letters, drops by letter, a number.
//!
//! Entry point: [`Answer::read`]; `Display` of [`Answer`] writes what it reads.

use super::form::{Answer, DropsOf, Form};
use super::refused::{AnswerError, LimitsError};
use crate::pigment::Mix;

impl Answer {
    /// Reads an answer to a form: `b`, `a c`, `c a b`, `a4 d2` (or `dunmere 4, emberlow 2`), `41.5`.
    ///
    /// # Errors
    /// [`AnswerError`] where the text is none. Whether the answer is within the limits is for [`outcome`](super::outcome) to say.
    pub fn read(form: &Form, text: &str) -> Result<Answer, AnswerError> {
        let text = text.trim();
        match form {
            Form::One(one) => match letters(text, one.options.len(), form)?[..] {
                [place] => Ok(Answer::One(place)),
                _ => Err(AnswerError::Form(form.asks_for())),
            },
            Form::Several(several) => {
                let mut places = letters(text, several.options.len(), form)?;
                places.sort_unstable();
                places.dedup();
                Ok(Answer::Several(places))
            }
            Form::Order(order) => {
                let places = letters(text, order.steps.len(), form)?;
                if places.len() == order.steps.len() {
                    Ok(Answer::Order(places))
                } else {
                    Err(AnswerError::NotAnOrder(order.steps.len()))
                }
            }
            Form::Drops(drops) => read_drops(drops, text, form),
            Form::Number(number) => {
                let text = text.trim_end_matches(&number.unit).trim().replace('−', "-").replace(',', ".");
                let value: f64 = text.parse().map_err(|_| AnswerError::NotANumber)?;
                if value.is_finite() { Ok(Answer::Number(value)) } else { Err(AnswerError::NotANumber) }
            }
        }
    }
}

/// Places of letters, with or without spaces and commas between them.
fn letters(text: &str, count: usize, form: &Form) -> Result<Vec<usize>, AnswerError> {
    text.chars()
        .filter(|c| !c.is_whitespace() && *c != ',')
        .map(|c| {
            let letter = c.to_ascii_lowercase();
            if !letter.is_ascii_lowercase() {
                return Err(AnswerError::Form(form.asks_for()));
            }
            let place = usize::from(letter as u8 - b'a');
            if place < count { Ok(place) } else { Err(AnswerError::NoOption { place, count }) }
        })
        .collect()
}

/// `a4 d2`, `a 4, d 2` or the same with the bottles' ids.
fn read_drops(drops: &DropsOf, text: &str, form: &Form) -> Result<Answer, AnswerError> {
    let ids = drops.bottles();
    let mut parts = Vec::new();
    let spaced: String = text.to_lowercase().replace([',', ':', '='], " ");
    let mut words = spaced.split_whitespace().peekable();
    while let Some(word) = words.next() {
        let (name, count) = match word.find(|c: char| c.is_ascii_digit()) {
            Some(at) if at > 0 && word[at..].chars().all(|c| c.is_ascii_digit()) && !ids.contains(&word) => {
                (&word[..at], &word[at..])
            }
            _ => (word, words.next().ok_or(AnswerError::Form(form.asks_for()))?),
        };
        let id = match name.as_bytes() {
            [letter @ b'a'..=b'z'] => {
                let place = usize::from(letter - b'a');
                *ids.get(place).ok_or(AnswerError::NoOption { place, count: ids.len() })?
            }
            _ => ids.iter().copied().find(|id| *id == name).ok_or_else(|| {
                let (bottle, known) = (name.to_owned(), ids.join(", "));
                AnswerError::Limits(LimitsError::NoBottle { bottle, known })
            })?,
        };
        let count: u32 = count.parse().map_err(|_| AnswerError::Form(form.asks_for()))?;
        parts.push((id.to_owned(), count.min(drops.limits.drops + 1)));
    }
    if parts.is_empty() {
        Err(AnswerError::Form(form.asks_for()))
    } else {
        Ok(Answer::Drops(Mix::new(parts)))
    }
}
