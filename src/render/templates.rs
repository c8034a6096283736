//! The site's templates and assets, which the program carries with it.
//!
//! Entry point: [`Templates::render`]. Every value is escaped unless a template marks it `safe`; only HTML from
//! [`super::markdown`] and drawings from [`super::swatch`] are.
//!
//! Two functions give the program's own words: `say("page-title", count=3)` a text, `html("page-note", href=…)` a message that holds
//! HTML itself, its values escaped.

use super::RenderError;
use crate::language::{self, Language};
use minijinja::syntax::SyntaxConfig;
use minijinja::value::{Kwargs, Serde, Value};
use minijinja::{AutoEscape, Environment, UndefinedBehavior};
use serde::Serialize;

/// The style sheet.
pub(super) const STYLE_CSS: &str =
    concat!(include_str!("../../site/base.css"), "\n", include_str!("../../site/style.css"));
/// The part of it that every page has, whatever stands in it.
pub(super) const BASE_CSS: &str = include_str!("../../site/base.css");
/// What reports need besides.
pub(super) const REPORT_CSS: &str = include_str!("../../site/report.css");
/// The script of the exercises.
pub(super) const EXERCISE_JS: &str = include_str!("../../site/exercise.js");

/// The style of papers, which comes after the style sheet.
pub(super) const PAPER_CSS: &str = include_str!("../../site/paper.css");
/// The script of papers.
pub(super) const PAPER_JS: &str = include_str!("../../site/paper.js");
/// The script that saves an assignment's answers.
pub(super) const SLIP_JS: &str = include_str!("../../site/slip.js");
/// The search library and the script that uses it.
pub(super) const SEARCH_JS: &str =
    concat!(include_str!("../../site/vendor/minisearch.js"), include_str!("../../site/search.js"));
/// The bench's own style sheet.
pub(super) const BENCH_CSS: &str = include_str!("../../site/bench.css");

/// Practice's own style sheet.
pub(super) const PRACTICE_CSS: &str = include_str!("../../site/practice.css");

macro_rules! joined {
    ($($name:literal),* $(,)?) => {
        concat!("\"use strict\";\n(() => {\n", $(include_str!(concat!("../../site/", $name)), "\n",)* "})();\n")
    };
}

/// The script of practice, made in the same way; what draws and talks is the bench's.
pub(super) const PRACTICE_JS: &str = joined![
    "practice/course.js",
    "bench/figures.js",
    "bench/talk.js",
    "bench/swatch.js",
    "bench/eyes.js",
    "practice/maker.js",
    "practice/record.js",
    "practice/keeping.js",
    "practice/kept.js",
    "practice/question.js",
    "practice/outcome.js",
    "practice/standing.js",
    "practice/session.js",
    "practice/start.js",
];

/// The script of progress, out of practice's parts.
pub(super) const PROGRESS_JS: &str = joined![
    "practice/course.js",
    "bench/figures.js",
    "bench/talk.js",
    "practice/maker.js",
    "practice/record.js",
    "practice/keeping.js",
    "practice/kept.js",
    "practice/standing.js",
    "progress/start.js",
];

/// What the home page says of what is due.
pub(super) const HOME_JS: &str = include_str!("../../site/home.js");

/// The script of the bench: its parts in one scope, each after those it needs. One classic script, since a page from a disk may not
/// load modules.
pub(super) const BENCH_JS: &str = joined![
    "bench/figures.js",
    "bench/case.js",
    "bench/address.js",
    "bench/talk.js",
    "bench/pool.js",
    "bench/swatch.js",
    "bench/eyes.js",
    "bench/planes.js",
    "bench/words.js",
    "bench/ranking.js",
    "bench/controls.js",
    "bench/start.js",
];

macro_rules! embedded {
    ($($name:literal),* $(,)?) => {
        [$(($name, include_str!(concat!("../../site/templates/", $name)))),*]
    };
}

/// Every template with its name.
const TEMPLATES: &[(&str, &str)] = &embedded![
    "frame.html",
    "swatch.html",
    "exercise.html",
    "parts.html",
    "home.html",
    "text.html",
    "module.html",
    "lesson.html",
    "eyes.html",
    "bench.html",
    "record.html",
    "practice.html",
    "progress.html",
    "bottles.html",
    "colourants.html",
    "clients.html",
    "clients-part.html",
    "client.html",
    "misconceptions.html",
    "glossary.html",
    "cautions.html",
    "display.html",
    "search.html",
    "model.html",
    "sheet-bottles.html",
    "worksheet.html",
    "syllabus.html",
    "teaching.html",
    "swatch-book.html",
    "consultation.html",
    "correction-planner.html",
    "sources.html",
    "key.html",
    "paper-head.html",
    "paper.html",
    "paper-sheet.html",
    "paper-question.html",
    "report-frame.html",
    "report-plots.html",
    "report.html",
    "report-person.html",
    "report-people.html",
    "assignment.html",
];

/// All templates, ready to be filled.
pub(super) struct Templates(Environment<'static>);

impl Templates {
    /// Compiles the embedded templates; what they say by themselves is said in this language.
    pub fn new(language: &Language) -> Result<Self, RenderError> {
        let mut environment = Environment::new();
        let plain = language.clone();
        environment
            .add_function("say", move |id: &str, values: Kwargs| said(&plain, id, &values, Value::to_string));
        let marked = language.clone();
        environment.add_function("html", move |id: &str, values: Kwargs| {
            said(&marked, id, &values, escaped).map(Value::from_safe_string)
        });
        environment.set_undefined_behavior(UndefinedBehavior::Strict);
        let syntax = SyntaxConfig::builder().trim_blocks(true).lstrip_blocks(true).build();
        environment
            .set_syntax(syntax.map_err(|source| RenderError::Template { template: "syntax", source })?);
        environment.set_auto_escape_callback(|_| AutoEscape::Html);
        environment.set_formatter(|output, state, value| match value.as_str() {
            Some(text) if !value.is_safe() => Ok(write_escaped(output, text)?),
            _ => minijinja::escape_formatter(output, state, value),
        });
        for &(template, source) in TEMPLATES {
            let failed = |source| RenderError::Template { template, source };
            environment.add_template_owned(template, without_indents(source)).map_err(failed)?;
        }
        Ok(Templates(environment))
    }

    /// The template filled with this context.
    pub fn render(&self, template: &'static str, context: impl Serialize) -> Result<String, RenderError> {
        let failed = |source| RenderError::Template { template, source };
        let value = Value::from(Serde(context));
        self.0.get_template(template).and_then(|found| found.render(value)).map_err(failed)
    }
}

/// The message with this id, with the values that a template gives: a number decides about singular and plural, anything else is a text
/// written in this way.
fn said(
    language: &Language,
    id: &str,
    values: &Kwargs,
    written: impl Fn(&Value) -> String,
) -> Result<String, minijinja::Error> {
    let mut given = Vec::new();
    for name in values.args() {
        let value: Value = values.get(name)?;
        let filled = match i64::try_from(value.clone()) {
            Ok(number) if value.is_number() => language::Value::from(number as f64),
            _ => language::Value::from(written(&value)),
        };
        given.push((name, filled));
    }
    Ok(language.say(id, &given))
}

/// A value as text in HTML; markup that is safe already stays.
fn escaped(value: &Value) -> String {
    let text = value.to_string();
    if value.is_safe() {
        return text;
    }
    let mut out = String::new();
    // Writing into a string cannot fail.
    let _ = write_escaped(&mut out, &text);
    out
}

/// A template without the spaces its lines begin with, which are for whoever reads the template. No template holds preformatted text.
fn without_indents(source: &str) -> String {
    source.lines().flat_map(|line| [line.trim_start(), "\n"]).collect()
}

/// Writes text so that it is text in HTML, in quoted attributes too.
///
/// minijinja's own escaping also turns `/` into an entity, which makes every link in the page's source hard to read.
pub(super) fn write_escaped(output: &mut impl std::fmt::Write, text: &str) -> std::fmt::Result {
    let mut rest = text;
    while let Some(at) = rest.find(['&', '<', '>', '"', '\'']) {
        output.write_str(&rest[..at])?;
        output.write_str(match rest.as_bytes()[at] {
            b'&' => "&amp;",
            b'<' => "&lt;",
            b'>' => "&gt;",
            b'"' => "&quot;",
            _ => "&#39;",
        })?;
        rest = &rest[at + 1..];
    }
    output.write_str(rest)
}
