//! Wrong mixes for an exercise, each from its own misconception.

use super::draw::Setting;
use super::generate::{Attempt, Discard};
use super::place::{Looks, Place};
use super::rules::Tempter;
use super::seed::shuffle;
use crate::course::{Course, Drill, Rule};
use crate::healing::Trial;
use crate::pigment::{Mix, Paint, Shelf};
use crate::say;
use crate::search::Tried;
use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};

/// How the mixes of an exercise are worded, all of them alike: so that a bottle alone is as often the longer text as the shorter one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Wording {
    /// What is in it.
    Plain,
    /// Of a bottle alone also that nothing else is, which is longer than any mix with one modifier.
    Full,
}

impl Wording {
    /// A mix in words.
    pub fn mix(self, course: &Course, mix: &Mix) -> String {
        let Course { language, shelf, .. } = course;
        let said = language.mix(shelf, mix);
        match self {
            Wording::Full if mix.drops().count() == 1 => say!(language, "exercise-mix-alone", mix = said),
            _ => said,
        }
    }
}

/// Most mixes that one way of thinking is offered with.
const MOST_THOUGHTS: usize = 8;

/// A wrong mix: its place in the ranking and the misconception behind it.
pub(super) struct Temptation {
    pub place: usize,
    pub misconception: String,
}

/// `wanted` wrong mixes among the acceptable places of the ranking, each another mix and from another misconception, that together, worded like this,
/// `fit` beside the best.
///
/// # Errors
/// [`Discard::TooFewTemptations`] where this setting does not yield so many; [`Discard::OneSided`] where no choice of them fits.
pub(super) fn temptations(
    course: &Course,
    drill: &Drill,
    tempter: &Tempter,
    draw: &mut Attempt,
    (wanted, wording): (usize, Wording),
    acceptable: impl Fn(usize) -> bool,
    fit: &Fit,
) -> Result<Vec<Temptation>, Discard> {
    if wanted == 0 {
        return Ok(Vec::new());
    }
    let mut ways: Vec<&String> = drill.tempts.iter().collect();
    shuffle(&mut draw.rng, &mut ways);
    // Those that have nothing to say here are left out at no cost, so that it is known early when the others cannot be enough.
    let ways: Vec<(&String, Rule)> = ways
        .into_iter()
        .filter_map(|id| Some((id, course.misconception(id)?.rule)))
        .filter(|(_, rule)| tempter.applies(*rule))
        .collect();
    let looked = Looked::new(course, tempter.ranked);
    let mut known: Vec<(&String, Vec<usize>)> = Vec::new();
    // Of the choices with the last of these ways, the first that holds.
    let fitting = |known: &[(&String, Vec<usize>)], holds: &dyn Fn(Looks, &[Looks]) -> bool| {
        choices_with_last(known, wanted).into_iter().find_map(|chosen| {
            let looks = |at| looked.of(at, wording);
            let wrong: Vec<Looks> = chosen.iter().map(|&(_, place)| looks(place)).collect();
            let made =
                |&(way, place): &(usize, usize)| Temptation { place, misconception: known[way].0.clone() };
            holds(looks(0), &wrong).then(|| chosen.iter().map(made).collect())
        })
    };
    for (at, &(id, rule)) in ways.iter().enumerate() {
        if known.len() + ways.len() - at < wanted {
            break;
        }
        let places = tempter.mixes_by(rule).into_iter().filter(|&place| acceptable(place)).collect();
        let places = fit.kept(&looked, places);
        if places.is_empty() {
            continue;
        }
        known.push((id, places));
        // Asked after each way of thinking, since the next one may be dear to follow.
        if let Some(found) = fitting(&known, &|looks, wrong| fit.holds(looks, wrong)) {
            return Ok(found);
        }
    }
    // None fits wholly; perhaps one nearly does.
    (wanted..=known.len())
        .find_map(|ways| fitting(&known[..ways], &|looks, wrong| fit.nearly_holds(looks, wrong)))
        .ok_or(if known.len() < wanted { Discard::TooFewTemptations } else { Discard::OneSided })
}

/// Every choice of so many different places, each of another way of thinking and one of the last way's, as (way, place); those that take what
/// each way would mix first come first.
fn choices_with_last(known: &[(&String, Vec<usize>)], wanted: usize) -> Vec<Vec<(usize, usize)>> {
    // Of each choice also how many second thoughts it takes.
    let Some(last) = known.len().checked_sub(1) else { return Vec::new() };
    let of_way =
        |way: usize| known[way].1.iter().enumerate().map(move |(thought, &place)| (thought, (way, place)));
    let mut choices: Vec<(usize, Vec<(usize, usize)>)> =
        of_way(last).map(|(thought, one)| (thought, vec![one])).collect();
    for _ in 1..wanted {
        choices = choices
            .iter()
            .flat_map(|(thoughts, chosen)| {
                // Earlier ways in their order behind the last one.
                let from = if chosen.len() == 1 { 0 } else { chosen.last().map_or(0, |(way, _)| way + 1) };
                let more = (from..last).flat_map(of_way);
                let others = more.filter(|(_, (_, place))| chosen.iter().all(|(_, other)| other != place));
                others
                    .map(|(thought, one)| (thoughts + thought, chosen.iter().copied().chain([one]).collect()))
                    .collect::<Vec<_>>()
            })
            .collect();
    }
    choices.sort_by_key(|(thoughts, _)| *thoughts);
    choices.into_iter().map(|(_, chosen)| chosen).collect()
}

/// Whether a place of the ranking is a wrong answer to offer: it misses the goal, is worse than the best by the drill's margin, and
/// somebody might mix it on purpose.
pub(super) fn is_wrong(
    drill: &Drill,
    shelf: &Shelf,
    setting: &Setting,
    ranking: &[Tried],
    place: usize,
) -> bool {
    let Tried { error, mix, .. } = &ranking[place];
    *error > setting.goal.tolerance && error - ranking[0].error >= drill.margin && !shelf.is_at_odds(mix)
}

/// How a ranking's mixes look to whoever chooses from them; each is looked at once.
pub(super) struct Looked<'a> {
    course: &'a Course,
    ranking: &'a [Tried],
    known: RefCell<BTreeMap<(usize, Wording), usize>>,
}

impl<'a> Looked<'a> {
    pub fn new(course: &'a Course, ranking: &'a [Tried]) -> Self {
        Looked { course, ranking, known: RefCell::default() }
    }

    /// The looks of the mix at this place of the ranking.
    fn of(&self, at: usize, wording: Wording) -> Looks {
        let tried = &self.ranking[at];
        let made = || wording.mix(self.course, &tried.mix).chars().count();
        let length = *self.known.borrow_mut().entry((at, wording)).or_insert_with(made);
        Looks { lab: tried.healed, length, of_kind: tried.mix.drops().count() == 1 }
    }
}

/// What is asked of wrong mixes together.
pub(super) enum Fit {
    /// Nothing: they are not shown.
    Any,
    /// That the best mix has this place among them.
    Beside(Place),
    /// That no two texts are as long as each other, and that so many are of the kind that is told at a glance, where that is asked for. The best is
    /// one of the wrong answers then.
    Apart(Option<usize>),
}

impl Fit {
    fn holds(&self, key: Looks, wrong: &[Looks]) -> bool {
        match self {
            Fit::Any => true,
            Fit::Beside(place) => place.is_had_by(key, wrong),
            Fit::Apart(of_kind) => {
                let all = || wrong.iter().chain([&key]);
                let is_asked_for = |count| of_kind.is_none_or(|of_kind| count == of_kind);
                all().map(|looks| looks.length).collect::<BTreeSet<usize>>().len() == wrong.len() + 1
                    && is_asked_for(all().filter(|looks| looks.of_kind).count())
            }
        }
    }

    /// Whether as much of it holds as must.
    fn nearly_holds(&self, key: Looks, wrong: &[Looks]) -> bool {
        match self {
            Fit::Beside(place) => place.is_about_had_by(key, wrong),
            _ => self.holds(key, wrong),
        }
    }

    /// Of mixes that one way of thinking comes to, the first of each length among the lighter and among the darker ones, and among
    /// bottles alone and mixes.
    fn kept(&self, looked: &Looked, mut places: Vec<usize>) -> Vec<usize> {
        if matches!(self, Fit::Any) {
            places.truncate(MOST_THOUGHTS);
            return places;
        }
        let key = looked.of(0, Wording::Plain);
        let mut known = [const { BTreeSet::new() }; 4];
        places.retain(|&at| {
            let looks = looked.of(at, Wording::Plain);
            let alike = &mut known[2 * usize::from(looks.lab.l < key.lab.l) + usize::from(looks.of_kind)];
            alike.len() < MOST_THOUGHTS / 2 && alike.insert(looks.length)
        });
        places
    }
}

/// In a world, how far the best mix is from the goal, if it is better than every wrong one offered beside it.
pub(super) fn best_in(
    trial: &Trial,
    setting: &Setting,
    ranking: &[Tried],
    wrong: &[Temptation],
) -> Option<f64> {
    let error = |paint: &Paint| setting.error(setting.light.lab_of(&trial.with(paint)));
    let key = error(&ranking[0].paint);
    wrong.iter().all(|wrong| error(&ranking[wrong.place].paint) > key).then_some(key)
}
