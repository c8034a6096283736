//! Options that are colours: the key is what the engine computes, the others what wrong ways of thinking would expect.
//!
//! Entry point: [`Prediction`], which collects expectations, takes those that differ visibly, and tries in worlds that differ a
//! little whether what is really seen stays nearest to the key.

use super::draw::Setting;
use super::generate::{Attempt, Discard};
use super::seed::shuffle;
use super::worlds::{Named, WORLDS, try_worlds};
use super::{Action, Choice, Mark, marking};
use crate::colour::{Lab, difference};
use crate::course::{Course, Drill, Lesson, Rule};
use crate::healing::{Appearance, Reading, World};
use crate::say;

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

/// The options of an exercise about colours, the key first.
pub(super) struct Prediction {
    pub options: Vec<Expected>,
}

impl Prediction {
    /// The key with as many wrong expectations as the drill asks for. `expect` says what somebody of a rule would expect, and why.
    ///
    /// # Errors
    /// [`Discard::TooFewTemptations`] where too few differ from the key by the drill's margin and from each other.
    pub fn draw(
        course: &Course,
        drill: &Drill,
        draw: &mut Attempt,
        key: Expected,
        expect: impl Fn(Rule) -> Option<(Appearance, String, String)>,
    ) -> Result<Self, Discard> {
        let mut ways: Vec<&String> = drill.tempts.iter().collect();
        shuffle(&mut draw.rng, &mut ways);
        let mut options = vec![key];
        for (at, id) in ways.iter().enumerate() {
            // All that are left would not be enough.
            if options.len() == drill.options || options.len() + ways.len() - at < drill.options {
                break;
            }
            let Some(misconception) = course.misconception(id) else { continue };
            let Some((seen, label, because)) = expect(misconception.rule) else { continue };
            let from_key = difference(seen.lab, options[0].seen.lab);
            if from_key >= drill.margin
                && options.iter().all(|other| difference(seen.lab, other.seen.lab) >= LEAST_APART)
            {
                options.push(Expected { seen, label, because, misconception: Some((*id).clone()) });
            }
        }
        if options.len() == drill.options {
            Ok(Prediction { options })
        } else {
            Err(Discard::TooFewTemptations)
        }
    }

    /// Tries worlds: in each, what is really seen there must be nearer to the key than to any other option. Returns (tried, held).
    ///
    /// # Errors
    /// [`Discard::Unstable`] where the key does not hold in enough of them.
    pub fn hold(
        &self,
        setting: &Setting,
        worlds: &Named,
        seen_in: impl Fn(&World) -> Lab,
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

    /// The options with their marks: credit by how near each comes to what is really seen.
    pub fn choices(self, course: &Course, lesson: &Lesson, bare: Lab) -> Vec<Choice> {
        let key = self.options[0].seen.lab;
        self.options
            .into_iter()
            .map(|option| {
                let error = difference(option.seen.lab, key);
                let reading = Reading::of(option.seen.lab, bare).in_language(&course.language);
                let treated = option.misconception.as_deref().and_then(|id| course.misconception(id));
                // Two colours may share their words, never their numbers.
                let label = if option.label.is_empty() {
                    let language = &course.language;
                    let [l, a, b] = language.lab(option.seen.lab, 1);
                    say!(language, "exercise-colour", reading = &reading.words, l = l, a = a, b = b)
                } else {
                    option.label
                };
                Choice {
                    action: Action::Say(label.clone()),
                    label,
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
