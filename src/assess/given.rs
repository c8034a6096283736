//! A paper as it is given to a candidate. Entry point: [`PaperPool::paper_json`].

use super::paper::Paper;
use super::pool::PaperPool;
use super::question::CaseTold;
use crate::exercise::Form;
use std::collections::BTreeSet;

impl PaperPool<'_> {
    /// Whether a case of a paper may tell its client's phototype, undertone and redness: not where one of its questions asks for them, which an
    /// angle does not.
    pub fn tells_skin(&self, paper: &Paper, case: usize) -> bool {
        let mut own = paper
            .questions
            .iter()
            .filter(|picked| self.blueprint.sections[picked.section].case == Some(case));
        own.all(|picked| {
            let exercise = &self.questions[picked.question].exercise;
            // An angle is worked out of numbers: these words do not give it away.
            matches!(exercise.form, Form::Number(_))
                || exercise.case.as_ref().is_none_or(|asked| asked.skin_is_told)
        })
    }

    /// What a case of a paper tells above its first section.
    fn case_told(&self, paper: &Paper, case: usize) -> CaseTold {
        let client = &self.course.clients[paper.clients[case]];
        CaseTold::new(self.course, client, self.tells_skin(paper, case))
    }

    /// The paper as it is given to the candidate, in JSON: no key, no difficulty, no name of an exercise.
    pub fn paper_json(&self, paper: &Paper) -> String {
        let text = |value: &str| serde_json::to_string(value).unwrap_or_default();
        let blueprint = self.blueprint;
        let mut json = format!(
            "{{\n  \"paper\": {},\n  \"title\": {},\n  \"about\": {},\n  \"minutes\": {},\n  \"pass_mark\": {:.2},\n  \"sections\": [",
            serde_json::to_string(&paper.id).unwrap_or_default(),
            text(&blueprint.title),
            text(&blueprint.about),
            blueprint.minutes,
            blueprint.pass_mark(),
        );
        let mut number = 0;
        let mut told = None;
        for (place, section) in blueprint.sections.iter().enumerate() {
            json += if place == 0 { "\n" } else { ",\n" };
            json += &format!(
                "    {{\n      \"id\": {},\n      \"title\": {},\n      \"weight\": {},",
                text(&section.id),
                text(&section.title),
                section.weight
            );
            if let Some(case) = section.case.filter(|_| told != section.case) {
                json += &format!(
                    "\n      \"case\": {{\"title\": {}, \"client\": {}}},",
                    text(&blueprint.cases[case].title),
                    serde_json::to_string(&self.case_told(paper, case)).unwrap_or_default()
                );
            }
            told = section.case;
            json += "\n      \"questions\": [";
            let mut first = true;
            for picked in paper.questions.iter().filter(|picked| picked.section == place) {
                number += 1;
                json += if first { "\n" } else { ",\n" };
                first = false;
                json += &format!("        {{\"number\": {number}, \"question\": ");
                let question = &self.questions[picked.question];
                json += question
                    .within_case
                    .as_ref()
                    .filter(|_| section.case.is_some())
                    .unwrap_or(&question.json);
                json.push('}');
            }
            json += "\n      ]\n    }";
        }
        json += "\n  ],\n  \"bottles\": [";
        let bottles: BTreeSet<usize> = paper
            .questions
            .iter()
            .flat_map(|picked| self.questions[picked.question].bottles.iter().copied())
            .collect();
        for (place, bottle) in bottles.into_iter().enumerate() {
            json += if place == 0 { "\n    " } else { ",\n    " };
            json += &self.bottles[bottle];
        }
        json += "\n  ]\n}\n";
        json
    }
}
