//! Without scripts: everything to be read can be read, and exercises can be worked.

use crate::chromium::Chromium;
use crate::keyboard::go_to;
use crate::keys::ENTER;
use crate::site::{FOLDER, SERVED, pages};

#[test]
fn every_page_is_whole_without_scripts() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.without_scripts();
    for page in pages(&FOLDER) {
        tab.open(&format!("{}{page}", *SERVED));
        assert!(tab.holds("document.querySelector('h1').checkVisibility()"), "{page}");
        // A button that only a script answers is not shown.
        let idle = "[...document.querySelectorAll('button, select, input')].filter((one) => one.checkVisibility() && !one.closest('fieldset')).map((one) => one.outerHTML)";
        assert_eq!(tab.texts(idle), Vec::<String>::new(), "{page}");
        // Pages that need scripts say so, and where to go on.
        if ["bench.html", "practice.html", "progress.html", "search.html"].contains(&page.as_str()) {
            assert!(tab.holds("document.querySelector('noscript a[href]').checkVisibility()"), "{page}");
        } else {
            assert!(
                tab.holds("document.querySelector('main').innerText.length > 200"),
                "{page} is to be read"
            );
        }
        tab.expect_quiet(&SERVED);
    }
}

#[test]
fn an_exercise_can_be_worked_without_scripts() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.without_scripts();
    tab.open(&format!("{}lessons/choosing-for-the-client/red-skin-and-warmth.html", *SERVED));
    assert!(
        tab.holds("!document.querySelector('.exercise .outcomes').checkVisibility()"),
        "answers are not given away"
    );
    go_to(&mut tab, ".exercise [data-part=answers] summary");
    tab.press(ENTER, 1);
    assert!(tab.holds("document.querySelector('.exercise .outcomes').checkVisibility()"), "and can be read");
    assert!(tab.holds("document.querySelectorAll('.exercise .outcomes [data-best]').length > 0"));
}
