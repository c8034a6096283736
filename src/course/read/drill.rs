//! A drill, as a lesson's YAML file gives it.
//!
//! Entry point: [`read_drill`]. Steps: the keys of every drill, the keys of its family, then what the numbers and names
//! mean together.

use super::Reader;
use super::fields::Fields;
use super::mix::warn_of_restrictions;
use super::names::Thing;
use super::node::Node;
use super::suggest::{counted, quoted};
use crate::colour::Light;
use crate::course::shared::Shared;
use crate::course::source::At;
use crate::course::{Drill, Family, Judged, Limits, Rule, bounds};
use crate::healing::{HEALED_MONTHS, MONTHS};

const FAMILIES: [(Family, &str); 4] = [
    (Family::Bottle, "bottle"),
    (Family::Drops, "drops"),
    (Family::Remedy, "remedy"),
    (Family::Recall, "recall"),
];
/// Keys of every drill.
const COMMON_KEYS: [&str; 5] = ["id", "family", "skill", "exercises", "options"];
/// Keys of drills whose answers are mixes.
const MIX_KEYS: [&str; 10] = [
    "clients",
    "goals",
    "bottles",
    "modifiers",
    "drops",
    "modifier_drops",
    "months",
    "light",
    "tempts",
    "margin",
];
/// Keys of drills whose answers are written.
const RECALL_KEYS: [&str; 1] = ["questions"];

/// Reads a drill; its place is that of its id.
pub(crate) fn read_drill(node: &Node, shared: &Shared, reader: &mut Reader) -> Option<At<Drill>> {
    let known: Vec<&'static str> = [&COMMON_KEYS[..], &MIX_KEYS, &RECALL_KEYS].concat();
    let mut fields = Fields::of(node, "a drill", &known, reader)?;
    let id = fields.id(Thing::Drill);
    let family = fields.word("family", &FAMILIES);
    let mut drill = Drill {
        id: id.value,
        family: family.unwrap_or(Family::Bottle),
        skill: fields.reference("skill", Thing::Skill).value,
        exercises: fields.whole(&bounds::EXERCISES),
        options: fields.whole(&bounds::OPTIONS) as usize,
        clients: Vec::new(),
        goals: Vec::new(),
        limits: Limits { bottles: Vec::new(), modifiers: Vec::new(), drops: 0, modifier_drops: 0 },
        judged: Judged { months: HEALED_MONTHS, light: Light::D65 },
        tempts: Vec::new(),
        margin: 3.0,
        questions: Vec::new(),
        stands_at: fields.place.in_words(),
    };
    // Of a drill without a family nobody can say which keys it needs.
    match family {
        Some(Family::Recall) => {
            refuse_keys_of_others(&mut fields, Family::Recall, &MIX_KEYS);
            read_recall(&mut fields, shared, &mut drill);
        }
        Some(family) => {
            refuse_keys_of_others(&mut fields, family, &RECALL_KEYS);
            read_limits(&mut fields, shared, &mut drill);
            read_cases(&mut fields, shared, &mut drill);
            read_tempts(&mut fields, shared, &mut drill);
        }
        None => {}
    }
    Some(At::new(drill, id.place))
}

fn refuse_keys_of_others(fields: &mut Fields<'_, '_>, family: Family, others: &[&str]) {
    for (key, _) in fields.entries() {
        if others.contains(&key.value.as_str()) {
            let others = if family == Family::Recall { "bottle and remedy drills" } else { "recall drills" };
            let word = family.word();
            let message = format!("`{}` belongs to {others}; this is a {word} drill", key.value);
            fields.reader.error(&key.place, message).help("remove the key, or change `family`");
        }
    }
}

fn read_recall(fields: &mut Fields<'_, '_>, shared: &Shared, drill: &mut Drill) {
    fields.some("questions");
    let questions = fields.references("questions", Thing::Question);
    for id in &questions {
        let options =
            shared.questions.iter().find(|question| question.id == id.value).map(|q| q.options.len());
        if options.is_some_and(|count| count < drill.options) {
            let message = format!(
                "{} has fewer options than the {} this drill shows",
                quoted(&id.value),
                drill.options
            );
            fields.reader.warning(&id.place, message);
        }
    }
    if !questions.is_empty() && questions.len() < drill.exercises as usize {
        let message = format!(
            "{} are shown out of {}",
            counted(drill.exercises as usize, "exercise"),
            counted(questions.len(), "question")
        );
        let place = fields.key("exercises").unwrap_or(&fields.place).clone();
        fields.reader.warning(&place, message).help("give more questions, or show fewer exercises");
    }
    drill.questions = values(questions);
}

/// The drop grid.
fn read_limits(fields: &mut Fields<'_, '_>, shared: &Shared, drill: &mut Drill) {
    if fields.node("bottles").is_some() {
        fields.some("bottles");
    }
    let bottles = fields.references("bottles", Thing::Bottle);
    let modifiers = fields.references("modifiers", Thing::Bottle);
    let is_modifier =
        |id: &At<String>| shared.shelf.bottle(&id.value).map(|bottle| bottle.modifier.is_some());
    for id in bottles.iter().filter(|id| is_modifier(id) == Some(true)) {
        let message = format!("{} is a modifier, not a bottle to choose", quoted(&id.value));
        fields.reader.error(&id.place, message).help("name it under `modifiers`");
    }
    for id in modifiers.iter().filter(|id| is_modifier(id) == Some(false)) {
        let message = format!("{} is not a modifier", quoted(&id.value));
        fields.reader.error(&id.place, message).help("name it under `bottles`");
    }
    warn_of_restrictions(&bottles, &shared.shelf, fields.reader);
    warn_of_restrictions(&modifiers, &shared.shelf, fields.reader);
    drill.limits.drops = fields.whole(&bounds::DROPS);
    if !modifiers.is_empty() {
        fields.required("modifier_drops");
    }
    if let Some(node) = fields.node("modifier_drops") {
        let most = fields.reader.whole(node, &bounds::MODIFIER_DROPS);
        drill.limits.modifier_drops = most;
        if most >= drill.limits.drops && fields.node("drops").is_some() {
            let message =
                format!("`modifier_drops` is {most}, and the whole mix has {} drops", drill.limits.drops);
            fields
                .reader
                .error(&node.place, message)
                .help("a mix needs at least one drop that is no modifier");
        }
        if most == 0 && !modifiers.is_empty() {
            fields.reader.warning(&node.place, "no drop of the `modifiers` can be used");
        } else if most > 0 && modifiers.is_empty() {
            fields.reader.warning(&node.place, "there are no `modifiers` to take these drops from");
        }
    }
    drill.limits.modifiers = values(modifiers);
    drill.limits.bottles = match fields.node("bottles") {
        Some(_) => values(bottles),
        None => {
            // What is restricted somewhere is offered only where it is named, and then warned of.
            let plain = shared.shelf.bottles.iter().filter(|bottle| {
                bottle.modifier.is_none() && shared.shelf.restrictions_in(&bottle.recipe).is_empty()
            });
            let plain: Vec<String> = plain.map(|bottle| bottle.id.clone()).collect();
            if plain.is_empty() && !shared.shelf_is_broken {
                fields.reader.error(&fields.place, "there are no bottles to choose from");
            }
            plain
        }
    };
    let mixes = drill.limits.mixes();
    if mixes > bounds::MOST_MIXES {
        let message =
            format!("the drill allows {mixes} mixes, more than the {} that are tried", bounds::MOST_MIXES);
        let place = fields.key("modifier_drops").unwrap_or(&fields.place).clone();
        fields.reader.error(&place, message).help("allow fewer `modifier_drops`, `modifiers` or `bottles`");
    }
}

/// Whose skin, which goals, and when it is judged.
fn read_cases(fields: &mut Fields<'_, '_>, shared: &Shared, drill: &mut Drill) {
    fields.some("clients");
    let clients = fields.references("clients", Thing::Client);
    for id in &clients {
        let client = shared.clients.iter().find(|client| client.id == id.value);
        if drill.family == Family::Remedy && client.is_some_and(|client| client.existing.is_empty()) {
            let message = format!("{} has no existing work to correct", quoted(&id.value));
            fields
                .reader
                .warning(&id.place, message)
                .help("a remedy drill is about clients with existing work");
        }
    }
    for id in clients.iter().filter(|_| drill.family == Family::Bottle) {
        let cautioned =
            shared.clients.iter().find(|client| client.id == id.value && !client.health.is_empty());
        if cautioned.is_some() {
            let message = format!("{} has a caution among the health answers", quoted(&id.value));
            fields.reader.error(&id.place, message).help(
                "a bottle drill would reward colour on a client who must wait or be referred; use a remedy drill, or another client",
            );
        }
    }
    drill.clients = values(clients);
    drill.goals = values(fields.references("goals", Thing::Goal));
    drill.judged.months = fields.number_or(&MONTHS, HEALED_MONTHS);
    drill.judged.light = fields.word_or_none("light", &Light::ALL).unwrap_or_default();
    drill.margin = fields.number_or(&bounds::MARGIN, 3.0);
}

/// Where wrong answers come from.
fn read_tempts(fields: &mut Fields<'_, '_>, shared: &Shared, drill: &mut Drill) {
    fields.some("tempts");
    let tempts = fields.references("tempts", Thing::Misconception);
    for id in &tempts {
        let Some(misconception) = shared.misconceptions.iter().find(|other| other.id == id.value) else {
            continue;
        };
        let rule =
            Rule::ALL.iter().find(|(rule, _)| *rule == misconception.rule).map_or("", |(_, word)| word);
        if misconception.rule == Rule::Stated {
            let message = format!("{} makes no wrong answer: its rule is `{rule}`", quoted(&id.value));
            fields.reader.error(&id.place, message).help("only options of written questions can show it");
        } else if drill.family == Family::Bottle && is_about_old_work(misconception.rule) {
            let message = format!(
                "{} makes no wrong answer in a bottle drill: its rule `{rule}` is about existing work",
                quoted(&id.value)
            );
            fields.reader.warning(&id.place, message).help("it can tempt in remedy drills");
        }
    }
    if !tempts.is_empty() && tempts.len() + 1 < drill.options {
        let message = format!(
            "{} options need {} beside the right one, and only {} may give them",
            drill.options,
            counted(drill.options - 1, "wrong answer"),
            counted(tempts.len(), "misconception")
        );
        let place = fields.key("tempts").unwrap_or(&fields.place).clone();
        fields.reader.warning(&place, message).help("give 4 to 8: not each applies to each client");
    }
    drill.tempts = values(tempts);
}

/// Rules that need old work, or an answer other than a mix.
fn is_about_old_work(rule: Rule) -> bool {
    matches!(
        rule,
        Rule::IgnoreOldWork
            | Rule::WheelOpposite
            | Rule::AlwaysLighten
            | Rule::ColourAlways
            | Rule::ReferAnything
    )
}

fn values(ids: Vec<At<String>>) -> Vec<String> {
    ids.into_iter().map(|id| id.value).collect()
}
