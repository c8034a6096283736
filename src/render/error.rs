//! What can go wrong when a course is turned into a site.

use std::path::{Path, PathBuf};
use thiserror::Error;

/// Why a site could not be built. Whatever the reason, an earlier site is left as it was.
#[derive(Debug, Error)]
#[non_exhaustive]
pub enum RenderError {
    /// The output path is not the name of a folder.
    #[error("{}: this does not name a folder to write the site into; give one, such as `public`", .0.display())]
    NoName(PathBuf),
    /// There is a file where the output folder should be.
    #[error("{}: this is a file, not a folder; move it away or choose another output folder", .0.display())]
    IsFile(PathBuf),
    /// The output folder is a symbolic link.
    #[error("{}: this is a symbolic link; give the folder it points to, or choose another output folder", .0.display())]
    IsLink(PathBuf),
    /// The output folder holds something that healedhue did not write.
    #[error(
        "{}: this folder is not empty and no earlier {} of healedhue (it has no `{marker}`); nothing was changed; choose an \
         empty or a new folder",
        path.display(),
         match *marker {
             super::MARKER => "site",
             ".healedhue-papers" => "folder of papers",
             other => other.trim_start_matches(".healedhue-"),
         }
    )]
    Foreign {
        /// The output folder.
        path: PathBuf,
        /// The file by which healedhue would know it.
        marker: &'static str,
    },
    /// There are papers already.
    #[error(
        "{}: there are papers in this folder already; nothing was changed; choose another folder, or replace them with --replace",
        .0.display()
    )]
    HasPapers(PathBuf),
    /// The folder holds an assignment already.
    #[error("{}: an earlier run wrote this folder; give --replace to write it anew, or another --out", .0.display())]
    HasAssignment(PathBuf),
    /// What an earlier run wrote has gained a file that healedhue did not write, and that replacing it would delete.
    #[error(
        "{}: this folder of an earlier run also holds `{found}`, which healedhue did not write and would have to delete; nothing was \
         changed; move that file away",
        path.display()
    )]
    Stranger {
        /// The output folder.
        path: PathBuf,
        /// The file, relative to it.
        found: String,
    },
    /// The output folder is a course's own folder.
    #[error("{}: this is the folder of a course (it has a `book.toml`); choose another output folder", .0.display())]
    IsCourse(PathBuf),
    /// The output folder lies in a course's lessons.
    #[error(
        "{}: this lies among the lessons in {} (there is a `SUMMARY.md`); choose an output folder outside them",
        path.display(),
        lessons.display()
    )]
    AmongLessons {
        /// The output folder.
        path: PathBuf,
        /// The lessons folder.
        lessons: PathBuf,
    },
    /// The system refused.
    #[error("{}: could not {action}: {source}", path.display())]
    Io {
        /// What was tried, as in "create the folder".
        action: &'static str,
        /// With which file or folder.
        path: PathBuf,
        /// Why it failed.
        source: std::io::Error,
    },
    /// The new site could not be put in place, nor the earlier one put back.
    #[error(
        "{}: could not move the new site here: {source}; the earlier site is safe in {}, move it back by hand",
        path.display(),
        kept.display()
    )]
    Stranded {
        /// The output folder.
        path: PathBuf,
        /// Where the earlier site is now.
        kept: PathBuf,
        /// Why the move failed.
        source: std::io::Error,
    },
    /// Two files would be written to one place.
    #[error("{0}: two files of the course would both be written here; rename one of them")]
    SamePath(String),
    /// A file would be written outside the output folder.
    #[error("{0:?}: this is no path for a file inside the site")]
    BadPath(String),
    /// A link to a page or a file that the course does not have.
    #[error("{page}.md: the link to `{target}` leads to no page and no file of this course; mend the link")]
    BrokenLink {
        /// The page, as in the summary, without `.md`.
        page: String,
        /// The link as written.
        target: String,
    },
    /// What the bench takes along could not be written down; a bug of healedhue.
    #[error("{file}: could not be written down, which is a bug in healedhue: {source}")]
    Data {
        /// The file.
        file: &'static str,
        /// Why.
        source: serde_json::Error,
    },
    /// A template failed; a bug of healedhue.
    #[error("{template}: the template failed, which is a bug in healedhue: {source:#}")]
    Template {
        /// The template.
        template: &'static str,
        /// Why.
        source: minijinja::Error,
    },
}

impl RenderError {
    /// For `map_err`: what was tried and with which path.
    pub(super) fn io(
        action: &'static str,
        path: &Path,
    ) -> impl FnOnce(std::io::Error) -> RenderError + use<> {
        let path = path.to_owned();
        move |source| RenderError::Io { action, path, source }
    }
}
