//! `sources.yaml`: what the course and the engine lean on.

use super::Reader;
use super::fields::Fields;
use super::names::Thing;
use super::node::Node;
use crate::course::{SourceBasis, SourceEntry, SourceKind};

/// Reads a source.
pub(crate) fn read_source(node: &Node, reader: &mut Reader) -> Option<SourceEntry> {
    let keys = ["id", "title", "by", "kind", "took", "basis"];
    let mut fields = Fields::of(node, "a source", &keys, reader)?;
    Some(SourceEntry {
        id: fields.id(Thing::Source).value,
        title: fields.text("title").value,
        by: fields.text_or("by", "").value,
        kind: fields.word("kind", &SourceKind::ALL).unwrap_or(SourceKind::Practice),
        took: fields.text("took").value,
        basis: fields.word("basis", &SourceBasis::ALL).unwrap_or(SourceBasis::FromMemory),
    })
}
