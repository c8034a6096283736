//! `bank/*.yaml`: written questions.

use super::Reader;
use super::fields::Fields;
use super::names::Thing;
use super::node::Node;
use crate::course::source::At;
use crate::course::{Question, QuestionOption};

/// Least and most options of a question.
const OPTIONS: std::ops::RangeInclusive<usize> = 3..=5;

/// Reads a question.
pub(crate) fn read_question(node: &Node, reader: &mut Reader) -> Option<Question> {
    let keys = ["id", "skill", "ask", "lesson", "source", "options"];
    let mut fields = Fields::of(node, "a question", &keys, reader)?;
    let id = fields.id(Thing::Question);
    let skill = fields.reference("skill", Thing::Skill).value;
    let ask = fields.text("ask").value;
    let lesson = fields.reference("lesson", Thing::Lesson).value;
    let source = fields.text("source").value;
    let nodes = fields.some("options");
    let options: Vec<At<QuestionOption>> =
        nodes.iter().filter_map(|node| read_option(node, fields.reader)).collect();
    if !nodes.is_empty() && !OPTIONS.contains(&nodes.len()) {
        let place = fields.key("options").unwrap_or(&id.place);
        let message = format!("a question has 3 to 5 options; this one has {}", nodes.len());
        fields.reader.error(place, message);
    }
    // An option that could not be read may be the right one.
    if options.len() == nodes.len() && !nodes.is_empty() {
        let place = fields.key("options").unwrap_or(&id.place);
        check_right(&options, place, fields.reader);
    }
    check_sayings(&options, fields.reader);
    let options = options.into_iter().map(|option| option.value).collect();
    Some(Question { id: id.value, skill, ask, lesson, source, options })
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
fn check_right(options: &[At<QuestionOption>], place: &crate::course::source::Place, reader: &mut Reader) {
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
