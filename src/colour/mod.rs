//! Colour: from a reflectance spectrum to what an eye sees, following CIE 15:2018.
//!
//! Entry points: [`Light::xyz_of`] gives XYZ of a [`Spectrum`], [`Lab::from_xyz`] and [`difference`] compare colours,
//! [`Srgb::from_lab`] puts one on a screen, [`metamerism`] and [`inconstancy`] say what a change of light does.

mod adaptation;
mod bands;
mod deficiency;
mod difference;
mod ellipsoid;
mod lab;
mod light;
mod measured;
mod metamerism;
mod outline;
mod p3;
mod shift;
mod smooth;
mod srgb;

pub use adaptation::adapt;
pub use bands::{BANDS, Spectrum, wavelength_nm};
pub use deficiency::Deficiency;
pub use difference::difference;
pub use ellipsoid::{Axis, Ellipsoid};
pub use lab::{BLUE_YELLOW, GREEN_RED, LIGHTNESS, Lab, Xyz};
pub use light::Light;
pub use measured::{SpectrumError, dark_spectrum_of, spectrum_of};
pub use metamerism::{inconstancy, metamerism};
pub use outline::Outline;
pub use p3::DisplayP3;
pub use shift::{JUST_VISIBLE, Sense, Shift, in_a_row};
pub use smooth::smooth_reflectance;
pub use srgb::Srgb;
