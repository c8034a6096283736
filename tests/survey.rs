//! What the bench asks the engine: a survey of times and lights, and the outlines of regions.

use crate::demo::course;
use healedhue::colour::{DisplayP3, Ellipsoid, Lab, Light, Outline, difference};
use healedhue::foresee::{Answer, Request, SURVEY_MONTHS, Survey};
use healedhue::healing::{Outcome, Spread, Worlds};
use healedhue::search::Goal;
use healedhue::wasm::Door;
use proptest::prelude::*;
use serde_json::{Value, json};

const CASE: &str = r#"{"skin": {"phototype": "II", "redness": "ruddy"}, "mix": {"kelderwick": 4, "emberlow": 2},
    "existing": [{"colourants": {"PBk7": 0.15}, "placement": {"depth_mm": 0.45}, "months": 72}], "sun": "outdoors",
    "touch_ups": [{"months": 18}], "worlds": 0}"#;

fn request() -> Request {
    Request::from_json(CASE).unwrap()
}

#[test]
fn a_survey_has_the_colours_that_foresee_answers() {
    let shelf = &course().shelf;
    let goal = Goal { lab: Lab::new(46.0, 8.0, 13.0), tolerance: 4.0 };
    let survey = Survey::of(shelf, &request().resolve(shelf).unwrap(), Some(goal));
    assert_eq!(survey.moments.len(), SURVEY_MONTHS.len());
    for moment in &survey.moments {
        for (seen, (light, _)) in moment.seen.iter().zip(Light::ALL) {
            let request = Request { months: moment.months, light, ..request() };
            let answer = Answer::of(shelf, &request.resolve(shelf).unwrap());
            let [l, a, b] = answer.lab;
            assert_eq!(
                (
                    seen.light,
                    seen.colour.lab,
                    seen.colour.srgb,
                    seen.colour.in_gamut,
                    seen.bare_skin.lab,
                    &seen.reading
                ),
                (light, answer.lab, answer.srgb, answer.in_gamut, answer.bare_skin_lab, &answer.reading)
            );
            assert_eq!(seen.delta_e_2000_to_goal, Some(difference(Lab::new(l, a, b), goal.lab)));
        }
    }
    let task = request().resolve(shelf).unwrap();
    let (bare, today) = task.today(shelf);
    assert_eq!(survey.bare[0].colour.lab, [bare.lab.l, bare.lab.a, bare.lab.b]);
    assert_eq!(survey.today[0].colour.lab, [today.lab.l, today.lab.a, today.lab.b]);
}

#[test]
fn a_case_without_old_work_has_no_picture_of_it() {
    let mut door = Door::default();
    door.shelf(&serde_json::to_string(&course().shelf).unwrap()).unwrap();
    let survey = door.survey(r#"{"case": {"skin": {"phototype": "V"}}}"#).unwrap();
    let survey: Value = serde_json::from_str(&survey).unwrap();
    assert_eq!((&survey["today"], &survey["goal"], &survey["mix"]), (&json!([]), &Value::Null, &json!("")));
    for (question, field) in [
        (r#"{"case": {"skin": {}}}"#, "skin"),
        (r#"{"case": {"skin": {"phototype": "X"}}}"#, "case.skin.phototype"),
        (r#"{"case": {"skin": {"phototype": "V"}}, "goal": {"lab": [200, 0, 0], "tolerance": 4}}"#, "goal"),
    ] {
        let refusal: Value = serde_json::from_str(&door.survey(question).unwrap_err()).unwrap();
        assert_eq!(refusal["error"]["field"], field, "{question}");
    }
}

/// sRGB colours in Display P3 by colour-science 0.4.7 (`RGB_to_RGB` without adaptation). Our white is integrated from tables, which moves
/// them a little: less than half a step of 8 bits.
#[test]
fn display_p3_is_that_of_its_primaries() {
    for (srgb, expected) in [
        ("#ff0000", [0.9175, 0.2003, 0.1386]),
        ("#00ff00", [0.4584, 0.9853, 0.2983]),
        ("#0000ff", [0.0, 0.0, 0.9596]),
        ("#ffffff", [1.0, 1.0, 1.0]),
        ("#808080", [0.502, 0.502, 0.502]),
    ] {
        let shown = DisplayP3::from_lab(healedhue::colour::Srgb::from_hex(srgb).unwrap().to_lab());
        assert!(shown.in_gamut, "{srgb}");
        for (found, expected) in shown.rgb.iter().zip(expected) {
            assert!((found - expected).abs() < 2e-3, "{srgb}: {:?}", shown.rgb);
        }
    }
    assert!(!DisplayP3::from_lab(Lab::new(60.0, 120.0, 80.0)).in_gamut);
}

fn ellipsoid() -> (Vec<Lab>, Ellipsoid) {
    let shelf = &course().shelf;
    let task = request().resolve(shelf).unwrap();
    let case =
        healedhue::healing::Case { shelf, skin: &task.skin, placement: &task.placement, colourants: &[] };
    let cloud =
        Outcome::cloud(&case, &Spread::SEEN, Worlds { count: 64, ..Worlds::default() }, |_, world| {
            Lab::new(50.0 * world.placement.load, 4.0 * world.placement.depth_mm, 900.0 * world.skin.melanin)
        });
    let ellipsoid = Ellipsoid::around(&cloud, 0.9);
    (cloud, ellipsoid)
}

/// The shadow's extent in a direction d is scale·√(dᵀ·covariance·d): the support function of an ellipsoid.
#[test]
fn an_ellipsoid_throws_the_shadow_its_covariance_says() {
    let (cloud, ellipsoid) = ellipsoid();
    let outline = Outline::of_shadow(&ellipsoid);
    for degrees in (0..360).step_by(5) {
        let (sine, cosine) = f64::from(degrees).to_radians().sin_cos();
        let [_, [_, aa, ab], [_, _, bb]] = ellipsoid.covariance;
        let expected =
            ellipsoid.scale * (cosine * cosine * aa + 2.0 * cosine * sine * ab + sine * sine * bb).sqrt();
        let reach = outline
            .ab
            .iter()
            .map(|[a, b]| (a - ellipsoid.centre[1]) * cosine + (b - ellipsoid.centre[2]) * sine)
            .fold(0.0, f64::max);
        assert!((reach - expected).abs() < 1e-9 * expected.max(1.0), "{degrees}°: {reach} {expected}");
    }
    let [least, most] = [f64::min, f64::max].map(|of| outline.cl.iter().map(|[_, l]| *l).reduce(of).unwrap());
    let height = ellipsoid.scale * ellipsoid.covariance[0][0].sqrt();
    assert!((most - least - 2.0 * height).abs() < 0.02 * height, "{least} {most} {height}");
    // What lies in the region lies in its image, up to the fineness of the points.
    for lab in cloud.iter().filter(|lab| ellipsoid.holds(**lab)) {
        for pair in outline.cl.windows(2) {
            let ([c0, l0], [c1, l1]) = (pair[0], pair[1]);
            let side = (c1 - c0) * (lab.l - l0) - (l1 - l0) * (lab.chroma() - c0);
            assert!(side > -0.05 * ((c1 - c0).hypot(l1 - l0)).max(0.1), "{lab:?}");
        }
    }
}

#[test]
fn a_region_without_extent_is_a_point() {
    let point = Ellipsoid::around(&[Lab::new(50.0, 3.0, 4.0)], 0.9);
    let outline = Outline::of_shadow(&point);
    assert!(outline.ab.iter().all(|ab| *ab == [3.0, 4.0]));
    assert!(outline.cl.iter().all(|cl| *cl == [5.0, 50.0]));
}

proptest! {
    #[test]
    fn prop_a_goals_outline_lies_at_its_tolerance(
        l in 20.0..80.0, a in -20.0..40.0, b in -20.0..50.0, tolerance in 0.5..15.0,
    ) {
        let goal = Lab::new(l, a, b);
        let outline = Outline::at_distance(goal, tolerance);
        for [a, b] in &outline.ab {
            let away = difference(Lab::new(l, *a, *b), goal);
            prop_assert!((away - tolerance).abs() < 1e-4, "{away} {tolerance}");
        }
        let chroma = goal.chroma();
        for [c, l] in outline.cl.iter().filter(|[c, _]| *c > 0.0) {
            let away = difference(Lab::new(*l, c * a / chroma, c * b / chroma), goal);
            prop_assert!((away - tolerance).abs() < 1e-4, "{away} {tolerance}");
        }
    }
}
