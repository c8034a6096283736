//! A hostile course, a hostile register, hostile links: nothing that somebody writes is ever obeyed.
//!
//! The course is the small one of the other tests with a payload in every text that an author writes.

use crate::chromium::Chromium;
use crate::pages::started;
use crate::server::serve;
use crate::site::{ASSIGNED, PAPERS, PAYLOAD, SERVED, healedhue, on_disk, pages, place, refused, root, text};
use serde_json::{Value, json};
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;

/// Keys of course files whose values are no texts but names, numbers and words of the format.
const NO_TEXTS: [&str; 30] = [
    "id",
    "needs",
    "skills",
    "skill",
    "family",
    "clients",
    "client",
    "bottles",
    "bottle",
    "modifiers",
    "modifier",
    "light",
    "tempts",
    "phototype",
    "undertone",
    "redness",
    "site",
    "sites",
    "goal",
    "goals",
    "caution",
    "lesson",
    "misconception",
    "see",
    "action",
    "ci_number",
    "class",
    "basis",
    "since",
    "questions",
];

static FOLDER: LazyLock<PathBuf> = LazyLock::new(|| {
    let (course, site) = (place("hostile"), place("hostile-site"));
    fs::remove_dir_all(&course).ok();
    copy(&root().join("tests/loading/minimal"), &course);
    // As a picture on a page it would run nothing, opened by itself it would: it is refused, and what is written instead is a drawing.
    let drawing = course.join("lessons/evil.svg");
    for (evil, why) in EVIL {
        fs::write(&drawing, evil).expect("a drawing");
        let arguments = ["build", "--course", text(&course), "--out", text(&site)];
        let told = refused(&arguments);
        assert!(
            told.contains("`lessons/evil.svg` is more than a drawing") && told.contains(why),
            "{evil}: {told}"
        );
    }
    fs::write(&drawing, harmless()).expect("a drawing");
    healedhue(&["build", "--course", text(&course), "--out", text(&site)]);
    site
});

fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).expect("a folder");
    for entry in fs::read_dir(from).expect("a folder").map(|entry| entry.expect("an entry")) {
        let (from, to) = (entry.path(), to.join(entry.file_name()));
        if from.is_dir() {
            copy(&from, &to);
            continue;
        }
        let content = fs::read_to_string(&from).expect("a text");
        let name = entry.file_name();
        let hostile = match name.to_str().expect("UTF-8") {
            "book.toml" => book(),
            "SUMMARY.md" => content.replace("[Choosing]", &format!("[Choosing {}]", in_markdown())),
            "light.md" => content.replace("choosing.md#choosing", "choosing.md"),
            "choosing.md" => page(&content),
            name if name.ends_with(".yaml") => {
                let mut value: Value = serde_yaml::from_str(&content).expect("YAML");
                make_provable(name, &mut value);
                spoil(&mut value, "");
                // YAML holds JSON.
                value.to_string()
            }
            _ => content,
        };
        fs::write(to, hostile).expect("a file");
    }
}

/// Drawings that do harm where they are more than pictures, and what is said of each.
const EVIL: [(&str, &str); 5] = [
    (r#"<svg xmlns="http://www.w3.org/2000/svg" onload="fired=5"><circle r="9"/></svg>"#, "`onload`"),
    (r#"<svg xmlns="http://www.w3.org/2000/svg"><script>fired=6; alert(1)</script></svg>"#, "`script`"),
    (r#"<svg xmlns="http://www.w3.org/2000/svg"><image href="http://127.0.0.1:9/leak"/></svg>"#, "`href`"),
    (
        r#"<svg xmlns="http://www.w3.org/2000/svg"><a href="javascript:fired=7"><text>x</text></a></svg>"#,
        "`a`",
    ),
    (
        r#"<svg xmlns="http://www.w3.org/2000/svg"><foreignObject><img xmlns="http://www.w3.org/1999/xhtml" src="x" onerror="fired=8"/></foreignObject></svg>"#,
        "`foreignObject`",
    ),
];

/// A drawing that only says the payload.
fn harmless() -> String {
    let payload = PAYLOAD.replace('&', "&amp;").replace('<', "&lt;").replace('"', "&quot;");
    format!(
        r#"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><title>{payload}</title><text y="5">{payload}</text><circle r="1"/></svg>"#
    )
}

fn book() -> String {
    let hostile = json!(format!("A {PAYLOAD}"));
    format!(
        "[book]\ntitle = {hostile}\ndescription = {hostile}\nauthors = [{hostile}]\nlanguage = \"en\"\nsrc = \"lessons\"\n\n[output.healedhue]\noptional = true\nseed = 7\n"
    )
}

/// The payload as Markdown writes it, where the signs of HTML stand for themselves.
fn in_markdown() -> String {
    PAYLOAD
        .chars()
        .flat_map(|sign| if sign.is_ascii_punctuation() { vec!['\\', sign] } else { vec![sign] })
        .collect()
}

fn page(content: &str) -> String {
    let escaped = in_markdown();
    format!(
        "# Choosing {escaped}\n\n{escaped}\n\n`{PAYLOAD}`\n\n```\n{PAYLOAD}\n```\n\n    {PAYLOAD}\n\n| a | b |\n|---|---|\n| {escaped} | `{}` |\n\n\
         ![A picture {escaped}](../evil.svg) [a link](../welcome.md \"{}\")\n\n## {escaped}\n\n{}",
        PAYLOAD.replace('|', "/"),
        PAYLOAD.replace('"', "\\\""),
        content.split_once('\n').expect("a title").1
    )
}

/// The small course is one to be read; some of its drills have no exercise that could be proved. These have.
fn make_provable(name: &str, value: &mut Value) {
    match name {
        "goals.yaml" => value["goals"][0]["lab"] = json!([55.7, 21.9, 17.4]),
        "choosing.yaml" => {
            value["drills"][0]["options"] = json!(2);
            value["drills"][0]["margin"] = json!(1.5);
        }
        "misconceptions.yaml" => {
            let all = value["misconceptions"].as_array_mut().expect("misconceptions");
            all.extend(["colour-always", "give-advice", "signed-is-safe"].map(|rule| {
                json!({"id": rule, "belief": "It is.", "tempting": "It seems.", "truth": "It is not.", "rule": rule, "lesson": "light"})
            }));
        }
        "correcting.yaml" => {
            value["drills"][0] = json!({
                "id": "old-brows", "family": "triage", "skill": "choose", "exercises": 1, "options": 3, "clients": ["silka"],
                "tempts": ["colour-always", "give-advice", "signed-is-safe"],
            });
        }
        _ => (),
    }
}

fn spoil(value: &mut Value, key: &str) {
    match value {
        Value::String(text) => {
            // A misconception's rule is a word of the format; a restriction's is a text.
            let is_text = !NO_TEXTS.contains(&key) && (key != "rule" || text.contains(' '));
            if is_text {
                text.push_str(&format!(" {PAYLOAD}"));
            }
        }
        Value::Array(values) => values.iter_mut().for_each(|value| spoil(value, key)),
        Value::Object(values) => values.iter_mut().for_each(|(key, value)| spoil(value, key)),
        _ => (),
    }
}

/// Does whatever one can do with a page: chooses everything, presses everything.
const TRY_ALL: &str = "(async () => {
    const rest = () => new Promise((fulfil) => setTimeout(fulfil, 10));
    for (const select of document.querySelectorAll('select')) {
        for (const option of [...select.options].slice(0, 8)) {
            select.value = option.value;
            for (const event of ['input', 'change']) select.dispatchEvent(new Event(event, { bubbles: true }));
            await rest();
        }
    }
    for (const one of document.querySelectorAll('main summary, main input[type=radio], main input[type=checkbox], main button')) {
        if (one.checkVisibility() && !['save', 'load', 'wipe', 'begin'].includes(one.id)) one.click();
        await rest();
    }
})()";

#[test]
fn the_payload_does_harm_where_it_is_obeyed() {
    let page = place("unprotected.html");
    fs::write(&page, format!("<!doctype html><title>{PAYLOAD}")).expect("a page");
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.open(&on_disk(&page));
    assert!(tab.holds("typeof fired !== 'undefined'"));
}

#[test]
fn a_hostile_course_is_shown_and_never_obeyed() {
    let served = serve(&FOLDER);
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    let mut shown = 0;
    for page in pages(&FOLDER) {
        tab.open(&format!("{served}{page}"));
        started(&mut tab);
        tab.value(TRY_ALL);
        if tab.holds("document.documentElement.textContent.includes('<script>fired=1</script>')") {
            shown += 1;
        }
        tab.expect_quiet(&served);
        tab.open(&on_disk(&FOLDER.join(&page)));
        started(&mut tab);
        tab.expect_quiet(&(on_disk(&FOLDER) + "/"));
    }
    assert_eq!(shown, pages(&FOLDER).len(), "every page shows at least the course's title");
}

/// Everything in the site that can be opened by itself and is no page: drawings, styles, scripts.
#[test]
fn files_opened_by_themselves_do_nothing() {
    let served = serve(&FOLDER);
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    for file in ["lessons/evil.svg", "style.css", "search-data.js", "practice-course.js"] {
        // From a server the browser asks for an icon by itself, which is no business of the file's.
        for address in [format!("{served}{file}"), on_disk(&FOLDER.join(file))] {
            tab.open(&address);
            assert!(tab.holds("document.documentElement.textContent.length > 0"), "{address}");
            assert!(!tab.holds("typeof fired !== 'undefined'"), "{address}");
        }
        tab.expect_quiet(&(on_disk(&FOLDER) + "/"));
    }
    // Opened by itself, a drawing that holds a script does run it: that is what is refused.
    let evil = place("opened.svg");
    fs::write(&evil, EVIL[0].0).expect("a drawing");
    tab.open(&on_disk(&evil));
    assert!(tab.holds("typeof fired !== 'undefined'"));
}

#[test]
fn hostile_texts_are_safe_where_pages_make_them_afresh() {
    let served = serve(&FOLDER);
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    // The bench with the client who has old work, whose texts come from the course.
    tab.open(&format!("{served}bench.html#client=silka&mix=umberly~4"));
    started(&mut tab);
    tab.wait_until("document.querySelectorAll('#best tbody tr').length > 0");
    tab.value(TRY_ALL);
    assert!(tab.holds("document.querySelector('#bench').textContent.includes('<script>fired=1</script>')"));
    tab.expect_quiet(&served);
    // Practice.
    for lesson in ["light", "choosing", "correcting"] {
        tab.open(&format!("{served}practice.html#lesson={lesson}"));
        started(&mut tab);
        tab.value("document.querySelector('#begin').click()");
        for _ in 0..3 {
            tab.wait_until(
                "!document.querySelector('#mark').hidden && document.querySelector('#question input')",
            );
            tab.value("document.querySelector('#question input').click()");
            tab.value("document.querySelector('#mark').click()");
            tab.wait_until("document.querySelector('#mark').hidden");
            assert!(tab.holds(
                "document.querySelector('#session').textContent.includes('<script>fired=1</script>')"
            ));
            if tab.holds("document.querySelector('#next').hidden") {
                break;
            }
            tab.value("document.querySelector('#next').click()");
        }
        tab.value("document.querySelector('#end').click()");
        tab.wait_until("document.querySelector('#summary').checkVisibility()");
        tab.expect_quiet(&served);
    }
    // The search.
    tab.open(&format!("{served}search.html"));
    for words in ["fired", "choosing", PAYLOAD] {
        tab.value(
            "{ const field = document.querySelector('#search_words'); field.focus(); field.select(); }",
        );
        tab.write(words);
        tab.wait_until("document.querySelector('#search_count').textContent !== ''");
    }
    tab.expect_quiet(&served);
}

#[test]
fn hostile_links_and_registers_are_never_obeyed() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    let payload = tab_encoded(PAYLOAD);
    for link in [
        format!("bench.html#client={payload}&mix={payload}~2&{payload}=1&old=m:{payload}@1"),
        "bench.html#mix=__proto__~3,constructor~1&client=__proto__&goal=__proto__&old=c:__proto__~1@0.1,0.3,1,0.8@3".to_owned(),
        format!("practice.html#lesson={payload}"),
        "practice.html#skill=__proto__".to_owned(),
        format!("search.html#{payload}"),
        format!("search.html?q={payload}"),
        format!("index.html#{payload}"),
    ] {
        tab.open(&format!("{}{link}", *SERVED));
        started(&mut tab);
        tab.value(TRY_ALL);
        tab.expect_quiet(&SERVED);
    }
    for (folder, shows) in [(&*PAPERS, "papers"), (&*ASSIGNED, "")] {
        let mut shown = 0;
        for page in pages(folder).iter().filter(|page| page.starts_with(shows)) {
            tab.open(&on_disk(&folder.join(page)));
            tab.value(TRY_ALL);
            tab.expect_quiet(&(on_disk(folder) + "/"));
            if tab.holds("document.documentElement.textContent.includes('<script>fired=1</script>')") {
                shown += 1;
            }
        }
        assert!(shown > 0, "the name stands on a page");
    }
}

fn tab_encoded(text: &str) -> String {
    text.bytes()
        .map(
            |byte| {
                if byte.is_ascii_alphanumeric() {
                    char::from(byte).to_string()
                } else {
                    format!("%{byte:02X}")
                }
            },
        )
        .collect()
}
