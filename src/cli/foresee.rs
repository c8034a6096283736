//! `healedhue foresee`: the healed colour of one placement, over time and under every light, as swatches and words, JSON or a picture.

use super::CourseFolder;
use super::input::read_text;
use super::problem::{Problem, write_whole};
use super::ranking::ranking;
use super::strip::{self, around};
use super::terminal::{Painter, Row, When, lab_in_pieces, wrapped};
use crate::course::load;
use crate::foresee::{Answer, Moment, Request, Task, UnderLight};
use crate::healing::{Appearance, HEALED_MONTHS, Reading, Spread, Tone};
use crate::pigment::Shelf;
use crate::skin::{ItaClass, Site, ita_degrees};
use std::io::Write;
use std::path::PathBuf;

/// A prediction for teaching, never a promise of a result on a person.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// JSON: {skin: {phototype or ita or melanin, undertone, redness}, site, light, months, mix: {BOTTLE: drops}, placement,
    /// existing, sun, oil, aftercare, touch_ups, worlds, search: {goal: [L*, a*, b*], tolerance, palette, bottles, drops}}; everything
    /// but skin has a default; - reads standard input.
    file: PathBuf,
    /// Print JSON.
    #[arg(long)]
    json: bool,
    /// The course over time: on the day, through healing, to five years, and around every touch-up.
    #[arg(long, conflicts_with = "lights")]
    timeline: bool,
    /// Also draw the course over time into this file; it is written whole or not at all.
    #[arg(long, value_name = "FILE", requires = "timeline")]
    svg: Option<PathBuf>,
    /// The same work under every light, and how well it keeps its match with the skin.
    #[arg(long)]
    lights: bool,
    /// When to use colour.
    #[arg(long, value_name = "WHEN", default_value = "auto")]
    colour: When,
    #[command(flatten)]
    folder: CourseFolder,
}

/// Times shown in the terminal, in months: on the day, healed, one and three years.
const TIMES: [(f64, &str); 4] = [
    (0.0, "on the day"),
    (HEALED_MONTHS, "after six weeks"),
    (12.0, "after a year"),
    (36.0, "after three years"),
];

pub(super) fn run(arguments: &Arguments) -> Result<(), Problem> {
    let text = read_text(&arguments.file)?;
    let wrong = |error| Problem::Input(format!("{}: {error}", arguments.file.display()));
    let request = Request::from_json(&text).map_err(wrong)?;
    let loaded = load(&arguments.folder.course);
    let course = loaded.course.ok_or(Problem::Course(loaded.diagnostics))?;
    let (shelf, painter) = (&course.shelf, Painter::new(arguments.colour));
    let task = request.resolve(shelf).map_err(wrong)?;
    if arguments.timeline {
        let moments = Moment::all(shelf, &task);
        if let Some(path) = &arguments.svg {
            write_whole(path, &crate::render::timeline_svg(shelf, &task, &moments), true)?;
        }
        show(arguments, &moments, || {
            strip::timeline(&heading(shelf, &task, painter), &task, &moments, painter)
                + &closing(shelf, &task)
        })
    } else if arguments.lights {
        let lights = UnderLight::all(shelf, &task);
        show(arguments, &lights, || {
            strip::lights(&heading(shelf, &task, painter), &task, &lights, painter) + &closing(shelf, &task)
        })
    } else {
        show(arguments, &Answer::of(shelf, &task), || {
            let found = task.found(shelf);
            let ranked =
                found.as_ref().map_or_else(String::new, |found| ranking(shelf, &task, found, painter));
            ranked + &picture(shelf, &task.with_best(found.as_ref()), request.skin.scar, painter)
        })
    }
}

/// Prints an answer as JSON, or as text.
fn show(
    arguments: &Arguments,
    answer: &impl serde::Serialize,
    text: impl FnOnce() -> String,
) -> Result<(), Problem> {
    let mut out = std::io::stdout().lock();
    if arguments.json {
        serde_json::to_writer_pretty(&mut out, answer).map_err(std::io::Error::from)?;
        writeln!(out)?;
    } else {
        write!(out, "{}", text())?;
    }
    Ok(())
}

/// What is looked at.
fn heading(shelf: &Shelf, task: &Task, painter: Painter) -> String {
    let mix = if task.paint.is_empty() { "no new work".to_owned() } else { shelf.mix_in_words(&task.mix) };
    let wear = task.upkeep.wear.words();
    let wear = if wear.is_empty() { wear } else { format!("; {wear}") };
    let text = format!("{mix}; {} under {}{wear}", task.site.word(), task.light.name());
    let (first, rest) = text.split_once(';').unwrap_or((&text, ""));
    wrapped(&format!("{first};{rest}"), 0).replacen(first, &painter.strong(first), 1) + "\n"
}

/// Restrictions, and what the prediction is.
fn closing(shelf: &Shelf, task: &Task) -> String {
    let mut text = String::new();
    for warning in task.warnings(shelf) {
        text += &wrapped(&format!("warning: {warning}"), 2);
        text += "\n";
    }
    text + &wrapped("For teaching, never a promise of a result on a person.", 2) + "\n"
}

fn picture(shelf: &Shelf, task: &Task, scar: bool, painter: Painter) -> String {
    let (bare, now) = task.today(shelf);
    let around = around(task, task.light);
    let row = |label: &str, skin: &Appearance, seen: &Appearance, words: String| Row {
        label: label.to_owned(),
        beside: around.unwrap_or(skin.srgb),
        seen: seen.srgb,
        said: lab_in_pieces(seen),
        words,
    };
    let read = |skin: &Appearance, seen: &Appearance| Reading::of(seen.lab, skin.lab, task.site).words;
    // The typology angle is about skin: of a lip or a scar it would say something else.
    let (label, words) = match task.site {
        Site::Lip => ("bare lip", Tone::by_itself(bare.lab).word().to_owned()),
        Site::Areola => ("bare skin there", Tone::by_itself(bare.lab).word().to_owned()),
        _ if scar => ("bare scar", Tone::by_itself(bare.lab).word().to_owned()),
        Site::Brow | Site::Eyelid | Site::Scalp => {
            let angle = ita_degrees(bare.lab);
            ("bare skin", format!("ITA {angle:.0}°, {}", ItaClass::of(angle).word()))
        }
    };
    let mut rows = vec![row(label, &bare, &bare, words)];
    if !task.existing.is_empty() {
        rows.push(row("as it is now", &bare, &now, read(&bare, &now)));
    }
    if !task.paint.is_empty() {
        let own = format!("after {} months", task.months);
        let mut times: Vec<(f64, &str)> = TIMES.to_vec();
        if !times.iter().any(|(months, _)| *months == task.months) {
            times.push((task.months, &own));
            times.sort_by(|one, other| one.0.total_cmp(&other.0));
        }
        for (months, label) in times {
            let (skin, seen) = task.at(shelf, months);
            rows.push(row(label, &skin, &seen, read(&skin, &seen)));
        }
    }
    let mut text = format!("{} under {}\n", painter.strong(task.site.word()), task.light.name());
    text += &painter.rows(&rows);
    if !task.paint.is_empty() {
        text += &(wrapped(&format!("mix: {}", shelf.mix_in_words(&task.mix)), 2) + "\n");
    }
    let expected = task.at(shelf, task.months).1.lab;
    if let Some(outcome) = task.outcome(shelf, expected) {
        let when = TIMES.iter().find(|(months, _)| *months == task.months);
        let when =
            when.map_or_else(|| format!("after {} months", task.months), |(_, when)| (*when).to_owned());
        text += &(wrapped(&format!("{when}: {}", outcome.words), 2) + "\n");
        if task.spread.melanin > Spread::SEEN.melanin {
            let why = "(skin told by words alone; its measured colour, `lab`, would narrow this)";
            text += &(wrapped(why, 2) + "\n");
        }
    }
    text + &closing(shelf, task)
}
