//! Lines for people: printed without a panic where nobody reads any more, with names from outside made visible and the system's refusals
//! in words.
//!
//! Entry points: [`print`] for results, [`note`] for whatever else there is to say, [`named`] for paths, [`cause`] for the system's refusals.

use super::problem::Problem;
use super::terminal::fitted;
use crate::assess::visible;
use std::fmt::Display;
use std::io::{self, ErrorKind, IsTerminal, Write};
use std::path::Path;

/// Prints a line of results on standard output, [`fitted`] to a terminal.
///
/// # Errors
/// [`Problem::Print`] where it cannot be written; that nobody reads it any more is told to nobody.
pub(super) fn print(line: impl Display) -> Result<(), Problem> {
    let mut out = io::stdout().lock();
    writeln!(out, "{}", fitted(&line.to_string(), out.is_terminal()))?;
    Ok(())
}

/// Says something on standard error, likewise. Nothing depends on whether it is read.
pub(super) fn note(line: impl Display) {
    let mut err = io::stderr().lock();
    let _ = writeln!(err, "{}", fitted(&line.to_string(), err.is_terminal()));
}

/// A path as a terminal may show it.
pub(super) fn named(path: &Path) -> String {
    visible(&path.display().to_string()).into_owned()
}

/// Why the system refused, in words and without its number.
pub(super) fn cause(error: &io::Error) -> String {
    match error.kind() {
        ErrorKind::NotFound => "there is no such file or folder".to_owned(),
        ErrorKind::PermissionDenied => "access is not allowed".to_owned(),
        ErrorKind::IsADirectory => "this is a folder, not a file".to_owned(),
        ErrorKind::NotADirectory => "part of this path is a file, not a folder".to_owned(),
        ErrorKind::StorageFull => "no room is left on the disk".to_owned(),
        ErrorKind::ReadOnlyFilesystem => "nothing can be written there: it is read-only".to_owned(),
        _ => {
            let said = error.to_string();
            match said.rfind(" (os error ") {
                Some(at) => said[..at].to_owned(),
                None => said,
            }
        }
    }
}

/// A count with what is counted: "1 person", "2 people".
pub(super) fn counted(count: usize, one: &str, more: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { more })
}
