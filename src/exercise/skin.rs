//! `skin`: read undertone and redness, or work out the typology angle.
//!
//! A reading: of all sixteen pairs of undertone and redness at this client's melanin, the key is the pair whose skin looks most like
//! the client's; wrong pairs are what confusions lead to. An angle: from L* and b* of the client's skin as a device would give them.

use super::draw::Setting;
use super::form::{Form, NumberOf, WrongNumber};
use super::generate::{Attempt, Discard, ENGINE};
use super::prediction::{Expected, Prediction};
use super::seed::below;
use super::{Exercise, Proof};
use crate::colour::difference;
use crate::course::{Course, Drill, Lesson, Rule, SkinAsks};
use crate::healing::{Appearance, Scene};
use crate::skin::{Phototype, Redness, Skin, Undertone, ita_degrees};

/// One attempt at an exercise.
pub(super) fn attempt(
    course: &Course,
    lesson: &Lesson,
    drill: &Drill,
    mut draw: Attempt,
) -> Result<Exercise, Discard> {
    let setting = Setting::draw(course, drill, draw.client, &mut draw.rng).ok_or(Discard::Unresolved)?;
    match drill.skin_asks {
        SkinAsks::Reading => reading(course, lesson, drill, draw, &setting),
        SkinAsks::Angle => angle(course, lesson, drill, draw, &setting),
    }
}

fn reading(
    course: &Course,
    lesson: &Lesson,
    drill: &Drill,
    mut draw: Attempt,
    setting: &Setting,
) -> Result<Exercise, Discard> {
    let client = setting.client;
    let shelf = &course.shelf;
    let seen = |undertone: Undertone, redness: Redness| {
        let like = client.site.skin_of(Skin::from_evidence(client.phototype, undertone, redness));
        let skin = Skin { melanin: client.skin.melanin, ..like };
        Appearance::of(Scene::today(shelf, &skin, client.site, &[]).bare(), setting.light)
    };
    let own = Appearance::of(Scene::today(shelf, &client.skin, client.site, &[]).bare(), setting.light);
    let pairs = Undertone::ALL
        .iter()
        .flat_map(|&(undertone, _)| Redness::ALL.iter().map(move |&(redness, _)| (undertone, redness)));
    let distance =
        |&(undertone, redness): &(Undertone, Redness)| difference(seen(undertone, redness).lab, own.lab);
    let (undertone, redness) =
        pairs.min_by(|one, other| distance(one).total_cmp(&distance(other))).ok_or(Discard::Unresolved)?;
    let step = |by: i32| {
        let place = (redness as i32 + by).clamp(0, Redness::ALL.len() as i32 - 1);
        Redness::ALL[place as usize].0
    };
    let confusion = |rule: Rule| match rule {
        Rule::RednessAsUndertone if redness >= Redness::Rosy && undertone != Undertone::Cool => Some((
            (Undertone::Cool, step(-2)),
            "What is red here is blood, not a cool undertone: it pales when pressed",
        )),
        Rule::UndertoneAsRedness if undertone == Undertone::Cool => Some((
            (Undertone::Neutral, step(2)),
            "The pink lies in the undertone; pressing hardly changes it",
        )),
        Rule::DarkAsWarm if client.phototype >= Phototype::IV && undertone != Undertone::Warm => Some((
            (Undertone::Warm, redness),
            "Depth is not warmth: b* tells how golden skin is, whatever its L*",
        )),
        Rule::OliveAsWarm if undertone == Undertone::Olive => {
            Some(((Undertone::Warm, step(1)), "It is yellow, but it lacks the red that would make it golden"))
        }
        Rule::WarmAsOlive if undertone == Undertone::Warm => {
            Some(((Undertone::Olive, step(-1)), "It is yellow, and it has the red that olive skin lacks"))
        }
        Rule::FlushIsSkin if redness <= Redness::Rosy => Some((
            (undertone, step(2)),
            "That is how it looks after a quick walk; judge it again after ten minutes",
        )),
        Rule::LightIsCool if client.phototype <= Phototype::II && undertone != Undertone::Cool => Some((
            (Undertone::Cool, redness),
            "Lightness is L*; what makes skin cool is a lack of yellow, and this skin has its yellow",
        )),
        Rule::NeutralInDoubt if undertone != Undertone::Neutral => Some((
            (Undertone::Neutral, redness),
            "It leans: compare a* and b* with those of neutral skin as light as this",
        )),
        _ => None,
    };
    let words = |undertone: Undertone, redness: Redness| {
        format!("{} undertone, {} skin", undertone.word(), redness.word())
    };
    let key = Expected {
        seen: own,
        label: words(undertone, redness),
        because: "Of all pairs of undertone and redness, this one comes nearest to the skin that is shown."
            .to_owned(),
        misconception: None,
    };
    let prediction = Prediction::draw(course, drill, &mut draw, own.lab, key, |rule| {
        confusion(rule).map(|((undertone, redness), because)| {
            (seen(undertone, redness), words(undertone, redness), format!("{because}."))
        })
    })?;
    let (worlds, held) = prediction.hold(setting, &draw.words(drill), |world| {
        // What may vary is how the client looks today; how dark the skin is, is seen.
        let skin = Skin { melanin: client.skin.melanin, ..world.skin };
        setting.light.lab_of(&Scene::today(shelf, &skin, client.site, &[]).bare())
    })?;
    let proof = Proof {
        searched: Undertone::ALL.len() * Redness::ALL.len(),
        best_error: 0.0,
        margin: Some(prediction.margin()),
        worlds,
        held,
        discarded: draw.number,
    };
    let ask =
        format!("This is {}'s bare skin. Which reading of undertone and redness fits it best?", client.name);
    let choices = prediction.choices(course, lesson, own.lab);
    let case = super::Case { goal: None, placed: None, skin_is_told: false, ..setting.case(shelf) };
    let form = draw.one_of(choices);
    Ok(draw.finish(lesson, drill, ask, case, form, Some(proof), ENGINE))
}

/// Degrees by which an angle may be off: the rounding of L* and b* to one decimal moves it by less.
const TOLERANCE_DEGREES: f64 = 1.0;
/// Degrees at which it is another class of skin.
const WORTHLESS_DEGREES: f64 = 6.0;
/// How L* and b* of a careful reading scatter (representative).
const READINGS: [f64; 5] = [-0.8, -0.4, 0.0, 0.4, 0.8];

fn angle(
    course: &Course,
    lesson: &Lesson,
    drill: &Drill,
    mut draw: Attempt,
    setting: &Setting,
) -> Result<Exercise, Discard> {
    let client = setting.client;
    let mut case = super::Case { goal: None, placed: None, ..setting.case(&course.shelf) };
    let lab = case.bare.lab;
    let rounded = |value: f64| libm::round(value * 10.0) / 10.0;
    let l = rounded(lab.l + READINGS[below(&mut draw.rng, READINGS.len())]);
    let b = rounded(lab.b + READINGS[below(&mut draw.rng, READINGS.len())]);
    let key = ita_degrees(crate::colour::Lab { l, b, ..lab });
    let wrong = |rule: Rule| match rule {
        Rule::AngleUpsideDown => Some((
            libm::atan2(b, l - 50.0).to_degrees(),
            "The fraction stands upside down: L* minus 50 goes above b*.",
        )),
        Rule::AngleWithoutFifty => Some((
            libm::atan2(l, b).to_degrees(),
            "50 has to be taken off L* first: the angle is counted from middle grey.",
        )),
        Rule::AngleInRadians => {
            Some((key.to_radians(), "That is the angle in radians; 180/π times as many degrees."))
        }
        _ => None,
    };
    let mut tempting = Vec::new();
    let mut lessons = lesson.id.clone();
    for id in &drill.tempts {
        let Some(misconception) = course.misconception(id) else { continue };
        if let Some((value, why)) = wrong(misconception.rule)
            && (value - key).abs() >= WORTHLESS_DEGREES
        {
            lessons.clone_from(&misconception.lesson);
            tempting.push(WrongNumber { value, why: why.to_owned(), misconception: id.clone() });
        }
    }
    if tempting.is_empty() {
        return Err(Discard::TooFewTemptations);
    }
    case.skin_is_told = false;
    let ask = format!(
        "A device reads L* {l:.1} and b* {b:.1} on {}'s bare skin. What is the individual typology angle, in degrees?",
        client.name
    );
    let form = Form::Number(NumberOf {
        name: "individual typology angle".to_owned(),
        unit: "°".to_owned(),
        key,
        tolerance: TOLERANCE_DEGREES,
        worthless: WORTHLESS_DEGREES,
        why: format!("ITA = atan((L* - 50) / b*) = atan({:.1} / {b:.1}).", l - 50.0),
        tempting,
        lesson: lessons,
    });
    Ok(draw.finish(
        lesson,
        drill,
        ask,
        case,
        form,
        None,
        "ITA as defined by Chardon, Cretois and Hourseau (1991)",
    ))
}
