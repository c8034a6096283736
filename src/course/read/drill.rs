//! A drill, as a lesson's YAML file gives it.
//!
//! Entry point: [`read_drill`]. Steps: the keys of every drill, the keys of its family, then what the numbers and names
//! mean together.

use super::Reader;
use super::fields::Fields;
use super::mix::warn_of_restrictions;
use super::names::Thing;
use super::node::Node;
use super::paper::read_band;
use super::suggest::{counted, quoted};
use crate::colour::Light;
use crate::course::shared::Shared;
use crate::course::source::At;
use crate::course::{Asked, Client, Drill, Family, Judged, Limits, Rule, SkinAsks, bounds};
use crate::healing::{HEALED_MONTHS, MONTHS};
use crate::pigment::Bottle;
use crate::skin::Site;

/// Keys of every drill.
const COMMON_KEYS: [&str; 5] = ["id", "family", "skill", "exercises", "options"];
/// Keys of drills about clients.
const CASE_KEYS: [&str; 5] = ["clients", "light", "tempts", "margin", "difficulty"];
/// Keys of drills about mixes.
const MIX_KEYS: [&str; 7] =
    ["bottles", "modifiers", "drops", "modifier_drops", "months", "goals", "further_goals"];
/// Keys of single families.
const OWN_KEYS: [&str; 3] = ["questions", "ages_months", "asks"];

/// The keys of a family beside those of every drill. A triage drill has either clients or questions.
fn keys_of(family: Family) -> Vec<&'static str> {
    let cases = CASE_KEYS.as_slice();
    let mixes: Vec<&'static str> = [cases, &MIX_KEYS].concat();
    let without = |keys: Vec<&'static str>, left_out: &[&str]| -> Vec<&'static str> {
        keys.into_iter().filter(|key| !left_out.contains(key)).collect()
    };
    match family {
        Family::Bottle | Family::Drops | Family::Remedy => mixes,
        Family::Foresight | Family::Light => without(mixes, &["goals", "further_goals"]),
        Family::Hindsight => {
            [without(mixes, &["goals", "further_goals", "months"]), vec!["ages_months"]].concat()
        }
        Family::Skin => [cases, &["asks"]].concat(),
        Family::Triage => vec!["clients", "tempts", "questions"],
        Family::Sequence | Family::Recall => vec!["questions"],
    }
}

/// Reads a drill; its place is that of its id.
pub(crate) fn read_drill(node: &Node, shared: &Shared, reader: &mut Reader) -> Option<At<Drill>> {
    let known: Vec<&'static str> = [&COMMON_KEYS[..], &CASE_KEYS, &MIX_KEYS, &OWN_KEYS].concat();
    let mut fields = Fields::of(node, "a drill", &known, reader)?;
    let id = fields.id(Thing::Drill);
    let family = fields.word("family", &Family::ALL);
    let mut drill = Drill {
        id: id.value,
        family: family.unwrap_or(Family::Bottle),
        skill: fields.reference("skill", Thing::Skill).value,
        exercises: fields.whole(&bounds::EXERCISES),
        options: 0,
        clients: Vec::new(),
        goals: Vec::new(),
        further_goals: false,
        limits: Limits { bottles: Vec::new(), modifiers: Vec::new(), drops: 0, modifier_drops: 0 },
        judged: Judged { months: HEALED_MONTHS, light: Light::D65 },
        tempts: Vec::new(),
        margin: 3.0,
        difficulty: None,
        questions: Vec::new(),
        ages_months: Vec::new(),
        skin_asks: SkinAsks::Reading,
        stands_at: fields.place.in_words(),
    };
    // Of a drill without a family nobody can say which keys it needs.
    if let Some(family) = family {
        refuse_keys_of_others(&mut fields, family);
        if family == Family::Skin {
            drill.skin_asks = fields.word_or_none("asks", &SkinAsks::ALL).unwrap_or_default();
        }
        // An order and a number have no options.
        let has_options = family != Family::Sequence && drill.skin_asks != SkinAsks::Angle;
        if has_options {
            drill.options = fields.whole(&bounds::OPTIONS) as usize;
        } else if let Some(place) = fields.key("options").cloned() {
            fields.reader.error(&place, "this drill shows no options to choose from").help("remove the key");
        }
        if drill.skin_asks == SkinAsks::Angle
            && let Some(place) = fields.key("difficulty").cloned()
        {
            fields
                .reader
                .error(&place, "a drill that asks for the angle has no `difficulty`: it is worked out, and nothing is proved that it could be reckoned from")
                .help("remove the key; what an angle costs is what a blueprint's judges expect of its section");
        }
        let asks_questions = match family {
            Family::Sequence | Family::Recall => true,
            Family::Triage => fields.node("questions").is_some(),
            _ => false,
        };
        if asks_questions {
            read_questions(&mut fields, shared, &mut drill);
        } else {
            read_cases(&mut fields, shared, &mut drill);
            if keys_of(family).contains(&"drops") {
                read_limits(&mut fields, shared, &mut drill);
            }
            read_tempts(&mut fields, shared, &mut drill);
        }
    }
    Some(At::new(drill, id.place))
}

fn refuse_keys_of_others(fields: &mut Fields<'_, '_>, family: Family) {
    let own = keys_of(family);
    let known: Vec<&str> = [&CASE_KEYS[..], &MIX_KEYS, &OWN_KEYS].concat();
    for (key, _) in fields.entries() {
        let word = key.value.as_str();
        if known.contains(&word) && !own.contains(&word) {
            let others: Vec<&str> = Family::ALL
                .iter()
                .filter(|(other, _)| keys_of(*other).contains(&word))
                .map(|(_, word)| *word)
                .collect();
            let message =
                format!("`{word}` belongs to {} drills; this is a {} drill", and(&others), family.word());
            fields.reader.error(&key.place, message).help("remove the key, or change `family`");
        }
    }
    if family == Family::Triage
        && fields.node("questions").is_some()
        && let Some(place) = fields.key("clients").or_else(|| fields.key("tempts")).cloned()
    {
        fields
            .reader
            .error(&place, "a triage drill asks either about `clients` or `questions` of the bank")
            .help("remove one of the two");
    }
}

/// "a, b and c".
fn and(words: &[&str]) -> String {
    match words {
        [] => String::new(),
        [one] => (*one).to_owned(),
        [first @ .., last] => format!("{} and {last}", first.join(", ")),
    }
}

/// Questions of the bank; each must be one that this family can ask.
fn read_questions(fields: &mut Fields<'_, '_>, shared: &Shared, drill: &mut Drill) {
    fields.some("questions");
    let questions = fields.references("questions", Thing::Question);
    for id in &questions {
        let Some(question) = shared.questions.iter().find(|question| question.id == id.value) else {
            continue;
        };
        let is_order = matches!(question.asked, Asked::Order { .. });
        if is_order != (drill.family == Family::Sequence) {
            let what = if is_order { "asks for an order" } else { "has no `steps`" };
            let message =
                format!("{} {what}: no question for a {} drill", quoted(&id.value), drill.family.word());
            fields.reader.error(&id.place, message);
        } else if !is_order && question.options().len() < drill.options {
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

/// The drop grid; the drill's clients are known.
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
        None => plain_bottles(fields, shared, &drill.clients),
    };
    let mixes = drill.limits.mixes();
    if mixes > bounds::MOST_MIXES {
        let message =
            format!("the drill allows {mixes} mixes, more than the {} that are tried", bounds::MOST_MIXES);
        let place = fields.key("modifier_drops").unwrap_or(&fields.place).clone();
        fields.reader.error(&place, message).help("allow fewer `modifier_drops`, `modifiers` or `bottles`");
    }
}

/// What may be taken where a drill names no bottles: every bottle that is no modifier, holds nothing restricted and is meant for the
/// site of each client. What is restricted somewhere, or meant for another site, is offered only where it is named.
fn plain_bottles(fields: &mut Fields<'_, '_>, shared: &Shared, clients: &[String]) -> Vec<String> {
    let plain: Vec<&Bottle> = shared
        .shelf
        .bottles
        .iter()
        .filter(|bottle| bottle.modifier.is_none() && shared.shelf.restrictions_in(&bottle.recipe).is_empty())
        .collect();
    let sites: Vec<Site> = Site::ALL
        .iter()
        .map(|(site, _)| *site)
        .filter(|site| {
            let here = |client: &Client| client.site == *site && clients.contains(&client.id);
            shared.clients.iter().any(here)
        })
        .collect();
    let meant: Vec<String> = plain
        .iter()
        .filter(|bottle| sites.iter().all(|site| bottle.is_meant_for(*site)))
        .map(|bottle| bottle.id.clone())
        .collect();
    if meant.is_empty() && !shared.shelf_is_broken {
        if plain.is_empty() {
            fields.reader.error(&fields.place, "there are no bottles to choose from");
        } else {
            let sites: Vec<&str> = sites.iter().map(|site| site.word()).collect();
            let message = format!("no bottle to choose from is meant for {}", and(&sites));
            let help = if sites.len() > 1 {
                "name `bottles`, or draw from clients with one site"
            } else {
                "name `bottles`, or give a bottle this site under `sites`"
            };
            fields.reader.error(&fields.place, message).help(help);
        }
    }
    meant
}

/// Whose skin, which goals, and when it is judged.
fn read_cases(fields: &mut Fields<'_, '_>, shared: &Shared, drill: &mut Drill) {
    fields.some("clients");
    let clients = fields.references("clients", Thing::Client);
    for id in &clients {
        let Some(client) = shared.clients.iter().find(|client| client.id == id.value) else { continue };
        if drill.family == Family::Remedy && client.existing.is_empty() {
            let message = format!("{} has no existing work to correct", quoted(&id.value));
            fields
                .reader
                .warning(&id.place, message)
                .help("a remedy drill is about clients with existing work");
        }
        // Old work would be told and shown beside a residual that is made up for the question.
        if drill.family == Family::Hindsight && !client.existing.is_empty() {
            let message = format!(
                "{} has existing work already, and a hindsight drill asks about work that it makes up on bare skin",
                quoted(&id.value)
            );
            fields.reader.error(&id.place, message).help(
                "name clients whose `existing` is empty; what is left of this client's own work is for a remedy drill",
            );
        }
    }
    let places_colour =
        matches!(drill.family, Family::Bottle | Family::Drops | Family::Foresight | Family::Light);
    for id in clients.iter().filter(|_| places_colour) {
        let cautioned =
            shared.clients.iter().find(|client| client.id == id.value && client.cautions().next().is_some());
        if cautioned.is_some() {
            let message = format!("{} has a caution among the health answers", quoted(&id.value));
            fields.reader.error(&id.place, message).help(format!(
                "a {} drill would place colour on a client who must wait or be referred; use a remedy or triage drill, or another client",
                drill.family.word()
            ));
        }
    }
    drill.clients = values(clients);
    drill.goals = values(fields.references("goals", Thing::Goal));
    drill.further_goals = fields.flag("further_goals").unwrap_or(false);
    if drill.further_goals && !drill.goals.is_empty() {
        let place = fields.key("further_goals").unwrap_or(&fields.place).clone();
        fields
            .reader
            .error(&place, "the goals of this drill are listed, so no client's `further_goals` are drawn")
            .help("leave out either `goals` or `further_goals`");
    }
    drill.judged.months = fields.number_or(&MONTHS, HEALED_MONTHS);
    drill.judged.light = fields.word_or_none("light", &Light::ALL).unwrap_or_default();
    if drill.family == Family::Light && drill.judged.light == Light::D65 {
        let place = fields.key("light").unwrap_or(&fields.place).clone();
        fields
            .reader
            .error(&place, "a light drill asks about another `light` than D65, by which the work is shown");
    }
    drill.margin = fields.number_or(&bounds::MARGIN, 3.0);
    drill.difficulty = fields.node("difficulty").map(|node| read_band(node, fields.reader));
    if drill.family == Family::Hindsight {
        let ages = fields.some("ages_months");
        drill.ages_months = ages.iter().map(|node| fields.reader.number(node, &MONTHS)).collect();
    }
}

/// Where wrong answers come from.
fn read_tempts(fields: &mut Fields<'_, '_>, shared: &Shared, drill: &mut Drill) {
    fields.some("tempts");
    let tempts = fields.references("tempts", Thing::Misconception);
    for id in &tempts {
        let Some(misconception) = shared.misconceptions.iter().find(|other| other.id == id.value) else {
            continue;
        };
        let rule = misconception.rule.word();
        if misconception.rule == Rule::Stated {
            let message = format!("{} makes no wrong answer: its rule is `{rule}`", quoted(&id.value));
            fields.reader.error(&id.place, message).help("only options of written questions can show it");
        } else if !misconception.rule.makes_answers_of(drill.family) {
            let message = format!(
                "{} makes no wrong answer in a {} drill: its rule is `{rule}`",
                quoted(&id.value),
                drill.family.word()
            );
            let serves: Vec<&str> = Family::ALL
                .iter()
                .filter(|(family, _)| misconception.rule.makes_answers_of(*family))
                .map(|(_, word)| *word)
                .collect();
            fields
                .reader
                .warning(&id.place, message)
                .help(format!("it can tempt in {} drills", and(&serves)));
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

fn values(ids: Vec<At<String>>) -> Vec<String> {
    ids.into_iter().map(|id| id.value).collect()
}
