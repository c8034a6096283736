//! On paper, A4 and Letter: no question and no swatch is cut by the end of a page, and no word lies outside of it.
//!
//! Where something begins and ends is found by words that are put there before the page is printed: out of the flow of the text, so that
//! nothing moves. `pdftotext` tells on which page each word came to lie.

use crate::chromium::Chromium;
use crate::pages::started;
use crate::site::{FOLDER, ONE_OF_EACH, PAPERS, SERVED, healedhue, on_disk, pages, place, text};
use crate::tab::Tab;
use serde_json::json;
use std::collections::BTreeMap;
use std::fs;
use std::process::Command;

const A4: (f64, f64) = (8.27, 11.69);
const LETTER: (f64, f64) = (8.5, 11.0);

/// What stays in one piece.
const WHOLE: &str = ".question, figure.swatch, .answer-grid .grid li, .exercise fieldset, .outcomes > li, .markdown-alert-caution, .entry, .bottle, tbody tr, .eyes";

/// Puts words at the begin and the end of each of them, and gives what they are.
fn mark(tab: &mut Tab) -> Vec<String> {
    tab.texts(&format!(
        "[...document.querySelectorAll({WHOLE:?})].filter((one) => one.checkVisibility()).map((one, at) => {{
            const word = (what) => {{
                const made = document.createElement('span');
                made.textContent = ` zz${{what}}${{at}}zz `;
                made.style.cssText = 'position: absolute !important; display: block !important; font: 2px/1 monospace; color: #888; float: none; padding: 0; margin: 0; border: 0; width: auto; min-width: 0';
                return made;
            }};
            const into = one.matches('tr') ? [one.firstElementChild, one.lastElementChild] : one.matches('figure') ? [one, one.querySelector('figcaption')] : [one, one];
            // The end is where the last text ends: below it, a page may well end.
            let last = into[1];
            for (;;) {{
                const below = [...last.childNodes].filter((node) => node.nodeType === Node.ELEMENT_NODE || node.textContent.trim()).at(-1);
                if (!(below instanceof HTMLElement) || !below.checkVisibility() || below.matches('input, select, button, br, img')) break;
                last = below;
            }}
            into[0].prepend(word('b'));
            last.append(word('e'));
            return one.textContent.trim().replace(/\\s+/g, ' ').slice(0, 100);
        }})"
    ))
}

/// A page of a PDF: its width, and the words on it with where they begin and end across.
struct Sheet {
    width: f64,
    words: Vec<(f64, f64, String)>,
}

fn sheets(pdf: &[u8], name: &str) -> Vec<Sheet> {
    let file = place(&format!("{}.pdf", name.replace('/', "-")));
    fs::write(&file, pdf).expect("a PDF");
    let output = Command::new("pdftotext").args(["-bbox", text(&file), "-"]).output();
    let output =
        output.unwrap_or_else(|error| panic!("pdftotext: {error}. Install Debian's package poppler-utils"));
    let told = String::from_utf8_lossy(&output.stdout);
    let number = |line: &str, name: &str| -> f64 {
        let (_, rest) = line.split_once(&format!("{name}=\"")).expect("a number");
        rest.split('"').next().expect("a number").parse().expect("a number")
    };
    let mut sheets = Vec::new();
    for line in told.lines().map(str::trim) {
        if line.starts_with("<page ") {
            sheets.push(Sheet { width: number(line, "width"), words: Vec::new() });
        } else if line.starts_with("<word ") {
            let word = line.split_once('>').expect("a word").1.trim_end_matches("</word>").to_owned();
            let sheet = sheets.last_mut().expect("a page");
            sheet.words.push((number(line, "xMin"), number(line, "xMax"), word));
        }
    }
    sheets
}

/// Prints what the tab shows, and tells what is cut or cut off.
fn amiss(tab: &mut Tab, page: &str, paper: (f64, f64)) -> Vec<String> {
    let marked = mark(tab);
    let size = if paper == A4 { "A4" } else { "Letter" };
    let sheets = sheets(&tab.printed(paper), &format!("{page}-{size}"));
    assert!(!sheets.is_empty(), "{page}: nothing is printed");
    let mut found: BTreeMap<String, usize> = BTreeMap::new();
    let mut amiss = Vec::new();
    for (at, sheet) in sheets.iter().enumerate() {
        for (left, right, word) in &sheet.words {
            if word.contains("zz") {
                found.insert(word.clone(), at + 1);
            } else if *left < 20.0 || *right > sheet.width - 20.0 {
                amiss.push(format!("{page} on {size}: `{word}` leaves page {}", at + 1));
            }
        }
    }
    let mut seen = 0;
    for (at, what) in marked.iter().enumerate() {
        let place = |which: &str| found.get(&format!("zz{which}{at}zz"));
        if let (Some(begin), Some(end)) = (place("b"), place("e")) {
            seen += 1;
            if begin != end {
                amiss.push(format!("{page} on {size}: cut between pages {begin} and {end}: {what}"));
            }
        }
    }
    // Some of what is marked is not printed; most is.
    assert!(2 * seen >= marked.len(), "{page} on {size}: only {seen} of {} were found", marked.len());
    amiss
}

fn expect_whole(addresses: impl Iterator<Item = (String, String)>) {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    let mut wrong = Vec::new();
    for (page, address) in addresses {
        for paper in [A4, LETTER] {
            tab.open(&address);
            wrong.extend(amiss(&mut tab, &page, paper));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

fn served(page: &str) -> (String, String) {
    (page.to_owned(), format!("{}{page}", *SERVED))
}

/// The words of the foot of a page, which stand on its last sheet with others.
#[test]
fn the_foot_of_a_page_is_never_alone_on_its_sheet() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    for page in [
        "bench.html#client=brisel",
        "bench.html#client=tessaly",
        "lessons/mixing-by-drops/counting-drops.html",
    ] {
        for paper in [A4, LETTER] {
            tab.open(&format!("{}{page}", *SERVED));
            started(&mut tab);
            if page.starts_with("bench") {
                tab.wait_until("document.querySelector('#best tbody tr')");
            }
            let foot = tab.text("document.querySelector('.foot').innerText").split_whitespace().count();
            let sheets = sheets(&tab.printed(paper), "foot");
            let last = sheets.last().expect("a sheet").words.len();
            assert!(last > foot + 10, "{page}: {last} words on the last sheet, {foot} of them the foot's");
        }
    }
}

/// Which eyes a printed bench is seen with.
#[test]
fn a_printed_bench_tells_which_eyes_see_it() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    tab.open(&format!("{}bench.html#client=brisel", *SERVED));
    started(&mut tab);
    let printed = |tab: &mut Tab| -> String {
        let sheets = sheets(&tab.printed(A4), "eyes");
        sheets.into_iter().flat_map(|sheet| sheet.words).map(|(_, _, word)| word + " ").collect()
    };
    assert!(!printed(&mut tab).contains("as seen by:"));
    for eyes in ["deutan", "tritan"] {
        tab.value(&format!("{{ const eyes = document.querySelector('#eyes'); eyes.value = {eyes:?}; eyes.dispatchEvent(new Event('input')); }}"));
        let name = tab.text("document.querySelector('#eyes').selectedOptions[0].textContent");
        let told = printed(&mut tab);
        assert!(told.contains(&format!("as seen by: {name}")), "{told}");
    }
}

#[test]
fn what_is_cut_is_seen() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    let (page, address) = served("worksheets/mixing-by-drops.html");
    // As if the style sheet let questions break anywhere; the page's policy allows no style of its own.
    tab.call("Page.setBypassCSP", json!({"enabled": true}));
    tab.open(&address);
    tab.value("document.head.insertAdjacentHTML('beforeend', '<style>* { break-inside: auto !important; break-after: auto !important }</style>')");
    assert!(amiss(&mut tab, &page, A4).iter().any(|told| told.contains("cut between")));
}

#[test]
fn no_worksheet_is_cut_by_the_end_of_a_page() {
    let sheets = pages(&FOLDER)
        .into_iter()
        .filter(|page| page.starts_with("worksheets/") && !page.ends_with("-key.html"));
    expect_whole(sheets.map(|page| served(&page)));
}

#[test]
fn no_paper_on_paper_is_cut_by_the_end_of_a_page() {
    let sheet = ("sheets-q1".to_owned(), on_disk(&PAPERS.join("sheets/q1.html")));
    expect_whole([sheet].into_iter());
}

/// The grid is handed in: all of it stands on the first page, of whatever paper of the demo.
#[test]
fn an_answer_grid_fits_the_first_page() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    let people = place("people-of-long-papers.csv");
    let long = "Tamsel Brook of a family whose name takes more than one line";
    fs::write(&people, format!("id,name\nq1,Orrin Vell\nq2,{long}\n")).expect("a register");
    // The most sections, and the most questions.
    for blueprint in ["practical", "rehearsal"] {
        let folder = place(&format!("papers-{blueprint}"));
        fs::remove_dir_all(&folder).ok();
        let register = ["--register", text(&people), "--out", text(&folder)];
        healedhue(&[&["paper", blueprint, "--seed", "3"], &register[..]].concat());
        for (person, paper) in ["q1", "q2"].into_iter().flat_map(|person| [(person, A4), (person, LETTER)]) {
            tab.open(&on_disk(&folder.join(format!("sheets/{person}.html"))));
            tab.value("document.querySelector('.asked .question').prepend(' zzasked ')");
            let numbers = tab.texts(
                "[...document.querySelectorAll('.answer-grid .grid li, .answer-grid > :last-child')].map((one, at) => {
                    const made = document.createElement('span');
                    made.textContent = ` zzgrid${at}zz `;
                    made.style.cssText = 'position: absolute; font: 2px/1 monospace';
                    one.append(made);
                    return made.textContent.trim();
                })",
            );
            let sheets = sheets(&tab.printed(paper), &format!("grid-{blueprint}-{person}"));
            let holds = |sheet: &Sheet, word: &str| sheet.words.iter().any(|(_, _, found)| found == word);
            let asked = sheets[0].words.iter().any(|(_, _, word)| word == "zzasked");
            assert!(!asked, "{blueprint}, {person}: the grid has its page to itself, to be handed in");
            let spilt: Vec<&String> = numbers.iter().filter(|word| !holds(&sheets[0], word)).collect();
            assert!(
                numbers.len() > 20 && spilt.is_empty(),
                "{blueprint}, {person}: {} of {} spill",
                spilt.len(),
                numbers.len()
            );
        }
    }
}

#[test]
fn no_page_of_a_kind_is_cut_by_the_end_of_a_page() {
    let computed = ["bench.html", "practice.html", "progress.html", "search.html"];
    expect_whole(ONE_OF_EACH.iter().filter(|page| !computed.contains(page)).map(|page| served(page)));
}

/// Paper is not wasted: what is asked fills the pages, of which the first has the head and the last the bottles.
#[test]
fn worksheets_are_packed() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    for page in ["mixing-by-drops", "choosing-for-the-client", "reading-a-residual", "lips"] {
        let (page, address) = served(&format!("worksheets/{page}.html"));
        tab.open(&address);
        let questions =
            tab.value("document.querySelectorAll('.question').length").as_u64().expect("a number");
        let pages = sheets(&tab.printed(A4), &format!("{page}-packed")).len() as u64;
        assert!(pages <= 2 + questions.div_ceil(4), "{page}: {questions} questions on {pages} pages");
    }
}
