//! What time does: the epidermis sheds its colour, redness goes, colourants fade and wander.

use crate::pigment::Colourant;
use crate::skin::Skin;

/// Months until the skin has healed: six weeks (common practice, no source).
pub const HEALED_MONTHS: f64 = 1.5;

/// Share of the placed colour that sits in the epidermis on the day (representative).
pub(super) const EPIDERMAL_SHARE: f64 = 0.6;

/// How much blood a fresh wound adds, as a share of the blood that is there (representative).
const FRESH_BLOOD: f64 = 1.5;

/// Months in which a drifting colourant covers 63% of its way (representative).
const DRIFT_MONTHS: f64 = 24.0;

/// How unhealed the skin is: 1 on the day, 0 from [`HEALED_MONTHS`] on.
pub(super) fn unhealed(months: f64) -> f64 {
    let left = (1.0 - months / HEALED_MONTHS).max(0.0);
    left * left
}

/// The skin while it heals: the redder, the more [`unhealed`] it is.
pub(super) fn healing_skin(skin: &Skin, unhealed: f64) -> Skin {
    Skin { blood: skin.blood * (1.0 + FRESH_BLOOD * unhealed), ..*skin }
}

/// Share of a colourant that is left after this many months of everyday wear; see [`super::Wear::retention`].
pub fn retention(colourant: &Colourant, months: f64) -> f64 {
    libm::exp2(-months / colourant.half_life_months)
}

/// How far below its first place a colourant has spread, in mm.
pub(super) fn drift_mm(colourant: &Colourant, months: f64) -> f64 {
    -colourant.drift_mm * libm::expm1(-months / DRIFT_MONTHS)
}
