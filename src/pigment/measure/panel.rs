//! One painted patch that was measured, and what is refused as impossible.

use super::Optics;
use super::setup::{INDEX, NOISE, SHARE, Setup, THICKNESS};
use crate::colour::{BANDS, Spectrum, wavelength_nm};
use crate::quantity::OutOfRange;
use thiserror::Error;

/// One painted patch with its reading.
#[derive(Debug, Clone, PartialEq)]
pub struct Panel {
    /// What it is called in messages: `over_white`.
    pub name: String,
    /// Reading per band, 0 to 1.
    pub reflectance: Spectrum,
    /// How much paint there is.
    pub body: Body,
    /// With what it was mixed, for a tint.
    pub tint: Option<Tint>,
}

/// How much paint there is.
#[derive(Debug, Clone, PartialEq)]
#[expect(clippy::large_enum_variant, reason = "panels are few")]
pub enum Body {
    /// A dried film on a backing.
    Film {
        /// Thickness of the dried film, in mm.
        thickness_mm: f64,
        /// Reading of the bare backing per band, 0 to 1, in the same geometry.
        backing: Spectrum,
    },
    /// So much that nothing below it is seen.
    Opaque,
}

/// White that the paint was mixed with.
#[derive(Debug, Clone, PartialEq)]
pub struct Tint {
    /// Share of the paint under test in the mix, 0 to 1; the rest is white.
    pub share: f64,
    /// The white's own optics.
    pub white: Optics,
}

impl Tint {
    /// Optics of the mix.
    pub fn mixed(&self, paint: &Optics) -> Optics {
        let of = |paint: &Spectrum, white: &Spectrum| {
            std::array::from_fn(|band| self.share * paint[band] + (1.0 - self.share) * white[band])
        };
        Optics {
            absorption: of(&paint.absorption, &self.white.absorption),
            scattering: of(&paint.scattering, &self.white.scattering),
        }
    }
}

/// Why optics cannot be found.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum MeasureError {
    /// A number outside its bounds.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// A reading that is no reflectance.
    #[error("`{panel}` is {value} at {nm} nm, outside 0 to 1{}", if *.value > 1.0 && *.value <= 100.0 { "; divide percentages by 100" } else { "" })]
    NoReflectance {
        /// The panel.
        panel: String,
        /// Wavelength.
        nm: f64,
        /// The reading.
        value: f64,
    },
    /// A reading darker than the bare surface.
    #[error(
        "`{panel}` is {value} at {nm} nm, less than the {least:.3} that the surface alone throws back at a refractive index of \
         {index}: with readings that exclude the surface reflection, say so"
    )]
    BelowSurface {
        /// The panel.
        panel: String,
        /// Wavelength.
        nm: f64,
        /// The reading.
        value: f64,
        /// Reflection of the surface.
        least: f64,
        /// Refractive index.
        index: f64,
    },
    /// The film is darker over white.
    #[error(
        "`over_white` is {over_white} at {nm} nm, below `over_black`, which is {over_black}: a film over white is never darker than \
         over black; were the columns exchanged?"
    )]
    Exchanged {
        /// Wavelength.
        nm: f64,
        /// Reading over white.
        over_white: f64,
        /// Reading over black.
        over_black: f64,
    },
    /// The white backing is not lighter than the black one.
    #[error(
        "the backing `white` is {white} at {nm} nm, and the backing `black` {black}: white must be lighter by at least {LEAST_APART}"
    )]
    Backings {
        /// Wavelength.
        nm: f64,
        /// Reading of the white backing.
        white: f64,
        /// Reading of the black backing.
        black: f64,
    },
    /// Panels that cannot say what is asked of them.
    #[error("{0}")]
    TooLittle(&'static str),
    /// No surface has the colour.
    #[error("no surface has the colour L* {l:.1}, a* {a:.1}, b* {b:.1}: it must be one that paint can have")]
    NoSuchColour {
        /// L*.
        l: f64,
        /// a*.
        a: f64,
        /// b*.
        b: f64,
    },
}

/// How much lighter the white backing must be than the black one, as reflectance.
const LEAST_APART: f64 = 0.1;

/// A reading may lie below the surface's own reflection by this share of it: instruments are no better.
const SURFACE_SLACK: f64 = 0.1;

/// A film may seem darker over white by this share of the reading, and no more: readings that are each off by 1% differ by more
/// than that once in a million.
const EXCHANGE_SLACK: f64 = 0.07;

/// Below this no film is read.
pub const DARKEST_FILM: f64 = 1e-4;

/// The two panels of one film, `thickness_mm` thick when dry, over a white and over a black backing whose own readings are `white`
/// and `black`. All readings are 0 to 1.
///
/// # Errors
/// [`MeasureError`] when a number is out of bounds, the white backing is not clearly lighter than the black one, or the film is
/// darker over white than over black by more than readings are off.
pub fn drawdown(
    thickness_mm: f64,
    over_white: Spectrum,
    over_black: Spectrum,
    white: Spectrum,
    black: Spectrum,
) -> Result<[Panel; 2], MeasureError> {
    THICKNESS.check(thickness_mm)?;
    for (name, spectrum) in
        [("over_white", &over_white), ("over_black", &over_black), ("white", &white), ("black", &black)]
    {
        check_readings(name, spectrum)?;
    }
    for band in 0..BANDS {
        let nm = wavelength_nm(band);
        if white[band] - black[band] < LEAST_APART {
            return Err(MeasureError::Backings { nm, white: white[band], black: black[band] });
        }
    }
    let darker: f64 = (0..BANDS).map(|band| over_white[band] - over_black[band]).sum();
    let brightness: f64 = over_black.iter().sum();
    // One band may be off; all together may not.
    let slack = if darker < -0.01 * brightness { 0.0 } else { EXCHANGE_SLACK };
    for band in 0..BANDS {
        if over_white[band] < over_black[band] * (1.0 - slack) - slack * 0.05 {
            return Err(MeasureError::Exchanged {
                nm: wavelength_nm(band),
                over_white: over_white[band],
                over_black: over_black[band],
            });
        }
    }
    let panel = |name: &str, reflectance, backing| Panel {
        name: name.to_owned(),
        reflectance,
        body: Body::Film { thickness_mm, backing },
        tint: None,
    };
    Ok([panel("over_white", over_white, white), panel("over_black", over_black, black)])
}

fn check_readings(name: &str, spectrum: &Spectrum) -> Result<(), MeasureError> {
    match spectrum.iter().enumerate().find(|(_, value)| !(0.0..=1.0).contains(*value)) {
        Some((band, &value)) => {
            Err(MeasureError::NoReflectance { panel: name.to_owned(), nm: wavelength_nm(band), value })
        }
        None => Ok(()),
    }
}

/// Refuses panels and a setup that cannot be.
pub(super) fn check(panels: &[Panel], setup: &Setup, noise: Option<f64>) -> Result<(), MeasureError> {
    INDEX.check(setup.refractive_index)?;
    noise.map_or(Ok(0.0), |noise| NOISE.check(noise))?;
    for panel in panels {
        check_readings(&panel.name, &panel.reflectance)?;
        let least = setup.gloss();
        let mut readings = vec![(panel.name.as_str(), &panel.reflectance)];
        if let Body::Film { thickness_mm, backing } = &panel.body {
            THICKNESS.check(*thickness_mm)?;
            check_readings("backing", backing)?;
            readings.push(("backing", backing));
        }
        if let Some(tint) = &panel.tint {
            SHARE.check(tint.share)?;
        }
        for (name, readings) in readings {
            if let Some(band) = (0..BANDS).find(|&band| readings[band] < least * (1.0 - SURFACE_SLACK)) {
                return Err(MeasureError::BelowSurface {
                    panel: name.to_owned(),
                    nm: wavelength_nm(band),
                    value: readings[band],
                    least,
                    index: setup.refractive_index,
                });
            }
        }
    }
    let films = panels.iter().any(|panel| matches!(panel.body, Body::Film { .. }));
    let tints = panels.iter().any(|panel| panel.tint.is_some());
    match panels.len() {
        0 => Err(MeasureError::TooLittle("there is no panel")),
        1 => Err(MeasureError::TooLittle("one panel does not tell absorption from scattering: measure two")),
        _ if !films && !tints => Err(MeasureError::TooLittle(
            "opaque panels of one paint tell only the ratio of absorption to scattering: add a tint with white or a thin film",
        )),
        _ => Ok(()),
    }
}
