//! Every page at the width of a phone and of a desk: nothing is cut off, nothing goes wrong, nothing leaves the machine.

use crate::chromium::Chromium;
use crate::site::{ASSIGNED, FOLDER, PAPERS, SERVED, on_disk, pages};
use crate::tab::Tab;
use std::fs;
use std::path::PathBuf;

/// What sticks out of the page at its side. Whatever scrolls by itself may hold more than fits.
const STICKS_OUT: &str = "(() => {
    const wide = document.documentElement.scrollWidth;
    if (wide <= innerWidth) return [];
    const out = [...document.body.querySelectorAll('*')].filter((one) => one.getBoundingClientRect().right > innerWidth + 1);
    return [`${wide} px of ${innerWidth}`, ...out.slice(0, 3).map((one) => one.outerHTML.slice(0, 160))];
})()";

/// Waits until a page with an engine has started it.
pub fn started(tab: &mut Tab) {
    tab.wait_until("!document.querySelector('#bench_wait:not([hidden]), #practice_wait:not([hidden])')");
}

/// Every page's address: of the site on its server, of papers and assignments on the disk.
pub fn all_pages() -> Vec<(String, String)> {
    let served = pages(&FOLDER).into_iter().map(|page| (format!("{}{page}", *SERVED), SERVED.clone()));
    let of_folder = |folder: &'static std::path::Path| {
        let top = on_disk(folder) + "/";
        pages(folder).into_iter().map(move |page| (on_disk(&folder.join(page)), top.clone()))
    };
    served.chain(of_folder(&PAPERS)).chain(of_folder(&ASSIGNED)).collect()
}

/// Keeps pictures of what the tab shows, for somebody to look at, where the environment names a folder for them.
fn look(tab: &mut Tab, page: &str, width: u32) {
    let Some(folder) = std::env::var_os("HEALEDHUE_SCREENSHOTS").map(PathBuf::from) else { return };
    fs::create_dir_all(&folder).expect("a folder for pictures");
    let name = format!("{}-{width}.png", page.trim_end_matches(".html").replace('/', "-"));
    fs::write(folder.join(name), tab.picture()).expect("a picture");
}

#[test]
fn no_page_is_wider_than_its_screen() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    let mut wrong = Vec::new();
    for (address, site) in all_pages() {
        tab.width(1280);
        tab.open(&address);
        started(&mut tab);
        // 320 is 1280 at four times the size (WCAG 2.2, 1.4.10), 640 the same at twice the size.
        for width in [1280, 640, 390, 320] {
            tab.width(width);
            if [1280, 390].contains(&width) {
                look(&mut tab, address.strip_prefix(&site).expect("a page of the site"), width);
            }
            let out = tab.texts(STICKS_OUT);
            if !out.is_empty() {
                wrong.push(format!("{address} at {width}: {out:?}"));
            }
        }
        tab.expect_quiet(&site);
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn every_page_opens_from_a_disk() {
    let mut chromium = Chromium::start();
    let mut tab = chromium.fresh_tab();
    let top = on_disk(&FOLDER) + "/";
    for page in pages(&FOLDER) {
        tab.open(&on_disk(&FOLDER.join(&page)));
        started(&mut tab);
        assert!(tab.holds("document.querySelector('h1').checkVisibility()"), "{page}");
        let broken = tab.texts(
            "[...document.images].filter((image) => image.naturalWidth === 0).map((image) => image.src)",
        );
        assert_eq!(broken, Vec::<String>::new(), "{page}");
        tab.expect_quiet(&top);
    }
    for page in ["bench.html", "practice.html"] {
        tab.open(&on_disk(&FOLDER.join(page)));
        started(&mut tab);
        let engine = "document.querySelector('#bench, #practice').checkVisibility()";
        assert!(tab.holds(engine), "{page} computes from a disk");
    }
}
