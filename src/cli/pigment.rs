//! `healedhue pigment`: absorption and scattering of bottles and colourants, out of measured paint.
//!
//! Entry point: [`run`]. Steps: readings or one colour into optics ([`readings`], [`Subject::of_colour`]), optics into an entry for
//! `lessons/pigments/` ([`entry`]), and a report of how sure they are ([`report`]).

mod entry;
mod readings;
mod report;

use super::lines::named;
use super::number;
use super::problem::{Problem, write_whole};
use crate::colour::{Lab, Spectrum, Srgb};
use crate::course::bounds;
use crate::pigment::measure::{Found, INDEX, Optics, Setup, Surface, of_colour};
use crate::pigment::{Basis, ScatteringCurve};
use crate::quantity::Quantity;
use entry::Written;
use rayon::prelude::*;
use std::io::Write;
use std::path::PathBuf;

/// CSV in, YAML for lessons/pigments/ out. Drawdowns: columns over_white and over_black, or over_white@0.01 and over_black@0.01
/// for films of several thicknesses in mm; white and black for the bare card. Or an opaque masstone and a tint with white: columns
/// masstone and tint. All values are reflectance from 0 to 1. docs/measuring-bottles.md says how to measure.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// CSV files, one a bottle; first column wavelength_nm; - reads standard input.
    #[arg(required_unless_present_any = ["lab", "hex"])]
    files: Vec<PathBuf>,
    /// Thickness of the dried film, for the columns over_white and over_black.
    #[arg(long, value_name = "MM", value_parser = number, allow_negative_numbers = true)]
    thickness_mm: Option<f64>,
    /// Refractive index of the dried film (1.5: representative).
    #[arg(long, value_name = "N", default_value_t = 1.5, value_parser = number, allow_negative_numbers = true)]
    refractive_index: f64,
    /// Whether values hold the reflection of the glossy surface; by default a file's do, and a single colour does not.
    #[arg(long, value_enum)]
    surface: Option<SurfaceWord>,
    /// Reflectance of the bare white card, where there is no column `white` (default 0.85, or 0.81
    /// without the surface reflection: representative).
    #[arg(long, value_name = "R", value_parser = number, allow_negative_numbers = true)]
    white_card: Option<f64>,
    /// Reflectance of the bare black card, where there is no column `black` (default 0.05, or 0.01
    /// without the surface reflection: representative).
    #[arg(long, value_name = "R", value_parser = number, allow_negative_numbers = true)]
    black_card: Option<f64>,
    /// Error of a reading as a fraction of it, 0.01 for 1%; by default seen from how rough the readings are.
    #[arg(long, value_name = "SHARE", value_parser = number, allow_negative_numbers = true)]
    noise: Option<f64>,
    /// Share of the paint in the tint, the rest being white, for the column `tint`.
    #[arg(long, value_name = "SHARE", value_parser = number, allow_negative_numbers = true)]
    share: Option<f64>,
    /// The white in the tint: a colourant or a bottle of the course.
    #[arg(long, value_name = "ID", default_value = "PW6")]
    white: String,
    #[command(flatten)]
    folder: super::CourseFolder,
    /// One colour instead of a file, as L*,a*,b* under D65: gives a representative guess.
    #[arg(long, value_name = "L,A,B", conflicts_with_all = ["files", "hex"], allow_hyphen_values = true)]
    lab: Option<String>,
    /// One colour instead of a file, as #rrggbb: gives a representative guess.
    #[arg(long, value_name = "#RRGGBB", conflicts_with = "files")]
    hex: Option<String>,
    /// Reduced scattering at 550 nm of the dried paint, assumed for one colour (representative).
    #[arg(long, value_name = "PER_MM", default_value_t = 40.0, value_parser = number, allow_negative_numbers = true)]
    scattering_per_mm: f64,
    /// How steeply scattering falls with wavelength, assumed for one colour (representative).
    #[arg(long, value_name = "P", default_value_t = 0.5, value_parser = number, allow_negative_numbers = true)]
    scattering_exponent: f64,
    #[command(flatten)]
    entry: entry::Details,
    /// Print JSON instead of YAML.
    #[arg(long)]
    json: bool,
    /// Write the YAML into this file, such as lessons/pigments/soft-brown.yaml.
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
    /// Replace the file if there is one.
    #[arg(long, requires = "out")]
    replace: bool,
}

/// Whether readings hold the surface reflection.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
enum SurfaceWord {
    /// d/8 with the gloss trap closed.
    Included,
    /// d/8 with the gloss trap open, or 45/0.
    Excluded,
}

/// What was found of one bottle or colourant.
struct Subject {
    /// The file it comes from, without folder and ending; nothing for one colour.
    stem: Option<String>,
    optics: Optics,
    /// On the scale of the dried film, or already on that of the course's colourants.
    is_film: bool,
    basis: Basis,
    /// How it was found.
    note: String,
    /// How sure it is, when it was measured.
    found: Option<Found>,
    /// Assumptions that were made for want of a number.
    assumed: Vec<String>,
    setup: Setup,
}

/// Bounds of L* of paint: at 0 or 100 there is nothing to reconstruct.
const PAINT_LIGHTNESS: Quantity = Quantity::new("L*", "", 2.0, 98.0);

pub(super) fn run(arguments: &Arguments) -> Result<(), Problem> {
    arguments.entry.check(arguments.files.len().max(1))?;
    let subjects = match arguments.colour()? {
        Some(lab) => vec![Subject::of_colour(lab, arguments)?],
        None => {
            let white = readings::White::new(&arguments.white, &arguments.folder.course);
            let read: Vec<Result<Subject, Problem>> =
                arguments.files.par_iter().map(|file| readings::subject(file, arguments, &white)).collect();
            read.into_iter().collect::<Result<_, _>>()?
        }
    };
    let written: Vec<Written> =
        subjects.iter().map(|subject| Written::new(subject, &arguments.entry)).collect::<Result<_, _>>()?;
    for (place, one) in written.iter().enumerate() {
        if written[..place].iter().any(|other| other.id == one.id) {
            return Err(Problem::Input(format!(
                "two files give the id `{}`, and ids are unique: rename one of the files",
                one.id
            )));
        }
    }
    let yaml = entry::yaml(&written, &arguments.entry);
    if let Some(path) = &arguments.out {
        write_whole(path, &yaml, arguments.replace)?;
    }
    let reports: String =
        subjects.iter().zip(&written).map(|(subject, written)| report::in_words(subject, written)).collect();
    let mut out = std::io::stdout().lock();
    if arguments.json {
        let found: Vec<_> = subjects
            .iter()
            .zip(&written)
            .map(|(subject, written)| report::Json::new(subject, written))
            .collect();
        serde_json::to_writer_pretty(&mut out, &found).map_err(std::io::Error::from)?;
        writeln!(out)?;
    } else if let Some(path) = &arguments.out {
        write!(out, "{reports}")?;
        writeln!(out, "written: {}", named(path))?;
    } else {
        write!(out, "{yaml}")?;
        write!(std::io::stderr().lock(), "{reports}")?;
    }
    Ok(())
}

impl Arguments {
    fn setup(&self, otherwise: Surface) -> Result<Setup, Problem> {
        INDEX.check(self.refractive_index).map_err(|breach| Problem::Input(breach.to_string()))?;
        let surface = match self.surface {
            Some(SurfaceWord::Included) => Surface::Included,
            Some(SurfaceWord::Excluded) => Surface::Excluded,
            None => otherwise,
        };
        Ok(Setup { refractive_index: self.refractive_index, surface, ..Setup::default() })
    }

    /// The one colour, if that is what there is.
    fn colour(&self) -> Result<Option<Lab>, Problem> {
        let lab = if let Some(hex) = &self.hex {
            let srgb = Srgb::from_hex(hex).ok_or_else(|| {
                Problem::Use(format!(
                    "`--hex` is `{hex}`; it must be six hexadecimal digits, such as #7a5236"
                ))
            })?;
            srgb.to_lab()
        } else if let Some(text) = &self.lab {
            let numbers: Vec<Option<f64>> = text.split(',').map(|part| part.trim().parse().ok()).collect();
            let [Some(l), Some(a), Some(b)] = numbers[..] else {
                return Err(Problem::Use(format!(
                    "`--lab` is `{text}`; it must be three numbers with commas between them, such as 38,14,22"
                )));
            };
            Lab::new(l, a, b)
        } else {
            return Ok(None);
        };
        let option = if self.hex.is_some() { "--hex" } else { "--lab" };
        for (quantity, value) in
            [(PAINT_LIGHTNESS, lab.l), (bounds::GREEN_RED, lab.a), (bounds::BLUE_YELLOW, lab.b)]
        {
            quantity.check(value).map_err(|breach| Problem::Input(format!("{option}: {breach}")))?;
        }
        Ok(Some(lab))
    }
}

impl Subject {
    /// A representative guess at paint of one colour.
    fn of_colour(lab: Lab, arguments: &Arguments) -> Result<Self, Problem> {
        let input = |breach: crate::quantity::OutOfRange| Problem::Input(breach.to_string());
        const SCATTERING: Quantity = Quantity::new("scattering_per_mm", "per mm", 0.01, 5000.0);
        const EXPONENT: Quantity = Quantity::new("scattering_exponent", "", 0.0, 4.0);
        let at_550_per_mm = SCATTERING.check(arguments.scattering_per_mm).map_err(input)?;
        let exponent = EXPONENT.check(arguments.scattering_exponent).map_err(input)?;
        let scattering: Spectrum = ScatteringCurve { at_550_per_mm, exponent }.spectrum();
        let setup = arguments.setup(Surface::Excluded)?;
        let optics =
            of_colour(lab, &setup, &scattering).map_err(|error| Problem::Input(error.to_string()))?;
        let Lab { l, a, b } = lab;
        Ok(Subject {
            stem: None,
            optics,
            is_film: true,
            basis: Basis::Representative,
            note: format!(
                "A guess from one colour, L* {l:.1}, a* {a:.1}, b* {b:.1}: smoothest reflectance with it (Burns 2020), scattering assumed."
            ),
            found: None,
            assumed: vec![
                format!(
                    "scattering {at_550_per_mm} per mm at 550 nm with exponent {exponent} (representative)"
                ),
                "many absorptions have one colour; this is the smoothest".to_owned(),
            ],
            setup,
        })
    }
}
