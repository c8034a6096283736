//! Simulated cohorts: apprentices of known ability and known beliefs sit papers of the demo course's drills and questions.

use healedhue::assess::report::{Cohort, OptionPut, PaperSat, Question, Sheet, SheetAnswer, SheetMark};
use healedhue::course::{Asked, Course};
use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{Rng, SeedableRng};

/// How a cohort is made.
#[derive(Debug, Clone, Copy)]
pub struct Plan {
    /// People, a sheet each.
    pub people: usize,
    /// Drills on the paper.
    pub drills: usize,
    /// Exercises of each drill on a paper, out of a pool of [`POOL`].
    pub of_each: usize,
    /// Questions of the bank on a paper, drawn from four times as many.
    pub bank: usize,
    /// Seed of everything.
    pub seed: u64,
}

/// Exercises in the pool of a drill.
pub const POOL: usize = 12;
/// What everybody with a misconception chooses where an option leads to it, in so many of 100 cases.
const BELIEVED: u64 = 70;

/// A cohort, and for every person the misconception that the person has.
pub fn simulated(course: &Course, plan: Plan) -> (Cohort, Vec<String>) {
    let mut rng = ChaCha8Rng::seed_from_u64(plan.seed);
    let drills: Vec<_> = course
        .drills()
        .map(|(_, drill)| drill)
        .filter(|drill| drill.tempts.len() >= 3)
        .take(plan.drills)
        .collect();
    let mut questions = Vec::new();
    let mut difficulties = Vec::new();
    for drill in &drills {
        let difficulty = 0.6 * normal(&mut rng);
        for number in 0..POOL {
            let mut options: Vec<OptionPut> = vec![option("the best mix", true, None)];
            let first = below(&mut rng, drill.tempts.len());
            options.extend((0..3).map(|at| {
                let belief = &drill.tempts[(first + at) % drill.tempts.len()];
                option(&format!("the mix of {belief}"), false, Some(belief))
            }));
            let turn = below(&mut rng, 4);
            options.rotate_left(turn);
            questions.push(Question {
                id: format!("{}/{number}", drill.id),
                drill: Some(drill.id.clone()),
                skill: drill.skill.clone(),
                options,
            });
            difficulties.push(difficulty + 0.2 * normal(&mut rng));
        }
    }
    let first_of_bank = questions.len();
    let of_one = |asked: &Asked| matches!(asked, Asked::One(_));
    for question in course.questions.iter().filter(|question| of_one(&question.asked)).take(4 * plan.bank) {
        questions.push(Question {
            id: question.id.clone(),
            drill: None,
            skill: question.skill.clone(),
            options: question
                .options()
                .iter()
                .map(|one| option(&one.say, one.right, one.misconception.as_deref()))
                .collect(),
        });
        difficulties.push(normal(&mut rng));
    }
    let beliefs: Vec<&String> = drills.iter().flat_map(|drill| &drill.tempts).collect();
    let mut held = Vec::new();
    let sheets = (0..plan.people).map(|person| {
        let ability = 0.5 + normal(&mut rng);
        let belief = beliefs[below(&mut rng, beliefs.len())].clone();
        let mut put: Vec<(usize, &str)> = Vec::new();
        for drill in 0..drills.len() {
            put.extend(
                picked(&mut rng, POOL, plan.of_each).into_iter().map(|at| (drill * POOL + at, "mixing")),
            );
        }
        let bank = picked(&mut rng, questions.len() - first_of_bank, plan.bank);
        put.extend(bank.into_iter().map(|at| (first_of_bank + at, "knowledge")));
        let answers: Vec<SheetAnswer> = put
            .into_iter()
            .map(|(at, section)| {
                answered(&mut rng, &questions[at], ability - difficulties[at], &belief, section)
            })
            .collect();
        let total =
            100.0 * answers.iter().map(|answer| answer.credit).sum::<f64>() / answers.len().max(1) as f64;
        held.push(belief);
        Sheet {
            seconds: None,
            person: format!("a{person:05}"),
            name: format!("Apprentice {person:05}"),
            practice: false,
            paper: PaperSat {
                blueprint: "certificate".to_owned(),
                course: course.version.clone(),
                seed: person as u64,
                attempt: 1,
            },
            mark: Some(SheetMark { total, pass_mark: Some(55.0), standard_error: Some(5.5) }),
            answers,
        }
    });
    let sheets = sheets.collect();
    (Cohort { title: "Simulated cohort".to_owned(), questions, sheets }, held)
}

fn option(say: &str, right: bool, misconception: Option<&str>) -> OptionPut {
    OptionPut { say: say.to_owned(), right, misconception: misconception.map(str::to_owned) }
}

/// By the Rasch model, but for who believes what an option says. Who is wrong without a belief picks any wrong option; one in
/// fifty leaves a blank.
fn answered(
    rng: &mut ChaCha8Rng,
    question: &Question,
    above: f64,
    belief: &str,
    section: &str,
) -> SheetAnswer {
    let answer = |credit: f64, chosen: Option<usize>| SheetAnswer {
        seconds: None,
        question: question.id.clone(),
        section: section.to_owned(),
        credit,
        chosen,
        misconception: None,
    };
    let believed = question
        .options
        .iter()
        .position(|option| !option.right && option.misconception.as_deref() == Some(belief));
    if let Some(at) = believed
        && rng.next_u64() % 100 < BELIEVED
    {
        return answer(0.0, Some(at));
    }
    if rng.next_u64().is_multiple_of(50) {
        return answer(0.0, None);
    }
    let is_right = uniform(rng) < 1.0 / (1.0 + libm::exp(-above));
    let fitting: Vec<usize> =
        (0..question.options.len()).filter(|&at| question.options[at].right == is_right).collect();
    match fitting.len() {
        0 => answer(0.0, None),
        all => {
            let at = fitting[below(rng, all)];
            // A wrong mix may still come near; half of the credit then, in a few cases.
            let near = !is_right && rng.next_u64().is_multiple_of(10);
            answer(
                if is_right {
                    1.0
                } else if near {
                    0.5
                } else {
                    0.0
                },
                Some(at),
            )
        }
    }
}

/// So many different places below `all`, in a random order.
fn picked(rng: &mut ChaCha8Rng, all: usize, count: usize) -> Vec<usize> {
    let mut places: Vec<usize> = (0..all).collect();
    let count = count.min(all);
    for at in 0..count {
        let other = at + below(rng, all - at);
        places.swap(at, other);
    }
    places.truncate(count);
    places
}

fn below(rng: &mut ChaCha8Rng, bound: usize) -> usize {
    (rng.next_u64() % bound.max(1) as u64) as usize
}

fn uniform(rng: &mut ChaCha8Rng) -> f64 {
    (rng.next_u64() >> 11) as f64 / (1u64 << 53) as f64
}

/// Box and Muller (1958).
fn normal(rng: &mut ChaCha8Rng) -> f64 {
    let radius = libm::sqrt(-2.0 * libm::log(1.0 - uniform(rng)));
    radius * libm::cos(2.0 * std::f64::consts::PI * uniform(rng))
}
