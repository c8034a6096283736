//! Practice: a whole session by keys alone with answers of every form, and the record of it kept, saved, wiped and loaded.

use crate::axe;
use crate::chromium::Chromium;
use crate::keyboard::go_to;
use crate::keys::{END, ENTER, ESCAPE, SPACE};
use crate::pages::started;
use crate::site::{FOLDER, SERVED, pages, place};
use crate::tab::Tab;
use serde_json::json;
use std::collections::BTreeSet;
use std::fs;
use std::time::{Duration, Instant};

/// The forms of answers and where on the page each is known by.
const FORMS: [(&str, &str); 5] = [
    ("one", "input[type=radio]"),
    ("several", "input[type=checkbox]"),
    ("order", ".steps"),
    ("drops", ".drops"),
    ("number", "input[type=text]"),
];

/// The text that the page keeps on the device.
const KEPT: &str = "localStorage.getItem(healedhueCourse.record) ?? ''";

/// The lesson whose practice holds exercises of a form, as a link names it.
fn lesson_with(form: &str) -> String {
    let found = pages(&FOLDER).into_iter().find_map(|page| {
        let html = fs::read_to_string(FOLDER.join(page)).expect("a page");
        let (_, link) = html.split_once("practice.html#lesson=")?;
        html.contains(&format!("data-form=\"{form}\""))
            .then(|| link.split('"').next().unwrap_or_default().to_owned())
    });
    found.unwrap_or_else(|| panic!("no lesson has an exercise of the form {form}"))
}

/// Answers the question that is shown, by keys; gives the form of its answer.
fn answer(tab: &mut Tab) -> &'static str {
    let (form, control) = FORMS
        .into_iter()
        .find(|(_, control)| tab.holds(&format!("document.querySelector('#question {control}')")))
        .expect("a form of answer");
    match form {
        "one" | "several" => {
            go_to(tab, &format!("#question {control}"));
            tab.press(SPACE, 1);
        }
        "order" => {
            let first = tab.text("document.querySelector('#question .step').dataset.place");
            go_to(tab, "#question .step-move[aria-disabled=false]");
            tab.press(ENTER, 1);
            assert_eq!(
                tab.text("document.querySelectorAll('#question .step')[1].dataset.place"),
                first,
                "the first step has become the second"
            );
        }
        "drops" => {
            let count = tab.text("document.querySelector('#question .drops input').max");
            go_to(tab, "#question .drops input");
            tab.value("document.activeElement.select()");
            tab.write(&count);
        }
        _ => {
            go_to(tab, &format!("#question {control}"));
            tab.write("40");
        }
    }
    go_to(tab, "#mark");
    tab.press(ENTER, 1);
    tab.wait_until("document.querySelector('#mark').hidden");
    assert!(tab.holds("document.querySelector('#verdict').innerText.length > 10"), "the answer is judged");
    assert!(
        tab.holds("document.querySelector('#outcome').contains(document.activeElement)"),
        "and what follows has the focus"
    );
    expect_beside(tab, form);
    form
}

/// Whether the last answer was right.
fn was_right(tab: &mut Tab) -> bool {
    tab.holds("document.querySelector('#verdict strong').textContent.startsWith('Right.')")
}

/// Yours and the best stand side by side in words; one entry says so where they are the same.
fn expect_beside(tab: &mut Tab, form: &str) {
    let terms =
        tab.texts("[...document.querySelectorAll('#outcome .sides dt')].map((term) => term.textContent)");
    match (form, was_right(tab)) {
        ("number", _) => assert_eq!(terms, ["Yours", "The right number"]),
        (_, false) => assert_eq!(terms, ["Yours", "The best"]),
        (_, true) => {
            assert!(terms == ["Yours is the best"] || terms == ["Yours", "Just as good"], "{terms:?}");
        }
    }
    assert!(
        tab.holds("[...document.querySelectorAll('#outcome .sides dd')].every((said) => said.textContent.trim().length > 1)")
    );
    match form {
        "order" => assert!(
            tab.holds("[...document.querySelectorAll('#outcome .sides dd')].every((said) => said.querySelectorAll('ol > li').length === document.querySelectorAll('#question .step').length)"),
            "each order has all steps"
        ),
        "number" => assert!(
            tab.holds("document.querySelectorAll('#outcome .sides dd')[1].textContent.endsWith(' off: full credit.')"),
            "the right number tells how near is near enough"
        ),
        _ => {}
    }
}

/// Begins a session with what the page has chosen.
fn begin(tab: &mut Tab) {
    go_to(tab, "#begin");
    tab.press(ENTER, 1);
    tab.wait_until("document.querySelector('#question').checkVisibility() && document.querySelector('#question fieldset')");
}

#[test]
fn every_form_of_answer_is_practised_by_keys_alone() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    // The same exercises in every run.
    let seed = "Crypto.prototype.getRandomValues = (into) => into.fill(7)";
    tab.call("Page.addScriptToEvaluateOnNewDocument", json!({"source": seed}));
    let mut met = BTreeSet::new();
    for (form, _) in FORMS {
        if met.contains(form) {
            continue;
        }
        tab.open(&format!("{}practice.html#lesson={}", *SERVED, lesson_with(form)));
        started(&mut tab);
        // Until it is stopped: that is the last choice.
        go_to(&mut tab, "#extent");
        tab.press(END, 1);
        begin(&mut tab);
        // What comes is what is needed most: other forms of the lesson may come first.
        for _ in 0..60 {
            met.insert(answer(&mut tab));
            if met.contains(form) {
                break;
            }
            go_on(&mut tab);
        }
        assert!(met.contains(form), "no exercise of the form {form} in 60");
        go_to(&mut tab, "#end");
        tab.press(ENTER, 1);
        tab.wait_until("document.querySelector('#summary').checkVisibility()");
        tab.expect_quiet(&SERVED);
    }
}

/// The family of the exercise that was answered, by the drill that its source names.
const FAMILY: &str = "(() => {
    const [, id] = /Exercise (\\S+) \\d+\\.$/.exec(document.querySelector('#outcome details > p:last-child').textContent);
    const lessons = healedhueCourse.course.modules.flatMap((module) => module.lessons);
    return lessons.flatMap((lesson) => lesson.drills).find((drill) => drill.id === id).family;
})()";

/// What is shown on skin, part after part: how many rows, and whether over time.
const SHOWN: &str = "[...document.querySelectorAll('#outcome .beside-part > .beside')].map(({ dataset }) => `${dataset.rows}${dataset.times > 1 ? ' over time' : ''}`)";

/// A family, a skill that asks it, what follows from a right answer, and what may follow from a wrong one.
type Seen = (&'static str, &'static str, &'static [&'static str], &'static [&'static [&'static str]]);

/// Families whose options are colours or causes. Two causes of one age are seen over time together, others each by itself.
const SEEN: [Seen; 4] = [
    ("foresight", "foresee-healed", &["1 over time"], &[&["2", "1 over time"]]),
    (
        "hindsight",
        "read-residual",
        &["1 over time"],
        &[&["2 over time"], &["2", "1 over time", "1 over time"]],
    ),
    ("light", "judge-light", &["1"], &[&["2"]]),
    ("skin", "read-skin", &["1"], &[&["2"]]),
];

/// The last label of each part that is seen over time, row by row.
const LAST: &str = "[...document.querySelectorAll('#outcome .beside')].filter(({ dataset }) => dataset.times > 1).flatMap((part) => [...part.children].slice(-part.dataset.rows)).map((shown) => shown.textContent.split('\\n')[0])";

#[test]
fn right_and_wrong_answers_are_seen_over_time_where_there_is_one() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    axe::install(&mut tab);
    let seed = "Crypto.prototype.getRandomValues = (into) => into.fill(7)";
    tab.call("Page.addScriptToEvaluateOnNewDocument", json!({"source": seed}));
    for (family, skill, if_right, if_wrong) in SEEN {
        tab.open(&format!("{}practice.html#skill={skill}", *SERVED));
        started(&mut tab);
        go_to(&mut tab, "#extent");
        tab.press(END, 1);
        begin(&mut tab);
        let mut met = BTreeSet::new();
        for _ in 0..120 {
            let form = answer(&mut tab);
            if form == "one" && tab.text(FAMILY) == family {
                let right = was_right(&mut tab);
                let shown = tab.texts(SHOWN);
                let may_follow = if right { &[if_right] } else { if_wrong };
                assert!(may_follow.iter().any(|parts| shown == *parts), "{family}, {right}: {shown:?}");
                if family == "hindsight" {
                    // Whatever led to it, today is the end.
                    let last = tab.texts(LAST);
                    assert!(!last.is_empty() && last.iter().all(|label| label.contains("today")), "{last:?}");
                }
                let heads = tab
                    .texts("[...document.querySelectorAll('#outcome h4')].map((head) => head.textContent)");
                assert_eq!(heads[0].starts_with("Yours is the best, "), right, "{heads:?}");
                assert_eq!(heads[0].contains("at the one moment"), !tab.texts(SHOWN)[0].contains("over"));
                // What is marked stands out among the moments, in each row once.
                let rows: usize = tab
                    .texts(SHOWN)
                    .iter()
                    .filter_map(|part| part.strip_suffix(" over time"))
                    .map(|rows| rows.parse::<usize>().expect("a count"))
                    .sum();
                assert_eq!(
                    tab.value("document.querySelectorAll('#outcome .is-judged').length"),
                    json!(rows),
                    "{family}, {right}"
                );
                if family == "foresight" && !right {
                    assert!(
                        tab.holds("document.querySelectorAll('#outcome .beside .swatch')[1].dataset.lab === document.querySelector('#outcome .is-judged').dataset.lab"),
                        "the best is the same colour beside yours and over time"
                    );
                }
                if met.insert(right) {
                    axe::expect_accessible(&mut tab, "colours that follow from an answer");
                }
                if met.len() == 2 {
                    break;
                }
            }
            go_on(&mut tab);
        }
        assert_eq!(met.len(), 2, "{family}: a right and a wrong answer in 120");
        go_to(&mut tab, "#end");
        tab.press(ENTER, 1);
        tab.wait_until("document.querySelector('#summary').checkVisibility()");
        tab.expect_quiet(&SERVED);
    }
}

/// A wrong and a right angle, each beside the right one and the skin it was read on.
#[test]
fn a_number_stands_beside_the_right_one() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    axe::install(&mut tab);
    let seed = "Crypto.prototype.getRandomValues = (into) => into.fill(7)";
    tab.call("Page.addScriptToEvaluateOnNewDocument", json!({"source": seed}));
    tab.width(390);
    tab.open(&format!("{}practice.html#skill=read-skin", *SERVED));
    started(&mut tab);
    go_to(&mut tab, "#extent");
    tab.press(END, 1);
    begin(&mut tab);
    let mut left = vec![0.0, 30.0];
    for _ in 0..120 {
        if !tab.holds(
            "document.querySelector('#question input[type=text]') && document.querySelector('#question .swatch')",
        ) {
            answer(&mut tab);
            go_on(&mut tab);
            continue;
        }
        // The individual typology angle of what the device has read.
        let angle = tab.text(
            "(() => {
            const [l, , b] = JSON.parse(document.querySelector('#question .swatch').dataset.lab);
            return ((Math.atan2(l - 50, b) * 180) / Math.PI).toFixed(1);
        })()",
        );
        let right: f64 = angle.parse().expect("an angle");
        let off = left.pop().expect("an answer to give");
        go_to(&mut tab, "#question input[type=text]");
        tab.write(&format!("{:.1}", right + off));
        go_to(&mut tab, "#mark");
        tab.press(ENTER, 1);
        tab.wait_until("document.querySelector('#mark').hidden");
        assert_eq!(was_right(&mut tab), off == 0.0);
        expect_beside(&mut tab, "number");
        let told = tab.texts("[...document.querySelectorAll('#outcome .sides b')].map((number) => number.textContent.replace('\u{2212}', '-'))");
        assert_eq!(told, [right + off, right].map(|number| format!("{number:.1}°")));
        assert!(tab.holds("document.querySelector('#outcome .beside .swatch').checkVisibility()"));
        let tops = "[...document.querySelectorAll('#outcome .sides dt')].map((term) => String(term.getBoundingClientRect().top))";
        let tops = tab.texts(tops);
        assert_eq!(tops[0], tops[1], "side by side on a phone, too");
        axe::expect_accessible(&mut tab, "a number beside the right one");
        if left.is_empty() {
            break;
        }
        go_on(&mut tab);
    }
    assert!(left.is_empty(), "no angle is asked for in 120");
    tab.expect_quiet(&SERVED);
}

/// Goes on to the next exercise.
fn go_on(tab: &mut Tab) {
    go_to(tab, "#next");
    tab.press(ENTER, 1);
    tab.wait_until("!document.querySelector('#mark').hidden");
}

/// The question that is shown, as it is told.
const TOLD: &str =
    "document.querySelector('#session_title').textContent + document.querySelector('#question').innerText";

/// What is answered, left and gone on with: the same question, and the record once only.
#[test]
fn a_session_that_is_left_goes_on() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    axe::install(&mut tab);
    let practice = format!("{}practice.html", *SERVED);
    tab.open(&format!("{practice}#lesson={}", lesson_with("drops")));
    started(&mut tab);
    begin(&mut tab);
    answer(&mut tab);
    go_on(&mut tab);
    let (told, record) = (tab.text(TOLD), tab.text(KEPT));
    // By the menu to another page and back.
    tab.open(&format!("{}bottles.html", *SERVED));
    tab.open(&practice);
    started(&mut tab);
    tab.wait_until(
        "document.querySelector('#kept').checkVisibility() && document.activeElement.id === 'go_on'",
    );
    assert!(tab.holds("document.querySelector('#kept_words').textContent.includes('exercise 2 of 6')"));
    axe::expect_accessible(&mut tab, "a session that was left");
    tab.press(ENTER, 1);
    tab.wait_until("document.querySelector('#question').checkVisibility() && document.querySelector('#question fieldset')");
    assert_eq!(tab.text(TOLD), told, "the question that was left");
    assert_eq!(tab.text(KEPT), record, "nothing is noted twice");
    // What follows from an answer is shown again, too.
    answer(&mut tab);
    let (follows, record) = (tab.text("document.querySelector('#outcome').innerText"), tab.text(KEPT));
    tab.reload();
    started(&mut tab);
    // The address names a lesson no more, so that the offer has the focus.
    tab.wait_until("document.activeElement.id === 'go_on'");
    tab.press(ENTER, 1);
    tab.wait_until("document.querySelector('#outcome').innerText !== ''");
    assert_eq!(tab.text("document.querySelector('#outcome').innerText"), follows);
    assert_eq!(tab.text(KEPT), record);
    go_on(&mut tab);
    answer(&mut tab);
    assert_ne!(tab.text(KEPT), record, "and the session goes on");
    go_to(&mut tab, "#end");
    tab.press(ENTER, 1);
    tab.wait_until("document.querySelector('#summary').checkVisibility()");
    // Three answers, all of this session.
    let counted = tab.texts("[...document.querySelectorAll('#summary tbody tr td:first-of-type')].map((cell) => cell.textContent)");
    assert_eq!(counted.iter().map(|count| count.parse::<u32>().expect("a number")).sum::<u32>(), 3);
    // What was ended is not offered.
    tab.reload();
    started(&mut tab);
    assert!(!tab.holds("document.querySelector('#kept').checkVisibility()"));
    tab.expect_quiet(&SERVED);
}

#[test]
fn a_question_tells_of_the_bottles_it_names() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    axe::install(&mut tab);
    tab.width(390);
    tab.open(&format!("{}practice.html#lesson={}", *SERVED, lesson_with("drops")));
    started(&mut tab);
    go_to(&mut tab, "#extent");
    tab.press(END, 1);
    begin(&mut tab);
    for _ in 0..60 {
        if tab.holds("document.querySelector('#question .drops')") {
            break;
        }
        answer(&mut tab);
        go_on(&mut tab);
    }
    let offered = tab
        .texts("[...document.querySelectorAll('#question .drops strong')].map((name) => name.textContent)");
    let told = "[...document.querySelectorAll('.named-bottle strong')].map((name) => name.textContent)";
    assert!(!offered.is_empty() && offered.iter().all(|name| tab.texts(told).contains(name)), "{offered:?}");
    // A name is a word: beside its count on a phone, too, it stands in one line.
    let broken = "[...document.querySelectorAll('#question .drops strong')].filter((name) => name.getClientRects().length > 1 && !name.textContent.includes(' ')).map((name) => name.textContent)";
    assert_eq!(tab.texts(broken), [""; 0]);
    assert!(!tab.holds("document.querySelector('.named-bottles').open"));
    go_to(&mut tab, ".named-bottles > summary");
    tab.press(ENTER, 1);
    tab.wait_until("document.querySelector('.named-bottles ul').checkVisibility()");
    axe::expect_accessible(&mut tab, "the bottles of a question");
    for part in ["L*", "PR\u{a0}101"] {
        assert!(
            tab.holds(&format!("document.querySelector('.named-bottles').textContent.includes({part:?})")),
            "{part}"
        );
    }
    // A name leads to the library.
    go_to(&mut tab, ".named-bottle a");
    tab.press(ENTER, 1);
    tab.wait_until("location.pathname.endsWith('/bottles.html') && document.querySelector(':target')");
    tab.expect_quiet(&SERVED);
}

/// Other eyes are offered where there is something to see.
#[test]
fn other_eyes_are_offered_only_with_swatches() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.open(&format!("{}practice.html#lesson={}", *SERVED, lesson_with("order")));
    started(&mut tab);
    go_to(&mut tab, "#extent");
    tab.press(END, 1);
    begin(&mut tab);
    let mut met = BTreeSet::new();
    for _ in 0..12 {
        let has_swatches = tab.holds("document.querySelector('#question :is(.swatch, .drop-chip)')");
        assert_eq!(tab.holds("document.querySelector('#eyes').checkVisibility()"), has_swatches);
        met.insert(has_swatches);
        answer(&mut tab);
        go_on(&mut tab);
    }
    assert!(met.contains(&false), "a question without a swatch");
    tab.expect_quiet(&SERVED);
}

#[test]
fn a_whole_session_and_its_record() {
    let folder = place("saved");
    fs::remove_dir_all(&folder).ok();
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    axe::install(&mut tab);
    tab.save_into(&folder);
    tab.open(&format!("{}practice.html", *SERVED));
    started(&mut tab);
    begin(&mut tab);
    let mut answered = 1;
    axe::expect_accessible(&mut tab, "a question");
    answer(&mut tab);
    axe::expect_accessible(&mut tab, "what follows from an answer");
    while !tab.holds("document.querySelector('#next').hidden") {
        go_on(&mut tab);
        answer(&mut tab);
        answered += 1;
    }
    assert_eq!(answered, 6, "as many as were asked for");
    go_to(&mut tab, "#end");
    tab.press(ENTER, 1);
    tab.wait_until("document.querySelector('#summary').checkVisibility()");
    assert!(tab.holds("document.activeElement.id === 'summary_title'"));
    axe::expect_accessible(&mut tab, "the end of a session");
    tab.expect_quiet(&SERVED);

    // It is kept.
    let record = tab.text(KEPT);
    assert!(record.len() > 100, "{record}");
    tab.reload();
    started(&mut tab);
    assert_eq!(tab.text(KEPT), record);
    let standing = tab.text("document.querySelector('#standing').innerText");

    // It is saved.
    go_to(&mut tab, "#save");
    tab.press(ENTER, 1);
    let file = saved(&folder);
    assert_eq!(fs::read_to_string(&file).expect("a record"), record);

    // It is wiped, but not by a slip of a finger.
    go_to(&mut tab, "#wipe");
    tab.press(ENTER, 1);
    tab.wait_until("document.querySelector('#asked').open");
    axe::expect_accessible(&mut tab, "a question before something is lost");
    assert!(tab.holds("document.activeElement.id === 'asked_no'"));
    tab.press(ESCAPE, 1);
    tab.wait_until("!document.querySelector('#asked').open");
    assert_eq!(tab.text(KEPT), record);
    go_to(&mut tab, "#wipe");
    tab.press(ENTER, 1);
    go_to(&mut tab, "#asked_yes");
    tab.press(ENTER, 1);
    tab.wait_until(&format!("({KEPT}) === ''"));
    assert_ne!(tab.text("document.querySelector('#standing').innerText"), standing);

    // It is loaded again; what is no record is not.
    let other = place("no-record.json");
    fs::write(&other, "{\"fired\": true}").expect("a file");
    for (file, kept) in [(&other, ""), (&file, record.as_str())] {
        tab.call("Page.setInterceptFileChooserDialog", json!({"enabled": true}));
        go_to(&mut tab, "#load");
        tab.press(ENTER, 1);
        let said = tab.text("document.querySelector('#keep_words').textContent");
        tab.choose_file("#load_file", file);
        tab.wait_until(&format!("document.querySelector('#keep_words').textContent !== {said:?}"));
        assert_eq!(tab.text(KEPT), kept);
    }
    tab.expect_quiet(&SERVED);
}

/// Where there is no room, the page goes on with all answers, says so once, and blames no other window.
#[test]
fn a_device_without_room_is_told_and_nothing_of_the_page_is_lost() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    let seed = "Crypto.prototype.getRandomValues = (into) => into.fill(7)";
    tab.call("Page.addScriptToEvaluateOnNewDocument", json!({"source": seed}));
    tab.open(&format!("{}practice.html", *SERVED));
    started(&mut tab);
    begin(&mut tab);
    answer(&mut tab);
    let kept = tab.text(KEPT);
    assert!(!kept.is_empty());
    // Ever shorter texts, until there is no room for a letter.
    tab.value(
        "{ let [length, count] = [1 << 20, 0];
           while (length >= 1) try { localStorage.setItem(`full ${count}`, 'x'.repeat(length)); count += 1; } catch { length >>= 1; } }",
    );
    for turn in 2..=3 {
        go_to(&mut tab, "#next");
        tab.press(ENTER, 1);
        tab.wait_until(
            "!document.querySelector('#mark').hidden && document.querySelector('#question fieldset')",
        );
        answer(&mut tab);
        let verdict = tab.text("document.querySelector('#verdict').textContent");
        assert_eq!(verdict.contains("could not be kept on this device"), turn == 2, "{verdict}");
        assert!(!verdict.contains("window"), "{verdict}");
        assert_eq!(tab.text(KEPT), kept, "what was kept stays");
    }
    go_to(&mut tab, "#end");
    tab.press(ENTER, 1);
    tab.wait_until("document.querySelector('#standing').checkVisibility()");
    let standing = tab.text("document.querySelector('#standing_words').textContent");
    assert!(standing.starts_with("3 answers so far"), "{standing}");
    let note = tab.text("document.querySelector('#keep_note:not([hidden])').textContent");
    assert!(note.contains("takes nothing new"), "{note}");
    tab.reload();
    started(&mut tab);
    tab.wait_until("document.querySelector('#standing_words').textContent.startsWith('One answer so far')");
    tab.expect_quiet(&SERVED);
}

/// The one file in a folder, once it has been written whole.
pub fn saved(folder: &std::path::Path) -> std::path::PathBuf {
    let end = Instant::now() + Duration::from_secs(60);
    loop {
        let files: Vec<_> =
            fs::read_dir(folder).into_iter().flatten().flatten().map(|entry| entry.path()).collect();
        if let [file] = files.as_slice()
            && file.extension().is_some_and(|ending| ending == "json")
        {
            return file.clone();
        }
        assert!(Instant::now() < end, "nothing was saved: {files:?}");
        std::thread::sleep(Duration::from_millis(20));
    }
}
