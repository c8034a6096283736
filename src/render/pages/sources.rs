//! What the course and the engine lean on, and what nobody published.

use super::Pages;
use crate::course::{SourceBasis, SourceKind};
use crate::pigment::Basis;
use crate::render::RenderError;
use crate::render::figures::colour_index;
use crate::render::frame::{Frame, Section};
use crate::render::output::SiteFile;
use crate::render::plan;
use crate::say;
use serde::Serialize;
use std::collections::BTreeMap;

#[derive(Serialize)]
struct SourcesPage {
    frame: Frame,
    kinds: Vec<KindView>,
    /// Colourants by where their optics come from.
    colourants: Vec<ColourantsView>,
    /// What questions of the bank name as their source.
    asked: Vec<AskedOf>,
}

/// Sources of one kind.
#[derive(Serialize)]
struct KindView {
    title: String,
    sources: Vec<SourceView>,
}

#[derive(Serialize)]
struct SourceView {
    anchor: String,
    title: String,
    by: String,
    took: String,
    basis: String,
}

#[derive(Serialize)]
struct ColourantsView {
    basis: String,
    /// "PR 101 red iron oxide, …".
    names: String,
}

#[derive(Serialize)]
struct AskedOf {
    source: String,
    /// "3 questions".
    questions: String,
}

impl Pages<'_> {
    /// The sources.
    pub(super) fn sources(&self) -> Result<SiteFile, RenderError> {
        let course = self.course;
        let language = &course.language;
        let kinds = SourceKind::ALL.iter().map(|(kind, _)| KindView {
            title: say!(language, &format!("sources-kind-{}", id_of(*kind))),
            sources: course
                .sources
                .iter()
                .filter(|source| source.kind == *kind)
                .map(|source| SourceView {
                    anchor: format!("source_{}", source.id),
                    title: source.title.clone(),
                    by: source.by.clone(),
                    took: source.took.clone(),
                    basis: say!(language, &format!("sources-basis-{}", id_of_basis(source.basis))),
                })
                .collect(),
        });
        let bases = [Basis::Measured, Basis::Published, Basis::Representative];
        let colourants = bases.into_iter().map(|known| ColourantsView {
            basis: language.basis(known),
            names: course
                .shelf
                .colourants
                .iter()
                .filter(|colourant| colourant.of_bottle.is_none() && colourant.basis == known)
                .map(|colourant| format!("{} {}", colour_index(&colourant.id), colourant.name))
                .collect::<Vec<_>>()
                .join(", "),
        });
        let mut asked: BTreeMap<&str, usize> = BTreeMap::new();
        for question in &course.questions {
            *asked.entry(question.source.as_str()).or_default() += 1;
        }
        let asked = asked.into_iter().map(|(source, count)| AskedOf {
            source: source.to_owned(),
            questions: say!(language, "sources-asked", count = count),
        });
        let context = SourcesPage {
            frame: self
                .frame(plan::SOURCES, &say!(language, "model-sources"), Section::Course)
                .described(&say!(language, "sources-description")),
            kinds: kinds.filter(|kind| !kind.sources.is_empty()).collect(),
            colourants: colourants.filter(|of| !of.names.is_empty()).collect(),
            asked: asked.collect(),
        };
        self.page(plan::SOURCES, "sources.html", context)
    }
}

/// What the id of the message for a kind ends with.
fn id_of(kind: SourceKind) -> &'static str {
    match kind {
        SourceKind::Standard => "standard",
        SourceKind::Regulation => "regulation",
        SourceKind::Guideline => "guideline",
        SourceKind::Paper => "paper",
        SourceKind::Book => "book",
        SourceKind::Table => "table",
        SourceKind::Practice => "practice",
    }
}

/// The same for a basis.
fn id_of_basis(basis: SourceBasis) -> &'static str {
    match basis {
        SourceBasis::Checked => "checked",
        SourceBasis::Copied => "copied",
        SourceBasis::FromMemory => "from-memory",
        SourceBasis::CommonPractice => "common-practice",
        SourceBasis::Representative => "representative",
    }
}
