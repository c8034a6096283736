//! The YAML inside a fenced block `foresee`: swatches to be computed.

use super::Reader;
use super::fields::Fields;
use super::markdown::Surroundings;
use super::mix::{PLACEMENT_KEYS, read_mix, read_placement, warn_of_restrictions};
use super::names::Thing;
use super::node::Node;
use crate::colour::Light;
use crate::course::{Foresee, Show, Technique};
use crate::healing::{HEALED_MONTHS, MONTHS};
use crate::pigment::Shelf;

/// Reads a block of swatches.
pub(crate) fn read_foresee(root: &Node, around: &Surroundings<'_>, reader: &mut Reader) -> Option<Foresee> {
    let shelf = around.shelf;
    let mut fields = Fields::of(root, "a foresee block", &["caption", "show", "holds"], reader)?;
    let caption = fields.text("caption").value;
    for node in fields.list("holds") {
        let claim = fields.reader.text("holds", node);
        if !claim.value.is_empty() {
            around.computed.holds(&claim, fields.reader);
        }
    }
    let show = fields.some("show").iter().filter_map(|node| read_show(node, shelf, fields.reader)).collect();
    Some(Foresee { caption, show })
}

fn read_show(node: &Node, shelf: &Shelf, reader: &mut Reader) -> Option<Show> {
    let known: Vec<&'static str> =
        [&["label", "client", "bare", "mix", "months"][..], &PLACEMENT_KEYS, &["technique", "light"]]
            .concat();
    let mut fields = Fields::of(node, "a swatch", &known, reader)?;
    let label = fields.text("label").value;
    let client = fields.reference("client", Thing::Client).value;
    let bare = fields.flag("bare").unwrap_or_default();
    let mix = fields.node("mix").map(|node| {
        let (mix, bottles) = read_mix(node, fields.reader);
        warn_of_restrictions(&bottles, shelf, fields.reader);
        mix
    });
    if mix.is_none() {
        for key in PLACEMENT_KEYS.into_iter().chain(["technique"]) {
            if let Some(place) = fields.key(key) {
                fields
                    .reader
                    .warning(place, format!("`{key}` means nothing without a `mix`"))
                    .help("add a `mix`, or remove the key");
            }
        }
    }
    Some(Show {
        label,
        client,
        bare,
        mix,
        months: fields.number_or(&MONTHS, HEALED_MONTHS),
        placement: read_placement(&mut fields),
        technique: fields.word_or_none("technique", &Technique::ALL).unwrap_or_default(),
        light: fields.word_or_none("light", &Light::ALL).unwrap_or_default(),
    })
}
