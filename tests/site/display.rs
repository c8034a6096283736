//! The check of a screen says how many colours it speaks of, and shows the steps it names.

use super::fixture::{DEMO, DEMO_SITE, pages};
use super::html::decoded;

#[test]
fn every_bottle_on_every_client_is_counted() {
    let (course, _) = &*DEMO;
    let page = decoded(&pages(&DEMO_SITE)["display.html"]);
    let healed = course.shelf.bottles.len() * course.clients.len();
    assert!(page.contains(&format!("of the {healed} healed colours")), "{healed}");
    assert!(page.contains(&format!("Of the {} bottles", course.shelf.bottles.len())));
}

/// The distances below the patches are those of the colours the screen gets: no farther from the steps of 1, 2, 4 and 8 than
/// rounding to 8 bits takes them.
#[test]
fn steps_on_skin_are_as_far_apart_as_meant() {
    let page = &pages(&DEMO_SITE)["display.html"];
    let told: Vec<f64> = page
        .split("<p class=\"steps-words\">")
        .skip(1)
        .filter(|line| line.contains("ΔE00"))
        .flat_map(|line| line.split("</p>").next().unwrap().split("ΔE00 ").skip(1))
        .map(|rest| rest.trim_end_matches(['.', ',', ' ']).split(',').next().unwrap().parse().unwrap())
        .collect();
    assert_eq!(told.len(), 12, "four steps on three skins");
    for (place, told) in told.iter().enumerate() {
        let meant = [1.0, 2.0, 4.0, 8.0][place % 4];
        assert!((told - meant).abs() <= 0.5, "{told} for {meant}");
    }
}
