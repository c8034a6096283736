//! `clients/*.yaml`: one client a file.

use super::Reader;
use super::fields::Fields;
use super::mix::{PLACEMENT_KEYS, read_colourants, read_mix, read_placement};
use super::names::Thing;
use super::node::Node;
use super::suggest::quoted;
use crate::course::client::skin_at;
use crate::course::source::At;
use crate::course::{Client, HealthNote, OldWork, Technique, bounds};
use crate::healing::{EXACT_WORKS, MONTHS, Placement, Work};
use crate::pigment::Shelf;
use crate::skin::{Phototype, Redness, Site, Skin, Undertone};

const KEYS: [&str; 12] = [
    "id",
    "name",
    "age",
    "about",
    "skin",
    "site",
    "hair",
    "wish",
    "goal",
    "further_goals",
    "health",
    "existing",
];

/// Reads a client from the file `stem.yaml`.
pub(crate) fn read_client(root: &Node, stem: &str, shelf: &Shelf, reader: &mut Reader) -> Option<Client> {
    let mut fields = Fields::of(root, "a client", &KEYS, reader)?;
    let id = fields.id(Thing::Client);
    if !id.value.is_empty() && id.value != stem {
        fields
            .reader
            .error(&id.place, format!("the id {} is not the name of this file", quoted(&id.value)))
            .help(format!("write `id: {stem}`, or call the file `{}.yaml`", id.value));
    }
    let name = fields.text("name").value;
    let age = fields.whole(&bounds::AGE);
    let about = fields.text("about").value;
    let (phototype, undertone, redness, scar) = fields
        .required("skin")
        .and_then(|node| read_skin(node, fields.reader))
        .unwrap_or((Phototype::I, Undertone::Neutral, Redness::Calm, false));
    let site = fields.word_or_none("site", &Site::ALL).unwrap_or_default();
    let (hair, wish) = (fields.text("hair").value, fields.text("wish").value);
    let goal = fields.reference("goal", Thing::Goal).value;
    let further_goals =
        fields.references("further_goals", Thing::Goal).into_iter().map(|id| id.value).collect();
    let health = fields.list("health").iter().filter_map(|node| read_health(node, fields.reader)).collect();
    let existing = fields.list("existing");
    if existing.len() > EXACT_WORKS {
        let message =
            format!("{} existing works are more than the {EXACT_WORKS} that can be solved", existing.len());
        let place = fields.key("existing").unwrap_or(&fields.place).clone();
        fields.reader.error(&place, message).help("describe what is seen with fewer works");
    }
    let existing = existing.iter().take(EXACT_WORKS);
    let mut existing: Vec<OldWork> =
        existing.filter_map(|node| read_old_work(node, shelf, fields.reader)).collect();
    existing.sort_by(|one, other| other.work.months.total_cmp(&one.work.months));
    let skin = skin_at(site, Skin::from_evidence(phototype, undertone, redness), scar);
    Some(Client {
        id: id.value,
        name,
        age,
        about,
        phototype,
        undertone,
        redness,
        scar,
        skin,
        site,
        hair,
        wish,
        goal,
        further_goals,
        health,
        existing,
    })
}

/// Phototype, undertone and redness, and whether the place is a scar.
fn read_skin(node: &Node, reader: &mut Reader) -> Option<(Phototype, Undertone, Redness, bool)> {
    let mut fields = Fields::of(node, "a skin", &["phototype", "undertone", "redness", "scar"], reader)?;
    let phototype = fields.word("phototype", &Phototype::ALL);
    let undertone = fields.word("undertone", &Undertone::ALL);
    let redness = fields.word("redness", &Redness::ALL);
    let scar = fields.flag("scar").unwrap_or_default();
    Some((phototype?, undertone?, redness?, scar))
}

fn read_health(node: &Node, reader: &mut Reader) -> Option<HealthNote> {
    let mut fields = Fields::of(node, "a health answer", &["caution", "note"], reader)?;
    let caution = fields.key("caution").is_some().then(|| fields.reference("caution", Thing::Caution).value);
    Some(HealthNote { caution, note: fields.text("note").value })
}

fn read_old_work(node: &Node, shelf: &Shelf, reader: &mut Reader) -> Option<OldWork> {
    let keys = ["colourants", "mix", "months", "placement", "technique", "note"];
    let mut fields = Fields::of(node, "existing work", &keys, reader)?;
    let (colourants, mix) = (fields.node("colourants"), fields.node("mix"));
    if colourants.is_some() == mix.is_some() {
        let message = "existing work is made of either `colourants` or a `mix`";
        let both = mix.is_some();
        let place = fields.key("mix").filter(|_| both).unwrap_or(&fields.place).clone();
        fields.reader.error(&place, message).help(if both {
            "keep one of the two"
        } else {
            "write one of the two"
        });
    }
    let mix: Option<(_, Vec<At<String>>)> = mix.map(|node| read_mix(node, fields.reader));
    let paint = match (colourants, &mix) {
        (Some(node), _) => read_colourants(node, shelf, fields.reader),
        (None, Some((mix, _))) => shelf.paint_of(mix),
        (None, None) => Vec::new(),
    };
    let months = fields.number(&MONTHS);
    let placement = fields
        .node("placement")
        .and_then(|node| Fields::of(node, "a placement", &PLACEMENT_KEYS, fields.reader))
        .map_or_else(Placement::default, |mut placement| read_placement(&mut placement));
    let technique = fields.word_or_none("technique", &Technique::ALL).unwrap_or_default();
    let note = fields.text("note").value;
    let mix = mix.map(|(mix, _)| mix);
    Some(OldWork { work: Work { paint, placement, months }, mix, placement, technique, note })
}
