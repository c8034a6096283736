//! A copy of the course in `minimal/` that a test may break.

use healedhue::course::{Loaded, load, report};
use std::fs;
use std::path::{Path, PathBuf};
use tempfile::TempDir;

/// A course in a folder of its own.
pub struct Fixture {
    folder: TempDir,
}

impl Fixture {
    /// A copy of the valid course.
    pub fn minimal() -> Self {
        let fixture = Fixture { folder: TempDir::new().expect("a temporary folder") };
        for (path, content) in files_of(&minimal()) {
            fixture.write(&path, &content);
        }
        fixture
    }

    /// Where a file of the course is.
    pub fn path(&self, path: &str) -> PathBuf {
        self.folder.path().join("course").join(path)
    }

    /// Replaces a piece of a file, which must be there once.
    pub fn replace(self, path: &str, from: &str, to: &str) -> Self {
        let text = fs::read_to_string(self.path(path)).expect("a file of the course");
        assert_eq!(text.matches(from).count(), 1, "{from:?} in {path}");
        self.write(path, text.replace(from, to));
        self
    }

    /// Writes a file.
    pub fn with(self, path: &str, content: impl AsRef<[u8]>) -> Self {
        self.write(path, content);
        self
    }

    /// Adds lines to the end of a file.
    pub fn append(self, path: &str, text: &str) -> Self {
        let before = fs::read_to_string(self.path(path)).expect("a file of the course");
        self.with(path, before + text)
    }

    /// Removes a file.
    pub fn without(self, path: &str) -> Self {
        fs::remove_file(self.path(path)).expect("a file of the course");
        self
    }

    fn write(&self, path: &str, content: impl AsRef<[u8]>) {
        let path = self.path(path);
        fs::create_dir_all(path.parent().expect("a folder")).expect("a folder that can be made");
        fs::write(path, content).expect("a file that can be written");
    }

    /// Loads the course.
    pub fn load(&self) -> Loaded {
        load(&self.path(""))
    }

    /// What the author is told.
    pub fn told(&self) -> String {
        let loaded = self.load();
        let broken = loaded.diagnostics.iter().any(|d| d.severity == healedhue::course::Severity::Error);
        assert_eq!(loaded.course.is_none(), broken, "a course is given out exactly when there is no error");
        report(&loaded.diagnostics, false)
    }

    /// What the author is told, without excerpts: one line a problem, and one for the suggestion.
    pub fn told_briefly(&self) -> String {
        let line = |d: &healedhue::course::Diagnostic| {
            let help = d.help.as_ref().map(|help| format!("\n    {help}")).unwrap_or_default();
            format!("{}:{}:{}: {}{help}", d.file, d.line, d.column, d.message)
        };
        self.load().diagnostics.iter().map(line).collect::<Vec<_>>().join("\n")
    }
}

/// The folder of the valid course.
pub fn minimal() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/loading/minimal")
}

/// Every file below a folder, with its path relative to it, sorted.
pub fn files_of(folder: &Path) -> Vec<(String, Vec<u8>)> {
    let mut files = Vec::new();
    let mut folders = vec![String::new()];
    while let Some(below) = folders.pop() {
        for entry in fs::read_dir(folder.join(&below)).expect("a folder of the course") {
            let entry = entry.expect("an entry");
            let name = format!("{below}{}", entry.file_name().to_string_lossy());
            if entry.path().is_dir() {
                folders.push(name + "/");
            } else {
                files.push((name, fs::read(entry.path()).expect("a file of the course")));
            }
        }
    }
    files.sort();
    files
}
