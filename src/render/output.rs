//! The output folder: written beside the old one, then moved into place whole, so that nothing is ever half there.
//!
//! Entry points: [`OutputFolder::check`], before any work is done, and [`OutputFolder::replace`]. Steps of a replacement:
//!
//! 1. make a temporary folder in the same parent, and write the new site into it;
//! 2. where the system can, exchange it with the earlier site in one step, so that there is always a whole one in place;
//!    elsewhere move the earlier site into the temporary folder and the new one to its place, or the earlier one back;
//! 3. delete the temporary folder.
//!
//! A build that was killed in between leaves a temporary folder; the next build puts an earlier site back from there if none is in
//! place, and deletes the folder.
//!
//! Only folders that are empty or hold the marker of the same [`Kind`] are replaced, and only if every file in them is one that the marker
//! lists: what healedhue did not write, it does not delete.

use super::{RenderError, Written};
use rayon::prelude::*;
use std::collections::BTreeSet;
use std::fs;
use std::io::{ErrorKind, Write};
use std::path::{Component, Path, PathBuf};

/// Name of the file by which healedhue knows a site of its own again. It lists every other file of the site.
pub const MARKER: &str = ".healedhue-site";

/// What an output folder is for: one kind never replaces another.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Kind {
    /// Name of the file by which healedhue knows the folder again.
    pub marker: &'static str,
    /// First line of that file.
    title: &'static str,
    /// The folder in it that is for its owner alone, with a slash at its end.
    private: Option<&'static str>,
}

/// A study site.
pub(super) const SITE: Kind = Kind {
    marker: MARKER,
    title: "healedhue wrote this folder and replaces it whole at the next build. Its files:",
    private: None,
};

/// Papers, their keys, and slips to fill in.
pub(super) const PAPERS: Kind = Kind {
    marker: ".healedhue-papers",
    title: "healedhue wrote this folder and replaces it whole only when it is told to. Its files:",
    private: Some("keys/"),
};

/// Lessons and practice assigned to people.
pub(super) const ASSIGNED: Kind = Kind {
    marker: ".healedhue-assignment",
    title: "healedhue wrote this folder and replaces it whole when the assignment is made again. Its files:",
    private: None,
};

/// A report for instructors.
pub(super) const REPORT: Kind = Kind {
    marker: ".healedhue-report",
    title: "healedhue wrote this report and replaces it whole when it is made again. Its files:",
    private: None,
};

/// Assignments that a report leads to.
pub(super) const ASSIGNMENTS: Kind = Kind {
    marker: ".healedhue-assignments",
    title: "healedhue wrote these assignments and replaces them whole when they are made again. Its files:",
    private: None,
};

/// Tables of a report.
pub(super) const TABLES: Kind = Kind {
    marker: ".healedhue-tables",
    title: "healedhue wrote these tables and replaces them whole when they are made again. Their files:",
    private: None,
};

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
    kind: &'static Kind,
}

/// Writes files into a new folder, one after another, so that not all of them are in memory at once.
#[derive(Debug)]
pub(super) struct Writer {
    folder: PathBuf,
    kind: &'static Kind,
    /// Folders made so far.
    made: BTreeSet<PathBuf>,
    /// Paths so far, in lower case: some systems take `A.html` and `a.html` for one file.
    paths: BTreeSet<String>,
    listed: Vec<String>,
    written: Written,
}

impl OutputFolder {
    /// Checks that this folder may be replaced. Changes nothing.
    ///
    /// # Errors
    /// When it has no name of its own; is a file or a symbolic link; is a course's folder or lies in a course's lessons; or
    /// holds anything that healedhue did not write.
    pub fn check(out: &Path, kind: &'static Kind) -> Result<Self, RenderError> {
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
            Ok(_) => check_contents(out, &path, kind)?,
        }
        Ok(OutputFolder { path, parent, kind })
    }

    /// Puts these files, and nothing else, into the folder.
    ///
    /// # Errors
    /// When a path leads outside the folder or is used twice, or the system refuses; the earlier site is then in its place
    /// again.
    pub fn replace(&self, files: &[SiteFile]) -> Result<Written, RenderError> {
        self.replace_with(|writer| writer.put_all(files))
    }

    /// Whether the folder holds an earlier output. One that a killed command left beside it is put back first.
    pub fn holds_output(&self) -> bool {
        self.tidy();
        self.path.join(self.kind.marker).is_file()
    }

    /// Puts the files that `write` writes, and nothing else, into the folder.
    ///
    /// # Errors
    /// As [`OutputFolder::replace`].
    pub fn replace_with(
        &self,
        write: impl FnOnce(&mut Writer) -> Result<(), RenderError>,
    ) -> Result<Written, RenderError> {
        fs::create_dir_all(&self.parent).map_err(RenderError::io("create the folder", &self.parent))?;
        self.tidy();
        let workshop = tempfile::Builder::new()
            .prefix(&self.workshop_prefix())
            .rand_bytes(RANDOM)
            .tempdir_in(&self.parent)
            .map_err(RenderError::io("create a temporary folder in", &self.parent))?;
        // A folder inside it, since the earlier site may have to wait there for its end, too.
        let new = workshop.path().join("new");
        let mut writer = Writer::new(&new, self.kind)?;
        write(&mut writer)?;
        let written = writer.finish()?;
        if exchange(&new, &self.path) {
            return Ok(written);
        }
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

    /// How names of temporary folders for this output folder begin.
    fn workshop_prefix(&self) -> String {
        format!("{WORKSHOP}{}-", self.path.file_name().unwrap_or_default().to_string_lossy())
    }

    /// Cleans up after builds that were killed: an earlier site goes back to its place if nothing is there, and temporary folders
    /// that nobody has touched for a while are deleted. What cannot be cleaned up is left; it does no harm.
    fn tidy(&self) {
        let prefix = self.workshop_prefix();
        let Ok(entries) = fs::read_dir(&self.parent) else { return };
        for entry in entries.flatten() {
            let name = entry.file_name();
            // `kr` has nothing to do with what belongs to `kr-2`.
            let is_ours = name.to_str().and_then(|name| name.strip_prefix(&prefix)).is_some_and(|random| {
                random.len() == RANDOM && random.bytes().all(|byte| byte.is_ascii_alphanumeric())
            });
            if !is_ours || !entry.file_type().is_ok_and(|kind| kind.is_dir()) {
                continue;
            }
            let old = entry.path().join("old");
            if !self.path.exists()
                && old.join(self.kind.marker).is_file()
                && fs::rename(&old, &self.path).is_err()
            {
                continue;
            }
            let age =
                entry.metadata().and_then(|metadata| metadata.modified()).map(|modified| modified.elapsed());
            // An earlier output that could not be put back is kept.
            if (self.path.exists() || !old.exists()) && age.is_ok_and(|age| age.is_ok_and(|age| age > STALE))
            {
                drop(fs::remove_dir_all(entry.path()));
            }
        }
    }
}

/// How the names of temporary folders begin.
const WORKSHOP: &str = ".healedhue-";

/// Letters and figures at the end of the name of a temporary folder.
const RANDOM: usize = 6;

/// Age after which a temporary folder belongs to no running build any more.
const STALE: std::time::Duration = std::time::Duration::from_secs(600);

/// Exchanges two folders in one step. False where the system cannot, or the second does not exist; nothing has changed then.
fn exchange(one: &Path, other: &Path) -> bool {
    #[cfg(target_os = "linux")]
    {
        use rustix::fs::{CWD, RenameFlags, renameat_with};
        renameat_with(CWD, one, CWD, other, RenameFlags::EXCHANGE).is_ok()
    }
    #[cfg(not(target_os = "linux"))]
    {
        drop((one, other));
        false
    }
}

impl Writer {
    /// A writer into a folder that does not exist yet.
    fn new(folder: &Path, kind: &'static Kind) -> Result<Self, RenderError> {
        fs::create_dir(folder).map_err(RenderError::io("create the folder", folder))?;
        Ok(Writer {
            folder: folder.to_owned(),
            kind,
            made: BTreeSet::new(),
            paths: BTreeSet::new(),
            listed: Vec::new(),
            written: Written::default(),
        })
    }

    /// Writes a file.
    ///
    /// # Errors
    /// When its path leads outside the folder or was used before, or the system refuses.
    pub fn put(&mut self, file: &SiteFile) -> Result<(), RenderError> {
        let path = self.enter(file)?;
        self.write(&path, file)
    }

    /// Writes some files side by side, in the same way.
    ///
    /// # Errors
    /// As [`Writer::put`].
    pub fn put_all(&mut self, files: &[SiteFile]) -> Result<(), RenderError> {
        let paths = files.iter().map(|file| self.enter(file)).collect::<Result<Vec<_>, _>>()?;
        paths.into_par_iter().zip(files).try_for_each(|(path, file)| self.write(&path, file))
    }

    fn write(&self, path: &Path, file: &SiteFile) -> Result<(), RenderError> {
        let mut new = fs::File::options();
        new.write(true).create(true).truncate(true);
        #[cfg(unix)]
        if self.is_private(file) {
            std::os::unix::fs::OpenOptionsExt::mode(&mut new, 0o600);
        }
        let written = new.open(path).and_then(|mut new| new.write_all(&file.content));
        written.map_err(RenderError::io("write", path))
    }

    /// Whether a file is for its owner alone. Windows has no such modes: there a folder's own rules hold.
    #[cfg(unix)]
    fn is_private(&self, file: &SiteFile) -> bool {
        self.kind.private.is_some_and(|folder| file.path.starts_with(folder))
    }

    /// Makes the folder of a file, and those above it.
    fn make_folder(&self, folder: &Path, file: &SiteFile) -> Result<(), RenderError> {
        let mut new = fs::DirBuilder::new();
        new.recursive(true);
        #[cfg(unix)]
        if self.is_private(file) {
            std::os::unix::fs::DirBuilderExt::mode(&mut new, 0o700);
        }
        #[cfg(not(unix))]
        let _ = file;
        new.create(folder).map_err(RenderError::io("create the folder", folder))
    }

    /// Counts a file in, and makes its folder; tells where it goes.
    fn enter(&mut self, file: &SiteFile) -> Result<PathBuf, RenderError> {
        if !is_inside(&file.path) {
            return Err(RenderError::BadPath(file.path.clone()));
        }
        if !self.paths.insert(file.path.to_lowercase()) {
            return Err(RenderError::SamePath(file.path.clone()));
        }
        let path = self.folder.join(&file.path);
        if let Some(parent) = path.parent()
            && !self.made.contains(parent)
        {
            self.make_folder(parent, file)?;
            self.made.insert(parent.to_owned());
        }
        self.listed.push(file.path.clone());
        self.written.pages += usize::from(file.path.ends_with(".html"));
        self.written.bytes += file.content.len() as u64;
        Ok(path)
    }

    /// Writes the marker.
    fn finish(mut self) -> Result<Written, RenderError> {
        let mut marker = format!("{}\n", self.kind.title);
        self.listed.sort_unstable();
        for path in self.listed {
            marker += &path;
            marker.push('\n');
        }
        let path = self.folder.join(self.kind.marker);
        fs::write(&path, marker).map_err(RenderError::io("write", &path))?;
        Ok(self.written)
    }
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
fn check_contents(out: &Path, folder: &Path, kind: &Kind) -> Result<(), RenderError> {
    if folder.join("book.toml").exists() {
        return Err(RenderError::IsCourse(out.to_owned()));
    }
    let mut found = Vec::new();
    list_files(folder, "", &mut found)?;
    found.sort_unstable();
    if found.is_empty() {
        return Ok(());
    }
    let marker = match fs::symlink_metadata(folder.join(kind.marker)) {
        Ok(metadata) if metadata.is_file() => {
            fs::read_to_string(folder.join(kind.marker)).unwrap_or_default()
        }
        _ => String::new(),
    };
    let mut lines = marker.lines();
    if lines.next() != Some(kind.title) {
        return Err(RenderError::Foreign { path: out.to_owned(), marker: kind.marker });
    }
    let ours: BTreeSet<&str> = lines.chain([kind.marker]).collect();
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
    fn what_a_killed_build_left_is_put_back() {
        let root = tempfile::tempdir().unwrap();
        let out = root.path().join("public");
        let site =
            |text: &str| vec![SiteFile { path: "index.html".into(), content: text.as_bytes().to_vec() }];
        let folder = OutputFolder::check(&out, &SITE).unwrap();
        folder.replace(&site("first")).unwrap();
        // As after a kill between moving the earlier site aside and the new one in.
        let left = root.path().join(".healedhue-public-x1y2z3");
        fs::create_dir(&left).unwrap();
        fs::rename(&out, left.join("old")).unwrap();
        assert!(folder.holds_output(), "nobody may write over it unasked");
        assert_eq!(fs::read_to_string(out.join("index.html")).unwrap(), "first");
        OutputFolder::check(&out, &SITE).unwrap().replace(&site("second")).unwrap();
        assert_eq!(fs::read_to_string(out.join("index.html")).unwrap(), "second");
    }

    /// What another output's command left, or is at work in, is no business of this one, whatever its age.
    #[test]
    fn a_neighbours_temporary_folder_is_left_alone() {
        let root = tempfile::tempdir().unwrap();
        let folder = OutputFolder::check(&root.path().join("kr"), &SITE).unwrap();
        let made = |name: &str| {
            let path = root.path().join(name);
            fs::create_dir(&path).unwrap();
            let old = std::time::SystemTime::now() - 2 * STALE;
            fs::File::open(&path).unwrap().set_modified(old).unwrap();
            path
        };
        let [neighbour, other, own] =
            [".healedhue-kr-2-abcdef", ".healedhue-kr-notes", ".healedhue-kr-a1B2c3"].map(made);
        folder.tidy();
        assert!(neighbour.exists() && other.exists() && !own.exists());
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
        OutputFolder::check(&out, &SITE).unwrap().replace(&site(&["index.html"])).unwrap();
        // `a` cannot be a file and a folder.
        let failed = OutputFolder::check(&out, &SITE).unwrap().replace(&site(&["a", "a/b"]));
        assert!(matches!(failed, Err(RenderError::Io { .. })), "{failed:?}");
        assert_eq!(fs::read(out.join("index.html")).unwrap(), b"index.html");
        assert_eq!(fs::read_dir(root.path()).unwrap().count(), 1, "no temporary folder is left");
    }
}
