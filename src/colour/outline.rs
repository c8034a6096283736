//! Regions of CIELAB as closed lines in its planes a*b* and L*C*, for drawing.
//!
//! Entry points: [`Outline::at_distance`] for all colours within a ΔE00 of one colour, [`Outline::of_shadow`] for an [`Ellipsoid`].

use super::{Ellipsoid, Lab, difference};
use serde::Serialize;

/// Points of a line in each plane. The last one joins the first.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Outline {
    /// Points (a*, b*).
    pub ab: Vec<[f64; 2]>,
    /// Points (C*, L*). Chroma is never negative: where a region holds neutral colours, its line runs along C* = 0.
    pub cl: Vec<[f64; 2]>,
}

/// Points of a line.
const POINTS: usize = 72;
/// Points around and from pole to pole on an ellipsoid whose image in the plane L*C* is looked for.
const MERIDIANS: usize = 48;
const PARALLELS: usize = 25;

impl Outline {
    /// Where ΔE00 from `centre` is `distance`, above 0: in the plane a*b* among colours of its lightness, in the plane L*C* among
    /// colours of its hue.
    pub fn at_distance(centre: Lab, distance: f64) -> Self {
        let chroma = centre.chroma();
        let (cosine, sine) = if chroma > 0.0 { (centre.a / chroma, centre.b / chroma) } else { (1.0, 0.0) };
        let within_a_b = |x: f64, y: f64| Lab::new(centre.l, centre.a + x, centre.b + y);
        // Beyond neutral lies the opposite hue, which this plane shows at C* = 0.
        let within_c_l = |x: f64, y: f64| Lab::new(centre.l + y, (chroma + x) * cosine, (chroma + x) * sine);
        let line = |see: &dyn Fn(f64, f64) -> Lab| -> Vec<[f64; 2]> {
            directions()
                .map(|(x, y)| {
                    let away = reach(|t| difference(see(t * x, t * y), centre), distance);
                    [away * x, away * y]
                })
                .collect()
        };
        Outline {
            ab: line(&within_a_b).into_iter().map(|[x, y]| [centre.a + x, centre.b + y]).collect(),
            cl: line(&within_c_l).into_iter().map(|[x, y]| [(chroma + x).max(0.0), centre.l + y]).collect(),
        }
    }

    /// The shadow an ellipsoid throws on each plane: the least region that holds the a* and b*, or the L* and C*, of every colour in
    /// it. In the plane L*C* it is the convex hull of points on the surface.
    pub fn of_shadow(ellipsoid: &Ellipsoid) -> Self {
        let [_, a, b] = ellipsoid.centre;
        let axes = ellipsoid.axes.map(|axis| axis.direction.map(|part| part * axis.half_length));
        // The farthest point of Σ uᵢ·axisᵢ, |u| ≤ 1, in a direction d has uᵢ proportional to axisᵢ·d.
        let ab = directions()
            .map(|(x, y)| {
                let along = axes.map(|axis| axis[1] * x + axis[2] * y);
                let length = libm::sqrt(along.iter().map(|part| part * part).sum());
                let sum = |place: usize| -> f64 {
                    if length > 0.0 { (0..3).map(|i| axes[i][place] * along[i] / length).sum() } else { 0.0 }
                };
                [a + sum(1), b + sum(2)]
            })
            .collect();
        Outline { ab, cl: hull(surface(ellipsoid.centre, axes)) }
    }
}

/// Directions around, the first along the first axis.
fn directions() -> impl Iterator<Item = (f64, f64)> {
    (0..POINTS).map(|i| {
        let angle = core::f64::consts::TAU * i as f64 / POINTS as f64;
        (libm::cos(angle), libm::sin(angle))
    })
}

/// The first distance at which `error`, which is 0 at 0, reaches `wanted`.
fn reach(error: impl Fn(f64) -> f64, wanted: f64) -> f64 {
    /// Farther than this no colour of a surface lies.
    const FAR: f64 = 300.0;
    /// Halvings: to less than a millionth.
    const HALVINGS: usize = 30;
    let (mut near, mut far) = (0.0, 0.5 * wanted);
    while error(far) < wanted && far < FAR {
        near = far;
        far += 0.5 * wanted;
    }
    for _ in 0..HALVINGS {
        let middle = 0.5 * (near + far);
        if error(middle) < wanted {
            near = middle;
        } else {
            far = middle;
        }
    }
    0.5 * (near + far)
}

/// Points (C*, L*) of colours all over an ellipsoid's surface.
fn surface([l, a, b]: [f64; 3], axes: [[f64; 3]; 3]) -> Vec<[f64; 2]> {
    let mut points = Vec::with_capacity(MERIDIANS * PARALLELS);
    for parallel in 0..PARALLELS {
        let latitude = core::f64::consts::PI * parallel as f64 / (PARALLELS - 1) as f64;
        for meridian in 0..MERIDIANS {
            let longitude = core::f64::consts::TAU * meridian as f64 / MERIDIANS as f64;
            let u = [
                libm::cos(latitude),
                libm::sin(latitude) * libm::cos(longitude),
                libm::sin(latitude) * libm::sin(longitude),
            ];
            let at = |from: f64, place: usize| from + (0..3).map(|i| axes[i][place] * u[i]).sum::<f64>();
            points.push([Lab::new(0.0, at(a, 1), at(b, 2)).chroma(), at(l, 0)]);
        }
    }
    points
}

/// The convex hull by Andrew's monotone chain, counter-clockwise; of a single point, that point.
fn hull(mut points: Vec<[f64; 2]>) -> Vec<[f64; 2]> {
    points.sort_by(|one, other| one[0].total_cmp(&other[0]).then(one[1].total_cmp(&other[1])));
    points.dedup();
    if points.len() < 3 {
        return points;
    }
    let turn =
        |o: [f64; 2], p: [f64; 2], q: [f64; 2]| (p[0] - o[0]) * (q[1] - o[1]) - (p[1] - o[1]) * (q[0] - o[0]);
    let half = |points: &mut dyn Iterator<Item = [f64; 2]>| {
        let mut chain: Vec<[f64; 2]> = Vec::new();
        for point in points {
            while chain.len() >= 2 && turn(chain[chain.len() - 2], chain[chain.len() - 1], point) <= 0.0 {
                chain.pop();
            }
            chain.push(point);
        }
        chain.pop();
        chain
    };
    let mut line = half(&mut points.iter().copied());
    line.extend(half(&mut points.iter().rev().copied()));
    line
}
