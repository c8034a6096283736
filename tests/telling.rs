//! What options look like tells nothing of which one is right: neither how long their texts are, nor where their colours lie, nor where they stand.
//!
//! Each way of guessing is tried on a hundred exercises or more of each family, and on many more by the test that is left out of ordinary runs, which prints
//! a table. How often it is right is compared with chance by the exact distribution of a sum of unequal chances (a third where there are three
//! options, a quarter where there are four). A guess that is right too seldom tells as much as one that is right too often.
//!
//! The same holds for questions that an author wrote, whose options bear signs of their own: a comma, a hedge, a reason, an "and".

use crate::demo::course;
use healedhue::colour::{Lab, difference};
use healedhue::course::{Asked, Drill, Family, Lesson};
use healedhue::exercise::{Action, Answer, Choice, Exercise, Form, generate};
use rayon::prelude::*;
use std::collections::BTreeMap;
use std::sync::LazyLock;

/// Numbers of the pools from here on are looked at here, and shown nowhere.
pub const FIRST: u32 = 60_000;
/// A way of guessing that is right so often or oftener, or so seldom or seldomer, by chance alone in less than this share of cases tells something.
/// Some sixty ways are tried; seeds are fixed, so that this test always holds or never.
const SIGNIFICANT: f64 = 0.001;

/// Exercises of each drill: most where colours are shown to choose from, and otherwise enough for some hundred of the family.
fn many(family: Family) -> u32 {
    match family {
        Family::Light => 76,
        Family::Hindsight => 24,
        Family::Foresight => 12,
        Family::Skin => 60,
        Family::Bottle => 4,
        Family::Remedy => 8,
        Family::Triage => 60,
        // No option to guess at, or written by an author: those are looked at below, each once.
        Family::Drops | Family::Sequence | Family::Recall => 0,
    }
}

/// The option that alone is the most by a measure.
fn most<T>(options: &[T], measure: impl Fn(&T) -> f64) -> Option<usize> {
    let measured: Vec<f64> = options.iter().map(measure).collect();
    let best = measured.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let mut at = (0..measured.len()).filter(|&at| measured[at] == best);
    at.next().filter(|_| at.next().is_none())
}

fn length(option: &Choice) -> f64 {
    option.label.chars().count() as f64
}

/// The option that alone is in the middle of an odd number by a measure.
fn middle(options: &[Choice], measure: impl Fn(&Choice) -> f64) -> Option<usize> {
    let measured: Vec<f64> = options.iter().map(measure).collect();
    let below = |at: usize| measured.iter().filter(|other| **other < measured[at]).count();
    let above = |at: usize| measured.iter().filter(|other| **other > measured[at]).count();
    let half = measured.len() / 2;
    (measured.len() > 2 && measured.len() % 2 == 1)
        .then(|| (0..measured.len()).find(|&at| below(at) == half && above(at) == half))
        .flatten()
}

/// Lightness, of options that have a colour.
fn lightness(option: &Choice) -> f64 {
    option.healed.map_or(f64::NAN, |healed| healed.lab.l)
}

/// C*ab, of options that have a colour.
fn chroma(option: &Choice) -> f64 {
    option.healed.map_or(f64::NAN, |healed| healed.lab.a.hypot(healed.lab.b))
}

/// b*, of options that have a colour.
fn yellowness(option: &Choice) -> f64 {
    option.healed.map_or(f64::NAN, |healed| healed.lab.b)
}

/// The option that alone asks for what some caution does: to wait or to refer, and whom to ask.
fn only_advice(options: &[Choice]) -> Option<usize> {
    most(options, |option| f64::from(u8::from(names_whom_to_ask(option))))
}

/// The option that alone is none of those.
fn no_advice(options: &[Choice]) -> Option<usize> {
    most(options, |option| -f64::from(u8::from(names_whom_to_ask(option))))
}

/// The option that alone is a bottle without a modifier.
fn only_bottle(options: &[Choice]) -> Option<usize> {
    most(options, |option| f64::from(u8::from(bottles(option) == Some(1))))
}

/// The same, where it is said of it that nothing else is in it.
fn only_bottle_in_full(options: &[Choice]) -> Option<usize> {
    only_bottle(options).filter(|&at| is_in_full(&options[at]))
}

/// And where it is not.
fn only_bottle_plainly(options: &[Choice]) -> Option<usize> {
    only_bottle(options).filter(|&at| !is_in_full(&options[at]))
}

/// Whether a mix is told with more words than what is in it.
fn is_in_full(option: &Choice) -> bool {
    let Action::Place(mix) = &option.action else { return false };
    option.label != course().language.mix(&course().shelf, mix)
}

/// The option that alone is a mix.
fn only_mix(options: &[Choice]) -> Option<usize> {
    most(options, |option| f64::from(u8::from(bottles(option).is_some_and(|bottles| bottles > 1))))
}

/// How many bottles are in it, of an option that is a mix.
fn bottles(option: &Choice) -> Option<usize> {
    match &option.action {
        Action::Place(mix) => Some(mix.drops().count()),
        _ => None,
    }
}

fn names_whom_to_ask(option: &Choice) -> bool {
    course().cautions.iter().any(|caution| option.label.contains(&caution.refer_to))
}

/// The option whose colour is nearest to the mean of all, where colours are shown.
fn nearest_to_mean(options: &[Choice]) -> Option<usize> {
    let labs: Vec<Lab> = options.iter().map(|option| Some(option.healed?.lab)).collect::<Option<_>>()?;
    let mean = |of: fn(&Lab) -> f64| labs.iter().map(of).sum::<f64>() / labs.len() as f64;
    let mean = Lab::new(mean(|lab| lab.l), mean(|lab| lab.a), mean(|lab| lab.b));
    most(options, |option| -option.healed.map_or(f64::INFINITY, |healed| difference(healed.lab, mean)))
        .filter(|_| labs.len() > 2)
}

/// A way of guessing: which option it takes, where it takes one.
type Guess = fn(&[Choice]) -> Option<usize>;
const GUESSES: [(&str, Guess); 14] = [
    ("the only bottle alone", only_bottle),
    ("the only bottle alone, in full", only_bottle_in_full),
    ("the only bottle alone, plainly", only_bottle_plainly),
    ("the only mix", only_mix),
    ("the only one that names whom to ask", only_advice),
    ("the only one that names nobody to ask", no_advice),
    ("the longest text", |options| most(options, length)),
    ("the shortest text", |options| most(options, |option| -length(option))),
    ("the text of middle length", |options| middle(options, length)),
    ("the first option", |_| Some(0)),
    ("the second option", |options| (options.len() > 2).then_some(1)),
    ("the third option", |options| (options.len() > 3).then_some(2)),
    ("the fourth option", |options| (options.len() > 4).then_some(3)),
    ("the last option", |options| options.len().checked_sub(1)),
];
/// Some more where all options have a colour.
const OF_COLOURS: [(&str, Guess); 4] = [
    ("the lightest colour", |options| most(options, lightness)),
    ("the darkest colour", |options| most(options, |option| -lightness(option))),
    ("the middle colour", |options| middle(options, lightness)),
    ("the colour nearest to the mean", nearest_to_mean),
];
/// And some more where those are shown to choose from.
const OF_PICTURES: [(&str, Guess); 4] = [
    ("the most chroma", |options| most(options, chroma)),
    ("the least chroma", |options| most(options, |option| -chroma(option))),
    ("the yellowest colour", |options| most(options, yellowness)),
    ("the least yellow colour", |options| most(options, |option| -yellowness(option))),
];

/// Guesses that are known to tell something: a bottle alone over old work is too seldom right where it is worded in full. Among many exercises each of
/// these still tells, or it does not belong here.
const KNOWN: [(&str, &str); 1] = [("remedy", "the only bottle alone, in full")];

/// The chance that at least so many of these independent chances come true.
fn at_least(hits: usize, chances: &[f64]) -> f64 {
    let mut exactly = vec![1.0];
    for chance in chances {
        let mut next = vec![0.0; exactly.len() + 1];
        for (count, share) in exactly.iter().enumerate() {
            next[count] += share * (1.0 - chance);
            next[count + 1] += share * chance;
        }
        exactly = next;
    }
    exactly[hits..].iter().sum()
}

#[test]
fn chances_add_up_as_they_should() {
    // Six throws of a die: no six in (5/6)^6, and at least four sixes in 0.0087 (exact binomial).
    assert!((at_least(1, &[1.0 / 6.0; 6]) - (1.0 - (5.0_f64 / 6.0).powi(6))).abs() < 1e-12);
    assert!((at_least(4, &[1.0 / 6.0; 6]) - 406.0 / 46656.0).abs() < 1e-12);
    assert_eq!(at_least(0, &[0.5]), 1.0);
    // No six in six throws, or as far from the one that is expected on the other side; and what is expected is never far.
    assert!((as_far(0, &[1.0 / 6.0; 6]) - 2.0 * (5.0_f64 / 6.0).powi(6)).abs() < 1e-12);
    assert_eq!(as_far(1, &[0.5; 2]), 1.0);
}

/// The chance that so many of these independent chances come true, or a number that is as far from what is expected or farther: twice the lesser of
/// both tails.
fn as_far(hits: usize, chances: &[f64]) -> f64 {
    let others: Vec<f64> = chances.iter().map(|chance| 1.0 - chance).collect();
    let (more, less) = (at_least(hits, chances), at_least(chances.len() - hits, &others));
    (2.0 * more.min(less)).min(1.0)
}

/// The exercises looked at, of drills that the engine proves.
pub static MADE: LazyLock<Vec<Exercise>> = LazyLock::new(|| made(1));

#[test]
fn neither_length_nor_lightness_betrays_the_key() {
    nothing_betrays_the_key(&MADE, false);
}

/// The same on a thousand exercises and more of each family: some five minutes on two cores.
#[test]
#[ignore = "takes minutes; run it with --release -- --ignored"]
fn neither_length_nor_lightness_betrays_the_key_of_many() {
    nothing_betrays_the_key(&made(10), true);
}

/// So many times as many exercises.
fn made(times: u32) -> Vec<Exercise> {
    let wanted: Vec<(&Lesson, &Drill, u32)> = course()
        .drills()
        // What an author wrote is the same again and again.
        .filter(|(_, drill)| drill.questions.is_empty())
        .flat_map(|(lesson, drill)| {
            (0..times * many(drill.family)).map(move |number| (lesson, drill, FIRST + number))
        })
        .collect();
    generated(&wanted)
}

/// The exercises with these numbers of their drills' pools, made on all cores.
pub fn generated(wanted: &[(&Lesson, &Drill, u32)]) -> Vec<Exercise> {
    wanted
        .par_iter()
        .map(|&(lesson, drill, number)| {
            generate(course(), lesson, drill, number).expect("the drill can be satisfied")
        })
        .collect()
}

/// Tries every way of guessing on these exercises, which may be so many that what is known to tell must still do it, and prints what came of it.
fn nothing_betrays_the_key(made: &[Exercise], are_many: bool) {
    // By family and way of guessing: how often it is right, and the chance of that each time.
    let mut tried: BTreeMap<(&str, usize), (usize, Vec<f64>)> = BTreeMap::new();
    let ways: Vec<(&str, Guess)> = GUESSES.into_iter().chain(OF_COLOURS).chain(OF_PICTURES).collect();
    for exercise in made {
        let (Form::One(one), Answer::One(key)) = (&exercise.form, exercise.form.key()) else { continue };
        let coloured = one.options.iter().all(|option| option.healed.is_some());
        let ways = match (coloured, one.pictured) {
            (true, true) => &ways[..],
            (true, false) => &ways[..GUESSES.len() + OF_COLOURS.len()],
            (false, _) => &ways[..GUESSES.len()],
        };
        for (at, (_, guess)) in ways.iter().enumerate() {
            if let Some(guessed) = guess(&one.options) {
                let (hits, chances) = tried.entry((exercise.family.word(), at)).or_default();
                *hits += usize::from(guessed == key);
                chances.push(1.0 / one.options.len() as f64);
            }
        }
    }
    let mut told = String::new();
    for (word, family) in Family::ALL.map(|(family, word)| (word, family)) {
        let thrown: Vec<u32> = made
            .iter()
            .filter(|exercise| exercise.family == family)
            .filter_map(|exercise| Some(exercise.proof.as_ref()?.discarded))
            .collect();
        if !thrown.is_empty() {
            let mean = f64::from(thrown.iter().sum::<u32>()) / thrown.len() as f64;
            told += &format!("{word}: {mean:.1} draws thrown away for each of {}\n", thrown.len());
        }
    }
    told += "\nfamily     guess                                  exercises  expected  right  by chance\n";
    let mut betrayed = Vec::new();
    for ((family, at), (hits, chances)) in &tried {
        let (expected, by_chance) = (chances.iter().sum::<f64>(), as_far(*hits, chances));
        let (guess, count) = (ways[*at].0, chances.len());
        let line =
            format!("{family:<10} {guess:<37} {count:>10} {expected:>9.1} {hits:>6} {by_chance:>10.4}");
        let (tells, known) = (by_chance < SIGNIFICANT, KNOWN.contains(&(family, guess)));
        if tells != known && (tells || are_many) {
            betrayed.push(line.clone());
        }
        told += &format!("{line}\n");
    }
    println!("{told}");
    assert!(tried.len() >= 50, "{told}");
    assert!(tried.values().all(|(_, chances)| chances.len() >= 20), "{told}");
    assert!(betrayed.is_empty(), "{}", betrayed.join("\n"));
}

/// A way of guessing at a written question that is right so often or oftener, or so seldom or seldomer, by chance alone in less than this share of
/// cases tells something. Some forty ways are tried; but the texts are the same in every run, and their author had each of them in hand.
const SIGNIFICANT_IN_WRITING: f64 = 0.01;

/// A sign that an option can bear on its face: it is told what is asked, and what the option says.
type Sign = fn(&str, &str) -> bool;
const SIGNS: [(&str, Sign); 15] = [
    ("a comma", |_, says| says.contains(',')),
    ("a semicolon", |_, says| says.contains(';')),
    ("a comma or a semicolon", |_, says| says.contains([',', ';'])),
    ("a hedge", |_, says| has_word(says, &HEDGES)),
    ("an absolute", |_, says| has_word(says, &ABSOLUTES)),
    ("an absolute, or nothing or everybody", |_, says| {
        has_word(says, &ABSOLUTES) || has_word(says, &["nothing", "nobody", "everything", "everybody"])
    }),
    ("a negation", |_, says| has_word(says, &NEGATIONS)),
    ("a reason", |_, says| gives_a_reason(says)),
    ("an and", |_, says| has_word(says, &["and"])),
    ("an or", |_, says| has_word(says, &["or"])),
    ("a condition", |_, says| has_word(says, &["if", "unless"])),
    ("a digit", |_, says| says.contains(|c: char| c.is_ascii_digit())),
    ("a word of the question", |ask, says| stems(says).any(|stem| stems(ask).any(|asked| asked == stem))),
    ("a full stop", |_, says| says.ends_with('.')),
    ("the beginning of a sentence", |_, says| {
        words(says).next().is_some_and(|word| is_one_of(&word, &SUBJECTS))
    }),
];
const HEDGES: [&str; 20] = [
    "usually",
    "often",
    "may",
    "might",
    "could",
    "can",
    "some",
    "sometimes",
    "rather",
    "mostly",
    "likely",
    "about",
    "seldom",
    "probably",
    "perhaps",
    "mainly",
    "nearly",
    "hardly",
    "tends",
    "almost",
];
const ABSOLUTES: [&str; 7] = ["never", "always", "all", "every", "only", "none", "no"];
const NEGATIONS: [&str; 10] =
    ["not", "no", "never", "none", "nothing", "nobody", "without", "neither", "nor", "cannot"];
const SUBJECTS: [&str; 12] =
    ["it", "they", "he", "she", "you", "we", "i", "there", "this", "these", "that", "those"];

/// Words of a text, in small letters.
fn words(text: &str) -> impl Iterator<Item = String> {
    text.split(|c: char| !(c.is_alphabetic() || matches!(c, '\'' | '’')))
        .map(|piece| piece.trim_matches(['\'', '’']).to_lowercase())
        .filter(|word| !word.is_empty())
}

fn is_one_of(word: &str, list: &[&str]) -> bool {
    list.contains(&word)
}

fn has_word(text: &str, list: &[&str]) -> bool {
    words(text).any(|word| is_one_of(&word, list))
}

fn gives_a_reason(text: &str) -> bool {
    has_word(text, &["since", "because"])
        || ["so that", ", as ", ", for ", ", so "].iter().any(|reason| text.contains(reason))
}

/// The first five letters of each word that has so many: "colour" and "coloured" are one, "residual" and "residue" too.
fn stems(text: &str) -> impl Iterator<Item = String> {
    words(text).filter(|word| word.chars().count() >= 5).map(|word| word.chars().take(5).collect())
}

/// The option that alone has it.
fn alone(says: &[&str], has: impl Fn(&str) -> bool) -> Option<usize> {
    most(says, |&text| f64::from(u8::from(has(text))))
}

/// What each way of guessing takes that takes something, by its name.
fn guessed(ask: &str, says: &[&str]) -> Vec<(String, usize)> {
    let letters = |text: &str| text.chars().count() as f64;
    let words = |text: &str| text.split_whitespace().count() as f64;
    let lengths = [
        ("the longest text", most(says, |&text| letters(text))),
        ("the shortest text", most(says, |&text| -letters(text))),
        ("the most words", most(says, |&text| words(text))),
        ("the fewest words", most(says, |&text| -words(text))),
    ];
    let lengths = lengths.into_iter().map(|(name, at)| (name.to_owned(), at));
    let with =
        SIGNS.iter().map(|(name, has)| (format!("alone with {name}"), alone(says, |text| has(ask, text))));
    let without = SIGNS
        .iter()
        .map(|(name, has)| (format!("alone without {name}"), alone(says, |text| !has(ask, text))));
    lengths.chain(with).chain(without).filter_map(|(name, at)| Some((name, at?))).collect()
}

#[test]
fn ways_of_guessing_at_what_is_written_take_what_they_name() {
    let says = [
        "It fades, as a rule",
        "It never fades",
        "It may fade and shift, or not",
        "Fading depends on 3 things.",
    ];
    let guessed = guessed("What does a fading brow do?", &says);
    let taken = |name: &str| guessed.iter().find(|(guess, _)| guess == name).map(|(_, at)| *at);
    assert_eq!(taken("the longest text"), Some(2));
    assert_eq!(taken("the shortest text"), Some(1));
    assert_eq!(taken("alone with a comma"), None, "two have one");
    assert_eq!(taken("alone with a hedge"), Some(2));
    assert_eq!(taken("alone with an absolute"), Some(1));
    assert_eq!(taken("alone with a reason"), Some(0));
    assert_eq!(taken("alone with a digit"), Some(3));
    assert_eq!(taken("alone with a word of the question"), Some(3));
    assert_eq!(taken("alone with a full stop"), Some(3));
    assert_eq!(taken("alone without the beginning of a sentence"), Some(3));
}

#[test]
fn nothing_on_its_face_betrays_the_key_of_a_written_question() {
    // By form and way of guessing: how often it is right, and the chance of that each time.
    let mut tried: BTreeMap<(&str, String), (usize, Vec<f64>)> = BTreeMap::new();
    for question in &course().questions {
        let form = match question.asked {
            Asked::One(_) => "one",
            Asked::Several(_) => "several",
            Asked::Order { .. } => continue,
        };
        let options = question.options();
        let says: Vec<&str> = options.iter().map(|option| option.say.as_str()).collect();
        let right = options.iter().filter(|option| option.right).count();
        for (guess, at) in guessed(&question.ask, &says) {
            let (hits, chances) = tried.entry((form, guess)).or_default();
            *hits += usize::from(options[at].right);
            chances.push(right as f64 / options.len() as f64);
        }
    }
    let mut told = format!(
        "{:<8} {:<55} {:>9} {:>9} {:>6} {:>10}\n",
        "form", "guess", "questions", "expected", "right", "by chance"
    );
    let mut betrayed = Vec::new();
    for ((form, guess), (hits, chances)) in &tried {
        let (expected, by_chance) = (chances.iter().sum::<f64>(), as_far(*hits, chances));
        let count = chances.len();
        let line = format!("{form:<8} {guess:<55} {count:>9} {expected:>9.1} {hits:>6} {by_chance:>10.4}");
        if by_chance < SIGNIFICANT_IN_WRITING {
            betrayed.push(line.clone());
        }
        told += &format!("{line}\n");
    }
    println!("{told}");
    let often = tried.values().filter(|(_, chances)| chances.len() >= 50).count();
    assert!(often >= 10, "hardly any way of guessing takes anything:\n{told}");
    assert!(betrayed.is_empty(), "{}", betrayed.join("\n"));
}
