//! Arbitrary stacks of layers in air, for research and for checks against other programs.

use super::{Base, Cover, Lanes, Nodes, Scatter, Slab};
use crate::quantity::{OutOfRange, Quantity};
use serde::{Deserialize, Serialize};
use thiserror::Error;

/// Bounds of [`Stack::refractive_index`].
pub const INDEX: Quantity = Quantity::new("refractive_index", "", 1.0, 3.0);
/// Bounds of [`Layer::absorption_per_mm`].
pub const ABSORPTION: Quantity = Quantity::new("absorption_per_mm", "per mm", 0.0, 1e5);
/// Bounds of [`Layer::scattering_per_mm`].
pub const SCATTERING: Quantity = Quantity::new("scattering_per_mm", "per mm", 0.0, 1e5);
/// Bounds of [`Layer::anisotropy`].
pub const ANISOTROPY: Quantity = Quantity::new("anisotropy", "", -0.99, 0.99);
/// Bounds of [`Layer::thickness_mm`].
pub const THICKNESS: Quantity = Quantity::new("thickness_mm", "mm", 0.0, 1e4);
/// All of these.
pub const BOUNDS: [Quantity; 5] = [INDEX, ABSORPTION, SCATTERING, ANISOTROPY, THICKNESS];
/// Numbers of angles that can be asked for.
pub const ANGLES: [usize; 8] = [4, 8, 12, 16, 20, 24, 28, 32];

/// One homogeneous layer.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Layer {
    /// Absorption coefficient, per mm.
    pub absorption_per_mm: f64,
    /// Scattering coefficient μs, per mm.
    pub scattering_per_mm: f64,
    /// Anisotropy g of Henyey-Greenstein scattering.
    pub anisotropy: f64,
    /// Thickness, in mm.
    pub thickness_mm: f64,
}

/// Layers of one refractive index, the top one first, with air above and below.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Stack {
    /// Refractive index of every layer.
    pub refractive_index: f64,
    /// Layers, the top one first.
    pub layers: Vec<Layer>,
}

/// What a stack does to collimated light at normal incidence.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Measured {
    /// Total reflectance, surface reflection included.
    pub reflectance_normal_incidence: f64,
    /// Total transmittance.
    pub transmittance_normal_incidence: f64,
}

/// Why a stack cannot be measured.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum StackError {
    /// A number of the stack lies outside its bounds.
    #[error("{0}")]
    Stack(OutOfRange),
    /// A number of a layer lies outside its bounds; the first layer is 1.
    #[error("layer {layer}: {problem}")]
    Layer {
        /// Number of the layer, from 1 at the top.
        layer: usize,
        /// The breach.
        problem: OutOfRange,
    },
    /// No layers.
    #[error("`layers` is empty: a stack needs at least one layer")]
    Empty,
    /// A number of angles that is not offered.
    #[error("{0} angles are not offered: choose one of 4, 8, 12, 16, 20, 24, 28, 32")]
    Angles(usize),
}

/// Reflectance and transmittance of a stack, computed with this many angles.
///
/// # Errors
/// [`StackError`] when a number lies outside its bounds, there is no layer, or `angles` is not in [`ANGLES`].
///
/// ```
/// use healedhue::optics::{stack, Layer, Stack};
/// // van de Hulst (1980): albedo 0.9, g = 0.75, optical depth 2, no index step.
/// let layer = Layer { absorption_per_mm: 0.1, scattering_per_mm: 0.9, anisotropy: 0.75, thickness_mm: 2.0 };
/// let seen = stack::measure(&Stack { refractive_index: 1.0, layers: vec![layer] }, 24).unwrap();
/// assert!((seen.reflectance_normal_incidence - 0.09739).abs() < 1e-4);
/// ```
pub fn measure(stack: &Stack, angles: usize) -> Result<Measured, StackError> {
    INDEX.check(stack.refractive_index).map_err(StackError::Stack)?;
    if stack.layers.is_empty() {
        return Err(StackError::Empty);
    }
    for (i, layer) in stack.layers.iter().enumerate() {
        for (quantity, value) in [
            (ABSORPTION, layer.absorption_per_mm),
            (SCATTERING, layer.scattering_per_mm),
            (ANISOTROPY, layer.anisotropy),
            (THICKNESS, layer.thickness_mm),
        ] {
            quantity.check(value).map_err(|problem| StackError::Layer { layer: i + 1, problem })?;
        }
    }
    match angles {
        4 => Ok(solve::<4>(stack)),
        8 => Ok(solve::<8>(stack)),
        12 => Ok(solve::<12>(stack)),
        16 => Ok(solve::<16>(stack)),
        20 => Ok(solve::<20>(stack)),
        24 => Ok(solve::<24>(stack)),
        28 => Ok(solve::<28>(stack)),
        32 => Ok(solve::<32>(stack)),
        other => Err(StackError::Angles(other)),
    }
}

fn solve<const N: usize>(stack: &Stack) -> Measured {
    let nodes = Nodes::<N>::new(stack.refractive_index);
    let mut cover = Cover::<N, 1>::surface(&nodes);
    for layer in &stack.layers {
        let scatter = Scatter::new(&nodes, layer.anisotropy);
        let slab = Slab::new(
            &scatter,
            Lanes([layer.absorption_per_mm * layer.thickness_mm]),
            Lanes([layer.scattering_per_mm * layer.thickness_mm]),
        );
        cover = cover.with(&slab);
    }
    Measured {
        reflectance_normal_incidence: cover.reflectance(&Base::surface(&nodes)).0[0],
        transmittance_normal_incidence: cover.transmittance(&nodes).0[0],
    }
}
