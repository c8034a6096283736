//! Which page lies where in the site, and how one page links to another.
//!
//! All links are relative and name a file, so that a site works from a disk, under any address and without a server.
//! Entry points: [`SitePath`] for a place in the site, [`href`] for a link between two.

use crate::course::{Client, Course, Module, Page};
use crate::skin::Phototype;

/// A path in the site, with `/` on every system: `lessons/skin-as-a-filter/module.html`.
pub(super) type SitePath = String;

/// The home page.
pub(super) const HOME: &str = "index.html";
/// The bottle library.
pub(super) const BOTTLES: &str = "bottles.html";
/// The colourants.
pub(super) const COLOURANTS: &str = "colourants.html";
/// The clients: all of them while they are few, else the way to the pages they are on.
pub(super) const CLIENTS: &str = "clients.html";
/// Most clients on one page, which then weighs about half of what a page may.
pub(super) const MOST_CLIENTS: usize = 18;
/// The misconceptions.
pub(super) const MISCONCEPTIONS: &str = "misconceptions.html";
/// The glossary.
pub(super) const GLOSSARY: &str = "glossary.html";
/// The cautions.
pub(super) const CAUTIONS: &str = "cautions.html";
/// About the model.
pub(super) const MODEL: &str = "model.html";
/// The syllabus.
pub(super) const SYLLABUS: &str = "teaching/syllabus.html";
/// The blank sheet of a swatch book.
pub(super) const SWATCH_BOOK: &str = "teaching/swatch-book.html";
/// The sheet for a consultation.
pub(super) const CONSULTATION: &str = "teaching/consultation.html";
/// The sheet on which a correction is planned.
pub(super) const CORRECTION_PLANNER: &str = "teaching/correction-planner.html";
/// What the course and the engine lean on.
pub(super) const SOURCES: &str = "teaching/sources.html";
/// The style sheet.
pub(super) const STYLE: &str = "style.css";
/// The bench.
pub(super) const BENCH: &str = "bench.html";
/// The bench's own style sheet.
pub(super) const BENCH_STYLE: &str = "bench.css";
/// The bench's script.
pub(super) const BENCH_SCRIPT: &str = "bench.js";
/// What the bench takes along of the course.
pub(super) const BENCH_COURSE: &str = "bench-course.js";
/// The engine as a script.
pub(super) const ENGINE: &str = "engine.js";
/// Search over the course.
pub(super) const SEARCH: &str = "search.html";
/// What can be found.
pub(super) const SEARCH_DATA: &str = "search-data.js";
/// The script of the search.
pub(super) const SEARCH_SCRIPT: &str = "search.js";
/// The check of a screen.
pub(super) const DISPLAY: &str = "display.html";
/// Practice.
pub(super) const PRACTICE: &str = "practice.html";
/// Practice's own style sheet.
pub(super) const PRACTICE_STYLE: &str = "practice.css";
/// The script of practice.
pub(super) const PRACTICE_SCRIPT: &str = "practice.js";
/// Progress.
pub(super) const PROGRESS: &str = "progress.html";
/// The script of progress.
pub(super) const PROGRESS_SCRIPT: &str = "progress.js";
/// The script of the home page.
pub(super) const HOME_SCRIPT: &str = "home.js";
/// What practice takes along of the course.
pub(super) const PRACTICE_COURSE: &str = "practice-course.js";
/// What names the files that practice takes along of the course when a session asks for them.
pub(super) const PRACTICE_QUESTIONS: &str = "practice/*.js";
/// What makes, proves and marks exercises, as a script.
pub(super) const PRACTICE_MAKER: &str = "practice-maker.js";
/// The script of the exercises.
pub(super) const SCRIPT: &str = "exercise.js";
/// The script of assignments.
pub(super) const SLIP_SCRIPT: &str = "slip.js";

/// Path of a page of the course's text. All of them lie in a folder of their own, laid out like the course's, so that no name an
/// author may choose collides with ours.
pub(super) fn text_path(course_path: &str) -> SitePath {
    format!("lessons/{course_path}.html")
}

/// Path of a picture or a download, which lies beside the pages as it does in the course.
pub(super) fn asset_path(course_path: &str) -> SitePath {
    format!("lessons/{course_path}")
}

/// Path of a module's worksheet.
pub(super) fn worksheet_path(module: &Module) -> SitePath {
    format!("worksheets/{}.html", module.id)
}

/// Path of the key to a module's worksheet.
pub(super) fn key_path(module: &Module) -> SitePath {
    format!("worksheets/{}-key.html", module.id)
}

/// Path of the written questions that a module's drills ask, for practice.
pub(super) fn questions_path(module: &Module) -> SitePath {
    PRACTICE_QUESTIONS.replace('*', &module.id)
}

/// Path of the teaching note to a module.
pub(super) fn note_path(module: &Module) -> SitePath {
    format!("teaching/notes/{}.html", module.id)
}

/// Whether the clients are too many for one page, so that each phototype has its own.
pub(super) fn clients_are_apart(course: &Course) -> bool {
    course.clients.len() > MOST_CLIENTS
}

/// Path of a page of the clients of one phototype, where there are several: the first has part 0.
pub(super) fn clients_path(phototype: Phototype, part: usize) -> SitePath {
    match part {
        0 => format!("clients/{}.html", phototype.word()),
        part => format!("clients/{}-{}.html", phototype.word(), part + 1),
    }
}

/// Path of the page that shows this client.
pub(super) fn client_path(course: &Course, client: &Client) -> SitePath {
    if !clients_are_apart(course) {
        return CLIENTS.to_owned();
    }
    let alike = course.clients.iter().filter(|other| other.phototype == client.phototype);
    let place = alike.take_while(|other| other.id != client.id).count();
    clients_path(client.phototype, place / MOST_CLIENTS)
}

/// The relative link to a client.
pub(super) fn href_to_client(from: &str, course: &Course, client: &Client) -> String {
    href_to(from, &client_path(course, client), &client.id)
}

/// The relative link to the bench with a client chosen. What stands behind the # is read by `site/bench/address.js`; `more` are
/// further parts of the case, each a name and a value.
pub(super) fn href_to_bench(from: &str, client: &str, more: &[(&str, String)]) -> String {
    let parts = more.iter().map(|(name, value)| format!("&{name}={value}"));
    format!("{}#client={}{}", href(from, BENCH), percent_encoded(client), parts.collect::<String>())
}

/// Every page of the course's text in reading order: prefix pages, then each module's page and its lessons.
pub(super) fn reading_order(course: &Course) -> impl Iterator<Item = &Page> {
    let modules = course.modules.iter().flat_map(|module| {
        std::iter::once(&module.page).chain(module.lessons.iter().map(|lesson| &lesson.page))
    });
    course.prefix.iter().chain(modules)
}

/// The relative link from the page at `from` to the file at `to`, percent-encoded.
pub(super) fn href(from: &str, to: &str) -> String {
    let from: Vec<&str> = from.split('/').collect();
    let to: Vec<&str> = to.split('/').collect();
    let most = (from.len() - 1).min(to.len() - 1);
    let shared = from.iter().zip(&to).take(most).take_while(|(one, other)| one == other).count();
    let up = std::iter::repeat_n("..".to_owned(), from.len() - 1 - shared);
    let down = to[shared..].iter().map(|part| percent_encoded(part));
    up.chain(down).collect::<Vec<_>>().join("/")
}

/// The relative link to an anchor on a page.
pub(super) fn href_to(from: &str, to: &str, anchor: &str) -> String {
    if from == to {
        format!("#{}", percent_encoded(anchor))
    } else {
        format!("{}#{}", href(from, to), percent_encoded(anchor))
    }
}

/// Everything but RFC 3986's unreserved characters as `%XX`.
pub(super) fn percent_encoded(text: &str) -> String {
    let mut encoded = String::with_capacity(text.len());
    for byte in text.bytes() {
        if byte.is_ascii_alphanumeric() || b"-._~".contains(&byte) {
            encoded.push(char::from(byte));
        } else {
            encoded += &format!("%{byte:02X}");
        }
    }
    encoded
}

/// The course path a relative link leads to from the page at `from`, both without `.md`; `None` when it leaves the lessons.
pub(super) fn resolve(from: &str, target: &str) -> Option<String> {
    let mut parts: Vec<&str> = from.split('/').collect();
    parts.pop();
    for part in target.split('/') {
        match part {
            "" | "." => {}
            ".." => {
                parts.pop()?;
            }
            name => parts.push(name),
        }
    }
    Some(parts.join("/"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn links_are_relative_and_name_a_file() {
        assert_eq!(href("index.html", "style.css"), "style.css");
        assert_eq!(href("lessons/a/b.html", "style.css"), "../../style.css");
        assert_eq!(href("lessons/a/b.html", "lessons/a/c.html"), "c.html");
        assert_eq!(href("lessons/a/b.html", "lessons/c/a.html"), "../c/a.html");
        assert_eq!(href("index.html", "lessons/a b/ü#.html"), "lessons/a%20b/%C3%BC%23.html");
        assert_eq!(href_to("a.html", "a.html", "x"), "#x");
        assert_eq!(href_to("lessons/a.html", "glossary.html", "hue"), "../glossary.html#hue");
    }

    #[test]
    fn course_links_are_resolved() {
        assert_eq!(resolve("a/b", "c").as_deref(), Some("a/c"));
        assert_eq!(resolve("a/b", "../c/d").as_deref(), Some("c/d"));
        assert_eq!(resolve("a/b", "./c").as_deref(), Some("a/c"));
        assert_eq!(resolve("a", "../c"), None);
    }
}
