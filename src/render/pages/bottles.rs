//! The bottle library: what is in each bottle, how long it stays, and where it is restricted.

use super::Pages;
use crate::pigment::{Bottle, Colourant, ColourantClass, Mix};
use crate::render::RenderError;
use crate::render::figures::{basis, colour_index, percent, short};
use crate::render::frame::{Frame, Link, Section};
use crate::render::output::SiteFile;
use crate::render::plan::{self, href};
use crate::render::swatch::Swatch;
use serde::Serialize;

#[derive(Serialize)]
struct BottlesPage {
    frame: Frame,
    bottles: Vec<BottleView>,
    colourants: Vec<ColourantView>,
    model: String,
}

/// A bottle.
#[derive(Serialize)]
pub(super) struct BottleView {
    anchor: String,
    name: String,
    about: String,
    /// "warmer", for a modifier.
    modifier: Option<&'static str>,
    swatch: Swatch,
    contents: Vec<ContentView>,
    /// "PR 170, PV 23".
    contents_in_short: String,
    rules: Vec<RuleView>,
}

/// A colourant in a bottle.
#[derive(Serialize)]
struct ContentView {
    colourant: Link,
    name: String,
    ci_number: String,
    share: String,
    half_life: String,
    basis: &'static str,
}

/// A colourant.
#[derive(Serialize)]
struct ColourantView {
    anchor: String,
    index: String,
    ci_number: String,
    name: String,
    class: &'static str,
    half_life: String,
    drift: String,
    basis: &'static str,
    note: String,
    rules: Vec<RuleView>,
    /// Bottles it is in.
    bottles: Vec<Link>,
}

/// A rule that restricts a colourant.
#[derive(Serialize)]
struct RuleView {
    index: String,
    place: String,
    rule: String,
    since: String,
    source: String,
}

impl Pages<'_> {
    /// The bottle library.
    pub(super) fn bottles(&self) -> Result<SiteFile, RenderError> {
        let shelf = &self.course.shelf;
        let frame = self.frame(plan::BOTTLES, "Bottles", Section::Bottles)
            .described("Every bottle of the course: its colour, its colourants by Colour Index name, and where they are restricted.");
        let listed = shelf.colourants.iter().filter(|colourant| colourant.of_bottle.is_none());
        let colourants = listed.map(|colourant| ColourantView {
            anchor: colourant_anchor(colourant),
            index: colour_index(&colourant.id),
            ci_number: colourant.ci_number.clone(),
            name: colourant.name.clone(),
            class: colourant.class.words(),
            half_life: short(colourant.half_life_months),
            drift: if colourant.drift_mm > 0.0 {
                format!("{} mm", short(colourant.drift_mm))
            } else {
                "hardly".into()
            },
            basis: basis(colourant.basis),
            note: colourant.note.clone(),
            rules: rules_of(colourant),
            bottles: shelf
                .bottles
                .iter()
                .filter(|bottle| {
                    bottle.recipe.iter().any(|(used, _)| shelf.colourants[*used].id == colourant.id)
                })
                .map(|bottle| Link::new(&bottle.name, format!("#{}", bottle.id)))
                .collect(),
        });
        let context = BottlesPage {
            frame,
            bottles: shelf.bottles.iter().map(|bottle| self.bottle_view(bottle)).collect(),
            colourants: colourants.collect(),
            model: href(plan::BOTTLES, plan::MODEL),
        };
        self.page(plan::BOTTLES, "bottles.html", context)
    }

    /// A bottle as the library and the worksheets show it.
    pub(super) fn bottle_view(&self, bottle: &Bottle) -> BottleView {
        let shelf = &self.course.shelf;
        let whole: f64 = bottle.recipe.iter().map(|(_, amount)| amount).sum();
        let mut recipe: Vec<(&Colourant, f64)> =
            bottle.recipe.iter().map(|&(place, amount)| (&shelf.colourants[place], amount / whole)).collect();
        recipe.sort_by(|(_, one), (_, other)| other.total_cmp(one));
        let contents = recipe.iter().map(|&(colourant, share)| ContentView {
            colourant: if colourant.class == ColourantClass::Mixture {
                Link::new(WHOLE, format!("#{}", bottle.id))
            } else {
                Link::new(colour_index(&colourant.id), format!("#{}", colourant_anchor(colourant)))
            },
            name: if colourant.class == ColourantClass::Mixture {
                colourant.note.trim_end_matches('.').to_owned()
            } else {
                colourant.name.clone()
            },
            ci_number: colourant.ci_number.clone(),
            share: percent(share),
            half_life: short(colourant.half_life_months),
            basis: basis(colourant.basis),
        });
        let colour = shelf.label_colour(&Mix::new([(bottle.id.clone(), 1)]));
        BottleView {
            anchor: bottle.id.clone(),
            name: bottle.name.clone(),
            about: bottle.about.clone(),
            modifier: bottle.modifier.map(|modifier| modifier.word()),
            swatch: Swatch::bottle(&bottle.name, colour),
            contents: contents.collect(),
            contents_in_short: recipe
                .iter()
                .map(|(colourant, share)| match colourant.class {
                    ColourantClass::Mixture => WHOLE.to_owned(),
                    _ => format!("{} {}", colour_index(&colourant.id), percent(*share)),
                })
                .collect::<Vec<_>>()
                .join(", "),
            rules: recipe.iter().flat_map(|(colourant, _)| rules_of(colourant)).collect(),
        }
    }
}

/// Content of a bottle that was measured as it is.
const WHOLE: &str = "the paint as a whole";

/// An anchor that no bottle's id equals.
fn colourant_anchor(colourant: &Colourant) -> String {
    format!("colourant_{}", colourant.id.replace(|c: char| !c.is_ascii_alphanumeric(), "-"))
}

fn rules_of(colourant: &Colourant) -> Vec<RuleView> {
    colourant
        .restrictions
        .iter()
        .map(|rule| RuleView {
            index: match colourant.class {
                ColourantClass::Mixture => colourant.name.clone(),
                _ => colour_index(&colourant.id),
            },
            place: rule.place.clone(),
            rule: rule.rule.clone(),
            since: rule.since.clone(),
            source: rule.source.clone(),
        })
        .collect()
}
