//! The clients: all on one page while they are few, on pages by phototype where they are many; and from each to the bench.

use super::fixture::{DEMO, DEMO_SITE, built, pages, tiny};
use super::html::tags;
use std::collections::BTreeMap;

/// Where each client of the demo is shown: who has a card there.
fn shown() -> BTreeMap<String, String> {
    let mut shown = BTreeMap::new();
    for (path, html) in pages(&DEMO_SITE) {
        let cards = tags(&html).into_iter().filter(|tag| tag.get("class") == Some("client"));
        for id in cards.filter_map(|tag| tag.get("id").map(str::to_owned)) {
            assert!(shown.insert(id.clone(), path.clone()).is_none(), "{id} is shown twice");
        }
    }
    shown
}

#[test]
fn many_clients_are_on_pages_by_phototype_and_listed_on_one() {
    let (course, _) = &*DEMO;
    let shown = shown();
    let all = tags(&pages(&DEMO_SITE)["clients.html"]);
    for client in &course.clients {
        let path = format!("clients/{}.html", client.phototype.word());
        assert_eq!(shown.get(&client.id), Some(&path), "{}", client.id);
        assert!(all.iter().any(|tag| tag.get("id") == Some(&client.id)), "{} is listed", client.id);
        let link = format!("{path}#{}", client.id);
        assert!(all.iter().any(|tag| tag.get("href") == Some(&link)), "{} has a link", client.id);
    }
}

#[test]
fn few_clients_are_on_one_page() {
    let site = pages(&built(&tiny(str::to_owned)));
    assert!(site["clients.html"].contains("<section class=\"client\" id=\"wren\">"));
    assert!(!site.keys().any(|path| path.starts_with("clients/")));
}

#[test]
fn a_phototype_of_very_many_has_several_pages() {
    let (mut course, pools) = tiny(str::to_owned);
    let wren = course.clients[0].clone();
    course.clients.extend((0..40).map(|number| {
        let mut client = wren.clone();
        client.id = format!("wren-{number}");
        client
    }));
    let site = pages(&built(&(course, pools)));
    let parts: Vec<&String> = site.keys().filter(|path| path.starts_with("clients/")).collect();
    assert_eq!(parts.len(), 3, "{parts:?}");
    let cards: usize =
        parts.iter().map(|path| site[*path].matches("<section class=\"client\"").count()).sum();
    assert_eq!(cards, 41);
    let last = parts.iter().find(|path| site[**path].contains("id=\"wren-39\"")).unwrap();
    assert!(site["clients.html"].contains(&format!("href=\"{last}#wren-39\"")), "{last}");
}

#[test]
fn every_client_leads_to_the_bench() {
    let pages = pages(&DEMO_SITE);
    for (client, path) in shown() {
        let link = format!("../bench.html#client={client}");
        assert!(tags(&pages[&path]).iter().any(|tag| tag.get("href") == Some(&link)), "{client}");
    }
}

/// What an exercise or a row of swatches is about stands on the bench: everything in the address is something that the bench knows.
#[test]
fn lessons_lead_to_the_bench_with_their_cases() {
    let (course, _) = &*DEMO;
    let mut mixes = 0;
    for (path, html) in pages(&DEMO_SITE).iter().filter(|(path, _)| path.starts_with("lessons/")) {
        for tag in tags(html) {
            let Some((_, case)) = tag.get("href").and_then(|link| link.split_once("bench.html#")) else {
                continue;
            };
            for (name, value) in case.split('&').map(|part| part.split_once('=').expect("a name and a value"))
            {
                let known = match name {
                    "client" => course.client(value).is_some(),
                    "goal" => course.goal(value).is_some(),
                    "mix" => value.split(',').all(|part| {
                        let (bottle, drops) = part.split_once('~').expect("a bottle and drops");
                        course.shelf.bottle(bottle).is_some() && drops.parse::<u32>().is_ok()
                    }),
                    "technique" => ["both", "strokes", "powder"].contains(&value),
                    "placement" => value.split(',').filter(|part| part.parse::<f64>().is_ok()).count() == 4,
                    "old" => value == "none",
                    "months" => ["0", "12", "24", "36"].contains(&value),
                    "light" => ["A", "LED-B3", "FL2"].contains(&value),
                    _ => false,
                };
                assert!(known, "{path}: {name}={value}");
                mixes += usize::from(name == "mix");
            }
        }
    }
    assert!(mixes > 10, "{mixes} rows of swatches lead to the bench");
}
