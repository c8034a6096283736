//! Blueprints: recipes of assessments.

use serde::{Deserialize, Serialize};

/// The recipe of an assessment.
#[derive(Debug, Clone)]
pub struct Blueprint {
    /// Unique id.
    pub id: String,
    /// What stands above the paper.
    pub title: String,
    /// One or two sentences for whoever sits it.
    pub about: String,
    /// Time allowed.
    pub minutes: u32,
    /// Within what the difficulty of the whole paper must lie.
    pub difficulty: Band,
    /// No client comes in more questions of a paper than this.
    pub most_per_client: u32,
    /// Exercises made of each drill that the engine proves, to pick from.
    pub pool: u32,
    /// Clients whom several sections are about.
    pub cases: Vec<ClientCase>,
    /// Parts of the paper, in order.
    pub sections: Vec<Section>,
    /// What the pass mark rests on.
    pub standard: Standard,
    /// Where the blueprint stands, for messages: `lessons/papers/rehearsal.yaml`.
    pub stands_at: String,
}

/// Sections that are about one client, whom the seed draws.
#[derive(Debug, Clone)]
pub struct ClientCase {
    /// Id, unique in its blueprint.
    pub id: String,
    /// What stands above it.
    pub title: String,
    /// So many clients at least must be able to carry it: for each of them every question can be taken from the drills.
    pub clients: u32,
    /// Where it stands, for messages: `lessons/papers/practical.yaml:8:5`.
    pub stands_at: String,
}

/// A part of a paper.
#[derive(Debug, Clone)]
pub struct Section {
    /// Id, unique in its blueprint.
    pub id: String,
    /// What stands above it.
    pub title: String,
    /// Ids of skills: every drill that trains one of them is drawn on.
    pub skills: Vec<String>,
    /// Ids of further drills.
    pub drills: Vec<String>,
    /// Whether all questions of the bank for the skills are drawn on too.
    pub bank: bool,
    /// Place of the case it belongs to.
    pub case: Option<usize>,
    /// How many questions.
    pub questions: u32,
    /// Share of the whole mark, in percent.
    pub weight: f64,
    /// Within what the difficulty of each question must lie.
    pub difficulty: Band,
}

/// Least and most difficulty: the share of its credit that a question is expected to cost a candidate who is just good enough, from 0
/// (nothing) to 1 (all of it).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Band {
    /// Least.
    pub least: f64,
    /// Most.
    pub most: f64,
}

impl Band {
    /// Whether a difficulty lies in the band.
    pub fn holds(self, difficulty: f64) -> bool {
        (self.least..=self.most).contains(&difficulty)
    }

    /// The middle.
    pub fn middle(self) -> f64 {
        (self.least + self.most) / 2.0
    }
}

/// The estimates behind a pass mark: modified Angoff (Angoff 1971), the judges having talked their estimates over.
#[derive(Debug, Clone)]
pub struct Standard {
    /// Where the estimates come from.
    pub basis: String,
    /// Who estimated.
    pub judges: Vec<Judge>,
}

/// Somebody who estimated what a candidate who is just good enough would earn.
#[derive(Debug, Clone)]
pub struct Judge {
    /// Who it is, as a role.
    pub role: String,
    /// Expected share of the credit, one number a section, in the order of the sections.
    pub estimates: Vec<f64>,
}

impl Blueprint {
    /// What the judges expect a candidate who is just good enough to earn in a section: the mean of their estimates, 0 to 1.
    pub fn estimate(&self, section: usize) -> f64 {
        let judges = &self.standard.judges;
        let sum: f64 = judges.iter().map(|judge| judge.estimates[section]).sum();
        sum / judges.len() as f64
    }

    /// The pass mark in percent of the whole mark: the estimates, weighted as the sections are, to ten decimals. Sums of decimals end in digits
    /// that nobody meant (61.49999999999999); ten decimals are finer than the rounding that marks are allowed.
    pub fn pass_mark(&self) -> f64 {
        let sections = self.sections.iter().enumerate();
        let sum: f64 = sections.map(|(place, section)| section.weight * self.estimate(place)).sum();
        libm::round(sum * 1e10) / 1e10
    }

    /// Standard error of the pass mark in percent: that of the mean of the judges' own pass marks; `None` with one judge.
    pub fn pass_mark_error(&self) -> Option<f64> {
        let own = |judge: &Judge| -> f64 {
            self.sections
                .iter()
                .zip(&judge.estimates)
                .map(|(section, estimate)| section.weight * estimate)
                .sum()
        };
        let marks: Vec<f64> = self.standard.judges.iter().map(own).collect();
        let count = marks.len() as f64;
        let mean = marks.iter().sum::<f64>() / count;
        let squares: f64 = marks.iter().map(|mark| (mark - mean) * (mark - mean)).sum();
        (marks.len() > 1).then(|| libm::sqrt(squares / (count - 1.0) / count))
    }

    /// The section with this id.
    pub fn section(&self, id: &str) -> Option<&Section> {
        self.sections.iter().find(|section| section.id == id)
    }

    /// What a section is called where it stands apart from its paper: sections of several cases may have one title, so that of the case comes first,
    /// "First client: At the door".
    pub fn title_of(&self, section: &Section) -> String {
        match self.case_of(section) {
            Some(case) => format!("{}: {}", case.title, section.title),
            None => section.title.clone(),
        }
    }

    /// The case that a section asks about.
    pub fn case_of(&self, section: &Section) -> Option<&ClientCase> {
        section.case.and_then(|case| self.cases.get(case))
    }

    /// Questions in the whole paper.
    pub fn questions(&self) -> u32 {
        self.sections.iter().map(|section| section.questions).sum()
    }
}

/// What is told of sections in a row, each with the title of its case, which stands before the first of its sections only: "First client: At the door
/// 100%; Reading the skin 59%. Second client: At the door 0%".
#[cfg(feature = "program")]
pub(crate) fn told_by_case<'c>(sections: impl IntoIterator<Item = (Option<&'c str>, String)>) -> String {
    let mut told = String::new();
    let mut before = None;
    for (case, said) in sections {
        let is_new = case != before;
        match (told.is_empty(), is_new) {
            (true, _) => {}
            (false, true) if told.ends_with('?') => told.push(' '),
            (false, true) => told += ". ",
            (false, false) => told += "; ",
        }
        if let Some(case) = case.filter(|_| is_new) {
            told += case;
            told += ": ";
        }
        told += &said;
        before = case;
    }
    told
}
