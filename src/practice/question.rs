//! A question as a page shows it: the case, and what can be answered. Nothing in it says what is right.
//!
//! Entry point: [`QuestionView::of`].

use super::skill_name;
use crate::colour::{Lab, Light};
use crate::course::{Client, Course, Technique};
use crate::exercise::{Case, Choice, Exercise, Form, Placed, bottles_named};
use crate::foresee::Shown;
use crate::healing::{Appearance, Placement, Reading, Tone};
use crate::pigment::Mix;
use crate::skin::{Phototype, Redness, Site, Undertone};
use serde::Serialize;
use std::borrow::Cow;

/// A question without its answer.
#[derive(Debug, Clone, Serialize)]
pub struct QuestionView<'a> {
    /// Id of the drill.
    pub drill: &'a str,
    /// Number in the drill's pool: with the drill it names the exercise.
    pub number: u32,
    /// The family's word.
    pub family: &'static str,
    /// Name of the skill.
    pub skill: &'a str,
    /// Minutes it is planned to take.
    pub minutes: f64,
    /// The question in words.
    pub ask: &'a str,
    /// The case, for questions about a client.
    pub case: Option<CaseView<'a>>,
    /// How it is answered.
    pub form: FormView<'a>,
    /// Ids of the bottles it names.
    pub bottles: Vec<&'a str>,
}

/// A case as it is told.
#[derive(Debug, Clone, Serialize)]
pub struct CaseView<'a> {
    /// Id of the client.
    pub client: &'a str,
    /// The client's name.
    pub name: &'a str,
    /// Age in years.
    pub age: u32,
    /// About the person.
    pub about: Cow<'a, str>,
    /// The wish, in the client's voice.
    pub wish: &'a str,
    /// Hair, in words.
    pub hair: &'a str,
    /// Phototype, undertone and redness, unless they are what is asked for.
    pub skin: Option<(Phototype, Undertone, Redness)>,
    /// Where the work goes.
    pub site: Site,
    /// Health answers.
    pub health: Vec<&'a str>,
    /// What is told of old work.
    pub old_work: Vec<OldWorkView<'a>>,
    /// Where new work goes.
    pub placement: Option<Placement>,
    /// When new work is judged, months after.
    pub months: Option<f64>,
    /// The light everything is seen under.
    pub light: Light,
    /// What the skin without work is called, where that is not simply the client's skin now.
    pub bare_label: Option<String>,
    /// The place without work.
    pub bare: Shown,
    /// Its colour in words, where the place has an edge.
    pub bare_words: Option<String>,
    /// The skin around the place, where it has an edge.
    pub around: Option<Shown>,
    /// The client as they come in, where there is old work.
    pub now: Option<SwatchView<'a>>,
    /// How the youngest of the older works was made.
    pub technique_now: Technique,
    /// Further things to look at.
    pub exhibits: Vec<SwatchView<'a>>,
    /// What is wished for.
    pub goal: Option<GoalView<'a>>,
}

/// Old work.
#[derive(Debug, Clone, Serialize)]
pub struct OldWorkView<'a> {
    /// Its age in months.
    pub months: f64,
    /// What the client tells of it.
    pub note: &'a str,
}

/// A colour on skin.
#[derive(Debug, Clone, Serialize)]
pub struct SwatchView<'a> {
    /// What it is.
    pub label: &'a str,
    /// The colour.
    pub colour: Shown,
    /// The place without work.
    pub bare_skin: Shown,
    /// The skin around the place, where it has an edge.
    pub around: Option<Shown>,
    /// In words.
    pub words: &'a str,
    /// The light it is seen under.
    pub light: Light,
}

/// A wished colour.
#[derive(Debug, Clone, Serialize)]
pub struct GoalView<'a> {
    /// Its name.
    pub name: &'a str,
    /// The colour.
    pub colour: Shown,
    /// It on the client's skin, in words.
    pub words: String,
    /// ΔE00 within which it counts as reached.
    pub tolerance: f64,
}

/// How a question is answered.
#[derive(Debug, Clone, Serialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
#[allow(missing_docs)] // The fields say what they are.
pub enum FormView<'a> {
    One { options: Vec<OptionView<'a>> },
    Several { options: Vec<OptionView<'a>> },
    Order { steps: Vec<&'a str> },
    Drops { bottles: Vec<BottleOffered<'a>>, drops: u32, modifier_drops: u32 },
    Number { name: &'a str, unit: &'a str },
}

/// An option.
#[derive(Debug, Clone, Serialize)]
pub struct OptionView<'a> {
    /// In words.
    pub say: &'a str,
    /// Its colour, where colours are what is chosen from.
    pub picture: Option<SwatchView<'a>>,
}

/// A bottle to take drops of.
#[derive(Debug, Clone, Serialize)]
pub struct BottleOffered<'a> {
    /// Id.
    pub id: &'a str,
    /// Name on the label.
    pub name: &'a str,
    /// Whether it is a modifier.
    pub modifier: bool,
    /// Its content in the bottle, under D65.
    pub colour: Shown,
}

impl<'a> QuestionView<'a> {
    /// What an exercise asks; `minutes` is what it is planned to take.
    pub fn of(course: &'a Course, exercise: &'a Exercise, minutes: f64) -> Self {
        let client = exercise.case.as_ref().and_then(|case| course.client(&case.client));
        QuestionView {
            drill: &exercise.drill,
            number: exercise.number,
            family: exercise.family.word(),
            skill: skill_name(course, &exercise.skill),
            minutes,
            ask: &exercise.ask,
            case: exercise.case.as_ref().zip(client).map(|(case, client)| CaseView::of(course, case, client)),
            form: FormView::of(course, exercise),
            bottles: bottles_named(course, exercise),
        }
    }
}

impl<'a> CaseView<'a> {
    fn of(course: &'a Course, case: &'a Case, client: &'a Client) -> Self {
        let swatch = |label, seen: &Appearance, reading: &'a Reading, light| SwatchView {
            label,
            colour: Shown::of(seen.lab),
            bare_skin: Shown::of(case.bare.lab),
            around: around(client, light),
            words: &reading.words,
            light,
        };
        let has_work = case.now.reflectance != case.bare.reflectance;
        CaseView {
            client: &client.id,
            name: &client.name,
            age: client.age,
            about: client.told(&course.language, case.skin_is_told),
            wish: if case.is_wished_for() { &client.wish } else { "" },
            hair: &client.hair,
            skin: case.skin_is_told.then_some((client.phototype, client.undertone, client.redness)),
            site: client.site,
            health: client.health.iter().map(|health| health.note.as_str()).collect(),
            old_work: client
                .existing
                .iter()
                .map(|old| OldWorkView { months: old.work.months, note: &old.note })
                .collect(),
            placement: case.placed.map(|Placed { placement, .. }| placement),
            months: case.placed.map(|placed| placed.months),
            light: case.light,
            bare_label: case.skin_label(&course.language, client),
            bare: Shown::of(case.bare.lab),
            bare_words: client.site.has_edge().then(|| Tone::by_itself(case.bare.lab).said(&course.language)),
            around: around(client, case.light),
            now: has_work.then(|| swatch("", &case.now, &case.now_reading, case.light)),
            technique_now: client.technique_now(),
            exhibits: case
                .exhibits
                .iter()
                .map(|exhibit| swatch(&exhibit.label, &exhibit.seen, &exhibit.reading, exhibit.light))
                .collect(),
            goal: case.goal.as_ref().map(|goal| GoalView {
                name: course.goal(&goal.id).map_or(&goal.id, |known| &known.name),
                colour: Shown::of(goal.lab),
                words: Reading::of(goal.lab, case.bare.lab, client.site).depth_said(&course.language),
                tolerance: goal.tolerance,
            }),
        }
    }
}

impl<'a> FormView<'a> {
    fn of(course: &'a Course, exercise: &'a Exercise) -> Self {
        let case = exercise.case.as_ref();
        let said = |choice: &'a Choice| OptionView { say: &choice.label, picture: None };
        match &exercise.form {
            Form::One(one) => {
                let client = case.and_then(|case| course.client(&case.client));
                let pictured = case.zip(client).filter(|_| one.pictured);
                let option = |choice: &'a Choice| OptionView {
                    picture: pictured.and_then(|(case, client)| picture(case, client, choice)),
                    ..said(choice)
                };
                FormView::One { options: one.options.iter().map(option).collect() }
            }
            Form::Several(several) => {
                FormView::Several { options: several.options.iter().map(said).collect() }
            }
            Form::Order(order) => {
                FormView::Order { steps: order.steps.iter().map(|step| step.say.as_str()).collect() }
            }
            Form::Drops(drops) => {
                let bottles = drops.bottles().into_iter().enumerate().map(|(place, id)| BottleOffered {
                    id,
                    name: course.shelf.bottle(id).map_or(id, |bottle| &bottle.name),
                    modifier: place >= drops.limits.bottles.len(),
                    colour: in_the_bottle(course, id),
                });
                FormView::Drops {
                    bottles: bottles.collect(),
                    drops: drops.limits.drops,
                    modifier_drops: drops.limits.most_modifier_drops(),
                }
            }
            Form::Number(number) => FormView::Number { name: &number.name, unit: &number.unit },
        }
    }
}

/// The skin around a client's site under a light, where the site has an edge.
pub(super) fn around(client: &Client, light: Light) -> Option<Shown> {
    client.around(light).map(|around| Shown::of(around.lab))
}

fn picture<'a>(case: &'a Case, client: &Client, choice: &'a Choice) -> Option<SwatchView<'a>> {
    let (seen, reading) = choice.healed.as_ref().zip(choice.reading.as_ref())?;
    Some(SwatchView {
        label: "",
        colour: Shown::of(seen.lab),
        bare_skin: Shown::of(case.bare.lab),
        around: around(client, case.light),
        words: &reading.words,
        light: case.light,
    })
}

fn in_the_bottle(course: &Course, id: &str) -> Shown {
    let lab: Lab = course.shelf.label_colour(&Mix::new([(id.to_owned(), 1)]));
    Shown::of(lab)
}
