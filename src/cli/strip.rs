//! Strips: one work at many times or under many lights, as swatches on the client's skin with words and numbers. Work fills a place that has an edge, as on
//! the pages: what lies beside a lip is the face.
//!
//! Entry points: [`timeline`] and [`lights`]. From 72 columns on each moment is a line of a table; a narrower terminal gets a short
//! paragraph each.

use super::terminal::{Painter, axes, bytes, width, wrapped};
use crate::colour::{Lab, Light, Srgb};
use crate::figure::fixed;
use crate::foresee::{Moment, Task, UnderLight};
use crate::healing::{Appearance, Reading};
use crate::skin::Site;

/// Least columns of a table.
const TABLE: usize = 72;

/// One line of a strip.
struct Row<'r> {
    label: &'r str,
    /// What lies beside the work.
    beside: [u8; 3],
    work: [u8; 3],
    lab: [f64; 3],
    in_gamut: bool,
    reading: &'r Reading,
    /// What more there is to say.
    remark: String,
}

/// The skin around a task's site under a light, where the site has an edge.
pub(super) fn around(task: &Task, light: Light) -> Option<Srgb> {
    task.around().map(|around| Appearance::of(around, light).srgb)
}

/// The course of a placement over time.
pub(super) fn timeline(heading: &str, task: &Task, moments: &[Moment], painter: Painter) -> String {
    let around = around(task, task.light).map(bytes);
    let rows: Vec<Row> = moments
        .iter()
        .map(|moment| Row {
            label: &moment.when,
            beside: around.unwrap_or(moment.bare_skin_srgb),
            work: moment.srgb,
            lab: moment.lab,
            in_gamut: moment.in_gamut,
            reading: &moment.reading,
            remark: String::new(),
        })
        .collect();
    heading.to_owned() + &overview(&rows, painter) + &list("time", &rows, painter)
}

/// The same work under every light.
pub(super) fn lights(heading: &str, task: &Task, lights: &[UnderLight], painter: Painter) -> String {
    let bare = match task.site {
        Site::Brow | Site::Eyelid | Site::Scalp => "skin",
        Site::Lip => "bare lip",
        Site::Areola => "bare skin there",
    };
    let names: Vec<String> = lights.iter().map(|light| light_in_words(light.light)).collect();
    let rows: Vec<Row> = lights
        .iter()
        .zip(&names)
        .enumerate()
        .map(|(i, (light, name))| Row {
            label: name,
            beside: around(task, light.light).map_or(light.bare_skin_srgb, bytes),
            work: light.srgb,
            lab: light.lab,
            in_gamut: light.in_gamut,
            reading: &light.reading,
            remark: if i == 0 {
                format!("stands out from the {bare} by ΔE00 {:.1}", light.delta_e_2000_to_skin)
            } else {
                format!(
                    "stands out by {:.1}; metamerism to {bare} {:.1}, own shift {:.1}",
                    light.delta_e_2000_to_skin, light.metamerism_to_skin, light.inconstancy
                )
            },
        })
        .collect();
    let about = format!(
        "Metamerism: how far work and {bare} part under a light beyond what they do under the first. Own shift: how much the work changes \
         to an eye used to each light. Both in ΔE00; about 1 is just visible."
    );
    heading.to_owned() + &list("light", &rows, painter) + &wrapped(&about, 2) + "\n"
}

fn light_in_words(light: Light) -> String {
    let kind = match light {
        Light::D65 => "daylight",
        Light::A => "tungsten",
        Light::LedB3 => "white LED",
        Light::Fl2 => "cool fluorescent",
    };
    format!("{kind}, {}", light.name())
}

/// All moments side by side between two rows of what lies beside them; empty where there is no colour.
fn overview(rows: &[Row], painter: Painter) -> String {
    if !painter.has_colour() {
        return String::new();
    }
    let each = ((width().saturating_sub(8)) / rows.len().max(1)).clamp(1, 4);
    let margin = |row: Option<&Row>| row.map_or(([0; 3], 0), |row| (row.beside, 2));
    let band = |colour: fn(&Row) -> [u8; 3]| {
        let mut cells = vec![margin(rows.first())];
        cells.extend(rows.iter().map(|row| (colour(row), each)));
        cells.push(margin(rows.last()));
        format!("  {}\n", painter.band(&cells))
    };
    let beside = band(|row| row.beside);
    beside.clone() + &band(|row| row.work) + &band(|row| row.work) + &beside
}

/// Every row in words and numbers.
fn list(what: &str, rows: &[Row], painter: Painter) -> String {
    let table = table(what, rows, painter);
    let heading = table.lines().next().map_or(0, |heading| heading.trim_end().chars().count());
    if width() >= TABLE.max(heading) { table } else { paragraphs(rows, painter) }
}

fn table(what: &str, rows: &[Row], painter: Painter) -> String {
    // The next row says what it is before.
    let label = |row: &Row<'_>| row.label.replace("before touch-up", "before");
    let longest = rows.iter().map(|row| label(row).chars().count()).max().unwrap_or(0);
    let swatch = if painter.has_colour() { 8 } else { 0 };
    let indent = 2 + longest + swatch + 20;
    let against = rows.first().map_or("", |row| parted(row.reading.depth).1);
    let mut text =
        format!("  {what:longest$}{:swatch$} {:>5} {:>5} {:>5}  against {against}\n", "", "L*", "a*", "b*");
    for row in rows {
        let [l, a, b] = row.lab.map(|value| fixed(value, 1));
        let swatch = painter.band(&[(row.beside, 1), (row.work, 5), (row.beside, 1)]);
        let swatch = if swatch.is_empty() { swatch } else { format!(" {swatch}") };
        let words = wrapped(&short(row), indent);
        let numbers = format!("{:longest$}{swatch} {l:>5} {a:>5} {b:>5}", label(row));
        text += &format!("  {numbers}  {}\n", words.trim_start());
        if !row.remark.is_empty() {
            text += &wrapped(&row.remark, 4);
            text += "\n";
        }
    }
    text
}

fn paragraphs(rows: &[Row], painter: Painter) -> String {
    let mut text = String::new();
    for row in rows {
        let [l, a, b] = row.lab;
        let numbers = axes(Lab::new(l, a, b)).join("  ");
        let swatch = painter.band(&[(row.beside, 2), (row.work, 6), (row.beside, 2)]);
        let swatch = if swatch.is_empty() { swatch } else { format!("{swatch}  ") };
        text += &format!("{}\n  {swatch}{numbers}\n", painter.strong(&wrapped(row.label, 0)));
        text += &wrapped(&format!("{}{}", row.reading.words, beyond(row)), 2);
        text += "\n";
        if !row.remark.is_empty() {
            text += &wrapped(&row.remark, 2);
            text += "\n";
        }
    }
    text
}

/// A depth and what it is compared with: "deeper" and "the skin".
fn parted(depth: &'static str) -> (&'static str, &'static str) {
    depth.split_once(" than ").or(depth.rsplit_once(" as ")).unwrap_or((depth, ""))
}

/// The reading without "than the skin", which the head of the table says.
fn short(row: &Row) -> String {
    let (depth, _) = parted(row.reading.depth);
    format!("{depth}, {}{}", row.reading.tone.word(), beyond(row))
}

fn beyond(row: &Row) -> &'static str {
    if row.in_gamut { "" } else { " (beyond sRGB)" }
}
