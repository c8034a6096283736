//! Options and their marks: what each answer of a setting would heal to, in numbers and in words.

use super::draw::Setting;
use super::tempt::Wording;
use super::{Action, Choice, Mark, marking};
use crate::course::{Course, Lesson};
use crate::healing::{Appearance, Reading, Scene, Trial};
use crate::language::capital;
use crate::pigment::Mix;
use crate::say;
use crate::search::Tried;

/// Judges answers in one setting.
pub(super) struct Judge<'a, 's> {
    pub course: &'a Course,
    pub lesson: &'a Lesson,
    pub setting: &'a Setting<'a>,
    pub scene: &'s Scene<'a>,
    pub trial: Trial<'s, 'a>,
    /// Least ΔE00 from the goal that was possible.
    pub best_error: f64,
    /// How mixes are worded.
    pub wording: Wording,
}

impl Judge<'_, '_> {
    /// A mix, tried.
    pub fn tried(&self, mix: Mix) -> Tried {
        let paint = self.course.shelf.paint_of(&mix);
        let healed = self.setting.light.lab_of(&self.trial.with(&paint));
        Tried { mix, paint, healed, error: self.setting.error(healed) }
    }

    /// The option to place a mix.
    pub fn place(&self, tried: &Tried, misconception: Option<&str>) -> Choice {
        let setting = self.setting;
        let healed = Appearance::of(self.trial.with(&tried.paint), setting.light);
        let Course { language, shelf, .. } = self.course;
        let bare = setting.light.lab_of(&self.scene.bare());
        let reading = Reading::of(healed.lab, bare, setting.client.site).in_language(language);
        let miss = marking::miss_in_words(language, healed.lab, setting.goal.lab);
        let verdict = match (tried.error <= setting.goal.tolerance, miss.is_empty()) {
            (true, true) => "exercise-reaches",
            (true, false) => "exercise-reaches-though",
            (false, true) => "exercise-misses",
            (false, false) => "exercise-misses-how",
        };
        let mut consequence = say!(
            language,
            verdict,
            when = capital(&language.after(setting.months)),
            reading = &reading.words,
            error = language.decimal(tried.error, 1),
            miss = miss
        );
        for (colourant, rule) in shelf.restrictions_of(&tried.mix) {
            consequence.push(' ');
            consequence += &language.restriction("exercise-holds-restricted", colourant, rule);
        }
        Choice {
            label: self.wording.mix(self.course, &tried.mix),
            action: Action::Place(tried.mix.clone()),
            work: None,
            healed: Some(healed),
            reading: Some(reading),
            error: Some(tried.error),
            mark: self.mark(marking::credit(tried.error, self.best_error), consequence, misconception),
        }
    }

    /// An option that places no colour.
    pub fn refrain(
        &self,
        action: Action,
        label: String,
        credit: f64,
        consequence: String,
        misconception: Option<&str>,
    ) -> Choice {
        let mark = self.mark(credit, consequence, misconception);
        Choice { label, action, work: None, healed: None, reading: None, error: None, mark }
    }

    fn mark(&self, credit: f64, consequence: String, misconception: Option<&str>) -> Mark {
        let treated = misconception.and_then(|id| self.course.misconception(id));
        Mark {
            credit,
            consequence,
            misconception: treated.map(|misconception| misconception.id.clone()),
            lesson: treated.map_or(&self.lesson.id, |misconception| &misconception.lesson).clone(),
        }
    }
}
