//! Wrong mixes for an exercise, each from its own misconception.

use super::draw::Setting;
use super::generate::{Attempt, Discard};
use super::place::Place;
use super::rules::Tempter;
use super::seed::shuffle;
use crate::course::{Course, Drill, Rule};
use crate::healing::Trial;
use crate::pigment::{Paint, Shelf};
use crate::search::Tried;
use std::cell::RefCell;
use std::collections::BTreeMap;

/// A wrong mix: its place in the ranking and the misconception behind it.
pub(super) struct Temptation {
    pub place: usize,
    pub misconception: String,
}

/// `wanted` wrong mixes among the acceptable places of the ranking, each another mix and from another misconception, that together `fit` beside
/// the best.
///
/// # Errors
/// [`Discard::TooFewTemptations`] where this setting does not yield so many; [`Discard::OneSided`] where no choice of them fits.
pub(super) fn temptations(
    course: &Course,
    drill: &Drill,
    tempter: &Tempter,
    draw: &mut Attempt,
    wanted: usize,
    acceptable: impl Fn(usize) -> bool,
    fit: impl Fn(&[usize]) -> bool,
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
    let mut known: Vec<(&String, Vec<usize>)> = Vec::new();
    let mut discard = Discard::TooFewTemptations;
    for (at, &(id, rule)) in ways.iter().enumerate() {
        if known.len() + ways.len() - at < wanted {
            break;
        }
        let places: Vec<usize> =
            tempter.mixes_by(rule).into_iter().filter(|&place| acceptable(place)).collect();
        if places.is_empty() {
            continue;
        }
        known.push((id, places));
        // Asked after each way of thinking, since the next one may be dear to follow.
        for chosen in choices_with_last(&known, wanted) {
            let places: Vec<usize> = chosen.iter().map(|&(_, place)| place).collect();
            if fit(&places) {
                let made =
                    |(way, place): (usize, usize)| Temptation { place, misconception: known[way].0.clone() };
                return Ok(chosen.into_iter().map(made).collect());
            }
            discard = Discard::OneSided;
        }
    }
    Err(discard)
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

/// How long the texts of a ranking's mixes are; each is made once.
pub(super) struct Lengths<'a> {
    course: &'a Course,
    ranking: &'a [Tried],
    known: RefCell<BTreeMap<usize, usize>>,
}

impl<'a> Lengths<'a> {
    pub fn new(course: &'a Course, ranking: &'a [Tried]) -> Self {
        Lengths { course, ranking, known: RefCell::default() }
    }

    /// Characters of the text of the mix at this place of the ranking.
    fn of(&self, at: usize) -> usize {
        let Course { language, shelf, .. } = self.course;
        let made = || language.mix(shelf, &self.ranking[at].mix).chars().count();
        *self.known.borrow_mut().entry(at).or_insert_with(made)
    }

    /// Whether the best mix has this place among these wrong ones.
    pub fn fit(&self, place: &Place, wrong: &[usize]) -> bool {
        let wrong: Vec<usize> = wrong.iter().map(|&at| self.of(at)).collect();
        place.is_length(self.of(0), &wrong)
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
