//! The course of a placement over time.
//!
//! Entry point: [`Moment::all`].

use super::Task;
use crate::colour::{Lab, difference};
use crate::healing::{Appearance, HEALED_MONTHS, Reading};
use crate::pigment::Shelf;
use crate::skin::Site;
use serde::Serialize;

/// What happens at a moment.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Event {
    /// The first placement was just made.
    Placement,
    /// A touch-up is about to be made.
    BeforeTouchUp,
    /// A touch-up was just made.
    TouchUp,
    /// The skin has healed after the first placement.
    Healed,
}

/// What is seen at one moment.
#[derive(Debug, Clone, Serialize)]
pub struct Moment {
    /// Months after the first placement; a week of healing counts as a quarter.
    pub months: f64,
    /// The time in words.
    pub when: String,
    /// What happens then, if anything.
    pub event: Option<Event>,
    /// L*, a*, b*.
    pub lab: [f64; 3],
    /// Red, green, blue, 0 to 255.
    pub srgb: [u8; 3],
    /// Whether sRGB can show the colour.
    pub in_gamut: bool,
    /// L*, a*, b* of the skin without any work at that moment; redder while it heals.
    pub bare_skin_lab: [f64; 3],
    /// Red, green, blue of that skin.
    pub bare_skin_srgb: [u8; 3],
    /// The colour in words, relative to that skin.
    pub reading: Reading,
    /// ΔE00 to that skin.
    pub delta_e_2000_to_skin: f64,
    /// ΔE00 to the colour after six weeks.
    pub delta_e_2000_to_healed: f64,
}

/// Times always shown, in months, with their words.
const TIMES: [(f64, &str); 12] = [
    (0.0, "on the day"),
    (3.0 / 28.0, "3 days"),
    (0.25, "1 week"),
    (0.5, "2 weeks"),
    (1.0, "4 weeks"),
    (HEALED_MONTHS, "6 weeks"),
    (3.0, "3 months"),
    (6.0, "6 months"),
    (12.0, "1 year"),
    (24.0, "2 years"),
    (36.0, "3 years"),
    (60.0, "5 years"),
];

impl Moment {
    /// The course of a task: on the day, through healing, to five years; just before and after every touch-up, three days and six
    /// weeks after it; and at the task's own time. In order of time.
    pub fn all(shelf: &Shelf, task: &Task) -> Vec<Moment> {
        let against = (task.site, task.just_before(shelf, HEALED_MONTHS).1.lab);
        let mut times: Vec<(f64, String)> =
            TIMES.iter().map(|(months, words)| (*months, (*words).to_owned())).collect();
        times.push((task.months, when(task.months)));
        for touch_up in &task.upkeep.touch_ups {
            let time = when(touch_up.months);
            times.push((touch_up.months, time.clone()));
            times.extend([1, 5].map(|i| {
                let (after, words) = TIMES[i];
                (touch_up.months + after, format!("{time} + {words}"))
            }));
        }
        // Stable: where two fall together, the first words stay.
        times.sort_by(|one, other| one.0.total_cmp(&other.0));
        times.dedup_by(|one, other| one.0 == other.0);
        let mut moments = Vec::new();
        for (months, when) in times {
            if task.upkeep.touch_ups.iter().any(|touch_up| touch_up.months == months) {
                let event = Some(if months == 0.0 { Event::Placement } else { Event::BeforeTouchUp });
                moments.push(Moment::of(months, &when, event, task.just_before(shelf, months), against));
                moments.push(Moment::of(
                    months,
                    &when,
                    Some(Event::TouchUp),
                    task.at(shelf, months),
                    against,
                ));
            } else {
                let event = match months {
                    0.0 => Some(Event::Placement),
                    HEALED_MONTHS => Some(Event::Healed),
                    _ => None,
                };
                moments.push(Moment::of(months, &when, event, task.at(shelf, months), against));
            }
        }
        moments
    }

    fn of(
        months: f64,
        time: &str,
        event: Option<Event>,
        (bare, seen): (Appearance, Appearance),
        (site, healed): (Site, Lab),
    ) -> Self {
        let triple = |lab: Lab| [lab.l, lab.a, lab.b];
        let when = match event {
            Some(Event::BeforeTouchUp) => format!("{time}, before touch-up"),
            Some(Event::TouchUp) => format!("{time}, touch-up"),
            _ => time.to_owned(),
        };
        Moment {
            months,
            when,
            event,
            lab: triple(seen.lab),
            srgb: [seen.srgb.r, seen.srgb.g, seen.srgb.b],
            in_gamut: seen.srgb.in_gamut,
            bare_skin_lab: triple(bare.lab),
            bare_skin_srgb: [bare.srgb.r, bare.srgb.g, bare.srgb.b],
            reading: Reading::of(seen.lab, bare.lab, site),
            delta_e_2000_to_skin: difference(seen.lab, bare.lab),
            delta_e_2000_to_healed: difference(seen.lab, healed),
        }
    }
}

/// A time in words: in years where it is whole years, in weeks and days while it heals, else in months.
fn when(months: f64) -> String {
    if let Some((_, words)) = TIMES.iter().find(|(time, _)| *time == months) {
        return (*words).to_owned();
    }
    let years = months / 12.0;
    if months < HEALED_MONTHS {
        let days = libm::round(months * 28.0);
        return format!("{days} {}", if days == 1.0 { "day" } else { "days" });
    }
    if years >= 1.0 && years == libm::floor(years) {
        return format!("{years} years");
    }
    let rounded = libm::round(months * 10.0) / 10.0;
    format!("{rounded} months")
}
