//! Why a command did not succeed.

use super::lines::{cause, counted, named};
use super::terminal::{Painter, fitted, hung_within, is_fitted, width};
use crate::assess::visible;
use crate::course::{Diagnostic, Severity, Stands, report};
use crate::exercise::GenerateError;
use crate::render::RenderError;
use std::io::{IsTerminal, Write};
use std::path::{Path, PathBuf};
use thiserror::Error;

/// A command's failure.
#[derive(Debug, Error)]
pub(super) enum Problem {
    /// The course has errors; they are shown as diagnostics.
    #[error("the course has errors")]
    Course(Vec<Diagnostic>),
    /// A file could not be read or written.
    #[error("{}: {}", named(path), cause(source))]
    File {
        /// The file.
        path: PathBuf,
        /// Why.
        source: std::io::Error,
    },
    /// The site could not be written.
    #[error(transparent)]
    Render(RenderError),
    /// Input that is not what it should be.
    #[error("{0}")]
    Input(String),
    /// A result could not be printed.
    #[error("the result could not be printed: {0}")]
    Print(#[from] std::io::Error),
    /// Everything was said already.
    #[error("problems were found")]
    Reported,
    /// The command was used wrongly.
    #[error("{0}")]
    Use(String),
}

impl From<RenderError> for Problem {
    fn from(error: RenderError) -> Self {
        match error {
            // As of any other file: in the words of this program, not in the system's.
            RenderError::Io { action, path, source } => {
                Problem::Input(format!("{}: could not {action}: {}", named(&path), cause(&source)))
            }
            other => Problem::Render(other),
        }
    }
}

impl Problem {
    pub fn exit_code(&self) -> u8 {
        if matches!(self, Problem::Use(_)) { 2 } else { 1 }
    }

    /// Shows the problem on standard error. A reader that has gone away (a closed pipe) is no news.
    pub fn show(&self) {
        let mut err = std::io::stderr().lock();
        let _ = match self {
            Problem::Course(diagnostics) => {
                let coloured = Painter::for_stderr().has_colour();
                write!(err, "{}", told(diagnostics, coloured, err.is_terminal()))
            }
            Problem::Print(error) if error.kind() == std::io::ErrorKind::BrokenPipe => Ok(()),
            Problem::Reported => Ok(()),
            // A line a problem; within it, names from outside may hold anything.
            other => format!("error: {other}")
                .lines()
                .try_for_each(|line| writeln!(err, "{}", fitted(&visible(line), err.is_terminal()))),
        };
    }
}

/// Diagnostics as their reader needs them: where lines are broken at all ([`is_fitted`]), messages and suggestions are; excerpts and places
/// stay whole.
pub(super) fn told(diagnostics: &[Diagnostic], coloured: bool, is_terminal: bool) -> String {
    if !is_fitted(is_terminal) {
        return report(diagnostics, coloured);
    }
    let fit = |diagnostic: &Diagnostic| {
        let mut fitting = diagnostic.clone();
        let before = match diagnostic.severity {
            Severity::Error => "error: ",
            Severity::Warning => "warning: ",
        };
        fitting.message = hung_within(&diagnostic.message, 0, width() - before.len());
        // It stands below the number of the line.
        let before = diagnostic.line.to_string().len() + " = help: ".len();
        let room = width().saturating_sub(before);
        fitting.help = diagnostic.help.as_deref().map(|help| hung_within(help, 0, room));
        fitting
    };
    report(&diagnostics.iter().map(fit).collect::<Vec<_>>(), coloured)
}

/// Drills that cannot be satisfied, as problems at the places where they stand.
pub(super) fn impossible(errors: &[GenerateError], stands: &Stands) -> Problem {
    Problem::Course(unsatisfied(errors, stands))
}

/// What gives a drill exercises that can be proved.
pub(super) const GIVE_MORE: &str = "give other `clients`, `goals` or `bottles`, more `tempts`, fewer `options`, a smaller `margin`, or a wider `difficulty`";

/// Drills that cannot be satisfied, as a problem each at the place where it stands: the first exercise that it does not give, and how many more.
pub(super) fn unsatisfied(errors: &[GenerateError], stands: &Stands) -> Vec<Diagnostic> {
    let mut drills: Vec<(&GenerateError, usize)> = Vec::new();
    for error in errors {
        match drills.iter_mut().find(|(first, _)| first.drill == error.drill) {
            Some((_, more)) => *more += 1,
            None => drills.push((error, 0)),
        }
    }
    let told = drills.into_iter().map(|(first, more)| {
        let what = match more {
            0 => first.to_string(),
            _ => format!("{first} (and {} likewise)", counted(more, "more exercise", "more exercises")),
        };
        let mut diagnostic = stands.diagnostic(&first.stands_at, Severity::Error, what);
        diagnostic.help(GIVE_MORE);
        diagnostic
    });
    told.collect()
}

/// Writes a file whole: into a temporary one beside it, which then takes its place. A file that was there stays as it was if anything
/// fails, and if it is not to be replaced.
pub(super) fn write_whole(path: &Path, text: &str, replace: bool) -> Result<(), Problem> {
    let file = |source| Problem::File { path: path.to_owned(), source };
    let there = || {
        Problem::Input(format!(
            "{}: the file is there already; choose another name, or `--replace` it",
            named(path)
        ))
    };
    if path.is_dir() {
        return Err(file(std::io::Error::other("this is a folder")));
    }
    if !replace && path.exists() {
        return Err(there());
    }
    let folder = match path.parent() {
        Some(folder) if folder != Path::new("") => folder,
        _ => Path::new("."),
    };
    if !folder.is_dir() {
        return Err(file(std::io::Error::other(format!("there is no folder {}", named(folder)))));
    }
    let mut builder = tempfile::Builder::new();
    // A temporary file is for its owner alone, a picture for whom the folder lets read.
    #[cfg(unix)]
    builder.permissions(std::os::unix::fs::PermissionsExt::from_mode(0o666));
    let mut new = builder.prefix(".healedhue-").tempfile_in(folder).map_err(file)?;
    new.write_all(text.as_bytes()).and_then(|()| new.as_file().sync_all()).map_err(file)?;
    if replace {
        return new.persist(path).map(drop).map_err(|error| file(error.error));
    }
    new.persist_noclobber(path).map(drop).map_err(|error| match error.error.kind() {
        std::io::ErrorKind::AlreadyExists => there(),
        _ => file(error.error),
    })
}
