//! `remedy`: correct existing work with colour, have it lightened first, or refer.
//!
//! What is right is not a matter of taste: a caution among the client's health answers decides for referring (or waiting);
//! otherwise the engine does. Colour is right if some mix of the drop grid reaches the goal. Lightening is right if every mix
//! misses it by more than an eye forgives, and some mix would reach it over the lightened work. Cases in between are not asked.

use super::contest::runners_up;
use super::draw::{Setting, ranked};
use super::generate::{Attempt, Discard, engine};
use super::grid::{may_be_right, sensible_best};
use super::judge::Judge;
use super::place::Shown;
use super::rules::Tempter;
use super::seed::{below, stream};
use super::tempt::{Fit, Temptation, best_in, is_wrong, temptations};
use super::worlds::{Sample, WORLDS, try_worlds};
use super::{Action, Choice, Exercise, Proof, marking};
use crate::course::words::CautionAction;
use crate::course::{Caution, Client, Course, Drill, Lesson, Rule};
use crate::healing::{Placement, Scene, Trial, Work};
use crate::language::Language;
use crate::pigment::{Paint, Shelf};
use crate::say;
use crate::search::Tried;

/// Share of the old work that lightening leaves (representative: after several sessions by somebody licensed).
const LIGHTENED: f64 = 0.1;

/// Draws after which the texts of wrong mixes may be as long as each other.
const APART_DRAWS: u32 = 16;

/// In which of their wordings the two options without colour are offered. Which one it is hangs on nothing but the exercise: both are longer
/// than any mix or both shorter, and either of them the longer of the two.
#[derive(Debug, Clone, Copy)]
struct WithoutColour {
    lighten: &'static str,
    refrain: &'static str,
}

/// Each as often as the others.
const WITHOUT_COLOUR: [WithoutColour; 4] = [
    WithoutColour { lighten: "exercise-remedy-lighten", refrain: "exercise-remedy-refrain" },
    WithoutColour { lighten: "exercise-remedy-lighten", refrain: "exercise-remedy-refrain-fully" },
    WithoutColour { lighten: "exercise-remedy-lighten-briefly", refrain: "exercise-remedy-refrain-briefly" },
    WithoutColour {
        lighten: "exercise-remedy-lighten-briefly",
        refrain: "exercise-remedy-refrain-in-a-word",
    },
];

/// What shall be right in an exercise: each option is as often the key as any other, colour in as many exercises as it is offered in, having the
/// work lightened and doing nothing in one each. Whoever knows how often a course asks for what then knows nothing of this exercise.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Sought {
    Colour,
    Lighten,
    Refrain,
}

impl Sought {
    /// What shall be right in this exercise of a drill.
    pub fn in_exercise(seed: u64, drill: &Drill, exercise: &str) -> Self {
        match below(&mut stream(seed, &["sought", &drill.id, exercise]), colours_among(drill) + 2) {
            0 => Sought::Refrain,
            1 => Sought::Lighten,
            _ => Sought::Colour,
        }
    }

    /// Of a drill's clients those for whom it may be right: a caution decides before any colour is tried. All of them where there is none.
    pub fn among(self, clients: Vec<&Client>) -> Vec<&Client> {
        let may = |client: &&Client| client.cautions().next().is_some() == (self == Sought::Refrain);
        if clients.iter().any(may) { clients.into_iter().filter(may).collect() } else { clients }
    }
}

/// In how many rounds through the clients of a drill what is sought must be right; later whatever is right will do, since a drill need not
/// have a case of each.
const SOUGHT_ROUNDS: u32 = 3;

/// How many of a drill's options are mixes: two are always there, to have the work lightened and to do nothing today.
fn colours_among(drill: &Drill) -> usize {
    drill.options.saturating_sub(2).max(1)
}

/// What is right for a client.
enum Verdict<'c> {
    /// Place the best mix.
    Colour,
    /// Lighten or remove first.
    Lighten {
        /// How near to the goal the best mix then comes.
        afterwards: f64,
        /// Every mix over the lightened work, nearest to the goal first.
        ranking: Vec<Tried>,
    },
    /// A caution forbids work today.
    Refrain(&'c Caution),
}

impl Verdict<'_> {
    fn kind(&self) -> Sought {
        match self {
            Verdict::Colour => Sought::Colour,
            Verdict::Lighten { .. } => Sought::Lighten,
            Verdict::Refrain(_) => Sought::Refrain,
        }
    }
}

/// One attempt at an exercise.
pub(super) fn attempt(
    course: &Course,
    lesson: &Lesson,
    drill: &Drill,
    mut draw: Attempt,
) -> Result<Exercise, Discard> {
    let setting = Setting::draw(course, drill, draw.client, &mut draw.rng).ok_or(Discard::Unresolved)?;
    if setting.existing.is_empty() {
        return Err(Discard::NothingToCorrect);
    }
    let shelf = &course.shelf;
    let scene = setting.scene(shelf);
    let ranking = ranked(shelf, &setting, &drill.limits, (&setting.existing, &scene));
    let best_error = sensible_best(shelf, &ranking)?.error;
    let verdict = verdict(course, drill, &setting, &ranking)?;
    if draw.round < SOUGHT_ROUNDS && verdict.kind() != draw.sought(drill) {
        return Err(Discard::OneSided);
    }
    let colours = colours_among(drill);
    let tempter = Tempter::new(shelf, &setting, &drill.limits, &ranking);
    let wording = draw.wording_of_mixes(drill);
    let shown = Shown::of(&drill.limits, wording).or_none();
    let place = draw.place(drill, colours, shown);
    let wrong = match &verdict {
        Verdict::Colour => {
            let acceptable = |place| is_wrong(drill, shelf, &setting, &ranking, place);
            let fit = Fit::Beside(place);
            temptations(course, drill, &tempter, &mut draw, (colours - 1, wording), acceptable, &fit)?
        }
        // Where no mix is right, the best one is the first temptation, and the others need only be others.
        Verdict::Lighten { .. } | Verdict::Refrain(_) => {
            let colour_always =
                by_rule(course, drill, Rule::ColourAlways).ok_or(Discard::TooFewTemptations)?;
            let best = Temptation { place: 0, misconception: colour_always.to_owned() };
            let acceptable = |place: usize| place != 0 && !shelf.is_at_odds(&ranking[place].mix);
            // As many bottles alone as if one of the mixes were right: a mix that stands alone would tell that it is.
            let of_kind = matches!(shown, Shown::MixesOrNone(_)).then(|| place.of_kind());
            let fit = if draw.number < APART_DRAWS { Fit::Apart(of_kind) } else { Fit::Any };
            let others = (colours - 1, wording);
            let others = temptations(course, drill, &tempter, &mut draw, others, acceptable, &fit)?;
            [best].into_iter().chain(others).collect()
        }
    };
    let doubt = Doubt {
        shelf,
        setting: &setting,
        ranking: &ranking,
        tolerance: setting.goal.tolerance,
        margin: drill.margin,
    };
    let words = draw.words(drill);
    let trials = match &verdict {
        Verdict::Colour => Some(try_worlds(&setting, &words, |world| doubt.colour_holds(world, &wrong))),
        Verdict::Lighten { ranking, .. } => {
            Some(try_worlds(&setting, &words, |world| doubt.lighten_holds(world, ranking)))
        }
        // A caution does not depend on the colour of the skin: there is nothing to try.
        Verdict::Refrain(_) => None,
    };
    if trials.is_some_and(|(worlds, _)| worlds < WORLDS) {
        return Err(Discard::Unstable);
    }
    let judge = Judge {
        course,
        lesson,
        setting: &setting,
        scene: &scene,
        trial: scene.trial(&setting.placement),
        best_error: match &verdict {
            Verdict::Lighten { afterwards, .. } => *afterwards,
            _ => best_error,
        },
        wording,
    };
    let mut options = Vec::new();
    if matches!(verdict, Verdict::Colour) {
        options.push(judge.place(&ranking[0], None));
    }
    options.extend(wrong.iter().map(|wrong| judge.place(&ranking[wrong.place], Some(&wrong.misconception))));
    let said = WITHOUT_COLOUR[draw.wording(drill, "without colour", WITHOUT_COLOUR.len())];
    options.push(lighten(&judge, drill, &verdict, said)?);
    options.push(refrain(&judge, drill, &verdict, said)?);
    if let Verdict::Refrain(caution) = &verdict {
        forbid_colour(&course.language, &mut options, caution);
    }
    // The right answer first, as everywhere: finishing shuffles.
    options.sort_by(|one, other| other.mark.credit.total_cmp(&one.mark.credit));
    // After what was tried: over lightened work where it is to be lightened.
    let next_best = match &verdict {
        Verdict::Lighten { ranking: afterwards, .. } => &afterwards[1..],
        _ => &ranking[1..],
    };
    let proof = trials.map(|(worlds, held)| Proof {
        searched: ranking.len(),
        best_error: judge.best_error,
        as_it_is: matches!(verdict, Verdict::Lighten { .. }).then_some(best_error),
        margin: Some(marking::least_excess(&options, judge.best_error)),
        worlds,
        held,
        runners_up: runners_up(course, next_best),
        discarded: draw.number,
    });
    let source = match &verdict {
        Verdict::Refrain(caution) => caution.source.clone(),
        _ => engine(course),
    };
    let language = &course.language;
    let ask = say!(
        language,
        "exercise-remedy-ask",
        client = &setting.client.name,
        goal = marking::goal_in_words(language, setting.goal)
    );
    let form = draw.one_of(drill, options);
    Ok(draw.finish(lesson, drill, ask, setting.case(course), form, proof, &source))
}

/// What is right in a setting.
fn verdict<'c>(
    course: &'c Course,
    drill: &Drill,
    setting: &Setting,
    ranking: &[Tried],
) -> Result<Verdict<'c>, Discard> {
    if let Some(caution) = setting.client.cautions().find_map(|id| course.caution(id)) {
        return Ok(Verdict::Refrain(caution));
    }
    let best = ranking[0].error;
    if best <= setting.goal.tolerance {
        may_be_right(course, drill, &ranking[0].mix)?;
        return Ok(Verdict::Colour);
    }
    if best < setting.goal.tolerance + drill.margin {
        return Err(Discard::Arguable);
    }
    let client = setting.client;
    let existing = lightened(&setting.existing);
    let scene = Scene::new(&course.shelf, &client.skin, client.site, &existing, setting.months);
    let ranking = ranked(&course.shelf, setting, &drill.limits, (&existing, &scene));
    let afterwards = ranking[0].error;
    if afterwards <= setting.goal.tolerance {
        Ok(Verdict::Lighten { afterwards, ranking })
    } else {
        Err(Discard::GoalOutOfReach)
    }
}

/// The old work after lightening.
fn lightened(existing: &[Work]) -> Vec<Work> {
    existing
        .iter()
        .map(|work| Work {
            placement: Placement { load: work.placement.load * LIGHTENED, ..work.placement },
            ..work.clone()
        })
        .collect()
}

/// Worlds of a proof, the farthest, in which every mix is asked whether it comes near the goal. In the others only those are that may.
const EXHAUSTIVE: u32 = 10;
/// By how much, in ΔE00, a mix may come nearer to the goal in a world than the one that is best in the stated case, and how far it may be
/// behind that one there: twice what any did where lightening is right (0.47 and 0.48, in 2,200 worlds of the demo's cases). Where colour is right,
/// mixes so near to the goal change places more; a mix that is passed over there only makes the proof more severe.
const MAY_LEAD: f64 = 1.0;

/// Asks of a world whether the verdict would turn into the other one there: colour where every mix misses the goal by the margin,
/// lightening where some mix reaches it, or where lightening does not help.
struct Doubt<'a> {
    shelf: &'a Shelf,
    setting: &'a Setting<'a>,
    ranking: &'a [Tried],
    tolerance: f64,
    margin: f64,
}

impl Doubt<'_> {
    /// The best mix beats the wrong ones, and some mix comes nearer to the goal than would call for lightening.
    fn colour_holds(&self, world: &Sample, wrong: &[Temptation]) -> bool {
        let scene = world.scene(self.shelf, &self.setting.existing, self.setting.months);
        let trial = scene.trial(&world.placement);
        let near = self.tolerance + self.margin;
        // The best mix is asked first, and its distance is known.
        best_in(&trial, self.setting, self.ranking, wrong)
            .is_some_and(|best| best <= near || self.others_come_within(near, best, &trial, world))
    }

    /// No mix reaches the goal over the old work, and some mix comes near it over the lightened work, where this is their ranking.
    fn lighten_holds(&self, world: &Sample, lightened_ranking: &[Tried]) -> bool {
        // Asked first, since the first mixes tell.
        let scene = world.scene(self.shelf, &lightened(&self.setting.existing), self.setting.months);
        let trial = scene.trial(&world.placement);
        let near = self.tolerance + self.margin;
        if !lightened_ranking.iter().any(|tried| self.error(&trial, &tried.paint) <= near) {
            return false;
        }
        let scene = world.scene(self.shelf, &self.setting.existing, self.setting.months);
        let trial = scene.trial(&world.placement);
        let best = self.error(&trial, &self.ranking[0].paint);
        best > self.tolerance && !self.others_come_within(self.tolerance, best, &trial, world)
    }

    /// Whether some mix comes within this distance of the goal, though the best one of the stated case, whose distance here is `best`, does
    /// not; the likeliest are tried first.
    fn others_come_within(&self, distance: f64, best: f64, trial: &Trial, world: &Sample) -> bool {
        let all = world.farther < EXHAUSTIVE;
        if !all && best > distance + MAY_LEAD {
            return false;
        }
        let most = if all { f64::INFINITY } else { self.ranking[0].error + MAY_LEAD };
        let others = self.ranking[1..].iter().take_while(|tried| tried.error <= most);
        others.into_iter().any(|tried| self.error(trial, &tried.paint) <= distance)
    }

    fn error(&self, trial: &Trial, paint: &Paint) -> f64 {
        self.setting.error(self.setting.light.lab_of(&trial.with(paint)))
    }
}

/// The drill's misconception with this rule.
fn by_rule<'d>(course: &Course, drill: &'d Drill, rule: Rule) -> Option<&'d str> {
    drill
        .tempts
        .iter()
        .find(|id| course.misconception(id).is_some_and(|misconception| misconception.rule == rule))
        .map(String::as_str)
}

/// The option to have the old work lightened.
fn lighten(judge: &Judge, drill: &Drill, verdict: &Verdict, said: WithoutColour) -> Result<Choice, Discard> {
    let language = &judge.course.language;
    let label = language.say(said.lighten, &[]);
    let (credit, consequence, misconception) = match verdict {
        Verdict::Lighten { afterwards, .. } => (
            1.0,
            say!(language, "exercise-remedy-lighten-right", distance = language.decimal(*afterwards, 1)),
            None,
        ),
        Verdict::Colour => (
            0.0,
            language.say("exercise-remedy-lighten-needless", &[]),
            Some(by_rule(judge.course, drill, Rule::AlwaysLighten).ok_or(Discard::TooFewTemptations)?),
        ),
        Verdict::Refrain(caution) => (
            0.0,
            say!(language, "exercise-remedy-lighten-unsafe", caution = &caution.name, say = &caution.say),
            Some(by_rule(judge.course, drill, Rule::AlwaysLighten).ok_or(Discard::TooFewTemptations)?),
        ),
    };
    Ok(judge.refrain(Action::Lighten, label, credit, consequence, misconception))
}

/// The option to do nothing today.
fn refrain(judge: &Judge, drill: &Drill, verdict: &Verdict, said: WithoutColour) -> Result<Choice, Discard> {
    let language = &judge.course.language;
    let label = language.say(said.refrain, &[]);
    let (credit, consequence, misconception) = match verdict {
        Verdict::Refrain(caution) => {
            let what = match caution.action {
                CautionAction::Wait => "exercise-remedy-wait",
                CautionAction::Refer => "exercise-remedy-refer",
            };
            (
                1.0,
                say!(
                    language,
                    what,
                    caution = &caution.name,
                    say = &caution.say,
                    who = &caution.refer_to,
                    source = &caution.source
                ),
                None,
            )
        }
        _ => (
            0.0,
            language.say("exercise-remedy-refrain-needless", &[]),
            Some(by_rule(judge.course, drill, Rule::ReferAnything).ok_or(Discard::TooFewTemptations)?),
        ),
    };
    Ok(judge.refrain(Action::Refer, label, credit, consequence, misconception))
}

/// Safety is all or nothing: where a caution forbids work, colour earns nothing, however well it would heal.
fn forbid_colour(language: &Language, options: &mut [Choice], caution: &Caution) {
    for option in options.iter_mut().filter(|option| matches!(option.action, Action::Place(_))) {
        option.mark.credit = 0.0;
        option.mark.consequence = say!(
            language,
            "exercise-remedy-unsafe",
            caution = &caution.name,
            say = &caution.say,
            who = &caution.refer_to
        );
    }
}
