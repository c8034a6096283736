//! What every answer to one question is worth, apart from the course it was made from.
//!
//! Entry point: [`MarkTable::new`]. A table keeps the form of the answer with every mark, and of drops every possible mix, simulated
//! once; [`MarkTable::given`] reads an answer by it.

use super::marking::Given;
use super::put::QuestionPut;
use crate::course::{Course, Family, Limits};
use crate::exercise::{
    Action, Answer, AnswerError, Choice, DropsOf, Exercise, Form, Mark, NumberOf, OneOf, OrderOf, OrderStep,
    SeveralOf, WrongNumber, mixes, outcome,
};
use crate::figure::fixed;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::sync::Arc;

/// What every answer to one question is worth.
#[derive(Debug, Clone, Serialize, Deserialize)]
#[serde(from = "Kept", into = "Kept")]
pub struct MarkTable {
    kept: Kept,
    /// The question without its case: what is needed to read an answer.
    pub(super) exercise: Exercise,
    /// What a report needs to know of the question.
    put: Arc<QuestionPut>,
}

/// A table as it is kept.
#[derive(Debug, Clone, Serialize, Deserialize)]
struct Kept {
    skill: String,
    lesson: String,
    /// The answer with full credit, as people write it.
    key: String,
    /// Id of the question of the bank it asks.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    written: Option<String>,
    /// Where the answer comes from; tables kept by earlier versions do not say.
    #[serde(skip_serializing_if = "String::is_empty", default)]
    source: String,
    /// What was proved of it, in words.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    proof: Option<String>,
    answer: KeptForm,
}

#[derive(Debug, Clone, Serialize, Deserialize)]
#[serde(tag = "form", rename_all = "kebab-case")]
enum KeptForm {
    One {
        key: usize,
        options: Vec<Worth>,
    },
    Several {
        options: Vec<Worth>,
    },
    Order {
        key: Vec<usize>,
        steps: Vec<KeptStep>,
        all_or_nothing: bool,
        lesson: String,
    },
    Drops {
        bottles: Vec<String>,
        modifiers: Vec<String>,
        drops: u32,
        modifier_drops: u32,
        mixes: BTreeMap<String, Worth>,
    },
    Number {
        name: String,
        unit: String,
        key: f64,
        tolerance: f64,
        worthless: f64,
        why: String,
        tempting: Vec<KeptNumber>,
        lesson: String,
    },
}

/// An answer and what it is worth.
#[derive(Debug, Clone, Serialize, Deserialize)]
struct Worth {
    say: String,
    credit: f64,
    consequence: String,
    #[serde(skip_serializing_if = "Option::is_none", default)]
    misconception: Option<String>,
    lesson: String,
}

#[derive(Debug, Clone, Serialize, Deserialize)]
struct KeptStep {
    say: String,
    why: String,
}

#[derive(Debug, Clone, Serialize, Deserialize)]
struct KeptNumber {
    value: f64,
    why: String,
    misconception: String,
}

impl MarkTable {
    /// The table of an exercise. Of drops every possible mix is simulated, once.
    pub fn new(course: &Course, exercise: &Exercise) -> Self {
        MarkTable::from(Kept {
            skill: exercise.skill.clone(),
            lesson: lesson_of(exercise).to_owned(),
            key: exercise.form.key().to_string(),
            written: exercise.written.clone(),
            source: exercise.source.clone(),
            proof: exercise.proof.as_ref().map(|proof| proof.said(&course.language, exercise.family)),
            answer: KeptForm::new(course, exercise),
        })
    }

    /// Id of the skill.
    pub fn skill(&self) -> &str {
        &self.kept.skill
    }

    /// The answer with full credit, as people write it.
    pub fn key(&self) -> &str {
        &self.kept.key
    }

    /// The same as short as a person needs it who marks by hand.
    pub fn key_to_read(&self) -> String {
        match &self.kept.answer {
            KeptForm::Number { key, .. } => fixed(*key, 1),
            _ => self.kept.key.clone(),
        }
    }

    /// Where the answer comes from; empty in a table kept by an earlier version.
    pub fn source(&self) -> &str {
        &self.kept.source
    }

    /// What was proved of it, in words; nothing of an answer that no colour decides.
    pub fn proof(&self) -> Option<&str> {
        self.kept.proof.as_deref()
    }

    /// Id of the lesson.
    pub fn lesson(&self) -> &str {
        &self.kept.lesson
    }

    /// The question as it was put.
    pub fn put(&self) -> &Arc<QuestionPut> {
        &self.put
    }

    /// Reads and marks a raw answer; see [`Given`].
    ///
    /// # Errors
    /// [`AnswerError`] where it cannot be read.
    pub fn given(&self, course: &Course, raw: &str) -> Result<Given, AnswerError> {
        Given::read(course, &self.exercise, self.lesson(), raw, |answer| self.of_mix(answer))
    }

    /// The mark of a mix; `None` where it is none that may be given.
    fn of_mix(&self, answer: &Answer) -> Option<Mark> {
        match &self.kept.answer {
            KeptForm::Drops { mixes, .. } => mixes.get(&answer.to_string()).map(Worth::mark),
            _ => None,
        }
    }
}

/// The lesson that treats a question: that of its right option, or the one its drill stands in.
fn lesson_of(exercise: &Exercise) -> &str {
    match &exercise.form {
        Form::One(one) => one.options.get(one.key).map_or(&exercise.lesson, |right| &right.mark.lesson),
        _ => &exercise.lesson,
    }
}

impl KeptForm {
    fn new(course: &Course, exercise: &Exercise) -> Self {
        let worths = |choices: &[Choice]| {
            choices.iter().map(|choice| Worth::of(&choice.label, &choice.mark)).collect()
        };
        match &exercise.form {
            Form::One(one) => KeptForm::One { key: one.key, options: worths(&one.options) },
            Form::Several(several) => KeptForm::Several { options: worths(&several.options) },
            Form::Order(order) => KeptForm::Order {
                key: order.key.clone(),
                steps: order
                    .steps
                    .iter()
                    .map(|step| KeptStep { say: step.say.clone(), why: step.why.clone() })
                    .collect(),
                all_or_nothing: order.all_or_nothing,
                lesson: order.lesson.clone(),
            },
            Form::Drops(drops) => KeptForm::Drops {
                bottles: drops.limits.bottles.clone(),
                modifiers: drops.limits.modifiers.clone(),
                drops: drops.limits.drops,
                modifier_drops: drops.limits.modifier_drops,
                mixes: mixes(&drops.limits)
                    .into_iter()
                    .filter_map(|mix| {
                        let answer = Answer::Drops(mix);
                        let seen = outcome(course, exercise, &answer).ok()?;
                        Some((answer.to_string(), Worth::of(&seen.label, &seen.mark)))
                    })
                    .collect(),
            },
            Form::Number(number) => KeptForm::Number {
                name: number.name.clone(),
                unit: number.unit.clone(),
                key: number.key,
                tolerance: number.tolerance,
                worthless: number.worthless,
                why: number.why.clone(),
                tempting: number
                    .tempting
                    .iter()
                    .map(|wrong| KeptNumber {
                        value: wrong.value,
                        why: wrong.why.clone(),
                        misconception: wrong.misconception.clone(),
                    })
                    .collect(),
                lesson: number.lesson.clone(),
            },
        }
    }

    /// The form of the answer again, without colours.
    fn form(&self) -> Form {
        let choices = |worths: &[Worth]| worths.iter().map(Worth::choice).collect();
        match self {
            KeptForm::One { key, options } => {
                Form::One(OneOf { options: choices(options), key: *key, pictured: false })
            }
            KeptForm::Several { options } => Form::Several(SeveralOf { options: choices(options) }),
            KeptForm::Order { key, steps, all_or_nothing, lesson } => Form::Order(OrderOf {
                steps: steps
                    .iter()
                    .map(|step| OrderStep { say: step.say.clone(), why: step.why.clone() })
                    .collect(),
                key: key.clone(),
                all_or_nothing: *all_or_nothing,
                lesson: lesson.clone(),
            }),
            KeptForm::Drops { bottles, modifiers, drops, modifier_drops, .. } => {
                Form::Drops(Box::new(DropsOf {
                    limits: Limits {
                        bottles: bottles.clone(),
                        modifiers: modifiers.clone(),
                        drops: *drops,
                        modifier_drops: *modifier_drops,
                    },
                    best: said(
                        "",
                        Mark {
                            credit: 1.0,
                            consequence: String::new(),
                            misconception: None,
                            lesson: String::new(),
                        },
                    ),
                    near: Vec::new(),
                    tempting: Vec::new(),
                    best_error: 0.0,
                }))
            }
            KeptForm::Number { name, unit, key, tolerance, worthless, why, tempting, lesson } => {
                Form::Number(NumberOf {
                    name: name.clone(),
                    unit: unit.clone(),
                    key: *key,
                    tolerance: *tolerance,
                    worthless: *worthless,
                    why: why.clone(),
                    tempting: tempting
                        .iter()
                        .map(|wrong| WrongNumber {
                            value: wrong.value,
                            why: wrong.why.clone(),
                            misconception: wrong.misconception.clone(),
                        })
                        .collect(),
                    lesson: lesson.clone(),
                })
            }
        }
    }
}

impl Worth {
    fn of(say: &str, mark: &Mark) -> Self {
        Worth {
            say: say.to_owned(),
            credit: mark.credit,
            consequence: mark.consequence.clone(),
            misconception: mark.misconception.clone(),
            lesson: mark.lesson.clone(),
        }
    }

    fn mark(&self) -> Mark {
        Mark {
            credit: self.credit,
            consequence: self.consequence.clone(),
            misconception: self.misconception.clone(),
            lesson: self.lesson.clone(),
        }
    }

    fn choice(&self) -> Choice {
        said(&self.say, self.mark())
    }
}

fn said(label: &str, mark: Mark) -> Choice {
    Choice {
        label: label.to_owned(),
        action: Action::Say(label.to_owned()),
        work: None,
        healed: None,
        reading: None,
        error: None,
        mark,
    }
}

impl From<Kept> for MarkTable {
    fn from(kept: Kept) -> Self {
        let exercise = Exercise {
            drill: String::new(),
            number: 0,
            // Marking asks for the form of the answer alone.
            family: Family::Recall,
            skill: kept.skill.clone(),
            lesson: kept.lesson.clone(),
            ask: String::new(),
            case: None,
            form: kept.answer.form(),
            proof: None,
            source: String::new(),
            written: kept.written.clone(),
        };
        let put = Arc::new(QuestionPut::of(&exercise));
        MarkTable { kept, exercise, put }
    }
}

impl From<MarkTable> for Kept {
    fn from(table: MarkTable) -> Self {
        table.kept
    }
}
