//! The bottle library: what is in each bottle, how long it stays, and where it is restricted.

use super::Pages;
use crate::foresee::Shown;
use crate::healing::masstone;
use crate::language::Language;
use crate::pigment::{Bottle, Colourant, ColourantClass, Line, Mix};
use crate::render::RenderError;
use crate::render::figures::colour_index;
use crate::render::frame::{Frame, Link, Section};
use crate::render::output::SiteFile;
use crate::render::plan::{self, href, href_to};
use crate::render::swatch::Swatch;
use crate::say;
use serde::Serialize;
use std::collections::BTreeMap;

#[derive(Serialize)]
struct BottlesPage {
    frame: Frame,
    groups: Vec<GroupView>,
    model: String,
    colourants: String,
}

#[derive(Serialize)]
struct ColourantsPage {
    frame: Frame,
    colourants: Vec<ColourantView>,
    /// How many bottles there are.
    all_bottles: usize,
    model: String,
}

/// Bottles of one line, or those of none.
#[derive(Serialize)]
struct GroupView {
    /// Nothing where no bottle of the course belongs to a line.
    heading: Option<HeadingView>,
    bottles: Vec<BottleView>,
}

/// What stands above a group.
#[derive(Serialize)]
struct HeadingView {
    anchor: String,
    name: String,
    about: Option<String>,
    /// "12 bottles and 3 modifiers".
    size: String,
}

/// A bottle.
#[derive(Serialize)]
pub(super) struct BottleView {
    anchor: String,
    name: String,
    about: String,
    /// What it does, for a modifier.
    modifier: Option<String>,
    /// What it is meant for, unless that is every site.
    sites: Option<String>,
    swatch: Swatch,
    contents: Vec<ContentView>,
    /// "PR 170, PV 23".
    contents_in_short: String,
    rules: Vec<RuleView>,
}

/// A bottle as a question of practice tells of it.
#[derive(Serialize)]
pub(super) struct BottleInShort {
    name: String,
    about: String,
    /// "PR 170 60%, PV 23 40%".
    recipe: String,
    /// Its colour, without skin, in words and for screens.
    words: String,
    colour: Shown,
    /// Its place in the library.
    href: String,
    /// Rules that restrict what is in it.
    rules: Vec<String>,
}

/// A colourant in a bottle.
#[derive(Serialize)]
struct ContentView {
    colourant: Link,
    name: String,
    share: String,
    half_life: String,
}

/// A colourant.
#[derive(Serialize)]
struct ColourantView {
    anchor: String,
    index: String,
    ci_number: String,
    name: String,
    /// The colour of it by itself.
    swatch: Swatch,
    class: String,
    half_life: String,
    drift: String,
    basis: String,
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
        let language = &self.course.language;
        let frame = self
            .frame(plan::BOTTLES, &say!(language, "frame-bottles"), Section::Bottles)
            .described(&say!(language, "bottles-description"));
        let context = BottlesPage {
            frame,
            groups: self.groups(),
            model: href(plan::BOTTLES, plan::MODEL),
            colourants: href(plan::BOTTLES, plan::COLOURANTS),
        };
        self.page(plan::BOTTLES, "bottles.html", context)
    }

    /// The table of colourants.
    pub(super) fn colourants(&self) -> Result<SiteFile, RenderError> {
        let path = plan::COLOURANTS;
        let shelf = &self.course.shelf;
        let language = &self.course.language;
        let frame = self
            .frame(path, &say!(language, "bottles-colourants"), Section::Colourants)
            .described(&say!(language, "colourants-description"));
        let listed =
            shelf.colourants.iter().enumerate().filter(|(_, colourant)| colourant.of_bottle.is_none());
        let colourants = listed.map(|(place, colourant)| ColourantView {
            anchor: colourant_anchor(colourant),
            index: colour_index(&colourant.id),
            swatch: {
                let alone = masstone(shelf, &vec![(place, 1.0)]);
                Swatch::colourant(language, &colour_index(&colourant.id), alone)
            },
            ci_number: colourant.ci_number.clone(),
            name: colourant.name.clone(),
            class: language.class(colourant.class),
            half_life: language.short(colourant.half_life_months),
            drift: if colourant.drift_mm > 0.0 {
                say!(language, "bottles-drift", distance = language.short(colourant.drift_mm))
            } else {
                say!(language, "bottles-hardly")
            },
            basis: language.basis(colourant.basis),
            note: colourant.note.clone(),
            rules: rules_of(colourant),
            bottles: shelf
                .bottles
                .iter()
                .filter(|bottle| {
                    bottle.recipe.iter().any(|(used, _)| shelf.colourants[*used].id == colourant.id)
                })
                .map(|bottle| Link::new(&bottle.name, href_to(path, plan::BOTTLES, &bottle.id)))
                .collect(),
        });
        let context = ColourantsPage {
            frame,
            colourants: colourants.collect(),
            all_bottles: self.course.shelf.bottles.len(),
            model: href(path, plan::MODEL),
        };
        self.page(path, "colourants.html", context)
    }

    /// Bottles line by line, modifiers last in each.
    fn groups(&self) -> Vec<GroupView> {
        let groups = self.course.shelf.by_line();
        let plain = groups.iter().all(|(line, _)| line.is_none());
        let group = |(line, bottles): &(Option<&Line>, Vec<&Bottle>)| GroupView {
            heading: (!plain).then(|| HeadingView {
                anchor: line.map_or(NO_LINE.to_owned(), |line| format!("line_{}", line.id)),
                name: line
                    .map_or_else(|| say!(self.course.language, "bottles-no-line"), |line| line.name.clone()),
                about: line.map(|line| line.about.clone()),
                size: size_of(&self.course.language, bottles),
            }),
            bottles: {
                let (modifiers, plain): (Vec<&Bottle>, Vec<&Bottle>) =
                    bottles.iter().partition(|bottle| bottle.modifier.is_some());
                plain.into_iter().chain(modifiers).map(|bottle| self.bottle_view(bottle)).collect()
            },
        };
        groups.iter().map(group).collect()
    }

    /// A bottle as the library and the worksheets show it.
    pub(super) fn bottle_view(&self, bottle: &Bottle) -> BottleView {
        let language = &self.course.language;
        let whole_paint = || say!(language, "bottles-whole");
        let shelf = &self.course.shelf;
        let recipe: Vec<(&Colourant, f64)> =
            bottle.shares().into_iter().map(|(place, share)| (&shelf.colourants[place], share)).collect();
        let contents = recipe.iter().map(|&(colourant, share)| ContentView {
            colourant: if colourant.class == ColourantClass::Mixture {
                Link::new(whole_paint(), format!("#{}", bottle.id))
            } else {
                let target = href_to(plan::BOTTLES, plan::COLOURANTS, &colourant_anchor(colourant));
                Link::new(colour_index(&colourant.id), target)
            },
            name: if colourant.class == ColourantClass::Mixture {
                colourant.note.trim_end_matches('.').to_owned()
            } else {
                colourant.name.clone()
            },
            share: language.percent(share),
            half_life: language.short(colourant.half_life_months),
        });
        let colour = shelf.label_colour(&Mix::new([(bottle.id.clone(), 1)]));
        BottleView {
            anchor: bottle.id.clone(),
            name: bottle.name.clone(),
            about: bottle.about.clone(),
            modifier: bottle
                .modifier
                .map(|modifier| say!(language, &format!("bottles-modifier-{}", modifier.word()))),
            sites: language.meant_for(bottle),
            swatch: Swatch::bottle(language, &bottle.name, colour),
            contents: contents.collect(),
            contents_in_short: recipe
                .iter()
                .map(|(colourant, share)| match colourant.class {
                    ColourantClass::Mixture => whole_paint(),
                    _ => format!("{} {}", colour_index(&colourant.id), language.percent(*share)),
                })
                .collect::<Vec<_>>()
                .join(", "),
            rules: recipe.iter().flat_map(|(colourant, _)| rules_of(colourant)).collect(),
        }
    }
}

impl<'c> Pages<'c> {
    /// Every bottle in short by its id, for the page at `from`.
    pub(super) fn bottles_in_short(&self, from: &str) -> BTreeMap<&'c str, BottleInShort> {
        let in_short = |bottle: &'c Bottle| {
            let view = self.bottle_view(bottle);
            let modifier = view.modifier.map(|modifier| format!(" {modifier}")).unwrap_or_default();
            let rule_said = |rule: &RuleView| {
                let (colourant, place) = (&rule.index, &rule.place);
                say!(
                    self.course.language,
                    "question-rule",
                    colourant = colourant,
                    place = place,
                    rule = &rule.rule
                )
            };
            let bottle_in_short = BottleInShort {
                name: view.name,
                about: view.about + &modifier,
                recipe: view.contents_in_short,
                words: view.swatch.words,
                colour: Shown::of(self.course.shelf.label_colour(&Mix::new([(bottle.id.clone(), 1)]))),
                href: href_to(from, plan::BOTTLES, &bottle.id),
                rules: view.rules.iter().map(rule_said).collect(),
            };
            (bottle.id.as_str(), bottle_in_short)
        };
        self.course.shelf.bottles.iter().map(in_short).collect()
    }
}

/// Anchor of the bottles that belong to no line; no line's anchor equals it.
const NO_LINE: &str = "line_";

/// "12 bottles and 3 modifiers".
fn size_of(language: &Language, bottles: &[&Bottle]) -> String {
    let modifiers = bottles.iter().filter(|bottle| bottle.modifier.is_some()).count();
    let plain = bottles.len() - modifiers;
    let mut counted = Vec::new();
    if plain > 0 || modifiers == 0 {
        counted.push(say!(language, "bottles-size", bottles = plain));
    }
    if modifiers > 0 {
        counted.push(say!(language, "bottles-size-modifiers", modifiers = modifiers));
    }
    language.all_of(&counted)
}

/// An anchor that no bottle's id equals.
pub(super) fn colourant_anchor(colourant: &Colourant) -> String {
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
