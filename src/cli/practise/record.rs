//! The file of progress: where it is, and how it is read and kept.
//!
//! Entry point: [`Record::open`]. The file is written whole after every answer: into a temporary one beside it, which then takes its
//! place. A kill at any moment leaves the last whole one. A file that is no record is refused and left as it is.

use super::super::input::read_text;
use super::super::lines::{named, note};
use super::super::problem::Problem;
use super::super::replacement::{Replacement, folder_of};
use super::lock::Lock;
use crate::assess::knowledge::Progress;
use crate::assess::visible;
use crate::course::Course;
use crate::language::Language;
use crate::say;
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

/// An open record. Its [`Lock`] ends with the session, however that ends.
pub(super) struct Record {
    path: PathBuf,
    _lock: Lock,
}

impl Record {
    /// Opens the record at `named`, or at the course's place among the user's data, and reads what it holds; a record that is not there
    /// yet is empty. Notes on entries that cannot be used are told on standard error.
    pub fn open(course: &Course, named: Option<&Path>) -> Result<(Self, Progress), Problem> {
        let path = match named {
            Some(path) => path.to_owned(),
            None => {
                let path = usual_place(course).ok_or_else(|| {
                    Problem::Use(
                        "there is no folder for a user's data here; name a file with --progress FILE, or practise with \
                         --no-progress"
                            .to_owned(),
                    )
                })?;
                if let Some(folder) = path.parent() {
                    fs::create_dir_all(folder)
                        .map_err(|source| Problem::File { path: folder.to_owned(), source })?;
                }
                path
            }
        };
        // A link stays a link: what it points to is replaced.
        let path = fs::canonicalize(&path).unwrap_or(path);
        if path.is_dir() {
            let source = std::io::Error::other("this is a folder; a record of progress is a file");
            return Err(Problem::File { path, source });
        }
        if !folder_of(&path).is_dir() {
            let source = std::io::Error::other("its folder is not there; make it first");
            return Err(Problem::File { path, source });
        }
        let lock = Lock::take(&path)?;
        let progress = if path.exists() { read(&path, &course.language)? } else { Progress::new() };
        Ok((Record { path, _lock: lock }, progress))
    }

    /// Where it is.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Writes the record, for its owner alone to read.
    pub fn keep(&self, progress: &Progress) -> Result<(), Problem> {
        let file = |source| Problem::File { path: self.path.clone(), source };
        let mut new = Replacement::begin(&self.path).map_err(file)?;
        new.file()
            .write_all(progress.write().as_bytes())
            .and_then(|()| new.file().sync_all())
            .map_err(file)?;
        new.finish().map_err(file)
    }
}

/// A record is told of in the language of its course, as the session will be.
fn read(path: &Path, language: &Language) -> Result<Progress, Problem> {
    let text = read_text(path)?;
    let (progress, notes) = Progress::read(&text).map_err(|error| {
        Problem::Input(say!(language, "terminal-record", file = named(path), why = error.said(language)))
    })?;
    for what in notes {
        note(format_args!("warning: {}: {}", named(path), visible(&what.said(language))));
    }
    Ok(progress)
}

/// `healedhue/TITLE-xxxxxxxx.json` in the folder of the user's data. It goes by the course's title, which stays when a course is
/// updated, moved or unpacked anew.
fn usual_place(course: &Course) -> Option<PathBuf> {
    Some(data_folder()?.join("healedhue").join(format!("{}.json", course.record_name())))
}

/// Where a user's programs keep their data: XDG_DATA_HOME, or APPDATA on Windows, or what those stand for by default (XDG Base Directory
/// Specification).
fn data_folder() -> Option<PathBuf> {
    let named = |name: &str| std::env::var_os(name).map(PathBuf::from).filter(|path| path.is_absolute());
    let home = || std::env::home_dir().filter(|home| home.is_absolute());
    named("XDG_DATA_HOME")
        .or_else(|| cfg!(windows).then(|| named("APPDATA")).flatten())
        .or_else(|| Some(home()?.join(".local").join("share")))
}
