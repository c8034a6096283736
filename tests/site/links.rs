//! Every link of the demo site leads somewhere, from any folder and under any address.

use super::fixture::{DEMO_SITE, files, pages};
use super::html::{Tag, tags};
use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;

/// The site to look at: the one in the folder that the environment names, so that a site built by the program can be checked too;
/// otherwise one made here.
fn site() -> BTreeMap<String, Vec<u8>> {
    let Some(folder) = std::env::var_os("HEALEDHUE_SITE").map(PathBuf::from) else {
        return DEMO_SITE.clone();
    };
    assert!(folder.is_absolute(), "HEALEDHUE_SITE is an absolute path");
    assert!(folder.join("index.html").is_file(), "HEALEDHUE_SITE holds a site");
    files(&folder)
}

/// The ids of a page, each of which may be used once.
fn ids(path: &str, tags: &[Tag]) -> BTreeSet<String> {
    let mut ids = BTreeSet::new();
    for id in tags.iter().filter_map(|tag| tag.get("id")) {
        assert!(ids.insert(id.to_owned()), "{path}: the id `{id}` is used twice");
    }
    ids
}

/// The file a relative link leads to.
fn target(from: &str, link: &str) -> String {
    let mut parts: Vec<&str> = from.split('/').collect();
    parts.pop();
    for part in link.split('/') {
        match part {
            ".." => assert!(parts.pop().is_some(), "{from}: `{link}` leaves the site"),
            name => parts.push(name),
        }
    }
    parts.join("/")
}

#[test]
fn every_link_leads_somewhere() {
    let all = site();
    let pages: BTreeMap<String, Vec<Tag>> =
        pages(&all).into_iter().map(|(path, html)| (path, tags(&html))).collect();
    let anchors: BTreeMap<&String, BTreeSet<String>> =
        pages.iter().map(|(path, tags)| (path, ids(path, tags))).collect();
    let mut checked = 0;
    for (from, tags) in &pages {
        for link in tags.iter().filter_map(|tag| tag.get("href").or_else(|| tag.get("src"))) {
            if ["https://", "http://", "mailto:", "data:"].iter().any(|scheme| link.starts_with(scheme)) {
                continue;
            }
            checked += 1;
            let (path, anchor) = link.split_once('#').unwrap_or((link, ""));
            // Of a case on the bench, the client is an anchor.
            let anchor =
                if path.ends_with("bench.html") { anchor.split('&').next().unwrap_or("") } else { anchor };
            assert!(!path.starts_with('/') && !path.ends_with('/') && !path.contains(':'), "{from}: {link}");
            let to = if path.is_empty() { from.clone() } else { target(from, path) };
            assert!(all.contains_key(&to), "{from}: `{link}` leads to no file");
            assert!(
                anchor.is_empty() || anchors[&to].contains(anchor),
                "{from}: `{link}` leads to no anchor"
            );
        }
    }
    assert!(checked > 500, "only {checked} links were found");
}

#[test]
fn every_page_is_fit_to_be_read_alone() {
    for (path, html) in pages(&site()) {
        let tags = tags(&html);
        let count = |name: &str| tags.iter().filter(|tag| tag.name == name).count();
        assert_eq!((count("h1"), count("main"), count("title")), (1, 1, 1), "{path}");
        let root = tags.iter().find(|tag| tag.name == "html").unwrap();
        assert_eq!((root.get("lang"), root.get("dir")), (Some("en"), Some("ltr")), "{path}");
        let policy =
            tags.iter().find(|tag| tag.get("http-equiv") == Some("Content-Security-Policy")).unwrap();
        // Where the engine runs, it may be compiled, and workers may be started out of the page's own memory.
        let has_engine = ["bench.html", "practice.html", "progress.html"].contains(&path.as_str());
        let runs = if has_engine { " 'wasm-unsafe-eval'; worker-src blob:" } else { "" };
        let expected = format!(
            "default-src 'none'; style-src 'self'; script-src 'self'{runs}; img-src 'self' data:; base-uri 'none'; \
             form-action 'none'"
        );
        assert_eq!(policy.get("content"), Some(expected.as_str()), "{path}");
        for tag in &tags {
            for (name, _) in &tag.attributes {
                assert!(name != "style" && !name.starts_with("on"), "{path}: <{} {name}>", tag.name);
            }
            assert!(tag.name != "style", "{path} has a style element");
            assert!(tag.name != "script" || tag.get("src").is_some(), "{path} has a script of its own");
            // A picture has a name; what holds the shapes of pictures is none.
            let is_named = tag.get("aria-label").is_some_and(|label| !label.is_empty());
            assert!(tag.name != "svg" || is_named || tag.get("aria-hidden") == Some("true"), "{path}");
        }
        for between in html.split("<script ").skip(1) {
            assert!(
                between.split_once('>').unwrap().1.starts_with("</script>"),
                "{path} has a script of its own"
            );
        }
    }
}
