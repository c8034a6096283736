//! What the tests look at: the demo's site, a paper and an assignment, each made once by the program.

use crate::server::serve;
use serde_json::json;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::LazyLock;

/// The blueprint whose paper is answered.
pub const BLUEPRINT: &str = "module-choosing-for-the-client";

/// The site's folder: the one that the environment names, so that a site built elsewhere need not be built again; otherwise one made
/// here.
pub static FOLDER: LazyLock<PathBuf> = LazyLock::new(|| {
    if let Some(folder) = std::env::var_os("HEALEDHUE_SITE").map(PathBuf::from) {
        assert!(folder.is_absolute() && folder.join("index.html").is_file(), "HEALEDHUE_SITE holds a site");
        return folder;
    }
    let folder = place("site");
    healedhue(&["build", "--out", text(&folder)]);
    folder
});

/// The address of its top, on a server.
pub static SERVED: LazyLock<String> = LazyLock::new(|| serve(&FOLDER));

/// A folder with papers for two people, one of whom has a name that is none. Which forms of answers a paper asks for hangs on the course and
/// the seed: the first seed is taken whose paper for the other one counts drops.
pub static PAPERS: LazyLock<PathBuf> = LazyLock::new(|| {
    let folder = place("papers");
    let people = place("people.csv");
    let hostile = PAYLOAD.replace('"', "\"\"");
    fs::write(&people, format!("id,name\nq1,Orrin Vell\nq2,\"{hostile}\"\n")).expect("a register");
    let counts_drops = |seed: u32| {
        fs::remove_dir_all(&folder).ok();
        let seed = seed.to_string();
        healedhue(&[
            "paper",
            BLUEPRINT,
            "--seed",
            &seed,
            "--register",
            text(&people),
            "--out",
            text(&folder),
        ]);
        let page = fs::read_to_string(folder.join("papers/q1.html")).expect("a paper");
        page.contains("data-form=\"drops\"")
    };
    assert!((1..=20).any(counts_drops), "one of twenty papers of {BLUEPRINT} counts drops");
    folder
});

/// A folder with what is assigned to the same two people.
pub static ASSIGNED: LazyLock<PathBuf> = LazyLock::new(|| {
    let folder = place("assigned");
    fs::remove_dir_all(&folder).ok();
    let hostile = json!(format!("Name {PAYLOAD}"));
    let assignment = json!({
        "id": "week", "title": hostile, "note": hostile, "due": "2026-03-14", "lessons": ["red-skin-and-warmth"], "exercises": 6,
        "people": [{"id": "q1", "name": "Orrin Vell"}, {"id": "q2", "name": hostile}],
    });
    let file = place("assignment.yaml");
    fs::write(&file, assignment.to_string()).expect("an assignment");
    healedhue(&["assign", text(&file), "--out", text(&folder)]);
    folder
});

/// What somebody could try to write into a register, a course or a link. Where it is obeyed, `fired` is set.
pub const PAYLOAD: &str =
    r#"</script></title><script>fired=1</script>"><img src=x onerror=fired=2><svg onload='fired=3'>{{7*7}}"#;

/// The project's folder.
pub fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR")).ancestors().nth(2).expect("two folders below the project's")
}

/// The program: what the environment names, or else what `cargo build` left in the target folder.
static PROGRAM: LazyLock<PathBuf> = LazyLock::new(|| {
    let program = std::env::var_os("HEALEDHUE_PROGRAM").map(PathBuf::from).unwrap_or_else(|| {
        let here = std::env::current_exe().expect("the path of these tests");
        let name = format!("healedhue{}", std::env::consts::EXE_SUFFIX);
        here.ancestors().nth(2).expect("they lie in the target folder").join(name)
    });
    assert!(program.is_file(), "{} is the program; `cargo build` makes it", program.display());
    program
});

/// A place for what these tests make.
pub fn place(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("browser");
    fs::create_dir_all(&folder).expect("a folder for the tests");
    folder.join(name)
}

/// A path as an argument.
pub fn text(path: &Path) -> &str {
    path.to_str().expect("UTF-8")
}

/// What the program prints; it has to succeed. Proofs are kept with those of the other tests.
pub fn healedhue(arguments: &[&str]) -> String {
    let mut command = Command::new(&*PROGRAM);
    command.current_dir(root()).args(arguments);
    if ["build", "paper", "mark"].contains(&arguments[0]) {
        command.arg("--cache").arg(Path::new(env!("CARGO_TARGET_TMPDIR")).join("demo-proofs"));
    }
    let output = command.output().expect("the program");
    let told = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "healedhue {arguments:?}: {told}");
    String::from_utf8(output.stdout).expect("UTF-8")
}

/// What the program says where it refuses.
pub fn refused(arguments: &[&str]) -> String {
    let output = Command::new(&*PROGRAM)
        .current_dir(root())
        .args(arguments)
        .arg("--no-cache")
        .output()
        .expect("the program");
    assert!(!output.status.success(), "healedhue {arguments:?} refuses");
    String::from_utf8_lossy(&output.stderr).into_owned()
}

/// The paths of all pages below a folder, sorted.
pub fn pages(folder: &Path) -> Vec<String> {
    let mut found = Vec::new();
    let mut folders = vec![String::new()];
    while let Some(below) = folders.pop() {
        for entry in
            fs::read_dir(folder.join(&below)).expect("a folder").map(|entry| entry.expect("an entry"))
        {
            let path = format!("{below}{}", entry.file_name().to_str().expect("UTF-8"));
            if entry.path().is_dir() {
                folders.push(path + "/");
            } else if path.ends_with(".html") {
                found.push(path);
            }
        }
    }
    found.sort();
    found
}

/// The address of a file on the disk.
pub fn on_disk(path: &Path) -> String {
    let text = text(path).replace('%', "%25").replace(' ', "%20").replace('#', "%23").replace('?', "%3F");
    format!("file://{text}")
}

/// A page of each kind.
pub const ONE_OF_EACH: [&str; 25] = [
    "index.html",
    "bench.html",
    "practice.html",
    "progress.html",
    "bottles.html",
    "colourants.html",
    "clients.html",
    "clients/III.html",
    "misconceptions.html",
    "glossary.html",
    "cautions.html",
    "model.html",
    "search.html",
    "display.html",
    "lessons/welcome.html",
    "lessons/mixing-by-drops/module.html",
    "lessons/mixing-by-drops/counting-drops.html",
    "worksheets/mixing-by-drops.html",
    "worksheets/mixing-by-drops-key.html",
    "teaching/syllabus.html",
    "teaching/sources.html",
    "teaching/swatch-book.html",
    "teaching/consultation.html",
    "teaching/correction-planner.html",
    "teaching/notes/mixing-by-drops.html",
];
