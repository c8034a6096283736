//! Colour: from a reflectance spectrum to what an eye sees, following CIE 15:2018.
//!
//! Entry points: [`Light::xyz_of`] gives XYZ of a [`Spectrum`], [`Lab::from_xyz`] and [`difference`] compare colours,
//! [`Srgb::from_lab`] puts one on a screen.

mod bands;
mod difference;
mod lab;
mod light;
mod measured;
mod smooth;
mod srgb;

pub use bands::{BANDS, Spectrum, wavelength_nm};
pub use difference::difference;
pub use lab::{Lab, Xyz};
pub use light::Light;
pub use measured::{SpectrumError, dark_spectrum_of, spectrum_of};
pub use smooth::smooth_reflectance;
pub use srgb::Srgb;
