//! The words the program itself says, in the language of a course: one file of messages a language, in Project Fluent's syntax
//! (`site/languages/`).
//!
//! Entry points: [`Language::of`] for the language of a course, [`Language::say`] or the macro [`say!`](crate::say) for a message; `said`
//! of a reading, a light, an undertone and so on for what the engine finds.
//! What an author wrote is never translated; what programs read (JSON of the engine, ids) is not here either.

mod messages;
mod said;

use crate::figure::fixed;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use serde::de::Error as _;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::fmt;
use std::sync::Arc;

/// Every language the program speaks, by its BCP 47 primary tag, with its messages.
#[cfg(feature = "program")]
pub const SPOKEN: [(&str, &str); 2] = [
    ("en", include_str!("../../site/languages/en.ftl")),
    ("de", include_str!("../../site/languages/de.ftl")),
];

/// What the ids of messages begin with that exercises and practice say: a page that makes exercises takes these along.
pub const OF_EXERCISES: [&str; 2] = ["reading-", "exercise-"];

/// The words of the program in one language.
///
/// In JSON it is `{"tag", "messages"}`, with the messages of exercises only.
#[derive(Clone)]
pub struct Language(Arc<Spoken>);

struct Spoken {
    tag: String,
    source: String,
    bundle: FluentBundle<FluentResource>,
}

impl Language {
    /// The program's words for a course in the language with this BCP 47 tag; English where the program does not speak it.
    #[cfg(feature = "program")]
    pub fn of(tag: &str) -> Self {
        let source = spoken(tag).unwrap_or(SPOKEN[0].1);
        // A test reads every file of messages; a message that cannot be read would be left out.
        Language::read(tag, source).unwrap_or_else(|faulty| faulty)
    }

    /// Whether the program speaks the language with this tag.
    #[cfg(feature = "program")]
    pub fn is_spoken(tag: &str) -> bool {
        spoken(tag).is_some()
    }

    /// A language out of its messages.
    ///
    /// # Errors
    /// What could be read, when some messages could not or an id comes twice.
    pub fn read(tag: &str, messages: &str) -> Result<Self, Self> {
        let (resource, mut sound) = match FluentResource::try_new(messages.to_owned()) {
            Ok(resource) => (resource, true),
            Err((resource, _)) => (resource, false),
        };
        let locale = tag.parse().or_else(|_| "en".parse());
        let mut bundle = FluentBundle::new_concurrent(locale.into_iter().collect());
        // Marks around every value would stand in answers, files and comparisons; pages say their direction themselves.
        bundle.set_use_isolating(false);
        sound &= bundle.add_function("LOWER", |given, _| lowered(given)).is_ok();
        sound &= bundle.add_resource(resource).is_ok();
        let language =
            Language(Arc::new(Spoken { tag: tag.to_owned(), source: messages.to_owned(), bundle }));
        if sound { Ok(language) } else { Err(language) }
    }

    /// BCP 47 tag of the course's language.
    pub fn tag(&self) -> &str {
        &self.0.tag
    }

    /// Primary tag of the language that the program's words are in: the course's, or English where the program does not speak it.
    #[cfg(feature = "program")]
    pub fn spoken_tag(&self) -> &'static str {
        let primary = self.tag().split('-').next().unwrap_or_default();
        SPOKEN
            .iter()
            .find(|(known, _)| known.eq_ignore_ascii_case(primary))
            .map_or(SPOKEN[0].0, |(tag, _)| tag)
    }

    /// The message with this id, its values filled in. An id without a message is given back in angle brackets (`⟨id⟩`), as is a value
    /// that is missing; tests see to it that there are none.
    pub fn say(&self, id: &str, values: &[(&str, Value)]) -> String {
        let pattern = self.0.bundle.get_message(id).and_then(|message| message.value());
        let Some(pattern) = pattern else { return format!("⟨{id}⟩") };
        let values: FluentArgs = values.iter().map(|(name, value)| (*name, value.0.clone())).collect();
        let mut faults = Vec::new();
        let said = self.0.bundle.format_pattern(pattern, Some(&values), &mut faults).into_owned();
        if faults.is_empty() { said } else { format!("⟨{id}: {said}⟩") }
    }

    /// A number with this many decimals, with a true minus sign and the language's decimal mark.
    pub fn decimal(&self, number: f64, decimals: usize) -> String {
        self.marked(fixed(number, decimals))
    }

    /// A number as short as it can be written, with the language's decimal mark.
    pub fn number(&self, number: f64) -> String {
        self.marked(number.to_string())
    }

    /// A written number, with the language's decimal mark.
    pub(crate) fn marked(&self, number: String) -> String {
        match self.say("decimal-mark", &[]).as_str() {
            "." => number,
            mark => number.replace('.', mark),
        }
    }
}

/// `{ LOWER($name) }`: a name in small letters, for languages that write it so inside a sentence.
fn lowered(given: &[FluentValue<'_>]) -> FluentValue<'static> {
    match given {
        [FluentValue::String(text)] => FluentValue::String(text.to_lowercase().into()),
        _ => FluentValue::Error,
    }
}

/// With a capital first letter.
pub(crate) fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

#[cfg(feature = "program")]
fn spoken(tag: &str) -> Option<&'static str> {
    let primary = tag.split('-').next().unwrap_or_default();
    SPOKEN.iter().find(|(known, _)| known.eq_ignore_ascii_case(primary)).map(|(_, messages)| *messages)
}

/// What can be filled into a message: a text, or a number that decides about singular and plural.
#[derive(Debug, Clone)]
pub struct Value(FluentValue<'static>);

impl From<&str> for Value {
    fn from(text: &str) -> Self {
        Value(FluentValue::String(text.to_owned().into()))
    }
}

impl From<&String> for Value {
    fn from(text: &String) -> Self {
        text.as_str().into()
    }
}

impl From<String> for Value {
    fn from(text: String) -> Self {
        Value(FluentValue::String(text.into()))
    }
}

macro_rules! counts {
    ($($number:ty),*) => {
        $(impl From<$number> for Value {
            fn from(number: $number) -> Self {
                Value(FluentValue::from(number))
            }
        })*
    };
}
counts!(u8, u16, u32, u64, usize, i32, f64);

/// The message with this id in a language: `say!(language, "exercise-goal", name = goal.name, years = 3)`.
#[macro_export]
macro_rules! say {
    ($language:expr, $id:expr $(, $name:ident = $value:expr)* $(,)?) => {
        $language.say($id, &[$((stringify!($name), $crate::language::Value::from($value))),*])
    };
}

/// English.
#[cfg(feature = "program")]
impl Default for Language {
    fn default() -> Self {
        Language::of(SPOKEN[0].0)
    }
}

impl fmt::Debug for Language {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("Language").field(&self.0.tag).finish()
    }
}

/// What a page takes along.
#[derive(Serialize, Deserialize)]
struct Taken {
    tag: String,
    messages: String,
}

impl Serialize for Language {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        Taken { tag: self.0.tag.clone(), messages: self.part(&OF_EXERCISES) }.serialize(serializer)
    }
}

impl<'de> Deserialize<'de> for Language {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let Taken { tag, messages } = Taken::deserialize(deserializer)?;
        Language::read(&tag, &messages).map_err(|_| D::Error::custom("messages that cannot be read"))
    }
}
