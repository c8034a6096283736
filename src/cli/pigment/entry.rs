//! What was found, as an entry for `lessons/pigments/`.

use super::super::number;
use super::super::problem::Problem;
use super::Subject;
use crate::colour::{BANDS, Spectrum};
use crate::course::{bounds, slug};
use crate::healing::Placement;
use crate::pigment::measure::Optics;
use crate::pigment::{Basis, CI_NAME_FORM, is_ci_name, meant_ci_name};

/// Dried paint that one full pass leaves, in mm (representative: at it, browns measured as films are about as strong in skin as
/// those of the demo course).
const USUAL_DOSE_MM: f64 = 0.02;
/// Half-life where nothing is known of what is in a bottle (representative: between the yellow and the red oxide of the demo).
const USUAL_HALF_LIFE_MONTHS: f64 = 36.0;

/// What the entry says besides optics.
#[derive(Debug, clap::Args)]
pub(super) struct Details {
    /// Id of the bottle; by default the file's name.
    #[arg(long)]
    id: Option<String>,
    /// Name of the bottle or chemical name of the colourant; by default its id.
    #[arg(long)]
    name: Option<String>,
    /// One sentence about the bottle.
    #[arg(long)]
    about: Option<String>,
    /// Colourants the label names: PR101,PY42, or with parts PR101=3,PY42=7, so that each fades by its own half-life.
    #[arg(long, value_name = "CI NAMES", value_delimiter = ',')]
    holds: Vec<String>,
    /// Months after which half of it is left (default 36: representative).
    #[arg(long, value_name = "MONTHS", value_parser = number, allow_negative_numbers = true)]
    half_life_months: Option<f64>,
    /// How far below its first place it spreads with the years, in mm.
    #[arg(long, value_name = "MM", value_parser = number, allow_negative_numbers = true)]
    drift_mm: Option<f64>,
    /// Thickness of dried paint that one full pass leaves in the skin, in mm (default 0.02: representative).
    #[arg(long, value_name = "MM", value_parser = number, allow_negative_numbers = true)]
    dose_mm: Option<f64>,
    /// The file holds one colourant, with this Colour Index name: write an entry of colourants instead of bottles.
    #[arg(long, value_name = "CI NAME", conflicts_with_all = ["holds", "id", "about"], requires = "class")]
    colourant: Option<String>,
    /// Kind of the colourant.
    #[arg(long, requires = "colourant", value_parser = ["white", "iron-oxide", "chromium-oxide", "carbon", "organic", "other-inorganic"])]
    class: Option<String>,
    /// Colour Index constitution number of the colourant, such as 77491.
    #[arg(long, requires = "colourant")]
    ci_number: Option<String>,
}

impl Details {
    /// Refuses what cannot be, before anything is computed.
    pub fn check(&self, files: usize) -> Result<(), Problem> {
        let one = [
            ("--id", &self.id),
            ("--name", &self.name),
            ("--about", &self.about),
            ("--colourant", &self.colourant),
        ];
        if let Some((option, _)) = one.iter().find(|(_, value)| files > 1 && value.is_some()) {
            return Err(Problem::Use(format!("`{option}` belongs to one file, and there are {files}")));
        }
        for (option, name) in self
            .holds
            .iter()
            .map(|part| ("--holds", part.split('=').next().unwrap_or("")))
            .chain(self.colourant.iter().map(|name| ("--colourant", name.as_str())))
        {
            if !is_ci_name(name) {
                let help = match meant_ci_name(name) {
                    Some(meant) => format!("write {meant}"),
                    None => format!("it must be {CI_NAME_FORM}"),
                };
                return Err(Problem::Input(format!(
                    "`{option}` is `{name}`, which is no Colour Index name: {help}"
                )));
            }
        }
        let parts = self.holds.iter().filter(|part| part.contains('=')).count();
        if parts > 0 && parts < self.holds.len() {
            return Err(Problem::Input(
                "`--holds` gives parts to some colourants and not to others: give them to all, or to none"
                    .to_owned(),
            ));
        }
        for part in &self.holds {
            if let Some((name, amount)) = part.split_once('=') {
                let amount = amount.parse().unwrap_or(f64::NAN);
                bounds::PARTS
                    .check(amount)
                    .map_err(|breach| Problem::Input(format!("`--holds`, parts of {name}: {breach}")))?;
            }
        }
        if parts > 0 && (self.half_life_months.is_some() || self.drift_mm.is_some()) {
            return Err(Problem::Use(
                "with parts in `--holds`, each colourant brings its own half-life and drift: leave them out"
                    .to_owned(),
            ));
        }
        for (quantity, value) in [
            (bounds::HALF_LIFE_MONTHS, self.half_life_months),
            (bounds::DRIFT_MM, self.drift_mm),
            (bounds::DOSE_MM, self.dose_mm),
        ] {
            if let Some(value) = value {
                quantity.check(value).map_err(|breach| Problem::Input(breach.to_string()))?;
            }
        }
        if let Some(id) = &self.id
            && slug(id).as_deref() != Some(id)
        {
            return Err(Problem::Input(format!(
                "`--id` is `{id}`; ids are lower-case words joined by hyphens, such as `{}`",
                slug(id).unwrap_or_else(|| "soft-brown".to_owned())
            )));
        }
        if let Some(number) = &self.ci_number
            && !number.chars().all(|c| c.is_ascii_digit() || c == ':')
        {
            return Err(Problem::Input(format!(
                "`--ci-number` is `{number}`; it must be a constitution number, such as 77491"
            )));
        }
        Ok(())
    }

    fn has_parts(&self) -> bool {
        self.holds.iter().any(|part| part.contains('='))
    }
}

/// An entry, with its numbers as they are written.
pub(super) struct Written {
    pub id: String,
    pub name: String,
    pub optics: Optics,
    pub basis: Basis,
    pub dose_mm: f64,
    /// What was taken for want of a number.
    pub assumed: Vec<String>,
    note: String,
}

impl Written {
    /// Share of the coloured layer that one full pass fills with dried paint.
    pub fn dose(&self) -> f64 {
        self.dose_mm / Placement::default().thickness_mm
    }

    pub fn new(subject: &Subject, details: &Details) -> Result<Self, Problem> {
        let mut assumed = subject.assumed.clone();
        let dose_mm = match (details.dose_mm, subject.is_film) {
            (Some(dose), _) => dose,
            (None, true) => {
                assumed
                    .push(format!("one full pass leaves {USUAL_DOSE_MM} mm of dried paint (representative)"));
                USUAL_DOSE_MM
            }
            // On the scale of the course's colourants, amount 1 is one full pass.
            (None, false) => Placement::default().thickness_mm,
        };
        if details.half_life_months.is_none() && !details.has_parts() {
            assumed
                .push(format!("half of it is left after {USUAL_HALF_LIFE_MONTHS} months (representative)"));
        }
        let id = match (&details.colourant, &details.id, &subject.stem) {
            (Some(name), _, _) => name.clone(),
            (None, Some(id), _) => id.clone(),
            (None, None, stem) => stem.as_deref().and_then(slug).unwrap_or_else(|| "new-bottle".to_owned()),
        };
        let name = details.name.clone().unwrap_or_else(|| id.clone());
        Ok(Written {
            id,
            name,
            optics: subject.optics,
            basis: subject.basis,
            dose_mm,
            note: subject.note.clone(),
            assumed,
        })
    }
}

impl Written {
    /// How it was found.
    pub fn note(&self) -> &str {
        &self.note
    }
}

/// All entries as one file.
pub(super) fn yaml(written: &[Written], details: &Details) -> String {
    let mut text = "# Written by `healedhue pigment`. One value a band, 400 to 700 nm by 10 nm.\n".to_owned();
    text += if details.colourant.is_some() { "colourants:\n" } else { "bottles:\n" };
    for one in written {
        for assumed in &one.assumed {
            text += &format!("  # assumed: {assumed}\n");
        }
        text += &if details.colourant.is_some() { colourant(one, details) } else { bottle(one, details) };
    }
    text
}

fn bottle(one: &Written, details: &Details) -> String {
    let about = details.about.as_deref().unwrap_or("Measured paint.");
    let about = if one.basis == Basis::Representative && details.about.is_none() {
        "Paint of one known colour."
    } else {
        about
    };
    let mut text = format!(
        "  - id: {}\n    name: {}\n    about: {}\n    measured:\n      basis: {}\n      dose_mm: {}\n",
        one.id,
        quoted(&one.name),
        quoted(about),
        basis(one.basis),
        short(one.dose_mm)
    );
    if details.has_parts() {
        let parts: Vec<String> = details
            .holds
            .iter()
            .filter_map(|part| part.split_once('='))
            .map(|(name, amount)| format!("{}: {amount}", quoted(name)))
            .collect();
        text += &format!("      holds: {{{}}}\n", parts.join(", "));
    } else {
        if !details.holds.is_empty() {
            let names: Vec<String> = details.holds.iter().map(|name| quoted(name)).collect();
            text += &format!("      holds: [{}]\n", names.join(", "));
        }
        text += &persistence(details, "      ");
    }
    text += &format!("      absorption_per_mm: {}\n", list(&one.optics.absorption));
    text += &format!("      reduced_scattering_per_mm: {}\n", list(&one.optics.scattering));
    text + &format!("      note: {}\n", quoted(&one.note))
}

fn colourant(one: &Written, details: &Details) -> String {
    // Amount 1 of a colourant is what one full pass of it leaves.
    let amount = one.dose();
    let scaled = |spectrum: &Spectrum| list(&spectrum.map(|value| value * amount));
    let mut text = format!("  - id: {}\n", quoted(&one.id));
    if let Some(number) = &details.ci_number {
        text += &format!("    ci_number: {}\n", quoted(number));
    }
    text += &format!(
        "    name: {}\n    class: {}\n",
        quoted(&one.name),
        details.class.as_deref().unwrap_or("organic")
    );
    text += &format!("    absorption: {}\n", scaled(&one.optics.absorption));
    text += &format!("    scattering: {}\n", scaled(&one.optics.scattering));
    text += &persistence(details, "    ");
    text += &format!("    basis: {}\n", basis(one.basis));
    text + &format!(
        "    note: {}\n",
        quoted(&format!("{} Amount 1 is {} mm of dried paint.", one.note, short(one.dose_mm)))
    )
}

fn persistence(details: &Details, indent: &str) -> String {
    let mut text =
        format!("{indent}half_life_months: {}\n", details.half_life_months.unwrap_or(USUAL_HALF_LIFE_MONTHS));
    if let Some(drift_mm) = details.drift_mm {
        text += &format!("{indent}drift_mm: {drift_mm}\n");
    }
    text
}

fn basis(basis: Basis) -> &'static str {
    match basis {
        Basis::Measured => "measured",
        Basis::Published => "published",
        Basis::Representative => "representative",
    }
}

/// A text in double quotes. JSON's escapes are YAML's too.
fn quoted(text: &str) -> String {
    serde_json::Value::from(text).to_string()
}

/// A list of numbers, on lines of a readable length.
fn list(values: &Spectrum) -> String {
    let mut text = "[".to_owned();
    for (band, value) in values.iter().enumerate() {
        text += &short(*value);
        if band + 1 < BANDS {
            text += if band % 10 == 9 { ",\n        " } else { ", " };
        }
    }
    text + "]"
}

/// A positive number with five significant digits.
fn short(value: f64) -> String {
    let digits = if value > 0.0 { (4 - libm::floor(libm::log10(value)) as i32).clamp(0, 9) } else { 0 };
    let text = format!("{value:.*}", digits as usize);
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
}
