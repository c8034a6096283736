//! Exports: where they may be written, who may read them, and what spreadsheets make of them.

use super::fixture::{BLUEPRINT, POOL, filled, run, write};
use predicates::str::contains;
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

/// Four people's papers with keys, a register, their slips and a mark book that holds them.
fn marked() -> (tempfile::TempDir, impl Fn(&[&str]) -> assert_cmd::assert::Assert) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().to_owned();
    fs::write(
        path.join("people.csv"),
        "id,name\nq1,Orrin Vell\nq2,Tamsel Brook\nq3,Perrin Ash\nq4,Aldra Moor\n",
    )
    .unwrap();
    let course = env!("CARGO_MANIFEST_DIR");
    let here = {
        let path = path.clone();
        move |arguments: &[&str]| run(arguments).args(["--course", course]).current_dir(&path).assert()
    };
    here(&["paper", BLUEPRINT, "--seed", "3", "--register", "people.csv", "--out", "sitting"]).success();
    fs::create_dir(path.join("slips")).unwrap();
    for id in ["q1", "q2", "q3", "q4"] {
        write(&path.join("slips"), &format!("{id}.json"), &filled(&POOL, &POOL.paper(id, 3).unwrap(), 3));
    }
    here(&["mark", "slips", "--keys", "sitting", "--book", "marks.sqlite"]).success();
    (folder, here)
}

fn content(folder: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let mut all = BTreeMap::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            all.extend(content(&path));
        } else {
            all.insert(path.clone(), fs::read(path).unwrap());
        }
    }
    all
}

#[test]
fn no_export_takes_the_place_of_what_marks_are_made_from_or_kept_in() {
    let (folder, here) = marked();
    fs::write(folder.path().join("notes.txt"), "call Tamsel").unwrap();
    #[cfg(unix)]
    std::os::unix::fs::symlink("marks.sqlite", folder.path().join("link.csv")).unwrap();
    let before = content(folder.path());
    let book = "this is the mark book; export to another file";
    let mut refused = vec![
        (vec!["--csv", "marks.sqlite"], book),
        (vec!["--csv", "./marks.sqlite"], book),
        (vec!["--answers-csv", "slips/../marks.sqlite"], book),
        (vec!["--csv", "marks.sqlite-wal"], "this is part of the mark book"),
        (vec!["--csv", "slips/q1.json"], "this is a slip that is marked"),
        (vec!["--csv", "sitting/keys/register.json"], "this lies among the keys"),
        (vec!["--csv", "sitting/keys/people/q1.json"], "this lies among the keys"),
        (vec!["--csv", "same.csv", "--answers-csv", "./same.csv"], "both exports would be written here"),
        (vec!["--csv", "people.csv", "--register", "people.csv"], "this is the register"),
        (vec!["--csv", "people.csv"], "there is a file here that is no export of a mark book"),
        (vec!["--answers-csv", "notes.txt"], "there is a file here that is no export of a mark book"),
    ];
    if cfg!(unix) {
        refused.push((vec!["--csv", "link.csv"], book));
    }
    for (exports, why) in refused {
        for slips in [&["slips", "--keys", "sitting"][..], &[]] {
            // Without slips no slip and no key is looked at; the files are none of an export all the same.
            let why = if slips.is_empty() && (why.contains("a slip") || why.contains("the keys")) {
                "there is a file here that is no export of a mark book"
            } else {
                why
            };
            let told = here(&[&["mark"], slips, &["--book", "marks.sqlite"], &exports].concat());
            told.code(2).stderr(contains(why)).stdout("");
            assert!(content(folder.path()) == before, "{exports:?} changed a file");
        }
    }
    // Another export may be replaced, one that a spreadsheet saved again too.
    let export = ["mark", "--book", "marks.sqlite", "--csv", "marks.csv", "--answers-csv", "answers.csv"];
    here(&export).success();
    let first = fs::read(folder.path().join("marks.csv")).unwrap();
    here(&export).success();
    assert_eq!(fs::read(folder.path().join("marks.csv")).unwrap(), first);
    assert!(first.starts_with("\u{feff}candidate,name,kind,".as_bytes()), "spreadsheets read it as UTF-8");
    fs::write(folder.path().join("answers.csv"), &fs::read(folder.path().join("answers.csv")).unwrap()[3..])
        .unwrap();
    here(&export).success();
}

/// An export may be read by whoever may read the one it replaces, and a new one by whoever may read other new files.
#[cfg(unix)]
#[test]
fn exports_are_not_for_their_owner_alone() {
    use std::os::unix::fs::PermissionsExt;
    let (folder, here) = marked();
    let mode = |name: &str| fs::metadata(folder.path().join(name)).unwrap().permissions().mode() & 0o777;
    let export = ["mark", "--book", "marks.sqlite", "--csv", "marks.csv"];
    here(&export).success();
    assert_eq!(mode("marks.csv"), mode("people.csv"));
    for chosen in [0o664, 0o600] {
        fs::set_permissions(folder.path().join("marks.csv"), fs::Permissions::from_mode(chosen)).unwrap();
        here(&export).success();
        assert_eq!(mode("marks.csv"), chosen);
    }
}

/// A mark book and keys are for their owner alone; what is handed out is not.
#[cfg(unix)]
#[test]
fn nobody_else_may_read_the_mark_book_and_the_keys() {
    use std::os::unix::fs::PermissionsExt;
    let (folder, here) = marked();
    let mode = |name: &str| fs::metadata(folder.path().join(name)).unwrap().permissions().mode() & 0o777;
    assert_eq!(mode("marks.sqlite"), 0o600);
    for name in ["sitting/keys", "sitting/keys/people"] {
        assert_eq!(mode(name), 0o700, "{name}");
    }
    for name in ["sitting/keys/register.json", "sitting/keys/questions.json", "sitting/keys/people/q1.json"] {
        assert_eq!(mode(name), 0o600, "{name}");
    }
    assert_eq!(mode("sitting/papers/q1.html"), mode("people.csv"));
    // What somebody else shall mark, too, stays as its owner has it.
    fs::set_permissions(folder.path().join("marks.sqlite"), fs::Permissions::from_mode(0o660)).unwrap();
    here(&["mark", "slips", "--keys", "sitting", "--book", "marks.sqlite"]).success();
    assert_eq!(mode("marks.sqlite"), 0o660);
}
