//! The check of a screen: what it can show of darkness, light, near-neutral and skin, what sRGB cannot show, and what eyes see that
//! tell fewer colours apart. All of it stands without scripts, and prints.
//!
//! Entry point: [`Pages::display`].

use super::Pages;
use crate::colour::{Deficiency, DisplayP3, Lab, Light, Srgb, difference};
use crate::course::{Client, Show, Technique};
use crate::exercise::foresee;
use crate::healing::{Appearance, HEALED_MONTHS, Placement};
use crate::language::Language;
use crate::pigment::Mix;
use crate::render::RenderError;
use crate::render::drawing::Drawn;
use crate::render::frame::{Frame, Section};
use crate::render::output::SiteFile;
use crate::render::plan;
use crate::render::swatch::Swatch;
use crate::render::templates::write_escaped;
use crate::say;
use rayon::prelude::*;
use serde::Serialize;

#[derive(Serialize)]
struct DisplayPage {
    frame: Frame,
    dark: Steps,
    light: Steps,
    neutral: Steps,
    skins: Vec<SkinSteps>,
    reach: Reach,
    eyes: Vec<Eyes>,
    model: String,
}

/// Patches on one ground.
#[derive(Serialize)]
struct Steps {
    svg: String,
    /// What each patch is, in order.
    words: String,
}

/// Steps on the skin of a client.
#[derive(Serialize)]
struct SkinSteps {
    name: String,
    steps: Steps,
}

/// How many of the colours of this course a screen can show.
#[derive(Serialize)]
struct Reach {
    healed: usize,
    healed_beyond: usize,
    bottles: usize,
    bottles_beyond: usize,
    /// Bottles whose own colour sRGB cannot show, and Display P3 can.
    bottles_wide: usize,
}

/// The same swatches as some eyes see them.
#[derive(Serialize)]
struct Eyes {
    name: String,
    about: String,
    swatches: Vec<Swatch>,
}

/// Width of a patch and of the gap between two.
const PATCH: usize = 60;
const GAP: usize = 10;
/// Distances from a skin colour, in ΔE00.
const APART: [f64; 4] = [1.0, 2.0, 4.0, 8.0];
/// People whose old work is shown to other eyes.
const SHOWN: usize = 4;

impl Pages<'_> {
    /// The check of a screen.
    pub(super) fn display(&self) -> Result<SiteFile, RenderError> {
        let path = plan::DISPLAY;
        let language = &self.course.language;
        let frame = self
            .frame(path, &say!(language, "display-title"), Section::Model)
            .described(&say!(language, "display-description"));
        let grey = |value: u8| Srgb { r: value, g: value, b: value, in_gamut: true };
        let levels = |values: [u8; 6], ground: u8| {
            let words = values.map(|value| say!(language, "display-level", value = value));
            steps(language, grey(ground), &values.map(grey), "display-greys", &words)
        };
        let skins =
            self.bare_clients().into_iter().map(|(name, lab)| skin_steps(language, name, lab)).collect();
        let context = DisplayPage {
            frame,
            dark: levels([2, 4, 8, 12, 16, 24], 0),
            light: levels([253, 251, 247, 243, 239, 231], 255),
            neutral: neutral(language),
            skins,
            reach: self.reach(),
            eyes: self.eyes(),
            model: plan::href(path, plan::MODEL),
        };
        self.page(path, "display.html", context)
    }

    /// The lightest, the middle and the deepest bare skin of the course, with the names of the clients.
    fn bare_clients(&self) -> Vec<(String, Lab)> {
        let seen =
            |client: &Client| foresee(self.course, &show(client, true, None)).map(|seen| seen.bare.lab);
        let mut all: Vec<(String, Lab)> = self
            .course
            .clients
            .iter()
            .filter_map(|client| Some((client.name.clone(), seen(client)?)))
            .collect();
        all.sort_by(|one, other| other.1.l.total_cmp(&one.1.l));
        match all.len() {
            0..=3 => all,
            many => [0, many / 2, many - 1].into_iter().map(|at| all[at].clone()).collect(),
        }
    }

    /// Every bottle on every client, healed and alone; and every bottle without skin.
    fn reach(&self) -> Reach {
        let shelf = &self.course.shelf;
        let mixes: Vec<Mix> = shelf.bottles.iter().map(|bottle| Mix::new([(bottle.id.clone(), 6)])).collect();
        let healed: Vec<bool> = self
            .course
            .clients
            .par_iter()
            .flat_map_iter(|client| {
                mixes.iter().filter_map(move |mix| {
                    let seen = foresee(self.course, &show(client, true, Some(mix.clone())))?;
                    Some(seen.seen.srgb.in_gamut)
                })
            })
            .collect();
        let bottles: Vec<Lab> = mixes.iter().map(|mix| shelf.label_colour(mix)).collect();
        let beyond: Vec<&Lab> = bottles.iter().filter(|lab| !Srgb::from_lab(**lab).in_gamut).collect();
        Reach {
            healed: healed.len(),
            healed_beyond: healed.iter().filter(|shown| !**shown).count(),
            bottles: bottles.len(),
            bottles_beyond: beyond.len(),
            bottles_wide: beyond.iter().filter(|lab| DisplayP3::from_lab(***lab).in_gamut).count(),
        }
    }

    /// Clients with old work as most people see them, and as others do.
    fn eyes(&self) -> Vec<Eyes> {
        let language = &self.course.language;
        let worked: Vec<&Client> =
            self.course.clients.iter().filter(|client| !client.existing.is_empty()).take(SHOWN).collect();
        let row = |deficiency: Option<Deficiency>| -> Vec<Swatch> {
            worked
                .iter()
                .filter_map(|client| {
                    let seen = foresee(self.course, &show(client, false, None))?;
                    let through = |colour: Srgb| deficiency.map_or(colour, |kind| kind.seen(colour));
                    let mut bare: Appearance = seen.bare;
                    bare.srgb = through(bare.srgb);
                    let work = (seen.seen.lab, through(seen.seen.srgb));
                    let words = &seen.reading.words;
                    let mut on = Drawn::at(client, Light::D65);
                    on.around = on.around.map(through);
                    Some(Swatch::work(language, &client.name, &bare, work, words, on, Light::D65))
                })
                .collect()
        };
        if worked.is_empty() {
            return Vec::new();
        }
        [
            (None, "most"),
            (Some(Deficiency::Deutan), "deutan"),
            (Some(Deficiency::Protan), "protan"),
            (Some(Deficiency::Tritan), "tritan"),
        ]
        .into_iter()
        .map(|(kind, name)| Eyes {
            name: say!(language, &format!("display-eyes-{name}")),
            about: say!(language, &format!("display-eyes-{name}-about")),
            swatches: row(kind),
        })
        .collect()
    }
}

fn show(client: &Client, bare: bool, mix: Option<Mix>) -> Show {
    Show {
        label: client.name.clone(),
        client: client.id.clone(),
        bare,
        mix,
        months: HEALED_MONTHS,
        placement: Placement::default(),
        technique: Technique::default(),
        light: Light::D65,
    }
}

/// Patches in a row on a ground; the message `label` says what they are.
fn steps(language: &Language, ground: Srgb, patches: &[Srgb], label: &str, words: &[String]) -> Steps {
    let words = language.in_order(words);
    let mut said = String::new();
    // Writing into a string cannot fail.
    let _ = write_escaped(&mut said, &say!(language, label, steps = &words));
    let width = GAP + patches.len() * (PATCH + GAP);
    let height = PATCH + 2 * GAP;
    let mut svg = format!(
        r#"<svg class="steps" viewBox="0 0 {width} {height}" role="img" focusable="false" aria-label="{said}"><rect width="{width}" height="{height}" fill="{}"/>"#,
        ground.hex()
    );
    for (place, patch) in patches.iter().enumerate() {
        let x = GAP + place * (PATCH + GAP);
        svg +=
            &format!(r#"<rect x="{x}" y="{GAP}" width="{PATCH}" height="{PATCH}" fill="{}"/>"#, patch.hex());
    }
    svg += "</svg>";
    Steps { svg, words }
}

/// Greys with a little colour on the grey that surrounds swatches.
fn neutral(language: &Language) -> Steps {
    let ground = Srgb { r: 0x8b, g: 0x8b, b: 0x8b, in_gamut: true };
    let lab = ground.to_lab();
    let patches: Vec<(String, Srgb)> =
        [("redder", 1.0, 0.0), ("greener", -1.0, 0.0), ("yellower", 0.0, 1.0), ("bluer", 0.0, -1.0)]
            .into_iter()
            .flat_map(|(word, a, b)| [2.0, 4.0].map(|by| (word, by, a * by, b * by)))
            .map(|(word, by, a, b)| {
                let patch = Srgb::from_lab(Lab { l: lab.l, a: lab.a + a, b: lab.b + b });
                (say!(language, &format!("display-shift-{word}"), by = language.fixed(by, 0)), patch)
            })
            .collect();
    let (words, patches): (Vec<String>, Vec<Srgb>) = patches.into_iter().unzip();
    steps(language, ground, &patches, "display-neutrals", &words)
}

/// Darker skins beside a skin, each so far from it as can be seen less or more easily. What stands below is the distance of the
/// colours that the screen gets, which are rounded to 8 bits.
fn skin_steps(language: &Language, name: String, lab: Lab) -> SkinSteps {
    let ground = Srgb::from_lab(lab);
    let patches: Vec<Srgb> = APART
        .into_iter()
        .map(|apart| {
            let (mut near, mut far) = (0.0, lab.l);
            for _ in 0..40 {
                let middle = 0.5 * (near + far);
                let darker = Lab { l: lab.l - middle, ..lab };
                if difference(lab, darker) < apart { near = middle } else { far = middle }
            }
            Srgb::from_lab(Lab { l: lab.l - far, ..lab })
        })
        .collect();
    let apart = |patch: &Srgb| language.fixed(difference(ground.to_lab(), patch.to_lab()), 1);
    let words: Vec<String> =
        patches.iter().map(|patch| say!(language, "display-apart", distance = apart(patch))).collect();
    SkinSteps { steps: steps(language, ground, &patches, "display-darker", &words), name }
}
