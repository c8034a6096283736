//! A file that takes the place of an earlier one when it is whole.
//!
//! Entry points: [`Replacement::begin`] and [`Replacement::finish`]. It is written into a temporary file in the same folder, which is locked as long
//! as it is written. A run that is killed leaves that file, and the lock ends with it: so the next one for the same name knows by name and
//! lock what is a leftover of ours, and removes it.

use std::fs::{self, File, Permissions, TryLockError};
use std::io;
use std::path::{Path, PathBuf};
use tempfile::NamedTempFile;

/// How the names of temporary files begin; the name of what it replaces follows.
const PREFIX: &str = ".healedhue-new-";
/// Characters after that name.
const RANDOM: usize = 8;
/// Files begun anew because another run took the one before for a leftover.
const MOST_TRIES: u32 = 100;

/// A file that is being written.
pub(super) struct Replacement {
    file: NamedTempFile,
    path: PathBuf,
}

impl Replacement {
    /// Begins what shall stand at this path, and removes what killed runs have left beside it.
    ///
    /// # Errors
    /// When the system refuses.
    pub fn begin(path: &Path) -> io::Result<Self> {
        Self::begin_with(path, None)
    }

    /// The same for what is not for its owner alone: it may be read by whoever may read the file it replaces, or any other new file.
    ///
    /// # Errors
    /// When the system refuses.
    pub fn begin_like_others(path: &Path) -> io::Result<Self> {
        #[cfg(unix)]
        let anybody = Some(std::os::unix::fs::PermissionsExt::from_mode(0o666));
        #[cfg(not(unix))]
        let anybody = None;
        let new = Self::begin_with(path, anybody)?;
        if let Ok(earlier) = fs::metadata(path) {
            new.file.as_file().set_permissions(earlier.permissions())?;
        }
        Ok(new)
    }

    fn begin_with(path: &Path, permissions: Option<Permissions>) -> io::Result<Self> {
        check_place(path)?;
        let folder = folder_of(path);
        let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        let prefix = format!("{PREFIX}{name}-");
        tidy(folder, &prefix);
        for _ in 0..MOST_TRIES {
            let mut builder = tempfile::Builder::new();
            if let Some(permissions) = &permissions {
                builder.permissions(permissions.clone());
            }
            let file = builder.prefix(&prefix).rand_bytes(RANDOM).tempfile_in(folder)?;
            // Between its beginning and its lock another run may have taken it for a leftover.
            if is_locked(file.as_file()) && file.path().exists() {
                return Ok(Replacement { file, path: path.to_owned() });
            }
        }
        Err(io::Error::other("other runs write this file at the same time"))
    }

    /// Where to write.
    pub fn file(&mut self) -> &mut File {
        self.file.as_file_mut()
    }

    /// Puts it in its place.
    ///
    /// # Errors
    /// When the system refuses; an earlier file is then as it was.
    pub fn finish(self) -> io::Result<()> {
        self.file.persist(&self.path).map(drop).map_err(|error| error.error)
    }
}

/// Whether a file may be written here, as far as can be told beforehand.
///
/// # Errors
/// Where this is a folder, or lies in none.
pub(super) fn check_place(path: &Path) -> io::Result<()> {
    if path.is_dir() {
        return Err(io::Error::other("this is a folder; name a file in it"));
    }
    if !folder_of(path).is_dir() {
        return Err(io::Error::other("its folder is not there; make it first"));
    }
    Ok(())
}

/// The folder that a file lies in.
pub(super) fn folder_of(path: &Path) -> &Path {
    match path.parent() {
        Some(folder) if folder != Path::new("") => folder,
        _ => Path::new("."),
    }
}

/// Whether a file is ours alone now. Some file systems have no locks: there nothing is ever taken for a leftover.
fn is_locked(file: &File) -> bool {
    !matches!(file.try_lock(), Err(TryLockError::WouldBlock))
}

/// Removes leftovers: plain files of our naming that nobody holds. What cannot be removed does no harm.
fn tidy(folder: &Path, prefix: &str) {
    let Ok(entries) = fs::read_dir(folder) else { return };
    for entry in entries.flatten() {
        let name = entry.file_name();
        let is_ours = name.to_str().and_then(|name| name.strip_prefix(prefix)).is_some_and(|random| {
            random.len() == RANDOM && random.chars().all(|c| c.is_ascii_alphanumeric())
        });
        if !is_ours || !entry.file_type().is_ok_and(|kind| kind.is_file()) {
            continue;
        }
        let lock = File::options().write(true).open(entry.path());
        if lock.is_ok_and(|lock| lock.try_lock().is_ok()) {
            drop(fs::remove_file(entry.path()));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::Write;

    fn names(folder: &Path) -> Vec<String> {
        let mut names: Vec<String> = fs::read_dir(folder)
            .unwrap()
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        names.sort();
        names
    }

    #[test]
    fn leftovers_of_killed_runs_go_and_everything_else_stays() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("marks.csv");
        let left = |name: &str| fs::write(folder.path().join(name), "half").unwrap();
        left(".healedhue-new-marks.csv-Ab3dEf9h");
        let strangers = [".export-x", ".healedhue-new-marks.csv-notes", ".healedhue-new-other.csv-Ab3dEf9h"];
        strangers.iter().for_each(|name| left(name));
        // One that another run is writing.
        let other = Replacement::begin(&path).unwrap();
        let in_use = other.file.path().file_name().unwrap().to_str().unwrap().to_owned();
        let mut new = Replacement::begin(&path).unwrap();
        new.file().write_all(b"whole").unwrap();
        new.finish().unwrap();
        assert_eq!(fs::read(&path).unwrap(), b"whole");
        let mut expected = strangers.map(str::to_owned).to_vec();
        expected.extend(["marks.csv".to_owned(), in_use]);
        expected.sort();
        assert_eq!(names(folder.path()), expected);
    }
}
