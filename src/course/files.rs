//! The course folder: which files it holds, and reading them within limits.
//!
//! Every path is relative to the course folder and has `/` on every system. Links that leave the folder are refused, a file
//! is read up to a limit, and everything that was read goes into the course's version.

use super::diagnostic::Problems;
use super::source::{Place, Source};
use crate::handed::is_utf16;
use sha2::{Digest, Sha256};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::io::Read;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// The longest text that is read, in bytes.
pub(crate) const MOST_BYTES: u64 = 1_000_000;

/// A course folder.
pub(crate) struct Folder {
    /// The folder, as the file system calls it.
    root: PathBuf,
    /// Files below the folder of lessons, with their paths relative to the course folder.
    files: BTreeSet<String>,
    /// SHA-256 of the content, and its length, of every file read.
    read: BTreeMap<String, (u64, [u8; 32])>,
}

/// Why a file's content cannot be had.
pub(crate) enum Refused {
    /// In words.
    Unfit(String),
    /// It is so many bytes long.
    TooLong(u64),
}

/// A file that cannot be used; its text may still be fit for looking for names in it.
pub(crate) struct Unreadable(pub Option<Arc<Source>>);

impl Folder {
    /// The folder at `root`, or nothing when it is none.
    pub fn open(root: &Path, problems: &mut Problems) -> Option<Self> {
        match root.canonicalize() {
            Ok(root) if root.is_dir() => Some(Folder { root, files: BTreeSet::new(), read: BTreeMap::new() }),
            Ok(_) => {
                problems.file_error(".", "the course is a file, where a folder is expected");
                None
            }
            Err(error) => {
                problems
                    .file_error(".", format!("the folder of the course cannot be opened: {}", cause(&error)));
                None
            }
        }
    }

    /// Finds every file below the folder `below`; names that begin with a dot are left alone.
    pub fn explore(&mut self, below: &str, problems: &mut Problems) {
        let mut folders = vec![below.to_owned()];
        while let Some(folder) = folders.pop() {
            let entries = match self.entries(&folder) {
                Ok(entries) => entries,
                Err(error) => {
                    problems.file_error(&folder, format!("this folder cannot be read: {}", cause(&error)));
                    continue;
                }
            };
            for name in entries {
                let path = format!("{folder}/{name}");
                match self.kind(&path) {
                    Ok(Kind::File) => _ = self.files.insert(path),
                    Ok(Kind::Folder) if is_course_file(&name) => {
                        problems.file_error(&path, "a folder, where a file is expected");
                    }
                    Ok(Kind::Folder) => folders.push(path),
                    Ok(Kind::Linked) => {
                        problems
                            .file_error(&path, "a link to a folder")
                            .help("put the folder itself here: a file that is reached in two ways would count twice");
                    }
                    Err(message) => _ = problems.file_error(&path, message),
                }
            }
        }
    }

    /// Names in a folder, sorted.
    fn entries(&self, folder: &str) -> std::io::Result<Vec<String>> {
        let mut names = Vec::new();
        for entry in fs::read_dir(self.root.join(folder))? {
            let name = entry?.file_name().to_string_lossy().into_owned();
            if !name.starts_with('.') {
                names.push(name);
            }
        }
        names.sort();
        Ok(names)
    }

    /// Whether a path is a file or a folder, or why it can be neither.
    fn kind(&self, path: &str) -> Result<Kind, String> {
        let whole = self.root.join(path);
        let metadata = fs::symlink_metadata(&whole).map_err(|error| cause(&error))?;
        let linked = metadata.file_type().is_symlink();
        let target = whole.canonicalize().map_err(|error| match linked {
            true => "a link to nothing".to_owned(),
            false => cause(&error),
        })?;
        if !target.starts_with(&self.root) {
            return Err("a link that leaves the course folder".to_owned());
        }
        let metadata = fs::metadata(&target).map_err(|error| cause(&error))?;
        match (metadata.is_file(), metadata.is_dir()) {
            (true, _) => Ok(Kind::File),
            (_, true) => Ok(if linked { Kind::Linked } else { Kind::Folder }),
            _ => Err("neither a file nor a folder".to_owned()),
        }
    }

    /// Whether there is a folder at this path, inside the course.
    pub fn has_folder(&self, path: &str) -> Result<(), String> {
        match self.kind(path)? {
            Kind::Folder | Kind::Linked => Ok(()),
            Kind::File => Err("a file, where a folder is expected".to_owned()),
        }
    }

    /// Whether there is nothing at this path, not even something unfit.
    pub fn is_absent(&self, path: &str) -> bool {
        fs::symlink_metadata(self.root.join(path))
            .is_err_and(|error| error.kind() == std::io::ErrorKind::NotFound)
    }

    /// Whether there is something at this path that [`Folder::explore`] had to refuse.
    pub fn is_unfit(&self, path: &str) -> bool {
        !self.has(path) && !self.is_absent(path) && self.kind(path).is_err()
    }

    /// Whether [`Folder::explore`] found this file.
    pub fn has(&self, path: &str) -> bool {
        self.files.contains(path)
    }

    /// Every file that [`Folder::explore`] found, sorted.
    pub fn files(&self) -> impl Iterator<Item = &str> {
        self.files.iter().map(String::as_str)
    }

    /// The content of a file of at most `most` bytes.
    ///
    /// # Errors
    /// Why it cannot be had.
    pub fn content(&mut self, path: &str, most: u64) -> Result<Vec<u8>, Refused> {
        match self.kind(path).map_err(Refused::Unfit)? {
            Kind::File => {}
            Kind::Folder | Kind::Linked => {
                return Err(Refused::Unfit("a folder, where a file is expected".to_owned()));
            }
        }
        let whole = self.root.join(path);
        let mut content = Vec::new();
        fs::File::open(&whole)
            .and_then(|file| file.take(most + 1).read_to_end(&mut content))
            .map_err(|error| Refused::Unfit(format!("this file cannot be read: {}", cause(&error))))?;
        if content.len() as u64 > most {
            let size = fs::metadata(&whole).map_or(content.len() as u64, |metadata| metadata.len());
            return Err(Refused::TooLong(size));
        }
        self.read.insert(path.to_owned(), (content.len() as u64, Sha256::digest(&content).into()));
        Ok(content)
    }

    /// The text of a file. A file that cannot be read is reported.
    ///
    /// # Errors
    /// [`Unreadable`] when there is none, or it is too long, or is no text.
    pub fn read(&mut self, path: &str, problems: &mut Problems) -> Result<Arc<Source>, Unreadable> {
        let content = match self.content(path, MOST_BYTES) {
            Ok(content) => content,
            Err(Refused::Unfit(message)) => {
                problems.file_error(path, message);
                return Err(Unreadable(None));
            }
            Err(Refused::TooLong(size)) => {
                problems
                    .file_error(
                        path,
                        format!("this file is {size} bytes long; at most {MOST_BYTES} are read"),
                    )
                    .help("split it into several files");
                return Err(Unreadable(None));
            }
        };
        if is_utf16(&content) {
            problems
                .file_error(path, "this file is UTF-16, and a course is written in UTF-8".to_owned())
                .help("save the file as UTF-8");
            return Err(Unreadable(None));
        }
        match std::str::from_utf8(&content) {
            Ok(text) => Ok(Source::new(path, text)),
            Err(error) => {
                let source = Source::new(path, &String::from_utf8_lossy(&content));
                let mark = if content.starts_with("\u{feff}".as_bytes()) { 3 } else { 0 };
                let start = error.valid_up_to();
                let place =
                    Place::new(&source, start - mark..start - mark + char::REPLACEMENT_CHARACTER.len_utf8());
                problems
                    .error(
                        &place,
                        format!("this file is not valid UTF-8: byte {} is out of place", start + 1),
                    )
                    .help("save the file as UTF-8");
                Err(Unreadable(Some(source)))
            }
        }
    }

    /// SHA-256 over path, length and content of every file read, by path, in hexadecimal.
    pub fn version(&self) -> String {
        let mut all = Sha256::new();
        for (path, (length, content)) in &self.read {
            all.update((path.len() as u64).to_le_bytes());
            all.update(path.as_bytes());
            all.update(length.to_le_bytes());
            all.update(content);
        }
        all.finalize().iter().map(|byte| format!("{byte:02x}")).collect()
    }
}

/// What a path is.
enum Kind {
    File,
    Folder,
    /// A link to a folder inside the course.
    Linked,
}

/// Whether a name is that of a file the course is made of.
pub(crate) fn is_course_file(name: &str) -> bool {
    [".md", ".yaml", ".yml"].iter().any(|ending| name.ends_with(ending))
}

/// Why the system refuses, in words that are the same on every system.
fn cause(error: &std::io::Error) -> String {
    match error.kind() {
        std::io::ErrorKind::NotFound => "it is missing".to_owned(),
        std::io::ErrorKind::PermissionDenied => "permission denied".to_owned(),
        _ => error.to_string(),
    }
}
