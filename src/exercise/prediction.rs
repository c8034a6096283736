//! Options that are colours: the key is what the engine computes, the others what wrong ways of thinking would expect.
//!
//! Entry point: [`Prediction`], which collects expectations, takes those that differ visibly, and tries in worlds that differ a
//! little whether what is really seen stays nearest to the key.

use super::draw::Setting;
use super::generate::{Attempt, Discard};
use super::seed::shuffle;
use super::worlds::{Named, Sample, WORLDS, try_worlds};
use super::{Action, Choice, Mark, marking};
use crate::colour::{Lab, difference};
use crate::course::{Course, Drill, Family, Lesson, Rule};
use crate::healing::{Appearance, Reading};
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
    /// The key with as many wrong expectations as the drill asks for, among which it has a [`Place`] drawn by the seed, on skin that
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
        expect: impl Fn(Rule) -> Option<(Appearance, String, String)>,
    ) -> Result<Self, Discard> {
        key.label = named(course, key.label, key.seen.lab, bare);
        let mut ways: Vec<&String> = drill.tempts.iter().collect();
        shuffle(&mut draw.rng, &mut ways);
        let wrong: Vec<Expected> = ways
            .into_iter()
            .filter_map(|id| {
                let (seen, label, because) = expect(course.misconception(id)?.rule)?;
                let label = named(course, label, seen.lab, bare);
                let wrong = Expected { seen, label, because, misconception: Some(id.clone()) };
                (difference(seen.lab, key.seen.lab) >= drill.margin).then_some(wrong)
            })
            .collect();
        let sets = apart(&wrong, drill.options.saturating_sub(1));
        if sets.is_empty() {
            return Err(Discard::TooFewTemptations);
        }
        let place = Place::of_key(drill, draw);
        let fits = |set: &&Vec<usize>| {
            let wrong: Vec<&Expected> = set.iter().map(|&at| &wrong[at]).collect();
            place.is_had_by(&key, &wrong)
        };
        let chosen = sets.iter().find(fits).ok_or(Discard::OneSided)?;
        let mut wrong: Vec<Option<Expected>> = wrong.into_iter().map(Some).collect();
        let mut options = vec![key];
        options.extend(chosen.iter().filter_map(|&at| wrong[at].take()));
        Ok(Prediction { options })
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

    /// The options with their marks: credit by how near each comes to what is really seen.
    pub fn choices(self, course: &Course, lesson: &Lesson, bare: Lab) -> Vec<Choice> {
        let key = self.options[0].seen.lab;
        self.options
            .into_iter()
            .map(|option| {
                let error = difference(option.seen.lab, key);
                let reading = Reading::of(option.seen.lab, bare).in_language(&course.language);
                let treated = option.misconception.as_deref().and_then(|id| course.misconception(id));
                let label = option.label;
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

/// Draws after which a place in lightness that few of a drill's draws allow is given up, and those after which any place will do: better one exercise
/// in a hundred that leans than none.
const PATIENT_DRAWS: [u32; 2] = [60, 120];

/// Where the key shall stand among its options, so that neither the longest text nor the middle colour is right oftener than another. It is
/// drawn for the exercise, and draws are thrown away that do not allow it.
struct Place {
    /// How many of the wrong colours are darker; or how many are lighter, if it comes to that.
    darker: usize,
    either_way: bool,
    /// Whether its text is the longest. If not, a wrong one is: texts of the same greatest length would tell that both are wrong, or not.
    longest: bool,
    /// Whether the colours are shown: then the middle one is not only that in lightness, but also the one nearest to the mean of all.
    shown: bool,
    /// Whether any place in lightness will do, and whether any place at all.
    as_light_as_it_comes: bool,
    anywhere: bool,
}

impl Place {
    fn of_key(drill: &Drill, draw: &Attempt) -> Self {
        let (darker, shorter) = draw.places_of_key(drill);
        let shown = matches!(drill.family, Family::Foresight | Family::Light);
        let [patient, still] = PATIENT_DRAWS.map(|draws| draw.number < draws);
        Place {
            darker,
            either_way: !(shown && patient),
            longest: shorter + 1 == drill.options,
            shown,
            as_light_as_it_comes: !(shown || patient),
            anywhere: !still,
        }
    }

    /// Whether the key has this place among these wrong ones.
    fn is_had_by(&self, key: &Expected, wrong: &[&Expected]) -> bool {
        let length = |expected: &Expected| expected.label.chars().count();
        let longest = wrong.iter().map(|wrong| length(wrong)).max().unwrap_or(0);
        let as_long = wrong.iter().filter(|wrong| length(wrong) == longest).count();
        let right_length =
            if self.longest { longest < length(key) } else { longest > length(key) && as_long == 1 };
        if self.anywhere {
            return true;
        }
        if !right_length || self.as_light_as_it_comes {
            return right_length;
        }
        let darker = wrong.iter().filter(|wrong| wrong.seen.lab.l < key.seen.lab.l).count();
        if darker != self.darker && !(self.either_way && wrong.len() - darker == self.darker) {
            return false;
        }
        // One place of all is that in the middle.
        !self.shown || wrong.len() < 2 || is_nearest_to_mean(key, wrong) == (self.darker == wrong.len() / 2)
    }
}

/// Whether the key's colour is nearer to the mean of all options than any other.
fn is_nearest_to_mean(key: &Expected, wrong: &[&Expected]) -> bool {
    let labs = || wrong.iter().copied().chain([key]).map(|option| option.seen.lab);
    let mean = |of: fn(Lab) -> f64| labs().map(of).sum::<f64>() / (wrong.len() + 1) as f64;
    let mean = Lab::new(mean(|lab| lab.l), mean(|lab| lab.a), mean(|lab| lab.b));
    let away = difference(key.seen.lab, mean);
    wrong.iter().all(|wrong| difference(wrong.seen.lab, mean) > away)
}

/// Every choice of so many expectations that all look different, by their places; earlier places first.
fn apart(expected: &[Expected], count: usize) -> Vec<Vec<usize>> {
    let mut sets = vec![Vec::new()];
    for _ in 0..count {
        sets = sets
            .iter()
            .flat_map(|set: &Vec<usize>| {
                let from = set.last().map_or(0, |last| last + 1);
                let differs = |at: &usize| {
                    let lab = expected[*at].seen.lab;
                    set.iter().all(|&other| difference(lab, expected[other].seen.lab) >= LEAST_APART)
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
fn named(course: &Course, label: String, lab: Lab, bare: Lab) -> String {
    if !label.is_empty() {
        return label;
    }
    let language = &course.language;
    let [l, a, b] = language.lab(lab, 1);
    say!(language, "exercise-colour", reading = Reading::of(lab, bare).said(language), l = l, a = a, b = b)
}
