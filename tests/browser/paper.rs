//! A paper: begun, answered, interrupted by a closed tab and by a power cut, resumed with the clock gone on, handed in and marked.

use crate::axe;
use crate::chromium::Chromium;
use crate::keyboard::go_to;
use crate::keys::{ENTER, SPACE};
use crate::practice::saved;
use crate::site::{ASSIGNED, PAPERS, healedhue, on_disk, place, text};
use crate::tab::Tab;
use serde_json::{Value, json};
use std::fs;
use std::path::Path;

/// What the page keeps on the device.
const KEPT: &str =
    "localStorage.getItem(Object.keys(localStorage).find((key) => key.startsWith('healedhue-paper-')))";
/// The same as the device has written it.
const WRITTEN: &str = "new Promise((fulfil) => {
    const opening = indexedDB.open('healedhue-papers', 1);
    opening.onsuccess = () => {
        const reading = opening.result.transaction('kept').objectStore('kept').getAll();
        reading.onsuccess = () => fulfil(reading.result[0]);
    };
})";
/// The place of the first number in the clock, which counts minutes.
const LEFT: &str = "Number.parseInt(document.querySelector('[data-part=clock]').textContent, 10)";
/// What stands in all fields.
const FIELDS: &str = "JSON.stringify([...document.querySelectorAll('[data-part=paper] input')].map((one) => one.type === 'radio' || one.type === 'checkbox' ? one.checked : one.value))";

fn part(name: &str) -> String {
    format!("[data-part={name}]")
}

fn is_shown(tab: &mut Tab, name: &str) -> bool {
    tab.holds(&format!("document.querySelector({:?}).checkVisibility()", part(name)))
}

/// Lets the page believe that it is so many minutes later.
fn later(tab: &mut Tab, minutes: u32) {
    let source = format!("{{ const now = Date.now; Date.now = () => now() + {minutes} * 60000; }}");
    tab.call("Page.addScriptToEvaluateOnNewDocument", json!({"source": source}));
}

/// Waits until a part is shown: a page that is opened first asks the device what it kept.
fn wait_for(tab: &mut Tab, name: &str) {
    tab.wait_until(&format!("document.querySelector({:?}).checkVisibility()", part(name)));
}

#[test]
fn a_paper_survives_a_closed_tab_and_a_power_cut() {
    let profile = tempfile::tempdir().expect("a folder for the profile");
    let paper = on_disk(&PAPERS.join("papers/q1.html"));
    let top = on_disk(&PAPERS) + "/";
    let mut chromium = Chromium::start_in(profile.path());
    let mut tab = chromium.tab();
    tab.open(&paper);
    assert!(!is_shown(&mut tab, "paper"), "no question before it is begun");
    wait_for(&mut tab, "begin");
    go_to(&mut tab, &part("begin"));
    tab.press(ENTER, 1);
    let whole = tab.value(LEFT).as_u64().expect("minutes");
    assert_eq!(whole, 40, "as the blueprint says");
    // The first question has the focus.
    tab.press(SPACE, 1);
    tab.expect_quiet(&top);
    let (kept, first) = (tab.text(KEPT), tab.text(FIELDS));
    assert!(kept.contains("true"), "the answer is kept: {kept}");
    chromium.close(tab);

    let mut tab = chromium.tab();
    later(&mut tab, 10);
    tab.open(&paper);
    wait_for(&mut tab, "paper");
    assert!(!is_shown(&mut tab, "begin"), "it goes on by itself");
    assert_eq!(tab.text(FIELDS), first);
    let left = tab.value(LEFT).as_u64().expect("minutes");
    assert!((29..=30).contains(&left), "{left} minutes are left after ten");
    // A bottle and all drops where drops are counted, and whatever comes after the first question.
    go_to(&mut tab, "[data-part=paper] section:nth-of-type(2) input");
    tab.press(SPACE, 1);
    let drops = tab.text("document.querySelector('.question[data-form=drops]').dataset.drops");
    go_to(&mut tab, ".question[data-form=drops] input:not([data-modifier])");
    tab.write(&drops);
    let (kept, second) = (tab.text(KEPT), tab.text(FIELDS));
    assert_ne!(first, second);
    // As soon as the database has it, milliseconds after the key: what localStorage holds a browser writes up to a minute later.
    assert_eq!(tab.text(WRITTEN), kept);
    chromium.kill();

    let mut chromium = Chromium::start_in(profile.path());
    let mut tab = chromium.tab();
    axe::install(&mut tab);
    later(&mut tab, 25);
    let folder = place("slips");
    fs::remove_dir_all(&folder).ok();
    tab.save_into(&folder);
    tab.open(&paper);
    wait_for(&mut tab, "paper");
    assert_eq!(tab.text(FIELDS), second, "nothing is lost");
    let left = tab.value(LEFT).as_u64().expect("minutes");
    assert!((14..=15).contains(&left), "{left} minutes are left after 25");
    axe::expect_accessible(&mut tab, "a paper that was begun");
    go_to(&mut tab, &part("finish"));
    tab.press(ENTER, 1);
    assert!(is_shown(&mut tab, "slip") && !is_shown(&mut tab, "paper"));
    axe::expect_accessible(&mut tab, "a slip");
    go_to(&mut tab, &part("download"));
    tab.press(ENTER, 1);
    let slip = saved(&folder);
    let code = tab.text("document.querySelector('[data-part=code]').value");
    tab.expect_quiet(&top);

    let answers: Value = serde_json::from_slice(&fs::read(&slip).expect("a slip")).expect("JSON");
    let given: Vec<&Value> =
        answers["answers"].as_array().expect("answers").iter().filter(|one| *one != "").collect();
    assert_eq!(given.len(), 3, "{answers}");
    let as_code = place("code.txt");
    fs::write(&as_code, code).expect("a code");
    let marks = |slip: &Path| -> Value {
        let told = healedhue(&["mark", text(slip), "--keys", text(&PAPERS), "--json"]);
        let told: Value = serde_json::from_str(&told).expect("JSON");
        assert_eq!(told["refused"], json!([]), "{told}");
        told["marked"][0]["answers"].clone()
    };
    let marked = marks(&slip);
    assert_eq!(marked.as_array().map(Vec::len), answers["answers"].as_array().map(Vec::len));
    assert_eq!(marked, marks(&as_code), "the file and the code are worth the same");
}

#[test]
fn a_paper_is_handed_in_when_the_time_is_over() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.tab();
    let paper = on_disk(&PAPERS.join("papers/q1.html"));
    tab.open(&paper);
    wait_for(&mut tab, "begin");
    go_to(&mut tab, &part("begin"));
    tab.press(ENTER, 1);
    tab.press(SPACE, 1);
    later(&mut tab, 41);
    tab.reload();
    let over = |tab: &mut Tab| {
        wait_for(tab, "slip");
        assert!(!is_shown(tab, "paper") && !is_shown(tab, "back"));
        let code = tab.text("document.querySelector('[data-part=code]').value");
        assert!(code.starts_with("healedhue-slip:"));
        code
    };
    let code = over(&mut tab);
    // A clock that is set back gives no time back, and what was handed in stays what it was.
    chromium.close(tab);
    let mut tab = chromium.tab();
    tab.open(&paper);
    assert_eq!(over(&mut tab), code);
}

/// The Enter key in a field is often pressed to end what is written there: it hands in nothing.
#[test]
fn only_the_button_hands_in_and_the_way_back_leads_to_what_is_open() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.open(&on_disk(&PAPERS.join("papers/q1.html")));
    wait_for(&mut tab, "begin");
    go_to(&mut tab, &part("begin"));
    tab.press(ENTER, 1);
    tab.press(SPACE, 1);
    tab.press(ENTER, 1);
    go_to(&mut tab, ".question[data-form=drops] input");
    tab.press(ENTER, 1);
    assert!(is_shown(&mut tab, "paper") && !is_shown(&mut tab, "slip"), "a key in a field hands in nothing");
    tab.width(320);
    let apart = "((title, clock) => title.right <= clock.left || title.bottom <= clock.top)(
        ...['.masthead-title', '.clock'].map((one) => document.querySelector(one).getBoundingClientRect()))";
    assert!(tab.holds(apart), "the clock of a narrow screen does not lie on the title");
    go_to(&mut tab, &part("finish"));
    tab.press(ENTER, 1);
    assert!(is_shown(&mut tab, "slip"));
    tab.reload();
    wait_for(&mut tab, "slip");
    assert!(!is_shown(&mut tab, "paper"), "what is handed in is handed in");
    go_to(&mut tab, &part("back"));
    tab.press(ENTER, 1);
    let second = "document.querySelectorAll('.question')[1] === document.activeElement.closest('.question')";
    assert!(is_shown(&mut tab, "paper") && tab.holds(second), "the first question was answered");
}

/// What one tab hands in or takes back, the other hears of, and neither answers the other without end.
#[test]
fn a_paper_in_two_tabs_is_handed_in_in_both() {
    let mut chromium = Chromium::start();
    let paper = on_disk(&PAPERS.join("papers/q1.html"));
    let [mut one, mut other] = [chromium.tab(), chromium.tab()];
    one.open(&paper);
    wait_for(&mut one, "begin");
    go_to(&mut one, &part("begin"));
    one.press(ENTER, 1);
    other.open(&paper);
    wait_for(&mut other, "paper");
    one.value("document.querySelector('[data-part=paper] input').click()");
    one.value("document.querySelector('[data-part=finish]').click()");
    wait_for(&mut one, "slip");
    wait_for(&mut other, "slip");
    assert_eq!(one.text(FIELDS), other.text(FIELDS));
    let turns = format!("JSON.parse({KEPT}).turns");
    let before = one.value(&turns).as_u64().expect("a count");
    one.value("new Promise((fulfil) => setTimeout(fulfil, 700))");
    let after = one.value(&turns).as_u64().expect("a count");
    // Each tab keeps the time left now and then.
    assert!(after <= before + 2, "kept {before} times, then {after}");
    other.value("document.querySelector('[data-part=back]').click()");
    wait_for(&mut other, "paper");
    wait_for(&mut one, "paper");
}

#[test]
fn a_key_in_a_field_of_an_assignment_saves_no_slip() {
    let folder = place("assignment-slips");
    fs::remove_dir_all(&folder).ok();
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.save_into(&folder);
    tab.open(&on_disk(&ASSIGNED.join("q1/index.html")));
    let said = "document.querySelector('[data-part=result]').textContent";
    go_to(&mut tab, ".slip .question input");
    tab.press(ENTER, 1);
    assert_eq!(tab.text(said), "");
    go_to(&mut tab, &part("save"));
    tab.press(ENTER, 1);
    assert_ne!(tab.text(said), "");
    saved(&folder);
}
