//! `recall` and `sequence`: written questions from the bank, and `triage` where it asks one.

use super::form::{Form, OneOf, OrderOf, SeveralOf, Step};
use super::seed::{shuffle, stream};
use super::{Action, Choice, Exercise, Mark};
use crate::course::{Asked, Course, Drill, Lesson, Question, QuestionOption};
use crate::say;

/// The question this number of the drill's pool asks; every question once before any comes again.
pub(super) fn make(course: &Course, lesson: &Lesson, drill: &Drill, number: u32) -> Option<Exercise> {
    let mut order: Vec<&String> = drill.questions.iter().collect();
    shuffle(&mut stream(course.seed, &["recall", &drill.id]), &mut order);
    let question = course.question(order.get(number as usize % order.len().max(1))?)?;
    let mut rng = stream(course.seed, &["recall options", &drill.id, &number.to_string()]);
    let form = match &question.asked {
        Asked::One(options) => {
            let mut options: Vec<Choice> =
                options.iter().map(|option| choice(course, question, option)).collect();
            shuffle(&mut rng, &mut options);
            let key = options.iter().position(|option| option.mark.credit == 1.0)?;
            Form::One(OneOf { options, key, pictured: false })
        }
        Asked::Several(options) => {
            let mut options: Vec<Choice> =
                options.iter().map(|option| choice(course, question, option)).collect();
            shuffle(&mut rng, &mut options);
            Form::Several(SeveralOf { options })
        }
        Asked::Order { steps, strict } => {
            let mut order: Vec<usize> = (0..steps.len()).collect();
            shuffle(&mut rng, &mut order);
            let key =
                (0..steps.len()).filter_map(|turn| order.iter().position(|&from| from == turn)).collect();
            let steps = order
                .iter()
                .map(|&from| Step { say: steps[from].say.clone(), why: steps[from].why.clone() })
                .collect();
            Form::Order(OrderOf { steps, key, all_or_nothing: *strict, lesson: question.lesson.clone() })
        }
    };
    Some(Exercise {
        drill: drill.id.clone(),
        number,
        family: drill.family,
        skill: drill.skill.clone(),
        lesson: lesson.id.clone(),
        ask: question.ask.clone(),
        case: None,
        form,
        proof: None,
        source: question.source.clone(),
        written: Some(question.id.clone()),
    })
}

/// An option; where the question is about a caution, every consequence names it and who to ask.
fn choice(course: &Course, question: &Question, option: &QuestionOption) -> Choice {
    let caution = question.caution.as_deref().and_then(|id| course.caution(id));
    let consequence = match caution {
        Some(caution) => {
            let language = &course.language;
            let (why, name, who) = (&option.why, &caution.name, &caution.refer_to);
            say!(language, "exercise-caution", why = why, caution = name, who = who)
        }
        None => option.why.clone(),
    };
    Choice {
        label: option.say.clone(),
        action: Action::Say(option.say.clone()),
        work: None,
        healed: None,
        reading: None,
        error: None,
        mark: Mark {
            credit: if option.right { 1.0 } else { 0.0 },
            consequence,
            misconception: option.misconception.clone(),
            lesson: question.lesson.clone(),
        },
    }
}
