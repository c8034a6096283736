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
use crate::language::Language;
use crate::say;

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
    let language = &course.language;
    let (label, why) = match caution {
        None => (language.say("exercise-triage-go-on", &[]), language.say("exercise-triage-nothing", &[])),
        Some(caution) => (advised(language, caution), reasons(language, &cautions)),
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
                Some(_) => say!(language, "exercise-triage-unsafe", why = &why),
                None => why.clone(),
            };
            options.push(choice(label, why, Some((id, &misconception.lesson)), lesson));
        }
    }
    if options.len() < drill.options {
        return Err(Discard::TooFewTemptations);
    }
    let ask = say!(language, "exercise-triage-ask", client = &setting.client.name);
    let case = super::Case { goal: None, placed: None, ..setting.case(course) };
    let source =
        caution.map_or_else(|| language.say("exercise-triage-source", &[]), |caution| caution.source.clone());
    let form = draw.one_of(drill, options);
    Ok(draw.finish(lesson, drill, ask, case, form, None, &source))
}

/// What a caution asks for.
fn advised(language: &Language, caution: &Caution) -> String {
    let id = match caution.action {
        CautionAction::Wait => "exercise-triage-wait",
        CautionAction::Refer => "exercise-triage-refer",
    };
    say!(language, id, who = &caution.refer_to)
}

/// Every caution that applies, with who to ask.
fn reasons(language: &Language, cautions: &[&Caution]) -> String {
    cautions
        .iter()
        .map(|caution| {
            say!(
                language,
                "exercise-triage-reason",
                caution = &caution.name,
                say = &caution.say,
                who = &caution.refer_to,
                source = &caution.source
            )
        })
        .collect::<Vec<_>>()
        .join(" ")
}

/// What somebody of a rule would do.
fn wrong(rule: Rule, caution: Option<&Caution>, course: &Course) -> Option<String> {
    let id = match (rule, caution) {
        (Rule::ColourAlways, Some(_)) => "exercise-triage-go-on",
        (Rule::GiveAdvice, Some(_)) => "exercise-triage-advise",
        (Rule::WaitAndSee, Some(caution)) if caution.action == CautionAction::Refer => {
            "exercise-triage-two-weeks"
        }
        (Rule::SignedIsSafe, Some(_)) => "exercise-triage-signed",
        (Rule::ReferAnything, None) => {
            return course
                .cautions
                .iter()
                .find(|caution| caution.action == CautionAction::Refer)
                .map(|caution| advised(&course.language, caution));
        }
        (Rule::WaitAndSee, None) => "exercise-triage-safe-side",
        (Rule::SignedIsSafe, None) => "exercise-triage-signed-needless",
        _ => return None,
    };
    Some(course.language.say(id, &[]))
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
