//! Calls in a page's text, `{{ healed("tovi", "kelderwick 6").L }}`, which the engine answers when the course is read.
//!
//! Entry points: [`Computed::new`], once for a course; [`Computed::calls_of`], once for a page; [`Computed::holds`] for a claim in
//! a block `foresee`. Steps: find the calls in the text (`spans`), evaluate each as an expression of minijinja with the engine's
//! functions and nothing else (`engine`), write the answer as numbers are written everywhere. Numbers about a client or a bottle
//! that are no call are warned of (`bare`). A claim may compare tones by their ids (`tones`).

mod bare;
mod engine;
mod spans;
mod tones;

use super::Reader;
use super::suggest::{listed, nearest, quoted};
use crate::course::shared::Shared;
use crate::course::source::{At, Place, Source};
use crate::figure::fixed;
use crate::language::Language;
use engine::{CallProblem, FUNCTIONS, Known, Purpose, add_functions, is_colour};
use minijinja::value::{Value, ValueKind};
use minijinja::{Environment, Error, ErrorKind, UndefinedBehavior};
use std::ops::Range;
use std::sync::Arc;

/// Longest call that is answered, in bytes.
const LONGEST: usize = 400;

/// What the calls of a course may ask.
#[derive(Debug)]
pub(crate) struct Computed {
    /// What text asks.
    calls: Environment<'static>,
    /// What claims ask.
    claims: Environment<'static>,
    /// Numbers are written in it.
    language: Language,
    /// Names of clients and bottles.
    names: Vec<String>,
    /// Whether bottles may be missing because their file has errors.
    shelf_is_broken: bool,
}

/// Most calls of a page that are answered: each may cost the engine a few milliseconds.
const MOST_CALLS: usize = 300;

/// The answers to the calls of a page.
#[derive(Debug, Default)]
pub(crate) struct Answers(Vec<(Range<usize>, String)>);

impl Computed {
    /// What may be asked of a course with these bottles, clients and goals, and is answered in its language.
    pub fn new(shared: &Shared) -> Self {
        let Shared { language, shelf, clients, goals, shelf_is_broken, .. } = shared;
        let names = clients.iter().map(|client| client.name.clone());
        let bottles = shelf.bottles.iter().map(|bottle| bottle.name.clone());
        let names = names.chain(bottles).filter(|name| !name.is_empty()).collect();
        let answering = |purpose: Purpose| {
            let mut environment = Environment::empty();
            environment.set_undefined_behavior(UndefinedBehavior::Strict);
            let known = Known {
                purpose,
                language: language.clone(),
                shelf: shelf.clone(),
                clients: clients.clone(),
                goals: goals.clone(),
            };
            add_functions(&mut environment, &Arc::new(known));
            environment
        };
        Computed {
            calls: answering(Purpose::Text),
            claims: answering(Purpose::Claim),
            language: language.clone(),
            names,
            shelf_is_broken: *shelf_is_broken,
        }
    }

    /// Answers every call of a page, and warns of numbers that should have been calls.
    pub fn calls_of(&self, source: &Arc<Source>, reader: &mut Reader) -> Answers {
        let spans = spans::find(source);
        let mut answers = Answers::default();
        if let Some(span) = spans.get(MOST_CALLS) {
            let message = format!("{} calls on one page; at most {MOST_CALLS} are answered", spans.len());
            reader.error(&Place::new(source, span.whole.clone()), message).help("split the page");
        }
        for span in spans.iter().take(MOST_CALLS) {
            let place = Place::new(source, span.whole.clone());
            match &span.inside {
                _ if span.in_heading => {
                    reader
                        .error(&place, "a call in a heading")
                        .help("links lead to a heading by its words: say the number in the text below it");
                }
                None => {
                    let help = "end it with `}}` in the same paragraph; `\\{{` are the signs themselves";
                    reader.error(&place, "a call that is never closed").help(help);
                }
                Some(inside) => {
                    let said = self.value(&Place::new(source, inside.clone()), reader);
                    let said = said
                        .and_then(|value| shown(&self.language, &value, &place, reader))
                        .unwrap_or_default();
                    answers.0.push((span.whole.clone(), said));
                }
            }
        }
        let calls: Vec<Range<usize>> = spans.into_iter().map(|span| span.whole).collect();
        let names: Vec<&str> = self.names.iter().map(String::as_str).collect();
        for bare in bare::find(&source.text, &calls, &names) {
            let place = Place::new(source, bare.span);
            reader
                .warning(&place, format!("a number about {} that nothing computes", quoted(&bare.about)))
                .help(
                    "write a call, such as `{{ healed(\"tovi\", \"kelderwick 6\").L }}`, or `{{ 12 }}` for a number that is \
                     meant as it is",
                );
        }
        answers
    }

    /// Checks that a claim holds; one that does not is an error.
    pub fn holds(&self, claim: &At<String>, reader: &mut Reader) {
        let Some(value) = self.value_of(&self.claims, &claim.value, &claim.place, reader) else { return };
        if let Some(problem) = tones::wrong(&claim.value, &self.language) {
            self.report(&problem.into(), &claim.value, &claim.place, reader);
            return;
        }
        if value.kind() != ValueKind::Bool {
            reader
                .error(&claim.place, format!("{} is no claim", quoted(&claim.value)))
                .help("compare two numbers, such as `healed(\"tovi\").a < bare(\"tovi\").a`");
        } else if !value.is_true() {
            reader
                .error(&claim.place, format!("this does not hold: {}", quoted(&claim.value)))
                .help("say in the text what is true now, and claim that");
        }
    }

    /// The value of a call written at `place`.
    fn value(&self, place: &Place, reader: &mut Reader) -> Option<Value> {
        self.value_of(&self.calls, &place.source.text[place.span.clone()], place, reader)
    }

    /// The value of an expression. Places of its words are looked for from the beginning of `place` on.
    fn value_of(
        &self,
        environment: &Environment<'_>,
        said: &str,
        place: &Place,
        reader: &mut Reader,
    ) -> Option<Value> {
        if said.is_empty() {
            reader.error(place, "a call that asks nothing").help(format!("ask {}", listed(FUNCTIONS)));
            return None;
        }
        if said.len() > LONGEST {
            reader.error(place, format!("a call of {} bytes; at most {LONGEST} are read", said.len()));
            return None;
        }
        let evaluated = environment.compile_expression(said).and_then(|compiled| {
            let unknown = compiled
                .undeclared_variables(false)
                .into_iter()
                .find(|name| !FUNCTIONS.contains(&name.as_str()));
            match unknown {
                Some(name) => Err(unknown_name(&name).into()),
                None => compiled.eval(()),
            }
        });
        match evaluated {
            Ok(value) => Some(value),
            Err(error) => {
                self.report(&error, said, place, reader);
                None
            }
        }
    }

    /// Reports why a call has no value.
    fn report(&self, error: &Error, said: &str, place: &Place, reader: &mut Reader) {
        match problem_of(error) {
            // A bottle may be missing only because its file has errors, which have been reported.
            Some(CallProblem::Unnamed { .. }) if self.shelf_is_broken => {}
            Some(CallProblem::Unnamed { thing, id }) => {
                let place = word_in(place, said, &id);
                reader.refer(thing, At::new(id, place));
            }
            Some(CallProblem::Wrong { message, help, word }) => {
                reader.error(&word_in(place, said, &word), message).help(help);
            }
            None => {
                let place = match error.range() {
                    Some(range) if range.end <= said.len() && !range.is_empty() => Place::new(
                        &place.source,
                        place.span.start + range.start..place.span.start + range.end,
                    ),
                    _ => place.clone(),
                };
                let why = error.detail().map_or_else(|| error.kind().to_string(), str::to_owned);
                let message = if error.kind() == ErrorKind::SyntaxError {
                    format!("this call cannot be read: {why}")
                } else {
                    format!("this call has no answer: {why}")
                };
                reader
                    .error(&place, message)
                    .help("such as `{{ healed(\"tovi\", \"kelderwick 6\", months=60).L }}`");
            }
        }
    }
}

impl Answers {
    /// A stretch of the page with every call in it replaced by its answer.
    pub fn fill(&self, text: &str, stretch: Range<usize>) -> String {
        let mut filled = String::new();
        let mut at = stretch.start;
        let first = self.0.partition_point(|(call, _)| call.start < stretch.start);
        for (call, said) in self.0[first..].iter().take_while(|(call, _)| call.end <= stretch.end) {
            filled += text.get(at..call.start).unwrap_or_default();
            filled += said;
            at = call.end;
        }
        filled + text.get(at..stretch.end).unwrap_or_default()
    }
}

/// A value as text shows it: a number with one decimal, a whole number or a count as it is, words as they are.
fn shown(language: &Language, value: &Value, place: &Place, reader: &mut Reader) -> Option<String> {
    match value.kind() {
        ValueKind::Number if value.is_integer() => Some(value.to_string().replace('-', "\u{2212}")),
        ValueKind::Number => match f64::try_from(value.clone()) {
            Ok(number) if number.is_finite() => Some(language.marked(fixed(number, 1))),
            _ => {
                reader.error(place, "this call gives no number").help("it divides by nothing");
                None
            }
        },
        ValueKind::String => value.as_str().map(escaped),
        _ if is_colour(value) => {
            reader.error(place, "this call gives a whole colour").help(
                "say which part of it: `.L`, `.a`, `.b`, `.chroma`, `.hue`, `.ita`, `.words` or `.tone`",
            );
            None
        }
        kind => {
            reader
                .error(place, format!("this call gives {kind}, not a number or words"))
                .help("such as `{{ healed(\"tovi\", \"kelderwick 6\", months=60).L }}`");
            None
        }
    }
}

/// Words that stay words in CommonMark.
fn escaped(text: &str) -> String {
    let mut escaped = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '\\' | '`' | '*' | '_' | '{' | '}' | '[' | ']' | '<' | '>' | '#' | '!' | '|' | '&' | '~' => {
                escaped.push('\\');
                escaped.push(c);
            }
            c if c.is_control() => escaped.push(' '),
            c => escaped.push(c),
        }
    }
    escaped
}

/// A name that no function has.
fn unknown_name(name: &str) -> CallProblem {
    let help = match nearest(name, FUNCTIONS) {
        Some(near) => format!("did you mean `{near}`?"),
        None => {
            format!("the functions are {}; names of clients and bottles stand in quotes", listed(FUNCTIONS))
        }
    };
    CallProblem::wrong(format!("a call knows no {}", quoted(name)), help, name)
}

/// Our own reason in an error of the evaluator.
fn problem_of(error: &Error) -> Option<CallProblem> {
    let mut source = std::error::Error::source(error);
    while let Some(inner) = source {
        if let Some(problem) = inner.downcast_ref::<CallProblem>() {
            return Some(problem.clone());
        }
        source = inner.source();
    }
    None
}

/// Where a word stands in a call; the whole call when it cannot be found.
fn word_in(place: &Place, said: &str, word: &str) -> Place {
    let text = &place.source.text[place.span.clone()];
    let from = text.find(said).unwrap_or(0);
    match text[from..].find(word).filter(|_| !word.is_empty()) {
        Some(at) => {
            let start = place.span.start + from + at;
            Place::new(&place.source, start..start + word.len())
        }
        None => place.clone(),
    }
}
