//! `pigments/colourants.yaml` and `pigments/bottles.yaml`.

use super::Reader;
use super::fields::Fields;
use super::mix::read_parts;
use super::names::Thing;
use super::node::Node;
use crate::course::bounds;
use crate::pigment::{
    AbsorptionCurve, Basis, Bottle, Colourant, ColourantClass, Edge, Modifier, Peak, Restriction,
    ScatteringCurve, Shelf,
};

const COLOURANT_KEYS: [&str; 11] = [
    "id",
    "ci_number",
    "name",
    "class",
    "absorption",
    "scattering",
    "half_life_months",
    "drift_mm",
    "basis",
    "note",
    "restricted",
];
const BOTTLE_KEYS: [&str; 6] = ["id", "name", "about", "recipe", "strength", "modifier"];

const CLASSES: [(ColourantClass, &str); 6] = [
    (ColourantClass::White, "white"),
    (ColourantClass::IronOxide, "iron-oxide"),
    (ColourantClass::ChromiumOxide, "chromium-oxide"),
    (ColourantClass::Carbon, "carbon"),
    (ColourantClass::Organic, "organic"),
    (ColourantClass::OtherInorganic, "other-inorganic"),
];
const BASES: [(Basis, &str); 3] = [
    (Basis::Measured, "measured"),
    (Basis::Published, "published"),
    (Basis::Representative, "representative"),
];
const MODIFIERS: [(Modifier, &str); 4] = [
    (Modifier::Warmer, "warmer"),
    (Modifier::Cooler, "cooler"),
    (Modifier::Darker, "darker"),
    (Modifier::Lighter, "lighter"),
];

/// Reads `pigments/colourants.yaml` onto the shelf.
pub(crate) fn read_colourants_file(root: &Node, shelf: &mut Shelf, reader: &mut Reader) {
    let Some(mut file) = Fields::of(root, "the file of colourants", &["colourants"], reader) else { return };
    for node in file.some("colourants") {
        shelf.colourants.extend(read_colourant(node, file.reader));
    }
}

fn read_colourant(node: &Node, reader: &mut Reader) -> Option<Colourant> {
    let mut fields = Fields::of(node, "a colourant", &COLOURANT_KEYS, reader)?;
    let id = fields.id(Thing::Colourant).value;
    let ci_number = fields.text_or("ci_number", "");
    if !ci_number.value.chars().all(|c| c.is_ascii_digit() || c == ':') {
        fields
            .reader
            .error(&ci_number.place, "`ci_number` is a Colour Index constitution number, such as \"77491\"");
    }
    let name = fields.text("name").value;
    let class = fields.word("class", &CLASSES).unwrap_or(ColourantClass::Organic);
    let absorption = fields.required("absorption").and_then(|node| read_absorption(node, fields.reader));
    let scattering = fields.required("scattering").and_then(|node| read_scattering(node, fields.reader));
    let half_life_months = fields.number(&bounds::HALF_LIFE_MONTHS);
    let drift_mm = fields.number_or(&bounds::DRIFT_MM, 0.0);
    let basis = fields.word("basis", &BASES).unwrap_or(Basis::Representative);
    let note = fields.text("note").value;
    let rules = fields.list("restricted");
    let restrictions = rules.iter().filter_map(|node| read_restriction(node, fields.reader)).collect();
    Some(Colourant {
        id,
        ci_number: ci_number.value,
        name,
        class,
        absorption: absorption?.spectrum(),
        scattering: scattering?.spectrum(),
        half_life_months,
        drift_mm,
        basis,
        note,
        restrictions,
    })
}

fn read_absorption(node: &Node, reader: &mut Reader) -> Option<AbsorptionCurve> {
    let mut fields = Fields::of(node, "an absorption", &["flat_per_mm", "edges", "peaks"], reader)?;
    let flat_per_mm = fields.number_or(&bounds::FLAT_PER_MM, 0.0);
    let edges = fields.list("edges").iter().filter_map(|node| read_bump(node, "an edge", fields.reader));
    let edges = edges.map(|(at_nm, width_nm, per_mm)| Edge { at_nm, width_nm, per_mm }).collect();
    let peaks = fields.list("peaks").iter().filter_map(|node| read_bump(node, "a peak", fields.reader));
    let peaks = peaks.map(|(at_nm, width_nm, per_mm)| Peak { at_nm, width_nm, per_mm }).collect();
    Some(AbsorptionCurve { flat_per_mm, edges, peaks })
}

/// Wavelength, width and height of an edge or a peak.
fn read_bump(node: &Node, what: &'static str, reader: &mut Reader) -> Option<(f64, f64, f64)> {
    let mut fields = Fields::of(node, what, &["at_nm", "width_nm", "per_mm"], reader)?;
    Some((fields.number(&bounds::AT_NM), fields.number(&bounds::WIDTH_NM), fields.number(&bounds::PER_MM)))
}

fn read_scattering(node: &Node, reader: &mut Reader) -> Option<ScatteringCurve> {
    let mut fields = Fields::of(node, "a scattering", &["at_550_per_mm", "exponent"], reader)?;
    Some(ScatteringCurve {
        at_550_per_mm: fields.number(&bounds::AT_550_PER_MM),
        exponent: fields.number(&bounds::EXPONENT),
    })
}

fn read_restriction(node: &Node, reader: &mut Reader) -> Option<Restriction> {
    let mut fields = Fields::of(node, "a restriction", &["place", "rule", "since", "source"], reader)?;
    let (place, rule) = (fields.text("place").value, fields.text("rule").value);
    let since = fields.text("since");
    if !since.value.is_empty() && !is_date(&since.value) {
        fields.reader.error(&since.place, "`since` is a date written as year-month-day, such as 2023-01-04");
    }
    Some(Restriction { place, rule, since: since.value, source: fields.text("source").value })
}

/// Whether a text is a date of the form `YYYY-MM-DD`.
fn is_date(text: &str) -> bool {
    let parts: Vec<&str> = text.split('-').collect();
    let number = |part: &str, digits, least, most| {
        part.len() == digits && part.parse::<u32>().is_ok_and(|n| (least..=most).contains(&n))
    };
    matches!(parts[..], [year, month, day]
        if number(year, 4, 1900, 2100) && number(month, 2, 1, 12) && number(day, 2, 1, 31))
}

/// Reads `pigments/bottles.yaml` onto the shelf, whose colourants are there already.
pub(crate) fn read_bottles_file(root: &Node, shelf: &mut Shelf, reader: &mut Reader) {
    let Some(mut file) = Fields::of(root, "the file of bottles", &["bottles"], reader) else { return };
    for node in file.some("bottles") {
        let bottle = read_bottle(node, shelf, file.reader);
        shelf.bottles.extend(bottle);
    }
}

fn read_bottle(node: &Node, shelf: &Shelf, reader: &mut Reader) -> Option<Bottle> {
    let mut fields = Fields::of(node, "a bottle", &BOTTLE_KEYS, reader)?;
    let id = fields.id(Thing::Bottle).value;
    let name = fields.text("name").value;
    let about = fields.text("about").value;
    let strength = fields.number_or(&bounds::STRENGTH, 1.0);
    let parts =
        fields.required("recipe").map(|node| read_parts(node, shelf, fields.reader)).unwrap_or_default();
    let sum: f64 = parts.iter().map(|(_, parts)| parts).sum();
    let recipe = parts.into_iter().map(|(place, parts)| (place, parts / sum * strength)).collect();
    // A misspelt modifier is still a modifier.
    let modifier =
        fields.word_or_none("modifier", &MODIFIERS).or(fields.node("modifier").map(|_| Modifier::Warmer));
    Some(Bottle { id, name, about, recipe, modifier })
}
