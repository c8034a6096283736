//! Where everything that has an id is written, for problems that are found when the course has been read.
//!
//! Entry points: [`Stands::of`] finds what has an id, [`Stands::diagnostic`] words a problem at a place that is known in words.

use super::diagnostic::{Diagnostic, Severity};
use super::read::names::Names;
use super::source::{Place, Source};
use std::collections::BTreeMap;
use std::sync::Arc;

/// Where things are written: their kind in one word and their id, with file, line and column.
#[derive(Debug, Clone, Default)]
pub struct Stands {
    places: BTreeMap<(&'static str, String), (String, usize, usize)>,
    /// Every file in which something with an id is written, by its path.
    sources: BTreeMap<String, Arc<Source>>,
}

impl Stands {
    /// The places of these names.
    pub(crate) fn of_names(names: &Names) -> Self {
        let mut stands = Stands::default();
        for (thing, id, place) in names.places() {
            let (line, column) = place.line_and_column();
            let path = &place.source.path;
            stands.places.insert((thing.word(), id.to_owned()), (path.clone(), line, column));
            stands.sources.entry(path.clone()).or_insert_with(|| Arc::clone(&place.source));
        }
        stands
    }

    /// File, line and column of the thing of this kind (`skill`, `term`, `lesson` …) with this id.
    pub fn of(&self, kind: &str, id: &str) -> Option<(&str, usize, usize)> {
        let found = self.places.iter().find(|((known, name), _)| *known == kind && name == id);
        found.map(|(_, (file, line, column))| (file.as_str(), *line, *column))
    }

    /// A problem at a place in words, `lessons/module/lesson.yaml:12:5`: with an excerpt of that line where the file is known.
    pub fn diagnostic(&self, stands_at: &str, severity: Severity, message: impl Into<String>) -> Diagnostic {
        let mut parts = stands_at.rsplitn(3, ':');
        let column = parts.next().and_then(|column| column.parse().ok()).unwrap_or(1);
        let line = parts.next().and_then(|line| line.parse().ok()).unwrap_or(1);
        let file = parts.next().unwrap_or(stands_at);
        let place = self.sources.get(file).and_then(|source| {
            let start = source.offset_of(line, column)?;
            Some(Place::new(source, start..source.end_of_line(start)))
        });
        match place {
            Some(place) => Diagnostic::at(&place, severity, message),
            None => Diagnostic::new(severity, file, line, column, message),
        }
    }
}
