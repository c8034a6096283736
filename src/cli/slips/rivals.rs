//! Slips of one person for one thing that answer differently: which of them counts is not for the order of file names to say.
//!
//! Entry point: [`Rivals::among`]. Only slips that could be marked are rivals. Where the mark book holds one of a person's slips for
//! it already, that one stays, and the book refuses the others.

use super::super::lines::named;
use super::{Handed, Marker, files};
use crate::assess::{BookError, MarkBook};
use rayon::prelude::*;
use std::collections::{BTreeMap, HashMap, HashSet};
use std::path::{Path, PathBuf};

/// Other slips that are named with one.
const MOST_NAMED: usize = 3;

/// Slips that are refused because another of the same person for the same thing differs.
pub(super) struct Rivals(HashMap<usize, String>);

impl Rivals {
    /// No slips.
    pub fn none() -> Self {
        Rivals(HashMap::new())
    }

    /// Those among these slips.
    ///
    /// # Errors
    /// [`BookError`] where the book cannot be read.
    pub fn among<M: Marker>(
        (slips, may_be_empty): (&[PathBuf], bool),
        marker: &mut M,
        book: Option<&MarkBook>,
    ) -> Result<Self, BookError> {
        let mut found = HashMap::new();
        for (of, places) in differing::<M::Slip>(slips, may_be_empty) {
            if book.map(|book| marker.holds(book, &of)).transpose()?.unwrap_or(false) {
                continue;
            }
            let able: Vec<(usize, String)> = places
                .into_iter()
                .filter(|(place, _)| is_marked(&slips[*place], may_be_empty, marker))
                .collect();
            let answers: HashSet<&String> = able.iter().map(|(_, answers)| answers).collect();
            if answers.len() < 2 {
                continue;
            }
            for &(place, _) in &able {
                let others = able.iter().map(|(other, _)| *other).filter(|other| *other != place);
                found.insert(place, why(&*marker, &of, slips, others, book.is_some()));
            }
        }
        Ok(Rivals(found))
    }

    /// Why the slip at this place is refused, if it is.
    pub fn refused(&self, place: usize) -> Option<&str> {
        self.0.get(&place).map(String::as_str)
    }
}

/// Slips with their answers, by what they are for: where they are among all slips, and what answers they have.
type Handled<S> = BTreeMap<<S as Handed>::Of, Vec<(usize, String)>>;

/// That for which slips with different answers were handed in.
fn differing<S: Handed>(slips: &[PathBuf], may_be_empty: bool) -> Handled<S> {
    let read: Vec<Option<(S::Of, String)>> = slips
        .par_iter()
        .map(|path| files::slip::<S>(path, may_be_empty).ok())
        .map(|slip| slip.map(|slip| (slip.of().clone(), slip.answers_digest())))
        .collect();
    let mut all: Handled<S> = BTreeMap::new();
    for (place, read) in read.into_iter().enumerate() {
        if let Some((of, answers)) = read {
            all.entry(of).or_default().push((place, answers));
        }
    }
    all.retain(|_, handed| handed.iter().any(|(_, answers)| *answers != handed[0].1));
    all
}

/// Whether a slip would be marked if it were alone.
fn is_marked<M: Marker>(path: &Path, may_be_empty: bool, marker: &mut M) -> bool {
    files::slip(path, may_be_empty).is_ok_and(|slip| {
        marker.prepare(std::iter::once(&slip));
        marker.mark(&slip).is_ok()
    })
}

fn why<M: Marker>(
    marker: &M,
    of: &<M::Slip as Handed>::Of,
    slips: &[PathBuf],
    others: impl Iterator<Item = usize>,
    has_book: bool,
) -> String {
    let mut names: Vec<String> = others.map(|other| named(&slips[other])).collect();
    let more = names.len().saturating_sub(MOST_NAMED);
    names.truncate(MOST_NAMED);
    let more = if more > 0 { format!(" and {more} more") } else { String::new() };
    let all = if has_book { ", or record all as attempts with --second-attempt" } else { "" };
    let id = <M::Slip as Handed>::person(of);
    let who = marker.name(of).map_or_else(|| format!("`{id}`"), |name| format!("{name} ({id})"));
    format!(
        "{who} handed in slips for this {} that answer differently, this one and {}{more}; none of them is marked: mark the one that \
         counts without the others{all}",
        <M::Slip as Handed>::FOR,
        names.join(", ")
    )
}
