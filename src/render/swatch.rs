//! Swatches: a colour where it is seen, on a person's own skin with a neutral grey around it, always with words and numbers.
//!
//! Entry points: [`Swatch::skin`], [`Swatch::work`] and [`Swatch::bottle`]; the macro in `swatch.html` sets one on a page.

use super::figures::fixed;
use super::templates::write_escaped;
use crate::colour::{Lab, Light, Srgb};
use crate::exercise::Foreseen;
use crate::healing::{Appearance, Reading};
use crate::skin::Site;
use serde::Serialize;

/// The grey around every swatch, the same by day and by night: neutral, of L* 58.
const SURROUND: &str = "#8b8b8b";

/// Lips, slightly parted by a line of skin.
const UPPER_LIP: &str = "M48 72 C74 60 92 44 106 44 C113 44 117 48 120 50 C123 48 127 44 134 44 C148 44 166 60 192 72 C164 68 142 70 120 71 \
                         C98 70 76 68 48 72Z";
const LOWER_LIP: &str =
    "M50 75 C78 73 98 75 120 76 C142 75 162 73 190 75 C170 96 146 106 120 106 C94 106 70 96 50 75Z";

/// A disc.
const DISC: &str = "M120 30 A42 42 0 1 1 119.9 30Z";

/// A shaded field with a soft hairline.
const SHADE: &str = "M14 96 C50 70 86 60 120 60 C154 60 190 70 226 96 L226 14 L14 14Z";

/// A brow of our own, drawn flat so that its colour can be judged.
const BROW: &str = "M30 81C31 75 43 72 50 67C58 63 66 59 75 55C83 52 93 48 102 46C111 44 121 43 131 43\
                    C141 43 151 44 161 47C170 50 180 55 188 62C197 69 213 86 212 88C211 89 192 74 183 70\
                    C174 66 166 64 157 63C149 63 141 63 133 65C125 66 117 68 109 71C102 74 94 78 86 81\
                    C79 85 71 89 64 93C57 96 48 105 42 103C37 101 28 87 30 81Z";
/// Hairs that leave its upper edge.
const HAIRS: &str = "M36 88Q35 78 35 69Q32 78 31 88ZM44 84Q43 73 44 64Q40 73 39 83ZM52 79Q52 68 54 59\
                     Q49 68 47 79ZM60 74Q61 63 64 54Q58 62 55 74ZM69 70Q71 58 75 49Q68 57 64 69ZM78 66\
                     Q82 54 86 44Q79 53 73 64ZM88 62Q93 50 98 41Q90 49 83 60ZM97 59Q104 47 111 38\
                     Q101 45 93 56ZM107 56Q116 45 124 36Q113 43 103 52ZM117 54Q127 44 136 36Q125 41 114 50Z\
                     M127 52Q139 44 149 38Q137 41 124 48ZM137 52Q150 45 161 41Q149 43 135 47ZM147 53\
                     Q161 48 172 46Q160 45 146 48ZM157 55Q172 53 183 53Q171 50 157 49Z";
/// A line along the lashes, thickest before its outer end.
const LINER: &str = "M34 92C66 60 150 50 208 76C211 78 208 82 204 80C150 66 84 76 42 98C36 101 31 96 34 92Z";
/// Lashes.
const LASHES: &str = "M66 80L52 56L72 76ZM94 70L86 42L101 68ZM124 65L123 36L131 65ZM152 65L160 36L159 66Z\
                      M176 69L194 42L183 71Z";

/// Every shape that a swatch may hold, with a name: a page with many swatches holds each shape once.
pub(super) const SHAPES: [(&str, &str); 8] = [
    ("brow", BROW),
    ("hairs", HAIRS),
    ("liner", LINER),
    ("lashes", LASHES),
    ("upper_lip", UPPER_LIP),
    ("lower_lip", LOWER_LIP),
    ("disc", DISC),
    ("shade", SHADE),
];

/// A swatch as a template shows it.
#[derive(Debug, Clone, Serialize)]
pub(super) struct Swatch {
    /// What it is.
    pub label: String,
    /// The colour in words.
    pub words: Option<String>,
    /// L*, with one decimal.
    pub l: String,
    /// a*.
    pub a: String,
    /// b*.
    pub b: String,
    /// The light, unless it is daylight.
    pub light: Option<&'static str>,
    /// Whether a screen can show the colour.
    pub in_gamut: bool,
    /// A remark, such as the distance from a goal.
    pub note: Option<String>,
    /// The drawing: SVG whose only variable parts are colours and an escaped label.
    pub svg: String,
}

impl Swatch {
    /// Skin without work.
    pub fn skin(label: &str, bare: &Appearance, light: Light) -> Self {
        let svg = drawing(&format!("{label}: bare skin"), Some(bare.srgb), None);
        Swatch::new(label, None, bare.lab, bare.srgb, light, svg)
    }

    /// Work on skin, both under the same light.
    pub fn work(
        label: &str,
        bare: &Appearance,
        seen: (Lab, Srgb),
        words: &str,
        site: Site,
        light: Light,
    ) -> Self {
        let svg = drawing(&format!("{label}: {words}"), Some(bare.srgb), Some((site, seen.1)));
        Swatch::new(label, Some(words.to_owned()), seen.0, seen.1, light, svg)
    }

    /// What the engine foresees: work on skin, or skin alone where there is none.
    pub fn foreseen(label: &str, foreseen: &Foreseen, site: Site, light: Light) -> Self {
        let (bare, seen) = (&foreseen.bare, &foreseen.seen);
        if seen.reflectance == bare.reflectance {
            return Swatch::skin(label, bare, light);
        }
        Swatch::work(label, bare, (seen.lab, seen.srgb), &foreseen.reading.words, site, light)
    }

    /// A wished colour on a person's skin.
    pub fn goal(label: &str, bare: &Appearance, goal: Lab, site: Site, light: Light) -> Self {
        let words = Reading::of(goal, bare.lab).words;
        Swatch::work(label, bare, (goal, Srgb::from_lab(goal)), &words, site, light)
    }

    /// The colour of a bottle's content, without skin, under daylight.
    pub fn bottle(name: &str, lab: Lab) -> Self {
        let srgb = Srgb::from_lab(lab);
        let svg = drawing(&format!("{name}: the colour in the bottle"), None, Some((Site::Brow, srgb)));
        Swatch::new("In the bottle", None, lab, srgb, Light::D65, svg)
    }

    /// The same with a remark.
    pub fn noted(mut self, note: impl Into<String>) -> Self {
        self.note = Some(note.into());
        self
    }

    fn new(label: &str, words: Option<String>, lab: Lab, srgb: Srgb, light: Light, svg: String) -> Self {
        Swatch {
            label: label.to_owned(),
            words,
            l: fixed(lab.l, 1),
            a: fixed(lab.a, 1),
            b: fixed(lab.b, 1),
            light: (light != Light::D65).then(|| super::figures::light(light)),
            in_gamut: srgb.in_gamut,
            note: None,
            svg,
        }
    }
}

/// The drawing: grey, skin on it, work on that; without skin, a plain patch of the colour.
fn drawing(label: &str, skin: Option<Srgb>, work: Option<(Site, Srgb)>) -> String {
    let mut svg = String::from(r#"<svg viewBox="0 0 240 144" role="img" focusable="false" aria-label=""#);
    // Writing into a string cannot fail.
    let _ = write_escaped(&mut svg, label);
    svg += &format!(r#""><rect width="240" height="144" fill="{SURROUND}"/>"#);
    let ground = skin.or(work.map(|(_, colour)| colour));
    if let Some(ground) = ground {
        svg += &format!(r#"<rect x="14" y="14" width="212" height="116" fill="{}"/>"#, ground.hex());
    }
    if let (Some(_), Some((site, colour))) = (skin, work) {
        let shapes = match site {
            Site::Brow => [BROW, HAIRS],
            Site::Eyelid => [LINER, LASHES],
            Site::Lip => [UPPER_LIP, LOWER_LIP],
            Site::Areola => [DISC, ""],
            Site::Scalp => [SHADE, ""],
        };
        for shape in shapes.iter().filter(|shape| !shape.is_empty()) {
            svg += &format!(r#"<path d="{shape}" fill="{}"/>"#, colour.hex());
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
