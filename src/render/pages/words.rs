//! The glossary, the misconceptions and the cautions.

use super::Pages;
use crate::course::words::CautionAction;
use crate::render::RenderError;
use crate::render::figures::capitalised;
use crate::render::frame::{Frame, Link, Section};
use crate::render::output::SiteFile;
use crate::render::plan::{self, href, text_path};
use crate::say;
use serde::Serialize;

#[derive(Serialize)]
struct GlossaryPage {
    frame: Frame,
    letters: Vec<LetterView>,
}

/// The terms that begin with one letter.
#[derive(Serialize)]
struct LetterView {
    letter: String,
    anchor: String,
    terms: Vec<TermView>,
}

#[derive(Serialize)]
struct TermView {
    anchor: String,
    term: String,
    means: String,
    see: Vec<Link>,
}

#[derive(Serialize)]
struct MisconceptionsPage {
    frame: Frame,
    misconceptions: Vec<MisconceptionView>,
}

#[derive(Serialize)]
struct MisconceptionView {
    anchor: String,
    belief: String,
    tempting: String,
    truth: String,
    lesson: Option<Link>,
}

#[derive(Serialize)]
struct CautionsPage {
    frame: Frame,
    cautions: Vec<CautionView>,
}

#[derive(Serialize)]
struct CautionView {
    anchor: String,
    name: String,
    say: String,
    action: String,
    refer_to: String,
    source: String,
}

impl Pages<'_> {
    /// The glossary.
    pub(super) fn glossary(&self) -> Result<SiteFile, RenderError> {
        let mut letters: Vec<LetterView> = Vec::new();
        for term in &self.course.terms {
            let letter = first_letter(&term.term);
            let see = term
                .see
                .iter()
                .filter_map(|id| self.course.terms.iter().find(|other| other.id == *id))
                .map(|other| Link::new(&other.term, format!("#{}", other.id)))
                .collect();
            let view =
                TermView { anchor: term.id.clone(), term: term.term.clone(), means: term.means.clone(), see };
            match letters.iter_mut().find(|group| group.letter == letter) {
                Some(group) => group.terms.push(view),
                None => {
                    let anchor = format!("letter_{}", letters.len() + 1);
                    letters.push(LetterView { letter, anchor, terms: vec![view] });
                }
            }
        }
        let frame = self
            .frame(plan::GLOSSARY, &say!(self.course.language, "frame-glossary"), Section::Glossary)
            .described(&say!(self.course.language, "glossary-description"));
        self.page(plan::GLOSSARY, "glossary.html", GlossaryPage { frame, letters })
    }

    /// The misconceptions.
    pub(super) fn misconceptions(&self) -> Result<SiteFile, RenderError> {
        let misconceptions = self.course.misconceptions.iter().map(|misconception| MisconceptionView {
            anchor: misconception.id.clone(),
            belief: misconception.belief.clone(),
            tempting: misconception.tempting.clone(),
            truth: misconception.truth.clone(),
            lesson: self.course.lesson(&misconception.lesson).map(|(_, lesson)| {
                Link::new(&lesson.page.title, href(plan::MISCONCEPTIONS, &text_path(&lesson.page.path)))
            }),
        });
        let language = &self.course.language;
        let frame = self
            .frame(plan::MISCONCEPTIONS, &say!(language, "frame-misconceptions"), Section::Misconceptions)
            .described(&say!(language, "misconceptions-description"));
        let context = MisconceptionsPage { frame, misconceptions: misconceptions.collect() };
        self.page(plan::MISCONCEPTIONS, "misconceptions.html", context)
    }

    /// The cautions.
    pub(super) fn cautions(&self) -> Result<SiteFile, RenderError> {
        let language = &self.course.language;
        let cautions = self.course.cautions.iter().map(|caution| CautionView {
            anchor: caution.id.clone(),
            name: caution.name.clone(),
            say: caution.say.clone(),
            action: match caution.action {
                CautionAction::Wait => say!(language, "cautions-wait"),
                CautionAction::Refer => say!(language, "cautions-refer"),
            },
            refer_to: caution.refer_to.clone(),
            source: caution.source.clone(),
        });
        let frame = self
            .frame(plan::CAUTIONS, &say!(language, "frame-cautions"), Section::Cautions)
            .described(&say!(language, "cautions-description"));
        self.page(plan::CAUTIONS, "cautions.html", CautionsPage { frame, cautions: cautions.collect() })
    }
}

/// The letter a term is filed under.
fn first_letter(term: &str) -> String {
    term.chars().find(|c| c.is_alphanumeric()).map_or_else(|| "#".to_owned(), |c| capitalised(&c.to_string()))
}
