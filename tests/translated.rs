//! Exercises in another language: the same questions with the same answers, and other words.

use crate::demo::course;
use healedhue::assess::knowledge::Progress;
use healedhue::course::{Course, Drill, Family, Lesson};
use healedhue::exercise::{
    Answer, AnswerError, AskedFor, Choice, Exercise, Form, LimitsError, Proof, Proofs, RunnerUp, mixes,
    outcome,
};
use healedhue::healing::{Reading, Tone};
use healedhue::language::Language;
use healedhue::practice::{Practice, read_course};
use healedhue::skin::Site;
use rayon::prelude::*;
use serde_json::{Value, json};

/// Exercises of each family.
const A_FAMILY: u32 = 12;

/// The demo in German, as far as the program speaks.
fn german() -> Course {
    Course { language: Language::of("de"), ..course().clone() }
}

/// A dozen numbers of every family, dealt out to its drills.
fn chosen(course: &Course) -> Vec<(&Lesson, &Drill, u32)> {
    let of = |family: Family| {
        let drills: Vec<_> = course.drills().filter(|(_, drill)| drill.family == family).collect();
        assert!(!drills.is_empty(), "the demo has a drill of the family {}", family.word());
        let count = drills.len() as u32;
        (0..A_FAMILY).map(move |turn| {
            let (lesson, drill) = drills[(turn % count) as usize];
            (lesson, drill, turn / count)
        })
    };
    Family::ALL.into_iter().flat_map(|(family, _)| of(family)).collect()
}

fn made(course: &Course, proofs: &Proofs) -> Vec<Exercise> {
    let make = |(lesson, drill, number)| {
        proofs.generate(course, lesson, drill, number).expect("the drill can be satisfied")
    };
    chosen(course).into_par_iter().map(make).collect()
}

/// A text of an exercise, and whether the author of the course wrote it.
struct Text {
    what: String,
    said: String,
    authors: bool,
}

fn text(what: &str, said: &str, authors: bool) -> Text {
    Text { what: what.to_owned(), said: said.to_owned(), authors }
}

fn texts_of_choice(what: &str, choice: &Choice, authors: bool) -> Vec<Text> {
    let mut texts = vec![
        text(what, &choice.label, authors),
        text(&format!("{what}: consequence"), &choice.mark.consequence, authors),
    ];
    texts.extend(choice.reading.as_ref().map(|reading| text(what, &reading.words, false)));
    texts
}

/// The choices of an exercise, whatever its form.
fn choices(exercise: &Exercise) -> Vec<&Choice> {
    match &exercise.form {
        Form::Drops(drops) => {
            std::iter::once(&drops.best).chain(&drops.near).chain(&drops.tempting).collect()
        }
        form => form.options().iter().collect(),
    }
}

/// Everything an exercise says.
fn texts(course: &Course, exercise: &Exercise) -> Vec<Text> {
    let written = exercise.written.is_some();
    let cited = course.cautions.iter().any(|caution| caution.source == exercise.source);
    let mut texts =
        vec![text("ask", &exercise.ask, written), text("source", &exercise.source, written || cited)];
    if let Some(case) = &exercise.case {
        texts.push(text("now", &case.now_reading.words, false));
        for exhibit in &case.exhibits {
            texts.push(text("exhibit", &exhibit.label, false));
            texts.push(text("exhibit", &exhibit.reading.words, false));
        }
    }
    for (place, choice) in choices(exercise).into_iter().enumerate() {
        texts.extend(texts_of_choice(&format!("option {place}"), choice, written));
    }
    let runners_up = exercise.proof.iter().flat_map(|proof| &proof.runners_up);
    texts.extend(runners_up.map(|next| text("next best", &next.label, false)));
    if let Form::Number(number) = &exercise.form {
        texts.push(text("number", &number.name, false));
        texts.push(text("why", &number.why, false));
        texts.extend(number.tempting.iter().map(|wrong| text("wrong number", &wrong.why, false)));
    }
    texts
}

/// Answers of every kind: the right one, and others.
fn answers(exercise: &Exercise) -> Vec<Answer> {
    let mut answers = vec![exercise.form.key()];
    match &exercise.form {
        Form::One(one) => answers.extend((0..one.options.len()).map(Answer::One)),
        Form::Several(_) => answers.push(Answer::Several(vec![0])),
        Form::Order(order) => answers.push(Answer::Order(order.key.iter().rev().copied().collect())),
        Form::Drops(drops) => {
            answers.extend(mixes(&drops.limits).into_iter().take(6).map(Answer::Drops));
        }
        Form::Number(number) => {
            answers.extend(number.tempting.iter().map(|wrong| Answer::Number(wrong.value)));
        }
    }
    answers
}

/// Two languages' texts: none is empty or unfilled, and what the program says is not the same.
fn compare(name: &str, english: &[Text], german: &[Text]) {
    assert_eq!(english.len(), german.len(), "{name}");
    for (one, other) in english.iter().zip(german) {
        let what = format!("{name}, {}: {} | {}", one.what, one.said, other.said);
        assert!(!other.said.trim().is_empty(), "{what}");
        assert!(!one.said.contains('⟨') && !other.said.contains('⟨'), "{what}");
        let has_letters = one.said.chars().any(char::is_alphabetic);
        assert!(one.authors || !has_letters || one.said != other.said, "{what}");
    }
}

/// What does not depend on the language.
fn facts(exercise: &Exercise) -> String {
    let case = exercise.case.as_ref().map(|case| {
        let exhibits: Vec<_> =
            case.exhibits.iter().map(|exhibit| (exhibit.seen.lab, exhibit.light)).collect();
        format!("{} {:?} {:?} {:?} {exhibits:?}", case.client, case.placed, case.light, case.now.lab)
    });
    let options: Vec<String> = choices(exercise)
        .into_iter()
        .map(|choice| {
            let (healed, mark) = (choice.healed.as_ref().map(|healed| healed.lab), &choice.mark);
            let reading = choice.reading.as_ref().map(|reading| (reading.depth, reading.tone));
            let told = (mark.credit, &mark.misconception, &mark.lesson);
            format!("{healed:?} {:?} {reading:?} {told:?}", choice.error)
        })
        .collect();
    let proof = exercise.proof.clone().map(|proof| {
        let runners_up = proof.runners_up.iter();
        let runners_up = runners_up.map(|next| RunnerUp { label: String::new(), ..next.clone() }).collect();
        Proof { runners_up, ..proof }
    });
    format!(
        "{} {} {:?} {case:?} {:?} {options:?} {proof:?}",
        exercise.drill,
        exercise.number,
        exercise.family,
        exercise.form.key()
    )
}

#[test]
fn a_course_in_german_has_like_exercises_in_other_words() {
    let (english, german) = (course(), german());
    let proofs = Proofs::none();
    let first = made(english, &proofs);
    assert_eq!(first.len(), Family::ALL.len() * A_FAMILY as usize);
    let second = made(&german, &Proofs::none());
    let mut others = 0;
    for (one, other) in first.iter().zip(&second) {
        let name = format!("{} {}", one.drill, one.number);
        // Which place the longest words have is drawn: where options are told in words, others may stand there in another language.
        if facts(one) != facts(other) {
            let told_in_words = [
                Family::Bottle,
                Family::Foresight,
                Family::Hindsight,
                Family::Light,
                Family::Remedy,
                Family::Skin,
                Family::Triage,
            ];
            assert!(told_in_words.contains(&one.family), "{name}: {} | {}", facts(one), facts(other));
            others += 1;
            continue;
        }
        compare(&name, &texts(english, one), &texts(english, other));
        for answer in answers(one) {
            let seen = outcome(english, one, &answer).expect("an answer");
            let said = outcome(&german, other, &answer).expect("an answer");
            assert_eq!(seen.mark.credit, said.mark.credit, "{name}");
            let is_authors = one.written.is_some() && matches!(one.form, Form::One(_));
            // What is chosen of a written question is said by its letters.
            let consequence = |choice: &Choice| [text("follows", &choice.mark.consequence, is_authors)];
            compare(&name, &consequence(&seen), &consequence(&said));
        }
    }
    assert!(others * 2 < first.len(), "{others} of {} are others", first.len());
}

/// What a page takes along of a language is enough for everything that exercises say.
#[test]
fn exercises_say_the_same_of_a_course_that_was_taken_along() {
    let german = german();
    let taken = read_course(&serde_json::to_string(&german).expect("JSON")).expect("a course");
    for (family, word) in Family::ALL {
        let id = &german.drills().find(|(_, drill)| drill.family == family).expect(word).1.id;
        let make = |course: &Course| {
            let (lesson, drill) = course.drill(id).expect("the drill");
            let exercise = healedhue::exercise::generate(course, lesson, drill, 1).expect("an exercise");
            let said: Vec<String> = texts(course, &exercise).into_iter().map(|text| text.said).collect();
            (facts(&exercise), said)
        };
        assert_eq!(make(&taken), make(&german), "{word}");
    }
}

/// Every tone at every depth; in English as the engine's own JSON says it.
#[test]
fn readings_are_said_in_every_language() {
    let [english, german] = ["en", "de"].map(Language::of);
    let depths: Vec<&str> =
        [Site::Brow, Site::Lip, Site::Areola].into_iter().flat_map(Reading::depths).collect();
    let mut said = std::collections::BTreeSet::new();
    for &depth in &depths {
        for (tone, word) in Tone::ALL {
            let reading = Reading { depth, tone, words: format!("{depth}, {word}") };
            assert_eq!(reading.said(&english), reading.words);
            let other = reading.clone().in_language(&german);
            assert_eq!((other.depth, other.tone), (depth, tone));
            assert!(!other.words.contains('⟨') && other.words != reading.words, "{}", other.words);
            said.insert(other.words);
        }
    }
    assert_eq!(said.len(), depths.len() * Tone::ALL.len(), "two readings share their words");
}

#[test]
fn what_is_no_answer_is_told_in_every_language() {
    let [english, german] = ["en", "de"].map(Language::of);
    let limits = [
        LimitsError::NoBottle { bottle: "x".to_owned(), known: "a, b".to_owned() },
        LimitsError::Total { given: 1, wanted: 6 },
        LimitsError::Total { given: 7, wanted: 6 },
        LimitsError::OneBottle,
        LimitsError::Modifiers { given: 4, most: 2 },
        LimitsError::CourseChanged,
    ];
    let forms = [AskedFor::One, AskedFor::Several, AskedFor::Order, AskedFor::Drops, AskedFor::Number];
    let mut errors: Vec<AnswerError> = forms.map(AnswerError::Form).into();
    errors.extend(limits.map(AnswerError::Limits));
    errors.extend([
        AnswerError::NoOption { place: 4, count: 4 },
        AnswerError::NotAnOrder(5),
        AnswerError::NotANumber,
    ]);
    for error in errors {
        assert_eq!(error.said(&english), error.to_string());
        let said = error.said(&german);
        assert!(!said.contains('⟨') && said != error.to_string(), "{said}");
    }
    let refused = |text: &str| Progress::read(text).expect_err("no record");
    let texts = [
        "[]",
        "",
        r#"{"format": 1,"#,
        r#"{"format": 1, oops"#,
        "{}",
        r#"{"format": "one"}"#,
        r#"{"format": 1, "skills": 3}"#,
        r#"{"format": 99}"#,
    ];
    for error in texts.map(refused) {
        assert_eq!(error.said(&english), error.to_string());
        assert!(!error.said(&german).contains('⟨') && error.said(&german) != error.to_string());
    }
    let entry = |known: f64, credit: f64| {
        format!(
            r#"{{"known": {known:?}, "answers": 1, "credit": {credit:?}, "last": 1, "spaced": 0, "last_spaced": 1}}"#
        )
    };
    let record = format!(
        r#"{{"format": 1, "skills": {{"a": 3, "b": {}, "c": {}, "d": {{}}, "e": {}, "f": {}, "g": {}}}}}"#,
        entry(1.5, 1.0),
        entry(0.5, 2.5),
        r#"{"known": "much"}"#,
        r#"{"known": 0.5, "answers": -1}"#,
        entry(0.5, 1.0).replace("\"last\": 1", "\"last\": \"today\"")
    );
    let (_, notes) = Progress::read(&record).expect("a record");
    assert_eq!(notes.len(), 7);
    for note in notes {
        assert_eq!(note.said(&english), note.to_string());
        assert!(!note.said(&german).contains('⟨') && note.said(&german) != note.to_string());
    }
}

/// As a page of practice gets it, which puts it after "was not loaded".
#[test]
fn practice_refuses_a_record_in_the_language_of_its_course() {
    let course = german();
    let practice = Practice::new(&course);
    let why = |progress: &str| {
        let refused = practice.overview(&json!({ "progress": progress, "now": 1 }).to_string());
        let refusal: Value = serde_json::from_str(&refused.expect_err("no record")).expect("JSON");
        refusal["error"]["why"].as_str().expect("a text").to_owned()
    };
    assert_eq!(
        why("{\n  \"format\": 1,\n  \"Töne\": x}"),
        "das ist keine Aufzeichnung eines Lernstands: was in Zeile 3, Spalte 11 steht, macht sie unlesbar; nehmen Sie \
         die Datei, wie sie gespeichert wurde, oder eine frühere Kopie"
    );
    assert_eq!(
        why("{\"format\": true}"),
        "das ist keine Aufzeichnung eines Lernstands: `format` muss die Zahl 1 sein"
    );
}

/// Grammar that a number decides about, and decimals.
#[test]
fn german_numbers_and_plurals() {
    let german = Language::of("de");
    let times = [0.0, 1.5, 1.0, 7.5, 12.0, 36.0].map(|months| german.after(months));
    assert_eq!(
        times,
        [
            "am selben Tag",
            "nach sechs Wochen",
            "nach einem Monat",
            "nach 7,5 Monaten",
            "nach einem Jahr",
            "nach 3 Jahren"
        ]
    );
    let words = ["zu dunkel", "zu rot", "zu grau"].map(str::to_owned);
    assert_eq!(german.in_a_row(&words), "zu dunkel, zu rot und zu grau");
}
