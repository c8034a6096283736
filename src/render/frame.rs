//! What every page has around its content: title, navigation, the way back, and the foot.

use super::plan::{self, href};
use crate::course::Course;
use crate::say;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use serde::Serialize;
use sha2::{Digest, Sha256};

/// The part of the site a page belongs to, as the navigation names it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Section {
    Course,
    Practice,
    Progress,
    Bench,
    Bottles,
    Colourants,
    Clients,
    Misconceptions,
    Glossary,
    Cautions,
    Model,
    Search,
}

/// The navigation, in order, with the messages that name it.
const SECTIONS: [(Section, &str, &str); 12] = [
    (Section::Course, "frame-course", plan::HOME),
    (Section::Practice, "frame-practice", plan::PRACTICE),
    (Section::Progress, "frame-progress", plan::PROGRESS),
    (Section::Bench, "frame-bench", plan::BENCH),
    (Section::Bottles, "frame-bottles", plan::BOTTLES),
    (Section::Colourants, "bottles-colourants", plan::COLOURANTS),
    (Section::Clients, "frame-clients", plan::CLIENTS),
    (Section::Misconceptions, "frame-misconceptions", plan::MISCONCEPTIONS),
    (Section::Glossary, "frame-glossary", plan::GLOSSARY),
    (Section::Cautions, "frame-cautions", plan::CAUTIONS),
    (Section::Model, "frame-model", plan::MODEL),
    (Section::Search, "frame-search", plan::SEARCH),
];

/// What every page may load and run: its own style sheets, scripts and pictures, and nothing from elsewhere.
const POLICY: &str = "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self' data:; base-uri 'none'; form-action 'none'";

/// The same for a page that runs the engine: it may compile WebAssembly, and start workers out of its own memory, since a page
/// from a disk may not start one from a file.
const ENGINE_POLICY: &str = "default-src 'none'; style-src 'self'; script-src 'self' 'wasm-unsafe-eval'; worker-src blob:; img-src 'self' data:; base-uri 'none'; form-action 'none'";

/// The digest by which the policy of a page that stands alone allows the one style or script that is written into it: of SHA-256, in base64.
pub(super) fn policy_digest(written: impl AsRef<[u8]>) -> String {
    STANDARD.encode(Sha256::digest(written))
}

/// A link with its text.
#[derive(Debug, Clone, Serialize)]
pub(super) struct Link {
    /// Its text.
    pub text: String,
    /// Where it leads, relative to the page it is on.
    pub href: String,
}

impl Link {
    /// A link.
    pub fn new(text: impl Into<String>, href: impl Into<String>) -> Self {
        Link { text: text.into(), href: href.into() }
    }
}

/// An entry of the navigation.
#[derive(Debug, Serialize)]
struct Entry {
    text: String,
    href: String,
    /// `page` on the page itself, `true` on pages below it.
    current: Option<&'static str>,
}

/// The context of `frame.html`, which every page extends.
#[derive(Debug, Serialize)]
pub(super) struct Frame {
    lang: String,
    dir: &'static str,
    course: String,
    authors: String,
    /// The page's own title.
    title: String,
    /// Whether this is the course's home page.
    is_home: bool,
    description: String,
    /// What the page may load and run.
    policy: &'static str,
    /// Style sheets, in order.
    styles: Vec<String>,
    /// Scripts, in order: none on pages that only want to be read.
    scripts: Vec<String>,
    home: String,
    cautions: String,
    model: String,
    /// The check of a screen, where the site has one.
    display: Option<String>,
    entries: Vec<Entry>,
    /// The way from the home page to this one, without either.
    way: Vec<Link>,
    /// First figures of the course's version.
    version: String,
}

impl Frame {
    /// The frame of the page at `path`. The navigation names the sections that `has` says the site has.
    pub fn new(
        course: &Course,
        path: &str,
        title: &str,
        section: Section,
        has: impl Fn(Section) -> bool,
    ) -> Self {
        let entries = SECTIONS
            .iter()
            .filter(|(entry, ..)| has(*entry))
            .map(|&(entry, id, target)| Entry {
                text: say!(course.language, id),
                href: href(path, target),
                current: (entry == section).then_some(if path == target { "page" } else { "true" }),
            })
            .collect();
        Frame {
            lang: course.language.tag().to_owned(),
            dir: direction(course.language.tag()),
            course: course.title.clone(),
            authors: course.authors.join(", "),
            title: title.to_owned(),
            is_home: path == plan::HOME && title == course.title,
            description: course.description.clone(),
            policy: POLICY,
            styles: vec![href(path, plan::STYLE)],
            scripts: Vec::new(),
            home: href(path, plan::HOME),
            cautions: href(path, plan::CAUTIONS),
            model: href(path, plan::MODEL),
            display: has(Section::Search).then(|| href(path, plan::DISPLAY)),
            entries,
            way: Vec::new(),
            version: course.version.chars().take(12).collect(),
        }
    }

    /// The same with what the page says about itself to search engines.
    pub fn described(mut self, description: &str) -> Self {
        self.description = description.to_owned();
        self
    }

    /// The same with the pages between home and this one.
    pub fn below(mut self, way: Vec<Link>) -> Self {
        self.way = way;
        self
    }

    /// The same for a page that holds exercises.
    pub fn scripted(self, path: &str) -> Self {
        self.scripted_by(path, plan::SCRIPT)
    }

    /// The same with a script.
    pub fn scripted_by(mut self, path: &str, script: &str) -> Self {
        self.scripts.push(href(path, script));
        self
    }

    /// The same for a page that runs the engine, with these style sheets and scripts of its own.
    pub fn with_engine(mut self, path: &str, styles: &[&str], scripts: &[&str]) -> Self {
        self.policy = ENGINE_POLICY;
        self.styles.extend(styles.iter().map(|style| href(path, style)));
        self.scripts.extend(scripts.iter().map(|script| href(path, script)));
        self
    }
}

/// The direction of a language's usual script.
pub(super) fn direction(language: &str) -> &'static str {
    const RIGHT_TO_LEFT: [&str; 10] = ["ar", "ckb", "dv", "fa", "he", "ps", "sd", "ug", "ur", "yi"];
    const RIGHT_TO_LEFT_SCRIPTS: [&str; 4] = ["arab", "hebr", "syrc", "thaa"];
    let lower = language.to_ascii_lowercase();
    let mut parts = lower.split('-');
    let primary = parts.next().unwrap_or_default();
    // A script stated in the tag outweighs the language: `az-Arab`, `ar-Latn`.
    let is_right_to_left = match parts.find(|part| part.len() == 4 && part.chars().all(char::is_alphabetic)) {
        Some(script) => RIGHT_TO_LEFT_SCRIPTS.contains(&script),
        None => RIGHT_TO_LEFT.contains(&primary),
    };
    if is_right_to_left { "rtl" } else { "ltr" }
}

#[cfg(test)]
mod tests {
    use super::direction;

    #[test]
    fn direction_follows_language_and_script() {
        for (language, expected) in [
            ("en", "ltr"),
            ("en-GB", "ltr"),
            ("ar", "rtl"),
            ("he-IL", "rtl"),
            ("az-Arab", "rtl"),
            ("ar-Latn", "ltr"),
        ] {
            assert_eq!(direction(language), expected, "{language}");
        }
    }
}
