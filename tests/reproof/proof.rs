//! A proof by other means. Entry point: [`prove`].

use crate::demo::course;
use healedhue::colour::{Lab, Light, difference};
use healedhue::course::{Client, Drill, Family, Limits};
use healedhue::exercise::{Action, Answer, Case, Choice, Exercise, Form, NumberOf};
use healedhue::healing::{Deviation, HEALED_MONTHS, Placement, Scene, Spread, Trial, Work, World};
use healedhue::pigment::{Mix, Paint};
use healedhue::skin::{Redness, Skin, Undertone};
use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{Rng, SeedableRng};
use std::collections::BTreeSet;

/// Worlds of a new proof.
const WORLDS: usize = 200;
/// Worlds for a verdict that asks after every mix in each of them.
const FEW_WORLDS: usize = 50;

/// An exercise is ambiguous where the key fails in more of the new worlds than chance explains. It was issued because it held in 95% of 200
/// others; where it truly fails in 5%, more than 28 of 200 fail, or 12 of 50, less than once in a million times (binomial).
fn may_fail(worlds: usize) -> usize {
    if worlds == FEW_WORLDS { 12 } else { 28 }
}

/// What a new proof found.
#[derive(Debug)]
pub struct Proved {
    pub family: Family,
    /// New worlds in which the key holds, and all of them, where worlds have a say.
    pub held: Option<Held>,
    /// Whether the key is the only longest text, and whether its colour is the middle one, where that can be asked.
    pub longest: Option<bool>,
    pub middle: Option<bool>,
    /// Where the key stands, and among how many, where one of several options is right.
    pub stands: Option<(usize, usize)>,
}

/// New worlds in which a key holds.
#[derive(Debug, Clone, Copy)]
pub struct Held {
    pub held: usize,
    pub of: usize,
}

impl Held {
    fn of(worlds: impl Iterator<Item = World>, holds: impl Fn(&World) -> bool) -> Self {
        let (mut held, mut of) = (0, 0);
        for world in worlds {
            of += 1;
            held += usize::from(holds(&world));
        }
        Held { held, of }
    }
}

fn normal(rng: &mut ChaCha8Rng) -> f64 {
    let uniform = |rng: &mut ChaCha8Rng| (rng.next_u32() as f64 + 0.5) / 4_294_967_296.0;
    (0..12).map(|_| uniform(rng)).sum::<f64>() - 6.0
}

/// Worlds like those of the course's own proofs, drawn otherwise: twelve uniform numbers make a normal one.
fn worlds(exercise: &Exercise, skin: Skin, placement: Placement) -> impl Iterator<Item = World> {
    let mut seed = [7; 32];
    for (place, byte) in exercise.drill.bytes().chain(exercise.number.to_le_bytes()).enumerate() {
        seed[place % 32] ^= byte.rotate_left(place as u32 / 32);
    }
    let mut rng = ChaCha8Rng::from_seed(seed);
    (0..WORLDS).map(move |_| {
        let mut draw = || normal(&mut rng);
        let skin_deviation = [draw(), draw(), draw(), draw(), draw(), 0.0];
        let deviation = Deviation { skin: skin_deviation, depth: draw(), load: draw() };
        World::at(&Spread::SEEN, &deviation, &skin, &placement)
    })
}

/// Every mix within the limits, listed anew: one bottle, and each way to share out drops of modifiers.
fn every_mix(limits: &Limits) -> Vec<Mix> {
    let most = limits.modifier_drops.min(limits.drops - 1);
    let mut ways: Vec<Vec<u32>> = vec![Vec::new()];
    for _ in &limits.modifiers {
        ways = ways
            .into_iter()
            .flat_map(|way| {
                let left = most - way.iter().sum::<u32>();
                (0..=left).map(move |count| way.iter().copied().chain([count]).collect())
            })
            .collect();
    }
    limits
        .bottles
        .iter()
        .flat_map(|bottle| {
            ways.iter().map(move |way| {
                let modifiers = limits.modifiers.iter().cloned().zip(way.iter().copied());
                let bottle = (bottle.clone(), limits.drops - way.iter().sum::<u32>());
                Mix::new(modifiers.filter(|(_, count)| *count > 0).chain([bottle]))
            })
        })
        .collect()
}

/// A case with everything that it is computed from.
struct Told<'e> {
    exercise: &'e Exercise,
    drill: &'e Drill,
    case: &'e Case,
    client: &'e Client,
}

impl Told<'_> {
    fn placement(&self) -> Placement {
        self.case.placed.map(|placed| placed.placement).unwrap_or_default()
    }

    fn months(&self) -> f64 {
        self.case.placed.map_or(HEALED_MONTHS, |placed| placed.months)
    }

    fn scene(&self, skin: &Skin, works: &[Work]) -> Scene<'static> {
        Scene::new(&course().shelf, skin, self.client.site, works, self.months())
    }

    fn lab(&self, trial: &Trial, paint: &Paint) -> Lab {
        self.case.light.lab_of(&trial.with(paint))
    }

    fn worlds(&self) -> impl Iterator<Item = World> {
        worlds(self.exercise, self.client.skin, self.placement())
    }
}

fn paint(mix: &Mix) -> Paint {
    course().shelf.paint_of(mix)
}

fn require(holds: bool, why: impl FnOnce() -> String) -> Result<(), String> {
    if holds { Ok(()) } else { Err(why()) }
}

/// Proves an exercise again.
pub fn prove(exercise: &Exercise, drill: &Drill) -> Result<Proved, String> {
    let mut proved =
        Proved { family: exercise.family, held: None, longest: None, middle: None, stands: None };
    options_differ(exercise)?;
    if let (Form::One(one), Answer::One(key)) = (&exercise.form, exercise.form.key()) {
        let options = &one.options;
        proved.stands = Some((key, options.len()));
        let lengths: Vec<usize> = options.iter().map(|option| option.label.chars().count()).collect();
        let longest = |at: usize| (0..lengths.len()).all(|other| other == at || lengths[other] < lengths[at]);
        proved.longest = (0..lengths.len()).any(longest).then(|| longest(key));
        let labs: Option<Vec<Lab>> = options.iter().map(|option| Some(option.healed?.lab)).collect();
        proved.middle = labs.filter(|labs| labs.len() > 2).map(|labs| middle_of(&labs) == key);
        require(options[key].mark.credit == 1.0, || "the key has no full credit".to_owned())?;
        for (place, option) in options.iter().enumerate().filter(|(place, _)| *place != key) {
            require(option.mark.credit < 1.0, || format!("option {place} is as good as the key"))?;
        }
    }
    let Some(case) = &exercise.case else { return Ok(proved) };
    let client = course().client(&case.client).ok_or("no such client")?;
    let told = Told { exercise, drill, case, client };
    proved.held = match exercise.family {
        Family::Bottle | Family::Drops => Some(nearest(&told)?),
        Family::Remedy => remedy(&told)?,
        Family::Foresight => Some(foreseen(&told)?),
        Family::Light => Some(under_the_lamp(&told)?),
        Family::Hindsight => Some(caused(&told)?),
        Family::Skin => match &exercise.form {
            Form::Number(number) => {
                angle(exercise, number)?;
                None
            }
            _ => Some(read(&told)?),
        },
        Family::Triage => {
            triage(&told)?;
            None
        }
        Family::Sequence | Family::Recall => None,
    };
    if let Some(Held { held, of }) = proved.held {
        require(of - held <= may_fail(of), || format!("the key holds in {held} of {of} new worlds"))?;
    }
    Ok(proved)
}

/// No two options say the same, place the same, or look the same.
fn options_differ(exercise: &Exercise) -> Result<(), String> {
    let options = exercise.form.options();
    let pictured = matches!(&exercise.form, Form::One(one) if one.pictured);
    for (at, one) in options.iter().enumerate() {
        for other in &options[at + 1..] {
            require(one.label != other.label, || format!("two options say {:?}", one.label))?;
            if let (Action::Place(one), Action::Place(other)) = (&one.action, &other.action) {
                require(one != other, || format!("two options place {one:?}"))?;
            }
            if let (true, Some(one), Some(other)) = (pictured, one.healed, other.healed) {
                let apart = difference(one.lab, other.lab);
                require(apart > 1.0, || format!("two options look the same: ΔE00 {apart}"))?;
            }
        }
    }
    if let Form::Order(order) = &exercise.form {
        let steps: BTreeSet<&str> = order.steps.iter().map(|step| step.say.as_str()).collect();
        require(steps.len() == order.steps.len(), || "two steps say the same".to_owned())?;
    }
    Ok(())
}

/// The option whose colour is nearest to the mean of all.
fn middle_of(labs: &[Lab]) -> usize {
    let count = labs.len() as f64;
    let mean = |of: fn(&Lab) -> f64| labs.iter().map(of).sum::<f64>() / count;
    let mean = Lab::new(mean(|lab| lab.l), mean(|lab| lab.a), mean(|lab| lab.b));
    let away: Vec<f64> = labs.iter().map(|lab| difference(*lab, mean)).collect();
    (0..labs.len()).min_by(|one, other| away[*one].total_cmp(&away[*other])).unwrap_or(0)
}

/// The mixes that are offered: the key, and the wrong ones.
fn offered(exercise: &Exercise) -> (Option<Mix>, Vec<Mix>) {
    let mix = |choice: &Choice| match &choice.action {
        Action::Place(mix) => Some(mix.clone()),
        _ => None,
    };
    match &exercise.form {
        Form::Drops(drops) => (mix(&drops.best), drops.tempting.iter().filter_map(mix).collect()),
        Form::One(one) => {
            let wrong = one.options.iter().enumerate().filter(|(place, _)| *place != one.key);
            (mix(&one.options[one.key]), wrong.filter_map(|(_, choice)| mix(choice)).collect())
        }
        _ => (None, Vec::new()),
    }
}

/// The key is the best of every mix there is and reaches the goal; every wrong mix misses it, and is worse by the margin.
fn nearest(told: &Told) -> Result<Held, String> {
    let goal = told.case.goal.as_ref().ok_or("no goal")?;
    let works = told.client.works();
    let scene = told.scene(&told.client.skin, &works);
    let trial = scene.trial(&told.placement());
    let error = |mix: &Mix| difference(told.lab(&trial, &paint(mix)), goal.lab);
    let (key, wrong) = offered(told.exercise);
    let key = key.ok_or("the key is no mix")?;
    let best = error(&key);
    require(best <= goal.tolerance, || format!("the key misses the goal by {best}"))?;
    let all = every_mix(&told.drill.limits);
    require(all.contains(&key), || "the key is outside the limits".to_owned())?;
    for mix in &all {
        let other = error(mix);
        require(other >= best, || format!("{mix:?} heals nearer to the goal: {other} against {best}"))?;
    }
    for mix in &wrong {
        let other = error(mix);
        require(other > goal.tolerance && other - best >= told.drill.margin, || {
            format!("{mix:?} is not wrong enough: {other} against {best}")
        })?;
    }
    Ok(held_by(told, &works, &key, &wrong, goal.lab))
}

/// In how many worlds the key beats the wrong mixes.
fn held_by(told: &Told, works: &[Work], key: &Mix, wrong: &[Mix], goal: Lab) -> Held {
    let (key, wrong): (Paint, Vec<Paint>) = (paint(key), wrong.iter().map(paint).collect());
    let holds = |world: &World| {
        let scene = told.scene(&world.skin, works);
        let trial = scene.trial(&world.placement);
        let best = difference(told.lab(&trial, &key), goal);
        wrong.iter().all(|paint| difference(told.lab(&trial, paint), goal) > best)
    };
    Held::of(told.worlds(), holds)
}

/// A caution decides for referring; else colour reaches the goal, or nothing but lightening helps.
fn remedy(told: &Told) -> Result<Option<Held>, String> {
    let options = told.exercise.form.options();
    let Answer::One(key) = told.exercise.form.key() else { return Err("no option is right".to_owned()) };
    let kind = &options[key].action;
    if told.client.cautions().next().is_some() {
        require(*kind == Action::Refer, || "a caution does not decide".to_owned())?;
        let earns = options.iter().filter(|option| option.mark.credit > 0.0).count();
        return require(earns == 1, || "something unsafe earns credit".to_owned()).map(|()| None);
    }
    if matches!(kind, Action::Place(_)) {
        return nearest(told).map(Some);
    }
    require(*kind == Action::Lighten, || "to refer is right without a caution".to_owned())?;
    let goal = told.case.goal.as_ref().ok_or("no goal")?;
    let paints: Vec<Paint> = every_mix(&told.drill.limits).iter().map(paint).collect();
    let works = told.client.works();
    let lightened: Vec<Work> = works
        .iter()
        .map(|work| Work {
            placement: Placement { load: work.placement.load * 0.1, ..work.placement },
            ..work.clone()
        })
        .collect();
    // Paints in the order of their errors in this case, so that the likeliest is asked first in the others.
    let errors = |skin: &Skin, works: &[Work], placement: &Placement| -> Vec<f64> {
        let scene = told.scene(skin, works);
        let trial = scene.trial(placement);
        paints.iter().map(|paint| difference(told.lab(&trial, paint), goal.lab)).collect()
    };
    let least = |errors: &[f64]| errors.iter().copied().fold(f64::INFINITY, f64::min);
    let now = least(&errors(&told.client.skin, &works, &told.placement()));
    let then = least(&errors(&told.client.skin, &lightened, &told.placement()));
    require(now >= goal.tolerance + told.drill.margin, || format!("colour comes as near as {now}"))?;
    require(then <= goal.tolerance, || format!("lightening leaves {then}"))?;
    let holds = |world: &World| {
        least(&errors(&world.skin, &works, &world.placement)) > goal.tolerance
            && least(&errors(&world.skin, &lightened, &world.placement)) <= goal.tolerance + told.drill.margin
    };
    Ok(Some(Held::of(told.worlds().take(FEW_WORLDS), holds)))
}

/// The mix that a text names.
fn named(limits: &Limits, names: impl Fn(&str) -> bool) -> Result<Mix, String> {
    let mut found = every_mix(limits).into_iter().filter(|mix| names(&course().shelf.mix_in_words(mix)));
    let mix = found.next().ok_or("no mix is named")?;
    require(found.next().is_none(), || "two mixes are named".to_owned())?;
    Ok(mix)
}

/// The colours of the options, the key's first, all apart from it by the drill's margin.
fn colours(told: &Told) -> Result<Vec<Lab>, String> {
    let Form::One(one) = &told.exercise.form else { return Err("no options".to_owned()) };
    let lab =
        |place: usize| one.options[place].healed.map(|seen| seen.lab).ok_or("an option without a colour");
    let mut labs = vec![lab(one.key)?];
    for place in (0..one.options.len()).filter(|place| *place != one.key) {
        let wrong = lab(place)?;
        let apart = difference(wrong, labs[0]);
        require(apart >= told.drill.margin, || format!("a wrong colour is ΔE00 {apart} from the key"))?;
        labs.push(wrong);
    }
    Ok(labs)
}

/// In how many worlds what is seen is nearest to the first colour.
fn nearest_share(told: &Told, labs: &[Lab], seen: impl Fn(&World) -> Lab) -> Held {
    let holds = |world: &World| {
        let seen = seen(world);
        let key = difference(seen, labs[0]);
        labs[1..].iter().all(|lab| difference(seen, *lab) > key)
    };
    Held::of(told.worlds(), holds)
}

fn foreseen(told: &Told) -> Result<Held, String> {
    let begins = |words: &str| told.exercise.ask.starts_with(&format!("{} gets {words}. ", told.client.name));
    let paint = paint(&named(&told.drill.limits, begins)?);
    let works = told.client.works();
    let seen = |skin: &Skin, placement: &Placement| {
        let scene = told.scene(skin, &works);
        told.lab(&scene.trial(placement), &paint)
    };
    let labs = colours(told)?;
    require(seen(&told.client.skin, &told.placement()) == labs[0], || {
        "the key is another colour".to_owned()
    })?;
    Ok(nearest_share(told, &labs, |world| seen(&world.skin, &world.placement)))
}

fn under_the_lamp(told: &Told) -> Result<Held, String> {
    let exhibit = told.case.exhibits.first().ok_or("nothing is shown")?;
    let paint = paint(&named(&told.drill.limits, |words| exhibit.label.ends_with(&format!(": {words}")))?);
    let works = told.client.works();
    let both = |skin: &Skin, placement: &Placement| {
        let reflectance = told.scene(skin, &works).with(&paint, placement);
        (Light::D65.lab_of(&reflectance), told.case.light.lab_of(&reflectance))
    };
    let labs = colours(told)?;
    let (day, lamp) = both(&told.client.skin, &told.placement());
    require((day, lamp) == (exhibit.seen.lab, labs[0]), || "the key is another colour".to_owned())?;
    Ok(nearest_share(told, &labs, |world| {
        let (here, there) = both(&world.skin, &world.placement);
        Lab::new(day.l + there.l - here.l, day.a + there.a - here.a, day.b + there.b - here.b)
    }))
}

fn caused(told: &Told) -> Result<Held, String> {
    let Form::One(one) = &told.exercise.form else { return Err("no options".to_owned()) };
    let exhibit = told.case.exhibits.first().ok_or("nothing is shown")?;
    // "5 drops Kelderwick, 1 drop Emberlow, 2 years ago"
    let cause = |choice: &Choice| -> Result<(Paint, f64), String> {
        let (mix, ago) = choice.label.rsplit_once(", ").ok_or("no time")?;
        let years = ago.strip_suffix(" years ago").map_or(Ok(1.0), str::parse).map_err(|_| "no years")?;
        Ok((paint(&named(&told.drill.limits, |words| words == mix)?), 12.0 * years))
    };
    // The placement is not told of: it must be one of those that cases have.
    let residual = |(paint, months): &(Paint, f64), skin: &Skin, placement: &Placement| {
        let scene = Scene::new(&course().shelf, skin, told.client.site, &[], *months);
        told.case.light.lab_of(&scene.with(paint, placement))
    };
    let causes: Vec<(Paint, f64)> = one.options.iter().map(cause).collect::<Result<_, _>>()?;
    let fits = |placement: &Placement| {
        let all = one.options.iter().zip(&causes);
        all.into_iter().all(|(option, cause)| {
            option.healed.is_some_and(|seen| seen.lab == residual(cause, &told.client.skin, placement))
        })
    };
    let placements = [0.10, 0.12, 0.14, 0.16].into_iter().flat_map(|depth_mm| {
        [0.85, 1.0, 1.15].into_iter().flat_map(move |load| {
            [0.8, 0.85, 0.9].into_iter().map(move |coverage| Placement {
                depth_mm,
                load,
                coverage,
                ..Placement::default()
            })
        })
    });
    let placement = placements.into_iter().find(fits).ok_or("the options leave other residuals")?;
    let labs = colours(told)?;
    require(exhibit.seen.lab == labs[0], || "what is shown is not what the key leaves".to_owned())?;
    let key = &causes[one.key];
    let holds = |world: &World| {
        let seen = residual(key, &world.skin, &world.placement);
        let own = difference(seen, labs[0]);
        labs[1..].iter().all(|lab| difference(seen, *lab) > own)
    };
    let worlds = worlds(told.exercise, told.client.skin, placement);
    Ok(Held::of(worlds, holds))
}

/// Of all sixteen readings, the key is the one that looks most like the client.
fn read(told: &Told) -> Result<Held, String> {
    let Form::One(one) = &told.exercise.form else { return Err("no options".to_owned()) };
    let bare = |skin: &Skin| {
        let scene = Scene::today(&course().shelf, skin, told.client.site, &[]);
        told.case.light.lab_of(&scene.bare())
    };
    let own = bare(&told.client.skin);
    let mut best: Option<(f64, String)> = None;
    for (undertone, _) in Undertone::ALL {
        for (redness, _) in Redness::ALL {
            let like =
                told.client.site.skin_of(Skin::from_evidence(told.client.phototype, undertone, redness));
            let away = difference(bare(&Skin { melanin: told.client.skin.melanin, ..like }), own);
            if best.as_ref().is_none_or(|(least, _)| away < *least) {
                best = Some((away, format!("{} undertone, {} skin", undertone.word(), redness.word())));
            }
        }
    }
    let best = best.map(|(_, words)| words).unwrap_or_default();
    require(one.options[one.key].label == best, || format!("{best} comes nearer"))?;
    let labs = colours(told)?;
    Ok(nearest_share(told, &labs, |world| bare(&Skin { melanin: told.client.skin.melanin, ..world.skin })))
}

/// ITA by its definition, from the numbers in the question.
fn angle(exercise: &Exercise, number: &NumberOf) -> Result<(), String> {
    let after = |mark: &str| -> Result<f64, String> {
        let rest = exercise.ask.split(mark).nth(1).ok_or("a number is missing")?;
        let number = rest.split(' ').next().unwrap_or_default().replace('\u{2212}', "-");
        number.parse().map_err(|_| "not a number".to_owned())
    };
    let ita = f64::atan2(after("L*\u{a0}")? - 50.0, after("b*\u{a0}")?) * 180.0 / std::f64::consts::PI;
    require((ita - number.key).abs() < 1e-9, || format!("{} should be {ita}", number.key))?;
    for wrong in &number.tempting {
        let away = (wrong.value - ita).abs();
        require(away >= number.worthless, || format!("{} is nearly right", wrong.value))?;
    }
    Ok(())
}

/// The course's cautions decide; whoever has none may be worked on.
fn triage(told: &Told) -> Result<(), String> {
    let Answer::One(key) = told.exercise.form.key() else { return Ok(()) };
    let right = &told.exercise.form.options()[key];
    let cautions = told.client.cautions().filter_map(|id| course().caution(id));
    for caution in cautions {
        require(!right.label.starts_with("Go on"), || "work goes on against a caution".to_owned())?;
        let said = &right.mark.consequence;
        require(said.contains(&caution.name) && said.contains(&caution.refer_to), || {
            format!("{} is not named", caution.name)
        })?;
    }
    let goes_on = right.label.starts_with("Go on");
    require(told.client.cautions().next().is_none() == goes_on, || "nothing calls for it".to_owned())
}
