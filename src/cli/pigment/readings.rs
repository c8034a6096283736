//! Readings of one bottle, out of a CSV file: which column is what, and the optics they give.

use super::super::problem::Problem;
use super::super::table::{Column, Table};
use super::{Arguments, Subject};
use crate::colour::{BANDS, Spectrum, dark_spectrum_of};
use crate::course::load;
use crate::pigment::measure::{
    Body, MeasureError, Optics, Panel, SHARE, Surface, THICKNESS, Tint, drawdown, measure,
};
use crate::pigment::{Basis, CI_NAME_FORM, Mix, is_ci_name};
use crate::quantity::Quantity;
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

/// Reflectance of the bare cards where nothing is said of them, without the surface reflection (representative of lacquered cards).
const WHITE_CARD: f64 = 0.81;
const BLACK_CARD: f64 = 0.01;
/// Greatest reflectance of all columns together below which they look divided by 100.
const LEAST_PEAK: f64 = 0.02;

const CARD: Quantity = Quantity::new("card", "as a fraction", 0.0, 1.0);

/// The white of tints, which is looked for when the first tint asks for it.
pub(super) struct White {
    id: String,
    course: PathBuf,
    found: OnceLock<Result<Optics, String>>,
}

impl White {
    pub fn new(id: &str, course: &Path) -> Self {
        White { id: id.to_owned(), course: course.to_owned(), found: OnceLock::new() }
    }

    fn optics(&self) -> Result<Optics, Problem> {
        self.found.get_or_init(|| self.look()).clone().map_err(Problem::Input)
    }

    fn look(&self) -> Result<Optics, String> {
        let id = &self.id;
        let loaded = load(&self.course);
        let Some(course) = loaded.course else {
            return Err(format!(
                "`--white` is {id}, and the course in {} cannot be read: `healedhue check` says why",
                self.course.display()
            ));
        };
        let shelf = &course.shelf;
        if let Some(place) = shelf.colourant_place(id) {
            return Ok(shelf.optics_of(&vec![(place, 1.0)]));
        }
        if shelf.bottle(id).is_some() {
            return Ok(shelf.optics_of(&shelf.paint_of(&Mix::new([(id.clone(), 1)]))));
        }
        Err(if is_ci_name(id) || id.chars().any(|c| c.is_ascii_uppercase()) {
            format!(
                "`--white` is {id}, which is no colourant or bottle of the course; a colourant goes by {CI_NAME_FORM}"
            )
        } else {
            format!(
                "`--white` is {id}, which is no colourant or bottle of the course in {}",
                self.course.display()
            )
        })
    }
}

/// Columns that were recognised.
#[derive(Default)]
struct Sheet {
    white: Option<Spectrum>,
    black: Option<Spectrum>,
    /// Films by thickness.
    films: Vec<Film>,
    masstone: Option<Spectrum>,
    tint: Option<Spectrum>,
}

/// The two readings of one film.
struct Film {
    /// As in the heading, after @; empty for the thickness of the command line.
    suffix: String,
    over_white: Option<Spectrum>,
    over_black: Option<Spectrum>,
}

/// Optics of the bottle in one file.
pub(super) fn subject(path: &Path, arguments: &Arguments, white: &White) -> Result<Subject, Problem> {
    let table = Table::read(path, "columns such as over_white and over_black")?;
    let input = |what: String| Problem::Input(format!("{}: {what}", table.file));
    let sheet = Sheet::read(&table)?;
    let setup = arguments.setup(Surface::Included)?;
    let mut assumed = Vec::new();
    if arguments.surface.is_none() {
        assumed.push("readings hold the surface reflection (d/8, gloss trap closed)".to_owned());
    }
    let mut panels: Vec<Panel> = Vec::new();
    let mut thicknesses = Vec::new();
    if !sheet.films.is_empty() {
        let mut card =
            |read: &Option<Spectrum>, option: Option<f64>, name: &str, usual: f64| match (read, option) {
                (Some(read), _) => Ok(*read),
                (None, Some(value)) => CARD.check(value).map(|value| [value; BANDS]).map_err(|_| {
                    let percent =
                        if value > 1.0 && value <= 100.0 { "; divide percentages by 100" } else { "" };
                    Problem::Input(format!("`--{name}-card` is {value}, outside 0 to 1{percent}"))
                }),
                (None, None) => {
                    let usual = usual + setup.gloss();
                    assumed.push(format!(
                        "the {name} card reflects {usual:.2} (representative): measure it, column `{name}`"
                    ));
                    Ok([usual; BANDS])
                }
            };
        let on_white = card(&sheet.white, arguments.white_card, "white", WHITE_CARD)?;
        let on_black = card(&sheet.black, arguments.black_card, "black", BLACK_CARD)?;
        for film in sheet.films {
            let thickness_mm = thickness(&film.suffix, arguments.thickness_mm).map_err(&input)?;
            let at = if film.suffix.is_empty() { String::new() } else { format!("@{}", film.suffix) };
            let (Some(over_white), Some(over_black)) = (film.over_white, film.over_black) else {
                let missing = if film.over_white.is_none() { "over_white" } else { "over_black" };
                return Err(input(format!(
                    "the column `{missing}{at}` is missing: a film is read over white and over black"
                )));
            };
            let pair = drawdown(thickness_mm, over_white, over_black, on_white, on_black)
                .map_err(|error| input(error.to_string()))?;
            panels.extend(pair.map(|panel| Panel { name: format!("{}{at}", panel.name), ..panel }));
            thicknesses.push(format!("{thickness_mm} mm"));
        }
    }
    let opaque = |name: &str, reflectance, tint| Panel {
        name: name.to_owned(),
        reflectance,
        body: Body::Opaque,
        tint,
    };
    if let Some(masstone) = sheet.masstone {
        panels.push(opaque("masstone", masstone, None));
    }
    let is_film = sheet.tint.is_none();
    if let Some(tint) = sheet.tint {
        let share = arguments.share.ok_or_else(|| {
            input(
                "the column `tint` needs `--share`, the share of the paint in the tint, such as 0.1"
                    .to_owned(),
            )
        })?;
        let share = SHARE.check(share).map_err(|breach| Problem::Input(breach.to_string()))?;
        if !thicknesses.is_empty() {
            return Err(input(
                "a tint is on the scale of its white, a film on its own: give films, or masstone and tint"
                    .to_owned(),
            ));
        }
        panels.push(opaque("tint", tint, Some(Tint { share, white: white.optics()? })));
    }
    let found = measure(&panels, &setup, arguments.noise).map_err(|error| {
        let how = if matches!(error, MeasureError::BelowSurface { .. }) {
            " with `--surface excluded`"
        } else {
            ""
        };
        input(format!("{error}{how}"))
    })?;
    let n = setup.refractive_index;
    let note = if is_film {
        format!("Films of {} over white and over black, n = {n}.", thicknesses.join(", "))
    } else {
        format!("Masstone and tint with {}, n = {n}; on the scale of that white.", white.id)
    };
    let stem = path.file_stem().map(|stem| stem.to_string_lossy().into_owned());
    Ok(Subject {
        stem: stem.filter(|stem| stem != "-"),
        optics: found.optics,
        is_film,
        basis: Basis::Measured,
        note,
        found: Some(found),
        assumed,
        setup,
    })
}

/// Thickness out of a heading's end, or of the command line.
fn thickness(suffix: &str, option: Option<f64>) -> Result<f64, String> {
    let value = if suffix.is_empty() {
        option.ok_or("`--thickness-mm` is missing: the thickness of the dried film, such as 0.02")?
    } else {
        let number = suffix.trim().trim_end_matches("mm").trim();
        number
            .parse()
            .map_err(|_| format!("`@{suffix}` in a heading is no thickness in mm; write over_white@0.02"))?
    };
    THICKNESS.check(value).map_err(|breach| {
        let micrometres = if value > 5.0 && value <= 5000.0 {
            format!("; micrometres? write {}", value / 1000.0)
        } else {
            String::new()
        };
        format!("{breach}{micrometres}")
    })
}

impl Sheet {
    fn read(table: &Table) -> Result<Self, Problem> {
        let input = |what: String| Problem::Input(format!("{}: {what}", table.file));
        let mut sheet = Sheet::default();
        let mut most = 0.0_f64;
        for column in &table.columns {
            let spectrum = spectrum_of_column(column).map_err(&input)?;
            most = spectrum.iter().fold(most, |most, value| most.max(*value));
            let (heading, suffix) = column.name.split_once('@').unwrap_or((&column.name, ""));
            let slot = match (heading, suffix) {
                ("white", "") => &mut sheet.white,
                ("black", "") => &mut sheet.black,
                ("masstone", "") => &mut sheet.masstone,
                ("tint", "") => &mut sheet.tint,
                ("over_white", _) => &mut sheet.film(suffix).over_white,
                ("over_black", _) => &mut sheet.film(suffix).over_black,
                _ => {
                    return Err(input(format!(
                        "there is no meaning for the column `{}`; columns are wavelength_nm, over_white, over_black (with @ and \
                         the thickness in mm where there are several films), white, black, masstone and tint",
                        column.name
                    )));
                }
            };
            if slot.replace(spectrum).is_some() {
                return Err(input(format!("the column `{}` is there twice", column.name)));
            }
        }
        if most < LEAST_PEAK {
            return Err(input(format!(
                "no reflectance is above {most}: reflectance must be a fraction of 1, not divided by 100 again"
            )));
        }
        Ok(sheet)
    }

    fn film(&mut self, suffix: &str) -> &mut Film {
        let place = self.films.iter().position(|film| film.suffix == suffix).unwrap_or_else(|| {
            self.films.push(Film { suffix: suffix.to_owned(), over_white: None, over_black: None });
            self.films.len() - 1
        });
        &mut self.films[place]
    }
}

fn spectrum_of_column(column: &Column) -> Result<Spectrum, String> {
    dark_spectrum_of(&column.pairs).map_err(|error| format!("column `{}`: {error}", column.name))
}
