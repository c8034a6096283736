//! Swatches: a colour where it is seen, on a person's own skin with a neutral grey around it, always with words and numbers.
//!
//! Entry points: [`Swatch::skin`], [`Swatch::work`] and [`Swatch::bottle`]; the macro in `swatch.html` sets one on a page.

use super::drawing::{Drawn, SURROUND, shapes, used};
use super::plain::{bare_in_words, colour_in_words};
use super::templates::write_escaped;
use crate::colour::{Lab, Light, Srgb};
use crate::exercise::Foreseen;
use crate::healing::{Appearance, Reading};
use crate::language::Language;
use crate::say;
use serde::Serialize;

/// A swatch as a template shows it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(super) struct Swatch {
    /// What it is.
    pub label: String,
    /// The colour in words.
    pub words: String,
    /// L*, with one decimal.
    pub l: String,
    /// a*.
    pub a: String,
    /// b*.
    pub b: String,
    /// In which light it is seen, unless it is daylight: "in tungsten light (A)".
    pub light: Option<String>,
    /// Whether a screen can show the colour.
    pub in_gamut: bool,
    /// A remark, such as the distance from a goal.
    pub note: Option<String>,
    /// The drawing: SVG whose only variable parts are colours and an escaped label.
    pub svg: String,
}

impl Swatch {
    /// Skin without work: all of the field, or a place with its edge in the skin around it.
    pub fn skin(language: &Language, label: &str, bare: &Appearance, on: Drawn, light: Light) -> Self {
        let words = bare_in_words(language, on.site, bare.lab);
        let said = say!(language, "swatch-bare", label = label, site = on.site.word(), words = &words);
        let svg = match on.around {
            Some(around) => drawing(&said, Some(around), Some((on, bare.srgb))),
            None => drawing(&said, Some(bare.srgb), None),
        };
        Swatch::new(language, label, words, bare.lab, bare.srgb, light, svg)
    }

    /// Work on skin, both under the same light.
    pub fn work(
        language: &Language,
        label: &str,
        bare: &Appearance,
        seen: (Lab, Srgb),
        words: &str,
        on: Drawn,
        light: Light,
    ) -> Self {
        let said = say!(language, "swatch-work", label = label, words = words);
        let svg = drawing(&said, Some(on.around.unwrap_or(bare.srgb)), Some((on, seen.1)));
        Swatch::new(language, label, words.to_owned(), seen.0, seen.1, light, svg)
    }

    /// What the engine foresees: work on skin, or skin alone where there is none.
    pub fn foreseen(language: &Language, label: &str, foreseen: &Foreseen, on: Drawn, light: Light) -> Self {
        let (bare, seen) = (&foreseen.bare, &foreseen.seen);
        if seen.reflectance == bare.reflectance {
            return Swatch::skin(language, label, bare, on, light);
        }
        Swatch::work(language, label, bare, (seen.lab, seen.srgb), &foreseen.reading.words, on, light)
    }

    /// A wished colour on a person's skin: its name, L*a*b* and tolerance. Its name says what it is; the engine's word for its tone beside
    /// this skin stands apart, since a brown that is fair may read as more than brown on skin that is fairer still.
    pub fn goal(
        language: &Language,
        (name, goal, tolerance): (&str, Lab, f64),
        bare: &Appearance,
        on: Drawn,
        light: Light,
    ) -> Self {
        let reading = Reading::of(goal, bare.lab, on.site);
        let label = say!(language, "swatch-goal", name = name);
        let note = say!(
            language,
            "swatch-goal-note",
            distance = language.fixed(tolerance, 1),
            site = on.site.word(),
            tone = reading.tone.said(language)
        );
        let seen = (goal, Srgb::from_lab(goal));
        Swatch::work(language, &label, bare, seen, &reading.depth_said(language), on, light).noted(note)
    }

    /// The colour of a bottle's content, without skin, under daylight.
    pub fn bottle(language: &Language, name: &str, lab: Lab) -> Self {
        Swatch::without_skin(language, ("swatch-in-bottle", "swatch-bottle"), name, lab)
    }

    /// The colour of a colourant by itself, in a layer through which nothing is seen, under daylight.
    pub fn colourant(language: &Language, name: &str, lab: Lab) -> Self {
        Swatch::without_skin(language, ("swatch-alone", "swatch-colourant"), name, lab)
    }

    /// Paint without skin, with the messages that label it and describe its picture.
    fn without_skin(language: &Language, (label, said): (&str, &str), name: &str, lab: Lab) -> Self {
        let srgb = Srgb::from_lab(lab);
        let words = colour_in_words(language, lab);
        let said = say!(language, said, name = name, words = &words);
        let svg = drawing(&said, Some(srgb), None);
        Swatch::new(language, &say!(language, label), words, lab, srgb, Light::D65, svg)
    }

    /// The same with a remark.
    pub fn noted(mut self, note: impl Into<String>) -> Self {
        self.note = Some(note.into());
        self
    }

    fn new(
        language: &Language,
        label: &str,
        words: String,
        lab: Lab,
        srgb: Srgb,
        light: Light,
        svg: String,
    ) -> Self {
        let [l, a, b] = language.lab(lab);
        Swatch {
            label: label.to_owned(),
            words,
            l,
            a,
            b,
            light: (light != Light::D65).then(|| language.in_light(light)),
            in_gamut: srgb.in_gamut,
            note: None,
            svg,
        }
    }
}

/// The drawing: grey, a field of one colour on it, work or a place with its edge on that.
fn drawing(label: &str, field: Option<Srgb>, work: Option<(Drawn, Srgb)>) -> String {
    let mut svg = String::from(r#"<svg viewBox="0 0 240 144" role="img" focusable="false" aria-label=""#);
    // Writing into a string cannot fail.
    let _ = write_escaped(&mut svg, label);
    svg += &format!(r#""><rect width="240" height="144" fill="{SURROUND}"/>"#);
    if let Some(field) = field {
        svg += &format!(r#"<rect x="14" y="14" width="212" height="116" fill="{}"/>"#, field.hex());
    }
    if let Some((on, colour)) = work {
        for shape in shapes(on.site, on.manner) {
            svg += &used(shape, &colour.hex());
        }
    }
    svg += "</svg>";
    svg
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_label_cannot_leave_its_attribute() {
        let svg = drawing("\"><script>", None, None);
        assert!(svg.contains(r#"aria-label="&quot;&gt;&lt;script&gt;""#), "{svg}");
    }
}
