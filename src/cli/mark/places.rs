//! Where exports may be written: none may take the place of what marks are made from or kept in, nor of another export.
//!
//! Entry point: [`check_exports`], asked before anything is marked. Files are compared by where they really lie, so that neither `./` nor a link
//! hides one. Whatever else is there must be an earlier export.

use super::super::lines::named;
use super::super::paper::folder::RECORD;
use super::super::problem::Problem;
use super::super::replacement::{check_place, folder_of};
use super::Arguments;
use super::export::is_export;
use std::collections::HashMap;
use std::ffi::OsString;
use std::fs;
use std::path::{Path, PathBuf};

/// What SQLite keeps beside a database that is in use.
const BESIDE_A_BOOK: [&str; 3] = ["-wal", "-shm", "-journal"];

/// Whether the exports of a command may be written, as far as can be told beforehand.
///
/// # Errors
/// [`Problem::File`] where the folder is missing; [`Problem::Use`] where something would be lost.
pub(super) fn check_exports(arguments: &Arguments, slips: &[PathBuf]) -> Result<(), Problem> {
    let exports: Vec<&Path> =
        [&arguments.csv, &arguments.answers_csv].into_iter().flatten().map(PathBuf::as_path).collect();
    if exports.is_empty() {
        return Ok(());
    }
    let kept = kept(arguments, slips);
    let keys = arguments.keys.as_deref().map(folder_of_keys);
    let refuse = |file: &Path, why: &str| Err(Problem::Use(format!("{}: {why}", named(file))));
    let mut places: Vec<PathBuf> = Vec::new();
    for file in exports {
        check_place(file).map_err(|source| Problem::File { path: file.to_owned(), source })?;
        let place = real(file);
        if let Some(what) = kept.get(&place) {
            return refuse(file, &format!("this is {what}; export to another file"));
        }
        if keys.as_ref().is_some_and(|keys| place.starts_with(keys)) {
            return refuse(file, "this lies among the keys; export to another folder");
        }
        if places.contains(&place) {
            return refuse(file, "both exports would be written here; name a file for each");
        }
        if file.exists() && !is_export_or_empty(file) {
            return refuse(
                file,
                "there is a file here that is no export of a mark book; name another, or remove it first",
            );
        }
        places.push(place);
    }
    Ok(())
}

/// Files that marks are made from or kept in, by where they really lie, with what they are.
fn kept(arguments: &Arguments, slips: &[PathBuf]) -> HashMap<PathBuf, &'static str> {
    let mut kept: HashMap<PathBuf, &'static str> =
        slips.iter().map(|slip| (real(slip), "a slip that is marked")).collect();
    if let Some(register) = &arguments.register {
        kept.insert(real(register), "the register");
    }
    if let Some(book) = &arguments.book {
        let book = real(book);
        for ending in BESIDE_A_BOOK {
            let mut name: OsString = book.clone().into();
            name.push(ending);
            kept.insert(name.into(), "part of the mark book");
        }
        kept.insert(book, "the mark book");
    }
    kept
}

/// Where the keys of a sitting really lie.
fn folder_of_keys(folder: &Path) -> PathBuf {
    let inner = folder.join("keys");
    real(if inner.join(RECORD).is_file() { &inner } else { folder })
}

/// Where a file really lies, or would.
fn real(path: &Path) -> PathBuf {
    fs::canonicalize(path).unwrap_or_else(|_| {
        let folder = folder_of(path);
        let folder = fs::canonicalize(folder).unwrap_or_else(|_| folder.to_owned());
        path.file_name().map_or_else(|| folder.clone(), |name| folder.join(name))
    })
}

/// Whether a file may give way to an export. Looked at before it is opened: a pipe would keep the command waiting.
fn is_export_or_empty(path: &Path) -> bool {
    fs::metadata(path).is_ok_and(|found| found.is_file() && (found.len() == 0 || is_export(path)))
}
