//! Where things lie in the drawings of a report. All are drawn in the page's ink: what differs, differs in shape.
//!
//! Entry points: [`Range`], [`bar`] and [`bar_of_share`] for a row of a table, [`Scatter`] for items by facility and discrimination.

use super::items::is_too_few;
use super::said::{number, percent};
use crate::assess::cohort::Interval;
use crate::assess::items::{DISCRIMINATION_LEAST, FACILITY_LEAST, FACILITY_MOST};
use crate::assess::report::ItemEntry;
use crate::language::Language;
use crate::say;
use serde::Serialize;

/// Left and right end of a row's axis, of 200.
const ROW: (f64, f64) = (6.0, 194.0);

fn in_row(share: f64) -> String {
    let (left, right) = ROW;
    format!("{:.1}", left + share.clamp(0.0, 1.0) * (right - left))
}

/// A share with its likely range, on an axis from 0 to 100%.
#[derive(Debug, Serialize)]
pub(super) struct Range {
    title: String,
    low: String,
    high: String,
    at: String,
    /// Something to compare with: a tick.
    tick: Option<String>,
}

impl Range {
    /// `what` names the share; `tick` is named too.
    pub fn new(
        language: &Language,
        what: &str,
        share: f64,
        interval: Interval,
        tick: Option<(&str, f64)>,
    ) -> Self {
        let [said, low, high] = [share, interval.low, interval.high].map(|each| percent(language, each));
        let title = match tick {
            None => say!(language, "report-share-likely", what = what, share = said, low = low, high = high),
            Some((name, at)) => say!(
                language,
                "report-share-likely-beside",
                what = what,
                share = said,
                low = low,
                high = high,
                beside = name,
                other = percent(language, at)
            ),
        };
        Range {
            title,
            low: in_row(interval.low),
            high: in_row(interval.high),
            at: in_row(share),
            tick: tick.map(|tick| in_row(tick.1)),
        }
    }
}

/// Length of a bar of `count`, where the longest has `most`, of 200.
pub(super) fn bar(count: usize, most: usize) -> String {
    format!("{:.1}", 194.0 * count as f64 / most.max(1) as f64)
}

/// Length of a bar of a share, likewise.
pub(super) fn bar_of_share(share: f64) -> String {
    format!("{:.1}", 194.0 * share.clamp(0.0, 1.0))
}

/// Items by facility (across) and discrimination (up).
#[derive(Debug, Serialize)]
pub(super) struct Scatter {
    title: String,
    /// Across, in the drawing's own units, with what stands there.
    across: Vec<(String, String)>,
    /// Up, likewise.
    up: Vec<(String, String)>,
    /// Where facility is too low and too high, and where discrimination is too low.
    limits: Vec<String>,
    points: Vec<Point>,
    /// Items without one of the figures: left out.
    left_out: usize,
}

#[derive(Debug, Serialize)]
struct Point {
    x: String,
    y: String,
    /// To be looked at again: a square instead of a circle.
    revise: bool,
    /// Answered too seldom to be judged: a small, pale circle.
    too_few: bool,
    /// Its number in the table.
    number: usize,
    /// Whether the number is drawn: for a few only, lest they lie over each other.
    numbered: bool,
}

/// The plot's edges, in a drawing of 370 by 300.
const LEFT: f64 = 44.0;
const RIGHT: f64 = 352.0;
const TOP: f64 = 12.0;
const BOTTOM: f64 = 250.0;
/// Most numbers drawn beside points.
const MOST_NUMBERS: usize = 14;

impl Scatter {
    /// The items in the order of their table; `None` where no item has both figures.
    pub fn new(language: &Language, items: &[ItemEntry]) -> Option<Self> {
        let both = |item: &ItemEntry| Some((item.classical.facility?, item.classical.discrimination?));
        let found: Vec<(usize, &ItemEntry, (f64, f64))> =
            items.iter().enumerate().filter_map(|(at, item)| Some((at + 1, item, both(item)?))).collect();
        let least = found.iter().map(|item| item.2.1).fold(f64::INFINITY, f64::min);
        if found.is_empty() {
            return None;
        }
        // Down to the least, in steps of a fifth.
        let low = libm::floor(least.min(0.0) * 5.0) / 5.0;
        let x = |facility: f64| format!("{:.1}", LEFT + facility * (RIGHT - LEFT));
        let y = |value: f64| format!("{:.1}", BOTTOM - (value - low) / (1.0 - low) * (BOTTOM - TOP));
        let flagged = found.iter().filter(|item| !item.1.revise.is_empty()).count();
        let steps = libm::round((1.0 - low) * 5.0) as u32;
        Some(Scatter {
            title: say!(language, "report-scatter", count = found.len(), flagged = flagged),
            across: (0..=5).map(|at| f64::from(at) / 5.0).map(|at| (x(at), percent(language, at))).collect(),
            up: (0..=steps)
                .map(|at| low + f64::from(at) / 5.0)
                .map(|value| (y(value), number(language, value, 1)))
                .collect(),
            limits: vec![
                format!("M{} {TOP}V{BOTTOM}", x(FACILITY_LEAST)),
                format!("M{} {TOP}V{BOTTOM}", x(FACILITY_MOST)),
                format!("M{LEFT} {}H{RIGHT}", y(DISCRIMINATION_LEAST)),
            ],
            points: found
                .iter()
                .map(|&(number, item, (facility, discrimination))| Point {
                    x: x(facility),
                    y: y(discrimination),
                    revise: !item.revise.is_empty(),
                    too_few: is_too_few(item),
                    number,
                    numbered: !item.revise.is_empty() && flagged <= MOST_NUMBERS,
                })
                .collect(),
            left_out: items.len() - found.len(),
        })
    }
}
