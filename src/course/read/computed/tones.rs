//! Tones that a claim compares with: a text that is the id of none would never hold, or always.
//!
//! Entry point: [`wrong`].

use super::super::suggest::{listed, nearest, quoted};
use super::engine::CallProblem;
use crate::healing::Tone;
use crate::language::Language;

/// What is wrong with the first text of a claim that is compared and is no tone's id.
pub(super) fn wrong(claim: &str, language: &Language) -> Option<CallProblem> {
    let known = || Tone::ALL.iter().map(|(tone, _)| tone.id());
    let text = compared(claim).into_iter().find(|text| known().all(|id| id != *text))?;
    let said = Tone::ALL.iter().find(|(tone, word)| *word == text || tone.said(language) == text);
    let help = match said.map(|(tone, _)| tone.id()).or_else(|| nearest(text, known())) {
        Some(near) => format!("did you mean `{near}`?"),
        None => format!("the tones are {}", listed(known())),
    };
    Some(CallProblem::wrong(format!("{} is no tone", quoted(text)), help, text))
}

/// Texts in quotes that stand beside a comparison or in a list. The others are names that functions take.
fn compared(claim: &str) -> Vec<&str> {
    let mut found = Vec::new();
    let mut lists = 0_usize;
    let mut from = 0;
    while let Some(at) = claim[from..].find(['"', '\'', '[', ']']).map(|at| from + at) {
        let sign = &claim[at..=at];
        from = at + 1;
        match sign {
            "[" => lists += 1,
            "]" => lists = lists.saturating_sub(1),
            quote => {
                let Some(length) = claim[from..].find(quote) else { break };
                let text = &claim[from..from + length];
                from += length + 1;
                let (before, after) = (claim[..at].trim_end(), claim[from..].trim_start());
                let beside =
                    ["==", "!="].iter().any(|sign| before.ends_with(sign) || after.starts_with(sign));
                if beside || lists > 0 {
                    found.push(text);
                }
            }
        }
    }
    found
}
