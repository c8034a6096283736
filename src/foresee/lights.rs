//! The same work under every light.
//!
//! Entry point: [`UnderLight::all`].

use super::Task;
use crate::colour::{Lab, Light, difference, inconstancy, metamerism};
use crate::healing::{Appearance, Reading};
use crate::pigment::Shelf;
use serde::Serialize;

/// What is seen under one light, and what going there from the task's light does.
#[derive(Debug, Clone, Serialize)]
pub struct UnderLight {
    /// The light.
    pub light: Light,
    /// L*, a*, b* relative to this light's white.
    pub lab: [f64; 3],
    /// Red, green, blue, 0 to 255, for an eye that has got used to this light.
    pub srgb: [u8; 3],
    /// Whether sRGB can show the colour.
    pub in_gamut: bool,
    /// L*, a*, b* of the skin without any work.
    pub bare_skin_lab: [f64; 3],
    /// Red, green, blue of that skin.
    pub bare_skin_srgb: [u8; 3],
    /// The colour in words, relative to that skin.
    pub reading: Reading,
    /// ΔE00 between work and skin: how much the work stands out here.
    pub delta_e_2000_to_skin: f64,
    /// How far work and skin part here beyond what they do under the task's light: the special metamerism index of the two, in ΔE00. 0
    /// under the task's light.
    pub metamerism_to_skin: f64,
    /// How much the work itself changes its look from the task's light to this one, in ΔE00, to an eye that gets used to each. 0 under
    /// the task's light.
    pub inconstancy: f64,
}

impl UnderLight {
    /// The task's work at its time under every light, its own light first.
    pub fn all(shelf: &Shelf, task: &Task) -> Vec<UnderLight> {
        let (bare, seen) = task.at(shelf, task.months);
        let (bare, seen) = (bare.reflectance, seen.reflectance);
        let mut lights = Light::ALL.map(|(light, _)| light);
        lights.sort_by_key(|light| *light != task.light);
        let triple = |lab: Lab| [lab.l, lab.a, lab.b];
        lights
            .into_iter()
            .map(|light| {
                let (skin, work) = (Appearance::of(bare, light), Appearance::of(seen, light));
                let moved = light != task.light;
                UnderLight {
                    light,
                    lab: triple(work.lab),
                    srgb: [work.srgb.r, work.srgb.g, work.srgb.b],
                    in_gamut: work.srgb.in_gamut,
                    bare_skin_lab: triple(skin.lab),
                    bare_skin_srgb: [skin.srgb.r, skin.srgb.g, skin.srgb.b],
                    reading: Reading::of(work.lab, skin.lab, task.site),
                    delta_e_2000_to_skin: difference(work.lab, skin.lab),
                    metamerism_to_skin: if moved { metamerism(&bare, &seen, task.light, light) } else { 0.0 },
                    inconstancy: if moved { inconstancy(&seen, task.light, light) } else { 0.0 },
                }
            })
            .collect()
    }
}
