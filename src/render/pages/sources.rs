//! What the course and the engine lean on, and what nobody published.

use super::Pages;
use crate::course::{SourceBasis, SourceKind};
use crate::pigment::Basis;
use crate::render::RenderError;
use crate::render::figures::{basis, colour_index, counted};
use crate::render::frame::{Frame, Section};
use crate::render::output::SiteFile;
use crate::render::plan;
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
    title: &'static str,
    sources: Vec<SourceView>,
}

#[derive(Serialize)]
struct SourceView {
    anchor: String,
    title: String,
    by: String,
    took: String,
    basis: &'static str,
}

#[derive(Serialize)]
struct ColourantsView {
    basis: &'static str,
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
        let kinds = SourceKind::ALL.iter().map(|(kind, _)| KindView {
            title: title_of(*kind),
            sources: course
                .sources
                .iter()
                .filter(|source| source.kind == *kind)
                .map(|source| SourceView {
                    anchor: format!("source_{}", source.id),
                    title: source.title.clone(),
                    by: source.by.clone(),
                    took: source.took.clone(),
                    basis: words_of(source.basis),
                })
                .collect(),
        });
        let bases = [Basis::Measured, Basis::Published, Basis::Representative];
        let colourants = bases.into_iter().map(|known| ColourantsView {
            basis: basis(known),
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
            questions: counted(count, "question"),
        });
        let context = SourcesPage {
            frame: self
                .frame(plan::SOURCES, "Sources", Section::Course)
                .described("What this course and its engine lean on, and which values nobody published."),
            kinds: kinds.filter(|kind| !kind.sources.is_empty()).collect(),
            colourants: colourants.filter(|of| !of.names.is_empty()).collect(),
            asked: asked.collect(),
        };
        self.page(plan::SOURCES, "sources.html", context)
    }
}

fn title_of(kind: SourceKind) -> &'static str {
    match kind {
        SourceKind::Standard => "Standards",
        SourceKind::Regulation => "Regulations",
        SourceKind::Guideline => "Guidelines",
        SourceKind::Paper => "Papers",
        SourceKind::Book => "Books",
        SourceKind::Table => "Tables and data",
        SourceKind::Practice => "Practice, and this project's own choices",
    }
}

fn words_of(basis: SourceBasis) -> &'static str {
    match basis {
        SourceBasis::Checked => "tests reproduce numbers quoted from it",
        SourceBasis::Copied => "copied from a file that carries it",
        SourceBasis::FromMemory => "from memory, not looked up",
        SourceBasis::CommonPractice => "common practice, no source",
        SourceBasis::Representative => "representative, invented for teaching",
    }
}
