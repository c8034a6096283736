//! An assignment for three people, and a folder to work in.

use crate::proofs::{PROOFS, cache};
use assert_cmd::Command;
use healedhue::assess::assigned::{AssignmentSlip, practice_set};
use healedhue::course::{Assignment, Course, load, read_assignment};
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;
use tempfile::TempDir;

pub const ROOT: &str = env!("CARGO_MANIFEST_DIR");

/// Three people, of whom one has a name that would like to be markup.
pub const WEEK: &str = r#"id: week-three
title: Week three, red skin
note: Read before the practice day.
due: 2026-03-14
modules: [light-and-seeing]
lessons: [red-skin-and-warmth]
exercises: 12
people:
  - {id: tamsel, name: Tamsel Orrick}
  - {id: bren, name: "Bren <script>alert(1)</script> & \"Co\""}
  - {id: ysolde, name: Ysolde Fenn}
"#;

pub static COURSE: LazyLock<Course> =
    LazyLock::new(|| load(Path::new(ROOT)).course.expect("the demo course"));

pub fn assignment() -> Assignment {
    read_assignment("week.yaml", WEEK, &COURSE).expect("a sound assignment")
}

pub fn healedhue() -> Command {
    let mut command = Command::cargo_bin("healedhue").expect("the program is built");
    command.current_dir(ROOT).env("NO_COLOR", "1").env_remove("COLUMNS");
    command
}

/// A folder with the assignment's file.
pub struct Desk {
    pub folder: TempDir,
}

impl Desk {
    pub fn new() -> Self {
        let folder = TempDir::new().expect("a temporary folder");
        fs::write(folder.path().join("week.yaml"), WEEK).expect("a file");
        Desk { folder }
    }

    pub fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    pub fn assign(&self) -> Command {
        let mut command = healedhue();
        command.arg("assign").arg(self.path("week.yaml")).arg("--cache").arg(cache());
        command
    }

    pub fn hand_out(&self, more: &[&str]) -> assert_cmd::assert::Assert {
        self.assign().arg("--out").arg(self.path("out")).args(more).assert()
    }

    pub fn slip(&self, name: &str, content: impl AsRef<[u8]>) -> PathBuf {
        let path = self.path(name);
        fs::write(&path, content).expect("a slip");
        path
    }
}

/// A slip of this person with all the right answers.
pub fn perfect(id: &str) -> AssignmentSlip {
    let assignment = assignment();
    let person = assignment.person(id).expect("somebody of the assignment");
    let set = practice_set(&COURSE, &assignment, person, &PROOFS).expect("exercises");
    let answers = set.exercises.iter().map(|exercise| exercise.form.key().to_string()).collect();
    AssignmentSlip::new(set.identity, answers)
}
