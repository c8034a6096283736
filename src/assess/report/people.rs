//! Skills of the cohort, and each person: marks, skills, misconceptions and what to practise next. Entry points: [`skills`],
//! [`people`].

use super::input::{Checked, Sheet};
use super::items::SheetMeasure;
use super::misconceptions::{Beliefs, MisconceptionEntry, Reread, of_person};
use super::papers::{SectionCredit, percent_of, section_credits, title_of};
use super::words;
use crate::assess::cohort::{self, SkillAnswer, SkillMean};
use crate::assess::standard::{Decision, decide};
use crate::course::Course;
use rayon::prelude::*;
use serde::{Serialize, Serializer};
use std::collections::{BTreeMap, HashMap};

/// Most skills that a person is told to practise next: more than one can work on is no advice. Common practice, no source.
pub const MOST_NEXT: usize = 3;
/// Most lessons told for one skill.
const MOST_LESSONS: usize = 3;

/// One skill of the whole cohort.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SkillEntry {
    /// Its name; the id where the course does not know it any more.
    pub name: String,
    /// Mean credit, answers and 95% interval.
    #[serde(flatten)]
    pub mean: SkillMean,
    /// People with answers in it.
    pub people: usize,
    /// Of these, those clearly below the cohort.
    pub below: usize,
}

/// Where a person stands in a skill, against the mean of the cohort.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// The whole likely range lies below the cohort's mean.
    Below,
    /// The cohort's mean lies within the likely range: no difference can be told.
    Level,
    /// The whole likely range lies above it.
    Above,
}

/// One skill of a person.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PersonSkill {
    /// Its name.
    pub name: String,
    /// Mean credit, answers and 95% interval.
    #[serde(flatten)]
    pub mean: SkillMean,
    /// Mean credit of the cohort.
    pub cohort: f64,
    /// Against the cohort; `None` where that is this person alone.
    pub standing: Option<Standing>,
}

/// What to practise next.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Next {
    /// Id of the skill.
    pub skill: String,
    /// Its name.
    pub name: String,
    /// Why, in words.
    pub why: String,
    /// Lessons to reread, where most credit was lost first.
    pub lessons: Vec<Reread>,
}

/// One sheet of a person.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SheetEntry {
    /// Whether it is practice that was assigned.
    pub practice: bool,
    /// Id of the blueprint, or of the assignment.
    pub blueprint: String,
    /// Title of the blueprint; the id where the course does not know it.
    pub title: String,
    /// Which attempt, from 1.
    pub attempt: u32,
    /// Answers that count.
    pub answers: usize,
    /// Sum of credits.
    pub score: f64,
    /// The mark in percent: as given, or the mean credit; `None` without answers.
    pub percent: Option<f64>,
    /// What passes, in percent.
    pub pass_mark: Option<f64>,
    /// Standard error of the mark, in percent.
    pub mark_error: Option<f64>,
    /// What each section earned, in the order of the paper.
    pub sections: Vec<SectionCredit>,
    /// Minutes it took, as the page told.
    pub minutes: Option<f64>,
    /// Passed or not; `None` without a pass mark. In JSON in words.
    #[serde(serialize_with = "in_words")]
    pub decision: Option<Decision>,
    /// Ability in logits, on the scale of the difficulties.
    pub measure: Option<f64>,
    /// Its standard error in logits.
    pub standard_error: Option<f64>,
}

/// One person.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PersonEntry {
    /// Id.
    pub id: String,
    /// Name as given, or the id.
    pub name: String,
    /// The sheets, in the order given.
    pub sheets: Vec<SheetEntry>,
    /// Mean credit of all answers; `None` without answers.
    pub mean: Option<f64>,
    /// Skills, the most surely weak first: by the upper end of the likely range, so that one unlucky answer does not lead.
    pub skills: Vec<PersonSkill>,
    /// Misconceptions chosen more often than by guessing, or shown without options, at most [`MOST_TOLD`](super::MOST_TOLD): those
    /// that stand out first, then those told most surely.
    pub misconceptions: Vec<MisconceptionEntry>,
    /// At most [`MOST_NEXT`] skills in which credit was lost, in the order of `skills`.
    pub next: Vec<Next>,
    /// What to say where there is nothing to practise.
    pub nothing_next: Option<String>,
}

/// A skill's name, or its id where the course does not know it.
pub(super) fn skill_name(course: &Course, id: &str) -> String {
    course
        .skills
        .iter()
        .find(|skill| skill.id == id)
        .map_or_else(|| id.to_owned(), |skill| skill.name.clone())
}

fn answers<'c>(checked: &Checked<'c>, sheet: usize) -> impl Iterator<Item = SkillAnswer<'c>> {
    let cohort = checked.cohort;
    let sheet_of = &cohort.sheets[sheet];
    sheet_of.answers.iter().zip(checked.questions[sheet].clone()).map(|(answer, question)| SkillAnswer {
        person: &sheet_of.person,
        skill: &cohort.questions[question].skill,
        credit: answer.credit,
    })
}

/// The order of skills: by the upper end of the likely range, then by the mean, then by id.
fn weakest_first(one: &SkillMean, other: &SkillMean) -> std::cmp::Ordering {
    (one.interval.high.total_cmp(&other.interval.high))
        .then_with(|| one.mean.total_cmp(&other.mean))
        .then_with(|| one.skill.cmp(&other.skill))
}

/// Answers from which on somebody is compared with the group (representative): one wrong answer alone says nothing of a person.
const FEWEST_COMPARED: usize = 4;

fn standing(mean: &SkillMean, cohort: f64) -> Standing {
    let interval = mean.interval;
    if mean.answers < FEWEST_COMPARED {
        Standing::Level
    } else if interval.high < cohort {
        Standing::Below
    } else if interval.low > cohort {
        Standing::Above
    } else {
        Standing::Level
    }
}

/// Skills of the whole cohort, weakest first.
pub(super) fn skills(checked: &Checked, course: &Course) -> Vec<SkillEntry> {
    let all = (0..checked.cohort.sheets.len()).flat_map(|sheet| answers(checked, sheet));
    // The credits were checked; a cohort without answers has no skills.
    let Ok(table) = cohort::skills(all) else { return Vec::new() };
    let mut people: HashMap<&str, (usize, usize)> = HashMap::new();
    let means: HashMap<&str, f64> =
        table.cohort.iter().map(|mean| (mean.skill.as_str(), mean.mean)).collect();
    for mean in table.people.iter().flat_map(|person| &person.skills) {
        let (all, below) = people.entry(&mean.skill).or_default();
        *all += 1;
        let cohort = means.get(mean.skill.as_str()).copied().unwrap_or_default();
        *below += usize::from(standing(mean, cohort) == Standing::Below);
    }
    let mut skills: Vec<SkillEntry> = table
        .cohort
        .iter()
        .map(|mean| {
            let (all, below) = people.get(mean.skill.as_str()).copied().unwrap_or_default();
            let name = skill_name(course, &mean.skill);
            SkillEntry { name, mean: mean.clone(), people: all, below }
        })
        .collect();
    skills.sort_by(|one, other| weakest_first(&one.mean, &other.mean));
    skills
}

/// What everybody's entry is made from.
struct Making<'m, 'c> {
    checked: &'m Checked<'c>,
    course: &'m Course,
    beliefs: Beliefs<'c>,
    /// The lesson of every question.
    lessons: Vec<Option<Reread>>,
    /// Name and mean of every skill.
    skills: HashMap<&'m str, (&'m str, f64)>,
    measures: &'m [SheetMeasure],
    alone: bool,
}

/// Everybody, by name.
pub(super) fn people(
    checked: &Checked,
    course: &Course,
    skills: &[SkillEntry],
    measures: &[SheetMeasure],
) -> Vec<PersonEntry> {
    let mut sheets: BTreeMap<&str, Vec<usize>> = BTreeMap::new();
    for (at, sheet) in checked.cohort.sheets.iter().enumerate() {
        sheets.entry(&sheet.person).or_default().push(at);
    }
    let lesson_of = |question: &super::Question| match &question.drill {
        Some(drill) => course.drill(drill).and_then(|(lesson, _)| Reread::of(course, &lesson.id)),
        None => course.question(&question.id).and_then(|known| Reread::of(course, &known.lesson)),
    };
    let making = Making {
        checked,
        course,
        beliefs: Beliefs::new(checked),
        lessons: checked.cohort.questions.iter().map(lesson_of).collect(),
        skills: skills
            .iter()
            .map(|skill| (skill.mean.skill.as_str(), (skill.name.as_str(), skill.mean.mean)))
            .collect(),
        measures,
        alone: sheets.len() < 2,
    };
    let sheets: Vec<(&str, Vec<usize>)> = sheets.into_iter().collect();
    let mut people: Vec<PersonEntry> =
        sheets.par_iter().map(|(person, sheets)| making.person(person, sheets)).collect();
    people.sort_by_cached_key(|person| (person.name.to_lowercase(), person.id.clone()));
    people
}

impl Making<'_, '_> {
    fn person(&self, id: &str, sheets: &[usize]) -> PersonEntry {
        let all = || sheets.iter().flat_map(|&sheet| answers(self.checked, sheet));
        let mut skills: Vec<PersonSkill> = cohort::skills(all())
            .map(|table| table.cohort)
            .unwrap_or_default()
            .into_iter()
            .map(|mean| {
                let &(name, cohort) = self.skills.get(mean.skill.as_str()).unwrap_or(&("", 0.0));
                let standing = (!self.alone).then(|| standing(&mean, cohort));
                PersonSkill { name: name.to_owned(), mean, cohort, standing }
            })
            .collect();
        skills.sort_by(|one, other| weakest_first(&one.mean, &other.mean));
        let next: Vec<Next> = skills
            .iter()
            .filter(|skill| skill.mean.mean < 1.0)
            .take(MOST_NEXT)
            .map(|skill| Next {
                skill: skill.mean.skill.clone(),
                name: skill.name.clone(),
                why: words::why(skill, &self.course.language),
                lessons: self.lessons(&skill.mean.skill, sheets),
            })
            .collect();
        let (count, credit) = all().fold((0_usize, 0.0), |sum, answer| (sum.0 + 1, sum.1 + answer.credit));
        let of = |at: usize| &self.checked.cohort.sheets[at];
        let name = sheets.iter().map(|&at| of(at).name.trim()).find(|name| !name.is_empty()).unwrap_or(id);
        PersonEntry {
            id: id.to_owned(),
            name: name.to_owned(),
            sheets: sheets
                .iter()
                .map(|&at| sheet_entry(of(at), self.course, self.measures.get(at)))
                .collect(),
            mean: (count > 0).then(|| (credit / count as f64).clamp(0.0, 1.0)),
            misconceptions: of_person(self.checked, &self.beliefs, self.course, sheets),
            nothing_next: next.is_empty().then(|| words::nothing_next(count, &self.course.language)),
            skills,
            next,
        }
    }

    /// Lessons of the questions of a skill in which credit was lost, the most first; where the course knows none of them, the first
    /// lessons that train the skill.
    fn lessons(&self, skill: &str, sheets: &[usize]) -> Vec<Reread> {
        let cohort = self.checked.cohort;
        let mut lost: Vec<(&Reread, f64)> = Vec::new();
        for &sheet in sheets {
            for (answer, &question) in cohort.sheets[sheet].answers.iter().zip(&self.checked.questions[sheet])
            {
                let Some(lesson) = &self.lessons[question] else { continue };
                if answer.credit >= 1.0 || cohort.questions[question].skill != skill {
                    continue;
                }
                match lost.iter_mut().find(|entry| entry.0.id == lesson.id) {
                    Some(entry) => entry.1 += 1.0 - answer.credit,
                    None => lost.push((lesson, 1.0 - answer.credit)),
                }
            }
        }
        lost.sort_by(|one, other| other.1.total_cmp(&one.1).then_with(|| one.0.id.cmp(&other.0.id)));
        let mut lessons: Vec<Reread> =
            lost.into_iter().take(MOST_LESSONS).map(|entry| entry.0.clone()).collect();
        if lessons.is_empty() {
            let training = self
                .course
                .lessons()
                .filter(|(_, lesson)| lesson.skills.iter().any(|trained| trained == skill));
            lessons = training
                .take(MOST_LESSONS)
                .filter_map(|(_, lesson)| Reread::of(self.course, &lesson.id))
                .collect();
        }
        lessons
    }
}

fn in_words<S: Serializer>(decision: &Option<Decision>, serializer: S) -> Result<S::Ok, S::Error> {
    decision.map(|decision| decision.to_string()).serialize(serializer)
}

fn sheet_entry(sheet: &Sheet, course: &Course, measure: Option<&SheetMeasure>) -> SheetEntry {
    let decided =
        |mark: &super::SheetMark| mark.pass_mark.map(|pass| decide(mark.total, pass, mark.standard_error));
    SheetEntry {
        practice: sheet.practice,
        blueprint: sheet.paper.blueprint.clone(),
        title: title_of(course, &sheet.paper.blueprint),
        attempt: sheet.paper.attempt,
        answers: sheet.answers.len(),
        score: sheet.answers.iter().map(|answer| answer.credit).sum(),
        percent: percent_of(sheet),
        pass_mark: sheet.mark.and_then(|mark| mark.pass_mark),
        mark_error: sheet.mark.and_then(|mark| mark.standard_error),
        sections: section_credits(sheet, course),
        minutes: sheet.seconds.map(|seconds| f64::from(seconds) / 60.0),
        decision: sheet.mark.as_ref().and_then(decided),
        measure: measure.and_then(|measure| measure.measure),
        standard_error: measure.and_then(|measure| measure.standard_error),
    }
}
