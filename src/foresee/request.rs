//! The request: a client's skin, what lies in it, and what is to be placed.

use super::{RequestError, SearchRequest, SkinRequest, Task};
use crate::colour::Light;
use crate::healing::{
    AMOUNT, Aftercare, COVERAGE, DEFAULT_WORLDS, DEPTH, HEALED_MONTHS, LOAD, MONTHS, MOST_WORKS,
    OUTCOME_WORLDS, Oil, Placement, Sun, THICKNESS, TouchUp, Upkeep, Wear, Work,
};
use crate::json;
use crate::pigment::{Mix, Paint, Shelf};
use crate::quantity::Quantity;
use crate::search::{BOTTLES, DROPS, Search, TOLERANCE};
use crate::skin::{BACKGROUND, BLOOD, MELANIN, OXYGENATION, SCATTERING, Site, VESSEL_RADIUS};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// A request, as written. Everything but `skin` has a default.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Request {
    /// The client's skin.
    pub skin: SkinRequest,
    /// Where the work goes.
    #[serde(default)]
    pub site: Site,
    /// The light it is judged under.
    #[serde(default)]
    pub light: Light,
    /// Months after the placement; healed by default.
    #[serde(default = "healed")]
    pub months: f64,
    /// Whole drops by bottle.
    #[serde(default)]
    pub mix: BTreeMap<String, u32>,
    /// Where the mix lies.
    #[serde(default)]
    pub placement: Placement,
    /// What lies there already.
    #[serde(default)]
    pub existing: Vec<Existing>,
    /// Worlds from which the likely outcome is told; 0 tells none and saves their time.
    #[serde(default = "default_worlds")]
    pub worlds: u32,
    /// A goal to search mixes for. Where there is no `mix`, the best one found is foreseen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub search: Option<SearchRequest>,
    /// How much sun the work gets.
    #[serde(default)]
    pub sun: Sun,
    /// How oily the skin is.
    #[serde(default)]
    pub oil: Oil,
    /// How the work is looked after while it heals.
    #[serde(default)]
    pub aftercare: Aftercare,
    /// Placements that follow the first.
    #[serde(default)]
    pub touch_ups: Vec<TouchUpRequest>,
}

/// Reads what is asked from JSON, with the field that is wrong.
pub(super) fn from_json<T: serde::de::DeserializeOwned>(text: &str) -> Result<T, RequestError> {
    json::read(text, &BOUNDS)
        .map_err(|wrong| RequestError::new(wrong.field().unwrap_or_else(|| "request".to_owned()), wrong.why))
}

/// Bounds of the numbers in a request.
const BOUNDS: [Quantity; 15] = [
    DEPTH,
    THICKNESS,
    LOAD,
    COVERAGE,
    MONTHS,
    MELANIN,
    BLOOD,
    OXYGENATION,
    SCATTERING,
    BACKGROUND,
    VESSEL_RADIUS,
    OUTCOME_WORLDS,
    DROPS,
    BOTTLES,
    TOLERANCE,
];

fn default_worlds() -> u32 {
    DEFAULT_WORLDS
}

fn healed() -> f64 {
    HEALED_MONTHS
}

/// Existing work, as written: a mix or amounts of colourants.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Existing {
    /// Whole drops by bottle.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mix: Option<BTreeMap<String, u32>>,
    /// Amounts by colourant.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub colourants: Option<BTreeMap<String, f64>>,
    /// Where it lies.
    #[serde(default)]
    pub placement: Placement,
    /// How old it is.
    #[serde(default)]
    pub months: f64,
}

/// A touch-up, as written: without a mix it repeats the first one, without a placement it goes to the same place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TouchUpRequest {
    /// Months after the first placement.
    pub months: f64,
    /// Whole drops by bottle.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mix: Option<BTreeMap<String, u32>>,
    /// Where it lies.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub placement: Option<Placement>,
}

impl Request {
    /// Reads a request from JSON.
    ///
    /// # Errors
    /// [`RequestError`] names the field that is unknown, missing or of the wrong kind, with the words that would be right.
    pub fn from_json(text: &str) -> Result<Self, RequestError> {
        from_json(text)
    }

    /// Checks the request against what is on the shelf.
    ///
    /// # Errors
    /// [`RequestError`] names the first field that holds an unknown name, a number outside its bounds or too many works.
    pub fn resolve(&self, shelf: &Shelf) -> Result<Task, RequestError> {
        self.resolve_after(None, shelf)
    }

    /// The same after another search on this shelf, whose list of mixes is kept where it can be.
    ///
    /// # Errors
    /// As [`Request::resolve`].
    pub fn resolve_after(&self, before: Option<&Search>, shelf: &Shelf) -> Result<Task, RequestError> {
        let (works, touch_ups) = (self.existing.len(), self.touch_ups.len());
        if works > MOST_WORKS {
            let why = format!("{works} works are more than the {MOST_WORKS} that can be solved");
            return Err(RequestError::new("existing", why));
        }
        if works + touch_ups > MOST_WORKS {
            let why = format!(
                "{touch_ups} touch-ups and {works} existing works are more than the {MOST_WORKS} that can be solved"
            );
            return Err(RequestError::new("touch_ups", why));
        }
        let mix = mix_of(&self.mix, "mix", shelf)?;
        let existing = self
            .existing
            .iter()
            .enumerate()
            .map(|(i, old)| old.resolve(shelf, &format!("existing[{i}]")))
            .collect::<Result<_, _>>()?;
        if self.worlds > 0 {
            OUTCOME_WORLDS.check(f64::from(self.worlds)).map_err(RequestError::breach("worlds"))?;
        }
        let paint = shelf.paint_of(&mix);
        let placement = self.placement.checked().map_err(RequestError::breach("placement"))?;
        let touch_ups = self
            .touch_ups
            .iter()
            .enumerate()
            .map(|(i, touch_up)| touch_up.resolve(shelf, &format!("touch_ups[{i}]"), &paint, placement))
            .collect::<Result<_, _>>()?;
        let wear = Wear { sun: self.sun, oil: self.oil, aftercare: self.aftercare };
        let search =
            self.search.as_ref().map(|search| search.resolve_after(before, shelf, self.site)).transpose()?;
        let (skin, brow) = self.skin.resolve_with_brow(self.site)?;
        Ok(Task {
            worlds: self.worlds,
            spread: self.skin.spread(),
            search,
            skin,
            brow,
            site: self.site,
            light: self.light,
            months: MONTHS.check(self.months).map_err(RequestError::breach("months"))?,
            paint,
            mix,
            placement,
            existing,
            upkeep: Upkeep { wear, touch_ups },
        })
    }
}

impl TouchUpRequest {
    fn resolve(
        &self,
        shelf: &Shelf,
        field: &str,
        first: &Paint,
        place: Placement,
    ) -> Result<TouchUp, RequestError> {
        let paint = match &self.mix {
            Some(mix) => shelf.paint_of(&mix_of(mix, &format!("{field}.mix"), shelf)?),
            None => first.clone(),
        };
        let months = MONTHS.check(self.months).map_err(RequestError::breach(format!("{field}.months")))?;
        let placement = self
            .placement
            .unwrap_or(place)
            .checked()
            .map_err(RequestError::breach(format!("{field}.placement")))?;
        Ok(TouchUp { months, paint, placement })
    }
}

impl Existing {
    fn resolve(&self, shelf: &Shelf, field: &str) -> Result<Work, RequestError> {
        let paint = match (&self.mix, &self.colourants) {
            (Some(mix), None) => shelf.paint_of(&mix_of(mix, &format!("{field}.mix"), shelf)?),
            (None, Some(colourants)) => paint_of(colourants, &format!("{field}.colourants"), shelf)?,
            _ => return Err(RequestError::new(field, "give either `mix` or `colourants`")),
        };
        Ok(Work {
            paint,
            placement: self.placement.checked().map_err(RequestError::breach(field))?,
            months: MONTHS.check(self.months).map_err(RequestError::breach(field))?,
        })
    }
}

/// Most drops of one bottle.
const MOST_DROPS: u32 = 1000;

fn mix_of(drops: &BTreeMap<String, u32>, field: &str, shelf: &Shelf) -> Result<Mix, RequestError> {
    for (bottle, &count) in drops {
        if shelf.bottle(bottle).is_none() {
            let known = shelf.bottles.iter().map(|bottle| bottle.id.as_str());
            return Err(unknown(field, "bottle", bottle, known));
        }
        if count > MOST_DROPS {
            let why = format!("{count} drops are more than {MOST_DROPS}");
            return Err(RequestError::new(format!("{field}.{bottle}"), why));
        }
    }
    Ok(Mix::new(drops.iter().map(|(bottle, count)| (bottle.clone(), *count))))
}

fn paint_of(amounts: &BTreeMap<String, f64>, field: &str, shelf: &Shelf) -> Result<Paint, RequestError> {
    let mut paint = Paint::new();
    for (id, &amount) in amounts {
        let Some(place) = shelf.colourant_place(id) else {
            let own = || shelf.colourants.iter().filter(|colourant| colourant.of_bottle.is_none());
            let digits = id.trim_start_matches(|c: char| !c.is_ascii_digit());
            let by_number = own().find(|colourant| colourant.ci_number == digits && !digits.is_empty());
            if let Some(colourant) = by_number {
                let why = format!("there is no colourant `{id}`. CI {digits} is `{}`", colourant.id);
                return Err(RequestError::new(field, why));
            }
            return Err(unknown(field, "colourant", id, own().map(|colourant| colourant.id.as_str())));
        };
        AMOUNT.check(amount).map_err(RequestError::breach(format!("{field}.{id}")))?;
        paint.push((place, amount));
    }
    paint.sort_by_key(|(place, _)| *place);
    Ok(paint)
}

pub(super) fn unknown<'k>(
    field: &str,
    kind: &str,
    id: &str,
    known: impl Iterator<Item = &'k str>,
) -> RequestError {
    let known: Vec<&str> = known.collect();
    let nearest = known
        .iter()
        .map(|name| (strsim::jaro_winkler(&name.to_lowercase(), &id.to_lowercase()), name))
        .max_by(|one, other| one.0.total_cmp(&other.0))
        .filter(|(likeness, _)| *likeness > 0.75);
    let hint = nearest.map_or_else(String::new, |(_, name)| format!(" Did you mean `{name}`?"));
    RequestError::new(field, format!("there is no {kind} `{id}`.{hint} There are: {}", known.join(", ")))
}
