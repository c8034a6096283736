//! The page of an apprentice is whole by itself: it is handed out, and nobody else's results go with it.

use super::{COURSE, PAGES, Plan, pages_of, simulated, tags};
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};

/// The pages of apprentices, by id.
fn of_people() -> impl Iterator<Item = (&'static str, &'static String)> {
    PAGES
        .iter()
        .filter_map(|(path, page)| Some((path.strip_prefix("people/id-")?.strip_suffix(".html")?, page)))
}

/// What a page may load.
fn policy(page: &str) -> String {
    let all = tags(page);
    let policy = all.iter().find(|tag| tag.get("http-equiv") == Some("Content-Security-Policy"));
    policy.and_then(|tag| tag.get("content")).expect("a policy").to_owned()
}

#[test]
fn it_holds_its_style_and_its_policy_allows_no_other() {
    let mut seen = 0;
    for (id, page) in of_people() {
        let (_, rest) = page.split_once("<style>").expect("a style");
        let (style, rest) = rest.split_once("</style>").expect("its end");
        assert!(!rest.contains("<style"), "{id} has one style");
        assert!(style.contains("@media print") && style.contains(".row-plot"), "{id} has both style sheets");
        let wanted = format!("style-src 'sha256-{}';", STANDARD.encode(Sha256::digest(style)));
        assert!(policy(page).contains(&wanted), "{id}: {} has no {wanted}", policy(page));
        assert!(tags(page).iter().all(|tag| tag.get("rel") != Some("stylesheet")), "{id}");
        seen += 1;
    }
    assert_eq!(seen, 90);
    assert!(policy(&PAGES["index.html"]).contains("style-src 'self';"));
}

#[test]
fn it_leads_to_nobody_else() {
    let index = &PAGES["index.html"];
    for (id, page) in of_people() {
        for tag in tags(page) {
            let href = tag.get("href").unwrap_or("#");
            assert!(href.starts_with('#') || href == "data:,", "{id}: {href}");
        }
        for (other, _) in of_people().filter(|(other, _)| *other != id) {
            assert!(!page.contains(other), "{id} tells of {other}");
        }
        assert!(index.contains(&format!("href=\"people/id-{id}.html\"")), "the instructor finds {id}");
    }
    // Nor where everybody has a page of names.
    let plan = Plan { people: 130, drills: 2, of_each: 1, bank: 1, seed: 5 };
    let pages = pages_of(&simulated(&COURSE, plan).0);
    assert!(pages["everybody.html"].contains("href=\"people/id-a00007.html\""));
    let own = &pages["people/id-a00007.html"];
    assert!(!own.contains("everybody.html") && !own.contains("index.html"));
}

/// Whoever has no mouse moves a table sideways by keys; whoever sees no bar for it is told.
#[test]
fn every_table_can_be_moved_sideways_and_says_so() {
    for (path, page) in PAGES.iter() {
        let tags = tags(page);
        let has = |at: usize, class: &str| {
            tags[at].get("class").is_some_and(|all| all.split(' ').any(|one| one == class))
        };
        let (mut names, mut of_options) = (Vec::new(), 0);
        for at in (0..tags.len()).filter(|&at| tags[at].name == "table") {
            // Sheets by mark fit everywhere.
            if has(at, "marks") {
                continue;
            }
            let region = &tags[at - 1];
            assert!(has(at - 1, "table"), "{path}: {region:?}");
            assert_eq!((region.get("role"), region.get("tabindex")), (Some("region"), Some("0")), "{path}");
            let name = region.get("aria-label").unwrap_or_default().to_owned();
            assert!(!name.is_empty() && !names.contains(&name), "{path}: {name}");
            names.push(name);
            of_options += usize::from(has(at, "drew-table"));
        }
        assert!(!names.is_empty(), "{path}");
        let hints = (0..tags.len()).filter(|&at| tags[at].name == "p" && has(at, "scroll-hint")).count();
        // One for all tables of options, one for each of the others.
        assert_eq!(hints, names.len() - of_options + usize::from(of_options > 0), "{path}");
    }
}
