//! Proofs of the demo's exercises, shared by all tests and kept for the next run.

use healedhue::exercise::Proofs;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::{LazyLock, Mutex};

/// Proofs that earlier runs kept, and those of this one.
pub static PROOFS: LazyLock<Proofs> =
    LazyLock::new(|| Proofs::read(&fs::read(cache().join("proofs")).unwrap_or_default()));

/// Where they are kept, as the program's `--cache` wants it.
pub fn cache() -> PathBuf {
    Path::new(env!("CARGO_TARGET_TMPDIR")).join("demo-proofs")
}

/// Keeps what was proved.
pub fn keep() {
    static ONE_AT_A_TIME: Mutex<()> = Mutex::new(());
    let _turn = ONE_AT_A_TIME.lock().expect("nobody panicked while keeping");
    fs::create_dir_all(cache()).expect("a folder for the cache");
    // Moved into place whole, as other tests may read it.
    let file = cache().join(format!("proofs-{}", std::process::id()));
    fs::write(&file, PROOFS.to_bytes()).expect("a cache");
    fs::rename(file, cache().join("proofs")).expect("a cache in its place");
}
