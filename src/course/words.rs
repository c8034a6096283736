//! Skills, cautions, misconceptions, glossary terms and bank questions.

use super::Rule;
use serde::{Deserialize, Serialize};

/// One thing to be able to do.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct Skill {
    /// Unique id.
    pub id: String,
    /// In words.
    pub name: String,
}

/// What a caution asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum CautionAction {
    /// Not now.
    Wait,
    /// Send the client to somebody licensed for it first.
    Refer,
}

/// A safety caution.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct Caution {
    /// Unique id.
    pub id: String,
    /// Short name.
    pub name: String,
    /// What the caution is.
    pub say: String,
    /// What it asks for.
    pub action: CautionAction,
    /// Who to refer to.
    pub refer_to: String,
    /// Ids of cautions that ask for something else: doing that instead is wrong, and nobody could argue for it.
    pub not_met_by: Vec<String>,
    /// Where it comes from.
    pub source: String,
}

/// A named wrong way of thinking.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct Misconception {
    /// Unique id.
    pub id: String,
    /// What the apprentice believes.
    pub belief: String,
    /// Why it seems right.
    pub tempting: String,
    /// What really happens.
    pub truth: String,
    /// How it becomes a wrong answer.
    pub rule: Rule,
    /// Id of the lesson to reread.
    pub lesson: String,
}

/// A glossary term.
#[derive(Debug, Clone)]
pub struct Term {
    /// Unique id.
    pub id: String,
    /// The term.
    pub term: String,
    /// Other forms of it that texts use: plurals and cases that do not end in `s`.
    pub forms: Vec<String>,
    /// Phrases that hold it in another sense: there it is not meant.
    pub not_in: Vec<String>,
    /// What it means.
    pub means: String,
    /// Ids of related terms.
    pub see: Vec<String>,
}

/// A fixed knowledge question.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct Question {
    /// Unique id.
    pub id: String,
    /// Id of the skill it tests.
    pub skill: String,
    /// The question.
    pub ask: String,
    /// Id of the lesson that treats it.
    pub lesson: String,
    /// Where the answer comes from.
    pub source: String,
    /// What is asked for, with all there is to choose from.
    pub asked: Asked,
    /// Id of the caution it is about; every consequence then names it and who to ask.
    pub caution: Option<String>,
}

/// What a question asks for.
#[derive(Debug, Clone, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Asked {
    /// The one right option of three to five.
    One(Vec<QuestionOption>),
    /// Every option that holds, of three to eight.
    Several(Vec<QuestionOption>),
    /// The order of three to eight steps, given in their right order.
    Order {
        /// The steps.
        steps: Vec<QuestionStep>,
        /// Whether anything but the right order is worth nothing.
        strict: bool,
    },
}

/// A step of a question about an order.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct QuestionStep {
    /// What is done.
    pub say: String,
    /// Why it has its place.
    pub why: String,
}

impl Question {
    /// The options, where there are some.
    pub fn options(&self) -> &[QuestionOption] {
        match &self.asked {
            Asked::One(options) | Asked::Several(options) => options,
            Asked::Order { .. } => &[],
        }
    }
}

/// An option of a question.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct QuestionOption {
    /// The option.
    pub say: String,
    /// Whether it is the right one.
    pub right: bool,
    /// Why it is right or wrong.
    pub why: String,
    /// Id of the misconception it shows.
    pub misconception: Option<String>,
}
