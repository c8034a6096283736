//! The whole course of a placement at a glance: on the day, healed, and one, two and three years later, each under every light.
//!
//! Entry points: [`SurveyRequest`] is what is asked, [`Survey::of`] the answer. Every colour in it is the one that
//! [`Answer`](super::Answer) gives for the same request at that time and under that light.

use super::{Request, RequestError, Task};
use crate::colour::{DisplayP3, Lab, Light, Outline, Srgb, difference};
use crate::healing::{Appearance, HEALED_MONTHS, Reading};
use crate::pigment::Shelf;
use crate::search::Goal;
use crate::skin::{Site, Skin, ita_degrees};
use serde::{Deserialize, Serialize};

/// Months after the placement at which it is looked at.
pub const SURVEY_MONTHS: [f64; 5] = [0.0, HEALED_MONTHS, 12.0, 24.0, 36.0];

/// What is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SurveyRequest {
    /// The case. Its time and its light do not matter here, nor do its worlds and its search.
    pub case: Request,
    /// A goal to measure every colour against.
    #[serde(default)]
    pub goal: Option<GoalRequest>,
}

/// A goal, as written.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GoalRequest {
    /// L*, a*, b* that the work should have under D65, seen through the skin.
    pub lab: [f64; 3],
    /// ΔE00 within which it counts as reached.
    pub tolerance: f64,
}

/// The answer.
#[derive(Debug, Clone, Serialize)]
pub struct Survey {
    /// The skin the engine works with.
    pub skin: Skin,
    /// Individual typology angle of the bare, calm skin under D65, in degrees.
    pub ita_degrees: f64,
    /// The bare, calm skin.
    pub bare: Vec<Seen>,
    /// The skin around the place, under every light in the order of [`Light::ALL`]; empty where the place has no edge.
    pub around: Vec<Shown>,
    /// The client as they come in, with older work; empty where there is none.
    pub today: Vec<Seen>,
    /// The course of the placement, at [`SURVEY_MONTHS`].
    pub moments: Vec<SurveyMoment>,
    /// The goal, where there is one.
    pub goal: Option<SurveyGoal>,
    /// The mix in words; empty where there is none.
    pub mix: String,
    /// Restrictions of what is in the mix.
    pub warnings: Vec<String>,
}

/// One time.
#[derive(Debug, Clone, Serialize)]
pub struct SurveyMoment {
    /// Months after the placement.
    pub months: f64,
    /// What is seen then, under every light in the order of [`Light::ALL`].
    pub seen: Vec<Seen>,
}

/// What is seen at one time under one light.
#[derive(Debug, Clone, Serialize)]
pub struct Seen {
    /// The light.
    pub light: Light,
    /// The colour.
    #[serde(flatten)]
    pub colour: Shown,
    /// The place without any work at that time: redder while it heals.
    pub bare_skin: Shown,
    /// The colour in words, relative to that skin.
    pub reading: Reading,
    /// ΔE00 to that skin.
    pub delta_e_2000_to_skin: f64,
    /// ΔE00 to the goal.
    pub delta_e_2000_to_goal: Option<f64>,
}

/// A colour with what screens can show of it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Shown {
    /// L*, a*, b* relative to the light's white.
    pub lab: [f64; 3],
    /// Red, green, blue, 0 to 255.
    pub srgb: [u8; 3],
    /// Whether sRGB can show it.
    pub in_gamut: bool,
    /// The same for a screen of wider range.
    pub display_p3: DisplayP3,
}

/// The goal, to be drawn.
#[derive(Debug, Clone, Serialize)]
pub struct SurveyGoal {
    /// The colour.
    #[serde(flatten)]
    pub colour: Shown,
    /// It on the bare skin under D65, in words.
    pub reading: Reading,
    /// Where ΔE00 from it is its tolerance.
    pub outline: Outline,
}

impl SurveyRequest {
    /// Reads a question from JSON.
    ///
    /// # Errors
    /// [`RequestError`] names the field that is unknown, missing or of the wrong kind.
    pub fn from_json(text: &str) -> Result<Self, RequestError> {
        super::request::from_json(text)
    }

    /// The goal, checked.
    ///
    /// # Errors
    /// [`RequestError`] names the goal when a number of it is outside its bounds.
    pub fn goal(&self) -> Result<Option<Goal>, RequestError> {
        let Some(GoalRequest { lab: [l, a, b], tolerance }) = self.goal else { return Ok(None) };
        let goal = Goal { lab: Lab::new(l, a, b), tolerance };
        goal.checked().map(Some).map_err(|error| RequestError::new("goal", error.to_string()))
    }
}

impl Shown {
    /// How screens show a colour.
    pub fn of(lab: Lab) -> Self {
        let srgb = Srgb::from_lab(lab);
        Shown {
            lab: [lab.l, lab.a, lab.b],
            srgb: [srgb.r, srgb.g, srgb.b],
            in_gamut: srgb.in_gamut,
            display_p3: DisplayP3::from_lab(lab),
        }
    }
}

impl Survey {
    /// Looks at a task at every time and under every light.
    pub fn of(shelf: &Shelf, task: &Task, goal: Option<Goal>) -> Self {
        let under_all = |(bare, seen): (Appearance, Appearance)| -> Vec<Seen> {
            let seen = |(light, _)| Seen::of((bare, seen), task.site, light, goal);
            Light::ALL.map(seen).to_vec()
        };
        let (bare, today) = task.today(shelf);
        let moment = |months| SurveyMoment { months, seen: under_all(task.at(shelf, months)) };
        Survey {
            skin: task.skin,
            ita_degrees: ita_degrees(Light::D65.lab_of(&bare.reflectance)),
            bare: under_all((bare, bare)),
            around: task.around().map_or_else(Vec::new, |around| {
                Light::ALL.map(|(light, _)| Shown::of(light.lab_of(&around))).to_vec()
            }),
            today: if task.existing.is_empty() { Vec::new() } else { under_all((bare, today)) },
            moments: SURVEY_MONTHS.map(moment).to_vec(),
            goal: goal.map(|goal| SurveyGoal {
                colour: Shown::of(goal.lab),
                reading: Reading::of(goal.lab, Light::D65.lab_of(&bare.reflectance), task.site),
                outline: Outline::at_distance(goal.lab, goal.tolerance),
            }),
            mix: shelf.mix_in_words(&task.mix),
            warnings: task.warnings(shelf),
        }
    }
}

impl Seen {
    fn of((bare, seen): (Appearance, Appearance), site: Site, light: Light, goal: Option<Goal>) -> Self {
        let (bare, seen) = (light.lab_of(&bare.reflectance), light.lab_of(&seen.reflectance));
        Seen {
            light,
            colour: Shown::of(seen),
            bare_skin: Shown::of(bare),
            reading: Reading::of(seen, bare, site),
            delta_e_2000_to_skin: difference(seen, bare),
            delta_e_2000_to_goal: goal.map(|goal| difference(seen, goal.lab)),
        }
    }
}
