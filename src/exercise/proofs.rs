//! What proving came to, kept: with it an exercise is made again without its worlds.
//!
//! Entry points: [`Proofs::read`] and [`Proofs::to_bytes`], and [`Proofs::generate`], which gives what
//! [`generate`](super::generate) gives. What was kept is used only where it stems from this engine and from exactly the content that
//! the drill depends on; anything else is proved anew, as if it had never been kept.

use super::generate::{again, prove};
use super::{Exercise, Finding, GenerateError};
use crate::course::{Course, Drill, Lesson};
use crate::language::OF_EXERCISES;
use include_dir::{Dir, include_dir};
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Arc, LazyLock, Mutex, MutexGuard, PoisonError};

/// The sources that decide whether a draw is accepted.
static SOURCES: [Dir; 6] = [
    include_dir!("$CARGO_MANIFEST_DIR/src/colour"),
    include_dir!("$CARGO_MANIFEST_DIR/src/exercise"),
    include_dir!("$CARGO_MANIFEST_DIR/src/healing"),
    include_dir!("$CARGO_MANIFEST_DIR/src/optics"),
    include_dir!("$CARGO_MANIFEST_DIR/src/pigment"),
    include_dir!("$CARGO_MANIFEST_DIR/src/skin"),
];

/// Digest of the sources that decide whether a draw is accepted: proofs of another engine are made anew.
pub fn engine_version() -> &'static str {
    static VERSION: LazyLock<String> = LazyLock::new(|| {
        let mut hash = Sha256::new();
        for (place, folder) in SOURCES.iter().enumerate() {
            hash.update([place as u8]);
            add_sources(folder, &mut hash);
        }
        hex(&hash.finalize()[..16])
    });
    &VERSION
}

fn add_sources(folder: &Dir, hash: &mut Sha256) {
    let mut files: Vec<_> = folder.files().collect();
    files.sort_by_key(|file| file.path());
    for file in files {
        hash.update(file.path().to_string_lossy().replace('\\', "/").as_bytes());
        // Line endings are no difference.
        let content: Vec<u8> = file.contents().iter().copied().filter(|byte| *byte != b'\r').collect();
        hash.update((content.len() as u64).to_le_bytes());
        hash.update(&content);
    }
    let mut folders: Vec<_> = folder.dirs().collect();
    folders.sort_by_key(|folder| folder.path());
    folders.into_iter().for_each(|folder| add_sources(folder, hash));
}

/// First word of what is kept, with the version of its form.
const TITLE: &str = "healedhue-proofs-1";

/// Findings about one drill.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
struct OfDrill {
    /// Digest of what the drill depends on.
    content: String,
    /// By number in the pool.
    findings: BTreeMap<u32, Finding>,
}

/// Kept proofs, by drill.
#[derive(Debug, Default)]
pub struct Proofs {
    kept: Mutex<Kept>,
}

#[derive(Debug, Default)]
struct Kept {
    drills: BTreeMap<String, OfDrill>,
    /// Digests of drills, worked out once each.
    digests: BTreeMap<String, String>,
    /// What every drill of the course of this version depends on, as it goes into digests.
    shared: Option<(String, Arc<OfAll>)>,
    /// Whether anything was added since reading.
    grown: bool,
}

/// What every drill of a course depends on, in writing: colourants, cautions and the words of its language.
#[derive(Debug)]
struct OfAll {
    colourants: String,
    cautions: String,
    words: String,
}

impl OfAll {
    fn new(course: &Course) -> Self {
        OfAll {
            colourants: format!("{:?}", course.shelf.colourants),
            cautions: format!("{:?}", course.cautions),
            words: course.language.part(&OF_EXERCISES),
        }
    }
}

impl Proofs {
    /// No proof.
    pub fn none() -> Self {
        Proofs::default()
    }

    /// What [`Proofs::to_bytes`] wrote. Whatever is damaged, cut short or of another engine counts as nothing.
    pub fn read(bytes: &[u8]) -> Self {
        Proofs { kept: Mutex::new(Kept { drills: parse(bytes).unwrap_or_default(), ..Kept::default() }) }
    }

    /// Everything known, with the engine's version and a digest of itself.
    pub fn to_bytes(&self) -> Vec<u8> {
        let body = serde_json::to_vec(&self.lock().drills).unwrap_or_default();
        let mut bytes =
            format!("{TITLE} {} {}\n", engine_version(), hex(&Sha256::digest(&body))).into_bytes();
        bytes.extend(body);
        bytes
    }

    /// Whether anything was added since reading.
    pub fn has_grown(&self) -> bool {
        self.lock().grown
    }

    /// How many exercises are known.
    pub fn len(&self) -> usize {
        self.lock().drills.values().map(|drill| drill.findings.len()).sum()
    }

    /// Whether nothing is known.
    pub fn is_empty(&self) -> bool {
        self.len() == 0
    }

    /// The exercise with this number in a drill's pool, byte for byte as [`generate`](super::generate) makes it.
    ///
    /// # Errors
    /// As [`generate`](super::generate).
    pub fn generate(
        &self,
        course: &Course,
        lesson: &Lesson,
        drill: &Drill,
        number: u32,
    ) -> Result<Exercise, GenerateError> {
        // Written questions are not proved by the engine: making one costs less than looking it up.
        if !drill.questions.is_empty() {
            return prove(course, lesson, drill, number).0;
        }
        let content = self.content_of(course, drill);
        let known = self
            .lock()
            .drills
            .get(&drill.id)
            .filter(|of_drill| of_drill.content == content)
            .and_then(|of_drill| of_drill.findings.get(&number).cloned());
        if let Some(made) = known.and_then(|finding| again(course, lesson, drill, number, &finding)) {
            return made;
        }
        let (made, finding) = prove(course, lesson, drill, number);
        let mut kept = self.lock();
        let of_drill = kept
            .drills
            .entry(drill.id.clone())
            .or_insert_with(|| OfDrill { content: content.clone(), findings: BTreeMap::new() });
        if of_drill.content != content {
            *of_drill = OfDrill { content, findings: BTreeMap::new() };
        }
        of_drill.findings.insert(number, finding);
        kept.grown = true;
        made
    }

    fn content_of(&self, course: &Course, drill: &Drill) -> String {
        // A drill's id is unique in its course; the course's version tells courses apart.
        let name = format!("{} {}", course.version, drill.id);
        if let Some(known) = self.lock().digests.get(&name) {
            return known.clone();
        }
        let of_all = self.of_all(course);
        let digest = digest_of(course, drill, &of_all);
        self.lock().digests.insert(name, digest.clone());
        digest
    }

    fn of_all(&self, course: &Course) -> Arc<OfAll> {
        let mut kept = self.lock();
        match &kept.shared {
            Some((version, of_all)) if *version == course.version => of_all.clone(),
            _ => {
                let of_all = Arc::new(OfAll::new(course));
                kept.shared = Some((course.version.clone(), of_all.clone()));
                of_all
            }
        }
    }

    fn lock(&self) -> MutexGuard<'_, Kept> {
        // A poisoned lock only means that another proof panicked; what was found before is still good.
        self.kept.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

fn parse(bytes: &[u8]) -> Option<BTreeMap<String, OfDrill>> {
    let end = bytes.iter().position(|byte| *byte == b'\n')?;
    let (head, body) = (std::str::from_utf8(&bytes[..end]).ok()?, &bytes[end + 1..]);
    let expected = format!("{TITLE} {} {}", engine_version(), hex(&Sha256::digest(body)));
    (head == expected).then(|| serde_json::from_slice(body).ok()).flatten()
}

/// Digest of everything a drill depends on: itself, its clients, goals, bottles, colourants, misconceptions, cautions, the
/// course's seed and the words of its language. How many exercises a lesson shows, and where the drill stands, changes none of them.
fn digest_of(course: &Course, drill: &Drill, of_all: &OfAll) -> String {
    let mut plain = drill.clone();
    plain.exercises = 0;
    plain.stands_at = String::new();
    let clients: Vec<_> = drill.clients.iter().filter_map(|id| course.client(id)).collect();
    let goals: BTreeSet<&String> =
        drill.goals.iter().chain(clients.iter().map(|client| &client.goal)).collect();
    let goals: Vec<_> = goals.into_iter().filter_map(|id| course.goal(id)).collect();
    let bottles: BTreeSet<&String> = drill.limits.bottles.iter().chain(&drill.limits.modifiers).collect();
    let bottles: Vec<_> = bottles.into_iter().filter_map(|id| course.shelf.bottle(id)).collect();
    let tempts: Vec<_> = drill.tempts.iter().filter_map(|id| course.misconception(id)).collect();
    let questions: Vec<_> = drill.questions.iter().filter_map(|id| course.question(id)).collect();
    let mut hash = Sha256::new();
    // `Debug` writes every field, and numbers so that they read back to the same bits.
    for part in [
        format!("{:?}", course.seed).as_str(),
        &format!("{plain:?}"),
        &format!("{clients:?}"),
        &format!("{goals:?}"),
        &format!("{bottles:?}"),
        of_all.colourants.as_str(),
        &format!("{tempts:?}"),
        &format!("{questions:?}"),
        &of_all.cautions,
        // Which wrong colours stand beside the right one depends on how long their words are.
        &of_all.words,
    ] {
        hash.update((part.len() as u64).to_le_bytes());
        hash.update(part.as_bytes());
    }
    hex(&hash.finalize())
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}
