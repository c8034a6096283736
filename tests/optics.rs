//! The layered-media solver against published values, another program, and a Monte Carlo simulation.

use healedhue::optics::{Layer, Measured, Stack, stack};
use serde::Deserialize;

/// A stack of random layers with what another program computed.
#[derive(Deserialize)]
struct Reference {
    #[serde(flatten)]
    stack: Stack,
    #[serde(flatten)]
    seen: Measured,
}

fn references(json: &str) -> Vec<Reference> {
    let references: Vec<Reference> = serde_json::from_str(json).expect("the data file is JSON");
    assert_eq!(references.len(), 80);
    references
}

/// 80 random stacks of 1 to 4 layers, computed with the multi-layer routine of the PyPI package iadpython 0.5.3 (S. Prahl's
/// adding-doubling), 24 angles.
const BY_ROUTINE: &str = include_str!("data/layered-media.json");

/// The same stacks, computed with the same package's parts put together one surface at a time, by
/// `data/layered_media_corrected.py`.
const BY_PARTS: &str = include_str!("data/layered-media-corrected.json");

fn off(found: Measured, r: f64, t: f64) -> f64 {
    (found.reflectance_normal_incidence - r).abs().max((found.transmittance_normal_incidence - t).abs())
}

fn off_from(reference: &Reference) -> f64 {
    let found = stack::measure(&reference.stack, 24).expect("the stacks are valid");
    off(found, reference.seen.reflectance_normal_incidence, reference.seen.transmittance_normal_incidence)
}

#[test]
fn agrees_with_the_parts_of_another_program_on_every_stack() {
    for (i, reference) in references(BY_PARTS).iter().enumerate() {
        let off = off_from(reference);
        // The data file has six decimals.
        assert!(off < 2e-6, "stack {}: off by {off}", i + 1);
    }
}

/// The routine adds both surfaces to a stack as if it looked the same from both sides (`rt_matrices` hands one reflection matrix
/// to `add_same_slides`), which shows where unequal layers let light through to the bottom surface. Elsewhere it agrees.
#[test]
fn agrees_with_its_routine_wherever_that_is_right() {
    let (routine, parts) = (references(BY_ROUTINE), references(BY_PARTS));
    let mut wrong = 0;
    for (i, (routine, parts)) in routine.iter().zip(&parts).enumerate() {
        assert_eq!(routine.stack, parts.stack);
        let seen = parts.seen;
        let fault = off(routine.seen, seen.reflectance_normal_incidence, seen.transmittance_normal_incidence);
        if fault > 4e-4 {
            assert!(
                routine.stack.layers.len() > 1,
                "stack {}: one layer looks the same from both sides",
                i + 1
            );
            wrong += 1;
        } else {
            assert!(off_from(routine) < 5e-4, "stack {}", i + 1);
        }
    }
    assert_eq!(wrong, 24, "the stacks on which the routine is wrong are known");
}

/// Stacks on which routine and parts differ most, by the routine's reflectance, with reflectance and transmittance by
/// `data/monte_carlo.py`, 6,000,000 photons, standard error about 1.5e-4.
const BY_MONTE_CARLO: [(f64, f64, f64); 4] = [
    (0.165167, 0.157297, 0.588863),
    (0.743614, 0.740973, 0.182248),
    (0.430783, 0.429638, 0.226126),
    (0.292295, 0.296353, 0.342987),
];

#[test]
fn agrees_with_monte_carlo_where_the_routine_is_wrong() {
    let references = references(BY_ROUTINE);
    for (name, r, t) in BY_MONTE_CARLO {
        let reference = references
            .iter()
            .find(|one| one.seen.reflectance_normal_incidence == name)
            .expect("the stack is among the references");
        let found = stack::measure(&reference.stack, 24).expect("the stacks are valid");
        // Three standard errors of the simulation.
        assert!(off(found, r, t) < 4.5e-4, "{found:?} instead of {r}, {t}");
        assert!(off_from(reference) > 2e-3, "the routine is right after all");
    }
}

/// H. C. van de Hulst, Multiple Light Scattering (1980): slab of albedo 0.9, g = 0.75, optical depth 2, no index step.
#[test]
fn reproduces_the_slab_of_van_de_hulst() {
    let layer = Layer { absorption_per_mm: 0.1, scattering_per_mm: 0.9, anisotropy: 0.75, thickness_mm: 2.0 };
    let found = stack::measure(&Stack { refractive_index: 1.0, layers: vec![layer] }, 24).unwrap();
    assert!(off(found, 0.09739, 0.66096) < 2e-5, "{found:?}");
}

/// R. G. Giovanelli, Optica Acta 2, 153 (1955): half-space of albedo 0.9, isotropic, n = 1.5, surface included.
#[test]
fn reproduces_the_half_space_of_giovanelli() {
    let layer = Layer { absorption_per_mm: 0.1, scattering_per_mm: 0.9, anisotropy: 0.0, thickness_mm: 1e3 };
    let found = stack::measure(&Stack { refractive_index: 1.5, layers: vec![layer] }, 24).unwrap();
    assert!((found.reflectance_normal_incidence - 0.2600).abs() < 1e-4, "{found:?}");
}

/// Without absorption nothing is lost.
#[test]
fn energy_is_conserved_in_clear_and_in_scattering_media() {
    for (scattering, thickness) in [(0.0, 1.0), (0.3, 0.5), (20.0, 1.0), (200.0, 2.0)] {
        for angles in stack::ANGLES {
            for refractive_index in [1.0, 1.4, 1.5] {
                let layer = Layer {
                    absorption_per_mm: 0.0,
                    scattering_per_mm: scattering,
                    anisotropy: 0.8,
                    thickness_mm: thickness,
                };
                let stack = Stack { refractive_index, layers: vec![layer, layer] };
                let seen = stack::measure(&stack, angles).unwrap();
                let sum = seen.reflectance_normal_incidence + seen.transmittance_normal_incidence;
                assert!(
                    (sum - 1.0).abs() < 1e-8,
                    "{scattering} per mm, {angles} angles, n {refractive_index}: {sum}"
                );
            }
        }
    }
}

/// A surface that hardly bends light does hardly more than none, and nothing jumps where the choice of directions changes, at an
/// index of 2/√3.
#[test]
fn what_a_stack_does_goes_evenly_with_the_index() {
    let step = 0.002;
    for angles in [4, 8, 24] {
        for (i, reference) in references(BY_PARTS).into_iter().enumerate() {
            let at = |refractive_index| {
                let stack = Stack { refractive_index, ..reference.stack.clone() };
                stack::measure(&stack, angles).expect("the index is within its bounds")
            };
            let change = |from: Measured, to: Measured| {
                off(from, to.reflectance_normal_incidence, to.transmittance_normal_incidence)
            };
            let rim = 2.0 / 3_f64.sqrt();
            for (below, above) in [(1.0, 1.0 + 1e-9), (rim - 1e-9, rim + 1e-9)] {
                let jump = change(at(below), at(above));
                assert!(jump < 1e-6, "{angles} angles, stack {}: {jump} at {below}", i + 1);
            }
            let along: Vec<Measured> = (0..=100).map(|k| at(1.0 + step * f64::from(k))).collect();
            for (k, pair) in along.windows(2).enumerate() {
                let slope = change(pair[0], pair[1]) / step;
                assert!(
                    slope < 0.75,
                    "{angles} angles, stack {}: slope {slope} at {}",
                    i + 1,
                    1.0 + step * k as f64
                );
            }
        }
    }
}

/// With hardly a surface the directions are not wasted on the few that it turns back.
#[test]
fn four_angles_are_near_to_twenty_four_without_a_surface_and_nearly_so() {
    for refractive_index in [1.0, 1.001, 1.01, 1.03, 1.05, 1.08, 1.1, 1.15, 1.2] {
        let mut worst = 0.0_f64;
        for reference in references(BY_PARTS) {
            let stack = Stack { refractive_index, ..reference.stack };
            let [few, many] =
                [4, 24].map(|angles| stack::measure(&stack, angles).expect("the stack is valid"));
            worst =
                worst.max(off(few, many.reflectance_normal_incidence, many.transmittance_normal_incidence));
        }
        assert!(worst < 0.006, "index {refractive_index}: {worst}");
    }
}

#[test]
fn a_layer_cut_in_two_is_the_same_layer() {
    let whole = Layer { absorption_per_mm: 0.4, scattering_per_mm: 12.0, anisotropy: 0.8, thickness_mm: 0.7 };
    let part = |thickness_mm| Layer { thickness_mm, ..whole };
    let one = stack::measure(&Stack { refractive_index: 1.4, layers: vec![whole] }, 8).unwrap();
    let two =
        stack::measure(&Stack { refractive_index: 1.4, layers: vec![part(0.2), part(0.5)] }, 8).unwrap();
    assert!(off(two, one.reflectance_normal_incidence, one.transmittance_normal_incidence) < 1e-6);
}

#[test]
fn numbers_outside_their_bounds_are_refused_with_name_value_and_range() {
    let layer = Layer { absorption_per_mm: 0.1, scattering_per_mm: 1.0, anisotropy: 0.8, thickness_mm: 1.0 };
    let told = |refractive_index, layers: Vec<Layer>| {
        stack::measure(&Stack { refractive_index, layers }, 4).expect_err("it must be refused").to_string()
    };
    insta::assert_snapshot!(
        [
            told(1.4, vec![layer, Layer { thickness_mm: -1.0, ..layer }]),
            told(1.4, vec![Layer { absorption_per_mm: f64::NAN, ..layer }]),
            told(1.4, vec![Layer { anisotropy: 1.0, ..layer }]),
            told(0.9, vec![layer]),
            told(1.4, vec![]),
        ]
        .join("\n"),
        @r#"
layer 2: `thickness_mm` is -1, outside 0 to 10000 mm
layer 1: `absorption_per_mm` is NaN, outside 0 to 100000 per mm
layer 1: `anisotropy` is 1, outside -0.99 to 0.99
`refractive_index` is 0.9, outside 1 to 3
`layers` is empty: a stack needs at least one layer
"#
    );
}
