//! The browser's engine: the kept file is fresh, answers every request as the native engine does to the last bit, and refuses what
//! cannot be answered.

use crate::demo::course;
use healedhue::wasm::Door;
use rand::{Rng, RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use serde_json::{Value, json};
use std::io::Read as _;
use wasmi::{Engine, Instance, Linker, Memory, Module, Store};

/// The kept WebAssembly file in an interpreter.
pub struct Browser {
    store: Store<()>,
    instance: Instance,
    memory: Memory,
}

impl Browser {
    fn open() -> Self {
        Browser::with("engine.wasm")
    }

    /// One of the kept modules.
    pub fn with(name: &str) -> Self {
        let engine = Engine::default();
        let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/site/engine/");
        let packed = std::fs::File::open(format!("{folder}{name}.gz")).unwrap();
        let mut file = Vec::new();
        flate2::read::GzDecoder::new(packed).read_to_end(&mut file).unwrap();
        let module = Module::new(&engine, &file).unwrap();
        assert_eq!(module.imports().len(), 0, "the engine asks nothing of its host");
        let mut store = Store::new(&engine, ());
        let instance = Linker::new(&engine).instantiate_and_start(&mut store, &module).unwrap();
        let memory = instance.get_memory(&store, "memory").unwrap();
        Browser { store, instance, memory }
    }

    fn number(&mut self, name: &str) -> u32 {
        let function = self.instance.get_typed_func::<(), u32>(&self.store, name).unwrap();
        function.call(&mut self.store, ()).unwrap()
    }

    /// What an exported function answers to a text.
    pub fn ask(&mut self, name: &str, question: &str) -> Result<String, String> {
        let reserve = self.instance.get_typed_func::<u32, u32>(&self.store, "reserve").unwrap();
        let at = reserve.call(&mut self.store, question.len() as u32).unwrap();
        self.memory.write(&mut self.store, at as usize, question.as_bytes()).unwrap();
        let fine = self.number(name) == 1;
        let (at, length) = (self.number("answer"), self.number("answer_length"));
        let mut bytes = vec![0; length as usize];
        self.memory.read(&self.store, at as usize, &mut bytes).unwrap();
        let answer = String::from_utf8(bytes).unwrap();
        if fine { Ok(answer) } else { Err(answer) }
    }
}

fn shelf() -> String {
    serde_json::to_string(&course().shelf).unwrap()
}

/// Any number between these.
pub fn between(rng: &mut impl Rng, least: f64, most: f64) -> f64 {
    rng.random_range(least..=most)
}

/// Any of these.
pub fn one_of<'v>(rng: &mut impl Rng, values: &[&'v str]) -> &'v str {
    values[rng.random_range(0..values.len())]
}

fn placement(rng: &mut impl Rng) -> Value {
    json!({
        "depth_mm": between(rng, 0.0, 0.6),
        "thickness_mm": between(rng, 0.05, 0.5),
        "load": between(rng, 0.0, 2.0),
        "coverage": between(rng, 0.0, 1.0),
    })
}

fn drops(rng: &mut impl Rng) -> Value {
    let bottles = &course().shelf.bottles;
    (0..rng.random_range(1..=3))
        .map(|_| (bottles[rng.random_range(0..bottles.len())].id.clone(), json!(rng.random_range(1..=6))))
        .collect::<serde_json::Map<_, _>>()
        .into()
}

/// A request of any kind, most of them answerable.
fn request(rng: &mut impl Rng) -> String {
    let mut skin = json!({
        "undertone": one_of(rng, &["cool", "neutral", "warm", "olive"]),
        "redness": one_of(rng, &["calm", "rosy", "flushed", "ruddy"]),
        "scar": rng.random_range(0..8) == 0,
    });
    match rng.random_range(0..100) {
        0..10 => skin["ita"] = json!(between(rng, -60.0, 75.0)),
        10 => {
            skin["lab"] = json!([between(rng, 30.0, 72.0), between(rng, 6.0, 14.0), between(rng, 10.0, 20.0)])
        }
        11..30 => {
            skin["melanin"] = json!(between(rng, 0.0, 0.6));
            skin["blood"] = json!(between(rng, 0.0, 0.15));
            skin["vessel_radius_mm"] = json!(between(rng, 0.0, 0.2));
        }
        _ => skin["phototype"] = json!(one_of(rng, &["I", "II", "III", "IV", "V", "VI"])),
    }
    let existing: Vec<Value> = (0..rng.random_range(0..=2))
        .map(
            |_| json!({ "mix": drops(rng), "placement": placement(rng), "months": between(rng, 0.0, 240.0) }),
        )
        .collect();
    let mut request = json!({
        "skin": skin,
        "worlds": if rng.random_range(0..20) == 0 { 16 } else { 0 },
        "site": one_of(rng, &["brow", "eyelid", "lip", "areola", "scalp"]),
        "light": one_of(rng, &["D65", "A", "LED-B3", "FL2"]),
        "sun": one_of(rng, &["sheltered", "everyday", "outdoors"]),
        "oil": one_of(rng, &["dry", "balanced", "oily"]),
        "months": between(rng, 0.0, 120.0),
        "mix": drops(rng),
        "placement": placement(rng),
        "existing": existing,
    });
    if rng.random_range(0..50) == 0 {
        let goal = json!([between(rng, 25.0, 60.0), between(rng, 0.0, 15.0), between(rng, 0.0, 20.0)]);
        request["search"] = json!({ "goal": goal, "palette": ["dunmere", "emberlow", "frostwick"], "bottles": 2, "drops": 3 });
    }
    request.to_string()
}

/// Requests compared. Any difference in any bit of any number shows, since JSON writes the shortest text that reads back as the
/// same number.
const REQUESTS: usize = 2000;

#[test]
fn the_browser_answers_as_the_native_engine_to_the_last_bit() {
    let halves = std::thread::scope(|scope| {
        [1, 2].map(|seed| scope.spawn(move || compare(seed, REQUESTS / 2))).map(|half| half.join().unwrap())
    });
    let answered: usize = halves.iter().sum();
    assert!(answered > REQUESTS * 4 / 5, "only {answered} of {REQUESTS} requests were answered");
}

/// Compares so many requests; returns how many were answered.
fn compare(seed: u64, requests: usize) -> usize {
    let (mut browser, mut native) = (Browser::open(), Door::default());
    let shelf = shelf();
    assert_eq!(browser.ask("shelf", &shelf), native.shelf(&shelf));
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    (0..requests)
        .filter(|_| {
            let request = request(&mut rng);
            let expected = native.foresee(&request);
            assert_eq!(browser.ask("foresee", &request), expected, "{request}");
            match rng.random_range(0..50) {
                0 => assert_eq!(browser.ask("timeline", &request), native.timeline(&request), "{request}"),
                1 => assert_eq!(browser.ask("lights", &request), native.lights(&request), "{request}"),
                2 => assert_eq!(browser.ask("likely", &request), native.likely(&request), "{request}"),
                3 => {
                    let survey = format!(
                        r#"{{"case": {request}, "goal": {{"lab": [45.5, 8.25, 13], "tolerance": 4}}}}"#
                    );
                    assert_eq!(browser.ask("survey", &survey), native.survey(&survey), "{survey}");
                }
                4 => compare_rankings(&mut browser, &native, &request, rng.random_range(0..8) == 0),
                _ => {}
            }
            expected.is_ok()
        })
        .count()
}

/// Compares the ranking of few mixes, which are all solved, or of so many that charts are drawn.
fn compare_rankings(browser: &mut Browser, native: &Door, request: &str, many: bool) {
    let mut case: Value = serde_json::from_str(request).unwrap();
    let shelf = &course().shelf;
    let palette: Vec<&str> =
        shelf.bottles.iter().take(if many { 11 } else { 3 }).map(|bottle| bottle.id.as_str()).collect();
    case["search"] = json!({ "goal": [45, 8.5, 13], "palette": palette, "drops": if many { 6 } else { 4 } });
    let question = case.to_string();
    assert_eq!(browser.ask("ranking", &question), native.ranking(&question), "{question}");
}

#[test]
fn a_shelf_passes_the_door_unchanged() {
    let shelf = &course().shelf;
    let read: healedhue::pigment::Shelf = serde_json::from_str(&self::shelf()).unwrap();
    assert_eq!(&read, shelf);
}

#[test]
fn the_door_answers_what_the_program_prints() {
    let mut door = Door::default();
    door.shelf(&shelf()).unwrap();
    let example = concat!(env!("CARGO_MANIFEST_DIR"), "/docs/examples/red-skin.json");
    let answer: Value =
        serde_json::from_str(&door.foresee(&std::fs::read_to_string(example).unwrap()).unwrap()).unwrap();
    let printed = assert_cmd::Command::cargo_bin("healedhue")
        .unwrap()
        .args(["foresee", example, "--json"])
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .unwrap();
    assert_eq!(answer, serde_json::from_slice::<Value>(&printed.stdout).unwrap());
}

#[test]
fn what_cannot_be_answered_is_refused_and_the_engine_goes_on() {
    let mut browser = Browser::open();
    browser.ask("shelf", &shelf()).unwrap();
    for (question, field) in [
        ("", "request"),
        ("{}", "request"),
        (r#"{"skin": {"phototype": "VII"}}"#, "skin.phototype"),
        (r#"{"skin": {"phototype": "I"}, "months": -1}"#, "months"),
        (r#"{"skin": {"phototype": "I"}, "mix": {"nothing": 1}}"#, "mix"),
    ] {
        let refusal: Value = serde_json::from_str(&browser.ask("foresee", question).unwrap_err()).unwrap();
        assert_eq!(refusal["error"]["field"], field, "{question}");
    }
    for broken in [
        "{}",
        r#"{"colourants": [], "bottles": [{"id": "a", "name": "A", "about": "", "recipe": [[3, 1.0]], "modifier": null}]}"#,
    ] {
        browser.ask("shelf", broken).unwrap_err();
    }
    browser.ask("foresee", r#"{"skin": {"phototype": "I"}, "mix": {"kelderwick": 1}}"#).unwrap();
}

/// Needs a shell, as the script itself does.
#[cfg(unix)]
#[test]
fn the_kept_engine_is_built_from_these_sources() {
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/site/engine/rebuild");
    let output = std::process::Command::new(script).arg("--check").output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
}
