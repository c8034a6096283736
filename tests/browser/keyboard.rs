//! Keys alone reach everything, show where they are, and answer an exercise.

use crate::chromium::Chromium;
use crate::keys::{DOWN, ENTER, SPACE, TAB};
use crate::pages::started;
use crate::site::{ONE_OF_EACH, PAPERS, SERVED, on_disk};
use crate::tab::Tab;

/// Everything that the Tab key should reach, in the order of the page: of a group of radio buttons one.
const LIST: &str = "(() => {
    const able = [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex]')];
    const seen = new Set();
    globalThis.stops = able.filter((one) => {
        if (one.tabIndex < 0 || one.disabled || !one.checkVisibility({ visibilityProperty: true })) return false;
        if (one.type !== 'radio') return true;
        const group = [...(one.form ?? document).querySelectorAll('input[type=radio]')].filter((other) => other.name === one.name);
        const stop = group.find((other) => other.checked) ?? group[0];
        return stop === one;
    });
    return stops.length;
})()";

/// Which of them has the focus, and what is amiss with how that is shown: the control or its label has an outline and is in sight.
const HERE: &str = "(() => {
    const one = document.activeElement;
    const shown = [one, one.closest('label')].filter(Boolean);
    const outlined = shown.some((part) => {
        const { outlineStyle, outlineWidth } = getComputedStyle(part);
        return outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2;
    });
    const inSight = shown.some((part) => {
        const { left, top, right, bottom } = part.getBoundingClientRect();
        return right > left && bottom > top && right > 0 && bottom > 0 && left < innerWidth && top < innerHeight;
    });
    const amiss = one === document.body ? [] : [...(outlined ? [] : ['no outline']), ...(inSight ? [] : ['out of sight'])];
    return [String(stops.indexOf(one)), ...amiss.map((what) => `${what}: ${one.outerHTML.slice(0, 120)}`)];
})()";

/// Presses Tab through the whole page.
fn expect_reachable(tab: &mut Tab, page: &str) {
    let stops = tab.value(LIST).as_u64().expect("a number") as usize;
    let mut reached = Vec::new();
    // The search has the focus where it is used: from there, back to the top.
    if tab.holds("document.activeElement !== document.body") {
        tab.value("stops[0].focus()");
        reached.push(0);
    }
    // A browser may stop at further places, such as a box that scrolls.
    for _ in 0..2 * stops + 20 {
        tab.press(TAB, 1);
        let here = tab.texts(HERE);
        assert_eq!(here.len(), 1, "{page}: {here:?}");
        let at: i64 = here[0].parse().expect("a number");
        if at >= 0 {
            reached.push(at as usize);
        }
        if at as usize == stops - 1 {
            break;
        }
    }
    let all: Vec<usize> = (0..stops).collect();
    if reached != all {
        let missed = all.iter().find(|at| !reached.contains(at)).unwrap_or(&0);
        let missed = tab.text(&format!("stops[{missed}].outerHTML.slice(0, 160)"));
        panic!(
            "{page}: {} of {stops} are reached, in the order {reached:?}; the first that is not: {missed}",
            reached.len()
        );
    }
}

#[test]
fn keys_reach_everything_in_the_order_of_the_page() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.width(1280);
    // Nothing glides: what has the focus is in sight at once.
    tab.prefers("prefers-reduced-motion", "reduce");
    let site = ONE_OF_EACH.iter().map(|page| format!("{}{page}", *SERVED));
    for page in site.chain([on_disk(&PAPERS.join("papers/q1.html"))]) {
        tab.open(&page);
        started(&mut tab);
        // A paper first asks the device what it kept.
        tab.wait_until("document.querySelector('[data-part=begin]')?.checkVisibility() ?? true");
        expect_reachable(&mut tab, &page);
    }
}

#[test]
fn the_first_key_leads_past_the_head_of_the_page() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    // The search has the focus where it is used.
    for page in ONE_OF_EACH.into_iter().filter(|page| *page != "search.html") {
        tab.open(&format!("{}{page}", *SERVED));
        started(&mut tab);
        tab.press(TAB, 1);
        assert!(tab.holds("document.activeElement.getAttribute('href') === '#page_main'"), "{page}");
        tab.press(ENTER, 1);
        assert!(tab.holds("document.activeElement.id === 'page_main'"), "{page}");
        tab.press(TAB, 1);
        assert!(
            tab.holds(
                "document.querySelector('main, footer').compareDocumentPosition(document.activeElement) & 20"
            ),
            "{page}"
        );
    }
}

/// Presses Tab until something has the focus.
pub fn go_to(tab: &mut Tab, selector: &str) {
    for _ in 0..600 {
        if tab.holds(&format!("document.activeElement.matches({selector:?})")) {
            return;
        }
        tab.press(TAB, 1);
    }
    panic!("no key leads to {selector}");
}

#[test]
fn an_exercise_in_a_lesson_is_answered_by_keys_alone() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.open(&format!("{}lessons/choosing-for-the-client/red-skin-and-warmth.html", *SERVED));
    let exercise = |part: &str| format!(".exercise form[data-form=one] {part}");
    go_to(&mut tab, &exercise("input[type=radio]"));
    tab.press(SPACE, 1);
    tab.press(DOWN, 1);
    let chosen = tab.text("document.activeElement.value");
    assert_eq!(chosen, "1", "an arrow goes on to the next option");
    assert!(tab.holds("document.activeElement.checked"));
    go_to(&mut tab, &exercise("[data-part=mark]"));
    tab.press(ENTER, 1);
    let result = "document.activeElement.form.querySelector('[data-part=result]')";
    assert!(tab.holds(&format!("{result}.textContent.includes('%')")), "the credit is told");
    let consequence =
        "document.activeElement.form.querySelector('[data-option=\"1\"] .outcome-body p').textContent";
    let consequence = tab.text(consequence);
    assert!(tab.text(&format!("{result}.textContent")).contains(&consequence), "what follows is told");
    go_to(&mut tab, &exercise("[data-part=answers] summary"));
    tab.press(ENTER, 1);
    assert!(tab.holds("document.activeElement.parentNode.open"), "all answers can be read");
    tab.expect_quiet(&SERVED);
}

#[test]
fn nothing_moves_for_those_who_ask_for_less_motion() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.prefers("prefers-reduced-motion", "reduce");
    for page in ONE_OF_EACH {
        tab.open(&format!("{}{page}", *SERVED));
        started(&mut tab);
        let moving = tab.texts(
            "[...document.querySelectorAll('*')].filter((one) => {
                const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(one);
                return /[1-9]/.test(transitionDuration) || animationName !== 'none' || scrollBehavior !== 'auto';
            }).map((one) => one.outerHTML.slice(0, 120))",
        );
        assert_eq!(moving, Vec::<String>::new(), "{page}");
    }
}
