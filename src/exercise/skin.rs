//! `skin`: read undertone and redness, or work out the typology angle.
//!
//! A reading: of all sixteen pairs of undertone and redness at this client's melanin, the key is the pair whose skin looks most like
//! the client's; wrong pairs are what confusions lead to. An angle: from L* and b* of the client's skin as a device would give them.

use super::draw::Setting;
use super::form::{Form, NumberOf, WrongNumber};
use super::generate::{Attempt, Discard, engine};
use super::prediction::{Expected, Prediction};
use super::seed::below;
use super::worlds::{Melanin, Named};
use super::{Exercise, Proof};
use crate::colour::{Lab, Srgb, difference};
use crate::course::{Course, Drill, Lesson, Rule, SkinAsks};
use crate::healing::{Appearance, Reading, Scene};
use crate::say;
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
    let Course { shelf, language, .. } = course;
    let seen = |undertone: Undertone, redness: Redness| {
        let like = client.skin_with(undertone, redness);
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
        Rule::RednessAsUndertone if redness >= Redness::Rosy && undertone != Undertone::Cool => {
            Some(((Undertone::Cool, step(-2)), "exercise-skin-red"))
        }
        Rule::UndertoneAsRedness if undertone == Undertone::Cool => {
            Some(((Undertone::Neutral, step(2)), "exercise-skin-pink"))
        }
        Rule::DarkAsWarm if client.phototype >= Phototype::IV && undertone != Undertone::Warm => {
            Some(((Undertone::Warm, redness), "exercise-skin-dark"))
        }
        Rule::OliveAsWarm if undertone == Undertone::Olive => {
            Some(((Undertone::Warm, step(1)), "exercise-skin-olive"))
        }
        Rule::WarmAsOlive if undertone == Undertone::Warm => {
            Some(((Undertone::Olive, step(-1)), "exercise-skin-golden"))
        }
        Rule::FlushIsSkin if redness <= Redness::Rosy => Some(((undertone, step(2)), "exercise-skin-flush")),
        Rule::LightIsCool if client.phototype <= Phototype::II && undertone != Undertone::Cool => {
            Some(((Undertone::Cool, redness), "exercise-skin-light"))
        }
        Rule::NeutralInDoubt if undertone != Undertone::Neutral => {
            Some(((Undertone::Neutral, redness), "exercise-skin-leans"))
        }
        _ => None,
    };
    let words = |undertone: Undertone, redness: Redness| {
        let (undertone, redness) = (undertone.said(language), redness.said(language));
        say!(language, "exercise-skin-pair", undertone = undertone, redness = redness)
    };
    let key = Expected {
        seen: own,
        label: words(undertone, redness),
        because: language.say("exercise-skin-right", &[]),
        misconception: None,
    };
    let prediction = Prediction::draw(course, drill, &mut draw, own.lab, key, |rule| {
        let expected = confusion(rule).map(|((undertone, redness), because)| {
            (seen(undertone, redness), words(undertone, redness), language.say(because, &[]))
        });
        expected.into_iter().collect()
    })?;
    // What may vary is how the client looks today; how dark the skin is, is seen.
    let words = Named { melanin: Melanin::Seen, ..draw.words(drill) };
    let (worlds, held) = prediction.hold(setting, &words, |world| setting.light.lab_of(&world.bare()))?;
    let proof = Proof {
        searched: Undertone::ALL.len() * Redness::ALL.len(),
        best_error: 0.0,
        as_it_is: None,
        margin: Some(prediction.margin()),
        worlds,
        held,
        runners_up: prediction.runners_up(),
        discarded: draw.number,
    };
    let ask = say!(language, "exercise-skin-ask", client = &client.name);
    let choices = prediction.choices(course, lesson, own.lab);
    let told = setting.case(course);
    // It is the skin that is read, whatever work lies in it.
    let case = super::Case {
        goal: None,
        placed: None,
        skin_is_told: false,
        now: told.bare,
        now_reading: Reading::of(told.bare.lab, told.bare.lab, client.site).in_language(language),
        ..told
    };
    let form = draw.one_of(drill, choices);
    Ok(draw.finish(lesson, drill, ask, case, form, Some(proof), &engine(course)))
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
    let (client, language) = (setting.client, &course.language);
    let mut case = super::Case { goal: None, placed: None, ..setting.case(course) };
    let lab = case.bare.lab;
    let rounded = |value: f64| libm::round(value * 10.0) / 10.0;
    let l = rounded(lab.l + READINGS[below(&mut draw.rng, READINGS.len())]);
    let b = rounded(lab.b + READINGS[below(&mut draw.rng, READINGS.len())]);
    let key = ita_degrees(Lab { l, b, ..lab });
    let wrong = |rule: Rule| match rule {
        Rule::AngleUpsideDown => Some((libm::atan2(b, l - 50.0).to_degrees(), "exercise-angle-upside-down")),
        Rule::AngleWithoutFifty => Some((libm::atan2(l, b).to_degrees(), "exercise-angle-without-fifty")),
        Rule::AngleInRadians => Some((key.to_radians(), "exercise-angle-radians")),
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
            tempting.push(WrongNumber { value, why: language.say(why, &[]), misconception: id.clone() });
        }
    }
    if tempting.is_empty() {
        return Err(Discard::TooFewTemptations);
    }
    case.skin_is_told = false;
    // What is shown is what was read.
    case.device_reads = true;
    case.bare.lab = Lab { l, b, ..lab };
    case.bare.srgb = Srgb::from_lab(case.bare.lab);
    case.now = case.bare;
    case.now_reading = Reading::of(case.bare.lab, case.bare.lab, client.site).in_language(language);
    let [above, l, b] = [l - 50.0, l, b].map(|value| language.decimal(value, 1));
    let ask = say!(language, "exercise-angle-ask", client = &client.name, l = l, b = &b);
    let form = Form::Number(NumberOf {
        name: language.say("exercise-angle-name", &[]),
        unit: "°".to_owned(),
        key,
        tolerance: TOLERANCE_DEGREES,
        worthless: WORTHLESS_DEGREES,
        why: say!(language, "exercise-angle-why", above = above, b = b),
        tempting,
        lesson: lessons,
    });
    Ok(draw.finish(lesson, drill, ask, case, form, None, &language.say("exercise-angle-source", &[])))
}
