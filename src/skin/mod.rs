//! Skin: six numbers a person, and the layers they give.
//!
//! Entry point: [`Skin`]. [`Skin::from_evidence`] estimates it from words, [`Skin::epidermis_absorption`] and its neighbours
//! give the optics per band. Formulas are those of S. L. Jacques (1998, 2013; from memory) and S. Prahl's haemoglobin tables.

mod canvas;
mod evidence;
mod fit;
mod haemoglobin;
mod ita;
mod of_ita;
mod person;
mod prior;
mod site;

pub use canvas::{Bases, Canvas, Covers};
pub use evidence::{Phototype, Redness, Undertone};
pub use fit::{Fit, fit_lab, fit_spectrum};
pub use ita::{ItaClass, ita_degrees};
pub use of_ita::skin_of_ita;
pub use person::{
    ANISOTROPY, BACKGROUND, BLOOD, MELANIN, OXYGENATION, REFRACTIVE_INDEX, SCATTERING, Skin, VESSEL_RADIUS,
};
pub use prior::Prior;
pub use site::Site;
