//! The form of an answer: what can be given, and what each is worth.
//!
//! Entry points: [`Form`] is part of an exercise, [`Answer`] is what somebody gives to it; [`outcome`](super::outcome) brings the
//! two together.

use super::{AskedFor, Choice};
use crate::course::Limits;
use crate::language::Language;
use crate::pigment::Mix;
use serde::{Deserialize, Serialize};
use std::fmt;

/// How an exercise is answered.
#[derive(Debug, Clone)]
pub enum Form {
    /// One option is chosen.
    One(OneOf),
    /// Every option that holds is chosen.
    Several(SeveralOf),
    /// Steps are put in order.
    Order(OrderOf),
    /// Whole drops of bottles are counted out.
    Drops(Box<DropsOf>),
    /// A number is given.
    Number(NumberOf),
}

/// Options of which one is right.
#[derive(Debug, Clone)]
pub struct OneOf {
    /// Options in the order shown.
    pub options: Vec<Choice>,
    /// Index of the right one.
    pub key: usize,
    /// Whether the options' colours are part of the question; otherwise they show what would follow.
    pub pictured: bool,
}

/// Statements of which some hold. The mark of each says what is so about it; full credit for those that hold.
#[derive(Debug, Clone)]
pub struct SeveralOf {
    /// Statements in the order shown.
    pub options: Vec<Choice>,
}

/// Steps that belong in one order.
#[derive(Debug, Clone)]
pub struct OrderOf {
    /// Steps in the order shown.
    pub steps: Vec<Step>,
    /// Places of the steps in the right order: the first number is the place of the step that comes first.
    pub key: Vec<usize>,
    /// Whether anything but the right order is worth nothing, as where safety hangs on it.
    pub all_or_nothing: bool,
    /// Id of the lesson that treats it.
    pub lesson: String,
}

/// A step.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// What is done.
    pub say: String,
    /// Why it has its place.
    pub why: String,
}

/// A mix to be counted out in whole drops, marked by the colour it heals to.
#[derive(Debug, Clone)]
pub struct DropsOf {
    /// What may be taken: every mix within these limits is a possible answer.
    pub limits: Limits,
    /// The best mix.
    pub best: Choice,
    /// Other mixes that get full credit, best first.
    pub near: Vec<Choice>,
    /// What misconceptions would mix.
    pub tempting: Vec<Choice>,
    /// ΔE00 between the goal and what the best mix heals to.
    pub best_error: f64,
}

/// A number to be given.
#[derive(Debug, Clone)]
pub struct NumberOf {
    /// What is asked for: "individual typology angle".
    pub name: String,
    /// Its unit: "°".
    pub unit: String,
    /// The right value.
    pub key: f64,
    /// Distance from it that costs nothing.
    pub tolerance: f64,
    /// Distance from it at which nothing is left of the credit.
    pub worthless: f64,
    /// How the value comes about.
    pub why: String,
    /// Values that known mistakes lead to.
    pub tempting: Vec<WrongNumber>,
    /// Id of the lesson that treats it.
    pub lesson: String,
}

/// A value that a known mistake leads to.
#[derive(Debug, Clone)]
pub struct WrongNumber {
    /// The value.
    pub value: f64,
    /// What went wrong.
    pub why: String,
    /// Id of the misconception.
    pub misconception: String,
}

/// An answer, as it is given: raw, and perhaps nonsense.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Answer {
    /// Place of the chosen option, from 0.
    One(usize),
    /// Places of the chosen statements.
    Several(Vec<usize>),
    /// Places of the steps, in the order given.
    Order(Vec<usize>),
    /// Whole drops by bottle.
    Drops(Mix),
    /// A number.
    Number(f64),
}

impl Form {
    /// What is asked for.
    pub fn asks_for(&self) -> AskedFor {
        match self {
            Form::One(_) => AskedFor::One,
            Form::Several(_) => AskedFor::Several,
            Form::Order(_) => AskedFor::Order,
            Form::Drops(_) => AskedFor::Drops,
            Form::Number(_) => AskedFor::Number,
        }
    }

    /// The options of a form that has them.
    pub fn options(&self) -> &[Choice] {
        match self {
            Form::One(one) => &one.options,
            Form::Several(several) => &several.options,
            Form::Order(_) | Form::Drops(_) | Form::Number(_) => &[],
        }
    }

    /// The answer that gets full credit.
    pub fn key(&self) -> Answer {
        match self {
            Form::One(one) => Answer::One(one.key),
            Form::Several(several) => Answer::Several(several.right()),
            Form::Order(order) => Answer::Order(order.key.clone()),
            Form::Drops(drops) => match &drops.best.action {
                super::Action::Place(mix) => Answer::Drops(mix.clone()),
                _ => Answer::Drops(Mix::new([])),
            },
            Form::Number(number) => Answer::Number(number.key),
        }
    }
}

impl SeveralOf {
    /// Places of the statements that hold.
    pub fn right(&self) -> Vec<usize> {
        (0..self.options.len()).filter(|&place| self.options[place].mark.credit == 1.0).collect()
    }
}

impl DropsOf {
    /// Ids of what may be taken, in the order of their letters: bottles, then modifiers.
    pub fn bottles(&self) -> Vec<&str> {
        self.limits.bottles.iter().chain(&self.limits.modifiers).map(String::as_str).collect()
    }
}

impl NumberOf {
    /// A value with its unit, as it is written: "41.2°".
    pub fn in_words(&self, language: &Language, value: f64) -> String {
        let value = language.decimal(value, 1);
        format!("{value}{}{}", if self.unit == "°" { "" } else { " " }, self.unit)
    }
}

/// The option at this place, from 0: "A", "B", "C"; after "Z" its number.
pub(crate) fn letter(place: usize) -> String {
    u8::try_from(place)
        .ok()
        .filter(|place| *place < 26)
        .map_or_else(|| place.saturating_add(1).to_string(), |place| char::from(b'A' + place).to_string())
}

/// Letters, as on paper: "B", "A C", "C A B".
impl fmt::Display for Answer {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Answer::One(place) => f.write_str(&letter(*place)),
            Answer::Several(places) | Answer::Order(places) => {
                f.write_str(&places.iter().copied().map(letter).collect::<Vec<_>>().join(" "))
            }
            Answer::Drops(mix) => {
                let drops: Vec<String> = mix.drops().map(|(id, count)| format!("{id} {count}")).collect();
                f.write_str(&drops.join(", "))
            }
            Answer::Number(value) => write!(f, "{value}"),
        }
    }
}
