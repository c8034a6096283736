//! How sure an answer is: regions of likely outcomes against independent random worlds, and against another program's algebra.

use crate::demo::course;
use healedhue::Cores;
use healedhue::colour::{Ellipsoid, Lab, Light, difference};
use healedhue::healing::{
    Case, Deviation, HEALED_MONTHS, Outcome, Placement, SHARE, Scene, Spread, Work, World, Worlds,
};
use healedhue::pigment::{Mix, Paint, Shelf};
use healedhue::skin::{Phototype, Prior, Redness, Site, Skin, Undertone};
use proptest::prelude::*;
use rand::{Rng, RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// A case to be wrong about.
struct Sample {
    skin: Skin,
    paint: Paint,
    existing: Vec<Work>,
    months: f64,
    spread: Spread,
}

/// Fair and dark skin, seen and told by words, fresh mixes and old work, healed and years later.
fn samples() -> Vec<Sample> {
    let shelf = &course().shelf;
    let paint =
        |bottle: &str, more: &str| shelf.paint_of(&Mix::new([(bottle.to_owned(), 4), (more.to_owned(), 1)]));
    let told = |phototype, undertone, redness| Prior::from_evidence(phototype, undertone, redness);
    let (fair, dark) = (
        told(Phototype::II, Undertone::Cool, Redness::Rosy),
        told(Phototype::V, Undertone::Olive, Redness::Calm),
    );
    let old =
        Work { paint: paint("jarrowmoss", "gloamhurst"), placement: Placement::default(), months: 60.0 };
    vec![
        Sample {
            skin: fair.centre,
            paint: paint("kelderwick", "emberlow"),
            existing: Vec::new(),
            months: HEALED_MONTHS,
            spread: Spread::SEEN,
        },
        Sample {
            skin: dark.centre,
            paint: paint("lanthorpe", "frostwick"),
            existing: Vec::new(),
            months: 48.0,
            spread: Spread::SEEN.with_skin_of(&dark),
        },
        Sample {
            skin: fair.centre,
            paint: paint("corrick", "palewater"),
            existing: vec![old],
            months: 12.0,
            spread: Spread::SEEN.with_skin_of(&fair),
        },
    ]
}

impl Sample {
    fn colourants(&self) -> Vec<usize> {
        let mut places: Vec<usize> = self.paint.iter().map(|(place, _)| *place).collect();
        places.extend(self.existing.iter().flat_map(|work| &work.paint).map(|(place, _)| *place));
        places.sort_unstable();
        places.dedup();
        places
    }

    fn see(&self, shelf: &Shelf, world: &World) -> Lab {
        let scene = Scene::new(shelf, &world.skin, Site::Brow, &self.existing, self.months);
        Light::D65.lab_of(&scene.with(&self.paint, &world.placement))
    }

    fn expected(&self) -> Lab {
        self.see(&course().shelf, &World { skin: self.skin, placement: Placement::default() })
    }

    fn outcome(&self, spread: &Spread, worlds: Worlds) -> Outcome {
        let case = Case {
            shelf: &course().shelf,
            skin: &self.skin,
            placement: &Placement::default(),
            colourants: &self.colourants(),
        };
        Outcome::of(&case, spread, worlds, self.expected(), |shelf, world| self.see(shelf, world))
    }

    /// A world drawn at random, with nothing of the quasi-random kind: Box and Muller's normal numbers from ChaCha.
    fn random(&self, rng: &mut ChaCha8Rng, shelf: &mut Shelf) -> Lab {
        let spread = &self.spread;
        let deviation =
            Deviation { skin: std::array::from_fn(|_| normal(rng)), depth: normal(rng), load: normal(rng) };
        let persistence = (spread.persistence * normal(rng)).exp();
        for place in self.colourants() {
            let own = (spread.half_life * normal(rng)).exp();
            shelf.colourants[place].half_life_months =
                course().shelf.colourants[place].half_life_months * persistence * own;
        }
        self.see(shelf, &World::at(spread, &deviation, &self.skin, &Placement::default()))
    }
}

fn normal(rng: &mut impl Rng) -> f64 {
    let (u, v) = (1.0 - rng.random::<f64>(), rng.random::<f64>());
    (-2.0 * u.ln()).sqrt() * (std::f64::consts::TAU * v).cos()
}

fn count(count: u32) -> Worlds {
    Worlds { count, ..Worlds::default() }
}

/// The region comes from 256 worlds, the judgement from 2,000 others. If both were random, the share found inside would have a
/// standard deviation of √(0.9·0.1/256 + 0.9·0.1/2000) = 2.0%; within three of those, whatever the case.
#[test]
fn regions_hold_ninety_percent_of_independent_worlds() {
    for (number, sample) in samples().iter().enumerate() {
        let outcome = sample.outcome(&sample.spread, Worlds::default());
        let (mut rng, mut shelf) = (ChaCha8Rng::seed_from_u64(number as u64), course().shelf.clone());
        let cloud: Vec<Lab> = (0..2000).map(|_| sample.random(&mut rng, &mut shelf)).collect();
        let share = |inside: usize| inside as f64 / cloud.len() as f64;
        let held = share(cloud.iter().filter(|&&lab| outcome.region.holds(lab)).count());
        let expected = sample.expected();
        let near = |lab: &&Lab| difference(**lab, expected) <= outcome.within_delta_e_2000;
        let within = share(cloud.iter().filter(near).count());
        assert!((held - SHARE).abs() < 0.06, "case {number}: {held} in the region");
        assert!((within - SHARE).abs() < 0.06, "case {number}: {within} within the distance");
    }
}

/// Against 8,192 worlds of another seed: more worlds come nearer, and 256 are within 10% already.
#[test]
fn more_worlds_converge() {
    for sample in samples() {
        let reference = sample.outcome(&sample.spread, Worlds { count: 8192, seed: 99, ..Worlds::default() });
        let off = |count| {
            let seeds = 0..4;
            let many = seeds.len() as f64;
            let off = seeds.map(|seed| {
                let found = sample.outcome(&sample.spread, Worlds { count, seed, ..Worlds::default() });
                let longest = found.region.axes[0].half_length / reference.region.axes[0].half_length;
                let within = found.within_delta_e_2000 / reference.within_delta_e_2000;
                (longest - 1.0).abs().max((within - 1.0).abs())
            });
            off.sum::<f64>() / many
        };
        let (few, usual, many) = (off(32), off(256), off(2048));
        assert!(usual < 0.1 && many < 0.03 && many < usual && usual < few, "{few} {usual} {many}");
    }
}

#[test]
fn nothing_varied_gives_a_point_at_the_expected_colour() {
    for sample in samples() {
        let outcome = sample.outcome(&Spread::NONE, count(64));
        let expected = sample.expected();
        assert_eq!(outcome.region.centre, [expected.l, expected.a, expected.b]);
        assert!(outcome.region.axes.iter().all(|axis| axis.half_length == 0.0));
        assert_eq!((outcome.within_delta_e_2000, outcome.region.covariance), (0.0, [[0.0; 3]; 3]));
        assert_eq!(outcome.words, "as expected: nothing varies");
    }
}

/// One number alone moves the colour along a line: the region is long and thin, and still holds its share.
#[test]
fn one_varied_number_gives_a_thin_region() {
    for sample in samples() {
        let outcome = sample.outcome(&Spread { load: 0.15, ..Spread::NONE }, count(256));
        let [long, middle, _] = outcome.region.axes.map(|axis| axis.half_length);
        assert!(long > 5.0 * middle, "{:?}", outcome.region);
        // The words name the coordinate in which the axis is longest.
        let [l, a, b] = outcome.region.axes[0].direction.map(f64::abs);
        let word = if l > a.max(b) {
            "lighter"
        } else if a > b {
            "redder"
        } else {
            "warmer"
        };
        assert!(outcome.words.contains(word), "{}: {:?}", outcome.words, outcome.region);
    }
}

#[test]
fn the_same_worlds_give_the_same_bits_on_any_number_of_cores() {
    let sample = &samples()[2];
    let once = sample.outcome(&sample.spread, count(100));
    assert_eq!(once, sample.outcome(&sample.spread, Worlds { cores: Cores::One, ..count(100) }));
    assert_ne!(once, sample.outcome(&sample.spread, Worlds { seed: 1, ..count(100) }));
}

#[test]
fn wider_spreads_give_wider_regions() {
    for sample in samples() {
        let times = |factor: f64| {
            let s = &sample.spread;
            let spread = Spread {
                melanin: s.melanin * factor,
                blood: s.blood * factor,
                depth_mm: s.depth_mm * factor,
                load: s.load * factor,
                persistence: s.persistence * factor,
                ..*s
            };
            sample.outcome(&spread, count(128)).within_delta_e_2000
        };
        let (half, whole, twice) = (times(0.5), times(1.0), times(2.0));
        assert!(half < whole && whole < twice, "{half} {whole} {twice}");
    }
}

/// A phototype is not a colour: words leave more doubt about a client than a measurement.
#[test]
fn a_measured_skin_leaves_less_doubt_than_words() {
    let [fair, _, _] = &samples()[..] else { panic!("three samples") };
    let told =
        Spread::SEEN.with_skin_of(&Prior::from_evidence(Phototype::II, Undertone::Cool, Redness::Rosy));
    let (seen, told) = (fair.outcome(&Spread::SEEN, count(128)), fair.outcome(&told, count(128)));
    assert!(seen.within_delta_e_2000 + 1.0 < told.within_delta_e_2000);
}

fn cloud() -> impl Strategy<Value = Vec<Lab>> {
    let colour = (0.0..100.0, -60.0..60.0, -60.0..60.0_f64).prop_map(|(l, a, b)| Lab::new(l, a, b));
    proptest::collection::vec(colour, 8..60)
}

proptest! {
    /// Mean, covariance and axes against nalgebra's symmetric eigenvalues; the axes stand on each other; exactly the share wanted
    /// lies inside.
    #[test]
    fn prop_ellipsoids_agree_with_nalgebra(cloud in cloud(), share in 0.1..1.0_f64) {
        let found = Ellipsoid::around(&cloud, share);
        let points = nalgebra::Matrix3xX::from_iterator(
            cloud.len(),
            cloud.iter().flat_map(|lab| [lab.l, lab.a, lab.b]),
        );
        let mean = points.column_mean();
        let off = nalgebra::Matrix3xX::from_fn(cloud.len(), |i, j| points[(i, j)] - mean[i]);
        let covariance = &off * off.transpose() / cloud.len() as f64;
        let near = |one: f64, other: f64| (one - other).abs() < 1e-8 * (1.0 + other.abs());
        for i in 0..3 {
            prop_assert!(near(found.centre[i], mean[i]));
            for j in 0..3 {
                prop_assert!(near(found.covariance[i][j], covariance[(i, j)]));
            }
        }
        let mut variances: Vec<f64> = covariance.symmetric_eigenvalues().iter().copied().collect();
        variances.sort_by(|one, other| other.total_cmp(one));
        for (axis, variance) in found.axes.iter().zip(&variances) {
            prop_assert!(near(axis.half_length, found.scale * variance.sqrt()));
            let v = nalgebra::Vector3::from(axis.direction);
            prop_assert!((covariance.fixed_view::<3, 3>(0, 0) * v - v * *variance).norm() < 1e-6);
            prop_assert!(near(v.norm(), 1.0));
        }
        let inside = cloud.iter().filter(|&&lab| found.holds(lab)).count();
        prop_assert_eq!(inside, (share * cloud.len() as f64).ceil() as usize);
    }
}
