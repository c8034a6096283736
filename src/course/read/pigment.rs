//! The files in `pigments/`: colourants, bottles and lines of them.
//!
//! Entry points: [`read_colourants_and_lines_of`], then [`read_bottle`] for each bottle that it gives.

use super::Reader;
use super::fields::Fields;
use super::mix::read_parts;
use super::names::Thing;
use super::node::{Node, NodeKind};
use super::suggest::quoted;
use crate::colour::{BANDS, Spectrum};
use crate::course::bounds;
use crate::healing::Placement;
use crate::pigment::measure::Optics;
use crate::pigment::{
    AbsorptionCurve, Basis, Bottle, CI_NAME_FORM, Colourant, ColourantClass, Edge, Fading, Line, Measured,
    Modifier, Peak, Restriction, ScatteringCurve, Shelf, is_ci_name, meant_ci_name,
};
use crate::quantity::Quantity;
use crate::skin::Site;

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
const BOTTLE_KEYS: [&str; 9] =
    ["id", "name", "about", "recipe", "strength", "measured", "modifier", "line", "sites"];

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

/// Reads the colourants and lines of a file in `pigments/` onto the shelf, and gives its bottles, which are read when every
/// colourant is there. `colourants.yaml` holds colourants, `bottles.yaml` bottles and perhaps lines; any other file holds any of the
/// three.
pub(crate) fn read_colourants_and_lines_of<'n>(
    root: &'n Node,
    holds: &[&'static str],
    shelf: &mut Shelf,
    reader: &mut Reader,
) -> &'n [Node] {
    let what = match holds {
        ["colourants"] => "the file of colourants",
        ["bottles", "lines"] => "the file of bottles",
        _ => "a file of pigments",
    };
    let Some(mut file) = Fields::of(root, what, holds, reader) else { return &[] };
    // What a file is named after must be in it.
    let own = if holds.contains(&"colourants") && holds.contains(&"bottles") { None } else { holds.first() };
    let has = |key, file: &Fields<'_, '_>| own == Some(&key) || file.key(key).is_some();
    if has("colourants", &file) {
        for node in file.some("colourants") {
            shelf.colourants.extend(read_colourant(node, file.reader));
        }
    }
    if has("lines", &file) {
        for node in file.some("lines") {
            shelf.lines.extend(read_line(node, file.reader));
        }
    }
    if holds.iter().all(|key| !has(key, &file)) {
        file.required("bottles");
    }
    if has("bottles", &file) { file.some("bottles") } else { &[] }
}

fn read_line(node: &Node, reader: &mut Reader) -> Option<Line> {
    let mut fields = Fields::of(node, "a line", &["id", "name", "about"], reader)?;
    Some(Line {
        id: fields.id(Thing::Line).value,
        name: fields.text("name").value,
        about: fields.text("about").value,
    })
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
        absorption: absorption?,
        scattering: scattering?,
        half_life_months,
        drift_mm,
        basis,
        note,
        restrictions,
        of_bottle: None,
    })
}

/// Absorption as a curve, or as one value a band.
fn read_absorption(node: &Node, reader: &mut Reader) -> Option<Spectrum> {
    if matches!(node.kind, NodeKind::List(_)) {
        return Some(read_bands(node, "absorption", &bounds::BAND_ABSORPTION, reader));
    }
    let mut fields = Fields::of(node, "an absorption", &["flat_per_mm", "edges", "peaks"], reader)?;
    let flat_per_mm = fields.number_or(&bounds::FLAT_PER_MM, 0.0);
    let edges = fields.list("edges").iter().filter_map(|node| read_bump(node, "an edge", fields.reader));
    let edges = edges.map(|(at_nm, width_nm, per_mm)| Edge { at_nm, width_nm, per_mm }).collect();
    let peaks = fields.list("peaks").iter().filter_map(|node| read_bump(node, "a peak", fields.reader));
    let peaks = peaks.map(|(at_nm, width_nm, per_mm)| Peak { at_nm, width_nm, per_mm }).collect();
    Some(AbsorptionCurve { flat_per_mm, edges, peaks }.spectrum())
}

/// One value for each band, 400 nm first.
fn read_bands(node: &Node, key: &str, quantity: &Quantity, reader: &mut Reader) -> Spectrum {
    let values: &[Node] = if let NodeKind::List(values) = &node.kind { values } else { &[] };
    if values.len() != BANDS {
        let message = match &node.kind {
            NodeKind::List(_) => {
                format!("`{key}` has {} values; it has one for each of {BANDS} bands", values.len())
            }
            _ => format!("`{key}` is a list of {BANDS} numbers; this is {}", node.in_words()),
        };
        reader.error(&node.place, message).help("one value every 10 nm, from 400 to 700 nm");
        return [0.0; BANDS];
    }
    std::array::from_fn(|band| reader.number_called(key, &values[band], quantity))
}

/// Wavelength, width and height of an edge or a peak.
fn read_bump(node: &Node, what: &'static str, reader: &mut Reader) -> Option<(f64, f64, f64)> {
    let mut fields = Fields::of(node, what, &["at_nm", "width_nm", "per_mm"], reader)?;
    Some((fields.number(&bounds::AT_NM), fields.number(&bounds::WIDTH_NM), fields.number(&bounds::PER_MM)))
}

/// Reduced scattering as a power of wavelength, or as one value a band.
fn read_scattering(node: &Node, reader: &mut Reader) -> Option<Spectrum> {
    if matches!(node.kind, NodeKind::List(_)) {
        return Some(read_bands(node, "scattering", &bounds::BAND_SCATTERING, reader));
    }
    let mut fields = Fields::of(node, "a scattering", &["at_550_per_mm", "exponent"], reader)?;
    let curve = ScatteringCurve {
        at_550_per_mm: fields.number(&bounds::AT_550_PER_MM),
        exponent: fields.number(&bounds::EXPONENT),
    };
    Some(curve.spectrum())
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

/// Reads a bottle onto the shelf, whose colourants are there already.
pub(crate) fn read_bottle(node: &Node, shelf: &mut Shelf, reader: &mut Reader) {
    let Some(mut fields) = Fields::of(node, "a bottle", &BOTTLE_KEYS, reader) else { return };
    let id = fields.id(Thing::Bottle).value;
    let name = fields.text("name").value;
    let about = fields.text("about").value;
    let recipe = match (fields.node("measured"), fields.node("recipe")) {
        (Some(node), None) => {
            if let Some(place) = fields.key("strength") {
                fields
                    .reader
                    .error(place, "a measured bottle has no `strength`")
                    .help("its `dose_mm` says how much of it heals");
            }
            let measured = read_measured(node, shelf, fields.reader);
            measured.map(|measured| shelf.add_measured(&id, &name, &measured)).unwrap_or_default()
        }
        (Some(node), Some(_)) => {
            fields.reader.error(&node.place, "a bottle has a `recipe` or is `measured`, not both");
            Vec::new()
        }
        (None, _) => {
            let strength = fields.number_or(&bounds::STRENGTH, 1.0);
            let node = fields.required("recipe");
            let parts = node.map(|node| read_parts(node, shelf, fields.reader)).unwrap_or_default();
            let sum: f64 = parts.iter().map(|(_, parts)| parts).sum();
            parts.into_iter().map(|(place, parts)| (place, parts / sum * strength)).collect()
        }
    };
    // A misspelt modifier is still a modifier.
    let modifier =
        fields.word_or_none("modifier", &MODIFIERS).or(fields.node("modifier").map(|_| Modifier::Warmer));
    let line = fields.node("line").map(|_| fields.reference("line", Thing::Line).value);
    let sites = if fields.node("sites").is_some() { fields.words("sites", &Site::ALL) } else { Vec::new() };
    shelf.bottles.push(Bottle { id, name, about, recipe, modifier, line, sites });
}

const MEASURED_KEYS: [&str; 8] = [
    "basis",
    "absorption_per_mm",
    "reduced_scattering_per_mm",
    "dose_mm",
    "holds",
    "half_life_months",
    "drift_mm",
    "note",
];

/// What was measured of a bottle.
fn read_measured(node: &Node, shelf: &Shelf, reader: &mut Reader) -> Option<Measured> {
    let mut fields = Fields::of(node, "what was measured", &MEASURED_KEYS, reader)?;
    let basis = fields.word("basis", &BASES).unwrap_or(Basis::Representative);
    let [absorption, scattering] = [&bounds::BAND_ABSORPTION, &bounds::BAND_SCATTERING].map(|quantity| {
        let node = fields.required(quantity.name);
        node.map(|node| read_bands(node, quantity.name, quantity, fields.reader))
    });
    let dose = fields.number(&bounds::DOSE_MM) / Placement::default().thickness_mm;
    let note = fields.text_or("note", "").value;
    let fading = match fields.node("holds") {
        Some(parts @ Node { kind: NodeKind::Map(_), .. }) => {
            for key in ["half_life_months", "drift_mm"] {
                if let Some(place) = fields.key(key) {
                    let message =
                        format!("`{key}` is that of each colourant, since `holds` gives their parts");
                    fields
                        .reader
                        .error(place, message)
                        .help("remove it, or write `holds` as a list of names");
                }
            }
            Fading::Parts(read_parts(parts, shelf, fields.reader))
        }
        _ => Fading::Whole {
            half_life_months: fields.number(&bounds::HALF_LIFE_MONTHS),
            drift_mm: fields.number_or(&bounds::DRIFT_MM, 0.0),
            restrictions: read_held(&mut fields, shelf),
        },
    };
    if matches!(&fading, Fading::Parts(parts) if parts.is_empty()) {
        return None;
    }
    Some(Measured {
        optics: Optics { absorption: absorption?, scattering: scattering? },
        dose,
        basis,
        note,
        fading,
    })
}

/// Rules that restrict any of the colourants that a measured bottle is said to hold.
fn read_held(fields: &mut Fields<'_, '_>, shelf: &Shelf) -> Vec<Restriction> {
    let mut rules = Vec::new();
    for node in fields.list("holds") {
        let name = fields.reader.text("holds", node);
        if name.value.is_empty() {
            continue;
        }
        if !is_ci_name(&name.value) {
            let help = match meant_ci_name(&name.value) {
                Some(meant) => format!("write {}", quoted(&meant)),
                None => format!("`holds` lists colourants, each by {CI_NAME_FORM}"),
            };
            let message = format!("{} in `holds` is no Colour Index name", quoted(&name.value));
            fields.reader.error(&name.place, message).help(help);
        } else if let Some(place) = shelf.colourant_place(&name.value) {
            let held = |rule: &Restriction| Restriction {
                rule: format!("it holds {}: {}", name.value, rule.rule),
                ..rule.clone()
            };
            rules.extend(shelf.colourants[place].restrictions.iter().map(held));
        } else {
            let message =
                format!("nothing is known here of {}, nor of rules that restrict it", quoted(&name.value));
            fields.reader.warning(&name.place, message).help("a colourant with this id would say so");
        }
    }
    rules
}
