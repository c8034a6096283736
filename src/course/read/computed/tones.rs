//! Tones that a claim compares with: a text that is the id of none would never hold, or always.
//!
//! Entry point: [`wrong`].

use super::super::suggest::{listed, nearest, quoted};
use super::engine::{CallProblem, FUNCTIONS};
use crate::healing::Tone;
use crate::language::Language;

/// What is wrong with the first text of a claim about tones that is compared and is no tone's id.
pub(super) fn wrong(claim: &str, language: &Language) -> Option<CallProblem> {
    let known = || Tone::ALL.iter().map(|(tone, _)| tone.id());
    let texts = compared(claim);
    if !texts.tone {
        return None;
    }
    // A number is compared with what `digits` writes.
    let is_tone = |text: &str| text.parse::<f64>().is_ok() || known().any(|id| id == text);
    let text = texts.all.into_iter().find(|text| !is_tone(text))?;
    let said = Tone::ALL.iter().find(|(tone, word)| *word == text || tone.said(language) == text);
    let help = match said.map(|(tone, _)| tone.id()).or_else(|| nearest(text, known())) {
        Some(near) => format!("did you mean `{near}`?"),
        None => format!("the tones are {}", listed(known())),
    };
    Some(CallProblem::wrong(format!("{} is no tone", quoted(text)), help, text))
}

/// The texts of a claim that are compared.
#[derive(Debug, Default, PartialEq, Eq)]
struct Compared<'c> {
    all: Vec<&'c str>,
    /// Whether a tone is asked for.
    tone: bool,
}

/// What a text in quotes stands in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Within {
    /// Parentheses or a list: it is compared as if it stood alone.
    Group,
    /// The arguments of a function: a name.
    Call,
    /// A part that is asked for, as in `colour["tone"]`.
    Part,
}

/// Texts in quotes that are neither arguments nor parts.
fn compared(claim: &str) -> Compared<'_> {
    let mut found = Compared::default();
    let mut within = Vec::new();
    let mut from = 0;
    while let Some(at) = claim[from..].find(['"', '\'', '[', ']', '(', ')', '.']).map(|at| from + at) {
        let before = claim[..at].trim_end();
        from = at + 1;
        match &claim[at..from] {
            "(" => {
                let name = before.rsplit(|c: char| !c.is_alphanumeric() && c != '_').next();
                let is_call = name.is_some_and(|name| FUNCTIONS.contains(&name));
                within.push(if is_call { Within::Call } else { Within::Group });
            }
            "[" => within.push(if before.ends_with([')', ']']) { Within::Part } else { Within::Group }),
            ")" | "]" => {
                within.pop();
            }
            "." => found.tone |= claim[from..].trim_start().starts_with("tone"),
            quote => {
                let Some(length) = claim[from..].find(quote) else { break };
                let text = &claim[from..from + length];
                from += length + 1;
                match within.last() {
                    Some(Within::Call) => {}
                    Some(Within::Part) => found.tone |= text == "tone",
                    Some(Within::Group) | None => found.all.push(text),
                }
            }
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn texts_that_are_compared_are_found_wherever_they_stand() {
        let tone = r#"healed("tovi", mix="kelderwick 6").tone"#;
        for claim in [
            format!(r#"{tone} == "mauve""#),
            format!(r#"'mauve' != {tone}"#),
            format!(r#"{tone} not in ("mauve")"#),
            format!(r#"{tone} in ["grey", "mauve"]"#),
            format!(r#"{tone} < "mauve""#),
            format!(r#""mauve" in [{tone}]"#),
            format!(r#"({tone} == ("mauve"))"#),
            r#"healed("tovi")["tone"] == "mauve""#.to_owned(),
        ] {
            assert!(wrong(&claim, &Language::default()).is_some(), "{claim}");
            let fine = claim.replace("mauve", "ashy");
            assert!(wrong(&fine, &Language::default()).is_none(), "{fine}");
        }
    }

    #[test]
    fn names_parts_and_numbers_are_no_tones() {
        for claim in [
            r#"healed("tovi","kelderwick 6")["L"] > 3"#,
            r#"[healed("tovi").L, 3][0] > 3 and healed("tovi").tone == "grey""#,
            r#"digits(healed("tovi").L, 1) == "66.8" and "grey" == healed("tovi").tone"#,
            r#"digits(healed("tovi").L, 1) == "66,8""#,
            r#"goal("soft-brown").a < 8"#,
        ] {
            assert!(wrong(claim, &Language::default()).is_none(), "{claim}");
        }
    }
}
