//! Progress: what a session of practice leaves on the page of progress and on the home page, and that both agree.

use crate::axe;
use crate::chromium::Chromium;
use crate::keyboard::go_to;
use crate::keys::{ENTER, SPACE};
use crate::pages::started;
use crate::site::SERVED;
use crate::tab::Tab;
use serde_json::json;

/// A lesson whose exercises have one right option each, and its module.
const LESSON: &str = "layers-of-skin";
const MODULE: &str = "Skin as a filter";

/// Names of what is due; beside each the page of progress has a link.
const DUE: &str = "[...document.querySelectorAll('#due_list li, #home_due li[data-skill]')].filter((one) => one.checkVisibility())
    .map((one) => (one.dataset.skill ? one : one.firstChild).textContent.trim())";

/// Every module as the page of progress shows it: number and title, how many skills are known, and those with answers.
const MODULES: &str = "[...document.querySelectorAll('section:has([data-skills])')].map((one) => ({
    head: one.querySelector('h2').textContent, known: one.querySelector('[data-known]').textContent,
    skills: one.querySelectorAll('.skill').length,
    begun: [...one.querySelectorAll('.skill')].filter((skill) => skill.querySelector('meter').value > 0).map((skill) => skill.querySelector('.skill-name').textContent),
}))";

fn open(tab: &mut Tab, page: &str) {
    tab.open(&format!("{}{page}", *SERVED));
    started(tab);
}

/// Answers one exercise of the lesson, rightly or not; gives the skill it trains.
fn practise(tab: &mut Tab) -> String {
    open(tab, &format!("practice.html#lesson={LESSON}"));
    go_to(tab, "#begin");
    tab.press(ENTER, 1);
    tab.wait_until("document.querySelector('#question input')?.checkVisibility()");
    let title = tab.text("document.querySelector('#session_title').textContent");
    go_to(tab, "#question input");
    tab.press(SPACE, 1);
    go_to(tab, "#mark");
    tab.press(ENTER, 1);
    tab.wait_until("document.querySelector('#mark').hidden");
    go_to(tab, "#end");
    tab.press(ENTER, 1);
    tab.wait_until("document.querySelector('#summary').checkVisibility()");
    title
}

/// How well a skill is known, by the bar on the page of progress.
fn share_of(tab: &mut Tab, skill: &str) -> f64 {
    let meter =
        "[...document.querySelectorAll('.skill')].find((one) => one.querySelector('.skill-name').textContent";
    let known = tab.value(&format!("{meter} === {}).querySelector('meter').value", json!(skill)));
    known.as_f64().expect("a share")
}

#[test]
fn what_was_practised_stands_on_the_page_of_progress_and_on_the_home_page() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    axe::install(&mut tab);
    let seed = "Crypto.prototype.getRandomValues = (into) => into.fill(7)";
    tab.call("Page.addScriptToEvaluateOnNewDocument", json!({"source": seed}));

    // A beginner: every module with its skills, none begun, nothing due anywhere.
    open(&mut tab, "progress.html");
    let before = tab.value(MODULES);
    let modules = before.as_array().expect("modules");
    assert!(
        modules.len() > 5 && modules.iter().all(|module| module["skills"].as_u64() > Some(0)),
        "{before}"
    );
    assert!(modules.iter().all(|module| module["begun"] == json!([])), "{before}");
    assert!(!tab.holds("document.querySelector('#due').checkVisibility()"));
    assert!(!tab.holds("document.querySelector('#wipe').checkVisibility()"), "there is nothing to wipe");
    axe::expect_accessible(&mut tab, "the progress of a beginner");

    let title = practise(&mut tab);
    open(&mut tab, "progress.html");
    let after = tab.value(MODULES);
    let begun: Vec<_> =
        after.as_array().expect("modules").iter().filter(|module| module["begun"] != json!([])).collect();
    let [module] = begun.as_slice() else { panic!("one module has begun: {after}") };
    let skill = module["begun"][0].as_str().expect("a name");
    assert!(title.contains(skill), "{title}: {skill}");
    assert_eq!(module["head"], MODULE, "{module}");
    assert!(module["known"].as_str().is_some_and(|known| known.contains("0 of ")), "{module}");
    assert!(tab.holds("/^One answer so far/.test(document.querySelector('#standing_words').textContent)"));
    // One answer is not enough: the skill is due, here and on the home page.
    let due = tab.texts(DUE);
    assert_eq!(due, [skill]);
    axe::expect_accessible(&mut tab, "progress after an answer");
    tab.expect_quiet(&SERVED);
    open(&mut tab, "index.html");
    assert_eq!(tab.texts(DUE), due);
    axe::expect_accessible(&mut tab, "a home page with what is due");
    let heads = tab.texts("[...document.querySelectorAll('.module h3')].map((one) => one.textContent)");
    for module in after.as_array().expect("modules") {
        let head = module["head"].as_str().expect("a title");
        assert!(heads.iter().any(|known| known == head), "{head} is called so on the home page");
    }
    // The link of what is due begins the practice of that skill.
    tab.value("document.querySelector('#home_due li[data-skill]:not([hidden]) a').click()");
    tab.wait_until("document.querySelector('#what')?.value.startsWith('skill=')");
    tab.expect_quiet(&SERVED);

    // Of several that are due the least known stands first, on both.
    open(&mut tab, "progress.html");
    let known = [("judge-light", 0.3), ("read-skin", 0.6), ("place-work", 0.2), ("foresee-aged", 0.45)];
    let entry = |known: f64| json!({"known": known, "answers": 3, "credit": 1.5, "last": 1_700_000_000, "spaced": 1, "last_spaced": 1_700_000_000});
    let skills: serde_json::Map<_, _> =
        known.iter().map(|(skill, known)| ((*skill).to_owned(), entry(*known))).collect();
    let record = json!({"format": 1, "skills": skills}).to_string();
    let kept = "Object.keys(localStorage).find((key) => localStorage[key].startsWith('{'))";
    tab.value(&format!("localStorage.setItem({kept}, {})", json!(record)));
    open(&mut tab, "progress.html");
    let listed = tab.texts(DUE);
    assert_eq!(listed.len(), known.len(), "{listed:?}");
    let listed_shares: Vec<f64> = listed.iter().map(|name| share_of(&mut tab, name)).collect();
    assert!(listed_shares.is_sorted(), "{listed:?} {listed_shares:?}");
    open(&mut tab, "index.html");
    assert_eq!(tab.texts(DUE), listed);

    // Wiped on the page of progress, it is gone from both.
    open(&mut tab, "progress.html");
    go_to(&mut tab, "#wipe");
    tab.press(ENTER, 1);
    go_to(&mut tab, "#asked_yes");
    tab.press(ENTER, 1);
    tab.wait_until("!document.querySelector('#due').checkVisibility()");
    assert_eq!(tab.value(MODULES), before);
    open(&mut tab, "index.html");
    assert!(!tab.holds("document.querySelector('#home_due').checkVisibility()"));
    tab.expect_quiet(&SERVED);
}
