//! Skin: published limits, measured ranges, and what must hold for every placement.

use crate::demo::course;
use healedhue::colour::{Lab, Light, Spectrum};
use healedhue::healing::{Placement, Scene, Work};
use healedhue::pigment::Bottle;
use healedhue::skin::{
    ItaClass, Phototype, Prior, Redness, Site, Skin, Undertone, fit_lab, fit_spectrum, ita_degrees,
    skin_of_ita,
};
use proptest::prelude::*;
use rayon::prelude::*;

/// Limits 55, 41, 28, 10 and -30 degrees: Chardon, Cretois and Hourseau (1991); Del Bino and Bernerd (2013); a limit belongs to
/// the darker class.
#[test]
fn ita_classes_follow_the_published_limits() {
    for (degrees, class) in [
        (80.0, ItaClass::VeryLight),
        (55.01, ItaClass::VeryLight),
        (55.0, ItaClass::Light),
        (41.01, ItaClass::Light),
        (41.0, ItaClass::Intermediate),
        (28.01, ItaClass::Intermediate),
        (28.0, ItaClass::Tan),
        (10.01, ItaClass::Tan),
        (10.0, ItaClass::Brown),
        (-29.99, ItaClass::Brown),
        (-30.0, ItaClass::Dark),
        (-80.0, ItaClass::Dark),
    ] {
        assert_eq!(ItaClass::of(degrees), class, "{degrees}");
    }
}

#[test]
fn ita_is_the_arctangent_of_its_definition() {
    for (l, b, degrees) in [(65.0, 15.0, 45.0), (50.0, 12.0, 0.0), (50.0 + 15.0 * 3f64.sqrt(), 15.0, 60.0)] {
        assert!((ita_degrees(Lab::new(l, 8.0, b)) - degrees).abs() < 1e-9);
    }
}

/// Cooksey, Allen and Tsai, "Reference data set of human skin reflectance", J. Res. NIST 122, 26 (2017), inner forearms, every
/// second subject: L* from 50.7 to 72.3, a* from 6.6 to 13.9, b* from 10.9 to 21.5 under D65, means 66.1, 9.6, 15.2 (computed from
/// the data set with the PyPI package colour-science 0.4.7). Calm neutral people of phototypes I to IV must lie near those ranges.
#[test]
fn typical_people_look_like_measured_ones() {
    for (phototype, _) in &Phototype::ALL[..4] {
        let skin = Skin::from_evidence(*phototype, Undertone::Neutral, Redness::Calm);
        let lab = Light::D65.lab_of(&Scene::today(&course().shelf, &skin, Site::Brow, &[]).bare());
        assert!((49.0..=75.0).contains(&lab.l), "{phototype:?}: {lab:?}");
        assert!((5.5..=14.0).contains(&lab.a) && (10.5..=23.0).contains(&lab.b), "{phototype:?}: {lab:?}");
    }
}

#[test]
fn skin_of_an_angle_has_that_angle() {
    for degrees in [-50.0, -20.0, 0.0, 20.0, 45.0, 58.0] {
        for (undertone, _) in Undertone::ALL {
            let skin = skin_of_ita(degrees, undertone, Redness::Calm, Site::Brow).expect("within reach");
            let lab = Light::D65.lab_of(&Scene::today(&course().shelf, &skin, Site::Brow, &[]).bare());
            assert!(
                (ita_degrees(lab) - degrees).abs() < 1e-6,
                "{degrees} {undertone:?}: {}",
                ita_degrees(lab)
            );
        }
    }
    let refused =
        skin_of_ita(89.0, Undertone::Neutral, Redness::Ruddy, Site::Brow).expect_err("paler than bloodless");
    assert!(refused.to_string().contains("`ita` is 89"), "{refused}");
}

/// Greatest ΔE00 between 4 and 24 angles over every bottle of the shelf, neat, in this skin with this work.
fn four_angles_off(skin: &Skin, site: Site, works: &[Work]) -> f64 {
    let shelf = &course().shelf;
    let placement = Placement::default();
    let few = Scene::<4>::with_angles(shelf, skin, site, works, 1.5);
    let many = Scene::<24>::with_angles(shelf, skin, site, works, 1.5);
    let apart = |one: &Spectrum, other: &Spectrum| {
        healedhue::colour::difference(Light::D65.lab_of(one), Light::D65.lab_of(other))
    };
    let bare = apart(&few.bare(), &many.bare());
    let (few, many) = (few.trial(&placement), many.trial(&placement));
    let of = |bottle: &Bottle| apart(&few.with(&bottle.recipe), &many.with(&bottle.recipe));
    shelf.bottles.iter().map(of).fold(bare, f64::max)
}

/// 4 angles against 24, over every bottle and bare skin, on every demo client with their old work: within an eighth of 1 ΔE00, which is
/// about the least difference an eye can see. It was 0.083 when this was written.
#[test]
fn four_angles_are_enough_on_every_client() {
    let off: Vec<(f64, &str)> = course()
        .clients
        .par_iter()
        .map(|client| (four_angles_off(&client.skin, client.site, &client.works()), client.id.as_str()))
        .collect();
    for (off, client) in off {
        assert!(off < 0.125, "{client}: {off}");
    }
}

/// The same on typical people of every phototype at every site, calm and otherwise, with each undertone in turn, some of them scarred.
/// It was 0.090 when this was written, on a scarred eyelid; the limit leaves room for further bottles.
#[test]
fn four_angles_are_enough_on_anybody() {
    let mut people = Vec::new();
    for (phototype, _) in Phototype::ALL {
        for (site, _) in Site::ALL {
            for redness in [Redness::Calm, Redness::ALL[1 + people.len() / 2 % 3].0] {
                let undertone = Undertone::ALL[people.len() % 4].0;
                let skin = site.skin_of(Skin::from_evidence(phototype, undertone, redness));
                let scarred = redness == Redness::Calm && phototype >= Phototype::IV;
                people.push((if scarred { skin.scarred() } else { skin }, site));
            }
        }
    }
    let off: Vec<f64> = people.par_iter().map(|(skin, site)| four_angles_off(skin, *site, &[])).collect();
    for (off, person) in off.iter().zip(&people) {
        assert!(*off < 0.125, "{person:?}: {off}");
    }
}

fn any_skin() -> impl Strategy<Value = Skin> {
    (0.005..0.4f64, 0.001..0.05f64, 0.3..0.9f64, 0.6..2.5f64, 0.0..2.0f64, 0.0..0.03f64).prop_map(
        |(melanin, blood, oxygenation, scattering, background, vessel_radius_mm)| Skin {
            melanin,
            blood,
            oxygenation,
            scattering,
            background,
            vessel_radius_mm,
        },
    )
}

fn any_placement() -> impl Strategy<Value = Placement> {
    (0.0..1.5f64, 0.02..0.8f64, 0.05..2.0f64, 0.05..1.0f64).prop_map(
        |(depth_mm, thickness_mm, load, coverage)| Placement { depth_mm, thickness_mm, load, coverage },
    )
}

fn seen(
    skin: &Skin,
    bottle: usize,
    placement: &Placement,
    existing: &[Work],
    months: f64,
) -> (Spectrum, Spectrum) {
    let shelf = &course().shelf;
    let scene = Scene::new(shelf, skin, Site::Brow, existing, months);
    (scene.existing(), scene.with(&shelf.bottles[bottle].recipe, placement))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn prop_no_coverage_and_no_load_give_exactly_what_was_there(
        skin in any_skin(), bottle in 0..17usize, placement in any_placement(), months in 0.0..60.0f64,
    ) {
        let old = [Work { paint: course().shelf.bottles[8].recipe.clone(), placement, months: 30.0 }];
        for existing in [&[][..], &old[..]] {
            for nothing in [Placement { coverage: 0.0, ..placement }, Placement { load: 0.0, ..placement }] {
                let (without, with) = seen(&skin, bottle, &nothing, existing, months);
                prop_assert_eq!(without, with);
            }
        }
    }

    #[test]
    fn prop_reflectance_lies_between_surface_and_one(
        skin in any_skin(), bottle in 0..17usize, placement in any_placement(), months in 0.0..60.0f64,
    ) {
        let (bare, with) = seen(&skin, bottle, &placement, &[], months);
        // The surface alone reflects ((1.4 - 1) / (1.4 + 1))² = 0.0278.
        for r in bare.iter().chain(&with) {
            prop_assert!((0.0277..=1.0).contains(r), "{}", r);
        }
    }

    #[test]
    fn prop_small_steps_in_placement_make_small_steps_in_colour(
        skin in any_skin(), bottle in 0..17usize, placement in any_placement(), months in 0.0..60.0f64,
    ) {
        let near = Placement {
            depth_mm: placement.depth_mm * 1.0001 + 1e-6,
            thickness_mm: placement.thickness_mm * 1.0001,
            load: placement.load * 1.0001,
            coverage: placement.coverage * 0.9999,
        };
        let (_, one) = seen(&skin, bottle, &placement, &[], months);
        let (_, other) = seen(&skin, bottle, &near, &[], months * 1.0001);
        for (a, b) in one.iter().zip(&other) {
            prop_assert!((a - b).abs() < 2e-4, "{} and {}", a, b);
        }
    }

    #[test]
    fn prop_every_colourant_fades(colourant in 0..16usize, early in 0.0..300.0f64, later in 0.1..300.0f64) {
        let colourant = &course().shelf.colourants[colourant];
        let left = |months| healedhue::healing::retention(colourant, months);
        prop_assert!(left(early + later) < left(early));
        prop_assert!(left(0.0) == 1.0);
    }
}

/// Mean of the 50 spectra of the NIST data set named above, 400 to 700 nm by 10 nm (derived figures).
#[rustfmt::skip]
const MEAN_OF_50: Spectrum = [
    0.1854, 0.1837, 0.1835, 0.1884, 0.2103, 0.2505, 0.2804, 0.2974,
    0.3057, 0.3154, 0.3260, 0.3326, 0.3330, 0.3241, 0.3149, 0.3140,
    0.3206, 0.3246, 0.3328, 0.3837, 0.4453, 0.4921, 0.5186, 0.5350,
    0.5468, 0.5562, 0.5644, 0.5733, 0.5831, 0.5945, 0.6009,
];

#[test]
fn the_mean_measured_spectrum_is_fitted_within_what_can_be_seen() {
    let fit = fit_spectrum(&MEAN_OF_50, Site::Brow, &Prior::anybody());
    // 0.4 ΔE00 is the median that the engine reaches on the people themselves (0.30 when this was written).
    assert!(fit.delta_e_2000 < 0.4, "{fit:?}");
    let skin = fit.skin;
    assert!((0.01..0.04).contains(&skin.melanin) && (0.003..0.03).contains(&skin.blood), "{skin:?}");
    assert!((0.4..0.9).contains(&skin.oxygenation) && (0.8..2.6).contains(&skin.scattering), "{skin:?}");
}

/// What is no skin is fitted as badly as it deserves, by numbers that a skin may have.
#[test]
fn what_is_no_skin_is_said_to_be_none() {
    for no_skin in [[1.0; 31], [0.0; 31], std::array::from_fn(|band| 0.9 - 0.8 * band as f64 / 30.0)] {
        let fit = fit_spectrum(&no_skin, Site::Brow, &Prior::anybody());
        assert!(fit.is_no_skin() && fit.skin.checked().is_ok(), "{fit:?}");
    }
    assert!(!fit_spectrum(&MEAN_OF_50, Site::Brow, &Prior::anybody()).is_no_skin());
}

#[test]
fn a_colour_is_met_by_the_skin_nearest_to_the_prior() {
    for lab in [Lab::new(63.0, 11.0, 16.0), Lab::new(45.0, 14.0, 18.0), Lab::new(30.0, 9.0, 10.0)] {
        let fit = fit_lab(lab, Site::Brow, &Prior::anybody());
        assert!(fit.delta_e_2000 < 0.1, "{fit:?}");
        assert!(fit.skin.checked().is_ok());
    }
    // Nothing to explain: the prior's own colour gives the prior's own skin.
    let prior = Prior::anybody();
    let own = Light::D65.lab_of(&Scene::today(&course().shelf, &prior.centre, Site::Brow, &[]).bare());
    let skin = fit_lab(own, Site::Brow, &prior).skin;
    assert!((skin.melanin / prior.centre.melanin - 1.0).abs() < 1e-3, "{skin:?}");
    assert!((skin.blood / prior.centre.blood - 1.0).abs() < 1e-3, "{skin:?}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// A spectrum that the model made is given back, whoever it belongs to.
    #[test]
    fn prop_a_simulated_person_is_found_again(
        melanin in 0.01..0.2f64, blood in 0.004..0.03f64, oxygenation in 0.4..0.85f64, scattering in 0.9..2.4f64,
        background in 0.1..1.0f64,
    ) {
        let skin = Skin { melanin, blood, oxygenation, scattering, background, vessel_radius_mm: 0.003 };
        let spectrum = Scene::today(&course().shelf, &skin, Site::Brow, &[]).bare();
        let fit = fit_spectrum(&spectrum, Site::Brow, &Prior::anybody());
        prop_assert!(fit.delta_e_2000 < 0.1, "{:?}", fit);
        prop_assert!((fit.skin.melanin / melanin - 1.0).abs() < 0.15, "{:?} for {:?}", fit.skin, skin);
    }
}

#[test]
fn sites_differ_as_their_tissue_does() {
    let lab = |site: Site| {
        let skin = site.skin_of(Skin::from_evidence(Phototype::II, Undertone::Neutral, Redness::Calm));
        Light::D65.lab_of(&Scene::today(&course().shelf, &skin, site, &[]).bare())
    };
    let brow = lab(Site::Brow);
    assert!(lab(Site::Lip).a > brow.a + 5.0, "lips are red");
    assert!(lab(Site::Areola).l < brow.l - 5.0, "the areola is darker");
    let scar = Skin::from_evidence(Phototype::IV, Undertone::Neutral, Redness::Calm).scarred();
    let scar = Light::D65.lab_of(&Scene::today(&course().shelf, &scar, Site::Brow, &[]).bare());
    let whole = Skin::from_evidence(Phototype::IV, Undertone::Neutral, Redness::Calm);
    let whole = Light::D65.lab_of(&Scene::today(&course().shelf, &whole, Site::Brow, &[]).bare());
    assert!(scar.l > whole.l + 5.0, "a pale scar is paler: {scar:?}, {whole:?}");
}
