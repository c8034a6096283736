//! The course of a placement over time as a picture: patches of skin with the work on them in a row, words and numbers below each, and
//! L*, a* and b* as curves beneath the same columns. A lip or an areola lies in the skin around it, as on the pages.
//!
//! Entry point: [`timeline_svg`]. The picture stands alone: no script, no style sheet, black on white so that it prints; shapes and
//! dashes tell the curves apart, never colour alone.

use super::drawing::{Manner, SURROUND, shapes};
use super::figures::fixed;
use super::templates::write_escaped;
use crate::colour::Srgb;
use crate::foresee::{Event, Moment, Task};
use crate::healing::Appearance;
use crate::pigment::Shelf;
use crate::skin::Site;

/// Width of a moment's column.
const COLUMN: f64 = 98.0;
/// Left and right of the columns; the left holds the names of the curves.
const MARGIN: f64 = 84.0;
/// Where the patches begin.
const PATCHES: f64 = 84.0;
/// Side of a patch.
const PATCH: f64 = 82.0;
/// Distance between lines of text.
const LINE: f64 = 16.0;
/// Characters of a line below a patch, and of a bold one.
const LETTERS: usize = 14;
const BOLD_LETTERS: usize = 11;
/// Height of one panel of curves.
const PANEL: f64 = 116.0;
/// Scale of the pages' shapes in a patch.
const SHAPE: f64 = 0.46;

/// The picture of a course over time as an SVG document.
pub fn timeline_svg(shelf: &Shelf, task: &Task, moments: &[Moment]) -> String {
    let title = format!("{} on the {} over time", mix_in_words(shelf, task), task.site.word());
    let whens: Vec<Vec<String>> = moments.iter().map(|moment| broken(&moment.when, BOLD_LETTERS)).collect();
    let words: Vec<Vec<String>> = moments.iter().map(words_below).collect();
    let most = |lines: &[Vec<String>]| lines.iter().map(Vec::len).max().unwrap_or(0);
    let (when_lines, lines) = (most(&whens), (most(&whens) + most(&words)) as f64);
    let panels = PATCHES + PATCH + 14.0 + LINE * lines + 20.0;
    let width = (2.0 * MARGIN + COLUMN * moments.len() as f64).max(640.0);
    let height = panels + 3.0 * (PANEL + 14.0) + 44.0;
    let mut svg = format!(
        r##"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" width="{width}" height="{height}" role="img" aria-labelledby="title desc" font-family="system-ui, 'Segoe UI', 'DejaVu Sans', sans-serif" font-size="13" fill="#1d1d1d">"##
    );
    element(&mut svg, r#"title id="title""#, "title", &title);
    element(&mut svg, r#"desc id="desc""#, "desc", &in_words(moments));
    svg += &format!("<rect width=\"{width}\" height=\"{height}\" fill=\"#ffffff\"/>\n");
    text(&mut svg, (MARGIN, 34.0), r#"font-size="20" font-weight="600""#, &title);
    text(&mut svg, (MARGIN, 58.0), r##"fill="#444444""##, &subtitle(task));
    let around = task.around().map(|around| Appearance::of(around, task.light).srgb);
    for (i, moment) in moments.iter().enumerate() {
        patch(&mut svg, centre(i), moment, (task.site, around));
        let top = PATCHES + PATCH + 18.0;
        lines_below(&mut svg, (centre(i), top), r#"font-weight="600""#, &whens[i]);
        lines_below(&mut svg, (centre(i), top + LINE * when_lines as f64 + 4.0), "", &words[i]);
    }
    for (axis, name) in ["L*", "a*", "b*"].into_iter().enumerate() {
        panel(&mut svg, (panels + axis as f64 * (PANEL + 14.0), width), (axis, name), moments);
    }
    let foot = "Steps of time are not to scale. For teaching, never a promise of a result on a person; screens and printers shift \
                colours.";
    text(&mut svg, (MARGIN, height - 18.0), r##"font-size="12" fill="#444444""##, foot);
    svg + "</svg>\n"
}

fn mix_in_words(shelf: &Shelf, task: &Task) -> String {
    if task.paint.is_empty() { "No new work".to_owned() } else { shelf.mix_in_words(&task.mix) }
}

fn subtitle(task: &Task) -> String {
    let mut words = vec![format!("seen under {}", task.light.name())];
    let wear = task.upkeep.wear.words();
    if !wear.is_empty() {
        words.push(wear);
    }
    match task.existing.len() {
        0 => {}
        1 => words.push("over one older work".to_owned()),
        n => words.push(format!("over {n} older works")),
    }
    words.join("; ")
}

/// Everything for whoever cannot see it.
fn in_words(moments: &[Moment]) -> String {
    let one = |moment: &Moment| {
        let [l, a, b] = moment.lab.map(|number| fixed(number, 1));
        format!("{}: {}, L* {l}, a* {a}, b* {b}.", moment.when, moment.reading.words)
    };
    moments.iter().map(one).collect::<Vec<_>>().join(" ")
}

/// Middle of a column.
fn centre(column: usize) -> f64 {
    MARGIN + COLUMN * (column as f64 + 0.5)
}

/// The reading, in lines.
fn words_below(moment: &Moment) -> Vec<String> {
    let mut lines = broken(&moment.reading.words, LETTERS);
    if !moment.in_gamut {
        lines.extend(broken("(beyond sRGB)", LETTERS));
    }
    lines
}

/// Lines of text in a column.
fn lines_below(svg: &mut String, (middle, top): (f64, f64), attributes: &str, lines: &[String]) {
    for (i, line) in lines.iter().enumerate() {
        let attributes = format!(r#"text-anchor="middle" font-size="12" {attributes}"#);
        text(svg, (middle, top + LINE * i as f64), attributes.trim_end(), line);
    }
}

/// Text in lines of so many letters.
fn broken(words: &str, letters: usize) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in words.split(' ') {
        match lines.last_mut() {
            Some(line) if line.chars().count() + 1 + word.chars().count() <= letters => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

/// One moment: grey, skin on it, work on that; work fills a place that has an edge, which has its own shape in the skin around it.
fn patch(svg: &mut String, middle: f64, moment: &Moment, (site, around): (Site, Option<Srgb>)) {
    let hex = |[r, g, b]: [u8; 3]| format!("#{r:02x}{g:02x}{b:02x}");
    let rect = |inset: (f64, f64), fill: &str, round: f64| {
        format!(
            r#"<rect x="{:.1}" y="{:.1}" width="{:.1}" height="{:.1}" rx="{round}" fill="{fill}"/>"#,
            middle - PATCH / 2.0 + inset.0,
            PATCHES + inset.1,
            PATCH - 2.0 * inset.0,
            PATCH - 2.0 * inset.1
        )
    };
    *svg += &rect((0.0, 0.0), SURROUND, 0.0);
    let (work, skin) = (hex(moment.srgb), around.map_or_else(|| hex(moment.bare_skin_srgb), Srgb::hex));
    *svg += &rect((6.0, 6.0), &skin, 0.0);
    if around.is_none() {
        *svg += &rect((13.0, 24.0), &work, 14.0);
    } else {
        // The middle of both shapes comes to the middle of the patch.
        let (x, y) = (middle - SHAPE * 120.0, PATCHES + PATCH / 2.0 - SHAPE * 74.0);
        for shape in shapes(site, Manner::Powder) {
            *svg += &format!(
                r#"<path transform="translate({x:.2} {y:.2}) scale({SHAPE})" d="{shape}" fill="{work}"/>"#
            );
        }
    }
    svg.push('\n');
}

/// One curve over the columns, with that of the place without work, and its value at every moment.
fn panel(svg: &mut String, (top, width): (f64, f64), (axis, name): (usize, &str), moments: &[Moment]) {
    let values: Vec<f64> = moments.iter().map(|moment| moment.lab[axis]).collect();
    let skins: Vec<f64> = moments.iter().map(|moment| moment.bare_skin_lab[axis]).collect();
    let all = || values.iter().chain(&skins).copied();
    let (low, high) = (all().fold(f64::INFINITY, f64::min), all().fold(f64::NEG_INFINITY, f64::max));
    // At least ten units, so that what hardly moves does not look like a leap.
    let room = (10.0 - (high - low)).max(0.0) / 2.0;
    let (low, high) = (low - room, high + room);
    let y = |value: f64| top + 24.0 + (PANEL - 52.0) * (high - value) / (high - low);
    let right = width - MARGIN;
    *svg += &format!(
        r##"<path d="M{MARGIN} {top:.1}H{right}" stroke="#bbbbbb"/><path d="M{MARGIN} {:.1}H{right}" stroke="#bbbbbb"/>"##,
        top + PANEL
    );
    if low < 0.0 && high > 0.0 {
        *svg += &format!(r##"<path d="M{MARGIN} {0:.1}H{right}" stroke="#dddddd"/>"##, y(0.0));
    }
    let touch_ups = moments.iter().enumerate().filter(|(_, moment)| moment.event == Some(Event::TouchUp));
    for (i, _) in touch_ups {
        let x = centre(i) - COLUMN / 2.0;
        *svg += &format!(r##"<path d="M{x:.1} {top:.1}V{:.1}" stroke="#777777"/>"##, top + PANEL);
        text(svg, (x + 4.0, top + 13.0), r##"font-size="10.5" fill="#444444""##, "touch-up");
    }
    let path = |values: &[f64]| {
        let point = |(i, value): (usize, &f64)| {
            format!("{}{:.1} {:.1}", if i == 0 { 'M' } else { 'L' }, centre(i), y(*value))
        };
        values.iter().enumerate().map(point).collect::<String>()
    };
    *svg += &format!(
        r##"<path d="{}" fill="none" stroke="#777777" stroke-width="1.5" stroke-dasharray="5 4"/>"##,
        path(&skins)
    );
    *svg += &format!(r##"<path d="{}" fill="none" stroke="#1d1d1d" stroke-width="2"/>"##, path(&values));
    svg.push('\n');
    text(svg, (10.0, top + 22.0), r#"font-size="16" font-weight="600""#, name);
    let meaning = ["lightness", "redness", "yellowness"][axis];
    text(svg, (10.0, top + 40.0), r##"font-size="10.5" fill="#444444""##, meaning);
    if let Some(skin) = skins.first() {
        let beside = (y(*skin) + 4.0).max(top + 54.0);
        text(svg, (10.0, beside), r##"font-size="10.5" fill="#444444""##, "dashed: bare");
    }
    for (i, (value, skin)) in values.iter().zip(&skins).enumerate() {
        let at = y(*value);
        *svg += &format!(r#"<circle cx="{:.1}" cy="{at:.1}" r="3.5"/>"#, centre(i));
        // Away from the skin's curve, so that no number stands on a line.
        let label = if value < skin { at + 17.0 } else { at - 8.0 };
        text(svg, (centre(i), label), r#"text-anchor="middle" font-size="12""#, &fixed(*value, 1));
    }
    svg.push('\n');
}

fn text(svg: &mut String, (x, y): (f64, f64), attributes: &str, words: &str) {
    element(svg, &format!(r#"text x="{x:.1}" y="{y:.1}" {attributes}"#), "text", words);
}

fn element(svg: &mut String, start: &str, end: &str, words: &str) {
    svg.push_str(&format!("<{start}>"));
    // Writing into a string cannot fail.
    let _ = write_escaped(svg, words);
    svg.push_str(&format!("</{end}>\n"));
}
