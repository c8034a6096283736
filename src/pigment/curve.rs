//! Smooth spectra from a few stated parameters.

use crate::colour::{Spectrum, wavelength_nm};
use serde::{Deserialize, Serialize};

/// Absorption as a flat level, edges that absorb everything bluer than a wavelength, and peaks.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AbsorptionCurve {
    /// Absorption at every wavelength, per mm.
    #[serde(default)]
    pub flat_per_mm: f64,
    /// Edges.
    #[serde(default)]
    pub edges: Vec<Edge>,
    /// Peaks.
    #[serde(default)]
    pub peaks: Vec<Peak>,
}

/// A band edge: `per_mm` well below `at_nm`, half of it there, nothing well above (a logistic curve of width `width_nm`).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Edge {
    /// Wavelength of the half value.
    pub at_nm: f64,
    /// Width: the absorption falls from 73% to 27% over twice this.
    pub width_nm: f64,
    /// Absorption well below the edge, per mm.
    pub per_mm: f64,
}

/// A Gaussian peak of standard deviation `width_nm`.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Peak {
    /// Wavelength of the top.
    pub at_nm: f64,
    /// Standard deviation.
    pub width_nm: f64,
    /// Absorption at the top, per mm.
    pub per_mm: f64,
}

impl AbsorptionCurve {
    /// Absorption per band, per mm, at amount 1.
    pub fn spectrum(&self) -> Spectrum {
        std::array::from_fn(|band| {
            let nm = wavelength_nm(band);
            let edges: f64 =
                self.edges.iter().map(|e| e.per_mm / (1.0 + libm::exp((nm - e.at_nm) / e.width_nm))).sum();
            let peaks: f64 = self
                .peaks
                .iter()
                .map(|p| {
                    let z = (nm - p.at_nm) / p.width_nm;
                    p.per_mm * libm::exp(-0.5 * z * z)
                })
                .sum();
            self.flat_per_mm + edges + peaks
        })
    }
}

/// Reduced scattering as a power of wavelength.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ScatteringCurve {
    /// Reduced scattering μs' at 550 nm, per mm.
    pub at_550_per_mm: f64,
    /// Exponent p of (λ/550)^-p; small for coarse particles, towards 4 for very fine ones.
    pub exponent: f64,
}

impl ScatteringCurve {
    /// Reduced scattering μs' per band, per mm, at amount 1.
    pub fn spectrum(&self) -> Spectrum {
        std::array::from_fn(|band| {
            self.at_550_per_mm * libm::pow(wavelength_nm(band) / 550.0, -self.exponent)
        })
    }
}
