//! A survey of many papers: how alike their difficulty is, how unlike their questions.
//!
//! Entry point: [`survey`].

use super::paper::AssembleError;
use super::pool::PaperPool;
use std::collections::{BTreeMap, BTreeSet};
use std::fmt;

/// Least, mean and most of something.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread {
    /// Least.
    pub least: f64,
    /// Mean.
    pub mean: f64,
    /// Most.
    pub most: f64,
}

/// What many papers of one blueprint have in common.
#[derive(Debug, Clone, PartialEq)]
pub struct Survey {
    /// Title of the blueprint.
    pub title: String,
    /// Papers looked at.
    pub papers: u64,
    /// Difficulty of the whole.
    pub difficulty: Spread,
    /// Each section's title, weight in percent, number of questions, and the mean difficulty of its questions.
    pub sections: Vec<(String, f64, u32, Spread)>,
    /// Questions two papers of successive seeds have in common.
    pub shared: Spread,
    /// Of each case its title, the clients who can carry it, and in how many papers each of those who came does.
    pub cases: Vec<(String, usize, Vec<u64>)>,
    /// Questions asked at all, and questions there are.
    pub asked: (usize, usize),
}

/// Looks at the papers of so many seeds, from `first` on.
///
/// # Errors
/// As [`PaperPool::paper`], for the first seed that has no paper.
pub fn survey(pool: &PaperPool, first: u64, count: u64) -> Result<Survey, AssembleError> {
    let mut whole = Vec::new();
    let mut sections = vec![Vec::new(); pool.blueprint.sections.len()];
    let mut shared = Vec::new();
    let mut asked = BTreeSet::new();
    let mut last: Option<BTreeSet<usize>> = None;
    let mut carried: Vec<BTreeMap<usize, u64>> = vec![BTreeMap::new(); pool.cases.len()];
    for seed in first..first + count {
        let paper = pool.paper("survey", seed)?;
        whole.push(paper.difficulty);
        for (times, client) in carried.iter_mut().zip(&paper.clients) {
            *times.entry(*client).or_default() += 1;
        }
        for (place, section) in sections.iter_mut().enumerate() {
            let own: Vec<f64> = paper
                .questions
                .iter()
                .filter(|picked| picked.section == place)
                .map(|picked| picked.difficulty)
                .collect();
            section.push(own.iter().sum::<f64>() / own.len() as f64);
        }
        let questions: BTreeSet<usize> = paper.questions.iter().map(|picked| picked.question).collect();
        if let Some(last) = &last {
            shared.push(questions.intersection(last).count() as f64);
        }
        asked.extend(questions.iter().copied());
        last = Some(questions);
    }
    Ok(Survey {
        title: pool.blueprint.title.clone(),
        papers: count,
        difficulty: spread(&whole),
        sections: pool
            .blueprint
            .sections
            .iter()
            .zip(&sections)
            .map(|(section, own)| {
                (pool.blueprint.title_of(section), section.weight, section.questions, spread(own))
            })
            .collect(),
        shared: spread(&shared),
        cases: pool
            .blueprint
            .cases
            .iter()
            .zip(&pool.cases)
            .zip(carried)
            .map(|((case, carriers), times)| {
                (case.title.clone(), carriers.len(), times.into_values().collect())
            })
            .collect(),
        asked: (asked.len(), pool.questions.len()),
    })
}

fn spread(values: &[f64]) -> Spread {
    if values.is_empty() {
        return Spread { least: 0.0, mean: 0.0, most: 0.0 };
    }
    Spread {
        least: values.iter().copied().fold(f64::INFINITY, f64::min),
        mean: values.iter().sum::<f64>() / values.len() as f64,
        most: values.iter().copied().fold(f64::NEG_INFINITY, f64::max),
    }
}

/// A table in Markdown.
impl fmt::Display for Survey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "{}: {} papers", self.title, self.papers)?;
        writeln!(f)?;
        writeln!(f, "| section | weight | questions | least difficulty | mean | most |")?;
        writeln!(f, "|---|---|---|---|---|---|")?;
        for (title, weight, questions, spread) in &self.sections {
            let Spread { least, mean, most } = spread;
            writeln!(f, "| {title} | {weight}% | {questions} | {least:.3} | {mean:.3} | {most:.3} |")?;
        }
        let questions: u32 = self.sections.iter().map(|section| section.2).sum();
        let Spread { least, mean, most } = self.difficulty;
        writeln!(f, "| whole paper | 100% | {questions} | {least:.3} | {mean:.3} | {most:.3} |")?;
        writeln!(f)?;
        for (title, carriers, times) in &self.cases {
            let (least, most) = (times.iter().min().unwrap_or(&0), times.iter().max().unwrap_or(&0));
            writeln!(
                f,
                "{title}: {} of {carriers} clients who can carry it came, each in {least} to {most} papers.",
                times.len()
            )?;
        }
        let (asked, all) = self.asked;
        writeln!(
            f,
            "{asked} of {all} questions were asked; papers of successive seeds share {:.1} on average ({:.0}%), at most {:.0}.",
            self.shared.mean,
            self.shared.mean / f64::from(questions) * 100.0,
            self.shared.most
        )
    }
}
