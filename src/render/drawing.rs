//! The shapes that swatches are drawn with: what a site and a technique look like on a field of skin.
//!
//! Entry points: [`shapes`], and [`with_shapes`] for a page that uses some. Pages get them as drawings ([`super::swatch`]) that refer to
//! each shape by its name, and hold it once; the bench takes the same paths along and draws with them itself.

use crate::colour::{Light, Srgb};
use crate::course::{Client, Technique};
use crate::skin::Site;
use serde::Serialize;

/// The grey around every swatch, the same by day and by night: neutral, of L* 58.
pub(super) const SURROUND: &str = "#8b8b8b";

/// How work on a brow is made, as far as it is drawn. Other sites look the same in any manner.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub(super) enum Manner {
    /// Single strokes like hairs.
    Strokes,
    /// An even veil.
    Powder,
    /// A veil with strokes at its upper edge.
    Both,
}

impl From<Technique> for Manner {
    fn from(technique: Technique) -> Self {
        match technique {
            Technique::Strokes => Manner::Strokes,
            Technique::Powder => Manner::Powder,
            Technique::PowderWithStrokes => Manner::Both,
        }
    }
}

/// Where work is drawn, and in which manner.
#[derive(Debug, Clone, Copy)]
pub(super) struct Drawn {
    pub site: Site,
    pub manner: Manner,
    /// The skin around a place that has an edge; elsewhere the place's own skin goes on.
    pub around: Option<Srgb>,
}

impl Drawn {
    /// Work on a client, made like this and seen under this light.
    pub fn on(client: &Client, technique: Technique, light: Light) -> Self {
        Drawn {
            site: client.site,
            manner: technique.into(),
            around: client.around(light).map(|around| around.srgb),
        }
    }

    /// Work on a client of which only the site is known.
    pub fn at(client: &Client, light: Light) -> Self {
        Drawn::on(client, Technique::default(), light)
    }
}

/// Paths of the work in a field of 240 by 144.
pub(super) fn shapes(site: Site, manner: Manner) -> &'static [&'static str] {
    match (site, manner) {
        (Site::Brow, Manner::Both) => &[BROW, HAIRS],
        (Site::Brow, Manner::Powder) => &[BROW],
        (Site::Brow, Manner::Strokes) => &[STROKES],
        (Site::Eyelid, _) => &[LINER, LASHES],
        (Site::Lip, _) => &[UPPER_LIP, LOWER_LIP],
        (Site::Areola, _) => &[DISC],
        (Site::Scalp, _) => &[SHADE],
    }
}

/// A shape filled with a colour, by its name: the page holds the shape itself.
pub(super) fn used(shape: &str, fill: &str) -> String {
    let name = SHAPES.iter().find(|(_, path)| *path == shape).map_or("", |(name, _)| name);
    format!(r##"<use href="#shape_{name}" fill="{fill}"/>"##)
}

/// A page with each shape that its drawings use.
pub(super) fn with_shapes(html: String) -> String {
    let mut shapes = String::new();
    for (name, path) in SHAPES {
        if html.contains(&format!("\"#shape_{name}\"")) {
            shapes += &format!(r#"<path id="shape_{name}" d="{path}"/>"#);
        }
    }
    let after = html.find("<body").and_then(|body| html[body..].find('>').map(|end| body + end + 1));
    match after {
        Some(at) if !shapes.is_empty() => {
            format!(
                "{}\n<svg class=\"shapes\" aria-hidden=\"true\"><defs>{shapes}</defs></svg>{}",
                &html[..at],
                &html[at..]
            )
        }
        _ => html,
    }
}

/// Every shape that a swatch may hold, with its name.
const SHAPES: [(&str, &str); 9] = [
    ("brow", BROW),
    ("hairs", HAIRS),
    ("strokes", STROKES),
    ("liner", LINER),
    ("lashes", LASHES),
    ("upper_lip", UPPER_LIP),
    ("lower_lip", LOWER_LIP),
    ("disc", DISC),
    ("shade", SHADE),
];

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
/// Strokes that fill the brow's shape, each drawn from its root to its tip. They lie close, since their colour is that of strokes and
/// gaps together as an eye sees them from a distance.
const STROKES: &str = "M36.6 101.2Q35.3 90.6 36.3 79.8Q40.5 90 40 100.8Z\
                       M36 93.3Q35.5 81.8 37.4 70.4Q40.8 81.8 39.5 93.2Z\
                       M42.7 99.8Q41 88 41.5 75.7Q46.3 87.3 46.2 99.4ZM41.6 91Q41 79 42.7 67Q46.2 79 45 91Z\
                       M49 98.4Q47 85.8 47.4 73Q52.3 85.2 52.4 98ZM47.5 88.7Q46.7 76.5 48 64.2Q52 76.2 51 88.5Z\
                       M56 96Q53.8 83.2 53.3 70Q59 82.3 59.5 95.4ZM54 86.2Q53.3 73.4 54.8 60.5Q58.6 73.2 57.5 86Z\
                       M63 93.5Q60.7 80.2 60 66.6Q66 79.2 66.6 92.8ZM60 83.4Q60 70 61.7 56.8Q65.2 70 63.6 83.4Z\
                       M68.7 90.7Q66.8 77 66.6 63.2Q72 76.3 72 90.2ZM65.8 80.4Q66.6 67 69.2 53.8Q72 67.4 69.3 80.6Z\
                       M74.2 87.8Q73.2 74 73.6 60.2Q78.4 73.6 77.7 87.5Z\
                       M71.6 77.4Q73.3 64 76.7 50.8Q78.5 64.6 75 77.8Z\
                       M79.6 84.7Q79.5 71 80.6 57.3Q84.8 70.8 83.2 84.6ZM77.4 74.3Q80 61 84.2 48Q85.2 62 81 75Z\
                       M85 81.6Q85.8 68 87.7 54.5Q91 68.2 88.7 81.7ZM83.3 71.4Q87 58.3 92 45.6Q92 59.7 86.7 72.3Z\
                       M90.6 79Q92.4 65.5 95 52Q97.6 66 94 79.3ZM89.2 68.7Q94 55.8 100 43.4Q99 57.6 92.5 70Z\
                       M96.2 76.3Q99 63 102.7 49.8Q104.2 64 99.7 77ZM95.3 66Q101.2 54 108 42.2Q106 56 98.5 67.6Z\
                       M102.2 73.6Q106 61 110.2 48.5Q111 62.2 105.6 74.5Z\
                       M101.7 63.7Q108.5 52.2 116.2 41.2Q113 54.7 104.8 65.4Z\
                       M108.2 71Q112.8 59 118 47.4Q117.8 60.7 111.6 72Z\
                       M108.2 61.5Q116 51 124.8 41Q120.5 54 111 63.5Z\
                       M114.3 69Q120 57.8 126 46.8Q124.7 60 117.5 70.5Z\
                       M114.6 59.8Q123.8 50 133.5 40.8Q127.8 53.5 117.3 62Z\
                       M120.4 67Q127 56.7 134 46.5Q131.6 59.3 123.4 69Z\
                       M121.2 58.4Q131.5 49.7 142.2 41.4Q135 53.5 123.6 61Z\
                       M126.4 65.7Q134 56.2 142 46.8Q138.5 59.2 129.3 67.7Z\
                       M128 57.2Q139.2 49.8 150.8 42.7Q142.3 54 130 60Z\
                       M132.6 64.3Q141.3 56 150 47.6Q145.2 59.5 135.2 66.7Z\
                       M134.5 56.4Q147 50.4 159.5 44.6Q149.5 55 136.2 59.5Z\
                       M138.7 63.5Q148.4 56.3 158 49Q152 60.3 141 66.2Z\
                       M141.3 56Q154.4 52 167.6 48Q156.3 56.8 142.5 59.3Z\
                       M145 62.7Q155.4 57.2 165.8 51.5Q158.2 61.7 146.7 65.7Z\
                       M148 56Q161.8 53.7 175.6 51.6Q163 59 148.8 59.4Z\
                       M151 62.4Q162.4 58.6 173.5 54.5Q164.5 63.5 152.5 65.6Z\
                       M154.8 56.3Q169 56.5 183 56.6Q169 61.7 155 59.8Z\
                       M157.4 62.2Q169 60.7 180.7 58.7Q170.3 66 158.2 65.7Z\
                       M161.7 57.2Q175.8 59.7 190 62Q175.3 65 161.3 60.7Z\
                       M164.2 63Q176 63.5 187.8 63.2Q176.4 68.8 164.5 66.6Z\
                       M168.7 59Q182.4 63.7 196.2 68.2Q181 68.8 167.7 62.3Z\
                       M171 64.2Q182.4 67 194 68.6Q181.8 72 170.7 67.7Z\
                       M175.5 61.2Q188.5 67.8 201.6 74Q186.5 72.7 174.2 64.5Z\
                       M178 66.4Q188.6 70.7 199.5 74Q187.2 75.8 177 69.8Z\
                       M182.2 64.2Q194 72 206 79.2Q191.5 76.6 180.5 67.3Z\
                       M184.5 69Q194 74.3 204 78.6Q192 79.2 183 72Z\
                       M188.3 67.6Q197.7 74.5 207.5 81Q195 79 186.5 70.7Z\
                       M190 72Q198 77.2 206.4 81.2Q196 82 188.6 75.3Z\
                       M193.8 71.5Q200.4 76.5 207.5 81Q198 81.2 192 74.6Z\
                       M188.4 69Q197.7 73.8 205 81.5Q195.7 76.8 187 71ZM193 72Q200 75.4 205 81.5Q198 78.4 191.7 74Z\
                       M197.3 75Q202 77 205 81.5Q200 80 196 77ZM201 78Q203.8 78.2 205 81.5Q202 81.3 199.7 80Z";
