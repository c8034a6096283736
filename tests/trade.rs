//! Facts of the trade that must come out of the physics. Each is common practice, no source; the numbers are the engine's.

use crate::demo::course;
use healedhue::colour::{Lab, Light, difference};
use healedhue::healing::{HEALED_MONTHS, Placement, Reading, Scene, Tone, Work};
use healedhue::pigment::{Bottle, Mix, Paint};
use healedhue::skin::{Phototype, Redness, Site, Skin, Undertone};

fn mix(drops: &[(&str, u32)]) -> Paint {
    course().shelf.paint_of(&Mix::new(drops.iter().map(|(bottle, count)| ((*bottle).to_owned(), *count))))
}

fn colourants(amounts: &[(&str, f64)]) -> Paint {
    let place = |id: &str| course().shelf.colourant_place(id).expect("the colourant is on the shelf");
    let mut paint: Paint = amounts.iter().map(|(id, amount)| (place(id), *amount)).collect();
    paint.sort_by_key(|(place, _)| *place);
    paint
}

fn skin(phototype: Phototype, redness: Redness) -> Skin {
    Skin::from_evidence(phototype, Undertone::Neutral, redness)
}

fn scene(skin: &Skin, existing: &[Work], months: f64) -> Scene<'static> {
    Scene::new(&course().shelf, skin, Site::Brow, existing, months)
}

fn lab(reflectance: healedhue::colour::Spectrum) -> Lab {
    Light::D65.lab_of(&reflectance)
}

fn healed(skin: &Skin, existing: &[Work], paint: &Paint) -> Lab {
    lab(scene(skin, existing, HEALED_MONTHS).with(paint, &Placement::default()))
}

fn tone(skin: &Skin, existing: &[Work], paint: &Paint) -> Tone {
    let bare = lab(scene(skin, existing, HEALED_MONTHS).bare());
    Reading::of(healed(skin, existing, paint), bare, Site::Brow).tone
}

/// A brown hue as the academy's goals have it: 40° to 70°; the distance of a colour's hue from it.
fn from_brown(colour: Lab) -> f64 {
    let hue = colour.hue_degrees();
    if (40.0..=70.0).contains(&hue) { 0.0 } else { (hue - 40.0).abs().min((hue - 70.0).abs()) }
}

/// Old blue-grey work: carbon black, deep.
fn blue_grey() -> Work {
    let placement = Placement { depth_mm: 0.5, thickness_mm: 0.3, load: 1.0, coverage: 0.85 };
    Work { paint: colourants(&[("PBk7", 0.15)]), placement, months: 120.0 }
}

/// Old orange work: red oxide whose yellow has gone.
fn orange() -> Work {
    let placement = Placement { depth_mm: 0.2, thickness_mm: 0.3, load: 1.0, coverage: 0.85 };
    Work { paint: colourants(&[("PR101", 0.35), ("PY42", 0.1)]), placement, months: 96.0 }
}

#[test]
fn on_very_red_skin_green_heals_ashier_and_orange_browner_than_the_plain_mix() {
    let red = skin(Phototype::II, Redness::Ruddy);
    let plain = healed(&red, &[], &mix(&[("ickenfold", 6)]));
    let green = healed(&red, &[], &mix(&[("ickenfold", 4), ("frostwick", 2)]));
    let orange = healed(&red, &[], &mix(&[("ickenfold", 4), ("emberlow", 2)]));
    assert!(green.chroma() < plain.chroma() - 1.0, "green {green:?}, plain {plain:?}");
    assert!(orange.chroma() > plain.chroma() + 1.0, "orange {orange:?}, plain {plain:?}");
    // Browner: nearer to the believable brown that the course sets as goal for such a client.
    let goal = course().goal("warm-brown").expect("the goal exists").lab;
    assert!(difference(orange, goal) < difference(plain, goal) - 1.0);
    assert!(difference(green, goal) > difference(plain, goal) + 1.0);
    assert_eq!(tone(&red, &[], &mix(&[("ickenfold", 4), ("frostwick", 2)])), Tone::Grey);
    assert!(matches!(tone(&red, &[], &mix(&[("ickenfold", 6)])), Tone::Ashy | Tone::Grey));
}

#[test]
fn the_same_carbon_black_looks_bluer_against_the_skin_the_deeper_it_lies() {
    for phototype in [Phototype::I, Phototype::II, Phototype::III, Phototype::IV] {
        let skin = skin(phototype, Redness::Calm);
        let scene = scene(&skin, &[], HEALED_MONTHS);
        let bare = lab(scene.bare());
        // Loss of yellow per loss of lightness: how blue the darkening is.
        let blueness: Vec<f64> = [0.10, 0.2, 0.3, 0.45, 0.6, 0.8, 1.0]
            .iter()
            .map(|&depth_mm| {
                let black = lab(scene
                    .with(&colourants(&[("PBk7", 0.8)]), &Placement { depth_mm, ..Placement::default() }));
                (bare.b - black.b) / (bare.l - black.l)
            })
            .collect();
        assert!(blueness.windows(2).all(|pair| pair[1] > pair[0]), "{phototype:?}: {blueness:?}");
    }
}

#[test]
fn black_heavy_work_drifts_to_blue_grey_and_red_heavy_work_to_orange() {
    let skin = skin(Phototype::II, Redness::Calm);
    let aged = |paint: &Paint, months: f64| {
        let scene = scene(&skin, &[], months);
        let (bare, seen) = (lab(scene.bare()), lab(scene.with(paint, &Placement::default())));
        (seen, Reading::of(seen, bare, Site::Brow).tone)
    };
    let black_heavy = colourants(&[("PBk7", 0.25), ("PR101", 0.15), ("PY42", 0.6)]);
    let (day, day_tone) = aged(&black_heavy, 0.0);
    let (late, late_tone) = aged(&black_heavy, 120.0);
    assert!(
        day.hue_degrees() < 90.0 && !matches!(day_tone, Tone::BlueGrey | Tone::Ashy),
        "{day:?} {day_tone:?}"
    );
    assert_eq!(late_tone, Tone::BlueGrey, "{late:?}");

    let red_heavy = colourants(&[("PR101", 0.35), ("PY42", 0.7), ("PBk11", 0.15)]);
    let (healed, healed_tone) = aged(&red_heavy, HEALED_MONTHS);
    let (late, late_tone) = aged(&red_heavy, 120.0);
    assert!(!matches!(healed_tone, Tone::Orange | Tone::Red), "{healed:?} {healed_tone:?}");
    assert_eq!(late_tone, Tone::Orange, "{late:?}");
    assert!(late.chroma() > healed.chroma() + 3.0);
}

#[test]
fn white_in_old_dark_work_turns_it_chalky_and_grey_and_never_back_to_skin() {
    for phototype in [Phototype::II, Phototype::IV] {
        let skin = skin(phototype, Redness::Calm);
        let placement = Placement { coverage: 0.95, ..Placement::default() };
        let old = [Work { paint: colourants(&[("PBk7", 0.5), ("PBk11", 0.5)]), placement, months: 36.0 }];
        let scene = scene(&skin, &old, HEALED_MONTHS);
        let (bare, before) = (lab(scene.bare()), lab(scene.existing()));
        let mut nearest = f64::INFINITY;
        for load in [0.25, 0.5, 1.0, 2.0, 4.0] {
            let after = lab(scene.with(&colourants(&[("PW6", 0.8)]), &Placement { load, ..placement }));
            assert!(after.l > before.l, "white lightens: {after:?}, before {before:?}");
            assert!(after.chroma() < 0.65 * bare.chroma(), "and stays grey: {after:?} on {bare:?}");
            nearest = nearest.min(difference(after, bare));
        }
        // 8 ΔE00 is another colour to anybody.
        assert!(nearest > 8.0, "{phototype:?}: {nearest}");
    }
}

#[test]
fn a_warm_layer_over_blue_grey_heals_brown_and_an_ashy_one_green_grey() {
    let skin = skin(Phototype::II, Redness::Calm);
    let old = [blue_grey()];
    let residual = {
        let scene = scene(&skin, &old, HEALED_MONTHS);
        Reading::of(lab(scene.existing()), lab(scene.bare()), Site::Brow).tone
    };
    assert_eq!(residual, Tone::BlueGrey);
    for warm in [mix(&[("dunmere", 6)]), mix(&[("kelderwick", 4), ("emberlow", 2)]), mix(&[("corrick", 6)])] {
        let seen = tone(&skin, &old, &warm);
        assert!(matches!(seen, Tone::Neutral | Tone::Warm), "{seen:?}");
        assert!(from_brown(healed(&skin, &old, &warm)) < 5.0);
    }
    let ashy = healed(&skin, &old, &mix(&[("ickenfold", 3), ("frostwick", 3)]));
    assert!(ashy.a < 0.0 && ashy.b > 0.0 && ashy.chroma() < 6.0, "green-grey: {ashy:?}");
}

#[test]
fn a_cool_brown_over_orange_heals_brown_and_a_warm_one_stays_orange() {
    let skin = skin(Phototype::II, Redness::Calm);
    let old = [orange()];
    let residual = {
        let scene = scene(&skin, &old, HEALED_MONTHS);
        Reading::of(lab(scene.existing()), lab(scene.bare()), Site::Brow).tone
    };
    assert_eq!(residual, Tone::Orange);
    for cool in [mix(&[("garrowby", 6)]), mix(&[("kelderwick", 6)])] {
        assert!(matches!(tone(&skin, &old, &cool), Tone::Neutral | Tone::Warm));
        assert!(from_brown(healed(&skin, &old, &cool)) < 5.0);
    }
    for warm in [mix(&[("corrick", 3), ("emberlow", 3)]), mix(&[("emberlow", 6)])] {
        assert_eq!(tone(&skin, &old, &warm), Tone::Orange);
    }
}

#[test]
fn the_same_bottle_heals_differently_from_phototype_i_to_vi() {
    let paint = mix(&[("kelderwick", 6)]);
    let colours: Vec<Lab> = Phototype::ALL
        .iter()
        .map(|(phototype, _)| healed(&skin(*phototype, Redness::Calm), &[], &paint))
        .collect();
    assert!(colours.windows(2).all(|pair| pair[1].l < pair[0].l), "deeper from I to VI: {colours:?}");
    for (i, one) in colours.iter().enumerate() {
        for other in &colours[i + 1..] {
            // 1 ΔE00 is just visible side by side.
            assert!(difference(*one, *other) > 1.0, "{one:?} and {other:?}");
        }
    }
    assert!(difference(colours[0], colours[5]) > 15.0);
}

#[test]
fn a_bottle_usually_heals_cooler_and_softer_than_on_the_day() {
    let skin = skin(Phototype::III, Redness::Calm);
    // Lip colours are made to heal pink, which gains yellow as the redness of the day goes.
    let for_brows = |bottle: &&Bottle| bottle.modifier.is_none() && bottle.is_meant_for(Site::Brow);
    for bottle in course().shelf.bottles.iter().filter(for_brows) {
        let paint = mix(&[(&bottle.id, 6)]);
        let day = lab(scene(&skin, &[], 0.0).with(&paint, &Placement::default()));
        let healed = healed(&skin, &[], &paint);
        assert!(healed.l > day.l + 2.0 && healed.b < day.b, "{}: {day:?} to {healed:?}", bottle.id);
    }
}

/// Yellow leaves first, organics before oxides, carbon and titanium white stay longest.
#[test]
fn half_lives_keep_the_order_of_the_trade() {
    let half_life = |id: &str| {
        let place = course().shelf.colourant_place(id).expect("the colourant is on the shelf");
        course().shelf.colourants[place].half_life_months
    };
    let organics = [
        "PY154", "PY83", "PO13", "PR170", "PR122", "PV23", "PY151", "PO73", "PR254", "PBr25", "PB60", "PR202",
    ];
    let oxides = ["PY42", "PR101", "PBk11", "PG17"];
    let lasting = ["PBk7", "PW6"];
    for organic in organics {
        assert!(oxides.iter().all(|oxide| half_life(organic) < half_life(oxide)), "{organic}");
    }
    for oxide in oxides {
        assert!(lasting.iter().all(|last| half_life(oxide) < half_life(last)), "{oxide}");
    }
    assert!(half_life("PY154") < half_life("PO13") && half_life("PY83") < half_life("PO13"));
    assert!(half_life("PY42") < half_life("PR101") && half_life("PY42") < half_life("PBk11"));
}
