//! Drills: recipes for randomised exercises.

use super::blueprint::Band;
use crate::colour::Light;
use crate::pigment::Modifier;
use serde::{Deserialize, Serialize};

/// The family of an exercise: what is asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Family {
    /// Choose the bottle or mix.
    Bottle,
    /// Count out a mix in drops.
    Drops,
    /// Foresee the colour it will heal or age to.
    Foresight,
    /// Find what caused a residual.
    Hindsight,
    /// Correct existing work, lighten first, or refer.
    Remedy,
    /// Read skin, or work out its typology angle.
    Skin,
    /// Go on, wait, or refer.
    Triage,
    /// Put steps in order.
    Sequence,
    /// Judge the same work under another light.
    Light,
    /// A written question from the bank.
    Recall,
}

impl Family {
    /// Every family with its word in course files and on screens.
    pub const ALL: [(Family, &'static str); 10] = [
        (Family::Bottle, "bottle"),
        (Family::Drops, "drops"),
        (Family::Foresight, "foresight"),
        (Family::Hindsight, "hindsight"),
        (Family::Remedy, "remedy"),
        (Family::Skin, "skin"),
        (Family::Triage, "triage"),
        (Family::Sequence, "sequence"),
        (Family::Light, "light"),
        (Family::Recall, "recall"),
    ];

    /// The family's word in course files and on screens.
    pub fn word(self) -> &'static str {
        Family::ALL[self as usize].1
    }
}

/// What a `skin` drill asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum SkinAsks {
    /// Undertone and redness.
    #[default]
    Reading,
    /// The individual typology angle.
    Angle,
}

impl SkinAsks {
    /// Each with its word in course files.
    pub const ALL: [(SkinAsks, &'static str); 2] =
        [(SkinAsks::Reading, "reading"), (SkinAsks::Angle, "angle")];
}

/// A recipe for exercises.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct Drill {
    /// Unique id.
    pub id: String,
    /// What is asked.
    pub family: Family,
    /// Id of the skill it trains.
    pub skill: String,
    /// How many exercises of its pool the lesson shows.
    pub exercises: u32,
    /// How many options an exercise has.
    pub options: usize,
    /// Client ids to draw from.
    pub clients: Vec<String>,
    /// Goal ids to draw from; empty means each client's own.
    pub goals: Vec<String>,
    /// Whether each client's further goals are drawn from as well.
    #[serde(default)]
    pub further_goals: bool,
    /// What the apprentice may take (`bottle`, `remedy`).
    pub limits: Limits,
    /// When and under which light the result is judged.
    pub judged: Judged,
    /// Misconceptions that wrong answers may come from.
    pub tempts: Vec<String>,
    /// ΔE00 by which each wrong answer must be worse than the key.
    pub margin: f64,
    /// Within what the difficulty of each exercise must lie; `None` takes any.
    #[serde(default)]
    pub difficulty: Option<Band>,
    /// Question ids (`recall`, `sequence`, `triage`).
    pub questions: Vec<String>,
    /// Ages of the work that residuals may come from, in months (`hindsight`).
    pub ages_months: Vec<f64>,
    /// What is asked of the skin (`skin`).
    pub skin_asks: SkinAsks,
    /// Where the drill stands, for messages: `lessons/module/lesson.yaml:12:5`.
    #[serde(skip)]
    pub stands_at: String,
}

/// The drop grid of a drill: one bottle and a few drops of modifiers.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct Limits {
    /// Ids of the bottles to choose from.
    pub bottles: Vec<String>,
    /// Ids of the modifiers allowed.
    pub modifiers: Vec<String>,
    /// Drops in the whole mix.
    pub drops: u32,
    /// At most so many of them are modifiers.
    pub modifier_drops: u32,
}

impl Limits {
    /// Most drops of modifiers that leave a drop for a bottle.
    pub fn most_modifier_drops(&self) -> u32 {
        self.modifier_drops.min(self.drops.saturating_sub(1))
    }

    /// How many mixes there are: bottles times choices of up to k drops of n modifiers, (n + k) over k. Too many for a number
    /// count as the greatest.
    pub fn mixes(&self) -> u64 {
        let (n, k) = (self.modifiers.len() as u64, u64::from(self.most_modifier_drops()));
        let mut choices: u64 = 1;
        for i in 1..=k {
            choices = choices.saturating_mul(n + i) / i;
        }
        choices.saturating_mul(self.bottles.len() as u64)
    }
}

/// When and under which light a result is judged.
#[derive(Debug, Clone, Copy, Serialize, Deserialize)]
pub struct Judged {
    /// Months after the placement; 1.5 is healed.
    pub months: f64,
    /// The light.
    pub light: Light,
}

/// How a misconception becomes a wrong answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Rule {
    /// The mix that leans in the bottle as the goal does: nearest in a* and b*.
    MatchLabel,
    /// Adds the cooler modifier to answer redness.
    CoolTheRed,
    /// Adds the warmer modifier because the skin looks warm.
    WarmForWarm,
    /// What suits the calm, neutral textbook client of that phototype.
    OneForPhototype,
    /// Adds the darker modifier.
    BlackForDark,
    /// Adds the lighter modifier.
    WhiteForLight,
    /// The mix that looks right on the day.
    FreshIsFinal,
    /// Right at six weeks, wrong when judged later.
    IgnoreFading,
    /// Right on bare skin, wrong over the old work.
    IgnoreOldWork,
    /// The mix whose bottle colour is opposite in hue to the residual.
    WheelOpposite,
    /// The darkest mix.
    CoverUp,
    /// A mix that heals a shade lighter than the goal.
    ShadeLighter,
    /// Lighten first although colour would do.
    AlwaysLighten,
    /// Go on with colour although it must be lightened or referred.
    ColourAlways,
    /// Refer without need.
    ReferAnything,
    /// Do what another caution asks for.
    AnyReferral,
    /// Takes the redness of blood for a cool undertone.
    RednessAsUndertone,
    /// Takes a cool undertone for redness.
    UndertoneAsRedness,
    /// Takes dark skin for warm skin.
    DarkAsWarm,
    /// Takes olive skin for golden skin.
    OliveAsWarm,
    /// Takes golden skin for olive skin.
    WarmAsOlive,
    /// Takes the flush of the moment for the skin.
    FlushIsSkin,
    /// Takes light skin for cool skin.
    LightIsCool,
    /// Calls every undertone neutral.
    NeutralInDoubt,
    /// Turns the fraction of the typology angle upside down.
    AngleUpsideDown,
    /// Forgets to take 50 off L*.
    AngleWithoutFifty,
    /// Leaves the angle in radians.
    AngleInRadians,
    /// Blames the mix that looked like the residual when it had healed.
    AllFadeAlike,
    /// Blames the bluest bottle.
    BlueMeansBlue,
    /// Expects the colour seen by day under every light.
    SameInEveryLight,
    /// Expects a light to turn a colour the other way.
    OppositeShift,
    /// Lays the tint of the lamp over the colour.
    SeesTheLamp,
    /// Expects a light to turn a colour twice as far as it does.
    DoubleShift,
    /// Expects work to look softer and lighter under a lamp.
    LampSoftens,
    /// Expects work to look harder and darker under a lamp.
    LampHardens,
    /// Expects work to look paler and greyer under a lamp.
    LampWashesOut,
    /// Expects work to look darker and greyer under a lamp.
    LampDims,
    /// Expects work to look deeper and fuller under a lamp.
    LampEnriches,
    /// Expects work to lose its colour under a lamp.
    LampGreys,
    /// Expects nearly all of the colour to go that stays.
    LittleRemains,
    /// Takes two thirds of the colour for lost.
    MostIsShed,
    /// Expects the colour to grow stronger while it settles.
    GrowsStronger,
    /// Expects the skin to veil all work, as it does what lies too deep.
    SkinVeilsAll,
    /// Expects all but the black to go.
    BlackStays,
    /// Expects the grey of a brown to stay and its warmth to go.
    LosesWarmth,
    /// Expects a milky veil to stay.
    StaysMilky,
    /// Expects the colour to come out deeper and fuller.
    GrowsRicher,
    /// Advises on health.
    GiveAdvice,
    /// Waits a while instead of asking.
    WaitAndSee,
    /// Waits without need.
    WaitAnything,
    /// Takes a signature for safety.
    SignedIsSafe,
    /// Written by the author of a question; makes nothing by itself.
    Stated,
}

impl Rule {
    /// Every rule with its word in course files.
    pub const ALL: [(Rule, &'static str); 52] = [
        (Rule::MatchLabel, "match-label"),
        (Rule::CoolTheRed, "cool-the-red"),
        (Rule::WarmForWarm, "warm-for-warm"),
        (Rule::OneForPhototype, "one-for-phototype"),
        (Rule::BlackForDark, "black-for-dark"),
        (Rule::WhiteForLight, "white-for-light"),
        (Rule::FreshIsFinal, "fresh-is-final"),
        (Rule::IgnoreFading, "ignore-fading"),
        (Rule::IgnoreOldWork, "ignore-old-work"),
        (Rule::WheelOpposite, "wheel-opposite"),
        (Rule::CoverUp, "cover-up"),
        (Rule::ShadeLighter, "shade-lighter"),
        (Rule::AlwaysLighten, "always-lighten"),
        (Rule::ColourAlways, "colour-always"),
        (Rule::ReferAnything, "refer-anything"),
        (Rule::AnyReferral, "any-referral"),
        (Rule::RednessAsUndertone, "redness-as-undertone"),
        (Rule::UndertoneAsRedness, "undertone-as-redness"),
        (Rule::DarkAsWarm, "dark-as-warm"),
        (Rule::OliveAsWarm, "olive-as-warm"),
        (Rule::WarmAsOlive, "warm-as-olive"),
        (Rule::FlushIsSkin, "flush-is-skin"),
        (Rule::LightIsCool, "light-is-cool"),
        (Rule::NeutralInDoubt, "neutral-in-doubt"),
        (Rule::AngleUpsideDown, "angle-upside-down"),
        (Rule::AngleWithoutFifty, "angle-without-fifty"),
        (Rule::AngleInRadians, "angle-in-radians"),
        (Rule::AllFadeAlike, "all-fade-alike"),
        (Rule::BlueMeansBlue, "blue-means-blue"),
        (Rule::SameInEveryLight, "same-in-every-light"),
        (Rule::OppositeShift, "opposite-shift"),
        (Rule::SeesTheLamp, "sees-the-lamp"),
        (Rule::DoubleShift, "double-shift"),
        (Rule::LampSoftens, "lamp-softens"),
        (Rule::LampHardens, "lamp-hardens"),
        (Rule::LampWashesOut, "lamp-washes-out"),
        (Rule::LampDims, "lamp-dims"),
        (Rule::LampEnriches, "lamp-enriches"),
        (Rule::LampGreys, "lamp-greys"),
        (Rule::LittleRemains, "little-remains"),
        (Rule::MostIsShed, "most-is-shed"),
        (Rule::GrowsStronger, "grows-stronger"),
        (Rule::SkinVeilsAll, "skin-veils-all"),
        (Rule::BlackStays, "black-stays"),
        (Rule::LosesWarmth, "loses-warmth"),
        (Rule::StaysMilky, "stays-milky"),
        (Rule::GrowsRicher, "grows-richer"),
        (Rule::GiveAdvice, "give-advice"),
        (Rule::WaitAndSee, "wait-and-see"),
        (Rule::WaitAnything, "wait-anything"),
        (Rule::SignedIsSafe, "signed-is-safe"),
        (Rule::Stated, "stated"),
    ];

    /// The word in course files.
    pub fn word(self) -> &'static str {
        Rule::ALL[self as usize].1
    }

    /// What it takes for another reason than the colour that it heals to, which stays a mistake even where that colour is right: white is hard to
    /// remove, and may darken under a laser.
    pub fn warned_of(self) -> Option<Modifier> {
        (self == Rule::WhiteForLight).then_some(Modifier::Lighter)
    }

    /// Whether this rule can make a wrong answer of this family.
    pub fn makes_answers_of(self, family: Family) -> bool {
        use Rule as R;
        match family {
            Family::Bottle | Family::Drops => matches!(
                self,
                R::MatchLabel
                    | R::CoolTheRed
                    | R::WarmForWarm
                    | R::OneForPhototype
                    | R::BlackForDark
                    | R::WhiteForLight
                    | R::FreshIsFinal
                    | R::IgnoreFading
                    | R::CoverUp
                    | R::ShadeLighter
                    | R::IgnoreOldWork
                    | R::WheelOpposite
            ),
            Family::Remedy => {
                self.makes_answers_of(Family::Bottle)
                    || matches!(self, R::AlwaysLighten | R::ColourAlways | R::ReferAnything)
            }
            Family::Foresight => matches!(
                self,
                R::FreshIsFinal
                    | R::IgnoreFading
                    | R::IgnoreOldWork
                    | R::OneForPhototype
                    | R::MatchLabel
                    | R::LittleRemains
                    | R::MostIsShed
                    | R::GrowsStronger
                    | R::SkinVeilsAll
                    | R::BlackStays
                    | R::LosesWarmth
                    | R::StaysMilky
                    | R::GrowsRicher
            ),
            Family::Hindsight => matches!(
                self,
                R::MatchLabel | R::AllFadeAlike | R::BlueMeansBlue | R::FreshIsFinal | R::OneForPhototype
            ),
            Family::Skin => matches!(
                self,
                R::RednessAsUndertone
                    | R::UndertoneAsRedness
                    | R::DarkAsWarm
                    | R::OliveAsWarm
                    | R::WarmAsOlive
                    | R::FlushIsSkin
                    | R::LightIsCool
                    | R::NeutralInDoubt
                    | R::AngleUpsideDown
                    | R::AngleWithoutFifty
                    | R::AngleInRadians
            ),
            Family::Light => matches!(
                self,
                R::SameInEveryLight
                    | R::OppositeShift
                    | R::SeesTheLamp
                    | R::DoubleShift
                    | R::LampSoftens
                    | R::LampHardens
                    | R::LampWashesOut
                    | R::LampDims
                    | R::LampEnriches
                    | R::LampGreys
            ),
            Family::Triage => matches!(
                self,
                R::ColourAlways
                    | R::ReferAnything
                    | R::AnyReferral
                    | R::GiveAdvice
                    | R::WaitAndSee
                    | R::WaitAnything
                    | R::SignedIsSafe
            ),
            Family::Sequence | Family::Recall => false,
        }
    }
}
