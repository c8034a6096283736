//! What the colour of an answer comes to with the years.
//!
//! Entry point: [`over_time`].

use super::draw::Setting;
use super::{Action, Choice, Exercise};
use crate::course::Course;
use crate::healing::{Appearance, HEALED_MONTHS, Reading};

/// Months after the placement at which an answer is looked at: healed, and one, two and three years later.
pub const LOOKED_AT_MONTHS: [f64; 4] = [HEALED_MONTHS, 12.0, 24.0, 36.0];

/// How an answer looks at some time, under the light of its exercise.
#[derive(Debug, Clone)]
pub struct Later {
    /// Months after the placement; `None` where the question is not about a time.
    pub months: Option<f64>,
    /// Whether this is what the answer is marked by.
    pub judged: bool,
    /// The skin without any work at that time.
    pub bare: Appearance,
    /// What is seen.
    pub seen: Appearance,
    /// In words.
    pub reading: Reading,
}

/// An answer at [`LOOKED_AT_MONTHS`] and at the time it is marked by, in order of time. An answer that is a colour and no mix is seen
/// at its own time only; one that colours nothing, never.
pub fn over_time(course: &Course, exercise: &Exercise, choice: &Choice) -> Vec<Later> {
    let Some(case) = &exercise.case else { return Vec::new() };
    let setting = Setting::of_case(course, case);
    if let (Action::Place(mix), Some(setting)) = (&choice.action, setting) {
        let paint = course.shelf.paint_of(mix);
        let mut times = LOOKED_AT_MONTHS.to_vec();
        times.push(setting.months);
        times.sort_by(f64::total_cmp);
        times.dedup();
        return times
            .into_iter()
            .map(|months| {
                let then = Setting { months, existing: setting.existing.clone(), ..setting };
                let scene = then.scene(&course.shelf);
                let bare = Appearance::of(scene.bare(), setting.light);
                let seen = Appearance::of(scene.with(&paint, &setting.placement), setting.light);
                let reading =
                    Reading::of(seen.lab, bare.lab, setting.client.site).in_language(&course.language);
                Later { months: Some(months), judged: months == setting.months, bare, seen, reading }
            })
            .collect();
    }
    let shown = choice.healed.zip(choice.reading.clone());
    let months = case.placed.map(|placed| placed.months);
    shown
        .map(|(seen, reading)| Later { months, judged: true, bare: case.bare, seen, reading })
        .into_iter()
        .collect()
}
