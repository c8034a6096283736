//! Mean credit by skill. Entry point: [`skills`].

use super::interval::{Interval, wilson};
use crate::assess::CREDIT;
use crate::quantity::OutOfRange;
use serde::Serialize;
use std::collections::BTreeMap;

/// One answer, as far as skills go.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SkillAnswer<'a> {
    /// Id of the person.
    pub person: &'a str,
    /// Id of the skill.
    pub skill: &'a str,
    /// 0 to 1.
    pub credit: f64,
}

/// Skills by apprentice and of the cohort.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SkillTable {
    /// In the order of the ids.
    pub people: Vec<PersonSkills>,
    /// Of all answers together, in the order of the ids. The interval treats answers as independent; answers of one person
    /// are alike, so it is rather too narrow for the cohort.
    pub cohort: Vec<SkillMean>,
}

/// One apprentice's skills.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PersonSkills {
    /// Id of the person.
    pub person: String,
    /// Skills with answers, in the order of their ids.
    pub skills: Vec<SkillMean>,
}

/// Mean credit in one skill.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SkillMean {
    /// Id of the skill.
    pub skill: String,
    /// Answers behind it.
    pub answers: usize,
    /// Mean credit, 0 to 1.
    pub mean: f64,
    /// 95% interval of the mean credit (Wilson).
    pub interval: Interval,
}

/// Mean credit per person and skill, whatever the order of the answers.
///
/// # Errors
/// [`OutOfRange`] for a credit outside 0 to 1.
pub fn skills<'a>(answers: impl IntoIterator<Item = SkillAnswer<'a>>) -> Result<SkillTable, OutOfRange> {
    let mut people: BTreeMap<&str, BTreeMap<&str, Vec<f64>>> = BTreeMap::new();
    let mut cohort: BTreeMap<&str, Vec<f64>> = BTreeMap::new();
    for answer in answers {
        let credit = CREDIT.check(answer.credit)?;
        people.entry(answer.person).or_default().entry(answer.skill).or_default().push(credit);
        cohort.entry(answer.skill).or_default().push(credit);
    }
    Ok(SkillTable {
        people: people
            .into_iter()
            .map(|(person, skills)| PersonSkills { person: person.to_owned(), skills: means(skills) })
            .collect(),
        cohort: means(cohort),
    })
}

fn means(skills: BTreeMap<&str, Vec<f64>>) -> Vec<SkillMean> {
    skills
        .into_iter()
        .filter_map(|(skill, mut credits)| {
            // Summed in one order, so that the order of the answers changes not even the last bit.
            credits.sort_by(f64::total_cmp);
            let sum: f64 = credits.iter().sum();
            let interval = wilson(sum, credits.len())?;
            let mean = (sum / credits.len() as f64).clamp(0.0, 1.0);
            Some(SkillMean { skill: skill.to_owned(), answers: credits.len(), mean, interval })
        })
        .collect()
}
