//! Skin from a measured spectrum, or from one measured colour: least squares on the six physical numbers.
//!
//! Entry points: [`fit_spectrum`] and [`fit_lab`]. Both minimise, by Levenberg and Marquardt, the squared misfit plus the
//! squared distance from a [`Prior`], each in units of its standard deviation: the most probable skin. A spectrum decides
//! nearly everything. A colour decides three combinations of the numbers and the prior the rest, so that the answer is the skin
//! nearest to the prior that has that colour.

use super::prior::{NUMBERS, Prior};
use super::{Canvas, Site, Skin};
use crate::colour::{BANDS, Lab, Light, Spectrum, difference};
use levenberg_marquardt::{LeastSquaresProblem, LevenbergMarquardt};
use nalgebra::storage::Owned;
use nalgebra::{Const, SMatrix, SVector};

/// A skin that was fitted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fit {
    /// The most probable skin.
    pub skin: Skin,
    /// The colour that was measured, under D65.
    pub lab_measured: Lab,
    /// The colour of the fitted skin, under D65.
    pub lab_fitted: Lab,
    /// ΔE00 between the two.
    pub delta_e_2000: f64,
}

/// ΔE00 beyond which a measured spectrum is no skin's: the worst of the forearms of 50 people (NIST reference data set, 2017) is 0.74
/// away from its fit, and instruments differ by no more than another 1.
const NO_SKIN: f64 = 2.0;

impl Fit {
    /// Whether no skin of the model looks like what was measured.
    pub fn is_no_skin(&self) -> bool {
        self.delta_e_2000 > NO_SKIN
    }
}

/// Standard deviation of a reflectance around the model, as a share of its square root (representative: measured spectra of forearms
/// differ from the best fit by about 0.003).
const REFLECTANCE_SPREAD: f64 = 0.004;
/// Standard deviation of L*, a* and b* around the model, so that the colour counts beside the spectrum.
const LAB_SPREAD: f64 = 0.15;
/// Standard deviation of L*, a* and b* where they are all that is known: the colour is met.
const EXACT_LAB_SPREAD: f64 = 0.01;

/// Rows of misfit: bands, L*a*b*, and the distance from the prior.
const ROWS: usize = BANDS + 3 + NUMBERS;

/// The skin that a reflectance spectrum (0 to 1 per band, surface reflection included) was most probably measured on.
///
/// The melanin, blood, oxygenation, scattering and background it finds are those of the model's layers, an estimate of the
/// person's, and lie within the bounds they are declared with. What is no skin is fitted badly: [`Fit::is_no_skin`].
pub fn fit_spectrum(reflectance: &Spectrum, site: Site, prior: &Prior) -> Fit {
    let lab = Light::D65.lab_of(reflectance);
    let weight = reflectance.map(|r| 1.0 / (REFLECTANCE_SPREAD * libm::sqrt(r.max(1e-4))));
    Misfit { measured: *reflectance, weight, lab, lab_spread: LAB_SPREAD, site, prior, at: SVector::zeros() }
        .solve()
}

/// The skin nearest to the prior that has this colour under D65, surface reflection included. An estimate: many skins have one
/// colour.
pub fn fit_lab(lab: Lab, site: Site, prior: &Prior) -> Fit {
    let unknown = [0.0; BANDS];
    Misfit {
        measured: unknown,
        weight: unknown,
        lab,
        lab_spread: EXACT_LAB_SPREAD,
        site,
        prior,
        at: SVector::zeros(),
    }
    .solve()
}

/// The least-squares problem.
struct Misfit<'p> {
    measured: Spectrum,
    /// One over the standard deviation of each band; 0 where it is not known.
    weight: Spectrum,
    lab: Lab,
    lab_spread: f64,
    site: Site,
    prior: &'p Prior,
    /// Standard deviations from the prior's centre.
    at: SVector<f64, NUMBERS>,
}

impl Misfit<'_> {
    fn skin(&self, at: &SVector<f64, NUMBERS>) -> Skin {
        self.prior.skin_at(&(*at).into())
    }

    fn bare(&self, skin: &Skin) -> Spectrum {
        Canvas::<4>::new(skin, self.site).bare
    }

    fn rows(&self, at: &SVector<f64, NUMBERS>) -> SVector<f64, ROWS> {
        let bare = self.bare(&self.skin(at));
        let lab = Light::D65.lab_of(&bare);
        let mut rows = SVector::<f64, ROWS>::zeros();
        for band in 0..BANDS {
            rows[band] = (bare[band] - self.measured[band]) * self.weight[band];
        }
        let apart = [lab.l - self.lab.l, lab.a - self.lab.a, lab.b - self.lab.b];
        for (axis, apart) in apart.into_iter().enumerate() {
            rows[BANDS + axis] = apart / self.lab_spread;
        }
        for number in 0..NUMBERS {
            rows[BANDS + 3 + number] = at[number];
        }
        rows
    }

    fn solve(self) -> Fit {
        let (solved, _) = LevenbergMarquardt::new().minimize(self);
        let skin = solved.skin(&solved.at).within_bounds();
        let lab_fitted = Light::D65.lab_of(&solved.bare(&skin));
        Fit { skin, lab_measured: solved.lab, lab_fitted, delta_e_2000: difference(solved.lab, lab_fitted) }
    }
}

/// Step of the numerical derivative, in standard deviations: its error and that of rounding are both below 1e-6.
const STEP: f64 = 1e-4;

/// Deviations beyond which a step is not followed: nobody is ten standard deviations from everybody else.
const FARTHEST: f64 = 10.0;

impl LeastSquaresProblem<f64, Const<ROWS>, Const<NUMBERS>> for Misfit<'_> {
    type ParameterStorage = Owned<f64, Const<NUMBERS>>;
    type ResidualStorage = Owned<f64, Const<ROWS>>;
    type JacobianStorage = Owned<f64, Const<ROWS>, Const<NUMBERS>>;

    fn set_params(&mut self, at: &SVector<f64, NUMBERS>) {
        // Nor does a number leave the bounds it is declared with.
        let limits = self.prior.limits();
        self.at = SVector::from_fn(|number, _| {
            let (least, most) = limits[number];
            at[number].clamp(least.max(-FARTHEST), most.min(FARTHEST))
        });
    }

    fn params(&self) -> SVector<f64, NUMBERS> {
        self.at
    }

    fn residuals(&self) -> Option<SVector<f64, ROWS>> {
        Some(self.rows(&self.at))
    }

    fn jacobian(&self) -> Option<SMatrix<f64, ROWS, NUMBERS>> {
        let mut jacobian = SMatrix::<f64, ROWS, NUMBERS>::zeros();
        for number in 0..NUMBERS {
            let (mut up, mut down) = (self.at, self.at);
            up[number] += STEP;
            down[number] -= STEP;
            let slope = (self.rows(&up) - self.rows(&down)) / (2.0 * STEP);
            jacobian.set_column(number, &slope);
        }
        Some(jacobian)
    }
}
