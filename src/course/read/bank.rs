//! `bank/*.yaml`: written questions.

use super::Reader;
use super::fields::Fields;
use super::names::Thing;
use super::node::Node;
use crate::course::source::{At, Place};
use crate::course::{Asked, Question, QuestionOption, QuestionStep};

/// Least and most options of a question with one right one.
const OPTIONS: std::ops::RangeInclusive<usize> = 3..=5;
/// Least and most statements of which several hold, and steps of an order.
const SEVERAL: std::ops::RangeInclusive<usize> = 3..=8;

const KEYS: [&str; 10] =
    ["id", "skill", "ask", "lesson", "source", "options", "several", "steps", "strict", "caution"];

/// Reads a question.
pub(crate) fn read_question(node: &Node, reader: &mut Reader) -> Option<Question> {
    let mut fields = Fields::of(node, "a question", &KEYS, reader)?;
    let id = fields.id(Thing::Question);
    let skill = fields.reference("skill", Thing::Skill).value;
    let ask = fields.text("ask").value;
    let lesson = fields.reference("lesson", Thing::Lesson).value;
    let source = fields.text("source").value;
    let caution = fields.node("caution").is_some().then(|| fields.reference("caution", Thing::Caution).value);
    let asked = if fields.node("steps").is_some() {
        read_steps(&mut fields)
    } else {
        read_options(&mut fields, &id.place)
    };
    Some(Question { id: id.value, skill, ask, lesson, source, asked, caution })
}

/// Steps in their right order.
fn read_steps(fields: &mut Fields<'_, '_>) -> Asked {
    for other in ["options", "several"] {
        if let Some(place) = fields.key(other).cloned() {
            fields.reader.error(&place, format!("`{other}` and `steps` exclude each other"));
        }
    }
    let strict = fields.flag("strict") == Some(true);
    let nodes = fields.some("steps");
    let steps: Vec<At<QuestionStep>> =
        nodes.iter().filter_map(|node| read_step(node, fields.reader)).collect();
    let place = fields.key("steps").unwrap_or(&fields.place).clone();
    if !nodes.is_empty() && !SEVERAL.contains(&nodes.len()) {
        let message = format!("an order has 3 to 8 steps; this one has {}", nodes.len());
        fields.reader.error(&place, message);
    }
    for (number, step) in steps.iter().enumerate() {
        let say = step.value.say.to_lowercase();
        if !say.is_empty() && steps[..number].iter().any(|other| other.value.say.to_lowercase() == say) {
            fields.reader.error(&step.place, "two steps say the same");
        }
    }
    Asked::Order { steps: steps.into_iter().map(|step| step.value).collect(), strict }
}

fn read_step(node: &Node, reader: &mut Reader) -> Option<At<QuestionStep>> {
    let mut fields = Fields::of(node, "a step", &["say", "why"], reader)?;
    let say = fields.text("say");
    let why = fields.text("why").value;
    let place = say.place.clone();
    Some(At::new(QuestionStep { say: say.value, why }, place))
}

/// Options, of which one is right or several hold.
fn read_options(fields: &mut Fields<'_, '_>, id: &Place) -> Asked {
    if let Some(place) = fields.key("strict").cloned() {
        fields.reader.error(&place, "`strict` belongs to questions with `steps`");
    }
    let several = fields.flag("several") == Some(true);
    let nodes = fields.some("options");
    let options: Vec<At<QuestionOption>> =
        nodes.iter().filter_map(|node| read_option(node, fields.reader)).collect();
    let place = fields.key("options").unwrap_or(id).clone();
    let (range, words) = if several { (SEVERAL, "3 to 8") } else { (OPTIONS, "3 to 5") };
    if !nodes.is_empty() && !range.contains(&nodes.len()) {
        let message = format!("a question has {words} options; this one has {}", nodes.len());
        fields.reader.error(&place, message);
    }
    // An option that could not be read may be the right one.
    if options.len() == nodes.len() && !nodes.is_empty() {
        if several {
            check_several(&options, &place, fields.reader)
        } else {
            check_right(&options, &place, fields.reader)
        }
    }
    check_sayings(&options, fields.reader);
    let options = options.into_iter().map(|option| option.value).collect();
    if several { Asked::Several(options) } else { Asked::One(options) }
}

/// At least one statement holds, and at least one does not.
fn check_several(options: &[At<QuestionOption>], place: &Place, reader: &mut Reader) {
    let right = options.iter().filter(|option| option.value.right).count();
    if right == 0 || right == options.len() {
        let what = if right == 0 { "no option holds" } else { "every option holds" };
        reader.error(place, what).help("of several options at least one holds and at least one does not");
    }
}

fn read_option(node: &Node, reader: &mut Reader) -> Option<At<QuestionOption>> {
    let mut fields = Fields::of(node, "an option", &["say", "right", "why", "misconception"], reader)?;
    let say = fields.text("say");
    let right = fields.flag("right");
    let why = fields.text("why").value;
    let misconception = fields
        .node("misconception")
        .is_some()
        .then(|| fields.reference("misconception", Thing::Misconception));
    if let Some(id) = misconception.as_ref().filter(|_| right == Some(true)) {
        fields.reader.error(&id.place, "the right option shows no misconception").help("remove the key");
    }
    let place = say.place.clone();
    let misconception = misconception.map(|id| id.value);
    Some(At::new(QuestionOption { say: say.value, right: right?, why, misconception }, place))
}

/// Exactly one option is right.
fn check_right(options: &[At<QuestionOption>], place: &Place, reader: &mut Reader) {
    let mut right = options.iter().filter(|option| option.value.right);
    match (right.next(), right.next()) {
        (None, _) => {
            reader.error(place, "no option is right").help("write `right: true` at exactly one of them");
        }
        (Some(first), Some(second)) => {
            let (line, _) = first.place.line_and_column();
            reader
                .error(&second.place, "a second right option")
                .help(format!("the first one is in line {line}; exactly one option is right"));
        }
        _ => {}
    }
}

/// Options can be told apart, and each stands for itself.
fn check_sayings(options: &[At<QuestionOption>], reader: &mut Reader) {
    for (number, option) in options.iter().enumerate() {
        let say = option.value.say.to_lowercase();
        if ["all of the above", "none of the above", "both of the above"]
            .iter()
            .any(|phrase| say.contains(phrase))
        {
            reader
                .error(&option.place, "options are shuffled, so nothing is above")
                .help("write an option that stands for itself");
        }
        if !say.is_empty() && options[..number].iter().any(|other| other.value.say.to_lowercase() == say) {
            reader.error(&option.place, "two options say the same");
        }
    }
}
