//! What the bench takes along of a course: its shelf for the engine, its people, goals and the shapes it draws.

use super::{SKIN_SLIDERS, Technique, techniques};
use crate::course::{Client, Course, OldWork};
use crate::foresee::Existing;
use crate::pigment::{Mix, Paint, Shelf};
use crate::render::drawing::{Manner, SURROUND, shapes};
use crate::render::exercise::health_views;
use crate::render::plain::skin_words;
use crate::render::plan;
use crate::skin::{Phototype, Redness, Site, Undertone};
use serde::Serialize;
use std::collections::BTreeMap;

/// Everything, as `healedhueCourse` in the page.
#[derive(Serialize)]
pub(super) struct BenchCourse<'c> {
    shelf: &'c Shelf,
    /// Ids of bottles that hold something restricted.
    restricted: Vec<&'c str>,
    clients: Vec<Person<'c>>,
    goals: Vec<Wish<'c>>,
    techniques: [Technique; 3],
    surround: &'static str,
    /// Paths by site and manner.
    drawings: BTreeMap<&'static str, BTreeMap<&'static str, &'static [&'static str]>>,
    skin_sliders: BTreeMap<&'static str, [f64; 2]>,
    /// Words of bare skin with the least L* of each.
    skin_words: Vec<(f64, String)>,
}

#[derive(Serialize)]
struct Person<'c> {
    id: &'c str,
    name: &'c str,
    about: &'c str,
    wish: &'c str,
    phototype: Phototype,
    undertone: Undertone,
    redness: Redness,
    scar: bool,
    site: Site,
    goal: &'c str,
    existing: Vec<Old<'c>>,
    health: Vec<Health>,
}

/// Older work: what the engine is asked about it, and what the client tells.
#[derive(Serialize)]
struct Old<'c> {
    work: Existing,
    note: &'c str,
}

/// A health answer with the caution it raises.
#[derive(Serialize)]
struct Health {
    note: String,
    caution: String,
    href: String,
}

#[derive(Serialize)]
struct Wish<'c> {
    id: &'c str,
    name: &'c str,
    lab: [f64; 3],
    tolerance: f64,
}

impl<'c> BenchCourse<'c> {
    /// What a course's bench takes along.
    pub fn of(course: &'c Course) -> Self {
        let shelf = &course.shelf;
        let manners = [("strokes", Manner::Strokes), ("powder", Manner::Powder), ("both", Manner::Both)];
        BenchCourse {
            shelf,
            restricted: shelf
                .bottles
                .iter()
                .filter(|bottle| !shelf.restrictions_in(&bottle.recipe).is_empty())
                .map(|bottle| bottle.id.as_str())
                .collect(),
            clients: course.clients.iter().map(|client| Person::of(course, client)).collect(),
            goals: course
                .goals
                .iter()
                .map(|goal| Wish {
                    id: &goal.id,
                    name: &goal.name,
                    lab: [goal.lab.l, goal.lab.a, goal.lab.b],
                    tolerance: goal.tolerance,
                })
                .collect(),
            techniques: techniques(),
            surround: SURROUND,
            drawings: Site::ALL
                .iter()
                .map(|&(site, word)| {
                    (word, manners.iter().map(|&(name, manner)| (name, shapes(site, manner))).collect())
                })
                .collect(),
            skin_sliders: SKIN_SLIDERS
                .iter()
                .map(|&(name, least, quantity)| (name, [least.max(quantity.least), quantity.most]))
                .collect(),
            skin_words: skin_words(&course.language),
        }
    }
}

impl<'c> Person<'c> {
    fn of(course: &'c Course, client: &'c Client) -> Self {
        let health = health_views(course, client, plan::BENCH).into_iter();
        Person {
            id: &client.id,
            name: &client.name,
            about: &client.about,
            wish: &client.wish,
            phototype: client.phototype,
            undertone: client.undertone,
            redness: client.redness,
            scar: client.scar,
            site: client.site,
            goal: &client.goal,
            existing: client.existing.iter().map(|old| Old::of(&course.shelf, old)).collect(),
            health: health
                .filter_map(|view| {
                    let caution = view.caution?;
                    Some(Health { note: view.note, caution: caution.text, href: caution.href })
                })
                .collect(),
        }
    }
}

impl<'c> Old<'c> {
    fn of(shelf: &Shelf, old: &'c OldWork) -> Self {
        let drops = |mix: &Mix| mix.drops().map(|(bottle, drops)| (bottle.to_owned(), drops)).collect();
        let amounts = |paint: &Paint| {
            paint.iter().map(|&(place, amount)| (shelf.colourants[place].id.clone(), amount)).collect()
        };
        let mix = old.mix.as_ref().map(drops);
        let colourants = if mix.is_none() { Some(amounts(&old.work.paint)) } else { None };
        let work = Existing { mix, colourants, placement: old.placement, months: old.work.months };
        Old { work, note: &old.note }
    }
}
