//! Exercises: what is issued is proved, what is right marks full, and a seed gives the same bytes.

use crate::demo::course;
use crate::telling::MADE;
use healedhue::course::{Band, Course, Drill, Family, Lesson};
use healedhue::exercise::{
    Action, Answer, Exercise, Form, GenerateError, NEEDED_SHARE, WORLDS, credit, engine_difficulty, generate,
    mark, mixes, outcome, pools,
};
use healedhue::healing::{Scene, Work};
use healedhue::pigment::Mix;
use rayon::prelude::*;
use std::collections::{BTreeMap, BTreeSet};

/// Exercises of drills that can be satisfied, made on all cores.
fn made(numbers: Vec<(&Lesson, &Drill, u32)>) -> Vec<Exercise> {
    let make = |&(lesson, drill, number): &(&Lesson, &Drill, u32)| {
        generate(course(), lesson, drill, number).expect("the drill can be satisfied")
    };
    numbers.par_iter().map(make).collect()
}

/// Some exercises of every drill, beyond those the lessons show.
fn sample() -> &'static Vec<Exercise> {
    static SAMPLE: std::sync::OnceLock<Vec<Exercise>> = std::sync::OnceLock::new();
    SAMPLE.get_or_init(|| {
        let numbers = course()
            .drills()
            .flat_map(|(lesson, drill)| (0..4).map(move |number| (lesson, drill, number * 7)));
        made(numbers.collect())
    })
}

/// Place of the right option, for exercises that have one.
fn key_of(exercise: &Exercise) -> Option<usize> {
    match exercise.form.key() {
        Answer::One(key) => Some(key),
        _ => None,
    }
}

/// Whatever can be answered wrongly, taken from what the exercise itself knows of wrong answers.
fn wrong_answers(exercise: &Exercise) -> Vec<Answer> {
    match &exercise.form {
        Form::One(one) => (0..one.options.len()).filter(|&place| place != one.key).map(Answer::One).collect(),
        Form::Several(several) => {
            let right = several.right();
            (0..several.options.len())
                .map(|place| {
                    let toggled = (0..several.options.len()).filter(|&i| right.contains(&i) != (i == place));
                    Answer::Several(toggled.collect())
                })
                .collect()
        }
        Form::Order(order) => {
            let reversed = order.key.iter().rev().copied().collect();
            vec![Answer::Order(reversed)]
        }
        Form::Drops(drops) => drops
            .tempting
            .iter()
            .filter_map(|choice| match &choice.action {
                Action::Place(mix) => Some(Answer::Drops(mix.clone())),
                _ => None,
            })
            .collect(),
        Form::Number(number) => number.tempting.iter().map(|wrong| Answer::Number(wrong.value)).collect(),
    }
}

#[test]
fn prop_every_key_marks_full_and_every_other_answer_less() {
    for exercise in sample() {
        let name = format!("{} {}", exercise.drill, exercise.number);
        assert_eq!(mark(course(), exercise, &exercise.form.key()).expect(&name).credit, 1.0, "{name}");
        let wrong = wrong_answers(exercise);
        assert!(!wrong.is_empty(), "{name}");
        for answer in wrong {
            let credit = mark(course(), exercise, &answer).expect(&name).credit;
            assert!((0.0..1.0).contains(&credit), "{name}: {answer} gets {credit}");
        }
    }
}

#[test]
fn prop_answers_read_back_as_they_are_written() {
    for exercise in sample() {
        let mut answers = wrong_answers(exercise);
        answers.push(exercise.form.key());
        for answer in answers {
            assert_eq!(Answer::read(&exercise.form, &answer.to_string()), Ok(answer));
        }
    }
}

#[test]
fn what_is_no_answer_is_refused() {
    let exercise = |id: &str| {
        let (lesson, drill) = course().drill(id).expect("the drill exists");
        generate(course(), lesson, drill, 0).expect("the drill can be satisfied")
    };
    let choice = exercise("wider-choice");
    for answer in [Answer::One(4), Answer::Number(1.0), Answer::Order(vec![0])] {
        mark(course(), &choice, &answer).unwrap_err();
    }
    let drops = exercise("count-the-drops");
    for (text, why) in [
        ("", "this exercise asks for whole drops of bottles: write them as `a5 d1`"),
        ("5 a e 1", "this exercise asks for whole drops of bottles: write them as `a5 d1`"),
        ("4.5 a", "this exercise asks for whole drops of bottles: write them as `a5 d1`"),
        ("a5", "5 drops are given; the mix has 6"),
        ("a7", "7 drops are given; the mix has 6"),
        ("a3 b3", "a mix has one bottle and drops of modifiers"),
        ("a2 e4", "4 drops of modifiers are more than 2"),
        ("z6", "there is no option Z; there are 6"),
        (
            "nothing 6",
            "there is no bottle `nothing` here; there are garrowby, ruddenham, barleywick, rookhanger, emberlow, lingmoss; write drops as `a5 d1`",
        ),
    ] {
        let error = Answer::read(&drops.form, text)
            .and_then(|answer| mark(course(), &drops, &answer))
            .expect_err(text);
        assert_eq!(error.to_string(), why, "{text}");
    }
    mark(course(), &drops, &Answer::read(&drops.form, "B 5, e1").unwrap()).unwrap();
}

/// Whoever copies what the paper shows, a letter with its bracket or a mix in words, has answered.
#[test]
fn answers_are_read_as_papers_write_them() {
    let of_form = |wanted: fn(&Form) -> bool| {
        sample().iter().find(|exercise| wanted(&exercise.form)).expect("an exercise of each form")
    };
    let read = |exercise: &Exercise, text: &str| Answer::read(&exercise.form, text).expect(text);
    let one = of_form(|form| matches!(form, Form::One(_)));
    for text in ["A", "a", "A.", "a)", "(A)", " (a) "] {
        assert_eq!(read(one, text), Answer::One(0), "{text}");
    }
    let several = of_form(|form| matches!(form, Form::Several(_)));
    for text in ["a b", "A, B", "(a) (b)", "b. a.", "a); b)"] {
        assert_eq!(read(several, text), Answer::Several(vec![0, 1]), "{text}");
    }
    let drops = of_form(|form| matches!(form, Form::Drops(_)));
    let Form::Drops(form) = &drops.form else { panic!("drops are asked for") };
    let [first, second] = form.bottles()[..2] else { panic!("there are several bottles") };
    let named = |id: &str| course().shelf.bottle(id).expect("a bottle").name.clone();
    let mix = Answer::Drops(Mix::new([(first.to_owned(), 5), (second.to_owned(), 1)]));
    let in_words = [
        format!("5 drops {}, 1 drop {}", named(first), named(second)),
        format!("5 {}, 1 {}", named(first), named(second)),
        format!("{} 5; {} 1", named(first), named(second)),
        format!("5 Tropfen {} und 1 Tropfen {}", named(first), named(second)),
        format!("{first} 5, {second} 1"),
    ];
    for text in ["a5b1", "5A 1B", "a 5 b 1", "5a + 1b", "A=5, B=1", "1b 5a"]
        .map(str::to_owned)
        .iter()
        .chain(&in_words)
    {
        assert_eq!(read(drops, text), mix, "{text}");
    }
    assert_eq!(
        read(drops, &format!("6 drops {}", named(first))),
        Answer::Drops(Mix::new([(first.to_owned(), 6)]))
    );
}

/// Whatever mix is given, its credit is that of the colour it heals to, and the key of the exercise is the best of them all.
#[test]
fn prop_drops_are_marked_by_the_colour_they_heal_to() {
    let (lesson, drill) = course().drill("count-the-drops").expect("the drill exists");
    for exercise in made((0..6).map(|number| (lesson, drill, number)).collect()) {
        let Form::Drops(drops) = &exercise.form else { panic!("drops are asked for") };
        let mut diagnosed = 0;
        for mix in mixes(&drill.limits) {
            let seen =
                outcome(course(), &exercise, &Answer::Drops(mix)).expect("the mix lies within the limits");
            let error = seen.error.expect("it heals to a colour");
            assert!(error >= drops.best_error);
            assert_eq!(seen.mark.credit, credit(error, drops.best_error));
            diagnosed += usize::from(seen.mark.misconception.is_some());
        }
        assert!(diagnosed >= drops.tempting.len(), "{diagnosed}");
    }
}

#[test]
fn prop_options_differ_and_every_wrong_colour_names_its_misconception() {
    for exercise in sample() {
        let options = exercise.form.options();
        let labels: BTreeSet<&str> = options.iter().map(|option| option.label.as_str()).collect();
        assert_eq!(labels.len(), options.len(), "{} {}", exercise.drill, exercise.number);
        for (i, option) in options.iter().enumerate() {
            assert!(!option.mark.consequence.is_empty());
            assert!(course().lesson(&option.mark.lesson).is_some(), "{}", option.mark.lesson);
            // Written questions may have wrong options without one.
            if exercise.proof.is_some() && Some(i) != key_of(exercise) {
                let id = option
                    .mark
                    .misconception
                    .as_deref()
                    .expect("a misconception stands behind every wrong option");
                assert!(course().misconception(id).is_some(), "{id}");
            }
        }
    }
}

/// Of colours that are foreseen, what came next are the wrong ones, nearest first.
#[test]
fn prop_runners_up_of_a_foreseen_colour_are_the_wrong_options() {
    let of_colours = |exercise: &&Exercise| matches!(exercise.family, Family::Foresight | Family::Light);
    let mut seen = 0;
    for exercise in sample().iter().filter(of_colours) {
        let proof = exercise.proof.as_ref().expect("colour exercises carry their proof");
        let mut wrong: Vec<(f64, &str)> = exercise
            .form
            .options()
            .iter()
            .filter(|option| option.mark.misconception.is_some())
            .map(|option| (option.error.expect("a colour"), option.label.as_str()))
            .collect();
        wrong.sort_by(|one, other| one.0.total_cmp(&other.0));
        let next: Vec<(f64, &str)> =
            proof.runners_up.iter().map(|next| (next.error, next.label.as_str())).collect();
        assert_eq!(next, wrong, "{} {}", exercise.drill, exercise.number);
        assert_eq!(proof.margin, Some(wrong[0].0));
        seen += 1;
    }
    assert!(seen >= 40, "{seen}");
}

/// Proves the colour exercises again from the public parts: the key is the best of the whole drop grid, each wrong mix is worse
/// by the drill's margin.
#[test]
fn prop_the_key_is_the_best_of_the_whole_drop_grid() {
    let mut proved = 0;
    for exercise in sample() {
        let Some(case) = &exercise.case else { continue };
        let (Some(goal), Some(placed)) = (&case.goal, &case.placed) else { continue };
        let best = outcome(course(), exercise, &exercise.form.key()).expect("the key is an answer");
        let Action::Place(key) = &best.action else { continue };
        let (_, drill) = course().drill(&exercise.drill).expect("the drill exists");
        let client = course().client(&case.client).expect("the client exists");
        let works: Vec<Work> = client.works();
        let scene = Scene::new(&course().shelf, &client.skin, client.site, &works, placed.months);
        let trial = scene.trial(&placed.placement);
        let error = |mix: &healedhue::pigment::Mix| {
            let healed = case.light.lab_of(&trial.with(&course().shelf.paint_of(mix)));
            healedhue::colour::difference(healed, goal.lab)
        };
        let best = error(key);
        assert!(best <= goal.tolerance, "{} {}", exercise.drill, exercise.number);
        let mut errors: Vec<f64> = mixes(&drill.limits).iter().map(error).collect();
        errors.sort_by(f64::total_cmp);
        assert!(errors[0] >= best, "{} {}: a mix beats the key", exercise.drill, exercise.number);
        let wrong = match &exercise.form {
            Form::Drops(drops) => &drops.tempting[..],
            form => form.options(),
        };
        for (i, option) in wrong.iter().enumerate().filter(|(i, _)| Some(*i) != key_of(exercise)) {
            if let Action::Place(mix) = &option.action {
                assert!(
                    error(mix) >= best + drill.margin,
                    "{} {} option {i}",
                    exercise.drill,
                    exercise.number
                );
            }
        }
        let proof = exercise.proof.as_ref().expect("colour exercises carry their proof");
        assert_eq!(proof.worlds, WORLDS);
        assert!(f64::from(proof.held) >= NEEDED_SHARE * f64::from(WORLDS));
        assert_eq!(proof.searched, errors.len());
        let next: Vec<f64> = proof.runners_up.iter().map(|next| next.error).collect();
        assert_eq!(next, errors[1..errors.len().min(4)], "{} {}", exercise.drill, exercise.number);
        proved += 1;
    }
    assert!(proved >= 30, "{proved}");
}

#[test]
fn the_drop_grid_holds_every_mix_once() {
    let (_, drill) = course().drill("warmth-on-red").expect("the drill exists");
    let grid = mixes(&drill.limits);
    let unique: BTreeSet<_> = grid.iter().collect();
    assert_eq!(unique.len(), grid.len());
    // Per bottle: none, one or two drops of two modifiers: 1 + 2 + 3 ways.
    assert_eq!(grid.len(), 6 * drill.limits.bottles.len());
    assert!(grid.iter().all(|mix| mix.total() == drill.limits.drops));
}

#[test]
fn remedy_gives_all_three_honest_answers() {
    let (lesson, drill) = course().drill("every-door").expect("the drill exists");
    let mut kinds = BTreeSet::new();
    // Every client twice.
    let numbers = 0..2 * drill.clients.len() as u32;
    for exercise in made(numbers.map(|number| (lesson, drill, number)).collect()) {
        let options = exercise.form.options();
        let place = key_of(&exercise).expect("one option is right");
        let key = &options[place];
        let case = exercise.case.as_ref().expect("a remedy is about a client");
        let client = course().client(&case.client).expect("the client exists");
        kinds.insert(match key.action {
            Action::Place(_) => "colour",
            Action::Lighten => "lighten",
            Action::Refer => "refer",
            Action::Say(_) => "say",
        });
        // A caution decides, whatever the colour; then nothing else earns anything.
        assert_eq!(client.cautions().next().is_some(), key.action == Action::Refer, "{}", client.id);
        if key.action == Action::Refer {
            assert!(options.iter().enumerate().all(|(i, o)| i == place || o.mark.credit == 0.0));
            assert!(key.mark.consequence.contains("Who to ask"));
        }
        assert!(options.iter().any(|option| option.action == Action::Lighten));
        assert!(options.iter().any(|option| option.action == Action::Refer));
    }
    assert_eq!(kinds, BTreeSet::from(["colour", "lighten", "refer"]));
}

/// Pearson's chi-square over the places of the key, all families together and each by itself: written and reading families are cheap and
/// give most of the exercises. Seeded, so it either always holds or never.
#[test]
fn the_place_of_the_key_tells_nothing() {
    let written = |family| [Family::Recall, Family::Triage].contains(&family);
    let numbers = course()
        .drills()
        .filter(|(_, drill)| written(drill.family))
        .flat_map(|(lesson, drill)| (40_000..40_060).map(move |number| (lesson, drill, number)));
    let written = made(numbers.collect());
    // How often the key stands in each place, by family and number of options.
    let mut counts: BTreeMap<(String, usize), Vec<f64>> = BTreeMap::new();
    let mut all = 0;
    for exercise in written.iter().chain(&*MADE) {
        let Some(key) = key_of(exercise) else { continue };
        let options = exercise.form.options().len();
        let places = counts.entry((format!("{:?}", exercise.family), options)).or_insert(vec![0.0; options]);
        places[key] += 1.0;
        all += 1;
    }
    assert!(all > 3000, "{all}");
    let families: BTreeSet<&String> = counts.keys().map(|(family, _)| family).collect();
    assert_eq!(families.len(), 8, "{families:?}");
    let mut whole = (0.0, 0.0);
    for (what, places) in &counts {
        let expected = places.iter().sum::<f64>() / places.len() as f64;
        let chi_square: f64 =
            places.iter().map(|count| (count - expected) * (count - expected) / expected).sum();
        let freedom = places.len() as f64 - 1.0;
        assert!(chi_square < most_by_chance(freedom), "{what:?}: {places:?}, {chi_square}");
        whole = (whole.0 + chi_square, whole.1 + freedom);
    }
    assert!(whole.0 < most_by_chance(whole.1), "{whole:?}: {counts:?}");
}

/// The 99.9% point of chi-square, by the cube of Wilson and Hilferty (1931): 16.2 for three degrees of freedom, where tables have 16.27
/// (Abramowitz and Stegun 1964, table 26.8). 3.0902 is the 99.9% point of the normal distribution.
fn most_by_chance(freedom: f64) -> f64 {
    let step = 2.0 / (9.0 * freedom);
    let root = 1.0 - step + 3.0902 * step.sqrt();
    freedom * root * root * root
}

#[test]
fn one_seed_gives_the_same_pools_and_another_seed_others() {
    // One drill of each family stands for all.
    let mut few = course().clone();
    let mut seen = BTreeSet::new();
    for lesson in few.modules.iter_mut().flat_map(|module| &mut module.lessons) {
        lesson.drills.retain(|drill| seen.insert(drill.family));
    }
    let text = |course: &Course| format!("{:?}", pools(course, |_, _| {}).expect("all can be satisfied"));
    let once = text(&few);
    assert_eq!(seen.len(), Family::ALL.len(), "the demo has a drill of every family");
    assert_eq!(once, text(&few));
    few.seed += 1;
    assert_ne!(once, text(&few));
}

/// Draws share what a grid heals to (`exercise/kept.rs`); it is the grid's of this course alone.
#[test]
fn what_was_worked_out_with_one_shelf_is_not_taken_for_another() {
    let mut stronger = course().clone();
    for colourant in &mut stronger.shelf.colourants {
        colourant.absorption = colourant.absorption.map(|per_mm| 1.5 * per_mm);
    }
    let made = |course: &Course| {
        let (lesson, drill) = course.drill("wider-choice").expect("the drill exists");
        (0..3).map(|number| format!("{:?}", generate(course, lesson, drill, number))).collect::<Vec<String>>()
    };
    let (once, with_stronger) = (made(course()), made(&stronger));
    assert_eq!(once, made(course()));
    assert!(once.iter().zip(&with_stronger).all(|(one, other)| one != other));
    assert_eq!(with_stronger, made(&stronger));
}

#[test]
fn credit_falls_from_one_to_nothing_and_never_leaves_that_range() {
    let credits: Vec<f64> = (0..200).map(|step| credit(f64::from(step) * 0.1, 1.5)).collect();
    assert!(credits.windows(2).all(|pair| pair[1] <= pair[0]));
    assert_eq!((credits[0], credits[199]), (1.0, 0.0));
    assert!(credits.iter().all(|credit| (0.0..=1.0).contains(credit)));
}

#[test]
fn an_impossible_drill_says_which_condition_failed_how_often() {
    let (lesson, drill) = course().drill("wider-choice").expect("the drill exists");
    let mut impossible = drill.clone();
    impossible.clients = vec!["fenno".to_owned()];
    impossible.goals = vec!["fair-brown".to_owned()];
    let error: GenerateError =
        generate(course(), lesson, &impossible, 0).expect_err("nothing lightens dark skin to fair brown");
    insta::assert_snapshot!(error.to_string(), @r#"
drill `wider-choice` gives no exercise 0: of 240 draws, 240 failed because no mix within the limits reaches the goal
"#);
}

#[test]
fn a_drill_can_ask_for_a_band_of_difficulty() {
    let of_light = |(_, drill): &(&Lesson, &Drill)| drill.family == Family::Light;
    let (lesson, drill) = course().drills().find(of_light).expect("the demo has a drill of every family");
    let made = |difficulty: Option<Band>, number: u32| {
        generate(course(), lesson, &Drill { difficulty, ..drill.clone() }, number)
    };
    let of = |exercise: &Exercise| engine_difficulty(exercise).expect("the engine proves it");
    let mut any: Vec<f64> =
        (0..8).map(|number| of(&made(None, number).expect("the drill can be satisfied"))).collect();
    any.sort_by(f64::total_cmp);
    assert!(any[0] < any[4] && any[4] < any[7], "{any:?}");
    for band in [Band { least: 0.0, most: any[4] }, Band { least: any[4], most: 1.0 }] {
        for number in 0..8 {
            let exercise = made(Some(band), number).expect("half of all are in the band");
            assert!(band.holds(of(&exercise)), "{number}: {} outside {band:?}", of(&exercise));
        }
    }
    let error = made(Some(Band { least: 0.99, most: 1.0 }), 0).expect_err("nothing is as hard as that");
    assert!(
        error
            .to_string()
            .contains("failed because the exercise would be easier or harder than `difficulty` allows"),
        "{error}"
    );
}

/// A question about undertone and redness tells nothing that names them.
#[test]
fn what_is_asked_of_the_skin_is_not_told() {
    let mut seen = 0;
    for exercise in MADE.iter().filter(|exercise| exercise.family == Family::Skin) {
        let case = exercise.case.as_ref().expect("it is about a client");
        let client = course().client(&case.client).expect("the course has its clients");
        assert!(!case.skin_is_told);
        let told = client.told(&course().language, case.skin_is_told);
        assert_eq!(told, format!("{} years old.", client.age));
        seen += 1;
    }
    assert!(seen > 10, "{seen}");
}

/// What one exercise says, read as a whole.
#[test]
fn an_exercise_reads_well() {
    let (lesson, drill) = course().drill("too-warm").expect("the drill exists");
    let exercise = generate(course(), lesson, drill, 0).expect("the drill can be satisfied");
    let mut text = format!("{}\n", exercise.ask);
    for (i, option) in exercise.form.options().iter().enumerate() {
        let mark = mark(course(), &exercise, &Answer::One(i)).expect("the option exists");
        text += &format!(
            "\n{} {}\n  credit {:.2}; {}\n  misconception: {}\n  lesson: {}\n",
            if Some(i) == key_of(&exercise) { "*" } else { "-" },
            option.label,
            mark.credit,
            mark.consequence,
            mark.misconception.as_deref().unwrap_or("none"),
            mark.lesson
        );
    }
    insta::assert_snapshot!(text);
}

/// Four modifiers and eleven drops of them: 1,365 choices a bottle, each once, at once.
#[test]
fn a_large_drop_grid_is_counted_and_listed_alike() {
    let (_, drill) = course().drill("warmth-on-red").expect("the drill exists");
    let mut limits = drill.limits.clone();
    limits.bottles.truncate(2);
    limits.modifiers = ["emberlow", "frostwick", "gloamhurst", "palewater"].map(str::to_owned).to_vec();
    (limits.drops, limits.modifier_drops) = (12, 11);
    let grid = mixes(&limits);
    assert_eq!(grid.len() as u64, limits.mixes());
    assert_eq!(limits.mixes(), 2 * 1365);
    assert_eq!(grid.iter().collect::<BTreeSet<_>>().len(), grid.len());
}

#[test]
fn a_bottle_drill_never_draws_a_client_with_a_caution() {
    let (lesson, drill) = course().drill("wider-choice").expect("the drill exists");
    let mut unsafe_drill = drill.clone();
    unsafe_drill.clients = vec!["gaura".to_owned()];
    let error = generate(course(), lesson, &unsafe_drill, 0).expect_err("the caution forbids it");
    assert!(error.to_string().contains("a caution forbids work on the client"), "{error}");
}

fn exercise_is_about_colour(exercise: &Exercise) -> bool {
    let written = matches!(exercise.family, Family::Recall | Family::Sequence | Family::Triage);
    !written && !matches!(exercise.form, Form::Number(_))
}

#[test]
fn what_a_caution_decides_claims_no_trials() {
    for exercise in sample() {
        let options = exercise.form.options();
        let refers = key_of(exercise).is_some_and(|key| options[key].action == Action::Refer);
        assert_eq!(
            refers || !exercise_is_about_colour(exercise),
            exercise.proof.is_none(),
            "{}",
            exercise.drill
        );
    }
}
