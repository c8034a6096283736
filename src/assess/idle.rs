//! Drills that give a section of a blueprint no question, while others fill it.
//!
//! Entry point: [`IdleDrill`], gathered by [`PaperPool::new`](super::PaperPool::new); its `Display` says what became of the drill's
//! exercises.

use super::counted::counted;
use crate::course::{Band, Blueprint, Drill, Section};
use crate::exercise::{Discard, GenerateError};
use std::collections::BTreeMap;
use std::fmt;

/// A drill that a section names, by itself or by its skill, and that gives it nothing.
#[derive(Debug, Clone, PartialEq)]
pub struct IdleDrill {
    /// Id of the drill.
    pub drill: String,
    /// Where it stands; for the bank's questions, where the blueprint does.
    pub stands_at: String,
    /// Id of the blueprint.
    pub blueprint: String,
    /// Ids of the sections it gives nothing.
    pub sections: Vec<String>,
    /// Exercises that could not be proved.
    pub unproved: usize,
    /// How often each condition failed, in all of their draws.
    pub failed: BTreeMap<Discard, u32>,
    /// Exercises that ask what another drill asks already.
    pub same: usize,
    /// Difficulties, least and most, of those that lie outside the section's band, with the band.
    pub outside: Option<Outside>,
}

/// Exercises outside a section's band.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outside {
    /// How many.
    pub exercises: usize,
    /// The least of their difficulties.
    pub least: f64,
    /// The greatest.
    pub most: f64,
    /// What the section asks for.
    pub band: Band,
}

impl IdleDrill {
    /// A drill of which nothing is known yet.
    pub(super) fn new(drill: &Drill, blueprint: &Blueprint, section: &Section) -> Self {
        // The bank's questions stand in many places: what draws on them is in the blueprint.
        let places = [&drill.stands_at, &blueprint.stands_at];
        let stands_at = places.into_iter().find(|place| !place.is_empty());
        IdleDrill {
            drill: drill.id.clone(),
            stands_at: stands_at.cloned().unwrap_or_default(),
            blueprint: blueprint.id.clone(),
            sections: vec![section.id.clone()],
            unproved: 0,
            failed: BTreeMap::new(),
            same: 0,
            outside: None,
        }
    }

    /// Counts an exercise that could not be proved.
    pub(super) fn count_unproved(&mut self, error: &GenerateError) {
        self.unproved += 1;
        for (why, times) in &error.failed {
            *self.failed.entry(*why).or_insert(0) += times;
        }
    }

    /// Counts an exercise outside the band.
    pub(super) fn count_outside(&mut self, difficulty: f64, band: Band) {
        let so_far =
            self.outside.unwrap_or(Outside { exercises: 0, least: difficulty, most: difficulty, band });
        self.outside = Some(Outside {
            exercises: so_far.exercises + 1,
            least: so_far.least.min(difficulty),
            most: so_far.most.max(difficulty),
            band,
        });
    }

    /// What became of its exercises, without its place.
    pub fn reasons(&self) -> String {
        let sections: Vec<String> = self.sections.iter().map(|section| format!("`{section}`")).collect();
        let (word, sections) =
            (if sections.len() == 1 { "section" } else { "sections" }, sections.join(", "));
        let all = self.unproved + self.same + self.outside.map_or(0, |outside| outside.exercises);
        let mut reasons = Vec::new();
        if self.unproved > 0 {
            let draws: u32 = self.failed.values().sum();
            reasons.push(format!(
                "{} could not be proved (of {}, {})",
                self.unproved,
                counted(draws as usize, "draw"),
                tally(&self.failed)
            ));
        }
        if let Some(outside) = self.outside {
            let Outside { exercises, least, most, band } = outside;
            reasons.push(format!(
                "{exercises} had a difficulty of {least:.2} to {most:.2}, outside the section's {} to {}",
                band.least, band.most
            ));
        }
        if self.same > 0 {
            reasons.push(format!("{} asked what another drill asks", self.same));
        }
        format!(
            "the drill `{}` gives the {word} {sections} of `{}` no question: of {}, {}",
            self.drill,
            self.blueprint,
            counted(all, "exercise"),
            reasons.join("; ")
        )
    }
}

impl fmt::Display for IdleDrill {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.stands_at, self.reasons())
    }
}

/// Conditions with how often each failed, the most frequent first.
fn tally(failed: &BTreeMap<Discard, u32>) -> String {
    let mut counts: Vec<(&Discard, &u32)> = failed.iter().collect();
    counts.sort_by(|one, other| other.1.cmp(one.1).then(one.0.cmp(other.0)));
    let told: Vec<String> =
        counts.iter().map(|(why, count)| format!("{count} failed because {}", why.words())).collect();
    told.join("; ")
}
