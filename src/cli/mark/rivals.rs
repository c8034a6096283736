//! Slips of one person for one paper that answer differently: which of them counts is not for the order of file names to say.
//!
//! Entry point: [`Rivals::among`]. Only slips that could be marked are rivals. Where the mark book holds one of a person's slips for
//! the paper already, that one stays, and the book refuses the others.

use super::super::lines::named;
use super::files;
use super::keys::Keys;
use crate::assess::{BookError, MarkBook, PaperId};
use rayon::prelude::*;
use std::collections::{BTreeMap, HashMap, HashSet};
use std::path::{Path, PathBuf};

/// Other slips that are named with one.
const MOST_NAMED: usize = 3;

/// Slips that are refused because another of the same person for the same paper differs.
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
    pub fn among(
        (slips, may_be_empty): (&[PathBuf], bool),
        keys: &mut Keys,
        book: Option<&MarkBook>,
    ) -> Result<Self, BookError> {
        let mut found = HashMap::new();
        for (paper, places) in differing(slips, may_be_empty) {
            if book.map(|book| book.holds(&paper)).transpose()?.unwrap_or(false) {
                continue;
            }
            let able: Vec<(usize, String)> = places
                .into_iter()
                .filter(|(place, _)| is_marked(&slips[*place], may_be_empty, keys))
                .collect();
            let answers: HashSet<&String> = able.iter().map(|(_, answers)| answers).collect();
            if answers.len() < 2 {
                continue;
            }
            for &(place, _) in &able {
                let others = able.iter().map(|(other, _)| *other).filter(|other| *other != place);
                found.insert(place, why(&paper, slips, others, book.is_some()));
            }
        }
        Ok(Rivals(found))
    }

    /// Why the slip at this place is refused, if it is.
    pub fn refused(&self, place: usize) -> Option<&str> {
        self.0.get(&place).map(String::as_str)
    }
}

/// Papers for which slips with different answers were handed in: where they are among all slips, and what answers they have.
fn differing(slips: &[PathBuf], may_be_empty: bool) -> BTreeMap<PaperId, Vec<(usize, String)>> {
    let read: Vec<Option<(PaperId, String)>> = slips
        .par_iter()
        .map(|path| files::slip(path, may_be_empty).ok().map(|slip| (slip.answers_digest(), slip.paper)))
        .map(|read| read.map(|(answers, paper)| (paper, answers)))
        .collect();
    let mut by_paper: BTreeMap<PaperId, Vec<(usize, String)>> = BTreeMap::new();
    for (place, read) in read.into_iter().enumerate() {
        if let Some((paper, answers)) = read {
            by_paper.entry(paper).or_default().push((place, answers));
        }
    }
    by_paper.retain(|_, handed| handed.iter().any(|(_, answers)| *answers != handed[0].1));
    by_paper
}

/// Whether a slip would be marked if it were alone.
fn is_marked(path: &Path, may_be_empty: bool, keys: &mut Keys) -> bool {
    files::slip(path, may_be_empty).is_ok_and(|slip| {
        keys.prepare(std::iter::once(&slip));
        keys.mark(&slip).is_ok()
    })
}

fn why(paper: &PaperId, slips: &[PathBuf], others: impl Iterator<Item = usize>, has_book: bool) -> String {
    let mut names: Vec<String> = others.map(|other| named(&slips[other])).collect();
    let more = names.len().saturating_sub(MOST_NAMED);
    names.truncate(MOST_NAMED);
    let more = if more > 0 { format!(" and {more} more") } else { String::new() };
    let all = if has_book { ", or record all as attempts with --second-attempt" } else { "" };
    format!(
        "`{}` handed in slips for this paper that answer differently, this one and {}{more}; none of them is marked: mark the one that \
         counts without the others{all}",
        paper.candidate,
        names.join(", ")
    )
}
