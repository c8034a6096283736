//! What a change of light does to one surface, and to a match between two.
//!
//! Entry points: [`metamerism`] of two surfaces, [`inconstancy`] of one.

use super::{Lab, Light, Spectrum, Xyz, difference};

/// The special metamerism index for a change of illuminant (CIE 15:2018), in ΔE00: how far two surfaces that match under `reference`
/// part under `test`.
///
/// Two surfaces that do not quite match under the reference light are first made to, by scaling the XYZ of `other` under both lights
/// with the ratios that would make them equal under the reference (multiplicative correction): what is left under the test light is
/// the work of the spectra alone. It is not symmetrical in the two surfaces, but nearly so.
///
/// ```
/// use healedhue::colour::{metamerism, Light};
/// // The same spectrum at another level matches everywhere.
/// assert!(metamerism(&[0.4; 31], &[0.2; 31], Light::D65, Light::Fl2) < 1e-9);
/// ```
pub fn metamerism(one: &Spectrum, other: &Spectrum, reference: Light, test: Light) -> f64 {
    let (one_before, before) = (reference.xyz_of(one), reference.xyz_of(other));
    let after = test.xyz_of(other);
    let corrected = Xyz {
        x: after.x * ratio(one_before.x, before.x),
        y: after.y * ratio(one_before.y, before.y),
        z: after.z * ratio(one_before.z, before.z),
    };
    difference(test.lab_of(one), Lab::from_xyz(corrected, test.white()))
}

/// A surface that reflects nothing at all cannot be corrected.
fn ratio(one: f64, other: f64) -> f64 {
    if other > 0.0 { one / other } else { 1.0 }
}

/// How much a surface changes its look from `reference` to `test` to an eye that gets used to each, in ΔE00: the difference between its
/// colour under the reference and the colour that corresponds to the one under the test light ([`Light::corresponding`]).
pub fn inconstancy(surface: &Spectrum, reference: Light, test: Light) -> f64 {
    difference(reference.lab_of(surface), test.corresponding(surface, reference))
}
