//! Skills, cautions, misconceptions, glossary terms and bank questions.

use super::Rule;

/// One thing to be able to do.
#[derive(Debug, Clone)]
pub struct Skill {
    /// Unique id.
    pub id: String,
    /// In words.
    pub name: String,
}

/// What a caution asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CautionAction {
    /// Not now.
    Wait,
    /// Send the client to somebody licensed for it first.
    Refer,
}

/// A safety caution.
#[derive(Debug, Clone)]
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
    /// Where it comes from.
    pub source: String,
}

/// A named wrong way of thinking.
#[derive(Debug, Clone)]
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
    /// What it means.
    pub means: String,
    /// Ids of related terms.
    pub see: Vec<String>,
}

/// A fixed knowledge question.
#[derive(Debug, Clone)]
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
    /// Three to five options, exactly one of them right.
    pub options: Vec<QuestionOption>,
}

/// An option of a question.
#[derive(Debug, Clone)]
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
