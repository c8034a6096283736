//! Slips in files.

use super::super::problem::Problem;
use crate::assess::Slip;
use std::io::Read;
use std::path::{Path, PathBuf};

/// Longest slip that is read, in bytes; [`Slip::read`] says what is too long.
const MOST_BYTES: u64 = 1_000_000;

/// Every file named, and in folders every .json and .txt file, by name. A file that is not there is a slip that will be refused.
pub(super) fn all(paths: &[PathBuf]) -> Result<Vec<PathBuf>, Problem> {
    let mut files = Vec::new();
    for path in paths {
        if !path.is_dir() {
            files.push(path.clone());
            continue;
        }
        let failed = |source| Problem::File { path: path.clone(), source };
        let mut inside = Vec::new();
        for entry in std::fs::read_dir(path).map_err(failed)? {
            let entry = entry.map_err(failed)?.path();
            let name =
                entry.file_name().map_or_else(String::new, |name| name.to_string_lossy().to_lowercase());
            if !name.starts_with('.')
                && (name.ends_with(".json") || name.ends_with(".txt"))
                && !entry.is_dir()
            {
                inside.push(entry);
            }
        }
        inside.sort();
        files.extend(inside);
    }
    if files.is_empty() && !paths.is_empty() {
        return Err(Problem::Input(
            "there is no slip in these folders: no .json and no .txt file".to_owned(),
        ));
    }
    Ok(files)
}

/// The slip in a file, or why there is none.
pub(super) fn slip(path: &Path) -> Result<Slip, String> {
    let cause = |error: std::io::Error| match error.kind() {
        std::io::ErrorKind::NotFound => "there is no such file".to_owned(),
        _ => error.to_string(),
    };
    // Looked at before it is opened: a pipe would keep the others waiting for whoever writes into it.
    let about = std::fs::metadata(path).map_err(cause)?;
    if !about.is_file() {
        return Err("this is no file: save the slip as one".to_owned());
    }
    let length = about.len();
    if length > MOST_BYTES {
        return Err(format!("{length} bytes are more than those of any slip"));
    }
    let file = std::fs::File::open(path).map_err(cause)?;
    let mut bytes = Vec::new();
    // A file may grow while it is read, and some have no length.
    file.take(MOST_BYTES).read_to_end(&mut bytes).map_err(cause)?;
    Slip::read(&bytes).map_err(|error| error.to_string())
}
