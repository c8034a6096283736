//! `healedhue layers`: reflectance and transmittance of arbitrary layered media.

use super::input::read_text;
use super::problem::Problem;
use crate::json::{self, Wrong};
use crate::optics::{Measured, Stack, stack};
use serde_path_to_error::Segment;
use std::io::Write;
use std::path::PathBuf;

/// Collimated light at normal incidence, surface reflection included, air above and below.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// JSON: an array of {refractive_index, layers: [{absorption_per_mm, scattering_per_mm, anisotropy, thickness_mm}]}, top
    /// layer first; - reads standard input.
    file: PathBuf,
    /// Print JSON.
    #[arg(long)]
    json: bool,
    /// Quadrature angles: 4, 8, 12, 16, 20, 24, 28 or 32.
    #[arg(long, default_value_t = 4, value_parser = angles, allow_negative_numbers = true)]
    angles: usize,
}

/// One of the numbers of angles that there are.
fn angles(text: &str) -> Result<usize, String> {
    let angles = text.parse().ok().filter(|angles| stack::ANGLES.contains(angles));
    angles.ok_or_else(|| {
        let known: Vec<String> = stack::ANGLES.iter().map(usize::to_string).collect();
        format!("give one of {}", known.join(", "))
    })
}

/// Stacks and layers are counted from 1.
fn place_of(wrong: &Wrong) -> String {
    let mut words = ["stack", "layer"].into_iter();
    let steps = wrong.path.iter().flat_map(|path| path.iter());
    steps
        .filter_map(|step| match step {
            Segment::Seq { index } => words.next().map(|word| format!("{word} {}: ", index + 1)),
            Segment::Map { key } if key != "layers" => Some(format!("`{key}`: ")),
            _ => None,
        })
        .collect()
}

pub(super) fn run(arguments: &Arguments) -> Result<(), Problem> {
    let text = read_text(&arguments.file)?;
    let file = arguments.file.display();
    let stacks: Vec<Stack> = json::read(&text, &stack::BOUNDS)
        .map_err(|wrong| Problem::Input(format!("{file}: {}{}", place_of(&wrong), wrong.why)))?;
    let measured: Vec<Measured> = stacks
        .iter()
        .enumerate()
        .map(|(i, one)| {
            stack::measure(one, arguments.angles)
                .map_err(|error| Problem::Input(format!("{file}: stack {}: {error}", i + 1)))
        })
        .collect::<Result<_, _>>()?;
    let mut out = std::io::stdout().lock();
    if arguments.json {
        serde_json::to_writer_pretty(&mut out, &measured).map_err(std::io::Error::from)?;
        writeln!(out)?;
    } else {
        writeln!(out, "stack  layers  reflectance  transmittance")?;
        for (i, (one, seen)) in stacks.iter().zip(&measured).enumerate() {
            writeln!(
                out,
                "{:5}  {:6}  {:11.6}  {:13.6}",
                i + 1,
                one.layers.len(),
                seen.reflectance_normal_incidence,
                seen.transmittance_normal_incidence
            )?;
        }
    }
    Ok(())
}
