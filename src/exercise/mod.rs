//! Exercises: generated from a drill and a number, proved by the engine, marked by the colour an answer would heal to.
//!
//! Entry points: [`generate`] makes and proves one exercise of a drill's pool; [`outcome`] says what follows from an answer to it, and
//! [`over_time`] what its colour comes to with the years.

mod bank;
mod bottle;
mod contest;
mod difficulty;
mod draw;
mod drops;
mod foreseen;
mod foresight;
mod form;
mod generate;
mod grid;
mod hindsight;
mod judge;
mod kept;
mod lasting;
mod light;
mod marking;
mod named;
mod outcome;
mod place;
#[cfg(feature = "program")]
mod pools;
mod prediction;
#[cfg(feature = "program")]
mod proofs;
mod proved;
mod refused;
mod remedy;
mod rules;
mod seed;
mod skin;
mod tempt;
mod triage;
mod worlds;
mod written;

pub use difficulty::engine_difficulty;
pub use foreseen::{Foreseen, foresee};
#[cfg(feature = "program")]
pub(crate) use form::letter;
pub use form::{Answer, DropsOf, Form, NumberOf, OneOf, OrderOf, SeveralOf, Step as OrderStep, WrongNumber};
pub use generate::{Discard, Finding, GenerateError, MAX_DRAWS, generate};
pub use grid::mixes;
pub use lasting::{LOOKED_AT_MONTHS, Later, over_time};
pub use marking::WORTHLESS;
pub use marking::credit;
pub use named::bottles_named;
pub use outcome::{mark, outcome};
#[cfg(feature = "program")]
pub use pools::{EXERCISES_PER_SHOWN, Step, pool_size, pools, pools_from};
#[cfg(feature = "program")]
pub use proofs::{Proofs, engine_version};
pub use refused::{AnswerError, AskedFor, LimitsError};
#[cfg(feature = "program")]
pub(crate) use seed::{below, shuffle, stream};
pub use worlds::{NEEDED_SHARE, WORLDS};

use crate::colour::{Lab, Light};
use crate::course::{Client, Family};
use crate::healing::{Appearance, Placement, Reading, Work};
use crate::language::Language;
use crate::pigment::Mix;
use crate::say;

/// One concrete question.
#[derive(Debug, Clone)]
pub struct Exercise {
    /// Id of the drill.
    pub drill: String,
    /// Number in the drill's pool, from 0.
    pub number: u32,
    /// What is asked.
    pub family: Family,
    /// Id of the skill.
    pub skill: String,
    /// Id of the lesson the drill stands in.
    pub lesson: String,
    /// The question in words.
    pub ask: String,
    /// The case, for questions about a client.
    pub case: Option<Case>,
    /// How it is answered, and what each answer is worth.
    pub form: Form,
    /// What was proved, for questions the engine decides.
    pub proof: Option<Proof>,
    /// Where the answer comes from: the engine, or a stated source.
    pub source: String,
    /// Id of the question of the bank it asks; none where the engine made it.
    pub written: Option<String>,
}

impl Exercise {
    /// What two exercises have in common when they are the same to whoever answers them: what is asked of which client, with what
    /// to choose from. The order of the options does not matter, nor do the options of a written question. Nor does it matter how
    /// deep, how densely or over how much of the area the work lies, how mixes are worded, or whether colours that are shown differ by what that changes: a
    /// reader takes such a question for the one that was there before.
    pub fn question(&self) -> String {
        let Some(case) = &self.case else { return self.ask.clone() };
        let options: std::collections::BTreeSet<String> = match &self.form {
            Form::One(one) if one.pictured => std::collections::BTreeSet::new(),
            form => form.options().iter().map(|option| format!("{:?}", option.action)).collect(),
        };
        let exhibits: Vec<_> =
            case.exhibits.iter().map(|exhibit| (&exhibit.label, &exhibit.reading.words)).collect();
        format!("{} {} {exhibits:?} {options:?}", self.ask, case.client)
    }
}

/// The concrete situation of an exercise.
#[derive(Debug, Clone)]
pub struct Case {
    /// Client id.
    pub client: String,
    /// What is wished for, where the question is about a wish.
    pub goal: Option<CaseGoal>,
    /// Where new work goes and when it is judged, where the question is about new work.
    pub placed: Option<Placed>,
    /// The light everything is seen under.
    pub light: Light,
    /// The client's skin without any work.
    pub bare: Appearance,
    /// The client's skin as it is now, with existing work; equal to `bare` where there is none.
    pub now: Appearance,
    /// What is seen now, in words.
    pub now_reading: Reading,
    /// Further things to look at.
    pub exhibits: Vec<Exhibit>,
    /// Whether phototype, undertone and redness are told; not where they are what is asked for.
    pub skin_is_told: bool,
    /// Whether the skin that is shown is what a device reads off it, which scatters a little.
    pub device_reads: bool,
}

impl Case {
    /// What the client's bare skin is called, where it is not simply the client as they come in: a reading, or the skin beside old work.
    pub fn skin_label(&self, language: &Language, client: &Client) -> Option<String> {
        let id = match (self.device_reads, client.existing.is_empty()) {
            (true, true) => "exercise-skin-read",
            (true, false) => "exercise-skin-read-beside",
            (false, false) if self.now.reflectance == self.bare.reflectance => "exercise-skin-beside",
            (false, _) => return None,
        };
        Some(say!(language, id, client = &client.name, site = client.site.word()))
    }

    /// Whether the client's wish has to do with what is asked: not where the client lends nothing but the skin to old work that is made up.
    pub fn is_wished_for(&self) -> bool {
        self.placed.is_some() || self.exhibits.is_empty()
    }
}

/// A wished colour.
#[derive(Debug, Clone)]
pub struct CaseGoal {
    /// Id of the goal.
    pub id: String,
    /// Its colour.
    pub lab: Lab,
    /// ΔE00 within which it counts as reached.
    pub tolerance: f64,
}

/// New work.
#[derive(Debug, Clone, Copy)]
pub struct Placed {
    /// Where it goes.
    pub placement: Placement,
    /// When it is judged, months after.
    pub months: f64,
}

/// Something to look at on the client's skin.
#[derive(Debug, Clone)]
pub struct Exhibit {
    /// What it is.
    pub label: String,
    /// How it looks.
    pub seen: Appearance,
    /// In words.
    pub reading: Reading,
    /// The light it is seen under.
    pub light: Light,
}

/// What an option means.
#[derive(Debug, Clone, PartialEq)]
pub enum Action {
    /// Place this mix.
    Place(Mix),
    /// Have the old work lightened or removed first.
    Lighten,
    /// Do not work; refer or wait.
    Refer,
    /// A written answer.
    Say(String),
}

/// One option and everything that would follow from it.
#[derive(Debug, Clone)]
pub struct Choice {
    /// The option in words.
    pub label: String,
    /// What it means.
    pub action: Action,
    /// What really leads to the colour, where the option is a colour or a cause: work as old as when it is asked about.
    pub work: Option<Work>,
    /// The colour it would heal to, where it colours the skin.
    pub healed: Option<Appearance>,
    /// The healed colour in words.
    pub reading: Option<Reading>,
    /// ΔE00 from the goal, or from what is really seen where colours are what is chosen from.
    pub error: Option<f64>,
    /// The mark it gets.
    pub mark: Mark,
}

/// The mark of one answer.
#[derive(Debug, Clone)]
pub struct Mark {
    /// Between 0 and 1.
    pub credit: f64,
    /// What would follow, in words.
    pub consequence: String,
    /// Id of the misconception it shows.
    pub misconception: Option<String>,
    /// Id of the lesson to reread.
    pub lesson: String,
}

/// The figures of a proof.
#[derive(Debug, Clone)]
pub struct Proof {
    /// Mixes searched.
    pub searched: usize,
    /// ΔE00 between the key's healed colour and the goal; over the lightened work where it is to be lightened first.
    pub best_error: f64,
    /// Where old work is to be lightened first: ΔE00 from the goal that the best mix comes to over the work as it is.
    pub as_it_is: Option<f64>,
    /// ΔE00 by which the nearest wrong colour is worse; `None` where no colour is right.
    pub margin: Option<f64>,
    /// Worlds tried.
    pub worlds: u32,
    /// Worlds in which the key stays best.
    pub held: u32,
    /// What comes next after the key, nearest first: at most three mixes of all that were searched, or the wrong colours offered.
    pub runners_up: Vec<RunnerUp>,
    /// Draws thrown away before this one.
    pub discarded: u32,
}

/// The next best answer.
#[derive(Debug, Clone, PartialEq)]
pub struct RunnerUp {
    /// The mix or the colour in words.
    pub label: String,
    /// ΔE00 from the goal, or from the colour that is really seen.
    pub error: f64,
}

/// Runners-up that a proof keeps.
const RUNNERS_UP: usize = 3;

/// Proved exercises by drill id, in the order they are shown.
pub type Pools = std::collections::BTreeMap<String, Vec<Exercise>>;
