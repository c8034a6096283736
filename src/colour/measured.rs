//! Measured spectra: from any wavelengths that cover 400 to 700 nm to the bands.

use super::{Spectrum, wavelength_nm};
use thiserror::Error;

/// Why a measured spectrum cannot be used.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum SpectrumError {
    /// The wavelengths do not reach far enough.
    #[error("wavelengths run from {from} to {to} nm; they must cover 400 to 700 nm")]
    NotCovered {
        /// First wavelength.
        from: f64,
        /// Last wavelength.
        to: f64,
    },
    /// Two neighbouring wavelengths lie too far apart.
    #[error("there is no value between {from} and {to} nm; steps may be at most {MOST_STEP_NM} nm")]
    Gap {
        /// Lower wavelength.
        from: f64,
        /// Higher wavelength.
        to: f64,
    },
    /// Wavelengths do not rise.
    #[error("wavelength {after} nm follows {before} nm; wavelengths must rise")]
    NotRising {
        /// Wavelength before.
        before: f64,
        /// Wavelength after it.
        after: f64,
    },
    /// A reflectance is not between 0 and 1.
    #[error("reflectance {value} at {nm} nm is outside 0 to 1{}", if *.value > 1.0 && *.value <= 100.0 { "; divide percentages by 100" } else { "" })]
    OutOfRange {
        /// Wavelength.
        nm: f64,
        /// The value.
        value: f64,
    },
    /// Every reflectance is so small that it looks like a fraction of a fraction.
    #[error("no reflectance is above {most}: reflectance must be a fraction of 1, not divided by 100 again")]
    TooSmall {
        /// The greatest value.
        most: f64,
    },
}

/// Greatest step between wavelengths, in nm.
const MOST_STEP_NM: f64 = 20.0;
/// Least greatest reflectance of anything real: the surface alone reflects more.
const LEAST_PEAK: f64 = 0.02;

/// A spectrum in bands, out of (wavelength in nm, reflectance) pairs with rising wavelengths, by linear interpolation.
///
/// # Errors
/// [`SpectrumError`] when the pairs do not cover 400 to 700 nm in steps of at most 20 nm, do not rise, or hold a value that is no
/// reflectance; also when no value reaches 0.02, as in fractions that were divided by 100 again.
pub fn spectrum_of(pairs: &[(f64, f64)]) -> Result<Spectrum, SpectrumError> {
    let spectrum = dark_spectrum_of(pairs)?;
    let most = spectrum.iter().fold(0.0_f64, |most, &value| most.max(value));
    // Four digits are enough to know the number by.
    let most_shown = libm::round(most * 1e4) / 1e4;
    if most < LEAST_PEAK { Err(SpectrumError::TooSmall { most: most_shown }) } else { Ok(spectrum) }
}

/// As [`spectrum_of`], for something that may be as dark as it likes: black, read without its surface reflection.
///
/// # Errors
/// As [`spectrum_of`], except that small values are fine.
pub fn dark_spectrum_of(pairs: &[(f64, f64)]) -> Result<Spectrum, SpectrumError> {
    for pair in pairs.windows(2) {
        let (before, after) = (pair[0].0, pair[1].0);
        if after.partial_cmp(&before) != Some(std::cmp::Ordering::Greater) {
            return Err(SpectrumError::NotRising { before, after });
        }
    }
    let (from, to) = (pairs.first().map_or(f64::NAN, |p| p.0), pairs.last().map_or(f64::NAN, |p| p.0));
    if !(from <= 400.0 && to >= 700.0) {
        return Err(SpectrumError::NotCovered { from, to });
    }
    for pair in pairs.windows(2) {
        let (from, to) = (pair[0].0, pair[1].0);
        if to - from > MOST_STEP_NM && to > 400.0 && from < 700.0 {
            return Err(SpectrumError::Gap { from, to });
        }
    }
    if let Some(&(nm, value)) = pairs.iter().find(|(_, value)| !(0.0..=1.0).contains(value)) {
        return Err(SpectrumError::OutOfRange { nm, value });
    }
    Ok(std::array::from_fn(|band| {
        let nm = wavelength_nm(band);
        let after = pairs.partition_point(|(at, _)| *at < nm);
        let (high, above) = pairs[after];
        if high == nm || after == 0 {
            return above;
        }
        let (low, below) = pairs[after - 1];
        below + (above - below) * (nm - low) / (high - low)
    }))
}
