//! A question as a paper asks it: the case, and what can be answered. Nothing in it says what is right.
//!
//! Entry point: [`QuestionAsked::new`].

use crate::colour::{Lab, Light};
use crate::course::{Client, Course};
use crate::exercise::{Case, Exercise, Form, bottles_named, letter};
use crate::healing::{Appearance, HEALED_MONTHS, Placement, Reading, Scene};
use crate::language::Language;
use crate::pigment::{Bottle, Mix};
use crate::say;
use serde::Serialize;
use std::collections::BTreeSet;

/// A question without its answer.
#[derive(Debug, Clone, Serialize)]
pub struct QuestionAsked {
    /// The question in words.
    pub ask: String,
    /// The case, for questions about a client.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub case: Option<CaseAsked>,
    /// How it is answered.
    pub answer: FormAsked,
}

/// A case as it is told.
#[derive(Debug, Clone, Serialize)]
pub struct CaseAsked {
    /// The client's name.
    client: String,
    about: String,
    wish: String,
    /// Phototype, undertone and redness, unless they are what is asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    skin: Option<String>,
    hair: String,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    old_work: Vec<String>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    health: Vec<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    placement: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    judged: Option<String>,
    /// What there is to look at.
    seen: Vec<Seen>,
}

/// The client of a case, told once above its questions.
#[derive(Debug, Clone, Serialize)]
pub struct CaseTold(CaseAsked);

/// A question below a case that tells of its client.
#[derive(Debug, Clone, Serialize)]
pub struct QuestionWithin<'q> {
    ask: &'q str,
    /// What the case does not tell.
    #[serde(skip_serializing_if = "Option::is_none")]
    case: Option<CaseDetail<'q>>,
    answer: &'q FormAsked,
}

/// What a question has to tell beyond its case.
#[derive(Debug, Clone, Serialize)]
pub struct CaseDetail<'q> {
    #[serde(skip_serializing_if = "Option::is_none")]
    placement: Option<&'q str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    judged: Option<&'q str>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    seen: Vec<&'q Seen>,
}

/// A colour that is shown.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Seen {
    label: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    words: Option<String>,
    /// L*, a*, b*, to one decimal.
    lab: [f64; 3],
    /// For a screen, as `#rrggbb`.
    srgb: String,
    light: &'static str,
}

/// How a question is answered.
#[derive(Debug, Clone, Serialize)]
#[serde(tag = "form", rename_all = "kebab-case")]
#[allow(missing_docs)] // The fields say what they are.
pub enum FormAsked {
    One { options: Vec<OptionAsked> },
    Several { options: Vec<OptionAsked> },
    Order { steps: Vec<OptionAsked> },
    Drops { bottles: Vec<BottleAsked>, drops: u32, modifier_drops: u32 },
    Number { name: String, unit: String },
}

/// An option or a step.
#[derive(Debug, Clone, Serialize)]
pub struct OptionAsked {
    letter: String,
    say: String,
    /// Its colour, where colours are what is chosen from.
    #[serde(skip_serializing_if = "Option::is_none")]
    seen: Option<Seen>,
}

/// A bottle to take drops of.
#[derive(Debug, Clone, Serialize)]
pub struct BottleAsked {
    letter: String,
    id: String,
    name: String,
    modifier: bool,
}

impl CaseTold {
    /// A client as a case tells of them: today, under D65; phototype, undertone and redness only where no question of the case asks
    /// for them.
    pub fn new(course: &Course, client: &Client, skin_is_told: bool) -> Self {
        let works = client.works();
        let scene = Scene::today(&course.shelf, &client.skin, client.site, &works);
        let (bare, now) =
            (Appearance::of(scene.bare(), Light::D65), Appearance::of(scene.existing(), Light::D65));
        let language = &course.language;
        let words = Reading::of(now.lab, bare.lab, client.site).said(language);
        let seen = now_seen(language, client, &bare, &now, &words, Light::D65);
        CaseTold(client_asked(language, client, skin_is_told, vec![seen]))
    }
}

impl QuestionAsked {
    /// The question below a case; a question about nobody stands there as it does anywhere.
    pub fn within(&self, told: Option<&CaseTold>) -> QuestionWithin<'_> {
        let case = self.case.as_ref().map(|case| CaseDetail {
            placement: case.placement.as_deref(),
            judged: case.judged.as_deref(),
            seen: case
                .seen
                .iter()
                .filter(|seen| told.is_none_or(|told| !told.0.seen.contains(seen)))
                .collect(),
        });
        QuestionWithin {
            ask: &self.ask,
            case: case.filter(|case| case.placement.is_some() || !case.seen.is_empty()),
            answer: &self.answer,
        }
    }

    /// What an exercise asks.
    pub fn new(course: &Course, exercise: &Exercise) -> Self {
        let client = exercise.case.as_ref().and_then(|case| course.client(&case.client));
        QuestionAsked {
            ask: exercise.ask.clone(),
            case: exercise.case.as_ref().zip(client).map(|(case, client)| case_asked(course, case, client)),
            answer: form_asked(course, exercise),
        }
    }
}

/// Places on the shelf of every bottle that an exercise names.
pub(super) fn bottles_of(course: &Course, exercise: &Exercise) -> BTreeSet<usize> {
    let named = bottles_named(course, exercise);
    named.iter().filter_map(|id| course.shelf.bottles.iter().position(|bottle| bottle.id == *id)).collect()
}

/// A bottle as a paper tells of it.
#[derive(Debug, Serialize)]
pub(super) struct BottleTold {
    id: String,
    name: String,
    about: String,
    modifier: bool,
    /// L*, a*, b* of its content without skin, under D65, to one decimal.
    in_the_bottle: [f64; 3],
    /// Colour Index names with their shares.
    colourants: Vec<(String, f64)>,
}

impl BottleTold {
    /// The bottle at this place on the shelf.
    pub fn new(course: &Course, bottle: &Bottle) -> Self {
        let shelf = &course.shelf;
        let whole: f64 = bottle.recipe.iter().map(|(_, amount)| amount).sum();
        let share = |amount: f64| (amount / whole * 1000.0).round() / 1000.0;
        BottleTold {
            id: bottle.id.clone(),
            name: bottle.name.clone(),
            about: bottle.about.clone(),
            modifier: bottle.modifier.is_some(),
            in_the_bottle: rounded(shelf.label_colour(&Mix::new([(bottle.id.clone(), 1)]))),
            colourants: bottle
                .recipe
                .iter()
                .map(|&(place, amount)| (shelf.colourants[place].id.clone(), share(amount)))
                .collect(),
        }
    }
}

fn case_asked(course: &Course, case: &Case, client: &Client) -> CaseAsked {
    let language = &course.language;
    let words = &case.now_reading.words;
    let mut now = now_seen(language, client, &case.bare, &case.now, words, case.light);
    if let Some(label) = case.skin_label(language, client) {
        now.label = label;
    }
    let mut seen = vec![now];
    seen.extend(case.exhibits.iter().map(|exhibit| {
        self::seen(&exhibit.label, Some(&exhibit.reading.words), &exhibit.seen, exhibit.light)
    }));
    if let Some(goal) = &case.goal {
        let name = course.goal(&goal.id).map_or(goal.id.as_str(), |known| known.name.as_str());
        seen.push(Seen {
            label: say!(
                language,
                "exercise-case-goal",
                name = name,
                tolerance = language.decimal(goal.tolerance, 1)
            ),
            words: None,
            lab: rounded(goal.lab),
            srgb: crate::colour::Srgb::from_lab(goal.lab).hex(),
            light: case.light.name(),
        });
    }
    CaseAsked {
        placement: case.placed.map(|placed| placement(language, &placed.placement)),
        judged: case.placed.map(|placed| {
            let when = months(language, placed.months);
            say!(language, "exercise-case-judged", when = when, light = case.light.name())
        }),
        wish: if case.is_wished_for() { client.wish.clone() } else { String::new() },
        ..client_asked(language, client, case.skin_is_told, seen)
    }
}

/// A client, with what there is to look at.
fn client_asked(language: &Language, client: &Client, skin_is_told: bool, seen: Vec<Seen>) -> CaseAsked {
    CaseAsked {
        client: client.name.clone(),
        about: client.told(language, skin_is_told).into_owned(),
        wish: client.wish.clone(),
        skin: skin_is_told.then(|| {
            let skin = say!(
                language,
                "exercise-case-skin",
                phototype = client.phototype.word(),
                undertone = client.undertone.said(language),
                redness = client.redness.said(language)
            );
            if client.scar { say!(language, "exercise-case-scar", skin = skin) } else { skin }
        }),
        hair: client.hair.clone(),
        old_work: client
            .existing
            .iter()
            .map(|old| {
                let age = months(language, old.work.months);
                say!(language, "exercise-case-old-work", age = age, note = &old.note)
            })
            .collect(),
        health: client.health.iter().map(|health| health.note.clone()).collect(),
        placement: None,
        judged: None,
        seen,
    }
}

/// The client as they are now, in words where there is work to see.
fn now_seen(
    language: &Language,
    client: &Client,
    bare: &Appearance,
    now: &Appearance,
    words: &String,
    light: Light,
) -> Seen {
    let words = Some(words).filter(|_| now.reflectance != bare.reflectance);
    seen(&say!(language, "exercise-case-now", client = &client.name), words, now, light)
}

fn form_asked(course: &Course, exercise: &Exercise) -> FormAsked {
    let light = exercise.case.as_ref().map_or(Light::D65, |case| case.light);
    let options = |pictured: bool| -> Vec<OptionAsked> {
        let all = exercise.form.options().iter().enumerate();
        all.map(|(place, choice)| OptionAsked {
            letter: letter(place),
            say: choice.label.clone(),
            seen: choice.healed.as_ref().filter(|_| pictured).map(|healed| {
                let words = choice.reading.as_ref().map(|reading| &reading.words);
                seen(&letter(place), words, healed, light)
            }),
        })
        .collect()
    };
    match &exercise.form {
        Form::One(one) => FormAsked::One { options: options(one.pictured) },
        Form::Several(_) => FormAsked::Several { options: options(false) },
        Form::Order(order) => {
            let steps = order.steps.iter().enumerate();
            FormAsked::Order {
                steps: steps
                    .map(|(place, step)| OptionAsked {
                        letter: letter(place),
                        say: step.say.clone(),
                        seen: None,
                    })
                    .collect(),
            }
        }
        Form::Drops(drops) => {
            let all = drops.bottles();
            let bottles = all.iter().enumerate().map(|(place, id)| BottleAsked {
                letter: letter(place),
                id: (*id).to_owned(),
                name: course.shelf.bottle(id).map_or(*id, |bottle| &bottle.name).to_owned(),
                modifier: place >= drops.limits.bottles.len(),
            });
            FormAsked::Drops {
                bottles: bottles.collect(),
                drops: drops.limits.drops,
                modifier_drops: drops.limits.modifier_drops,
            }
        }
        Form::Number(number) => FormAsked::Number { name: number.name.clone(), unit: number.unit.clone() },
    }
}

fn seen(label: &str, words: Option<&String>, appearance: &Appearance, light: Light) -> Seen {
    Seen {
        label: label.to_owned(),
        words: words.cloned(),
        lab: rounded(appearance.lab),
        srgb: appearance.srgb.hex(),
        light: light.name(),
    }
}

/// To one decimal: more than a print or a screen can show.
fn rounded(lab: Lab) -> [f64; 3] {
    // Adding zero turns a negative zero into a plain one.
    [lab.l, lab.a, lab.b].map(|value| (value * 10.0).round() / 10.0 + 0.0)
}

/// A time after a placement: "on the day", "six weeks", "3 years".
fn months(language: &Language, months: f64) -> String {
    match months {
        0.0 => language.say("exercise-time-today", &[]),
        m if m == HEALED_MONTHS => language.say("exercise-time-healed", &[]),
        m if m >= 12.0 && m % 12.0 == 0.0 => {
            say!(language, "exercise-time-years", years = language.count(m / 12.0))
        }
        m => say!(language, "exercise-time-months", months = language.count(m)),
    }
}

fn placement(language: &Language, placement: &Placement) -> String {
    let [depth, thickness, load] =
        [placement.depth_mm, placement.thickness_mm, placement.load].map(|value| language.number(value));
    say!(
        language,
        "exercise-case-placement",
        depth = depth,
        thickness = thickness,
        load = load,
        coverage = format!("{:.0}", placement.coverage * 100.0)
    )
}
