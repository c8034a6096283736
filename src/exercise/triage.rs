//! `triage`: go on, wait, or refer. All or nothing: there is no half safe.
//!
//! The client's health answers decide, by the course's cautions; a client without one may be worked on. Wrong answers are what
//! misconceptions about safety would do.

use super::draw::Setting;
use super::generate::{Attempt, Discard};
use super::place::{Looks, Shown};
use super::seed::{below, shuffle};
use super::{Action, Choice, Exercise, Mark};
use crate::colour::Lab;
use crate::course::words::CautionAction;
use crate::course::{Caution, Client, Course, Drill, Lesson, Misconception, Rule};
use crate::language::Language;
use crate::say;
use rand::Rng;

/// One attempt at an exercise.
pub(super) fn attempt(
    course: &Course,
    lesson: &Lesson,
    drill: &Drill,
    mut draw: Attempt,
) -> Result<Exercise, Discard> {
    let setting = Setting::draw(course, drill, draw.client, &mut draw.rng).ok_or(Discard::Unresolved)?;
    let cautions: Vec<&Caution> = setting.client.cautions().filter_map(|id| course.caution(id)).collect();
    // Where several apply, referring comes before waiting.
    let caution =
        cautions.iter().find(|caution| caution.action == CautionAction::Refer).or(cautions.first()).copied();
    let language = &course.language;
    let wordings = Wordings::draw(&mut draw.rng);
    let (right, why) = match caution {
        None => (Doing::GoOn, language.say("exercise-triage-nothing", &[])),
        Some(caution) => (Doing::Follow(caution), reasons(language, &cautions)),
    };
    let said = |doing: Doing| (doing.words(language, &wordings), doing.action(language));
    let looks = |label: &str, names_whom_to_ask: bool| Looks {
        lab: NO_COLOUR,
        length: label.chars().count(),
        of_kind: names_whom_to_ask,
    };
    let right = said(right);
    let key = looks(&right.0, caution.is_some());
    let mut options = vec![choice(right, why.clone(), None, lesson)];
    let mut wrong = Vec::new();
    for (misconception, doing) in temptations(course, drill, (setting.client, &cautions), &mut draw) {
        if options.len() == drill.options {
            break;
        }
        let (label, action) = said(doing);
        if options.iter().all(|other| other.label != label) {
            let why = say!(language, doing.objection(caution.is_some()), why = &why);
            wrong.push(looks(&label, matches!(doing, Doing::Follow(_))));
            options.push(choice((label, action), why, Some(misconception), lesson));
        }
    }
    if options.len() < drill.options {
        return Err(Discard::TooFewTemptations);
    }
    if !draw.place(drill, drill.options, Shown::Words).is_had_by(key, &wrong) {
        return Err(Discard::OneSided);
    }
    let ask = say!(language, "exercise-triage-ask", client = &setting.client.name);
    let case = super::Case { goal: None, placed: None, ..setting.case(course) };
    let source =
        caution.map_or_else(|| language.say("exercise-triage-source", &[]), |caution| caution.source.clone());
    let form = draw.one_of(drill, options);
    Ok(draw.finish(lesson, drill, ask, case, form, None, &source))
}

/// What somebody does. The words of each may stand in every case, so that they alone tell nothing.
#[derive(Clone, Copy)]
enum Doing<'c> {
    GoOn,
    /// What a caution asks for: of the client's own it is right, of another wrong.
    Follow(&'c Caution),
    Advise,
    WaitAndGoOn,
    LetSign,
}

/// In how many lengths each of these can be said.
const WORDINGS: usize = 3;

/// In which of its wordings each is said in a draw, whether it is right or wrong there.
#[derive(Clone, Copy)]
struct Wordings {
    go_on: usize,
    follow: usize,
    advise: usize,
    wait: usize,
    sign: usize,
}

impl Wordings {
    /// The one of middle length each.
    const PLAIN: Self = Wordings { go_on: 1, follow: 1, advise: 1, wait: 1, sign: 1 };

    fn draw(rng: &mut impl Rng) -> Self {
        let mut wording = || below(rng, WORDINGS);
        Wordings { go_on: wording(), follow: wording(), advise: wording(), wait: wording(), sign: wording() }
    }
}

impl Doing<'_> {
    /// What it is, however it is worded.
    fn action(self, language: &Language) -> Action {
        Action::Say(self.words(language, &Wordings::PLAIN))
    }

    fn words(self, language: &Language, wordings: &Wordings) -> String {
        let (id, wording) = match self {
            Doing::GoOn => ("exercise-triage-go-on", wordings.go_on),
            Doing::Follow(caution) => {
                let id = match caution.action {
                    CautionAction::Wait => "exercise-triage-wait",
                    CautionAction::Refer => "exercise-triage-refer",
                };
                return say!(language, &worded(id, wordings.follow), who = &caution.refer_to);
            }
            Doing::Advise => ("exercise-triage-advise", wordings.advise),
            Doing::WaitAndGoOn => ("exercise-triage-two-weeks", wordings.wait),
            Doing::LetSign => ("exercise-triage-signed", wordings.sign),
        };
        language.say(&worded(id, wording), &[])
    }

    /// The message that says what is wrong with it, where a caution holds or none does.
    fn objection(self, is_cautioned: bool) -> &'static str {
        match self {
            Doing::Advise => "exercise-triage-not-yours",
            Doing::LetSign => "exercise-triage-no-signature",
            Doing::Follow(_) if is_cautioned => "exercise-triage-elsewhere",
            Doing::GoOn | Doing::WaitAndGoOn if is_cautioned => "exercise-triage-unsafe",
            _ => "exercise-triage-needless",
        }
    }
}

/// The id of a message in one of its wordings.
fn worded(id: &str, wording: usize) -> String {
    format!("{id}{}", ["-briefly", "", "-fully"][wording])
}

/// What the drill's misconceptions would do with a client of whom these cautions hold, in random order. The first, where there is such a
/// thing, is right for another client: else the kind of an answer would tell.
fn temptations<'c>(
    course: &'c Course,
    drill: &Drill,
    (client, cautions): (&Client, &[&Caution]),
    draw: &mut Attempt,
) -> Vec<(&'c Misconception, Doing<'c>)> {
    let mut tempting: Vec<(&Misconception, Doing)> = drill
        .tempts
        .iter()
        .filter_map(|id| course.misconception(id))
        .filter_map(|misconception| {
            let mut ways = wrong(misconception.rule, course, client, cautions);
            shuffle(&mut draw.rng, &mut ways);
            Some((misconception, ways.pop()?))
        })
        .collect();
    shuffle(&mut draw.rng, &mut tempting);
    let is_right_elsewhere = |(_, doing): &(_, Doing)| matches!(doing, Doing::GoOn | Doing::Follow(_));
    let Some(first) = tempting.iter().position(is_right_elsewhere) else { return tempting };
    let first = tempting.remove(first);
    // A second one stands beside it half of the time where going on is right, and more seldom where it is one of the wrong answers: so that among
    // going on and two advices each is as often right.
    let is_second = below(&mut draw.rng, if cautions.is_empty() { 2 } else { 3 }) == 0;
    let (next, last): (Vec<_>, Vec<_>) =
        tempting.into_iter().partition(|tempting| is_right_elsewhere(tempting) == is_second);
    [first].into_iter().chain(next).chain(last).collect()
}

/// Answers here have no colour.
const NO_COLOUR: Lab = Lab::new(100.0, 0.0, 0.0);

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

/// What somebody of a rule might do wrongly with a client of whom these cautions hold.
fn wrong<'c>(rule: Rule, course: &'c Course, client: &Client, cautions: &[&Caution]) -> Vec<Doing<'c>> {
    // Somebody's: what no client ever has would be known for a wrong answer. What only clients with old work have is about that, and might be right
    // for whoever else has some.
    let of_somebody = |action: Option<CautionAction>| {
        let is_likely = move |caution: &&Caution| {
            let has = |client: &&Client| client.cautions().any(|id| id == caution.id);
            let mut holders = course.clients.iter().filter(has).peekable();
            holders.peek().is_some()
                && (client.existing.is_empty() || holders.any(|holder| holder.existing.is_empty()))
        };
        let asks = move |caution: &&Caution| action.is_none_or(|action| caution.action == action);
        course.cautions.iter().filter(is_likely).filter(asks).map(Doing::Follow)
    };
    let is_to_refer = cautions.iter().any(|caution| caution.action == CautionAction::Refer);
    match (rule, cautions.is_empty()) {
        (Rule::ColourAlways, false) => vec![Doing::GoOn],
        (Rule::AnyReferral, false) => {
            let misses = |doing: &Doing| match doing {
                Doing::Follow(other) => cautions.iter().all(|caution| caution.not_met_by.contains(&other.id)),
                _ => false,
            };
            of_somebody(None).filter(misses).collect()
        }
        (Rule::ReferAnything, true) => of_somebody(Some(CautionAction::Refer)).collect(),
        (Rule::WaitAnything, true) => {
            of_somebody(Some(CautionAction::Wait)).chain([Doing::WaitAndGoOn]).collect()
        }
        (Rule::WaitAndSee, false) if is_to_refer => vec![Doing::WaitAndGoOn],
        (Rule::GiveAdvice, _) => vec![Doing::Advise],
        (Rule::SignedIsSafe, _) => vec![Doing::LetSign],
        _ => Vec::new(),
    }
}

fn choice(
    (label, action): (String, Action),
    consequence: String,
    misconception: Option<&Misconception>,
    lesson: &Lesson,
) -> Choice {
    Choice {
        action,
        label,
        work: None,
        healed: None,
        reading: None,
        error: None,
        mark: Mark {
            credit: if misconception.is_none() { 1.0 } else { 0.0 },
            consequence,
            lesson: misconception.map_or(&lesson.id, |misconception| &misconception.lesson).clone(),
            misconception: misconception.map(|misconception| misconception.id.clone()),
        },
    }
}
