//! How long people wait, measured. These are figures of one machine and no promise, so that they are only taken when asked for:
//! `cargo test -p healedhue-browser --features browser speed -- --ignored --nocapture`, on a machine that does nothing else.

use crate::chromium::Chromium;
use crate::pages::started;
use crate::site::{FOLDER, on_disk};
use crate::tab::Tab;

/// Median, the value that 95% do not exceed, and the greatest.
fn told(what: &str, mut milliseconds: Vec<f64>) {
    milliseconds.sort_by(f64::total_cmp);
    let at = |share: f64| milliseconds[((milliseconds.len() - 1) as f64 * share).round() as usize];
    println!(
        "{what}: median {:.1} ms, 95% within {:.1}, at most {:.1} ({} times)",
        at(0.5),
        at(0.95),
        at(1.0),
        milliseconds.len()
    );
}

fn numbers(tab: &mut Tab, expression: &str) -> Vec<f64> {
    serde_json::from_value(tab.value(expression)).expect("numbers")
}

/// What the page itself measured of a name, in milliseconds.
fn measured(tab: &mut Tab, name: &str) -> Vec<f64> {
    numbers(tab, &format!("performance.getEntriesByName({name:?}).map((one) => one.duration)"))
}

/// How long the ranking and the region take over none to four old works at depths of their own.
fn over_old_work(tab: &mut Tab) {
    let works =
        [("kelderwick", 0.15, 24), ("dunmere", 0.25, 36), ("wexcombe", 0.1, 48), ("corrick", 0.35, 60)];
    let works = works.map(|(bottle, depth, months)| format!("m:{bottle}~1@{depth},0.3,1,0.85@{months}"));
    for count in 0..=works.len() {
        let page = on_disk(&FOLDER.join("bench.html"));
        let old = works[..count].join(";");
        tab.open(&format!("{page}#skin=III,neutral,calm&old={old}&mix=dunmere~4"));
        started(tab);
        tab.wait_until("performance.getEntriesByName('bench-ranked').length > 0");
        told(
            &format!("bench, the first ranking over {count} old works, from the page's first question"),
            measured(tab, "bench-ranked"),
        );
        tab.wait_until("performance.getEntriesByName('bench-likely').length > 0");
        tab.value("performance.clearMeasures()");
        for turn in 0..11 {
            tab.value(&format!(
                "{{ const slider = document.getElementById('melanin'); slider.value = {}; slider.dispatchEvent(new Event('input', {{ bubbles: true }})); }}",
                300 + 20 * turn
            ));
            tab.wait_until(&format!("performance.getEntriesByName('bench-ranked').length > {turn}"));
            tab.wait_until(&format!("performance.getEntriesByName('bench-likely').length > {turn}"));
        }
        told(
            &format!("bench, from the last change to the ranking over {count} old works"),
            measured(tab, "bench-ranked"),
        );
        told(
            &format!("bench, from the last change to the 90% region over {count} old works"),
            measured(tab, "bench-likely"),
        );
    }
}

#[test]
#[ignore = "measures; see the head of the file"]
fn how_long_people_wait() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    let mut page = |page: &str| -> Vec<f64> {
        (0..10)
            .map(|_| {
                tab.open(&on_disk(&FOLDER.join(page)));
                tab.value("new Promise((fulfil) => setTimeout(fulfil, 100))");
                tab.value("performance.getEntriesByName('first-contentful-paint')[0].startTime")
                    .as_f64()
                    .expect("a time")
            })
            .collect()
    };
    told("first page of reading, from the disk to the first paint", page("lessons/welcome.html"));
    told("a long lesson", page("lessons/choosing-for-the-client/red-skin-and-warmth.html"));
    let mut tab = chromium.fresh_tab();
    tab.open(&on_disk(&FOLDER.join("bench.html")));
    started(&mut tab);
    tab.value("performance.clearMeasures()");
    // From the input to the frame after the one that shows the numbers.
    let moved = numbers(
        &mut tab,
        "(async () => {
            const slider = document.getElementById('melanin');
            const frame = () => new Promise((fulfil) => requestAnimationFrame(fulfil));
            const times = [];
            for (let turn = 0; turn < 100; turn += 1) {
                await frame();
                const before = performance.now();
                slider.value = 300 + turn;
                slider.dispatchEvent(new Event('input', { bubbles: true }));
                await frame();
                await new Promise((fulfil) => { const { port1, port2 } = new MessageChannel(); port1.onmessage = fulfil; port2.postMessage(0); });
                times.push(performance.now() - before);
            }
            return times;
        })()",
    );
    told("bench, from a slider to the painted frame (a frame is 16.7)", moved);
    told("bench, of which the engine and the page", measured(&mut tab, "bench-painted"));
    over_old_work(&mut chromium.fresh_tab());
    let mut tab = chromium.fresh_tab();
    let mut made = Vec::new();
    for _ in 0..5 {
        tab.open(&on_disk(&FOLDER.join("practice.html")));
        started(&mut tab);
        tab.value("document.querySelector('#begin').click()");
        for _ in 0..6 {
            tab.wait_until("!document.querySelector('#mark').hidden && document.querySelector('#question input, #question .steps')");
            tab.value("{ const input = document.querySelector('#question input'); if (input?.type === 'radio' || input?.type === 'checkbox') input.click(); else if (input) input.value = input.max || 1; }");
            tab.value("document.querySelector('#mark').click()");
            tab.wait_until("document.querySelector('#mark').hidden");
            tab.wait_until("performance.getEntriesByName('exercise-asked', 'mark').length === performance.getEntriesByName('exercise-made').length");
            if !tab.holds("document.querySelector('#next').hidden") {
                tab.value("document.querySelector('#next').click()");
            }
        }
        made.extend(measured(&mut tab, "exercise-made"));
    }
    told("practice, from asking to a proved exercise", made);
}
