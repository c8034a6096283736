//! Lights (CIE standard illuminants) and the standard observer: from reflectance to XYZ.
//!
//! Tables are in `cie.csv`, with their source. A spectrum in 31 bands is interpolated to the tables' 5 nm by cubic Lagrange
//! polynomials and held constant beyond 400 and 700 nm, as ASTM E308 and E2022 do; the result is one weight a band and
//! coordinate, computed once.

use super::{BANDS, Lab, Spectrum, Xyz};
use serde::{Deserialize, Serialize};
use std::sync::LazyLock;

/// A light under which work is judged.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
pub enum Light {
    /// CIE standard illuminant D65: average daylight.
    #[default]
    D65,
    /// CIE standard illuminant A: tungsten.
    A,
    /// CIE illuminant LED-B3 (CIE 15:2018): a white LED of about 4100 K.
    #[serde(rename = "LED-B3")]
    LedB3,
}

/// Weights of each band for X, Y, Z, and the white they sum to.
struct Weights {
    bands: [[f64; 3]; BANDS],
    white: Xyz,
}

impl Light {
    /// Every light with its name in files.
    pub const ALL: [(Light, &'static str); 3] =
        [(Light::D65, "D65"), (Light::A, "A"), (Light::LedB3, "LED-B3")];

    /// Name in files and on screens.
    pub fn name(self) -> &'static str {
        match self {
            Light::D65 => "D65",
            Light::A => "A",
            Light::LedB3 => "LED-B3",
        }
    }

    /// XYZ of a surface with this reflectance (0 to 1 per band) under this light, CIE 1931 2° observer.
    pub fn xyz_of(self, reflectance: &Spectrum) -> Xyz {
        let mut sum = [0.0; 3];
        for (weight, r) in self.weights().bands.iter().zip(reflectance) {
            for (s, w) in sum.iter_mut().zip(weight) {
                *s += w * r;
            }
        }
        Xyz { x: sum[0], y: sum[1], z: sum[2] }
    }

    /// CIELAB of a surface with this reflectance under this light.
    pub fn lab_of(self, reflectance: &Spectrum) -> Lab {
        Lab::from_xyz(self.xyz_of(reflectance), self.white())
    }

    /// XYZ of the perfect reflecting diffuser under this light; Y is 100.
    pub fn white(self) -> Xyz {
        self.weights().white
    }

    fn weights(self) -> &'static Weights {
        static WEIGHTS: LazyLock<[Weights; 3]> = LazyLock::new(|| [4, 5, 6].map(weights_of_column));
        &WEIGHTS[self as usize]
    }
}

/// Weights for the light in this column of `cie.csv`.
fn weights_of_column(column: usize) -> Weights {
    let mut bands = [[0.0; 3]; BANDS];
    let mut luminance = 0.0;
    for row in rows() {
        let (nm, power) = (row[0], row[column]);
        luminance += power * row[2];
        for (band, share) in lagrange(nm) {
            for axis in 0..3 {
                bands[band][axis] += share * power * row[1 + axis];
            }
        }
    }
    let mut white = [0.0; 3];
    for band in &mut bands {
        for (axis, weight) in band.iter_mut().enumerate() {
            *weight *= 100.0 / luminance;
            white[axis] += *weight;
        }
    }
    Weights { bands, white: Xyz { x: white[0], y: white[1], z: white[2] } }
}

/// Rows of the embedded table: wavelength, the observer's three functions, then the lights.
fn rows() -> impl Iterator<Item = Vec<f64>> {
    include_str!("cie.csv")
        .lines()
        .filter(|line| line.starts_with(|c: char| c.is_ascii_digit()))
        .map(|line| line.split(',').map(|field| field.parse().expect("cie.csv holds numbers")).collect())
}

/// Shares of the bands in the value at `nm`: cubic through the four nearest bands, quadratic in the first and last gap.
fn lagrange(nm: f64) -> Vec<(usize, f64)> {
    let place = (nm - 400.0) / 10.0;
    if place <= 0.0 {
        return vec![(0, 1.0)];
    }
    if place >= (BANDS - 1) as f64 {
        return vec![(BANDS - 1, 1.0)];
    }
    let below = place as usize;
    let nodes: Vec<usize> = (below.saturating_sub(1)..=(below + 2).min(BANDS - 1)).collect();
    nodes
        .iter()
        .map(|&node| {
            let share = nodes
                .iter()
                .filter(|&&other| other != node)
                .map(|&other| (place - other as f64) / (node as f64 - other as f64))
                .product();
            (node, share)
        })
        .collect()
}
