//! `triage`: go on, wait, or refer. All or nothing: there is no half safe.
//!
//! The client's health answers decide, by the course's cautions; a client without one may be worked on. Wrong answers are what
//! misconceptions about safety would do.

use super::draw::Setting;
use super::generate::{Attempt, Discard};
use super::seed::shuffle;
use super::{Action, Choice, Exercise, Mark};
use crate::course::words::CautionAction;
use crate::course::{Caution, Course, Drill, Lesson, Rule};

/// One attempt at an exercise.
pub(super) fn attempt(
    course: &Course,
    lesson: &Lesson,
    drill: &Drill,
    mut draw: Attempt,
) -> Result<Exercise, Discard> {
    let setting = Setting::draw(course, drill, draw.client, &mut draw.rng).ok_or(Discard::Unresolved)?;
    let cautions: Vec<&Caution> =
        setting.client.health.iter().filter_map(|note| course.caution(&note.caution)).collect();
    // Where several apply, referring comes before waiting.
    let caution =
        cautions.iter().find(|caution| caution.action == CautionAction::Refer).or(cautions.first()).copied();
    let (label, why) = match caution {
        None => {
            (GO_ON.to_owned(), "Nothing in the answers on health calls for waiting or referring.".to_owned())
        }
        Some(caution) => (advised(caution), reasons(&cautions)),
    };
    let mut options = vec![choice(label, why.clone(), None, lesson)];
    let mut ways: Vec<&String> = drill.tempts.iter().collect();
    shuffle(&mut draw.rng, &mut ways);
    for id in ways {
        if options.len() == drill.options {
            break;
        }
        let Some(misconception) = course.misconception(id) else { continue };
        let Some(label) = wrong(misconception.rule, caution, course) else { continue };
        if options.iter().all(|other| other.label != label) {
            let why = match caution {
                Some(_) => format!("Not safe. {why}"),
                None => why.clone(),
            };
            options.push(choice(label, why, Some((id, &misconception.lesson)), lesson));
        }
    }
    if options.len() < drill.options {
        return Err(Discard::TooFewTemptations);
    }
    let ask = format!("{} wants the work done today. What do you do?", setting.client.name);
    let case = super::Case { goal: None, placed: None, ..setting.case(&course.shelf) };
    let source = caution.map_or("the course's list of cautions", |caution| caution.source.as_str());
    let form = draw.one_of(options);
    Ok(draw.finish(lesson, drill, ask, case, form, None, source))
}

const GO_ON: &str = "Go on: patch test, consent and records as always";

/// What a caution asks for.
fn advised(caution: &Caution) -> String {
    match caution.action {
        CautionAction::Wait => format!("Wait, and explain why; for questions: {}", caution.refer_to),
        CautionAction::Refer => format!("Do not work today; refer to {}", caution.refer_to),
    }
}

/// Every caution that applies, with who to ask.
fn reasons(cautions: &[&Caution]) -> String {
    cautions
        .iter()
        .map(|caution| {
            format!(
                "{}: {} Who to ask: {}. Source: {}.",
                caution.name, caution.say, caution.refer_to, caution.source
            )
        })
        .collect::<Vec<_>>()
        .join(" ")
}

/// What somebody of a rule would do.
fn wrong(rule: Rule, caution: Option<&Caution>, course: &Course) -> Option<String> {
    match (rule, caution) {
        (Rule::ColourAlways, Some(_)) => Some(GO_ON.to_owned()),
        (Rule::GiveAdvice, Some(_)) => {
            Some("Advise the client what to do about it, and go on once it has been done".to_owned())
        }
        (Rule::WaitAndSee, Some(caution)) if caution.action == CautionAction::Refer => {
            Some("Wait two weeks, then go on if the client feels well".to_owned())
        }
        (Rule::SignedIsSafe, Some(_)) => Some("Have the client sign for the risk, then go on".to_owned()),
        (Rule::ReferAnything, None) => course
            .cautions
            .iter()
            .find(|caution| caution.action == CautionAction::Refer)
            .map(|caution| format!("Do not work today; refer to {}", caution.refer_to)),
        (Rule::WaitAndSee, None) => Some("Wait two weeks, to be on the safe side".to_owned()),
        (Rule::SignedIsSafe, None) => {
            Some("Go on; with a signed consent neither patch test nor records are needed".to_owned())
        }
        _ => None,
    }
}

fn choice(
    label: String,
    consequence: String,
    misconception: Option<(&str, &str)>,
    lesson: &Lesson,
) -> Choice {
    Choice {
        action: Action::Say(label.clone()),
        label,
        healed: None,
        reading: None,
        error: None,
        mark: Mark {
            credit: if misconception.is_none() { 1.0 } else { 0.0 },
            consequence,
            lesson: misconception.map_or(lesson.id.as_str(), |(_, lesson)| lesson).to_owned(),
            misconception: misconception.map(|(id, _)| id.to_owned()),
        },
    }
}
