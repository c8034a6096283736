//! Skin that measures a given individual typology angle.

use super::{Canvas, MELANIN, Phototype, Redness, Site, Skin, Undertone, ita_degrees};
use crate::colour::Light;
use crate::quantity::{OutOfRange, Quantity};

/// Halvings of the melanin range: more than 52 bits of it.
const HALVINGS: usize = 60;

/// The skin of this undertone and redness whose bare ITA, under D65 and surface reflection included, is this many degrees.
/// Melanin is found by bisection; the rest is as [`Skin::from_evidence`] has it.
///
/// # Errors
/// [`OutOfRange`] where no amount of melanin gives the angle; it names the range that can be reached.
pub fn skin_of_ita(
    degrees: f64,
    undertone: Undertone,
    redness: Redness,
    site: Site,
) -> Result<Skin, OutOfRange> {
    let typical = site.skin_of(Skin::from_evidence(Phototype::I, undertone, redness));
    let with = |melanin: f64| Skin { melanin, ..typical };
    let angle = |melanin: f64| ita_degrees(Light::D65.lab_of(&Canvas::<4>::new(&with(melanin), site).bare));
    let (mut pale, mut dark) = (MELANIN.least, MELANIN.most);
    // Rounded inwards, so that the range named can be reached.
    let (least, most) = (angle(dark).ceil(), angle(pale).floor());
    Quantity::new("ita", "degrees, for this undertone and redness", least, most).check(degrees)?;
    for _ in 0..HALVINGS {
        let middle = 0.5 * (pale + dark);
        if angle(middle) > degrees { pale = middle } else { dark = middle }
    }
    Ok(with(0.5 * (pale + dark)))
}
