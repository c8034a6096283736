//! The lock beside a record of progress: two sessions would each overwrite what the other has kept, so one at a time holds it.
//!
//! Entry point: [`Lock::take`]. The record itself is replaced at every answer and cannot be locked. The lock is a file beside it, `.NAME.lock`, which a session
//! removes before it lets go of it. Another that had opened the file before then holds a lock on a file that is no longer there, beside which a third could
//! make a new one: so whoever has a lock looks whether its file still stands at its place, and otherwise begins anew. A killed session leaves the file, but
//! not the lock; the next one takes it over and removes it. Only Unix tells whether two files are the same: elsewhere the file stays, which does no harm.

use super::super::lines::named;
use super::super::problem::Problem;
use super::super::replacement::folder_of;
use std::fs::{self, File, TryLockError};
use std::path::{Path, PathBuf};

/// Locks taken anew because another session removed the file of the one before.
const MOST_TRIES: u32 = 100;

/// A lock, held until it is dropped or the process ends.
pub(super) struct Lock {
    file: File,
    path: PathBuf,
}

impl Lock {
    /// Takes the lock of a record.
    ///
    /// # Errors
    /// [`Problem`] where another session holds it, or the system refuses.
    pub fn take(record: &Path) -> Result<Self, Problem> {
        let name = record.file_name().unwrap_or_default().to_string_lossy();
        let path = folder_of(record).join(format!(".{name}.lock"));
        let mut options = File::options();
        options.write(true).create(true).truncate(false);
        #[cfg(unix)]
        std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
        for _ in 0..MOST_TRIES {
            let failed = |source| Problem::File { path: path.clone(), source };
            let file = options.open(&path).map_err(failed)?;
            match file.try_lock() {
                Err(TryLockError::WouldBlock) => break,
                // Some file systems have no locks; the record is still written whole.
                Ok(()) | Err(TryLockError::Error(_)) => {}
            }
            if is_at(&file, &path) {
                return Ok(Lock { file, path });
            }
        }
        Err(Problem::Input(format!(
            "{}: another session keeps its progress there; end that one, or name another file with --progress",
            named(record)
        )))
    }
}

impl Drop for Lock {
    fn drop(&mut self) {
        if cfg!(unix) && is_at(&self.file, &self.path) {
            drop(fs::remove_file(&self.path));
        }
    }
}

/// Whether this file is the one at this path.
#[cfg(unix)]
fn is_at(file: &File, path: &Path) -> bool {
    use std::os::unix::fs::MetadataExt;
    let place = |found: fs::Metadata| (found.dev(), found.ino());
    match (file.metadata(), fs::metadata(path)) {
        (Ok(own), Ok(there)) => place(own) == place(there),
        _ => false,
    }
}

#[cfg(not(unix))]
fn is_at(_: &File, _: &Path) -> bool {
    true
}
