//! What was proved of an exercise, in words.
//!
//! Entry point: [`Proof::said`].

use super::Proof;
use crate::course::Family;
use crate::language::Language;
use crate::say;

/// Runners-up that are told of a proof.
const TOLD: usize = 2;

impl Proof {
    /// What was proved, and what came next.
    pub fn said(&self, language: &Language, family: Family) -> String {
        let proved = self.proved(language, family);
        let next: Vec<String> = self
            .runners_up
            .iter()
            .take(TOLD)
            .map(|next| {
                let error = language.decimal(next.error, 1);
                say!(language, "exercise-proof-next-one", label = &next.label, error = error)
            })
            .collect();
        if next.is_empty() {
            return proved;
        }
        let over = if self.as_it_is.is_some() { "lightened" } else { "same" };
        let next = say!(language, "exercise-proof-next", next = next.join("; "), over = over);
        format!("{proved} {next}")
    }

    fn proved(&self, language: &Language, family: Family) -> String {
        let (held, worlds) = (self.held, self.worlds);
        let margin = self.margin.map(|margin| language.decimal(margin, 1));
        if matches!(family, Family::Foresight | Family::Hindsight | Family::Light | Family::Skin) {
            let margin = margin.unwrap_or_default();
            return say!(language, "exercise-proof-seen", margin = margin, held = held, worlds = worlds);
        }
        let (searched, error) = (self.searched, language.decimal(self.best_error, 1));
        match (self.as_it_is, margin) {
            (Some(as_it_is), _) => say!(
                language,
                "exercise-proof-lighten",
                searched = searched,
                before = language.decimal(as_it_is, 1),
                error = error,
                held = held,
                worlds = worlds
            ),
            (None, Some(margin)) => say!(
                language,
                "exercise-proof-margin",
                searched = searched,
                error = error,
                margin = margin,
                held = held,
                worlds = worlds
            ),
            (None, None) => say!(
                language,
                "exercise-proof-best",
                searched = searched,
                error = error,
                held = held,
                worlds = worlds
            ),
        }
    }
}
