//! `skills.yaml`, `goals.yaml`, `cautions.yaml`, `misconceptions.yaml` and `glossary.yaml`: files that each hold one list.

use super::Reader;
use super::fields::Fields;
use super::names::Thing;
use super::node::{Node, NodeKind};
use super::suggest::quoted;
use crate::colour::Lab;
use crate::course::source::At;
use crate::course::{Caution, CautionAction, Goal, Misconception, Rule, Skill, Term, TermFinder, bounds};

/// Reads every item of a file that holds one list.
pub(crate) fn read_list<T>(
    root: &Node,
    what: &'static str,
    key: &'static str,
    read: fn(&Node, &mut Reader) -> Option<T>,
    reader: &mut Reader,
) -> Vec<T> {
    let Some(mut file) = Fields::of(root, what, &[key], reader) else { return Vec::new() };
    file.some(key).iter().filter_map(|node| read(node, file.reader)).collect()
}

/// Reads a skill.
pub(crate) fn read_skill(node: &Node, reader: &mut Reader) -> Option<Skill> {
    let mut fields = Fields::of(node, "a skill", &["id", "name"], reader)?;
    Some(Skill { id: fields.id(Thing::Skill).value, name: fields.text("name").value })
}

/// Reads a goal.
pub(crate) fn read_goal(node: &Node, reader: &mut Reader) -> Option<Goal> {
    let mut fields = Fields::of(node, "a goal", &["id", "name", "hair", "lab", "tolerance"], reader)?;
    let id = fields.id(Thing::Goal).value;
    let (name, hair) = (fields.text("name").value, fields.text("hair").value);
    let lab = fields.required("lab").map_or(Lab::new(0.0, 0.0, 0.0), |node| read_lab(node, fields.reader));
    Some(Goal { id, name, hair, lab, tolerance: fields.number_or(&bounds::TOLERANCE, 4.0) })
}

/// A colour, `[L*, a*, b*]`.
fn read_lab(node: &Node, reader: &mut Reader) -> Lab {
    match &node.kind {
        NodeKind::List(parts) if parts.len() == 3 => Lab::new(
            reader.number(&parts[0], &bounds::LIGHTNESS),
            reader.number(&parts[1], &bounds::GREEN_RED),
            reader.number(&parts[2], &bounds::BLUE_YELLOW),
        ),
        _ => {
            reader
                .error(&node.place, "`lab` is a list of three numbers: L*, a*, b*")
                .help("such as `lab: [44, 9, 15]`");
            Lab::new(0.0, 0.0, 0.0)
        }
    }
}

/// Reads a caution.
pub(crate) fn read_caution(node: &Node, reader: &mut Reader) -> Option<Caution> {
    let keys = ["id", "name", "say", "action", "refer_to", "not_met_by", "source"];
    let mut fields = Fields::of(node, "a caution", &keys, reader)?;
    let actions = [(CautionAction::Wait, "wait"), (CautionAction::Refer, "refer")];
    let id = fields.id(Thing::Caution);
    let not_met_by = fields.references("not_met_by", Thing::Caution);
    if let Some(itself) = not_met_by.iter().find(|other| other.value == id.value && !id.value.is_empty()) {
        fields.reader.error(&itself.place, "a caution that is not met by what it asks for itself");
    }
    Some(Caution {
        id: id.value,
        name: fields.text("name").value,
        say: fields.text("say").value,
        action: fields.word("action", &actions).unwrap_or(CautionAction::Refer),
        refer_to: fields.text("refer_to").value,
        not_met_by: not_met_by.into_iter().map(|id| id.value).collect(),
        source: fields.text("source").value,
    })
}

/// Reads a misconception.
pub(crate) fn read_misconception(node: &Node, reader: &mut Reader) -> Option<Misconception> {
    let keys = ["id", "belief", "tempting", "truth", "rule", "lesson"];
    let mut fields = Fields::of(node, "a misconception", &keys, reader)?;
    Some(Misconception {
        id: fields.id(Thing::Misconception).value,
        belief: fields.text("belief").value,
        tempting: fields.text("tempting").value,
        truth: fields.text("truth").value,
        rule: fields.word("rule", &Rule::ALL).unwrap_or(Rule::Stated),
        lesson: fields.reference("lesson", Thing::Lesson).value,
    })
}

/// Reads a glossary term.
pub(crate) fn read_term(node: &Node, reader: &mut Reader) -> Option<Term> {
    let mut fields = Fields::of(node, "a term", &["id", "term", "forms", "not_in", "means", "see"], reader)?;
    let id = fields.id(Thing::Term);
    let (term, means) = (fields.text("term").value, fields.text("means").value);
    let forms = fields.list("forms");
    let forms: Vec<String> = forms.iter().map(|node| fields.reader.text("forms", node).value).collect();
    let not_in = fields.list("not_in");
    let not_in = not_in.iter().map(|node| fields.reader.text("not_in", node)).collect();
    let see = fields.references("see", Thing::Term);
    if let Some(itself) = see.iter().find(|other| other.value == id.value && !id.value.is_empty()) {
        fields.reader.error(&itself.place, "a term that refers to itself");
    }
    let see = see.into_iter().map(|id| id.value).collect();
    let mut term = Term { id: id.value, term, forms, not_in: Vec::new(), means, see };
    term.not_in = other_senses(&term, not_in, fields.reader);
    Some(term)
}

/// Phrases in which a term is not meant: each must hold it and more than it, or it would do nothing, or leave nothing of the term.
fn other_senses(term: &Term, phrases: Vec<At<String>>, reader: &mut Reader) -> Vec<String> {
    let finder = TermFinder::new(std::slice::from_ref(term));
    for phrase in phrases.iter().filter(|phrase| !phrase.value.is_empty() && !term.term.is_empty()) {
        if finder.terms_in(&phrase.value).is_empty() {
            let message = format!("{} does not hold the term {}", quoted(&phrase.value), quoted(&term.term));
            let help =
                "give the words around it as a text has them; other ways to write the term are `forms`";
            reader.error(&phrase.place, message).help(help);
        } else if finder.term_at(&phrase.value, None).is_some_and(|(end, _)| end == phrase.value.len()) {
            let message = format!("{} is the term itself: it would be linked nowhere", quoted(&phrase.value));
            reader.error(&phrase.place, message).help("give the words around it as a text has them");
        }
    }
    phrases.into_iter().map(|phrase| phrase.value).collect()
}
