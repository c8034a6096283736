//! Time: fading, wear, touch-ups and many works, at the library's edge and through the program.

use crate::demo::course;
use healedhue::colour::{Lab, Light, Spectrum, difference};
use healedhue::foresee::{Event, Moment, Request, UnderLight};
use healedhue::healing::{
    Aftercare, EXACT_WORKS, HEALED_MONTHS, MOST_WORKS, Oil, Placement, Scene, Sun, TouchUp, Upkeep, Wear,
    Work, retention,
};
use healedhue::pigment::{Mix, Paint};
use healedhue::skin::{Phototype, Redness, Site, Skin, Undertone};
use proptest::prelude::*;

fn skin(phototype: Phototype) -> Skin {
    Skin::from_evidence(phototype, Undertone::Neutral, Redness::Calm)
}

fn recipe(bottle: &str) -> Paint {
    course().shelf.bottle(bottle).expect("the bottle is on the shelf").recipe.clone()
}

fn lab(reflectance: Spectrum) -> Lab {
    Light::D65.lab_of(&reflectance)
}

fn any_wear() -> impl Strategy<Value = Wear> {
    (0..3usize, 0..3usize, 0..2usize).prop_map(|(sun, oil, aftercare)| Wear {
        sun: Sun::ALL[sun].0,
        oil: Oil::ALL[oil].0,
        aftercare: Aftercare::ALL[aftercare].0,
    })
}

fn any_placement() -> impl Strategy<Value = Placement> {
    (0.0..0.6f64, 0.02..0.6f64, 0.05..1.5f64, 0.05..1.0f64).prop_map(
        |(depth_mm, thickness_mm, load, coverage)| Placement { depth_mm, thickness_mm, load, coverage },
    )
}

fn any_upkeep() -> impl Strategy<Value = Upkeep> {
    let touch_up = (0.0..40.0f64, 0..17usize, any_placement()).prop_map(|(months, bottle, placement)| {
        TouchUp { months, paint: course().shelf.bottles[bottle].recipe.clone(), placement }
    });
    (any_wear(), prop::collection::vec(touch_up, 0..3))
        .prop_map(|(wear, touch_ups)| Upkeep { wear, touch_ups })
}

fn seen(skin: &Skin, paint: &Paint, placement: &Placement, upkeep: &Upkeep, months: f64) -> (Lab, Lab) {
    let scene = Scene::<4>::kept(&course().shelf, skin, Site::Brow, &[], upkeep, months);
    (lab(scene.bare()), lab(scene.with(paint, placement)))
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 256, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn prop_every_colourant_fades_under_every_wear(
        colourant in 0..16usize, wear in any_wear(), depth in 0.0..3.0f64, early in 0.0..300.0f64, later in 0.001..300.0f64,
    ) {
        let colourant = &course().shelf.colourants[colourant];
        let left = |months| wear.retention(colourant, depth, months);
        prop_assert!(left(early + later) < left(early));
        prop_assert!(left(0.0) == 1.0 && left(early) > 0.0);
    }

    #[test]
    fn prop_everyday_wear_is_time_alone(colourant in 0..16usize, depth in 0.0..3.0f64, months in 0.0..600.0f64) {
        let colourant = &course().shelf.colourants[colourant];
        prop_assert_eq!(Wear::default().retention(colourant, depth, months), retention(colourant, months));
    }

    #[test]
    fn prop_harder_wear_and_shallower_work_leave_less(
        colourant in 0..16usize, depth in 0.0..2.0f64, months in 0.01..300.0f64,
    ) {
        let colourant = &course().shelf.colourants[colourant];
        let left = |wear: Wear, depth| wear.retention(colourant, depth, months);
        let usual = Wear::default();
        for harder in [
            Wear { sun: Sun::Outdoors, ..usual }, Wear { oil: Oil::Oily, ..usual }, Wear { aftercare: Aftercare::Neglected, ..usual },
        ] {
            prop_assert!(left(harder, depth) < left(usual, depth));
            prop_assert!(left(harder, depth) < left(harder, depth + 0.1));
        }
        for kinder in [Wear { sun: Sun::Sheltered, ..usual }, Wear { oil: Oil::Dry, ..usual }] {
            prop_assert!(left(kinder, depth) > left(usual, depth));
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 96, failure_persistence: None, ..ProptestConfig::default() })]

    /// Seen, too: once healed, work of one colourant only comes nearer to the skin.
    #[test]
    fn prop_healed_work_of_one_colourant_comes_nearer_to_the_skin(
        colourant in 0..16usize, phototype in 0..6usize, wear in any_wear(), early in 1.5..120.0f64, later in 3.0..120.0f64,
    ) {
        // Wandering changes the hue on its way, so carbon and the other fine ones are left to the amounts above.
        prop_assume!(course().shelf.colourants[colourant].drift_mm == 0.0);
        let (skin, upkeep) = (skin(Phototype::ALL[phototype].0), Upkeep::wear(wear));
        let spectra = |months: f64| {
            let scene = Scene::<4>::kept(&course().shelf, &skin, Site::Brow, &[], &upkeep, months);
            (scene.bare(), scene.with(&vec![(colourant, 0.5)], &Placement::default()))
        };
        let ((bare, one), (_, other)) = (spectra(early), spectra(early + later));
        let off = |seen: &Spectrum| seen.iter().zip(&bare).map(|(a, b)| (a - b) * (a - b)).sum::<f64>();
        // White on deep skin can pass through bare skin's darkness band by band; everything else only nears it.
        prop_assert!(off(&other) <= off(&one) * 1.02 + 1e-7, "{} {}", off(&one), off(&other));
    }

    #[test]
    fn prop_no_coverage_and_no_load_show_bare_skin_exactly(
        phototype in 0..6usize, bottle in 0..17usize, placement in any_placement(), upkeep in any_upkeep(), months in 0.0..60.0f64,
    ) {
        let skin = skin(Phototype::ALL[phototype].0);
        for nothing in [Placement { coverage: 0.0, ..placement }, Placement { load: 0.0, ..placement }] {
            let touch_ups = upkeep.touch_ups.iter().map(|one| TouchUp { placement: nothing, ..one.clone() }).collect();
            let upkeep = Upkeep { touch_ups, ..upkeep };
            // Many works of nothing are nothing, too.
            let work = Work { paint: course().shelf.bottles[bottle].recipe.clone(), placement: nothing, months };
            for works in [0, 3, MOST_WORKS] {
                let existing = vec![work.clone(); works];
                let scene = Scene::<4>::kept(&course().shelf, &skin, Site::Brow, &existing, &upkeep, months);
                prop_assert_eq!(scene.with(&work.paint, &nothing), scene.bare());
            }
        }
    }

    #[test]
    fn prop_a_small_change_of_anything_is_a_small_change_of_colour(
        phototype in 0..6usize, bottle in 0..17usize, placement in any_placement(), upkeep in any_upkeep(),
        months in prop_oneof![0.0..60.0f64, 1.4999..1.5001f64], at_epidermis in any::<bool>(),
    ) {
        // Half of the tries begin where the epidermis ends, the other half may begin anywhere.
        let placement = if at_epidermis { Placement { depth_mm: Site::Brow.epidermis_mm(), ..placement } } else { placement };
        // At the moment of a touch-up the colour jumps, as it does on the day.
        prop_assume!(upkeep.touch_ups.iter().all(|touch_up| (touch_up.months - months).abs() > 1e-3));
        let (skin, paint) = (skin(Phototype::ALL[phototype].0), course().shelf.bottles[bottle].recipe.clone());
        let (_, start) = seen(&skin, &paint, &placement, &upkeep, months);
        let step = 1e-5;
        let moved = |change: &dyn Fn(&mut Placement)| {
            let mut near = placement;
            change(&mut near);
            seen(&skin, &paint, &near, &upkeep, months).1
        };
        let mut near = vec![
            ("depth", moved(&|place| place.depth_mm += step)),
            ("depth, less", moved(&|place| place.depth_mm = (place.depth_mm - step).max(0.0))),
            ("thickness", moved(&|place| place.thickness_mm += step)),
            ("load", moved(&|place| place.load += step)),
            ("coverage", moved(&|place| place.coverage -= step)),
            ("months", seen(&skin, &paint, &placement, &upkeep, months + step).1),
            ("months, less", seen(&skin, &paint, &placement, &upkeep, (months - step).max(0.0)).1),
        ];
        for i in 0..upkeep.touch_ups.len() {
            let moved = |change: &dyn Fn(&mut TouchUp)| {
                let mut near = upkeep.clone();
                change(&mut near.touch_ups[i]);
                seen(&skin, &paint, &placement, &near, months).1
            };
            near.push(("touch-up's month", moved(&|one| one.months += step)));
            near.push(("touch-up's depth", moved(&|one| one.placement.depth_mm += step)));
            near.push(("touch-up's load", moved(&|one| one.placement.load += step)));
            near.push(("touch-up's coverage", moved(&|one| one.placement.coverage -= step)));
        }
        for (what, colour) in near {
            // The steepest slopes met are near 1000 a unit (depth of black, in mm): 0.01 for a step; 0.05 cannot be seen.
            let off = difference(start, colour);
            prop_assert!(off < 0.05, "{}: {}", what, off);
        }
    }

    /// Old under new is not new under old; on the deepest skin the difference is least, 0.1 ΔE00 after three years.
    #[test]
    fn prop_the_order_of_placements_matters(phototype in 0..6usize, years in 3.0..8.0f64) {
        let skin = skin(Phototype::ALL[phototype].0);
        let (red, black) = (recipe("emberlow"), recipe("gloamhurst"));
        let after = |first: &Paint, second: &Paint| {
            let touch_up = TouchUp { months: 12.0 * years, paint: second.clone(), placement: Placement::default() };
            let upkeep = Upkeep { touch_ups: vec![touch_up], ..Upkeep::default() };
            seen(&skin, first, &Placement::default(), &upkeep, 12.0 * years + HEALED_MONTHS).1
        };
        prop_assert!(difference(after(&red, &black), after(&black, &red)) > 0.05);
    }
}

/// Just before a touch-up the colour is what time had made of the work, just after it the fresh one; both sides are limits.
#[test]
fn the_colour_jumps_at_a_touch_up_and_nowhere_beside_it() {
    let (skin, paint) = (skin(Phototype::II), recipe("kelderwick"));
    let touch_up = TouchUp { months: 18.0, paint: recipe("dunmere"), placement: Placement::default() };
    let upkeep = Upkeep { touch_ups: vec![touch_up], ..Upkeep::default() };
    let at = |upkeep: &Upkeep, months| seen(&skin, &paint, &Placement::default(), upkeep, months).1;
    let (before, after) = (at(&upkeep.before(18.0), 18.0), at(&upkeep, 18.0));
    assert!(difference(before, after) > 3.0);
    assert!(difference(before, at(&upkeep, 18.0 - 1e-6)) < 0.01);
    assert!(difference(after, at(&upkeep, 18.0 + 1e-6)) < 0.01);
    // The same placements as existing work and new work: a touch-up is a placement like any other.
    let old = [Work { paint: paint.clone(), placement: Placement::default(), months: 18.0 }];
    let scene = Scene::new(&course().shelf, &skin, Site::Brow, &old, 6.0);
    let as_new = lab(scene.with(&recipe("dunmere"), &Placement::default()));
    assert!(difference(as_new, at(&upkeep, 24.0)) < 1e-6);
}

/// Reflectances side by side as the engine mixes them: Yule and Nielsen, n = 2.
fn mixed(parts: &[(f64, Spectrum)]) -> Spectrum {
    std::array::from_fn(|band| {
        let root: f64 = parts.iter().map(|(share, r)| share * libm::sqrt(r[band])).sum();
        root * root
    })
}

/// What is seen of works that overlap by chance: every combination of them solved for itself, as works that cover everything.
fn one_by_one(works: &[Work], see: impl Fn(&[Work]) -> Spectrum) -> Spectrum {
    let combination = |chosen: usize| {
        let mut share = 1.0;
        let mut present = Vec::new();
        for (i, work) in works.iter().enumerate() {
            let here = chosen >> i & 1 == 1;
            share *= if here { work.placement.coverage } else { 1.0 - work.placement.coverage };
            if here {
                let placement = Placement { coverage: 1.0, ..work.placement };
                present.push(Work { placement, ..work.clone() });
            }
        }
        (share, see(&present))
    };
    mixed(&(0..1_usize << works.len()).map(combination).collect::<Vec<_>>())
}

/// Works whose ends lie above, within and below each other, alone and with a new one among them, on the day and later: whatever their
/// combinations have in common.
#[test]
fn works_that_overlap_are_seen_as_every_combination_of_them() {
    let skin = skin(Phototype::III);
    let shelf = &course().shelf;
    let work = |bottle: &str, depth_mm, thickness_mm, months| Work {
        paint: recipe(bottle),
        placement: Placement { depth_mm, thickness_mm, load: 0.6, coverage: 0.7 },
        months,
    };
    let works = [
        work("kelderwick", 0.15, 0.3, 24.0),
        work("dunmere", 0.25, 0.3, 0.5),
        work("wexcombe", 0.02, 0.2, 48.0),
        work("corrick", 0.15, 0.45, 60.0),
    ];
    let mix = Mix::new([("emberlow".to_owned(), 2), ("kelderwick".to_owned(), 1)]);
    let mix = Work { paint: shelf.paint_of(&mix), ..works[0].clone() };
    for depth_mm in [0.01, 0.12, 0.3, 0.7] {
        for months in [0.0, 1.5, 36.0] {
            let place = Placement { depth_mm, ..mix.placement };
            let whole = Placement { coverage: 1.0, ..place };
            let scene = |works: &[Work]| Scene::new(shelf, &skin, Site::Brow, works, months);
            let alone = one_by_one(&works, |present| scene(present).existing());
            let covered = one_by_one(&works, |present| scene(present).with(&mix.paint, &whole));
            let expected = mixed(&[(1.0 - place.coverage, alone), (place.coverage, covered)]);
            let scene = scene(&works);
            for (seen, expected) in [(scene.with(&mix.paint, &place), expected), (scene.existing(), alone)] {
                let off = seen.iter().zip(&expected).map(|(one, other)| (one - other).abs());
                // Sums of the same numbers, rounded in another order.
                assert!(off.fold(0.0, f64::max) < 1e-14, "at {depth_mm} mm after {months} months");
            }
        }
    }
}

/// Eight works of usual loads and coverages: the mean over pairs against all 256 combinations, which are solved one by one as works that
/// cover everything.
#[test]
fn many_works_agree_with_every_combination_of_them() {
    let bottles = [
        "kelderwick",
        "netherquill",
        "emberlow",
        "corrick",
        "frostwick",
        "palewater",
        "wexcombe",
        "lanthorpe",
    ];
    let mut worst: f64 = 0.0;
    for phototype in [Phototype::I, Phototype::III, Phototype::V] {
        let skin = skin(phototype);
        let works: Vec<Work> = bottles
            .iter()
            .enumerate()
            .map(|(i, bottle)| Work {
                paint: recipe(bottle),
                placement: Placement {
                    depth_mm: 0.1 + 0.04 * i as f64,
                    load: 0.5,
                    coverage: 0.55 + 0.05 * i as f64,
                    ..Placement::default()
                },
                months: 96.0 - 10.0 * i as f64,
            })
            .collect();
        assert!(works.len() > EXACT_WORKS);
        let exact = one_by_one(&works, |present| {
            Scene::today(&course().shelf, &skin, Site::Brow, present).existing()
        });
        let exact = lab(exact);
        let found = lab(Scene::today(&course().shelf, &skin, Site::Brow, &works).existing());
        worst = worst.max(difference(exact, found));
    }
    // 0.1 ΔE00 is a tenth of what can be seen; it is also promised where the mean is taken.
    assert!(worst < 0.1, "{worst}");
}

#[test]
fn a_work_that_covers_nothing_changes_nothing_among_many() {
    let skin = skin(Phototype::III);
    let work = |bottle: &str, coverage| Work {
        paint: recipe(bottle),
        placement: Placement { coverage, load: 0.4, ..Placement::default() },
        months: 60.0,
    };
    let mut works: Vec<Work> =
        ["kelderwick", "netherquill", "emberlow", "corrick", "frostwick", "wexcombe", "lanthorpe"]
            .map(|b| work(b, 0.8))
            .into();
    let without = Scene::today(&course().shelf, &skin, Site::Brow, &works).existing();
    works.push(work("palewater", 0.0));
    let with = Scene::today(&course().shelf, &skin, Site::Brow, &works).existing();
    assert!(without.iter().zip(&with).all(|(a, b)| (a - b).abs() < 1e-12));
}

fn task(json: &str) -> healedhue::foresee::Task {
    Request::from_json(json)
        .and_then(|request| request.resolve(&course().shelf))
        .expect("the request is right")
}

#[test]
fn a_timeline_runs_through_healing_and_years_and_shows_both_sides_of_a_touch_up() {
    let task = task(
        r#"{"skin": {"phototype": "II"}, "mix": {"kelderwick": 6}, "months": 30,
            "touch_ups": [{"months": 18}, {"months": 1.5, "mix": {"dunmere": 3}, "placement": {"load": 0.5}}]}"#,
    );
    let moments = Moment::all(&course().shelf, &task);
    let times: Vec<f64> = moments.iter().map(|moment| moment.months).collect();
    assert!(times.windows(2).all(|pair| pair[0] <= pair[1]), "{times:?}");
    for expected in [0.0, 3.0 / 28.0, 0.25, 0.5, 1.0, 1.5, 3.0, 6.0, 12.0, 18.0, 19.5, 24.0, 30.0, 36.0, 60.0]
    {
        assert!(times.contains(&expected), "{expected} in {times:?}");
    }
    let events =
        |event| moments.iter().filter(move |moment| moment.event == Some(event)).map(|moment| moment.months);
    assert_eq!(events(Event::BeforeTouchUp).collect::<Vec<_>>(), [1.5, 18.0]);
    assert_eq!(events(Event::TouchUp).collect::<Vec<_>>(), [1.5, 18.0]);
    assert_eq!(events(Event::Placement).collect::<Vec<_>>(), [0.0]);
    // The healed colour is that before anybody touches it up.
    assert_eq!(moments.iter().find(|one| one.months == 1.5).map(|one| one.delta_e_2000_to_healed), Some(0.0));
    // Nothing but the touch-up can make work deeper once the skin has healed.
    for pair in moments.windows(2).filter(|pair| pair[0].months >= 3.0) {
        let healing = moments.iter().any(|one| {
            one.event == Some(Event::TouchUp)
                && (0.0..=HEALED_MONTHS).contains(&(pair[1].months - one.months))
        });
        assert!(healing || pair[1].lab[0] > pair[0].lab[0], "{} to {}", pair[0].when, pair[1].when);
    }
}

#[test]
fn under_its_own_light_nothing_has_changed_and_under_others_something_has() {
    let task = task(r#"{"skin": {"phototype": "II"}, "mix": {"ickenfold": 6}, "light": "A"}"#);
    let lights = UnderLight::all(&course().shelf, &task);
    assert_eq!(
        lights.iter().map(|light| light.light.name()).collect::<Vec<_>>(),
        ["A", "D65", "LED-B3", "FL2"]
    );
    assert_eq!((lights[0].metamerism_to_skin, lights[0].inconstancy), (0.0, 0.0));
    for light in &lights[1..] {
        assert!(light.metamerism_to_skin > 0.1 && light.inconstancy > 0.1, "{light:?}");
    }
}

/// Documented factors show in the colour: the same work on a client who is outdoors with oily skin has faded further, and organics more
/// than oxides.
#[test]
fn sun_takes_organics_before_oxides() {
    let skin = skin(Phototype::II);
    let lost = |bottle: &str| {
        let after = |wear| seen(&skin, &recipe(bottle), &Placement::default(), &Upkeep::wear(wear), 36.0);
        let ((bare, usual), (_, worn)) =
            (after(Wear::default()), after(Wear { sun: Sun::Outdoors, ..Wear::default() }));
        1.0 - difference(bare, worn) / difference(bare, usual)
    };
    assert!(lost("lanthorpe") > 2.0 * lost("kelderwick") && lost("kelderwick") > 0.0);
}
