//! What follows from an answer, as a page tells it.
//!
//! Entry point: [`Told::of`].

use super::question::around;
use super::{Now, skill_name};
use crate::assess::knowledge::{Parameters, Progress};
use crate::assess::session::Level;
use crate::colour::{Light, difference};
use crate::course::Course;
use crate::exercise::{Action, Answer, Choice, Exercise, Form, Later, OrderOf, outcome, over_time};
use crate::foresee::Shown;
use crate::language::Language;
use serde::Serialize;

/// What follows from an answer.
#[derive(Debug, Clone, Serialize)]
pub struct Told<'a> {
    /// Between 0 and 1.
    pub credit: f64,
    /// Whether nothing was better.
    pub right: bool,
    /// What follows, in words.
    pub consequence: String,
    /// The answer given.
    pub yours: Answered,
    /// The best answer, where another one was given.
    pub best: Option<Answered>,
    /// What follows from the best answer, where another one was given.
    pub best_consequence: Option<String>,
    /// The misconception that the answer shows.
    pub misconception: Option<MisconceptionView<'a>>,
    /// The lesson to reread, unless the answer was right.
    pub lesson: Option<LessonView<'a>>,
    /// What every answer there was to choose from is worth, in the order shown; of drops and numbers, the best and those that
    /// misconceptions lead to; of an order, the steps in their right order.
    pub worth: Vec<WorthView>,
    /// Of a number, the distance from the right one that costs nothing, with its unit.
    pub tolerance: Option<String>,
    /// What was proved, in words.
    pub proof: Option<String>,
    /// Where the answer comes from.
    pub source: String,
    /// How well the skill is known now.
    pub skill: SkillNow<'a>,
    /// The record, to be kept.
    pub progress: String,
}

/// An answer with its colour over time.
#[derive(Debug, Clone, Serialize)]
pub struct Answered {
    /// In words; of statements and steps, one text for each.
    pub say: Vec<String>,
    /// Its colour, in order of time; empty where it colours nothing.
    pub seen: Vec<LaterView>,
    /// Rules that restrict what is in it.
    pub restricted: Vec<String>,
}

/// A colour at some time.
#[derive(Debug, Clone, Serialize)]
pub struct LaterView {
    /// Months after the placement; `None` where the question is not about a time.
    pub months: Option<f64>,
    /// Whether the answer is marked by this one.
    pub judged: bool,
    /// The light.
    pub light: Light,
    /// The colour.
    pub colour: Shown,
    /// The place without work at that time.
    pub bare_skin: Shown,
    /// The skin around the place, where it has an edge.
    pub around: Option<Shown>,
    /// In words.
    pub words: String,
    /// ΔE00 from the goal, where there is one.
    pub from_goal: Option<f64>,
}

/// A misconception.
#[derive(Debug, Clone, Serialize)]
pub struct MisconceptionView<'a> {
    /// Id.
    pub id: &'a str,
    /// What is believed.
    pub belief: &'a str,
    /// Why it seems right.
    pub tempting: &'a str,
    /// What really happens.
    pub truth: &'a str,
}

/// A lesson.
#[derive(Debug, Clone, Serialize)]
pub struct LessonView<'a> {
    /// Id.
    pub id: &'a str,
    /// Title.
    pub title: &'a str,
}

/// What an answer is worth.
#[derive(Debug, Clone, Serialize)]
pub struct WorthView {
    /// In words.
    pub say: String,
    /// Between 0 and 1; `None` for a step.
    pub credit: Option<f64>,
    /// What follows from it, or why.
    pub why: String,
}

/// A skill after an answer.
#[derive(Debug, Clone, Serialize)]
pub struct SkillNow<'a> {
    /// Id.
    pub id: &'a str,
    /// Name.
    pub name: &'a str,
    /// Chance that it was known before the answer, 0 to 1.
    pub before: f64,
    /// Chance that it is known now.
    pub known: f64,
    /// The same as a word.
    pub level: Level,
}

impl<'a> Told<'a> {
    /// What follows from an answer that was marked as `chosen`; the record before and after it.
    pub fn of(
        course: &'a Course,
        exercise: &'a Exercise,
        chosen: &Choice,
        (before, after): (&Progress, &Progress),
        now: Now,
    ) -> Self {
        let mark = &chosen.mark;
        let right = mark.credit >= 1.0;
        let best = outcome(course, exercise, &exercise.form.key())
            .ok()
            .filter(|best| !right || is_other(best, chosen));
        let parameters = Parameters::default();
        let known =
            |progress: &Progress| progress.knowledge(&exercise.skill, &parameters).known_at(&parameters, now);
        let misconception = mark.misconception.as_deref().and_then(|id| course.misconception(id));
        let lesson = course.lesson(&mark.lesson).filter(|_| !right);
        Told {
            credit: mark.credit,
            right,
            consequence: mark.consequence.clone(),
            yours: Answered::of(course, exercise, chosen),
            best_consequence: best.as_ref().filter(|_| !right).map(|best| best.mark.consequence.clone()),
            best: best.map(|best| Answered::of(course, exercise, &best)),
            misconception: misconception.map(|found| MisconceptionView {
                id: &found.id,
                belief: &found.belief,
                tempting: &found.tempting,
                truth: &found.truth,
            }),
            lesson: lesson.map(|(_, lesson)| LessonView { id: &lesson.id, title: &lesson.page.title }),
            worth: worth(&course.language, &exercise.form),
            tolerance: match &exercise.form {
                Form::Number(number) => Some(number.in_words(&course.language, number.tolerance)),
                _ => None,
            },
            proof: exercise.proof.as_ref().map(|proof| proof.said(&course.language, exercise.family)),
            source: exercise.source.clone(),
            skill: SkillNow {
                id: &exercise.skill,
                name: skill_name(course, &exercise.skill),
                before: known(before),
                known: known(after),
                level: Level::of(known(after)),
            },
            progress: after.write(),
        }
    }
}

/// Whether two answers place different mixes: one as good as the best is worth seeing beside it.
fn is_other(best: &Choice, chosen: &Choice) -> bool {
    matches!(best.action, Action::Place(_)) && best.action != chosen.action
}

/// An answer in words: letters of steps and statements say nothing where they are not seen.
fn said(exercise: &Exercise, choice: &Choice) -> Vec<String> {
    let label = |place: usize| match &exercise.form {
        Form::Order(order) => order.steps[place].say.clone(),
        form => form.options()[place].label.clone(),
    };
    match Answer::read(&exercise.form, &choice.label) {
        Ok(Answer::Several(places) | Answer::Order(places)) => places.into_iter().map(label).collect(),
        _ => vec![choice.label.clone()],
    }
}

impl Answered {
    fn of(course: &Course, exercise: &Exercise, choice: &Choice) -> Self {
        let light = exercise.case.as_ref().map_or(Light::D65, |case| case.light);
        let goal = exercise.case.as_ref().and_then(|case| case.goal.as_ref());
        let client = exercise.case.as_ref().and_then(|case| course.client(&case.client));
        let around = client.and_then(|client| around(client, light));
        let later = |later: Later| LaterView {
            months: later.months,
            judged: later.judged,
            light,
            colour: Shown::of(later.seen.lab),
            bare_skin: Shown::of(later.bare.lab),
            around,
            words: later.reading.words,
            from_goal: goal.map(|goal| difference(later.seen.lab, goal.lab)),
        };
        let restricted = match &choice.action {
            Action::Place(mix) => course
                .shelf
                .restrictions_of(mix)
                .into_iter()
                .map(|(colourant, rule)| course.language.restriction("exercise-restricted", colourant, rule))
                .collect(),
            _ => Vec::new(),
        };
        Answered {
            say: said(exercise, choice),
            seen: over_time(course, exercise, choice).into_iter().map(later).collect(),
            restricted,
        }
    }
}

fn worth(language: &Language, form: &Form) -> Vec<WorthView> {
    let of = |choice: &Choice| WorthView {
        say: choice.label.clone(),
        credit: Some(choice.mark.credit),
        why: choice.mark.consequence.clone(),
    };
    match form {
        Form::One(one) => one.options.iter().map(of).collect(),
        Form::Several(several) => several.options.iter().map(of).collect(),
        Form::Order(order) => steps(order),
        Form::Drops(drops) => {
            std::iter::once(&drops.best).chain(&drops.near).chain(&drops.tempting).map(of).collect()
        }
        Form::Number(number) => {
            let say = number.in_words(language, number.key);
            let right = WorthView { say, credit: Some(1.0), why: number.why.clone() };
            let wrong = number.tempting.iter().map(|wrong| WorthView {
                say: number.in_words(language, wrong.value),
                credit: Some(0.0),
                why: wrong.why.clone(),
            });
            std::iter::once(right).chain(wrong).collect()
        }
    }
}

fn steps(order: &OrderOf) -> Vec<WorthView> {
    let of = |&place: &usize| {
        let step = &order.steps[place];
        WorthView { say: step.say.clone(), credit: None, why: step.why.clone() }
    };
    order.key.iter().map(of).collect()
}
