//! `papers/*.yaml`: blueprints of assessments, one a file.

use super::Reader;
use super::fields::Fields;
use super::names::Thing;
use super::node::{Node, NodeKind};
use super::suggest::{listed, nearest, quoted};
use crate::course::blueprint::{Band, Blueprint, ClientCase, Judge, Section, Standard};
use crate::course::bounds;
use crate::course::source::At;
use crate::quantity::Quantity;

/// Reads a blueprint.
pub(crate) fn read_blueprint(root: &Node, stem: &str, reader: &mut Reader) -> Option<Blueprint> {
    let keys = [
        "id",
        "title",
        "about",
        "minutes",
        "difficulty",
        "most_per_client",
        "pool",
        "cases",
        "sections",
        "standard",
    ];
    let mut fields = Fields::of(root, "a blueprint", &keys, reader)?;
    let id = fields.id(Thing::Blueprint);
    if !id.value.is_empty() && id.value != stem {
        fields
            .reader
            .error(&id.place, format!("the id {} is not the name of this file", quoted(&id.value)))
            .help(format!("write `id: {stem}`, or call the file `{}.yaml`", id.value));
    }
    let (title, about) = (fields.text("title").value, fields.text_or("about", "").value);
    let minutes = fields.whole(&bounds::MINUTES);
    let difficulty = match fields.required("difficulty") {
        Some(node) => read_band(node, fields.reader),
        None => ANY,
    };
    let most_per_client = match fields.node("most_per_client") {
        Some(node) => fields.reader.whole(node, &bounds::MOST_PER_CLIENT),
        None => 2,
    };
    let pool = match fields.node("pool") {
        Some(node) => fields.reader.whole(node, &bounds::POOL),
        None => 12,
    };
    let case_nodes = fields.list("cases");
    let cases: Vec<At<ClientCase>> =
        case_nodes.iter().filter_map(|node| read_case(node, fields.reader)).collect();
    let nodes = fields.some("sections");
    let sections: Vec<At<Section>> =
        nodes.iter().filter_map(|node| read_section(node, &cases, fields.reader)).collect();
    check_sections(&sections, nodes.len(), &mut fields);
    check_cases(&cases, &sections, nodes.len(), fields.reader);
    let ids: Vec<&str> = sections.iter().map(|section| section.value.id.as_str()).collect();
    let standard = fields
        .required("standard")
        .and_then(|node| read_standard(node, &ids, nodes.len() == ids.len(), fields.reader));
    let stands_at = id.place.source.path.clone();
    let sections: Vec<Section> = sections.into_iter().map(|section| section.value).collect();
    let standard = standard?;
    let whole = standard.judges.iter().all(|judge| judge.estimates.len() == sections.len());
    (whole && !standard.judges.is_empty()).then_some(Blueprint {
        id: id.value,
        title,
        about,
        minutes,
        difficulty,
        most_per_client,
        pool,
        cases: cases.into_iter().map(|case| case.value).collect(),
        sections,
        standard,
        stands_at,
    })
}

/// Any difficulty.
const ANY: Band = Band { least: 0.0, most: 1.0 };

pub(super) fn read_band(node: &Node, reader: &mut Reader) -> Band {
    let Some(mut fields) = Fields::of(node, "a band of difficulty", &["least", "most"], reader) else {
        return ANY;
    };
    let mut bound = |key: &'static str| {
        let node = fields.required(key)?;
        Some(fields.reader.number_called(key, node, &bounds::DIFFICULTY))
    };
    let (Some(least), Some(most)) = (bound("least"), bound("most")) else { return ANY };
    // A `least` out of its bounds has been reported, and is the greatest now.
    if least >= most && least < bounds::DIFFICULTY.most {
        let message = format!("`least` is {least}, and `most` is {most}: nothing lies between them");
        fields.reader.error(&node.place, message);
    }
    Band { least, most }
}

fn read_case(node: &Node, reader: &mut Reader) -> Option<At<ClientCase>> {
    let mut fields = Fields::of(node, "a case", &["id", "title", "clients"], reader)?;
    let id = fields.text("id");
    let title = fields.text("title").value;
    let clients = match fields.node("clients") {
        Some(node) => fields.reader.whole(node, &bounds::CASE_CLIENTS),
        None => bounds::CASE_CLIENTS.least as u32,
    };
    let stands_at = fields.place.in_words();
    Some(At::new(ClientCase { id: id.value, title, clients, stands_at }, id.place))
}

/// Every case has an id of its own and sections that stand together.
fn check_cases(cases: &[At<ClientCase>], sections: &[At<Section>], written: usize, reader: &mut Reader) {
    for (place, case) in cases.iter().enumerate() {
        let id = &case.value.id;
        if !id.is_empty() && cases[..place].iter().any(|other| other.value.id == *id) {
            reader.error(&case.place, format!("a second case with the id {}", quoted(id)));
            continue;
        }
        // A section that could not be read may be one of the case.
        if sections.len() != written {
            continue;
        }
        let mut own =
            sections.iter().enumerate().filter(|(_, section)| section.value.case == Some(place)).peekable();
        if own.peek().is_none() {
            let help =
                format!("write `case: {id}` in each section that is about its client, or remove the case");
            reader.error(&case.place, format!("no section belongs to the case {}", quoted(id))).help(help);
        }
        let mut last = None;
        for (at, section) in own {
            if last.is_some_and(|last| last + 1 != at) {
                let message = format!("the sections of the case {} do not stand together", quoted(id));
                reader
                    .error(&section.place, message)
                    .help("a case is told once, above its first section: move its sections together");
            }
            last = Some(at);
        }
    }
}

fn read_section(node: &Node, cases: &[At<ClientCase>], reader: &mut Reader) -> Option<At<Section>> {
    let keys = ["id", "title", "case", "skills", "drills", "bank", "questions", "weight", "difficulty"];
    let mut fields = Fields::of(node, "a section", &keys, reader)?;
    let id = fields.text("id");
    let title = fields.text("title").value;
    let skills = fields.references("skills", Thing::Skill);
    let drills = fields.references("drills", Thing::Drill);
    let bank = fields.flag("bank").unwrap_or(false);
    if skills.is_empty() && drills.is_empty() && fields.node("skills").is_none() {
        fields
            .reader
            .error(&fields.place, "a section draws on nothing")
            .help("name `skills` whose drills it draws on, or `drills`");
    }
    if bank && skills.is_empty() {
        let place = fields.key("bank").unwrap_or(&fields.place).clone();
        fields
            .reader
            .error(&place, "`bank` draws on the questions for the `skills`, and there are none")
            .help("name `skills`, or remove `bank`");
    }
    let case = fields.node("case").and_then(|_| {
        let At { value: id, place } = fields.text("case");
        let known = cases.iter().position(|case| case.value.id == id);
        if known.is_none() {
            let ids = || cases.iter().map(|case| case.value.id.as_str());
            let help = match nearest(&id, ids()) {
                Some(near) => format!("did you mean {}?", quoted(near)),
                None if cases.is_empty() => "list the cases of this paper under `cases`".to_owned(),
                None => format!("the cases are {}", listed(ids())),
            };
            fields.reader.error(&place, format!("there is no case {}", quoted(&id))).help(help);
        }
        known
    });
    let questions = fields.whole(&bounds::QUESTIONS);
    let weight = fields.number(&bounds::WEIGHT);
    let difficulty = match fields.node("difficulty") {
        Some(node) => read_band(node, fields.reader),
        None => ANY,
    };
    let place = id.place.clone();
    let values = |ids: Vec<At<String>>| ids.into_iter().map(|id| id.value).collect();
    let section = Section {
        id: id.value,
        title,
        skills: values(skills),
        drills: values(drills),
        bank,
        case,
        questions,
        weight,
        difficulty,
    };
    Some(At::new(section, place))
}

/// Ids are unique, weights are shares of a whole, and nobody is asked more than a paper holds.
fn check_sections(sections: &[At<Section>], written: usize, fields: &mut Fields<'_, '_>) {
    for (number, section) in sections.iter().enumerate() {
        let id = &section.value.id;
        if !id.is_empty() && sections[..number].iter().any(|other| other.value.id == *id) {
            fields.reader.error(&section.place, format!("a second section with the id {}", quoted(id)));
        }
    }
    if sections.len() != written || sections.is_empty() {
        return;
    }
    let place = fields.key("sections").unwrap_or(&fields.place).clone();
    let weight: f64 = sections.iter().map(|section| section.value.weight).sum();
    if (weight - 100.0).abs() > 1e-6 {
        let message = format!("the weights of the sections are {weight} in all, and should be 100");
        fields.reader.error(&place, message).help("`weight` is a share of the whole mark in percent");
    }
    let questions: u32 = sections.iter().map(|section| section.value.questions).sum();
    if f64::from(questions) > bounds::QUESTIONS.most {
        let message =
            format!("the sections have {questions} questions in all, more than {}", bounds::QUESTIONS.most);
        fields.reader.error(&place, message);
    }
}

fn read_standard(node: &Node, sections: &[&str], sound: bool, reader: &mut Reader) -> Option<Standard> {
    let mut fields = Fields::of(node, "the standard", &["basis", "judges"], reader)?;
    let basis = fields.text("basis").value;
    let judges = fields
        .some("judges")
        .iter()
        .filter_map(|node| read_judge(node, sections, sound, fields.reader))
        .collect();
    Some(Standard { basis, judges })
}

fn read_judge(node: &Node, sections: &[&str], sound: bool, reader: &mut Reader) -> Option<Judge> {
    let mut fields = Fields::of(node, "a judge", &["role", "estimates"], reader)?;
    let role = fields.text("role").value;
    let node = fields.required("estimates")?;
    let NodeKind::Map(entries) = &node.kind else {
        let message =
            format!("`estimates` is a set of sections with a number each; this is {}", node.in_words());
        fields.reader.error(&node.place, message);
        return None;
    };
    for (key, _) in entries.iter().filter(|_| sound) {
        if !sections.contains(&key.value.as_str()) {
            let help = match nearest(&key.value, sections.iter().copied()) {
                Some(near) => format!("did you mean {}?", quoted(near)),
                None => format!("the sections are {}", listed(sections.iter().copied())),
            };
            fields.reader.error(&key.place, format!("there is no section {}", quoted(&key.value))).help(help);
        }
    }
    let quantity: &Quantity = &bounds::ESTIMATE;
    let estimates = sections
        .iter()
        .filter_map(|section| match entries.iter().find(|(key, _)| key.value == *section) {
            Some((_, value)) => Some(fields.reader.number_called(section, value, quantity)),
            None => {
                let message = format!("there is no estimate for the section {}", quoted(section));
                fields.reader.error(node.point(), message);
                None
            }
        })
        .collect();
    Some(Judge { role, estimates })
}
