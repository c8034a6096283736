//! `recall`: a written question from the bank.

use super::seed::{shuffle, stream};
use super::{Action, Choice, Exercise, Form, Mark, OneOf};
use crate::course::{Course, Drill, Lesson, Question};

/// The question this number of the drill's pool asks; every question once before any comes again.
pub(super) fn make(course: &Course, lesson: &Lesson, drill: &Drill, number: u32) -> Option<Exercise> {
    let mut order: Vec<&String> = drill.questions.iter().collect();
    shuffle(&mut stream(course.seed, &["recall", &drill.id]), &mut order);
    let question = course.question(order[number as usize % order.len()])?;
    let mut options: Vec<Choice> = question.options.iter().map(|option| choice(question, option)).collect();
    shuffle(&mut stream(course.seed, &["recall options", &drill.id, &number.to_string()]), &mut options);
    let key = options.iter().position(|option| option.mark.credit == 1.0)?;
    Some(Exercise {
        drill: drill.id.clone(),
        number,
        family: drill.family,
        skill: drill.skill.clone(),
        lesson: lesson.id.clone(),
        ask: question.ask.clone(),
        case: None,
        form: Form::One(OneOf { options, key, pictured: false }),
        proof: None,
        source: question.source.clone(),
    })
}

fn choice(question: &Question, option: &crate::course::QuestionOption) -> Choice {
    Choice {
        label: option.say.clone(),
        action: Action::Say(option.say.clone()),
        healed: None,
        reading: None,
        error: None,
        mark: Mark {
            credit: if option.right { 1.0 } else { 0.0 },
            consequence: option.why.clone(),
            misconception: option.misconception.clone(),
            lesson: question.lesson.clone(),
        },
    }
}
