//! The CIEDE2000 colour difference (ISO/CIE 11664-6), k_L = k_C = k_H = 1.

use super::Lab;
use palette::color_difference::Ciede2000;
use palette::white_point::D65;

/// ΔE00 between two colours; about 1 is just visible side by side.
///
/// ```
/// use healedhue::colour::{difference, Lab};
/// // The first pair of Sharma, Wu and Dalal (2005).
/// let de = difference(Lab::new(50.0, 2.6772, -79.7751), Lab::new(50.0, 0.0, -82.7485));
/// assert!((de - 2.0425).abs() < 1e-4);
/// ```
pub fn difference(one: Lab, other: Lab) -> f64 {
    // The white point is only a type tag here: the formula works on coordinates.
    let tag = |lab: Lab| palette::Lab::<D65, f64>::new(lab.l, lab.a, lab.b);
    tag(one).difference(tag(other))
}
