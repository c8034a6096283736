//! Spectra in groups of lanes, the form in which bands are computed side by side.

use super::Lanes;
use crate::colour::{BANDS, Spectrum};

/// Bands computed side by side: what the vector registers of every processor hold, so that a layer's matrices of four directions mostly
/// stay in them.
pub const WIDTH: usize = 2;
/// Groups of bands; the last lane of the last one repeats 700 nm.
pub const GROUPS: usize = BANDS.div_ceil(WIDTH);

/// A spectrum in groups of lanes.
pub type Packed = [Lanes<WIDTH>; GROUPS];

/// Puts a spectrum into lanes.
pub fn pack(spectrum: &Spectrum) -> Packed {
    std::array::from_fn(|group| {
        Lanes(std::array::from_fn(|lane| spectrum[(group * WIDTH + lane).min(BANDS - 1)]))
    })
}

/// Takes a spectrum out of lanes.
pub fn unpack(packed: &Packed) -> Spectrum {
    std::array::from_fn(|band| packed[band / WIDTH].0[band % WIDTH])
}
