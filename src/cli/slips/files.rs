//! Slips in files.
//!
//! Entry points: [`Found::among`] lists what there is to mark, and [`slip`] reads one.

use super::super::input::within;
use super::super::lines::cause;
use super::super::paper::folder::{RECORD, WRITTEN};
use super::super::problem::Problem;
use super::Handed;
use super::telling::tell_passed_over;
use crate::assess::{MOST_SLIP_BYTES, SlipError};
use std::collections::HashSet;
use std::fs;
use std::path::{Path, PathBuf};

/// Files that file managers leave in any folder one looks at; nobody hands them in.
const LITTER: [&str; 3] = [".DS_Store", "Thumbs.db", "desktop.ini"];

/// How the names of files begin that healedhue keeps for itself.
const OURS: &str = ".healedhue";

/// What lies in the files and folders named.
#[derive(Default)]
pub(in crate::cli) struct Found {
    /// Slips, or what may be some: files named, and those ending in .json or .txt of folders and the folders in them, by path.
    pub slips: Vec<PathBuf>,
    /// What is in these folders besides.
    pub passed_over: Vec<PassedOver>,
    /// Real paths of the slips, so that none is taken twice.
    taken: HashSet<PathBuf>,
}

/// A file or folder that is not looked at.
pub(in crate::cli) struct PassedOver {
    pub path: PathBuf,
    pub why: String,
}

impl Found {
    /// What lies in these, with a line for what is passed over, unless `json` tells of that. A file that is not there is a slip that will
    /// be refused.
    ///
    /// # Errors
    /// [`Problem`] where a folder that is named cannot be read, or there is no slip in all of them.
    pub fn among(paths: &[PathBuf], json: bool) -> Result<Self, Problem> {
        let mut found = Found::default();
        for path in paths {
            if path.is_dir() {
                let entries = entries(path).map_err(|source| Problem::File { path: path.clone(), source })?;
                found.take_folder(path, entries);
            } else {
                found.take(path.clone());
            }
        }
        if !json || found.slips.is_empty() {
            tell_passed_over(&found.passed_over);
        }
        if found.slips.is_empty() {
            return Err(Problem::Input(
                "there is no slip in these folders, nor in folders below: no .json and no .txt file"
                    .to_owned(),
            ));
        }
        Ok(found)
    }

    fn take(&mut self, path: PathBuf) {
        let real = fs::canonicalize(&path).unwrap_or_else(|_| path.clone());
        if self.taken.insert(real) {
            self.slips.push(path);
        }
    }

    fn pass_over(&mut self, path: PathBuf, why: impl Into<String>) {
        self.passed_over.push(PassedOver { path, why: why.into() });
    }

    /// Takes what is in a folder. Links to folders are not followed, so that none is walked without end.
    fn take_folder(&mut self, folder: &Path, entries: Vec<PathBuf>) {
        let is_of_papers = folder.join("keys").join(RECORD).is_file();
        for path in entries {
            let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
            let is_link = fs::symlink_metadata(&path).is_ok_and(|found| found.is_symlink());
            match (path.is_dir(), ending(&name)) {
                _ if LITTER.contains(&name.as_str()) || name.starts_with(OURS) => {}
                _ if name.starts_with('.') => {
                    self.pass_over(path, "it is hidden: its name begins with a dot")
                }
                (true, _) if is_link => {
                    self.pass_over(path, "it is a link to a folder; name that folder itself");
                }
                (true, _) if is_of_papers && WRITTEN.contains(&name.as_str()) => {
                    self.pass_over(path, "`paper` wrote this folder, nobody handed it in; name it by itself if slips are in it");
                }
                (true, _) => match self::entries(&path) {
                    Ok(entries) => self.take_folder(&path, entries),
                    Err(error) => self.pass_over(path, cause(&error)),
                },
                (false, true) => self.take(path),
                (false, false) => {
                    self.pass_over(
                        path,
                        "its name does not end in .json or .txt; give it that ending if it is a slip",
                    );
                }
            }
        }
    }
}

/// Whether a name ends as those of slips do.
fn ending(name: &str) -> bool {
    let name = name.to_lowercase();
    name.ends_with(".json") || name.ends_with(".txt")
}

/// What is in a folder, by name.
fn entries(folder: &Path) -> std::io::Result<Vec<PathBuf>> {
    let mut inside =
        fs::read_dir(folder)?.map(|entry| Ok(entry?.path())).collect::<std::io::Result<Vec<_>>>()?;
    inside.sort();
    Ok(inside)
}

/// The slip in a file, or why there is none.
pub(super) fn slip<S: Handed>(path: &Path, may_be_empty: bool) -> Result<S, String> {
    let cause = |error: std::io::Error| match error.kind() {
        std::io::ErrorKind::NotFound => "there is no such file".to_owned(),
        _ => cause(&error),
    };
    // Looked at before it is opened: a pipe would keep the others waiting for whoever writes into it.
    let about = fs::metadata(path).map_err(cause)?;
    if !about.is_file() {
        return Err("this is no file: save the slip as one".to_owned());
    }
    // Of what is too long no more is read than shows it; a file may grow while it is read, and some have no length.
    let read =
        if about.len() > MOST_SLIP_BYTES { None } else { within(path, MOST_SLIP_BYTES).map_err(cause)? };
    let too_long = || SlipError::TooLong(about.len().max(MOST_SLIP_BYTES + 1));
    let slip =
        read.ok_or_else(too_long).and_then(|bytes| S::read(&bytes)).map_err(|error| error.to_string())?;
    if slip.is_blank() && !may_be_empty {
        return Err(format!("nothing is answered{}", S::BLANK));
    }
    Ok(slip)
}
