//! The cache of proofs: one file in the folder `.healedhue` of the course, or where the user says.
//!
//! Entry points: [`CacheFolder::open`] and [`Cache::save`]. A cache saves time and nothing else: without it, or where it is damaged or
//! out of date, the same exercises are proved again. A folder that cannot be written is no error.

use super::CourseFolder;
use super::replacement::Replacement;
use crate::exercise::Proofs;
use std::io::Write;
use std::path::PathBuf;

/// The cache's file in its folder.
const FILE: &str = "proofs";
/// Largest cache that is read, in bytes.
const MOST_BYTES: u64 = 200_000_000;

/// Where proofs are kept.
#[derive(Debug, clap::Args)]
pub(super) struct CacheFolder {
    /// Folder in which proofs are kept from one run to the next; without it, .healedhue in the folder of the course.
    #[arg(long, value_name = "FOLDER")]
    cache: Option<PathBuf>,
    /// Prove everything anew, and keep nothing.
    #[arg(long, conflicts_with = "cache")]
    no_cache: bool,
}

/// Proofs, and where they are kept.
pub(super) struct Cache {
    /// What is known.
    pub proofs: Proofs,
    folder: Option<PathBuf>,
}

impl CacheFolder {
    /// What was kept for a course.
    pub fn open(&self, course: &CourseFolder) -> Cache {
        if self.no_cache {
            return Cache { proofs: Proofs::none(), folder: None };
        }
        let folder = self.cache.clone().unwrap_or_else(|| course.course.join(".healedhue"));
        let file = folder.join(FILE);
        let fits = std::fs::metadata(&file).is_ok_and(|found| found.is_file() && found.len() <= MOST_BYTES);
        let bytes = if fits { std::fs::read(&file).unwrap_or_default() } else { Vec::new() };
        Cache { proofs: Proofs::read(&bytes), folder: Some(folder) }
    }
}

impl Cache {
    /// Keeps what was found: written beside the old file and moved into its place.
    pub fn save(&self) {
        let Some(folder) = self.folder.as_ref().filter(|_| self.proofs.has_grown()) else { return };
        let written = std::fs::create_dir_all(folder)
            .and_then(|()| Replacement::begin(&folder.join(FILE)))
            .and_then(|mut new| {
                new.file().write_all(&self.proofs.to_bytes())?;
                new.finish()
            });
        // Nothing depends on it but time.
        drop(written);
    }
}
