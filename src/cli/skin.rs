//! `healedhue skin`: skin parameters out of measured spectra.

use super::problem::Problem;
use super::table::Table;
use crate::colour::{Lab, Spectrum, spectrum_of};
use crate::figure::fixed;
use crate::skin::{Fit, ItaClass, Prior, Site, fit_spectrum, ita_degrees};
use rayon::prelude::*;
use serde::Serialize;
use std::io::Write;
use std::path::PathBuf;

/// An estimate of the model's layers, not a diagnosis.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// CSV: first column wavelength_nm, then one column of reflectance (0 to 1, surface reflection included) per person; - reads
    /// standard input.
    file: PathBuf,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

/// What was found of one person.
#[derive(Serialize)]
struct Found {
    name: String,
    /// Volume fraction of melanosomes in the epidermis.
    melanin: f64,
    /// Volume fraction of blood in the dermis.
    blood: f64,
    /// Share of haemoglobin that carries oxygen.
    oxygenation: f64,
    /// Times typical skin.
    scattering: f64,
    /// Times typical skin.
    background: f64,
    vessel_radius_mm: f64,
    /// L*, a*, b* under D65.
    lab_measured: [f64; 3],
    lab_fitted: [f64; 3],
    delta_e_2000: f64,
    ita_degrees: f64,
    /// Whether no skin of the model looks like this.
    is_no_skin: bool,
}

pub(super) fn run(arguments: &Arguments) -> Result<(), Problem> {
    let people = read_people(&arguments.file)?;
    let prior = Prior::anybody();
    let found: Vec<Found> = people
        .into_par_iter()
        .map(|(name, spectrum)| Found::new(name, &fit_spectrum(&spectrum, Site::default(), &prior)))
        .collect();
    let mut out = std::io::stdout().lock();
    if arguments.json {
        serde_json::to_writer_pretty(&mut out, &found).map_err(std::io::Error::from)?;
        writeln!(out)?;
        return Ok(());
    }
    writeln!(
        out,
        "{:16} melanin   blood  oxygen.  scatter.  backgr.     L*    a*    b*   ITA  ΔE00",
        "name"
    )?;
    for one in &found {
        let [l, a, b] = one.lab_measured.map(|value| fixed(value, 1));
        writeln!(
            out,
            "{:16} {:6.1}%  {:5.2}%  {:6.0}%  {:8.2}  {:7.2}  {l:>5} {a:>5} {b:>5}  {:3.0}°  {:.2}  {}",
            one.name,
            one.melanin * 100.0,
            one.blood * 100.0,
            one.oxygenation * 100.0,
            one.scattering,
            one.background,
            one.ita_degrees,
            one.delta_e_2000,
            ItaClass::of(one.ita_degrees).word()
        )?;
    }
    for one in found.iter().filter(|one| one.is_no_skin) {
        writeln!(
            out,
            "{}: no skin of the model looks like this (ΔE00 {:.1}); is it skin, read with the surface reflection?",
            one.name, one.delta_e_2000
        )?;
    }
    writeln!(out, "An estimate of the model's layers, not a diagnosis.")?;
    Ok(())
}

impl Found {
    fn new(name: String, fit: &Fit) -> Self {
        let triple = |lab: Lab| [lab.l, lab.a, lab.b];
        let skin = fit.skin;
        Found {
            name,
            melanin: skin.melanin,
            blood: skin.blood,
            oxygenation: skin.oxygenation,
            scattering: skin.scattering,
            background: skin.background,
            vessel_radius_mm: skin.vessel_radius_mm,
            lab_measured: triple(fit.lab_measured),
            lab_fitted: triple(fit.lab_fitted),
            delta_e_2000: fit.delta_e_2000,
            ita_degrees: ita_degrees(fit.lab_measured),
            is_no_skin: fit.is_no_skin(),
        }
    }
}

/// Names and spectra of a CSV file.
fn read_people(path: &std::path::Path) -> Result<Vec<(String, Spectrum)>, Problem> {
    let table = Table::read(path, "one column a person")?;
    for (place, column) in table.columns.iter().enumerate() {
        if table.columns[..place].iter().any(|other| other.name == column.name) {
            return Err(Problem::Input(format!(
                "{}: line 1: the column `{}` is there twice; give each person a name of their own",
                table.file, column.name
            )));
        }
    }
    table
        .columns
        .into_iter()
        .map(|column| {
            let spectrum = spectrum_of(&column.pairs).map_err(|error| {
                Problem::Input(format!("{}: column `{}`: {error}", table.file, column.name))
            })?;
            Ok((column.name, spectrum))
        })
        .collect()
}
