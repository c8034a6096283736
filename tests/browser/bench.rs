//! The bench: what it shows is what the program answers, to the last digit, from any address and after any change.

use crate::chromium::Chromium;
use crate::keys::{ENTER, RIGHT, SPACE, TAB};
use crate::pages::started;
use crate::site::{SERVED, healedhue, text};
use crate::tab::Tab;
use serde_json::{Value, json};
use std::fs;

/// Cases as a link tells of them: a client as described, a skin in words with wear, a client with old work, a skin set by hand, a scar, and
/// touch-ups: before the time judged, at that time over old work, and after it.
const CASES: [&str; 7] = [
    "",
    "#skin=V,warm,rosy&site=lip&mix=kelderwick~3,emberlow~2&sun=outdoors&oil=oily&aftercare=neglected&months=24&light=LED-B3&own=40,18,12,5",
    "#client=tessaly&mix=dunmere~4&months=12&light=A&most=2,4",
    "#skin=II,cool,ruddy&melanin=0.04&blood=0.01&mix=none&technique=strokes&light=FL2",
    "#skin=IV,neutral,calm&scar=yes&site=areola&mix=kelderwick~4&touch=8.5&months=12",
    "#client=tessaly&mix=dunmere~4&touch=12&months=12&sun=outdoors&light=A",
    "#skin=I,warm,calm&scar=yes&blood=0.02&mix=kelderwick~3,dunmere~1&touch=30&months=24",
];

const RESTED: &str = "document.querySelector('#likely').dataset.outcome && document.querySelectorAll('#best tbody tr').length > 0
    && !document.querySelector('#likely.is-old, #best.is-old, #planes[aria-busy]')";

/// What the page shows of the time and in the light judged, and the whole request.
const SHOWN: &str = "(() => {
    const figure = (one) => ({ lab: JSON.parse(one.dataset.lab), numbers: [...one.querySelectorAll('.swatch-number')].map((part) => part.textContent), words: one.querySelector('figcaption > span').textContent });
    const byId = (id) => document.getElementById(id);
    const rows = [...document.querySelectorAll('#best tbody tr')];
    return {
        request: JSON.parse(byId('request').textContent),
        bare: figure(document.querySelector('#times .swatch')),
        lights: [...document.querySelectorAll('#lights .swatch')].map(figure),
        judged: figure(document.querySelector('#times .is-judged')),
        outcome: JSON.parse(byId('likely').dataset.outcome),
        likely: byId('likely').textContent,
        goal: ['goal_l', 'goal_a', 'goal_b'].map((id) => Number(byId(id).value)), tolerance: Number(byId('goal_tolerance').value),
        most: [Number(byId('most_bottles').value), Number(byId('most_drops').value)],
        best: rows.map((row) => ({ error: JSON.parse(row.dataset.error), shown: row.querySelector('td.number').textContent })),
        best_words: byId('best_words').textContent,
    };
})()";

/// What the program answers; the request has a file of its own, since tests ask side by side.
fn native(request: &Value) -> Value {
    let folder = tempfile::tempdir().expect("a folder for the request");
    let file = folder.path().join("bench.json");
    fs::write(&file, request.to_string()).expect("a request");
    serde_json::from_str(&healedhue(&["foresee", text(&file), "--json"])).expect("JSON")
}

/// With one decimal and a true minus sign, as people read it.
fn read_as(number: &Value) -> String {
    let number = number.as_f64().expect("a number");
    let text = format!("{:.1}", number.abs());
    if number < 0.0 && text != "0.0" { format!("−{text}") } else { text }
}

fn expect_seen(shown: &Value, native: &Value, what: &str) {
    assert_eq!(shown["lab"], native["lab"], "{what}");
    let numbers: Vec<String> = native["lab"].as_array().expect("a colour").iter().map(read_as).collect();
    assert_eq!(shown["numbers"], json!(numbers), "{what}");
    assert_eq!(shown["words"], native["reading"]["words"], "{what}");
}

/// Asks the program what the page was asked, and compares.
fn expect_native(tab: &mut Tab, case: &str) {
    tab.wait_until(RESTED);
    let shown = tab.value(SHOWN);
    let request = &shown["request"];
    let answer = native(request);
    expect_seen(&shown["judged"], &answer, case);
    assert_eq!(shown["outcome"], answer["outcome"], "{case}");
    let likely = answer["outcome"]["words"].as_str().expect("words");
    assert!(shown["likely"].as_str().is_some_and(|said| said.contains(likely)), "{case}");
    // The bare skin is calm, also where the skin around fresh work is not.
    let mut calm = request.clone();
    calm["months"] = json!(1.5);
    calm["worlds"] = json!(0);
    calm["touch_ups"] = json!([]);
    assert_eq!(shown["bare"]["lab"], native(&calm)["bare_skin_lab"], "{case}");
    for (place, light) in ["D65", "A", "LED-B3", "FL2"].iter().enumerate() {
        let mut request = request.clone();
        request["light"] = json!(light);
        request["worlds"] = json!(0);
        expect_seen(&shown["lights"][place], &native(&request), &format!("{case} in {light}"));
    }
    let mut request = request.clone();
    request["worlds"] = json!(0);
    request["search"] = json!({
        "goal": shown["goal"], "tolerance": shown["tolerance"], "bottles": shown["most"][0], "drops": shown["most"][1],
    });
    let search = native(&request)["search"].take();
    let best = &search["best"]["delta_e_2000"];
    assert_eq!(&shown["best"][0]["error"], best, "{case}");
    assert_eq!(shown["best"][0]["shown"], read_as(best), "{case}");
    let ties = search["near_ties"].as_array().expect("a list");
    for (row, tie) in shown["best"].as_array().expect("rows").iter().skip(1).zip(ties) {
        assert_eq!(row["error"], tie["delta_e_2000"], "{case}");
    }
    let mixes = search["mixes"].to_string();
    assert!(shown["best_words"].as_str().is_some_and(|said| said.contains(&mixes)), "{case}: {mixes}");
}

#[test]
fn the_bench_shows_what_the_program_answers() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    for case in CASES {
        tab.open(&format!("{}bench.html{case}", *SERVED));
        started(&mut tab);
        assert!(tab.holds("document.querySelector('#bench_trouble').hidden"), "{case} is understood");
        expect_native(&mut tab, case);
        tab.expect_quiet(&SERVED);
    }
}

/// What the request says of the scar and of touch-ups.
const REQUESTED: &str = "(({ skin, touch_ups }) => [skin.scar, touch_ups])(JSON.parse(document.querySelector('#request').textContent))";

/// Presses the Tab key until the focus is where it is looked for.
fn tab_to(tab: &mut Tab, there: &str) {
    for _ in 0..400 {
        tab.press(TAB, 1);
        if tab.holds(there) {
            return;
        }
    }
    panic!("the Tab key never comes to where {there}");
}

#[test]
fn the_bench_follows_its_controls_by_keys_alone() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.open(&format!("{}bench.html", *SERVED));
    started(&mut tab);
    tab.wait_until(RESTED);
    let before = tab.text("location.hash");
    // The melanin of the skin, which stands open, three steps up.
    tab_to(&mut tab, "document.activeElement.id === 'melanin'");
    let least = tab.value("Number(document.activeElement.value)").as_u64().expect("a whole number");
    tab.press(RIGHT, 3);
    assert_eq!(tab.value("Number(document.activeElement.value)"), json!(least + 3));
    tab.wait_until(&format!("location.hash !== {before:?}"));
    expect_native(&mut tab, "three steps of melanin");
    // On to the scar, and to the touch-up, which stands folded away.
    tab_to(&mut tab, "document.activeElement.id === 'scar'");
    tab.press(SPACE, 1);
    tab.wait_until("location.hash.includes('scar=yes')");
    tab_to(&mut tab, "document.activeElement.parentNode.contains(document.querySelector('#touch_up'))");
    tab.press(ENTER, 1);
    tab_to(&mut tab, "document.activeElement.id === 'touch_up'");
    tab.press(RIGHT, 3);
    tab.wait_until("location.hash.includes('touch=1.5')");
    assert_eq!(tab.value(REQUESTED), json!([true, [{"months": 1.5}]]));
    expect_native(&mut tab, "a scar, touched up");
    // The link is the case: in another tab it is the same, and so it is after going back to it.
    let (link, request) = (
        tab.text("document.querySelector('#link').value"),
        tab.text("document.querySelector('#request').textContent"),
    );
    let mut other = chromium.fresh_tab();
    other.open(&link);
    started(&mut other);
    other.wait_until(RESTED);
    assert_eq!(other.text("document.querySelector('#request').textContent"), request);
    tab.expect_quiet(&SERVED);
}

#[test]
fn the_bench_says_that_no_further_drop_is_taken() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.open(&format!("{}bench.html#client=tessaly&mix=dunmere~29", *SERVED));
    started(&mut tab);
    let more = "document.querySelector('[data-bottle=dunmere] [data-step=\"1\"]')";
    tab.value(&format!("{more}.click()"));
    assert_eq!(tab.text("document.querySelector('#mix_note').textContent"), "");
    tab.value(&format!("{more}.click()"));
    assert!(tab.text("document.querySelector('#mix_note').textContent").contains("30"));
    assert!(
        tab.text("document.querySelector('[data-bottle=dunmere] .drop-note').textContent").contains("30")
    );
    assert_eq!(tab.value("Number(document.querySelector('[data-bottle=dunmere] input').value)"), json!(30));
    // Nothing lingers once something else is done.
    tab.value("document.querySelector('[data-bottle=dunmere] [data-step=\"-1\"]').click()");
    assert_eq!(tab.text("document.querySelector('#mix_note').textContent"), "");
    assert!(tab.holds("!document.querySelector('.drop-note')"));
    tab.expect_quiet(&SERVED);
}

#[test]
fn the_bench_on_paper_tells_its_case() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.open(&format!(
        "{}bench.html#client=tessaly&mix=dunmere~4,emberlow~1&technique=powder&touch=12",
        *SERVED
    ));
    started(&mut tab);
    tab.wait_until(RESTED);
    let told = |tab: &mut Tab, name: &str| {
        tab.text(&format!("document.querySelector('[data-told={name}]').textContent"))
    };
    let mix = told(&mut tab, "mix");
    assert!(mix.contains("4 drops Dunmere") && mix.contains("1 drop Emberlow"), "{mix}");
    assert!(told(&mut tab, "client").starts_with("Tessaly"));
    let old = told(&mut tab, "old");
    let chosen = tab.text("document.querySelector('#old_0_age_value').textContent");
    assert!(old.contains(&chosen), "{old} tells of {chosen}");
    assert!(told(&mut tab, "placed").starts_with("Powder"));
    assert!(told(&mut tab, "wear").contains("1 year"));
    assert!(!told(&mut tab, "goal").is_empty());
    assert!(
        tab.holds("!document.querySelector('.told').checkVisibility()"),
        "on a screen the controls tell it"
    );
    tab.call("Emulation.setEmulatedMedia", json!({"media": "print"}));
    assert!(tab.holds("document.querySelector('.told').checkVisibility()"));
    assert!(tab.holds("!document.querySelector('#controls').checkVisibility()"));
}

#[test]
fn swatches_are_shown_as_other_eyes_see_them() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    for page in ["bench.html", "practice.html"] {
        tab.open(&format!("{}{page}", *SERVED));
        started(&mut tab);
        tab.value("(() => { const swatch = document.createElement('figure'); swatch.className = 'swatch'; \
                   swatch.append(document.createElementNS('http://www.w3.org/2000/svg', 'svg')); document.querySelector('main').append(swatch); })()");
        let filter = "getComputedStyle(document.querySelector('main > .swatch svg')).filter";
        assert_eq!(tab.text(filter), "none", "{page}");
        for eyes in ["deutan", "protan", "tritan"] {
            tab.value(&format!(
                "{{ const eyes = document.querySelector('#eyes'); eyes.value = {eyes:?}; eyes.dispatchEvent(new Event('input')); }}"
            ));
            assert!(tab.text(filter).contains(&format!("#eyes_{eyes}")), "{page}: {}", tab.text(filter));
            assert!(tab.holds(&format!("document.querySelector('filter#eyes_{eyes} feColorMatrix')")));
            assert!(tab.holds("!document.querySelector('#eyes_note').hidden"), "{page}");
        }
        tab.expect_quiet(&SERVED);
    }
}

/// A link that names a client puts them on the bench, with their old work and goal.
#[test]
fn a_client_of_the_gallery_is_on_the_bench() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.open(&format!("{}clients.html", *SERVED));
    let page = tab.text("document.querySelector('#tessaly a').href");
    tab.open(&page);
    let bench = tab.text("document.querySelector('#tessaly .to-bench a').href");
    tab.open(&bench);
    started(&mut tab);
    assert_eq!(tab.text("document.querySelector('#client').value"), "tessaly");
    assert!(tab.holds("document.querySelector('#bench_trouble').hidden"));
    assert!(tab.value("document.querySelectorAll('#old_list fieldset').length").as_u64() > Some(0));
    tab.expect_quiet(&SERVED);
}

/// Bottles that are meant for the site come first and begin the mix; the others say what they are meant for.
#[test]
fn bottles_for_the_site_come_first() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.open(&format!("{}bench.html", *SERVED));
    started(&mut tab);
    let rows = "[...document.querySelectorAll('.drop-row')].map((row) => row.dataset.bottle)";
    let as_made = tab.value(rows);
    let choose = |tab: &mut Tab, control: &str, value: &str| {
        tab.value(&format!(
            "{{ const control = document.querySelector('#{control}'); control.value = {value:?}; control.dispatchEvent(new Event('input')); }}"
        ));
    };
    let meant = "const site = document.querySelector('#site').value;
        const isMeant = (id) => { const { sites } = healedhueCourse.shelf.bottles.find((bottle) => bottle.id === id); return sites.length === 0 || sites.includes(site); };";
    let in_order = format!(
        "(() => {{ {meant} return [...document.querySelectorAll('.drops')].every((list) => {{
        const meant = [...list.children].map((row) => isMeant(row.dataset.bottle));
        const told = [...list.children].map((row) => !(row.querySelector('.drop-site')?.hidden ?? true));
        return meant.lastIndexOf(true) < (meant.indexOf(false) < 0 ? meant.length : meant.indexOf(false))
            && meant.every((fits, at) => !fits === told[at]);
    }}); }})()"
    );
    let mix_fits = format!(
        "(() => {{ {meant} return Object.keys(JSON.parse(document.querySelector('#request').textContent).mix).every(isMeant); }})()"
    );
    assert!(tab.holds(&in_order) && tab.holds(&mix_fits));
    let lip = tab.text("healedhueCourse.clients.find((client) => client.site === 'lip').id");
    choose(&mut tab, "client", &lip);
    tab.wait_until(RESTED);
    assert_eq!(tab.text("document.querySelector('#site').value"), "lip");
    assert!(tab.holds(&in_order), "{}", tab.value(rows));
    assert!(tab.holds(&mix_fits) && tab.holds("document.querySelector('.drop-line').open"));
    assert_ne!(tab.value(rows), as_made);
    assert!(tab.text("document.querySelector('#times .swatch').textContent").contains("lip"));
    choose(&mut tab, "site", "brow");
    tab.wait_until(RESTED);
    assert!(tab.holds(&in_order) && tab.holds(&mix_fits));
    assert_eq!(tab.value(rows), as_made);
    tab.expect_quiet(&SERVED);
}

/// A mix gives way only at a site it is not meant for, which is said, and is there again on the way back.
#[test]
fn a_mix_that_was_made_is_not_lost() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    let client = |tab: &mut Tab, site: &str, place: u32| {
        tab.text(&format!(
            "healedhueCourse.clients.filter((client) => client.site === '{site}' && client.existing.length === 0)[{place}].id"
        ))
    };
    let choose = |tab: &mut Tab, control: &str, value: &str| {
        tab.value(&format!(
            "{{ const control = document.querySelector('#{control}'); control.value = {value:?}; control.dispatchEvent(new Event('input')); }}"
        ));
    };
    let mix = "document.querySelector('#mix_now').textContent";
    let note = "document.querySelector('#mix_note').textContent";
    tab.open(&format!("{}bench.html#client=tessaly&mix=kelderwick~5,orrindale~1", *SERVED));
    started(&mut tab);
    let made = tab.text(mix);
    let brow = client(&mut tab, "brow", 1);
    choose(&mut tab, "client", &brow);
    assert_eq!((tab.text(mix), tab.text(note)), (made.clone(), String::new()), "the same site");
    let lip = client(&mut tab, "lip", 0);
    choose(&mut tab, "client", &lip);
    assert_ne!(tab.text(mix), made);
    let told = tab.text(note);
    assert!(told.to_lowercase().contains(&tab.text(mix).to_lowercase()), "{told}");
    choose(&mut tab, "client", &brow);
    assert_eq!(tab.text(mix), made, "back at its site");
    tab.value("document.querySelector('#mix_empty').click()");
    choose(&mut tab, "site", "lip");
    assert!(tab.holds("document.querySelector('.drop-line').open"), "bottles are in sight");
    tab.expect_quiet(&SERVED);
}
