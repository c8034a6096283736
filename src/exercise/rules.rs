//! Rules: how a misconception turns into a wrong mix.
//!
//! Entry point: [`Tempter`], which knows one setting and its ranked drop grid, and answers what somebody with a given way of
//! thinking would mix.

use super::draw::Setting;
use super::kept::{View, healed};
use crate::colour::{JUST_VISIBLE, Lab, difference};
use crate::course::Limits;
use crate::course::Rule;
use crate::healing::{HEALED_MONTHS, Scene, Work};
use crate::pigment::{Mix, Modifier, Paint, Shelf};
use crate::search::Tried;
use crate::skin::{Redness, Skin, Undertone};
use std::cell::OnceCell;

/// Most mixes that one way of thinking is taken to come to.
const MOST_THOUGHTS: usize = 48;

/// Difference in lean, in units of a* and b*, within which a colour in the bottle is taken for one that matches (representative).
const ALIKE_IN_LEAN: f64 = 3.0;

/// How much lighter than the goal somebody aims who means to deepen it later, in units of L* (representative).
const A_SHADE: f64 = 6.0;

/// One setting seen through wrong ways of thinking.
pub(super) struct Tempter<'a, 'c> {
    pub shelf: &'a Shelf,
    pub setting: &'a Setting<'c>,
    pub limits: &'a Limits,
    /// The drop grid, nearest to the goal first.
    pub ranked: &'a [Tried],
    /// The colour of each of them in the bottle, once it is asked for.
    labels: OnceCell<Vec<Lab>>,
}

impl<'a, 'c> Tempter<'a, 'c> {
    pub fn new(shelf: &'a Shelf, setting: &'a Setting<'c>, limits: &'a Limits, ranked: &'a [Tried]) -> Self {
        Tempter { shelf, setting, limits, ranked, labels: OnceCell::new() }
    }

    /// The colour in the bottle of the mix at this place of the ranking.
    fn label(&self, place: usize) -> Lab {
        let all =
            || self.ranked.iter().map(|tried| crate::healing::masstone(self.shelf, &tried.paint)).collect();
        self.labels.get_or_init(all)[place]
    }

    /// Whether this way of thinking has anything to say here; it costs nothing to ask.
    pub fn applies(&self, rule: Rule) -> bool {
        let (client, existing) = (self.setting.client, &self.setting.existing);
        match rule {
            Rule::MatchLabel | Rule::FreshIsFinal | Rule::CoverUp | Rule::ShadeLighter => true,
            Rule::CoolTheRed => client.redness >= Redness::Rosy && self.has(Modifier::Cooler),
            Rule::WarmForWarm => matches!(client.undertone, Undertone::Warm | Undertone::Olive),
            Rule::OneForPhototype => self.textbook() != client.skin,
            Rule::BlackForDark => self.has(Modifier::Darker),
            Rule::WhiteForLight => self.has(Modifier::Lighter),
            Rule::IgnoreFading => self.setting.months > HEALED_MONTHS,
            Rule::IgnoreOldWork | Rule::WheelOpposite => !existing.is_empty(),
            _ => false,
        }
    }

    /// What this way of thinking would mix here, by places in the ranking: first whatever comes nearest to what it looks for, then the same of
    /// somebody who takes a bottle alone, and of somebody who takes modifiers, then what looks as good to it; or fewer drops of its modifier.
    /// Nothing where it does not apply.
    pub fn mixes_by(&self, rule: Rule) -> Vec<usize> {
        if !self.applies(rule) {
            return Vec::new();
        }
        let client = self.setting.client;
        let goal = self.setting.goal.lab;
        let existing = &self.setting.existing;
        match rule {
            // In the bottle everything looks dark: it is the lean that is matched.
            Rule::MatchLabel => self.within(ALIKE_IN_LEAN, |i| {
                let label = self.label(i);
                let (a, b) = (label.a - goal.a, label.b - goal.b);
                libm::hypot(a, b)
            }),
            Rule::CoolTheRed => self.modified(Modifier::Cooler),
            Rule::WarmForWarm => {
                let warmer = self.modified(Modifier::Warmer);
                if warmer.is_empty() { self.nearest(|i| -self.label(i).chroma()) } else { warmer }
            }
            Rule::OneForPhototype => self.best_in(&self.textbook(), existing, self.setting.months),
            Rule::BlackForDark => self.modified(Modifier::Darker),
            Rule::WhiteForLight => self.modified(Modifier::Lighter),
            Rule::FreshIsFinal => self.best_in(&client.skin, existing, 0.0),
            Rule::IgnoreFading => self.best_in(&client.skin, existing, HEALED_MONTHS),
            Rule::IgnoreOldWork => self.best_in(&client.skin, &[], self.setting.months),
            Rule::WheelOpposite => self.wheel_opposite(),
            Rule::CoverUp => self.nearest(|i| self.label(i).l),
            Rule::ShadeLighter => {
                let aim = Lab { l: goal.l + A_SHADE, ..goal };
                let healed = |i: usize| self.ranked[i].healed;
                let mut found = self.within(A_SHADE / 2.0, |i| difference(healed(i), aim));
                found.retain(|&i| healed(i).l > goal.l);
                found
            }
            _ => Vec::new(),
        }
    }

    /// The calm, neutral skin of the client's phototype.
    fn textbook(&self) -> Skin {
        let client = self.setting.client;
        client.site.skin_of(Skin::from_evidence(client.phototype, Undertone::Neutral, Redness::Calm))
    }

    /// Places in the ranking of the mix with the least value, in units of L*a*b*: of all, of bottles alone, and of those with modifiers; then of
    /// what is as good as the least to whoever goes by that value.
    fn nearest(&self, value: impl Fn(usize) -> f64) -> Vec<usize> {
        self.within(f64::NEG_INFINITY, value)
    }

    /// The same, where whatever has at most so great a value will do.
    fn within(&self, will_do: f64, value: impl Fn(usize) -> f64) -> Vec<usize> {
        let values: Vec<f64> = (0..self.ranked.len()).map(value).collect();
        let least = |among: &dyn Fn(usize) -> bool| {
            let places = (0..values.len()).filter(|&place| among(place));
            places.min_by(|&one, &other| values[one].total_cmp(&values[other]))
        };
        let mix = |place: usize| &self.ranked[place].mix;
        let is_alone = |place: usize| mix(place).drops().count() == 1;
        let mut found: Vec<usize> = Vec::new();
        let second = |place: usize| !is_alone(place) && !self.shelf.is_at_odds(mix(place));
        let best = [least(&|_| true), least(&is_alone), least(&second)];
        let most = best[0].map_or(will_do, |best| will_do.max(values[best] + JUST_VISIBLE));
        let mut alike: Vec<usize> = (0..values.len()).filter(|&place| values[place] <= most).collect();
        alike.sort_by(|&one, &other| values[one].total_cmp(&values[other]));
        for place in best.into_iter().flatten().chain(alike) {
            if found.len() < MOST_THOUGHTS && !found.contains(&place) {
                found.push(place);
            }
        }
        found
    }

    /// The mixes nearest the goal if the skin, the old work or the time were these.
    fn best_in(&self, skin: &Skin, existing: &[Work], months: f64) -> Vec<usize> {
        let mixes: Vec<(&Mix, &Paint)> = self.ranked.iter().map(|tried| (&tried.mix, &tried.paint)).collect();
        let view = View { skin, existing, months };
        let healed = healed(self.shelf, self.setting, (self.limits, &mixes), &view, None);
        let errors: Vec<f64> = healed.into_iter().map(|lab| self.setting.error(lab)).collect();
        // Somebody who thinks so takes whatever reaches the goal for right.
        self.within(self.setting.goal.tolerance, |i| errors[i])
    }

    /// The drill's modifier of a kind.
    fn modifier(&self, kind: Modifier) -> Option<&str> {
        let is_kind = |id: &str| self.shelf.bottle(id).is_some_and(|bottle| bottle.modifier == Some(kind));
        self.limits.modifiers.iter().map(String::as_str).find(|id| is_kind(id))
    }

    fn has(&self, kind: Modifier) -> bool {
        self.modifier(kind).is_some() && self.limits.most_modifier_drops() > 0
    }

    /// The best mix's bottle with as many drops of a modifier as the drill allows, then with one less, down to one; then the same of the other
    /// bottles, nearest to the goal first.
    fn modified(&self, kind: Modifier) -> Vec<usize> {
        let Some(modifier) = self.modifier(kind) else { return Vec::new() };
        let is_bottle = |id: &str| self.limits.bottles.iter().any(|bottle| bottle == id);
        let mut bottles: Vec<&str> = Vec::new();
        for (bottle, _) in self.ranked.iter().flat_map(|tried| tried.mix.drops()) {
            if is_bottle(bottle) && !bottles.contains(&bottle) {
                bottles.push(bottle);
            }
        }
        let drops = |at: usize| {
            let mix = &self.ranked[at].mix;
            mix.drops().find(|(id, _)| *id == modifier).map(|(_, drops)| drops)
        };
        // A bottle and the modifier, nothing else.
        let mut found: Vec<(usize, std::cmp::Reverse<u32>, usize)> = (0..self.ranked.len())
            .filter(|&at| self.ranked[at].mix.drops().count() == 2)
            .filter_map(|at| {
                let (bottle, _) = self.ranked[at].mix.drops().find(|(id, _)| is_bottle(id))?;
                let bottle = bottles.iter().position(|known| *known == bottle)?;
                Some((bottle, std::cmp::Reverse(drops(at)?), at))
            })
            .collect();
        found.sort();
        found.into_iter().map(|(_, _, at)| at).collect()
    }

    /// The mixes whose colour in the bottle lies most strongly opposite, in hue, to what the old work adds to the skin.
    fn wheel_opposite(&self) -> Vec<usize> {
        let client = self.setting.client;
        let today = Scene::today(self.shelf, &client.skin, client.site, &self.setting.existing);
        let light = self.setting.light;
        let (bare, now) = (light.lab_of(&today.bare()), light.lab_of(&today.existing()));
        let (a, b) = (now.a - bare.a, now.b - bare.b);
        let strength = libm::hypot(a, b).max(f64::MIN_POSITIVE);
        self.nearest(|i| (self.label(i).a * a + self.label(i).b * b) / strength)
    }
}
