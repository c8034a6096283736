//! Slips as every command takes them in, whatever they are of.
//!
//! Entry points: [`Found::among`] gathers them, then [`Intake`]. Steps: see which of one person differ; then, for some slips at a time: read them;
//! make ready what marking needs; mark on all cores; record and tell one after another. A slip that is refused stops nothing.

mod files;
mod rivals;
mod telling;

pub(super) use files::Found;
pub(super) use telling::{Marked, Refused, no_slip_of, tell_refused, told_passed_over};

use super::lines::named;
use super::problem::Problem;
use crate::assess::{BookError, MarkBook, Recorded, SlipError};
use rayon::prelude::*;
use rivals::Rivals;
use std::collections::HashMap;
use std::hash::Hash;
use std::path::{Path, PathBuf};

/// Something of a slip, or why it is refused.
pub(super) type OrRefused<T> = Result<T, String>;

/// Slips read and marked at once: the most that are in memory together.
const AT_ONCE: usize = 256;

/// A slip that somebody handed in.
pub(super) trait Handed: Sized + Send + Sync {
    /// What it is for, and whose it is.
    type Of: Clone + Ord + Hash + Send + Sync;
    /// What it is for, in words.
    const FOR: &'static str;
    /// What is said of one that answers nothing.
    const BLANK: &'static str;

    fn read(bytes: &[u8]) -> Result<Self, SlipError>;
    fn of(&self) -> &Self::Of;
    /// Id of the person.
    fn person(of: &Self::Of) -> &str;
    /// Whether nobody has answered anything on it.
    fn is_blank(&self) -> bool;
    /// Slips that answer alike have the same.
    fn answers_digest(&self) -> String;
}

/// What marks slips.
pub(super) trait Marker: Sync {
    type Slip: Handed;
    type Marks: Send;

    /// Makes ready what these slips need, before they are shared out to all cores.
    fn prepare<'s>(&mut self, slips: impl Iterator<Item = &'s Self::Slip>)
    where
        Self::Slip: 's;
    fn mark(&self, slip: &Self::Slip) -> OrRefused<Self::Marks>;
    /// The name of the person whose this is, where it is known.
    fn name(&self, of: &<Self::Slip as Handed>::Of) -> Option<String>;
    /// Whether a book has marks of this already.
    fn holds(&self, book: &MarkBook, of: &<Self::Slip as Handed>::Of) -> Result<bool, BookError>;
    fn record(
        &self,
        book: &mut MarkBook,
        slip: &Self::Slip,
        marks: &Self::Marks,
        another: bool,
    ) -> Result<Recorded, BookError>;
}

/// Which slips count.
#[derive(Debug, Clone, Copy)]
pub(super) struct Counting {
    /// Those without any answer, too.
    pub empty: bool,
    /// Further ones of a person, as attempts.
    pub another: bool,
}

/// Slips about to be marked.
pub(super) struct Intake<'m, M> {
    marker: &'m mut M,
    slips: &'m [PathBuf],
    counting: Counting,
    rivals: Rivals,
}

impl<'m, M: Marker> Intake<'m, M> {
    /// Looks through the slips for those of one person that differ.
    ///
    /// # Errors
    /// [`Problem::Input`] where the book cannot be read.
    pub fn new(
        marker: &'m mut M,
        slips: &'m [PathBuf],
        book: Option<&MarkBook>,
        counting: Counting,
    ) -> Result<Self, Problem> {
        let rivals = if counting.another {
            Rivals::none()
        } else {
            let found = Rivals::among((slips, counting.empty), marker, book);
            found.map_err(|error| Problem::Input(error.to_string()))?
        };
        Ok(Intake { marker, slips, counting, rivals })
    }

    /// Marks and records; `tell` is given every slip in turn with its marks, or why it is refused.
    ///
    /// # Errors
    /// What `tell` gives.
    pub fn take(
        self,
        mut book: Option<&mut MarkBook>,
        mut tell: impl FnMut(&Path, OrRefused<(M::Marks, Option<Recorded>)>) -> Result<(), Problem>,
    ) -> Result<(), Problem> {
        let Intake { marker, slips, counting, rivals } = self;
        let mut seen = Seen::<M::Slip>::new();
        for (chunk, some) in slips.chunks(AT_ONCE).enumerate() {
            let read: Vec<OrRefused<M::Slip>> =
                some.par_iter().map(|path| files::slip(path, counting.empty)).collect();
            marker.prepare(read.iter().flatten());
            let marked: Vec<OrRefused<(M::Slip, M::Marks)>> = read
                .into_par_iter()
                .map(|slip| slip.and_then(|slip| marker.mark(&slip).map(|marks| (slip, marks))))
                .collect();
            for (at, (path, marked)) in some.iter().zip(marked).enumerate() {
                let recorded = marked.and_then(|(slip, marks)| {
                    if let Some(why) = rivals.refused(chunk * AT_ONCE + at) {
                        return Err(why.to_owned());
                    }
                    let book = book.as_deref_mut();
                    let recorded = record(marker, (path, &slip, &marks), &mut seen, book, counting.another)?;
                    Ok((marks, recorded))
                });
                tell(path, recorded)?;
            }
        }
        Ok(())
    }
}

/// Slips marked in this run: by what they are for, the first with the digest of its answers.
type Seen<S> = HashMap<<S as Handed>::Of, (PathBuf, String)>;

/// Records the marks of a slip. Nobody is marked twice in one run, or recorded twice at all.
fn record<M: Marker>(
    marker: &M,
    (path, slip, marks): (&Path, &M::Slip, &M::Marks),
    seen: &mut Seen<M::Slip>,
    book: Option<&mut MarkBook>,
    another: bool,
) -> OrRefused<Option<Recorded>> {
    let answers = slip.answers_digest();
    let first = seen.get(slip.of()).filter(|_| !another);
    if let Some((first, _)) = first.filter(|(_, known)| *known == answers) {
        return Err(format!("it answers like {}, which is marked: a copy", named(first)));
    }
    let recorded = book.map(|book| marker.record(book, slip, marks, another)).transpose().map_err(
        |error| match first {
            Some((first, _)) => format!("{error}; {} is that slip", named(first)),
            None => error.to_string(),
        },
    )?;
    seen.entry(slip.of().clone()).or_insert_with(|| (path.to_owned(), answers));
    Ok(recorded)
}
