//! `healedhue skin`: skin parameters out of measured spectra.

use super::problem::{Problem, read_text};
use crate::colour::{Lab, Spectrum, spectrum_of};
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
        let [l, a, b] = one.lab_measured;
        writeln!(
            out,
            "{:16} {:6.1}%  {:5.2}%  {:6.0}%  {:8.2}  {:7.2}  {l:5.1} {a:5.1} {b:5.1}  {:3.0}°  {:.2}  {}",
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
        }
    }
}

/// Names and spectra of a CSV file.
fn read_people(path: &std::path::Path) -> Result<Vec<(String, Spectrum)>, Problem> {
    let text = read_text(path)?;
    let file = path.display();
    let mut reader =
        csv::ReaderBuilder::new().comment(Some(b'#')).trim(csv::Trim::All).from_reader(text.as_bytes());
    let input = |what: String| Problem::Input(format!("{file}: {what}"));
    let headers = reader.headers().map_err(|error| input(error.to_string()))?.clone();
    if headers.get(0) != Some("wavelength_nm") {
        return Err(input(format!(
            "line 1: the first column is `{}`; it must be `wavelength_nm`, then one column a person",
            headers.get(0).unwrap_or("")
        )));
    }
    if headers.len() < 2 {
        return Err(input("line 1: there is no column of reflectance after `wavelength_nm`".to_owned()));
    }
    let mut columns: Vec<Vec<(f64, f64)>> = vec![Vec::new(); headers.len() - 1];
    for record in reader.records() {
        let record = record.map_err(|error| input(error.to_string()))?;
        let line = record.position().map_or(0, csv::Position::line);
        let number = |column: usize| {
            let field = record.get(column).unwrap_or("");
            field.parse::<f64>().ok().filter(|value| value.is_finite()).ok_or_else(|| {
                input(format!(
                    "line {line}, column `{}`: `{field}` is not a number",
                    headers.get(column).unwrap_or("")
                ))
            })
        };
        let nm = number(0)?;
        for (column, pairs) in columns.iter_mut().enumerate() {
            pairs.push((nm, number(column + 1)?));
        }
    }
    headers
        .iter()
        .skip(1)
        .zip(&columns)
        .map(|(name, pairs)| {
            let spectrum = spectrum_of(pairs).map_err(|error| input(format!("column `{name}`: {error}")))?;
            Ok((name.to_owned(), spectrum))
        })
        .collect()
}
