//! Snapshots that no test reads any more fail here, so that they are removed with their tests.
//!
//! A snapshot names the test file it comes from. That file must hold either a function of the snapshot's name that asserts one
//! without naming it, or an assertion that names it.

use std::fs;
use std::path::{Path, PathBuf};

/// Every snapshot file below a folder.
fn snapshots(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).expect("a folder of tests") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            found.extend(snapshots(&path));
        } else if path.extension().is_some_and(|ending| ending == "snap") {
            found.push(path);
        }
    }
    found
}

/// Whether a test file reads the snapshot `name`: `named`, `a_function`, or `a_function-2` for the second one of a function.
fn reads(source: &str, name: &str) -> bool {
    let is_named = source.split("snapshot!(").skip(1).any(|call| {
        call.trim_start().strip_prefix('"').is_some_and(|call| call.starts_with(&format!("{name}\"")))
    });
    let (function, number) = match name.rsplit_once('-') {
        Some((function, number)) => (function, number.parse().unwrap_or(usize::MAX)),
        None => (name, 1),
    };
    let Some((_, rest)) = source.split_once(&format!("\nfn {function}(")) else { return is_named };
    let body = rest.split("\n}\n").next().unwrap_or(rest);
    is_named || body.matches("snapshot!(").count() >= number
}

/// What is wrong with a snapshot file, if anything.
fn problem(root: &Path, path: &Path) -> Option<String> {
    let text = fs::read_to_string(path).expect("a snapshot is text");
    let Some(source) = text.lines().find_map(|line| line.strip_prefix("source: ")) else {
        return Some("does not say which test it comes from".to_owned());
    };
    let Ok(test) = fs::read_to_string(root.join(source)) else {
        return Some(format!("comes from {source}, which is not there"));
    };
    if path.parent() != root.join(source).with_file_name("snapshots").to_str().map(Path::new) {
        return Some(format!("does not lie beside {source}"));
    }
    let module = source.strip_prefix("tests/")?.strip_suffix(".rs")?.replace('/', "__");
    // `assign/mod.rs` is the module `assign`.
    let module = module.strip_suffix("__mod").unwrap_or(&module);
    let stem = path.file_stem()?.to_str()?;
    let Some(name) = stem.strip_prefix(&format!("healedhue__{module}__")) else {
        return Some(format!("is not named after {source}"));
    };
    (!reads(&test, name)).then(|| format!("is read by no test of {source}"))
}

#[test]
fn every_snapshot_is_read_by_a_test() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let all = snapshots(&root.join("tests"));
    assert!(!all.is_empty(), "there are snapshots");
    let problems: Vec<String> = all
        .iter()
        .filter_map(|path| {
            Some(format!("{} {}", path.strip_prefix(root).ok()?.display(), problem(root, path)?))
        })
        .collect();
    assert!(problems.is_empty(), "remove these files, or bring their tests back:\n{}", problems.join("\n"));
}

#[test]
fn a_snapshot_without_its_test_is_noticed() {
    let source = "\nfn one() {\n    assert_snapshot!(x);\n    assert_snapshot!(\"named\", x);\n}\n\nfn other() {\n    x();\n}\n";
    for name in ["one", "one-2", "named"] {
        assert!(reads(source, name), "{name}");
    }
    for name in ["other", "one-3", "nam", "gone", "x"] {
        assert!(!reads(source, name), "{name}");
    }
}
