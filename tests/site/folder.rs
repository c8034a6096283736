//! What building a site may touch: its own folder, whole or not at all.

use super::fixture::{DEMO, DEMO_SITE, files, tiny};
use healedhue::course::Block;
use healedhue::render::{MARKER, RenderError, build_site};
use std::fs;
use std::path::Path;

fn build(out: &Path) -> Result<(), RenderError> {
    let (course, pools) = tiny(str::to_owned);
    build_site(&course, &pools, out).map(drop)
}

/// Builds into a folder that must be refused, and checks that nothing around it has changed.
fn refused(root: &Path, out: &str) -> RenderError {
    let before = files(root);
    let error = build(&root.join(out)).expect_err("this folder must be refused");
    assert_eq!(files(root), before, "something was changed");
    assert!(error.to_string().contains(out.trim_end_matches('/')), "the message names the folder: {error}");
    error
}

#[test]
fn a_new_or_empty_folder_is_filled() {
    let root = tempfile::tempdir().unwrap();
    fs::create_dir(root.path().join("empty")).unwrap();
    for out in ["new", "empty", "deep/er/site", "slash/"] {
        build(&root.path().join(out)).unwrap();
        let files = files(&root.path().join(out));
        assert!(files.contains_key("index.html") && files.contains_key(MARKER), "{out}");
    }
    let left = fs::read_dir(root.path()).unwrap().count();
    assert_eq!(left, 4, "no temporary folder is left");
}

#[test]
fn what_is_not_ours_is_refused_and_untouched() {
    let root = tempfile::tempdir().unwrap();
    let root = root.path();
    fs::create_dir_all(root.join("thesis")).unwrap();
    fs::write(root.join("thesis/chapter.txt"), "years of work").unwrap();
    fs::write(root.join("file"), "a file").unwrap();
    fs::create_dir_all(root.join("course/lessons/clients")).unwrap();
    fs::write(root.join("course/book.toml"), "[book]").unwrap();
    fs::write(root.join("course/lessons/SUMMARY.md"), "# Summary").unwrap();
    assert!(matches!(refused(root, "thesis"), RenderError::Foreign { .. }));
    assert!(matches!(refused(root, "file"), RenderError::IsFile(_)));
    assert!(matches!(refused(root, "course"), RenderError::IsCourse(_)));
    assert!(matches!(refused(root, "course/lessons"), RenderError::AmongLessons { .. }));
    assert!(matches!(refused(root, "course/lessons/clients/site"), RenderError::AmongLessons { .. }));
    // A folder that holds the course.
    assert!(matches!(build(root), Err(RenderError::Foreign { .. })));
    assert!(matches!(build(&root.join("..")), Err(RenderError::NoName(_))));
    assert!(matches!(build(Path::new("/")), Err(RenderError::NoName(_))));
}

#[test]
fn a_marker_of_somebody_else_is_no_marker() {
    let root = tempfile::tempdir().unwrap();
    let site = root.path().join("site");
    fs::create_dir(&site).unwrap();
    fs::write(site.join(MARKER), "").unwrap();
    fs::write(site.join("index.html"), "mine").unwrap();
    assert!(matches!(refused(root.path(), "site"), RenderError::Foreign { .. }));
}

#[test]
fn a_file_added_to_a_site_is_not_deleted() {
    let root = tempfile::tempdir().unwrap();
    let site = root.path().join("site");
    build(&site).unwrap();
    fs::write(site.join("lessons/notes.txt"), "mine").unwrap();
    let error = refused(root.path(), "site");
    assert!(matches!(&error, RenderError::Stranger { found, .. } if found == "lessons/notes.txt"), "{error}");
    fs::remove_file(site.join("lessons/notes.txt")).unwrap();
    fs::write(site.join(".DS_Store"), "").unwrap();
    build(&site).unwrap();
}

#[cfg(unix)]
#[test]
fn a_link_is_refused_and_what_it_points_to_untouched() {
    let root = tempfile::tempdir().unwrap();
    fs::create_dir(root.path().join("real")).unwrap();
    std::os::unix::fs::symlink(root.path().join("real"), root.path().join("link")).unwrap();
    for out in ["link", "link/"] {
        assert!(matches!(build(&root.path().join(out)), Err(RenderError::IsLink(_))), "{out}");
    }
    assert_eq!(fs::read_dir(root.path().join("real")).unwrap().count(), 0);
}

#[cfg(unix)]
#[test]
fn a_site_is_for_all_to_read() {
    use std::os::unix::fs::PermissionsExt;
    let root = tempfile::tempdir().unwrap();
    let (ours, plain) = (root.path().join("site"), root.path().join("plain"));
    build(&ours).unwrap();
    fs::create_dir(&plain).unwrap();
    let mode = |path: &Path| fs::metadata(path).unwrap().permissions().mode();
    assert_eq!(mode(&ours), mode(&plain));
}

#[test]
fn a_failed_build_leaves_the_earlier_site() {
    let root = tempfile::tempdir().unwrap();
    let site = root.path().join("site");
    build(&site).unwrap();
    let before = files(root.path());
    let (mut course, pools) = tiny(str::to_owned);
    course.prefix[0].blocks.push(Block::Text("[nowhere](nowhere.md)".into()));
    let error = build_site(&course, &pools, &site).unwrap_err();
    assert!(matches!(error, RenderError::BrokenLink { .. }), "{error}");
    let (mut course, pools) = tiny(str::to_owned);
    let twin = course.prefix[0].clone();
    course.prefix.push(twin);
    let error = build_site(&course, &pools, &site).unwrap_err();
    assert!(matches!(error, RenderError::SamePath(_)), "{error}");
    let (mut course, pools) = tiny(str::to_owned);
    course.prefix[0].path = "../../outside".into();
    course.prefix[0].blocks.clear();
    let error = build_site(&course, &pools, &site).unwrap_err();
    assert!(matches!(error, RenderError::BadPath(_)), "{error}");
    assert_eq!(files(root.path()), before);
}

#[test]
fn a_rebuild_gives_the_same_bytes_and_drops_what_is_gone() {
    let root = tempfile::tempdir().unwrap();
    let site = root.path().join("site");
    build(&site).unwrap();
    assert!(files(&site).contains_key("lessons/one/first.html"));
    let (course, pools) = &*DEMO;
    build_site(course, pools, &site).unwrap();
    assert!(!files(&site).contains_key("lessons/one/first.html"));
    assert!(files(&site) == *DEMO_SITE, "a rebuild differs from a build into a new folder");
}
