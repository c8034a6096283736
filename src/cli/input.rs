//! Reading files and standard input within a limit: a file may have no length, and a stream may have no end.
//!
//! Entry points: [`read_text`] and [`read_input`], [`within`] where the caller words the refusal, [`read_line`] for a person's
//! answers.

use super::lines::named;
use super::problem::Problem;
use crate::handed::text_of;
use std::fs::File;
use std::io::{self, BufRead, Read};
use std::path::Path;

/// Longest input that is read, in bytes.
const MOST_BYTES: u64 = 50_000_000;
/// Longest line that is read, in bytes.
const LONGEST_LINE: u64 = 10_000;

/// The text of a file, or of standard input for `-`; see [`text_of`].
pub(super) fn read_text(path: &Path) -> Result<String, Problem> {
    text_of(&read_input(path, MOST_BYTES)?)
        .map_err(|error| Problem::Input(format!("{}: {error}", named(path))))
}

/// The content of a file, or of standard input for `-`, of at most `most` bytes.
pub(super) fn read_input(path: &Path, most: u64) -> Result<Vec<u8>, Problem> {
    let read = if path.as_os_str() == "-" { taken(io::stdin().lock(), most) } else { within(path, most) };
    match read {
        Ok(Some(bytes)) => Ok(bytes),
        Ok(None) => Err(Problem::Input(format!("{}: more than the {most} bytes that are read", named(path)))),
        Err(source) => Err(Problem::File { path: path.to_owned(), source }),
    }
}

/// The content of a file; `None` where it is longer than `most` bytes, of which no more are read.
pub(super) fn within(path: &Path, most: u64) -> io::Result<Option<Vec<u8>>> {
    taken(File::open(path)?, most)
}

/// The next line of an input, with its line break; empty at the input's end.
pub(super) fn read_line(input: &mut impl BufRead) -> Result<Vec<u8>, Problem> {
    let mut line = Vec::new();
    input.take(LONGEST_LINE + 1).read_until(b'\n', &mut line)?;
    if line.len() as u64 > LONGEST_LINE {
        return Err(Problem::Input(format!(
            "standard input: a line of more than {LONGEST_LINE} bytes is no answer"
        )));
    }
    Ok(line)
}

fn taken(input: impl Read, most: u64) -> io::Result<Option<Vec<u8>>> {
    let mut bytes = Vec::new();
    input.take(most + 1).read_to_end(&mut bytes)?;
    Ok((bytes.len() as u64 <= most).then_some(bytes))
}
