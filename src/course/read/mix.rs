//! Mixes, amounts of colourants and placements, as clients and swatches give them.

use super::Reader;
use super::fields::Fields;
use super::names::Thing;
use super::node::{Node, NodeKind};
use crate::course::bounds;
use crate::course::source::At;
use crate::healing::{AMOUNT, COVERAGE, DEPTH, LOAD, Placement, THICKNESS};
use crate::pigment::{ColourantClass, Mix, Paint, Shelf};
use crate::quantity::Quantity;

/// Keys of a placement.
pub(crate) const PLACEMENT_KEYS: [&str; 4] = ["depth_mm", "thickness_mm", "load", "coverage"];

/// A mix, `{dunmere: 5, emberlow: 1}`, with the places of its bottles.
pub(crate) fn read_mix(node: &Node, reader: &mut Reader) -> (Mix, Vec<At<String>>) {
    let mut drops = Vec::new();
    let bottles = entries(node, "a mix gives drops by bottle: `{dunmere: 6}`", reader);
    for (bottle, node) in bottles {
        reader.refer(Thing::Bottle, bottle.clone());
        let count = reader.whole_called(&bottle.value, node, &bounds::DROPS);
        drops.push((bottle.value.clone(), count));
    }
    (Mix::new(drops), bottles.iter().map(|(bottle, _)| bottle.clone()).collect())
}

/// Amounts of colourants, `{PR101: 0.2}`, by their place on the shelf.
pub(crate) fn read_colourants(node: &Node, shelf: &Shelf, reader: &mut Reader) -> Paint {
    amounts(node, &AMOUNT, "amounts by colourant: `{PR101: 0.2}`", shelf, reader)
}

/// Parts of colourants in a recipe, `{PR101: 3, PY42: 4}`, by their place on the shelf.
pub(crate) fn read_parts(node: &Node, shelf: &Shelf, reader: &mut Reader) -> Paint {
    amounts(node, &bounds::PARTS, "a recipe gives parts by colourant: `{PR101: 3, PY42: 4}`", shelf, reader)
}

fn amounts(node: &Node, quantity: &Quantity, form: &str, shelf: &Shelf, reader: &mut Reader) -> Paint {
    let mut paint = Paint::new();
    for (colourant, node) in entries(node, form, reader) {
        reader.refer(Thing::Colourant, colourant.clone());
        let amount = reader.number_called(&colourant.value, node, quantity);
        if let Some(place) = shelf.colourant_place(&colourant.value)
            && amount > 0.0
        {
            paint.push((place, amount));
        }
    }
    paint.sort_by_key(|(place, _)| *place);
    paint
}

/// Entries of a set of amounts, which must not be empty.
fn entries<'n>(node: &'n Node, form: &str, reader: &mut Reader) -> &'n [(At<String>, Node)] {
    match &node.kind {
        NodeKind::Map(entries) if !entries.is_empty() => entries,
        NodeKind::Map(_) => {
            reader.error(&node.place, "nothing is in here").help(form);
            &[]
        }
        _ => {
            reader
                .error(&node.place, format!("a set of amounts is expected; this is {}", node.in_words()))
                .help(form);
            &[]
        }
    }
}

/// A placement; what is not given is as on a usual brow.
pub(crate) fn read_placement(fields: &mut Fields<'_, '_>) -> Placement {
    let usual = Placement::default();
    Placement {
        depth_mm: fields.number_or(&DEPTH, usual.depth_mm),
        thickness_mm: fields.number_or(&THICKNESS, usual.thickness_mm),
        load: fields.number_or(&LOAD, usual.load),
        coverage: fields.number_or(&COVERAGE, usual.coverage),
    }
}

/// Warns where the author chooses bottles that hold a colourant which is restricted somewhere.
pub(crate) fn warn_of_restrictions(bottles: &[At<String>], shelf: &Shelf, reader: &mut Reader) {
    for bottle in bottles {
        let mix = Mix::new([(bottle.value.clone(), 1)]);
        for (colourant, rule) in shelf.restrictions_of(&mix) {
            let restricted = format!("restricted in {} since {}: {}", rule.place, rule.since, rule.rule);
            // The rule itself names what a content measured as a whole holds.
            let message = if colourant.class == ColourantClass::Mixture {
                format!("`{}` is {restricted}", bottle.value)
            } else {
                format!("`{}` holds {}, which is {restricted}", bottle.value, colourant.id)
            };
            reader.warning(&bottle.place, message).help(format!("source: {}", rule.source));
        }
    }
}
