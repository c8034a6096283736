//! A bottle whose content was measured as it is, and how that content stands on the shelf.
//!
//! A [`Paint`] refers to colourants by place, so the content becomes colourants of the bottle's own: one, when nothing is known of
//! its composition, or one for each colourant that it holds, which together have exactly the measured optics.

use super::measure::Optics;
use super::{Basis, Colourant, ColourantClass, Paint, Restriction, Shelf};
use crate::colour::{BANDS, Spectrum};

/// What was measured of a bottle.
#[derive(Debug, Clone, PartialEq)]
pub struct Measured {
    /// Absorption and reduced scattering of the dried paint, per mm.
    pub optics: Optics,
    /// How much of it one full pass leaves, as a share of the volume that it colours: the paint's optics in skin are these times
    /// its own.
    pub dose: f64,
    /// Where the numbers come from.
    pub basis: Basis,
    /// Remark with the source.
    pub note: String,
    /// How it fades.
    pub fading: Fading,
}

/// How the content of a measured bottle fades.
#[derive(Debug, Clone, PartialEq)]
pub enum Fading {
    /// As a whole: paler with the years, but of one hue.
    Whole {
        /// Months after which half of what healed is left.
        half_life_months: f64,
        /// How far below its first place it spreads, in mm.
        drift_mm: f64,
        /// Rules that restrict something in it.
        restrictions: Vec<Restriction>,
    },
    /// Each of its colourants (by place on the shelf, with its amount) by its own half-life and drift. In every band the measured
    /// values are shared out among them in proportion to what the shelf's own optics say of each.
    Parts(Paint),
}

impl Shelf {
    /// Puts the content of a measured bottle on the shelf and gives the bottle's recipe.
    pub fn add_measured(&mut self, bottle: &str, name: &str, measured: &Measured) -> Paint {
        let first = self.colourants.len();
        match &measured.fading {
            Fading::Whole { half_life_months, drift_mm, restrictions } => {
                self.colourants.push(Colourant {
                    id: bottle.to_owned(),
                    ci_number: String::new(),
                    name: name.to_owned(),
                    class: ColourantClass::Mixture,
                    absorption: measured.optics.absorption,
                    scattering: measured.optics.scattering,
                    half_life_months: *half_life_months,
                    drift_mm: *drift_mm,
                    basis: measured.basis,
                    note: measured.note.clone(),
                    restrictions: restrictions.clone(),
                    of_bottle: Some(bottle.to_owned()),
                });
                vec![(first, measured.dose)]
            }
            Fading::Parts(parts) => {
                let whole: f64 = parts.iter().map(|(_, amount)| amount).sum();
                let shared: Vec<Colourant> = parts
                    .iter()
                    .map(|&(place, amount)| {
                        let own = &self.colourants[place];
                        let of = |all: &Spectrum, which: fn(&Colourant) -> &Spectrum| {
                            std::array::from_fn(|band| {
                                let value =
                                    |place: usize, amount: f64| amount * which(&self.colourants[place])[band];
                                let sum: f64 =
                                    parts.iter().map(|&(place, amount)| value(place, amount)).sum();
                                let share =
                                    if sum > 0.0 { value(place, amount) / sum } else { amount / whole };
                                all[band] * share * whole / amount
                            })
                        };
                        Colourant {
                            absorption: of(&measured.optics.absorption, |colourant| &colourant.absorption),
                            scattering: of(&measured.optics.scattering, |colourant| &colourant.scattering),
                            basis: measured.basis,
                            note: measured.note.clone(),
                            of_bottle: Some(bottle.to_owned()),
                            ..own.clone()
                        }
                    })
                    .collect();
                self.colourants.extend(shared);
                parts
                    .iter()
                    .enumerate()
                    .map(|(i, (_, amount))| (first + i, measured.dose * amount / whole))
                    .collect()
            }
        }
    }

    /// Absorption and reduced scattering per mm of paint, where one full pass of it lies.
    pub fn optics_of(&self, paint: &Paint) -> Optics {
        let mut optics = Optics { absorption: [0.0; BANDS], scattering: [0.0; BANDS] };
        for &(place, amount) in paint {
            let colourant = &self.colourants[place];
            for band in 0..BANDS {
                optics.absorption[band] += amount * colourant.absorption[band];
                optics.scattering[band] += amount * colourant.scattering[band];
            }
        }
        optics
    }
}
