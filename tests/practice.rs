//! Practice in the browser: the course reaches it whole, a session there is a session here to the last bit, and nothing in a question
//! tells its answer.

use crate::door::Browser;
use crate::site::fixture::DEMO;
use healedhue::assess::knowledge::{DAY, Knowledge, Parameters, Progress};
use healedhue::assess::session::Session;
use healedhue::course::{Course, Drill, Family, Lesson, Rule};
use healedhue::exercise::{Action, Exercise, Form, Pools, generate, outcome, over_time};
use healedhue::practice::{Practice, Told, read_course};
use proptest::prelude::*;
use serde_json::{Value, json};
use std::collections::BTreeSet;
use std::sync::LazyLock;

const NOW: i64 = 1_700_000_000;

/// The demo course as it passes the door, and as it comes out on the other side.
static TAKEN: LazyLock<(String, Course)> = LazyLock::new(|| {
    let text = serde_json::to_string(&DEMO.0).unwrap();
    let course = read_course(&text).unwrap();
    (text, course)
});

fn both(id: &str) -> ((&'static Lesson, &'static Drill), (&'static Lesson, &'static Drill)) {
    (DEMO.0.drill(id).unwrap(), TAKEN.1.drill(id).unwrap())
}

#[test]
fn exercises_of_the_course_that_was_taken_along_are_the_same_to_the_last_bit() {
    use rayon::prelude::*;
    let (course, pools) = &*DEMO;
    let taken = &TAKEN.1;
    let again = |exercise: &Exercise| {
        let (_, (lesson, drill)) = both(&exercise.drill);
        let made = generate(taken, lesson, drill, exercise.number).unwrap();
        assert_eq!(format!("{made:?}"), format!("{exercise:?}"));
    };
    let proved: Vec<&Exercise> = pools.values().flatten().collect();
    proved.par_iter().for_each(|exercise| again(exercise));
    let written: Vec<Exercise> = course
        .drills()
        .filter(|(_, drill)| !drill.questions.is_empty())
        .flat_map(|(lesson, drill)| {
            (1_000..1_060).map(move |number| generate(course, lesson, drill, number).unwrap())
        })
        .collect();
    written.iter().for_each(again);
    assert!(proved.len() + written.len() >= 500, "{} and {}", proved.len(), written.len());
}

#[test]
fn the_course_passes_the_door_unchanged_but_for_what_practice_has_no_use_for() {
    let (course, taken) = (&DEMO.0, &TAKEN.1);
    assert_eq!((&taken.title, taken.seed, &taken.version), (&course.title, course.seed, &course.version));
    assert_eq!(taken.shelf, course.shelf);
    // `Debug` writes numbers so that they read back to the same bits.
    assert_eq!(format!("{:?}", taken.clients), format!("{:?}", course.clients));
    assert_eq!(format!("{:?}", taken.goals), format!("{:?}", course.goals));
    assert_eq!(format!("{:?}", taken.questions), format!("{:?}", course.questions));
    assert_eq!(format!("{:?}", taken.misconceptions), format!("{:?}", course.misconceptions));
    assert_eq!(format!("{:?}", taken.cautions), format!("{:?}", course.cautions));
    for (_, drill) in course.drills() {
        let plain = Drill { stands_at: String::new(), ..drill.clone() };
        assert_eq!(format!("{:?}", both(&drill.id).1.1), format!("{plain:?}"));
    }
    assert!(!TAKEN.0.contains("stands_at") && !TAKEN.0.contains("blocks"));
}

#[test]
fn words_of_course_files_are_the_words_in_json() {
    for (rule, word) in Rule::ALL {
        assert_eq!(serde_json::to_value(rule).unwrap(), word);
    }
    for (family, word) in Family::ALL {
        assert_eq!(serde_json::to_value(family).unwrap(), word);
    }
}

/// An answer as a page gives it: right, or wrong in the simplest way.
fn given(view: &Value, exercise: &Exercise, right: bool) -> Value {
    let form = &view["form"];
    match &exercise.form {
        Form::One(one) => json!({ "one": if right { one.key } else { usize::from(one.key == 0) } }),
        Form::Several(several) => json!({ "several": several.right() }),
        Form::Order(order) => {
            let mut places = order.key.clone();
            if !right {
                places.reverse();
            }
            json!({ "order": places })
        }
        Form::Drops(drops) => {
            let Action::Place(mix) = &drops.best.action else { panic!("a mix is best") };
            let counts: serde_json::Map<String, Value> = if right {
                mix.drops().map(|(id, count)| (id.to_owned(), json!(count))).collect()
            } else {
                let first = form["bottles"][0]["id"].as_str().unwrap().to_owned();
                [(first, form["drops"].clone())].into_iter().collect()
            };
            json!({ "drops": counts })
        }
        Form::Number(number) => json!({ "written": format!("{:.1}", number.key).replace('.', ",") }),
    }
}

fn exercise_of(view: &Value) -> Exercise {
    let (lesson, drill) = DEMO.0.drill(view["drill"].as_str().unwrap()).unwrap();
    generate(&DEMO.0, lesson, drill, view["number"].as_u64().unwrap() as u32).unwrap()
}

/// What a host is asked with and answers.
trait Host {
    fn put(&mut self, what: &str, question: &Value) -> Result<String, String>;
}

impl Host for Practice<'_> {
    fn put(&mut self, what: &str, question: &Value) -> Result<String, String> {
        let text = &question.to_string();
        match what {
            "overview" => self.overview(text),
            "begin" => self.begin(text),
            "next" => self.next(text),
            "reply" => self.answer(text),
            _ => self.summary(text),
        }
    }
}

/// The module and the native code side by side.
struct Pair<'c> {
    browser: Browser,
    native: Practice<'c>,
}

impl Pair<'static> {
    fn new() -> Self {
        let mut browser = Browser::with("practice.wasm");
        assert_eq!(browser.ask("course", &TAKEN.0), Ok(format!("{:?}", DEMO.0.version)));
        Pair { browser, native: Practice::new(&DEMO.0) }
    }
}

impl Host for Pair<'_> {
    fn put(&mut self, what: &str, question: &Value) -> Result<String, String> {
        let expected = self.native.put(what, question);
        assert_eq!(self.browser.ask(what, &question.to_string()), expected, "{what} {question}");
        expected
    }
}

fn json_of(text: Result<String, String>) -> Value {
    serde_json::from_str(&text.unwrap()).unwrap()
}

/// Asks so many questions and answers every second one wrong; tells the last record.
fn sit(host: &mut impl Host, begin: Value, count: usize) -> String {
    json_of(host.put("begin", &begin));
    let mut progress = String::new();
    for turn in 0..count {
        let now = NOW + 120 * turn as i64;
        let view = json_of(host.put("next", &json!({ "now": now })));
        let answer = given(&view, &exercise_of(&view), turn % 2 == 0);
        let told = json_of(host.put("reply", &json!({ "answer": answer, "now": now + 60 })));
        assert_eq!(told["right"], told["credit"] == 1.0);
        progress = told["progress"].as_str().unwrap().to_owned();
    }
    let later = NOW + 10 * DAY;
    json_of(host.put("summary", &json!({ "now": later })));
    json_of(host.put("overview", &json!({ "progress": progress, "now": later })));
    progress
}

/// Written questions cost little in an interpreter, proved ones seconds: a few of each family that needs no search of mixes.
#[test]
fn a_whole_session_in_the_browser_is_the_native_one_to_the_last_bit() {
    let mut pair = Pair::new();
    let written = DEMO.0.drills().find(|(_, drill)| drill.family == Family::Recall).unwrap().1;
    let skin = DEMO.0.drills().find(|(_, drill)| drill.family == Family::Skin).unwrap().1;
    let first = sit(&mut pair, json!({ "seed": 1, "now": NOW, "skill": written.skill }), 12);
    let second = sit(&mut pair, json!({ "progress": first, "seed": 2, "now": NOW, "skill": skin.skill }), 2);
    sit(&mut pair, json!({ "progress": second, "seed": 3, "now": NOW, "minutes": 20 }), 6);
}

#[test]
fn the_browser_makes_proved_exercises_of_every_family_as_the_program_does() {
    let mut pair = Pair::new();
    for family in [Family::Bottle, Family::Drops, Family::Foresight, Family::Hindsight, Family::Light] {
        let Some((lesson, drill)) = DEMO.0.drills().find(|(_, drill)| drill.family == family) else {
            continue;
        };
        let begin = json!({ "seed": 5, "now": NOW, "lesson": lesson.id, "skill": drill.skill });
        sit(&mut pair, begin, 1);
    }
}

#[test]
fn the_door_leads_the_session_of_the_terminal() {
    let course = &DEMO.0;
    let mut practice = Practice::new(course);
    let skill = &course.drills().find(|(_, drill)| drill.family == Family::Recall).unwrap().1.skill;
    let by_door = sit(&mut practice, json!({ "seed": 77, "now": NOW, "skill": skill }), 10);
    let drills = course.drills().filter(|(_, drill)| &drill.skill == skill);
    let mut session = Session::new(course, drills, Progress::new(), Parameters::default(), 77, NOW);
    for turn in 0..10 {
        let now = NOW + 120 * turn;
        let exercise = session.next(f64::INFINITY, now).unwrap().unwrap();
        let key = exercise.form.key();
        let answer = match (&exercise.form, turn % 2 == 0) {
            (Form::One(one), false) => healedhue::exercise::Answer::One(usize::from(one.key == 0)),
            (Form::Order(order), false) => {
                healedhue::exercise::Answer::Order(order.key.iter().rev().copied().collect())
            }
            _ => key,
        };
        session.answer(&exercise, &answer, now + 60).unwrap();
    }
    // The very bytes of the terminal's file.
    assert_eq!(by_door, session.progress().write());
    assert_eq!(Progress::read(&by_door).unwrap().0.write(), by_door);
}

#[test]
fn a_question_does_not_tell_its_answer() {
    let (course, pools) = &*DEMO;
    let told = ["credit", "mark", "key", "misconception", "consequence", "error", "proof", "why", "right"];
    for exercise in pools.values().flatten() {
        let view =
            serde_json::to_value(healedhue::practice::QuestionView::of(course, exercise, 1.0)).unwrap();
        let mut names = Vec::new();
        collect_keys(&view, &mut names);
        assert!(names.iter().all(|name| !told.contains(&name.as_str())), "{names:?}");
        // Nothing is shown of an option but its words, unless colours are what is chosen from.
        if let (Form::One(one), Some(options)) = (&exercise.form, view["form"]["options"].as_array()) {
            assert!(options.iter().all(|option| option["picture"].is_object() == one.pictured));
        }
    }
}

fn collect_keys(value: &Value, into: &mut Vec<String>) {
    match value {
        Value::Object(map) => {
            for (key, value) in map {
                into.push(key.clone());
                collect_keys(value, into);
            }
        }
        Value::Array(list) => list.iter().for_each(|value| collect_keys(value, into)),
        _ => {}
    }
}

#[test]
fn an_answer_is_seen_over_time_and_at_the_time_it_is_marked_by_as_it_was_marked() {
    let (course, pools): &(Course, Pools) = &DEMO;
    let mut seen = 0;
    for exercise in pools.values().flatten() {
        let chosen = outcome(course, exercise, &exercise.form.key()).unwrap();
        let later = over_time(course, exercise, &chosen);
        assert_eq!(later.is_empty(), chosen.healed.is_none());
        let Some(healed) = chosen.healed else { continue };
        assert_eq!(later.iter().filter(|moment| moment.judged).count(), 1);
        let judged = later.iter().find(|moment| moment.judged).unwrap();
        assert_eq!((judged.seen, &judged.reading.words), (healed, &chosen.reading.unwrap().words));
        if matches!(chosen.action, Action::Place(_)) {
            assert!(later.len() >= 4 && later.is_sorted_by(|one, other| one.months < other.months));
            seen += 1;
        }
    }
    assert!(seen > 20, "{seen}");
}

/// A colour is seen over time where something leads to it, a cause always; bare skin and work under a lamp at their one moment.
#[test]
fn colours_and_causes_are_seen_over_time_where_something_leads_to_them() {
    let (course, pools): &(Course, Pools) = &DEMO;
    let mut met = BTreeSet::new();
    for exercise in pools.values().flatten() {
        let Form::One(one) = &exercise.form else { continue };
        let lasts: fn(bool) -> bool = match exercise.family {
            Family::Foresight => |is_key| is_key,
            Family::Hindsight => |_| true,
            Family::Light | Family::Skin => |_| false,
            _ => continue,
        };
        for (place, option) in one.options.iter().enumerate() {
            let later = over_time(course, exercise, option);
            let said = format!("{} {}: {}", exercise.drill, exercise.number, option.label);
            assert_eq!(later.len() >= 4, lasts(place == one.key), "{said}");
            let judged: Vec<_> = later.iter().filter(|moment| moment.judged).collect();
            assert_eq!(judged.len(), 1, "{said}");
            assert_eq!(Some(judged[0].seen), option.healed, "{said}");
            assert!(later.is_sorted_by(|one, other| one.months < other.months), "{said}");
        }
        met.insert(exercise.family.word());
    }
    assert_eq!(met, BTreeSet::from(["foresight", "hindsight", "light", "skin"]));
}

#[test]
fn answers_are_told_in_words_and_a_number_with_its_tolerance() {
    let (course, pools): &(Course, Pools) = &DEMO;
    let (before, mut met) = (Progress::new(), BTreeSet::new());
    for exercise in pools.values().flatten() {
        let chosen = outcome(course, exercise, &exercise.form.key()).unwrap();
        let told = Told::of(course, exercise, &chosen, (&before, &before), NOW);
        let (form, said): (&str, Vec<&str>) = match &exercise.form {
            Form::Several(several) => {
                let right = several.options.iter().filter(|option| option.mark.credit == 1.0);
                ("several", right.map(|option| option.label.as_str()).collect())
            }
            Form::Order(order) => {
                ("order", order.key.iter().map(|&place| order.steps[place].say.as_str()).collect())
            }
            Form::Number(_) => ("number", vec![chosen.label.as_str()]),
            Form::One(_) | Form::Drops(_) => ("mix or option", vec![chosen.label.as_str()]),
        };
        assert_eq!(told.yours.say, said, "{} {}", exercise.drill, exercise.number);
        assert_eq!(told.tolerance.is_some(), form == "number");
        if exercise.family == Family::Skin && form == "number" {
            assert_eq!(told.tolerance.as_deref(), Some("1.0°"));
            met.insert("angle");
        }
        met.insert(form);
    }
    assert!(["order", "number", "angle", "mix or option"].iter().all(|form| met.contains(form)), "{met:?}");
}

#[test]
fn what_cannot_be_answered_is_refused_and_the_session_goes_on() {
    let mut pair = Pair::new();
    let field = |refused: Result<String, String>| -> String {
        let refusal: Value = serde_json::from_str(&refused.unwrap_err()).unwrap();
        refusal["error"]["field"].as_str().unwrap().to_owned()
    };
    assert_eq!(field(pair.put("next", &json!({ "now": NOW }))), "session");
    for (what, question, expected) in [
        ("overview", json!({ "now": "yesterday" }), "request"),
        ("overview", json!({ "progress": "{", "now": NOW }), "progress"),
        ("overview", json!({ "progress": "{\"format\": 99}", "now": NOW }), "progress"),
        ("begin", json!({ "seed": 1, "now": NOW, "lesson": "</script>" }), "lesson"),
        ("begin", json!({ "seed": 1, "now": NOW, "skill": "\u{0}" }), "skill"),
        ("begin", json!({ "seed": -1, "now": NOW }), "request"),
        ("begin", json!({ "seed": 1, "now": NOW, "extra": 1 }), "request"),
    ] {
        assert_eq!(field(pair.put(what, &question)), expected, "{question}");
    }
    let skill = &DEMO.0.drills().find(|(_, drill)| drill.family == Family::Recall).unwrap().1.skill;
    json_of(pair.put("begin", &json!({ "seed": 1, "now": NOW, "skill": skill })));
    assert_eq!(field(pair.put("reply", &json!({ "answer": { "one": 0 }, "now": NOW }))), "answer");
    let view = json_of(pair.put("next", &json!({ "now": NOW })));
    for answer in [
        json!({ "one": 99 }),
        json!({ "one": 65_535 }),
        json!({ "several": [65_535, 65_535] }),
        json!({ "drops": { "dunmere": 4_294_967_295_u32, "emberlow": 4_294_967_295_u32 } }),
        json!({ "order": [0, 0] }),
        json!({ "written": "\u{202e}zzz" }),
    ] {
        assert_eq!(field(pair.put("reply", &json!({ "answer": answer, "now": NOW }))), "answer", "{answer}");
    }
    for answer in
        [json!({ "one": -1 }), json!({ "one": 4_294_967_296_u64 }), json!({ "none": 1 }), json!(null)]
    {
        assert_eq!(field(pair.put("reply", &json!({ "answer": answer, "now": NOW }))), "request", "{answer}");
    }
    // Still open.
    let answer = given(&view, &exercise_of(&view), true);
    assert_eq!(json_of(pair.put("reply", &json!({ "answer": answer, "now": NOW })))["credit"], 1.0);
    // A question that was answered is answered.
    assert_eq!(field(pair.put("reply", &json!({ "answer": answer, "now": NOW }))), "answer");
    let mut browser = Browser::with("practice.wasm");
    assert!(browser.ask("next", "{\"now\": 1}").is_err());
    let broken = TAKEN.0.replace("\"recipe\":[[", "\"recipe\":[[9999,1.0],[");
    for course in ["", "{}", "[]", &broken] {
        let refusal: Value = serde_json::from_str(&browser.ask("course", course).unwrap_err()).unwrap();
        assert_eq!(refusal["error"]["field"], "course");
    }
}

#[test]
fn another_window_s_answers_are_taken_up() {
    let course = &DEMO.0;
    let mut practice = Practice::new(course);
    let skill = &course.drills().find(|(_, drill)| drill.family == Family::Recall).unwrap().1.skill;
    json_of(practice.put("begin", &json!({ "seed": 1, "now": NOW, "skill": skill })));
    let view = json_of(practice.put("next", &json!({ "now": NOW })));
    let mut elsewhere = Progress::new();
    elsewhere.answered("whistling", &Parameters::default(), 0.2, 1.0, NOW);
    let answer = given(&view, &exercise_of(&view), true);
    let told = json_of(
        practice.put("reply", &json!({ "answer": answer, "now": NOW, "progress": elsewhere.write() })),
    );
    let (kept, _) = Progress::read(told["progress"].as_str().unwrap()).unwrap();
    assert_eq!(kept.skills["whistling"], elsewhere.skills["whistling"]);
    assert_eq!(kept.skills[skill].answers, 1);
    // Skills that the course does not have are told, and kept.
    let overview = json_of(practice.put("overview", &json!({ "progress": kept.write(), "now": NOW })));
    assert_eq!((&overview["others"], &overview["answers"]), (&json!(1), &json!(1)));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    /// By the definition of the decay: after so many days what is known is what was asked about, and before it more.
    #[test]
    fn prop_days_above_a_level_end_at_that_level(known in 0.0..=1.0f64, spaced in 0u32..8, passed in 0i64..400, least in 0.0..=1.0f64) {
        let plain = Parameters::default();
        let last = NOW - passed * DAY;
        let trace = Knowledge { known, answers: 3, credit: 2.0, last: Some(last), spaced, last_spaced: None };
        match trace.days_above(&plain, least, NOW) {
            Some(0.0) => prop_assert!(trace.known_at(&plain, NOW) <= least + 1e-9),
            Some(days) => {
                let then = NOW + (days * DAY as f64) as i64;
                prop_assert!((trace.known_at(&plain, then) - least).abs() < 1e-4);
                prop_assert!(trace.known_at(&plain, NOW) >= least);
            }
            None => prop_assert!(trace.known_at(&plain, NOW + 100_000 * DAY) >= least),
        }
        prop_assert_eq!(Knowledge::new(&plain).days_above(&plain, least, NOW), None);
    }
}
