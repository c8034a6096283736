//! What a course covers and where it has gaps: skills without drills, misconceptions that nothing tempts, terms nobody uses,
//! lessons too long or too hard to read.
//!
//! Entry points: [`Coverage::of`] counts, [`Coverage::gaps`] compares with what a complete course has. The limits are this
//! project's own.

mod reading;

pub use reading::Reading;

use super::{Course, Diagnostic, Drill, Severity, Stands, TermFinder};
use reading::Said;
use serde::Serialize;
use std::collections::BTreeSet;

/// Drills that train a skill, at least.
pub const DRILLS_PER_SKILL: usize = 3;
/// Families of exercises among them, at least.
pub const FAMILIES_PER_SKILL: usize = 2;
/// Questions of the bank for a skill, at least.
pub const QUESTIONS_PER_SKILL: usize = 5;
/// Drills that tempt into a misconception, at least.
pub const DRILLS_PER_MISCONCEPTION: usize = 2;
/// Words of a lesson, least and most.
pub const WORDS_PER_LESSON: (usize, usize) = (500, 1200);
/// Drills of a lesson, least and most.
pub const DRILLS_PER_LESSON: (usize, usize) = (2, 4);
/// Hardest readability index of a lesson: what somebody who leaves school at sixteen reads without trouble, as hard as a novel at
/// most.
pub const HARDEST_LIX: f64 = 40.0;

/// What a course covers.
#[derive(Debug, Clone, Serialize)]
pub struct Coverage {
    /// Every skill.
    pub skills: Vec<SkillCover>,
    /// Every misconception.
    pub misconceptions: Vec<MisconceptionCover>,
    /// Every glossary term.
    pub terms: Vec<TermCover>,
    /// Every lesson.
    pub lessons: Vec<LessonCover>,
}

/// What there is for a skill.
#[derive(Debug, Clone, Serialize)]
pub struct SkillCover {
    /// Its id.
    pub id: String,
    /// Drills that train it.
    pub drills: usize,
    /// Families among them.
    pub families: Vec<&'static str>,
    /// Questions of the bank.
    pub questions: usize,
}

/// What there is against a misconception.
#[derive(Debug, Clone, Serialize)]
pub struct MisconceptionCover {
    /// Its id.
    pub id: String,
    /// Drills whose wrong answers may come from it.
    pub drills: usize,
    /// Lesson that treats it; nothing when the course has no such lesson.
    pub lesson: Option<String>,
}

/// Where a glossary term is used.
#[derive(Debug, Clone, Serialize)]
pub struct TermCover {
    /// Its id.
    pub id: String,
    /// Lessons and other pages that mention it.
    pub pages: usize,
    /// Questions that mention it.
    pub questions: usize,
}

/// What a lesson is like.
#[derive(Debug, Clone, Serialize)]
pub struct LessonCover {
    /// Its id.
    pub id: String,
    /// Its drills.
    pub drills: usize,
    /// Words and readability.
    #[serde(flatten)]
    pub reading: Reading,
}

/// Something that is missing, or too much.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Gap {
    /// What kind of thing, in a word.
    pub kind: &'static str,
    /// Its id.
    pub id: String,
    /// What is missing: "2 drills, at least 3 wanted".
    pub lacks: String,
    /// What to do about it.
    pub help: &'static str,
}

impl Coverage {
    /// Counts what a course covers.
    pub fn of(course: &Course) -> Self {
        Coverage {
            skills: skills(course),
            misconceptions: misconceptions(course),
            terms: terms(course),
            lessons: course
                .lessons()
                .map(|(_, lesson)| LessonCover {
                    id: lesson.id.clone(),
                    drills: lesson.drills.len(),
                    reading: Reading::of(&lesson.page, course.language.tag()),
                })
                .collect(),
        }
    }

    /// Every gap, by kind and in the order of the course.
    pub fn gaps(&self) -> Vec<Gap> {
        let mut gaps = Vec::new();
        for skill in &self.skills {
            let mut gap = |lacks, help| gaps.push(Gap { kind: "skill", id: skill.id.clone(), lacks, help });
            if skill.drills < DRILLS_PER_SKILL {
                gap(
                    wanted(skill.drills, "drill", DRILLS_PER_SKILL),
                    "give a lesson another drill that trains it",
                );
            }
            if skill.families.len() < FAMILIES_PER_SKILL {
                let lacks = wanted_of(skill.families.len(), "family", "families", FAMILIES_PER_SKILL);
                gap(lacks, "train it by a drill of another family");
            }
            if skill.questions < QUESTIONS_PER_SKILL {
                let lacks = wanted(skill.questions, "question", QUESTIONS_PER_SKILL);
                gap(lacks, "write questions for it in the folder `bank`");
            }
        }
        for misconception in &self.misconceptions {
            let mut gap = |lacks, help| {
                gaps.push(Gap { kind: "misconception", id: misconception.id.clone(), lacks, help });
            };
            if misconception.drills < DRILLS_PER_MISCONCEPTION {
                let lacks = wanted(misconception.drills, "drill", DRILLS_PER_MISCONCEPTION);
                gap(lacks, "add it to `tempts` of a drill, or to an option of a question that a drill asks");
            }
            if misconception.lesson.is_none() {
                gap("no lesson treats it".to_owned(), "name the lesson that treats it as `lesson`");
            }
        }
        for term in self.terms.iter().filter(|term| term.pages + term.questions == 0) {
            let lacks = "nothing mentions it".to_owned();
            let help = "use it in a lesson or a question, or take it out of the glossary";
            gaps.push(Gap { kind: "term", id: term.id.clone(), lacks, help });
        }
        for lesson in &self.lessons {
            let mut gap = |lacks, help| gaps.push(Gap { kind: "lesson", id: lesson.id.clone(), lacks, help });
            let (words, (least, most)) = (lesson.reading.words, WORDS_PER_LESSON);
            if !(least..=most).contains(&words) {
                gap(format!("{words} words, {least} to {most} wanted"), "split it, or say more or less");
            }
            let (drills, (least, most)) = (lesson.drills, DRILLS_PER_LESSON);
            if !(least..=most).contains(&drills) {
                gap(
                    format!("{}, {least} to {most} wanted", counted(drills, "drill", "drills")),
                    "add or move drills",
                );
            }
            if let Some(lix) = lesson.reading.lix.filter(|lix| *lix > HARDEST_LIX) {
                let lacks = format!("readability {lix:.0}, at most {HARDEST_LIX:.0} wanted");
                gap(lacks, "write shorter sentences and fewer long words");
            }
        }
        gaps
    }
}

impl Gap {
    /// The gap as a problem at the place where the thing is written.
    pub fn diagnostic(&self, severity: Severity, stands: &Stands) -> Diagnostic {
        let (file, line, column) = stands.of(self.kind, &self.id).unwrap_or(("book.toml", 1, 1));
        let message = format!("{} `{}`: {}", self.kind, self.id, self.lacks);
        let mut diagnostic = Diagnostic::new(severity, file, line, column, message);
        diagnostic.help(self.help);
        diagnostic
    }
}

fn skills(course: &Course) -> Vec<SkillCover> {
    let cover = |id: &String| {
        let drills: Vec<_> = course.drills().filter(|(_, drill)| drill.skill == *id).collect();
        let families: BTreeSet<_> = drills.iter().map(|(_, drill)| drill.family).collect();
        SkillCover {
            id: id.clone(),
            drills: drills.len(),
            families: families.into_iter().map(|family| family.word()).collect(),
            questions: course.questions.iter().filter(|question| question.skill == *id).count(),
        }
    };
    course.skills.iter().map(|skill| cover(&skill.id)).collect()
}

/// Whether wrong answers to a drill may come from this misconception: it tempts into it, or asks a question that does.
pub fn tempts(course: &Course, drill: &Drill, misconception: &str) -> bool {
    let asked = |question: &String| {
        let options = course.question(question).map_or(&[][..], |question| question.options());
        options.iter().any(|option| option.misconception.as_deref() == Some(misconception))
    };
    drill.tempts.iter().any(|id| id == misconception) || drill.questions.iter().any(asked)
}

fn misconceptions(course: &Course) -> Vec<MisconceptionCover> {
    let cover = |id: &String, lesson: &String| MisconceptionCover {
        id: id.clone(),
        drills: course.drills().filter(|(_, drill)| tempts(course, drill, id)).count(),
        lesson: course.lesson(lesson).map(|(_, lesson)| lesson.id.clone()),
    };
    course.misconceptions.iter().map(|one| cover(&one.id, &one.lesson)).collect()
}

fn terms(course: &Course) -> Vec<TermCover> {
    let finder = TermFinder::new(&course.terms);
    let (mut pages, mut questions) = (vec![0; course.terms.len()], vec![0; course.terms.len()]);
    let texts = course.modules.iter().flat_map(|module| {
        std::iter::once(&module.page).chain(module.lessons.iter().map(|lesson| &lesson.page))
    });
    for page in course.prefix.iter().chain(texts) {
        let said = Said::of(page);
        for term in finder.terms_in(&format!("{}\n{}", said.sentences, said.rest)) {
            pages[term] += 1;
        }
    }
    for question in &course.questions {
        let mut said = question.ask.clone();
        for option in question.options() {
            said += &format!("\n{}\n{}", option.say, option.why);
        }
        if let super::Asked::Order { steps, .. } = &question.asked {
            for step in steps {
                said += &format!("\n{}\n{}", step.say, step.why);
            }
        }
        for term in finder.terms_in(&said) {
            questions[term] += 1;
        }
    }
    let counts = pages.into_iter().zip(questions);
    course
        .terms
        .iter()
        .zip(counts)
        .map(|(term, (pages, questions))| TermCover { id: term.id.clone(), pages, questions })
        .collect()
}

fn wanted(count: usize, thing: &str, least: usize) -> String {
    wanted_of(count, thing, &format!("{thing}s"), least)
}

fn wanted_of(count: usize, one: &str, more: &str, least: usize) -> String {
    format!("{}, at least {least} wanted", counted(count, one, more))
}

fn counted(count: usize, one: &str, more: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { more })
}
