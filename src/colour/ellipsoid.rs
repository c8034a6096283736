//! A cloud of colours as an ellipsoid in CIELAB.
//!
//! Entry point: [`Ellipsoid::around`]. Steps: centre and covariance of the cloud, its principal axes, and the scale at which the
//! wanted share of the cloud lies inside.

use super::{Lab, Sense, Shift};
use serde::Serialize;

/// A symmetric 3×3 matrix, in the order L*, a*, b*.
type Symmetric = [[f64; 3]; 3];

/// The colours x with (x - centre)ᵀ·covariance⁻¹·(x - centre) at most scale².
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Ellipsoid {
    /// Mean L*, a*, b* of the cloud.
    pub centre: [f64; 3],
    /// Covariance of L*, a*, b* over the cloud.
    pub covariance: [[f64; 3]; 3],
    /// Standard deviations from the centre to the surface, in every direction.
    pub scale: f64,
    /// The three half axes, longest first.
    pub axes: [Axis; 3],
}

/// Half an axis of an ellipsoid.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Axis {
    /// From the centre to the surface, in units of CIELAB.
    pub half_length: f64,
    /// L*, a*, b* of a vector of length 1 along the axis; its greatest part is positive.
    pub direction: [f64; 3],
}

/// Variance along an axis, as a share of that along the longest, below which the cloud is flat there: rounding, not spread.
const FLAT: f64 = 1e-18;

/// Share of an axis' squared length from which on a coordinate is named as its direction.
const NAMED: f64 = 0.25;

impl Ellipsoid {
    /// The ellipsoid with the cloud's mean and covariance that holds at least this share of the cloud, 0 to 1, and not one colour
    /// more than that takes. A cloud without extent gives a point. The cloud holds at least one colour.
    pub fn around(cloud: &[Lab], share: f64) -> Self {
        let count = cloud.len() as f64;
        let triples: Vec<[f64; 3]> = cloud.iter().map(|lab| [lab.l, lab.a, lab.b]).collect();
        // Counted from one of the colours, so that a cloud without extent has exactly none.
        let from = triples[0];
        let mut mean = [0.0; 3];
        for colour in &triples {
            for i in 0..3 {
                mean[i] += (colour[i] - from[i]) / count;
            }
        }
        let centre = [from[0] + mean[0], from[1] + mean[1], from[2] + mean[2]];
        let mut covariance = [[0.0; 3]; 3];
        for colour in &triples {
            let d: [f64; 3] = std::array::from_fn(|i| colour[i] - from[i] - mean[i]);
            for i in 0..3 {
                for j in 0..3 {
                    covariance[i][j] += d[i] * d[j] / count;
                }
            }
        }
        let principal = principal_axes(covariance);
        let mut ellipsoid = Ellipsoid {
            centre,
            covariance,
            scale: 0.0,
            axes: principal.map(|(_, direction)| Axis { half_length: 0.0, direction }),
        };
        let mut distances: Vec<f64> =
            triples.iter().map(|&colour| distance(&principal, &centre, colour)).collect();
        distances.sort_by(f64::total_cmp);
        let inside = (libm::ceil(share * count) as usize).clamp(1, cloud.len());
        ellipsoid.scale = distances[inside - 1];
        for (axis, (variance, _)) in ellipsoid.axes.iter_mut().zip(&principal) {
            axis.half_length = ellipsoid.scale * libm::sqrt(variance.max(0.0));
        }
        ellipsoid
    }

    /// Whether a colour lies in it.
    pub fn holds(&self, lab: Lab) -> bool {
        let principal = principal_axes(self.covariance);
        // The cloud's outermost colour lies on the surface, whatever rounding says.
        distance(&principal, &self.centre, [lab.l, lab.a, lab.b]) <= self.scale * (1.0 + 1e-12)
    }

    /// The senses in which the colour is in doubt most, along the longest axis; empty where there is no doubt.
    pub fn main_senses(&self) -> Vec<Sense> {
        let [l, a, b] = self.axes[0].direction;
        if self.axes[0].half_length > 0.0 { Shift { l, a, b }.senses(libm::sqrt(NAMED)) } else { Vec::new() }
    }
}

/// Standard deviations from the centre to a colour.
fn distance(principal: &[(f64, [f64; 3]); 3], centre: &[f64; 3], colour: [f64; 3]) -> f64 {
    let flat = principal[0].0 * FLAT;
    let squares = principal.iter().filter(|(variance, _)| *variance > flat).map(|(variance, direction)| {
        let along: f64 = (0..3).map(|i| direction[i] * (colour[i] - centre[i])).sum();
        along * along / variance
    });
    libm::sqrt(squares.sum())
}

/// Variances and directions of the principal axes, greatest variance first, by Jacobi's rotations: only additions,
/// multiplications, divisions and square roots, so that every machine gives the same bits (a general eigenvalue routine calls the
/// platform's mathematics).
fn principal_axes(mut matrix: Symmetric) -> [(f64, [f64; 3]); 3] {
    /// Sweeps over all three pairs; convergence is quadratic, four or five do.
    const SWEEPS: usize = 12;
    let mut vectors = [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]];
    for _ in 0..SWEEPS {
        for (p, q) in [(0, 1), (0, 2), (1, 2)] {
            let beside = matrix[p][q];
            if beside == 0.0 {
                continue;
            }
            let theta = (matrix[q][q] - matrix[p][p]) / (2.0 * beside);
            let tangent =
                if theta < 0.0 { -1.0 } else { 1.0 } / (theta.abs() + libm::sqrt(theta * theta + 1.0));
            let cosine = 1.0 / libm::sqrt(tangent * tangent + 1.0);
            let sine = tangent * cosine;
            for row in &mut matrix {
                (row[p], row[q]) = (cosine * row[p] - sine * row[q], sine * row[p] + cosine * row[q]);
            }
            let (above, below) = (matrix[p], matrix[q]);
            for i in 0..3 {
                matrix[p][i] = cosine * above[i] - sine * below[i];
                matrix[q][i] = sine * above[i] + cosine * below[i];
            }
            for row in &mut vectors {
                (row[p], row[q]) = (cosine * row[p] - sine * row[q], sine * row[p] + cosine * row[q]);
            }
        }
    }
    let mut axes: [(f64, [f64; 3]); 3] =
        std::array::from_fn(|k| (matrix[k][k].max(0.0), [vectors[0][k], vectors[1][k], vectors[2][k]]));
    axes.sort_by(|one, other| other.0.total_cmp(&one.0));
    for (_, direction) in &mut axes {
        let greatest = direction.iter().fold(0.0_f64, |most, &x| if x.abs() > most.abs() { x } else { most });
        if greatest < 0.0 {
            *direction = direction.map(|x| -x);
        }
    }
    axes
}
