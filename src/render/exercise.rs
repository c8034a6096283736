//! An exercise as pages and worksheets show it: the case, the options, and what would follow from each.
//!
//! Entry point: [`ExerciseView::new`]. A view holds everything; templates choose what to show when.

use super::drawing::Drawn;
use super::figures;
use super::form::{FormView, key_in_short, options};
use super::frame::Link;
use super::plan::{self, href_to, text_path};
use super::swatch::Swatch;
use crate::colour::Light;
use crate::course::{Client, Course, Family};
use crate::exercise::{Action, Case, Choice, Exercise, Form};
use crate::healing::{Appearance, Placement, Reading, Scene};
use crate::language::Language;
use crate::say;
use serde::Serialize;

/// An exercise with all that follows from its options.
#[derive(Debug, Serialize)]
pub(super) struct ExerciseView {
    /// Id on the page, unique there.
    pub anchor: String,
    /// Place on the page or worksheet, from 1.
    pub number: usize,
    /// The drill and the number in its pool, by which the same exercise is found again.
    pub identity: String,
    /// The skill it trains.
    pub skill: String,
    /// The question.
    pub ask: String,
    /// The case, for a question about a client.
    pub case: Option<CaseView>,
    /// How it is answered.
    pub form: FormView,
    /// Options in the order shown; what is worth knowing about a mix, a number or an order where there are none to choose from.
    pub options: Vec<OptionView>,
    /// The right answer in short.
    pub key: String,
    /// What the best answer heals to, beside which others are shown.
    pub best: Option<Swatch>,
    /// What was proved, in a sentence.
    pub proof: Option<String>,
    /// Whether it is said here that health comes before colour: where a client has anything to tell, and first of all on a page.
    pub health_first: bool,
    /// The lesson to reread after any wrong answer, where it is the same for all.
    pub reread: Option<Link>,
    /// Where the answer comes from.
    pub source: String,
    /// The bench with this case chosen, on pages of a site that has one.
    pub bench: Option<String>,
}

/// The client and what is wanted.
#[derive(Debug, Serialize)]
pub(super) struct CaseView {
    /// The client, with a link to the gallery.
    pub client: Link,
    /// About the person.
    pub about: String,
    /// The wish, in the client's voice.
    pub wish: String,
    /// What was read: name and value of each line.
    pub facts: Vec<(String, String)>,
    /// Health answers.
    pub health: Vec<HealthView>,
    /// What is told of old work.
    pub old_work: Vec<String>,
    /// The skin as it is now; none where that is told above.
    pub now: Option<Swatch>,
    /// Further things to look at.
    pub exhibits: Vec<Swatch>,
    /// The goal on that skin.
    pub goal: Option<Swatch>,
}

/// A health answer and the caution it raises, if it does.
#[derive(Debug, Clone, Serialize)]
pub(super) struct HealthView {
    /// The caution, with a link to it.
    pub caution: Option<Link>,
    /// What the client said.
    pub note: String,
}

/// One option and what would follow from it.
#[derive(Debug, Serialize)]
pub(super) struct OptionView {
    /// A, B, C …
    pub letter: String,
    /// The option in words.
    pub label: String,
    /// Whether it is the right one.
    pub right: bool,
    /// Credit in percent.
    pub credit: String,
    /// What would follow, in words.
    pub consequence: String,
    /// What it would heal to, on the client's skin.
    pub healed: Option<Swatch>,
    /// What is shown of it before it is chosen.
    pub picture: Option<Swatch>,
    /// ΔE00 from the goal, or from what is really seen where there is none.
    pub error: Option<String>,
    /// The misconception it shows.
    pub misconception: Option<BeliefView>,
    /// The lesson to reread.
    pub reread: Option<Link>,
    /// Rules that restrict what is in the mix.
    pub rules: Vec<String>,
}

/// A misconception in short.
#[derive(Debug, Clone, Serialize)]
pub(super) struct BeliefView {
    /// What is believed.
    pub belief: String,
    /// What really happens.
    pub truth: String,
    /// Where it is treated.
    pub href: String,
    /// Its id.
    pub id: String,
    /// Whether what really happens is told here: once on a page is enough.
    pub in_full: bool,
}

impl CaseView {
    /// A client as a case of a paper tells of them: as [`CaseTold`](crate::assess::CaseTold) does.
    pub fn of_client(course: &Course, client: &Client, skin_is_told: bool) -> Self {
        let works = client.works();
        let scene = Scene::today(&course.shelf, &client.skin, client.site, &works);
        let bare = Appearance::of(scene.bare(), Light::D65);
        let now = Appearance::of(scene.existing(), Light::D65);
        let case = Case {
            client: client.id.clone(),
            goal: None,
            placed: None,
            light: Light::D65,
            now_reading: Reading::of(now.lab, bare.lab, client.site).in_language(&course.language),
            bare,
            now,
            exhibits: Vec::new(),
            skin_is_told,
            device_reads: false,
        };
        case_view(course, &case, client, "").of_health(course, client)
    }

    /// The same, where it is said also of a client without a health answer that there is none: else the line itself would tell.
    fn of_health(mut self, course: &Course, client: &Client) -> Self {
        if client.health.is_empty() {
            let language = &course.language;
            self.facts.push((say!(language, "question-health"), say!(language, "question-health-nothing")));
        }
        self
    }

    /// What is left to tell below a case that has told of the client; none where nothing is.
    pub fn below(self, language: &Language, told: &CaseView) -> Option<Self> {
        let skin = say!(language, SKIN);
        let facts: Vec<_> =
            self.facts.into_iter().filter(|fact| fact.0 != skin && !told.facts.contains(fact)).collect();
        let now = self.now.filter(|now| told.now.as_ref() != Some(now));
        let tells = !facts.is_empty() || now.is_some() || !self.exhibits.is_empty() || self.goal.is_some();
        tells.then_some(CaseView {
            about: String::new(),
            wish: String::new(),
            facts,
            health: Vec::new(),
            old_work: Vec::new(),
            now,
            ..self
        })
    }
}

/// The message that names the fact of phototype, undertone and redness.
const SKIN: &str = "question-skin";

impl ExerciseView {
    /// The exercise on the page at `path`, in place `number` there.
    pub fn new(course: &Course, exercise: &Exercise, path: &str, number: usize) -> Self {
        let on = client_of(course, exercise).zip(exercise.case.as_ref());
        let on = on.map(|(client, case)| Drawn::at(client, case.light));
        let best = match &exercise.form {
            Form::One(one) if !one.pictured => one.options.get(one.key),
            Form::Drops(drops) => Some(&drops.best),
            _ => None,
        };
        let best = best.and_then(|key| {
            let case = exercise.case.as_ref()?;
            let label = if case.goal.is_some() {
                say!(course.language, "question-best-heals-to")
            } else {
                say!(course.language, "question-really-seen")
            };
            healed(&course.language, key, case, on, &label)
        });
        let mut options = options(course, exercise, path, on);
        let reread = common_reread(&mut options);
        ExerciseView {
            anchor: format!("exercise_{}_{}", exercise.drill, exercise.number),
            number,
            identity: format!("{} {}", exercise.drill, exercise.number),
            skill: skill_name(course, &exercise.skill),
            ask: exercise.ask.clone(),
            case: exercise.case.as_ref().zip(client_of(course, exercise)).map(|(case, client)| {
                let view = case_view(course, case, client, path);
                if exercise.family == Family::Triage { view.of_health(course, client) } else { view }
            }),
            form: FormView::new(course, exercise),
            health_first: exercise.case.is_some(),
            options,
            reread,
            key: key_in_short(course, exercise),
            best,
            proof: exercise.proof.as_ref().map(|proof| proof.said(&course.language, exercise.family)),
            source: exercise.source.clone(),
            bench: None,
        }
    }
}

impl ExerciseView {
    /// The misconceptions that its options show, in order.
    pub fn beliefs_mut(&mut self) -> impl Iterator<Item = &mut BeliefView> {
        self.options.iter_mut().filter_map(|option| option.misconception.as_mut())
    }
}

/// Takes the lesson to reread out of the options, where several wrong ones have the same.
fn common_reread(options: &mut [OptionView]) -> Option<Link> {
    let mut wrong = options.iter().filter(|option| !option.right).map(|option| option.reread.as_ref());
    let first = wrong.next()??.clone();
    let more: Vec<_> = wrong.collect();
    if more.is_empty() || more.iter().any(|other| other.is_none_or(|other| other.href != first.href)) {
        return None;
    }
    for option in options {
        option.reread = None;
    }
    Some(first)
}

/// A skill's name, or its id where the course does not name it.
pub(super) fn skill_name(course: &Course, id: &str) -> String {
    course.skills.iter().find(|skill| skill.id == id).map_or(id, |skill| skill.name.as_str()).to_owned()
}

/// Health answers of a client with links to the cautions they raise, if any.
pub(super) fn health_views(course: &Course, client: &Client, path: &str) -> Vec<HealthView> {
    client
        .health
        .iter()
        .map(|health| {
            let caution = health.caution.as_deref().map(|id| {
                let name = course.caution(id).map_or(id, |caution| &caution.name);
                Link::new(name, href_to(path, plan::CAUTIONS, id))
            });
            HealthView { caution, note: health.note.clone() }
        })
        .collect()
}

/// What is told of a client's old work, each with its age.
pub(super) fn old_work(language: &Language, client: &Client) -> Vec<String> {
    client.existing.iter().map(|old| language.old_work(old.work.months, &old.note)).collect()
}

/// A placement in words.
fn placement_in_words(language: &Language, placement: &Placement) -> String {
    let [depth, thickness, load] =
        [placement.depth_mm, placement.thickness_mm, placement.load].map(|value| language.short(value));
    let coverage = language.percent(placement.coverage);
    if placement.load == 1.0 {
        say!(language, "question-placed", depth = depth, thickness = thickness, coverage = coverage)
    } else {
        say!(
            language,
            "question-placed-load",
            depth = depth,
            thickness = thickness,
            load = load,
            coverage = coverage
        )
    }
}

fn client_of<'a>(course: &'a Course, exercise: &Exercise) -> Option<&'a Client> {
    course.client(&exercise.case.as_ref()?.client)
}

fn case_view(course: &Course, case: &Case, client: &Client, path: &str) -> CaseView {
    let language = &course.language;
    let now = if case.now.reflectance == case.bare.reflectance {
        let label = case.skin_label(language, client).unwrap_or_else(|| {
            say!(language, "question-skin-now", name = &client.name, site = client.site.word())
        });
        Swatch::skin(language, &label, &case.bare, Drawn::at(client, case.light), case.light)
    } else {
        let label = say!(language, "question-as-now", name = &client.name);
        let seen = (case.now.lab, case.now.srgb);
        let made = Drawn::on(client, client.technique_now(), case.light);
        Swatch::work(language, &label, &case.bare, seen, &case.now_reading.words, made, case.light)
    };
    let goal = case.goal.as_ref().map(|goal| {
        let name = course.goal(&goal.id).map_or(goal.id.as_str(), |known| known.name.as_str());
        let wished = (name, goal.lab, goal.tolerance);
        Swatch::goal(language, wished, &case.bare, Drawn::at(client, case.light), case.light)
    });
    let exhibits = case.exhibits.iter().map(|exhibit| {
        let (seen, on) = ((exhibit.seen.lab, exhibit.seen.srgb), Drawn::at(client, exhibit.light));
        let words = &exhibit.reading.words;
        Swatch::work(language, &exhibit.label, &case.bare, seen, words, on, exhibit.light)
    });
    let mut facts = Vec::new();
    if case.skin_is_told {
        facts.push((say!(language, SKIN), language.skin(client)));
    }
    facts.push((say!(language, "question-hair"), client.hair.clone()));
    if let Some(placed) = &case.placed {
        let placement = placement_in_words(language, &placed.placement);
        facts.push((say!(language, "question-placement"), placement));
        let (time, light) = (language.time(placed.months), language.in_light(case.light));
        let judged = say!(language, "question-judged-at", time = time, light = light);
        facts.push((say!(language, "question-judged"), judged));
    }
    CaseView {
        client: Link::new(
            &client.name,
            // Where the skin is asked for, nothing leads to where it is told.
            if case.skin_is_told { plan::href_to_client(path, course, client) } else { String::new() },
        ),
        about: client.told(language, case.skin_is_told).into_owned(),
        wish: if case.is_wished_for() { client.wish.clone() } else { String::new() },
        facts,
        health: health_views(course, client, path),
        old_work: old_work(language, client),
        now: Some(now),
        exhibits: exhibits.collect(),
        goal,
    }
}

pub(super) fn healed(
    language: &Language,
    choice: &Choice,
    case: &Case,
    on: Option<Drawn>,
    label: &str,
) -> Option<Swatch> {
    let healed = choice.healed.as_ref()?;
    let words = choice.reading.as_ref().map_or("", |reading| reading.words.as_str());
    let seen = (healed.lab, healed.srgb);
    let swatch = Swatch::work(language, label, &case.bare, seen, words, on?, case.light);
    let distance = |error| language.fixed(error, 1);
    Some(match (choice.error, &case.goal) {
        (Some(error), Some(_)) => {
            swatch.noted(say!(language, "question-from-goal", distance = distance(error)))
        }
        // Where there is no goal, colours are compared with what the engine computed.
        (Some(0.0), None) => swatch.noted(say!(language, "question-is-really-seen")),
        (Some(error), None) => swatch.noted(say!(language, "question-from-seen", distance = distance(error))),
        (None, _) => swatch,
    })
}

pub(super) fn option_view(
    course: &Course,
    exercise: &Exercise,
    choice: &Choice,
    path: &str,
    on: Option<Drawn>,
) -> OptionView {
    let language = &course.language;
    let rules = match &choice.action {
        Action::Place(mix) => course
            .shelf
            .restrictions_of(mix)
            .into_iter()
            .map(|(colourant, rule)| {
                let index = figures::colour_index(&colourant.id);
                say!(language, "question-rule", colourant = index, place = &rule.place, rule = &rule.rule)
            })
            .collect(),
        _ => Vec::new(),
    };
    let misconception =
        choice.mark.misconception.as_ref().and_then(|id| course.misconception(id)).map(|found| BeliefView {
            belief: found.belief.clone(),
            truth: found.truth.clone(),
            href: href_to(path, plan::MISCONCEPTIONS, &found.id),
            id: found.id.clone(),
            in_full: true,
        });
    let reread = course.lesson(&choice.mark.lesson).map(|(_, lesson)| {
        Link::new(&lesson.page.title, href_to(path, &text_path(&lesson.page.path), "page_top"))
    });
    OptionView {
        letter: String::new(),
        label: choice.label.clone(),
        right: false,
        credit: language.percent(choice.mark.credit),
        consequence: choice.mark.consequence.clone(),
        healed: exercise.case.as_ref().and_then(|case| {
            let label = if case.goal.is_some() {
                say!(language, "question-heals-to")
            } else {
                say!(language, "question-would-look")
            };
            healed(language, choice, case, on, &label)
        }),
        picture: None,
        error: choice.error.map(|error| language.fixed(error, 1)),
        misconception,
        reread,
        rules,
    }
}
