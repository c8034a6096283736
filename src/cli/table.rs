//! Spectra in CSV: the first column is the wavelength, every other one a spectrum.

use super::input::read_text;
use super::problem::Problem;
use std::path::Path;

/// A file of spectra.
pub(super) struct Table {
    /// The file, as messages name it.
    pub file: String,
    /// Its columns after the first.
    pub columns: Vec<Column>,
}

/// One spectrum.
pub(super) struct Column {
    /// Heading.
    pub name: String,
    /// Wavelength in nm with the value there.
    pub pairs: Vec<(f64, f64)>,
}

impl Table {
    /// Reads a file, or standard input for `-`. `what` says what a column is: "one column a person".
    pub fn read(path: &Path, what: &str) -> Result<Self, Problem> {
        let text = read_text(path)?;
        let file = path.display().to_string();
        let mut reader =
            csv::ReaderBuilder::new().comment(Some(b'#')).trim(csv::Trim::All).from_reader(text.as_bytes());
        let input = |what: String| Problem::Input(format!("{file}: {what}"));
        let headers = reader.headers().map_err(|error| input(error.to_string()))?.clone();
        let first = headers.get(0).unwrap_or("");
        if first != "wavelength_nm" {
            let commas = if first.contains(';') { "; columns are separated by commas" } else { "" };
            return Err(input(format!(
                "line 1: the first column is `{}`; it must be `wavelength_nm`, then {what}{commas}",
                first.escape_debug()
            )));
        }
        if headers.len() < 2 {
            return Err(input("line 1: there is no column of reflectance after `wavelength_nm`".to_owned()));
        }
        for (place, name) in headers.iter().enumerate() {
            if name.is_empty() || name.contains(char::is_control) {
                return Err(input(format!(
                    "line 1: the heading of column {} is `{}`; it must be a name of printable characters",
                    place + 1,
                    name.escape_debug()
                )));
            }
        }
        let mut columns: Vec<Column> =
            headers.iter().skip(1).map(|name| Column { name: name.to_owned(), pairs: Vec::new() }).collect();
        for record in reader.records() {
            let record =
                record.map_err(|error| input(uneven(&error).unwrap_or_else(|| error.to_string())))?;
            let line = record.position().map_or(0, csv::Position::line);
            let number = |column: usize| {
                let field = record.get(column).unwrap_or("");
                field.parse::<f64>().ok().filter(|value| value.is_finite()).ok_or_else(|| {
                    input(format!(
                        "line {line}, column `{}`: `{field}` is not a number",
                        headers.get(column).unwrap_or("")
                    ))
                })
            };
            let nm = number(0)?;
            for (place, column) in columns.iter_mut().enumerate() {
                column.pairs.push((nm, number(place + 1)?));
            }
        }
        Ok(Table { file, columns })
    }
}

/// What is said of a line that has more or fewer values than there are headings.
fn uneven(error: &csv::Error) -> Option<String> {
    let csv::ErrorKind::UnequalLengths { pos, expected_len, len } = error.kind() else { return None };
    let line = pos.as_ref().map_or(0, csv::Position::line);
    Some(format!("line {line}: there are {len} values for {expected_len} headings"))
}
