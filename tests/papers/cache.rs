//! Kept proofs: they save time, and change nothing.

use super::fixture::output;
use crate::demo::course;
use crate::loading::fixture::Fixture;
use assert_cmd::Command;
use healedhue::exercise::{Proofs, generate};
use std::fs;

/// Drills of different families, with few clients.
const DRILLS: [&str; 4] = ["first-bottle", "count-the-drops", "too-warm", "every-door"];

#[test]
fn exercises_are_the_same_with_and_without_kept_proofs() {
    let course = course();
    let proofs = Proofs::none();
    let make = |proofs: &Proofs| -> Vec<String> {
        DRILLS
            .iter()
            .flat_map(|id| {
                let (lesson, drill) = course.drill(id).expect("a drill of the demo");
                (40..43).map(move |number| format!("{:?}", proofs.generate(course, lesson, drill, number)))
            })
            .collect()
    };
    let cold = make(&proofs);
    for (at, id) in DRILLS.iter().enumerate() {
        let (lesson, drill) = course.drill(id).expect("a drill of the demo");
        assert_eq!(cold[3 * at], format!("{:?}", generate(course, lesson, drill, 40)));
    }
    assert!(proofs.has_grown());
    let bytes = proofs.to_bytes();
    let kept = Proofs::read(&bytes);
    assert_eq!(kept.len(), 12);
    assert_eq!(make(&kept), cold);
    assert!(!kept.has_grown(), "nothing was proved again");
    // Damaged, cut short, of another engine or form: as if nothing had been kept.
    let text = String::from_utf8(bytes.clone()).unwrap();
    let changed = [
        bytes[..bytes.len() - 1].to_vec(),
        text.replacen("\"draw\":0", "\"draw\":9", 1).into_bytes(),
        text.replacen(healedhue::exercise::engine_version(), "00", 1).into_bytes(),
        text.replacen("healedhue-proofs-1", "healedhue-proofs-0", 1).into_bytes(),
        b"\xff\xfe nonsense".to_vec(),
        Vec::new(),
    ];
    for damaged in changed {
        assert_ne!(damaged, bytes);
        assert!(
            Proofs::read(&damaged).is_empty(),
            "{:?}",
            String::from_utf8_lossy(&damaged[..20.min(damaged.len())])
        );
    }
}

#[test]
fn proofs_hold_for_exactly_the_content_they_were_made_for() {
    let course = course();
    let (lesson, drill) = course.drill("first-bottle").expect("a drill of the demo");
    let proofs = Proofs::none();
    proofs.generate(course, lesson, drill, 40).expect("an exercise");
    let uses_kept = |course: &healedhue::course::Course, id: &str| {
        let kept = Proofs::read(&proofs.to_bytes());
        let (lesson, drill) = course.drill(id).expect("the drill");
        let made = kept.generate(course, lesson, drill, 40);
        assert_eq!(format!("{made:?}"), format!("{:?}", generate(course, lesson, drill, 40)));
        !kept.has_grown()
    };
    assert!(uses_kept(course, "first-bottle"));
    // What the drill does not depend on.
    let mut other = course.clone();
    other.version = "another".into();
    other.terms.clear();
    other.clients.retain(|client| drill.clients.contains(&client.id) || client.id == "gaura");
    other.clients.iter_mut().find(|client| client.id == "gaura").expect("a client").age += 1;
    other.shelf.lines.clear();
    assert!(uses_kept(&other, "first-bottle"));
    // What it does.
    let changes: [&dyn Fn(&mut healedhue::course::Course); 7] = [
        &|course| course.seed += 1,
        &|course| course.clients.iter_mut().for_each(|client| client.skin.blood *= 1.001),
        &|course| course.goals.iter_mut().for_each(|goal| goal.tolerance += 0.1),
        &|course| course.shelf.colourants[0].half_life_months += 1.0,
        &|course| course.shelf.bottles.iter_mut().for_each(|bottle| bottle.recipe[0].1 *= 1.01),
        &|course| {
            // What loading a course with another bottle for the clients' site comes to.
            let drills = course.modules.iter_mut().flat_map(|m| &mut m.lessons).flat_map(|l| &mut l.drills);
            drills.for_each(|d| _ = d.limits.bottles.pop());
        },
        &|course| {
            course
                .modules
                .iter_mut()
                .flat_map(|m| &mut m.lessons)
                .flat_map(|l| &mut l.drills)
                .for_each(|d| d.margin += 0.1)
        },
    ];
    for (at, change) in changes.iter().enumerate() {
        let mut changed = course.clone();
        change(&mut changed);
        assert!(!uses_kept(&changed, "first-bottle"), "change {at}");
    }
}

/// The minimal course with a goal that its bottles reach, and the drill that chooses among them.
pub fn provable() -> Fixture {
    let correcting = "lessons/first-steps/correcting";
    let drills = fs::read_to_string(Fixture::minimal().path(&format!("{correcting}.yaml"))).unwrap();
    let drills = &drills[drills.find("drills:").expect("a drill")..];
    Fixture::minimal()
        .replace("lessons/goals.yaml", "lab: [46, 8.5, 14]", "lab: [55, 22, 17]")
        .replace("lessons/goals.yaml", "tolerance: 4.0", "tolerance: 1.5")
        .replace("lessons/first-steps/choosing.yaml", "margin: 3.0", "margin: 1.5")
        .replace("lessons/first-steps/choosing.yaml", "options: 3", "options: 2")
        .replace(&format!("{correcting}.yaml"), drills, "")
        .replace(&format!("{correcting}.md"), "```drill\nold-brows\n```\n", "")
}

/// The site of a small course: proved, from kept proofs, and beside a damaged cache.
#[test]
fn a_build_gives_the_same_bytes_with_any_cache() {
    let course = provable();
    let folder = tempfile::tempdir().unwrap();
    let build = || {
        let out = folder.path().join("public");
        let mut command = Command::cargo_bin("healedhue").unwrap();
        output(command.args(["build", "--course"]).arg(course.path("")).arg("--out").arg(&out));
        crate::site::files(&out)
    };
    let cold = build();
    let cache = course.path(".healedhue/proofs");
    let kept = fs::read(&cache).expect("proofs are kept in the course's folder");
    assert!(Proofs::read(&kept).len() >= 2, "exercises were proved");
    assert!(build() == cold, "from kept proofs");
    assert_eq!(fs::read(&cache).unwrap(), kept);
    fs::write(&cache, &kept[..kept.len() / 2]).unwrap();
    assert!(build() == cold, "beside a damaged cache");
    assert_eq!(fs::read(&cache).unwrap(), kept, "which is mended");
}
