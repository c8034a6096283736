//! Wrong mixes for an exercise, each from its own misconception.

use super::draw::Setting;
use super::generate::{Attempt, Discard};
use super::rules::Tempter;
use super::seed::shuffle;
use crate::course::{Course, Drill, Rule};
use crate::healing::Trial;
use crate::pigment::{Paint, Shelf};
use crate::search::Tried;

/// A wrong mix: its place in the ranking and the misconception behind it.
pub(super) struct Temptation {
    pub place: usize,
    pub misconception: String,
}

/// `wanted` wrong mixes among the acceptable places of the ranking, each another mix and from another misconception.
///
/// # Errors
/// [`Discard::TooFewTemptations`] where this setting does not yield so many.
pub(super) fn temptations(
    course: &Course,
    drill: &Drill,
    tempter: &Tempter,
    draw: &mut Attempt,
    wanted: usize,
    acceptable: impl Fn(usize) -> bool,
) -> Result<Vec<Temptation>, Discard> {
    let mut ways: Vec<&String> = drill.tempts.iter().collect();
    shuffle(&mut draw.rng, &mut ways);
    // Those that have nothing to say here are left out at no cost, so that it is known early when the others cannot be enough.
    let ways: Vec<(&String, Rule)> = ways
        .into_iter()
        .filter_map(|id| Some((id, course.misconception(id)?.rule)))
        .filter(|(_, rule)| tempter.applies(*rule))
        .collect();
    let mut wrong: Vec<Temptation> = Vec::new();
    for (at, &(id, rule)) in ways.iter().enumerate() {
        if wrong.len() == wanted || wrong.len() + ways.len() - at < wanted {
            break;
        }
        let Some(place) = tempter.mix_by(rule) else { continue };
        if acceptable(place) && wrong.iter().all(|other| other.place != place) {
            wrong.push(Temptation { place, misconception: id.clone() });
        }
    }
    if wrong.len() == wanted { Ok(wrong) } else { Err(Discard::TooFewTemptations) }
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
