//! Slips of papers: what a candidate hands in.
//!
//! Entry point: [`Slip::read`], for the downloaded file as for the code that can be copied instead of it. Only the paper's identity and
//! the raw answers are read. A slip from a page carries a check over both, by which a slip that was cut short, mistyped or edited
//! is noticed; it keeps nobody out who means to deceive, and nothing else on a slip could: the page that writes it is in the
//! candidate's hands. A slip may also tell how long it took ([`SlipTime`]): told, not proved, and no mark depends on it.

use super::{OF_A_PAPER as FORM, SlipError, answers_of, digest_of, text_on, written_on};
use crate::assess::counted::counted;
use crate::assess::paper::PaperId;
use crate::json;
use base64::Engine;
use base64::alphabet::URL_SAFE;
use base64::engine::general_purpose::{GeneralPurpose, NO_PAD, URL_SAFE_NO_PAD};
use serde::de::IgnoredAny;
use serde::{Deserialize, Serialize};

/// Form of the time on a slip.
const TIME_FORM: &str = "healedhue-time-1";
/// Most seconds that a slip may tell of: ten hours, the longest time a blueprint may allow.
const MOST_SECONDS: u32 = crate::course::bounds::MINUTES.most as u32 * 60;
/// How a slip to copy begins.
const CODE: &str = "healedhue-slip:";
/// Reads codes; of words that follow one a letter may be left over that is no whole byte.
const LENIENT: GeneralPurpose = GeneralPurpose::new(&URL_SAFE, NO_PAD.with_decode_allow_trailing_bits(true));

/// What a candidate hands in.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Slip {
    form: &'static str,
    /// The paper.
    pub paper: PaperId,
    /// Raw answers, one a question; empty where there is none.
    pub answers: Vec<String>,
    /// Check over paper and answers.
    check: String,
    /// How long it took.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub time: Option<SlipTime>,
}

/// How long a candidate took, as their page tells it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SlipTime {
    form: String,
    /// From the beginning to handing in, in whole seconds.
    pub seconds: u32,
    /// Whole seconds until each question had its answer, counted from the answer before; empty where it was not counted.
    #[serde(default)]
    pub each: Vec<u32>,
}

impl SlipTime {
    /// Seconds in all, and of each question.
    pub fn new(seconds: u32, each: Vec<u32>) -> Self {
        SlipTime { form: TIME_FORM.to_owned(), seconds, each }
    }

    /// Reads what stands on a slip with so many answers.
    fn read(value: serde_json::Value, answers: usize) -> Result<Self, SlipError> {
        let form = value.get("form").and_then(serde_json::Value::as_str).unwrap_or_default();
        if form != TIME_FORM {
            let form: String = form.chars().take(40).collect();
            return Err(SlipError::Time(format!(
                "it has the form `{form}`; this version of healedhue reads `{TIME_FORM}`"
            )));
        }
        let time: SlipTime = json::of_value(value).map_err(|wrong| {
            let at = wrong.field().map_or_else(String::new, |field| format!("{field}: "));
            SlipError::Time(format!("{at}{}", wrong.why))
        })?;
        let all = std::iter::once(time.seconds).chain(time.each.iter().copied());
        if let Some(long) = all.into_iter().find(|seconds| *seconds > MOST_SECONDS) {
            return Err(SlipError::Time(format!(
                "{long} seconds are more than the {MOST_SECONDS} that the longest paper takes"
            )));
        }
        if !time.each.is_empty() && time.each.len() != answers {
            return Err(SlipError::Time(format!(
                "it tells the time of {}, and the slip has {}",
                counted(time.each.len(), "question"),
                counted(answers, "answer")
            )));
        }
        Ok(time)
    }
}

/// A slip as it is read; whatever else stands on it is not looked at.
#[derive(Deserialize)]
struct Written {
    paper: PaperId,
    answers: Vec<serde_json::Value>,
    check: Option<String>,
    time: Option<serde_json::Value>,
}

impl Slip {
    /// A slip with these answers.
    pub fn new(paper: PaperId, answers: Vec<String>) -> Self {
        let check = check_of(&paper, &answers);
        Slip { form: FORM, paper, answers, check, time: None }
    }

    /// The slip, telling how long it took.
    pub fn with_time(self, time: SlipTime) -> Self {
        Slip { time: Some(time), ..self }
    }

    /// A slip for a paper on which answers are yet to be filled in by hand: without a check.
    pub fn blank(paper: &PaperId, questions: usize) -> String {
        let paper = serde_json::to_string(paper).unwrap_or_default();
        let answers: Vec<&str> = vec!["    \"\""; questions];
        format!(
            "{{\n  \"form\": \"{FORM}\",\n  \"paper\": {paper},\n  \"answers\": [\n{}\n  ]\n}}\n",
            answers.join(",\n")
        )
    }

    /// Reads a slip: JSON, or a code.
    ///
    /// # Errors
    /// [`SlipError`] where it is none.
    pub fn read(bytes: &[u8]) -> Result<Self, SlipError> {
        let text = text_on(bytes)?;
        if text.starts_with('{') {
            return Slip::of_json(&text);
        }
        // Codes may stand in a mail or in a chat, with words before, between and after them.
        let text = text.replace("=\r\n", "").replace("=\n", "");
        let codes = codes_in(&text);
        let Some((first, others)) = codes.split_first() else {
            if serde_json::from_str::<IgnoredAny>(&text).is_ok() {
                return Slip::of_json(&text);
            }
            return Err(SlipError::NotASlip(format!("there is no code in it (it begins `{CODE}`)")));
        };
        let slip = Slip::of_code(first)?;
        for other in others {
            if Slip::of_code(other)? != slip {
                return Err(SlipError::Codes(codes.len()));
            }
        }
        Ok(slip)
    }

    fn of_code(code: &str) -> Result<Self, SlipError> {
        Slip::of_json(&decoded(code)?).map_err(|error| match error {
            SlipError::EndsEarly(_) => SlipError::CodeCutShort,
            SlipError::NotASlip(_) => SlipError::CodeDamaged,
            other => other,
        })
    }

    /// Digest of the answers, spaces around them left out: slips that answer alike have the same.
    pub fn answers_digest(&self) -> String {
        digest_of(self.answers.iter().map(String::as_str))
    }

    /// The slip as a code to copy.
    pub fn code(&self) -> String {
        format!("{CODE}{}", URL_SAFE_NO_PAD.encode(serde_json::to_vec(self).unwrap_or_default()))
    }

    fn of_json(text: &str) -> Result<Self, SlipError> {
        let written: Written = written_on(text, FORM)?;
        let answers = answers_of(written.answers)?;
        let time = written.time.map(|time| SlipTime::read(time, answers.len())).transpose()?;
        let slip = Slip { time, ..Slip::new(written.paper, answers) };
        match written.check {
            Some(found) if found != slip.check => {
                let found = found.chars().take(40).collect();
                Err(SlipError::Check { found, expected: slip.check })
            }
            _ => Ok(slip),
        }
    }
}

/// What follows the beginning of each code in a text. A line may break where the beginning has its hyphen.
fn codes_in(text: &str) -> Vec<&str> {
    let (program, kind) = CODE.split_at(CODE.find('-').map_or(0, |hyphen| hyphen + 1));
    let after = |(at, begun): (usize, &str)| {
        text[at + begun.len()..].trim_start_matches(between_letters).strip_prefix(kind)
    };
    text.match_indices(program).filter_map(after).collect()
}

/// What a mail or a chat puts between the letters of a code: line breaks, the marks of a quotation, and characters that nobody sees (zero-width spaces
/// and joiners, soft hyphens, marks of direction).
fn between_letters(c: char) -> bool {
    let unseen =
        ['\u{AD}', '\u{200B}', '\u{200C}', '\u{200D}', '\u{200E}', '\u{200F}', '\u{2060}', '\u{FEFF}'];
    c.is_whitespace() || ['>', '|'].contains(&c) || unseen.contains(&c)
}

/// The slip in a code: its letters across what stands between them. Words may follow it that consist of such letters, too; what
/// they come to is left out, since it stands after the end of the slip's object.
fn decoded(code: &str) -> Result<String, SlipError> {
    let mut letters: String = code
        .chars()
        .filter(|c| !between_letters(*c))
        .take_while(|c| c.is_ascii_alphanumeric() || ['-', '_'].contains(c))
        .collect();
    if letters.len() % 4 == 1 {
        letters.pop();
    }
    let mut bytes = LENIENT.decode(letters).map_err(|_| SlipError::CodeCutShort)?;
    let mut values = serde_json::Deserializer::from_slice(&bytes).into_iter::<IgnoredAny>();
    if matches!(values.next(), Some(Ok(_))) {
        let end = values.byte_offset();
        bytes.truncate(end);
    }
    String::from_utf8(bytes).map_err(|error| match error.utf8_error().error_len() {
        None => SlipError::CodeCutShort,
        Some(_) => SlipError::CodeDamaged,
    })
}

/// FNV-1a of 32 bits (Fowler, Noll and Vo) over the identity and the answers, a line each: what `site/paper.js` reckons too.
fn check_of(paper: &PaperId, answers: &[String]) -> String {
    let mut hash: u32 = 0x811c_9dc5;
    let seed = paper.seed.to_string();
    let head = [&paper.course, &paper.blueprint, &paper.candidate, &seed, &paper.digest];
    for line in head.into_iter().chain(answers) {
        for byte in line.bytes().chain([b'\n']) {
            hash = (hash ^ u32::from(byte)).wrapping_mul(0x0100_0193);
        }
    }
    format!("{hash:08x}")
}
