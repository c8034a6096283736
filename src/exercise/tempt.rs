//! Wrong mixes for an exercise, each from its own misconception.

use super::draw::{Setting, Tried};
use super::generate::{Attempt, Discard};
use super::rules::Tempter;
use super::seed::shuffle;
use super::worlds::try_worlds;
use crate::course::{Course, Drill};
use crate::pigment::{Paint, Shelf};

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
    let mut wrong: Vec<Temptation> = Vec::new();
    for id in ways {
        if wrong.len() == wanted {
            break;
        }
        let Some(misconception) = course.misconception(id) else { continue };
        let Some(place) = tempter.mix_by(misconception.rule) else { continue };
        if acceptable(place) && wrong.iter().all(|other| other.place != place) {
            wrong.push(Temptation { place, misconception: id.clone() });
        }
    }
    if wrong.len() == wanted { Ok(wrong) } else { Err(Discard::TooFewTemptations) }
}

/// Whether a place of the ranking is worse than the best by the drill's margin.
pub(super) fn visibly_worse(drill: &Drill, ranking: &[Tried], place: usize) -> bool {
    ranking[place].error - ranking[0].error >= drill.margin
}

/// In how many worlds the best mix stays better than every wrong one: (tried, held).
pub(super) fn key_against(
    shelf: &Shelf,
    setting: &Setting,
    words: &[&str],
    ranking: &[Tried],
    wrong: &[Temptation],
) -> (u32, u32) {
    try_worlds(shelf, setting, words, |scene, placement| {
        let trial = scene.trial(placement);
        let error = |paint: &Paint| setting.error(setting.light.lab_of(&trial.with(paint)));
        let key = error(&ranking[0].paint);
        wrong.iter().all(|wrong| error(&ranking[wrong.place].paint) > key)
    })
}
