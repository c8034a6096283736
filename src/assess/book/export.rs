//! A mark book as CSV. Entry points: [`MarkBook::results_csv`], [`MarkBook::answers_csv`].

use super::{BookError, MarkBook};
use crate::assess::guarded;
use rusqlite::types::ValueRef;
use std::io::Write;

/// How every export begins, those of earlier versions too.
pub(crate) const EXPORT_HEAD: &[u8] = b"candidate,name,";

impl MarkBook {
    /// Every result as CSV, a row each, with the credit of each section as text: `reading 0.75; mixing 0.5`.
    ///
    /// # Errors
    /// [`BookError`] where the book cannot be read or the export not be written.
    pub fn results_csv(&self, out: impl Write) -> Result<(), BookError> {
        self.export(
            out,
            "SELECT candidate, name, kind, blueprint, attempt, round(total, 2) AS total, round(pass_mark, 2) AS pass_mark,
                round(standard_error, 2) AS standard_error,
                CASE passed WHEN 1 THEN 'yes' WHEN 0 THEN 'no' ELSE '' END AS passed,
                (SELECT group_concat(line, '; ') FROM
                    (SELECT section || ' ' || round(credit, 3) AS line FROM section WHERE result = result.id ORDER BY place)
                ) AS sections, round(seconds / 60.0, 1) AS minutes, seed, digest, course
             FROM result ORDER BY kind, blueprint, candidate, seed, attempt",
        )
    }

    /// Every answer as CSV, a row each.
    ///
    /// # Errors
    /// As [`MarkBook::results_csv`].
    pub fn answers_csv(&self, out: impl Write) -> Result<(), BookError> {
        self.export(
            out,
            "SELECT candidate, name, kind, blueprint, attempt, number, answer.section, question, skill, answer, key,
                round(credit, 4) AS credit, coalesce(misconception, '') AS misconception, lesson, answer.seconds AS seconds,
                consequence
             FROM answer JOIN result ON result.id = answer.result
             ORDER BY kind, blueprint, candidate, seed, attempt, number",
        )
    }

    fn export(&self, out: impl Write, query: &str) -> Result<(), BookError> {
        let mut writer = csv::Writer::from_writer(out);
        let mut statement = self.connection.prepare(query)?;
        let names: Vec<String> = statement.column_names().map(str::to_owned).collect();
        writer.write_record(&names)?;
        let mut rows = statement.query([])?;
        while let Some(row) = rows.next()? {
            let mut record = Vec::with_capacity(names.len());
            for place in 0..names.len() {
                record.push(match row.get_ref(place)? {
                    ValueRef::Integer(value) => value.to_string(),
                    ValueRef::Real(value) => value.to_string(),
                    ValueRef::Text(text) => guarded(&String::from_utf8_lossy(text)),
                    _ => String::new(),
                });
            }
            writer.write_record(&record)?;
        }
        writer.flush().map_err(csv::Error::from)?;
        Ok(())
    }
}
