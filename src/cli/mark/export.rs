//! A mark book's exports as files.
//!
//! Entry point: [`export`]. An export is written beside the old one and moved into its place ([`Replacement`]).

use super::super::lines::named;
use super::super::problem::Problem;
use super::super::replacement::{Replacement, folder_of};
use crate::assess::{BYTE_ORDER_MARK, EXPORT_HEAD, MarkBook};
use std::fs::{self, File};
use std::io::{BufWriter, Read, Write};
use std::path::Path;

/// How versions before [`Replacement`] named the file they wrote, and how many letters and figures followed.
const EARLIER: (&str, usize) = (".export-", 6);

/// Writes an export, of answers or of results. What killed runs have left of one beside it, or beside the book, goes.
pub(super) fn export(
    (book, book_path): (&MarkBook, &Path),
    path: &Path,
    answers: bool,
) -> Result<(), Problem> {
    let failed = |source| Problem::File { path: path.to_owned(), source };
    tidy_earlier(folder_of(path));
    tidy_earlier(folder_of(book_path));
    let mut new = Replacement::begin_like_others(path).map_err(failed)?;
    let mut out = BufWriter::new(new.file());
    out.write_all(BYTE_ORDER_MARK).map_err(failed)?;
    let written = if answers { book.answers_csv(&mut out) } else { book.results_csv(&mut out) };
    written.map_err(|error| Problem::Input(format!("{}: {error}", named(path))))?;
    out.flush().map_err(failed)?;
    drop(out);
    new.finish().map_err(failed)
}

/// Removes what earlier versions left when they were killed: it holds people's names and marks. Their names for it say too little of whose a
/// file is, so its beginning must be that of an export; whatever else has such a name stays.
fn tidy_earlier(folder: &Path) {
    let Ok(entries) = fs::read_dir(folder) else { return };
    for entry in entries.flatten() {
        let name = entry.file_name();
        let random = name.to_str().and_then(|name| name.strip_prefix(EARLIER.0));
        let is_named_so = random.is_some_and(|random| {
            random.len() == EARLIER.1 && random.bytes().all(|byte| byte.is_ascii_alphanumeric())
        });
        if is_named_so && entry.file_type().is_ok_and(|kind| kind.is_file()) && is_export(&entry.path()) {
            drop(fs::remove_file(entry.path()));
        }
    }
}

/// Whether a file begins as exports do, those of earlier versions too, which had no byte order mark.
pub(super) fn is_export(path: &Path) -> bool {
    let most = BYTE_ORDER_MARK.len() + EXPORT_HEAD.len();
    let mut head = Vec::new();
    let read = File::open(path).and_then(|file| file.take(most as u64).read_to_end(&mut head));
    read.is_ok() && head.strip_prefix(BYTE_ORDER_MARK).unwrap_or(&head).starts_with(EXPORT_HEAD)
}
