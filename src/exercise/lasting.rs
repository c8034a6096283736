//! What the colour of an answer comes to with the years.
//!
//! Entry point: [`over_time`].

use super::{Action, Case, Choice, Exercise};
use crate::course::Course;
use crate::healing::{Appearance, HEALED_MONTHS, Reading, Scene, Work};

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

/// An answer at [`LOOKED_AT_MONTHS`] and at the time it is marked by, in order of time. A colour that nothing leads to, bare skin
/// and work under another light are seen at their own time only; an answer that colours nothing, never.
pub fn over_time(course: &Course, exercise: &Exercise, choice: &Choice) -> Vec<Later> {
    let Some(case) = &exercise.case else { return Vec::new() };
    if let (Some(work), Some(client)) = (work_of(course, case, choice), course.client(&case.client)) {
        // Old work that is asked about is made up, in the client's skin alone.
        let existing = if case.placed.is_some() { client.works() } else { Vec::new() };
        let mut times = LOOKED_AT_MONTHS.to_vec();
        times.push(work.months);
        times.sort_by(f64::total_cmp);
        times.dedup();
        return times
            .into_iter()
            .map(|months| {
                let scene = Scene::new(&course.shelf, &client.skin, client.site, &existing, months);
                let bare = Appearance::of(scene.bare(), case.light);
                let seen = Appearance::of(scene.with(&work.paint, &work.placement), case.light);
                let reading = Reading::of(seen.lab, bare.lab, client.site).in_language(&course.language);
                Later { months: Some(months), judged: months == work.months, bare, seen, reading }
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

/// What is in the skin by an answer, as old as when it is marked.
fn work_of(course: &Course, case: &Case, choice: &Choice) -> Option<Work> {
    let Action::Place(mix) = &choice.action else { return choice.work.clone() };
    let placed = case.placed?;
    Some(Work { paint: course.shelf.paint_of(mix), placement: placed.placement, months: placed.months })
}
