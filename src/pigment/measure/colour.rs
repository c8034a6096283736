//! Optics that would give one colour: a representative guess, for want of a measurement.

use super::Optics;
use super::fit::{ANGLES, MANY_ANGLES};
use super::panel::{Body, MeasureError};
use super::setup::{Bench, INDEX, Setup};
use crate::colour::{BANDS, Lab, Light, Spectrum, smooth_reflectance};

/// Bounds of the ratio of absorption to reduced scattering, as natural logarithms: from whiter than any white to blacker than any
/// black.
const LEAST_RATIO: f64 = -16.0;
const MOST_RATIO: f64 = 7.0;

/// Times the reflectance of many angles is put in place of that of few.
const CORRECTIONS: usize = 5;

/// Optics whose opaque layer has this colour under D65, given how much they scatter (reduced scattering per band, per mm): the
/// smoothest reflectance with that colour ([`smooth_reflectance`]), and the absorption that gives it. Many other absorptions have
/// the same colour, and scattering is an assumption: the result is representative, never measured.
///
/// # Errors
/// [`MeasureError::NoSuchColour`] when no surface has this colour; `OutOfRange` when the refractive index is.
pub fn of_colour(lab: Lab, setup: &Setup, scattering: &Spectrum) -> Result<Optics, MeasureError> {
    INDEX.check(setup.refractive_index)?;
    let reflectance = smooth_reflectance(lab, Light::D65).ok_or(MeasureError::NoSuchColour {
        l: lab.l,
        a: lab.a,
        b: lab.b,
    })?;
    let (bench, many) = (Bench::<ANGLES>::new(setup), Bench::<MANY_ANGLES>::new(setup));
    let mut wanted = reflectance;
    let mut ratio = [0.0; BANDS];
    for _ in 0..CORRECTIONS {
        ratio = ratios(&bench, &wanted);
        let optics = Optics { absorption: ratio, scattering: [1.0; BANDS] };
        let (right, rough) = (many.spectrum(&optics, &Body::Opaque), bench.spectrum(&optics, &Body::Opaque));
        wanted = std::array::from_fn(|band| reflectance[band] - right[band] + rough[band]);
    }
    Ok(Optics {
        absorption: std::array::from_fn(|band| scattering[band] * ratio[band]),
        scattering: *scattering,
    })
}

/// Ratios of absorption to reduced scattering at which an opaque layer has this reflectance.
fn ratios<const N: usize>(bench: &Bench<N>, reflectance: &Spectrum) -> Spectrum {
    // Reflectance falls as the ratio rises: halve the interval. 45 halvings leave 7e-13 of it.
    let (mut low, mut high) = ([LEAST_RATIO; BANDS], [MOST_RATIO; BANDS]);
    for _ in 0..45 {
        let middle: Spectrum = std::array::from_fn(|band| 0.5 * (low[band] + high[band]));
        let optics = Optics { absorption: middle.map(libm::exp), scattering: [1.0; BANDS] };
        let read = bench.spectrum(&optics, &Body::Opaque);
        let bounds = low.iter_mut().zip(&mut high);
        for ((bounds, middle), (read, wanted)) in bounds.zip(middle).zip(read.iter().zip(reflectance)) {
            *(if read > wanted { bounds.0 } else { bounds.1 }) = middle;
        }
    }
    std::array::from_fn(|band| libm::exp(0.5 * (low[band] + high[band])))
}
