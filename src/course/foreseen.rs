//! What one swatch of a lesson shows, and what a call in its text says: the same computation.
//!
//! Entry point: [`foresee_on`].

use super::{Client, Show};
use crate::healing::{Appearance, Reading, Scene, Work};
use crate::pigment::Shelf;

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

/// What `show` shows on this client; which client it names does not matter here.
pub fn foresee_on(shelf: &Shelf, client: &Client, show: &Show) -> Foreseen {
    let existing: Vec<Work> = if show.bare { Vec::new() } else { client.works() };
    let scene = Scene::new(shelf, &client.skin, client.site, &existing, show.months);
    let reflectance = match &show.mix {
        Some(mix) => scene.with(&shelf.paint_of(mix), &show.placement),
        None => scene.existing(),
    };
    let bare = Appearance::of(scene.bare(), show.light);
    let seen = Appearance::of(reflectance, show.light);
    Foreseen { bare, seen, reading: Reading::of(seen.lab, bare.lab, client.site) }
}
