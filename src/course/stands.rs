//! Where everything that has an id is written, for problems that are found when the course has been read.
//!
//! Entry point: [`Stands::of`].

use super::read::names::Names;
use std::collections::BTreeMap;

/// Where things are written: their kind in one word and their id, with file, line and column.
#[derive(Debug, Clone, Default)]
pub struct Stands(BTreeMap<(&'static str, String), (String, usize, usize)>);

impl Stands {
    /// The places of these names.
    pub(crate) fn of_names(names: &Names) -> Self {
        let places = names.places().map(|(thing, id, place)| {
            let (line, column) = place.line_and_column();
            ((thing.word(), id.to_owned()), (place.source.path.clone(), line, column))
        });
        Stands(places.collect())
    }

    /// File, line and column of the thing of this kind (`skill`, `term`, `lesson` …) with this id.
    pub fn of(&self, kind: &str, id: &str) -> Option<(&str, usize, usize)> {
        let found = self.0.iter().find(|((known, name), _)| *known == kind && name == id);
        found.map(|(_, (file, line, column))| (file.as_str(), *line, *column))
    }
}
