//! Answers as people write them: a letter, letters, drops by letter, a number.
//!
//! Entry point: [`Answer::read`]; `Display` of [`Answer`] writes what it reads.

use super::form::{Answer, DropsOf, Form};
use super::refused::{AnswerError, LimitsError};
use crate::pigment::Mix;

impl Answer {
    /// Reads an answer to a form: `b`, `a c`, `c a b`, `a4 d2`, `41.5`; and as a paper itself writes them: `a)`, `B.`, `4 drops Dunmere,
    /// 2 drops Emberlow`.
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

/// What may stand around letters: `A.`, `a)`, `(a, c)`.
const AROUND_LETTERS: [char; 5] = [',', ';', '.', '(', ')'];

/// Places of letters, with or without spaces and commas between them.
fn letters(text: &str, count: usize, form: &Form) -> Result<Vec<usize>, AnswerError> {
    text.chars()
        .filter(|c| !c.is_whitespace() && !AROUND_LETTERS.contains(c))
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

/// Words around drops that say nothing more, in every language that papers are written in.
const AROUND_DROPS: [&str; 7] = ["drop", "drops", "of", "and", "tropfen", "und", "von"];

/// A part of what is written of drops.
enum Part<'t> {
    /// A bottle, by its id.
    Bottle(&'t str),
    Count(&'t str),
}

/// `a4 d2`, `5A 1D`, or the same with the bottles' names: `dunmere 4, emberlow 2`, `4 drops Dunmere, 2 drops Emberlow`. Either every count
/// follows its bottle or every bottle its count.
fn read_drops(drops: &DropsOf, text: &str, form: &Form) -> Result<Answer, AnswerError> {
    let refused = || AnswerError::Form(form.asks_for());
    let ids = drops.bottles();
    let text = text.to_lowercase();
    let parts = parts_of(&ids, &text, form)?;
    let mut mix = Vec::new();
    let (pairs, []) = parts.as_chunks::<2>() else { return Err(refused()) };
    let counts_come_first = matches!(parts.first(), Some(Part::Count(_)));
    for pair in pairs {
        let (id, count) = match pair {
            [Part::Bottle(id), Part::Count(count)] if !counts_come_first => (*id, *count),
            [Part::Count(count), Part::Bottle(id)] if counts_come_first => (*id, *count),
            _ => return Err(refused()),
        };
        let count: u32 = count.parse().map_err(|_| refused())?;
        mix.push((id.to_owned(), count.min(drops.limits.drops + 1)));
    }
    if mix.is_empty() { Err(refused()) } else { Ok(Answer::Drops(Mix::new(mix))) }
}

/// Bottles and counts in a text in small letters, in their order.
fn parts_of<'t>(ids: &[&'t str], text: &'t str, form: &Form) -> Result<Vec<Part<'t>>, AnswerError> {
    let mut parts = Vec::new();
    let mut rest = text.trim_start_matches(is_between);
    while !rest.is_empty() {
        // A name may hold a space, where its id has a hyphen, and figures: so names are looked for before anything is taken apart.
        let named =
            ids.iter().filter_map(|id| Some((*id, after_name(id, rest)?))).max_by_key(|(id, _)| id.len());
        if let Some((id, after)) = named {
            parts.push(Part::Bottle(id));
            rest = after.trim_start_matches(is_between);
            continue;
        }
        let is_figure = rest.starts_with(|c: char| c.is_ascii_digit());
        let end = rest.find(|c: char| is_between(c) || c.is_ascii_digit() != is_figure).unwrap_or(rest.len());
        let (word, after) = rest.split_at(end);
        match word.trim_end_matches('.').as_bytes() {
            _ if is_figure => parts.push(Part::Count(word)),
            [letter @ b'a'..=b'z'] => {
                let place = usize::from(letter - b'a');
                let id = ids.get(place).ok_or(AnswerError::NoOption { place, count: ids.len() })?;
                parts.push(Part::Bottle(id));
            }
            plain if AROUND_DROPS.iter().any(|known| known.as_bytes() == plain) => {}
            // A point between figures: no whole drops.
            [] => return Err(AnswerError::Form(form.asks_for())),
            _ => {
                let (bottle, known) = (word.to_owned(), ids.join(", "));
                return Err(AnswerError::Limits(LimitsError::NoBottle { bottle, known }));
            }
        }
        rest = after.trim_start_matches(is_between);
    }
    Ok(parts)
}

/// What follows a bottle's name, or its id, at the beginning of a text.
fn after_name<'t>(id: &str, text: &'t str) -> Option<&'t str> {
    let after = text.strip_prefix(id).or_else(|| text.strip_prefix(id.replace('-', " ").as_str()))?;
    (!after.starts_with(|c: char| c.is_alphabetic() || c == '-')).then_some(after)
}

/// Whether this stands between the parts of drops.
fn is_between(c: char) -> bool {
    c.is_whitespace() || [',', ';', ':', '=', '(', ')', '+', '&'].contains(&c)
}
