//! `healedhue foresee`: the healed colour of one placement, as swatches and words or as JSON.

use super::CourseFolder;
use super::problem::{Problem, read_text};
use super::ranking::ranking;
use super::terminal::{Painter, When, lab_in_words, wrapped};
use crate::course::load;
use crate::foresee::{Answer, Request, Task};
use crate::healing::{Appearance, HEALED_MONTHS, Reading, Scene, Spread};
use crate::pigment::Shelf;
use crate::skin::{ItaClass, ita_degrees};
use std::io::Write;
use std::path::PathBuf;

/// A prediction for teaching, never a promise of a result on a person.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// JSON: {skin: {phototype or ita or melanin, undertone, redness}, site, light, months, mix: {BOTTLE: drops}, placement,
    /// existing, worlds, search: {goal: [L*, a*, b*], tolerance, palette, bottles, drops}}; everything but skin has a default; - reads
    /// standard input.
    file: PathBuf,
    /// Print JSON.
    #[arg(long)]
    json: bool,
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
    let request: Request = serde_json::from_str(&text)
        .map_err(|error| Problem::Input(format!("{}: {error}", arguments.file.display())))?;
    let loaded = load(&arguments.folder.course);
    let course = loaded.course.ok_or(Problem::Course(loaded.diagnostics))?;
    let task = request.resolve(&course.shelf).map_err(|error| Problem::Input(error.to_string()))?;
    let mut out = std::io::stdout().lock();
    if arguments.json {
        serde_json::to_writer_pretty(&mut out, &Answer::of(&course.shelf, &task))
            .map_err(std::io::Error::from)?;
        writeln!(out)?;
    } else {
        let painter = Painter::new(arguments.colour);
        let found = task.found(&course.shelf);
        if let Some(found) = &found {
            write!(out, "{}", ranking(&course.shelf, &task, found, painter))?;
        }
        write!(out, "{}", picture(&course.shelf, &task.with_best(found.as_ref()), painter))?;
    }
    Ok(())
}

fn picture(shelf: &Shelf, task: &Task, painter: Painter) -> String {
    let today = Scene::today(shelf, &task.skin, task.site, &task.existing);
    let bare = Appearance::of(today.bare(), task.light);
    let angle = ita_degrees(bare.lab);
    let mut text = format!("{} under {}\n", painter.strong(task.site.word()), task.light.name());
    let mut line = |label: &str, skin: &Appearance, seen: &Appearance, words: &str| {
        text += &format!(
            "  {label:18} {}{}  {words}\n",
            painter.swatch(skin.srgb, seen.srgb),
            lab_in_words(seen)
        );
    };
    line("bare skin", &bare, &bare, &format!("ITA {angle:.0}°, {}", ItaClass::of(angle).word()));
    if !task.existing.is_empty() {
        let now = Appearance::of(today.existing(), task.light);
        line("as it is now", &bare, &now, &Reading::of(now.lab, bare.lab).words);
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
            line(label, &skin, &seen, &Reading::of(seen.lab, skin.lab).words);
        }
        text += &format!("  mix: {}\n", shelf.mix_in_words(&task.mix));
    }
    let expected = task.at(shelf, task.months).1.lab;
    if let Some(outcome) = task.outcome(shelf, expected) {
        let when = TIMES.iter().find(|(months, _)| *months == task.months);
        let when =
            when.map_or_else(|| format!("after {} months", task.months), |(_, when)| (*when).to_owned());
        text += &wrapped(&format!("{when}: {}", outcome.words), 2);
        text.push('\n');
        if task.spread.melanin > Spread::SEEN.melanin {
            text += "  (skin told by words alone; its measured colour, `lab`, would narrow this)\n";
        }
    }
    for warning in task.warnings(shelf) {
        text += &format!("  warning: {warning}\n");
    }
    text + "  For teaching, never a promise of a result on a person.\n"
}
