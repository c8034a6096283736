//! Absorption and scattering of a colourant or a bottle, found from what its paint looks like: inverse adding-doubling.
//!
//! Entry points: [`Panel`] describes one painted patch that was measured, [`drawdown`] makes the two of a film over white and over
//! black, [`measure`] finds the [`Optics`] that explain any number of panels, [`of_colour`] those that would give one colour.
//!
//! Geometry: light at normal incidence and all reflected light collected, or, by reciprocity, diffuse light and a view along the
//! normal (d/0, d/8). The surface is smooth, with air above; the backing lies in optical contact below and reflects evenly in all
//! directions (Lambert). Its own reflectance is read in the same geometry, through a surface of the same refractive index.
//!
//! Steps: a coarse search with few angles in each band, Levenberg and Marquardt in each band, and last in all bands together, where
//! scattering is known to change smoothly with wavelength.

mod colour;
mod doubt;
mod fit;
mod noise;
mod panel;
mod setup;

pub use colour::of_colour;
pub use doubt::{Doubt, Doubtful};
pub use fit::{Found, Misfit, Shift, Spread, measure};
pub use panel::{Body, DARKEST_FILM, MeasureError, Panel, Tint, drawdown};
pub use setup::{INDEX, NOISE, SHARE, Setup, Surface, THICKNESS, film_reflectance};

use crate::colour::Spectrum;

/// What a medium does to light in it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Optics {
    /// Absorption coefficient μa per band, per mm.
    pub absorption: Spectrum,
    /// Reduced scattering coefficient μs' per band, per mm.
    pub scattering: Spectrum,
}
