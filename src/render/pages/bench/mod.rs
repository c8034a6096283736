//! The bench: a page on which the engine itself answers what a mix heals to on a client of one's choice.
//!
//! Entry points: [`Pages::bench`] for the page, [`Pages::bench_assets`] for what it loads. The page holds the controls, so that its
//! text is here and in the template; the script (`site/bench/`) holds what moves.

mod data;

use super::Pages;
use crate::colour::Deficiency;
use crate::healing::{COVERAGE, DEPTH, LOAD, Placement, THICKNESS};
use crate::pigment::{Bottle, Mix};
use crate::quantity::Quantity;
use crate::render::RenderError;
use crate::render::drawing::Manner;
use crate::render::engine::{data_script, engine_script};
use crate::render::frame::{Frame, Section};
use crate::render::output::SiteFile;
use crate::render::plan::{self, href};
use crate::render::swatch::Swatch;
use crate::render::templates::{BENCH_CSS, BENCH_JS};
use crate::render::words::{OF_BENCH, speaking};
use crate::say;
use crate::skin::{BACKGROUND, BLOOD, MELANIN};
use serde::Serialize;

#[derive(Serialize)]
struct BenchPage {
    frame: Frame,
    lessons: String,
    model: String,
    cautions: String,
    display: String,
    clients: Vec<Named>,
    goals: Vec<GoalChoice>,
    groups: Vec<BottleGroup>,
    filters: [EyesFilter; 3],
    techniques: Vec<&'static str>,
    lights: Vec<&'static str>,
    sites: Vec<&'static str>,
    sliders: Sliders,
}

/// Something to choose, by its id.
#[derive(Serialize)]
struct Named {
    id: String,
    name: String,
}

/// A goal to choose, with its colour.
#[derive(Serialize)]
struct GoalChoice {
    id: String,
    name: String,
    l: String,
    a: String,
    b: String,
}

/// Bottles of one line, those of none, or modifiers.
#[derive(Serialize)]
struct BottleGroup {
    name: String,
    bottles: Vec<BottleRow>,
}

/// What shows a swatch as other eyes see it.
#[derive(Serialize)]
pub(super) struct EyesFilter {
    /// As its messages call it.
    name: &'static str,
    /// Rows of the matrix that SVG's `feColorMatrix` takes.
    matrix: String,
}

/// A filter for every kind of colour-vision deficiency, the most common first.
pub(super) fn eyes_filters() -> [EyesFilter; 3] {
    [(Deficiency::Deutan, "deutan"), (Deficiency::Protan, "protan"), (Deficiency::Tritan, "tritan")].map(
        |(kind, name)| {
            let rows = kind.matrix().map(|[red, green, blue]| format!("{red} {green} {blue} 0 0"));
            EyesFilter { name, matrix: format!("{} 0 0 0 1 0", rows.join(" ")) }
        },
    )
}

/// A bottle that drops can be taken from.
#[derive(Serialize)]
struct BottleRow {
    id: String,
    name: String,
    about: String,
    /// What it is meant for, unless that is every site.
    sites: Option<String>,
    /// The colour in the bottle.
    swatch: Swatch,
}

/// The sliders' ranges.
#[derive(Serialize)]
struct Sliders {
    depth: Slider,
    thickness: Slider,
    load: Slider,
    coverage: Slider,
}

/// A slider's range, which lies within what the engine takes.
#[derive(Serialize)]
struct Slider {
    least: f64,
    most: f64,
    step: f64,
}

impl Slider {
    fn within(quantity: &Quantity, least: f64, most: f64, step: f64) -> Self {
        Slider { least: least.max(quantity.least), most: most.min(quantity.most), step }
    }
}

/// A way of placing work, as a starting point for the sliders.
#[derive(Debug, Clone, Copy, Serialize)]
struct Technique {
    id: &'static str,
    manner: Manner,
    placement: Placement,
}

/// The techniques, as the lesson on load and coverage tells them apart (representative, invented for the demo): strokes carry much
/// colour on part of the skin, powder carries little on nearly all of it.
fn techniques() -> [Technique; 3] {
    let usual = Placement::default();
    [
        Technique { id: "both", manner: Manner::Both, placement: usual },
        Technique { id: "strokes", manner: Manner::Strokes, placement: Placement { coverage: 0.6, ..usual } },
        Technique {
            id: "powder",
            manner: Manner::Powder,
            placement: Placement { load: 0.4, coverage: 0.9, ..usual },
        },
    ]
}

impl Pages<'_> {
    /// The bench.
    pub(super) fn bench(&self) -> Result<SiteFile, RenderError> {
        let course = self.course;
        let path = plan::BENCH;
        let language = &course.language;
        let frame = self
            .frame(path, &say!(language, "bench-title"), Section::Bench)
            .described(&say!(language, "bench-about"))
            .with_engine(path, &[plan::BENCH_STYLE], &[plan::ENGINE, plan::BENCH_COURSE, plan::BENCH_SCRIPT]);
        let context = BenchPage {
            frame,
            lessons: href(path, plan::HOME),
            model: href(path, plan::MODEL),
            cautions: href(path, plan::CAUTIONS),
            display: href(path, plan::DISPLAY),
            clients: course
                .clients
                .iter()
                .map(|client| Named { id: client.id.clone(), name: client.name.clone() })
                .collect(),
            goals: course
                .goals
                .iter()
                .map(|goal| {
                    let [l, a, b] = course.language.lab(goal.lab);
                    GoalChoice { id: goal.id.clone(), name: goal.name.clone(), l, a, b }
                })
                .collect(),
            groups: self.bottle_groups(),
            filters: eyes_filters(),
            techniques: techniques().map(|technique| technique.id).into(),
            lights: crate::colour::Light::ALL.map(|(_, name)| name).into(),
            sites: crate::skin::Site::ALL.map(|(site, _)| site.word()).into(),
            sliders: Sliders {
                depth: Slider::within(&DEPTH, 0.05, 1.0, 0.01),
                thickness: Slider::within(&THICKNESS, 0.05, 0.8, 0.01),
                load: Slider::within(&LOAD, 0.0, 2.5, 0.05),
                coverage: Slider::within(&COVERAGE, 0.0, 1.0, 0.01),
            },
        };
        self.page(path, "bench.html", context)
    }

    /// What the bench loads: its style and script, the course's bottles and people, and the engine.
    pub(super) fn bench_assets(&self) -> Result<Vec<SiteFile>, RenderError> {
        let course = data_script(&data::BenchCourse::of(self.course))
            .map_err(|source| RenderError::Data { file: plan::BENCH_COURSE, source })?;
        let file = |path: &str, content: Vec<u8>| SiteFile { path: path.to_owned(), content };
        Ok(vec![
            file(plan::BENCH_STYLE, BENCH_CSS.into()),
            file(plan::BENCH_SCRIPT, speaking(&self.course.language, &OF_BENCH, BENCH_JS)),
            file(plan::BENCH_COURSE, course),
            file(plan::ENGINE, engine_script().to_vec()),
        ])
    }

    /// Bottles line by line, and modifiers of all lines last.
    fn bottle_groups(&self) -> Vec<BottleGroup> {
        let language = &self.course.language;
        let lines = self.course.shelf.by_line();
        let plain = lines.iter().all(|(line, _)| line.is_none());
        let rows = |wanted: bool, bottles: &[&Bottle]| -> Vec<BottleRow> {
            let wanted = bottles.iter().filter(|bottle| bottle.modifier.is_some() == wanted);
            wanted.map(|bottle| self.bottle_row(bottle)).collect()
        };
        let of_line = lines.iter().map(|(line, bottles)| BottleGroup {
            name: match line {
                Some(line) => line.name.clone(),
                None if plain => say!(language, "bench-bottles"),
                None => say!(language, "bottles-no-line"),
            },
            bottles: rows(false, bottles),
        });
        let modifiers = BottleGroup {
            name: say!(language, "bench-modifiers"),
            bottles: lines.iter().flat_map(|(_, bottles)| rows(true, bottles)).collect(),
        };
        of_line.chain([modifiers]).filter(|group| !group.bottles.is_empty()).collect()
    }

    fn bottle_row(&self, bottle: &Bottle) -> BottleRow {
        let colour = self.course.shelf.label_colour(&Mix::new([(bottle.id.clone(), 1)]));
        BottleRow {
            id: bottle.id.clone(),
            name: bottle.name.clone(),
            about: bottle.about.clone(),
            sites: self.course.language.meant_for(bottle),
            swatch: Swatch::bottle(&self.course.language, &bottle.name, colour),
        }
    }
}

/// Bounds of the skin's sliders; those of melanin and blood run by ratio, from the least a slider shows.
const SKIN_SLIDERS: [(&str, f64, &Quantity); 3] =
    [("melanin", 0.004, &MELANIN), ("blood", 0.002, &BLOOD), ("background", 0.05, &BACKGROUND)];
