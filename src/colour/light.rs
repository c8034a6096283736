//! Lights (CIE standard illuminants) and the standard observer: from reflectance to XYZ.
//!
//! Tables are in `cie.csv`, with their source. A spectrum in 31 bands is interpolated to the steps of the sums by cubic Lagrange
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
    /// CIE illuminant FL2 (CIE 15:2018): a cool white fluorescent lamp of about 4200 K.
    #[serde(rename = "FL2")]
    Fl2,
}

/// Weights of each band for X, Y, Z, and the white they sum to.
struct Weights {
    bands: [[f64; 3]; BANDS],
    white: Xyz,
}

impl Light {
    /// Every light with its name in files.
    pub const ALL: [(Light, &'static str); 4] =
        [(Light::D65, "D65"), (Light::A, "A"), (Light::LedB3, "LED-B3"), (Light::Fl2, "FL2")];

    /// Name in files and on screens.
    pub fn name(self) -> &'static str {
        Light::ALL[self as usize].1
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
        static WEIGHTS: LazyLock<[Weights; 4]> = LazyLock::new(|| {
            [(4, Step::Table), (5, Step::Table), (6, Step::Nanometre), (7, Step::Nanometre)]
                .map(|(column, step)| weights_of(column, step))
        });
        &WEIGHTS[self as usize]
    }
}

/// Steps in which a light is summed up.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Step {
    /// The 5 nm of the tables: enough for the smooth D65 and A.
    Table,
    /// 1 nm, as CIE 15 defines the sums: lamps with narrow bands and lines need it. The observer is interpolated cubically, the light
    /// linearly.
    Nanometre,
}

/// Weights for the light in this column of `cie.csv`.
fn weights_of(column: usize, step: Step) -> Weights {
    let rows: Vec<Vec<f64>> = rows().collect();
    let mut bands = [[0.0; 3]; BANDS];
    let mut luminance = 0.0;
    let mut add = |nm: f64, power: f64, observer: [f64; 3]| {
        luminance += power * observer[1];
        for (band, share) in lagrange((nm - 400.0) / 10.0, BANDS) {
            for axis in 0..3 {
                bands[band][axis] += share * power * observer[axis];
            }
        }
    };
    match step {
        Step::Table => rows.iter().for_each(|row| add(row[0], row[column], [row[1], row[2], row[3]])),
        Step::Nanometre => {
            let (first, last) = (rows[0][0] as u32, rows[rows.len() - 1][0] as u32);
            for nm in first..=last {
                let place = f64::from(nm - first) / 5.0;
                let (below, above) = (place as usize, (place as usize + 1).min(rows.len() - 1));
                let power = rows[below][column]
                    + (rows[above][column] - rows[below][column]) * (place - below as f64);
                let shares = lagrange(place, rows.len());
                let observer =
                    [1, 2, 3].map(|axis| shares.iter().map(|(row, share)| share * rows[*row][axis]).sum());
                add(f64::from(nm), power, observer);
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

/// Shares of `count` values, one step apart, in the value at `place`: cubic through the four nearest, quadratic in the first and last
/// gap, constant beyond.
fn lagrange(place: f64, count: usize) -> Vec<(usize, f64)> {
    if place <= 0.0 {
        return vec![(0, 1.0)];
    }
    if place >= (count - 1) as f64 {
        return vec![(count - 1, 1.0)];
    }
    let below = place as usize;
    let nodes: Vec<usize> = (below.saturating_sub(1)..=(below + 2).min(count - 1)).collect();
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
