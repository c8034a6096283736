//! How sure the found values are, in words and as JSON.

use super::super::terminal::axes;
use super::Subject;
use super::entry::Written;
use crate::colour::{BANDS, Lab, Light, Spectrum, Srgb, wavelength_nm};
use crate::healing::healed_spread;
use crate::pigment::Basis;
use crate::pigment::measure::{Body, film_reflectance};
use serde::Serialize;

/// A value is known well when this is at least twice its standard deviation.
const WELL: f64 = 0.05;

/// A healed colour that may be off by this ΔE00 is not known.
const UNKNOWN: f64 = 5.0;

/// One bottle or colourant.
#[derive(Serialize)]
pub(super) struct Json {
    id: String,
    name: String,
    basis: Basis,
    wavelength_nm: Vec<f64>,
    /// Of the dried paint; of a tint, on its white's scale.
    absorption_per_mm: Spectrum,
    reduced_scattering_per_mm: Spectrum,
    dose_mm: f64,
    /// Colour of an opaque layer under D65, in the geometry of the readings.
    masstone_lab: [f64; 3],
    masstone_srgb: String,
    assumed: Vec<String>,
    #[serde(flatten)]
    certainty: Option<Certainty>,
}

/// How sure measured values are.
#[derive(Serialize)]
struct Certainty {
    /// Standard deviation of each value's logarithm, when readings are off by 1% or by `noise`.
    absorption_spread: Spectrum,
    scattering_spread: Spectrum,
    /// Relative error of readings that was taken.
    noise: f64,
    residual: Residual,
    doubts: Vec<DoubtJson>,
    /// ΔE00 within which the true paint heals in light skin, if readings are off by no more than that.
    healed_within_delta_e_2000: f64,
}

/// Difference between readings and what the found values give, as reflectance.
#[derive(Serialize)]
struct Residual {
    rms: f64,
    worst: f64,
    worst_column: String,
    worst_nm: f64,
}

/// Bands that are badly determined.
#[derive(Serialize)]
struct DoubtJson {
    from_nm: f64,
    to_nm: f64,
    says: &'static str,
}

fn masstone(subject: &Subject) -> Lab {
    Light::D65.lab_of(&film_reflectance::<24>(&subject.optics, &Body::Opaque, &subject.setup))
}

impl Json {
    pub fn new(subject: &Subject, written: &Written) -> Self {
        let lab = masstone(subject);
        Json {
            id: written.id.clone(),
            name: written.name.clone(),
            basis: subject.basis,
            wavelength_nm: (0..BANDS).map(wavelength_nm).collect(),
            absorption_per_mm: subject.optics.absorption,
            reduced_scattering_per_mm: subject.optics.scattering,
            dose_mm: written.dose_mm,
            masstone_lab: [lab.l, lab.a, lab.b],
            masstone_srgb: Srgb::from_lab(lab).hex(),
            assumed: written.assumed.clone(),
            certainty: subject.found.as_ref().map(|found| Certainty {
                healed_within_delta_e_2000: healed_spread(found, written.dose()).1,
                absorption_spread: found.spread.absorption,
                scattering_spread: found.spread.scattering,
                noise: found.noise,
                residual: Residual {
                    rms: found.misfit.rms,
                    worst: found.misfit.worst,
                    worst_column: found.misfit.panel.clone(),
                    worst_nm: found.misfit.nm,
                },
                doubts: found
                    .doubts
                    .iter()
                    .map(|one| DoubtJson { from_nm: one.from_nm, to_nm: one.to_nm, says: one.doubt.words() })
                    .collect(),
            }),
        }
    }
}

/// The report people read.
pub(super) fn in_words(subject: &Subject, written: &Written) -> String {
    let lab = masstone(subject);
    let mut text = format!("{}: {}\n", written.id, written.note());
    text += &format!("  masstone: {}  {}\n", axes(lab).join("  "), Srgb::from_lab(lab).hex());
    if let Some(found) = &subject.found {
        text += &format!(
            "  residual: {:.4} rms, worst {:.4} in `{}` at {:.0} nm; readings taken to be off by {:.2}%\n",
            found.misfit.rms,
            found.misfit.worst,
            found.misfit.panel,
            found.misfit.nm,
            found.noise * 100.0
        );
        let known = |spread: &Spectrum| spread.iter().filter(|spread| 2.0 * **spread <= WELL).count();
        text += &format!(
            "  known within 5% if readings are within 1%: absorption in {} of {BANDS} bands, scattering in {}\n",
            known(&found.spread.absorption),
            known(&found.spread.scattering)
        );
        let within = healed_spread(found, written.dose()).1;
        text += &if within < UNKNOWN {
            format!(
                "  one full pass in light skin: healed colour known within ΔE00 {within:.1} if readings are within 1%\n"
            )
        } else {
            "  one full pass in light skin: these readings do not tell the healed colour\n".to_owned()
        };
        for one in &found.doubts {
            let bands = if one.from_nm == one.to_nm {
                format!("{:.0} nm", one.from_nm)
            } else {
                format!("{:.0} to {:.0} nm", one.from_nm, one.to_nm)
            };
            text += &format!("  badly determined at {bands}: {}\n", one.doubt.words());
        }
    }
    for assumed in &written.assumed {
        text += &format!("  assumed: {assumed}\n");
    }
    if subject.basis == Basis::Representative {
        text += "  representative: a guess, not a measurement\n";
    }
    text
}
