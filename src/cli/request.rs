//! The JSON that `healedhue foresee` takes: a client's skin, what lies in it, and what is to be placed.

use super::problem::Problem;
use crate::colour::{Lab, Light};
use crate::healing::{AMOUNT, HEALED_MONTHS, MONTHS, MOST_WORKS, Placement, Work};
use crate::pigment::{Mix, Paint, Shelf};
use crate::quantity::OutOfRange;
use crate::skin::{Phototype, Prior, Redness, Site, Skin, Undertone, fit_lab, skin_of_ita};
use serde::Deserialize;
use std::collections::BTreeMap;

/// A request, as written. Everything but `skin` has a default.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Request {
    skin: SkinWords,
    #[serde(default)]
    site: Site,
    #[serde(default)]
    light: Light,
    #[serde(default = "healed")]
    months: f64,
    #[serde(default)]
    mix: BTreeMap<String, u32>,
    #[serde(default)]
    placement: Placement,
    #[serde(default)]
    existing: Vec<Existing>,
}

fn healed() -> f64 {
    HEALED_MONTHS
}

/// Skin by evidence, by angle or by its numbers; numbers given override what the evidence says.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct SkinWords {
    phototype: Option<Phototype>,
    ita: Option<f64>,
    /// Measured L*, a*, b* under D65, surface reflection included.
    lab: Option<[f64; 3]>,
    /// Whether the place is a flat, pale scar.
    #[serde(default)]
    scar: bool,
    #[serde(default)]
    undertone: Undertone,
    #[serde(default)]
    redness: Redness,
    melanin: Option<f64>,
    blood: Option<f64>,
    oxygenation: Option<f64>,
    scattering: Option<f64>,
    background: Option<f64>,
    vessel_radius_mm: Option<f64>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Existing {
    mix: Option<BTreeMap<String, u32>>,
    colourants: Option<BTreeMap<String, f64>>,
    #[serde(default)]
    placement: Placement,
    #[serde(default)]
    months: f64,
}

/// A request with every name resolved and every number checked.
pub(super) struct Task {
    pub skin: Skin,
    pub site: Site,
    pub light: Light,
    pub months: f64,
    pub mix: Mix,
    pub paint: Paint,
    pub placement: Placement,
    pub existing: Vec<Work>,
}

impl Request {
    /// Checks the request against what is on the shelf.
    pub fn resolve(self, shelf: &Shelf) -> Result<Task, Problem> {
        let at = |field: &str| {
            let field = field.to_owned();
            move |breach: OutOfRange| Problem::Input(format!("{field}: {breach}"))
        };
        if self.existing.len() > MOST_WORKS {
            let count = self.existing.len();
            return Err(Problem::Input(format!(
                "existing: {count} works are more than the {MOST_WORKS} that can be solved"
            )));
        }
        let mix = mix_of(&self.mix, "mix", shelf)?;
        let existing = self
            .existing
            .iter()
            .enumerate()
            .map(|(i, old)| old.resolve(shelf, &format!("existing[{i}]")))
            .collect::<Result<_, _>>()?;
        Ok(Task {
            skin: self.skin.resolve(self.site)?,
            site: self.site,
            light: self.light,
            months: MONTHS.check(self.months).map_err(at("months"))?,
            paint: shelf.paint_of(&mix),
            mix,
            placement: self.placement.checked().map_err(at("placement"))?,
            existing,
        })
    }
}

impl SkinWords {
    fn resolve(&self, site: Site) -> Result<Skin, Problem> {
        let input = |breach: OutOfRange| Problem::Input(format!("skin: {breach}"));
        let evidence = |phototype| site.skin_of(Skin::from_evidence(phototype, self.undertone, self.redness));
        let typical = match (self.lab, self.phototype, self.ita, self.melanin) {
            (None, Some(_), Some(_), _) | (Some(_), _, Some(_), _) => {
                return Err(Problem::Input(
                    "skin: give `phototype`, `ita` or `lab`, not `ita` and another".to_owned(),
                ));
            }
            (Some(lab), phototype, None, _) => self.of_lab(lab, phototype, site)?,
            (None, Some(phototype), None, _) => evidence(phototype),
            (None, None, Some(degrees), _) => {
                skin_of_ita(degrees, self.undertone, self.redness, site).map_err(input)?
            }
            (None, None, None, Some(_)) => evidence(Phototype::III),
            (None, None, None, None) => {
                return Err(Problem::Input(
                    "skin: one of `phototype` (I to VI), `ita` (degrees), `lab` (L*, a*, b* measured) or `melanin` (a fraction) \
                     is needed"
                        .to_owned(),
                ));
            }
        };
        let typical = if self.scar { typical.scarred() } else { typical };
        Skin {
            melanin: self.melanin.unwrap_or(typical.melanin),
            blood: self.blood.unwrap_or(typical.blood),
            oxygenation: self.oxygenation.unwrap_or(typical.oxygenation),
            scattering: self.scattering.unwrap_or(typical.scattering),
            background: self.background.unwrap_or(typical.background),
            vessel_radius_mm: self.vessel_radius_mm.unwrap_or(typical.vessel_radius_mm),
        }
        .checked()
        .map_err(input)
    }
}

impl SkinWords {
    /// The skin nearest to what the words say that has this colour.
    fn of_lab(&self, [l, a, b]: [f64; 3], phototype: Option<Phototype>, site: Site) -> Result<Skin, Problem> {
        let prior = phototype.map_or_else(Prior::anybody, |phototype| {
            let mut prior = Prior::from_evidence(phototype, self.undertone, self.redness);
            prior.centre = site.skin_of(prior.centre);
            prior
        });
        let fit = fit_lab(Lab::new(l, a, b), site, &prior);
        if fit.delta_e_2000 <= MOST_LAB_MISS && fit.skin.checked().is_ok() {
            return Ok(fit.skin);
        }
        let near = fit.lab_fitted;
        Err(Problem::Input(format!(
            "skin: no likely skin has `lab` [{l}, {a}, {b}] (L*, a*, b* under D65); the nearest found is [{:.1}, {:.1}, {:.1}]",
            near.l, near.a, near.b
        )))
    }
}

/// ΔE00 by which a skin found from a colour may miss it: not visible.
const MOST_LAB_MISS: f64 = 0.5;

impl Existing {
    fn resolve(&self, shelf: &Shelf, field: &str) -> Result<Work, Problem> {
        let at = |breach: OutOfRange| Problem::Input(format!("{field}: {breach}"));
        let paint = match (&self.mix, &self.colourants) {
            (Some(mix), None) => shelf.paint_of(&mix_of(mix, &format!("{field}.mix"), shelf)?),
            (None, Some(colourants)) => paint_of(colourants, &format!("{field}.colourants"), shelf)?,
            _ => return Err(Problem::Input(format!("{field}: give either `mix` or `colourants`"))),
        };
        Ok(Work {
            paint,
            placement: self.placement.checked().map_err(at)?,
            months: MONTHS.check(self.months).map_err(at)?,
        })
    }
}

/// Most drops of one bottle.
const MOST_DROPS: u32 = 1000;

fn mix_of(drops: &BTreeMap<String, u32>, field: &str, shelf: &Shelf) -> Result<Mix, Problem> {
    for (bottle, &count) in drops {
        if shelf.bottle(bottle).is_none() {
            let known = shelf.bottles.iter().map(|bottle| bottle.id.as_str());
            return Err(unknown(field, "bottle", bottle, known));
        }
        if count > MOST_DROPS {
            return Err(Problem::Input(format!(
                "{field}.{bottle}: {count} drops are more than {MOST_DROPS}"
            )));
        }
    }
    Ok(Mix::new(drops.iter().map(|(bottle, count)| (bottle.clone(), *count))))
}

fn paint_of(amounts: &BTreeMap<String, f64>, field: &str, shelf: &Shelf) -> Result<Paint, Problem> {
    let mut paint = Paint::new();
    for (id, &amount) in amounts {
        let Some(place) = shelf.colourant_place(id) else {
            let known = shelf.colourants.iter().map(|colourant| colourant.id.as_str());
            return Err(unknown(field, "colourant", id, known));
        };
        AMOUNT.check(amount).map_err(|breach| Problem::Input(format!("{field}.{id}: {breach}")))?;
        paint.push((place, amount));
    }
    paint.sort_by_key(|(place, _)| *place);
    Ok(paint)
}

fn unknown<'k>(field: &str, kind: &str, id: &str, known: impl Iterator<Item = &'k str>) -> Problem {
    let known: Vec<&str> = known.collect();
    let nearest = known
        .iter()
        .map(|name| (strsim::jaro_winkler(&name.to_lowercase(), &id.to_lowercase()), name))
        .max_by(|one, other| one.0.total_cmp(&other.0))
        .filter(|(likeness, _)| *likeness > 0.75);
    let hint = nearest.map_or_else(String::new, |(_, name)| format!(" Did you mean `{name}`?"));
    Problem::Input(format!("{field}: there is no {kind} `{id}`.{hint} There are: {}", known.join(", ")))
}
