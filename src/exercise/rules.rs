//! Rules: how a misconception turns into a wrong mix.
//!
//! Entry point: [`Tempter`], which knows one setting and its ranked drop grid, and answers what somebody with a given way of
//! thinking would mix.

use super::draw::Setting;
use crate::Cores;
use crate::colour::Lab;
use crate::course::Limits;
use crate::course::Rule;
use crate::healing::{HEALED_MONTHS, Placement, Scene, Work};
use crate::pigment::{Mix, Modifier, Paint, Shelf};
use crate::search::{Tried, healed_colours};
use crate::skin::{Redness, Site, Skin, Undertone};
use std::cell::OnceCell;

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
            Rule::MatchLabel | Rule::FreshIsFinal | Rule::CoverUp => true,
            Rule::CoolTheRed => client.redness >= Redness::Rosy && self.modified(Modifier::Cooler).is_some(),
            Rule::WarmForWarm => matches!(client.undertone, Undertone::Warm | Undertone::Olive),
            Rule::OneForPhototype => self.textbook() != client.skin,
            Rule::BlackForDark => self.modified(Modifier::Darker).is_some(),
            Rule::WhiteForLight => self.modified(Modifier::Lighter).is_some(),
            Rule::IgnoreFading => self.setting.months > HEALED_MONTHS,
            Rule::IgnoreOldWork | Rule::WheelOpposite => !existing.is_empty(),
            _ => false,
        }
    }

    /// What this way of thinking would mix here; `None` where it does not apply.
    pub fn mix_by(&self, rule: Rule) -> Option<usize> {
        if !self.applies(rule) {
            return None;
        }
        let client = self.setting.client;
        let goal = self.setting.goal.lab;
        let existing = &self.setting.existing;
        match rule {
            // In the bottle everything looks dark: it is the lean that is matched.
            Rule::MatchLabel => self.least(|i| {
                let label = self.label(i);
                let (a, b) = (label.a - goal.a, label.b - goal.b);
                a * a + b * b
            }),
            Rule::CoolTheRed => self.modified(Modifier::Cooler),
            Rule::WarmForWarm => {
                self.modified(Modifier::Warmer).or_else(|| self.least(|i| -self.label(i).chroma()))
            }
            Rule::OneForPhototype => self.best_in(&self.textbook(), existing, self.setting.months),
            Rule::BlackForDark => self.modified(Modifier::Darker),
            Rule::WhiteForLight => self.modified(Modifier::Lighter),
            Rule::FreshIsFinal => self.best_in(&client.skin, existing, 0.0),
            Rule::IgnoreFading => self.best_in(&client.skin, existing, HEALED_MONTHS),
            Rule::IgnoreOldWork => self.best_in(&client.skin, &[], self.setting.months),
            Rule::WheelOpposite => self.wheel_opposite(),
            Rule::CoverUp => self.least(|i| self.label(i).l),
            _ => None,
        }
    }

    /// The calm, neutral skin of the client's phototype.
    fn textbook(&self) -> Skin {
        let client = self.setting.client;
        client.site.skin_of(Skin::from_evidence(client.phototype, Undertone::Neutral, Redness::Calm))
    }

    /// Place in the ranking of the mix with the least value.
    fn least(&self, value: impl Fn(usize) -> f64) -> Option<usize> {
        (0..self.ranked.len()).min_by(|&one, &other| value(one).total_cmp(&value(other)))
    }

    /// The mix nearest the goal if the skin, the old work or the time were these.
    fn best_in(&self, skin: &Skin, existing: &[Work], months: f64) -> Option<usize> {
        let site: Site = self.setting.client.site;
        let placement: &Placement = &self.setting.placement;
        let scene = Scene::new(self.shelf, skin, site, existing, months);
        let trial = scene.trial(placement);
        let paints: Vec<&Paint> = self.ranked.iter().map(|tried| &tried.paint).collect();
        let healed = healed_colours(&trial, &paints, self.setting.light, Cores::One);
        let errors: Vec<f64> = healed.into_iter().map(|lab| self.setting.error(lab)).collect();
        self.least(|i| errors[i])
    }

    /// The best mix's bottle with as many drops of a modifier as the drill allows.
    fn modified(&self, kind: Modifier) -> Option<usize> {
        let is_kind = |id: &str| self.shelf.bottle(id).is_some_and(|bottle| bottle.modifier == Some(kind));
        let modifier = self.limits.modifiers.iter().find(|id| is_kind(id))?;
        let (bottle, _) = self
            .ranked
            .first()?
            .mix
            .drops()
            .find(|(id, _)| self.limits.bottles.iter().any(|bottle| bottle == id))?;
        let drops = self.limits.modifier_drops;
        let mix = Mix::new([(bottle.to_owned(), self.limits.drops - drops), (modifier.clone(), drops)]);
        self.ranked.iter().position(|tried| tried.mix == mix)
    }

    /// The mix whose colour in the bottle lies most strongly opposite, in hue, to what the old work adds to the skin.
    fn wheel_opposite(&self) -> Option<usize> {
        let client = self.setting.client;
        let today = Scene::today(self.shelf, &client.skin, client.site, &self.setting.existing);
        let light = self.setting.light;
        let (bare, now) = (light.lab_of(&today.bare()), light.lab_of(&today.existing()));
        let (a, b) = (now.a - bare.a, now.b - bare.b);
        self.least(|i| self.label(i).a * a + self.label(i).b * b)
    }
}
