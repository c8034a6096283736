//! What calls in a lesson's text may ask the engine: the functions, their arguments, and the colours they give.
//!
//! Entry point: [`add_functions`].

use crate::colour::{Lab, Light, difference};
use crate::course::{Client, Goal, Show, Technique, bounds, foresee_on};
use crate::figure::fixed;
use crate::healing::{
    COVERAGE, DEPTH, HEALED_MONTHS, LOAD, MONTHS, Placement, Reading, THICKNESS, retention,
};
use crate::language::Language;
use crate::pigment::{Colourant, Mix, Shelf};
use crate::quantity::Quantity;
use crate::skin::ita_degrees;
use minijinja::value::{Kwargs, Object, Rest, Value};
use minijinja::{Environment, Error, ErrorKind};
use std::sync::Arc;
use thiserror::Error as ThisError;

use super::super::names::Thing;
use super::super::suggest::{listed, nearest, quoted};

/// The functions, in the order in which messages name them.
pub(super) const FUNCTIONS: [&str; 9] =
    ["healed", "bare", "bottle", "goal", "ita", "difference", "half_life", "left", "digits"];

/// What a colour can be asked for.
const PARTS: [&str; 9] = ["L", "a", "b", "chroma", "hue", "ita", "words", "tone", "tolerance"];

/// Keys of [`healed`]'s placement, with their bounds.
const PLACEMENT: [Quantity; 4] = [DEPTH, THICKNESS, LOAD, COVERAGE];

/// Most decimals a number is shown with: a tenth is already finer than any eye.
const MOST_DIGITS: u32 = 3;

/// What an expression is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Purpose {
    /// To be read: tones and readings are words of the course's language.
    Text,
    /// To be compared: a tone is its id, the same in every language.
    Claim,
}

/// What a call may refer to.
pub(super) struct Known {
    /// What the answer is for.
    pub purpose: Purpose,
    /// What is said, is said in it.
    pub language: Language,
    /// Bottles and colourants.
    pub shelf: Shelf,
    /// Clients.
    pub clients: Vec<Client>,
    /// Goals.
    pub goals: Vec<Goal>,
}

/// Why a call could not be answered, as the source of the evaluator's error.
#[derive(Debug, Clone, ThisError)]
pub(super) enum CallProblem {
    /// A name that is checked with all others when every file has been read.
    #[error("there is no {} `{id}`", thing.word())]
    Unnamed {
        /// What is meant.
        thing: Thing,
        /// The name as written.
        id: String,
    },
    /// Anything else.
    #[error("{message}")]
    Wrong {
        /// What is wrong.
        message: String,
        /// What to do about it.
        help: String,
        /// The word to point at; empty for the whole call.
        word: String,
    },
}

impl CallProblem {
    /// Something wrong about a word of the call.
    pub fn wrong(message: impl Into<String>, help: impl Into<String>, word: impl Into<String>) -> Self {
        CallProblem::Wrong { message: message.into(), help: help.into(), word: word.into() }
    }
}

impl From<CallProblem> for Error {
    fn from(problem: CallProblem) -> Self {
        Error::new(ErrorKind::InvalidOperation, problem.to_string()).with_source(problem)
    }
}

/// A colour with what is said about it.
#[derive(Debug)]
struct Colour {
    lab: Lab,
    /// What it is beside the client's skin; nothing where there is none.
    reading: Option<Told>,
    /// ΔE00 within which it counts as reached; nothing unless it is a goal.
    tolerance: Option<f64>,
}

/// What work is beside the client's skin.
#[derive(Debug)]
struct Told {
    /// Depth and tone in words; nothing in a claim, which would hold in one language only.
    words: Option<String>,
    tone: String,
}

impl Object for Colour {
    fn get_value(self: &Arc<Self>, key: &Value) -> Option<Value> {
        let key = key.as_str().unwrap_or_default();
        Some(match (key, &self.reading) {
            ("L", _) => Value::from(self.lab.l),
            ("a", _) => Value::from(self.lab.a),
            ("b", _) => Value::from(self.lab.b),
            ("chroma", _) => Value::from(self.lab.chroma()),
            ("hue", _) => Value::from(self.lab.hue_degrees()),
            ("ita", _) => Value::from(ita_degrees(self.lab)),
            ("words", Some(Told { words: Some(words), .. })) => Value::from(words.as_str()),
            ("words", Some(_)) => Value::from(Error::from(CallProblem::wrong(
                "a claim compares no words: they are other ones in another language",
                "compare `.tone`, such as `healed(\"tovi\").tone == \"warm\"`",
                ".words",
            ))),
            ("tone", Some(told)) => Value::from(told.tone.as_str()),
            ("tolerance", _) if self.tolerance.is_some() => Value::from(self.tolerance),
            ("tolerance", _) => Value::from(Error::from(CallProblem::wrong(
                format!("only a goal has {}", quoted(key)),
                "ask `goal(…)` for it",
                key,
            ))),
            ("words" | "tone", None) => Value::from(Error::from(CallProblem::wrong(
                format!("only work in skin has {}", quoted(key)),
                "ask `healed(…)` for it",
                key,
            ))),
            _ => {
                let help = match nearest(key, PARTS) {
                    Some(near) => format!("did you mean `.{near}`?"),
                    None => format!("a colour has {}", listed(PARTS)),
                };
                let message = format!("a colour has no {}", quoted(key));
                Value::from(Error::from(CallProblem::wrong(message, help, format!(".{key}"))))
            }
        })
    }

    fn render(self: &Arc<Self>, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} {} {}", fixed(self.lab.l, 1), fixed(self.lab.a, 1), fixed(self.lab.b, 1))
    }
}

/// Whether a value is a colour as a whole, which no text can show.
pub(super) fn is_colour(value: &Value) -> bool {
    value.downcast_object_ref::<Colour>().is_some()
}

/// Gives an environment every function.
pub(super) fn add_functions(environment: &mut Environment<'static>, known: &Arc<Known>) {
    let here = Arc::clone(known);
    environment.add_function("healed", move |client: Value, mix: Rest<Value>, keys: Kwargs| {
        healed(&here, &client, &mix, &keys)
    });
    let here = Arc::clone(known);
    environment.add_function("bare", move |client: Value, keys: Kwargs| {
        let show = show(&here, &client, None, &keys, &["light"])?;
        colour(here.client(&show.client)?, &here, &Show { bare: true, ..show }, false)
    });
    let here = Arc::clone(known);
    environment.add_function("ita", move |client: Value| {
        let show = show(&here, &client, None, &Kwargs::from_iter(Vec::<(String, Value)>::new()), &[])?;
        let seen = foresee_on(&here.shelf, here.client(&show.client)?, &Show { bare: true, ..show });
        Ok::<f64, Error>(ita_degrees(seen.bare.lab))
    });
    let here = Arc::clone(known);
    environment.add_function("bottle", move |mix: Value| {
        let lab = here.shelf.label_colour(&here.mix(text("a mix", &mix)?)?);
        Ok::<Value, Error>(Value::from_object(Colour { lab, reading: None, tolerance: None }))
    });
    let here = Arc::clone(known);
    environment.add_function("goal", move |id: Value| {
        let id = text("a goal", &id)?;
        let goal = here.goals.iter().find(|goal| goal.id == id);
        let goal = goal.ok_or(CallProblem::Unnamed { thing: Thing::Goal, id: id.to_owned() })?;
        Ok::<Value, Error>(Value::from_object(Colour {
            lab: goal.lab,
            reading: None,
            tolerance: Some(goal.tolerance),
        }))
    });
    environment.add_function("difference", |one: Value, other: Value| {
        let lab = |value: &Value| match value.downcast_object_ref::<Colour>() {
            Some(colour) => Ok(colour.lab),
            None => Err(CallProblem::wrong(
                format!("`difference` takes two colours; this is {}", value.kind()),
                "such as `difference(healed(\"tovi\", \"kelderwick 6\"), bare(\"tovi\"))`",
                "difference",
            )),
        };
        Ok::<f64, Error>(difference(lab(&one)?, lab(&other)?))
    });
    let here = Arc::clone(known);
    environment.add_function("half_life", move |colourant: Value| {
        Ok::<f64, Error>(here.colourant(&colourant)?.half_life_months)
    });
    let here = Arc::clone(known);
    environment.add_function("left", move |colourant: Value, months: f64| {
        let months = within(&MONTHS, months)?;
        Ok::<f64, Error>(100.0 * retention(here.colourant(&colourant)?, months))
    });
    add_digits(environment, known);
}

/// `digits`, as a function and as a filter.
fn add_digits(environment: &mut Environment<'static>, known: &Arc<Known>) {
    let here = Arc::clone(known);
    environment.add_function("digits", move |value, count| digits(&here, value, count));
    let here = Arc::clone(known);
    environment.add_filter("digits", move |value, count| digits(&here, value, count));
}

/// A number with so many decimals.
fn digits(known: &Known, value: f64, digits: u32) -> Result<String, Error> {
    if digits > MOST_DIGITS {
        let message = format!("`digits` is {digits}, outside 0 to {MOST_DIGITS}");
        return Err(CallProblem::wrong(message, "one decimal is what an eye can use", "digits").into());
    }
    Ok(known.language.marked(fixed(value, digits as usize)))
}

/// `healed(client, mix, months=…, light=…, bare=…, depth_mm=…, …)`.
fn healed(known: &Known, client: &Value, mix: &[Value], keys: &Kwargs) -> Result<Value, Error> {
    let mut mixes = mix.iter().cloned().chain(keys.get::<Option<Value>>("mix")?);
    let (mix, more) = (mixes.next(), mixes.next());
    if more.is_some() {
        let help = "write every bottle into one text: `\"kelderwick 4, emberlow 2\"`";
        return Err(CallProblem::wrong("`healed` takes one mix", help, "").into());
    }
    let known_keys = ["mix", "months", "light", "bare", DEPTH.name, THICKNESS.name, LOAD.name, COVERAGE.name];
    let show = show(known, client, mix.as_ref(), keys, &known_keys)?;
    colour(known.client(&show.client)?, known, &show, true)
}

/// What a call asks to be shown.
fn show(
    known: &Known,
    client: &Value,
    mix: Option<&Value>,
    keys: &Kwargs,
    allowed: &[&'static str],
) -> Result<Show, Error> {
    if let Some(key) = keys.args().find(|key| !allowed.contains(key)) {
        let help = match nearest(key, allowed.iter().copied()) {
            Some(near) => format!("did you mean `{near}`?"),
            None if allowed.is_empty() => "it takes a client and nothing else".to_owned(),
            None => format!("the keys here are {}", listed(allowed.iter().copied())),
        };
        return Err(CallProblem::wrong(format!("unknown key {}", quoted(key)), help, key).into());
    }
    let light = match keys.get::<Option<Value>>("light")? {
        None => Light::D65,
        Some(value) => {
            let name = text("`light`", &value)?;
            let all = || Light::ALL.iter().map(|(_, name)| *name);
            let found = Light::ALL.iter().find(|(_, word)| *word == name).map(|(light, _)| *light);
            found.ok_or_else(|| {
                let message = format!("{} is no light", quoted(name));
                CallProblem::wrong(message, format!("it is one of {}", listed(all())), name)
            })?
        }
    };
    let mix = mix.map(|mix| known.mix(text("a mix", mix)?)).transpose()?;
    let number = |quantity: &Quantity, usual: f64| match keys.get::<Option<f64>>(quantity.name)? {
        Some(value) => within(quantity, value),
        None => Ok(usual),
    };
    if let (None, Some(key)) = (&mix, PLACEMENT.iter().find(|quantity| keys.has(quantity.name))) {
        let message = format!("`{}` means nothing without a mix", key.name);
        return Err(CallProblem::wrong(message, "add a mix, or remove the key", key.name).into());
    }
    let usual = Placement::default();
    Ok(Show {
        label: String::new(),
        client: text("a client", client)?.to_owned(),
        bare: keys.get::<Option<bool>>("bare")?.unwrap_or_default(),
        mix,
        months: number(&MONTHS, HEALED_MONTHS)?,
        placement: Placement {
            depth_mm: number(&DEPTH, usual.depth_mm)?,
            thickness_mm: number(&THICKNESS, usual.thickness_mm)?,
            load: number(&LOAD, usual.load)?,
            coverage: number(&COVERAGE, usual.coverage)?,
        },
        technique: Technique::default(),
        light,
    })
}

/// The colour that is shown: the skin alone, or with work.
fn colour(client: &Client, known: &Known, show: &Show, with_work: bool) -> Result<Value, Error> {
    let seen = foresee_on(&known.shelf, client, show);
    Ok(Value::from_object(if with_work {
        let Reading { tone, .. } = seen.reading;
        let told = match known.purpose {
            Purpose::Text => {
                Told { words: Some(seen.reading.said(&known.language)), tone: tone.said(&known.language) }
            }
            Purpose::Claim => Told { words: None, tone: tone.id().to_owned() },
        };
        Colour { lab: seen.seen.lab, reading: Some(told), tolerance: None }
    } else {
        Colour { lab: seen.bare.lab, reading: None, tolerance: None }
    }))
}

/// A text in quotes.
fn text<'v>(what: &str, value: &'v Value) -> Result<&'v str, Error> {
    value.as_str().ok_or_else(|| {
        let message = format!("{what} is written in quotes; this is {}", value.kind());
        CallProblem::wrong(message, "such as `healed(\"tovi\", \"kelderwick 4, emberlow 2\")`", "").into()
    })
}

/// A number within its bounds.
fn within(quantity: &Quantity, value: f64) -> Result<f64, Error> {
    quantity.check(value).map_err(|error| {
        CallProblem::wrong(error.to_string(), "write a number within these bounds", quantity.name).into()
    })
}

impl Known {
    fn client(&self, id: &str) -> Result<&Client, Error> {
        let found = self.clients.iter().find(|client| client.id == id);
        found.ok_or_else(|| CallProblem::Unnamed { thing: Thing::Client, id: id.to_owned() }.into())
    }

    fn colourant(&self, id: &Value) -> Result<&Colourant, Error> {
        let id = text("a colourant", id)?;
        let place = self.shelf.colourant_place(id);
        let missing = || CallProblem::Unnamed { thing: Thing::Colourant, id: id.to_owned() };
        Ok(&self.shelf.colourants[place.ok_or_else(missing)?])
    }

    /// A mix as it is said: `kelderwick 4, emberlow 2`.
    fn mix(&self, said: &str) -> Result<Mix, Error> {
        const FORM: &str = "write each bottle with its drops: `\"kelderwick 4, emberlow 2\"`";
        let mut drops: Vec<(String, u32)> = Vec::new();
        for part in said.split(',') {
            let (bottle, count) = part.trim().rsplit_once(' ').unwrap_or((part.trim(), ""));
            let bottle = bottle.trim();
            let Ok(count) = count.parse::<u32>() else {
                return Err(CallProblem::wrong(format!("{} is no mix", quoted(said)), FORM, said).into());
            };
            if bounds::DROPS.check(f64::from(count)).is_err() {
                let message = format!(
                    "{count} drops of {}, outside {} to {}",
                    quoted(bottle),
                    bounds::DROPS.least,
                    bounds::DROPS.most
                );
                return Err(CallProblem::wrong(message, FORM, said).into());
            }
            if self.shelf.bottle(bottle).is_none() {
                return Err(CallProblem::Unnamed { thing: Thing::Bottle, id: bottle.to_owned() }.into());
            }
            if drops.iter().any(|(other, _)| other == bottle) {
                let message = format!("{} is in this mix twice", quoted(bottle));
                return Err(CallProblem::wrong(message, "add its drops up", said).into());
            }
            drops.push((bottle.to_owned(), count));
        }
        Ok(Mix::new(drops))
    }
}
