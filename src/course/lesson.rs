//! Modules, lessons, the blocks a lesson's text is made of, and the files it refers to.

use super::{Drill, Technique};
use crate::colour::Light;
use crate::healing::Placement;
use crate::pigment::Mix;
use serde::{Deserialize, Serialize};

/// A page without drills: the welcome page, or a module's first page.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct Page {
    /// Title, from the summary.
    pub title: String,
    /// Path below `lessons/`, without `.md`, with `/` on every system: `skin-as-a-filter/module`.
    pub path: String,
    /// Id of the title, by which links lead to it.
    pub anchor: String,
    /// The text. Not part of what is written in JSON, which is for practice.
    #[serde(skip)]
    pub blocks: Vec<Block>,
}

/// A file that pages show or offer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Asset {
    /// Path below `lessons/`, with `/` on every system: `skin-as-a-filter/layers.png`.
    pub path: String,
    /// Its content.
    pub content: Vec<u8>,
}

/// A module: a folder of lessons.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct Module {
    /// Unique id.
    pub id: String,
    /// One sentence.
    pub about: String,
    /// The module's own page.
    pub page: Page,
    /// What instructors are told about the module, from `teaching.md` beside its page.
    #[serde(skip)]
    pub teaching: Option<Page>,
    /// Lessons in teaching order.
    pub lessons: Vec<Lesson>,
}

/// A lesson: one page.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct Lesson {
    /// Unique id.
    pub id: String,
    /// Title, path and text.
    pub page: Page,
    /// What the apprentice can do afterwards.
    pub objectives: Vec<String>,
    /// Minutes it takes.
    pub minutes: u32,
    /// Ids of lessons to read before.
    pub needs: Vec<String>,
    /// Ids of skills it trains.
    pub skills: Vec<String>,
    /// Its drills.
    pub drills: Vec<Drill>,
}

/// A piece of a page's text, in order.
#[derive(Debug, Clone)]
pub enum Block {
    /// CommonMark, without raw HTML; the first `# Title` line is taken off.
    Text(String),
    /// The exercises of this drill stand here.
    Drill(String),
    /// Computed swatches stand here.
    Foresee(Foresee),
}

/// A row of computed swatches.
#[derive(Debug, Clone)]
pub struct Foresee {
    /// What is to be seen.
    pub caption: String,
    /// The swatches.
    pub show: Vec<Show>,
}

/// One computed swatch.
#[derive(Debug, Clone)]
pub struct Show {
    /// Its label.
    pub label: String,
    /// Client id.
    pub client: String,
    /// Whether the client's existing work is left out.
    pub bare: bool,
    /// The new mix, if any.
    pub mix: Option<Mix>,
    /// Months after it was placed.
    pub months: f64,
    /// Where it lies.
    pub placement: Placement,
    /// How it is made, where there is a mix.
    pub technique: Technique,
    /// The light it is seen under.
    pub light: Light,
}
