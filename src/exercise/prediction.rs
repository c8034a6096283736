//! Options that are colours: the key is what the engine computes, the others what wrong ways of thinking would expect.
//!
//! Entry point: [`Prediction`], which collects expectations, takes those that differ visibly, and tries in worlds that differ a
//! little whether what is really seen stays nearest to the key.

use super::draw::Setting;
use super::generate::{Attempt, Discard};
use super::place::{Looks, Shown};
use super::seed::shuffle;
use super::worlds::{Named, Sample, WORLDS, try_worlds};
use super::{Action, Choice, Mark, RunnerUp, marking};
use crate::colour::{Lab, Srgb, difference};
use crate::course::{Course, Drill, Family, Lesson, Rule};
use crate::healing::{Appearance, Reading};
use crate::say;
use crate::skin::Site;

/// Options must differ from each other by this, in ΔE00, so that no two look the same.
const LEAST_APART: f64 = 1.5;

/// A colour somebody expects.
pub(super) struct Expected {
    pub seen: Appearance,
    /// What the option says beside its colour; the colour in words where empty.
    pub label: String,
    /// What really leads to this colour, for the mark.
    pub because: String,
    /// Id of the misconception; none for the key.
    pub misconception: Option<String>,
}

impl Expected {
    fn looks(&self) -> Looks {
        Looks { lab: self.seen.lab, length: self.label.chars().count(), of_kind: false }
    }
}

/// The options of an exercise about colours, the key first.
pub(super) struct Prediction {
    pub options: Vec<Expected>,
    /// Where the work lies.
    site: Site,
}

impl Prediction {
    /// The key with as many wrong expectations as the drill asks for, among which it has a [`Place`](super::place::Place) drawn by the seed, on skin that
    /// looks like `bare` without work. `expect` says what somebody of a rule would expect, and why.
    ///
    /// # Errors
    /// [`Discard::TooFewTemptations`] where too few differ from the key by the drill's margin and from each other;
    /// [`Discard::OneSided`] where they do, and none of their choices gives the key its place.
    pub fn draw(
        course: &Course,
        drill: &Drill,
        draw: &mut Attempt,
        bare: Lab,
        mut key: Expected,
        expect: impl Fn(Rule) -> Vec<(Appearance, String, String)>,
    ) -> Result<Self, Discard> {
        let site = draw.client.site;
        key.label = named(course, key.label, key.seen.lab, (bare, site));
        let mut ways: Vec<&String> = drill.tempts.iter().collect();
        shuffle(&mut draw.rng, &mut ways);
        let mut wrong: Vec<Expected> = Vec::new();
        for id in ways {
            let Some(misconception) = course.misconception(id) else { continue };
            let mut expected = expect(misconception.rule);
            // What is as good to one way of thinking comes in any order.
            shuffle(&mut draw.rng, &mut expected);
            wrong.extend(expected.into_iter().filter_map(|(seen, label, because)| {
                let label = named(course, label, seen.lab, (bare, site));
                let wrong = Expected { seen, label, because, misconception: Some(id.clone()) };
                (difference(seen.lab, key.seen.lab) >= drill.margin).then_some(wrong)
            }));
        }
        let sets = apart(&wrong, drill.options.saturating_sub(1));
        if sets.is_empty() {
            return Err(Discard::TooFewTemptations);
        }
        let shown = match drill.family {
            Family::Foresight | Family::Light => Shown::Colours,
            _ => Shown::Texts,
        };
        let place = draw.place(drill, drill.options, shown);
        let looks: Vec<Looks> = wrong.iter().map(Expected::looks).collect();
        let fits = |set: &&Vec<usize>| {
            let wrong: Vec<Looks> = set.iter().map(|&at| looks[at]).collect();
            place.is_had_by(key.looks(), &wrong)
        };
        let chosen = sets.iter().find(fits).ok_or(Discard::OneSided)?;
        let mut wrong: Vec<Option<Expected>> = wrong.into_iter().map(Some).collect();
        let mut options = vec![key];
        options.extend(chosen.iter().filter_map(|&at| wrong[at].take()));
        Ok(Prediction { options, site })
    }

    /// Tries worlds: in each, what is really seen there must be nearer to the key than to any other option. Returns (tried, held).
    ///
    /// # Errors
    /// [`Discard::Unstable`] where the key does not hold in enough of them.
    pub fn hold(
        &self,
        setting: &Setting,
        worlds: &Named,
        seen_in: impl Fn(&Sample) -> Lab,
    ) -> Result<(u32, u32), Discard> {
        let (worlds, held) = try_worlds(setting, worlds, |world| {
            let seen = seen_in(world);
            let key = difference(seen, self.options[0].seen.lab);
            self.options[1..].iter().all(|other| difference(seen, other.seen.lab) > key)
        });
        if worlds < WORLDS { Err(Discard::Unstable) } else { Ok((worlds, held)) }
    }

    /// How far the nearest wrong option is from the key, in ΔE00.
    pub fn margin(&self) -> f64 {
        self.options[1..]
            .iter()
            .map(|other| difference(other.seen.lab, self.options[0].seen.lab))
            .fold(f64::INFINITY, f64::min)
    }

    /// The wrong colours, nearest to what is really seen first.
    pub fn runners_up(&self) -> Vec<RunnerUp> {
        let error = |wrong: &&Expected| difference(wrong.seen.lab, self.options[0].seen.lab);
        let mut left: Vec<&Expected> = self.options[1..].iter().collect();
        let mut runners_up = Vec::new();
        while let Some(nearest) =
            (0..left.len()).min_by(|&one, &other| error(&left[one]).total_cmp(&error(&left[other])))
        {
            let nearest = left.remove(nearest);
            runners_up.push(RunnerUp { label: nearest.label.clone(), error: error(&nearest) });
        }
        runners_up
    }

    /// The options with their marks: credit by how near each comes to what is really seen.
    pub fn choices(self, course: &Course, lesson: &Lesson, bare: Lab) -> Vec<Choice> {
        let key = self.options[0].seen.lab;
        self.options
            .into_iter()
            .map(|option| {
                let error = difference(option.seen.lab, key);
                let reading = Reading::of(option.seen.lab, bare, self.site).in_language(&course.language);
                let treated = option.misconception.as_deref().and_then(|id| course.misconception(id));
                let label = option.label;
                Choice {
                    action: Action::Say(label.clone()),
                    label,
                    work: None,
                    healed: Some(option.seen),
                    reading: Some(reading),
                    error: Some(error),
                    mark: Mark {
                        credit: if treated.is_none() { 1.0 } else { marking::credit(error, 0.0) },
                        consequence: option.because,
                        misconception: treated.map(|misconception| misconception.id.clone()),
                        lesson: treated.map_or(&lesson.id, |misconception| &misconception.lesson).clone(),
                    },
                }
            })
            .collect()
    }
}

/// What somebody has in mind who speaks of a light grey (representative).
pub(super) const LIGHT_GREY: Lab = Lab::new(75.0, 0.0, 0.0);

/// The colour this far on the way from one to another; below 0 and above 1 beyond them.
pub(super) fn between(one: Lab, other: Lab, way: f64) -> Lab {
    let at = |one: f64, other: f64| one + way * (other - one);
    Lab::new(at(one.l, other.l), at(one.a, other.a), at(one.b, other.b))
}

/// The same surface, expected in another colour.
pub(super) fn repainted(surface: &Appearance, lab: Lab) -> Appearance {
    Appearance { lab, srgb: Srgb::from_lab(lab), ..*surface }
}

/// Every choice of so many expectations that all look different, each of another way of thinking, by their places; earlier places first.
fn apart(expected: &[Expected], count: usize) -> Vec<Vec<usize>> {
    let mut sets = vec![Vec::new()];
    for _ in 0..count {
        sets = sets
            .iter()
            .flat_map(|set: &Vec<usize>| {
                let from = set.last().map_or(0, |last| last + 1);
                let differs = |at: &usize| {
                    let Expected { seen, misconception, .. } = &expected[*at];
                    set.iter().map(|&other| &expected[other]).all(|other| {
                        other.misconception != *misconception
                            && difference(seen.lab, other.seen.lab) >= LEAST_APART
                    })
                };
                let longer = |at| set.iter().copied().chain([at]).collect();
                (from..expected.len()).filter(differs).map(longer).collect::<Vec<Vec<usize>>>()
            })
            .collect();
    }
    sets
}

/// What an option says: its label, or the colour in words and numbers where it has none. Two colours may share their words, never
/// their numbers.
fn named(course: &Course, label: String, lab: Lab, (bare, site): (Lab, Site)) -> String {
    if !label.is_empty() {
        return label;
    }
    let language = &course.language;
    let [l, a, b] = language.lab(lab);
    say!(
        language,
        "exercise-colour",
        reading = Reading::of(lab, bare, site).said(language),
        l = l,
        a = a,
        b = b
    )
}
