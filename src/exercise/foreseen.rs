//! What one swatch of a lesson shows.

use crate::course::{Course, Show};
use crate::healing::{Appearance, Reading, Scene, Work};

/// A computed swatch: a client's skin, bare and with work.
#[derive(Debug, Clone)]
pub struct Foreseen {
    /// The skin without any work, at the same time.
    pub bare: Appearance,
    /// What is seen.
    pub seen: Appearance,
    /// What is seen, in words.
    pub reading: Reading,
}

/// Computes a swatch. A client that the course does not have is the loader's error; `None` then.
pub fn foresee(course: &Course, show: &Show) -> Option<Foreseen> {
    let client = course.client(&show.client)?;
    let existing: Vec<Work> = if show.bare { Vec::new() } else { client.works() };
    let scene = Scene::new(&course.shelf, &client.skin, client.site, &existing, show.months);
    let reflectance = match &show.mix {
        Some(mix) => scene.with(&course.shelf.paint_of(mix), &show.placement),
        None => scene.existing(),
    };
    let bare = Appearance::of(scene.bare(), show.light);
    let seen = Appearance::of(reflectance, show.light);
    Some(Foreseen { bare, seen, reading: Reading::of(seen.lab, bare.lab) })
}
