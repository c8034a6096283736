//! The output folder: written beside the old one, then moved into place whole, so that nothing is ever half there.
//!
//! Entry points: [`OutputFolder::check`], before any work is done, and [`OutputFolder::replace`]. Steps of a replacement:
//!
//! 1. make a temporary folder in the same parent, and write the new site into it;
//! 2. move the earlier site into that temporary folder too;
//! 3. move the new site to its place; if that fails, move the earlier one back;
//! 4. delete the temporary folder.
//!
//! Only folders that are empty or hold the [`MARKER`] are replaced, and only if every file in them is one that the marker
//! lists: what healedhue did not write, it does not delete.

use super::{RenderError, Written};
use std::collections::BTreeSet;
use std::fs;
use std::io::ErrorKind;
use std::path::{Component, Path, PathBuf};

/// Name of the file by which healedhue knows its own output again. It lists every other file of the site.
pub const MARKER: &str = ".healedhue-site";

/// First line of the marker.
const MARKER_TITLE: &str = "healedhue wrote this folder and replaces it whole at the next build. Its files:";

/// Files that file managers leave in any folder one looks at.
const LITTER: [&str; 3] = [".DS_Store", "Thumbs.db", "desktop.ini"];

/// A file of the site.
#[derive(Debug)]
pub(super) struct SiteFile {
    /// Path in the site, with `/` on every system.
    pub path: String,
    /// Its content.
    pub content: Vec<u8>,
}

/// An output folder that may be replaced.
#[derive(Debug)]
pub(super) struct OutputFolder {
    /// Absolute path, without a slash at its end.
    path: PathBuf,
    /// Its parent, which need not exist yet.
    parent: PathBuf,
}

impl OutputFolder {
    /// Checks that this folder may be replaced. Changes nothing.
    ///
    /// # Errors
    /// When it has no name of its own; is a file or a symbolic link; is a course's folder or lies in a course's lessons; or
    /// holds anything that healedhue did not write.
    pub fn check(out: &Path) -> Result<Self, RenderError> {
        let absolute = std::path::absolute(out).map_err(RenderError::io("make this path absolute", out))?;
        // Collecting the components drops a slash at the end, which would make the system look through a link.
        let path: PathBuf = absolute.components().collect();
        let ends_in_name = matches!(path.components().next_back(), Some(Component::Normal(_)));
        let Some(parent) = path.parent().filter(|_| ends_in_name).map(Path::to_owned) else {
            return Err(RenderError::NoName(out.to_owned()));
        };
        if let Some(lessons) = lessons_above(&path) {
            return Err(RenderError::AmongLessons { path: out.to_owned(), lessons });
        }
        match fs::symlink_metadata(&path) {
            Err(error) if error.kind() == ErrorKind::NotFound => {}
            Err(error) => return Err(RenderError::io("look at this path", out)(error)),
            Ok(found) if found.is_symlink() => return Err(RenderError::IsLink(out.to_owned())),
            Ok(found) if !found.is_dir() => return Err(RenderError::IsFile(out.to_owned())),
            Ok(_) => check_contents(out, &path)?,
        }
        Ok(OutputFolder { path, parent })
    }

    /// Puts these files, and nothing else, into the folder.
    ///
    /// # Errors
    /// When a path leads outside the folder or is used twice, or the system refuses; the earlier site is then in its place
    /// again.
    pub fn replace(&self, files: &[SiteFile]) -> Result<Written, RenderError> {
        let mut paths = BTreeSet::new();
        for file in files {
            if !is_inside(&file.path) {
                return Err(RenderError::BadPath(file.path.clone()));
            }
            // Some systems take `A.html` and `a.html` for one file.
            if !paths.insert(file.path.to_lowercase()) {
                return Err(RenderError::SamePath(file.path.clone()));
            }
        }
        fs::create_dir_all(&self.parent).map_err(RenderError::io("create the folder", &self.parent))?;
        let workshop = tempfile::Builder::new()
            .prefix(".healedhue-")
            .tempdir_in(&self.parent)
            .map_err(RenderError::io("create a temporary folder in", &self.parent))?;
        // A folder of our own inside it: the temporary one is closed to everybody else, a site is for all to read.
        let new = workshop.path().join("new");
        let written = write_all(&new, files)?;
        let old = workshop.path().join("old");
        let had_one = match fs::rename(&self.path, &old) {
            Ok(()) => true,
            Err(error) if error.kind() == ErrorKind::NotFound => false,
            Err(error) => return Err(RenderError::io("move the earlier site aside", &self.path)(error)),
        };
        if let Err(source) = fs::rename(&new, &self.path) {
            if had_one && fs::rename(&old, &self.path).is_err() {
                let kept = workshop.keep().join("old");
                return Err(RenderError::Stranded { path: self.path.clone(), kept, source });
            }
            return Err(RenderError::io("move the new site to", &self.path)(source));
        }
        Ok(written)
    }
}

/// Writes the site and its marker into a folder that does not exist yet.
fn write_all(folder: &Path, files: &[SiteFile]) -> Result<Written, RenderError> {
    let mut marker = format!("{MARKER_TITLE}\n");
    let mut listed: Vec<&str> = files.iter().map(|file| file.path.as_str()).collect();
    listed.sort_unstable();
    for path in listed {
        marker += path;
        marker.push('\n');
    }
    fs::create_dir(folder).map_err(RenderError::io("create the folder", folder))?;
    let mut written = Written::default();
    for file in files {
        let path = folder.join(&file.path);
        if let Some(parent) = path.parent() {
            fs::create_dir_all(parent).map_err(RenderError::io("create the folder", parent))?;
        }
        fs::write(&path, &file.content).map_err(RenderError::io("write", &path))?;
        written.pages += usize::from(file.path.ends_with(".html"));
        written.bytes += file.content.len() as u64;
    }
    let path = folder.join(MARKER);
    fs::write(&path, marker).map_err(RenderError::io("write", &path))?;
    Ok(written)
}

/// Whether a site path stays inside the site on every system.
fn is_inside(path: &str) -> bool {
    !path.contains(['\\', ':', '\0'])
        && !path.contains(char::is_control)
        && !path.is_empty()
        && path.split('/').all(|part| !part.is_empty() && part != "." && part != "..")
}

/// The nearest folder at or above `path` that holds a summary of lessons.
fn lessons_above(path: &Path) -> Option<PathBuf> {
    // Through the real path of what exists, so that a linked folder or `..` does not hide where it is.
    let existing = path.ancestors().find_map(|ancestor| fs::canonicalize(ancestor).ok())?;
    existing.ancestors().find(|folder| folder.join("SUMMARY.md").is_file()).map(Path::to_owned)
}

/// Checks that an existing folder is empty, or an earlier site without anything else in it. `out` is for messages.
fn check_contents(out: &Path, folder: &Path) -> Result<(), RenderError> {
    if folder.join("book.toml").exists() {
        return Err(RenderError::IsCourse(out.to_owned()));
    }
    let mut found = Vec::new();
    list_files(folder, "", &mut found)?;
    found.sort_unstable();
    if found.is_empty() {
        return Ok(());
    }
    let marker = match fs::symlink_metadata(folder.join(MARKER)) {
        Ok(metadata) if metadata.is_file() => fs::read_to_string(folder.join(MARKER)).unwrap_or_default(),
        _ => String::new(),
    };
    let mut lines = marker.lines();
    if lines.next() != Some(MARKER_TITLE) {
        return Err(RenderError::Foreign(out.to_owned()));
    }
    let ours: BTreeSet<&str> = lines.chain([MARKER]).collect();
    let is_litter = |path: &str| path.rsplit('/').next().is_some_and(|name| LITTER.contains(&name));
    match found.into_iter().find(|path| !ours.contains(path.as_str()) && !is_litter(path)) {
        Some(found) => Err(RenderError::Stranger { path: out.to_owned(), found }),
        None => Ok(()),
    }
}

/// Adds every file below `folder`, by its path relative to the first one; links count as files.
fn list_files(folder: &Path, prefix: &str, found: &mut Vec<String>) -> Result<(), RenderError> {
    for entry in fs::read_dir(folder).map_err(RenderError::io("read the folder", folder))? {
        let entry = entry.map_err(RenderError::io("read the folder", folder))?;
        let path = format!("{prefix}{}", entry.file_name().to_string_lossy());
        if entry.file_type().map_err(RenderError::io("look at", &entry.path()))?.is_dir() {
            list_files(&entry.path(), &format!("{path}/"), found)?;
        } else {
            found.push(path);
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn paths_stay_inside_the_site() {
        for good in ["index.html", "lessons/a/b.html", "lessons/größe.html", "a..b/c"] {
            assert!(is_inside(good), "{good}");
        }
        for bad in ["", "/etc/x", "../x", "a/../../x", "a//b", "./a", "a/.", "a\\b", "C:/x", "a\nb", "a/"] {
            assert!(!is_inside(bad), "{bad:?}");
        }
    }

    #[test]
    fn an_earlier_site_is_put_back_when_the_new_one_cannot_be_written() {
        let root = tempfile::tempdir().unwrap();
        let out = root.path().join("public");
        let site = |paths: &[&str]| -> Vec<SiteFile> {
            paths
                .iter()
                .map(|path| SiteFile { path: (*path).into(), content: path.as_bytes().to_vec() })
                .collect()
        };
        OutputFolder::check(&out).unwrap().replace(&site(&["index.html"])).unwrap();
        // `a` cannot be a file and a folder.
        let failed = OutputFolder::check(&out).unwrap().replace(&site(&["a", "a/b"]));
        assert!(matches!(failed, Err(RenderError::Io { .. })), "{failed:?}");
        assert_eq!(fs::read(out.join("index.html")).unwrap(), b"index.html");
        assert_eq!(fs::read_dir(root.path()).unwrap().count(), 1, "no temporary folder is left");
    }
}
